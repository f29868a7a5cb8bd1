"""A person in line art, on whom figures show where the tape goes."""

from __future__ import annotations

from functools import lru_cache

from tapewise_core.measures import croquis_level, croquis_side
from tapewise_core.measures.build import Build, Kind, shaped_croquis
from tapewise_core.measures.croquis_parts import Croquis, Pose
from tapewise_core.measures.measure import View


@lru_cache(maxsize=64)
def croquis(view: View, pose: Pose = Pose.HANGING, build: Build | None = None) -> Croquis:
    """Return the figure from one side, in somebody's build, else as it is drawn."""
    if view is View.SIDE:
        seen = croquis_side.SIDE
    else:
        breast = build is None or build.kind is Kind.WOMAN
        seen = croquis_level.seen(view, pose, breast=breast)
    return seen if build is None else shaped_croquis(seen, view, build)
