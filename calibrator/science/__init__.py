"""Pure functions over the nouns and plain floats.

Belongs here: every formula of the program, with its source. Never here: Qt, storage, pint, words for a
screen. Numbers are floats in g, mL, mm, °C, g/mL, mOsm/kg, and each name says which. Nonsense raises
`CannotCompute` (a `ValueError` with a sentence); data that are merely bad come back as verdict values.
Quantiles and tails are our own, checked against scipy in tests/outside: it loads slower than any page.
"""
