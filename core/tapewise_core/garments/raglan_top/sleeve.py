"""A raglan sleeve, drafted and cut in two halves that are joined over shoulder and arm.

::

        S.                S  side neck             O  where shoulder and overarm would meet
       /  V               V  the neckline's end    T  the overarm is straight from here on
      P    .              P  shoulder point        G  the sleeve's width
     O      Z             Z  notch                 U  underarm
     T       .            Q  hem on the overarm    H  hem at the underarm
     G________U
     Q_______H

The front half as it lies on the paper; the back half lies the other way round. From neckline to
notch the raglan seam is the body's own line; from there it turns the other way than the armhole,
evenly, and is as long (:mod:`parts.shape.raglan_sleeve`).
"""

from __future__ import annotations

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.garments.raglan_top.body import BACK_MARK, FRONT_MARK
from tapewise_core.garments.raglan_top.plan import Plan
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.half_raglan import ROUND, HalfSleeve, over
from tapewise_core.text.told import LineName, said
from tapewise_core.units import mm

BACK, FRONT = "sleeve_back", "sleeve_front"

OVERARM = "shoulder point on the overarm"

UPRIGHT = Point(0, 0), Point(0, 1)


def laid(path: Path, *, front: bool) -> Path:
    """Return a path of a half as it lies on its paper: the back's in from the left."""
    return path if front else path.mirrored(*UPRIGHT)


def draft_half(plan: Plan, half: HalfSleeve, *, front: bool) -> Draft:
    """Return one half of the sleeve as drawn by hand."""
    body = "front" if front else "back"
    hem = plan.length.mm - over(half.bend)
    draft = (
        Draft(title(FRONT if front else BACK))
        .start("O", "where the shoulder's line and the overarm's would meet, near the top")
        .down("O", "T", mm(ROUND), "from here on the overarm is straight")
        .down("O", "G", mm(half.turn.end.y), "the line of the sleeve's width")
        .down("O", "Q", mm(hem), "the hem on the overarm")
    )
    overarm = laid(half.overarm(plan.length.mm), front=front)
    seam = laid(half.seam, front=front)
    neckline = laid(half.neckline, front=front)
    draft = set_off(draft, "O", "S", overarm.start, "the side neck")
    shoulder = mm(overarm.segments[0].length())
    draft = draft.along("S", "O", "P", shoulder, "the shoulder point, the shoulder's length from S")
    called = "the raglan line's end on the neckline"
    draft = set_off(draft, "S", "V", neckline.start, called)
    draft = set_off(draft, "G", "Z", half_notch(half, front=front), "the notch on the raglan line")
    wide = draft.across if front else draft.inward
    draft = wide("G", "U", mm(half.width), "the underarm")
    under = laid(plan.hem_of(half), front=front)
    draft = set_off(draft, "Q", "H", under.end, "the hem's end at the underarm")
    return (
        draft.curve("overarm", overarm, ("S", "P", "T", "Q"), ROUNDED)
        .curve("neckline", neckline, ("V", "S"), said("As on the {}.", LineName(body)))
        .curve("raglan_line", seam, ("V", "Z", "U"), said(TURNS, LineName(body)))
        .rule("underarm", "U", "H", remark="as long as the other half's" if front else "")
        .curve("sleeve_hem", under, ("Q", "H"))
    )


ROUNDED = "It rounds the shoulder between P and T."
TURNS = (
    "From V to Z it is the {}'s raglan line, traced; then it turns in and meets the seam square."
)


def half_notch(half: HalfSleeve, *, front: bool) -> Point:
    """Return where the raglan seam turns, as it lies on the paper."""
    at = half.turn.start
    return at if front else at.mirrored(*UPRIGHT)


def cut_half(draft: Draft, half: HalfSleeve, style: SetInStyle, raglan: float) -> Piece:
    """Return a drafted half as a piece to cut; ``raglan`` is that seam's allowance [mm]."""
    lines = draft.paper.lines
    front = draft["U"].x > 0
    upper, whole = half.line.upper.length(), lines["raglan_line"].length()
    allowances, own = style.allowances, {"raglan_line": raglan}
    walk = ("neckline", "raglan_line", "underarm", "sleeve_hem", "overarm")
    backwards = ("neckline", "sleeve_hem", "overarm") if front else ("underarm", "raglan_line")
    edges = tuple(
        Edge(
            name,
            lines[name].reversed() if name in backwards else lines[name],
            own.get(name, allowances.along(name)),
            turned=allowances.turned(name) or (name == "neckline" and style.neck.turned),
        )
        for name in (walk if front else (walk[0], *reversed(walk[1:])))
    )
    overarm = lines["overarm"].length()
    at = lines["overarm"].segments[0].length()
    mark = (upper, FRONT_MARK, 1) if front else (whole - upper, BACK_MARK, 2)
    names = {
        "side_neck": "S", "shoulder_point": "P", "raglan_neck": "V", "raglan_notch": "Z",
        "underarm": "U", "hem_overarm": "Q", "hem_underarm": "H",
    }  # fmt: skip
    return make_piece(
        FRONT if front else BACK,
        edges,
        {name: draft[letter] for name, letter in names.items()},
        _grain(draft),
        notches=(
            Notch("raglan_line", *mark),
            Notch("overarm", overarm - at if front else at, OVERARM),
        ),
        count=2,
        mirrored=True,
        label=_label(draft),
    )


def _grain(draft: Draft) -> tuple[Point, Point]:
    """Along the overarm, between the label and the raglan seam."""
    x, top, foot = _narrowest(draft) * GRAIN, draft["Z"].y, draft["Q"].y
    return Point(x, foot - (foot - top) * 0.1), Point(x, top + (foot - top) * 0.15)


GRAIN = 0.86
"""The grain lies at this share of the sleeve's narrowest width below its bend."""


def _narrowest(draft: Draft) -> float:
    """The least width between the overarm's straight part and what lies opposite [mm], less than
    nought where it lies to the left."""
    seam = draft.paper.line("raglan_line").flattened()
    below = [point.x for point in seam if point.y > draft["T"].y]
    return min((*below, draft["Z"].x, draft["H"].x), key=abs)


def _label(draft: Draft) -> Box:
    """Between overarm and grain, below the bend."""
    wide, top, foot = _narrowest(draft), draft["T"].y, draft["Q"].y
    ends = sorted((wide * 0.1, wide * (GRAIN - 0.06)))
    return Box(ends[0], top, ends[1], foot - (foot - top) * 0.1)
