"""Headings of tables that a person opens in a spreadsheet, in the language of the screen. No window.

The files that hold all records keep their English names: other programs find them so. Whatever a heading is called,
*Bring in a spreadsheet* knows it in both languages; words in the cells are those of `cell_words`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk.refusals import written_out
from calibrator.marked import QT_TRANSLATE_NOOP
from calibrator.records.table_file import FlatTable
from calibrator.records.workbook import SheetOf

CONTEXT = "TableHeadings"
_WITH_UNIT = re.compile(r"(.+) \(([^()]*)\)")
_NEWEST = re.compile(r"newest (\d+)")


HEADINGS = frozenset(
    (
        QT_TRANSLATE_NOOP("TableHeadings", "agglomerated"),
        QT_TRANSLATE_NOOP("TableHeadings", "arrived on"),
        QT_TRANSLATE_NOOP("TableHeadings", "as typed"),
        QT_TRANSLATE_NOOP("TableHeadings", "ash"),
        QT_TRANSLATE_NOOP("TableHeadings", "assumed"),
        QT_TRANSLATE_NOOP("TableHeadings", "at"),
        QT_TRANSLATE_NOOP("TableHeadings", "at the calf as shown"),
        QT_TRANSLATE_NOOP("TableHeadings", "bag"),
        QT_TRANSLATE_NOOP("TableHeadings", "bags"),
        QT_TRANSLATE_NOOP("TableHeadings", "budgets"),
        QT_TRANSLATE_NOOP("TableHeadings", "bulk density"),
        QT_TRANSLATE_NOOP("TableHeadings", "by"),
        QT_TRANSLATE_NOOP("TableHeadings", "calves"),
        QT_TRANSLATE_NOOP("TableHeadings", "checked by"),
        QT_TRANSLATE_NOOP("TableHeadings", "contained in another row"),
        QT_TRANSLATE_NOOP("TableHeadings", "contribution (unit of the result)"),
        QT_TRANSLATE_NOOP("TableHeadings", "counted since"),
        QT_TRANSLATE_NOOP("TableHeadings", "counts as a batch"),
        QT_TRANSLATE_NOOP("TableHeadings", "degrees of freedom"),
        QT_TRANSLATE_NOOP("TableHeadings", "density 95 % high"),
        QT_TRANSLATE_NOOP("TableHeadings", "density 95 % low"),
        QT_TRANSLATE_NOOP("TableHeadings", "density standard uncertainty"),
        QT_TRANSLATE_NOOP("TableHeadings", "distribution"),
        QT_TRANSLATE_NOOP("TableHeadings", "fat"),
        QT_TRANSLATE_NOOP("TableHeadings", "fed from"),
        QT_TRANSLATE_NOOP("TableHeadings", "feedings"),
        QT_TRANSLATE_NOOP("TableHeadings", "fibre"),
        QT_TRANSLATE_NOOP("TableHeadings", "filled"),
        QT_TRANSLATE_NOOP("TableHeadings", "fills"),
        QT_TRANSLATE_NOOP("TableHeadings", "finished level"),
        QT_TRANSLATE_NOOP("TableHeadings", "finished on"),
        QT_TRANSLATE_NOOP("TableHeadings", "finished volume"),
        QT_TRANSLATE_NOOP("TableHeadings", "group"),
        QT_TRANSLATE_NOOP("TableHeadings", "its unit"),
        QT_TRANSLATE_NOOP("TableHeadings", "kind"),
        QT_TRANSLATE_NOOP("TableHeadings", "kind of package"),
        QT_TRANSLATE_NOOP("TableHeadings", "level 95 % high"),
        QT_TRANSLATE_NOOP("TableHeadings", "level 95 % low"),
        QT_TRANSLATE_NOOP("TableHeadings", "level scoopful"),
        QT_TRANSLATE_NOOP("TableHeadings", "level scoops before"),
        QT_TRANSLATE_NOOP("TableHeadings", "level standard uncertainty"),
        QT_TRANSLATE_NOOP("TableHeadings", "line above the floor"),
        QT_TRANSLATE_NOOP("TableHeadings", "line below the rim"),
        QT_TRANSLATE_NOOP("TableHeadings", "lines"),
        QT_TRANSLATE_NOOP("TableHeadings", "lot"),
        QT_TRANSLATE_NOOP("TableHeadings", "lots"),
        QT_TRANSLATE_NOOP("TableHeadings", "made on"),
        QT_TRANSLATE_NOOP("TableHeadings", "mean hydrometer"),
        QT_TRANSLATE_NOOP("TableHeadings", "mean mix in the jug"),
        QT_TRANSLATE_NOOP("TableHeadings", "mean reading"),
        QT_TRANSLATE_NOOP("TableHeadings", "mean reading (SG, sugar scale)"),
        QT_TRANSLATE_NOOP("TableHeadings", "medicated"),
        QT_TRANSLATE_NOOP("TableHeadings", "mix as shown"),
        QT_TRANSLATE_NOOP("TableHeadings", "mix checks"),
        QT_TRANSLATE_NOOP("TableHeadings", "mixed by"),
        QT_TRANSLATE_NOOP("TableHeadings", "moisture"),
        QT_TRANSLATE_NOOP("TableHeadings", "note"),
        QT_TRANSLATE_NOOP("TableHeadings", "note of the trial"),
        QT_TRANSLATE_NOOP("TableHeadings", "number"),
        QT_TRANSLATE_NOOP("TableHeadings", "of"),
        QT_TRANSLATE_NOOP("TableHeadings", "packages"),
        QT_TRANSLATE_NOOP("TableHeadings", "person"),
        QT_TRANSLATE_NOOP("TableHeadings", "plan"),
        QT_TRANSLATE_NOOP("TableHeadings", "plant code"),
        QT_TRANSLATE_NOOP("TableHeadings", "powder (g a feeding)"),
        QT_TRANSLATE_NOOP("TableHeadings", "powder high (g a feeding)"),
        QT_TRANSLATE_NOOP("TableHeadings", "powder low (g a feeding)"),
        QT_TRANSLATE_NOOP("TableHeadings", "powder wanted (g a feeding)"),
        QT_TRANSLATE_NOOP("TableHeadings", "price of a package"),
        QT_TRANSLATE_NOOP("TableHeadings", "product"),
        QT_TRANSLATE_NOOP("TableHeadings", "program version"),
        QT_TRANSLATE_NOOP("TableHeadings", "protein"),
        QT_TRANSLATE_NOOP("TableHeadings", "readings as typed"),
        QT_TRANSLATE_NOOP("TableHeadings", "refractometer"),
        QT_TRANSLATE_NOOP("TableHeadings", "replaces"),
        QT_TRANSLATE_NOOP("TableHeadings", "room humidity"),
        QT_TRANSLATE_NOOP("TableHeadings", "room temperature"),
        QT_TRANSLATE_NOOP("TableHeadings", "scale"),
        QT_TRANSLATE_NOOP("TableHeadings", "scoop"),
        QT_TRANSLATE_NOOP("TableHeadings", "scoopfuls"),
        QT_TRANSLATE_NOOP("TableHeadings", "sensitivity"),
        QT_TRANSLATE_NOOP("TableHeadings", "settling factor"),
        QT_TRANSLATE_NOOP("TableHeadings", "settling standard uncertainty"),
        QT_TRANSLATE_NOOP("TableHeadings", "share of variance"),
        QT_TRANSLATE_NOOP("TableHeadings", "sign-offs"),
        QT_TRANSLATE_NOOP("TableHeadings", "signed off at"),
        QT_TRANSLATE_NOOP("TableHeadings", "solids as mixed"),
        QT_TRANSLATE_NOOP("TableHeadings", "solids high"),
        QT_TRANSLATE_NOOP("TableHeadings", "solids low"),
        QT_TRANSLATE_NOOP("TableHeadings", "solids wanted"),
        QT_TRANSLATE_NOOP("TableHeadings", "source"),
        QT_TRANSLATE_NOOP("TableHeadings", "spot fills"),
        QT_TRANSLATE_NOOP("TableHeadings", "spread between bags"),
        QT_TRANSLATE_NOOP("TableHeadings", "spread between fills"),
        QT_TRANSLATE_NOOP("TableHeadings", "standard uncertainty"),
        QT_TRANSLATE_NOOP("TableHeadings", "struck out because"),
        QT_TRANSLATE_NOOP("TableHeadings", "supplier"),
        QT_TRANSLATE_NOOP("TableHeadings", "target"),
        QT_TRANSLATE_NOOP("TableHeadings", "to the line"),
        QT_TRANSLATE_NOOP("TableHeadings", "to the line, standard uncertainty"),
        QT_TRANSLATE_NOOP("TableHeadings", "tolerance (% solids)"),
        QT_TRANSLATE_NOOP("TableHeadings", "trial begun"),
        QT_TRANSLATE_NOOP("TableHeadings", "trial withdrawn because"),
        QT_TRANSLATE_NOOP("TableHeadings", "trials"),
        QT_TRANSLATE_NOOP("TableHeadings", "typed by"),
        QT_TRANSLATE_NOOP("TableHeadings", "verdict"),
        QT_TRANSLATE_NOOP("TableHeadings", "verdict of the new line"),
        QT_TRANSLATE_NOOP("TableHeadings", "verdict of the old line"),
        QT_TRANSLATE_NOOP("TableHeadings", "vessel"),
        QT_TRANSLATE_NOOP("TableHeadings", "water as shown"),
        QT_TRANSLATE_NOOP("TableHeadings", "way"),
        QT_TRANSLATE_NOOP("TableHeadings", "weigh-in"),
        QT_TRANSLATE_NOOP("TableHeadings", "weight"),
        QT_TRANSLATE_NOOP("TableHeadings", "weight of a package"),
        QT_TRANSLATE_NOOP("TableHeadings", "what"),
        QT_TRANSLATE_NOOP("TableHeadings", "why"),
    )
)
"""All of them, without the unit in brackets unless that is told in words."""


def in_words(table: FlatTable) -> FlatTable:
    """The same table under headings of the screen's language."""
    return FlatTable(tuple(map(heading, table.headings)), table.rows)


def sheets_in_words(sheets: Sequence[SheetOf]) -> tuple[SheetOf, ...]:
    """The same sheets, their names and headings in the screen's language."""
    return tuple(SheetOf(heading(one.name), in_words(one.table)) for one in sheets)


def heading(told: str) -> str:
    """A heading in the screen's language; a unit in brackets stays."""
    if told in HEADINGS:
        return written_out(CONTEXT, told)
    parts = _WITH_UNIT.fullmatch(told)
    if parts is None:
        return told
    newest = _NEWEST.fullmatch(parts[2])
    unit = QCoreApplication.translate("TableHeadings", "newest {count}").format(count=newest[1]) if newest else parts[2]
    return f"{heading(parts[1])} ({unit})"
