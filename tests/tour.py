"""A tour of every screen, for pictures and for tests: each page, each step, each tab, each form."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import cast

from PySide6.QtCore import QCoreApplication, QItemSelectionModel
from PySide6.QtTest import QTest

from calibrator.desk.bring_in.dialog import BringInDialog
from calibrator.desk.bring_in.orders import DayOrder
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.busy import Sign
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.guide import Guide
from calibrator.desk.help.hands import all_of_them
from calibrator.desk.help.view import HandsDialog
from calibrator.desk.how.view import HowDialog
from calibrator.desk.how.working import Working
from calibrator.desk.pages.farms_compared import FarmsDialog
from calibrator.desk.pages.help import HelpPage
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.pages.season import SeasonPage
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.pages.welcome import WelcomePage
from calibrator.desk.season.lots_panel import LotsPanel
from calibrator.desk.server.door import ServerDoor
from calibrator.desk.standing import FirstStep
from calibrator.desk.trust_words import moment
from calibrator.desk.weigh_in.workings import check_workings, level_workings, line_workings
from calibrator.desk.window import Window
from calibrator.model import FillWay, Lot, Scale, Scoop, Step, WeighIn, new_id
from calibrator.model.underway import unwatched
from calibrator.records import RecordsUnreachable
from calibrator.records.server import FoundThere
from calibrator.records.tables import SCHEMA
from calibrator.units import on_line_step, show_length

THIN_DROPS = "10.4 10.6 10.4"
AWAY = "postgresql://feeder@dairy-office:5433/calibrator"

TWO_ROWS = QItemSelectionModel.SelectionFlag.Select | QItemSelectionModel.SelectionFlag.Rows


def tour(window: Window) -> Iterator[str]:
    """Bring up one screen after another and give each a name."""
    window.show_page("today")
    yield "today"
    today = cast(TodayPage, window.page("today"))
    yield from _workings(window, "powder", today.powder_card.workings())
    yield from _workings(window, "spot", today.spot_card.workings())
    yield from _season(window)
    compared = FarmsDialog(window.desk, window)
    compared.show()
    yield "farms-compared"
    compared.close()
    yield from _doors(window)
    yield from _busy(window)
    yield from _lots(window)
    yield from _weigh_in(window)
    yield from _tables(window)
    yield from _mix_check(window)
    yield from _setup(window)
    yield from _bring_in(window)
    yield from _help(window)
    yield from _welcome(window)
    window.show_page("today")
    saved = QCoreApplication.translate("PaperPanel", "Saved as {name}.")
    window.desk.say_saved(saved.format(name="26-1001B - 37.pdf"), Path("2026", "26-1001B - 37.pdf"))
    yield "notice"
    window._notice.hide()  # or it stands on what is drawn next


def _doors(window: Window) -> Iterator[str]:
    """What opens beside the title of the season: the trial of feeders, begun and not, and the figures."""
    doors = cast(SeasonPage, window.page("season")).doors
    window.show_page("help")  # behind the dialogs a page whose tables stand still
    trial = doors.open_trial()
    assert trial is not None
    yield "trial-new"
    for person, ounces in (("AR", (10.4, 10.5, 10.4, 10.5, 10.4)), ("LM", (10.0, 10.1, 9.9, 10.1, 10.0))):
        for mass in ounces:
            trial.person.set_text(person)
            trial.by.set_text("MK")
            trial.weight.set_text(f"{mass} oz")
            trial.enter()
    yield "trial"
    yield from _workings(window, "trial", trial.workings())
    trial.work.withdraw("powder of two bags", "MK")
    trial.refresh()
    yield "trial-withdrawn"
    trial.choice.past.setCurrentIndex(1)
    trial.choice.past.activated.emit(1)
    yield "trial-over"
    trial.close()
    figures = doors.open_figures()
    assert figures is not None
    yield "figures"
    figures.close()


def _busy(window: Window) -> Iterator[str]:
    """What stands over the window while something takes long."""
    sign = Sign(QCoreApplication.translate("App", "Putting the copy back"))
    sign.show()
    sign.bar.show_share(0.4)
    yield "busy"
    sign.put_away()


def _lots(window: Window) -> Iterator[str]:
    window.show_page("lots")
    page = cast(LotsPage, window.page("lots"))
    yield "lots"
    history = page.open_history()
    assert history is not None
    yield "lots-history"
    history.close()
    yield from _workings(window, "lot", page.detail.workings())
    page.start_new()
    yield "lots-new"
    page._go_back()


def _weigh_in(window: Window) -> Iterator[str]:
    page = cast(WeighInPage, window.page("weigh_in"))
    page.close_guide()
    window.show_page("weigh_in")
    yield "weigh_in-0-lots"
    window.show_page("weigh_in", window.desk.records.every(Lot)[-1].id)
    for number, step in enumerate(Step, start=1):
        page.open_step(step)
        yield f"weigh_in-{number}-{step}"
        yield from _how(window, page)
    yield from _across(window, page)


def _across(window: Window, page: WeighInPage) -> Iterator[str]:
    """The level fills as they are read from across the room."""
    page.open_step(Step.LEVEL_FILLS)
    for on in (True, False):
        window.desk.settings.keep(large_figures=on)
        page.reload()
        if on:
            yield "weigh_in-across"


def _workings(window: Window, name: str, workings: tuple[Working, ...]) -> Iterator[str]:
    """What stands behind the figures of a screen, where it has any on this day."""
    if not workings:
        return
    dialog = HowDialog(workings, window)
    dialog.show()
    yield f"how-{name}"
    dialog.close()


def _how(window: Window, page: WeighInPage) -> Iterator[str]:
    """The workings behind the figures of the open step, where it has any."""
    assert page.guide is not None
    for step, workings in (
        (Step.LEVEL_FILLS, level_workings),
        (Step.MARK, line_workings),
        (Step.FILLS_TO_MARK, check_workings),
    ):
        if step == page.guide.step:
            yield from _workings(window, step, workings(page.guide))


def _tables(window: Window) -> Iterator[str]:
    window.show_page("tables")
    page = cast(TablesPage, window.page("tables"))
    yield "tables"
    yield from _workings(window, "tables", page.view.workings())
    page.view.rows_by.setCurrentIndex(1)
    yield "tables-volumes"
    page.view.rows_by.setCurrentIndex(0)
    page._change_plan()
    yield "tables-plan"
    page._back()
    page._show_paper()
    for choice in (page.paper.choice.labels, page.paper.choice.chart, page.paper.choice.sheet):
        choice.click()
        yield f"paper-{page.paper.choice.wanted()}"
        yield from _workings(window, page.paper.choice.wanted(), page.paper.workings())
    page._back()


def _mix_check(window: Window) -> Iterator[str]:
    window.show_page("mix_check")
    page = cast(MixCheckPage, window.page("mix_check"))
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        yield "mix_check" if place == 0 else f"mix_check-{place}"
    page.tabs.setCurrentIndex(0)
    check = page.check
    for field, text in ((check.readings.first, THIN_DROPS), (check.readings.mix, "105 °F")):
        QTest.keyClicks(field.line, text)
    yield "mix_check-thin"
    check.clear()


def _season(window: Window) -> Iterator[str]:
    window.show_page("season")
    page = cast(SeasonPage, window.page("season"))
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        name = "season" if place == 0 else f"season-{place}"
        yield name
        panel = page.panel
        if not isinstance(panel, LotsPanel):
            yield from _workings(window, name, panel.workings())
    page.lots.table.selectRow(0)
    page.lots.table.selectionModel().select(page.lots.model.index(2, 0), TWO_ROWS)
    yield "season-two-lots"
    page.tabs.setCurrentIndex(0)


def _bring_in(window: Window) -> Iterator[str]:
    """A spreadsheet on its way in: as read, its columns with questions open, what it comes to, what is to mend."""
    farm = window.desk.farm
    assert farm is not None
    with TemporaryDirectory() as folder:
        file = Path(folder) / "pesadas.csv"
        for name, text in (("", _WEIGHINGS), ("-faults", _WEIGHINGS + "24-031A;x;2/4/2024;9;doce;húmedo\n;;;;10,1;\n")):
            file.write_text(text, "utf-8")
            work = Bringing(window.desk.records, farm, file, "MK")
            work.look(unwatched)
            dialog = BringInDialog(window.desk, work, window)
            dialog.show()
            if not name:
                yield "bring-in-table"
            dialog.next()
            if not name:
                yield "bring-in-columns"
            columns, scoops = dialog.columns, window.desk.records.every(Scoop, farm.id)
            work.change(
                orders={2: DayOrder.DAY_MONTH}, way=FillWay.LEVEL, scoops={"": scoops[0].id},
                scale_id=window.desk.records.every(Scale, farm.id)[0].id,
            )  # fmt: skip
            columns.show_work(work)
            dialog._show_outcome(work.judge(window.desk.clock().date(), unwatched))
            yield f"bring-in-outcome{name}"
            dialog.close()


_WEIGHINGS = """2024;;;;;
Lote;Producto;Fecha;Costal;Peso neto (oz);Nota
24-030A;20-20;1/3/2024;1;11,2;
24-030A;20-20;1/3/2024;2;11,4;húmedo
24-030A;20-20;1/3/2024;3;11,1;
"""


def _setup(window: Window) -> Iterator[str]:
    window.show_page("setup")
    page = cast(SetupPage, window.page("setup"))
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        yield "setup" if place == 0 else f"setup-{place}"
    yield from _server(window, page)
    page.tabs.setCurrentIndex(0)


def _server(window: Window, page: SetupPage) -> Iterator[str]:
    """Going over to a server: its address, what is found there, and the door when it is away."""
    dialog = page.records.open_server()
    yield "server"
    dialog._show_known(AWAY)
    dialog._done(FoundThere(SCHEMA - 1, 0))
    yield "server-found"
    dialog._failed(RecordsUnreachable("password", place=AWAY))
    yield "server-refused"
    dialog.close()
    waiting = counted.still_waiting(3).format(since=moment(window.desk.clock()))
    door = ServerDoor(AWAY, AWAY, waiting, alone=True, parent=window)
    door.show()
    door._failed(RecordsUnreachable("not_listening", place=AWAY))
    yield "server-door"
    door.close()


def _help(window: Window) -> Iterator[str]:
    window.show_page("help")
    page = cast(HelpPage, window.page("help"))
    for place in range(page.tabs.count()):
        page.tabs.setCurrentIndex(place)
        yield "help" if place == 0 else f"help-{place}"
    for number, work in enumerate(all_of_them()):
        dialog = HandsDialog(work, window.desk, window)
        dialog.show()
        yield f"hands-{number}"
        dialog.close()


def _welcome(window: Window) -> Iterator[str]:
    window.show_page("welcome")
    page = cast(WelcomePage, window.page("welcome"))
    for number, step in enumerate(FirstStep, start=1):
        page._show(step)
        yield f"welcome-{number}-{step}"


def weigh_a_new_lot(desk: Desk) -> None:
    """A lot that came today, weighed in up to its sign-off, so that every step has something to show."""
    farm = desk.farm
    assert farm is not None
    records = desk.records
    before = records.every(Lot, farm.id)[-1]
    lot = records.keep(
        replace(before, id=new_id(), lot_number="26-1102C", arrived_on=desk.clock().date(), revision="", note="")
    )
    weigh_in = WeighIn(id=new_id(), farm_id=farm.id, lot_id=lot.id, started_at=desk.clock(), by="MK")
    guide = Guide(records, records.keep(weigh_in), desk.clock)
    scoop = next(scoop for scoop in records.every(Scoop, farm.id) if scoop.retired_on is None)
    old = records.marks(scoop_id=scoop.id)
    guide.set(
        scoop_id=scoop.id,
        scale_id=records.every(Scale, farm.id)[0].id,
        target_mass_g=283.495,
        target_typed="10 oz",
        scale_zeroed=True,
        check_nominal_g=907.18474,
        check_nominal_typed="2 lb",
        check_reading_g=907.18474,
        check_reading_typed="32.0 oz",
        old_line_mm=old[-1].down_wall_mm if old else None,
    )
    level = scoop.volume_ml * 0.5
    for share in (0.99, 1.0, 1.015, 1.005, 0.985, 0.995, 1.01, 1.0):
        guide.add_fill(FillWay.LEVEL, guide.next_bag(FillWay.LEVEL), round(level * share), "")
    assert guide.findings.line is not None
    proposed = guide.findings.line.down_wall_mm
    drawn_mm, typed = on_line_step(proposed, farm.units), show_length(proposed, farm.units)
    guide.set(drawn_line_mm=drawn_mm, drawn_line_typed=typed)
    for share in (1.0, 1.01, 0.99, 1.005, 0.995, 1.0):
        guide.add_fill(FillWay.TO_MARK, guide.next_bag(FillWay.TO_MARK), round(283.5 * share), "")
