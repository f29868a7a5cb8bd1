"""Set-in sleeves: as wide as asked at every level, on every build, and the cap goes in."""

from __future__ import annotations

import random

import pytest
from making import person as invented
from people_made_up import AVERAGE, bodies
from read_aloud import remarks

from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended
from tapewise_core.tasks.people import person
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

PEOPLE = ("Marta Lindqvist", "Adaeze Nwosu", "Gwen Abernathy", "Noor Haddad", "Tomasz Wieczorek")
SLEEVES = ("short", "elbow", "three-quarter", "long")
BUSTY = {
    **AVERAGE, "bust": 112.0, "high_bust": 96.0, "waist": 80.0, "hip": 104.0, "upper_arm": 31.0,
    "front_waist_length": 49.0, "across_back": 35.0,
}  # fmt: skip
PEAR = {**AVERAGE, "bust": 84.0, "high_bust": 81.0, "waist": 66.0, "hip": 112.0}


def top(who: str | dict[str, float] = PEOPLE[0], /, **asked: str) -> Drafted:
    """Draft a top for one of the example people, or for measures [cm]."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person(who) if isinstance(who, str) else invented(who), "set-in-top", options)


def levels(made: Drafted) -> dict[str, Level]:
    """Return the levels by name."""
    return {level.name: level for level in made.pattern.facts.levels}


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


@pytest.mark.parametrize("build", [BUSTY, PEAR])
@pytest.mark.parametrize("ease", ["0", "4", "10"])
def test_the_ease_asked_is_the_ease_given(build: dict[str, float], ease: str) -> None:
    """At bust, waist, hip and upper arm, within a millimetre or held back with its reason."""
    made = top(build, ease=ease, sleeve_ease="5")
    for name in ("bust", "waist", "hip", "upper_arm"):
        level = levels(made)[name]
        assert level.asked is not None
        assert abs(level.given - level.asked) <= 1 or level.held_back, name


def test_random_bodies_get_what_they_ask() -> None:
    """Forty made-up builds with eases at random: nothing silent at bust, waist, hip and arm."""
    rng, silent = random.Random(4), []
    for body in bodies(40, 9):
        build = {key: value.cm for key, value in body.values.items()}
        asked = {"bust_ease": f"{rng.uniform(-2, 9):.1f}", "hip_ease": f"{rng.uniform(-2, 9):.1f}"}
        for level in top(
            build, **asked, waist_shaping=str(rng.randrange(101))
        ).pattern.facts.levels:
            if level.asked is not None and level.name != "sleeve_hem" and not level.held_back:
                silent += [level] if abs(level.given - level.asked) > 3 else []
    assert silent == []


def test_levels_are_measured_on_the_pieces() -> None:
    """What is given is the sum of the pieces at that level, waist darts taken off."""
    made = top(PEAR, waist_shaping="100")
    back, front = made.pattern.piece("back"), made.pattern.piece("front")
    assert back.darts
    assert front.darts
    for name in ("bust", "waist", "hip"):
        around = sum(piece.points[f"{name}_side"].x for piece in (back, front))
        darts = sum(dart.intake for piece in (back, front) for dart in piece.darts)
        taken = darts if name == "waist" else 0.0
        assert levels(made)[name].given == pytest.approx(2 * (around - taken), abs=0.1)


def test_waist_shaping_always_has_an_effect() -> None:
    """From 0 to 100 the waist of a pear gets closer at each step, down to its own ease."""
    given = [levels(top(PEAR, waist_shaping=str(share)))["waist"].given for share in (0, 50, 100)]
    assert given[0] > given[1] + 20 > given[2] + 40
    assert given[2] == pytest.approx(660, abs=1)


def test_a_full_bust_gets_a_dart_that_closes() -> None:
    """Legs of one length; the dart closed, the front's side is as long as the back's."""
    made = top(BUSTY)
    front, back = made.pattern.piece("front"), made.pattern.piece("back")
    names = [edge.name for edge in front.edges]
    start = names.index("side")
    assert names[start : start + 4] == ["side", "dart_upper", "dart_lower", "side_2"]
    assert front.length("dart_upper") == pytest.approx(front.length("dart_lower"), abs=0.01)
    assert front.length("side", "side_2") == pytest.approx(back.length("side"), abs=1)
    assert not any(edge.allowance for edge in front.edges if edge.name.startswith("dart"))


def test_a_folded_dart_has_its_peak_in_the_cut_line() -> None:
    """Mirrored in each leg, the mouth's cut line lies on the side's own: nothing is missing."""
    front = top(BUSTY).pattern.piece("front")
    mouths = [edge.mouth for edge in front.edges if edge.mouth]
    assert len(mouths) == 2
    peak = mouths[0].path.end
    assert mouths[1].path.start == peak
    upper, lower = front.edge("dart_upper").path, front.edge("dart_lower").path
    assert peak.x > upper.start.x
    assert peak.x > lower.end.x


def test_the_dart_is_told_and_sewn_first() -> None:
    """The order begins with the darts, and the steps draw both legs."""
    from tapewise_core.sewing.order import sewing_order

    made = top(BUSTY)
    first = Reader(Unit.CM).spell(sewing_order(made.pattern, made.stitching)[0])
    assert first.startswith("Sew the side darts")
    front = made.pattern.drafts[1]
    assert {"dart_upper", "dart_lower"} <= set(front.paper.lines)


def test_gathers_and_ease_are_taken_in_between_notches() -> None:
    """What the front has more lies between two notches on both sides, and is said."""
    made = top(BUSTY, bust_room="gathers", stretch="20")
    (side,) = (s for s in made.pattern.seams if s.kind is SeamKind.SIDE and not s.where)
    if side.fullness is None:
        assert made.pattern.piece("front").has_edge("dart_upper")
        return
    for piece in ("back", "front"):
        pairs = [notch.pair for notch in made.pattern.piece(piece).notches]
        assert {"start of the fullness", "end of the fullness"} <= set(pairs)


def test_without_room_nothing_is_added() -> None:
    """`none` draws the front as long as the back, and says what stays short."""
    made = top(BUSTY, bust_room="none")
    assert any("shorter than measured" in note for note in remarks(made))


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
    made = mended(top(cap_shortening=shorter))
    (proof,) = (p for p in made.proofs if p.name == "sleeve cap against armhole")
    assert not proof.holds
    assert proof.mend
    again = draft(
        person(PEOPLE[0]), "set-in-top", {"cap-shortening": shorter, **(proof.settings or {})}
    )
    assert next(p for p in again.proofs if p.name == proof.name).holds


TOLD = [
    *((who, {"sleeve": "long"}) for who in PEOPLE),
    (BUSTY, {"round_back": "0.5", "forward_shoulder": "1"}),
    (BUSTY, {"bust_room": "side-ease", "hem": "curved"}),
    (PEAR, {"waist_shaping": "100", "neckline": "boat"}),
    (BUSTY, {"fit": "close", "body_length": "48"}),
]


@pytest.mark.parametrize(("who", "asked"), TOLD)
def test_what_is_told_is_what_is_drawn(who: str | dict[str, float], asked: dict[str, str]) -> None:
    """Every distance in the instructions is the distance between the points on the paper."""
    for drawn in top(who, **asked).pattern.drafts:
        for step, paper in zip(drawn.steps, drawn.papers, strict=True):
            for start, end, by in step.stated():
                apart = (paper.point(end) - paper.point(start)).length()
                assert apart == pytest.approx(by.mm, abs=0.01)


@pytest.mark.parametrize(("who", "asked"), TOLD)
def test_no_letter_has_a_twin_in_another_case(
    who: str | dict[str, float], asked: dict[str, str]
) -> None:
    """Points are single capitals or numbered ones, so that nobody reads c for C."""
    for drawn in top(who, **asked).pattern.drafts[:3]:
        names = list(drawn.paper.points)
        assert all(name[0].isupper() and name[1:].isdigit() | (len(name) == 1) for name in names)


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
    """A quarter up the cap the front's half has risen less for its width than the back's."""
    cap = top(who).pattern.piece("sleeve").edge("cap").path
    back, front = cap.segments[0], cap.segments[-1]
    low = [abs(back.at(0.25).y - back.start.y), abs(front.at(0.75).y - front.end.y)]
    wide = [abs(back.at(0.25).x - back.start.x), abs(front.at(0.75).x - front.end.x)]
    assert low[1] / wide[1] < low[0] / wide[0]


def test_the_sleeve_follows_what_is_asked() -> None:
    """Each centimetre of sleeve ease asked is a centimetre given."""
    wide = [levels(top(sleeve_ease=ease))["upper_arm"].given for ease in ("3", "5", "7")]
    assert wide[1] - wide[0] == pytest.approx(20, abs=1)
    assert wide[2] - wide[1] == pytest.approx(20, abs=1)


def test_an_asked_depth_is_kept_and_the_sleeve_says_what_it_takes() -> None:
    """A shallow underarm asked for stays; a sleeve it can not take is held back with the range."""
    made = top(armhole_drop="1", sleeve_ease="22")
    under = made.pattern.facts.underarm
    assert under is not None
    assert under.level - under.armscye == pytest.approx(10, abs=0.01)
    arm = levels(made)["upper_arm"]
    assert arm.held_back
    assert "takes a sleeve with" in Reader(Unit.CM).spell(arm.held_back)


def test_a_full_arm_deepens_the_armhole() -> None:
    """Unasked, the underarm goes down for the arm and its sleeve, said in a sentence."""
    made = top({**AVERAGE, "upper_arm": 36.0})
    assert any("deeper" in note for note in remarks(made))
    assert levels(made)["upper_arm"].given >= 380


def test_a_sleeve_too_short_for_its_cap_is_lengthened() -> None:
    """An underarm seam of 3 cm is left below the cap, said in a sentence."""
    made = top(sleeve_length="14", sleeve_ease="2", armhole_drop="3")
    assert any("underarm seam" in note for note in remarks(made))
    assert made.pattern.piece("sleeve").length("underarm") >= 29


def shoulder_fall(piece: Piece) -> float:
    """Return how far the shoulder point lies below the side neck [mm]."""
    return piece.points["shoulder_point"].y - piece.points["side_neck"].y


def test_a_forward_shoulder_moves_the_seam_to_the_front() -> None:
    """The back's shoulder point goes up, the front's down; both seams stay equally long."""
    plain, moved = top(), top(forward_shoulder="1")
    back, front = moved.pattern.piece("back"), moved.pattern.piece("front")
    assert shoulder_fall(back) < shoulder_fall(plain.pattern.piece("back")) - 8
    assert shoulder_fall(front) > shoulder_fall(plain.pattern.piece("front")) + 8
    assert back.length("shoulder") == pytest.approx(front.length("shoulder"), abs=0.01)


def test_across_back_is_followed() -> None:
    """Each centimetre across the back moves the armhole's middle by half a centimetre."""
    reached = []
    for wide in (34.0, 36.0):
        build = {**AVERAGE, "shoulder_length": 13.5, "upper_arm": 26.0, "across_back": wide}
        armhole = top(build).pattern.piece("back").edge("armhole").path
        reached.append(armhole.segments[0].end.x)
    assert reached[1] - reached[0] == pytest.approx(10, abs=0.1)


