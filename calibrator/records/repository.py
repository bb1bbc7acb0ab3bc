"""The records: the one class through which the rest of the program keeps and finds things."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import replace
from datetime import datetime
from time import monotonic
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection

from calibrator.model import Fill, Lot, Mark, Noun, Printed, SheetEnding, SignOff, SpotFill, TrialFill, WeighIn
from calibrator.model.underway import Underway, unwatched
from calibrator.records import backup, facts, fingerprints, integrity, nouns, rows
from calibrator.records.engine import begin_writing
from calibrator.records.errors import NotAllowed, RecordsError, RecordsReadOnly, RecordsUnreachable, told
from calibrator.records.integrity import Finding
from calibrator.records.nouns import Change, N
from calibrator.records.opening import Opened, identity, not_opened_yet, open_store, refuse_other_layout
from calibrator.records.rows import Writing, spoken

if TYPE_CHECKING:
    from calibrator.records.outbox import Outbox  # it sends by way of these records

WAITED_S = 1.0
SILENT_S = 15.0
ELSEWHERE = 1_000_000_000
"""Added to the number of the newest change in a copy, so that it is never taken for that on the server."""


class Records:
    """Everything that is kept, in one SQLite file or on a PostgreSQL server.

    What a method has kept is on the disk when it returns. Every method raises a `RecordsError` when the
    records cannot be reached (`RecordsUnreachable`, `RecordsLocked`, `RecordsDamaged`); writing ones also
    `RecordsReadOnly`, `DiskFull` and, where the records' own rules refuse, `NotAllowed` or `EditedMeanwhile`.
    """

    def __init__(self, opened: Opened, *, read_only: bool) -> None:
        self._opened = opened
        self._open = True
        self._silent_until = 0.0
        self._away: Outbox | None = None
        self._fits = True  # whether the layout on the server is known to be ours
        self.read_only = read_only

    @classmethod
    def open(cls, url: str, *, read_only: bool = False) -> Records:
        """Open records by URL or path, making new ones and bringing older ones up to date.

        A file is checked first, and copied before any change of its layout and once a day. Raises
        `RecordsLocked`, `RecordsTooNew`, `RecordsDamaged`, `RecordsReadOnly` or `RecordsUnreachable`.
        """
        return cls(open_store(url, read_only=read_only), read_only=read_only)

    @property
    def url(self) -> str:
        """Where the records are, without any password: a path, or a server's address."""
        return self._opened.place.name

    @property
    def on_server(self) -> bool:
        """Whether they are on a server that can be out of reach, and not in a file."""
        return self._opened.place.file is None

    @property
    def backup_fault(self) -> RecordsError | None:
        """Why today's backup could not be made at opening; None where all is well."""
        return self._opened.backup_fault

    def close(self) -> None:
        """Let go of the records; may be called twice."""
        self._open = False
        self._opened.close()
        if self._away is not None:
            self._away.close()

    def __enter__(self) -> Records:
        return self

    def __exit__(self, *_error: object) -> None:
        self.close()

    def version(self, *, anew: bool = False) -> int:
        """A number that grows with each change, by whomever; cheap to ask often.

        `anew` asks even a server that let the last one wait in vain: only from a thread beside the window.
        """
        if anew:
            self._silent_until = 0.0
            with self._there() as connection:
                return rows.version(connection)
        with self.reading() as connection:
            return rows.version(connection) + (0 if connection.engine is self._opened.engine else ELSEWHERE)

    @classmethod
    def not_reached(cls, url: str, outbox: Outbox) -> Records:
        """A server's records while it is away, as this computer's copy tells them; it is looked for meanwhile."""
        records = cls(not_opened_yet(url), read_only=False)
        records._fits, records._silent_until = False, monotonic() + SILENT_S
        records.while_away(outbox)
        return records

    def while_away(self, outbox: Outbox) -> None:
        """Read the outbox's copy while the server is away, or while something waits for it."""
        self._away = outbox

    def follow(self, underway: Underway = unwatched) -> None:
        """Bring the copy on this computer up to date with the server. May take long: beside the window."""
        if self._away is not None:
            with self._there() as connection:
                self._away.follow(connection, underway)

    def backups(self) -> list[backup.Backup]:
        """The dated copies of a file, oldest first; none of a server."""
        file = self._opened.place.file
        return backup.every(file) if file else []

    def backup_if_due(self, underway: Underway = unwatched) -> bool:
        """Make today's backup of a file unless there is one already; tells whether one was made."""
        file = self._opened.place.file
        return bool(file and not self.read_only and backup.daily(file, underway=underway))

    # Nouns

    def keep(self, noun: N, *, by: str = "", why: str = "") -> N:
        """Keep a new thing, or a new telling of one; gives it back with its new `revision`.

        An unchanged noun is given back without a new telling. Raises `EditedMeanwhile` when
        `noun.revision` is not the newest, `NotAllowed` for a weigh-in that is signed off.
        """
        with self.writing(spoken(type(noun))) as writing:
            return nouns.keep(writing, noun, by, why)

    def find(self, kind: type[N], id: str) -> N:
        """The newest telling of one thing. Raises `NotAllowed` where there is none."""
        with self.reading() as connection:
            return _found(nouns.newest(connection, kind, id), kind, id)

    def revision(self, kind: type[N], revision: str) -> N:
        """One telling, however old. Raises `NotAllowed` where there is none."""
        with self.reading() as connection:
            return _found(nouns.revision(connection, kind, revision), kind, revision)

    def every(self, kind: type[N], farm_id: str | None = None, **where: Any) -> list[N]:
        """The newest tellings of all things of a kind, the oldest thing first.

        `where` asks for equal fields, such as `lot_id=…`; a name that is no field raises `TypeError`.
        """
        with self.reading() as connection:
            return nouns.every(connection, kind, farm_id, where)

    def has_any(self, kind: type[Noun], farm_id: str) -> bool:
        """Whether a farm has any thing of a kind, without reading them."""
        with self.reading() as connection:
            return nouns.is_there(connection, kind, farm_id)

    def history(self, kind: type[N], id: str) -> list[Change[N]]:
        """All tellings of one thing, oldest first, each with when, who and why."""
        with self.reading() as connection:
            return nouns.history(connection, kind, id=id)

    def histories(self, kind: type[N], farm_id: str) -> list[Change[N]]:
        """All tellings of all things of a kind on a farm, oldest first, each with when, who and why."""
        with self.reading() as connection:
            return nouns.history(connection, kind, farm_id=farm_id)

    def last_checked(self, scale_id: str, before: datetime) -> WeighIn | None:
        """The newest weigh-in begun before a moment that read a check weight on a scale; None where there is none."""
        with self.reading() as connection:
            return nouns.last_checked(connection, scale_id, before)

    # Facts

    def add_fill(self, fill: Fill) -> Fill:
        """Keep a fill. Adding the very same fill again changes nothing, so a delivery may be repeated.

        Raises `NotAllowed` after sign-off.
        """
        with self.writing("fill") as writing:
            return facts.add_weighed(writing, fill)

    def fills(self, weigh_in_id: str) -> list[Fill]:
        """The fills of a weigh-in in their order, struck ones included."""
        with self.reading() as connection:
            return facts.many(connection, Fill, {"weigh_in_id": weigh_in_id})

    def strike(self, fill_id: str, reason: str, by: str) -> Fill:
        """Strike a fill out, with the reason. Raises `NotAllowed` after sign-off or without a reason."""
        with self.writing("fill") as writing:
            return facts.add_strike(writing, Fill, facts.Strike(fill_id, reason, by))

    def restore(self, fill_id: str, by: str) -> Fill:
        """Let a struck fill count again. Raises `NotAllowed` after sign-off."""
        with self.writing("fill") as writing:
            return facts.add_strike(writing, Fill, facts.Strike(fill_id, None, by))

    def add_spot_fill(self, spot: SpotFill) -> SpotFill:
        """Keep a spot fill. Raises `NotAllowed` unless its weigh-in is signed off for its lot."""
        with self.writing("spot fill") as writing:
            return facts.add_weighed(writing, spot)

    def spot_fills(self, lot_id: str) -> list[SpotFill]:
        """The spot fills of a lot in their order, struck ones included."""
        with self.reading() as connection:
            return facts.many(connection, SpotFill, {"lot_id": lot_id})

    def strike_spot(self, spot_id: str, reason: str, by: str) -> SpotFill:
        """Strike a spot fill out, with the reason."""
        with self.writing("spot fill") as writing:
            return facts.add_strike(writing, SpotFill, facts.Strike(spot_id, reason, by))

    def restore_spot(self, spot_id: str, by: str) -> SpotFill:
        """Let a struck spot fill count again."""
        with self.writing("spot fill") as writing:
            return facts.add_strike(writing, SpotFill, facts.Strike(spot_id, None, by))

    def add_trial_fill(self, fill: TrialFill) -> TrialFill:
        """Keep a fill of a trial. Raises `NotAllowed` unless the trial is open."""
        with self.writing("trial fill") as writing:
            return facts.add_weighed(writing, fill)

    def trial_fills(self, trial_id: str) -> list[TrialFill]:
        """The fills of a trial in the order they were kept, struck ones included."""
        with self.reading() as connection:
            return facts.many(connection, TrialFill, {"trial_id": trial_id})

    def strike_trial_fill(self, fill_id: str, reason: str, by: str) -> TrialFill:
        """Strike a fill of a trial out, with the reason. Raises `NotAllowed` once the trial is closed."""
        with self.writing("trial fill") as writing:
            return facts.add_strike(writing, TrialFill, facts.Strike(fill_id, reason, by))

    def restore_trial_fill(self, fill_id: str, by: str) -> TrialFill:
        """Let a struck fill of a trial count again. Raises `NotAllowed` once the trial is closed."""
        with self.writing("trial fill") as writing:
            return facts.add_strike(writing, TrialFill, facts.Strike(fill_id, None, by))

    def sign_off(
        self,
        sign_off: SignOff,
        marks: Sequence[Mark],
        *,
        seen_fills: Sequence[Fill] | None = None,
        lot: Lot | None = None,
    ) -> SignOff:
        """Keep a sign-off with its marks, both or neither; the weigh-in is frozen from then on.

        `lot` is what is told of its lot with it, by the same person: the sign-off is given back with the revision of
        that telling. Raises `EditedMeanwhile` when scoop, scale or lot have a newer telling than the one it names, or
        when `seen_fills` (where given) are no longer the weigh-in's fills; `NotAllowed` when it is signed
        off or given up already.
        """
        with self.writing("sign-off") as writing:
            if lot is not None:
                sign_off = replace(sign_off, lot_revision=nouns.keep(writing, lot, sign_off.by, "").revision)
            facts.add_sign_off(writing, sign_off, marks, seen_fills)
            fingerprints.take(writing.connection, sign_off)
        return sign_off

    def sign_offs(self, farm_id: str, lot_id: str | None = None) -> list[SignOff]:
        """The sign-offs of a farm, or of one lot of it, oldest first."""
        with self.reading() as connection:
            return facts.many(connection, SignOff, {"farm_id": farm_id, "lot_id": lot_id})

    def sign_off_of(self, weigh_in_id: str) -> SignOff | None:
        """The sign-off of a weigh-in; None while it is open."""
        with self.reading() as connection:
            found = facts.many(connection, SignOff, {"weigh_in_id": weigh_in_id})
        return found[0] if found else None

    def check_fingerprints(self, underway: Underway = unwatched) -> tuple[Finding, ...]:
        """What another program changed in signed-off weigh-ins, oldest first; nothing is changed by asking.

        Where there is something, the dated copies are asked how long it was still right. May run in a thread of
        its own beside the work.
        """
        return integrity.check(self.reading, self._opened.place.file, underway)

    def watched_since(self) -> datetime | None:
        """When sign-offs of an older layout were given their fingerprints; None where each got its own at once.

        An edit of those from before that moment leaves no trace.
        """
        with self.reading() as connection:
            return fingerprints.first_watched(connection)

    def marks(
        self, sign_off_id: str | None = None, scoop_id: str | None = None, lot_id: str | None = None
    ) -> list[Mark]:
        """The marks of a sign-off, a scoop, a lot, or what is common to those given; oldest first."""
        asked = {"sign_off_id": sign_off_id, "scoop_id": scoop_id, "lot_id": lot_id}
        with self.reading() as connection:
            return facts.many(connection, Mark, asked)

    def record_print(self, printed: Printed) -> Printed:
        """Keep that a sheet is printed; gives it back with the farm's next number.

        `replaces` becomes the newest earlier sheet of the same kind for the same scoop and plan (of a lot
        sheet: the same lot too), spoiled ones left out.
        """
        return self.record_prints([printed])[0]

    def record_prints(self, sheets: Sequence[Printed]) -> list[Printed]:
        """Keep that sheets are printed, all or none, each as `record_print` does."""
        with self.writing("sheet") as writing:
            return [facts.add_print(writing, sheet) for sheet in sheets]

    def prints(self, farm_id: str) -> list[Printed]:
        """The printed sheets of a farm by their numbers."""
        with self.reading() as connection:
            return facts.many(connection, Printed, {"farm_id": farm_id})

    def as_of(self, kind: type[N], id: str, fact: Printed | SignOff | SheetEnding) -> N | None:
        """A thing as it was told when a sheet was printed or judged, or a lot signed off; None where it was not known
        then."""
        with self.reading() as connection:
            return facts.as_of(connection, kind, id, fact)

    def end_sheet(self, ending: SheetEnding) -> None:
        """Keep what became of a printed sheet. Raises `NotAllowed` for a sheet that the farm never printed."""
        self.end_sheets([ending])

    def end_sheets(self, endings: Sequence[SheetEnding]) -> None:
        """Keep what became of sheets, of all or of none, each as `end_sheet` does."""
        with self.writing("sheet") as writing:
            for ending in endings:
                facts.add_ending(writing, ending)

    def sheet_endings(self, farm_id: str) -> list[SheetEnding]:
        """What became of a farm's sheets, oldest word first; the newest on a sheet counts."""
        with self.reading() as connection:
            return facts.many(connection, SheetEnding, {"farm_id": farm_id})

    # Transactions, for this room's own modules

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A view of the records at one moment: of the server's copy where it is away or something waits for it."""
        mirror = self._away.mirror if self._away else None
        with ExitStack() as reached:
            if self._away is None or mirror is None or not mirror.ready:
                yield reached.enter_context(self._there())
                return
            try:
                if self._away.waiting:
                    raise RecordsUnreachable("unreachable", place=self._opened.place.name)
                connection = reached.enter_context(self._there())
            except RecordsUnreachable as error:
                if error.code == "closed":
                    raise
                reached.enter_context(told(mirror.place.name))
                connection = reached.enter_context(mirror.engine.connect())
            yield connection

    @contextmanager
    def _there(self) -> Iterator[Connection]:
        """A connection to the records themselves.

        A server that let someone wait in vain is not asked again for a while: nobody waits for the same silence twice.
        """
        place = self._opened.place
        if not self._open:
            raise RecordsUnreachable("closed", place=place.name)
        begun = monotonic()
        if begun < self._silent_until:
            raise RecordsUnreachable("unreachable", place=place.name)
        try:
            with told(place.name, str(place.backups)), self._opened.engine.connect() as connection:
                if not self._fits:
                    refuse_other_layout(connection, place)
                    self._fits = True
                yield connection
        except RecordsUnreachable:
            if monotonic() - begun > WAITED_S:
                self._silent_until = monotonic() + SILENT_S
            raise

    @contextmanager
    def writing(self, what: str) -> Iterator[Writing]:
        """A transaction that no other writer shares; committed and synced when the block ends well."""
        place = self._opened.place
        if self.read_only:
            raise RecordsReadOnly("read_only", place=place.name)
        if identity(place.file) != self._opened.identity:
            raise RecordsUnreachable("gone", place=place.name)
        with self._there() as connection, told(place.name, str(place.backups), what):
            begin_writing(connection)
            yield Writing(connection)
            connection.commit()
            if self._away is not None and self._away.ready:
                with suppress(RecordsError):  # it is kept; the copy is brought up to date later
                    self._away.follow(connection)


def _found(noun: N | None, kind: type[N], id: str) -> N:
    if noun is None:
        raise NotAllowed("unknown", kind=spoken(kind), id=id)
    return noun
