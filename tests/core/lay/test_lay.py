"""The lay: each piece as often as it is cut, none over another, as grain and cloth allow."""

from __future__ import annotations

from functools import reduce
from itertools import combinations

import pytest
import shapely
from making import DAY, person
from msgspec.structs import replace
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.piece import Edge, Piece, make_piece
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.lay.lay import Lay, lay_of, start
from tapewise_core.lay.lying import Lying
from tapewise_core.lay.packing import SHORT, USUAL
from tapewise_core.lay.profile import GAP
from tapewise_core.lay.sorts import room
from tapewise_core.tasks import people
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0)
"""1 m between its selvedges."""

ALLOWED = 16.0
"""What both allowances of a rectangle add to its width or height [mm]."""

STYLES = [
    ("jersey-top", {}),
    ("flared-dress", {"body-length": "95", "flare": "12"}),
    ("circle-skirt", {"panels": "6"}),
    ("circle-skirt", {"circle": "1/2", "panels": "2"}),
    ("skirted-dress", {}),
    ("set-in-top", {"sleeve": "long"}),
]


def area(one: Lying) -> shapely.Geometry:
    """What a piece covers."""
    lines = [shapely.Polygon([(p.x, p.y) for p in line]) for line in one.outlines()]
    whole = reduce(shapely.symmetric_difference, lines)
    assert whole.is_valid
    return whole


def lies_well(lay: Lay, cloth: Cloth) -> None:
    """Fail where a piece lies over another or beyond what is usable."""
    for one, other in combinations(map(area, lay.pieces), 2):
        assert one.intersection(other).area < 1e-3
    for one in lay.pieces:
        box = one.box
        assert box.left >= start(cloth) - 1e-6
        assert box.right <= start(cloth) + room(cloth) + 1e-6
        assert box.top >= -1e-6
        assert box.bottom <= lay.length + 1e-6


def made(garment: str, asked: dict[str, str]) -> Drafted:
    """Return a garment for an invented person."""
    return draft(people.person("Marta Lindqvist"), garment, asked, made=DAY)


@pytest.mark.parametrize(("garment", "asked"), STYLES)
@pytest.mark.parametrize("spread", list(Spread))
def test_pieces_lie_on_the_cloth_and_none_on_another(
    garment: str, asked: dict[str, str], spread: Spread
) -> None:
    """Opened out, folded or as a tube, within the width that is usable and the length reckoned."""
    drafted = made(garment, asked)
    cloth = replace(drafted.cloth, spread=spread, width=1800.0)
    lay = lay_of(drafted.pattern, cloth, SHORT)
    lies_well(lay, cloth)
    assert lay.pieces


@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_left_and_right_are_both_cut_and_every_piece_as_often_as_it_says(garment: str) -> None:
    """On one layer: so many of each, of a mirrored pair as many images as not."""
    drafted = draft(person(), garment, {}, made=DAY)
    lay = lay_of(drafted.pattern, drafted.cloth, SHORT)
    for piece in drafted.pattern.pieces:
        there = [one for one in lay.pieces if one.piece is piece]
        assert len(there) == piece.count
        if piece.mirrored:
            assert sum(one.way.image for one in there) == piece.count // 2


@pytest.mark.parametrize("spread", [Spread.FOLDED, Spread.TUBE])
def test_what_is_cut_on_the_fold_lies_with_its_fold_on_it(spread: Spread) -> None:
    """A half's straight edge lies on the fold of the cloth; a pair is cut from both layers."""
    drafted = made("set-in-top", {})
    cloth = replace(drafted.cloth, spread=spread)
    lay = lay_of(drafted.pattern, cloth)
    halves = [one for one in lay.pieces if one.piece.on_fold]
    assert [one.half for one in halves] == [True, True]
    folds = (0.0,) if spread is Spread.FOLDED else (0.0, cloth.laid_width / 2)
    for one in halves:
        at = [x for line in one.lines() for x, _ in line]
        edge = min(folds, key=lambda place: min(abs(x - place) for x in at))
        on = [y for line in one.lines() for x, y in line if abs(x - edge) < 1e-6]
        assert max(on) - min(on) > 300
    assert sum(one.piece.name == "sleeve" for one in lay.pieces) == 1


@pytest.mark.parametrize(("garment", "asked"), STYLES)
def test_the_grain_is_kept(garment: str, asked: dict[str, str]) -> None:
    """The arrow lies along the cloth, but for pieces that have no grain of their own."""
    drafted = made(garment, asked)
    for one in lay_of(drafted.pattern, drafted.cloth, SHORT).pieces:
        assert one.piece.turnable or not one.turned


def test_a_nap_points_one_way() -> None:
    """Without it one sleeve lies upside down beside the other; with it none does."""
    drafted = made("set-in-top", {"sleeve": "long"})
    free = lay_of(drafted.pattern, drafted.cloth)
    napped = lay_of(drafted.pattern, replace(drafted.cloth, nap=True))
    assert {one.way.quarters for one in free.pieces} == {0, 2}
    assert {one.way.quarters for one in napped.pieces} == {0}
    assert napped.length >= free.length


def test_a_repeat_meets_at_one_level() -> None:
    """Back and front lie so that their waists are whole repeats apart, whatever it costs."""
    drafted = made("set-in-top", {})
    cloth = replace(drafted.cloth, repeat=170.0)
    lay = lay_of(drafted.pattern, cloth)
    lies_well(lay, cloth)
    waists = []
    for one in lay.pieces:
        if "waist" in one.piece.levels:
            top = min(p.y for p in one.piece.cut)
            down = one.piece.levels["waist"] - top
            box = one.box
            waists.append(box.top + down if one.way.quarters == 0 else box.bottom - down)
    assert len(waists) == 2
    for waist in waists:
        assert (waist / 170.0) == pytest.approx(round(waist / 170.0), abs=1e-6)


