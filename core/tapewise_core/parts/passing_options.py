"""A waist without an opening: what the wearer gets through it, and how wide it must be for that.

Where a waist as close as its fit would not pass the hips, it is cut wider, and the elastic that
stays its seam draws it in again. Numbers without another source are common practice.
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.waist_options import PULLED, rounded_up
from tapewise_core.sewing.machines import SEAM_STRETCH
from tapewise_core.sewing.stitches import OVEREDGE
from tapewise_core.sewing.way import Elastic
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.option import Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, mm

OVER_SHOULDERS = "over_shoulder_girth"
"""Where it was taken, a dress may also be got into from above."""

SHOULDERS_YIELD = 0.95
"""Shoulders fold together a little as a dress is pulled over them (common practice)."""

STAY_WIDE = 8.0
"""How wide the elastic is that stays a waist seam [mm] (common practice)."""

LAP = 10.0
"""The elastic's ends lie on each other by so much [mm] (common practice)."""

WORTH = 5.0
"""A waist that is wider by no more needs no drawing in [mm] (our choice)."""


def way_in(body: Body) -> float:
    """Return the girth that passes the waist [mm]: the hips, or the shoulders if these are less."""
    hips = body["hip"].mm
    if OVER_SHOULDERS not in body:
        return hips
    return min(hips, body[OVER_SHOULDERS].mm * SHOULDERS_YIELD)


class PassingEase(Frozen):
    """The ease of a waist unasked: its fit's ``own``, or as much as lets the body through."""

    own: Option

    def __call__(self, body: Body, style: Style) -> Length:
        """Work it out, to the millimetre."""
        own = self.plain(body, style)
        gives = min(ClothStyle.of(style).stretch, SEAM_STRETCH[OVEREDGE])
        needed = way_in(body) / (1 + PULLED * gives) - body["waist"].mm
        return own if needed <= own.mm else mm(rounded_up(needed))

    def plain(self, body: Body, style: Style) -> Length:
        """The fit's own ease."""
        assert callable(self.own.default), "a fit's ease is worked out"
        found = self.own.default(body, style)
        assert isinstance(found, Length), "ease is a length"
        return found


def passing(options: Options) -> Options:
    """Return a body's options with a waist that, unasked, the wearer gets through."""
    own = options["waist-ease"]
    says = (*own.default_says, ", or as much as lets hips or shoulders pass")
    return options.changed("waist-ease", default=PassingEase(own), default_says=says)


def drawn_in(body: Body, style: Style, options: Options, seam: float) -> Elastic | None:
    """Return the elastic that draws a waist ``seam`` [mm] in by what it was let out for the way in;
    None where it was not. What a fitting gave it stays."""
    ease = options["waist-ease"].default
    assert isinstance(ease, PassingEase), "its waist passes the body unasked"
    more = ease(body, style).mm - ease.plain(body, style).mm
    if style.asked("waist-ease") or more <= WORTH:
        return None
    return Elastic(seam - more + LAP, STAY_WIDE)


def drawn_told(seam: float, elastic: Elastic) -> Told:
    """Say that a waist was let out, and what draws it in."""
    return said(
        "The waist is cut {} wider than this fit has it, so that the body passes it; the elastic "
        "in its seam draws it in again. {} chooses another.",
        mm(seam - elastic.length + LAP), OptionKey("waist-ease"),
    )  # fmt: skip