def test_a_cropped_top_has_no_dart() -> None:
    """Where the hem lies too near the bust no dart is drawn, and it is said."""
    made = top(BUSTY, body_length="34")
    assert not made.pattern.piece("front").has_edge("dart_upper")
    assert any("too near the bust" in note for note in remarks(made))


def test_sleeves_are_set_in_before_the_sides_are_closed() -> None:
    """The order: shoulders, neck, sleeves in flat, sides, sleeve hems, hem."""
    from tapewise_core.sewing.order import sewing_order

    made = top()
    order = [Reader(Unit.CM).spell(said) for said in sewing_order(made.pattern, made.stitching)]
    words = ("shoulder seams", "band", "Sew the sleeves in", "side seams", "sleeves' hems")
    places = [next(i for i, said in enumerate(order) if word in said) for word in words]
    assert places == sorted(places)


LOWER = [
    {},
    {"forward-shoulder": "0.8", "fit": "straight", "neckline": "v"},
    {"sleeve": "long", "bust-room": "side-dart", "neck-finish": "turned"},
]


@pytest.mark.parametrize("build", [AVERAGE, BUSTY, PEAR])
@pytest.mark.parametrize("more", LOWER)
def test_a_lower_shoulder_takes_its_armhole_down_with_it(
    build: dict[str, float], more: dict[str, str]
) -> None:
    """Shoulder end and underarm lie lower by the same, both armholes are equally long, half by
    half, one sleeve goes into both, and everything else holds."""
    asked = {"lower-shoulder": "left", "lower-shoulder-by": "1.5", **more}
    made = draft(invented(build), "set-in-top", asked)
    assert [proof.says for proof in made.failing] == []
    for piece, left, right in (("back", "_2", ""), ("front", "", "_2")):
        whole = made.pattern.piece(piece)
        for point in ("shoulder_point", "underarm"):
            down = whole.points[point + left].y - whole.points[point + right].y
            assert down == pytest.approx(15, abs=0.8), (piece, point)
        halves = whole.length("armhole" + left), whole.length("armhole" + right)
        assert halves[0] == pytest.approx(halves[1], abs=0.05)
    assert [piece.name for piece in made.pattern.pieces].count("sleeve") == 1


