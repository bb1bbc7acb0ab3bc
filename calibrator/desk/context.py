"""What every page is given: the records, the farm in view, the person's initials, a seam for questions."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, Signal

from calibrator.desk.ask import Ask
from calibrator.desk.busy import Busy
from calibrator.desk.refusals import in_words
from calibrator.desk.saving import file_name, folder_of
from calibrator.desk.settings import Settings
from calibrator.desk.wire import ScaleWire
from calibrator.model import Farm, Noun, UnitSystem
from calibrator.model.underway import Ended, Underway
from calibrator.records import EditedMeanwhile, Records, RecordsError

if TYPE_CHECKING:
    from calibrator.desk.scoop_volume import WaterWeighed
    from calibrator.records.outbox import Outbox

T = TypeVar("T")
N = TypeVar("N", bound=Noun)


def local_now() -> datetime:
    """The time on the wall, with its zone: kept facts must not depend on where the file is read."""
    return datetime.now(UTC).astimezone()


class Desk(QObject):
    """The open records and what the person at the screen has chosen.

    `changed` tells that something was kept or that the farm in view changed: pages read anew.
    `go_to` asks the window for a page, with the id of what to open there (or "").
    """

    changed = Signal()
    go_to = Signal(str, str)
    said = Signal(str)
    saved = Signal(str, Path)
    done = Signal(str, str, object)
    language_changed = Signal()
    put_back = Signal(object)  # a dated copy that is to take the place of the records
    go_over = Signal(str)  # to the records of a server from now on; blank: to the file on this computer

    def __init__(
        self,
        records: Records,
        ask: Ask,
        *,
        settings: Settings | None = None,
        clock: Callable[[], datetime] = local_now,
        outbox: Outbox | None = None,
        busy: Busy | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.records = records
        self.ask = ask
        self.clock = clock
        self.outbox = outbox  # for records on a server: what could not be sent yet, and their copy on this computer
        if outbox is not None:
            records.while_away(outbox)
        self.settings = settings or Settings()
        self.busy = busy or Busy(self)
        self.wire = ScaleWire(self.settings, self)
        self.throw_away = False  # the records live only as long as the program
        self.carried: Farm | None = None  # typed at the welcome, on its way to the window in another language
        farms = {farm.id: farm for farm in records.every(Farm)}
        last = self.settings.now.farm_id
        self._farm_id = last if last in farms else next(iter(farms), "")
        self._farm = farms.get(self._farm_id)
        self.water_weighed: dict[str, WaterWeighed] = {}  # by the id of its scoop, since the start
        self._outdated = False
        self.changed.connect(self._forget)

    @property
    def farm(self) -> Farm | None:
        """The farm in view as it stands now; None on an empty store."""
        if self._outdated and self._farm_id:
            self._farm = self.records.find(Farm, self._farm_id)
            self._outdated = False
        return self._farm

    def _forget(self) -> None:
        """Connected first of all, so that every page finds the farm as it was just kept."""
        self._outdated = True

    @property
    def waiting(self) -> int:
        """How many changes wait on this computer for the server."""
        return self.outbox.waiting if self.outbox else 0

    def send(self, then: Callable[[], None]) -> None:
        """Send what waits for the server, beside the window, and go on; while it cannot be sent, say why instead."""
        outbox = self.outbox
        if outbox is None or not outbox.waiting:
            then()
            return
        sending = self.tr("Sending what waits for the server")
        self.work(sending, partial(outbox.deliver, self.records), lambda _none: then())

    @property
    def initials(self) -> str:
        """Who was last at work on this computer."""
        return self.settings.now.initials

    @initials.setter
    def initials(self, initials: str) -> None:
        self.settings.keep(initials=initials)

    @property
    def system(self) -> UnitSystem:
        farm = self.farm
        return farm.units if farm else UnitSystem.FARM

    def show_farm(self, farm_id: str) -> None:
        self._farm_id, self._farm = farm_id, None
        self.settings.keep(farm_id=farm_id)
        self.changed.emit()

    def attempt(self, action: Callable[[], T]) -> T | None:
        """Do something with the records; where that fails, say why and what to do. None means it failed.

        What the person typed stays on the page, so that it can be kept once the cause is gone.
        """
        try:
            result = action()
        except RecordsError as error:
            self.ask.tell(in_words(error))
            if isinstance(error, EditedMeanwhile) or error.code in ("frozen", "signed_meanwhile"):
                self.changed.emit()  # somebody else was first: show what they kept
            return None
        self.changed.emit()
        return result

    def keep(self, noun: N, why: str = "") -> N | None:
        """Keep a telling of a thing by whoever is at work, as `attempt`."""
        return self.attempt(partial(self.records.keep, noun, by=self.initials, why=why))

    def work(
        self,
        what: str,
        work: Callable[[Underway], T],
        then: Callable[[T], None],
        elsewhere: Callable[[], None] | None = None,
    ) -> None:
        """As `attempt`, for what may take long: beside the window, with a sign that says `what` and can end it.

        Nothing of an ended work is kept. See `Busy.do` for what `work` may use. Where a file could not be written,
        `elsewhere` is offered: it asks for another place.
        """
        self.busy.do(what, work, partial(self._done, then), partial(self._not_done, elsewhere))

    def save_as(self, title: str, parts: Sequence[str], kinds: str, ending: str, write: Callable[[Path], None]) -> None:
        """Ask where to save a file named after `parts`, in the folder used last; `ending` has its dot."""
        proposed = folder_of(self.settings.now.save_folder) / file_name(parts, ending)
        self.ask.save_path(title, str(proposed), kinds, partial(self._place_chosen, write))

    def tell_not_written(self, error: Exception, elsewhere: Callable[[], None]) -> None:
        """Say why a file could not be written, and offer another place."""
        self.ask.confirm(in_words(error), self.tr("Choose another place"), elsewhere)

    def _place_chosen(self, write: Callable[[Path], None], path: Path) -> None:
        self.settings.keep(save_folder=str(path.parent))
        write(path)

    def _done(self, then: Callable[[T], None], result: T) -> None:
        self.changed.emit()
        then(result)

    def _not_done(self, elsewhere: Callable[[], None] | None, error: Exception) -> None:
        self.changed.emit()  # what it had begun may have left its traces, such as a number that is spoiled
        if isinstance(error, Ended):
            self.say(self.tr("Stopped before it was done."))
        elif elsewhere is not None and getattr(error, "elsewhere", False):
            self.tell_not_written(error, elsewhere)
        elif isinstance(error, RecordsError) or hasattr(error, "sentence"):
            self.ask.tell(in_words(error))
        else:
            raise error

    def speak(self, language: str) -> None:
        """Another language for the screen, at once; blank follows the system."""
        self.settings.keep(screen_language=language)
        self.language_changed.emit()

    def say(self, text: str) -> None:
        """A short word of what was done, shown in passing."""
        self.said.emit(text)

    def say_saved(self, text: str, file: Path) -> None:
        """As `say`, with the ways to the file that was saved."""
        self.saved.emit(text, file)

    def say_undoable(self, text: str, undo: Callable[[], None]) -> None:
        """As `say`, with a way back."""
        self.say_with_way(text, self.tr("Undo"), undo)

    def say_with_way(self, text: str, way: str, act: Callable[[], None]) -> None:
        """As `say`, with a button for what comes of it."""
        self.done.emit(text, way, act)
