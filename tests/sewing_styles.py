"""The styles of every garment in which the sewing order differs, drafted once."""

from __future__ import annotations

from functools import cache

from machine_sets import SETS
from making import DAY, MIDDLE, person

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.operation import Operation
from tapewise_core.sewing.order import operations
from tapewise_core.tasks.drafting import draft

Asked = dict[str, str]

NECKS: tuple[Asked, ...] = (
    {"neck-finish": "band"},
    {"neck-finish": "turned"},
    {"neck-finish": "band", "neckline": "v"},
    {"neck-finish": "turned", "neckline": "v"},
    {"neckline": "high", "collar": "folded"},
    {"neckline": "cowl"},
    {"band-sewn": "flat"},
)
FACED: tuple[Asked, ...] = ({"neck-finish": "facing"}, {"neck-finish": "facing", "neckline": "v"})
BODIES: tuple[Asked, ...] = (
    {"band-sewn": "flat", "lower-shoulder": "right"},
    {"lower-shoulder": "left", "sleeve": "long"},
    {"bust-room": "side-dart"},
    {"bust-room": "gathers"},
    {"fit": "close", "waist-darts": "auto"},
)
SLIT: Asked = {"hem": "split"}

SKIRTS = (
    {"skirt": "gathered"},
    {"skirt": "gathered", "tiers": "3"},
    {"skirt": "straight"},
    {"skirt": "straight", "skirt-length": "85"},
    {"skirt": "straight", "vent": "slits"},
    {"sleeve-cut": "set-in"},
    {"sleeve-cut": "set-in", "skirt": "straight", "sleeve": "long", "sleeve-sewn": "round"},
)
BARE: tuple[Asked, ...] = tuple(
    {"sleeve": "none", "armhole-finish": finish, **more}
    for finish in ("band", "turned", "facing")
    for more in ({}, {"lower-shoulder": "left"})
)
"""Without sleeves, both armholes alike and apart."""

SLIT_BARE: Asked = {"sleeve": "none", **SLIT}

ENDS: tuple[Asked, ...] = (
    {"hem-finish": "band"},
    {"sleeve-finish": "cuff", "sleeve": "long"},
    {"hem-finish": "band", "sleeve-finish": "cuff", "sleeve": "elbow", "neckline": "v"},
    {"hem-finish": "band", "sleeve": "none"},
    {"centre-seams": "both"},
    {"centre-seams": "back", "hem-finish": "band", "neck-finish": "turned"},
)
"""Bands round hem and sleeves, and seams at the centre."""

DRESS_ENDS: tuple[Asked, ...] = (
    {"skirt": "straight", "cloth-width": "90", **ENDS[0]},
    {"skirt": "straight", **ENDS[0]},
    {"sleeve-cut": "set-in", **ENDS[1]},
    {"stretch": "15"},
    {"stretch": "15", "skirt": "gathered"},
    {"centre-seams": "both", "skirt": "gathered"},
)
"""Cuffs, a skirt's band, waists let out for the hips, and seams down to the waist."""

PLACKETS: tuple[Asked, ...] = (
    {"shoulder-placket": "left"},
    {"shoulder-placket": "right", "neckline": "scoop", "hem-finish": "band"},
    {"shoulder-placket": "left", "sleeve": "none"},
)
"""One shoulder with buttons."""

STYLES: dict[str, tuple[Asked, ...]] = {
    "jersey-top": (
        *NECKS, *FACED, *BODIES, SLIT, {**FACED[1], **BODIES[0]}, *BARE, SLIT_BARE, *ENDS,
        *PLACKETS,
    ),
    "flared-dress": (
        *NECKS, *FACED, SLIT,
        {"pockets": "yes", "belt": "yes", "bust-room": "side-dart", **SLIT},
        {"pockets": "yes", "lower-shoulder": "right"},
        {"pockets": "yes", "belt": "yes", "centre-seams": "both"},
        *BARE, SLIT_BARE, *ENDS[:3], {"sleeve": "none", "pockets": "yes", "belt": "yes", **ENDS[0]},
    ),
    "circle-skirt": tuple(
        {"circle": circle, "panels": panels, "waist-finish": finish}
        for circle, panels in (("1", "fewest"), ("1/2", "1"), ("1", "2"), ("1/2", "6"))
        for finish in ("elastic", "band")
    ),
    "straight-skirt": (
        {"vent": "none", "waist-finish": "elastic"}, {"vent": "back", "waist-finish": "band"},
        {"vent": "slits", "waist-finish": "elastic"},
    ),
    "gathered-skirt": (
        {},
        {"waist-finish": "band"},
        {"tiers": "3", "waist-finish": "band"},
        {"tiers": "4", "cloth-width": "90"},
    ),
    "skirted-dress": (
        *NECKS, *FACED, *BODIES[:3], {"circle": "1/2", "panels": "4"}, *SKIRTS, *BARE[:5],
        *DRESS_ENDS,
    ),
    "set-in-top": (
        *NECKS, *BODIES, {"sleeve-sewn": "round"}, {"sleeve-sewn": "round", "band-sewn": "flat"},
        {"sleeve-sewn": "round", **BODIES[0]}, *BARE, *ENDS, *PLACKETS,
    ),
    "raglan-top": (*NECKS[:5], *BODIES[2:], *ENDS[:3], *ENDS[4:]),
}  # fmt: skip
"""The styles in which the order differs."""

FULL = {"front_waist_length": 46.0, "bust": 104.0, "high_bust": 92.0, "back_waist_length": 38.5}
"""A full bust, which takes darts."""

CASES = [(garment, i) for garment, styles in STYLES.items() for i in range(len(styles))]


@cache
def drafted(garment: str, style: int) -> Pattern:
    """Return a garment in one of its styles."""
    more = {"waist_to_floor": 104.0, "waist_to_knee": 58.0, **FULL}
    someone = person({**MIDDLE, **more})
    return draft(someone, garment, STYLES[garment][style], made=DAY).pattern


Order = tuple[Pattern, str, tuple[Operation, ...]]


@cache
def orders(garment: str, style: int) -> tuple[Order, ...]:
    """Return the order on every set of machines."""
    pattern = drafted(garment, style)
    return tuple(
        (pattern, machines, operations(pattern, stitching(read_machines(machines))))
        for machines in SETS
    )
