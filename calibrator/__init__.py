"""Scoop calibration for milk replacer: weigh a lot, draw its line, print its batch table.

The rooms and who may import whom: desk → prints, records, science, units, model; prints → science,
units, model; records → model; science → model; units and model import nothing of ours.
"""

__version__ = "0.1.0"
