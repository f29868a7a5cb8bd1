"""A change that moves nothing, because the pattern has no further to go there."""

from __future__ import annotations

from tapewise_core.tasks.adjusting import used_told
from tapewise_core.tasks.fitting import Trial
from tapewise_core.text.told import Told, capital, ended, said

STILL = said("Nothing moves: this pattern goes no further there.")


def still_told(trial: Trial) -> tuple[Told, ...]:
    """Return that a change moves nothing, and what the draft says about it; nothing where any
    line moves."""
    before, after = trial.before, trial.after
    if before.pattern.pieces != after.pattern.pieces:
        return ()
    own = {ended(capital(one)) for one in used_told(after.applied, after.made)}
    known = own | set(before.pattern.remarks)
    return (STILL, *(one for one in after.pattern.remarks if one not in known))
