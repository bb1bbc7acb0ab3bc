"""Paper: one page description that becomes PDF, printer output and preview alike.

Belongs here: layout in millimetres and the words on paper. Never here: storage, formulas, screens.
"""
