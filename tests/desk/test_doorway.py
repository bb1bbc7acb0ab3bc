"""The door: what the first page brings along, what the command line takes, the entry in the desktop's menu."""

from __future__ import annotations

import configparser
import gc
import shutil
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest
from answers import Answers
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from calibrator import desktop_entry
from calibrator.__main__ import main
from calibrator.desk.app import make_application, settle
from calibrator.desk.mistakes import MistakeHook
from calibrator.places import resource
from calibrator.records import demo_records

FIRST_PAGE = """
import sys
from pathlib import Path
from calibrator.__main__ import load_desk
desk = load_desk()
desk.busy.PATIENCE_S = 600
app = desk.make_application(["calibrator"])
opener = desk.Opener(app, desk.Ask(app), sys.argv[1], desk.Settings())
opener.open()
app.processEvents()
desk.settle()
page = opener.window.current_page
assert page.key == "today" and page.lot_card.heading.text() and page.spot_card.verdict.text()
assert not app.windowIcon().isNull()
heavy = {"alembic", "scipy", "numpy", "pint", "pyqtgraph", "calibrator.prints.chart", "calibrator.prints.labels"}
heavy |= {"asyncio", "ssl", "email", "calibrator.records.layout"}
import linecache
assert not [file for file in linecache.cache if Path(file).match("calibrator/*/*.py")], "sources are read"
print(*sorted(heavy & set(sys.modules)))
opener.window.close()
opener.close()
"""


def test_the_first_page_brings_nothing_heavy(tmp_path: Path) -> None:
    demo_records(tmp_path).close()
    command = [sys.executable, "-c", FIRST_PAGE, str(tmp_path / "demo.sqlite")]
    done = subprocess.run(command, capture_output=True, text=True, check=False, cwd=Path(__file__).parents[2])
    assert (done.returncode, done.stdout.split()) == (0, []), done.stderr


def test_garbage_is_collected_once_the_page_is_up() -> None:
    gc.disable()
    settle()
    gc.unfreeze()
    assert gc.isenabled()


def test_the_log_is_named_when_something_goes_wrong(qapp: QApplication, answers: Answers, tmp_path: Path) -> None:
    MistakeHook(answers, tmp_path / "calibrator.log")(ValueError, ValueError("a bug"), None)
    assert str(tmp_path / "calibrator.log") in answers.told[-1]
    assert "ValueError" not in answers.told[-1]


@pytest.mark.parametrize(
    ("given", "told"),
    [
        (["--nonsense"], "Unrecognized arguments: --nonsense."),
        (["--records"], "Argument --records: expected one argument."),
        (["one.sqlite", "two.sqlite"], "Unrecognized arguments: two.sqlite."),
        (["--demo", "one.sqlite"], "--demo opens records of its own"),
        (["--records", "one.sqlite", "two.sqlite"], "Name the records once"),
    ],
)
def test_what_is_not_understood_is_said(given: list[str], told: str, capsys: pytest.CaptureFixture[str]) -> None:
    try:
        code = main(given)
    except SystemExit as ended:
        code = int(str(ended.code))
    said = capsys.readouterr().err
    assert code == 2
    assert told in said
    assert len(said.splitlines()) == 1


def test_a_file_may_be_named_as_it_stands(monkeypatch: pytest.MonkeyPatch) -> None:
    opened: list[str] = []
    monkeypatch.setattr("calibrator.desk.app.run", lambda url: opened.append(url) or 0)
    assert main(["farm one.sqlite"]) == 0
    gc.enable()
    assert opened == ["farm one.sqlite"]


