"""Raglan sleeves: as wide as asked on every build, seams that meet, and a whole neckline."""

from __future__ import annotations

import random
from collections.abc import Iterator

import pytest
from fitted_pieces import WHO
from making import MIDDLE
from making import person as invented
from people_made_up import bodies
from read_aloud import remarks

from tapewise_core.drafting.facts import Level, Underarm
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import EdgeRun, SeamKind
from tapewise_core.errors import TapewiseError
from tapewise_core.fitting.changes import CHANGES
from tapewise_core.paper.document import Table
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.order import operations
from tapewise_core.tasks.documents import control_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person

PEOPLE = ("Marta Lindqvist", "Gwen Abernathy", "Tomasz Wieczorek")
SLEEVES = ("short", "elbow", "three-quarter", "long")
NECKS = ("round", "scoop", "v", "boat", "high")
HALVES = ("back", "front")

Measures = dict[str, float]


def top(who: str | Measures = PEOPLE[0], /, **asked: str) -> Drafted:
    """Draft a top for one of the example people, or for measures [cm]."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person(who) if isinstance(who, str) else invented(who), "raglan-top", options)


def level(made: Drafted, name: str) -> Level:
    """Return a level by its name."""
    return next(one for one in made.pattern.facts.levels if one.name == name)


def underarm(made: Drafted) -> Underarm:
    """Return where the underarm lies."""
    found = made.pattern.facts.underarm
    assert found is not None
    return found


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("way", range(5))
def test_every_top_can_be_worn(who: str, way: int) -> None:
    """Every build gets every sleeve and every neckline, all proofs holding."""
    made = top(who, sleeve=SLEEVES[way % 4], neckline=NECKS[way])
    assert [proof.says for proof in made.failing] == []


def test_random_bodies_get_what_they_ask() -> None:
    """Twenty made-up builds with eases at random: at every level within 1 mm, or a reason."""
    rng, silent = random.Random(4), []
    for body in bodies(20, 9):
        build = {key: value.cm for key, value in body.values.items()}
        eases = {
            "bust_ease": f"{rng.uniform(-2, 9):.1f}",
            "sleeve_ease": f"{rng.uniform(1, 7):.1f}",
        }
        for one in top(build, **eases).pattern.facts.levels:
            if one.asked is not None and abs(one.given - one.asked) > 1 and not one.held_back:
                silent.append(one)
    assert silent == []


def test_the_sleeve_is_measured_on_its_halves() -> None:
    """Its width at the underarm is that of both halves, from the overarm out."""
    made = top(MIDDLE, sleeve_ease="5")
    halves = [made.pattern.piece(f"sleeve_{name}") for name in HALVES]
    wide = sum(abs(half.points["underarm"].x) for half in halves)
    assert all(half.points["hem_overarm"].x == 0 for half in halves)
    assert level(made, "upper_arm").given == pytest.approx(wide, abs=0.01)
    assert wide == pytest.approx((MIDDLE["upper_arm"] + 5) * 10, abs=0.5)


def walked(pattern: Pattern, kind: SeamKind) -> Iterator[tuple[float, float]]:
    """Both sides of every seam of a kind [mm]."""
    for seam in pattern.seams:
        if seam.kind is kind:
            yield pattern.run_length(seam.first), pattern.run_length(seam.second)


@pytest.mark.parametrize("asked", [{}, {"fit": "eased", "neckline": "boat", "sleeve": "long"}])
def test_seams_are_as_long_on_both_sides(asked: dict[str, str]) -> None:
    """Raglan seams, overarm and underarm, within a hundredth of a millimetre."""
    pattern = top(MIDDLE, **asked).pattern
    for kind in (SeamKind.RAGLAN, SeamKind.OVERARM, SeamKind.SIDE):
        pairs = list(walked(pattern, kind))
        assert pairs
        assert [b for _, b in pairs] == pytest.approx([a for a, _ in pairs], abs=0.01), kind


@pytest.mark.parametrize("neckline", NECKS)
def test_the_neckline_is_the_set_in_tops_and_whole(neckline: str) -> None:
    """Parted between body and sleeves it is as long as before, and straight on at every seam."""
    made = top(MIDDLE, neckline=neckline)
    before = draft(invented(MIDDLE), "set-in-top", {"neckline": neckline}).pattern
    parts = [f"{of}{name}" for of in ("", "sleeve_") for name in HALVES]
    now = sum(made.pattern.piece(part).length("neckline") for part in parts)
    assert now == pytest.approx(sum(before.piece(name).length("neckline") for name in HALVES))
    crossed = [proof for proof in made.proofs if proof.of.startswith("neckline across the")]
    assert [proof.value < 0.5 for proof in crossed] == [True] * 3


@pytest.mark.parametrize(("asked", "turned"), [("turned", True), ("band", False)])
def test_a_neckline_is_turned_in_all_round_or_nowhere(asked: str, turned: bool) -> None:
    """On body and sleeves, so that their corners are mirrored alike where they are sewn."""
    pattern = top(neck_finish=asked).pattern
    pieces = [pattern.piece(f"{of}{name}") for of in ("", "sleeve_") for name in HALVES]
    assert [piece.edge("neckline").turned for piece in pieces] == [turned] * 4


@pytest.mark.parametrize("seam", ["1.2", "1.6", "2.5"])
def test_beside_a_turned_neck_an_allowance_may_be_wide(seam: str) -> None:
    """Its corner is cut off on the neckline's own line, so that what is turned in lies flat."""
    assert top(neckline="boat", seam_allowance=seam).failing == ()


