"""What the terminal can show, with a filter that spells everything in ASCII; and when it closes."""

from __future__ import annotations

import asyncio
import contextlib
import os
import signal
import sys
from collections.abc import Callable, Mapping

from rich.cells import cell_len
from rich.segment import Segment
from textual.color import Color
from textual.filter import LineFilter

PLAIN_VARIABLE = "TAPEWISE_ASCII"
"""The environment variable that asks for plain ASCII whatever the terminal says; 0 asks for all."""

_POSIX = {"C", "POSIX"}
"""Locales in which a terminal promises no more than ASCII."""

_BARE = {"linux", "dumb", "vt100", "vt220", "ansi"}
"""Terminals whose fonts lack the fine dots that lines are drawn with (from memory)."""


def ascii_only(environment: Mapping[str, str] | None = None, encoding: str | None = None) -> bool:
    """Say whether to draw and write in plain ASCII.

    >>> ascii_only({}, "utf-8"), ascii_only({}, "latin-1"), ascii_only({"TERM": "linux"}, "utf-8")
    (False, True, True)
    >>> ascii_only({"LANG": "C"}, "utf-8"), ascii_only({"LANG": "C.UTF-8"}, "utf-8")
    (True, False)
    """
    told = os.environ if environment is None else environment
    spoken = encoding or encoding_spoken()
    if told.get(PLAIN_VARIABLE):
        return told[PLAIN_VARIABLE] != "0"
    if (told.get("LC_ALL") or told.get("LANG")) in _POSIX:
        return True  # though Python takes UTF-8 for granted there
    return "utf" not in spoken.lower() or told.get("TERM", "") in _BARE


def encoding_spoken() -> str:
    """Return the encoding of the stream that the app draws on."""
    return getattr(sys.__stderr__, "encoding", None) or "ascii"


_SAME_WIDTH = str.maketrans(
    {
        **dict.fromkeys("“”„″", '"'),
        **dict.fromkeys("‘’′", "'"),
        **dict.fromkeys("–—−‐─━═╌╍▔▁▂▃▀▄⎯", "-"),
        **dict.fromkeys("│┃║╎╏▌▐▏▎▕▊╹╻❘", "|"),
        **dict.fromkeys("╷╵", "'"),
        **dict.fromkeys("┌┐└┘├┤┬┴┼╭╮╰╯╔╗╚╝┏┓┗┛┣┫╋", "+"),
        **dict.fromkeys("█▇▆▅▓▉▋", "#"),
        **dict.fromkeys("░▒", ":"),
        "×": "x", "÷": "/", "±": "~", "·": ".", "…": ".", "•": "*", "°": "o",
        "▶": ">", "▸": ">", "◀": "<", "▼": "v", "▾": "v", "▲": "^", "▴": "^", "●": "*", "○": "o",
        "✓": "x", "✗": "!", "→": ">", "←": "<", "↑": "^", "↓": "v", "⭘": "o", "¼": "?", "½": "?",
    }
)  # fmt: skip


def plain(text: str) -> str:
    """Spell a text in ASCII, cell for cell, so that no column moves.

    >>> plain("“bust” ± 3 │ Łódź ▶")
    '"bust"+/-3 | Lodz >'
    """
    import unicodedata

    if text.isascii():
        return text
    spelt = []
    for sign in _with_room(text).translate(_SAME_WIDTH):
        bare = unicodedata.normalize("NFKD", _STROKED.get(sign, sign))
        kept = "".join(part for part in bare if part.isascii())
        spelt.append(kept if len(kept) == cell_len(sign) else "?" * cell_len(sign))
    return "".join(spelt)


def _with_room(text: str) -> str:
    """Spell plus or minus in three signs or two, where spaces beside it leave the room."""
    for there, spelt in (("±  ", "+/-"), (" ± ", "+/-"), ("± ", "+-"), (" ±", "+-")):
        text = text.replace(there, spelt)
    return text


_STROKED = {"Ł": "L", "ł": "l", "Ø": "O", "ø": "o", "Đ": "D", "đ": "d", "ı": "i"}


class PlainFilter(LineFilter):
    """The last thing that happens to a line before it is written, in a plain terminal."""

    def apply(self, segments: list[Segment], background: Color) -> list[Segment]:
        return [Segment(plain(text), style, control) for text, style, control in segments]


def has_terminal() -> bool:
    """Say whether there is a terminal to type and draw in, or a server in its place."""
    if os.environ.get("TEXTUAL_DRIVER"):
        return True
    return all(stream is not None and stream.isatty() for stream in (sys.__stdin__, sys.__stderr__))


def let_signs_pass() -> None:
    """Keep a stream that cannot spell a sign from spoiling the screen with escapes."""
    stream = sys.__stderr__
    if stream is None or not hasattr(stream, "reconfigure"):
        return
    if "utf" in (stream.encoding or "").lower():
        return
    stream.reconfigure(errors="replace")


def on_hang_up(act: Callable[[], object]) -> None:
    """Act when the terminal is closed; not every system can tell of it."""
    for name in ("SIGHUP", "SIGTERM"):
        with contextlib.suppress(AttributeError, NotImplementedError, RuntimeError, ValueError):
            loop = asyncio.get_running_loop()
            loop.add_signal_handler(getattr(signal, name), act)
