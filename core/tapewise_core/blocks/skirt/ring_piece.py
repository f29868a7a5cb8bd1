"""Drawing and cutting a circle skirt's pieces.

On the fold, as drawn (one piece is 2 x angle wide, two are a half each)::

      Z                 Z  centre of both circles, on the fold
      |  .              R  waist at the fold      D  waist at the side
      R__  .  D         Q  hem at the fold        G  hem at the side
      |      /  .
      |      G
      Q____/

More than two pieces are drawn whole, R-Q down the middle, with E and H as D and G
on the left.
"""

from __future__ import annotations

import math

from tapewise_core.blocks.skirt.ring import Ring
from tapewise_core.drafting.curve_steps import Round
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.arc import arc, on_circle
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.curves import warped
from tapewise_core.units import Length, mm


def names_of(count: int) -> tuple[str, ...]:
    """Return the names of the pieces that are drawn."""
    return {1: ("skirt",), 2: ("skirt_back", "skirt_front")}.get(count, ("skirt_panel",))


def draft_ring(title: str, skirt: Ring, edge: Length, length: Length, count: int) -> Draft:
    """Return one of some equal pieces as drawn by hand; ``edge`` is the whole waist edge."""
    radius = edge / (2 * math.pi * skirt.part)
    fold = count < 3
    half = skirt.angle(count) / 2
    centre = "the centre of both circles" + (", on the fold" if fold else "")
    draft = (
        Draft(title)
        .start("Z", centre)
        .down("Z", "R", radius, "the waist at the fold" if fold else "the middle of the waist")
        .down("R", "Q", length, "the hem at the fold" if fold else "the middle of the hem")
    )
    side = length - mm(skirt.sides_higher) if count == 2 else length
    draft = _ray(draft, ("D", "G"), half, radius, side)
    if not fold:
        draft = _ray(draft, ("E", "H"), -half, radius, length)
    hem = _hem(skirt, half, length, count)
    draft = _sides(_arcs(draft, half, radius, length, hem, fold=fold), skirt, count)
    inner = radius.called("radius") - mm(skirt.waist_allowance)
    if count > 1:
        alike = "back and front" if count == 2 else f"all {count} panels"
        draft = draft.note(f"One pattern serves for {alike}: they are alike.")
    return draft.note(
        "These are stitching lines. The waist is cut inside its own, on a circle of ", inner,
        "; the allowances of the sides lie outside them, so the waist keeps its length.",
    )  # fmt: skip


def _ray(
    draft: Draft, names: tuple[str, str], angle: float, radius: Length, length: Length
) -> Draft:
    """Mark the waist and the hem at one end of the arcs."""
    waist, hem = names
    chord = (on_circle(Point(0, 0), 1, angle) - Point(0, 1)).length()
    whole = radius.called("radius") + length
    draft = draft.slanting(
        "Z", waist, mm(radius.mm), angle, ("Z", "Q"), "the waist at the side"
    ).along("Z", waist, hem, whole, "the hem at the side")
    if chord > 1.99:
        return draft
    return draft.note(f"Check the angle: {hem} lies ", mm(whole.mm * chord), " straight from Q.")


def _hem(skirt: Ring, half: float, length: Length, count: int) -> Path | None:
    """The hem of a half on the fold, higher at the side; None where it is a plain arc.

    On a skirt of one piece the side lies midway, on one of two at the end; from the fold the hem
    goes up as an S does, so that it stays smooth across fold and seam.
    """
    higher, outer = skirt.sides_higher, skirt.radius + length.mm
    if not higher:
        return None

    def moved(point: Point) -> Point:
        share = math.degrees(math.atan2(point.x, point.y)) / half * (1 if count == 2 else 2)
        t = max(share if share <= 1 else 2 - share, 0.0)
        return Point(0, 0) + (point - Point(0, 0)) * (1 - higher * t * t * (3 - 2 * t) / outer)

    return warped(arc(Point(0, 0), outer, 0.0, half), moved, 4)


