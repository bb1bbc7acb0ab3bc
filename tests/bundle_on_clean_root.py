"""Starts the bundle where there is no Python and drives it as a person does: keys into a real window.

`python -m tests.bundle_on_clean_root DIST ROOT` needs root's rights, Xvfb and xdotool. DIST is the folder that the
spec made (dist/calibrator), ROOT a fresh minimal system (`debootstrap --variant=minbase bookworm ROOT`). It takes
minutes, so it is no part of the tests; what it found last is in tests/bench/RESULTS.md.
"""

from __future__ import annotations

import ctypes
import os
import re
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

PROGRAM = "/opt/calibrator/calibrator"
PATIENCE_S = 120
NARROWEST = 1024


def main(dist: Path, root: Path) -> None:
    prepare(dist, root)
    size = sum(path.stat().st_size for path in dist.rglob("*") if path.is_file() and not path.is_symlink())
    print(f"bundle: {size / 1e6:.0f} MB in {sum(1 for path in dist.rglob('*') if path.is_file())} files")
    assert not list(root.glob("usr/bin/python*")), "there is a Python on the clean root"
    print(inside(root, PROGRAM, "--version").strip())
    with screen() as display, shared_socket(root):
        # An empty store first: it is made by the migrations, and the welcome comes up.
        took = drive(root, display, ["/home/farm.sqlite"], [])
        print(f"an empty store: window after {took:.2f} s, closed in order")
        assert (root / "home/farm.sqlite").stat().st_size > 0
        took = drive(root, display, ["--demo"], [f"ctrl+{number}" for number in range(1, 9)])
        print(f"the sample season: window after {took:.2f} s, every page by its key, closed in order")
        took = drive(root, display, ["/home/farm.sqlite"], [])
        print(f"the store again: window after {took:.2f} s, closed in order")
    logs = [path for path in root.rglob("calibrator.log") if path.stat().st_size]
    assert not logs, logs[0].read_text()
    print("nothing in the log")


def system_packages() -> list[str]:
    """The README's list of packages that Linux may lack: that and nothing else must do."""
    told = (Path(__file__).parents[1] / "README.md").read_text("utf-8")
    return re.findall(r"lib\S+", told.partition("apt-get install -y")[2].partition("```")[0])


def prepare(dist: Path, root: Path) -> None:
    install = ["chroot", str(root), "apt-get", "install", "-y", "-qq", "--no-install-recommends", *system_packages()]
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    subprocess.run(install, check=True, stdout=subprocess.DEVNULL, env=quiet)
    shutil.rmtree(root / "opt/calibrator", ignore_errors=True)
    shutil.copytree(dist, root / "opt/calibrator", symlinks=True)
    for path in [*(root / "home").iterdir(), *(root / "root").rglob("calibrator*")]:
        shutil.rmtree(path) if path.is_dir() else path.unlink(missing_ok=True)


def inside(root: Path, *command: str) -> str:
    done = subprocess.run(["chroot", str(root), *command], capture_output=True, text=True, check=True, env=_bare_env())
    return done.stdout


def _bare_env(**more: str) -> dict[str, str]:
    return {"HOME": "/root", "PATH": "/usr/sbin:/usr/bin:/sbin:/bin", "LANG": "C.UTF-8", **more}


def drive(root: Path, display: str, arguments: list[str], keys: list[str]) -> float:
    """Seconds to the window. Every key must change what is to be seen; closing must end the program in order."""
    start = time.perf_counter()
    command = ["chroot", str(root), PROGRAM, *arguments]
    with subprocess.Popen(command, env=_bare_env(DISPLAY=display), stderr=subprocess.PIPE, text=True) as program:
        window = until(program, lambda: find(display))
        took = time.perf_counter() - start
        until(program, lambda: len(set(picture(display))) > 8)
        xdo(display, "windowfocus", "--sync", window)  # as a window manager would
        for key in keys[1:] + keys[:1]:
            before = picture(display)
            xdo(display, "key", key)
            until(program, lambda before=before: picture(display) != before)
        ask_to_close(display, int(window))
        assert program.stderr is not None
        said = program.stderr.read()
        assert (program.wait(PATIENCE_S), said) == (0, ""), said
    return took


