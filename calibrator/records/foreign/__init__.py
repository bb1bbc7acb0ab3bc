"""Tables that other programs wrote: text with separators, or a workbook, as cells. What they mean is judged elsewhere.

Belongs here: bytes to cells, and refusing what is no table, before it can do harm. Formulas are never evaluated,
macros never looked at. Never here: what a column means.
"""
