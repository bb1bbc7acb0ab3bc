"""From readings as typed to all that a check says: solids each way, verdict, correction, causes. No window."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import field
from datetime import datetime

from PySide6.QtCore import QCoreApplication

from calibrator.desk.mix_batch import Batch, batch_of, others, planned
from calibrator.desk.mix_tools import Tools, hydrometer, own_line, references_for, refractometer, thermometer
from calibrator.desk.refusals import in_words
from calibrator.model import Composition, InstrumentCheckKind, InstrumentKind, Pail, Reading, ReadingKind
from calibrator.science.causes import Cause, likeliest, told
from calibrator.science.check import (
    Caution,
    Judged,
    PailsCompared,
    best,
    cautions,
    compare_pails,
    contradict,
    deciding,
    disagree,
    judge,
    reading_for,
)
from calibrator.science.correction import Addition, Correction, correct
from calibrator.science.correction import Batch as InVessel
from calibrator.science.errors import CannotCompute
from calibrator.science.mix_density import (
    VOLUME_U_SHARE,
    blend_volume_u,
    by_finished_volume,
    by_hydrometer,
    by_jug,
    cannot_see_powder,
    mix_in_jug_g,
    mix_shows_sg,
)
from calibrator.science.mixing import Mix
from calibrator.science.other_batch import calves_of, instruments, is_batch
from calibrator.science.own_line import Line
from calibrator.science.refractometer import Brix, Refractometer, brix
from calibrator.science.scale import ScaleFacts
from calibrator.science.scoop import volume_ml
from calibrator.science.scoopfuls import ScoopCount, normal_u
from calibrator.science.scoops import usual
from calibrator.science.solids import Solids, SolidsFrom, by_own_line, by_trade_rule, by_whole_milk, with_others
from calibrator.science.stats import mean_of
from calibrator.science.sucrose import brix_from_refractometer_sg
from calibrator.science.thermometer import Thermometer, Warmth, warmth
from calibrator.values import dataclass

translate = QCoreApplication.translate

USUAL_BRIX = 11.0  # any reading that mixes give: the ways are straight lines over it
STORE_C = 15.0  # powder as stored, where nobody says

TEMPERATURES = (ReadingKind.WATER_TEMPERATURE, ReadingKind.MIX_TEMPERATURE, ReadingKind.CALF_TEMPERATURE)
VOLUME_KINDS = (ReadingKind.FINISHED_VOLUME, ReadingKind.FINISHED_LEVEL)
BRIX_KINDS = (ReadingKind.BRIX, ReadingKind.REFRACTOMETER_SG)


@dataclass(frozen=True)
class Aim:
    """What the mix is to be: solids and tolerance as shares of the mix."""

    target_share: float
    tolerance_share: float


@dataclass(frozen=True)
class MixFindings:
    """All that the readings reach to; what they do not is None. `troubles` are sentences on single readings.

    `ways` holds the solids by each way, `best` the one that the verdict rests on, `references` how many
    reference mixes its line has. `shown_brix` is the mean of the drops as shown. `correction_planned` tells
    that the correction took the chart's volume, for none was read. `warm` are the temperatures with the
    thermometer's error taken off, `thermometer` what is known of it. `line` is the farm's own, where it served,
    and `read` the °Brix of the drops with zero and temperature reckoned in. `at_odds_checked` tells that the
    instruments of ways at odds were checked in plain water that day: nothing orders it once more. `volume_blind` tells
    that the volume differs from the instrument only because it takes the powder for right. `other` is the
    batch that volume and instrument are right for in place of the chosen one, `contradicts` tells that both cannot be
    true: while either is so, no amount is told to be added.
    """

    ways: tuple[Solids, ...] = ()
    best: Solids | None = None
    references: int = 0
    line: Line | None = None
    read: Brix | None = None
    shown_brix: float | None = None
    judged: Judged | None = None
    at_odds_ways: tuple[Solids, ...] = ()
    at_odds_checked: bool = False
    volume_blind: bool = False
    other: Batch | None = None
    contradicts: bool = False
    pails: PailsCompared | None = None
    correction: Correction | None = None
    correction_scoops: ScoopCount | None = None
    correction_planned: bool = False
    causes: tuple[Cause, ...] = ()
    cautions: tuple[Caution, ...] = ()
    warm: tuple[tuple[ReadingKind, Warmth], ...] = ()
    thermometer: Thermometer | None = None
    troubles: tuple[str, ...] = ()
    jug_off_share: float = 0.0  # how much too much the scale showed of the jug, which is taken off
    lot_before: bool = False  # whether one was fed before, whose line may still be filled to

    @property
    def at_odds(self) -> bool:
        """Whether two ways contradict each other."""
        return bool(self.at_odds_ways)

    @property
    def odds_of_volume(self) -> bool:
        """Whether one of them is the finished volume: it stays at odds where water and powder are both wrong, however
        often both are read."""
        return any(way.way is SolidsFrom.FINISHED_VOLUME for way in self.at_odds_ways)

    @property
    def batch_doubted(self) -> bool:
        """Whether it has to be settled first what was read of which batch."""
        return self.other is not None or self.contradicts

    @property
    def by_own_line(self) -> Solids | None:
        """The solids by the farm's own line, whatever the verdict rests on."""
        return next((solids for solids in self.ways if solids.way is SolidsFrom.OWN_LINE), None)


