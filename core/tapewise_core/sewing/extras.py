"""Sewing pockets into the side seams, and a belt to tie.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.sewing.work import Work
from tapewise_core.text.told import About, Told, said


def pocket(work: Work) -> tuple[Told, ...]:
    """Pockets set to the sides before those are closed round their bags."""
    return (
        said(
            "Stay the front's pocket openings with woven tape along the stitch line, from notch to "
            "notch. Sew a pocket piece to each side of front and back, its opening between the two "
            "notches, right sides together, {} from the edge: {}. Press the pocket pieces "
            "outwards.",
            work.at,
            work.stitching.seam,
        ),
    )


def belt(work: Work) -> tuple[Told, ...]:
    """Belt and loops."""
    return (
        said(
            "Fold the belt lengthwise, right sides together, and sew both ends and the long edge, "
            "{} from the edge, leaving about {} open in the middle: {}. Turn it through the gap, "
            "press, and close the gap by hand. Work a thread loop at each side between the two "
            "marks.",
            work.at,
            About(80),
            work.stitching.seam,
        ),
    )
