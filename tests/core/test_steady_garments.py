"""A centimetre more of a girth: every seam of a garment moves little, none the wrong way."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

import numpy as np
import pytest
from people_made_up import AVERAGE, bodies

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.errors import DraftError
from tapewise_core.garments.shelf import garment
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.measures.body import Body, Value
from tapewise_core.measures.catalogue import NAMES
from tapewise_core.style.settle import settle
from tapewise_core.units import Unit

MOST = 6.0
"""A quarter's seam moves by no more [mm], whatever limit begins or ends to bind."""

BACK = 1.5
"""Between the levels a seam may give way by so much where another curve takes over [mm]: less than
a tape can tell. At the levels themselves it never does."""

CURVE = 90.0
"""Above this below its underarm point a grown-on side is the underarm's own curve [mm]."""

TRUNK = ("bust", "waist", "hip", "high_bust")
GIRTHS = (*TRUNK, "upper_arm")

BUILDS = (
    {},
    {"bust": 112.0, "high_bust": 96.0, "waist": 80.0, "hip": 104.0, "upper_arm": 31.0},
    {"bust": 84.0, "high_bust": 82.0, "waist": 66.0, "hip": 112.0},
    {"bust": 108.0, "high_bust": 102.0, "waist": 112.0, "hip": 106.0, "upper_arm": 36.0},
    {"bust": 78.0, "high_bust": 77.0, "waist": 62.0, "hip": 86.0, "upper_arm": 22.5},
    {"bust": 96.0, "high_bust": 93.0, "waist": 94.5, "hip": 95.0},
)
"""What differs from the middle woman [cm]: nothing; a full bust, pear, apple, thin, straight."""


@cache
def measures() -> tuple[dict[str, float], ...]:
    """Return the builds' measures, and some made up at random."""
    made = [{key: value.cm for key, value in one.values.items()} for one in bodies(4, 17)]
    full = [{**one, "high_bust": one.get("high_bust", one["bust"] - 3)} for one in made]
    return (*({**AVERAGE, **build} for build in BUILDS), *full)


def drafted(page: str, taken: Mapping[str, float], asked: Mapping[str, str]) -> Pattern | None:
    """Return a pattern, or None where its sleeve is refused."""
    chosen = garment(page)
    values = {key: Value(value) for key, value in taken.items()}
    body = chosen.sees(Body(MappingProxyType(values), NAMES))
    try:
        return chosen.draft(body, settle(chosen.options, asked, body, Unit.CM))
    except DraftError:
        return None


def side(piece: Piece, y: float) -> float:
    """Return how far from the fold the side lies at a height [mm]; in a dart's mouth, nan."""
    met = (point_at_height(e.path, y) for e in piece.edges if e.name in ("side", "side_2"))
    return next((point.x for point in met if point), np.nan)


def quarters(pattern: Pattern, heights: np.ndarray) -> np.ndarray:
    """Return half of back and front together at heights: a quarter of the girth [mm]."""
    halves = [pattern.piece(name) for name in ("back", "front")]
    return np.array([sum(side(half, y) for half in halves) / 2 for y in heights])


@pytest.mark.parametrize("shaping", ["50", "100"])
@pytest.mark.parametrize("page", ["set-in-top", "jersey-top", "flared-dress"])
def test_a_centimetre_of_girth_moves_the_side_little_and_the_right_way(
    page: str, shaping: str
) -> None:
    """At 21 heights no quarter moves by more than 6 mm, nor back by a millimetre; bust, waist and
    hip get no smaller. A grown-on side answers to the arm as well: it is looked at below its
    underarm's curve, and for the trunk's own girths."""
    asked = {"waist-shaping": shaping, "bust-room": "none"}
    asked |= {"sleeve": "short" if page == "set-in-top" else "long"}
    compared = 0
    for taken in measures():
        before = drafted(page, taken, asked)
        for key in GIRTHS if page == "set-in-top" else TRUNK:
            after = drafted(page, {**taken, key: taken[key] + 1}, asked)
            if before is None or after is None:
                continue
            paths = [made.piece("back").edge("side").path for made in (before, after)]
            top = max(path.start.y for path in paths) + (1 if page == "set-in-top" else CURVE)
            heights = np.linspace(top, min(path.end.y for path in paths) - 1, 21)
            moved = quarters(after, heights) - quarters(before, heights)
            assert np.nanmax(moved) <= MOST, (taken, key)
            assert np.nanmin(moved) >= -BACK, (taken, key)
            levels = zip(before.facts.levels, after.facts.levels, strict=True)
            for old, new in levels:
                own = key in TRUNK or old.name == "upper_arm"
                aimed = own and (old.name in ("waist", "hip") or page == "set-in-top")
                if old.asked is not None and aimed and old.name != "sleeve_hem":
                    assert new.given >= old.given - 0.1, (taken, key, old.name)
            compared += 1
    assert compared > 30


def test_an_arm_moves_its_armhole_and_sleeve_little() -> None:
    """A centimetre of arm, bust or high bust: no leap of underarm, armhole, cap or sleeve."""
    for taken in measures():
        before = drafted("set-in-top", taken, {})
        for key in ("upper_arm", "bust", "high_bust"):
            after = drafted("set-in-top", {**taken, key: taken[key] + 1}, {})
            assert before is not None
            assert after is not None
            for name in ("back", "front"):
                old, new = (made.piece(name).points["underarm"] for made in (before, after))
                assert (new - old).length() <= 2 * MOST, (taken, key, name)
            caps = [made.piece("sleeve").length("cap") for made in (before, after)]
            assert abs(caps[1] - caps[0]) <= 25, (taken, key)
