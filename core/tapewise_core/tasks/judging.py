"""A draft judged: mends tried for what fails, and how sure the rest is."""

from __future__ import annotations

from collections.abc import Callable

from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.how_sure import how_sure
from tapewise_core.tasks.mending import mended


def judged(drafted: Drafted, wanted: Callable[[], bool] = lambda: True) -> Drafted:
    """Return the same draft with its verdict, each proof with its share and a tried mend.

    Takes a handful of drafts, up to a few dozen for a proof that fails; safe in a worker, which
    says by ``wanted`` whether anybody still waits for it. A draft that was judged is returned as
    it is.
    """
    return how_sure(mended(drafted, wanted))
