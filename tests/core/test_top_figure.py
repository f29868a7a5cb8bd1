"""A body that is not an average: each adjustment shown by two builds side by side."""

import pytest
from people_made_up import body
from read_aloud import steps

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.garments.shelf import garment
from tapewise_core.measures.body import Body
from tapewise_core.proofs.all import prove
from tapewise_core.proofs.case import Case
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

TOP = garment("jersey-top")
JERSEY = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1800.0)
"""Wide enough for long sleeves in one with the body."""


def style_of(one: Body, **asked: str) -> Style:
    """Return the style with options asked for."""
    typed = {key.replace("_", "-"): value for key, value in asked.items()}
    return settle(TOP.options, typed, one, Unit.CM)


def made(one: Body, **asked: str) -> Pattern:
    """Return a top whose proofs all hold."""
    style = style_of(one, **asked)
    pattern = TOP.draft(one, style)
    assert [p.says for p in prove(Case(pattern, style, JERSEY)).proofs if not p.holds] == []
    return pattern


def told(pattern: Pattern) -> str:
    """Return all instructions and remarks in one text."""
    remarks = map(Reader(Unit.CM).spell, pattern.remarks)
    return " ".join((*steps(pattern), *remarks))


def raise_of(pattern: Pattern) -> float:
    """How far the front's side neck lies above the back's [mm]."""
    back, front = pattern.pieces[:2]
    return back.points["side_neck"].y - front.points["side_neck"].y


def drop_of(pattern: Pattern) -> float:
    """How much lower the front's hem lies on the fold than the back's [mm]."""
    back, front = pattern.pieces[:2]
    return front.points["centre_hem"].y - back.points["centre_hem"].y


def test_a_longer_front_is_raised_first():
    """What the front is longer than the back and its rise, up to 1.5 cm, at the neck point."""
    one = body(front_waist_length=44.2)
    rise = style_of(one).length("neck-rise").mm
    pattern = made(one)
    assert raise_of(pattern) == pytest.approx(442 - 410 - rise)
    assert drop_of(pattern) == pytest.approx(0, abs=0.01)
    assert "set bust-room to change it" in told(pattern)


def test_what_the_neck_cannot_take_is_eased_darted_or_gathered():
    """1.5 cm at 50 % of stretch are eased; more is a side dart; gathers as one likes."""
    rise = style_of(body()).length("neck-rise").mm
    eased = made(body(front_waist_length=45.5), sleeve="cap")
    assert raise_of(eased) == pytest.approx(15)
    assert drop_of(eased) == pytest.approx(455 - 410 - rise - 15, abs=0.1)
    full = body(front_waist_length=48.0, bust=104.0, high_bust=92.0)
    darted = made(full, sleeve="cap")
    front = darted.piece("front")
    legs = front.length("dart_upper"), front.length("dart_lower")
    assert legs[0] == pytest.approx(legs[1])
    assert legs[0] > 30
    gathered = made(full, bust_room="gathers")
    side = next(seam for seam in gathered.seams if seam.fullness)
    assert side.fullness.gathered
    assert side.fullness.more > 20


def test_a_dart_that_finds_no_room_is_gathered_and_it_is_said():
    """Under a long sleeve's deep curve there is no place for a mouth."""
    full = body(front_waist_length=48.0, bust=104.0, high_bust=92.0, back_waist_length=38.5)
    pattern = made(full, sleeve="long", sleeve_ease="10", bust_room="side-dart")
    if not pattern.piece("front").has_edge("dart_upper"):
        assert "finds no room" in told(pattern)


def test_room_for_the_bust_can_be_refused():
    """Then the front is the back's own length, and what it lacks is said."""
    pattern = made(body(front_waist_length=47.0), bust_room="none")
    assert raise_of(pattern) == pytest.approx(0)
    assert drop_of(pattern) == pytest.approx(0, abs=0.01)
    assert "shorter than measured" in told(pattern)


