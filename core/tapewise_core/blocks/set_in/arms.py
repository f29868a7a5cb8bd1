"""What goes into a set-in body's armholes, or round them: sleeves, or a finish without any."""

from __future__ import annotations

from msgspec.structs import replace

from tapewise_core.blocks.set_in.cut import cut_sleeve
from tapewise_core.blocks.set_in.ledger import Made
from tapewise_core.blocks.set_in.seams import (
    cap_seam,
    sleeve_joins,
    sleeve_seams,
)
from tapewise_core.blocks.set_in.sleeve import (
    cap_of,
    draft_sleeve,
    hem_asked,
    hem_of,
    length_of,
    squared,
)
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.blocks.set_in.whole import Half, Whole
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import Join, Seam
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.bare_finish import Bare, finish_armhole
from tapewise_core.units import Length, mm


class Arms(Frozen):
    """What goes into the armholes, or round them: the same for both sides.

    ``seams`` are those into the armholes, ``own`` its own, closed before or after; ``made`` and
    ``length`` are a sleeve's, ``bare`` a finish without one.
    """

    drafts: tuple[Draft, ...]
    pieces: tuple[Piece, ...]
    seams: tuple[Seam, ...]
    own: tuple[Seam, ...] = ()
    joins: tuple[Join, ...] = ()
    made: Made | None = None
    length: Length | None = None
    bare: Bare | None = None


def sleeved(body: Body, style: SetInStyle, trunk: Trunk, whole: Whole) -> Arms:
    """Return the sleeve for both armholes."""
    drawn = trunk.drawn
    at_hem = hem_asked(body, style, cap_of(drawn).width)
    solved = squared(drawn, style.sleeve.length, at_hem)
    length = length_of(solved, style.sleeve.length)
    hem = hem_of(solved, length.mm, at_hem)
    around = Length(drawn.armhole, _working(drawn.back_armhole.length, drawn.front_armhole.length))
    draft = draft_sleeve(solved, around, length, hem)
    sleeve = cut_sleeve(draft, solved, trunk)
    ratio = 1 - style.armhole.shorter
    turn = style.fitted.cap_forward
    flat = style.armhole.flat and not turn
    seams = tuple(cap_seam(sewn, ratio, turn, flat=flat) for _, sewn in whole.sides)
    made = Made(sleeve, solved, at_hem)
    own = sleeve_seams(flat=flat)
    return Arms(
        (with_allowances(draft, sleeve),), (sleeve,), seams, own, sleeve_joins(), made, length
    )


def unsleeved(half: Half, whole: Whole) -> Arms:
    """Return the armholes' finish without sleeves."""
    asked = half.trunk.style.bare
    assert asked is not None
    asked = replace(asked, allowance=mm(half.trunk.armhole_allowance))
    found = finish_armhole(half.halves, [sewn for _, sewn in whole.sides], asked)
    drafts = tuple(map(with_allowances, found.drafts, found.pieces))
    return Arms(drafts, found.pieces, found.seams, bare=found)


def _working(back: float, front: float) -> tuple[str | float, ...]:
    return ("the whole armhole, ", back, " + ", front)
