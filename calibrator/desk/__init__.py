"""The Qt screens: window, pages, widgets, item models.

Belongs here: what a person sees and touches. Never here: a formula, a query, a unit conversion.
"""
