"""What is seen at a fitting, the question that tells its causes apart, and what each asks for."""

from __future__ import annotations

from collections.abc import Iterable

from tapewise_core.errors import OptionError
from tapewise_core.fitting.change import Change, Measured
from tapewise_core.fitting.changes import CHANGES
from tapewise_core.fitting.folds import Folds
from tapewise_core.frozen import Frozen
from tapewise_core.text.near import near_words

MOST_A_FITTING = 2.0
"""No fitting changes more than this at one place [cm] (common practice): more than that is a
measure to be taken again."""


class Remedy(Frozen):
    """A change with the least and the most that it is usual to do at once [cm, percent or
    degrees], for one pattern piece."""

    change: Change
    low: float
    most: float

    @property
    def high(self) -> float:
        """The most at one fitting."""
        if self.change.measured is Measured.LENGTH:
            return min(self.most, MOST_A_FITTING)
        return self.most

    @property
    def proposed(self) -> float:
        """What is tried first: the middle, to the millimetre, the half percent or degree."""
        step = 0.1 if self.change.measured is Measured.LENGTH else 0.5
        return round(round((self.low + self.high) / 2 / step) * step, 1)


class Answer(Frozen):
    """One answer to a symptom's question: the ``cause`` it speaks for, and what then helps.

    The first remedy that a garment has a way for is proposed; ``advice`` is for causes that no
    pattern mends.
    """

    key: str
    says: str
    cause: str
    remedies: tuple[Remedy, ...] = ()
    advice: str = ""


class Symptom(Frozen):
    """What is seen; ``question`` is empty where there is one answer."""

    key: str
    says: str
    folds: Folds
    answers: tuple[Answer, ...]
    question: str = ""

    def answer(self, key: str) -> Answer:
        """Return one of its answers; raises OptionError naming them."""
        found = next((answer for answer in self.answers if answer.key == key), None)
        if found is None:
            keys = tuple(answer.key for answer in self.answers)
            raise OptionError(f"“{key}” is no answer for {self.key}; {near_words(key, keys)}")
        return found


def remedy(key: str, low: float, most: float) -> Remedy:
    """Return a remedy by its change's key."""
    return Remedy(CHANGES[key], low, most)


def once(cause: str, *remedies: Remedy) -> tuple[Answer, ...]:
    """Return the only answer of a symptom that asks nothing."""
    return (Answer("seen", "it is so", cause, remedies),)


def by_key(symptoms: Iterable[Symptom]) -> dict[str, Symptom]:
    """Return symptoms by their keys."""
    return {symptom.key: symptom for symptom in symptoms}