def find(display: str) -> str:
    """The program's window, not the small sign that says that something is underway."""
    for window in xdo(display, "search", "--onlyvisible", "--name", "Scoop calibration").split():
        wide = re.search(r"WIDTH=(\d+)", xdo(display, "getwindowgeometry", "--shell", window))
        if wide and int(wide[1]) >= NARROWEST:
            return window
    return ""


def picture(display: str) -> bytes:
    """All that is on the screen."""
    command = ["import", "-display", display, "-window", "root", "-resize", "25%", "gray:-"]
    return subprocess.run(command, capture_output=True, check=True).stdout


def xdo(display: str, *command: str) -> str:
    done = subprocess.run(["xdotool", *command], env={**os.environ, "DISPLAY": display}, capture_output=True, text=True)
    return done.stdout


class _ClientMessage(ctypes.Structure):
    """XClientMessageEvent with 32-bit data, padded to the size of any event."""

    _fields_ = [
        ("type", ctypes.c_int), ("serial", ctypes.c_ulong), ("send_event", ctypes.c_int), ("display", ctypes.c_void_p),
        ("window", ctypes.c_ulong), ("message_type", ctypes.c_ulong), ("format", ctypes.c_int),
        ("data", ctypes.c_long * 5), ("pad", ctypes.c_long * 24),
    ]  # fmt: skip


def ask_to_close(display: str, window: int) -> None:
    """What a window manager sends when the cross is pressed (ICCCM 4.2.8.1); there is none on this screen."""
    x11 = ctypes.CDLL("libX11.so.6")
    x11.XOpenDisplay.restype = ctypes.c_void_p
    x11.XInternAtom.restype = ctypes.c_ulong
    opened = ctypes.c_void_p(x11.XOpenDisplay(display.encode()))
    protocols, delete = (x11.XInternAtom(opened, name, 0) for name in (b"WM_PROTOCOLS", b"WM_DELETE_WINDOW"))
    event = _ClientMessage(type=33, window=window, message_type=protocols, format=32, data=(delete, 0, 0, 0, 0))
    x11.XSendEvent(opened, ctypes.c_ulong(window), 0, ctypes.c_long(0), ctypes.byref(event))
    x11.XCloseDisplay(opened)


def until(program: subprocess.Popen[str], come: Callable[[], object]) -> str:
    """Wait for something to be so; tells what the program said where it ends before."""
    end = time.monotonic() + PATIENCE_S
    while time.monotonic() < end:
        if found := come():
            return str(found)
        assert program.poll() is None, program.stderr and program.stderr.read()
        time.sleep(0.05)
    raise AssertionError("it did not come")


@contextmanager
def screen() -> Iterator[str]:
    """A screen of our own, without a window manager."""
    reading, writing = os.pipe()
    command = ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1400x900x24", "-nolisten", "tcp"]
    with subprocess.Popen(command, pass_fds=[writing], stderr=subprocess.DEVNULL) as server:
        os.close(writing)
        with os.fdopen(reading) as told:
            yield f":{told.readline().strip()}"
        server.terminate()


@contextmanager
def shared_socket(root: Path) -> Iterator[None]:
    """Let programs on the clean root reach the screen and see the processes that are theirs."""
    mounts = [("/tmp/.X11-unix", root / "tmp/.X11-unix", "--bind"), ("proc", root / "proc", "--types=proc")]
    for source, target, how in mounts:
        target.mkdir(parents=True, exist_ok=True)
        subprocess.run(["mount", how, source, str(target)], check=True)
    try:
        yield
    finally:
        for _, target, _ in mounts:
            subprocess.run(["umount", str(target)], check=False)


if __name__ == "__main__":
    main(Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve())
