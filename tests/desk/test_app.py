"""Opening and closing: locked records, another language, the command line, the settings file."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import cast

import pytest
from answers import Answers
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from shiboken6 import isValid
from sqlalchemy.exc import DataError

from calibrator import __version__
from calibrator.desk.app import Opener
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.settings import Preferences, Settings
from calibrator.model import Farm, new_id
from calibrator.records import DiskFull, Records, backup, import_season, sample_lots_folder
from calibrator.records.entries import Told
from calibrator.records.errors import translated
from calibrator.records.outbox import Outbox
from tests.records import invented


@pytest.fixture
def opener(qtbot: QtBot, qapp: QApplication, answers: Answers, tmp_path: Path) -> Iterator[Opener]:
    made = Opener(qapp, answers, str(tmp_path / "farm.sqlite"), Settings())
    yield made
    if made.window is not None:
        made.window.close()
    made._tongue.speak("en")
    made.close()


def test_a_new_store_opens_at_the_welcome(opener: Opener) -> None:
    opener.open()
    assert opener.window is not None
    assert opener.window.current_page.key == "welcome"


def test_a_second_instance_may_look_without_writing(opener: Opener, answers: Answers, tmp_path: Path) -> None:
    with Records.open(str(tmp_path / "farm.sqlite")):
        opener.open()
        assert "open in another window" in answers.asked[-1]
        assert opener.desk is not None
        assert opener.desk.records.read_only


def test_records_that_cannot_be_opened_are_told_in_words(opener: Opener, answers: Answers, tmp_path: Path) -> None:
    (tmp_path / "farm.sqlite").write_text("not a records file at all, but long enough to be looked at " * 20)
    opener.open()
    assert opener.window is None
    assert "not a records file" in answers.told[0]


def test_what_can_be_read_of_a_damaged_file_is_brought_over_and_told(
    opener: Opener, answers: Answers, tmp_path: Path
) -> None:
    file = tmp_path / "farm.sqlite"
    with Records.open(str(file)) as records:
        records.keep(Farm(id=new_id(), name="Windy Hollow"))
        records.backup_if_due()
    whole = file.read_bytes()
    file.write_bytes(whole[:4096] + bytes(len(whole) - 4096))
    opener.open()
    assert "Bring over what can be read?" in answers.asked[-1]
    assert opener.desk is not None
    assert opener.desk.farm is not None
    assert opener.desk.farm.name == "Windy Hollow"
    (aside,) = tmp_path.glob("farm-damaged-*.sqlite")
    assert aside.read_bytes()[4096:] == bytes(len(whole) - 4096)
    assert aside.name in answers.told[-1]
    assert aside.with_suffix(".txt").read_text(encoding="utf-8") == answers.told[-1]


def test_a_file_emptied_by_a_disk_gives_way_to_its_newest_copy(
    opener: Opener, answers: Answers, tmp_path: Path
) -> None:
    file = tmp_path / "farm.sqlite"
    with Records.open(str(file)) as records:
        records.keep(Farm(id=new_id(), name="Windy Hollow"))
        records.backup_if_due()
    file.write_bytes(b"")
    opener.open()
    assert "The newest copy is of" in answers.asked[-1]
    assert opener.desk is not None


def test_a_copy_is_put_back_from_the_screen(opener: Opener, answers: Answers, qtbot: QtBot, tmp_path: Path) -> None:
    with Records.open(str(tmp_path / "farm.sqlite")) as records:
        farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
        made = backup.make(tmp_path / "farm.sqlite", "daily", datetime.now(UTC) + timedelta(hours=1))
        records.keep(replace(farm, name="after the copy"))
    opener.open()
    assert opener.window is not None
    assert opener.desk is not None
    assert opener.desk.farm == replace(farm, name="after the copy", revision=opener.desk.farm.revision)
    opener.window.show_page("setup")
    page = cast(SetupPage, opener.window.page("setup"))
    page.tabs.setCurrentIndex(page.tabs.count() - 1)
    page.records.copies.setCurrentRow(0)
    assert page.records._copy() == made
    first = opener.desk
    page.records.put_back_button.click()
    qtbot.waitUntil(lambda: opener.desk is not first)
    qtbot.waitUntil(lambda: not isValid(first))
    assert opener.desk.farm == farm
    assert opener.window is not None
    assert opener.window.isVisible()
    (aside,) = tmp_path.glob("farm-damaged-*.sqlite")
    with Records.open(str(aside), read_only=True) as records:
        assert [one.name for one in records.every(Farm)] == ["after the copy"]


def test_an_edit_by_another_program_is_said_once_and_stops_nobody(
    opener: Opener, answers: Answers, qtbot: QtBot, tmp_path: Path
) -> None:
    file = tmp_path / "farm.sqlite"
    with Records.open(str(file)) as records:
        import_season(records, sample_lots_folder())
    with closing(sqlite3.connect(file)) as raw:
        raw.execute("DROP TRIGGER marks_never_updated")
        raw.execute("UPDATE marks SET down_wall_mm = 1 WHERE sign_off_id = (SELECT id FROM sign_offs LIMIT 1)")
        raw.commit()
    opener.open()
    assert opener._guarding is not None
    with qtbot.waitSignal(opener._guarding.found):
        opener._guarding.start()
    qtbot.waitUntil(lambda: bool(answers.told))
    assert "another program changed it after it was signed" in answers.told[-1]
    opener._say_found(opener._records.check_fingerprints() if opener._records else ())
    assert len(answers.told) == 1
    assert opener.window is not None
    opener.window.show_page("setup")
    page = cast(SetupPage, opener.window.page("setup"))
    page.tabs.setCurrentIndex(page.tabs.count() - 1)
    page.records.check_button.click()
    assert page.records.verdict.text() in answers.told[0]


def test_another_language_comes_at_once_and_is_remembered(opener: Opener) -> None:
    opener.open()
    assert opener.desk is not None
    first = opener.window
    opener.desk.speak("es")
    assert opener.window is not first
    assert opener._tongue.language == "es"
    assert opener.desk.settings.now.screen_language == "es"


def test_help_is_short_and_names_every_option() -> None:
    told = subprocess.run([sys.executable, "-m", "calibrator", "--help"], capture_output=True, text=True, check=True)
    assert len(told.stdout.splitlines()) <= 16
    for option in ("--demo", "--records URL", "--version"):
        assert option in told.stdout


def test_version_is_told() -> None:
    told = subprocess.run([sys.executable, "-m", "calibrator", "--version"], capture_output=True, text=True, check=True)
    assert told.stdout.strip() == f"calibrator {__version__}"


def test_preferences_come_back(tmp_path: Path) -> None:
    path = tmp_path / "deep" / "settings.json"
    Settings(path).keep(initials="MK", paper_languages=("es", "en"), large_figures=True)
    assert Settings(path).now == Preferences(initials="MK", paper_languages=("es", "en"), large_figures=True)


@pytest.mark.parametrize("text", ["", "[]", "{", '{"initials": 7, "large_figures": "yes", "unknown": 1}', "\x00"])
def test_a_damaged_settings_file_gives_the_defaults(tmp_path: Path, text: str) -> None:
    path = tmp_path / "settings.json"
    path.write_text(text)
    assert Settings(path).now == Preferences()


def test_settings_that_cannot_be_written_stop_nobody(tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("")
    settings = Settings(blocked / "settings.json")
    settings.keep(initials="MK")
    assert settings.now.initials == "MK"


@pytest.fixture
def waiting(opener: Opener, records: Records, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Outbox:
    """A change waits for the server whose records are about to be shown."""
    farm = records.keep(invented.farm())
    outbox = Outbox(tmp_path / "outbox.sqlite")
    outbox.put(Told(invented.NOON, "AB", replace(farm, revision=new_id(), name="Later"), replaces=farm.revision))
    monkeypatch.setattr(opener, "_outbox", outbox)
    return outbox


def refusing_all(monkeypatch: pytest.MonkeyPatch, error: Exception) -> None:
    def failing(*_given: object) -> None:
        raise error

    monkeypatch.setattr("calibrator.records.outbox.bring", failing)


@pytest.mark.parametrize(
    ("error", "waits"),
    [
        (DiskFull("disk_full", place="x"), 1),
        (translated(DataError("INSERT", None, Exception("out of range")), "the barn"), 0),
    ],
    ids=["disk_full", "data_error"],
)
def test_the_window_opens_whatever_the_server_says_to_what_waits(
    opener: Opener, records: Records, waiting: Outbox, answers: Answers, monkeypatch: pytest.MonkeyPatch,
    error: Exception, waits: int,
) -> None:  # fmt: skip
    refusing_all(monkeypatch, error)
    opener.show(records)
    assert opener.window is not None
    assert (opener.window.isVisible(), waiting.waiting) == (True, 1)  # nothing is sent before it is up
    opener.window.watch.look()
    assert (waiting.waiting, waiting.refused) == (waits, 1 - waits)
    assert answers.told == []


def test_the_window_opens_without_room_for_what_would_wait(
    opener: Opener, records: Records, answers: Answers, monkeypatch: pytest.MonkeyPatch
) -> None:
    def failing(*_given: object) -> None:
        raise DiskFull("disk_full", place="x")

    monkeypatch.setattr(Records, "on_server", True)
    monkeypatch.setattr(Outbox, "beside", failing)
    opener.show(records)
    assert opener.window is not None
    assert opener.window.isVisible()
    assert "Free some space" in answers.told[0]
