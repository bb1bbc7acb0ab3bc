"""The facts of a lot sheet as pairs of names and values."""

from __future__ import annotations

import math
from datetime import date
from functools import partial

from calibrator.model import (
    Box,
    Composition,
    Cylinder,
    FillWay,
    Lot,
    PackageKind,
    Poured,
    Shape,
    TaperedCup,
    UnitSystem,
)
from calibrator.prints import words
from calibrator.prints.fit import plain
from calibrator.prints.languages import Tongue, Words
from calibrator.prints.record_facts import LotSheet
from calibrator.science.budget import Distribution, Source
from calibrator.science.keep import VERDICT_LEVEL
from calibrator.science.mark import LineVerdict, OldLineVerdict
from calibrator.science.spread import IntervalRule
from calibrator.science.struck import COVERAGE_FACTOR
from calibrator.science.verify import JUDGED_LEVEL
from calibrator.units import (
    Kind,
    NotUnderstood,
    density_unit,
    edit_text,
    read,
    show_both,
    show_density,
    show_estimate,
    show_mass,
    show_percent,
    show_scoop_estimate,
    show_temperature,
    show_typed_percent,
    show_with_uncertainty,
    with_sign,
)

Pairs = list[tuple[str, str]]

WAYS = {FillWay.LEVEL: words.LEVEL, FillWay.TO_MARK: words.TO_THE_LINE, FillWay.TAPPED: words.TAPPED}
SOURCES = {
    Source.BAG_MEANS: words.SOURCE_BAG_MEANS,
    Source.BAGS: words.SOURCE_BAGS,
    Source.FILLS: words.SOURCE_FILLS,
    Source.READING: words.SOURCE_READING,
    Source.TARE: words.SOURCE_TARE,
    Source.SCALE_ERROR: words.SOURCE_SCALE_ERROR,
    Source.LEVEL_MEAN: words.SOURCE_LEVEL_MEAN,
    Source.SCOOP_VOLUME: words.SOURCE_SCOOP_VOLUME,
    Source.SETTLING: words.SOURCE_SETTLING,
}
SHAPES = {Distribution.NORMAL: words.NORMAL, Distribution.RECTANGULAR: words.RECTANGULAR}
RULES = {
    IntervalRule.BAG_MEANS: words.RULE_BAG_MEANS,
    IntervalRule.POOLED_HISTORY: words.RULE_HISTORY,
    IntervalRule.CAUTIOUS_DEFAULT: words.RULE_CAUTIOUS,
    IntervalRule.EVERY_BAG: words.RULE_EVERY_BAG,
}
_VERDICTS = {
    LineVerdict.ON_TARGET.value: words.ON_TARGET,
    LineVerdict.MOVE.value: words.MOVE,
    LineVerdict.AS_NEAR_AS_RULED.value: words.AS_NEAR_AS_RULED,
    LineVerdict.WEIGH_MORE.value: words.WEIGH_MORE,
    OldLineVerdict.KEEP.value: words.KEEP,
}
_OPEN = (LineVerdict.MOVE.value, LineVerdict.WEIGH_MORE.value)  # signed off although the fills said this

_KG_G = 1000.0


