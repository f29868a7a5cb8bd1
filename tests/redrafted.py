"""A grown-on top and a set-in sleeve with its armhole, drafted a second time.

Written from the text of the drafting method alone: arithmetic, numpy for the curves' points,
nothing of the core's geometry. Lengths in mm, nape at (0, 0), x out from the fold, y down;
measures in cm. Only for bodies that ask for none of the method's ways out: no dart, no lift of the
sleeve, nothing moved or held back.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np

Line = np.ndarray
"""Points in a row, two numbers each."""


def at(x: float, y: float) -> np.ndarray:
    """Return a point."""
    return np.array([x, y])


def turned(degrees: float) -> np.ndarray:
    """Return the direction so far below level, outwards."""
    return at(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))


def straight(*points: np.ndarray) -> Line:
    """Return a line through points."""
    return np.array(points)


def cubic(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray, count: int = 400) -> Line:
    """Return a cubic curve as points."""
    t = np.linspace(0, 1, count)[:, None]
    return (1 - t) ** 3 * a + 3 * t * (1 - t) ** 2 * b + 3 * t * t * (1 - t) * c + t**3 * d


def round_about(centre: np.ndarray, start: np.ndarray, end: np.ndarray) -> Line:
    """Return the shorter arc of a circle between two of its points."""
    first, last = (math.atan2(p[1] - centre[1], p[0] - centre[0]) for p in (start, end))
    last = first + (last - first + math.pi) % (2 * math.pi) - math.pi
    radius, angles = math.dist(start, centre), np.linspace(first, last, 800)
    return centre + radius * np.column_stack([np.cos(angles), np.sin(angles)])


def length(line: Line) -> float:
    """Return a line's length."""
    return float(np.hypot(*np.diff(line, axis=0).T).sum())


def cut_at(line: Line, distance: float) -> Line:
    """Return the beginning of a line, so long."""
    walked = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    end = at(*(float(np.interp(distance, walked, line[:, i])) for i in (0, 1)))
    return np.vstack([line[walked < distance], end])


def nought(over: Callable[[float], float], low: float, high: float) -> float:
    """Return where a monotone function is nought, by halving."""
    rising = over(high) > over(low)
    for _ in range(36):
        middle = (low + high) / 2
        low, high = (low, middle) if (over(middle) > 0) == rising else (middle, high)
    return (low + high) / 2


@dataclass(frozen=True)
class Seam:
    """The two circles and the ruler below the bust: the ruler's lean at the bust [degrees], the
    point where it leaves the waist's circle, and the seam from there down to the hip."""

    lean: float
    leaves: np.ndarray
    below: Line


def ruler(height: float, wide: float, inner: float, outer: float) -> float:
    """Return the lean of the line that touches both circles [radians]."""
    both = inner + outer
    way = math.hypot(both - wide, height)
    return math.atan2(height, both - wide) - math.acos(both / way)


def grown_seam(quarters: tuple[float, float, float], levels: tuple[float, float, float],
               shaping: float) -> Seam:  # fmt: skip
    """Return the side of a grown-on body: one circle at the waist and a straight line to the bust;
    two circles from the waist to the hip."""
    bust, waist, hip = quarters
    y_bust, y_waist, y_hip = levels
    whole = y_hip - y_bust
    mean = min(max(0.5 * (hip - bust) / whole, 0), 0.12)
    t = (y_waist - y_bust) / whole
    plain = bust + (hip - bust) * (3 * t * t - 2 * t**3) + mean * whole * (t**3 - t * t)
    drawn = max(waist, plain - shaping * (plain - waist))
    up, d_up = y_waist - y_bust, bust - drawn
    single = max(60.0, up * up / (3.2 * d_up))
    lean = ruler(up, d_up, single, 0.0)
    centre = at(drawn + single, y_waist)
    leaves = centre - single * at(math.cos(lean), math.sin(lean))
    top = round_about(centre, leaves, at(drawn, y_waist))
    down, d = y_hip - y_waist, hip - drawn
    slope = min(mean, 0.75 * d / down)
    beta, r = math.atan(slope), down * down / (5 * d)
    inner, outer = max(60.0, 0.8 * r), max(80.0, 1.2 * r)
    height, wide = down + outer * math.sin(beta), d + outer * (1 - math.cos(beta))
    theta = ruler(height, wide, inner, outer)
    in_c = at(drawn + inner, y_waist)
    out_c = at(hip - outer * math.cos(beta), y_hip + outer * math.sin(beta))
    first = in_c + inner * at(-math.cos(theta), math.sin(theta))
    last = out_c + outer * at(math.cos(theta), -math.sin(theta))
    lower = np.vstack([
        round_about(in_c, at(drawn, y_waist), first), round_about(out_c, last, at(hip, y_hip)),
        at(hip, y_hip) + 200 * at(slope, 1),
    ])  # fmt: skip
    return Seam(math.degrees(lean), leaves, np.vstack([top, lower]))


