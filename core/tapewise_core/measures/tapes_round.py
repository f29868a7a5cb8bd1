"""Where the tape goes for girths; the hidden half lies behind the body. See :mod:`.tapes`."""

from __future__ import annotations

from tapewise_core.measures.croquis_parts import smooth
from tapewise_core.measures.measure import View
from tapewise_core.measures.tape import Tape, around, framed, named

_HEAD = framed(-19, -3, 19, 40)
_TRUNK = framed(-31, -1, 39, 94)

_head = around((-8.0, 9.4), (10.2, 6.4), 1.5)
_bust = around((-15.9, 46.4), (15.9, 46.4), 3.0)
_under_bust = around((-14.7, 53.6), (14.7, 53.6), 2.8)
_waist = around((-12.8, 65.0), (12.8, 65.0), 2.6)
_hip = around((-12.7, 84.0), (9.8, 84.0), 3.0)
_high_hip = around((-14.6, 73.0), (14.6, 73.0), 2.8)
_over_shoulder = around((-22.6, 39.0), (22.6, 39.0), 3.4)
_upper_arm = around((17.5, 49.2), (23.4, 47.6), 1.1)
_wrist = around((25.8, 85.8), (30.1, 84.6), 0.9)

ROUND = {
    "head": Tape(
        view=View.SIDE,
        frame=_HEAD,
        seen=_head[0],
        hidden=_head[1],
        landmarks=(
            named("forehead", (10.4, 6.4)),
            named("bump behind", (-8.2, 9.4), "left"),
        ),
    ),
    "neck": Tape(
        view=View.FRONT,
        frame=_HEAD,
        seen=smooth(
            (-6.8, 26.3), (-5.8, 28.6), (-3.4, 30.6), (0, 31.3),
            (3.4, 30.6), (5.8, 28.6), (6.8, 26.3),
        ),
        hidden=smooth((-6.8, 26.3), (-4.0, 25.0), (0, 24.5), (4.0, 25.0), (6.8, 26.3)),
        landmarks=(
            named("side neck", (6.8, 26.3)),
            named("pit of the neck", (0, 32.6)),
            named("nape bone", (0, 24.5), "left"),
        ),
    ),
    "over_shoulder_girth": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=_over_shoulder[0],
        hidden=_over_shoulder[1],
        landmarks=(
            named("shoulder point", (18.2, 31.5)),
            named("roundest part", (22.6, 39.4)),
        ),
    ),
    "high_bust": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=smooth((-16.2, 43.2), (-11, 41.3), (0, 40.2), (11, 41.3), (16.2, 43.2)),
        hidden=smooth((-16.2, 43.2), (0, 44.0), (16.2, 43.2)),
        landmarks=(named("armpit crease", (16.2, 43.2)),),
    ),
    "bust": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=_bust[0],
        hidden=_bust[1],
        landmarks=(named("bust points", (15.9, 46.8)),),
    ),
    "under_bust": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=_under_bust[0],
        hidden=_under_bust[1],
        landmarks=(named("below the breast", (14.6, 54.0)),),
    ),
    "waist": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=_waist[0],
        hidden=_waist[1],
        landmarks=(named("elastic", (12.8, 65.0)),),
    ),
    "high_hip": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=_high_hip[0],
        hidden=_high_hip[1],
        landmarks=(named("hip bone", (14.6, 73.0)),),
    ),
    "hip": Tape(
        view=View.SIDE,
        frame=framed(-27, -1, 33, 104),
        seen=_hip[0],
        hidden=_hip[1],
        landmarks=(named("seat", (-12.7, 84.0), "left"),),
    ),
    "upper_arm": Tape(
        view=View.FRONT,
        frame=framed(-8, 20, 42, 72),
        seen=_upper_arm[0],
        hidden=_upper_arm[1],
        landmarks=(
            named("shoulder point", (18.4, 31.6)),
            named("halfway", (23.4, 47.6)),
            named("elbow", (25.8, 62.0)),
        ),
    ),
    "wrist": Tape(
        view=View.FRONT,
        frame=framed(2, 62, 50, 110),
        seen=_wrist[0],
        hidden=_wrist[1],
        landmarks=(named("wrist bone", (30.1, 84.6)),),
    ),
}  # fmt: skip
"""Girths by key."""