def test_the_other_side_is_as_it_would_be_without() -> None:
    """Only the side that hangs lower is changed."""
    even = draft(invented(BUSTY), "set-in-top", {}).pattern
    made = draft(invented(BUSTY), "set-in-top", {"lower-shoulder": "left"}).pattern
    for piece, edges in (("back", ""), ("front", "_2")):
        for edge in ("shoulder", "armhole", "neckline", "hem"):
            whole = made.piece(piece).length(edge + edges)
            assert whole == pytest.approx(even.piece(piece).length(edge))
    assert made.piece("sleeve").length("cap") == pytest.approx(even.piece("sleeve").length("cap"))


NARROW = {
    **AVERAGE, "bust": 86.0, "high_bust": 90.0, "waist": 73.0, "hip": 92.0, "upper_arm": 29.0,
    "shoulder_length": 14.8, "shoulder_drop": 3.7, "across_back": 34.7, "armscye_depth": 19.4,
    "back_waist_length": 44.3, "front_waist_length": 44.8,
}  # fmt: skip


@pytest.mark.parametrize("fit", ["fitted", "close"])
@pytest.mark.parametrize("front", [40.0, 44.8, 47.5])
def test_a_shoulder_too_long_for_a_narrow_body_is_drawn_shorter(fit: str, front: float) -> None:
    """However its slope is changed for the front's length, no armhole becomes a keyhole."""
    made = top({**NARROW, "front_waist_length": front}, fit=fit)
    assert [proof.says for proof in made.failing] == []


