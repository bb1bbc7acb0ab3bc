"""One entry of a lot's history in words: what was kept, and what it replaces."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.as_typed import as_typed, understood
from calibrator.desk.counted import counted
from calibrator.desk.forms.history import changed_words, why_words
from calibrator.desk.mix_words import kept_words
from calibrator.desk.trust_words import moment, watched_words
from calibrator.desk.words import mark_words, target_words, way_words
from calibrator.model import (
    BagCount,
    Ending,
    FeederTrial,
    Fill,
    Mark,
    MixCheck,
    Printed,
    PrintKind,
    ReferenceMix,
    SheetEnding,
    SignOff,
    SpotFill,
    TrialFill,
    UnitSystem,
    WeighIn,
)
from calibrator.records.lot_history import Happening, Topic
from calibrator.values import dataclass

translate = QCoreApplication.translate


@dataclass(frozen=True)
class Told:
    """An entry as it is read; `replaces` is blank where nothing was replaced."""

    what: str
    replaces: str = ""

    @property
    def line(self) -> str:
        """Both in one."""
        if not self.replaces:
            return self.what
        text = translate("LotHistory", "{what}; replaces {before}")
        return text.format(what=self.what, before=self.replaces)


@dataclass(frozen=True)
class Speaker:
    """Knows the farm's units and what its scoops, scales, plans and vessels are called, by their ids."""

    system: UnitSystem
    names: Mapping[str, str]

    def told(self, one: Happening) -> Told:
        """What an entry says."""
        by_kind: dict[type, Callable[[Happening], Told]] = {
            Fill: self._weighed, SpotFill: self._weighed, TrialFill: self._weighed, SignOff: self._signed,
            Mark: self._line, Printed: self._sheet, SheetEnding: self._ending,
        }  # fmt: skip
        told = by_kind.get(type(one.now), self._telling)(one)
        if not one.why or one.why in told.what:
            return told
        return Told(f"{told.what} ({why_words(one.why)})", told.replaces)

    def _telling(self, one: Happening) -> Told:
        if one.before is not None:
            return Told(changed_words(one.before, one.now, self.system, self.names))
        return Told(self._new(one.now))

    def _new(self, noun: Any) -> str:
        match noun:
            case WeighIn():
                return translate("LotHistory", "weigh-in begun")
            case MixCheck():
                return self._check(noun)
            case ReferenceMix():
                text = translate(
                    "LotHistory", "mix weighed for the Brix calibration: {powder} in {water}, read {readings}"
                )
                weights = {"powder": noun.powder_typed, "water": noun.water_typed}
                return text.format(**weights, readings=noun.readings_typed)
            case BagCount():
                text = translate("LotHistory", "{bags} of {mass} emptied over {feedings}")
                bags = translate("LotHistory", "bags: {count}").format(count=noun.bags_typed)
                return text.format(bags=bags, mass=noun.bag_mass_typed, feedings=counted.feedings(noun.feedings))
            case FeederTrial():
                text = translate("LotHistory", "trial of feeders begun: {scoop}, {way}")
                return text.format(scoop=self._name(noun.scoop_id), way=way_words(noun.way))
        return translate("LotHistory", "lot {number} entered").format(number=noun.lot_number)

    def _check(self, check: MixCheck) -> str:
        readings = ", ".join(dict.fromkeys(reading.typed for reading in check.readings if reading.typed)) or "–"
        if check.solids_share is None:
            return translate("LotHistory", "mix read: {readings}").format(readings=readings)
        text = translate("LotHistory", "mix read: {readings}; solids {solids}, wanted {wanted}")
        told = text.format(
            readings=readings, solids=shown.share(check.solids_share), wanted=shown.share(check.target_share)
        )
        return f"{told}: {kept_words(check)}" if check.verdict else told

    def _weighed(self, one: Happening) -> Told:
        told = self._fill(one.now)
        if one.before is None:
            return Told(told)
        if one.now.struck_reason is None:
            text = translate("LotHistory", "counts again: {fill}")
            return Told(text.format(fill=told), translate("LotHistory", "the striking out"))
        text = translate("LotHistory", "struck out: {fill}, because: {reason}")
        return Told(text.format(fill=told, reason=one.now.struck_reason))

    def _fill(self, fill: Fill | SpotFill | TrialFill) -> str:
        found = understood(fill.typed, self.system)
        told = found is not None and not found.bare
        weight = fill.typed if told else as_typed(fill.mass_g, fill.typed, self.system)
        if isinstance(fill, TrialFill):
            return translate("LotHistory", "{person} filled {weight}").format(person=fill.person, weight=weight)
        way = way_words(fill.way)
        if isinstance(fill, SpotFill):
            return translate("LotHistory", "{weight}, {way}").format(weight=weight, way=way)
        if fill.scoopfuls > 1:
            weight = translate("LotHistory", "{weight} for {count} scoopfuls").format(
                weight=weight, count=fill.scoopfuls
            )
        text = translate("LotHistory", "{weight}, {way}, bag {bag}")
        return text.format(weight=weight, way=way, bag=fill.bag)

    def _signed(self, one: Happening) -> Told:
        signed = one.now
        text = translate("LotHistory", "{scoop}, struck level: {mass} ({low} to {high}), mean of {bags}, {fills}")
        masses = {"mass": signed.level_mean_g, "low": signed.level_low_g, "high": signed.level_high_g}
        told = text.format(
            scoop=self._name(signed.scoop_id), fills=counted.fills(signed.fills), bags=counted.bags(signed.bags),
            **{name: shown.mass(mass_g, self.system) for name, mass_g in masses.items()},
        )  # fmt: skip
        if one.fingerprint and one.fingerprint.taken_later:
            told = f"{told}. {watched_words(one.fingerprint.taken_later)}"
        if one.before is None:
            return Told(told)
        text = translate("LotHistory", "the sign-off of {when} by {who}")
        return Told(told, text.format(when=moment(one.before.at), who=one.before.by))

    def _line(self, one: Happening) -> Told:
        text = translate("LotHistory", "{scoop}: line for {target} at {line}")
        if one.now.struck_level:
            text = translate("LotHistory", "{scoop}: without a line, {target}")
        told = text.format(
            scoop=self._name(one.now.scoop_id),
            target=target_words(one.now, self.system),
            line=mark_words(one.now, self.system),
        )
        if one.before is None:
            return Told(told)
        line = mark_words(one.before, self.system)
        if one.before.lot_id == one.now.lot_id:
            return Told(told, translate("LotHistory", "the line at {line}").format(line=line))
        text = translate("LotHistory", "the line of another lot at {line}")
        return Told(told, text.format(line=line))

    def _sheet(self, one: Happening) -> Told:
        told = self._named(one.now)
        if one.now.replaces is None:
            return Told(told)
        return Told(told, translate("LotHistory", "number {number}").format(number=one.now.replaces))

    def _ending(self, one: Happening) -> Told:
        endings = {
            Ending.TAKEN_DOWN: translate("LotHistory", "{sheet}: taken down"),
            Ending.REPLACED: translate("LotHistory", "{sheet}: replaced by something else"),
            Ending.SPOILED: translate("LotHistory", "{sheet}: spoiled, it never got there"),
            Ending.STILL_UP: translate("LotHistory", "{sheet}: stays up"),
        }
        return Told(endings[one.now.ending].format(sheet=self._named(one.before)))

    def _named(self, sheet: Printed) -> str:
        kinds = {
            PrintKind.SCOOP_LABEL: translate("LotHistory", "label for {name}, print no. {number}"),
            PrintKind.WALL_CHART: translate("LotHistory", "wall chart for {name}, print no. {number}"),
            PrintKind.LOT_SHEET: translate("LotHistory", "lot sheet for {name}, print no. {number}"),
        }
        of = sheet.plan_id if sheet.kind is PrintKind.WALL_CHART else sheet.scoop_id
        return kinds[sheet.kind].format(number=sheet.number, name=self._name(of or ""))

    def _name(self, thing_id: str) -> str:
        return self.names.get(thing_id, "–")


def topic_words(topic: Topic) -> str:
    """What an entry is about."""
    return {
        Topic.LOT: translate("LotHistory", "Lot"),
        Topic.CHANGE_OVER: translate("LotHistory", "Change-over"),
        Topic.WEIGH_IN: translate("LotHistory", "Weigh-in"),
        Topic.FILL: translate("LotHistory", "Fill"),
        Topic.SIGN_OFF: translate("LotHistory", "Sign-off"),
        Topic.MARK: translate("LotHistory", "Line"),
        Topic.SPOT_FILL: translate("LotHistory", "Spot fill"),
        Topic.SHEET: translate("LotHistory", "Print"),
        Topic.MIX_CHECK: translate("LotHistory", "Check of the mix"),
        Topic.BAG_COUNT: translate("LotHistory", "Count of bags"),
        Topic.TRIAL: translate("LotHistory", "Trial of feeders"),
    }[topic]