class Teller:
    """Says names and values in the languages of the sheet."""

    def __init__(self, facts: LotSheet, said: Words) -> None:
        self.facts = facts
        self.said = said

    def say(self, phrase: str, **values: object) -> str:
        return self.said.joined(lambda t: t(phrase).format(**values), " / ")

    def day(self, day: date | None) -> str:
        return "" if day is None else self.said.joined(lambda t: t.date(day), " / ")

    def lot(self) -> Pairs:
        """As signed off, and what was told of it since."""
        signed = self._told_of(self.facts.lot)
        now = self._told_of(self.facts.lot_now or self.facts.lot)
        return [(name, self._since(value, new)) for (name, value), (_, new) in zip(signed, now, strict=True)]

    def _since(self, value: str, new: str) -> str:
        if new in (value, ""):
            return value
        return self.say(words.CHANGED_SINCE if value else words.ADDED_SINCE, value=value or new, new=new)

    def _told_of(self, lot: Lot) -> Pairs:
        return [
            (self.say(words.PRODUCT), plain(lot.product)),
            (self.say(words.PACKAGES), self._packages(lot)),
            (self.say(words.MADE_ON), self.day(lot.made_on)),
            (self.say(words.ARRIVED_ON), self.day(lot.arrived_on)),
            (self.say(words.ANALYSIS), self._analysis(lot.composition)),
            (self.say(words.MEDICATED_SHORT), self.say(words.YES if lot.medicated else words.NO)),
            (self.say(words.NOTE), plain(lot.note)),
        ]

    def _packages(self, lot: Lot) -> str:
        if lot.package_count is None:
            return ""
        tote = lot.package is PackageKind.TOTE
        if lot.package_mass_g is None:
            unweighed = words.TOTES_UNWEIGHED if tote else words.BAGS_UNWEIGHED
            return self.say(unweighed, count=lot.package_count)
        mass = plain(lot.package_mass_typed) or show_mass(lot.package_mass_g, self.facts.units)
        phrase = words.TOTES_OF if tote else words.BAGS_OF
        return self.say(phrase, count=lot.package_count, mass=mass)

    def _analysis(self, label: Composition) -> str:
        known = (
            (words.PROTEIN, label.protein_pct),
            (words.FAT, label.fat_pct),
            (words.FIBRE, label.fibre_pct),
            (words.ASH, label.ash_pct),
            (words.MOISTURE, label.moisture_pct),
        )
        return ", ".join(self.say(p, percent=show_typed_percent(v)) for p, v in known if v is not None)

    def scoop_and_scale(self) -> Pairs:
        scoop, scale = self.facts.scoop, self.facts.scale
        origin = words.FROM_WATER if scoop.volume_from_water else words.FROM_DIMENSIONS
        units = self.facts.units
        volume = show_scoop_estimate(scoop.volume_ml, COVERAGE_FACTOR * scoop.volume_u_ml, units)
        return [
            (self.say(words.SCOOP), plain(scoop.name)),
            (self.say(words.SCALE), plain(scale.name)),
            (self.say(words.INSIDE), self._inside(scoop.shape)),
            (self.say(words.RESOLUTION), _both_typed(scale.resolution_typed, scale.resolution_g)),
            (self.say(words.STRUCK_VOLUME), f"{volume}, {self.say(origin)}"),
            (self.say(words.CAPACITY), _both_typed(scale.capacity_typed, scale.capacity_g)),
            (self.say(words.ZEROED), self.say(words.YES if self.facts.weigh_in.scale_zeroed else words.NO)),
            (self.say(words.CHECK_WEIGHT), self._check()),
        ]

    def _inside(self, shape: Shape) -> str:
        """In farm units with the millimetres behind them."""
        units = self.facts.units
        told = self.said.joined(lambda t: inside(shape, t, units), " / ")
        if units is UnitSystem.METRIC:
            return told
        in_mm = [edit_text(size_mm, Kind.LENGTH, UnitSystem.METRIC) for size_mm in _sizes_mm(shape)]
        return f"{told} ({', '.join(in_mm)})"

    def _check(self) -> str:
        weigh_in = self.facts.weigh_in
        if weigh_in.check_nominal_g is None or weigh_in.check_reading_g is None:
            level = self.facts.level
            return self.say(words.CHECK_NONE if level and level.scale_half_g else words.CHECK_NONE_LEFT_OUT)
        error_g = weigh_in.check_reading_g - weigh_in.check_nominal_g
        return self.say(
            words.CHECK_READ,
            nominal=_both_typed(weigh_in.check_nominal_typed, weigh_in.check_nominal_g),
            reading=_both_typed(weigh_in.check_reading_typed, weigh_in.check_reading_g),
            error=with_sign(f"{abs(error_g):.2f}", error_g),
        )

    def how(self) -> Pairs:
        weigh_in, units = self.facts.weigh_in, self.facts.units
        room = []
        if weigh_in.room_temperature_c is not None:
            room.append(show_temperature(weigh_in.room_temperature_c, units))
        if weigh_in.room_humidity_pct is not None:
            room.append(self.say(words.HUMIDITY, percent=show_percent(weigh_in.room_humidity_pct, 0)))
        target = weigh_in.target_mass_g
        return [
            (self.say(words.STARTED), self.said.joined(lambda t: t.moment(weigh_in.started_at), " / ")),
            (self.say(words.WEIGHED_BY), plain(weigh_in.by)),
            (self.say(words.TARGET), "" if target is None else show_both(target, Kind.MASS, units)),
            (self.say(words.TOLERANCE), f"± {show_percent(100 * self.facts.farm.tolerance_share)}"),
            (self.say(words.ROOM), ", ".join(room)),
        ]

    def results(self) -> Pairs:
        signed, level = self.facts.sign_off, self.facts.level
        spread = self.say(
            words.SPREAD_OF,
            bags=show_percent(100 * signed.bag_sd_share, 2),
            fills=show_percent(100 * signed.fill_sd_share, 2),
        )
        told = [
            (self.say(words.LEVEL_SCOOPFUL), self._mean()),
            (self.say(words.INTERVAL_95), self._from_to(signed.level_low_g, signed.level_high_g)),
            (self.say(words.BULK_DENSITY), self._density()),
            (self.say(words.INTERVAL_95), self._density_interval()),
            (self.say(words.COUNTED), self.say(words.COUNTED_OF, fills=signed.fills, bags=signed.bags)),
            (self.say(words.FREEDOM), freedom(signed.degrees_of_freedom)),
            (self.say(words.SETTLING), self._settling()),
            (self.say(words.SPREADS), spread),
        ]
        if level is not None:
            told.append((self.say(words.ONE_MORE), self._from_to(level.next_low_g, level.next_high_g)))
            told.append((self.say(words.RULE), self.say(RULES[level.rule])))
        return told

    def _mean(self) -> str:
        signed = self.facts.sign_off
        return self.estimate(signed.level_mean_g, (signed.level_high_g - signed.level_low_g) / 2)

    def estimate(self, mass_g: float, half_g: float) -> str:
        """A weight with half its interval, in grams too."""
        grams = show_with_uncertainty(mass_g, half_g, "g")
        told = show_estimate(mass_g, half_g, Kind.MASS, self.facts.units)
        return grams if told == grams else f"{told} ({grams})"

    def length(self, mm: float) -> str:
        """A place on the scoop's wall: by the farm's ruler, and to a tenth of a millimetre."""
        metric = f"{mm:.1f} mm"
        farm = self.said.tongues[0].length(mm, UnitSystem.FARM)
        return f"{farm} ({metric})" if self.facts.units is UnitSystem.FARM else f"{metric} ({farm})"

    def _settling(self) -> str:
        signed = self.facts.sign_off
        return show_with_uncertainty(signed.settling_factor, COVERAGE_FACTOR * signed.settling_u)

    def _from_to(self, low_g: float, high_g: float) -> str:
        """Both ends to the decimal places that half of what lies between them bears, as the mean beside them."""
        half_g, low_g = (high_g - low_g) / 2, max(0.0, low_g)  # no weight is below nought
        low, high = (show_with_uncertainty(end_g, half_g).partition(" ± ")[0] for end_g in (low_g, high_g))
        grams = f"{self.say(words.FROM_TO, low=low, high=high)} g"
        if self.facts.units is UnitSystem.METRIC:
            return grams
        estimates = (show_estimate(end_g, half_g, Kind.MASS, self.facts.units) for end_g in (low_g, high_g))
        (low, _, _), (high, _, _) = (told.partition(" ± ") for told in estimates)
        return f"{self.say(words.FROM_TO, low=f'{low} oz', high=f'{high} oz')} ({grams})"

    def _density(self) -> str:
        signed = self.facts.sign_off
        return show_density(signed.density_g_per_ml, self.facts.units, signed.density_half_width_g_per_ml)

    def _density_interval(self) -> str:
        signed = self.facts.sign_off
        ends = signed.density_low_g_per_ml, signed.density_high_g_per_ml
        low, high = (f"{end:.4f}" for end in ends)
        metric = f"{self.say(words.FROM_TO, low=low, high=high)} g/mL"
        if self.facts.units is UnitSystem.METRIC:
            return metric
        unit, per = density_unit(self.facts.units)
        low, high = (f"{end * per:.2f}" for end in ends)
        return f"{self.say(words.FROM_TO, low=low, high=high)} {unit} ({metric})"

    def verdicts(self) -> Pairs:
        new = (self.say(words.NEW_LINE), self.said.joined(self._new_line, " / "))
        at_mm = self.facts.weigh_in.old_line_mm
        if at_mm is None:  # the scoop's first lot
            return [new]
        return [new, (self.say(words.OLD_LINE), self.said.joined(partial(self._old_line, at_mm), " / "))]

    def _new_line(self, t: Tongue) -> str:
        verdict = self.facts.sign_off.verdict
        told = _verdict(verdict, t)
        return t(words.SIGNED_ALTHOUGH).format(verdict=told) if verdict in _OPEN else told

    def _old_line(self, at_mm: float, t: Tongue) -> str:
        told, where = _verdict(self.facts.sign_off.old_line_verdict, t), show_both(at_mm, Kind.LENGTH, self.facts.units)
        return t(words.OLD_LINE_AT).format(verdict=told, length=t.ruler(where))


