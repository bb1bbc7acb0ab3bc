"""A batch table's figures in words: water, powder, scoopfuls, and whether a batch fits."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import inf

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.sheets import GroupSheet, SheetLine, water_step_ml
from calibrator.desk.speech import decimal_comma
from calibrator.model import Farm, FillWay, ScoopRule, UnitSystem
from calibrator.science.delivered import delivered
from calibrator.science.heat import scalds_in_seconds
from calibrator.science.portions import most_at_once_g
from calibrator.science.scoopfuls import ScoopWay, filled_otherwise
from calibrator.science.scoops import HALF
from calibrator.units import Kind, show_both, show_length, show_mass, show_percent, show_scoopfuls, show_volume
from calibrator.values import dataclass

translate = QCoreApplication.translate
_TOLD_AS_NONE_PCT = 0.05  # less than this is told as 0.0 %
_MANY, _MUCH, _MUCH_ML = 18, 0.188, 336_665.0  # as long in words as any: 88 gal 3 3/4 qt


@dataclass(frozen=True)
class Telling:
    """How figures are told: the farm's units and steps, the scale's step, whether scoops need their names, in which
    manner the table has them filled, how much the scale weighs (0 where none is known), and the lightest additive that
    it can weigh."""

    farm: Farm
    resolution_g: float
    several_scoops: bool
    manner: tuple[ScoopWay, ...] = ()
    capacity_g: float = 0.0
    least_additive_g: float = 0.0

    @property
    def system(self) -> UnitSystem:
        return self.farm.units


def telling(sheet: GroupSheet) -> Telling:
    several = len({way.scoop_id for way in sheet.ways}) > 1
    return Telling(sheet.farm, sheet.resolution_g, several, sheet.manner, sheet.capacity_g, sheet.least_additive_g)


def water_text(volume_ml: float, to: Telling) -> str:
    """Water as it is drawn, to the farm's own step."""
    farm_units = to.system is UnitSystem.FARM
    step = to.farm.water_step_qt if farm_units else to.farm.water_step_l
    return show_volume(volume_ml, to.system, step=step, decimal_comma=decimal_comma())


def powder_text(mass_g: float, to: Telling) -> str:
    """Powder to what the scale shows."""
    return show_mass(mass_g, to.system, resolution_g=to.resolution_g or None, decimal_comma=decimal_comma())


def portions_text(line: SheetLine, to: Telling) -> str:
    """In which portions a batch's powder is weighed; blank where the scale weighs it at once. Why stands with the
    table: `heavy_text`."""
    if line.portions is None:
        return ""
    return _portioned(line.batches, line.portions.count, line.portions.each_g, to)


def _portioned(batches: int, count: int, each_g: float, to: Telling) -> str:
    words = translate("TableWords", "weigh it as {portions}")
    if batches > 1:
        words = translate("TableWords", "weigh each batch as {portions}")
    return words.format(portions=_held(f"{count} × {powder_text(each_g, to)}"))


def heavy_text(capacity_g: float, to: Telling) -> str:
    """What powder is too heavy for the scale, and why it is less than the scale weighs."""
    words = translate(
        "TableWords",
        "Powder heavier than {most}: weigh it in portions. The scale weighs {capacity}, {pail} of it for the pail.",
    )
    most_g = most_at_once_g(capacity_g)
    most, capacity, pail = (
        show_mass(mass_g, to.system, decimal_comma=decimal_comma())
        for mass_g in (most_g, capacity_g, capacity_g - most_g)
    )
    return words.format(most=most, capacity=capacity, pail=pail)


def additives_text(line: SheetLine, sheet: GroupSheet, to: Telling) -> str:
    """What is weighed in besides the powder; blank where there is nothing."""
    named = zip(sheet.additives, line.additives_g, strict=False)
    words = translate("TableWords", "and {amount} of {name}")
    return "\n".join(
        words.format(amount=each_text(line, additive_text(mass_g, to)), name=name) for name, mass_g in named
    )


