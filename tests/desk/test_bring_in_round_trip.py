"""What this program saves for spreadsheets comes back in: the same lots and fills, whatever their texts."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from speaking import speaking

from calibrator.desk.bring_in.choices import Ask
from calibrator.desk.bring_in.judging import _SUMS, Judged, _told, lot_key
from calibrator.desk.bring_in.meanings import plain
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.season_tables import season_sheets
from calibrator.desk.table_headings import sheets_in_words
from calibrator.model import (
    Composition,
    Cylinder,
    Farm,
    Fill,
    FillWay,
    Lot,
    PackageKind,
    Scale,
    Scoop,
    WeighIn,
    new_id,
)
from calibrator.model.underway import unwatched
from calibrator.records import Records, engine
from calibrator.records.season import every_fill
from calibrator.records.table_file import CsvStyle, write_csv
from calibrator.records.workbook import write_workbook

TODAY = date(2026, 3, 2)
FARM = Farm(id="farm", name="Willow Bend")
SCALE = Scale(
    id="scale", farm_id="farm", name="bench", resolution_g=1.0, resolution_typed="1 g", capacity_g=5000.0,
    capacity_typed="5 kg",
)  # fmt: skip
CUP = Cylinder(diameter_mm=96, height_mm=92)
SCOOPS = [Scoop(id=n, farm_id="farm", name=f"{n} cup", shape=CUP, volume_ml=666.0, volume_u_ml=3.0) for n in "ab"]


def a_text(most: int) -> st.SearchStrategy[str]:
    """A text of one line, as the program's own fields keep it; what spreadsheets would run is likely in it."""
    signs = st.sampled_from("=+-@'\"") | st.characters(exclude_categories=("C", "Z"))
    return st.lists(st.text(signs, min_size=1, max_size=5), max_size=2).map(" ".join).filter(lambda t: len(t) <= most)


