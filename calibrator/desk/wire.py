"""Weights by wire: a scale on a serial port, read line by line. Without a scale nothing here is ever loaded.

A line counts when it fits the mask and the scale stood still. A scale that tells whether it stands still sends all the
time: of such a one a weight counts once, until it moves or shows something else. One that does not sends when its key
is pressed, and every line counts. Zero and less is an empty pan.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from calibrator.desk.settings import Settings
from calibrator.units import Mask, MaskNotUnderstood, ScaleReading, read_mask
from calibrator.units.scale_line import LONGEST_LINE

if TYPE_CHECKING:
    from serial import Serial

LOOK_MS = 100
PLUG_IN_MS = 3000
GARBAGE_LINES = 5
AT_ONCE = 4096
SPEEDS = ("1200 7E1", "2400 7E1", "2400 8N1", "4800 7E1", "4800 8N1", "9600 7E1", "9600 8N1", "19200 8N1", "115200 8N1")


class ScaleWire(QObject):
    """Brings `weighed(text)` for each weight that counts, `came(line)` for every line, `trouble(words)` for a change.

    No words mean that all is well.
    """

    weighed = Signal(str)
    came = Signal(str)
    trouble = Signal(str)

    def __init__(self, settings: Settings, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self._port: Serial | None = None
        self._mask: Mask | None = None
        self._rest = b""
        self._last = ""
        self._strange = 0
        self.words = ""
        self.entered: set[str] = set()  # the fills that came of what the scale sent, by their ids, since the start
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look)

    def start(self) -> None:
        """Listen at the port that the settings name, from the beginning; at none, be quiet."""
        self.stop()
        if not self._settings.now.scale_port:
            return
        try:
            self._mask = read_mask(self._settings.now.scale_mask)
        except MaskNotUnderstood:
            self._tell(
                self.tr("How the scale's lines look is not understood. Correct it under Set-up, Scale with a cable.")
            )
            return
        self._plug_in()

    def stop(self) -> None:
        """Let go of the port."""
        self._timer.stop()
        self._unplug()
        self._tell("")

    def _plug_in(self) -> None:
        """Open the port; where it is not there, look again in a while."""
        now = self._settings.now
        try:
            from serial import Serial, SerialException
        except ImportError:
            self._tell(self.tr("A scale with a cable needs an addition to this program: install its ‘scale’ option."))
            return
        speed, _, frame = now.scale_speed.partition(" ")
        try:
            self._port = Serial(
                now.scale_port, int(speed), bytesize=int(frame[0]), parity=frame[1], stopbits=int(frame[2]), timeout=0
            )
        except (SerialException, OSError, ValueError, IndexError):
            told = self.tr("No scale at {port}. Plug its cable in and switch it on; the program keeps looking.")
            self._tell(told.format(port=now.scale_port))
            self._timer.start(PLUG_IN_MS)
            return
        self._tell("")
        self._timer.start(LOOK_MS)

    def _look(self) -> None:
        if self._port is None:
            self._plug_in()
            return
        try:
            sent = self._port.read(AT_ONCE)
        except Exception:  # what a pulled cable raises differs by system and driver
            self._unplug()
            told = self.tr("The scale at {port} is gone. Plug its cable in again; weights can be typed meanwhile.")
            self._tell(told.format(port=self._settings.now.scale_port))
            self._timer.start(PLUG_IN_MS)
            return
        if sent:
            self.take(sent)

    def take(self, sent: bytes) -> None:
        """Take in what came over the wire: whole lines count, the rest waits for its end."""
        *lines, self._rest = (self._rest + sent).replace(b"\r", b"\n").split(b"\n")
        if len(self._rest) > LONGEST_LINE:
            lines, self._rest = [*lines, self._rest], b""
        for line in lines:
            text = line.decode("ascii", "replace").strip("\x00\x02\x03 \t")
            if text:
                self._take_line(text)

    def _take_line(self, line: str) -> None:
        self.came.emit(line[:LONGEST_LINE])
        reading = self._mask.read(line) if self._mask else None
        if reading is None:
            self._strange += 1
            if self._strange >= GARBAGE_LINES:
                told = self.tr(
                    "The scale sends lines that are not understood: “{line}”. Look at Set-up, Scale with a cable."
                )
                self._tell(told.format(line=_printable(line)))
            return
        self._strange = 0
        self._tell("")
        if self._counts(reading):
            self.weighed.emit(reading.text)

    def _counts(self, reading: ScaleReading) -> bool:
        again = self._mask is not None and self._mask.tells_still and reading.text == self._last
        self._last = reading.text if reading.still else ""
        empty = reading.text.startswith("-") or not reading.text.strip("0., abcdefghijklmnopqrstuvwxyz")
        return reading.still and not again and not empty

    def _unplug(self) -> None:
        if self._port is not None:
            self._port.close()
        self._port, self._rest, self._last, self._strange = None, b"", "", 0

    def _tell(self, words: str) -> None:
        if words != self.words:
            self.words = words
            self.trouble.emit(words)


def _printable(line: str) -> str:
    return "".join(sign if sign.isprintable() else "·" for sign in line[:40])


def ports() -> list[str]:
    """The serial ports of this computer; none where the addition is not installed."""
    try:
        from serial.tools.list_ports import comports
    except ImportError:
        return []
    return sorted(port.device for port in comports())
