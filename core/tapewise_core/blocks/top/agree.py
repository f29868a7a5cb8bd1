"""Limits of a top that depend on each other; each message names the two and the difference."""

from __future__ import annotations

import math

from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.measures.body import Body
from tapewise_core.parts.neck_options import fall_of, own_half_width, side_neck_height
from tapewise_core.parts.neck_style import NeckFinish, Neckline
from tapewise_core.text.amounts import Bound
from tapewise_core.text.told import OptionKey as Key
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

UNDER_ARM_TO_HEM = 80.0
"""The shortest side seam worth sewing [mm] (common practice)."""

HALFWAY = 0.5
"""The neckline stays above halfway from the armscye line to the waist (common practice)."""


LEAST_SHOULDER = 30.0
"""The least shoulder that a wide neckline leaves [mm] (common practice)."""

BEND = 5.0
"""A forward shoulder's seam moves by no more than this part of the way it has to do it in."""


def agree(body: Body, style: TopStyle) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    checks = (
        _finish, _neck_depth, _back_depth, _neck_width, _body_length, _sleeve, _rise, _round_back,
        _band, _levels, _shoulder, _forward, _hem_rise, _slit,
    )  # fmt: skip
    return tuple(found for check in checks if (found := check(body, style)))


What = str | Key
"""A measure by its name, or an option."""


def _more(what: What, value: float, other: What, limit: float) -> Told:
    """The difference is rounded as the limit is, so that who follows it is within."""
    template = "{} is {}, and {} allows {} at the most: {} too much."
    return said(template, what, mm(value), other, Bound(limit, "down"), Bound(value - limit, "up"))


def _less(what: What, value: float, other: What, limit: float) -> Told:
    template = "{} is {}, and {} asks for {} at least: {} too little."
    return said(template, what, mm(value), other, Bound(limit, "up"), Bound(limit - value, "up"))


def _neck_depth(body: Body, style: TopStyle) -> Told | None:
    """A cowl has a depth of its own, which is judged where its shoulder is turned for it."""
    depth, armscye = style.neck.depth.mm, body["armscye_depth"].mm
    limit = armscye + HALFWAY * (body["back_waist_length"].mm - armscye)
    if depth <= limit or style.neck.cowl:
        return None
    return _more(Key("neck-depth"), depth, "halfway from armscye depth to waist", limit)


def _finish(body: Body, style: TopStyle) -> Told | None:
    if style.neck.high and style.neck.finish is not NeckFinish.BAND:
        return said("A high neck is a collar; set {} to band.", Key("neck-finish"))
    if style.neck.cowl and style.neck.finish is not NeckFinish.TURNED:
        words = "A cowl's facing is cut in one with it; set {} to turned."
        return said(words, Key("neck-finish"))
    if style.neck.cowl and not style.figure.even:
        return said(
            "A cowl hangs from two shoulders alike; set {} to none, or {} to round.",
            Key("lower-shoulder"), Key("neckline"),
        )  # fmt: skip
    if style.neck.high and style.neck.flat:
        return said("A collar is sewn on in the round; set {} to round.", Key("band-sewn"))
    if style.neck.kind is Neckline.BOAT and style.neck.finish is NeckFinish.BAND:
        return said(
            "A boat neckline takes no band, which would stand off its almost straight edge; set "
            "{} to turned, or {} to scoop.",
            Key("neck-finish"),
            Key("neckline"),
        )
    return None


def _back_depth(body: Body, style: TopStyle) -> Told | None:
    """The neckline lies below its own ends, at the back as in front."""
    height = side_neck_height(body, style.figure, style.neck.rise, style.neck.half_width)
    neck, raised = style.neck, style.fitted.back_longer
    for key, has, least in (
        ("back-neck-depth", neck.back_depth.mm + raised, 5.0 - height),
        ("neck-depth", neck.depth.mm, 20.0 - height),
    ):
        if has < least - 1e-6 and not (key == "neck-depth" and neck.cowl):
            return _less(Key(key), has, "the height of the side neck", least)
    depth, limit = style.neck.back_depth.mm, body["armscye_depth"].mm
    return _more(Key("back-neck-depth"), depth, "armscye depth", limit) if depth > limit else None


