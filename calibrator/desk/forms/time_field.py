"""A time of day typed as people do; says which time it understood, may stay empty."""

from __future__ import annotations

from datetime import time

from calibrator.clock import clock_text
from calibrator.desk.clock_times import TimeNotUnderstood, read_time
from calibrator.desk.forms.fields import TextField


class TimeField(TextField):
    """Hours and minutes."""

    def __init__(self, caption: str) -> None:
        super().__init__(caption, longest=20)
        self.edited.connect(self.understood)

    def time(self) -> time | None:
        """The time, None where the field is empty. Raises TimeNotUnderstood."""
        return read_time(self.line.text())

    def understood(self) -> bool:
        """Whether the field holds a time or nothing; the sentence beneath tells what is wrong."""
        try:
            found = self.time()
        except TimeNotUnderstood as error:
            self.say(self._sentence(error), wrong=True)
            return False
        self.say(clock_text(found) if found else "")
        return True

    def _sentence(self, error: TimeNotUnderstood) -> str:
        if error.code == "no_such_time":
            return self.tr("There is no such time of day. Write it like 6:30 or 6:30 pm.")
        return self.tr("Write the time like 6:30, 18:30 or 6:30 pm.")
