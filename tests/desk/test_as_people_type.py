"""The main pages typed at as people type: fast and slow, from below upwards, away and back, units changed, closed.

Each place is a field of a main page in the real window; the keys are those that a person presses.
"""

from __future__ import annotations

import math
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import timedelta
from pathlib import Path

import pytest
from answers import Answers, Onward
from herd import FIRST_DAY, OZ_G, Herd, group
from keys import MOST_TABS, focus, tab_to
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.page import Page
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.theme import the_theme
from calibrator.desk.window import Window
from calibrator.model import (
    Farm,
    FillWay,
    Instrument,
    InstrumentKind,
    Lot,
    MixCheck,
    Plan,
    Scale,
    Scoop,
    Step,
    UnitSystem,
    Vessel,
    WeighIn,
    new_id,
)
from calibrator.records import Records
from calibrator.units import Kind, read

CONTROL = Qt.KeyboardModifier.ControlModifier


def feeding(records: Records) -> None:
    """A farm that feeds a lot by a plan, with another one in the middle of its weigh-in."""
    made = Herd(records)
    made.sign("25-0112A", 0.50)
    made.plan("Morning milk", group(40, "hutches"))
    lot = records.keep(Lot(id=new_id(), farm_id=made.farm.id, lot_number="25-0202B", product="20-20 replacer"))
    records.keep(
        WeighIn(
            id=new_id(), farm_id=made.farm.id, lot_id=lot.id, started_at=FIRST_DAY + timedelta(days=29), by="AB",
            scoop_id=made.red.id, scale_id=made.scale.id, target_mass_g=283.5, scale_zeroed=True,
            step=Step.LEVEL_FILLS,
        )
    )  # fmt: skip
    records.keep(
        Instrument(
            id=new_id(), farm_id=made.farm.id, name="glass", kind=InstrumentKind.REFRACTOMETER, division=0.2,
            division_typed="0.2",
        )
    )  # fmt: skip


@contextmanager
def opened(records: Records, answers: Answers) -> Iterator[Window]:
    the_theme()
    feeding(records)
    desk = Desk(records, answers, clock=Onward(FIRST_DAY + timedelta(days=30)))
    desk.initials = "AB"
    shown = Window(desk)
    shown.show()
    assert QTest.qWaitForWindowActive(shown)
    yield shown
    shown.replace_by_another()


@pytest.fixture
def window(qapp: QApplication, records: Records, answers: Answers) -> Iterator[Window]:
    with opened(records, answers) as shown:
        yield shown


@dataclass(frozen=True)
class Place:
    """Where a person types: the number of its page, how to come to the form, and what goes into which fields.

    `bare` is a quantity typed without its unit: the name of its field, what is typed, what kind it is.
    """

    number: int
    come: Callable[[Window], None]
    fields: tuple[tuple[str, str], ...]
    bare: tuple[str, str, Kind]


def stay(window: Window) -> None:
    """The fields are there when the page is."""


def open_weigh_in(window: Window) -> None:
    window.show_page("weigh_in", window.desk.records.every(Lot)[-1].id)


def press(name: str) -> Callable[[Window], None]:
    return lambda window: QTest.keyClick(tab_to(name), Qt.Key.Key_Space)


def new_thing(kind: type, name: str) -> Callable[[Window], None]:
    """An empty form on the set-up's page."""

    def come(window: Window) -> None:
        page = window.page("setup")
        assert isinstance(page, SetupPage)
        page.show_tab(kind)
        QTest.keyClick(tab_to(name), Qt.Key.Key_Space)

    return come