def test_a_full_bust_without_a_front_length_asks_for_it():
    """The girths alone tell nothing of the length; nothing is drawn, and the measure is named."""
    pattern = made(body(("front_waist_length",), bust=104.0, high_bust=92.0))
    assert raise_of(pattern) == pytest.approx(0)
    assert "Measure the front waist length" in told(pattern)


def test_a_front_shorter_than_the_back_is_lowered():
    """A round back: the front's neck point goes down, up to 2 cm, then the back's up."""
    one = body(front_waist_length=41.5)
    rise = style_of(one).length("neck-rise").mm
    pattern = made(one)
    assert raise_of(pattern) == pytest.approx(415 - 410 - rise, abs=0.01)


@pytest.mark.parametrize(("amount", "rise"), [("1", 12), ("-1", 32), ("0", 22)])
def test_a_round_back_has_less_of_a_neck_rise_and_a_flat_one_more(amount: str, rise: float):
    """The measured back length holds the roundness; the side neck lies that much lower."""
    one = body(("front_waist_length",))
    pattern = made(one, round_back=amount)
    own = style_of(one).length("neck-rise").mm
    assert -pattern.piece("back").points["side_neck"].y == pytest.approx(own + rise - 22, abs=0.01)
    assert ("round back" in told(pattern)) == (amount == "1")
    assert ("flat back" in told(pattern)) == (amount == "-1")


def test_a_forward_shoulder_moves_the_seam_to_the_front():
    """Back and front change by the same amount, and the seam stays equally long."""
    one = body(("front_waist_length",))
    plain, forward = (made(one, sleeve="short", forward_shoulder=by) for by in ("0", "1.5"))
    back = (
        plain.piece("back").points["shoulder_point"],
        forward.piece("back").points["shoulder_point"],
    )
    front = (
        plain.piece("front").points["shoulder_point"],
        forward.piece("front").points["shoulder_point"],
    )
    assert back[1].y < back[0].y
    assert front[1].y > front[0].y
    assert (back[1] - back[0]).length() == pytest.approx(15, abs=0.3)
    assert (front[1] - front[0]).length() == pytest.approx(15, abs=0.3)
    assert "forward shoulder" in told(forward)


def slope(piece: Piece) -> float:
    """The overarm's fall [mm over mm]."""
    along = piece.edge("shoulder").path.leaving()
    return along.y / along.x


def test_square_and_sloping_shoulders_follow_the_measured_drop():
    """Less drop, a flatter overarm; and an option replaces the measure."""
    square, sloping = made(body(shoulder_drop=3.0)), made(body(shoulder_drop=6.0))
    assert slope(square.piece("back")) < slope(sloping.piece("back"))
    asked = made(body(shoulder_drop=3.0), shoulder_drop="6")
    assert slope(asked.piece("back")) == pytest.approx(slope(sloping.piece("back")))


@pytest.mark.parametrize("side", ["left", "right"])
def test_one_lower_shoulder_makes_whole_pieces_without_a_fold(side: str):
    """Back and front are drafted for each side; the lower one's shoulder point is lower."""
    pattern = made(body(), lower_shoulder=side, lower_shoulder_by="1.5")
    back, front = pattern.piece("back"), pattern.piece("front")
    assert not back.on_fold
    assert not any(edge.fold for edge in (*back.edges, *front.edges))
    right_of_paper, left_of_paper = (back.points[f"shoulder_point{end}"].y for end in ("", "_2"))
    lower, higher = right_of_paper, left_of_paper
    if side == "left":
        lower, higher = left_of_paper, right_of_paper
    assert lower - higher > 10
    mirrored = (front.points["shoulder_point_2"].y, front.points["shoulder_point"].y)
    assert (mirrored[0] > mirrored[1]) == (side == "right")
    assert [draft.title for draft in pattern.drafts[:2]] == ["Back, right half", "Back, left half"]


