"""What the records say of themselves, in words: weigh-ins that another program changed, what a damage took."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from calibrator.clock import clock_text
from calibrator.desk.counted import counted
from calibrator.desk.record_sentences import kind_words
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import day_text
from calibrator.model import MixCheck, WeighIn
from calibrator.records import DiskFull, Fault, Finding, RecordsError, RecordsLocked, RecordsReadOnly
from calibrator.records.about import About
from calibrator.records.entries import Added, Entry, Signed, Struck, Told
from calibrator.records.plain import to_plain

if TYPE_CHECKING:
    from calibrator.records.outbox import Outbox, Refused
    from calibrator.records.salvage import Loss, Salvaged

translate = QCoreApplication.translate
MOST_TOLD = 12
NOTHING_KNOWN = About()
MOST_FOUND = 4  # each takes three lines of a box that must not be higher than the screen


def moment(at: datetime) -> str:
    """A day and time of day where the reader is."""
    here = at.astimezone()
    return f"{day_text(here.date())}, {clock_text(here.time())}"


def entry_kind(entry: Entry) -> str:
    """What a change is of, such as a fill or a check of the mix."""
    match entry:
        case Told(noun=thing) | Added(fact=thing) | Signed(sign_off=thing):
            return kind_words(to_plain(thing)["type"])
        case Struck():
            struck, again = translate("Trust", "fill struck out"), translate("Trust", "fill that counts again")
            return struck if entry.reason else again


def waiting_words(outbox: Outbox | None) -> str:
    """How much waits for the server, and since when; blank where nothing does."""
    since = outbox.since if outbox is not None else None
    if outbox is None or since is None:
        return ""
    return counted.still_waiting(outbox.waiting).format(since=moment(since))


def hindered_words(error: RecordsError, outbox: Outbox | None) -> str:
    """Why a server that is there takes nothing of what waits."""
    on_server = outbox is not None and error.params.get("place") != str(outbox.file)
    if on_server and isinstance(error, DiskFull):
        return translate("Trust", "Its disk is full: have whoever looks after it free some space.")
    if on_server and isinstance(error, RecordsReadOnly):
        return translate("Trust", "It lets this user write nothing: ask whoever looks after it.")
    if on_server and isinstance(error, RecordsLocked):
        return translate("Trust", "It is busy with other work.")
    return in_words(error)


def refused_words(refused: Refused, what: About = NOTHING_KNOWN) -> str:
    """What the server did not take: what it was, what was typed, of which lot, by whom and when, and why."""
    return f"{_entry_words(refused.entry, what)}: {in_words(refused.error)}"


def stuck_words(stuck: Refused, what: About) -> str:
    """Which change holds up all others, and why."""
    text = translate(
        "Trust",
        "Sending stops at this entry, because the others may rest on it. {entry} If it stays so, set it aside: it is "
        "listed here, and the others are sent.",
    )
    return text.format(entry=refused_words(stuck, what))


def _entry_words(entry: Entry | None, what: About) -> str:
    if entry is None:
        return translate("Trust", "an entry that this version of the program cannot read")
    lot = translate("Trust", "lot {lot}").format(lot=what.lot.lot_number) if what.lot else ""
    return ", ".join(filter(None, (entry_kind(entry), *_typed(entry, what), lot, _who(entry), moment(entry.at))))


def _typed(entry: Entry, what: About) -> tuple[str, ...]:
    match entry:
        case Told(noun=MixCheck(readings=readings)):
            return tuple(dict.fromkeys(reading.typed for reading in readings))
        case Told(noun=WeighIn(target_typed=target)):
            return (target,)
        case Struck(reason=reason):
            return (what.fill.typed if what.fill else "", reason or "")
    return (getattr(entry.fact, "typed", ""),) if isinstance(entry, Added) else ()


def _who(entry: Entry) -> str:
    told = entry.fact if isinstance(entry, Added) else entry.sign_off if isinstance(entry, Signed) else entry
    return str(getattr(told, "by", ""))


def watching_words(since: datetime | None) -> str:
    """What the fingerprints tell, and since when where some sign-offs are older than they."""
    told = translate(
        "Trust",
        "Each signed-off weigh-in has a fingerprint that rests on the one before. An edit by another program is "
        "noticed by it.",
    )
    if since is None:
        return told
    text = translate(
        "Trust",
        "Weigh-ins that were signed off before {when} are watched from then on; an edit made earlier cannot be told.",
    )
    return f"{told} {text.format(when=moment(since))}"


def watched_words(since: datetime) -> str:
    """Since when a sign-off is watched that is older than the watching."""
    text = translate("Trust", "Watched for later edits from {when} on.")
    return text.format(when=moment(since))


def finding_words(finding: Finding) -> str:
    """One sentence on one weigh-in, and between which copies it happened."""
    lot = finding.lot_number or "–"
    when = moment(finding.signed_at) if finding.signed_at else "–"
    said = _faults()[finding.fault].format(lot=lot, when=when, who=finding.signed_by or "–")
    return f"{said} {_since(finding)}".strip()


def _faults() -> dict[Fault, str]:
    return {
        Fault.CHANGED: translate(
            "Trust", "Lot {lot}, signed off {when} by {who}: another program changed it after it was signed."
        ),
        Fault.TAKEN_AWAY: translate(
            "Trust",
            "Lot {lot}, signed off {when} by {who}: the weigh-in is no longer there. After an older copy was put "
            "back this may be as it should be.",
        ),
        Fault.SLIPPED_IN: translate(
            "Trust", "Lot {lot}, signed off {when} by {who}: this program did not sign it, it has no fingerprint."
        ),
        Fault.CHAIN_BROKEN: translate(
            "Trust", "Lot {lot}, signed off {when} by {who}: a weigh-in signed off before it is missing."
        ),
        Fault.UNLIKE_COPY: translate(
            "Trust", "Lot {lot}, signed off {when} by {who}: the newest copy of the records tells it otherwise."
        ),
    }


def _since(finding: Finding) -> str:
    if finding.right_until and finding.wrong_since:
        text = translate("Trust", "It happened between the copies of {right} and {wrong}.")
        return text.format(right=moment(finding.right_until), wrong=moment(finding.wrong_since))
    if finding.right_until:
        text = translate("Trust", "In the copy of {right} it was still right.")
        return text.format(right=moment(finding.right_until))
    return ""


def findings_words(findings: Sequence[Finding]) -> str:
    """All of them, for a person who did not ask; work goes on."""
    head = translate(
        "Trust",
        "Signed-off weigh-ins are not as they were signed. You can go on working; look at these lots before "
        "you rely on them, and weigh them in again where in doubt.",
    )
    told = [finding_words(one) for one in findings[:MOST_FOUND]]
    if len(findings) > MOST_FOUND:
        told.append(counted.more_found(len(findings) - MOST_FOUND))
    return "\n\n".join([head, *told, what_to_do(findings)])


def what_to_do(findings: Sequence[Finding]) -> str:
    """Which copy to look at, and the way on from there."""
    again = translate("Trust", "Where the figures differ and nobody can say why, weigh the lot in again.")
    right = [one.right_until for one in findings if one.right_until]
    if not right:
        text = translate("Trust", "No copy holds it as it was signed: look at a lot sheet on paper.")
        return f"{text} {again}"
    text = translate(
        "Trust",
        "What to do: print the lot sheet as it is now. Then choose the copy of {day} under Set-up, Records, Copies, "
        "put it back, and compare. What is there now is set aside and kept.",
    )
    return f"{text.format(day=moment(min(right)))} {again}"


def loss_words(loss: Loss) -> str:
    """One thing that is lost, as far as it is known."""
    thing = loss.what.removeprefix("strike_").removeprefix("restore_")
    what = kind_words(thing) if thing else translate("Trust", "an entry")
    if loss.lot_number:
        what = translate("Trust", "{what} of lot {lot}").format(what=what, lot=loss.lot_number)
    if loss.at is None:
        return translate("Trust", "{what}, number {number}; when and by whom is lost too").format(
            what=what, number=loss.number
        )
    text = translate("Trust", "{what}, entered {when} by {who}")
    return text.format(what=what, when=moment(loss.at), who=loss.by or "–")


def salvaged_words(told: Salvaged, most: int | None = MOST_TOLD) -> str:
    """What was brought over out of a damaged file, what was lost, where the file is."""
    lines = [
        counted.entries_read(told.read),
        translate("Trust", "The damaged file is kept as {file}.").format(file=told.aside.name),
    ]
    if told.copy_at and told.from_copy:
        lines.insert(1, counted.entries_from_copy(told.from_copy).format(day=moment(told.copy_at)))
    if told.last_at:
        text = translate("Trust", "The newest entry there is of {when}; enter again what came after it.")
        lines.append(text.format(when=moment(told.last_at)))
    if not told.lost:
        return "\n\n".join([*lines, translate("Trust", "Up to there nothing is lost.")])
    shown = told.lost if most is None else told.lost[:most]
    lost = [counted.entries_lost(len(told.lost)), *(f"· {loss_words(loss)}" for loss in shown)]
    if len(shown) < len(told.lost):
        lost.append("· …")
    return "\n\n".join([*lines, "\n".join(lost)])
