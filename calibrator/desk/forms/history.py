"""Who changed what and when: the tellings of one thing, newest first."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import fields, is_dataclass
from datetime import date
from enum import StrEnum
from typing import Any

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.parts import button, clear, label
from calibrator.desk.speech import day_text, decimal_comma, figure_text
from calibrator.desk.trust_words import moment
from calibrator.desk.words import step_words, way_words
from calibrator.model import (
    FillWay,
    Instrument,
    Lot,
    PackageKind,
    Paper,
    Plan,
    Scale,
    Scoop,
    ScoopMarked,
    Step,
    UnitSystem,
    Vessel,
)
from calibrator.records import Records
from calibrator.records.bringing import BROUGHT_IN
from calibrator.records.importing import IMPORTED
from calibrator.units import show_length, show_mass, show_scoop_volume, show_typed_percent, show_volume

SHOWN = 6
ENDINGS = ("withdrawn_reason", "abandoned", "closed")
NAMELESS: Mapping[str, str] = {}
translate = QCoreApplication.translate


class HistoryList(QWidget):
    """A line for each telling, what it changed from what to what; nothing is shown for no thing."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._of: tuple[type[Any], str] | None = None
        self._all = False
        self._lines = QVBoxLayout(self)
        self._lines.setContentsMargins(0, 0, 0, 0)
        self._lines.setSpacing(2)

    def show_of(self, kind: type[Any], thing_id: str) -> None:
        """Show the tellings of one thing, the newest ones first."""
        if self._of != (kind, thing_id):
            self._of, self._all = (kind, thing_id), False
        clear(self._lines)
        changes = self.desk.records.history(kind, thing_id) if thing_id else []
        self.setVisible(bool(changes))
        if not changes:
            return
        self._lines.addWidget(label(self.tr("What was kept"), "heading"))
        earlier = [None, *changes[:-1]]
        names = _names(self.desk.records)
        told = [(change, before.noun if before else None) for change, before in zip(changes, earlier, strict=True)]
        for change, before in reversed(told if self._all else told[-SHOWN:]):
            what = changed_words(before, change.noun, self.desk.system, names)
            self._lines.addWidget(label(self._line(change.at, change.by, change.why, what), "quiet"))
        if len(told) > SHOWN and not self._all:
            self._lines.addWidget(button(self.tr("Show all that was kept"), self._show_all, "link"))

    def _show_all(self) -> None:
        self._all = True
        if self._of:
            self.show_of(*self._of)

    def _line(self, at: Any, by: str, why: str, what: str) -> str:
        day = moment(at)
        who = self.tr("{day}, {who}").format(day=day, who=by) if by else day
        told = self.tr("{when}: {what}").format(when=who, what=what)
        return self.tr("{told} ({why})").format(told=told, why=why_words(why)) if why else told


def why_words(why: str) -> str:
    """A reason as it was given; that of what came out of a file in the language of the screen."""
    if why.startswith(IMPORTED):
        return translate("History", "came with everything in {file}").format(file=why.removeprefix(IMPORTED))
    if not why.startswith(BROUGHT_IN):
        return _own_reasons().get(why, why)
    return translate("History", "brought in from {file}").format(file=why.removeprefix(BROUGHT_IN))


def _own_reasons() -> dict[str, str]:
    """What the program itself gives as a reason, in the language of the screen."""
    return {
        "change-over": translate("History", "change-over"),
        "bags counted": translate("History", "bags counted"),
        "today's count": translate("History", "today's count"),
        "cold weather": translate("History", "cold weather"),
        "note": translate("History", "note"),
        "water weighed": translate("History", "water weighed"),
    }


def changed_words(before: Any, after: Any, system: UnitSystem, names: Mapping[str, str] = NAMELESS) -> str:
    """What a telling changed: each entry by its caption, from what to what.

    `names` tells what the things are called that an entry names by their id.
    """
    if before is None:
        return translate("History", "entered")
    told = dict.fromkeys(_changes(before, after, system, names))
    return "; ".join(told) if told else "–"


def _changes(before: Any, after: Any, system: UnitSystem, called: Mapping[str, str]) -> Iterator[str]:
    names = [name for name in _differing(before, after) if name != "revision"]
    for name in names:
        old, new = (getattr(noun, name) for noun in (before, after))
        if _told_elsewhere(name, names):
            continue
        if name == "scoops_marked":
            yield from _marked(old or (), new or (), called)
            continue
        if name in ("fed_from", "fed_from_feeding", "waits"):
            yield from _change_over_words(name, new, names)
            continue
        if name in ENDINGS:
            yield _ending_words(name, new)
            continue
        if is_dataclass(old) and type(old) is type(new) and _told_apart(old):
            yield from _changes(old, new, system, called)
            continue
        caption = _captions().get(name, translate("History", "other entries"))
        words = [
            _named(value, called) if name.endswith("_id") else value_words(name, value, system) for value in (old, new)
        ]
        if None in words or words[0] == words[1]:
            yield translate("History", "changed {what}").format(what=caption)
        else:
            text = translate("History", "{what} {old} → {new}")
            yield text.format(what=caption, old=words[0], new=words[1])


