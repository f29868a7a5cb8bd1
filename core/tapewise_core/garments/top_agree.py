"""Limits of a top that depend on each other; each message names the two and the difference."""

from __future__ import annotations

from tapewise_core.garments.option import Style
from tapewise_core.measures.body import Body
from tapewise_core.units import Unit

UNDER_ARM_TO_HEM = 80.0
"""The shortest side seam worth sewing [mm] (common practice)."""

HALFWAY = 0.5
"""The neckline stays above halfway from the armscye line to the waist (common practice)."""


def agree(body: Body, style: Style, unit: Unit) -> tuple[str, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    checks = (_neck_depth, _neck_width, _body_length, _sleeve, _rise, _band, _levels, _shoulder)
    return tuple(said for check in checks if (said := check(body, style, unit)))


def _more(unit: Unit, what: str, value: float, other: str, limit: float) -> str:
    return (
        f"{what} is {unit.spell(value)}, and {other} allows {unit.spell(limit)} at the most: "
        f"{unit.spell(value - limit)} too much."
    )


def _less(unit: Unit, what: str, value: float, other: str, limit: float) -> str:
    return (
        f"{what} is {unit.spell(value)}, and {other} asks for {unit.spell(limit)} at least: "
        f"{unit.spell(limit - value)} too little."
    )


def _neck_depth(body: Body, style: Style, unit: Unit) -> str | None:
    depth, armscye = style.length("neck-depth").mm, body["armscye_depth"].mm
    limit = armscye + HALFWAY * (body["back_waist_length"].mm - armscye)
    if depth <= limit:
        return None
    return _more(unit, "neck-depth", depth, "halfway from armscye depth to waist", limit)


def _neck_width(body: Body, style: Style, unit: Unit) -> str | None:
    """A shoulder of at least 3 cm is left (common practice)."""
    width, limit = style.length("neck-half-width").mm, body["bust"].mm / 4 - 30
    return (
        _more(unit, "neck-half-width", width, "a quarter of the bust", limit)
        if width > limit
        else None
    )


def _body_length(body: Body, style: Style, unit: Unit) -> str | None:
    length = style.length("body-length").mm
    limit = body["armscye_depth"].mm + UNDER_ARM_TO_HEM
    return _less(unit, "body-length", length, "armscye depth", limit) if length < limit else None


def _sleeve(body: Body, style: Style, unit: Unit) -> str | None:
    if "arm_length" not in body:
        return None
    length, limit = style.length("sleeve-length").mm, body["arm_length"].mm + 30
    return _more(unit, "sleeve-length", length, "arm length", limit) if length > limit else None


def _rise(body: Body, style: Style, unit: Unit) -> str | None:
    rise, limit = style.length("neck-rise").mm, style.length("neck-half-width").mm / 2
    return _more(unit, "neck-rise", rise, "neck-half-width", limit) if rise > limit else None


def _band(body: Body, style: Style, unit: Unit) -> str | None:
    """A band wider than half the neckline's half width would close over the face."""
    width, limit = style.length("band-width").mm, style.length("neck-half-width").mm / 2
    return _more(unit, "band-width", width, "neck-half-width", limit) if width > limit else None


def _levels(body: Body, style: Style, unit: Unit) -> str | None:
    armscye, waist = body["armscye_depth"].mm, body["back_waist_length"].mm
    if waist - armscye >= UNDER_ARM_TO_HEM:
        return None
    limit = armscye + UNDER_ARM_TO_HEM
    return _less(unit, "back waist length", waist, "armscye depth", limit)


def _shoulder(body: Body, style: Style, unit: Unit) -> str | None:
    drop, limit = body["shoulder_drop"].mm, body["shoulder_length"].mm * 0.95
    return _more(unit, "shoulder drop", drop, "shoulder length", limit) if drop > limit else None
