"""Widgets of our own: fields that understand quantities, drawings to scale."""
