"""A season's fills as the program reads them: summed bag by bag, lot by lot."""

from __future__ import annotations

from collections.abc import Sequence
from functools import reduce

from calibrator.science.components import Components, components_of_bags
from calibrator.science.nested import Weighed, table
from calibrator.science.spread import BagHistory, Pool, lot_spread


def components(lots: Sequence[Sequence[Weighed]]) -> Components:
    """Where the spread of all fills comes from; lots without fills are passed over."""
    return components_of_bags([table(fills).bags for fills in lots if fills])


def pool_bag_history(lots: Sequence[Sequence[Weighed]]) -> BagHistory | None:
    """What the fills of earlier lots teach; lots without fills are passed over."""
    return reduce(Pool.joined, (lot_spread(table(fills).bags) for fills in lots if fills), Pool()).history()
