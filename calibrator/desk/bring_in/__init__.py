"""Lots and weighings from tables of other programs: read, matched, judged, kept. Only the dialog knows a window."""