def test_a_lower_shoulder_by_hardly_anything_is_the_symmetric_top():
    """Both halves of the whole piece mirror each other as the difference goes to nothing."""
    plain = made(body()).piece("back")
    whole = made(body(), lower_shoulder="left", lower_shoulder_by="0.3").piece("back")
    assert whole.length("side") == pytest.approx(plain.length("side"))
    assert whole.length("hem_2") == pytest.approx(plain.length("hem"), abs=2)


def test_a_full_arm_gets_room_at_the_upper_arm_only():
    """The sleeve is wider there by what is asked for, and its hem stays."""
    one = body()
    plain, full = made(one, sleeve="long"), made(one, sleeve="long", full_arm="3")
    before, after = ({g.name: g.garment for g in p.girths} for p in (plain, full))
    assert after["upper arm"] - before["upper arm"] == pytest.approx(30, abs=1)
    assert after["sleeve hem"] == pytest.approx(before["sleeve hem"], abs=0.5)
    assert "full arm" in told(full)


def test_an_upper_arm_that_was_measured_fuller_makes_a_wider_sleeve():
    """Without any option: the measure itself."""
    thin, full = (made(body(upper_arm=arm), sleeve="short") for arm in (26.0, 31.0))
    assert full.piece("back").length("sleeve_hem") > thin.piece("back").length("sleeve_hem") + 20


def hem_drop(pattern: Pattern, name: str) -> float:
    """How much lower the hem lies at the centre than at the side [mm]."""
    points = pattern.piece(name).points
    return points["centre_hem"].y - points["hem_side"].y


def test_a_full_seat_lengthens_the_centre_back():
    """From the hip where it is much larger than bust and waist, or as asked for."""
    plain, full = made(body()), made(body(hip=120.0))
    assert style_of(body(hip=120.0)).length("full-seat").mm == pytest.approx(12)
    asked = made(body(), full_seat="2")
    assert hem_drop(asked, "back") - hem_drop(plain, "back") == pytest.approx(20)
    assert hem_drop(asked, "front") == pytest.approx(hem_drop(plain, "front"))
    assert "full seat" in told(asked)
    assert "full seat" in told(full)


def test_a_full_belly_lengthens_the_centre_front():
    """From a waist larger than the bust, or as asked for."""
    belly = body(waist=108.0, bust=98.0, hip=106.0)
    assert style_of(belly).length("full-belly").mm == pytest.approx(12, abs=0.6)
    plain, asked = made(body()), made(body(), full_belly="2")
    assert hem_drop(asked, "front") - hem_drop(plain, "front") == pytest.approx(20)
    assert hem_drop(asked, "back") == pytest.approx(hem_drop(plain, "back"))
    assert "full belly" in told(made(belly))


def test_a_broad_neck_widens_the_neckline_and_moves_the_shoulder_out():
    """The shoulder is as long as before, from the broader neck on."""
    plain, broad = made(body()).piece("back"), made(body(), broad_neck="1").piece("back")
    for point, near in (("side_neck", 0.01), ("shoulder_point", 0.5)):
        assert broad.points[point].x - plain.points[point].x == pytest.approx(10, abs=near)
    measured = made(body(neck=41.0)).piece("back")
    assert measured.points["side_neck"].x - plain.points["side_neck"].x == pytest.approx(10)


def test_unused_amounts_leave_no_step():
    """A body of average build is told nothing about adjustments."""
    text = told(made(body(front_waist_length=44.2)))
    for word in ("round back", "flat back", "forward", "full seat", "full belly", "full arm"):
        assert word not in text


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("sleeve", ["cap", "short", "elbow"])
def test_one_lower_shoulder_keeps_seams_and_sleeves_on_a_full_bust(side: str, sleeve: str) -> None:
    """Each side is sewn along its own edges, one with a dart or an underarm seam the other has
    not; and a sleeve is as wide as asked on the lower side too."""
    busty = body(bust=112.0, high_bust=96.0, waist=80.0, hip=104.0, front_waist_length=49.0)
    pattern = made(busty, lower_shoulder=side, sleeve=sleeve)
    for level in pattern.facts.levels:
        if level.name == "upper_arm" and level.asked is not None:
            assert level.given > level.asked - 10