@dataclass
class _Work:
    """A check being worked out."""

    batch: Batch
    readings: Sequence[Reading]
    tools: Tools
    at: datetime
    corrected: bool = False
    troubles: list[str] = field(default_factory=list)
    references: int = 0
    line: Line | None = None
    read: Brix | None = None
    jug_off_share: float = 0.0

    def values(self, *kinds: ReadingKind, pail: Pail | None = None) -> list[float]:
        return [r.value for r in self.readings if r.kind in kinds and pail in (None, r.pail)]

    def one(self, kind: ReadingKind) -> float | None:
        found = self.values(kind)
        return found[-1] if found else None

    def thermometer(self) -> Thermometer:
        return thermometer(self.tools, self.instrument_of(*TEMPERATURES), self.at)

    def warmth(self, kind: ReadingKind) -> Warmth | None:
        """A temperature as it really was, the thermometer's error taken off."""
        shown = self.one(kind)
        return None if shown is None else warmth(shown, self.thermometer())

    def mix_c(self) -> float:
        """How warm the mix is: as read, else the water as the chart has it."""
        found = self.warmth(ReadingKind.MIX_TEMPERATURE)
        return self.batch.water_c if found is None else found.celsius

    def instrument_of(self, *kinds: ReadingKind) -> str:
        return next((r.instrument_id for r in self.readings if r.kind in kinds), "")

    def drops(self, pail: Pail | None = None) -> list[float]:
        """The drops in °Brix, those of the SG scale brought over by the sugar table."""
        sg = [brix_from_refractometer_sg(v) for v in self.values(ReadingKind.REFRACTOMETER_SG, pail=pail)]
        return self.values(ReadingKind.BRIX, pail=pail) + sg

    def attempt(self, make: Callable[[], list[Solids]]) -> list[Solids]:
        """What a way gives; where it gives nothing, the reason is told."""
        try:
            return make()
        except CannotCompute as error:
            self.troubles.append(in_words(error))
            return []


