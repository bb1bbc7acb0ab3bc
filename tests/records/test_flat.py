"""Everything as a workbook: every entry is there, as what it is, and no text runs as a formula."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import invented
from invented import World
from openpyxl import load_workbook

from calibrator.records import Records
from calibrator.records.flat import everything
from calibrator.records.layout import metadata
from calibrator.records.workbook import write_workbook


def test_every_entry_is_in_the_workbook(records: Records, tmp_path: Path) -> None:
    world = World(records)
    told = world.signed()
    records.strike_spot(records.add_spot_fill(invented.spot(told)).id, "spilled", "AB")
    lot = records.keep(replace(world.lot, note="=1+1", medicated=True), by="CD", why="a note")
    world.lot = lot
    invented.checks_of_the_mix(records, world)
    invented.feeding(records, world)
    file = tmp_path / "all.xlsx"
    write_workbook(everything(records), file)
    book = load_workbook(file)
    assert set(book.sheetnames) == set(metadata.tables) - {"changes", "things"}
    rows = [
        dict(zip((c.value for c in book["lots"][1]), row, strict=True)) for row in book["lots"].iter_rows(min_row=2)
    ]
    assert [row["note"].value for row in rows[:2]] == [None, "=1+1"]
    assert rows[1]["note"].data_type == "s"
    assert (rows[1]["kept_by"].value, rows[1]["kept_why"].value, rows[1]["medicated"].value) == ("CD", "a note", "yes")
    assert (rows[1]["id"].value, rows[1]["revision"].value) == (lot.id, lot.revision)
    fills = list(book["fills"].iter_rows(min_row=2, values_only=True))
    headings = [cell.value for cell in book["fills"][1]]
    assert [row[headings.index("mass_g")] for row in fills] == [289.0, 291.0]
    assert book["spot_strikes"].max_row == book["fingerprints"].max_row == 2
    entries = sum(book[name].max_row - 1 for name in book.sheetnames if name not in ("marks", "fingerprints"))
    assert entries == records.version()
