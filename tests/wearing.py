"""Plausible bodies drafted one by one, to see how many of them a garment as cut proves right on."""

from __future__ import annotations

import numpy as np
from msgspec.structs import replace

from tapewise_core.proofs.case import Case
from tapewise_core.proofs.proof import ProofId
from tapewise_core.proofs.worn import body_side, rooms
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.following import drafted_for
from tapewise_core.tasks.people import plausible_bodies


def brute(drafted: Drafted, number: int) -> dict[tuple[ProofId, str], float]:
    """Return for what share of plausible bodies each proof holds, each body drafted itself.

    A level that the garment does not reach on a body lies far below it; a body for which the
    garment cannot be drafted is left out.
    """
    own = body_side(drafted.pattern)
    far = {name: 1e6 if name.endswith("height") else value for name, value in own.items()}
    found = []
    for body in plausible_bodies(drafted.profile, number, seed=3):
        known = drafted.body
        body = replace(body, reference=known.reference, waist_site=known.waist_site)
        pattern = drafted_for(drafted, drafted.garment.sees(body))
        if pattern is not None:
            found.append({**far, **body_side(pattern)})
    bodies = {name: np.array([one[name] for one in found]) for name in own}
    case = Case(drafted.pattern, drafted.style, drafted.cloth)
    return {about: float(np.mean(left >= 0)) for about, left in rooms(case, bodies).items()}
