"""What each change after a fitting must do, measured on the pieces of a redrafted garment."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import lru_cache

from making import DAY, MIDDLE, person

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

WHO = person({**MIDDLE, "high_bust": 86.0, "across_back": 34.5, "waist_to_knee": 58.0})

Size = Callable[[Pattern], float]


def at(piece: str, point: str, axis: str) -> Size:
    """A point's coordinate [mm]: x out from the centre, y down from the nape."""
    return lambda pattern: float(getattr(pattern.piece(piece).points[point], axis))


def above_waist(piece: str, top: Callable[[Piece], float]) -> Size:
    """From a height on a piece down to its waist line [mm]."""
    return lambda pattern: pattern.piece(piece).levels["waist"] - top(pattern.piece(piece))


def side_neck(piece: Piece) -> float:
    """The side neck's height [mm]."""
    return piece.points["side_neck"].y


def neck_at_fold(piece: Piece) -> float:
    """Where the neckline meets the fold [mm]."""
    path = piece.edge("neckline").path
    return min((path.start, path.end), key=lambda end: abs(end.x)).y


def across(piece: str, mark: str) -> Size:
    """How far from the fold an armhole's mark lies [mm]."""

    def x(pattern: Pattern) -> float:
        half = pattern.piece(piece)
        notch = next(notch for notch in half.notches if notch.pair == mark)
        return half.edge("armhole").path.at(notch.distance)[0].x

    return x


def slope(pattern: Pattern) -> float:
    """How steeply the sleeve lies beyond the shoulder [degrees]."""
    points = pattern.piece("back").points
    way = points["overarm_end"] - points["shoulder_point"]
    return math.degrees(math.atan2(way.y, way.x))


def crown_mark(pattern: Pattern) -> float:
    """How far from the cap's back corner the shoulder's mark lies [mm]."""
    notches = pattern.piece("sleeve").notches
    return next(notch.distance for notch in notches if "crown" in notch.pair)


def band(pattern: Pattern) -> float:
    """The neckband as a share of its neckline [%]."""
    necks = sum(pattern.piece(name).length("neckline") for name in ("back", "front"))
    return 50 * pattern.piece("neckband").length("neckline") / necks


def sleeve_width(pattern: Pattern) -> float:
    """The sleeve under the arm [mm]."""
    points = pattern.piece("sleeve").points
    return points["front_underarm"].x - points["back_underarm"].x


def left_lower(pattern: Pattern) -> float:
    """How much lower the wearer's left shoulder point lies on the front [mm], and nothing where
    both are alike; the front's own right is her left."""
    points = pattern.piece("front").points
    other = points.get("shoulder_point_2")
    return points["shoulder_point"].y - other.y if other else 0.0


def edge(piece: str, name: str) -> Size:
    """An edge's length [mm]."""
    return lambda pattern: pattern.piece(piece).length(name)


@dataclass(frozen=True)
class Move:
    """What a change moves on a garment, by so much for each cm, percent or degree, within a share;
    ``still`` must not move by more than 1 mm."""

    garment: str
    moves: tuple[tuple[Size, float], ...]
    still: tuple[Size, ...] = ()
    within: float = 0.2
    asked: Mapping[str, str] = field(default_factory=dict)


TOP, SET_IN, DRESS, SKIRT = "jersey-top", "set-in-top", "skirted-dress", "circle-skirt"
EASED = {"fit": "eased"}
UNDERARMS = at("back", "underarm", "y"), at("front", "underarm", "y")
BUSTS = at("front", "bust_side", "x"), at("back", "bust_side", "x")
HIPS = at("front", "hip_side", "x"), at("back", "hip_side", "x")
HEMS = at("front", "centre_hem", "y"), at("back", "centre_hem", "y")
SIDE = at("back", "hem_side", "y")
BACK_MARK, FRONT_MARK = "back of the armhole", "front of the armhole"