PLACES = {
    "weigh-in": Place(3, open_weigh_in, (("Weight", "11.6 oz"),), ("Weight", "11.6", Kind.MASS)),
    "mix check": Place(
        5, stay, (("First pail: drops", "12.4 12.5"), ("Mix in the vessel", "40 gal"), ("Note", "cold morning")),
        ("Mix in the vessel", "40", Kind.VOLUME),
    ),
    "lot": Place(
        2, press("Add a lot"), (("Lot number", "26-0303C"), ("Weight of each", "50 lb"), ("Note", "wet bags")),
        ("Weight of each", "50", Kind.MASS),
    ),
    "plan": Place(
        4, press("New plan"), (("Name of the plan", "Night"), ("How many calves", "31"), ("Powder", "9.5 oz")),
        ("Powder", "9.5", Kind.MASS),
    ),
    "scoop": Place(
        7, new_thing(Scoop, "Add a scoop"),
        (("Name of the scoop", "Blue"), ("Diameter inside", "3 3/4 in"), ("Height inside", "4 in")),
        ("Diameter inside", "3.5", Kind.LENGTH),
    ),
    "scale": Place(
        7, new_thing(Scale, "Add a scale"),
        (("Name of the scale", "Barn scale"), ("Step of the display", "0.05 oz"), ("Most it weighs", "22 lb")),
        ("Step of the display", "0.2", Kind.MASS),
    ),
    "vessel": Place(
        7, new_thing(Vessel, "Add a vessel"),
        (("Name of the vessel", "Tote"), ("Volume to the rim", "60 gal"), ("May be filled to", "85 %")),
        ("Volume to the rim", "30", Kind.VOLUME),
    ),
}  # fmt: skip
BARE_IS = {
    "Weight of each": "lb",
    "Mix in the vessel": "gal",
    "Volume to the rim": "gal",
}  # what a bare number means there, where not usual
IN_SETUP = ("scoop", "scale", "vessel")
in_setup = pytest.mark.parametrize("name", IN_SETUP)
in_setup_there = pytest.mark.parametrize("come", IN_SETUP, indirect=True)
everywhere = pytest.mark.parametrize("name", PLACES)


def come_to(window: Window, name: str) -> Place:
    place = PLACES[name]
    go(window, place.number)
    place.come(window)
    QApplication.processEvents()
    while isinstance(focus(), Page):  # the cursor is on its way to the first field
        QApplication.processEvents()
    return place


def go(window: Window, number: int) -> None:
    """To another page by its key; it is there before anybody can type."""
    QTest.keyClick(window, Qt.Key(Qt.Key.Key_0 + number), CONTROL)
    QApplication.processEvents()


def field(window: Window, name: str) -> QLineEdit:
    every = window.current_page.findChildren(QLineEdit)
    return next(one for one in every if one.isVisible() and one.accessibleName().startswith(name))


def known_as(widget: QWidget, name: str) -> str:
    """The field of a place that a widget is; blank where it is none."""
    return next((into for into, _ in PLACES[name].fields if widget.accessibleName().startswith(into)), "")


def put(name: str, text: str, *, slowly: bool = False) -> None:
    """Type over what stands in a field that Tab finds; slowly lets the program breathe after each key."""
    into = tab_to(name)
    QTest.keyClick(into, Qt.Key.Key_A, CONTROL)
    for sign in text:
        QTest.keyClicks(into, sign)
        if slowly:
            QApplication.processEvents()


def told(window: Window, place: Place) -> list[str]:
    return [field(window, name).text() for name, _ in place.fields]


def metric(window: Window) -> None:
    """Another computer changes the units of the farm."""
    farm = window.desk.records.every(Farm)[0]
    window.desk.attempt(lambda: window.desk.records.keep(replace(farm, units=UnitSystem.METRIC)))


@dataclass(frozen=True)
class There:
    """A place that a person has come to."""

    window: Window
    name: str
    place: Place


@pytest.fixture(scope="module", params=PLACES)
def come(
    request: pytest.FixtureRequest, qapp: QApplication, tmp_path_factory: pytest.TempPathFactory, new_store: Path
) -> Iterator[There]:
    """One window for all tests of a place that keep nothing there."""
    path = tmp_path_factory.mktemp("typed") / "records.sqlite"
    shutil.copy(new_store, path)
    with Records.open(str(path)) as records, opened(records, Answers()) as shown:
        yield There(shown, request.param, come_to(shown, request.param))


@pytest.fixture
def there(come: There) -> There:
    """With nothing typed, and the cursor in the first field, as one comes to it."""
    come.window.activateWindow()
    for into, _ in reversed(come.place.fields):
        put(into, "")
    return come


