"""How a figure came about: the same results that the screens show, told step by step with their formulas.

Nothing is reckoned here: every figure stands in a result of `science`. Amounts are told in the farm's units
(`amounts`), with grams or litres beside them where a formula takes those.
"""