MOVES = {
    "front-longer": Move(TOP, ((above_waist("front", side_neck), 10),), (HEMS[1],)),
    "front-wider": Move(SET_IN, ((BUSTS[0], 10),), (BUSTS[1],)),
    "front-hem-lower": Move(TOP, ((HEMS[0], 10),), (HEMS[1], SIDE)),
    "back-shorter": Move(TOP, ((HEMS[1], -10),), (HEMS[0], SIDE)),
    "bust-out": Move(TOP, ((BUSTS[0], 10), (BUSTS[1], 10))),
    "neck-narrower": Move(TOP, ((at("front", "side_neck", "x"), -10),)),
    "neck-wider": Move(TOP, ((at("back", "side_neck", "x"), 10),)),
    "front-taken-up": Move(TOP, ((above_waist("front", side_neck), -10),), (HEMS[1],)),
    "back-neck-raised": Move(
        TOP, ((above_waist("back", neck_at_fold), 10),), (at("back", "side_neck", "y"),)
    ),
    "front-neck-lower": Move(TOP, ((at("front", "centre_front", "y"), 10),)),
    "shoulder-forward": Move(
        SET_IN,
        ((at("front", "shoulder_point", "y"), 9.2), (at("back", "shoulder_point", "y"), -9.2)),
    ),
    "shoulders-lower": Move(
        SET_IN,
        ((at("back", "shoulder_point", "y"), 9), *((under, 10) for under in UNDERARMS)),
        asked=EASED,
    ),
    "shoulders-higher": Move(
        SET_IN,
        ((at("back", "shoulder_point", "y"), -9), *((under, -10) for under in UNDERARMS)),
        asked=EASED,
    ),
    "left-shoulder-lower": Move(SET_IN, ((left_lower, 10),)),
    "right-shoulder-lower": Move(TOP, ((left_lower, -10),)),
    "across-back-wider": Move(SET_IN, ((across("back", BACK_MARK), 10),), asked=EASED),
    "across-front-wider": Move(SET_IN, ((across("front", FRONT_MARK), 10),), asked=EASED),
    "back-longer": Move(
        TOP,
        ((above_waist("back", neck_at_fold), 10), (above_waist("back", side_neck), 10)),
        (above_waist("front", side_neck), HEMS[0]),
    ),
    "back-waist-shorter": Move(
        DRESS, ((HEMS[1], -10),), (HEMS[0], at("back", "waist_seam_side", "y"))
    ),
    "underarm-raised": Move(SET_IN, tuple((under, -10) for under in UNDERARMS), asked=EASED),
    "underarm-lower": Move(SET_IN, tuple((under, 10) for under in UNDERARMS)),
    "sleeve-wider": Move(SET_IN, ((sleeve_width, 10),)),
    "sleeve-flatter": Move(TOP, ((slope, -1),), asked={"sleeve": "long"}, within=0.35),
    "sleeve-forward": Move(SET_IN, ((crown_mark, -10),)),
    "sides-raised": Move(
        SKIRT,
        ((edge("skirt_back", "side"), -10),),
        (edge("skirt_back", "centre"),),
        asked={"panels": "2"},
    ),
    "sides-lowered": Move(TOP, ((edge("back", "side"), 10),), (HEMS[1],)),
    "sides-back": Move(
        SET_IN, ((BUSTS[0], 10), (BUSTS[1], -10), (HIPS[0], 10), (HIPS[1], -10))
    ),
    "sides-forward": Move(
        SET_IN, ((BUSTS[0], -10), (BUSTS[1], 10), (HIPS[0], -10), (HIPS[1], 10))
    ),
    "front-waist-longer": Move(DRESS, ((HEMS[0], 10),), (HEMS[1],)),
    "seat-longer": Move(TOP, ((HEMS[1], 10),), (HEMS[0], SIDE)),
    "band-shorter": Move(TOP, ((band, -0.8),), within=0.3),
    "band-longer": Move(TOP, ((band, 0.8),), within=0.3),
    "band-narrower": Move(TOP, ((edge("neckband", "join"), -20),)),
}  # fmt: skip
"""Every change, by its key."""


def waist_at_fold(piece: str) -> Size:
    """The waist's height at the centre [mm]."""

    def height(pattern: Pattern) -> float:
        path = pattern.piece(piece).edge("waist").path
        return min((path.start, path.end), key=lambda end: abs(end.x)).y

    return height


STRAIGHT = "straight-skirt"
BACK_WAIST, FRONT_WAIST = waist_at_fold("skirt_back"), waist_at_fold("skirt_front")
OTHER_MOVES = {
    "seat-longer, straight skirt": Move(STRAIGHT, ((BACK_WAIST, -10),), (FRONT_WAIST,)),
    "back-waist-shorter, straight skirt": Move(STRAIGHT, ((BACK_WAIST, 10),), (FRONT_WAIST,)),
    "front-hem-lower, straight skirt": Move(STRAIGHT, ((FRONT_WAIST, -10),), (BACK_WAIST,)),
    "back-waist-shorter, set-in dress": Move(
        DRESS, ((HEMS[1], -10),), (HEMS[0],), asked={"sleeve-cut": "set-in"}
    ),
    "sides-back, set-in dress": Move(
        DRESS, ((BUSTS[0], 10), (BUSTS[1], -10)), asked={"sleeve-cut": "set-in"}
    ),
    "seat-longer, dress": Move(DRESS, ((HEMS[1], 10),), (HEMS[0],)),
    "seat-longer, set-in top": Move(SET_IN, ((HEMS[1], 10),), (HEMS[0],)),
    "sleeve-wider, grown-on": Move(
        TOP, ((edge("back", "sleeve_hem"), 5),), asked={"sleeve": "elbow"}, within=0.3
    ),
    "sides-raised, dress": Move(DRESS, ((edge("skirt_back", "side"), -10),), asked={"panels": "2"}),
}
"""Other ways that some changes have on other garments."""


def what(key: str) -> str:
    """The change of a row."""
    return key.split(",")[0]


@lru_cache(maxsize=128)
def drafted(key: str, amount: float) -> Drafted:
    """The garment a change is measured on, with so much of it."""
    move = {**MOVES, **OTHER_MOVES}[key]
    who = WHO
    if amount:
        one = Adjustment(what=what(key), amount=amount, date=DAY, garment=move.garment)
        who = WHO.having(adjustments=(one,))
    return draft(who, move.garment, dict(move.asked), made=DAY)


def off(key: str, amount: float) -> list[str]:
    """What a change of an amount does otherwise than it should; nothing where all is right."""
    move = {**MOVES, **OTHER_MOVES}[key]
    before, after = drafted(key, 0.0).pattern, drafted(key, amount).pattern
    found = []
    for number, (size, each) in enumerate(move.moves):
        by, wanted = size(after) - size(before), each * amount
        if abs(by - wanted) > abs(wanted) * move.within + 0.2:
            found.append(f"{key}, move {number}: {by:.1f} for {wanted:.1f}")
    for number, size in enumerate(move.still):
        by = size(after) - size(before)
        if abs(by) > 1.0:
            found.append(f"{key}, still {number}: {by:.1f}")
    return found