def additive_text(mass_g: float, to: Telling) -> str:
    """An additive to what the scale shows, finer where it cannot weigh so little."""
    step_g = to.resolution_g or None
    return shown.dose(mass_g, to.system, resolution_g=step_g, least_g=to.least_additive_g)


def light_words(masses_g: Iterable[float], least_g: float, system: UnitSystem) -> str:
    """What to do where the scale cannot weigh so little of an additive; blank where it can."""
    if all(mass_g >= least_g for mass_g in masses_g):
        return ""
    return _light(least_g, system)


def too_light_words(sheet: GroupSheet) -> str:
    """The same for a whole table; blank where no row has so little."""
    return _light(sheet.least_additive_g, sheet.farm.units) if sheet.too_light else ""


def _light(least_g: float, system: UnitSystem) -> str:
    told = translate(
        "TableWords",
        "Additives lighter than {least}: the scale's step is too coarse for them. Use a finer scale, or the product's "
        "own spoon.",
    )
    return told.format(least=_held(shown.mass(least_g, system)))


def fill_text(way: ScoopWay, system: UnitSystem, *, loud: bool = False) -> str:
    """How a scoop is filled: to which line, as its label names it, where that has several. In capitals where `loud`."""
    how = {
        FillWay.LEVEL: translate("TableWords", "level"),
        FillWay.TO_MARK: translate("TableWords", "to the line"),
        FillWay.TAPPED: translate("TableWords", "tapped"),
    }[way.way]
    how = translate("TableWords", "to the {mass} line") if way.line_g > 0 else how
    how = how.upper().replace("{MASS}", "{mass}") if loud else how
    return how.format(mass=_held(shown.mass(way.line_g, system, resolution_g=way.line_step_g or None)))


def way_text(way: ScoopWay, to: Telling) -> str:
    """One kind of fill; the scoop is named where there are several. In capitals where the table fills the same scoop
    otherwise: "15 level" below "15 to the line" is misread."""
    how = fill_text(way, to.system, loud=filled_otherwise(way, to.manner))
    return f"{way.name} {how}" if to.several_scoops else how


def scoops_text(line: SheetLine, to: Telling) -> str:
    """The count in a cell; "weigh it" where counting would not do, the count to the line beside it."""
    return _scoops_told(line, to, each_text)


def scoops_words(line: SheetLine, to: Telling) -> str:
    """The same where there is room to say what "2 ×" is of."""
    return _scoops_told(line, to, _each_words)


def _scoops_told(line: SheetLine, to: Telling, each: Callable[[SheetLine, str], str]) -> str:
    count = line.scoops
    if count is None or not count.told:
        return translate("TableWords", "weigh it")
    told = " + ".join(f"{show_scoopfuls(number)} {way_text(way, to)}" for way, number in count.parts)
    if line.batches > 1 and len(count.parts) > 1:
        told = f"({told})"
    told = each(line, told)
    return told if count.countable else translate("TableWords", "weigh it, or {count}").format(count=told)


def filled_up_text(line: SheetLine, to: Telling) -> str:
    """Up to where water is filled once the powder is in; blank where the water is drawn at once."""
    if line.batch.fill_to_ml is None:
        return ""
    volume = _held(water_text(line.batch.fill_to_ml, to))
    return translate("TableWords", "fill up to {volume}").format(volume=volume)


def each_text(line: SheetLine, text: str) -> str:
    """What goes into each of several equal batches."""
    if line.batches == 1:
        return text
    return translate("TableWords", "{batches} × {amount}").format(batches=line.batches, amount=text)


def _each_words(line: SheetLine, text: str) -> str:
    if line.batches == 1:
        return text
    return translate("TableWords", "{batches} batches of {amount}").format(batches=line.batches, amount=text)


