"""Where the tape goes for lengths, from end mark to end mark; see :mod:`.tapes`."""

from __future__ import annotations

from tapewise_core.measures.croquis_parts import FLOOR, Pose, smooth
from tapewise_core.measures.measure import View
from tapewise_core.measures.tape import Tape, framed, line, named

NAPE = (0.0, 25.6)
SIDE_NECK = (6.8, 26.3)
SHOULDER = (18.2, 31.5)
BUST_POINT = (9.0, 48.0)
WAIST = 65.0
_OTHER_BUST_POINT = (-BUST_POINT[0], BUST_POINT[1])

_TRUNK = framed(-31, -1, 39, 94)
_UPPER = framed(-27, 6, 37, 72)
_SHOULDERS = framed(-9, 12, 37, 50)
_WHOLE = framed(-33, -2, 33, 172)

_elastic = smooth(
    (-12.8, WAIST), (-7, WAIST + 1.2), (0, WAIST + 1.6), (7, WAIST + 1.2), (12.8, WAIST)
)
_floor = line((-24, FLOOR + 0.6), (24, FLOOR + 0.6))

LONG = {
    "shoulder_length": Tape(
        view=View.FRONT,
        frame=_SHOULDERS,
        seen=smooth(SIDE_NECK, (10.2, 28.2), (14.6, 29.9), SHOULDER),
        landmarks=(named("side neck", SIDE_NECK), named("shoulder point", SHOULDER)),
    ),
    "shoulder_drop": Tape(
        view=View.FRONT,
        frame=_SHOULDERS,
        seen=line((SHOULDER[0], SIDE_NECK[1]), SHOULDER),
        guides=(line(SIDE_NECK, (24.0, SIDE_NECK[1])),),
        landmarks=(named("level ruler", (24.0, SIDE_NECK[1])), named("shoulder point", SHOULDER)),
    ),
    "arm_length": Tape(
        view=View.BACK,
        frame=framed(-46, 2, 28, 96),
        seen=smooth(
            (-18.2, 31.5), (-21.2, 33.6), (-23.4, 37.6), (-26.2, 45), (-29.6, 53), (-32.2, 59.5),
            (-32.3, 62.6), (-29.9, 66.0), (-24.9, 71.6), (-20.4, 76.6),
        ),
        landmarks=(
            named("shoulder point", (-18.2, 31.0), "left"),
            named("elbow", (-32.3, 61.5), "left"),
            named("wrist bone", (-20.4, 77.0), "left"),
        ),
        pose=Pose.ON_HIP,
    ),
    "back_waist_length": Tape(
        view=View.BACK,
        frame=_TRUNK,
        seen=line(NAPE, (0, WAIST + 1.6)),
        guides=(_elastic,),
        landmarks=(named("nape bone", NAPE), named("elastic", (12.8, WAIST))),
    ),
    "armscye_depth": Tape(
        view=View.BACK,
        frame=_TRUNK,
        seen=line(NAPE, (0, 43.5)),
        guides=(line((-16.2, 43.5), (16.2, 43.5)),),
        landmarks=(named("nape bone", NAPE), named("underarm", (16.2, 43.5))),
    ),
    "across_back": Tape(
        view=View.BACK,
        frame=_TRUNK,
        seen=line((-16.8, 38.0), (16.8, 38.0)),
        landmarks=(named("arm crease", (16.8, 38.0)),),
    ),
    "across_front": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=line((-16.4, 38.6), (16.4, 38.6)),
        landmarks=(named("arm crease", (16.4, 38.6)),),
    ),
    "front_waist_length": Tape(
        view=View.FRONT,
        frame=_TRUNK,
        seen=smooth(SIDE_NECK, (7.4, 33), (8.2, 40), BUST_POINT, (9.0, 53), (9.0, WAIST + 1)),
        guides=(_elastic,),
        landmarks=(
            named("side neck", SIDE_NECK),
            named("bust point", BUST_POINT),
            named("elastic", (12.8, WAIST)),
        ),
    ),
    "neck_to_bust_point": Tape(
        view=View.FRONT,
        frame=_UPPER,
        seen=line(SIDE_NECK, BUST_POINT),
        landmarks=(named("side neck", SIDE_NECK), named("bust point", BUST_POINT)),
    ),
    "bust_span": Tape(
        view=View.FRONT,
        frame=_UPPER,
        seen=line(_OTHER_BUST_POINT, BUST_POINT),
        landmarks=(named("bust point", BUST_POINT),),
    ),
    "hip_depth": Tape(
        view=View.SIDE,
        frame=framed(-27, -1, 33, 104),
        seen=smooth((0.4, WAIST), (-0.6, 72), (-1.4, 79), (-1.4, 84)),
        guides=(
            smooth((-7.4, WAIST), (0, WAIST + 1), (9.8, WAIST)),
            smooth((-12.7, 84), (-1.4, 85), (9.8, 84)),
        ),
        landmarks=(named("elastic", (9.8, WAIST)), named("level of the hip", (9.8, 84))),
    ),
    "height": Tape(
        view=View.SIDE,
        frame=_WHOLE,
        seen=line((-17, 0), (-17, FLOOR)),
        guides=(line((-17, -0.6), (4, -0.6)), _floor),
        landmarks=(named("crown", (4, -0.6)), named("floor", (24, FLOOR))),
    ),
    "nape_to_floor": Tape(
        view=View.BACK,
        frame=_WHOLE,
        seen=line(NAPE, (0, FLOOR)),
        guides=(_floor,),
        landmarks=(named("nape bone", NAPE), named("floor", (24, FLOOR))),
    ),
    "waist_to_floor": Tape(
        view=View.SIDE,
        frame=framed(-30, 40, 34, 173),
        seen=line((0.6, WAIST), (0.6, FLOOR)),
        guides=(smooth((-7.4, WAIST), (0, WAIST + 1), (9.8, WAIST)), _floor),
        landmarks=(named("elastic", (9.8, WAIST)), named("floor", (24, FLOOR))),
    ),
    "waist_to_knee": Tape(
        view=View.FRONT,
        frame=framed(-31, 44, 39, 138),
        seen=line((8.2, WAIST + 1), (8.2, 124.4)),
        guides=(_elastic,),
        landmarks=(named("elastic", (12.8, WAIST)), named("kneecap", (13.0, 124.4))),
    ),
}  # fmt: skip
"""Lengths by key."""
