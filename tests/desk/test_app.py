"""Opening and closing: locked records, another language, the command line, the settings file."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator import __version__
from calibrator.desk.app import Opener
from calibrator.desk.settings import Preferences, Settings
from calibrator.model import Farm, new_id
from calibrator.records import Records


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


def test_a_damaged_file_gives_way_to_its_newest_copy(opener: Opener, answers: Answers, tmp_path: Path) -> None:
    file = tmp_path / "farm.sqlite"
    with Records.open(str(file)) as records:
        records.keep(Farm(id=new_id(), name="Windy Hollow"))
        records.backup_if_due()
    whole = file.read_bytes()
    file.write_bytes(whole[:4096] + bytes(len(whole) - 4096))
    opener.open()
    assert "newest copy" in answers.asked[-1]
    assert opener.desk is not None
    assert opener.desk.farm is not None
    assert opener.desk.farm.name == "Windy Hollow"
    assert any(path.read_bytes()[4096:] == bytes(len(whole) - 4096) for path in tmp_path.rglob("*") if path.is_file())


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
