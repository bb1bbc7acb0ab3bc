"""Inputs and drawings that several pages share.

Belongs here: a widget that knows nothing of the page it stands on. Never here: a store, a formula.
"""
