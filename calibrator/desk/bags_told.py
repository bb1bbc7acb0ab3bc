"""What a kept count of bags came to. No window needed."""

from __future__ import annotations

from calibrator.model import BagCount
from calibrator.science.bag_count import BagResult, Ends, bag_count
from calibrator.science.errors import CannotCompute


def bag_result(count: BagCount, tolerance_share: float) -> BagResult | None:
    """The powder that each feeding got; None where today's rules refuse the count."""
    ends = Ends.SHARP if count.sharp else Ends.ROUGH
    try:
        return bag_count(count.bags, count.bag_mass_g, count.feedings, count.target_mass_g, tolerance_share, ends)
    except CannotCompute:
        return None
