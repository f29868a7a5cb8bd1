"""The app in a terminal of its own, killed in the middle: nothing that was answered is lost."""

from __future__ import annotations

import contextlib
import os
import signal
import struct
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from tapewise_core.tasks import work
from tapewise_core.tasks.people import store

pty = pytest.importorskip("pty", reason="terminals of this kind are not on this system")

F4, F6 = "\x1bOS", "\x1b[17~"
ROOT = Path(__file__).parents[2]


class Terminal:
    """The app running in a pseudo terminal."""

    def __init__(self) -> None:
        import fcntl
        import termios

        self.fd, child = pty.openpty()
        fcntl.ioctl(child, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        self.process = subprocess.Popen(
            [sys.executable, "-c", "from tapewise_tui.app import run; run()"],
            stdin=child,
            stdout=child,
            stderr=child,
            env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
            start_new_session=True,
        )
        os.close(child)
        os.set_blocking(self.fd, False)
        self.seen = ""

    def until(self, words: str, seconds: float = 20) -> None:
        """Read the screen until some words have been written."""
        end = time.monotonic() + seconds
        while words not in self.seen:
            assert time.monotonic() < end, f"{words!r} never came; last seen: {self.seen[-500:]!r}"
            with contextlib.suppress(BlockingIOError):
                self.seen += os.read(self.fd, 65536).decode("utf-8", "replace")
            time.sleep(0.02)
        self.seen = ""

    def keys(self, text: str) -> None:
        os.write(self.fd, text.encode())


@pytest.fixture
def terminal() -> Iterator[Terminal]:
    """Run the app, and end it whatever happens."""
    found = Terminal()
    yield found
    if found.process.poll() is None:
        found.process.kill()
    found.process.wait(10)
    os.close(found.fd)


def _measure(terminal: Terminal) -> None:
    terminal.until("New person")
    terminal.keys(F6)
    terminal.until("Who is measured?")
    terminal.keys("Ada Quist\r")
    terminal.until("Before the first measure")
    terminal.keys("\r")
    terminal.until("1st")
    terminal.keys("56\r")
    terminal.until("2nd")
    terminal.keys("56.4\r")
    terminal.until("Neck base")


def test_killed_in_the_middle_of_measuring_nothing_is_lost(terminal: Terminal) -> None:
    """What was entered is on file after kill -9, and the next run goes on at the same measure."""
    _measure(terminal)
    terminal.process.kill()
    terminal.process.wait(10)
    assert store.load("Ada Quist").measures["head"].readings == (56.0, 56.4)
    left = work.latest()
    assert left is not None
    assert (left.person, left.page, left.measure) == ("Ada Quist", "measure", "neck")
    again = Terminal()
    try:
        again.until("Last time: Ada Quist, page measure at the neck base")
    finally:
        again.process.kill()
        again.process.wait(10)
        os.close(again.fd)


def test_a_closed_terminal_keeps_even_what_was_only_typed(terminal: Terminal) -> None:
    """A reading typed but not entered is kept when the line hangs up."""
    _measure(terminal)
    terminal.keys("36.5")
    terminal.until("36")
    time.sleep(0.3)
    terminal.process.send_signal(signal.SIGHUP)
    terminal.process.wait(10)
    assert store.load("Ada Quist").measures["neck"].readings == (36.5,)