def _change_over_words(name: str, new: date | int | bool | None, names: Sequence[str]) -> Iterator[str]:
    """A lot's change-over as it was done: from when it is fed, or that it waits."""
    if name == "fed_from" and isinstance(new, date):
        yield translate("History", "fed from {day} on").format(day=day_text(new))
    elif name == "fed_from":
        yield translate("History", "its change-over was taken back")
    elif name == "fed_from_feeding" and "fed_from" not in names and isinstance(new, int) and new < 0:
        yield translate("History", "another lot took over on that day")
    elif name == "fed_from_feeding" and "fed_from" not in names:
        yield translate("History", "fed from another feeding of that day on")
    elif name == "waits" and new:
        yield translate("History", "waits for its change-over")
    elif name == "waits" and "fed_from" not in names:
        yield translate("History", "waits no longer for its change-over")


def _marked(old: Sequence[ScoopMarked], new: Sequence[ScoopMarked], called: Mapping[str, str]) -> Iterator[str]:
    """On which scoops the lot's line came, and off which."""
    on, off = translate("History", "its line is on {scoop}"), translate("History", "its line is no longer on {scoop}")
    there = {told.scoop_id for told in new}
    told = [on.format(scoop=called.get(each.scoop_id, "")) for each in new if each not in old]
    told += [off.format(scoop=called.get(each.scoop_id, "")) for each in old if each.scoop_id not in there]
    yield from told or [translate("History", "its line is still to come on the scoop")]


def _ending_words(name: str, now: bool | str) -> str:
    """What became of a weigh-in, a check or a trial: said as it was done, not as an entry from no to yes."""
    if name == "withdrawn_reason":
        counts_no_more = translate("History", "counts no more, because: {reason}")
        return counts_no_more.format(reason=now) if now else translate("History", "counts again")
    if name == "abandoned":
        return translate("History", "given up") if now else translate("History", "taken up again")
    return translate("History", "closed") if now else translate("History", "opened again")


def _names(records: Records) -> dict[str, str]:
    """What the things are called that others name by their id."""
    named = {scoop.id: scoop.name for scoop in records.every(Scoop)}
    named |= {vessel.id: vessel.name for vessel in records.every(Vessel)}
    named |= {scale.id: scale.name for scale in records.every(Scale)}
    named |= {plan.id: plan.name for plan in records.every(Plan)}
    named |= {instrument.id: instrument.name for instrument in records.every(Instrument)}
    return named | {lot.id: lot.lot_number for lot in records.every(Lot)}


def _named(thing_id: str | None, called: Mapping[str, str]) -> str | None:
    """What a thing is called; None for one that nobody knows any more: its id says nothing to a person."""
    if not thing_id:
        return "–"
    return f"“{called[thing_id]}”" if thing_id in called else None


def _told_elsewhere(name: str, names: list[str]) -> bool:
    """Whether another entry says the same better: the text as it was typed, the volume itself."""
    if name.endswith("_typed"):
        return False
    if name == "packages_left":  # nobody counted: it was worked out as the lot was fed again
        return "fed_from" in names or "fed_from_feeding" in names
    better = {"price_per_package": "price_typed", "volume_u_ml": "volume_ml", "target_mass_g": "target_typed"}
    return better.get(name, f"{name.rsplit('_', 1)[0]}_typed") in names


def _told_apart(value: Any) -> bool:
    return all(field.name in _captions() for field in fields(value))


def value_words(name: str, value: Any, system: UnitSystem) -> str | None:
    """One entry as a person reads it; None for one that is not told in a word, such as a shape."""
    if value is None or value == "":
        return "–"
    if isinstance(value, bool):
        return translate("History", "yes") if value else translate("History", "no")
    if isinstance(value, StrEnum):
        return _choices().get(value)
    if isinstance(value, str):
        return f"“{value}”"
    if isinstance(value, date):
        return day_text(value)
    return _figure(name, value, system) if isinstance(value, int | float) else None


def _figure(name: str, value: float, system: UnitSystem) -> str:
    comma = decimal_comma()
    kinds: dict[str, Callable[[], str]] = {
        "g": lambda: show_mass(value, system, decimal_comma=comma),
        "ml": lambda: show_volume(value, system, decimal_comma=comma),
        "mm": lambda: show_length(value, system, decimal_comma=comma),
        "pct": lambda: show_typed_percent(value, decimal_comma=comma),
        "share": lambda: shown.share(value),
    }
    if name == "volume_ml":
        return show_scoop_volume(value, system, decimal_comma=comma)
    return kinds.get(name.rsplit("_", 1)[-1], lambda: figure_text(f"{value:g}"))()


