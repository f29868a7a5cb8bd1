"""A hem levelled to a flared side seam, square to it and to the fold."""

from __future__ import annotations

from tapewise_core.geometry.path import Path, curved
from tapewise_core.geometry.point import Point
from tapewise_core.parts.shape.side_seam import SideSeam


def levelled(seam: SideSeam, fold: float) -> tuple[Path, Path]:
    """Return a flared seam cut where it is as long below the hip line as the fold is, and its hem.

    ``fold`` is the height of the hem at the fold [mm]. The hem leaves the seam square and meets
    the fold square, one curve (exact).
    """
    below = fold - seam.path.end.y
    above, rest = seam.path, seam.down_to(fold + 0.3 * below + 10)
    cut, _ = rest.split(above.length() + below)
    return cut, squared_hem(cut, fold)


def squared_hem(seam: Path, fold: float) -> Path:
    """Return the hem from the seam's end to the fold, square to both."""
    end = seam.end
    inward = seam.arriving().square()
    return curved(end, end + inward * (end.x * 0.35), Point(end.x * 0.4, fold), Point(0, fold))