def scale_off_text(off_share: float) -> str:
    """That the scale has to be put right before powder is weighed by it; blank where it was right."""
    if not off_share:
        return ""
    text = (
        translate(
            "TableWords",
            "The scale showed {share} too much at the weigh-in: set it right before powder is weighed by it. The "
            "scoopfuls are corrected for it.",
        )
        if off_share > 0
        else translate(
            "TableWords",
            "The scale showed {share} too little at the weigh-in: set it right before powder is weighed by it. The "
            "scoopfuls are corrected for it.",
        )
    )
    return text.format(share=shown.unsigned_share(off_share))


def off_heading(sheet: GroupSheet | None) -> str:
    """What `error_text` compares: the count with the weight beside it, or the strength with the wanted one."""
    if sheet is not None and sheet.rule.rule is ScoopRule.ONE_KIND:
        return translate("TableWords", "Mix off")
    return translate("TableWords", "Count off")


def error_text(line: SheetLine) -> str:
    """How far the count is off the weight beside it; where the water is trimmed to it, how far the strength is."""
    return "–" if line.off_share is None else shown.signed_share(line.off_share)


def error_words(line: SheetLine, to: Telling) -> str:
    """How far the count is over or short, and how far so many scoopfuls spread at 95 %; blank without a count."""
    count = line.scoops
    if count is None or not count.told:
        return ""
    spread = shown.share(count.spread_95_share)
    if line.trimmed_share is not None:
        told = translate("TableWords", "water trimmed, {share} of everything; ± {spread}")
        return told.format(share=shown.signed_share(line.trimmed_share), spread=spread)
    off = shown.unsigned_share(count.error_share)
    if off == shown.share(0.0):  # told as a bound: the weight beside it may itself be rounded
        told = translate("TableWords", "within {bound} of the weight (± {spread})")
        return told.format(bound=show_percent(_TOLD_AS_NONE_PCT, 2, decimal_comma=decimal_comma()), spread=spread)
    return _off_words(off, spread, short=count.error_g < 0)


def _off_words(off: str, spread: str, *, short: bool) -> str:
    if short:
        told = translate("TableWords", "{share} short of the weight (± {spread})")
    else:
        told = translate("TableWords", "{share} over the weight (± {spread})")
    return told.format(share=off, spread=spread)


def delivered_words(line: SheetLine, sheet: GroupSheet) -> str:
    """What the count makes of the solids, with the spread of so many scoopfuls; blank without one.

    Osmolality stands with the group's strength, with the doubt in the estimate: that is far more than this spread.
    """
    if line.scoops is None or not line.scoops.countable:
        return ""
    water_ml, others_g = line.batch.mix.water_ml, sum(line.additives_g)
    made = delivered(line.scoops, water_ml, sheet.powder, sheet.water_temperature_c, others_g)
    wanted, solids, low, high = (
        shown.share(mix.solids_share) for mix in (sheet.per_calf, made.mix, made.low, made.high)
    )
    return _solids_words(solids, low, high, wanted)


def _solids_words(solids: str, low: str, high: str, wanted: str) -> str:
    """Where it is not what is wanted that is said: count and rounding of the batch both have a part in it."""
    if low == high == wanted:
        return translate("TableWords", "Solids {solids}.").format(solids=solids)
    told = translate("TableWords", "Solids {solids} ({low} to {high}).")
    if solids != wanted:
        told = translate("TableWords", "Solids {solids} ({low} to {high}), wanted {wanted}.")
    return told.format(solids=solids, low=low, high=high, wanted=wanted)


def rounding_words(line: SheetLine) -> str:
    """What rounding water and powder did to the strength, before any count."""
    told = translate("TableWords", "Rounding of water and powder, also by weight: strength {share}.")
    return told.format(share=shown.signed_share(line.batch.ratio_error_share, 2))


def goes_by_water_words(sheet: GroupSheet, to: Telling) -> str:
    """Why powder is more or less than the calves times their own; blank where no row has it so."""
    if not sheet.powder_goes_by_water:
        return ""
    told = translate(
        "TableWords",
        "Volumes are rounded to {step}; in small batches the powder goes with them, so the strength holds.",
    )
    return told.format(step=_held(water_text(water_step_ml(to.farm, inf), to)))


