"""Cut lines at hard corners, and the check that measures them again."""

import math

import pytest

from tapewise_core.geometry.cut_check import allowances_off
from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Margin, box_of, is_simple
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.geometry.rows import points, rows
from tapewise_core.geometry.teeth import teeth


def half(hem: Path, side: Path, wide: float = 25.0) -> list[Margin]:
    """A half on the fold: neck edge, a side running down into a turned hem, the fold."""
    top = Point(0, 0)
    return [
        Margin(ruled(top, side.start), 8),
        Margin(side, 8),
        Margin(hem, wide, turned=True),
        Margin(ruled(hem.end, top), 0, fold=True),
    ]


def swinging(bend: float, lean: float) -> list[Margin]:
    """A hem that swings up to a side that leans outwards, as under a full bust's sleeve."""
    corner = Point(200 + lean, 300)
    side = ruled(Point(200, 0), corner)
    hem = curved(corner, corner + (corner - Point(200, 0)).unit().square() * 60,
                 Point(80, 300 + bend), Point(0, 300 + bend))  # fmt: skip
    return half(hem, side)


@pytest.mark.parametrize("bend", [-40, 0, 40, 60])
@pytest.mark.parametrize("lean", [-90, -30, 0, 30, 90])
def test_a_curved_hem_keeps_its_allowance_to_the_mirrored_corner(bend: float, lean: float) -> None:
    """However hem and side bend and lean, no tooth, and every allowance within 0.05 mm."""
    margins = swinging(bend, lean)
    cut = points(cut_line(margins))
    assert is_simple(rows(cut))
    assert teeth(rows(cut)) == ()
    assert max(allowances_off([rows(cut)], [margins])[0]) <= 0.05


def test_a_mirrored_corner_ends_on_the_curve_of_the_hem() -> None:
    """Where the mirrored side cuts into a bent hem, the corner is as far from the hem as asked,
    and no point beyond the cut is left to make a tooth."""
    side = ruled(Point(200, 0), Point(290, 300))
    hem = curved(side.end, side.end + Vector(-60, -6), Point(120, 330), Point(0, 330))
    margins = half(hem, side)
    cut = points(cut_line(margins))
    assert teeth(rows(cut)) == ()
    tip = max((p for p in cut if p.x > 250), key=lambda p: p.y)
    assert min((tip - p).length() for p in hem.flattened(0.001)) == pytest.approx(25, abs=0.05)


@pytest.mark.parametrize("degrees", [5, 15, 23, 35])
def test_a_wide_allowance_steps_down_to_a_narrow_one(degrees: float) -> None:
    """Where a hem runs almost straight on into a seam, its cut line keeps to its curve."""
    end, turn = Point(200, 300), math.radians(degrees)
    hem = curved(Point(300, 20), Point(280, 120), Point(245, 210), end)
    along = hem.arriving()
    side = ruled(end, end + along.turned(math.degrees(turn)) * 150)
    margins = [
        Margin(hem, 25, turned=True),
        Margin(side, 8),
        Margin(ruled(side.end, Point(0, side.end.y)), 8),
        Margin(ruled(Point(0, side.end.y), Point(0, 20)), 0, fold=True),
        Margin(ruled(Point(0, 20), hem.start), 8),
    ]
    cut = points(cut_line(margins))
    assert teeth(rows(cut)) == ()
    assert max(allowances_off([rows(cut)], [margins])[0]) <= 0.05


def test_an_allowance_never_reaches_over_the_fold() -> None:
    """A deep neckline that leaves the fold square and bends back at once stays on its own side."""
    neck = curved(Point(0, 180), Point(12, 180), Point(4, 100), Point(70, 0))
    margins = [
        Margin(neck, 12),
        Margin(ruled(Point(70, 0), Point(200, 300)), 8),
        Margin(ruled(Point(200, 300), Point(0, 300)), 25, turned=True),
        Margin(ruled(Point(0, 300), Point(0, 180)), 0, fold=True),
    ]
    assert box_of(points(cut_line(margins))).left == pytest.approx(0, abs=1e-6)


def test_a_cut_line_moved_by_a_hair_is_found() -> None:
    """A line drawn 0.2 mm too far out at one edge is off by as much."""
    margins = swinging(40, 30)
    wider = [*margins[:1], Margin(margins[1].path, 8.2), *margins[2:]]
    off = allowances_off([cut_line(wider)], [margins])[0]
    assert off[1] == pytest.approx(0.2, abs=0.05)
    assert off[0] <= 0.05