def work_out(
    batch: Batch,
    readings: Sequence[Reading],
    aim: Aim | None,
    tools: Tools,
    at: datetime,
    *,
    corrected: bool = False,
    batch_sure: bool = False,
) -> MixFindings:
    """All that a check's readings reach to. Never raises: what cannot be is told in `troubles`.

    In a mix that was `corrected` powder and water are no longer those of the chart: its volume tells no solids, and
    no slip of the chart is looked for. With `batch_sure` somebody was asked whose batch it is, and said
    the chosen one's.
    """
    work = _Work(batch, readings, tools, at, corrected)
    makers = (_by_drops, _by_hydrometer, _by_jug, *(() if corrected else (_by_volume,)))
    ways = tuple(solids for make in makers for solids in work.attempt(_bound(make, work)))
    chosen = _chosen(work, ways, aim)
    judged = _judged(work, chosen, aim)
    other = None if batch_sure else _other(work, ways, chosen, aim)
    able = _able_to_differ(work, ways)
    contradicts = other is None and _contradicts(able, aim)
    settled = None if other or contradicts else judged
    correction, scoops, as_planned = _correction(work, settled, chosen)
    return MixFindings(
        ways=ways,
        best=chosen,
        references=work.references,
        line=work.line,
        read=work.read,
        shown_brix=_shown(work),
        judged=judged,
        lot_before=work.batch.now.lot_before,
        jug_off_share=work.jug_off_share,
        at_odds_ways=(at_odds := _at_odds(able)),
        at_odds_checked=bool(at_odds) and all(_checked_that_day(work, way) for way in at_odds),
        volume_blind=not at_odds and bool(_at_odds(ways)),
        other=other,
        contradicts=contradicts,
        pails=_pails(work),
        correction=correction,
        correction_scoops=scoops,
        correction_planned=as_planned,
        causes=_causes(work, settled, chosen),
        cautions=_cautions(work, chosen),
        warm=tuple((kind, found) for kind in TEMPERATURES if (found := work.warmth(kind)) is not None),
        thermometer=work.thermometer(),
        troubles=tuple(dict.fromkeys(work.troubles)),
    )


def right_brix(batch: Batch, aim: Aim, tools: Tools, instrument_id: str, at: datetime) -> float | None:
    """What the refractometer would show of a mix as wanted, °Brix; None where no way tells it."""
    usual = Reading(kind=ReadingKind.BRIX, value=USUAL_BRIX, typed="", instrument_id=instrument_id)
    work = _Work(batch, [usual], tools, at)
    ways = work.attempt(_bound(_by_drops, work))
    return reading_for(USUAL_BRIX, best(ways), aim.target_share) if ways else None


@dataclass(frozen=True)
class RightReading:
    """What a hydrometer (SG) or a jug weighed full, without the jug (g), would show of a mix as wanted, and at how
    warm a mix, °C."""

    kind: InstrumentKind
    value: float
    mix_c: float


def right_sg(
    batch: Batch, aim: Aim, tools: Tools, readings: Sequence[Reading], tool_id: str, at: datetime
) -> RightReading:
    """For the mix as warm as it was read, else as warm as its water is planned to be.

    Raises CannotCompute for an aim that no mix can have.
    """
    mix_c = _Work(batch, readings, tools, at).mix_c()
    shown = mix_shows_sg(aim.target_share, hydrometer(tools, tool_id, at), batch.powder, mix_c)
    return RightReading(InstrumentKind.HYDROMETER, shown, mix_c)


def right_in_jug(
    batch: Batch, aim: Aim, tools: Tools, readings: Sequence[Reading], tool_id: str, at: datetime
) -> RightReading:
    """The same by weight. Raises CannotCompute for an aim that no mix can have, and for a jug of unknown volume."""
    mix_c = _Work(batch, readings, tools, at).mix_c()
    jug_ml, _ = _jug(tools, tool_id)
    held_g = mix_in_jug_g(aim.target_share, jug_ml, batch.powder, mix_c)
    return RightReading(InstrumentKind.JUG, _scale_of_jug(batch, tools, tool_id).shown_g(held_g), mix_c)


def right_by_line(line: Line, tool: Refractometer, target_share: float) -> float:
    """The same by the farm's own line. Raises CannotCompute where it tells nothing."""
    return reading_for(USUAL_BRIX, by_own_line(brix([USUAL_BRIX], tool, None), line), target_share)


