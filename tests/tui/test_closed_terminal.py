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

NEW, KEEP = "\x0e", "\x1bOS"


class Terminal:
    """The app running in a pseudo terminal."""

    def __init__(self, before: str = "") -> None:
        import fcntl
        import termios

        self.fd, child = pty.openpty()
        fcntl.ioctl(child, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        self.process = subprocess.Popen(
            [sys.executable, "-c", f"{before}\nfrom tapewise_tui.app import run; exit(run())"],
            stdin=child,
            stdout=child,
            stderr=child,
            env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
            start_new_session=True,
        )
        os.close(child)
        os.set_blocking(self.fd, False)
        self.seen = self.all = ""

    def read(self) -> None:
        """Read what has been written; a terminal that is closed has nothing more."""
        with contextlib.suppress(OSError):
            said = os.read(self.fd, 65536).decode("utf-8", "replace")
            self.seen += said
            self.all += said

    def until(self, words: str, seconds: float = 20) -> None:
        """Read the screen until some words have been written."""
        end = time.monotonic() + seconds
        while words not in self.seen:
            assert time.monotonic() < end, f"{words!r} never came; last seen: {self.seen[-500:]!r}"
            self.read()
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
    terminal.until("Last measured")
    terminal.keys(NEW)
    terminal.until("Who is measured?")
    terminal.keys("Ada Quist")
    terminal.until("Ada Quist")
    terminal.keys(KEEP)
    terminal.until("What is made for")
    terminal.keys("grown-on\r")
    terminal.until("Before the first measure")
    terminal.keys("\r")
    terminal.until("1st")
    terminal.keys("169\r")
    terminal.until("2nd")
    terminal.keys("169.4\r")
    terminal.until("Head ·")


def test_killed_in_the_middle_of_measuring_nothing_is_lost(terminal: Terminal) -> None:
    """What was entered is on file after kill -9, and the next run goes on at the same measure."""
    _measure(terminal)
    terminal.process.kill()
    terminal.process.wait(10)
    assert store.load("Ada Quist").measures["height"].readings == (169.0, 169.4)
    left = work.latest()
    assert left is not None
    assert (left.person, left.page, left.measure) == ("Ada Quist", "measure", "head")
    again = Terminal()
    try:
        again.until("Last time: Ada Quist, page measure at the head")
    finally:
        again.process.kill()
        again.process.wait(10)
        os.close(again.fd)


def test_a_closed_terminal_keeps_even_what_was_only_typed(terminal: Terminal) -> None:
    """A reading typed but not entered is kept when the line hangs up."""
    _measure(terminal)
    terminal.keys("56.5")
    terminal.until("56.5")
    terminal.process.send_signal(signal.SIGHUP)
    terminal.process.wait(10)
    assert store.load("Ada Quist").measures["head"].readings == (56.5,)


BROKEN_PAGE = """
from tapewise_tui.pages.start import StartPage
def broken(self):
    secret_measure = 92.5
    raise KeyError("no such key")
StartPage.action_new = broken
"""


@pytest.mark.trouble
def test_a_fault_of_the_program_is_one_sentence(data_folder: Path) -> None:
    """No traceback reaches the terminal; where it came from is in a file."""
    found = Terminal(BROKEN_PAGE)
    try:
        found.until("Last measured")
        found.keys(NEW)
        found.until("Something went wrong inside the program (KeyError)")
        assert found.process.wait(10) == 3
        found.read()
        assert "Traceback" not in found.all
        assert "secret" not in found.all
    finally:
        if found.process.poll() is None:
            found.process.kill()
            found.process.wait(10)
        os.close(found.fd)
    assert "KeyError" in (data_folder / "trouble.txt").read_text("utf-8")


def test_without_a_terminal_it_says_so() -> None:
    """Started from a script, the app says one sentence and how to go on."""
    done = subprocess.run(
        [sys.executable, "-c", "from tapewise_tui.app import run; exit(run())"],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)},
        timeout=60,
        check=False,
    )
    assert done.returncode == 2
    assert "needs a terminal" in done.stderr
    assert "Traceback" not in done.stderr
