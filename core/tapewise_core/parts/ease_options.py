"""Options for how close a trunk is, level by level, and how room for the bust is made.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.measures.body import Body
from tapewise_core.parts.shape.band import close_fit
from tapewise_core.parts.shape.bust_room import Wish as BustRoom
from tapewise_core.parts.trunk_style import Fit
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length, cm

FITS = {
    Fit.CLOSE: (0.0, 50.0),
    Fit.FITTED: (0.0, 50.0),
    Fit.STRAIGHT: (4.0, 0.0),
    Fit.EASED: (8.0, 20.0),
}
"""Ease all round [cm] and how far the side seam goes in [%] (common practice); a close fit's ease
follows from the cloth."""


def _close(body: Body, style: Style, key: str) -> Length:
    """What a close fit takes off a girth, by the cloth's stretch, to the millimetre."""
    share = close_fit(style.number("stretch") / 100).across
    return cm(round(body[key].mm * share) / 10)


def _is_close(style: Style) -> bool:
    return Fit(style.choice("fit")) is Fit.CLOSE


def ease(body: Body, style: Style) -> Length:
    """The fit's own ease; a close fit's is negative, by the cloth."""
    fit = Fit(style.choice("fit"))
    return _close(body, style, "bust") if fit is Fit.CLOSE else cm(FITS[fit][0])


def waist_shaping(body: Body, style: Style) -> float:
    """The fit's own shaping."""
    return FITS[Fit(style.choice("fit"))][1]


def at_level(key: str) -> Callable[[Body, Style], Length]:
    """Return a level's ease: that of the body, or what a close fit takes off that girth."""

    def ease_there(body: Body, style: Style) -> Length:
        if _is_close(style) and not style.asked("ease"):
            return _close(body, style, key)
        return style.length("ease")

    return ease_there


def hip_ease(body: Body, style: Style) -> Length:
    """The level's ease, or as much as hangs straight from a wider waist and its ease."""
    level = at_level("hip")(body, style)
    hangs = body["waist"] + style.length("waist-ease") - body["hip"]
    return level if hangs.mm <= level.mm else cm(min(round(hangs.mm) / 10, MOST))


MOST = 40.0
"""No more ease can be asked for at a level [cm] (our choice)."""

SAME = said("{}, or what a close fit takes off there", OptionKey("ease"))

EASE = Options.of(
    Option(
        key="ease",
        group=Group.EASE,
        says=said("ease all round the body"),
        default=ease,
        default_says=said(
            "fitted {}, straight {}, eased {}; close: less than the body, by the stretch",
            *(cm(FITS[fit][0]) for fit in (Fit.FITTED, Fit.STRAIGHT, Fit.EASED)),
        ),
        low=-20,
        high=40,
    ),
    Option(
        key="bust-ease",
        group=Group.EASE,
        says=said("ease round the bust, where it differs"),
        default=at_level("bust"),
        default_says=SAME,
        low=-20,
        high=40,
    ),
    Option(
        key="waist-ease",
        group=Group.EASE,
        says=said("ease round the waist, as close as the side seam may come to it"),
        default=at_level("waist"),
        default_says=SAME,
        low=-20,
        high=40,
    ),
    Option(
        key="hip-ease",
        group=Group.EASE,
        says=said("ease round the hip, where it differs"),
        default=hip_ease,
        default_says=said(
            "{}, or what a close fit takes off there, or what hangs straight from a wider waist",
            OptionKey("ease"),
        ),
        low=-20,
        high=MOST,
    ),
    Option(
        key="waist-shaping",
        group=Group.EASE,
        says=said(
            "how far the side seam goes in: 0 straight from bust to hip, 100 as close as {}",
            OptionKey("waist-ease"),
        ),
        kind=ValueKind.PERCENT,
        default=waist_shaping,
        default_says=said("close and fitted 50, straight 0, eased 20 %"),
        low=0,
        high=100,
    ),
    Option(
        key="waist-darts",
        group=Group.EASE,
        says=said("darts at the waist where the side seam would lean over 30 degrees"),
        kind=ValueKind.CHOICE,
        default="auto",
        choices=("auto", "none"),
    ),
    Option(
        key="bust-room",
        group=Group.FIGURE,
        says=said(
            "how a front longer than the back is drawn, from the measured front waist length: by "
            "itself, not at all, raised at the neck, eased at the side, a side dart, or gathers"
        ),
        kind=ValueKind.CHOICE,
        default=BustRoom.AUTO,
        choices=tuple(BustRoom),
    ),
)
"""After fit and stretch, which their defaults read."""
