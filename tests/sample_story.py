"""The story of sample_lots/: which lots came, what was true of them, and the habits of the people.

All of it is invented. What stands here the farm does not know; it weighs.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from random import Random

AGGLOMERATED = "22/20 milk replacer, agglomerated"
PLAIN = "22/20 milk replacer"
SUPPLIER = "Marrowfield Feeds (invented)"

WEIGHERS = ("RO", "MK", "JT")
FEEDERS = ("RO", "MK", "JT", "LP")
"""LP feeds at weekends and never weighs a lot in."""

LEVEL_HABIT = {"RO": 1.0, "MK": 0.997, "JT": 1.008}
MARK_HABIT = {"RO": 1.0, "MK": 0.994, "JT": 1.045, "LP": 0.992}
"""What a scoopful weighs by each hand against the usual: JT does not shake the scoop level."""

HAND_SD = {"RO": 0.0, "MK": 0.0, "JT": 0.004, "LP": 0.022}
"""How unevenly a hand fills, besides what the powder does."""


def ounces(mass_g: float, step_oz: float = 0.1) -> str:
    """What the scale shows."""
    return f"{round(mass_g / 28.349523125 / step_oz) * step_oz:.1f} oz"


@dataclass(frozen=True)
class Jump:
    """A lot that is not one: from a bag on it is powder of another run, under the same number."""

    after_spots: int
    share: float


@dataclass(frozen=True)
class Delivery:
    """One lot as the story has it. `by` weighed it in (blank: whoever had time); `together` tells that two did."""

    number: str
    arrived: date
    density_g_per_ml: float
    product: str = PLAIN
    fill_sd: float = 0.015
    bag_sd: float = 0.008
    settling: float = 1.03
    humidity_pct: float = 45.0
    temperature_c: float = 16.0
    bags: int = 84
    medicated: bool = False
    tote: bool = False
    plant: str = "P07"
    price: str = "66.50"
    note: str = ""
    by: str = ""
    together: bool = False
    jump: Jump | None = None

    @property
    def agglomerated(self) -> bool:
        return self.product == AGGLOMERATED


DELIVERIES = (
    Delivery("25-1107B", date(2025, 11, 18), 0.561, humidity_pct=48, temperature_c=9),
    Delivery("25-1202A", date(2025, 12, 12), 0.548, humidity_pct=41, temperature_c=4, plant="P12"),
    Delivery(
        "25-1219C", date(2026, 1, 6), 0.566, humidity_pct=38, temperature_c=3,
        note="Two bags torn, fed first.", price="67.00",
    ),
    Delivery("26-0116A", date(2026, 1, 31), 0.557, humidity_pct=36, temperature_c=2, plant="P12", price="67.00"),
    Delivery("26-0211B", date(2026, 2, 25), 0.571, humidity_pct=40, temperature_c=5, tote=True, price="2640"),
    Delivery("26-0306A", date(2026, 3, 22), 0.552, humidity_pct=44, temperature_c=9, plant="P12", price="68.50"),
    Delivery("26-0402C", date(2026, 4, 16), 0.558, humidity_pct=50, temperature_c=13, price="68.50"),
    Delivery("26-0429B", date(2026, 5, 12), 0.563, humidity_pct=55, temperature_c=17, medicated=True, price="74.00"),
    Delivery(
        "26-0523A", date(2026, 6, 6), 0.555, humidity_pct=61, temperature_c=22, plant="P12",
        price="69.00", by="RO", together=True,
    ),
    Delivery(
        "26-0620B", date(2026, 7, 3), 0.534, fill_sd=0.028, bag_sd=0.012, settling=1.05, humidity_pct=82,
        temperature_c=29, note="Humid week, powder clings to the scoop. Stirred each bag twice.", price="69.00",
    ),
    Delivery(
        "26-0715A", date(2026, 7, 28), 0.541, fill_sd=0.02, humidity_pct=74, temperature_c=27,
        plant="P12", price="69.00",
    ),
    Delivery(
        "26-0808C", date(2026, 8, 22), 0.559, humidity_pct=63, temperature_c=24, price="69.50",
        bag_sd=0.006, fill_sd=0.012,
        jump=Jump(after_spots=4, share=-0.07),
    ),
    Delivery(
        "26-0905A", date(2026, 9, 17), 0.478, AGGLOMERATED, settling=1.02, humidity_pct=55,
        temperature_c=18, note="First agglomerated lot. Looks coarser and pours freely.", plant="P12", price="73.00",
    ),
    Delivery(
        "26-1001B", date(2026, 10, 13), 0.471, AGGLOMERATED, settling=1.02, humidity_pct=52,
        plant="P12", price="73.00", by="MK", together=True,
    ),
    Delivery(
        "26-1027A", date(2026, 11, 7), 0.483, AGGLOMERATED, settling=1.02, humidity_pct=50,
        plant="P12", price="73.00",
    ),
)  # fmt: skip
"""The last one is delivered and waits to be weighed in."""


@dataclass
class Bags:
    """The bags of a lot: each a little different, and no two scoopfuls alike."""

    told: Delivery
    rng: Random
    wall_factor: float
    factors: dict[int, float] = field(default_factory=dict)

    def scoopful(self, bag: int, volume_ml: float, by: str, *, settled: bool = False) -> float:
        """Grams in one scoopful from a bag, by one person's hand."""
        factor = self.factors.setdefault(bag, self.rng.gauss(1, self.told.bag_sd))
        density = self.told.density_g_per_ml * (self.told.settling if settled else 1.0)
        hand = (MARK_HABIT if settled else LEVEL_HABIT)[by] * self.rng.gauss(1, HAND_SD[by])
        return volume_ml * self.wall_factor * density * factor * hand * self.rng.gauss(1, self.told.fill_sd)

    def spot(self, number: int, volume_ml: float, by: str) -> float:
        """Grams in a level scoopful from the so-manieth bag opened after sign-off."""
        jump = self.told.jump
        run = 1 + jump.share if jump and number > jump.after_spots else 1.0
        return run * self.scoopful(100 + number, volume_ml, by)
