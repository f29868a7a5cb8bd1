"""Draw by hand what was read: ruler, set square, and a natural smooth curve through points.

It knows nothing of the pattern: only acts that :mod:`hand_reads` took from the printed words.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from itertools import pairwise

import numpy as np
from hand_reads import (
    Act,
    Drawn,
    Joined,
    Marked,
    Measured,
    Notched,
    Offs,
    Ruled,
    Traced,
    Turned,
)
from scipy.interpolate import CubicSpline
from scipy.spatial import cKDTree

Array = np.ndarray

WAYS = {
    "straight down": (0.0, 1.0), "straight up": (0.0, -1.0),
    "square across to the right": (1.0, 0.0), "square across to the left": (-1.0, 0.0),
}  # fmt: skip
SIDES = {
    "to the right": (1.0, 0.0), "to the left": (-1.0, 0.0),
    "upwards": (0.0, -1.0), "downwards": (0.0, 1.0),
}  # fmt: skip

STEP = 0.5
"""Lines are kept as points so far apart [mm]."""


@dataclass
class Sheet:
    """A sheet of paper: lettered points, and the pattern's lines by what the words call them."""

    points: dict[str, Array] = field(default_factory=dict)
    lines: list[tuple[str, Array]] = field(default_factory=list)
    notches: list[Array | None] = field(default_factory=list)

    def way(self, start: str, end: str) -> Array:
        """Return the direction from one point to another."""
        return _unit(self.points[end] - self.points[start])


def drawn(acts: list[tuple[str, Act | None]], done: dict[str, Sheet]) -> Sheet:
    """Return the sheet that some acts lead to; ``done`` are those of the pieces before."""
    sheet = Sheet()
    for text, act in acts:
        match act:
            case Marked(name):
                sheet.points[name] = np.zeros(2)
            case Measured():
                way = _measured_way(sheet, act)
                sheet.points[act.name] = sheet.points[act.start] + way * act.by
            case Offs():
                _offs(sheet, act)
            case Ruled(names):
                corners = [sheet.points[name] for name in names]
                sheet.lines.append((_called(text), _dense(np.array(corners))))
            case Drawn():
                sheet.lines.append((_called(text), _curve(sheet, act)))
            case Turned():
                sheet.lines.append((_called(text), _arc(sheet, act)))
            case Traced():
                sheet = _traced(done[act.of], act)
            case Joined(plain, mirrored):
                over = [(name, line * [-1, 1]) for name, line in done[mirrored].lines]
                sheet.lines = [*done[plain].lines, *over]
            case Notched(places):
                sheet.notches = [_notch(sheet, *place) for place in places]
            case None:
                pass
    return sheet


def _called(text: str) -> str:
    """The line's name in the words."""
    found = re.search(r"(?:D|d)raw the (.+?) through ", text) or re.search(r": the ([^.]+)\.", text)
    return found[1] if found else ""


def _traced(source: Sheet, act: Traced) -> Sheet:
    lines = [(name, line) for name, line in source.lines if name in act.lines]
    return Sheet({name: source.points[name] for name in act.points}, lines)


def _measured_way(sheet: Sheet, act: Measured) -> Array:
    if act.way in WAYS:
        return np.array(WAYS[act.way])
    start, end = re.findall(r"[A-Z]\d*", act.way)[-2:]
    along = sheet.way(start, end)
    if act.way.startswith("along"):
        return along
    if act.way.startswith("straight back"):
        return -along
    angle = re.search(r"at ([\d.]+)°", act.way)
    turn = float(angle[1]) if angle else 90.0
    side = np.array(SIDES[act.way.split(",")[0]])
    return max((_turned(along, turn), _turned(along, -turn)), key=lambda way: way @ side)


def _offs(sheet: Sheet, act: Offs) -> None:
    along = sheet.way(act.start, act.end)
    for name, far, out, side in act.places:
        square = _turned(along, 90)
        if side and square @ np.array(SIDES[side]) < 0:
            square = -square
        sheet.points[name] = sheet.points[act.start] + along * far + square * out