def grown_top(
    m: Mapping[str, float], sleeve: float, ease: float, shaping: float
) -> dict[str, Line]:
    """Return the edges of a back with a short sleeve grown on, fitted: shoulder, sleeve hem,
    underarm, side and hem. ``sleeve`` is its length and ``ease`` the arm's [cm]."""
    cm = {key: 10 * value for key, value in m.items()}
    fall = math.degrees(math.asin(m["shoulder_drop"] / m["shoulder_length"])) - 4
    along, square = turned(fall), turned(fall + 90)
    neck = at(cm["neck"] / 5 + 15, -(cm["neck"] / 5 + 15) / 4)
    end = neck + along * cm["shoulder_length"]
    top = end + along * 10 * sleeve
    corner = top + square * (cm["upper_arm"] + 10 * ease) / 2
    bust = cm["back_waist_length"] - (cm["front_waist_length"] - cm["neck_to_bust_point"])
    waist = cm["back_waist_length"]
    hip = waist + cm["hip_depth"]
    wide = (cm["bust"] / 4, cm["waist"] / 4, cm["hip"] / 4)
    seam = grown_seam(wide, (bust, waist, hip), shaping)
    way = turned(90 + seam.lean)
    t = np.linalg.solve(np.column_stack([-along, -way]), at(wide[0], bust) - corner)[0]
    meeting = corner - along * t
    psi = math.acos(float(np.clip(np.dot(-along, way), -1, 1)))
    radius = least_dear(meeting, way, psi, bust, usual=60.0)
    reach = radius * math.tan(psi / 2)
    begins, ends = meeting + along * reach, meeting + way * reach
    inward = (way + along) / np.linalg.norm(way + along)
    centre = meeting + inward * radius / math.cos(psi / 2)
    middle = centre - inward * radius
    assert middle[1] > cm["armscye_depth"] + 10
    side = np.vstack([round_about(centre, middle, ends), seam.leaves, seam.below])
    fold = hip + 30
    to_hip = length(side[:-1])
    side = cut_at(side, to_hip + 30)
    leaving = side[-1] - side[-2]
    inwards = at(-leaving[1], leaving[0]) / np.linalg.norm(leaving)
    foot = side[-1]
    hem = cubic(foot, foot + inwards * 0.35 * foot[0], at(0.4 * foot[0], fold), at(0, fold))
    return {
        "shoulder": straight(neck, top),
        "sleeve_hem": straight(top, corner),
        "underarm": np.vstack([corner, round_about(centre, begins, middle)]),
        "side": side,
        "hem": hem,
    }


def least_dear(
    meeting: np.ndarray, way: np.ndarray, psi: float, bust: float, usual: float
) -> float:
    """Return the underarm's radius: of 6 and 5, 8, 10 cm the one that costs least, 0.05 for each mm
    off the usual and 0.15 for each mm that the curve ends below the bust line; smaller, down to 5,
    where the curve then ends on that line."""
    drop = float(way[1]) * math.tan(psi / 2)
    to_bust = (bust - float(meeting[1])) / drop

    def drawn(radius: float) -> float:
        return min(radius, to_bust) if to_bust >= 50 else radius

    def cost(radius: float) -> float:
        below = float(meeting[1]) + drawn(radius) * drop - bust
        return 0.05 * abs(radius - usual) + 0.15 * max(below, 0.0)

    return drawn(min((usual, 50.0, usual + 20, usual + 40), key=cost))


def rounded(start: np.ndarray, corner: np.ndarray, end: np.ndarray) -> Line:
    """Return a curve inside a corner: a circle's handles, longer the more its sides differ."""
    first, last = corner - start, end - corner
    a, b = np.linalg.norm(first), np.linalg.norm(last)
    turn = math.acos(float(np.dot(first, last)) / (a * b))
    circle = 4 / 3 * math.tan(turn / 4) / math.tan(turn / 2)
    uneven = 1 - min(a, b) / max(a, b)
    short, long = circle + 0.4 * uneven**2, circle + 0.3 * uneven
    one, other = (short, long) if a < b else (long, short)
    return cubic(start, start + first * min(one, 0.85), end - last * min(other, 0.85), end)


@dataclass(frozen=True)
class HalfArmhole:
    """Shoulder end, the whole curve, and the length of its lower part."""

    shoulder: Line
    path: Line
    lower: float


def half_armhole(
    neck: np.ndarray, end: np.ndarray, half: float, under: np.ndarray, part: float
) -> HalfArmhole:
    """Return half an armhole: two curves that join upright at the across point."""
    slope = math.atan2(end[1] - neck[1], end[0] - neck[0])
    q = at(half, end[1] + part * (under[1] - end[1]))
    dx, dy = end[0] - q[0], q[1] - end[1]
    near = math.radians(4)
    angle = min(max(math.atan2(dx, 0.5 * dy), slope - near), slope + near)
    angle = max(angle, math.atan2(dx, 0.9 * dy))
    upper = rounded(end, at(q[0], end[1] + dx / math.tan(angle)), q)
    lower = rounded(q, at(q[0], under[1]), under)
    return HalfArmhole(straight(neck, end), np.vstack([upper, lower]), length(lower))


