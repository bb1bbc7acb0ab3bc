"""The pages of the window, each imported when it is first opened. Never here: a formula, a query."""