def _choices() -> dict[StrEnum, str]:
    return {
        UnitSystem.FARM: translate("History", "farm units"),
        UnitSystem.METRIC: translate("History", "metric"),
        Paper.LETTER: translate("History", "Letter"),
        Paper.A4: "A4",
        PackageKind.BAG: translate("History", "bags"),
        PackageKind.TOTE: translate("History", "totes"),
        **{step: step_words(step) for step in Step},
        **{way: way_words(way) for way in FillWay},
    }


def _differing(before: Any, after: Any) -> list[str]:
    if not is_dataclass(before):
        return []
    return [f.name for f in fields(before) if getattr(before, f.name) != getattr(after, f.name)]


def _captions() -> dict[str, str]:
    package = translate("History", "bags and their weight")
    volume = translate("History", "volume")
    return {
        "name": translate("History", "name"),
        "units": translate("History", "units"),
        "paper": translate("History", "paper"),
        "tolerance_share": translate("History", "tolerance"),
        "resolution_g": translate("History", "display step"),
        "resolution_typed": translate("History", "display step"),
        "capacity_g": translate("History", "capacity"),
        "capacity_typed": translate("History", "capacity"),
        "shape": translate("History", "shape and dimensions"),
        "volume_ml": volume,
        "volume_u_ml": volume,
        "volume_from_water": translate("History", "volume by water"),
        "rim_volume_ml": volume,
        "rim_volume_typed": volume,
        "usable_share": translate("History", "how far it may be filled"),
        "retired_on": translate("History", "in use or retired"),
        "lot_number": translate("History", "lot number"),
        "product": translate("History", "product"),
        "made_on": translate("History", "made on"),
        "arrived_on": translate("History", "arrived on"),
        "package": package,
        "package_count": package,
        "package_mass_g": package,
        "package_mass_typed": package,
        "composition": translate("History", "label composition"),
        "medicated": translate("History", "medicated or not"),
        "note": translate("History", "note"),
        "finished_on": translate("History", "finished or not"),
        "packages_left": translate("History", "bags counted"),
        "hot_water": translate("History", "hot water"),
        "supplier": translate("History", "supplier"),
        "plant_code": translate("History", "plant code"),
        "agglomerated": translate("History", "agglomerated or not"),
        "price_per_package": translate("History", "price"),
        "price_typed": translate("History", "price"),
        "currency": translate("History", "currency"),
        "asks_for_charts": translate("History", "wall charts asked for or not"),
        "told_by": translate("History", "what to know it by"),
        "replaces_id": translate("History", "which scoop it replaces"),
        "retired_why": translate("History", "in use or retired"),
        "protein_pct": translate("History", "protein"),
        "fat_pct": translate("History", "fat"),
        "fibre_pct": translate("History", "fiber"),
        "ash_pct": translate("History", "ash"),
        "moisture_pct": translate("History", "moisture"),
        "counts": translate("History", "counts of calves"),
        "groups": translate("History", "groups"),
        "vessel_id": translate("History", "vessel"),
        "scoopfuls": translate("History", "how scoopfuls are counted"),
        "warmth": translate("History", "warmth"),
        "cold": translate("History", "cold weather"),
        "cooling": translate("History", "how it cools"),
        **_thing_captions(),
        **_work_captions(),
    }


def _thing_captions() -> dict[str, str]:
    """Those of farms, plans and instruments."""
    counts, division = translate("History", "counts of calves"), translate("History", "division of its scale")
    reference = translate("History", "temperature it is made for")
    return {
        "water_step_qt": translate("History", "step of the water, qt"),
        "water_step_l": translate("History", "step of the water, L"),
        "allowance_share": translate("History", "allowance for hoses and pails"),
        "water_temperature_c": translate("History", "temperature of the water, °C"),
        "count_from": counts,
        "count_to": counts,
        "count_step": counts,
        "kind": translate("History", "kind of instrument"),
        "division": division,
        "division_typed": division,
        "compensated": translate("History", "corrects for temperature or not"),
        "reference_c": reference,
        "reference_typed": reference,
        "volume_typed": translate("History", "volume"),
    }


def _work_captions() -> dict[str, str]:
    """Those of weigh-ins, checks and trials."""
    target = translate("History", "target weight")
    check, shown = translate("History", "check weight"), translate("History", "check weight as shown")
    found, drawn = translate("History", "line found"), translate("History", "line drawn")
    return {
        "step": translate("History", "step"),
        "by": translate("History", "by whom"),
        "scoop_id": translate("History", "scoop"),
        "scale_id": translate("History", "scale"),
        "plan_id": translate("History", "plan"),
        "target_mass_g": target,
        "target_typed": target,
        "room_humidity_pct": translate("History", "humidity of the room"),
        "room_temperature_c": translate("History", "temperature of the room, °C"),
        "scale_zeroed": translate("History", "scale zeroed"),
        "check_nominal_g": check,
        "check_nominal_typed": check,
        "check_reading_g": shown,
        "check_reading_typed": shown,
        "old_line_mm": found,
        "old_line_typed": found,
        "drawn_line_mm": drawn,
        "drawn_line_typed": drawn,
        "line_mm": translate("History", "line filled to"),
        "line_typed": translate("History", "line filled to"),
    }