def test_an_allowance_missing_at_a_corner_is_found() -> None:
    """A corner cut off inside the narrower allowance is wrong by what is missing."""
    margins = swinging(0, 0)
    cut = [p for p in points(cut_line(margins)) if not (p.x > 195 and p.y > 290)]
    assert max(allowances_off([rows(cut)], [margins])[0]) > 3


def test_a_tooth_is_found() -> None:
    """A spike of a few millimetres in a straight line, and nothing in a square."""
    square = [Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)]
    assert teeth(rows(square)) == ()
    spike = Point(50, -6)
    assert teeth(rows([Point(0, 0), Point(49, 0), spike, Point(51, 0), *square[1:]])) == (spike,)


def dented(depth: float) -> list[Margin]:
    """A square whose right side has a corner in its middle that points inwards [mm]."""
    corners = Point(0, 0), Point(200, 0), Point(200 - depth, 100), Point(200, 200), Point(0, 200)
    sides = zip(corners, [*corners[1:], corners[0]], strict=True)
    return [Margin(ruled(a, b), 10) for a, b in sides]


@pytest.mark.parametrize("depth", [5, 30, 90])
def test_the_cut_line_lies_farther_from_a_corner_that_points_inwards(depth: float) -> None:
    """By the cosine of half its turn, where the two sides of the line meet; no farther."""
    margins = dented(depth)
    cut = points(cut_line(margins))
    assert max(allowances_off([rows(cut)], [margins])[0]) < 0.05
    tip = min((p for p in cut if 50 < p.y < 150), key=lambda p: abs(p.y - 100))
    deeper = [Point(p.x + 0.2, p.y) if p == tip else p for p in cut]
    assert max(allowances_off([rows(deeper)], [margins])[0]) > 0.05


def test_of_two_faults_along_an_edge_the_worse_is_told() -> None:
    """Off by 0.15 in the hollow, which excuses more of it than that, and by up to 0.3 at the other
    end, whose last two centimetres are the corner's."""
    margins = dented(30)
    cut = points(cut_line(margins))
    tip = min((p for p in cut if 50 < p.y < 150), key=lambda p: abs(p.y - 100))
    corner = max(cut, key=lambda p: p.x - p.y)
    moved = {tip: Point(tip.x + 0.15, tip.y), corner: Point(corner.x + 0.3, corner.y)}
    off = allowances_off([rows([moved.get(p, p) for p in cut])], [margins])[0]
    assert off[2] == pytest.approx(0.15, abs=0.01)
    assert off[1] == pytest.approx(0.26, abs=0.01)


@pytest.mark.parametrize("lean", [0.0, 3.3, 9.7, 14.25, 21.9])
def test_a_seam_that_runs_straight_on_with_another_allowance_steps_without_a_slit(
    lean: float,
) -> None:
    """As a side seam does into its slit, at whatever angle it leans."""
    start, way = Point(400, 0), Vector(0, 1).turned(-lean)
    middle, end = start + way * 393.8255194, start + way * 573.8255194
    margins = [
        Margin(ruled(Point(0, 0), start), 8),
        Margin(ruled(start, middle), 8),
        Margin(ruled(middle, end), 15),
        Margin(ruled(end, Point(0, end.y)), 25, turned=True),
        Margin(ruled(Point(0, end.y), Point(0, 0)), 0, fold=True),
    ]
    cut = points(cut_line(margins))
    assert teeth(rows(cut)) == ()
    assert is_simple(rows(cut))


def test_a_corner_whose_mitre_is_cut_off_is_as_it_should_be() -> None:
    """Sharper than 39 degrees the tip keeps a third of the allowance, and that is no fault."""
    a, b, c = Point(300, 0), Point(-166, 166.65), Point(-171, -164.46)
    margins = [Margin(ruled(a, b), 8), Margin(ruled(b, c), 8), Margin(ruled(c, a), 8)]
    assert max(allowances_off([cut_line(margins)], [margins])[0]) < 0.05


def test_many_outlines_are_measured_as_each_alone() -> None:
    """Each against its own cut line, the one that is cut too wide and those before and after."""
    outlines = [swinging(-40, 30), swinging(60, -30), swinging(0, 0)]
    cuts = [cut_line(margins) for margins in outlines]
    cuts[1] = cut_line([Margin(m.path, m.width + 2, m.turned, m.fold) for m in outlines[1]])
    alone = [
        allowances_off([cut], [margins])[0] for cut, margins in zip(cuts, outlines, strict=True)
    ]
    assert allowances_off(cuts, outlines) == [pytest.approx(off, abs=1e-9) for off in alone]
    assert [max(off) > 1 for off in alone] == [False, True, False]
