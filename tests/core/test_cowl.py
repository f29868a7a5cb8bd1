"""A cowl: the front spread at its shoulder, so that a fold hangs at the neck."""

from __future__ import annotations

import math
from functools import cache
from itertools import pairwise

import pytest

from tapewise_core.drafting.draft import Draft
from tapewise_core.errors import DraftError, OptionError
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.cowl import FACING, cowl_steps
from tapewise_core.parts.shape.cowl import drape_of, half_edge, turned, widths
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.proofs.corners import corner
from tapewise_core.proofs.proof import ProofId
from tapewise_core.tasks.documents import checklist_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person
from tapewise_core.tasks.wizard import option_rows
from tapewise_core.units import Unit, mm

GARMENTS = ("jersey-top", "set-in-top", "flared-dress", "skirted-dress")
SHOULDER = ruled(Point(90, -20), Point(200, 20))


@cache
def made(garment: str = "set-in-top", **asked: str) -> Drafted:
    """A garment with a cowl for an example person."""
    options = {"neckline": "cowl", **{key.replace("_", "-"): asked[key] for key in asked}}
    return draft(person("Marta Lindqvist"), garment, options)


@pytest.mark.parametrize("drape", [1.0, 60.0, 100.0, 200.0])
def test_the_edge_is_as_long_as_the_line_it_hangs_in(drape: float) -> None:
    """Half a parabola, measured in small steps; and back to its depth again."""
    xs = [90 * i / 2000 for i in range(2001)]
    hung = [Point(x, drape * (1 - (x / 90) ** 2)) for x in xs]
    walked = sum((b - a).length() for a, b in pairwise(hung))
    assert half_edge(90, drape) == pytest.approx(walked, abs=0.01)
    assert drape_of(90, half_edge(90, drape)) == pytest.approx(drape, abs=0.02)


@pytest.mark.parametrize("half", [105.0, 130.0, 150.0, 170.0, 185.0])
def test_a_turned_shoulder_is_as_long_and_ends_where_it_is_wanted(half: float) -> None:
    """It stands upright at the neck, and comes to the shoulder point as it did."""
    found = turned(SHOULDER, half)
    assert found is not None
    path = found.path
    assert path.start.x == pytest.approx(half, abs=0.01)
    assert path.length() == pytest.approx(SHOULDER.length(), abs=0.01)
    assert (path.end - SHOULDER.end).length() < 0.01
    assert path.leaving().x == pytest.approx(0, abs=1e-6)
    assert math.isclose(path.arriving().x, SHOULDER.arriving().x, abs_tol=1e-6)
    middles = [(one.end - two.start).length() for one, two in pairwise(path.segments)]
    assert max(middles, default=0.0) < 0.01


def test_a_shoulder_turns_no_further_than_it_can() -> None:
    """Up to the limits that are told, and not beyond."""
    least, most = widths(SHOULDER)
    assert turned(SHOULDER, least + 0.01)
    assert turned(SHOULDER, most - 0.01)
    assert turned(SHOULDER, least - 1) is None
    assert turned(SHOULDER, most + 1) is None


@pytest.mark.parametrize("garment", GARMENTS)
def test_only_the_front_above_the_bust_is_spread(garment: str) -> None:
    """Its edge is level and square, its shoulder as long as the back's; below, all is as with a
    round neckline of the same width, and all proofs hold."""
    cowl = made(garment)
    assert cowl.failing == ()
    front, back = cowl.pattern.piece("front"), cowl.pattern.piece("back")
    assert corner(front, "neckline", "centre") == pytest.approx(90, abs=0.1)
    assert corner(front, "neckline", "shoulder") == pytest.approx(90, abs=0.5)
    assert front.length("shoulder") == pytest.approx(back.length("shoulder"), abs=0.5)
    width = cowl.style.length("neck-half-width").mm
    plain = made(garment, neckline="round", neck_half_width=f"{width / 10:g}")
    before = plain.pattern.piece("front")
    for name in ("underarm", "centre_hem"):
        if name in before.points:
            assert (front.points[name] - before.points[name]).length() < 0.01
    assert cowl.pattern.girths == plain.pattern.girths
    assert before.points["side_neck"].x + 30 < front.points["side_neck"].x


@pytest.mark.parametrize("garment", GARMENTS[:2])
def test_a_deeper_fold_has_a_longer_edge(garment: str) -> None:
    """As long as a chain that hangs so deep below the side necks; the head passes more easily."""
    opening = []
    for depth in (8.0, 11.0):
        cowl = made(garment, cowl_depth=f"{depth:g}", neck_half_width="9.6")
        half = cowl.pattern.piece("front").length("neckline")
        assert half == pytest.approx(half_edge(96, depth * 10), abs=0.3)
        opening.append(next(one.value for one in cowl.proofs if one.id is ProofId.HEAD))
    assert opening[0] + 3 < opening[1]