@pytest.fixture
def menu(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A user's data folder of our own."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    monkeypatch.setattr("sys.platform", "linux")
    return tmp_path


def test_the_entry_comes_into_the_menu_and_goes_again(menu: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--install-desktop-entry"]) == 0
    written = [Path(line) for line in capsys.readouterr().out.splitlines()]
    assert {path for path in menu.rglob("*") if path.is_file()} == set(written)
    assert main(["--remove-desktop-entry"]) == 0
    assert not any(path.is_file() for path in menu.rglob("*"))
    assert main(["--remove-desktop-entry"]) == 0
    assert "no desktop entry" in capsys.readouterr().out


def test_a_folder_that_takes_no_entry_is_told(
    menu: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (menu / "icons").write_text("a file where the folder should be")
    assert main(["--install-desktop-entry"]) == 1
    assert str(menu / "icons") in capsys.readouterr().err


def test_only_linux_takes_such_an_entry(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setattr("sys.platform", "win32")
    assert main(["--install-desktop-entry"]) == 2
    assert "Only desktops on Linux" in capsys.readouterr().err


def test_every_icon_has_the_size_it_is_kept_under(menu: Path) -> None:
    """Icon Theme Specification 0.13: a fixed folder of n holds images of n by n pixels."""
    for path in desktop_entry.install_entry():
        if path.suffix == ".png":
            image = QImage(str(path))
            assert path.parent.parent.name == f"{image.width()}x{image.height()}"
            assert image.hasAlphaChannel()


def test_the_other_systems_icons_are_whole() -> None:
    from PIL import Image

    for name in ("calibrator.ico", "calibrator.icns"):
        with Image.open(resource(f"desktop/{name}")) as image:
            image.load()
            assert image.width >= 256


def test_what_the_program_is_can_be_read_by_software_centres(menu: Path) -> None:
    """AppStream 1.0, Desktop Applications; judged by appstreamcli where it is at hand."""
    (file,) = [path for path in desktop_entry.install_entry() if path.suffix == ".xml"]
    assert file == menu / "metainfo" / "calibrator.metainfo.xml"
    about = ElementTree.parse(file).getroot()
    launched = about.find("launchable")
    assert launched is not None
    assert (menu / "applications" / (launched.text or "")).is_file()
    entry = configparser.RawConfigParser(delimiters="=", strict=True)
    entry.read(menu / "applications" / "calibrator.desktop", "utf-8")
    spoken = {name.get("{http://www.w3.org/XML/1998/namespace}lang"): name.text for name in about.findall("name")}
    assert spoken == {None: entry["Desktop Entry"]["Name"], "es": entry["Desktop Entry"]["Name[es]"]}
    judge = shutil.which("appstreamcli")
    if judge:
        command = [judge, "validate", "--no-net", "--pedantic", str(file)]
        done = subprocess.run(command, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stdout


@pytest.mark.parametrize("command", ["/usr/bin/calibrator", '/home/a b/$x`"/100%/calibrator'])
def test_the_entry_is_one_by_the_desktops_own_judge(tmp_path: Path, command: str) -> None:
    """Desktop Entry Specification 1.5, quoting of Exec; judged by desktop-file-validate where it is at hand."""
    text = desktop_entry.entry_text(command)
    entry = configparser.RawConfigParser(delimiters="=", strict=True)
    entry.optionxform = str  # type: ignore[assignment,method-assign]
    entry.read_string(text)
    told = entry["Desktop Entry"]["Exec"]
    assert told.endswith('" %f')
    assert _read_exec(told) == [command, "%f"]
    judge = shutil.which("desktop-file-validate")
    if judge:
        file = tmp_path / "calibrator.desktop"
        file.write_text(text, "utf-8")
        done = subprocess.run([judge, str(file)], capture_output=True, text=True, check=False)
        assert (done.returncode, done.stdout) == (0, "")


def _read_exec(told: str) -> list[str]:
    """Exec as the specification has it read: the string's escapes, then the quotes', then the double percent."""
    quoted, _, rest = told.replace("\\\\", "\\").rpartition('" ')
    plain, escaped = "", False
    for sign in quoted[1:]:
        if sign == "\\" and not escaped:
            escaped = True
            continue
        plain, escaped = plain + sign, False
    return [plain.replace("%%", "%"), rest]


def test_the_application_bears_the_entrys_name(qapp: QApplication, monkeypatch: pytest.MonkeyPatch) -> None:
    assert "StartupWMClass=calibrator" in resource("desktop/calibrator.desktop").read_text("utf-8")
    monkeypatch.setattr("calibrator.desk.app.QApplication", lambda arguments: qapp)
    assert make_application([]).desktopFileName() == "calibrator"
    assert not qapp.windowIcon().isNull()
