"""Lines, curves and paths: what splitting, walking and turning round leave as it was."""

import math

import pytest
from chance import POINTS, SHARE, VECTORS, amount, paths, segments
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from tapewise_core.geometry.chords import chords
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.segments import Cubic, Line, Segment

NEAR = 1e-6
"""What a walked distance may be off by [mm]."""


def apart(a: Point, b: Point) -> float:
    """How far two points lie from each other [mm]."""
    return (a - b).length()


@given(paths(), SHARE)
def test_a_split_path_loses_nothing(path: Path, share: float) -> None:
    """The parts' lengths add up, and they meet at the point that was walked to."""
    distance = share * path.length()
    before, after = path.split(distance)
    assert before.length() == pytest.approx(distance, abs=NEAR)
    assert before.length() + after.length() == pytest.approx(path.length(), abs=NEAR)
    assert before.end == after.start
    assert (before.start, after.end) == (path.start, path.end)
    assert apart(before.end, path.at(distance)[0]) < NEAR
    for part in (before, after):
        assert all(a.end == b.start for a, b in zip(part.segments, part.segments[1:], strict=False))


@given(paths(), SHARE)
def test_a_path_walked_backwards_passes_the_same_points(path: Path, share: float) -> None:
    """From the other end it is the rest of the way, and the other direction."""
    distance = share * path.length()
    there, along = path.at(distance)
    back, against = path.reversed().at(path.length() - distance)
    assert apart(there, back) < NEAR
    corners = [sum(s.length() for s in path.segments[:i]) for i in range(len(path.segments) + 1)]
    if min(abs(distance - corner) for corner in corners) > 0.01:
        assert along.dot(against) == pytest.approx(-1, abs=1e-4)


@given(paths(), VECTORS, POINTS, POINTS)
def test_moving_and_mirroring_keep_lengths(path: Path, by: Vector, a: Point, b: Point) -> None:
    """Paper shifted or folded over is as long as before; twice over, it lies where it lay."""
    assert path.moved(by).length() == pytest.approx(path.length(), abs=NEAR)
    assert apart(path.moved(by).at(40)[0], path.at(40)[0] + by) < NEAR
    if apart(a, b) > 1:
        image = path.mirrored(a, b)
        assert image.length() == pytest.approx(path.length(), abs=NEAR)
        assert apart(image.mirrored(a, b).at(40)[0], path.at(40)[0]) < NEAR
        middle = path.at(40)[0].toward(image.at(40)[0], 0.5)
        assert abs((middle - a).cross((b - a).unit())) < NEAR


@given(segments(), SHARE)
def test_a_length_is_the_speed_summed_up(segment: Segment, t: float) -> None:
    """An integrator that knows nothing of our nodes finds the same length."""
    if isinstance(segment, Cubic):
        wanted, _ = quad(lambda at: segment.velocity(at).length(), 0, t, epsabs=1e-10)
        whole, _ = quad(lambda at: segment.velocity(at).length(), 0, 1, epsabs=1e-10)
    else:
        wanted, whole = apart(segment.start, segment.end) * t, apart(segment.start, segment.end)
    assert segment.length_to(t) == pytest.approx(wanted, abs=NEAR)
    assert segment.length() == pytest.approx(whole, abs=NEAR)
    assert segment.parameter_at(wanted) == pytest.approx(t, abs=1e-6)


@given(segments(), SHARE)
def test_the_direction_is_where_the_next_point_lies(segment: Segment, t: float) -> None:
    """One millimetre long, along the chord of a very short walk."""
    t = min(t, 0.999)
    step = segment.at(t + 1e-5) - segment.at(t - 1e-5 if t > 1e-5 else t)
    along = segment.direction(t)
    assert along.length() == pytest.approx(1)
    assert along.dot(step.unit()) == pytest.approx(1, abs=1e-6)


@given(segments(), SHARE)
def test_two_halves_of_a_segment_are_the_segment(segment: Segment, t: float) -> None:
    """Every point of a part is the point of the whole at the same place."""
    head, tail = segment.split(t)
    for share in (0.0, 0.25, 0.5, 1.0):
        assert apart(head.at(share), segment.at(t * share)) < 1e-9
        assert apart(tail.at(share), segment.at(t + (1 - t) * share)) < 1e-9


