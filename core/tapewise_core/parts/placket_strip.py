"""The two strips of a shoulder placket: the front's facing and the back's underlap, alike but for
their buttonholes and buttons.

Amounts are common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.allowances import Allowances
from tapewise_core.parts.placket_style import PlacketStyle
from tapewise_core.parts.placket_ways import BUTTON
from tapewise_core.parts.strip import corners, draft_strip, rule_strip
from tapewise_core.units import Length, cm, mm

FACING, UNDERLAP = "placket_facing", "placket_underlap"
"""The pieces' names."""

AT_NECK, END = "placket at the neck", "end of the placket"
"""Marks on shoulder and strips."""

WIDE = cm(2.5)
"""How wide a placket is, finished."""

TAIL = 15.0
"""What a strip has beyond the placket's end, sewn across there [mm]."""

SPARE = 10.0
"""What it has at the neck besides the neckline's allowance, to be trimmed along the curve [mm]."""

LABEL, LOW = 80.0, 19.0
"""The room for a label, so low and wide that it is set small and in one column, clear of the line
of the buttons [mm] (our choice)."""

TICK = 3.0
"""Half of a button's mark [mm]."""


def draft_placket_strip(name: str, asked: PlacketStyle) -> Draft:
    """Return a strip as drawn by hand, its end at the neck on the left."""
    draft = draft_strip(title(name), "along", asked.length, "the placket's length", WIDE)
    draft = draft.down("A", "K", WIDE / 2, "the line of the buttons")
    for i, at in enumerate(places(asked)):
        draft = draft.across("K", f"K{i + 1}", at, "the middle of a button")
    ruled_all_round = rule_strip(draft, "strip")
    return ruled_all_round.note(WORDS if name == UNDERLAP else HOLES)


WORDS = "The left end lies at the neck. Buttons or snaps go on K1 and on."
HOLES = (
    "The left end lies at the neck. Buttonholes are worked along the line through K1 and on, each "
    "with its middle there; or set snaps."
)


def places(asked: PlacketStyle) -> tuple[Length, ...]:
    """Return how far from the neck each button sits but the band's own, evenly spread."""
    on_strip = asked.buttons - 1
    return tuple(mm(asked.length.mm * (i + 0.5) / on_strip) for i in range(on_strip))


def cut_strip(name: str, draft: Draft, allowances: Allowances) -> Piece:
    """Return a strip as a piece."""
    a, b, c, d = corners(draft)
    middle, end = Point(0, draft["M"].y), Point(b.x, draft["M"].y)
    seam, neck = allowances.seam.mm, allowances.neck.mm + SPARE
    edges = (
        Edge("shoulder", ruled(a, b), seam),
        Edge("end", ruled(b, c), TAIL),
        Edge("shoulder_2", ruled(c, d), seam),
        Edge("neck_2", ruled(d, middle), neck),
        Edge("neck", ruled(middle, a), neck),
    )
    notches = (Notch("shoulder", 0.0, AT_NECK), Notch("shoulder", b.x, END))
    return make_piece(
        name,
        edges,
        {"side_neck": a, "placket_end": b, **_buttons(draft)},
        (Point(b.x * 0.06, middle.y * 0.8), Point(b.x * 0.6, middle.y * 0.8)),
        notches=notches,
        inner={"fold": ruled(middle, end), "button": _ticked(draft)},
        label=Box(3 - neck, middle.y + 1, LABEL - neck, middle.y + LOW),
    )


def _buttons(draft: Draft) -> dict[str, Point]:
    """Where each button sits."""
    found = (name for name in draft.paper.points if name.startswith("K") and name != "K")
    return {f"{BUTTON}_{name[1:]}": draft[name] for name in found}


def _ticked(draft: Draft) -> Path:
    """The line of the buttons, a stroke across at each."""
    points = [draft["K"]]
    for here in _buttons(draft).values():
        up, down = Point(here.x, here.y - TICK), Point(here.x, here.y + TICK)
        points += [here, up, down, here]
    return ruled(*points, Point(draft["B"].x, draft["K"].y))
