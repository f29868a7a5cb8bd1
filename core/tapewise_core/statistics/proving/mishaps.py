"""Slips of the hand made on purpose, in forms that were honest."""

from __future__ import annotations

from collections.abc import Callable, Mapping

import numpy as np

from tapewise_core.frozen import Frozen
from tapewise_core.measures.reading import LARGEST
from tapewise_core.statistics.digits import swapped
from tapewise_core.statistics.kinds import Kind
from tapewise_core.statistics.proving.people import Form, is_girth

TRUNK = ("bust", "waist", "hip")


class Mishap(Frozen):
    """A form with a slip in it: which values are wrong, and what kind it was."""

    form: Form
    wrong: tuple[str, ...]
    kind: Kind | None


Make = Callable[[Form, np.random.Generator], Mishap | None]
Change = Callable[[str, float, np.random.Generator], float | None]


def _one(kind: Kind | None, change: Change, among: tuple[str, ...] | None = None) -> Make:
    """A slip in one value drawn by lot."""

    def make(form: Form, rng: np.random.Generator) -> Mishap | None:
        for key in rng.permutation([key for key in form if among is None or key in among]):
            cm = change(str(key), form[str(key)], rng)
            if cm is not None and 0 < cm <= LARGEST:
                return Mishap(form | {str(key): cm}, (str(key),), kind)
        return None

    return make


def _pair(first: str, second: str) -> Make:
    """Two values in each other's place."""

    def make(form: Form, _rng: np.random.Generator) -> Mishap | None:
        if not {first, second} <= form.keys() or form[first] == form[second]:
            return None
        exchanged = {first: form[second], second: form[first]}
        return Mishap(form | exchanged, (first, second), Kind.SWAPPED)

    return make


def _neighbours(form: Form, rng: np.random.Generator) -> Mishap | None:
    """Two values that follow each other on the form, at least 1 cm apart."""
    keys = list(form)
    for place in rng.permutation(len(keys) - 1):
        one, two = keys[place], keys[place + 1]
        if abs(form[one] - form[two]) >= 1:
            return _pair(one, two)(form, rng)
    return None


def _twice(form: Form, rng: np.random.Generator) -> Mishap | None:
    """Of two girths or two lengths at least 5 cm apart, the one typed for both."""
    first, *others = (str(key) for key in rng.permutation(list(form)))
    for other in others:
        if is_girth(first) is is_girth(other) and abs(form[first] - form[other]) >= 5:
            return Mishap(form | {first: form[other]}, (first,), Kind.TWICE)
    return None


def _decimal(_key: str, cm: float, rng: np.random.Generator) -> float:
    return cm * 10 if cm * 10 <= LARGEST and rng.random() < 0.5 else cm / 10


def _digits(_key: str, cm: float, rng: np.random.Generator) -> float | None:
    choices = [meant for meant, _ in swapped(cm) if meant <= LARGEST]
    return float(rng.choice(choices)) if choices else None


def _half(key: str, cm: float, _rng: np.random.Generator) -> float | None:
    return cm / 2 if is_girth(key) else None


def _off_by_five(_key: str, cm: float, rng: np.random.Generator) -> float:
    return cm + (5 if rng.random() < 0.5 else -5)


def _mistyped(_key: str, cm: float, rng: np.random.Generator) -> float | None:
    """One of the whole digits is another."""
    digits = list(f"{cm:g}")
    place = int(rng.choice([i for i, sign in enumerate(f"{int(cm)}")]))
    digits[place] = str(rng.choice([d for d in "0123456789" if d != digits[place]]))
    return float("".join(digits))


def _lost(_key: str, cm: float, rng: np.random.Generator) -> float | None:
    """One of the whole digits is left out."""
    digits = f"{cm:g}"
    place = int(rng.integers(len(f"{int(cm)}")))
    left = digits[:place] + digits[place + 1 :]
    return float(left) if left.strip(".") and not left.startswith(".") else None


MISHAPS: Mapping[str, Make] = {
    "inches typed as cm": _one(Kind.INCHES, lambda _key, cm, _rng: round(cm / 2.54 * 4) / 4),
    "half the girth": _one(Kind.HALF, _half),
    "decimal place": _one(Kind.DECIMAL, _decimal),
    "two digits swapped": _one(Kind.DIGITS, _digits),
    "a digit mistyped": _one(Kind.MISTYPED, _mistyped),
    "a digit lost": _one(Kind.MISSING, _lost),
    "waist and hip swapped": _pair("waist", "hip"),
    "bust and waist swapped": _pair("bust", "waist"),
    "neighbours swapped": _neighbours,
    "a value entered twice": _twice,
    "trunk girth 5 cm wrong": _one(None, _off_by_five, TRUNK),
}