def _chosen(work: _Work, ways: Sequence[Solids], aim: Aim | None) -> Solids | None:
    if not ways:
        return None
    if aim is not None:
        try:
            return deciding(ways, aim.target_share, aim.tolerance_share)
        except CannotCompute:
            pass  # `_judged` tells it
    return best(ways)


def _contradicts(ways: Sequence[Solids], aim: Aim | None) -> bool:
    try:
        return bool(ways) and aim is not None and contradict(ways, aim.target_share, aim.tolerance_share)
    except CannotCompute:
        return False  # `_judged` tells it


def _other(work: _Work, ways: Sequence[Solids], chosen: Solids | None, aim: Aim | None) -> Batch | None:
    """The batch that the finished volume is, where it is surely not that of the chosen one: another group's, or one
    for more or fewer calves of the same. As any volume would be such a one, an instrument has to bear it out and must
    not lean the volume's way."""
    volume, mix = _volume_read(work), work.batch.mix
    by_volume = next((way for way in ways if way.way is SolidsFrom.FINISHED_VOLUME), None)
    if volume is None or mix is None or by_volume is None or aim is None:
        return None
    try:
        if not judge(by_volume, aim.target_share, aim.tolerance_share).verdict.outside:
            return None
        calves = calves_of(volume[0], mix.volume_ml, work.batch.calves)
        resized = [_for_calves(work.batch, calves)] if chosen is not by_volume and calves != work.batch.calves else []
        every = (*others(work.batch), *resized)
        return next((one for one in every if one.mix and is_batch(*volume, ways, *_wanted(one.mix, aim))), None)
    except CannotCompute:
        return None


def _wanted(mix: Mix, aim: Aim) -> tuple[float, float, float]:
    return mix.volume_ml, mix.solids_share, aim.tolerance_share


def _for_calves(batch: Batch, calves: int) -> Batch:
    return batch_of(batch.now, batch.plan, batch.group, calves, batch.vessel)


def _bound(make: Callable[[_Work], list[Solids]], work: _Work) -> Callable[[], list[Solids]]:
    def made() -> list[Solids]:
        return make(work)

    return made


def _by_drops(work: _Work) -> list[Solids]:
    drops = work.drops()
    if not drops:
        return []
    instrument_id = work.instrument_of(*BRIX_KINDS)
    tool = refractometer(work.tools, instrument_id, work.at)
    read = work.read = brix(drops, tool, work.one(ReadingKind.PRISM_TEMPERATURE))
    lot = work.batch.now.powder.lot
    mixes = references_for(work.tools, lot.id if lot else "", instrument_id)
    if len(mixes) >= 2:
        try:
            line = own_line(work.tools, mixes)
            found = [with_others(by_own_line(read, line), work.batch.others_share)]
        except CannotCompute as error:
            work.troubles.append(in_words(error))
        else:
            work.references, work.line = len(mixes), line
            return found
    rules = by_whole_milk(read, work.batch.powder), by_trade_rule(read)
    return [with_others(solids, work.batch.others_share) for solids in rules]


def _shown(work: _Work) -> float | None:
    try:
        drops = work.drops()
    except CannotCompute:
        return None
    return mean_of(drops) if drops else None


def _warm(work: _Work) -> Warmth:
    found = work.warmth(ReadingKind.MIX_TEMPERATURE)
    if found is None:
        raise CannotCompute(
            translate("MixChecks", "Type the temperature of the mix too: a density tells the solids only with it.")
        )
    return found


def _by_hydrometer(work: _Work) -> list[Solids]:
    readings = work.values(ReadingKind.HYDROMETER_SG)
    if not readings:
        return []
    tool = hydrometer(work.tools, work.instrument_of(ReadingKind.HYDROMETER_SG), work.at)
    warm = _warm(work)
    room_u = blend_volume_u(work.batch.others_share)
    return [by_hydrometer(readings, tool, work.batch.powder, warm.celsius, room_u, warm.u_c)]


