"""Drawing and cutting the tiers of a gathered skirt: strips across the cloth, in equal panels.

Half a panel on the fold, as drawn::

      A──────────B    A–B  half a panel of the upper edge     A–D  the middle, on the fold
      |          |    B–E  the side                           D–E  the lower edge or the hem
      D──────────E
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.sewing.gathers import PER
from tapewise_core.text.amounts import About
from tapewise_core.units import Length

SEAM, MIDDLE = "panel seam", "middle of a panel"
"""What the marks of gathered edges are."""


class Tier(Frozen):
    """One tier: ``upper`` and ``height`` of it whole, cut in ``count`` panels.

    ``ratio`` is what its upper edge is gathered by; ``below`` how many panels of the next tier
    hang from each of its own, 0 for the last.
    """

    name: str
    upper: Length
    height: Length
    count: int
    ratio: float
    below: int = 0
    first: bool = False

    @property
    def top(self) -> str:
        """The name of its upper edge."""
        return "waist" if self.first else "upper_edge"

    @property
    def foot(self) -> str:
        """The name of its lower edge."""
        return "lower_edge" if self.below else "hem"

    @property
    def spoken(self) -> str:
        """Its name as a sentence has it."""
        return _spoken(self.name)

    @property
    def runs(self) -> int:
        """How often the half panel occurs round the skirt."""
        return 2 * self.count


def draft_tier(tier: Tier, title: str, *, gathered: bool) -> Draft:
    """Return half a panel as drawn by hand; ``gathered`` if a thread draws its upper edge in."""
    half = tier.upper / tier.runs
    draft = (
        Draft(title)
        .start("A", f"the middle of the {_spoken(tier.top)}, on the fold")
        .across("A", "B", half, f"half of one of {tier.count} panels")
        .down("A", "D", tier.height, f"the middle of the {_spoken(tier.foot)}")
        .down("B", "E", tier.height, "the side")
        .rule(tier.top, "A", "B")
        .rule("side", "B", "E")
        .rule(tier.foot, "D", "E")
        .note(f"One pattern serves for {_all(tier.count)} panels: they are alike.")
    )
    if not gathered:
        return draft
    return draft.note(
        "Gathered: ", About(PER * tier.ratio), f" of the {_spoken(tier.top)} go to each ",
        About(PER), " of what it is sewn to.",
    )  # fmt: skip


def _all(count: int) -> str:
    return "both" if count == 2 else f"all {count}"


def _spoken(edge: str) -> str:
    return edge.replace("_", " ")


class Cut(Frozen):
    """What is added at the edges of a tier [mm]: at its top, its sides and its foot; a ``casing``
    is turned down, and an edge that is sewn on is ``marked``."""

    top: float
    side: float
    foot: float
    casing: bool
    marked: bool


def cut_tier(tier: Tier, draft: Draft, cut: Cut) -> Piece:
    """Return half a panel on the fold."""
    line = draft.paper.line
    edges = (
        Edge(tier.top, line(tier.top), cut.top, turned=cut.casing),
        Edge("side", line("side"), cut.side),
        Edge(tier.foot, line(tier.foot).reversed(), cut.foot, turned=not tier.below),
        Edge("centre", ruled(draft["D"], draft["A"]), 0.0, fold=True),
    )
    wide, high = draft["E"].x, draft["E"].y
    points = {
        "centre_top": draft["A"], "side_top": draft["B"],
        "centre_foot": draft["D"], "side_foot": draft["E"],
    }  # fmt: skip
    return make_piece(
        tier.name,
        edges,
        points,
        (Point(wide * 0.6, high * 0.85), Point(wide * 0.6, high * 0.25)),
        notches=(*_upper_marks(tier, wide, cut), *_lower_marks(tier, wide)),
        count=tier.count,
        on_fold=True,
    )


def _upper_marks(tier: Tier, half: float, cut: Cut) -> tuple[Notch, ...]:
    """The first tier's seams meet marks of what it hangs from; a lower one its panels' middles."""
    if not tier.first:
        return (Notch(tier.top, 0.0, MIDDLE),)
    return (Notch(tier.top, half, SEAM),) if cut.marked else ()


def _lower_marks(tier: Tier, half: float) -> tuple[Notch, ...]:
    """Where the middles of the next tier's panels hang, walked from the side."""
    each = 2 * half / tier.below if tier.below else 0.0
    places = (each * (number + 0.5) for number in range(tier.below))
    return tuple(Notch("lower_edge", at, MIDDLE) for at in places if at <= half + 1e-6)