@pytest.mark.parametrize("hair", [-0.03, 0.02, 0.04])
def test_what_is_too_little_to_be_drawn_moves_nothing(hair: float) -> None:
    """A shoulder to be carried out by a hair, a hem that bends by one, a front that much longer:
    every outline still closes to the last digit, for a gap tears the cut line."""
    plain = top({**AVERAGE, "across_back": 30.0})
    end = plain.pattern.piece("back").points["shoulder_point"].x
    build = {
        **AVERAGE,
        "across_back": 2 * (end - 8 + hair) / 10,
        "front_waist_length": AVERAGE["back_waist_length"] + 2.2 + 1.5 + hair / 10,
    }
    wide = levels(plain)["upper_arm"].given - levels(plain)["sleeve_hem"].body
    for ease in (wide + hair, wide + 10 * hair):
        made = top(build, sleeve_hem_ease=f"{ease / 10:.4f}")
        for piece in made.pattern.pieces:
            for edge, after in zip(piece.edges, (*piece.edges[1:], piece.edges[0]), strict=True):
                gap = (edge.path.end - after.path.start).length()
                assert gap < 1e-6, (piece.name, edge.name)


@pytest.mark.parametrize("who", PEOPLE)
def test_no_allowance_is_wider_than_an_armhole_can_take(who: str) -> None:
    """Asked for 3 cm, a tight armhole and its cap get the same lesser one, said; all is exact."""
    made = top(who, seam_allowance="3 cm")
    assert [proof.says for proof in made.failing] == []
    pieces = made.pattern.pieces
    found = {e.allowance for piece in pieces for e in piece.edges if e.name in ("armhole", "cap")}
    assert len(found) == 1
    told = " ".join(map(Reader(Unit.CM).spell, made.pattern.remarks))
    assert ("bend too tightly" in told) == (found.pop() < 30)
    assert made.pattern.piece("back").edge("side").allowance == 30


def test_the_record_has_the_depth_and_ease_that_were_drawn() -> None:
    """A full arm's armhole lies deeper than the fit's own: what was used is kept, and what was
    asked stays as it was asked."""
    full = {**AVERAGE, "upper_arm": 37.0}
    made = top(full)
    under = made.pattern.facts.underarm
    assert under is not None
    drop = made.style.length("armhole-drop").mm
    assert drop == pytest.approx(under.level - under.armscye, abs=0.1)
    assert drop > 15
    arm = levels(made)["upper_arm"]
    assert made.style.length("sleeve-ease").mm == pytest.approx(arm.given - arm.body, abs=0.1)
    again = top(full, armhole_drop=f"{drop / 10:.2f}")
    assert again.pattern.facts.underarm == under
    assert top(full, armhole_drop="1").style.length("armhole-drop").mm == pytest.approx(10)