def _neck_width(body: Body, style: TopStyle) -> Told | None:
    """At least 3 cm of shoulder are left (common practice)."""
    level = body["shoulder_length"].mm * math.cos(math.radians(fall_of(body, style.figure)))
    width = style.neck.half_width.mm
    limit = own_half_width(body, style.figure).mm + level - LEAST_SHOULDER
    if width <= limit:
        return None
    return _more(Key("neck-half-width"), width, "the shoulder length", limit)


def _round_back(body: Body, style: TopStyle) -> Told | None:
    """Something of the rise is left."""
    lifted, limit = style.figure.round_back.mm, style.neck.rise.mm - 3
    return _more(Key("round-back"), lifted, Key("neck-rise"), limit) if lifted > limit else None


def _forward(body: Body, style: TopStyle) -> Told | None:
    """The seam bends gently on both sides of the shoulder point."""
    moved = style.figure.forward_shoulder.mm
    wider = max(0.0, style.neck.half_width.mm - own_half_width(body, style.figure).mm)
    shoulder = body["shoulder_length"].mm - wider
    way = min(style.sleeve.length.mm or shoulder, shoulder)
    limit = way / BEND
    other = "the way from neckline to sleeve hem"
    return _more(Key("forward-shoulder"), moved, other, limit) if moved > limit else None


def _hem_rise(body: Body, style: TopStyle) -> Told | None:
    if not style.hem.curved:
        return None
    rise, limit = style.hem.rise.mm, _below_underarm(body, style) - UNDER_ARM_TO_HEM
    return _more(Key("hem-rise"), rise, Key("body-length"), max(limit, 0)) if rise > limit else None


def _slit(body: Body, style: TopStyle) -> Told | None:
    if not style.hem.split:
        return None
    slit, limit = style.hem.slit.mm, _below_underarm(body, style) - UNDER_ARM_TO_HEM
    if slit <= limit:
        return None
    return _more(Key("split-length"), slit, Key("body-length"), max(limit, 0))


def _below_underarm(body: Body, style: TopStyle) -> float:
    """About how long the side seam is: a sleeve's underarm lies some way below the armscye line."""
    half = (body["upper_arm"].mm + style.sleeve.ease.mm) / 2
    return style.trunk.length.mm - max(body["armscye_depth"].mm, half + UNDERARM_LOWER)


UNDERARM_LOWER = 80.0
"""How far below the nape a sleeve's own half width is set off, about [mm] (our geometry)."""


def _body_length(body: Body, style: TopStyle) -> Told | None:
    length = style.trunk.length.mm
    limit = body["armscye_depth"].mm + UNDER_ARM_TO_HEM
    return _less(Key("body-length"), length, "armscye depth", limit) if length < limit else None


def _sleeve(body: Body, style: TopStyle) -> Told | None:
    if "arm_length" not in body:
        return None
    length, limit = style.sleeve.length.mm, body["arm_length"].mm + 30
    return _more(Key("sleeve-length"), length, "arm length", limit) if length > limit else None


def _rise(body: Body, style: TopStyle) -> Told | None:
    rise, limit = style.neck.rise.mm, style.neck.half_width.mm / 2
    return _more(Key("neck-rise"), rise, Key("neck-half-width"), limit) if rise > limit else None


def _band(body: Body, style: TopStyle) -> Told | None:
    """A band wider than half the neckline's half width would close over the face."""
    width, limit = style.neck.band_width.mm, style.neck.half_width.mm / 2
    if style.neck.high:
        return None
    return _more(Key("band-width"), width, Key("neck-half-width"), limit) if width > limit else None


def _levels(body: Body, style: TopStyle) -> Told | None:
    armscye, waist = body["armscye_depth"].mm, body["back_waist_length"].mm
    if waist - armscye >= UNDER_ARM_TO_HEM:
        return None
    limit = armscye + UNDER_ARM_TO_HEM
    return _less("back waist length", waist, "armscye depth", limit)


def _shoulder(body: Body, style: TopStyle) -> Told | None:
    drop, limit = style.figure.lowest_drop, body["shoulder_length"].mm * 0.95
    return _more("shoulder drop", drop, "shoulder length", limit) if drop > limit else None
