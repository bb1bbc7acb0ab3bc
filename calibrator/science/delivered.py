"""What a count of scoopfuls really puts into the mix: powder, solids and osmolality, with their spread."""

from __future__ import annotations

from calibrator.science.guard import not_negative
from calibrator.science.mixing import Mix, Powder, mix_of
from calibrator.science.scoops import ScoopCount
from calibrator.values import dataclass


@dataclass(frozen=True)
class Delivered:
    """The mix with the count's own weight, and at both ends of its 95 % spread."""

    mix: Mix
    low: Mix
    high: Mix


def delivered(
    count: ScoopCount, water_ml: float, powder: Powder, water_temperature_c: float, additives_g: float = 0.0
) -> Delivered:
    """The mix that a count of scoopfuls makes with this water (0–100 °C).

    `additives_g` are weighed in besides; `powder` is then the blend of all. The spread is
    `ScoopCount.spread_95_g`, never below no powder at all. Raises CannotCompute for no water.
    """
    others = not_negative(additives_g, "The weight of the rest")

    def with_powder(powder_g: float) -> Mix:
        return mix_of(water_ml, max(0.0, powder_g) + others, powder, water_temperature_c)

    return Delivered(
        mix=with_powder(count.total_g),
        low=with_powder(count.total_g - count.spread_95_g),
        high=with_powder(count.total_g + count.spread_95_g),
    )