def test_only_its_own_depth_moves_a_cowl() -> None:
    """The depth of other necklines has nothing to do there, nor a cowl's elsewhere."""
    assert made(neck_depth="12").pattern.pieces == made().pattern.pieces
    plain = [made(neckline="round", cowl_depth=depth).pattern.pieces for depth in ("6", "12")]
    assert plain[0] == plain[1]
    listed = [repr(checklist_of(one).blocks[-1]) for one in (made(), made(neckline="round"))]
    assert [("'cowl-depth'" in one, "'neck-depth'" in one) for one in listed] == [
        (True, False), (False, True)
    ]  # fmt: skip


def test_the_width_that_is_spread_is_told() -> None:
    """Half of the way across and what the slashes add, beside the depth that asks for it."""
    cowl = made(cowl_depth="11", neck_half_width="9.6")
    told = " ".join(cowl.reader.spell(step.tell()) for step in cowl.pattern.drafts[1].steps)
    half = half_edge(96, 110)
    words = f"half of the way across 9.6 cm + spread {(half - 96) / 10:.1f} cm = {half / 10:.1f} cm"
    assert words in told
    assert "half of a chain that hangs 11 cm below the side necks" in told


def test_room_for_the_bust_does_not_lengthen_the_edge() -> None:
    """A side neck that is raised for the bust lies, when worn, where it would lie without."""
    plain, raised = (made(bust_room=room) for room in ("none", "raise"))
    fronts = [one.pattern.piece("front") for one in (plain, raised)]
    assert fronts[1].points["side_neck"].y < fronts[0].points["side_neck"].y - 8
    assert fronts[0].length("neckline") == pytest.approx(fronts[1].length("neckline"), abs=0.3)


def test_the_facing_is_cut_in_one_with_the_front() -> None:
    """Five centimetres above the fold at the neck; the back's edge is turned by its allowance."""
    pattern = made().pattern
    front, back = (pattern.piece(name).edge("neckline") for name in ("front", "back"))
    assert front.turned
    assert front.allowance == FACING
    assert back.turned
    assert back.allowance == pytest.approx(12)


@pytest.mark.parametrize("garment", GARMENTS)
def test_a_shoulder_that_cannot_be_turned_so_far_says_what_it_allows(garment: str) -> None:
    """And takes both ends of what the sentence told."""
    with pytest.raises(DraftError, match=r"cowl-depth is 25 cm; take .* to") as refused:
        made(garment, cowl_depth="25")
    ends = str(refused.value).split("take ")[1].split(", or")[0].split(" to ")
    assert all(made(garment, cowl_depth=end).failing == () for end in ends)


def test_a_shoulder_too_short_to_turn_says_so() -> None:
    """A neckline that leaves hardly any shoulder cannot be a cowl at any depth."""
    short = ruled(Point(170, 40), Point(181, 44))
    with pytest.raises(DraftError, match="take a smaller neck-half-width"):
        cowl_steps(Draft("Front"), short, ("S", "P"), mm(60))


@pytest.mark.parametrize(
    ("asked", "right"),
    [
        ({"neck_finish": "band"}, "set neck-finish to turned"),
        ({"lower_shoulder": "left"}, "set lower-shoulder to none"),
    ],
)
def test_what_a_cowl_cannot_be_is_refused(asked: dict[str, str], right: str) -> None:
    """With what would be right."""
    with pytest.raises(OptionError, match=right):
        made(**asked)


def test_a_front_neck_lowered_at_a_fitting_lets_a_cowl_hang_deeper() -> None:
    """By as much; any other neckline is cut lower."""
    who = person("Marta Lindqvist")
    lower = (Adjustment(what="front-neck-lower", amount=1.0),)
    for neckline, key in (("cowl", "cowl-depth"), ("round", "neck-depth")):
        before, after = (
            draft(one, "set-in-top", {"neckline": neckline}).style.length(key).mm
            for one in (who, who.having(adjustments=lower))
        )
        assert after - before == pytest.approx(10)


def test_the_garment_page_asks_for_a_cowls_depth_with_the_neckline() -> None:
    """Among the choices that matter, in place of the depth that has nothing to do."""
    rows = {
        neckline: {
            row.key: row
            for row in option_rows(
                person("Marta Lindqvist"), "set-in-top", {"neckline": neckline}, Unit.IN
            )
        }
        for neckline in ("cowl", "round")
    }
    asked = rows["cowl"]["cowl-depth"]
    assert asked.at_work
    assert asked.first
    assert asked.value.endswith(" in")
    assert not rows["cowl"]["neck-depth"].at_work
    assert not rows["round"]["cowl-depth"].at_work
