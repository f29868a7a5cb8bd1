"""Back and front of a raglan top: a set-in body's, without what lies above its raglan lines.

On both: V is where the line leaves the neckline, Z the notch where it runs into the armhole.
"""

from __future__ import annotations

from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.blocks.set_in.lines import neck_end, underarm_of
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.raglan_line import RaglanLine, raglan_line
from tapewise_core.parts.shape.shoulder_line import ShoulderLine

BACK_MARK, FRONT_MARK = "back raglan seam", "front raglan seam"
"""Two strokes at the back and one at the front, so that no sleeve is sewn in back to front."""

MANNER = (
    "It bends out a little at first, and from Z on it is the armhole. What lies above it, shoulder "
    "and all, goes to the sleeve."
)

MOVED = ("neckline", "shoulder", "armhole")
"""The edges of a set-in half that are parted, or go to the sleeve."""


def line_of(draft: Draft) -> RaglanLine:
    """Return the raglan line of a drafted half."""
    paper = draft.paper
    shoulder = paper.line("shoulder")
    ends = ShoulderLine(shoulder.start, shoulder.end)
    return raglan_line(paper.line("neckline"), ends, paper.line("armhole"))


def with_line(draft: Draft, line: RaglanLine) -> Draft:
    """Return a half's draft with its raglan line."""
    called = "on the neckline, where the raglan line leaves it"
    draft = set_off(draft, neck_end(draft), "V", line.neck, called)
    called = "on the armhole, where the raglan line runs into it"
    draft = set_off(draft, "T1", "Z", line.notch, called)
    return draft.curve("raglan_line", line.whole, ("V", "Z", underarm_of(draft)), MANNER)


def parted(piece: Piece, line: RaglanLine, allowance: float) -> Piece:
    """Return a half cut along its raglan line, with an allowance there [mm]."""
    front = piece.name == "front"
    neckline = replace(piece.edge("neckline"), path=line.kept)
    kept = (edge for edge in piece.edges if edge.name not in MOVED)
    mark = Notch(
        "raglan_line", line.upper.length(), *((FRONT_MARK, 1) if front else (BACK_MARK, 2))
    )
    points = {
        name: at for name, at in piece.points.items() if name not in ("side_neck", "shoulder_point")
    }
    return replace(
        piece,
        edges=(neckline, Edge("raglan_line", line.whole, allowance), *kept),
        notches=(mark, *(notch for notch in piece.notches if notch.edge not in MOVED)),
        points=MappingProxyType(points | {"raglan_neck": line.neck, "raglan_notch": line.notch}),
    )
