"""Flat measures that cannot be right: a half for a whole, a garment folded once more, another unit,
two that are exchanged."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.profiles.fitted import Loved
from tapewise_core.tasks.loved.flat import BY_KEY
from tapewise_core.tasks.loved.slips import UNITS, WHOLE, likeliest, usual_share
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


class Odd(Frozen):
    """A flat measure that wants a second look: what it may be instead [cm], if that is seen."""

    key: str
    says: Told
    proposed: float | None = None


FLARED = 1.25
"""A hem so many times as wide as the hip is a flared skirt's (our choice)."""


class Known(Frozen):
    """A garment's flat measures and the body's beside each, as far as both are known [cm]."""

    flat: Mapping[str, float]
    bodies: Mapping[str, float]
    names: Mapping[str, str]

    def likely(self, key: str, times: float = 1.0) -> bool:
        """Say whether a measure, or so many times it, may be right; a skirt that is far wider
        below may be as wide as it likes at the hip."""
        if key == "hip" and self.flat.get("hem", 0.0) > FLARED * self.flat[key] * times:
            return True
        return BY_KEY[key].likely(self.flat[key] * times, self.bodies[key])

    def share(self, key: str) -> float:
        """Return what the garment has of the body's measure."""
        return BY_KEY[key].whole(self.flat[key]) / self.bodies[key]


def odd(loved: Loved, body: Body) -> tuple[Odd, ...]:
    """Return what is unlikely about a garment that is said to fit a body."""
    rows = {key: BY_KEY[key] for key in loved.flat if key in BY_KEY}
    there = {key: row for key, row in rows.items() if row.body in body}
    known = Known(
        {key: loved.flat[key] for key in there},
        {key: body.values[row.body].cm for key, row in there.items()},
        {key: body.name(row.body) for key, row in there.items()},
    )
    unit = _in_another_unit(known)
    if unit:
        return (unit,)
    return (*_sizes(known), *_exchanged(known), *_beside(known), *_stretched(loved, body))


def _in_another_unit(known: Known) -> Odd | None:
    """Whether most of a garment is unlikely, and all of it likely in the other unit."""
    wrong = [key for key in known.flat if not known.likely(key)]
    if len(wrong) < LEAST or len(wrong) <= len(known.flat) / 2:
        return None
    for slip in UNITS:
        if all(known.likely(key, slip.mended) for key in known.flat):
            key = wrong[0]
            says = said(
                "{}: {}, where the {} is {}, and {} more are as unlikely: were they all typed in "
                "the other unit? Then it is {}.",
                BY_KEY[key].name.capitalize(), mm(known.flat[key] * 10), known.names[key],
                mm(known.bodies[key] * 10), str(len(wrong) - 1),
                mm(known.flat[key] * slip.mended * 10),
            )  # fmt: skip
            return Odd(key, says, known.flat[key] * slip.mended)
    return None


LEAST = 3
"""Of so many unlikely measures at least it is said that all are in another unit (our choice)."""


def _sizes(known: Known) -> Iterator[Odd]:
    """What is far from the body's measure: a slip that explains it, or none."""
    for key, flat in known.flat.items():
        if known.likely(key):
            continue
        row, own = BY_KEY[key], known.bodies[key]
        opening = said(
            "{}: {}, where the {} is {}",
            row.name.capitalize(), mm(flat * 10), known.names[key], mm(own * 10),
        )  # fmt: skip
        slip = likeliest(row, flat, own, usual_share(row, known.flat, known.bodies))
        if slip:
            yield Odd(key, (*opening, ": ", *slip.told(row, flat)), flat * slip.mended)
        else:
            yield Odd(key, (*opening, ", is unlikely; lay the garment flat and measure again."))


BESIDE = (("upper_arm", "bust", 1.9), ("shoulder", "bust", 1.5), ("sleeve_hem", "upper_arm", 1.7))
"""Measures, one beside which each is judged, and how many times as wide the one may be for its
body as the other is (our choice: wide, to catch a double and no more)."""


def _beside(known: Known) -> Iterator[Odd]:
    """What is likely by itself, and is twice what the rest of the garment tells."""
    for key, other, most in BESIDE:
        if not {key, other} <= set(known.flat) or not (known.likely(key) and known.likely(other)):
            continue
        if known.share(key) > most * known.share(other) and known.likely(key, WHOLE.mended):
            row, flat = BY_KEY[key], known.flat[key]
            opening = said(
                "{}: {}, where the {} is {}: ",
                row.name.capitalize(), mm(flat * 10), BY_KEY[other].name,
                mm(known.flat[other] * 10),
            )  # fmt: skip
            yield Odd(key, (*opening, *WHOLE.told(row, flat)), flat * WHOLE.mended)


EXCHANGED, ALIKE, TIGHT = 0.3, 0.15, 0.9
"""Two widths part so much from the body's, told in logarithms, before they are taken to be
exchanged, and so little afterwards; one of them has less than this share of the body's (our
choice)."""


def _exchanged(known: Known) -> Iterator[Odd]:
    """Two widths of the trunk that fit each other's place."""
    for first, second in (("bust", "waist"), ("waist", "hip")):
        both = {first, second} <= set(known.flat)
        if not both or not (known.likely(first) and known.likely(second)):
            continue
        apart = math.log(known.share(first) / known.share(second))
        bodies = math.log(known.bodies[first] / known.bodies[second])
        after = -apart - 2 * bodies
        tight = min(known.share(first), known.share(second)) < TIGHT
        if tight and abs(apart) > EXCHANGED and abs(after) < ALIKE:
            says = said(
                "{}: {}, and {} {}: are these two exchanged?",
                BY_KEY[first].name.capitalize(), mm(known.flat[first] * 10), BY_KEY[second].name,
                mm(known.flat[second] * 10),
            )  # fmt: skip
            yield Odd(first, says, known.flat[second])


def _stretched(loved: Loved, body: Body) -> Iterator[Odd]:
    """Where it would have to stretch more than its cloth can."""
    if loved.stretch is None:
        return
    for key in ("bust", "waist", "hip", "upper_arm"):
        flat = loved.flat.get(key)
        if flat is None or key not in body:
            continue
        row, own = BY_KEY[key], body.values[key].cm
        needs = own / row.whole(flat) - 1
        if needs > loved.stretch / 100 and row.likely(flat, own):
            says = said(
                "{}: to go round a {} of {} its cloth would stretch by {} %, and it is said "
                "to stretch by {} %; measure the one or test the other again.",
                row.name.capitalize(),
                body.name(key),
                mm(own * 10),
                f"{needs * 100:.0f}",
                f"{loved.stretch:g}",
            )
            yield Odd(key, says)
