"""An independent hand drafts every garment from its printed words and comes out at the pattern."""

import math
import random
import re
from collections.abc import Iterator
from functools import cache
from itertools import chain

import pytest
from hand_compares import Apart, asked_by_chance, compared, in_words
from msgspec.structs import replace
from people_made_up import made_up

from tapewise_core.drafting.by_hand import by_hand
from tapewise_core.drafting.curve_steps import Curve
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.guide_steps import Beside
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.steps import Straight
from tapewise_core.drafting.told_steps import told_steps
from tapewise_core.errors import TapewiseError
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garment, garments
from tapewise_core.geometry.path import curved
from tapewise_core.geometry.point import Point
from tapewise_core.style.settle import settle
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit, mm

LIMIT = {Unit.CM: 2.0, Unit.IN: 6.0}
"""The hand's line lies nowhere further from the pattern's [mm]. In inches every number may be off
by a sixteenth, 1.6 mm, and a point rests on several."""

COUNT = 12

GARMENTS = garments()


def patterns(page: Garment) -> tuple[Pattern, ...]:
    """A garment drafted for made-up builds with options by chance, refusals left out."""
    return _drafted(page.name)


@cache
def _drafted(name: str) -> tuple[Pattern, ...]:
    return tuple(_patterns(garment(name), random.Random(11)))


@cache
def _by_hand(name: str) -> tuple[tuple[Draft, ...], ...]:
    """The same garment's drafts with all that a hand is told, for readers of both units."""
    return tuple(tuple(map(by_hand, pattern.drafts)) for pattern in _drafted(name))


def told(page: Garment) -> Iterator[Draft]:
    """Every draft of those patterns with all that a hand is told."""
    return chain.from_iterable(_by_hand(page.name))


def _patterns(page: Garment, rng: random.Random) -> Iterator[Pattern]:
    found = 0
    while found < COUNT:
        body, asked = page.sees(made_up(rng)), asked_by_chance(page, rng)
        try:
            style = settle(page.options, asked, body, Unit.CM)
            if page.agree(body, style):
                continue
            made = page.draft(body, style)
        except TapewiseError:
            continue
        found += 1
        yield made


def worst(found: list[Apart]) -> Apart:
    """The line that is furthest off."""
    return max(found, key=lambda apart: apart.worst)


@pytest.mark.parametrize("page", GARMENTS, ids=lambda page: page.name)
@pytest.mark.parametrize("unit", Unit)
def test_a_hand_that_reads_only_the_words_draws_the_pattern(page: Garment, unit: Unit):
    """Points, distances, directions and “one smooth line”, as printed, rounded as printed."""
    for pattern, drafts in zip(patterns(page), _by_hand(page.name), strict=True):
        found = worst(compared(pattern, unit, told=drafts))
        assert found.worst < LIMIT[unit], (found, pattern.title)


@pytest.mark.parametrize("page", GARMENTS, ids=lambda page: page.name)
def test_pieces_have_no_edge_that_was_not_drawn(page: Garment):
    """What is cut is what was drafted: each edge lies on a line of its draft, or on its fold."""
    for pattern in patterns(page):
        assert max(in_words(pattern).values()) < 0.05


def _faulty(pattern: Pattern, fault: str) -> Pattern:
    """The pattern with one thing told wrong in its first draft, its true lines kept."""
    draft = by_hand(pattern.drafts[0])
    steps = []
    for step in draft.steps:
        if fault == "point" and isinstance(step, Beside):
            first, *rest = step.places
            step, fault = replace(step, places=(replace(first, out=first.out + mm(6)), *rest)), ""
        if fault == "direction" and isinstance(step, Curve) and step.ways[0]:
            wrong = f"at 60° to {step.names[0]}–{step.names[-1]}, downwards"
            step, fault = replace(step, ways=((wrong,), step.ways[1])), ""
        steps.append(step)
    assert not fault
    return replace(pattern, drafts=(Draft(draft.title, tuple(steps), draft.papers),))


@pytest.mark.parametrize("fault", ["point", "direction"])
def test_a_wrong_number_is_seen(fault: str):
    """Half a centimetre on one point, or another direction at one end, and it comes out wrong."""
    pattern = next(p for p in patterns(GARMENTS[0]) if p.drafts[0].title == "Back")
    plain = replace(pattern, drafts=(by_hand(pattern.drafts[0]),))
    assert worst(compared(plain, told=plain.drafts)).worst < 2.0
    faulty = _faulty(pattern, fault)
    assert worst(compared(faulty, told=faulty.drafts)).worst > 2.0


