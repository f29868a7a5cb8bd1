"""A belt to tie, the marks for its loops, and pockets in the side seams.

Sizes without a source are common practice.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.belt_pocket_style import BeltPocketStyle
from tapewise_core.parts.seam_marks import with_marks
from tapewise_core.parts.strip import corners, draft_strip, rule_strip
from tapewise_core.sewing.extras import BELT, POCKET
from tapewise_core.units import Length, cm, mm

POCKET_WIDE = cm(17)
"""How far a pocket reaches in from the side seam: a hand and a little."""

POCKET_BELOW = cm(11)
"""How far it hangs below its opening, so that nothing falls out."""

POCKET_HEEL = cm(4)
"""How far the bag is sewn straight down the side below its opening."""

LOOP_ROOM = 5.0
"""A belt loop is longer than the belt is wide by this much above and below [mm]."""


def draft_belt(waist: Length, style: BeltPocketStyle) -> Draft:
    """Return the belt as drawn by hand."""
    length = waist + style.belt_ends.called("both ends to tie")
    strip = draft_strip("Belt", "along", length, "the belt's length", style.belt_width)
    return rule_strip(strip, "belt")


def cut_belt(draft: Draft, style: BeltPocketStyle) -> Piece:
    """Return the belt as a piece, folded along its middle and sewn all round."""
    a, b, c, d = corners(draft)
    allowance, middle = style.seam.mm, draft["M"].y
    names = ("long", "end", "long_2", "end_2")
    sides = ((a, b), (b, c), (c, d), (d, a))
    edges = tuple(
        Edge(name, ruled(*side), allowance) for name, side in zip(names, sides, strict=True)
    )
    grain = (Point(b.x * 0.70, middle * 0.5), Point(b.x * 0.82, middle * 0.5))
    inner = {"fold": ruled(Point(0, middle), Point(b.x, middle))}
    label = Box(16, 3, b.x * 0.5, middle - 2)
    points = {"end": a, "end_2": b}
    return make_piece("belt", edges, points, grain, inner=inner, label=label)


def draft_pocket(style: BeltPocketStyle) -> Draft:
    """Return the pocket's bag as drawn by hand."""
    opening = style.opening.called("pocket opening")
    draft = (
        Draft("Pocket")
        .start("A", "the upper end of the opening, near the top left of the paper")
        .down("A", "B", opening, "the lower end of the opening")
        .down("B", "E", POCKET_HEEL, "where the bag leaves the side seam")
        .down("B", "D", POCKET_BELOW, "the bag's depth")
        .across("D", "F", POCKET_WIDE / 2, "the lowest point of the bag")
        .down("A", "H", opening / 2, "half the opening")
        .across("H", "G", POCKET_WIDE, "the bag's far side")
        .rule("opening", "B", "A")
        .rule("heel", "E", "B")
    )
    a, c, e, g = (draft[name] for name in "AEFG")
    top = curved(a, a + Vector(g.x * 0.6, 0), g + Vector(0, -g.y * 0.6), g)
    down = (e.y - g.y) * 0.6
    bottom = curved(g, g + Vector(0, down), e + Vector(g.x * 0.3, 0), e).then(
        curved(e, e + Vector(-e.x * 0.7, 0), c + Vector(e.x * 0.3, (e.y - c.y) * 0.6), c)
    )
    draft = draft.curve("top", top, ("A", "G"))
    return draft.curve("bottom", bottom, ("G", "F", "E"), "Round, wide enough for a hand.")


def cut_pocket(draft: Draft, style: BeltPocketStyle) -> Piece:
    """Return one side of the bag; four are cut, two for each pocket."""
    lines = draft.paper.lines
    allowance = style.seam.mm
    edges = tuple(
        Edge(name, lines[name], allowance) for name in ("top", "bottom", "heel", "opening")
    )
    opening = lines["opening"].length()
    notches = (Notch("opening", 0.0, "pocket bottom"), Notch("opening", opening, "pocket top"))
    g = draft["G"]
    grain = (Point(g.x * 0.82, g.y * 1.7), Point(g.x * 0.82, g.y * 0.6))
    label = Box(12, g.y * 0.45, g.x * 0.76, g.y * 1.75)
    points = {"opening_top": draft["A"], "opening_bottom": draft["B"]}
    return make_piece(
        "pocket", edges, points, grain, notches=notches, count=4, mirrored=True, label=label
    )


def belt_seam() -> Seam:
    """Return the belt's own seam, along both long edges."""
    sides = (EdgeRun("belt", ("long",)),), (EdgeRun("belt", ("long_2",)),)
    return Seam(SeamKind.BELT, *sides, making=BELT)


def pocket_seam() -> Seam:
    """Return the bag's own seam: two are sewn together round top and bottom."""
    around = (EdgeRun("pocket", ("top", "bottom", "heel")),)
    return Seam(SeamKind.POCKET, around, around, making=POCKET)


def heights(style: BeltPocketStyle, waist: float) -> dict[str, float]:
    """Return the heights on the side seam that are marked for loops and pockets [mm]."""
    found: dict[str, float] = {}
    if style.belt:
        half = style.belt_width.mm / 2 + LOOP_ROOM
        found |= {"belt loop top": waist - half, "belt loop bottom": waist + half}
    if style.pockets:
        top = waist + style.below_waist.mm
        found["pocket top"] = top
    return found


def marks_told(draft: Draft, style: BeltPocketStyle) -> Draft:
    """Return the draft with a word on the marks along its side seam."""
    if style.belt:
        half = style.belt_width / 2 + mm(LOOP_ROOM)
        loops = " above and below the waist line: a thread loop for the belt goes there."
        draft = draft.note("Mark the side seam ", half, loops)
    if style.pockets:
        below, opening = style.below_waist, style.opening
        draft = draft.note(
            "Mark the side seam ", below, " below the waist line, and ", opening,
            " further down along it: the pocket's opening.",
        )  # fmt: skip
    return draft


def marked(pattern: Pattern, style: BeltPocketStyle) -> tuple[Piece, ...]:
    """Return a dress's pieces, their side seams marked for loops and pockets."""
    back = pattern.piece("back")
    at = heights(style, back.levels["waist"])
    marks = [
        (seam, mark)
        for seam in pattern.seams
        if seam.kind is SeamKind.SIDE and seam.second[0].piece == back.name
        for edge in seam.second[0].edges
        if edge.partition("_")[0] == "side" and back.has_edge(edge)
        for mark in _marks(back.edge(edge).path, edge, at, style)
    ]
    return with_marks(pattern, marks)


def _marks(side: Path, name: str, at: dict[str, float], style: BeltPocketStyle) -> list[Notch]:
    found = []
    for pair, height in at.items():
        distance = distance_at_height(side, height)
        if distance is not None:
            found.append(Notch(name, distance, pair))
            if pair == "pocket top":
                way = style.opening.mm * (1 if side.start.y < side.end.y else -1)
                found.append(Notch(name, distance + way, "pocket bottom"))
    return found
