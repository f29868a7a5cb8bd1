"""A gathered skirt on a waist's edge: its tiers, how they are sewn, and what they say."""

from __future__ import annotations

import math
from itertools import pairwise

from tapewise_core.blocks.skirt.gathered_piece import SEAM, Cut, Tier, cut_tier, draft_tier
from tapewise_core.blocks.skirt.gathered_style import GatheredStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.labels import title
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.frozen import Frozen
from tapewise_core.parts.hanging import finished_area, weight
from tapewise_core.parts.waistband import Marks
from tapewise_core.sewing.closing import PANELS
from tapewise_core.sewing.edges import TURNED_UP
from tapewise_core.sewing.gathers import TIER
from tapewise_core.units import Length, mm

ORDINALS = ("first", "second", "third", "fourth")
"""The tiers' own names, from the top down."""

LEAST_PANELS = 2
"""A tier has a seam at each side at the least, so that back and front can be told apart."""


class GatheredSkirt(Frozen):
    """The tiers from the top down with their drafts and pieces; ``edge`` is the waist's [mm]."""

    style: GatheredStyle
    edge: float
    tiers: tuple[Tier, ...]
    drafts: tuple[Draft, ...]
    pieces: tuple[Piece, ...]

    @property
    def top(self) -> float:
        """The upper edge before it is gathered, as it is drawn [mm]."""
        return self.tiers[0].runs * self.pieces[0].length("waist")

    @property
    def hem(self) -> float:
        """Round the hem, as it is drawn [mm]."""
        return self.tiers[-1].runs * self.pieces[-1].length("hem")

    @property
    def runs(self) -> tuple[EdgeRun, ...]:
        """The whole upper edge, walked from the centre back, a panel's middle."""
        first = self.tiers[0]
        return (EdgeRun(first.name, ("waist",), first.runs),)

    @property
    def places(self) -> tuple[float, ...]:
        """Where round the waist the first tier's seams are, as shares from the centre back."""
        count = self.tiers[0].count
        return tuple((2 * number + 1) / (2 * count) for number in range(count))

    @property
    def marks(self) -> Marks:
        """A band's marks, its join at the centre back."""
        return tuple((place, SEAM) for place in self.places)

    @property
    def grams(self) -> float:
        """What it weighs [g]."""
        return weight(finished_area(self.pieces), self.style.cloth_weight)

    def around(self, below: float) -> float:
        """Return the girth so far below the waist [mm], that of the tier there."""
        number = min(int(below / self.tiers[0].height.mm), len(self.tiers) - 1)
        return self.tiers[number].upper.mm


def tiers_of(style: GatheredStyle, edge: Length) -> tuple[Tier, ...]:
    """Return the tiers on a waist's edge: each in as few panels as the cloth's width allows, a
    multiple of those above."""
    found: list[Tier] = []
    upper, height = edge, style.length / style.tiers
    for number, ratio in enumerate(style.ratios):
        upper = (upper if number == 0 else mm(upper.mm).called("the tier above")) * ratio
        above = found[-1].count if found else LEAST_PANELS
        count = above * _times(upper.mm, above, style)
        name = "skirt_panel" if style.tiers == 1 else f"{ORDINALS[number]}_tier"
        found.append(Tier(name, upper, height, count, ratio, first=number == 0))
    below = [after.count // before.count for before, after in pairwise(found)]
    return tuple(
        Tier(t.name, t.upper, t.height, t.count, t.ratio, more, t.first)
        for t, more in zip(found, [*below, 0], strict=True)
    )


def _times(upper: float, above: int, style: GatheredStyle) -> int:
    """How many panels hang from each of those above, so that each lies between the selvedges."""
    room = max(style.usable_width - 2 * style.seam.mm, 1.0)
    return max(math.ceil(upper / above / room - 1e-9), 1)


def gathered_skirt(
    style: GatheredStyle, edge: Length, allowance: float, *, casing: bool
) -> GatheredSkirt:
    """Return the skirt; its waist has an allowance [mm] which a casing turns down."""
    tiers, seam = tiers_of(style, edge), style.seam.mm
    drafts, pieces = [], []
    for tier in tiers:
        drawn_in = not (tier.first and casing)
        draft = draft_tier(tier, title(tier.name), gathered=drawn_in)
        cut = Cut(
            allowance if tier.first else seam,
            seam,
            seam if tier.below else style.hem_allowance.mm,
            casing=tier.first and casing,
            marked=drawn_in,
        )
        piece = cut_tier(tier, draft, cut)
        drafts.append(with_allowances(draft, piece))
        pieces.append(piece)
    return GatheredSkirt(style, edge.mm, tiers, tuple(drafts), tuple(pieces))


def skirt_seams(skirt: GatheredSkirt) -> tuple[Seam, ...]:
    """Return the seams of the panels, and those of one tier to the next."""
    panels = [_panels(tier) for tier in skirt.tiers]
    return (*panels, *(_hung(*two) for two in pairwise(skirt.tiers)))


def _panels(tier: Tier) -> Seam:
    side = (EdgeRun(tier.name, ("side",)),)
    where = "" if tier.name == "skirt_panel" else tier.spoken
    return Seam(SeamKind.PANEL, side, side, making=PANELS, where=where)


def _hung(above: Tier, below: Tier) -> Seam:
    """A tier gathered to the one above, both walked from a panel's side."""
    return Seam(
        SeamKind.TIER,
        (EdgeRun(below.name, ("upper_edge",), below.runs, backwards=True),),
        (EdgeRun(above.name, ("lower_edge",), above.runs),),
        below.ratio,
        TIER,
        where=below.spoken,
    )


def hem_seam(skirt: GatheredSkirt) -> Seam:
    """Return the hem, which hangs straight."""
    last = skirt.tiers[-1]
    return Seam(SeamKind.HEM, (EdgeRun(last.name, ("hem",), last.runs),), (), making=TURNED_UP)
