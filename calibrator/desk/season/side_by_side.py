"""Two lots beside each other: what differs, in words and as lines of a small table."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.season.facts import Meaning, SeasonFacts
from calibrator.desk.season.words import (
    between_text,
    mass_text,
    named_with_state,
    weighed_words,
)
from calibrator.desk.speech import day_text
from calibrator.desk.weigh_in.words import corrected_words
from calibrator.model import SeasonLot, UnitSystem
from calibrator.science.carried_over import difference_share
from calibrator.science.weighing import LevelResult
from calibrator.units import show_percent

translate = QCoreApplication.translate
_BEFORE_DENSITY = 4


def beside_words(first: SeasonLot, second: SeasonLot) -> str:
    """Do two lots differ, and by how much? Raises CannotCompute where their figures cannot be compared."""
    found = difference_share(first, second)
    names = {"first": first.lot_number, "second": second.lot_number}
    ends = {"low": shown.signed_share(found.low), "high": shown.signed_share(found.high)}
    if not found.differs:
        text = translate(
            "SideBySide",
            "Lots {first} and {second} cannot be told apart: the difference lies between {low} and {high}.",
        )
        return text.format(**names, **ends)
    more = translate(
        "SideBySide", "A level scoop weighs {share} more ({between}) with lot {second} than with lot {first}."
    )
    less = translate(
        "SideBySide", "A level scoop weighs {share} less ({between}) with lot {second} than with lot {first}."
    )
    text = more if found.difference > 0 else less
    return text.format(
        share=shown.unsigned_share(found.difference), between=between_text(found.low, found.high), **names
    )


def rows_of(facts: SeasonFacts, first: int, second: int) -> list[tuple[str, str, str]]:
    """Caption and the two lots' figures, line by line."""
    told = [_told(facts, place) for place in (first, second)]
    captions = [
        translate("SideBySide", "Lot"),
        translate("SideBySide", "Scoop"),
        translate("SideBySide", "Product"),
        translate("SideBySide", "Made, arrived"),
        translate("SideBySide", "Density (± 95 %)"),
        translate("SideBySide", "Settles to the line by"),
        translate("SideBySide", "Line down the wall"),
        translate("SideBySide", "Filled as for the lot before"),
        translate("SideBySide", "Room humidity"),
        translate("SideBySide", "Weighed"),
        translate("SideBySide", "Note"),
    ]
    rows = list(zip(captions, *told, strict=True))
    corrected = [_corrected(facts.level_result(facts.lots[place]), facts.farm.units) for place in (first, second)]
    if any(corrected):  # a difference may be the scale's: told before the densities
        rows.insert(_BEFORE_DENSITY, (translate("SideBySide", "Scale"), *(told or "–" for told in corrected)))
    return rows


def _corrected(level: LevelResult | None, system: UnitSystem) -> str:
    """What was taken off or added for the scale's error; blank where nothing was."""
    return corrected_words(level.taken_off_g, system) if level is not None and level.taken_off_g else ""


def _line(lot: SeasonLot, system: UnitSystem) -> str:
    """Where the line stood, and the feeding that it was for."""
    if lot.down_wall_mm is None or lot.target_mass_g is None:
        return "–"
    text = translate("SideBySide", "{line}, for {feeding}")
    if lot.struck_level:
        text = translate("SideBySide", "none, for {feeding}")
    return text.format(line=shown.length(lot.down_wall_mm, system), feeding=mass_text(lot.target_mass_g, system))


def _feeding(meaning: Meaning, system: UnitSystem) -> str:
    """What a feeding would weigh, beside what it was to weigh."""
    text = translate("SideBySide", "{mass} in place of {target}")
    return text.format(
        mass=mass_text(meaning.carried.mass_g, system), target=mass_text(meaning.carried.target_g, system)
    )


def _told(facts: SeasonFacts, place: int) -> list[str]:
    lot, system = facts.lots[place], facts.farm.units
    meaning = facts.meaning(place)
    humidity = "–" if lot.humidity_pct is None else show_percent(lot.humidity_pct, 0)
    product = lot.product or "–"
    if lot.plant_code:
        product = translate("SideBySide", "{product}, plant {plant}").format(product=product, plant=lot.plant_code)
    return [
        named_with_state(lot, facts.state(lot.lot_id)),
        lot.scoop_name,
        product,
        f"{day_text(lot.made_on)}, {day_text(lot.arrived_on)}",
        shown.density(lot.density_g_per_ml, system, lot.density_half_width_g_per_ml, brief=True),
        shown.signed_share(lot.settling_factor - 1) if lot.settling_u > 0 else "–",  # taken over, not weighed
        _line(lot, system),
        _feeding(meaning, system) if meaning else "–",
        humidity,
        f"{weighed_words(lot)}, {lot.by or '–'}",
        lot.note or "–",
    ]
