"""Slips of the hand made on purpose, in forms that were honest."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np

from tapewise_core.measures.reading import LARGEST
from tapewise_core.statistics.proving.people import Form, is_girth
from tapewise_core.statistics.slips import Kind, digits_swapped

TRUNK = ("bust", "waist", "hip")


@dataclass(frozen=True)
class Mishap:
    """A form with a slip in it: which values are wrong, and what kind it was."""

    form: Form
    wrong: tuple[str, ...]
    kind: Kind | None


Make = Callable[[Form, np.random.Generator], Mishap | None]


def _one(kind: Kind | None, change: Callable[[str, float, np.random.Generator], float | None],
         among: tuple[str, ...] | None = None) -> Make:  # fmt: skip
    """A slip in one value drawn by lot."""

    def make(form: Form, rng: np.random.Generator) -> Mishap | None:
        for key in rng.permutation([key for key in form if among is None or key in among]):
            cm = change(str(key), form[str(key)], rng)
            if cm is not None and cm <= LARGEST:
                return Mishap(form | {str(key): cm}, (str(key),), kind)
        return None

    return make


def _pair(first: str, second: str) -> Make:
    """Two values in each other's place."""

    def make(form: Form, _rng: np.random.Generator) -> Mishap | None:
        if form[first] == form[second]:
            return None
        swapped = {first: form[second], second: form[first]}
        return Mishap(form | swapped, (first, second), Kind.SWAPPED)

    return make


def _drawn_pair(kind: Kind) -> Make:
    """Two girths or two lengths at least 5 cm apart, swapped, or the one typed for both."""

    def make(form: Form, rng: np.random.Generator) -> Mishap | None:
        first, *others = (str(key) for key in rng.permutation(list(form)))
        for other in others:
            if is_girth(first) is is_girth(other) and abs(form[first] - form[other]) >= 5:
                if kind is Kind.TWICE:
                    return Mishap(form | {first: form[other]}, (first,), kind)
                return _pair(first, other)(form, rng)
        return None

    return make


def _decimal(_key: str, cm: float, rng: np.random.Generator) -> float:
    return cm * 10 if cm * 10 <= LARGEST and rng.random() < 0.5 else cm / 10


def _digits(_key: str, cm: float, rng: np.random.Generator) -> float | None:
    choices = [swapped for swapped in digits_swapped(cm) if swapped <= LARGEST]
    return float(rng.choice(choices)) if choices else None


def _half(key: str, cm: float, _rng: np.random.Generator) -> float | None:
    return cm / 2 if is_girth(key) else None


def _off_by_five(_key: str, cm: float, rng: np.random.Generator) -> float:
    return cm + (5 if rng.random() < 0.5 else -5)


MISHAPS: Mapping[str, Make] = {
    "inches typed as cm": _one(Kind.INCHES, lambda _key, cm, _rng: cm / 2.54),
    "half the girth": _one(Kind.HALF, _half),
    "decimal place": _one(Kind.DECIMAL, _decimal),
    "two digits swapped": _one(Kind.DIGITS, _digits),
    "the same, trunk girths": _one(Kind.DIGITS, _digits, TRUNK),
    "waist and hip swapped": _pair("waist", "hip"),
    "bust and waist swapped": _pair("bust", "waist"),
    "any two swapped": _drawn_pair(Kind.SWAPPED),
    "a value entered twice": _drawn_pair(Kind.TWICE),
    "trunk girth 5 cm wrong": _one(None, _off_by_five, TRUNK),
}