@pytest.mark.parametrize("page", GARMENTS, ids=lambda page: page.name)
def test_letters_are_single_capitals_with_numbers(page: Garment):
    """So that they can be read aloud: no small letter, no twin in another case."""
    for draft in told(page):
        for name in draft.paper.points:
            assert name[0].isupper(), name
            assert name[1:].isdigit() or len(name) == 1, name


@pytest.mark.parametrize("page", GARMENTS, ids=lambda page: page.name)
def test_points_of_a_curve_are_numbered_in_order(page: Garment):
    """C1, C2 … along each curve as it is drawn."""
    for draft in told(page):
        for step in draft.steps:
            if isinstance(step, Curve):
                own = [int(name[1:]) for name in step.names if name[0] == "C"]
                assert own == sorted(own)


def test_more_than_three_points_stand_in_a_table():
    """A sentence of three can be followed, a longer one not."""
    rows = [
        step.rows
        for draft in told(GARMENTS[0])
        for step in told_steps(draft, Reader(Unit.CM))
        if step.rows
    ]
    assert rows
    assert min(map(len, rows)) > 3


def test_points_at_one_place_are_told_once():
    """A named point at a curve's end, or none in between: nothing is divided by no distance."""
    path = curved(Point(0, 0), Point(60, 0), Point(100, 40), Point(100, 100))
    draft = Draft("x").start("A", "here").across("A", "B", mm(100), "there")
    draft = draft.down("B", "D", mm(100), "below").inward("B", "E", mm(99.999), "near A")
    told = by_hand(draft.curve("side", path, ("A", "E", "D")))
    curve = told.steps[-1]
    assert isinstance(curve, Curve)
    assert curve.names[0] == "A"
    assert curve.names[-1] == "D"
    assert "E" not in curve.names


def test_a_point_that_is_no_point_of_the_curve_is_left_out():
    """A corner that is rounded off is near the curve and not on it."""
    path = curved(Point(0, 0), Point(60, 0), Point(100, 40), Point(100, 100))
    draft = Draft("x").start("A", "here").across("A", "B", mm(100), "the corner")
    told = by_hand(draft.down("B", "D", mm(100), "below").curve("side", path, ("A", "B", "D")))
    curve = told.steps[-1]
    assert isinstance(curve, Curve)
    assert "B" not in curve.names


def worked(text: str) -> tuple[float, float] | None:
    """What a printed working comes to with a calculator, and what is printed as its result [cm]."""
    found = re.search(r"measure (?:.*?) ([^;]+) = (−?[\d.]+) cm; mark", text)
    if not found or not re.search(r"[×÷+−]", found[1]):
        return None
    plain = re.sub(r"tan ([\d.]+)°", lambda m: str(math.tan(math.radians(float(m[1])))), found[1])
    plain = plain.translate(str.maketrans({"×": "*", "÷": "/", "−": "-"}))
    sums = re.search(r"[(\d].*$", re.sub(r"[A-Za-z'’,–]+\d*", "", plain))
    return (float(eval(sums[0].strip())), float(found[2])) if sums else None


@pytest.mark.parametrize("page", GARMENTS, ids=lambda page: page.name)
def test_a_printed_working_comes_to_the_printed_result(page: Garment):
    """With the person's own numbers, brackets where they are needed; rounding aside."""
    seen = 0
    for draft in told(page):
        for step in told_steps(draft, Reader(Unit.CM)):
            if found := worked(step.text):
                assert found[0] == pytest.approx(found[1], abs=0.25, rel=2e-3), step.text
                seen += 1
    assert seen > 10


@pytest.mark.parametrize(("rise", "ruled"), [(0.5, True), (4.0, False)])
def test_what_hardly_bends_is_ruled(rise: float, ruled: bool):
    """Nobody draws a curve that is as flat as a pencil is wide."""
    path = curved(Point(0, 0), Point(80, 0), Point(120, rise), Point(200, rise))
    draft = Draft("x").start("A", "here").across("A", "B", mm(200), "there")
    told = by_hand(draft.down("B", "D", mm(rise), "below").curve("hem", path, ("A", "D")))
    assert isinstance(told.steps[-1], Straight) is ruled
