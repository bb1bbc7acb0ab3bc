"""Any bytes whatever against every parser: `python -m tests.fuzz` for a million, guided by coverage."""