def _by_jug(work: _Work) -> list[Solids]:
    masses = work.values(ReadingKind.JUG_MASS)
    if not masses:
        return []
    tool_id, powder = work.instrument_of(ReadingKind.JUG_MASS), work.batch.powder
    jug_ml, jug_u_ml = _jug(work.tools, tool_id)
    scale, warm = _scale_of_jug(work.batch, work.tools, tool_id), _warm(work)
    work.jug_off_share, room_u = scale.off_share, blend_volume_u(work.batch.others_share)
    return [by_jug(masses, jug_ml, jug_u_ml, scale, powder, warm.celsius, room_u, warm.u_c)]


def _scale_of_jug(batch: Batch, tools: Tools, tool_id: str) -> ScaleFacts:
    """What the scale of the weigh-in adds to a jug: its error cancels where it told the jug's volume by water."""
    jug, scale = tools.find(tool_id), batch.now.powder.scale
    return ScaleFacts(scale.resolution_g) if jug and jug.volume_by_water else scale


def _jug(tools: Tools, tool_id: str) -> tuple[float, float]:
    """What a jug holds, and the doubt in it, mL. Raises CannotCompute where nobody entered that."""
    jug = tools.find(tool_id)
    if jug is None or jug.volume_ml is None:
        raise CannotCompute(translate("MixChecks", "Enter the jug and its volume under Instruments first."))
    return jug.volume_ml, jug.volume_u_ml


def finished_ml(work: _Work) -> float | None:
    """The finished volume as read, or from the level in a vessel whose shape is known."""
    volume, level = work.one(ReadingKind.FINISHED_VOLUME), work.one(ReadingKind.FINISHED_LEVEL)
    if volume is not None or level is None:
        return volume
    vessel = work.batch.vessel
    if vessel is None or vessel.shape is None:
        raise CannotCompute(
            translate(
                "MixChecks", "The shape of this vessel is not known, so a level tells no volume: type the volume."
            )
        )
    return volume_ml(vessel.shape, level)


def _by_volume(work: _Work) -> list[Solids]:
    volume, mix = finished_ml(work), work.batch.mix
    if volume is None or mix is None:
        return []
    spread = normal_u(work.batch.scoops.spread_95_g) if work.batch.scoops else 0.0
    powder = work.batch.powder
    return [by_finished_volume(volume, VOLUME_U_SHARE * volume, mix.powder_g, spread, powder, work.mix_c())]


def _judged(work: _Work, chosen: Solids | None, aim: Aim | None) -> Judged | None:
    if chosen is None or aim is None:
        return None
    try:
        return judge(chosen, aim.target_share, aim.tolerance_share)
    except CannotCompute as error:
        work.troubles.append(in_words(error))
        return None


_OF_DROPS = (SolidsFrom.OWN_LINE, SolidsFrom.WHOLE_MILK, SolidsFrom.TRADE_RULE)


def _checked_that_day(work: _Work, way: Solids) -> bool:
    """Whether a way's instrument was checked in plain water on the day; a volume is read with none."""
    if way.way is SolidsFrom.FINISHED_VOLUME:
        return True
    kinds = {SolidsFrom.HYDROMETER: (ReadingKind.HYDROMETER_SG,), SolidsFrom.JUG: (ReadingKind.JUG_MASS,)}
    instrument_id = work.instrument_of(*kinds.get(way.way, BRIX_KINDS))
    made = work.tools.newest(instrument_id, InstrumentCheckKind.WATER, work.at)
    return made is not None and made.at.astimezone().date() == work.at.astimezone().date()


def _able_to_differ(work: _Work, ways: Sequence[Solids]) -> Sequence[Solids]:
    """The ways without a finished volume that is as it would be with the powder that the surest instrument saw: it
    takes the powder for right, and could not show that it is wrong."""
    volume, mix, own = _volume_read(work), work.batch.mix, instruments(ways)
    if volume is None or mix is None or not own:
        return ways
    powder = work.batch.powder
    blind = cannot_see_powder(*volume, best(own), mix.water_ml, powder, work.batch.water_c)
    return own if blind else ways