def test_every_key_arrives_at_any_pace_and_in_any_order(there: There) -> None:
    """Fast, from below upwards, with a slip in each field that is mended afterwards, slowly."""
    window, place = there.window, there.place
    meant = [text for _, text in place.fields]
    for into, text in place.fields:
        put(into, text)
    assert told(window, place) == meant
    for into, _ in place.fields:
        put(into, "")
    for into, text in reversed(place.fields):
        put(into, text)
    assert told(window, place) == meant
    for into, text in place.fields:
        put(into, text + "7")
    for into, _ in place.fields:
        QTest.keyClick(tab_to(into), Qt.Key.Key_End)
        QTest.keyClick(focus(), Qt.Key.Key_Backspace)
    assert told(window, place) == meant
    for into, _ in place.fields:
        put(into, "")
    for into, text in place.fields:
        put(into, text, slowly=True)
    assert told(window, place) == meant


def test_tab_goes_all_around_and_shift_and_tab_the_same_way_back(there: There) -> None:
    """Empty, and with something typed, when the buttons to keep it come in between."""
    name, place = there.name, there.place
    for typed in (False, True):
        if typed:
            put(*place.fields[0])
        begun = focus()
        forth = [begun]
        QTest.keyClick(begun, Qt.Key.Key_Tab)
        while focus() is not begun:
            forth.append(focus())
            QTest.keyClick(focus(), Qt.Key.Key_Tab)
            assert len(forth) < MOST_TABS
        assert len({id(one) for one in forth}) == len(forth)
        assert {into for into, _ in place.fields} <= {known_as(one, name) for one in forth}
        back = [focus()]
        for _ in forth[1:]:
            QTest.keyClick(focus(), Qt.Key.Key_Backtab)
            back.append(focus())
        names = [
            [one.accessibleName() or getattr(one, "text", str)() for one in way] for way in (forth[1:], back[:0:-1])
        ]
        assert names[0] == names[1]
        assert back[1:] == forth[:0:-1]


@in_setup_there
def test_fields_are_reached_in_the_order_they_are_read_and_then_the_buttons(there: There) -> None:
    """From the list to the form, down the form, then Keep and Put back."""
    window, place = there.window, there.place
    put(*place.fields[0])
    met = [focus()]
    for _ in range(MOST_TABS):
        QTest.keyClick(focus(), Qt.Key.Key_Tab)
        if focus() is met[0]:
            break
        met.append(focus())
    names = [one.accessibleName() or getattr(one, "text", str)().replace("&", "") for one in met]
    wanted = [*(into for into, _ in place.fields), "Keep", "Put back"]
    found = [next(at for at, told in enumerate(names) if told.startswith(into)) for into in wanted]
    assert found == sorted(found), names
    lines = [one for one in met if isinstance(one, QLineEdit)]
    rows = [one.mapTo(window.current_page, QPoint(0, 0)).y() for one in lines]
    assert rows == sorted(rows)


@in_setup_there
def test_enter_goes_on_and_keeps_nothing_and_escape_takes_nothing_away(there: There) -> None:
    window, place = there.window, there.place
    before = window.desk.records.version()
    for into, text in place.fields:
        put(into, text)
        here = focus()
        QTest.keyClick(here, Qt.Key.Key_Escape)
        assert focus() is here
        QTest.keyClick(here, Qt.Key.Key_Return)
        assert focus() is not here
    assert told(window, place) == [text for _, text in place.fields]
    assert window.desk.records.version() == before


@in_setup
def test_what_is_typed_by_keys_alone_is_kept_as_meant(window: Window, name: str) -> None:
    place = come_to(window, name)
    for into, text in reversed(place.fields):
        put(into, text)
    QTest.keyClick(tab_to("Keep"), Qt.Key.Key_Space)
    QApplication.processEvents()
    kind = {"scoop": Scoop, "scale": Scale, "vessel": Vessel}[name]
    kept = next(one for one in window.desk.records.every(kind) if one.name == place.fields[0][1])
    if isinstance(kept, Scale):
        assert (kept.resolution_typed, kept.capacity_typed) == ("0.05 oz", "22 lb")
        assert kept.resolution_g == pytest.approx(0.05 * OZ_G)
    elif isinstance(kept, Vessel):
        assert kept.usable_share == pytest.approx(0.85)
        assert kept.rim_volume_ml == pytest.approx(60 * 3785.411784)
    else:
        assert kept.volume_ml == pytest.approx(math.pi / 4 * (3.75 * 25.4) ** 2 * 4 * 25.4 / 1000, rel=1e-6)