def test_the_same_pieces_always_lie_the_same() -> None:
    """Where and which way, whatever was laid before, where many lays are as good as each other."""
    drafted = made("circle-skirt", {"panels": "8"})

    def places() -> list[tuple[float, float, object]]:
        lay = lay_of(drafted.pattern, drafted.cloth)
        return [(one.across, one.along, one.way) for one in lay.pieces]

    first = places()
    lay_of(drafted.pattern, replace(drafted.cloth, width=1600.0))
    assert places() == first


def test_pieces_share_a_row_while_there_is_room() -> None:
    """Two of 480 mm lie side by side on a metre; a third lies behind them."""
    wide = 480 - ALLOWED
    two = tuple(rectangle(name, wide, 484) for name in "ab")
    assert lay_of(pattern_of(two), CLOTH).length == pytest.approx(500)
    three = (*two, rectangle("c", wide, 284))
    assert lay_of(pattern_of(three), CLOTH).length == pytest.approx(800 + GAP)


def test_room_between_pieces_counts() -> None:
    """Two that would fit edge to edge and no more do not share a row."""
    pieces = tuple(rectangle(name, 500 - ALLOWED, 484) for name in "ab")
    assert lay_of(pattern_of(pieces), CLOTH).length == pytest.approx(1000 + GAP)


def test_a_piece_on_the_fold_counts_twice() -> None:
    """Its opened width is what the cloth has to hold, and its whole area is covered."""
    half = rectangle("back", 500, 500, {"left": 0.0}, on_fold=True)
    assert lay_of(pattern_of((half,)), CLOTH).too_wide == ("back",)
    narrow = rectangle("back", 400, 500, {"left": 0.0}, on_fold=True)
    lay = lay_of(pattern_of((narrow,)), CLOTH)
    assert lay.too_wide == ()
    assert lay.used == pytest.approx(2 * 408 * 516 / (lay.length * 1000))


def test_a_piece_just_as_wide_as_the_cloth_fits() -> None:
    """And a hair wider does not."""
    assert lay_of(pattern_of((rectangle("a", 1000 - ALLOWED, 100),)), CLOTH).too_wide == ()
    wider = lay_of(pattern_of((rectangle("a", 1000.1 - ALLOWED, 100),)), CLOTH)
    assert wider.too_wide == ("a",)
    assert wider.width == 1040


def test_a_piece_lies_as_its_grain_arrow_says() -> None:
    """A belt with its arrow along its length takes its length of cloth, not of width."""
    belt = rectangle("belt", 1700, 44, grain=(1, 0))
    lay = lay_of(pattern_of((belt,)), CLOTH)
    assert (lay.too_wide, lay.length) == ((), pytest.approx(1716))
    assert lay_of(pattern_of((rectangle("belt", 1700, 44),)), CLOTH).too_wide == ("belt",)


def test_a_turnable_piece_lies_across_where_that_saves_cloth() -> None:
    """A tall one is turned, and said to be; one without leave is not."""
    lay = lay_of(pattern_of((rectangle("skirt", 300, 900, turnable=True),)), CLOTH)
    assert (lay.turned, lay.length) == (("skirt",), pytest.approx(316))
    plain = lay_of(pattern_of((rectangle("skirt", 300, 900),)), CLOTH)
    assert (plain.turned, plain.length) == ((), pytest.approx(916))


def wedge(top: float, foot: float, high: float, count: int) -> Piece:
    """Return a panel upright about its middle, widths at top and foot [mm], no allowances."""
    corners = Point(-top / 2, 0), Point(top / 2, 0), Point(foot / 2, high), Point(-foot / 2, high)
    ends = zip(("waist", "side", "hem", "side_2"), corners, (*corners[1:], corners[0]), strict=True)
    edges = tuple(Edge(name, ruled(a, b), 0.0) for name, a, b in ends)
    return make_piece("panel", edges, {}, (Point(0, high), Point(0, 0)), count=count)


def test_slanting_panels_lie_head_to_tail() -> None:
    """Two of 200 and 500 mm are 850 wide beside each other upside down; both the same way they
    would not lie on a metre with any room between them."""
    lay = lay_of(pattern_of((wedge(200, 500, 700, 2),)), CLOTH, USUAL)
    assert lay.length == pytest.approx(700)
    assert lay.head_to_tail == ("panel",)


def test_shrinking_across_takes_from_the_width() -> None:
    """2 m of width less 10 % and its selvedges are 177 cm; cut first and washed later, 180 less
    what the selvedges are by then."""
    wide = replace(CLOTH, width=2000.0, shrinkage_across=0.1)
    assert wide.usable_width == pytest.approx(1770)
    assert replace(wide, washed=False).usable_width == pytest.approx(1773)
    assert wide.width_for(1770) == pytest.approx(2000)
    assert replace(wide, washed=False).width_for(1773) == pytest.approx(2000)


def test_a_tube_has_no_selvedges_and_two_layers() -> None:
    """Its width is that all round."""
    tube = replace(CLOTH, width=1200.0, spread=Spread.TUBE)
    assert (room(tube), tube.layers, tube.usable_width) == (600.0, 2, 1200.0)
