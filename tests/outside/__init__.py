"""Checks against published values and reference libraries; import `check` with `from .checks import check`."""