def known(of: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    return st.none() | of


def percent(least: float, most: float) -> st.SearchStrategy[float]:
    """A share as finely as a label could tell it: finer ones come back rounded, on one side or the other."""
    return st.integers(round(least * 1000), round(most * 1000)).map(lambda n: n / 1000)


def in_course(lot: Lot) -> Lot:
    """No lot arrives before it is made, nor is used up before it is fed."""
    if lot.made_on and lot.arrived_on and lot.made_on > lot.arrived_on:
        lot = replace(lot, made_on=None)
    ended = lot.fed_from and lot.finished_on and lot.finished_on < lot.fed_from
    return replace(lot, finished_on=None) if ended else lot


DAYS = st.dates(date(2001, 1, 1), date(2012, 12, 1))
DAYS_IN_USE = st.dates(date(2013, 1, 1), date(2026, 1, 1))
GRAMS = st.integers(1000, 900_000).map(lambda n: n / 1000)
LOTS = st.builds(
    Lot,
    id=st.uuids().map(lambda one: one.hex),
    farm_id=st.just("farm"),
    lot_number=a_text(20).filter(lambda t: _told(t) and plain(t) not in _SUMS),
    product=a_text(30),
    made_on=known(DAYS),
    arrived_on=known(DAYS),
    fed_from=known(DAYS_IN_USE),
    finished_on=known(DAYS_IN_USE),
    package=st.sampled_from(PackageKind),
    package_count=known(st.integers(1, 900)),
    package_mass_g=known(GRAMS),
    composition=st.builds(
        Composition, protein_pct=known(percent(1, 40)), fat_pct=known(percent(1, 30)),
        ash_pct=known(percent(0.01, 9)), moisture_pct=known(percent(0.01, 9)),
    ),
    medicated=st.booleans(),
    note=a_text(20),
    supplier=a_text(20),
    plant_code=a_text(8),
    agglomerated=known(st.booleans()),
    price_per_package=known(st.integers(1, 99_999).map(lambda cents: cents / 100)),
).map(in_course)  # fmt: skip
FILLS = st.builds(
    Fill,
    id=st.uuids().map(lambda one: one.hex),
    weigh_in_id=st.just(""),
    way=st.sampled_from(FillWay),
    bag=st.integers(1, 99),
    mass_g=st.integers(250_000, 400_000).map(lambda mg: mg / 1000),
    typed=st.sampled_from(("291 g", "10.2 oz", "1 lb")),
    by=a_text(12),
    at=st.datetimes(datetime(2013, 1, 2), datetime(2026, 3, 1), timezones=st.just(UTC)),
    line_mm=known(st.integers(1, 900).map(lambda n: n / 10)),
    struck_reason=known(a_text(20).filter(bool)),
)
SEASONS = st.lists(LOTS, max_size=4, unique_by=lambda lot: lot_key(lot.lot_number)).flatmap(
    lambda lots: st.tuples(
        st.just(lots),
        st.lists(
            st.tuples(st.sampled_from(lots), st.sampled_from(SCOOPS), st.lists(FILLS, min_size=1, max_size=4)),
            max_size=3,
        )
        if lots
        else st.just([]),
    )
)


class Side:
    """A farm of its own with a scale and two scoops; the records are made once, which is what takes time."""

    def __init__(self, records: Records) -> None:
        self.records, self.id = records, new_id()
        self.farm = records.keep(replace(FARM, id=self.id))
        self.scale = records.keep(replace(SCALE, id=new_id(), farm_id=self.id))
        scoops = [records.keep(replace(one, id=new_id(), farm_id=self.id)) for one in SCOOPS]
        self.scoops = {one.name: one.id for one in scoops}

    def keep(self, season: Any) -> None:
        lots, weighed = season
        ids = {lot.id: new_id() for lot in lots}
        for lot in lots:
            self.records.keep(replace(lot, id=ids[lot.id], farm_id=self.id))
        for lot, scoop, fills in weighed:
            begun = WeighIn(
                id=new_id(), farm_id=self.id, lot_id=ids[lot.id], started_at=fills[0].at,
                scoop_id=self.scoops[scoop.name], scale_id=self.scale.id,
            )  # fmt: skip
            self.records.keep(begun)
            for fill in fills:
                kept = self.records.add_fill(replace(fill, id=new_id(), weigh_in_id=begun.id, struck_reason=None))
                if fill.struck_reason:
                    self.records.strike(kept.id, fill.struck_reason, "AB")

    def bring(self, file: Path) -> Judged:
        work = Bringing(self.records, self.farm, file, "AB")
        work.look(unwatched)
        for question in work.open_questions():  # of 1.234 alone nobody can tell whether thousands are meant
            assert question.ask is Ask.DECIMAL
            work.change(decimals={**work.choices.decimals, question.column: "," if "comma" in file.name else "."})
        judged = work.judge(TODAY, unwatched)
        assert judged.faults == ()
        if judged.adds:
            work.add(unwatched)
        return judged

    def told_lots(self) -> list[Any]:
        found = []
        for lot in self.records.every(Lot, self.id):
            parts = lot.composition
            figures = [lot.package_mass_g, parts.protein_pct, parts.fat_pct, parts.ash_pct, parts.moisture_pct]
            plain = replace(
                lot, id="", farm_id="", revision="", package_mass_typed="", price_typed="", package_mass_g=None,
                composition=Composition(),
            )  # fmt: skip
            found.append((plain, [round(figure or 0, 6) for figure in figures]))
        return sorted(found, key=lambda one: str(one[0].lot_number))

    def told_fills(self) -> list[Any]:
        of = {one.id: one for one in self.records.every(WeighIn, self.id)}
        numbers = {lot.id: lot.lot_number for lot in self.records.every(Lot, self.id)}
        names = {id: name for name, id in self.scoops.items()}
        return sorted(
            (
                numbers[of[fill.weigh_in_id].lot_id], names[of[fill.weigh_in_id].scoop_id or ""], fill.way, fill.bag,
                round(fill.mass_g, 3), fill.typed, fill.by, fill.at.replace(second=0, microsecond=0), fill.scoopfuls,
                round(fill.line_mm or 0, 3), fill.struck_reason or "",
            )
            for fill in every_fill(self.records, self.id)
        )  # fmt: skip


def as_csv(sheet: Any, file: Path) -> Path:
    write_csv(sheet.table, file.with_suffix(".csv"))
    return file.with_suffix(".csv")


def as_comma_csv(sheet: Any, file: Path) -> Path:
    file = file.with_name(f"{file.name}-comma.csv")
    write_csv(sheet.table, file, CsvStyle(decimal_comma=True, mark=False))
    return file


def as_book(sheet: Any, file: Path) -> Path:
    write_workbook([sheet], file.with_suffix(".xlsx"))
    return file.with_suffix(".xlsx")


@pytest.fixture(scope="module")
def store(new_store: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Records]:
    file = shutil.copy(new_store, tmp_path_factory.mktemp("trip") / "trip.sqlite")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(engine, "_SYNC", "OFF")  # waiting for the disk shows nothing here
        with Records.open(str(file)) as records:
            yield records


@pytest.mark.parametrize(
    ("write", "language"),
    [(as_csv, "en"), (as_comma_csv, "en"), (as_book, "en"), (as_comma_csv, "es"), (as_book, "es")],
)
@settings(max_examples=8, deadline=None, phases=[Phase.explicit, Phase.generate])
@given(season=SEASONS)
def test_lots_and_fills_saved_for_spreadsheets_come_back(
    store: Records, write: Callable[[Any, Path], Path], language: str, season: Any
) -> None:
    one, other = Side(store), Side(store)
    one.keep(season)
    with speaking(language):
        said = season_sheets(store, one.farm)
        sheets = dict(zip([sheet.name for sheet in said], sheets_in_words(said), strict=True))
    told = [name for name in ("lots", "fills") if sheets[name].table.rows]
    with tempfile.TemporaryDirectory() as folder:
        files = {name: write(sheets[name], Path(folder) / name) for name in told}
        for file in files.values():
            other.bring(file)
        assert other.told_lots() == one.told_lots()
        assert other.told_fills() == one.told_fills()
        for name, file in files.items():  # and a second time there is nothing new in them
            again = other.bring(file)
            assert not again.adds
            assert len(again.fills_there) == (len(sheets[name].table.rows) if name == "fills" else 0)
