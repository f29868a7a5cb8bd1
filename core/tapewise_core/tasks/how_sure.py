"""How sure a draft's proofs are, as far as what was not measured leaves it open.

The unmeasured scatter together (:mod:`tapewise_core.statistics.joint`). The garment is drafted
once more for each measure that was estimated, one spread from its estimate, to see by what share
each number of the body moves with it; so many bodies are drawn that a percent does not matter, and
each wears the garment as it is cut (:mod:`tapewise_core.proofs.worn`).
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

import numpy as np

from tapewise_core.drafting.piece import Pattern
from tapewise_core.errors import TapewiseError
from tapewise_core.measures.body import Body
from tapewise_core.proofs.proof import Case
from tapewise_core.proofs.verdict import verdict
from tapewise_core.proofs.worn import About, Many, body_side, rooms
from tapewise_core.statistics.joint import unmeasured
from tapewise_core.statistics.population import Population
from tapewise_core.tasks.drafting import Drafted

BODIES = 2000
"""So many are drawn: a share of a half is then off by one percent."""

WORTH_TAKING = 0.01
"""A measure helps where taking it makes the proofs surer by so much in all (our choice)."""

TRIED = (1.0, -1.0, 0.5, -0.5)
"""How many spreads from its estimate a measure is drafted: the first that can be drafted."""


def how_sure(drafted: Drafted) -> Drafted:
    """Return the same draft with each proof as sure as it is, and the verdict on them all.

    Takes a draft for each measure that was estimated; safe in a worker. A draft that has its
    verdict is returned as it is.
    """
    if drafted.verdict is not None:
        return drafted
    doubt = doubt_of(drafted)
    if not doubt.keys:
        return replace(drafted, verdict=verdict(drafted.proofs))
    case = Case(drafted.pattern, drafted.style, drafted.cloth)
    model, drawn = _model(drafted, doubt), doubt.draw()
    sure = _shares(case, model.of(drawn))
    proofs = tuple(
        replace(proof, sure=sure.get((proof.id, proof.of), 1.0)) for proof in drafted.proofs
    )
    gains = {
        key: sum(_shares(case, model.of(doubt.knowing(place, drawn))).values())
        for place, key in enumerate(doubt.keys)
    }
    best = max(gains, key=lambda key: gains[key])
    helps = best if gains[best] - sum(sure.values()) >= WORTH_TAKING else None
    return replace(drafted, proofs=proofs, verdict=verdict(proofs, helps))


def _shares(case: Case, bodies: Mapping[str, Many]) -> dict[About, float]:
    """The share of bodies for which each proof holds."""
    return {about: float(np.mean(left >= 0)) for about, left in rooms(case, bodies).items()}


@dataclass(frozen=True)
class Doubt:
    """The estimates a draft uses: how far each may be off (``spreads``), on the scale of the
    ``people`` it was drawn from; ``off`` is how far the most likely value is from the one drafted
    for, in spreads, which is 0 but for an estimate that was kept. ``together`` is how they hang
    together, a correlation."""

    people: Population
    keys: tuple[str, ...]
    spreads: tuple[float, ...]
    off: Many
    together: Many

    def draw(self) -> Many:
        """Return bodies, a row each: every estimate in spreads from the one drafted for."""
        chance = np.random.default_rng(0)  # the same bodies for the same draft
        root = np.linalg.cholesky(self.together + 1e-9 * np.eye(len(self.keys)))
        return self.off + chance.standard_normal((BODIES, len(self.keys))) @ root.T

    def knowing(self, place: int, drawn: Many) -> Many:
        """Return the same bodies, had one measure been taken and found as drafted for."""
        follow = self.together[place] / self.together[place, place]
        known = drawn - np.outer(drawn[:, place] - self.off[place], follow)
        return np.asarray(known, np.float64)

    def moved(self, body: Body, key: str, step: float) -> Body:
        """Return a body with one estimate so many spreads from where it is."""
        spread, value = self.spreads[self.keys.index(key)], body.values[key]
        cm = self.people.unscaled(key, self.people.scaled(key, value.cm) + step * spread)
        changed = {**body.values, key: replace(value, cm=cm)}
        return replace(body, values=MappingProxyType(changed))


def doubt_of(drafted: Drafted) -> Doubt:
    """Return what the estimates of a draft leave open."""
    who = drafted.profile
    joint = unmeasured(who.read_off(), who.reference, who.waist_site, who.confirmed(), who.age)
    keys = tuple(key for key in drafted.estimated_keys if key in joint.keys)
    at = [joint.keys.index(key) for key in keys]
    spreads = [math.sqrt(joint.covariance[i][i]) for i in at]
    body, people = drafted.body.values, joint.population
    off = [
        joint.mean[i] - people.scaled(key, body[key].cm) for key, i in zip(keys, at, strict=True)
    ]
    together = np.array([[joint.covariance[i][j] for j in at] for i in at])
    return Doubt(
        people, keys, tuple(spreads), np.array(off) / spreads,
        together / np.outer(spreads, spreads),
    )  # fmt: skip


def drafted_for(drafted: Drafted, body: Body) -> Pattern | None:
    """Return the garment in the same style for another body, or None if it can't be drafted."""
    try:
        return drafted.garment.draft(body, drafted.style)
    except TapewiseError:
        return None


@dataclass(frozen=True)
class Model:
    """How a body's numbers follow its estimates: their logarithms as drafted, and by how much
    they move with one spread of each estimate, a row each."""

    start: Mapping[str, float]
    slopes: Mapping[str, Many]

    def of(self, drawn: Many) -> dict[str, Many]:
        """Return the numbers of bodies given in spreads."""
        return {name: np.exp(log + drawn @ self.slopes[name]) for name, log in self.start.items()}


def _model(drafted: Drafted, doubt: Doubt) -> Model:
    """Draft a body for each estimate and see what moves.

    Logarithms, because girths scatter by shares; heights scatter so little that it is the same.
    """
    start = _logs(drafted.pattern)
    moves = [_moves(drafted, doubt, key, start) for key in doubt.keys]
    return Model(start, {name: np.array([one[name] for one in moves]) for name in start})


def _moves(
    drafted: Drafted, doubt: Doubt, key: str, start: Mapping[str, float]
) -> dict[str, float]:
    """By how much each number moves with a spread of one estimate; a level that the garment does
    not reach on the one side is looked for on the other."""
    found: dict[str, float] = {}
    for step in TRIED:
        pattern = drafted_for(drafted, doubt.moved(drafted.body, key, step))
        there = _logs(pattern) if pattern else {}
        found = {
            name: (log - start[name]) / step for name, log in there.items() if name in start
        } | found
        if len(found) == len(start):
            break
    return dict.fromkeys(start, 0.0) | found


def _logs(pattern: Pattern) -> dict[str, float]:
    return {name: math.log(value) for name, value in body_side(pattern).items()}