def parts_words(sheet: GroupSheet) -> str:
    """How a part of a scoopful is measured; blank where the counts have none."""
    told = []
    to_line = any(way.way is FillWay.TO_MARK for way in sheet.ways)
    if HALF in sheet.parts and to_line:
        told.append(
            translate(
                "TableWords",
                "1/2 to the line: fill to the ½ line on the label; where it has none, by eye or by weight.",
            )
        )
    if set(sheet.parts) - {HALF} or (sheet.parts and not to_line):
        told.append(translate("TableWords", "A part of a scoopful without a line is filled by eye; weighing is surer."))
    return " ".join(told)


def vessel_text(line: SheetLine, vessel: str, to: Telling) -> str:
    """Why a mix that does not fit the vessel is made in several batches."""
    return translate("TableWords", "{vessel}: {why}").format(vessel=vessel, why=split_text(line, to))


def split_text(line: SheetLine, to: Telling) -> str:
    """In how many batches, and what one would do."""
    return _split_words(line.batches, _over(line, to) if line.overflow_ml > 0 else "")


def _split_words(batches: int, over: str) -> str:
    if over:
        told = translate("TableWords", "{batches} equal batches: a single one would run over by {over}")
    else:
        told = translate("TableWords", "{batches} equal batches: a single one would leave no room for stirring")
    return told.format(batches=batches, over=over)


def longest_notes(to: Telling) -> tuple[str, str]:
    """As much as is told beneath today's water and scoopfuls, so that room is kept for it while a count is typed."""
    over = show_volume(_MUCH_ML, to.system, decimal_comma=decimal_comma())
    share, wanted = shown.share(_MUCH), shown.share(2 * _MUCH)
    off, solids = _off_words(share, share, short=True), _solids_words(share, share, share, wanted)
    return _split_words(_MANY, over), f"{off}. {solids}"


def longest_portions(to: Telling) -> str:
    """As much as is told beneath today's powder of a batch that the scale does not weigh at once; a scale's capacity
    is known then."""
    return _portioned(_MANY, _MANY, most_at_once_g(to.capacity_g), to)


def _held(figure: str) -> str:
    """A figure in which no line ends."""
    return figure.replace(" ", "\u00a0")


def levels_text(line: SheetLine, to: Telling) -> str:
    """How high water and mix stand in the vessel; blank where that is not known."""
    levels = line.levels
    if levels is None or levels.water_mm is None:
        return ""
    water = show_length(levels.water_mm, to.system, decimal_comma=decimal_comma())
    if levels.mix_mm is None:
        return translate("TableWords", "Water to {water} above the floor.").format(water=water)
    told = translate("TableWords", "Water to {water} above the floor, the mix stands at {mix}.")
    return told.format(water=water, mix=show_length(levels.mix_mm, to.system, decimal_comma=decimal_comma()))


def _over(line: SheetLine, to: Telling) -> str:
    return show_volume(line.overflow_ml, to.system, decimal_comma=decimal_comma())


def scald_words(celsius: float, system: UnitSystem) -> str:
    """The caution beside hot water: how soon it scalds, and how warm a calf wants the mix."""
    if scalds_in_seconds(celsius):
        burns = translate("TableWords", "Water at {temperature} scalds skin within seconds.")
    else:
        burns = translate(
            "TableWords", "Water at {temperature} scalds skin within minutes, hotter water within seconds."
        )
    care = translate(
        "TableWords",
        "Wear gloves, keep children away, and let the mix cool to {feeding} at the calf. The product label comes "
        "first.",
    )
    temperature = show_both(celsius, Kind.TEMPERATURE, system, decimal_comma=decimal_comma())
    feeding = "38–41 °C" if system is UnitSystem.METRIC else "100–105 °F (38–41 °C)"
    return f"{burns.format(temperature=temperature)} {care.format(feeding=feeding)}"
