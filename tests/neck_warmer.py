"""A neck warmer: one strip, folded along its middle and joined into a ring.

::

    a────────────b    a–b  round the neck, a little stretched
    m            n    a–m  finished height, the fold
    d────────────c    a–d  twice the finished height

The page that the developers' guide walks through; amounts are common practice.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Facts, Neck
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Edge, make_piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.garments.garment import Garment
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.proofs.proof import ALWAYS, ProofId
from tapewise_core.style.cloth import CLOTH
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import said
from tapewise_core.units import Length

OPTIONS = (
    Options.of(
        Option(
            key="height",
            group=Group.LENGTHS,
            says=said("finished height"),
            default=18.0,
            low=8,
            high=40,
        ),
        Option(
            key="ease",
            group=Group.EASE,
            says=said("what it has over the neck's girth"),
            default=12.0,
            low=0,
            high=40,
        ),
        Option(
            key="seam-allowance",
            group=Group.ALLOWANCES,
            says=said("at all edges"),
            default=0.8,
            low=0,
            high=3,
        ),
    )
    + CLOTH
)

TITLE = "Neck warmer"
SAYS = "A ring of jersey, folded double."


class StripStyle(Frozen):
    """The strip as the wearer chose it."""

    height: Length
    ease: Length
    seam: Length

    @classmethod
    def of(cls, style: Style) -> StripStyle:
        """Read it from a style."""
        keys = ("height", "ease", "seam-allowance")
        return cls(*(style.length(key) for key in keys))


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern."""
    wanted = StripStyle.of(style)
    drawn = (
        Draft("Strip")
        .start("a", "the upper left corner of a strip across the grain")
        .across("a", "b", body["neck"] + wanted.ease, "round the neck")
        .down("a", "d", wanted.height * 2, "twice the finished height")
        .down("b", "c", wanted.height * 2, "the other end")
        .rule("strip", "a", "b", "c", "d", "a")
    )
    a, b, c, d = (drawn[letter] for letter in "abcd")
    allowance = wanted.seam.mm
    corners = (("edge", a, b), ("join", b, c), ("edge_2", c, d), ("join_2", d, a))
    edges = tuple(Edge(name, ruled(start, end), allowance) for name, start, end in corners)
    grain = (Point(b.x * 0.9, d.y * 0.2), Point(b.x * 0.9, d.y * 0.8))
    strip = make_piece("strip", edges, {"corner": a}, grain)
    join = Seam(
        SeamKind.BAND_JOIN, (EdgeRun("strip", ("join",)),), (EdgeRun("strip", ("join_2",)),)
    )
    return Pattern(
        garment="neck-warmer",
        title=TITLE,
        drafts=(with_allowances(drawn, strip),),
        pieces=(strip,),
        seams=(join,),
        joins=(),
        girths=(),
        facts=Facts(head=body["head"].mm, neck=Neck(opening=b.x)),
        lengths=MappingProxyType({"height": wanted.height.mm}),
    )


NECK_WARMER = Garment(
    name="neck-warmer",
    title=TITLE,
    says=SAYS,
    needs=("neck", "head"),
    helps=(),
    options=OPTIONS,
    agree=lambda body, style: (),
    draft=draft,
    covers=ALWAYS | {ProofId.HEAD},
    moves=MappingProxyType({"neck": (1.0, "round the neck")}),
)
