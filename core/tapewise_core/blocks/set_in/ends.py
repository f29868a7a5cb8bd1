"""Where both side seams end: as long as each other, and where the hem meets them square."""

from __future__ import annotations

from dataclasses import dataclass, replace

from tapewise_core.errors import DraftError
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.parts.hem import CURVED_PART
from tapewise_core.parts.hem_style import HemStyle
from tapewise_core.parts.shape.set_in import SetIn
from tapewise_core.parts.shape.side_dart import FrontSide
from tapewise_core.text.told import OptionKey, said
from tapewise_core.units import Length

LEAST_SIDE = 20.0
"""The shortest side seam that is drawn [mm] (our choice); the checks ask for more."""


@dataclass(frozen=True, slots=True)
class Sides:
    """Back and front side seam down to the hem."""

    back: Path
    front: FrontSide


def ended(drawn: SetIn, length: Length, hem: HemStyle) -> Sides:
    """Return both sides cut off at the hem; the same length comes off both.

    Near a leaning side seam the hem rises so that it meets the seam square and hangs level: by
    its last part times the lean (exact).
    """
    rise = hem.rise.mm if hem.curved else 0.0
    at = _place(drawn.back_side, length.mm - rise)
    if at < LEAST_SIDE:
        words = "The hem at {} below the nape would lie above the underarm; choose a longer {}."
        raise DraftError(said(words, length, OptionKey("body-length")))
    off = drawn.back_side.length() - at
    back = drawn.back_side.split(at)[0] if off > 1e-6 else drawn.back_side
    return Sides(back, _shortened(drawn.front_side, off))


def _place(side: Path, hem: float) -> float:
    """How far along a side its end lies, found by closing in [mm]; 0 above its start."""
    at, whole = distance_at_height(side, hem), side.length()
    at = whole if at is None and hem > side.start.y else at or 0.0
    for _ in range(6):
        point, along = side.at(at)
        found = distance_at_height(side, hem - point.x * CURVED_PART * along.x / along.y)
        at = whole if found is None else found
    return at


def _shortened(front: FrontSide, off: float) -> FrontSide:
    if off <= 1e-6:
        return front
    last = front.lower or front.upper
    kept, _ = last.split(last.length() - off)
    return replace(front, lower=kept) if front.lower else replace(front, upper=kept)


def lean(side: Path) -> float:
    """Return how a side leans at its end, outwards per downwards."""
    along = side.arriving()
    return along.x / along.y
