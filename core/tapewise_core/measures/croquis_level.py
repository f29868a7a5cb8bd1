"""The figure from the front and from the back, which share one silhouette."""

from __future__ import annotations

from functools import cache

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.croquis_parts import Croquis, Pose, both, smooth
from tapewise_core.measures.measure import View

_HEAD = smooth(
    (0, 0), (4.4, 1.0), (7.1, 4.4), (7.6, 9), (7.1, 14), (5.4, 18.8), (2.6, 22.0), (0, 22.7)
)
_EAR = smooth((7.5, 10.2), (8.6, 9.8), (8.7, 12.2), (7.1, 14.8))
_NECK = smooth(
    (5.2, 19.2), (5.1, 22), (5.5, 24.4), (6.8, 26.3), (10.2, 28.2), (14.6, 29.9), (18.2, 31.5)
)
_ARM_OUT = smooth(
    (18.2, 31.5), (21.0, 34.0), (22.5, 38.5), (23.1, 46), (24.2, 54), (25.8, 61.5), (27.4, 67),
    (29.0, 75), (30.2, 85.5),
)  # fmt: skip
_ARM_IN = smooth(
    (16.2, 43.5), (17.2, 47.5), (19.3, 55), (20.9, 62), (22.2, 67), (23.8, 75), (25.9, 86.2)
)
_HAND = smooth(
    (30.2, 85.5), (31.3, 89), (32.1, 94.5), (31.9, 100), (30.4, 104.4), (29.2, 104.3), (27.9, 99.5),
    (27.0, 96.5), (26.3, 98.2), (25.4, 98.3), (25.0, 94.5), (25.6, 90), (25.9, 86.2),
)  # fmt: skip
_SIDE = smooth(
    (16.2, 43.5), (15.7, 48), (14.5, 54), (13.0, 61), (12.8, 65), (14.0, 71), (16.3, 78),
    (17.5, 85), (17.5, 92), (16.2, 104), (14.0, 116), (12.9, 123.5), (13.3, 132), (12.9, 139),
    (10.9, 152), (10.0, 161), (11.2, 166), (11.8, 168.6), (10.8, 169.8),
)  # fmt: skip
_INSIDE = smooth(
    (0, 91.2), (1.1, 93.4), (1.7, 99), (2.4, 110), (3.3, 121), (3.4, 125), (2.7, 134), (3.6, 145),
    (5.0, 158), (4.9, 163), (3.9, 167.5), (4.4, 169.8),
)  # fmt: skip
_SOLE = smooth((4.4, 169.8), (7.6, 170), (10.8, 169.8))

_BENT_OUT = smooth(
    (18.2, 31.5), (21.2, 33.6), (23.4, 37.6), (26.2, 45), (29.6, 53), (32.2, 59.5), (32.3, 62.6),
    (29.9, 66.0), (24.9, 71.6), (20.4, 76.6),
)  # fmt: skip
_BENT_IN = smooth(
    (16.2, 43.5), (18.6, 48.5), (22.0, 55.5), (24.3, 60.0), (21.2, 65.2), (17.0, 72.4)
)
_BENT_HAND = smooth(
    (20.4, 76.6), (18.6, 79.6), (14.6, 82.4), (10.8, 84.0), (9.7, 82.6), (11.4, 80.0), (12.8, 77.0),
    (12.0, 74.8), (13.4, 73.2), (17.0, 72.4),
)  # fmt: skip

_TRUNK = (_HEAD, _EAR, _NECK, _SIDE, _INSIDE, _SOLE)

_BREAST = both(smooth((3.0, 49.0), (5.6, 51.6), (9.2, 52.3), (12.4, 51.0), (14.2, 48.0)))
_CHEST = both(smooth((4.4, 48.4), (7.4, 49.2), (10.6, 48.6)))
_FRONT_DETAILS = (
    *both(
        smooth((16.9, 84.6), (10.5, 87.4), (4.4, 91.4), (1.6, 95.2)),
    ),
    smooth((-7.3, 6.6), (-4.5, 4.9), (-0.6, 4.1), (3.6, 4.6), (7.3, 6.6)),
)
_FRONT_FINE = (
    *both(
        smooth((1.9, 31.4), (5.5, 30.6), (9.5, 30.7), (13.6, 30.4)),
        smooth((1.9, 10.4), (3.1, 9.9), (4.4, 10.5)),
        smooth((5.4, 126.2), (8.0, 127.4), (10.6, 126.2)),
    ),
    smooth((0.4, 11.5), (0.9, 14.3), (-0.4, 14.6)),
    smooth((-2.0, 17.9), (0, 18.3), (2.0, 17.9)),
    smooth((0, 69.6), (0.0, 70.6)),
)
_BACK_DETAILS = (
    *both(smooth((1.2, 92.4), (5.0, 94.2), (9.6, 93.8), (13.2, 91.4))),
    smooth((-5.2, 19.4), (-3.2, 21.0), (0, 21.6), (3.2, 21.0), (5.2, 19.4)),
    smooth((0, 79.6), (0, 85), (0, 91.2)),
)
_BACK_FINE = (
    *both(
        smooth((4.4, 37.4), (5.0, 41.5), (7.0, 45.4), (10.4, 46.0)),
        smooth((5.2, 124.4), (8.0, 123.6), (10.6, 124.2)),
    ),
    smooth((0, 48.0), (0.0, 62)),
)


@cache
def seen(view: View, pose: Pose, *, breast: bool = True) -> Croquis:
    """Return the figure from the front or the back; the bent arm is on the left as seen."""
    front = view is View.FRONT
    details, fine = (_FRONT_DETAILS, _FRONT_FINE) if front else (_BACK_DETAILS, _BACK_FINE)
    details = (*(_BREAST if breast else _CHEST), *details) if front else details
    right = (_ARM_OUT, _ARM_IN, _HAND)
    left = right if pose is Pose.HANGING else (_BENT_OUT, _BENT_IN, _BENT_HAND)
    return Croquis((*both(*_TRUNK), *right, *map(_other_side, left)), details, fine)


def _other_side(path: Path) -> Path:
    return path.mirrored(Point(0, 0), Point(0, 1))
