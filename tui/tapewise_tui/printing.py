"""Printing for a person or a machine, without a sign that a terminal would obey."""

from __future__ import annotations

import codecs
import io
import json
import os
import re
import sys
import unicodedata
from collections.abc import Mapping
from functools import cache
from typing import TYPE_CHECKING, TextIO

from tapewise_core.text.legible import legible

if TYPE_CHECKING:
    import argparse  # the app does without


def say(text: str) -> None:
    """Print lines for a person; in colour what wants a look, where a terminal has any."""
    lines = legible(text.rstrip("\n")).split("\n")
    if coloured(sys.stdout):
        lines = [re.sub(_LOUD, rf"\1{YELLOW}\2{PLAIN}", line) for line in lines]
    print("\n".join(lines))


def complain(text: str) -> None:
    """Print what is wrong, on one line, where faults are read."""
    name = f"{RED}tapewise:{PLAIN}" if coloured(sys.stderr) else "tapewise:"
    print(f"{name} {legible(' '.join(text.split()))}", file=sys.stderr)


RED, YELLOW, PLAIN = "\x1b[31m", "\x1b[33m", "\x1b[0m"

_LOUD = r"^(\s*)(Unlikely:|unlikely:|Not written:|Wrong:)"
"""How a line begins that wants a look; the word says it all without colour too."""


def coloured(stream: TextIO) -> bool:
    """Say whether a stream shows colour: a terminal that can, and nobody asked for none."""
    if os.environ.get("NO_COLOR") or os.environ.get("TERM", "dumb") == "dumb":
        return False
    return stream.isatty()


def print_json(value: object) -> None:
    """Print a value as JSON; signs that a terminal would obey come as escapes."""
    spelt = "utf" not in (sys.stdout.encoding or "").lower()
    text = json.dumps(value, ensure_ascii=spelt, indent=1, allow_nan=False)
    print(text.translate(_escaped()))


def say_done(options: argparse.Namespace, done: Mapping[str, object], says: str) -> None:
    """Say what was done, to a machine or a person; a person may have asked for quiet."""
    if options.json:
        print_json(done)
    elif not getattr(options, "quiet", False):
        say(says)


@cache
def _escaped() -> Mapping[int, str]:
    """What JSON lets stand and a terminal would obey, and halves of pairs that are no sign."""
    obeyed = (*range(0x7F, 0xA0), *range(0x202A, 0x202F), *range(0x2066, 0x206A))
    return {code: f"\\u{code:04x}" for code in (*obeyed, *range(0xD800, 0xE000))}


def let_every_sign_pass() -> None:
    """Spell what the output's encoding lacks as near as it can; no sign ends the program."""
    codecs.register_error("tapewise", _nearest)
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="tapewise")


def _nearest(fault: UnicodeError) -> tuple[str, int]:
    if not isinstance(fault, UnicodeEncodeError):
        raise fault
    missing = fault.object[fault.start : fault.end]
    return "".join(_near(sign) for sign in missing), fault.end


def _near(sign: str) -> str:
    bare = unicodedata.normalize("NFKD", _NEAR.get(sign, sign))
    return "".join(part for part in bare if part.isascii()) or "?"


_NEAR = {
    **dict.fromkeys("“”„″", '"'),
    **dict.fromkeys("‘’′", "'"),
    **dict.fromkeys("–—−", "-"),
    **{"×": "x", "÷": "/", "±": "+/-", "·": ".", "≤": "<=", "≥": ">=", "→": "->", "⁄": "/"},
    **{"ł": "l", "Ł": "L", "ø": "o", "Ø": "O", "đ": "d", "ı": "i", "•": "*"},
}
