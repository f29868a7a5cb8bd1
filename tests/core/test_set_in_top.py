"""Set-in sleeves: the cap goes into the armhole, the right way round."""

from __future__ import annotations

import pytest
from read_aloud import remarks

from tapewise_core.blocks.set_in.sleeve import CAP_SHARE, solve_cap
from tapewise_core.drafting.piece import SeamKind
from tapewise_core.tasks.drafting import Drafted, draft
from tapewise_core.tasks.people import person
from tapewise_core.units import Unit

PEOPLE = ("Marta Lindqvist", "Adaeze Nwosu", "Gwen Abernathy", "Noor Haddad", "Tomasz Wieczorek")
SLEEVES = ("short", "elbow", "three-quarter", "long")


def top(who: str = PEOPLE[0], /, **asked: str) -> Drafted:
    """Draft a top for one of the example people."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person(who), "set-in-top", options)


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("sleeve", SLEEVES)
def test_every_top_can_be_worn(who: str, sleeve: str) -> None:
    """Every build gets every sleeve, all proofs holding."""
    assert [proof.says for proof in top(who, sleeve=sleeve).failing] == []


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("neckline", ["round", "scoop", "v", "boat"])
def test_every_neckline_goes_with_it(who: str, neckline: str) -> None:
    """Every neckline of the jersey top can be had, all proofs holding."""
    assert [proof.says for proof in top(who, neckline=neckline).failing] == []


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("shorter", ["0", "0.5", "1"])
def test_the_cap_is_as_much_shorter_as_asked(who: str, shorter: str) -> None:
    """Walked along the curve, the cap is 0 to 1 % shorter than the armhole, exactly as asked."""
    made = top(who, cap_shortening=shorter)
    seam = next(seam for seam in made.pattern.seams if seam.kind is SeamKind.SLEEVE)
    cap, armhole = made.pattern.run_length(seam.first), made.pattern.run_length(seam.second)
    assert (1 - cap / armhole) * 100 == pytest.approx(float(shorter), abs=0.001)


@pytest.mark.parametrize("shorter", ["-1", "2"])
def test_a_cap_that_does_not_fit_fails_and_is_mended(shorter: str) -> None:
    """A cap longer than its armhole, or too short for it, fails; what is offered mends it."""
    made = top(cap_shortening=shorter)
    (proof,) = (p for p in made.proofs if p.name == "sleeve cap against armhole")
    assert not proof.holds
    assert proof.mend
    again = draft(
        person(PEOPLE[0]), "set-in-top", {"cap-shortening": shorter, **(proof.settings or {})}
    )
    assert next(p for p in again.proofs if p.name == proof.name).holds


@pytest.mark.parametrize("who", PEOPLE)
def test_what_is_told_is_what_is_drawn(who: str) -> None:
    """Every distance in the instructions is the distance between the points on the paper."""
    for drawn in top(who, sleeve="long").pattern.drafts:
        for step, paper in zip(drawn.steps, drawn.papers, strict=True):
            for start, end, by in step.stated():
                apart = (paper.point(end) - paper.point(start)).length()
                assert apart == pytest.approx(by.mm, abs=0.01)


@pytest.mark.parametrize("who", PEOPLE)
def test_no_sleeve_can_be_set_in_back_to_front(who: str) -> None:
    """Two strokes at the back and one at the front, on body and sleeve, at unlike distances."""
    pattern = top(who).pattern
    strokes = {n.pair: n.strokes for n in pattern.piece("sleeve").notches if n.edge == "cap"}
    assert strokes["back of the armhole"] == 2
    assert strokes["front of the armhole"] == 1
    for piece, pair in (("back", "back of the armhole"), ("front", "front of the armhole")):
        (own,) = (n for n in pattern.piece(piece).notches if n.pair == pair)
        assert own.strokes == strokes[pair]
    sleeve = pattern.piece("sleeve")
    assert (sleeve.count, sleeve.mirrored) == (2, True)


@pytest.mark.parametrize("who", PEOPLE)
def test_the_front_is_more_hollow_than_the_back(who: str) -> None:
    """A level line halfway up the cap is further in at the front's underarm than at the back's."""
    sleeve = top(who).pattern.piece("sleeve")
    cap = sleeve.edge("cap").path
    back, front = cap.segments[0], cap.segments[-1]
    low = [abs(back.at(0.25).y - back.start.y), abs(front.at(0.75).y - front.end.y)]
    wide = [abs(back.at(0.25).x - back.start.x), abs(front.at(0.75).x - front.end.x)]
    assert low[1] / wide[1] < low[0] / wide[0]


def test_the_cap_is_a_quarter_of_the_armhole() -> None:
    """As the method has it where the arm leaves room; lower, never higher, where it does not."""
    plain, full = solve_cap(200, 200, 0.0, 0.0), solve_cap(200, 200, 330.0, 0.0)
    assert plain.height == pytest.approx(400 / CAP_SHARE)
    assert full.height < plain.height
    assert full.width == pytest.approx(330, abs=0.1)


def test_a_full_arm_deepens_the_armhole() -> None:
    """Where even a low cap is too narrow the armhole goes down, said in a sentence."""
    made = top(sleeve_ease="14")
    assert any("deeper" in note for note in remarks(made))
    girth = next(girth for girth in made.pattern.girths if girth.name == "upper arm")
    assert girth.garment >= girth.body + 130


def test_a_sleeve_too_short_for_its_cap_is_lengthened() -> None:
    """An underarm seam of 3 cm is left below the cap, said in a sentence."""
    made = top(sleeve_length="14", sleeve_ease="2", armhole_drop="6")
    assert any("underarm seam" in note for note in remarks(made))
    assert made.pattern.piece("sleeve").length("underarm") >= 29


def test_sleeves_are_set_in_before_the_sides_are_closed() -> None:
    """The order: shoulders, neck, sleeves in flat, sides, sleeve hems, hem."""
    from tapewise_core.sewing.order import sewing_order
    from tapewise_core.text.told import Reader

    made = top()
    order = [Reader(Unit.CM).spell(said) for said in sewing_order(made.pattern, made.stitching)]
    words = ("shoulder seams", "band", "Sew the sleeves in", "side seams", "sleeves' hems")
    places = [next(i for i, said in enumerate(order) if word in said) for word in words]
    assert places == sorted(places)
