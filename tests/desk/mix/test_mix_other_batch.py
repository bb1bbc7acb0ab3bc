"""A finished volume that is another batch's: it is asked whose it is, and nothing is told to be added before."""

from __future__ import annotations

from dataclasses import replace

import pytest
from herd import Herd, group
from mix_hands import labels, type_in
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.mix_batch import Batch, batch_of
from calibrator.desk.mix_put_right import put_right_words
from calibrator.desk.mix_tools import read_tools
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.standing import standing
from calibrator.model import MixCheck, Plan
from calibrator.science.solids import SolidsFrom


@pytest.fixture
def page(page: MixCheckPage, herd: Herd, desk: Desk) -> MixCheckPage:
    """With a second plan, whose older calves get a thinner mix; their batch is chosen."""
    thinner = replace(group(1).rate, powder_mass_g=270.0)
    herd.plan("Calf barn", group(21, "Younger"), group(40, "Older", rate=thinner))
    desk.changed.emit()
    _choose(page, "Calf barn, Older")
    return page


def _choose(page: MixCheckPage, name: str) -> None:
    form = page.check.batch_form
    at = form.group.findText(name)
    form.group.setCurrentIndex(at)
    form.group.activated.emit(at)


def _batch_for(page: MixCheckPage, name: str) -> Batch:
    form = page.check.batch_form
    now = form.batch().now
    plan = next(plan for plan in now.plans if plan.name == "Calf barn")
    fed = next(one for one in plan.groups if one.name == name)
    return batch_of(now, plan, fed, fed.calves, None)


def _read(qtbot: QtBot, page: MixCheckPage, volume_ml: float, drops: str = "") -> None:
    readings = page.check.readings
    readings.first.set_text("")
    if drops:
        type_in(qtbot, readings.first.line, drops)
    type_in(qtbot, readings.volume.line, f"{volume_ml / 1000:.1f} L")


@pytest.mark.parametrize("drops", ["", "10.7"])
def test_the_batch_of_another_group_is_asked_about_and_taken_with_one_press(
    qtbot: QtBot, page: MixCheckPage, drops: str
) -> None:
    panel, told = page.check, page.check.verdict
    _read(qtbot, page, _batch_for(page, "Younger").mix.volume_ml, drops)
    assert told.verdict.text() == "Whose batch is this?"
    assert "Calf barn, Younger" in told.today.text()
    assert panel.found.correction is None
    assert not panel.found.causes
    shown = labels(told)
    assert "Add " not in shown
    assert "Too strong" not in shown
    assert told.other.isVisibleTo(page)
    told.other.click()
    batch = panel.batch_form.batch()
    assert (batch.group.name, batch.calves) == ("Younger", 21)
    assert panel.found.other is None
    assert not told.other.isVisibleTo(page)
    assert told.verdict.text() in ("As it should be", "Looks right")


def test_who_says_that_it_is_the_chosen_batch_is_told_of_that_one(qtbot: QtBot, page: MixCheckPage) -> None:
    panel, told = page.check, page.check.verdict
    _read(qtbot, page, _batch_for(page, "Younger").mix.volume_ml)
    told.chosen.click()
    assert told.verdict.text() == "Too strong"
    assert panel.found.correction is not None
    type_in(qtbot, panel.readings.first.line, "10.7")  # and the drops rule that out
    assert panel.found.other is None
    assert panel.found.contradicts
    assert told.verdict.text() == "Cannot tell yet"
    assert panel.found.correction is None
    shown = labels(told)
    assert "cannot both be right" in shown
    assert "Likeliest" not in shown
    assert "of water" not in told.correction.text() or not told.correction.isVisibleTo(page)
    panel.keep()
    assert told.now.text() == ""


def test_a_batch_for_fewer_calves_is_asked_about_where_the_drops_are_right(qtbot: QtBot, page: MixCheckPage) -> None:
    panel, told = page.check, page.check.verdict
    mix = _batch_for(page, "Older").mix
    _read(qtbot, page, 0.4 * mix.volume_ml, "10.5 10.5 10.5")
    assert told.verdict.text() == "For how many calves is this?"
    assert "The batch of Calf barn, Older for 16 calves is about" in told.today.text()
    assert "for 40 it is" in told.today.text()
    told.other.click()
    batch = panel.batch_form.batch()
    assert (batch.group.name, batch.calves) == ("Older", 16)
    assert told.verdict.text() == "Looks right"


def test_the_batch_follows_the_plan_as_it_is_today_unless_calves_were_typed(
    qtbot: QtBot, page: MixCheckPage, desk: Desk
) -> None:
    panel, told = page.check, page.check.verdict
    for calves in (36, 34):
        _feed_older(page, desk, calves)
        assert panel.batch_form.calves.count() == calves
    _read(qtbot, page, panel.batch_form.batch().mix.volume_ml, "10.5 10.5 10.5")
    assert told.verdict.text() == "Looks right"
    panel.batch_form.calves.set_count(30)
    _feed_older(page, desk, 38)
    assert panel.batch_form.calves.count() == 30


def _feed_older(page: MixCheckPage, desk: Desk, calves: int) -> None:
    plan = next(plan for plan in desk.records.every(Plan) if plan.name == "Calf barn")
    younger, older = plan.groups
    desk.keep(replace(plan, groups=(younger, replace(older, calves=calves))))
    page.reload()


def test_a_check_kept_before_it_was_said_whose_batch_it_is_tells_no_amount_later(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    _read(qtbot, page, _batch_for(page, "Younger").mix.volume_ml)
    page.check.keep()
    (check,) = desk.records.every(MixCheck)
    assert check.way == SolidsFrom.FINISHED_VOLUME
    told = put_right_words(
        herd.records, herd.farm, standing(herd.records, herd.farm), read_tools(herd.records, herd.farm), check
    )
    assert told == "First read it again, the volume too, and look whose batch it was."


def test_the_next_check_is_told_whose_it_is_taken_for(qtbot: QtBot, page: MixCheckPage) -> None:
    panel, told = page.check, page.check.verdict
    type_in(qtbot, panel.readings.first.line, "10.4")
    assert told.whose.text() == "The batch for Calf barn, Older"
    panel.keep()
    assert told.whose.text() == "The batch for Calf barn, Older"  # of the one that was kept
    type_in(qtbot, panel.readings.first.line, "10.4")
    assert told.whose.text().startswith("Taken to be the batch for Calf barn, Older.")
    panel.read_again()
    assert told.whose.text() == "The batch for Calf barn, Older"
