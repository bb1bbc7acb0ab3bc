"""The guided weigh-in: its steps, each a view over the plain state of `calibrator.desk.guide`."""