@given(segments())
def test_chords_keep_to_the_curve(segment: Segment) -> None:
    """No point of the curve is further from the chords than promised, and the ends are its own."""
    chords = segment.flattened(0.05)
    assert (chords[0], chords[-1]) == (segment.start, segment.end)
    parameters = segment.parameters(0.05)
    for point, t in zip(chords, parameters, strict=True):
        assert apart(point, segment.at(t)) < 1e-9
    for a, b, t, u in zip(chords, chords[1:], parameters, parameters[1:], strict=False):
        middle = segment.at((t + u) / 2)
        assert abs((middle - a).cross((b - a).unit())) <= 0.05


@given(st.lists(paths(), min_size=1, max_size=4))
def test_the_chords_of_many_paths_are_those_of_each(many: list[Path]) -> None:
    """One path's after another's, its first and last point its own."""
    rows, firsts = chords(many, 0.01)
    for path, first, end in zip(many, firsts[:-1], firsts[1:], strict=True):
        points = path.flattened(0.01)
        assert rows[first:end].tolist() == [[p.x, p.y] for p in points]


@given(segments(), amount(0.1, 60))
def test_the_line_beside_a_curve_stands_off_square_to_it(segment: Segment, off: float) -> None:
    """By the curve's own directions, not its chords', and to the left of the walker."""
    beside = segment.beside(off, 0.05)
    for at, t in zip(beside, segment.parameters(0.05), strict=True):
        assert apart(at, segment.at(t) + -segment.direction(t).square() * off) < 1e-9


def test_a_handle_without_length_leaves_a_direction() -> None:
    """A curve drawn from a point straight to the other handle heads for it."""
    a, b, c = Point(0, 0), Point(30, 40), Point(90, 40)
    assert Cubic(a, a, b, c).direction(0) == Vector(0.6, 0.8)
    assert Cubic(a, b, c, c).direction(1) == Vector(1, 0)
    assert Cubic(a, a, c, c).direction(0).length() == pytest.approx(1)
    assert Cubic(a, a, a, c).direction(0).dot((c - a).unit()) == pytest.approx(1)


def test_a_walk_before_the_start_or_past_the_end_stays_there() -> None:
    """A distance too short or too long is the nearest there is."""
    curve = Cubic(Point(0, 0), Point(40, 0), Point(80, 40), Point(80, 90))
    line = Line(Point(0, 0), Point(3, 4))
    for segment in (curve, line):
        assert segment.parameter_at(-1) == 0
        assert segment.parameter_at(segment.length() + 1) == 1
    assert Line(Point(1, 1), Point(1, 1)).parameter_at(1) == 0
    here = Point(1, 1)
    assert Cubic(here, here, here, here).parameter_at(1) == 0
    assert math.isclose(Path((curve, line)).at(1e6)[0].y, 4)


L_SHAPE = ruled(Point(0, 0), Point(30, 0), Point(30, 40))


def test_a_path_split_at_a_corner_falls_into_whole_segments() -> None:
    """No part of no length is left on either side, which would have no direction."""
    before, after = L_SHAPE.split(30)
    assert before.segments == L_SHAPE.segments[:1]
    assert after.segments == L_SHAPE.segments[1:]


@pytest.mark.parametrize("distance", [70, 75])
def test_a_path_split_at_its_end_or_past_it_is_whole(distance: float) -> None:
    """All of it lies before; what is left after has no length."""
    before, after = L_SHAPE.split(distance)
    assert before.length() == 70
    assert after.start == after.end == L_SHAPE.end


def test_at_a_corner_the_way_that_led_there_counts() -> None:
    """A notch at the end of an edge stands square to that edge."""
    assert L_SHAPE.at(30) == (Point(30, 0), Vector(1, 0))
    assert L_SHAPE.at(31) == (Point(30, 1), Vector(0, 1))


@pytest.mark.parametrize("turned", [False, True])
def test_chords_are_as_many_as_the_bend_asks_for(turned: bool) -> None:
    """√(¾ · 12 / 0.05) is 13.4, so fourteen, wherever on the paper; a straight one takes one."""
    at = (Point(300, 500), Point(340, 500), Point(380, 512), Point(420, 524))
    assert len(Cubic(*(at[::-1] if turned else at)).parameters(0.05)) == 15
    even = (Point(300, 500), Point(340, 510), Point(380, 520), Point(420, 530))
    assert Cubic(*even).parameters(0.05) == [0, 1]


def test_handles_without_any_length_leave_the_chord() -> None:
    """At either end, wherever on the paper the curve lies."""
    a, c = Point(20, 30), Point(50, 70)
    assert Cubic(a, a, a, c).direction(0) == Vector(0.6, 0.8)
    assert Cubic(a, c, c, c).direction(1) == Vector(0.6, 0.8)
