"""Sewing a waist: a skirt joined to a bodice, or held by a band or by an elastic in a casing.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.sewing.work import Work
from tapewise_core.text.told import About, Told, said
from tapewise_core.units import mm

STAY = About(6, 10)
"""How wide the elastic is that stays a waist seam."""


def joined(work: Work) -> tuple[Told, ...]:
    """A skirt joined to a bodice on a stay, so that its weight does not pull the jersey out."""
    return (
        said(
            "Stay the bodice's waist: clear elastic {} wide, cut to the waist seam's length, "
            "pinned in quarters and {} within the allowance without stretching it.",
            STAY,
            work.stitching.basted,
        ),
        said(
            "Pin bodice and skirt together, right sides facing, at centre front, centre back and "
            "sides; the two edges are as long as each other, so neither is stretched."
        ),
        said(
            "Sew the waist seam {} from the edge: {}. A straight stitch pops the first time it "
            "goes over the hips. Press up, keeping the iron off the elastic: it melts.",
            work.at,
            work.stitching.seam,
        ),
        said(
            "Try the dress on: it must pull on without a thread popping, and the waist seam lie "
            "level."
        ),
    )


def ring(work: Work) -> tuple[Told, ...]:
    """A waistband's ends joined."""
    return (
        said(
            "Join the waistband's ends into a ring, right sides together, {} from the edge: {}; "
            "fold it lengthwise, wrong sides together, and press.",
            work.at,
            work.stitching.ring,
        ),
    )


def band(work: Work) -> tuple[Told, ...]:
    """A band folded along its middle and stretched to the skirt's waist."""
    return (
        said("Pin band and skirt together at their marks, the band's join at the centre back."),
        said(
            "Sew the band on with the band uppermost, {} from the edge, stretching only the band "
            "between the marks: {}.",
            work.at,
            work.stitching.seam,
        ),
    )


BENT = 1.03
"""A casing's edge that is shorter than this is stretched to lie (our choice)."""


def _bent(work: Work) -> str:
    """How an edge is turned down that is shorter than where it lies."""
    casing = work.pattern.facts.casing
    if casing is not None and casing.seam < BENT * casing.edge:
        return "; pin it all round."
    return "; the edge is shorter than where it lies, so stretch it evenly as you pin it."


def casing(work: Work) -> tuple[Told, ...]:
    """A casing turned down at the waist, and the elastic drawn in."""
    elastic = work.seams[0].making.elastic
    cut = said("Cut the elastic {} long", mm(elastic.length)) if elastic else ("Cut the elastic",)
    return (
        said(
            "Neaten the waist's edge and turn it down by {}{}",
            work.at,
            _bent(work),
        ),
        said(
            "Sew the casing down close to its lower edge, leaving {} open at the centre back, {}.",
            About(50),
            work.stitching.hem,
        ),
        said(
            "{}, draw it through with a safety pin, lap its ends by {}, try it on, {}, and close "
            "the opening.",
            cut,
            About(20),
            work.stitching.lapped,
        ),
    )