def _verdict(value: str, t: Tongue) -> str:
    return t(_VERDICTS.get(value, words.NOT_CHECKED))


def _both_typed(typed: str, mass_g: float) -> str:
    """As typed, with the grams where it was another unit: to four digits, for no kitchen scale tells more."""
    if typed and _in_grams(typed):
        return plain(typed)
    grams = show_mass(mass_g, UnitSystem.METRIC) if mass_g >= _KG_G else f"{mass_g:.4g} g"
    return f"{plain(typed)} ({grams})" if typed else grams


def _in_grams(typed: str) -> bool:
    """Whether grams or kilograms were typed, in whatever words."""
    try:
        found = read(typed, Kind.MASS, UnitSystem.FARM)
    except NotUnderstood:
        return False
    return found.unit in ("g", "kg")


def _sizes_mm(shape: Shape) -> tuple[float, ...]:
    """Its inner dimensions, in the order in which they are told."""
    match shape:
        case Cylinder():
            return shape.diameter_mm, shape.height_mm
        case TaperedCup():
            return shape.rim_diameter_mm, shape.floor_diameter_mm, shape.height_mm
        case Box():
            return shape.length_mm, shape.width_mm, shape.height_mm
        case Poured():
            return (shape.heights_mm[-1],)


def inside(shape: Shape, t: Tongue, units: UnitSystem) -> str:
    """A scoop's shape and inner dimensions."""
    sizes = [t.ruler(edit_text(size_mm, Kind.LENGTH, units)) for size_mm in _sizes_mm(shape)]
    match shape:
        case Cylinder():
            return t(words.CYLINDER).format(diameter=sizes[0], height=sizes[1])
        case TaperedCup():
            return t(words.TAPERED).format(rim=sizes[0], floor=sizes[1], height=sizes[2])
        case Box():
            return t(words.BOX).format(length=sizes[0], width=sizes[1], height=sizes[2])
        case Poured():
            return t(words.POURED).format(count=len(shape.heights_mm), height=sizes[0])


def decision(t: Tongue) -> str:
    """The rule by which lines are judged, with the levels that judged them."""
    judged, tail = show_percent(100 * JUDGED_LEVEL, 0), show_percent(50 * (1 - JUDGED_LEVEL))
    return t(words.DECISION).format(judged=judged, tail=tail, old=show_percent(100 * VERDICT_LEVEL))


def freedom(value: float) -> str:
    return "∞" if math.isinf(value) else f"{value:.1f}"
