"""Every change that a fitting may lead to, and what each moves.

What is moved by how much for one centimetre on one pattern piece is common practice.
"""

from __future__ import annotations

from tapewise_core.fitting.change import Change, Measured, Way

BELLY: Way = {"full-belly": 1}
"""A skirt's front is longer above, at its waist."""

NO_FRONT = "has no front over the bust"
NO_NECK = "has no neckline"
NO_BAND = "has no neckband whose length could change"
NO_SHOULDER = "has no shoulders"
ALIKE = "is not drafted with one shoulder lower"
NO_CAP = "has no sleeve that could be turned in an armhole"
NO_ARMHOLE = "has no armhole of its own: its sleeves, if any, are cut in one with the body"
NO_SHARES = "has one side line for back and front, which cannot be shared out otherwise"
NO_SLEEVE = "has no sleeve"
NO_WAIST = "has no waist seam"
NO_HEM = "takes no change of its hem at the sides alone"
NO_CENTRE = "takes no change of length at the centre alone"


def _one(key: str, says: str, lacks: str, *ways: Way) -> Change:
    return Change(key=key, says=says, ways=ways, lacks=lacks)


_ALL = (
    _one("front-longer", "front lengthened {} over the bust", NO_FRONT, {"front-longer": 1}),
    _one(
        "front-wider",
        "front widened {} at the bust",
        NO_SHARES,
        {"bust-ease": 2, "bust-forward": 0.5},
    ),
    _one(
        "front-hem-lower",
        "front hem lowered {} at the centre",
        NO_CENTRE,
        {"front-hem-drop": 1},
        BELLY,
    ),
    _one(
        "back-shorter",
        "back shortened {} at the centre below",
        NO_CENTRE,
        {"back-shorter": 1},
        {"back-waist-shorter": 1},
    ),
    _one("bust-out", "each side let out {} at the bust", NO_FRONT, {"bust-ease": 4}),
    _one("neck-narrower", "neckline narrowed {} on each side", NO_NECK, {"neck-half-width": -1}),
    _one("neck-wider", "neckline widened {} on each side", NO_NECK, {"neck-half-width": 1}),
    _one("front-taken-up", "front taken up {} at the neck", NO_FRONT, {"front-longer": -1}),
    _one("back-neck-raised", "back neck raised {}", NO_NECK, {"back-neck-higher": 1}),
    _one(
        "front-neck-lower", "front neck lowered {}", NO_NECK, {"neck-depth": 1}, {"cowl-depth": 1}
    ),
    _one(
        "shoulder-forward",
        "shoulder seam moved {} forward at its outer end",
        NO_SHOULDER,
        {"forward-shoulder": 1},
    ),
    _one(
        "shoulders-lower",
        "shoulder points lowered {}",
        NO_SHOULDER,
        {"shoulder-drop": 1, "underarm-lower": 1},
        {"shoulder-drop": 1},
    ),
    _one(
        "shoulders-higher",
        "shoulder points raised {}",
        NO_SHOULDER,
        {"shoulder-drop": -1, "underarm-lower": -1},
        {"shoulder-drop": -1},
    ),
    _one("left-shoulder-lower", "left shoulder lowered {}", ALIKE, {"left-shoulder-lower": 1}),
    _one("right-shoulder-lower", "right shoulder lowered {}", ALIKE, {"left-shoulder-lower": -1}),
    _one("across-back-wider", "half back widened {} across", NO_ARMHOLE, {"across-back-wider": 1}),
    _one(
        "across-front-wider", "half front widened {} across", NO_ARMHOLE, {"across-front-wider": 1}
    ),
    _one("back-longer", "back lengthened {} from nape to waist", NO_SHOULDER, {"back-longer": 1}),
    _one(
        "back-waist-shorter",
        "centre back shortened {} at the waist",
        NO_WAIST,
        {"back-waist-shorter": 1},
    ),
    _one("underarm-raised", "underarm raised {}", NO_ARMHOLE, {"underarm-lower": -1}),
    _one("underarm-lower", "underarm lowered {}", NO_ARMHOLE, {"underarm-lower": 1}),
    _one(
        "sleeve-wider",
        "sleeve widened {} at the upper arm",
        NO_SLEEVE,
        {"sleeve-wider": 1},
        {"sleeve-ease": 1},
    ),
    Change(
        key="sleeve-flatter",
        says="sleeve laid {} flatter",
        ways=({"sleeve-flatter": 1},),
        lacks="has no sleeve that is cut in one with the body",
        measured=Measured.DEGREES,
    ),
    _one("sleeve-forward", "sleeve turned {} forward in its armhole", NO_CAP, {"cap-forward": 1}),
    _one("sides-raised", "hem taken up {} at the sides", NO_HEM, {"sides-higher": 1}),
    _one("sides-lowered", "hem let down {} at the sides", NO_HEM, {"sides-higher": -1}),
    _one(
        "sides-back",
        "half front widened and half back narrowed {} at the side",
        NO_SHARES,
        {"bust-forward": 1, "hip-forward": 1},
    ),
    _one(
        "sides-forward",
        "half back widened and half front narrowed {} at the side",
        NO_SHARES,
        {"bust-forward": -1, "hip-forward": -1},
    ),
    _one(
        "front-waist-longer",
        "centre front lengthened {} below the bust",
        NO_CENTRE,
        {"front-hem-drop": 1},
        BELLY,
    ),
    _one(
        "seat-longer",
        "centre back lengthened {} above the hem",
        NO_CENTRE,
        {"full-seat": 1},
        {"back-waist-shorter": -1},
        {"back-shorter": -1},
    ),
    Change(
        key="band-shorter",
        says="neckband shortened {}",
        ways=({"band-longer": -1},),
        lacks=NO_BAND,
        measured=Measured.PERCENT,
    ),
    Change(
        key="band-longer",
        says="neckband lengthened {}",
        ways=({"band-longer": 1},),
        lacks=NO_BAND,
        measured=Measured.PERCENT,
    ),
    Change(
        key="band-narrower",
        says="neckband narrowed {}",
        ways=({"band-width": -1},),
        lacks=NO_BAND,
        beside=frozenset({"band-ratio"}),
    ),
)

CHANGES = {change.key: change for change in _ALL}
"""Every change by its key, which people's files keep."""
