"""Lots of an invented season as the records give them, for tests."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any

from calibrator.model import BagSum, SeasonLot

FIRST = datetime(2025, 1, 10, 9, tzinfo=UTC)


def lot(number: int, density: float, **how: Any) -> SeasonLot:
    """Lot `number`, weighed in so many times 20 days after the first, known to half a percent."""
    at = FIRST + timedelta(days=20 * number)
    told: dict[str, Any] = {
        "sign_off_id": f"s{number}", "weigh_in_id": f"w{number}", "lot_id": f"l{number}", "lot_number": str(number),
        "product": "20-20", "made_on": date(2024, 12, 1), "arrived_on": at.date(), "note": "", "plant_code": "",
        "agglomerated": None, "price_per_package": None, "package_mass_g": 22700.0, "scoop_id": "red",
        "scoop_name": "red cup", "scoop_revision": "", "at": at, "by": "MK", "bags": 4, "fills": 8,
        "level_mean_g": 600 * density, "level_u_g": 3 * density, "degrees_of_freedom": 20.0,
        "density_g_per_ml": density, "density_u_g_per_ml": 0.006 * density, "density_low_g_per_ml": 0.988 * density,
        "density_high_g_per_ml": 1.012 * density, "bag_sd_share": 0.008, "fill_sd_share": 0.015,
        "settling_factor": 1.03, "settling_u": 0.004, "humidity_pct": 45.0, "temperature_c": 16.0,
        "target_mass_g": 283.5, "down_wall_mm": 30.0, "full_scoops": 0,
        "mark_mass_g": 283.5,
    }  # fmt: skip
    return SeasonLot(**(told | how))


def bags(of: SeasonLot, values: list[list[float]], by: str = "MK") -> list[BagSum]:
    """The bags of a lot from its fills, one list a bag."""
    return [
        BagSum(of.weigh_in_id, n, by, len(fills), len(fills), sum(fills), sum(v * v for v in fills))
        for n, fills in enumerate(values, start=1)
    ]