@everywhere
def test_units_changed_in_the_middle_change_no_meaning(window: Window, name: str) -> None:
    place = come_to(window, name)
    into, text, kind = place.bare
    put(into, text)
    meant = read(text, kind, UnitSystem.FARM, default_unit=BARE_IS.get(into)).value
    metric(window)
    assert read(field(window, into).text(), kind, UnitSystem.METRIC).value == pytest.approx(meant, rel=1e-6)


@everywhere
def test_what_is_typed_stays_whatever_happens_until_the_window_closes(
    window: Window, answers: Answers, name: str
) -> None:
    """Away to another page and back, something kept by others meanwhile, a window closed and then not."""
    place = come_to(window, name)
    meant = [text for _, text in place.fields]
    for into, text in place.fields:
        put(into, text)
    go(window, 6)
    go(window, place.number)
    assert told(window, place) == meant
    scale = window.desk.records.every(Scale)[0]
    window.desk.attempt(lambda: window.desk.records.keep(replace(scale, name="Barn scale")))
    assert told(window, place) == meant
    before = window.desk.records.version()
    answers.yes = False
    window.close()
    assert window.isVisible()
    assert "Not kept yet: “" in answers.asked[-1]
    assert told(window, place) == meant
    answers.yes = True
    window.close()
    assert not window.isVisible()
    assert window.desk.records.version() == before


def calves(window: Window, row: int = 0) -> QLineEdit:
    page = window.page("tables")
    assert isinstance(page, TablesPage)
    return page.view.today.rows[row].calves


def kept_calves(window: Window) -> list[int]:
    return [one.calves for one in window.desk.records.every(Plan)[0].groups]


def test_a_count_of_calves_is_kept_by_leaving_and_by_closing(window: Window) -> None:
    go(window, 4)
    put("Calves today", "52")
    assert kept_calves(window) == [40]
    go(window, 1)
    assert kept_calves(window) == [52]
    go(window, 4)
    put("Calves today", "61", slowly=True)
    window.close()
    assert not window.isVisible()
    assert kept_calves(window) == [61]


def test_a_count_half_typed_survives_what_others_keep_and_other_units(window: Window) -> None:
    go(window, 4)
    put("Calves today", "5")
    metric(window)
    assert calves(window).text() == "5"
    QTest.keyClicks(focus(), "3")
    page = window.page("tables")
    assert isinstance(page, TablesPage)
    assert calves(window).text() == "53"
    assert page.view.today.rows[0].water.value.text().endswith(" L")
    QTest.keyClick(focus(), Qt.Key.Key_Return)
    assert kept_calves(window) == [53]


def test_a_count_emptied_and_left_is_not_kept_as_none(window: Window) -> None:
    go(window, 4)
    into = tab_to("Calves today")
    QTest.keyClick(into, Qt.Key.Key_A, CONTROL)
    QTest.keyClick(into, Qt.Key.Key_Delete)
    QTest.keyClicks(into, "44")
    QTest.keyClick(into, Qt.Key.Key_Return)
    assert kept_calves(window) == [44]


def test_weights_entered_fast_are_all_kept_in_their_order(window: Window) -> None:
    open_weigh_in(window)
    masses = [11.6, 11.7, 11.5, 11.8, 11.6, 11.7, 11.4, 11.6]
    for mass in masses:
        QTest.keyClicks(focus(), f"{mass}")
        QTest.keyClick(focus(), Qt.Key.Key_Return)
    fills = window.desk.records.fills(window.desk.records.every(WeighIn)[-1].id)
    assert [fill.mass_g for fill in fills if fill.way is FillWay.LEVEL] == pytest.approx(
        [mass * OZ_G for mass in masses]
    )


def test_a_check_kept_and_the_next_begun_at_once_are_two(window: Window) -> None:
    come_to(window, "mix check")
    for drops in ("12.4 12.5 12.4", "13.0 13.1 13.0"):
        put("First pail: drops", drops)
        QTest.keyClick(tab_to("Keep this check"), Qt.Key.Key_Space)
    assert len(window.desk.records.every(MixCheck)) == 2
    assert field(window, "First pail: drops").text() == ""
