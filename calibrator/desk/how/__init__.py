"""How a figure came about: the same results that the screens show, told step by step with their formulas.

Nothing is reckoned here: every figure stands in a result of `science`. Weights are told in g and mL, as they
are reckoned with; the last step of each says the figure in the person's units.
"""