def test_the_seams_are_compared_on_a_hand_draft() -> None:
    """Overarm, both raglan seams, and what closes side and underarm."""
    made = top()
    tables = [block for block in control_of(made).blocks if isinstance(block, Table)]
    rows = next(table.rows for table in tables if table.head[0] == "seam")
    assert [row[0] for row in rows] == [
        "overarm", "raglan, back", "raglan, front", "neckband", "side", "side, sleeve",
    ]  # fmt: skip


def test_the_raglan_line_bends_a_little() -> None:
    """From the neckline to the notch it stands off its chord by 5 to 12 mm, outwards."""
    for piece in (top(MIDDLE).pattern.piece(name) for name in HALVES):
        start, end = piece.points["raglan_neck"], piece.points["raglan_notch"]
        chord = (end - start).unit()
        line = [p for p in piece.edge("raglan_line").path.flattened() if p.y < end.y]
        off = [chord.cross(point - start) for point in line]
        assert min(off) > -12
        assert min(off) < -5
        assert max(off) < 0.5


def test_single_notches_in_front_and_double_ones_behind() -> None:
    """So that no sleeve is sewn in back to front; each meets its partner."""
    pattern = top(MIDDLE).pattern
    for name, strokes in (("back", 2), ("front", 1)):
        for piece in (name, f"sleeve_{name}"):
            notches = [n for n in pattern.piece(piece).notches if n.edge == "raglan_line"]
            assert [notch.strokes for notch in notches] == [strokes]


def test_wide_arms_lower_the_underarm_and_it_is_said() -> None:
    """Nobody asked for its depth, so the sleeve that was asked for is had."""
    made, usual = top({**MIDDLE, "upper_arm": 35.0}, sleeve_ease="7"), top(MIDDLE)
    assert level(made, "upper_arm").given == pytest.approx(420, abs=0.5)
    assert underarm(made).level > underarm(usual).level + 5
    assert "deeper than this fit's own" in " ".join(remarks(made))


def test_a_depth_that_was_asked_for_stays_and_the_ease_is_held_back() -> None:
    """What the armholes take is told instead."""
    made = top({**MIDDLE, "upper_arm": 38.0}, sleeve_ease="9", armhole_drop="0.5")
    under = underarm(made)
    assert under.level == pytest.approx(under.armscye + 5)
    assert level(made, "upper_arm").held_back
    assert "These armholes take a raglan sleeve with" in " ".join(remarks(made))
    assert made.failing == ()


