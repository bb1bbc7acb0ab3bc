"""Lots of powder and what their label says."""

from datetime import date
from enum import StrEnum

from calibrator.model.paper import LabelledLine
from calibrator.values import dataclass


class PackageKind(StrEnum):
    BAG = "bag"
    TOTE = "tote"


@dataclass(frozen=True, kw_only=True)
class Composition:
    """A label's guaranteed analysis, percent of the powder as sold; None where the label is silent."""

    protein_pct: float | None = None
    fat_pct: float | None = None
    fibre_pct: float | None = None
    ash_pct: float | None = None
    moisture_pct: float | None = None


@dataclass(frozen=True, kw_only=True)
class PackagesLeft:
    """Packages of a lot counted at the start of a day; an open one counts as its part. `typed` is blank for what was
    worked out on the day that a lot was fed again."""

    packages: float
    on: date
    typed: str = ""


@dataclass(frozen=True, kw_only=True)
class ScoopMarked:
    """Somebody's word that the line of a sign-off is drawn on its scoop and the label is on it. `lines` are all that
    the screen told to draw where no label was printed; None where one was, or nobody kept them."""

    scoop_id: str
    sign_off_id: str
    on: date
    lines: tuple[LabelledLine, ...] | None = None


@dataclass(frozen=True, kw_only=True)
class Lot:
    """Powder that came under one lot number.

    `fed_from` is the change-over: the first day that it is fed, from the feeding `fed_from_feeding` on (0 is the
    first; −1 where another took over on the same day). A lot that `waits` is weighed in and not fed, or only once that
    feeding has come. `scoops_marked` are the scoops that bear its line by somebody's word; None for a lot of earlier
    versions, which asked nobody.

    `plant_code` is the supplier's code of plant or line from the bag. `agglomerated` tells a product made to wet
    quickly (also called instantized) from one that is not; None where nobody knows. The price is in the farm's
    currency.
    """

    id: str
    farm_id: str
    lot_number: str
    product: str = ""
    made_on: date | None = None
    arrived_on: date | None = None
    package: PackageKind = PackageKind.BAG
    package_count: int | None = None
    package_mass_g: float | None = None
    package_mass_typed: str = ""
    composition: Composition = Composition()
    medicated: bool = False
    note: str = ""
    fed_from: date | None = None
    fed_from_feeding: int = 0
    waits: bool = False
    scoops_marked: tuple[ScoopMarked, ...] | None = None
    finished_on: date | None = None  # the day the last of it was fed
    packages_left: PackagesLeft | None = None  # the newest count
    supplier: str = ""
    plant_code: str = ""
    agglomerated: bool | None = None
    price_per_package: float | None = None
    price_typed: str = ""
    revision: str = ""
