"""Posture read from a person's measures: what might be asked for, by how much and why.

Offered as remarks, never applied: a number may be a slip of the tape.
"""

from __future__ import annotations

from tapewise_core.errors import TapewiseError
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.measures.body import Body
from tapewise_core.parts.neck_style import NeckStyle
from tapewise_core.parts.shape.bust_room import worth_measuring
from tapewise_core.parts.shape.posture import Figure, Posture, Suggestion, suggestions
from tapewise_core.profiles.profile import Profile
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.tasks.people import body_of
from tapewise_core.text.told import OptionKey, Reader, Told, said
from tapewise_core.units import Length, Unit, mm

MOST_ROUND = 20.0
"""The most that a round back lifts the nape in a draft [mm], the limit of its option."""


def posture_remarks(body: Body, style: Style) -> tuple[Told, ...]:
    """Return what the measures taken on a body suggest for a garment, each with its option.

    What was chosen already is not offered again; a garment without a neck and shoulders is none
    of it.
    """
    if "round-back" not in style.chosen or not body.has("bust"):
        return ()
    offered = (_offer(found, style) for found in suggestions(_figure(body, style)))
    return tuple(told for told in (*offered, _front_waist(body)) if told)


def _figure(body: Body, style: Style) -> Figure:
    """What a tape told of a body; an estimate has no posture."""

    def taken(key: str) -> float | None:
        return body[key].mm if body.has(key) else None

    bust, high_bust, across_front = body["bust"].mm, taken("high_bust"), taken("across_front")
    surplus = _surplus(body, style)
    if high_bust is None and surplus is not None and surplus > 0:
        surplus = None  # it may as well be a full bust's
    known = high_bust is not None or across_front is not None
    return Figure(
        bust, high_bust or bust, surplus, taken("across_back") if known else None, across_front,
        taken("shoulder_length"), taken("shoulder_drop"), body.reference,
    )  # fmt: skip


def _surplus(body: Body, style: Style) -> float | None:
    """The front waist length beyond the back's with its rise [mm], where both were taken."""
    if not (body.has("front_waist_length") and body.has("back_waist_length")):
        return None
    rise = NeckStyle.of(style).rise.mm
    return body["front_waist_length"].mm - body["back_waist_length"].mm - rise


def _offer(found: Suggestion, style: Style) -> Told:
    """A suggestion with the option that draws it; its reason alone where there is none."""
    if found.posture is Posture.ROUND:
        return _set(found, style, "round-back", mm(round(min(found.amount, MOST_ROUND))))
    if found.posture is Posture.FORWARD:
        return _set(found, style, "forward-shoulder", mm(round(found.amount)))
    if found.posture is Posture.HOLLOW:
        return _set(found, style, "bust-room", "raise")
    return found.why


def _set(found: Suggestion, style: Style, key: str, value: Length | str) -> Told:
    if style.asked(key):
        return ()
    if key not in style.chosen:
        return found.why
    return (*found.why, *said(" Set {} to {} to have it drawn so.", OptionKey(key), value))


def _front_waist(body: Body) -> Told:
    """Whether the front waist length is worth measuring."""
    if not body.has("high_bust") or body.has("front_waist_length"):
        return ()
    return worth_measuring(body["bust"].mm, body["high_bust"].mm, None)


def posture_of(profile: Profile, garment: str, unit: Unit) -> tuple[str, ...]:
    """Return what a person's measures suggest for a garment in its usual style, in a unit.

    Nothing where the garment can't be drafted yet. Raises OptionError for an unknown garment.
    """
    page, (body, _) = on_shelf(garment), body_of(profile)
    try:
        style = settle(page.options, {}, page.sees(body), unit)
    except TapewiseError:
        return ()
    return tuple(map(Reader(unit).spell, posture_remarks(body, style)))
