"""The records on screen: everything out, in again, as a workbook, and what is said where that cannot be."""

from __future__ import annotations

import shutil
import zipfile
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from answers import Answers
from openpyxl import load_workbook
from pytestqt.qtbot import QtBot
from speaking import speaking

from calibrator.desk.context import Desk
from calibrator.desk.forms.records_form import RecordsForm
from calibrator.desk.lot_history.words import Speaker
from calibrator.desk.plain_text import on_screen
from calibrator.desk.refusals import in_words
from calibrator.desk.trust_words import findings_words, loss_words, moment, salvaged_words, watching_words, what_to_do
from calibrator.model import Farm, Lot
from calibrator.records import Fault, Finding, ImportRefused, Records, import_season
from calibrator.records.entries import read_changes
from calibrator.records.exporting import export_file
from calibrator.records.lot_history import Topic, lot_history
from calibrator.records.salvage import Loss, Salvaged
from tests.exported import export_text
from tests.records import invented


@pytest.fixture
def form(qtbot: QtBot, desk: Desk) -> RecordsForm:
    made = RecordsForm(desk)
    qtbot.addWidget(made)
    made.reload()
    return made


def test_everything_goes_out_and_is_found_there_already(
    form: RecordsForm, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    answers.path = tmp_path / "all.json"
    form.export_button.click()
    assert answers.path.read_text(encoding="utf-8") == export_text(desk.records)
    form.import_button.click()
    assert answers.told == [f"0 entries were brought in. {desk.records.version()} were there already."]


def _changed_on_both_sides(desk: Desk, tmp_path: Path, kind: type[Farm | Lot], **told: str) -> Path:
    """The export of other records that began as these; a thing was changed there and then here too."""
    file = tmp_path / "two.json"
    export_file(desk.records, file)
    with Records.open(str(tmp_path / "other.sqlite")) as other:
        import_season(other, file)
        other.keep(replace(other.every(kind)[0], **told))
        export_file(other, file)
    desk.records.keep(replace(desk.records.every(kind)[0], **{name: f"{value} here" for name, value in told.items()}))
    return file


def test_a_farm_renamed_on_both_sides_keeps_its_name_here_and_that_is_told(
    form: RecordsForm, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    answers.path = _changed_on_both_sides(desk, tmp_path, Farm, name="New Farm")
    form.import_button.click()
    assert "The settings of the farm New Farm here were changed here and in the file" in answers.told[0]


def test_what_went_different_ways_is_said_in_one_language(
    form: RecordsForm, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    answers.path = _changed_on_both_sides(desk, tmp_path, Lot, lot_number="77")
    with speaking("es"):
        form.import_button.click()
    said = answers.told[0].split(":", 1)[1]
    assert said.startswith(
        " Este dato (lote) se cambió en dos computadoras por separado: se queda ‘77 here’; ‘77’ no se tomó. No se"
    )
    assert said.endswith(" No se trajo nada.")


def test_a_workbook_of_everything(form: RecordsForm, answers: Answers, tmp_path: Path) -> None:
    answers.path = tmp_path / "all.xlsx"
    form.workbook_button.click()
    assert load_workbook(answers.path)["lots"].max_row == 2


def test_everything_as_csv_in_one_zip(form: RecordsForm, answers: Answers, tmp_path: Path) -> None:
    answers.path = tmp_path / "all.zip"
    form.texts_button.click()
    with zipfile.ZipFile(answers.path) as packed:
        assert {"farms.csv", "lots.csv", "fills.csv", "sign_offs.csv"} <= set(packed.namelist())
        assert packed.read("lots.csv").startswith(b"\xef\xbb\xbfkept_at,")
        assert b"25-0302A" in packed.read("lots.csv")


def test_a_file_that_is_none_of_ours_is_refused_in_words(
    form: RecordsForm, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    answers.path = tmp_path / "strange.json"
    answers.path.write_text("lot;bags", encoding="utf-8")
    form.import_button.click()
    assert answers.told == ["strange.json cannot be read: it is not JSON text. Nothing was brought in."]
    assert len(desk.records.every(Lot)) == 1


def test_why_a_file_cannot_be_read_is_said_in_the_language_of_the_screen(tmp_path: Path) -> None:
    file = tmp_path / "strange.json"
    file.write_text("lot;bags", encoding="utf-8")
    with pytest.raises(ImportRefused) as refused:
        read_changes(file)
    with speaking("es"):
        assert in_words(refused.value) == "No se puede leer strange.json: no es texto JSON. No se trajo nada."


def test_there_being_no_copy_is_said(form: RecordsForm, desk: Desk) -> None:
    assert form.copies.count() == 1  # that of today's opening
    (copy,) = desk.records.backups()
    copy.path.unlink()
    form.reload()
    assert form.copies.count() == 0
    assert not form.no_copies.isHidden()
    assert not form.put_back_button.isEnabled()


def test_what_is_lost_is_told_one_by_one_and_the_rest_is_in_the_file() -> None:
    lost = tuple(Loss(number, "fill", lot_number="25-0302A") for number in range(20))
    told = Salvaged(Path("farm-damaged.sqlite"), 7, 0, None, None, lost)
    assert "20 entries are lost:\n· fill of lot 25-0302A, number 0;" in salvaged_words(told)
    assert salvaged_words(told).endswith("· …")
    assert salvaged_words(told, most=None).count("·") == 20


@pytest.mark.parametrize(
    ("what", "told"),
    [
        ("restore_trial_fill", "fill of a trial"),
        ("strike_spot_fill", "spot fill"),
        ("strike_fill", "fill"),
        ("sign_off", "sign-off"),
        ("weigh_in", "weigh-in"),
    ],
)
def test_whatever_is_lost_is_called_by_its_name(what: str, told: str) -> None:
    assert loss_words(Loss(7, what)) == f"{told}, number 7; when and by whom is lost too"


def test_sign_offs_from_before_the_fingerprints_are_told_as_watched_from_then_on() -> None:
    since = datetime(2026, 3, 2, 12, tzinfo=UTC)
    assert "are watched from then on" not in watching_words(None)
    told = f"before {moment(since)} are watched from then on; an edit made earlier cannot be told."
    assert watching_words(since).endswith(told)


def test_the_tab_and_the_lot_tell_since_when_an_older_sign_off_is_watched(
    qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    older = Path(invented.__file__).with_name("frozen") / "layout_0005.sqlite"
    with Records.open(str(shutil.copy(older, tmp_path / "records.sqlite"))) as records:
        since = records.watched_since()
        assert since is not None
        desk = Desk(records, answers)
        tab = RecordsForm(desk)
        qtbot.addWidget(tab)
        tab.reload()
        assert f"before {moment(since)} are watched" in tab.watching.text()
        signed = [one for farm in records.every(Farm) for one in records.sign_offs(farm.id)]
        entries = [one for one in lot_history(records, signed[0].lot_id) if one.topic is Topic.SIGN_OFF]
        told = Speaker(desk.system, {}).told(entries[0]).what
        assert told.endswith(f"Watched for later edits from {moment(since)} on.")


def test_what_to_do_about_a_later_edit_names_the_copy_that_has_all_right() -> None:
    days = [datetime(2026, 3, day, 6, tzinfo=UTC) for day in (4, 2)]
    found = [Finding(Fault.CHANGED, "f", str(day), right_until=day) for day in days]
    assert f"choose the copy of {moment(days[1])} under Set-up, Records, Copies" in what_to_do(found)
    assert "No copy holds it as it was signed" in what_to_do([Finding(Fault.SLIPPED_IN, "f", "s")])
    assert what_to_do(found) in findings_words(found)


def test_many_findings_end_with_what_to_do_and_none_is_lost(form: RecordsForm) -> None:
    day = datetime(2026, 3, 4, 6, tzinfo=UTC)
    found = tuple(Finding(Fault.CHANGED, "f", str(n), f"25-{n:04}A", day, "AB", day, day) for n in range(40))
    told = findings_words(found)
    assert len(on_screen(told)) == len(told)
    assert "And 36 more: Set-up, Records, Check now tells each." in told
    form._tell_found(found)
    assert "25-0039A" in form.verdict.text()
    assert form.verdict.text().endswith(what_to_do(found))
