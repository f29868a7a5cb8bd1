"""Sewing a skirt: its own seams, the waist joined or finished, the hem after it has hung.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.piece import Pattern, SeamKind
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.widths import sewn_at
from tapewise_core.units import Unit


def is_skirt(pattern: Pattern) -> bool:
    """Say whether a pattern has a circle skirt."""
    return any(piece.name.startswith("skirt") for piece in pattern.pieces)


def panels(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """The seams between the skirt's own pieces."""
    return (
        f"Sew the skirt's seams, right sides together, {sewn_at(pattern, SeamKind.PANEL, unit)} "
        f"from the edge, from the waist down without pulling: {stitching.seam}. Press to one side.",
    )


def waist(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """The skirt joined to a bodice, on a stay, so that its weight does not pull the jersey out."""
    return (
        "Stay the bodice's waist: clear elastic 6 to 10 mm wide, cut to the waist seam's length, "
        "pinned in quarters and zigzagged within the allowance without stretching it.",
        "Pin bodice and skirt together, right sides facing, at centre front, centre back and "
        "sides; the two edges are as long as each other, so neither is stretched.",
        f"Sew the waist seam {sewn_at(pattern, SeamKind.WAIST, unit)} from the edge: "
        f"{stitching.seam}. A straight stitch pops the first time it goes over the hips. Press up.",
        "Try the dress on: it must pull on without a thread popping, and the waist seam lie level.",
    )


def waistband(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """A band folded along its middle and stretched to the skirt's waist."""
    return (
        f"Join the waistband's ends into a ring, {sewn_at(pattern, SeamKind.BAND_JOIN, unit)} from "
        "the edge; fold it lengthwise, wrong sides together, and press.",
        "Pin band and skirt together at their marks, the band's join at the centre back.",
        f"Sew the band on with the band uppermost, {sewn_at(pattern, SeamKind.WAISTBAND, unit)} "
        f"from the edge, stretching only the band between the marks: {stitching.seam}.",
    )


def casing(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """A casing turned down at the waist, and the elastic drawn in."""
    deep = sewn_at(pattern, SeamKind.CASING, unit)
    elastic = pattern.lengths.get("elastic")
    cut = f"Cut the elastic {unit.spell(elastic)} long" if elastic else "Cut the elastic"
    return (
        f"Neaten the waist's edge and turn it down by {deep}; the edge is shorter than where it "
        "lies, so stretch it evenly as you pin it. Leave 5 cm open at the back.",
        f"Sew the casing down close to its lower edge: {stitching.hem}.",
        f"{cut}, draw it through with a safety pin, lap its ends by 2 cm, try it on, zigzag the "
        "lap to and fro, and close the opening.",
    )


def hem(pattern: Pattern, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    """The hem of a circle, which drops where the cloth hangs askew."""
    deep = sewn_at(pattern, SeamKind.HEM, unit)
    return (
        "Hang the skirt by its waist for 24 hours before hemming it: jersey drops most where its "
        "ribs run askew. Then level the hem from the floor with someone's help, and trim it.",
        f"Turn up the hem by {deep}, easing in the surplus of the curve, press, and sew it from "
        f"the right side: {stitching.hem}. Stretch it once by hand: no thread may pop.",
    )
