"""Read printed drafting instructions as a hand reads them: words and numbers, nothing else.

Every sentence becomes an act; one that is not understood is refused, so that none is skipped.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from tapewise_core.drafting.told_steps import ToldStep
from tapewise_core.units import MM_PER_INCH

POINT = r"[A-Z]\d*"
LINE = rf"{POINT}(?:–{POINT})+"
POINTS = rf"{POINT}(?:, {POINT})*(?: and {POINT})?"


@dataclass(frozen=True)
class Measured:
    """From a point, a way in words, so far [mm], to a new point."""

    start: str
    way: str
    by: float
    name: str


@dataclass(frozen=True)
class Offs:
    """Points beside the line between two others: name, along, out [mm], side in words."""

    start: str
    end: str
    places: tuple[tuple[str, float, float, str], ...]


@dataclass(frozen=True)
class Ruled:
    """A straight line of the pattern through points."""

    names: tuple[str, ...]


@dataclass(frozen=True)
class Drawn:
    """A smooth line through points, ruled between some, with directions at its ends in words."""

    names: tuple[str, ...]
    ruled: tuple[tuple[str, ...], ...]
    leaves: str
    comes: str


@dataclass(frozen=True)
class Turned:
    """Part of a circle: centre, radius [mm], the points it runs through."""

    centre: str
    radius: float
    names: tuple[str, ...]


@dataclass(frozen=True)
class Traced:
    """Fresh paper over another piece: the lines and the points that are copied."""

    of: str
    lines: tuple[str, ...]
    points: tuple[str, ...]


@dataclass(frozen=True)
class Marked:
    """The first point."""

    name: str


@dataclass(frozen=True)
class Joined:
    """Two halves beside each other, the second turned over; by their titles."""

    plain: str
    mirrored: str


@dataclass(frozen=True)
class Notched:
    """Notches: the line each is on, the point it is measured from, and how far [mm]."""

    places: tuple[tuple[str, str, float], ...]


Act = Measured | Offs | Ruled | Drawn | Turned | Traced | Marked | Joined | Notched

SILENT = (
    "Add the allowances", "Mark the top of the slit", "Mark the side seam",
    "Check the angle", "One pattern serves", "These are stitching lines", "The line straight up",
    "The ends are sewn", "Mark the long edges", "Mark both long edges",
    "Divide both long edges", "Gathered: ", "The join goes", "The left end lies",
    "Slash and spread: ",
)  # fmt: skip
"""What leaves no line of the outline: marks across it, allowances, remarks."""


def read(steps: Iterable[ToldStep]) -> list[tuple[str, Act | None]]:
    """Return what the printed steps of a piece ask for, each with its sentence."""
    return [(step.text, act(step.text, step.rows)) for step in steps]


def act(text: str, rows: tuple[tuple[str, ...], ...] = ()) -> Act | None:
    """Return what a sentence asks for; None for what leaves no line. Raises ValueError."""
    if text.startswith(SILENT):
        return None
    for reader in (
        _first,
        _measured,
        _offs,
        _ruled,
        _drawn,
        _turned,
        _traced,
        _joined,
        _notched,
    ):
        if found := reader(text, rows):
            return found
    raise ValueError(f"not understood: {text}")


def _first(text: str, _: object) -> Marked | None:
    found = re.match(rf"Mark ({POINT}), ", text)
    return Marked(found[1]) if found else None


def _measured(text: str, _: object) -> Measured | None:
    found = re.match(rf"From ({POINT}) measure (.*); mark ({POINT}), ", text)
    if not found:
        return None
    way = WAY.match(found[2])
    if not way:
        raise ValueError(f"no way to measure in: {text}")
    return Measured(found[1], way[1].rstrip(","), amount(found[2][way.end() :]), found[3])


WAY = re.compile(
    rf"(straight down|straight up|square across to the (?:right|left)|along {LINE}"
    rf"|straight back from {LINE}"
    rf"|(?:to the right|to the left|upwards|downwards), (?:square|at [\d.]+°) to {LINE},) "
)


def _offs(text: str, rows: tuple[tuple[str, ...], ...]) -> Offs | None:
    found = re.match(
        rf"Rule thinly ({POINT})–({POINT})\. Points of the .+, measured along it from \1 and "
        r"square out:(.*)$", text
    )  # fmt: skip
    if not found:
        return None
    told = found[3].strip().removesuffix(".")
    each = rows or tuple(_split(one) for one in told.split("; "))
    return Offs(found[1], found[2], tuple(_off(*row) for row in each))


def _split(one: str) -> tuple[str, str, str]:
    name, rest = one.split(" ", 1)
    along, out = rest.split(" along, ")
    return name, along, out


def _off(name: str, along: str, out: str) -> tuple[str, float, float, str]:
    if out == "on the line":
        return name, amount(along), 0.0, ""
    side = next(side for side in SIDES if out.endswith(side))
    return name, amount(along), amount(out.removesuffix(side)), side


SIDES = ("to the right", "to the left", "upwards", "downwards")


def _ruled(text: str, _: object) -> Ruled | None:
    found = re.match(rf"Rule ({LINE})(?:, [^:]+)?: the ", text)
    return Ruled(_names(found[1])) if found else None


def _drawn(text: str, _: object) -> Drawn | None:
    span = rf"from {POINT} to {POINT}"
    parts = rf"ruled (?P<ruled>{span}(?:, {span})*(?: and {span})?), and "
    through = rf"Draw the .+? through (?P<names>{POINTS}): (?:{parts})?one smooth line"
    found = re.match(rf"{through}[^.]*\.", text)
    if not found:
        return None
    names, rest = _listed(found["names"]), text[found.end() :]
    spans = re.findall(rf"from ({POINT}) to ({POINT})", found["ruled"] or "")
    ruled = tuple(names[names.index(a) : names.index(b) + 1] for a, b in spans)
    leaves = re.search(rf"leaves {names[0]} (.+?)(?: and comes|\.)", rest)
    comes = re.search(rf"comes to {names[-1]} (.+?)\.", rest)
    return Drawn(names, ruled, leaves[1] if leaves else "", comes[1] if comes else "")


def _turned(text: str, _: object) -> Turned | None:
    found = re.match(
        rf"Turn a tape or a string round ({POINT}), (.+) long, and draw the .+ through "
        rf"({POINTS}), part of a circle", text
    )  # fmt: skip
    return Turned(found[1], amount(found[2]), _listed(found[3])) if found else None


def _traced(text: str, _: object) -> Traced | None:
    found = re.match(
        r"Lay fresh paper over the (.+)\. Trace the (.+), and copy the points (.+)\.", text
    )
    return Traced(found[1], _listed(found[2]), _listed(found[3])) if found else None


def _joined(text: str, _: object) -> Joined | None:
    found = re.match(r"Turn the (.+) over and lay it to the (.+), fold line on fold line", text)
    return Joined(found[2], found[1]) if found else None


def _notched(text: str, _: object) -> Notched | None:
    opening, _, rest = text.partition(", measured along the lines: ")
    if not opening.startswith("Mark the notches"):
        return None
    return Notched(tuple(_notch(one) for one in rest.removesuffix(".").split("; ")))


def _notch(one: str) -> tuple[str, str, float]:
    found = re.match(
        r".+, (?:one stroke|two strokes) across the (.+), (?:at (.+)|(.+) from (.+))", one
    )
    if not found:
        raise ValueError(f"no place for a notch in: {one}")
    return found[1], found[2] or found[4], amount(found[3]) if found[3] else 0.0


def _listed(text: str) -> tuple[str, ...]:
    return tuple(re.split(", | and ", text))


def _names(line: str) -> tuple[str, ...]:
    return tuple(line.split("–"))


def amount(text: str) -> float:
    """Return the length at a text's end [mm]: the result of a working, or all there is."""
    found = re.search(r"(?:^|[ =])(−?)((?:\d+ )?\d+/\d+|[\d.]+) (cm|in)\s*$", text.strip())
    if not found:
        raise ValueError(f"no length in: {text}")
    number = sum(Fraction(part) for part in found[2].split())
    size = float(number) * (10.0 if found[3] == "cm" else MM_PER_INCH)
    return -size if found[1] else size
