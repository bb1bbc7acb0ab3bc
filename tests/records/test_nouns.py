"""Nouns: kept as tellings, found again, their history, and two people at the same thing."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import invented
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from invented import World
from sqlalchemy.dialects import postgresql, sqlite

from calibrator.model import Farm, FeederTrial, Instrument, Lot, Scale, Scoop, UnitSystem, Vessel, WeighIn, new_id
from calibrator.records import EditedMeanwhile, NotAllowed, Records
from calibrator.records.columns import Moment

invented.register()
_SAME_STORE = settings(suppress_health_check=list(HealthCheck), max_examples=15, deadline=None)


def test_a_kept_noun_is_found_as_it_was_given_back(records: Records) -> None:
    kept = records.keep(invented.farm(units=UnitSystem.METRIC), by="AB", why="first start")
    assert kept.revision
    assert records.find(Farm, kept.id) == kept
    assert records.revision(Farm, kept.revision) == kept


@pytest.mark.parametrize("kind", invented.NOUNS)
@_SAME_STORE
@given(data=st.data())
def test_whatever_can_be_kept_is_found_unchanged(records: Records, kind: type, data: st.DataObject) -> None:
    noun = replace(data.draw(invented.any_of(kind)), id=new_id(), revision="", **_known(records, kind))
    kept = records.keep(noun)
    assert records.find(kind, noun.id) == kept == replace(noun, revision=kept.revision)


def _known(records: Records, kind: type) -> dict[str, Any]:
    """References of a noun to things that exist."""
    farms = records.every(Farm) or [records.keep(invented.farm())]
    lots = records.every(Lot) or [records.keep(invented.lot(farms[0].id))]
    instruments = records.every(Instrument) or [records.keep(invented.instrument(farms[0].id))]
    names = {"farm_id": farms[0].id, "lot_id": lots[0].id, "instrument_id": instruments[0].id}
    nothing: dict[str, str | None] = dict.fromkeys(("scoop_id", "scale_id", "vessel_id", "plan_id", "replaces_id"))
    if kind is FeederTrial:
        nothing["scoop_id"] = records.keep(invented.scoop(farms[0].id)).id
        nothing["scale_id"] = records.keep(invented.scale(farms[0].id)).id
    return {name: id for name, id in (names | nothing).items() if name in kind.__dataclass_fields__}


@pytest.mark.parametrize("shape", invented.SHAPES)
def test_every_shape_is_kept(records: Records, shape: Any) -> None:
    farm = records.keep(invented.farm())
    kept = records.keep(invented.scoop(farm.id, shape=shape))
    assert records.find(Scoop, kept.id).shape == shape


def test_a_vessel_without_a_shape_is_kept(records: Records) -> None:
    farm = records.keep(invented.farm())
    kept = records.keep(Vessel(id=new_id(), farm_id=farm.id, name="pail", rim_volume_ml=18900.0))
    assert records.find(Vessel, kept.id).shape is None


def test_a_correction_keeps_the_older_telling(records: Records) -> None:
    first = records.keep(invented.farm(name="Wilow Bend"), by="AB")
    second = records.keep(replace(first, name="Willow Bend"), by="CD", why="misspelt")
    assert records.find(Farm, first.id) == second
    assert records.revision(Farm, first.revision) == first
    told = records.history(Farm, first.id)
    assert [(one.noun, one.by, one.why) for one in told] == [(first, "AB", ""), (second, "CD", "misspelt")]
    assert all(datetime.now(UTC) - one.at < timedelta(minutes=5) for one in told)


def test_an_unchanged_noun_makes_no_new_telling(records: Records) -> None:
    kept = records.keep(invented.farm())
    before = records.version()
    assert records.keep(kept) == kept
    assert records.version() == before


@pytest.mark.parametrize("stale", [True, False])
def test_two_who_change_the_same_thing_are_told(records: Records, stale: bool) -> None:
    first = records.keep(invented.farm())
    newest = records.keep(replace(first, name="Willow Bend Dairy"))
    late = replace(first, name="Willow Farm", revision=first.revision if stale else "")
    with pytest.raises(EditedMeanwhile) as refused:
        records.keep(late)
    assert refused.value.newest == newest
    assert records.find(Farm, first.id) == newest


def test_a_revision_of_something_unknown_is_refused(records: Records) -> None:
    with pytest.raises(NotAllowed, match="no farm with the name"):
        records.keep(invented.farm(revision="made up"))


def test_one_name_serves_one_kind(records: Records) -> None:
    farm = records.keep(invented.farm())
    with pytest.raises(NotAllowed, match="different scale is already kept"):
        records.keep(invented.scale(farm.id, id=farm.id))


def test_a_thing_stays_on_its_farm(records: Records) -> None:
    farm, other = records.keep(invented.farm()), records.keep(invented.farm())
    scale = records.keep(invented.scale(farm.id))
    with pytest.raises(NotAllowed, match="belongs to another farm"):
        records.keep(replace(scale, farm_id=other.id))


def test_a_reference_to_nothing_is_refused(records: Records) -> None:
    with pytest.raises(NotAllowed, match="This scale names something that is not in these records"):
        records.keep(invented.scale("nowhere"))
    assert records.version() == 0


@pytest.mark.parametrize(
    ("noun", "fault"),
    [
        (invented.farm(tolerance_share=float("nan")), "tolerance_share: is not a number"),
        (invented.farm(name="a\x00b"), "name: holds a character"),
    ],
)
def test_an_unsound_noun_is_refused(records: Records, noun: Farm, fault: str) -> None:
    with pytest.raises(NotAllowed, match=fault):
        records.keep(noun)
    with pytest.raises(NotAllowed, match="holds a character"):
        records.keep(invented.farm(), by="\ud800")
    assert records.version() == 0


def test_what_is_not_there_is_told_in_a_sentence(records: Records) -> None:
    with pytest.raises(NotAllowed, match="no weigh-in with the name x"):
        records.find(WeighIn, "x")
    with pytest.raises(NotAllowed, match="no lot with the name x"):
        records.revision(Lot, "x")
    assert records.history(Lot, "x") == []


def test_every_gives_the_newest_tellings_oldest_thing_first(records: Records) -> None:
    farm, other = records.keep(invented.farm()), records.keep(invented.farm())
    lots = [records.keep(invented.lot(farm.id, lot_number=number)) for number in ("Z", "A", "M")]
    records.keep(invented.lot(other.id))
    lots[0] = records.keep(replace(lots[0], note="two bags torn"))
    assert records.every(Lot, farm.id) == lots
    assert records.every(Lot, farm.id, lot_number="A") == [lots[1]]
    assert records.every(Lot, farm.id, made_on=None) == lots
    assert records.every(Lot, farm.id, lot_number="B") == []
    assert records.every(Farm) == [farm, other]
    assert records.every(Farm, other.id) == [other]
    assert len(records.every(Lot)) == 4
    assert records.has_any(Lot, farm.id)
    assert not records.has_any(Scale, farm.id)
    assert not records.has_any(Lot, "no farm")


@pytest.mark.parametrize("name", ["colour", "replaces", "change"])
def test_asking_for_a_field_that_is_none_is_a_mistake_of_the_program(records: Records, name: str) -> None:
    with pytest.raises(TypeError, match=f"Scale has no field {name}"):
        records.every(Scale, **{name: 1})


def test_the_order_does_not_rest_on_a_clock(records: Records, monkeypatch: pytest.MonkeyPatch) -> None:
    farm = records.keep(invented.farm())
    from calibrator.records import rows

    days = (datetime(2024, 1, 1, tzinfo=UTC) - timedelta(days=day) for day in range(9))
    monkeypatch.setattr(rows, "now", lambda: next(days))
    lots = [records.keep(invented.lot(farm.id)) for _ in range(3)]
    newest = records.keep(replace(lots[0], note="again"))
    assert records.every(Lot) == [newest, *lots[1:]]
    assert [change.noun for change in records.history(Lot, newest.id)] == [lots[0], newest]


@pytest.mark.parametrize("dialect", [sqlite.dialect(), postgresql.dialect()])
def test_a_moment_may_be_unknown(dialect: Any) -> None:
    assert Moment().process_bind_param(None, dialect) is None
    assert Moment().process_result_value(None, dialect) is None


def test_the_last_weigh_in_with_a_check_weight_on_a_scale(records: Records) -> None:
    """By when it was begun; as each was told last; none of another scale, or begun later."""
    world = World(records)
    other = records.keep(invented.scale(world.farm.id, id=new_id(), name="other"))
    day = timedelta(days=1)

    def weighed(days: int, reading_g: float | None, scale_id: str = world.scale.id) -> WeighIn:
        made = invented.weigh_in(
            world.lot, id=new_id(), started_at=invented.NOON + days * day, scale_id=scale_id, check_nominal_g=500.0,
            check_reading_g=reading_g,
        )  # fmt: skip
        return records.keep(made)

    before = invented.NOON + 10 * day
    assert records.last_checked(world.scale.id, before) is None
    last, first = weighed(4, 501.0), weighed(2, 500.0)
    weighed(5, None)
    weighed(6, 502.0, other.id)
    weighed(10, 503.0)
    assert records.last_checked(world.scale.id, before) == last
    records.keep(replace(last, check_reading_g=None))  # a slip of the finger: there was no check weight
    assert records.last_checked(world.scale.id, before) == first


def test_all_tellings_of_a_kind_in_one_question(records: Records) -> None:
    world = World(records)
    lots = [world.lot, records.keep(invented.lot(world.farm.id, id=new_id(), lot_number="other"))]
    records.keep(replace(lots[0], note="later"), by="AB", why="asked for")
    elsewhere = records.keep(invented.farm(id=new_id()))
    records.keep(invented.lot(elsewhere.id, id=new_id()))
    told = records.histories(Lot, world.farm.id)
    assert [(change.noun.id, change.noun.note) for change in told][-2:] == [(lots[1].id, ""), (lots[0].id, "later")]
    assert sorted(map(repr, told)) == sorted(repr(change) for lot in lots for change in records.history(Lot, lot.id))
