"""A person in line art, on whom figures show where the tape goes."""

from __future__ import annotations

from tapewise_core.measures import croquis_level, croquis_side
from tapewise_core.measures.croquis_parts import Croquis, Pose
from tapewise_core.measures.measure import View


def croquis(view: View, pose: Pose = Pose.HANGING) -> Croquis:
    """Return the figure from one side."""
    return croquis_side.SIDE if view is View.SIDE else croquis_level.seen(view, pose)
