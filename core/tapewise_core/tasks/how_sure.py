"""How sure a draft's proofs are, as far as what was not measured leaves it open.

The unmeasured scatter together (:mod:`tapewise_core.statistics.joint`). The garment is drafted
once more with estimates one spread away, to see by what share each number of the body follows
them; so many bodies are drawn that a percent does not matter, and each wears the garment as it is
cut (:mod:`tapewise_core.proofs.worn`).
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from msgspec.structs import replace

from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import Which
from tapewise_core.proofs.verdict import verdict
from tapewise_core.proofs.worn import Many, rooms
from tapewise_core.tasks.doubt import Doubt, doubt_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.following import Following, following

BODIES = 2000
"""So many are drawn: a share of a half is then off by one percent."""

FEWER = 1000
"""So many are enough to compare what measures are worth."""


WORTH_TAKING = 0.01
"""A measure helps where taking it makes the proofs surer by so much in all (our choice)."""


def how_sure(drafted: Drafted) -> Drafted:
    """Return the same draft with each proof as sure as it is, and the verdict on them all.

    Takes a handful of drafts; safe in a worker. A draft that has its verdict is returned as it is.
    """
    if drafted.verdict is not None:
        return drafted
    doubt = doubt_of(drafted)
    if not doubt.keys:
        return replace(drafted, verdict=verdict(drafted.proofs))
    case = Case(drafted.pattern, drafted.style, drafted.cloth)
    model, drawn = following(drafted, doubt), doubt.draw(BODIES)
    sure = _shares(case, model.of(drawn))
    proofs = tuple(replace(proof, sure=sure.get(proof.which, 1.0)) for proof in drafted.proofs)
    return replace(drafted, proofs=proofs, verdict=verdict(proofs, _helps(case, model, doubt)))


def _helps(case: Case, model: Following, doubt: Doubt) -> str | None:
    """The estimate whose measuring makes all proofs surest together, if any does."""
    drawn = doubt.draw(FEWER)

    def sure(bodies: Many) -> float:
        return sum(_shares(case, model.of(bodies)).values())

    now = sure(drawn)
    gains = {key: sure(doubt.knowing(key, drawn)) - now for key in doubt.keys}
    best = max(gains, key=lambda key: gains[key])
    return best if gains[best] >= WORTH_TAKING else None


def _shares(case: Case, bodies: Mapping[str, Many]) -> dict[Which, float]:
    """The share of bodies for which each proof holds."""
    return {about: float(np.mean(left >= 0)) for about, left in rooms(case, bodies).items()}
