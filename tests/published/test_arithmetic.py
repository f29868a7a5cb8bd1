"""Arithmetic that anyone can redo, and worked examples with their sources."""

import math

import pytest
from making import top

from tapewise_core.geometry.path import curved
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Cubic
from tapewise_core.lay.buying import purchase
from tapewise_core.lay.lay import lay_of
from tapewise_core.text.typed import parse_length
from tapewise_core.units import MM_PER_INCH, Unit


def test_the_inch_is_25_4_mm() -> None:
    """International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly, so 1 in = 25.4 mm."""
    assert pytest.approx(914.4, abs=1e-12) == 36 * MM_PER_INCH
    assert parse_length("36 in", Unit.CM) == 914.4


@pytest.mark.parametrize(("degrees", "drop"), [(20, 2 * 3.64), (22, 2 * 4.04)])
def test_a_slope_is_set_off_by_its_tangent(degrees: float, drop: float) -> None:
    """Exact: 20 degrees over 10 drop 3.64, 22 drop 4.04; here over a run of 20.

    The overarm falls 4 degrees less than the shoulder.
    """
    fall = 13.0 * math.sin(math.radians(degrees + 4))
    back = top(shoulder_length=13.0, shoulder_drop=fall).pattern.drafts[0]
    assert (back["L"].y - back["K"].y) / 10 == pytest.approx(drop, abs=0.01)


def test_the_shoulder_drops_as_its_slope_says() -> None:
    """Exact: a shoulder 12 long at 20 degrees drops 4.10; the overarm falls 4 degrees less."""
    drafted = top(shoulder_length=12.0, shoulder_drop=4.104)
    back = drafted.pattern.piece("back")
    along = back.edge("shoulder").path.leaving()
    assert math.degrees(math.atan2(along.y, along.x)) == pytest.approx(16.0, abs=0.01)


def test_a_neckline_of_quarter_ellipses_against_numerical_integration() -> None:
    """Half width 9, back drop 2.2, front drop 9: 47.5 all round by scipy's quadrature.

    Our cubics stand within a third of a millimetre of the ellipses' lengths.
    """
    from scipy.integrate import quad

    def quarter(a: float, b: float) -> float:
        length, _ = quad(lambda t: math.hypot(a * math.sin(t), b * math.cos(t)), 0, math.pi / 2)
        return float(length)

    whole = 2 * (quarter(90, 22) + quarter(90, 90))
    assert whole == pytest.approx(475, abs=0.5)
    k = 4 * (math.sqrt(2) - 1) / 3
    ours = 2 * sum(
        curved(Point(0, b), Point(90 * k, b), Point(90, b * k), Point(90, 0)).length()
        for b in (22, 90)
    )
    assert ours == pytest.approx(whole, abs=0.35)


def test_a_drafted_neckline_against_numerical_integration() -> None:
    """The neckline that is proved is as long as scipy's quadrature of its own Bézier speed."""
    from scipy.integrate import quad

    edges = [piece.edge("neckline") for piece in top().pattern.pieces[:2]]
    curves = [s for edge in edges for s in edge.path.segments if isinstance(s, Cubic)]
    assert len(curves) >= 2
    for curve in curves:
        reference, _ = quad(lambda t, c=curve: c.velocity(t).length(), 0, 1, epsabs=1e-10)
        assert curve.length() == pytest.approx(reference, abs=1e-6)


def test_cloth_that_shrinks_is_bought_longer() -> None:
    """Exact: 200 at 5 % asks for 210.5 and at 8 % for 217.4; bought in steps of 5 cm."""
    assert pytest.approx(210.5, abs=0.05) == 200 / 0.95
    drafted = top({"shrinkage": "8"})
    needed = purchase(lay_of(drafted.pattern, drafted.cloth), drafted.cloth, Unit.CM)
    assert needed.buy >= needed.length / 0.92
    assert needed.buy - needed.length / 0.92 < 50


def test_half_the_neckband_quarter_marks_lie_before_the_shoulder() -> None:
    """Common practice: the halfway marks fall in front of the shoulder seams, never on them."""
    front = top().pattern.piece("front")
    halfway = next(n for n in front.notches if n.pair == "neck halfway")
    assert 10 < front.length("neckline") - halfway.distance < front.length("neckline") / 2


def test_a_grown_on_underarm_lies_below_a_set_in_one() -> None:
    """[rosenfeld]: 3.8 to 5 cm below a set-in armhole.

    A set-in armhole lies about at the armscye line (common practice), so the
    drafted long sleeve of a middle build should be near: within 1 cm of that span.
    """
    facts = top({"sleeve-length": "55"}).pattern.facts.underarm
    below = (facts.level - facts.armscye) / 10
    assert 2.8 <= below <= 7.0