def _curve(sheet: Sheet, act: Drawn) -> Array:
    """Ruled where it is told so; a chord-length cubic spline through the rest."""
    joints = {pair for names in act.ruled for pair in pairwise(names)}
    parts: list[list[str]] = [[act.names[0]]]
    for pair in pairwise(act.names):
        if pair in joints or (len(parts[-1]) == 2 and tuple(parts[-1]) in joints):
            parts.append([pair[0]])
        parts[-1].append(pair[1])
    parts = [part for part in parts if len(part) > 1]
    found = []
    for number, part in enumerate(parts):
        at = np.array([sheet.points[name] for name in part])
        if tuple(part) in joints:
            found.append(_dense(at))
            continue
        before = sheet.way(*parts[number - 1]) if number else None
        after = sheet.way(*parts[number + 1]) if number + 1 < len(parts) else None
        first = before if before is not None else _end(sheet, act.leaves, part[0], part[1])
        last = after if after is not None else -_end(sheet, act.comes, part[-1], part[-2])
        found.append(_spline(at, first, last))
    return np.vstack(found)


def _end(sheet: Sheet, told: str, name: str, beside: str) -> Array:
    """The direction told at a curve's end, into the curve: on the side of its next point."""
    if told in ("level", "upright"):
        ways = [np.array([1.0, 0.0] if told == "level" else [0.0, 1.0])]
    else:
        told, _, side = told.partition(", ")
        found = re.fullmatch(r"(along|square to|at (\d+)° to) ([A-Z]\d*)–([A-Z]\d*)", told)
        if not found or name not in found.groups():
            raise ValueError(f"no direction at {name}: “{told}”")
        other = found[4] if found[3] == name else found[3]
        line = sheet.way(name, other)
        angle = {"along": 0.0, "square to": 90.0}.get(found[1]) if not found[2] else None
        if angle is None:
            ways = [_turned(line, float(found[2])), _turned(line, -float(found[2]))]
            return max(ways, key=lambda way: way @ np.array(SIDES[side]))
        ways = [_turned(line, angle)]
    return max((ways[0], -ways[0]), key=lambda way: way @ sheet.way(name, beside))


def _spline(points: Array, first: Array, last: Array) -> Array:
    spans = np.linalg.norm(np.diff(points, axis=0), axis=1)
    at = np.concatenate([[0.0], np.cumsum(spans)])
    spline = CubicSpline(at, points, bc_type=((1, first), (1, last)))
    return spline(np.linspace(0, at[-1], max(int(at[-1] / STEP), 2) + 1))


def _arc(sheet: Sheet, act: Turned) -> Array:
    """Counterclockwise as seen from below the centre: from the first point, by the right."""
    centre = sheet.points[act.centre]
    start, end = (sheet.points[name] - centre for name in (act.names[0], act.names[-1]))
    first, last = (float(np.arctan2(way[0], way[1])) for way in (start, end))
    if last <= first + 1e-9:
        last += 2 * np.pi
    angles = np.linspace(first, last, max(int(act.radius * (last - first) / STEP), 2) + 1)
    return centre + act.radius * np.column_stack([np.sin(angles), np.cos(angles)])


def _notch(sheet: Sheet, name: str, start: str, far: float) -> Array | None:
    """The place so far along the line of a name from its end at a letter; None without one."""
    if start not in sheet.points:
        return None
    at = sheet.points[start]
    ends = [line for called, line in sheet.lines if called.startswith(name)]
    ends = ends or [line for _, line in sheet.lines]
    both = [way for line in ends for way in (line, line[::-1])]
    line = min(both, key=lambda line: np.linalg.norm(line[0] - at))
    walked = np.concatenate([[0], np.cumsum(np.linalg.norm(np.diff(line, axis=0), axis=1))])
    return np.array([np.interp(far, walked, line[:, i]) for i in (0, 1)])


def _dense(corners: Array) -> Array:
    found = [corners[:1]]
    for a, b in pairwise(corners):
        steps = max(int(np.linalg.norm(b - a) / STEP), 1)
        found.append(a + (b - a) * np.linspace(0, 1, steps + 1)[1:, None])
    return np.vstack(found)


def _unit(way: Array) -> Array:
    return way / np.linalg.norm(way)


def _turned(way: Array, degrees: float) -> Array:
    c, s = np.cos(np.radians(degrees)), np.sin(np.radians(degrees))
    return np.array([c * way[0] - s * way[1], s * way[0] + c * way[1]])


def apart(one: Array, other: Array) -> Array:
    """Return how far each point of one line is from another [mm]."""
    return cKDTree(other).query(one)[0]


def dense(corners: list[tuple[float, float]]) -> Array:
    """Return a line of corners as points close together."""
    return _dense(np.array(corners))
