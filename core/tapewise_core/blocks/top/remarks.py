"""What the drafter of a top should read: amounts taken from the body, a sleeve that ends badly."""

from __future__ import annotations

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_options import MOST_RAISE, PLAIN_RAISE
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import mm

FIGURE_SAYS = {
    "full-bust": "{} for the bust",
    "full-belly": "{} on the centre front for a full belly",
    "full-seat": "{} on the centre back for a full seat",
}
"""Amounts that a draft takes from the measures by itself."""


WORTH_SAYING = 5.0
"""A smaller amount taken from the measures goes without saying [mm]."""


def remarks(back: Draft, body: Body, style: TopStyle) -> tuple[Told, ...]:
    """Return the sentences, with their lengths not yet spelt."""
    return (*_taken(style), *_raise(style), *_chosen(style), *_cap(back))


def _taken(style: TopStyle) -> tuple[Told, ...]:
    found = []
    for key, says in FIGURE_SAYS.items():
        amount = style.fullness.amount(key)
        if abs(amount.mm) >= WORTH_SAYING and key not in style.fullness.asked:
            more = "More length" if amount.mm > 0 else "Less length"
            why = said(says, mm(abs(amount.mm)))
            template = "{}: {}, taken from the measures; set {} to change it."
            found.append(said(template, more, why, OptionKey(key)))
    return tuple(found)


def _raise(style: TopStyle) -> tuple[Told, ...]:
    asked = PLAIN_RAISE.mm + style.fullness.full_bust.mm
    if asked <= MOST_RAISE or "front-raise" in style.fullness.asked:
        return ()
    return (
        said(
            "The front asks for a raise of {}; {} are taken at the side neck and {} at the "
            "centre front's hem.",
            mm(asked),
            mm(MOST_RAISE),
            mm(asked - MOST_RAISE),
        ),
    )


CHOSEN_SAYS = {
    "round-back": "The back is drafted for a round (or, with a minus, flat) back: the side neck "
    "lies that much lower against the nape",
    "forward-shoulder": "The shoulder seam lies further to the front at the shoulder point, for "
    "shoulders that stand forward",
    "broad-neck": "Each side of the neck is drafted broader than its girth tells",
    "full-arm": "The sleeve has more room round the upper arm",
}


def _chosen(style: TopStyle) -> tuple[Told, ...]:
    return tuple(
        said("{}: {}.", says, style.figure.amount(key))
        for key, says in CHOSEN_SAYS.items()
        if abs(style.figure.amount(key).mm) > 0.05
    )


def _cap(back: Draft) -> tuple[Told, ...]:
    points = back.paper.points
    if "underarm" in back.paper.lines or "U" not in points:
        return ()
    if points["H"].x >= points["U"].x - 0.05:
        return ()
    return (
        said(
            "This short sleeve would end inside the body's quarter, so its underarm was moved out "
            "to it; a longer {} gives a straight, square hem.",
            OptionKey("sleeve-length"),
        ),
    )