def _at_odds(ways: Sequence[Solids]) -> tuple[Solids, ...]:
    """The two ways that contradict each other, instruments first; two rules over the same drops are one instrument."""
    drops = [w for w in ways if w.way in _OF_DROPS][:1]
    others = [w for w in ways if w.way not in _OF_DROPS]
    apart = sorted(drops + others, key=_is_volume)
    pairs = ((a, b) for n, a in enumerate(apart) for b in apart[n + 1 :])
    return next(((a, b) for a, b in pairs if disagree(a, b)), ())


def _is_volume(solids: Solids) -> bool:
    return solids.way is SolidsFrom.FINISHED_VOLUME


def _pails(work: _Work) -> PailsCompared | None:
    try:
        first, last = work.drops(Pail.FIRST), work.drops(Pail.LAST)
        tool = refractometer(work.tools, work.instrument_of(*BRIX_KINDS), work.at)
        return compare_pails(first, last, tool) if first and last else None
    except CannotCompute:
        return None


def _correction(
    work: _Work, judged: Judged | None, chosen: Solids | None
) -> tuple[Correction | None, ScoopCount | None, bool]:
    if judged is None or chosen is None or not judged.verdict.outside:
        return None, None, False
    powder, mix = work.batch.now.powder, work.batch.mix
    try:
        read = finished_ml(work)
        volume = read if read is not None else mix.volume_ml if mix else None
        if volume is None:
            return None, None, False
        in_vessel = InVessel(volume, work.mix_c(), chosen.share)
        label = powder.lot.composition if powder.lot else Composition()
        addition = Addition(work.batch.powder, label, STORE_C, work.batch.water_c, work.batch.shares)
        found = correct(in_vessel, judged.target, addition, work.batch.vessel)
    except CannotCompute as error:
        work.troubles.append(in_words(error))
        return None, None, False
    return found, correction_count(found.powder_g, work.batch), read is None


def correction_count(powder_g: float, batch: Batch) -> ScoopCount | None:
    """The scoopfuls of a correction with the part fills of the plan's chart, filled as that has them filled where such
    a count comes within the farm's tolerance; else whichever does, and else whichever comes near at all."""
    ways = batch.now.powder.ways
    if powder_g <= 0 or not ways:
        return None
    tolerances = min(batch.now.farm.tolerance_share, _COUNT_TOLERANCE), _COUNT_TOLERANCE
    counts = (usual(powder_g, ways, each, fractions=batch.fractions, manner=batch.manner) for each in tolerances)
    return next((count for count in counts if count is not None and count.told), None)


# A correction in scoopfuls need not be finer than this: it is a small part of the whole.
_COUNT_TOLERANCE = 0.1


def _causes(work: _Work, judged: Judged | None, chosen: Solids | None) -> tuple[Cause, ...]:
    plan = planned(work.batch)
    if judged is None or chosen is None or plan is None or work.corrected or not judged.verdict.outside:
        return ()
    try:
        return told(likeliest(chosen, plan, _volume_read(work)))
    except CannotCompute as error:
        work.troubles.append(in_words(error))
        return ()


def _volume_read(work: _Work) -> tuple[float, float] | None:
    """The finished volume as read, mL, with its standard uncertainty; None where none was, or none that can be."""
    try:
        read = finished_ml(work)
    except CannotCompute:
        return None  # told where the volume itself is asked for
    return None if read is None or read <= 0 else (read, VOLUME_U_SHARE * read)


def _cautions(work: _Work, chosen: Solids | None) -> tuple[Caution, ...]:
    water, mix, calf = (work.warmth(kind) for kind in TEMPERATURES)
    known = [warm for warm in (water, mix, calf) if warm]
    return cautions(
        chosen.share if chosen else None,
        work.batch.powder,
        water_c=water.celsius if water else None,
        mix_c=mix.celsius if mix else None,
        calf_c=calf.celsius if calf else None,
        doubt_c=known[0].half_width_c if known else 0.0,
    )
