"""Seeded simulations of weigh-ins: how often intervals cover, flags fire, verdicts are wrong, feedings hit.

`python -m tests.simulation` runs the long version and writes RESULTS.md; test_simulation.py the short one.
"""
