"""Flat measures that cannot be right: a half for a whole, a garment folded once more."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.frozen import dataclass
from tapewise_core.measures.body import Body
from tapewise_core.profiles.fitted import Loved
from tapewise_core.tasks.loved.flat import BY_KEY, Flat
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm


@dataclass(frozen=True, slots=True)
class Odd:
    """A flat measure that wants a second look: what it may be instead [cm], if that is seen."""

    key: str
    says: Told
    proposed: float | None = None


def odd(loved: Loved, body: Body) -> tuple[Odd, ...]:
    """Return what is unlikely about a garment that is said to fit a body."""
    return (*_sizes(loved, body), *_stretched(loved, body))


def _sizes(loved: Loved, body: Body) -> Iterator[Odd]:
    for key, flat in loved.flat.items():
        row = BY_KEY.get(key)
        if row is None or row.body not in body:
            continue
        own = body.values[row.body].cm
        if not row.likely(flat, own):
            yield _odd(row, flat, own, body.name(row.body))


def _odd(row: Flat, flat: float, own: float, name: str) -> Odd:
    """What it may be: the whole way round, folded once more, or neither."""
    opening = said(
        "{}: {}, on a {} of {}", row.name.capitalize(), mm(flat * 10), name, mm(own * 10)
    )
    if row.likely(flat / 2, own):
        why = (
            "all the way round? Laid flat it would be {}." if row.round else "twice? Once it is {}."
        )
        slip = said(f": is that measured {why}", mm(flat * 5))
        return Odd(row.key, (*opening, *slip), flat / 2)
    if row.likely(flat * 2, own):
        why = "folded once more" if row.round else "only half of it"
        slip = said(f": was the garment {why}? Opened out it would be {{}}.", mm(flat * 20))
        return Odd(row.key, (*opening, *slip), flat * 2)
    return Odd(row.key, (*opening, ", is unlikely; lay the garment flat and measure again."))


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