def test_square_shoulders_and_the_widest_sleeve_are_drafted() -> None:
    """The underarm stays below where shoulder and overarm meet; what ease that leaves is told."""
    made = top({**MIDDLE, "shoulder_drop": 2.0}, sleeve_ease="24")
    assert made.failing == ()
    assert "These armholes take a raglan sleeve with" in " ".join(remarks(made))


def test_a_slim_sleeve_hangs_more_steeply() -> None:
    """The overarm bends more; so steep that the arm does not lift, it is said."""

    def bend(ease: str, arm: float) -> float:
        path = top({**MIDDLE, "upper_arm": arm}, sleeve_ease=ease).pattern.piece("sleeve_front")
        overarm = path.edge("overarm").path
        return overarm.leaving().angle_to(overarm.arriving())

    assert bend("2", 28.5) > bend("6", 28.5) + 3
    steep = top({**MIDDLE, "upper_arm": 22.0}, sleeve_ease="0")
    assert "hang steeply" in " ".join(remarks(steep))
    assert "hang steeply" not in " ".join(remarks(top(MIDDLE)))


def test_overarm_and_raglan_seams_come_before_neckband_and_sides() -> None:
    """Underarm and side are closed in one, last of all but the hems."""
    keys = [op.key for op in operations(top(MIDDLE).pattern, stitching(read_machines("zigzag")))]
    order = ["shoulders", "raglans", "head", "neckband", "sides", "hem"]
    assert sorted(order, key=keys.index) == order


def test_a_cuff_goes_round_both_halves() -> None:
    """Its edge is the hems of back and front half together."""
    pattern = top(MIDDLE, sleeve="long", sleeve_finish="cuff").pattern
    cuff = next(seam for seam in pattern.seams if seam.kind is SeamKind.CUFF)
    assert [run.piece for run in cuff.second] == ["sleeve_back", "sleeve_front"]
    assert level(top(MIDDLE, sleeve="long"), "sleeve_hem").given > pattern.run_length(cuff.first)


def test_a_band_is_walked_over_all_four_parts_of_the_neckline() -> None:
    """From its join at the centre back; a V's from its point."""
    back, sleeves, front = "back", ("sleeve_back", "sleeve_front"), "front"
    walk = (back, *sleeves, front)
    for neckline, pieces in (("round", walk), ("v", tuple(reversed(walk)))):
        pattern = top(MIDDLE, neckline=neckline).pattern
        seam = next(one for one in pattern.seams if one.kind is SeamKind.NECKBAND)
        assert tuple(run.piece for run in seam.second) == pieces
        assert all(isinstance(run, EdgeRun) and run.times == 2 for run in seam.second)


NOT_TAKEN = {
    "left-shoulder-lower", "right-shoulder-lower", "back-waist-shorter", "sleeve-flatter",
    "sleeve-forward",
}  # fmt: skip
"""What it has no way for: its shoulders are alike, and its sleeves are neither grown on nor set
in."""


def test_what_a_fitting_found_moves_the_pattern() -> None:
    """Every change that it has a way for moves a line of its pieces, and breaks no proof."""
    plain = _lines(draft(WHO, "raglan-top", {}).pattern)
    for key in CHANGES:
        found = Adjustment(what=key, amount=1.0)
        made = draft(WHO.having(adjustments=(found,)), "raglan-top", {})
        assert made.applied[0].used is (key not in NOT_TAKEN), key
        assert (_lines(made.pattern) != plain) is (key not in NOT_TAKEN), key
        assert made.failing == (), key


def _lines(pattern: Pattern) -> list[tuple[float, float]]:
    return [(p.x, p.y) for piece in pattern.pieces for p in piece.stitch_line()]


@pytest.mark.parametrize("asked", ["shoulder-placket=left", "sleeve=none", "neckline=cowl"])
def test_what_it_is_not_drafted_for_is_refused_in_a_sentence(asked: str) -> None:
    """No traceback, and what there is is named."""
    key, word = asked.split("=")
    with pytest.raises(TapewiseError, match=key):
        draft(invented(MIDDLE), "raglan-top", {key: word})