@dataclass(frozen=True)
class SetIn:
    """Back and front armhole, the cap from the back's underarm, the hem, and the notches on the
    cap: back, crown, front."""

    back: HalfArmhole
    front: HalfArmhole
    cap: Line
    hem: Line
    notches: tuple[float, float, float]


def set_in(m: Mapping[str, float], sleeve: float, ease: float) -> SetIn:
    """Return armholes and sleeve of a fitted set-in top; ``sleeve`` is its length and ``ease`` that
    of the arm, kept down to the hem [cm]."""
    cm = {key: 10 * value for key, value in m.items()}
    slope = math.asin(m["shoulder_drop"] / m["shoulder_length"])
    rise = (cm["neck"] / 5 + 15) / 4
    neck = at(cm["neck"] / 5 + 15, -rise)
    long = cm["shoulder_length"] - round(15 / math.cos(slope), 1)
    end = neck + long * turned(math.degrees(slope))
    raised = cm["front_waist_length"] - cm["back_waist_length"] - rise
    assert 0 <= raised <= 15
    high, aim = neck - at(0, raised), end - at(0, raised / 2)
    front_end = high + (aim - high) * long / np.linalg.norm(aim - high)
    cup = cm["bust"] - cm["high_bust"]
    across = cm["across_back"] / 2 + 3
    level, quarter, f = cm["armscye_depth"] + 10, cm["bust"] / 4, min(cup, 40) / 8
    back = half_armhole(neck, end, across, at(quarter - f, level), 0.50)
    wide = across - 7.5 + min(cup / 16, 5)
    front = half_armhole(high, front_end, wide, at(quarter + f, level), 0.52)
    arm = hem_arm(cm, 10 * sleeve) + 10 * ease
    lean = 0.0
    for _ in range(4):
        cap, notches, width, height = capped(back, front, cm["upper_arm"] + 10 * ease, lean)
        seam = 10 * sleeve - height
        chord = hem_chord(width, seam, arm)
        lean = (width - chord) / 2 / seam
    hem = bent(width, chord, seam) + at(notches[3], height)
    return SetIn(back, front, cap, hem, notches[:3])


def hem_chord(width: float, seam: float, wanted: float) -> float:
    """Return the hem's width between its corners for a bent hem so long."""
    return nought(lambda chord: length(bent(width, chord, seam)) - wanted, wanted - 60, wanted + 60)


def hem_arm(cm: Mapping[str, float], distance: float) -> float:
    """Return the arm's girth there: full down to 0.3 of it, then straight to 0.65, the forearm."""
    fore, part = 0.31 * cm["upper_arm"] + 1.07 * cm["wrist"], distance / cm["arm_length"]
    assert part <= 0.65
    return cm["upper_arm"] + (fore - cm["upper_arm"]) * max(part - 0.3, 0) / 0.35


def half_cap(width: float, height: float, handles: tuple[float, float], lean: float) -> Line:
    """Return half a cap, from its corner at (0, height) to the crown at (width, 0)."""
    a, b = handles
    return cubic(
        at(0, height), at(a * width, height - a * width * lean), at(width - b * width, 0),
        at(width, 0),
    )  # fmt: skip


def capped(
    back: HalfArmhole, front: HalfArmhole, wanted: float, lean: float
) -> tuple[Line, tuple[float, float, float, float], float, float]:
    """Return the cap with its crown at (0, 0), its notches and its middle, its width and height:
    both halves half a per cent shorter than their armholes, together as wide as wanted."""
    handles = (0.42, 0.48), (0.50, 0.42)
    halves = [length(half.path) * 0.995 for half in (back, front)]

    def widths(height: float) -> list[float]:
        return [
            nought(lambda w, k=k, n=n: length(half_cap(w, height, k, lean)) - n, 0.3 * n, n)
            for n, k in zip(halves, handles, strict=True)
        ]

    whole = sum(halves) / 0.995
    height = nought(lambda h: sum(widths(h)) - wanted, 0.16 * whole, 0.34 * whole)
    wb, wf = widths(height)
    behind = half_cap(wb, height, handles[0], lean) - at(wb, 0)
    before = half_cap(wf, height, handles[1], lean) - at(wf, 0)
    before = (before * at(-1, 1))[::-1]
    cap = np.vstack([behind, before])
    marks = back.lower * 0.995, halves[0], sum(halves) - front.lower * 0.995
    return cap, (*marks, (wf - wb) / 2), wb + wf, height


def bent(width: float, chord: float, seam: float) -> Line:
    """Return a hem from back to front about its middle: straight for 0.4 of its half, then bent to
    meet the slanting seams square; its corners move on along them."""
    half, taper = chord / 2, (width - chord) / 2 / seam
    down = at(-taper, 1) / math.hypot(taper, 1)
    end = at(half, seam) + down * (0.3 * half * taper / down[1])
    first, square = at(0.4 * half, seam), at(down[1], -down[0])
    corner = end - square * (end[1] - seam) / square[1]
    curve = cubic(first, first + (corner - first) * 2 / 3, end + (corner - end) * 2 / 3, end)
    right = np.vstack([at(0, seam), curve])
    return np.vstack([(right * at(-1, 1))[::-1], right])
