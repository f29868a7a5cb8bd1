"""The options of a circle skirt, alone or sewn to a bodice.

Amounts are common practice in the trade unless a row names a source.
"""

from __future__ import annotations

from tapewise_core.blocks.skirt.ring import COUNTS, LONGEST, Ring
from tapewise_core.blocks.skirt.style import FEWEST, SkirtStyle
from tapewise_core.measures.body import Body
from tapewise_core.parts.circle import PARTS
from tapewise_core.parts.stride import USUAL_TO_KNEE, to_knee
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, joined, said
from tapewise_core.units import Length, mm


def skirt_length(body: Body, style: Style) -> Length:
    """From the waist to the knee, or 60 cm."""
    return to_knee(body)


def circle(default: str) -> Option:
    """Return the option that says how much of a circle is cut."""
    return Option(
        key="circle",
        group=Group.STYLE,
        says=said("how much of a whole circle the skirt is"),
        kind=ValueKind.CHOICE,
        default=default,
        choices=tuple(PARTS),
        source="exact",
    )


SKIRT = Options.of(
    Option(
        key="skirt-length",
        group=Group.LENGTHS,
        says=said("length from the waist seam to the hem"),
        default=skirt_length,
        default_says=said("waist to knee, else {}", USUAL_TO_KNEE),
        low=20,
        high=130,
    ),
    Option(
        key="panels",
        group=Group.STYLE,
        says=said("in how many pieces it is cut; fewest is as few as the cloth's width allows"),
        kind=ValueKind.CHOICE,
        default=FEWEST,
        choices=(FEWEST, *map(str, COUNTS)),
    ),
    Option(
        key="skirt-hem-allowance",
        group=Group.ALLOWANCES,
        says=said(
            "at the skirt's hem; narrow, because its edge is longer than where it is sewn to"
        ),
        default=1.5,
        low=0.5,
        high=3,
    ),
)


def ring(style: SkirtStyle, waist: float, waist_allowance: float) -> Ring:
    """Return the skirt a style asks for on a waist edge [mm]."""
    return Ring(
        style.circle,
        waist,
        style.length.mm,
        waist_allowance,
        style.seam.mm,
        style.hem_allowance.mm,
        style.sides_higher,
    )


def count_of(style: SkirtStyle, skirt: Ring) -> int:
    """Return in how many pieces the skirt is cut: as asked for, or as few as fit."""
    return style.panels or skirt.fewest(style.usable_width) or COUNTS[-1]


def width_agrees(style: SkirtStyle, skirt: Ring) -> tuple[Told, ...]:
    """Return a sentence if the pieces asked for are wider than the cloth."""
    count, width = count_of(style, skirt), style.usable_width
    if skirt.sides_higher and count > 2:
        words = "A hem taken up at the sides wants a skirt of one or two pieces, not of {}."
        return (said(words, pieces(count)),)
    if skirt.fits(count, width):
        return ()
    allowed, more = skirt.longest(count, width), skirt.fewest(width)
    remedy = f"; {more} pieces would do" if more else ""
    most: Told = ("no skirt at all",) if allowed < 1 else said("{} at the most", mm(allowed))
    wide = said("{} of a cloth {} wide", pieces(count), mm(style.cloth_width.mm))
    key, length = OptionKey("skirt-length"), mm(skirt.length)
    return (said("{} is {}, and {} allows {}{}.", key, length, wide, most, remedy),)


def pieces(count: int) -> str:
    """Say a number of pieces.

    >>> pieces(1), pieces(6)
    ('one piece', 'six pieces')
    """
    words = {1: "one", 2: "two", 4: "four", 6: "six", 8: "eight", 10: "ten", 12: "twelve"}
    return f"{words[count]} piece{'s' if count > 1 else ''}"


def longest_skirts(style: SkirtStyle, skirt: Ring) -> Told:
    """Say how long the skirt could be from this cloth, in the pieces chosen and in others."""
    count, width = count_of(style, skirt), style.usable_width
    longest = {other: skirt.longest(other, width) for other in sorted({1, 2, 4, count})}
    each = (
        said("{} in {}", "any length" if length > LONGEST - 1 else mm(length), pieces(other))
        for other, length in longest.items()
        if length > 1
    )
    return said(
        "The skirt is cut in {}. The longest that a cloth {} wide allows is {}.",
        pieces(count),
        style.cloth_width,
        joined(each, ", "),
    )