LEVELLED = "It is level with the arc at the fold and goes up smoothly to the side."


def _arcs(
    draft: Draft, half: float, radius: Length, length: Length, hem: Path | None, *, fold: bool
) -> Draft:
    """The waist and the hem, walked from the fold, or from the left of a whole piece."""
    centre, first = draft["Z"], 0.0 if fold else -half
    inner, outer = mm(radius.mm), radius.called("radius") + length
    for line, size, ends in (
        ("waist", inner, ("R", "D") if fold else ("E", "R", "D")),
        ("hem", outer, ("Q", "G") if fold else ("H", "Q", "G")),
    ):
        if line == "hem" and hem is not None:
            draft = draft.curve("hem", hem, ends, LEVELLED)
            continue
        draft = draft.then(Round(line, arc(centre, size.mm, first, half), ends, "Z", size))
    return draft


def _sides(draft: Draft, skirt: Ring, count: int) -> Draft:
    if skirt.seamless(count):
        return draft.note("The line straight up from Z lies on the fold too: there is no seam.")
    draft = draft.rule("centre_back" if count == 1 else "side", "D", "G")
    return draft if count < 3 else draft.rule("side_2", "H", "E", remark="the other side")


def cut_ring(
    draft: Draft, name: str, skirt: Ring, count: int, *, casing: bool, notches: tuple[Notch, ...]
) -> Piece:
    """Return a piece from its finished draft; ``casing`` if the waist's edge is turned down."""
    fold = count < 3
    waist, hem = draft.paper.line("waist"), draft.paper.line("hem").reversed()
    edges = [
        Edge("waist", waist, skirt.waist_allowance, turned=casing),
        _side(draft, skirt, count),
        Edge("hem", hem, skirt.hem_allowance, turned=True),
    ]
    if fold:
        edges.append(Edge("centre", ruled(draft["Q"], draft["R"]), 0.0, fold=True))
    else:
        edges.append(Edge("side_2", draft.paper.line("side_2"), skirt.side_allowance))
    return make_piece(
        name,
        tuple(edges),
        _points(draft, count),
        _grain(skirt, count),
        notches=notches,
        count=count if count > 2 else 1,
        on_fold=fold,
        label=_label(skirt, count),
        turnable=True,
    )


def _side(draft: Draft, skirt: Ring, count: int) -> Edge:
    if skirt.seamless(count):
        return Edge("centre_2", ruled(draft["D"], draft["G"]), 0.0, fold=True)
    line = "centre_back" if count == 1 else "side"
    return Edge(line, draft.paper.line(line), skirt.side_allowance)


def _points(draft: Draft, count: int) -> dict[str, Point]:
    names = {
        "centre": "Z",
        "centre_waist": "R",
        "centre_hem": "Q",
        "waist_end": "D",
        "hem_end": "G",
    }
    if count > 2:
        names |= {"waist_end_2": "E", "hem_end_2": "H"}
    return {name: draft[letter] for name, letter in names.items()}


def _grain(skirt: Ring, count: int) -> tuple[Point, Point]:
    """Down the piece, towards the hem, clear of the label above it."""
    low, high = skirt.radius + skirt.length * 0.94, skirt.radius + skirt.length * 0.7
    x = skirt.outer * 0.16 * min(1.0, skirt.angle(count) / 90) if count < 3 else 0.0
    return Point(x, low), Point(x, high)


LABEL_HIGH = 62.0
"""Room for the label's lines at their largest [mm]."""


def _label(skirt: Ring, count: int) -> Box:
    """Room beside the fold, or in the middle of a whole piece, where the ring is wide enough."""
    tangent = math.tan(math.radians(min(skirt.angle(count) / 2, 60)))
    left = 26.0 if count < 3 else 0.0
    bottom = skirt.radius + skirt.length * 0.64
    top = max(bottom - LABEL_HIGH, skirt.radius + 12)
    right = min(left + 150, max(top * tangent - 8, left + 40))
    return Box(left if count < 3 else -right, top, right, bottom)
