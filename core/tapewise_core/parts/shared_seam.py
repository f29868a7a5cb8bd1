"""One side seam drawn as the back's and as the front's: moved by their shares of the cup."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.guide_steps import Shift, Shifted
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.parts.seam_steps import HAIR, PLACES, SEAM
from tapewise_core.parts.shape.shares import Share


def shared_line(
    draft: Draft, seam: Path, traced: Path, share: Share, line: str | None, called: str = "side"
) -> Draft:
    """Return the draft with the seam moved by the front's or the back's share of the cup.

    ``traced`` is the path that comes of it; ``line`` its name, None for a guide that is changed
    afterwards, which is ``called`` so.
    """
    sign = 1.0 if traced.start.x > seam.start.x else -1.0
    places = []
    for number, (name, y) in enumerate(_heights(seam, share), start=1):
        at = point_at_height(seam, y)
        if at is not None:
            to = Point(at.x + sign * share.at(y), y)
            places.append(Shift(name, f"V{number}", at, to))
    how = "outwards" if sign > 0 else "inwards"
    return draft.then(Shifted(SEAM, how, line, called, traced, tuple(places), _where(places)))


def _where(places: list[Shift]) -> str:
    """Where the places without a point of the seam's own lie."""
    names = [place.start for place in places if place.start.startswith("P")]
    if not names:
        return ""
    way = ("a quarter", "half", "three quarters")[: len(names)]
    each = ", ".join(f"{name} {part}" for name, part in zip(names, way, strict=True))
    return f" (on the line, of the way down from the bust line to the hip line, {each})"


def _heights(seam: Path, share: Share) -> Iterator[tuple[str, float]]:
    """The underarm, the bust line, three places below it, the hip line, with their points."""
    yield "Q1", seam.start.y
    way = share.hip_level - share.bust_level
    for name, part in (("Q2", 0.0), *((f"P{i}", p) for i, p in enumerate(PLACES, 1)), ("Q4", 1.0)):
        y = share.bust_level + part * way
        if y <= seam.end.y + HAIR:
            yield name, y
