"""Changes of two writers to one person, put together measure by measure.

What only one of them changed is taken from the one who changed it. A measure both changed, each
to something else, is a ``Clash``: it stays as it is on file until somebody says which counts.
"""

from __future__ import annotations

from typing import Any

from tapewise_core.frozen import Frozen
from tapewise_core.profiles.profile import Profile, Reading

_SIMPLE = ("name", "unit", "reference", "waist_site", "age")
_GROWING = ("groups", "adjustments", "loved")


class Clash(Frozen):
    """One measure changed by two: what this writer wants, and what is on file; None is open."""

    key: str
    mine: Reading | None
    theirs: Reading | None

    def settled(self, profile: Profile) -> Profile:
        """Return a person in whom what this writer wants counts."""
        rest = {key: row for key, row in profile.measures.items() if key != self.key}
        return profile.having(measures=rest if self.mine is None else {**rest, self.key: self.mine})


def merged(base: Profile, mine: Profile, theirs: Profile) -> tuple[Profile, tuple[Clash, ...]]:
    """Return what is on file (theirs) with everything I changed since ``base``, and clashes.

    >>> ada = Profile.of("Ada").with_value("hip", 98.0)
    >>> both, _ = merged(ada, ada.with_value("hip", 99.0), ada.with_value("neck", 36.0))
    >>> {key: value.cm for key, value in both.values().items()}
    {'hip': 99.0, 'neck': 36.0}
    """
    changes: dict[str, Any] = {
        name: getattr(mine, name) for name in _SIMPLE if getattr(mine, name) != getattr(base, name)
    }
    for name in _GROWING:
        changes[name] = grown(getattr(base, name), getattr(mine, name), getattr(theirs, name))
    measures, clashes = _measures(base, mine, theirs)
    return theirs.having(**changes, measures=measures), clashes


def _measures(
    base: Profile, mine: Profile, theirs: Profile
) -> tuple[dict[str, Reading], tuple[Clash, ...]]:
    found, clashes = dict(theirs.measures), []
    for key in dict.fromkeys((*base.measures, *mine.measures)):
        was, want, there = (who.measures.get(key) for who in (base, mine, theirs))
        if want in (was, there):
            continue
        if want and there and there != was and _alike(want, there):  # the fuller one is kept
            found[key] = max(want, there, key=lambda row: len(row.readings))
        elif there != was:
            clashes.append(Clash(key, want, there))
        elif want is None:
            del found[key]
        else:
            found[key] = want
    return found, tuple(clashes)


def _alike(one: Reading, other: Reading) -> bool:
    """Whether both say the same, however often and whenever it was read."""
    return (one.value, one.origin) == (other.value, other.origin)


def grown(
    base: tuple[object, ...], mine: tuple[object, ...], theirs: tuple[object, ...]
) -> tuple[object, ...]:
    """Return theirs without what I took away, and with what I added."""
    kept = [one for one in theirs if one in mine or one not in base]
    return (*kept, *(one for one in mine if one not in base and one not in kept))
