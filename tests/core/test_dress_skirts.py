"""The skirts of a skirted dress: circle, gathered, straight, on one bodice."""

from __future__ import annotations

import pytest
from making import DAY, MIDDLE, person
from read_aloud import remarks

from tapewise_core.errors import DraftError, OptionError
from tapewise_core.parts.hanging import growth
from tapewise_core.proofs.proof import ProofId
from tapewise_core.sewing.order import operations
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

LEGS = {"waist_to_knee": 58.0, "waist_to_floor": 102.0}
PEOPLE = {
    "middle": {},
    "big hip, small waist": {"waist": 70.0, "hip": 104.0},
    "round belly": {"bust": 108.0, "high_bust": 102.0, "waist": 112.0, "hip": 106.0,
                    "upper_arm": 35.0, "high_hip": 114.0},
    "full bust": {"bust": 108.0, "high_bust": 93.0, "front_waist_length": 46.0},
}  # fmt: skip
KINDS = ("circle", "gathered", "straight")


def dress(who: str = "middle", /, **asked: str) -> Drafted:
    """Draft a dress for one of these builds."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    body = {**MIDDLE, **LEGS, **PEOPLE[who]}
    return draft(person(body), "skirted-dress", options, made=DAY)


def level(made: Drafted, name: str) -> float:
    """What a dress has at a level [cm]."""
    return next(one.given for one in made.pattern.facts.levels if one.name == name) / 10


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize(
    "asked",
    [
        {"skirt": "gathered"},
        {"skirt": "gathered", "tiers": "3", "skirt_length": "80"},
        {"skirt": "straight"},
        {"skirt": "straight", "skirt_length": "85"},
        {"skirt": "straight", "flare": "8", "vent": "slits"},
        {"sleeve_cut": "set-in"},
        {"sleeve_cut": "set-in", "skirt": "straight", "sleeve": "long"},
        {"sleeve_cut": "set-in", "skirt": "gathered", "neckline": "v", "fit": "straight"},
    ],
)
def test_every_build_can_wear_it(who: str, asked: dict[str, str]) -> None:
    """All proofs hold, and what was asked is given or held back with a reason."""
    made = dress(who, **asked)
    assert [made.reader.spell(proof.says) for proof in made.failing] == []
    for one in made.pattern.facts.levels:
        if one.asked is not None and one.name in ("waist", "hip", "hem"):
            assert abs(one.given - one.asked) < 1.0 or one.held_back, one.name


@pytest.mark.parametrize("kind", KINDS)
def test_the_waist_seam_and_its_marks_meet(kind: str) -> None:
    """Skirt and bodice are as long, or gathered to it, and every mark has its partner."""
    proofs = {proof.name: proof for proof in dress(skirt=kind).proofs}
    assert proofs["waist seam"].holds
    assert proofs["waist seam"].value < 0.1
    assert proofs["notches"].holds


def test_the_hip_is_asked_of_a_straight_skirt_alone() -> None:
    """With its own ease, whatever the bodice's; the others are as wide as their cut makes them."""
    straight = dress(skirt="straight", hip_ease="3")
    assert level(straight, "hip") == pytest.approx(99 + 3)
    for kind in ("circle", "gathered"):
        silent = {one.id: straight.reader.spell(one.reason) for one in dress(skirt=kind).silent}
        assert silent[ProofId.HIP].startswith("A full skirt")
    bust = [level(dress(skirt="straight", hip_ease=ease), "bust") for ease in ("0", "12")]
    assert bust[0] == bust[1]


@pytest.mark.parametrize("kind", KINDS)
def test_the_bodice_is_shorter_by_what_its_skirt_weighs(kind: str) -> None:
    """2 cm for 340 g, in proportion, and it is said what hangs there."""
    made, off = (dress(skirt=kind, weight_allowance=word) for word in ("yes", "no"))
    waists = [one.pattern.piece("back").points["centre_hem"].y for one in (made, off)]
    told = next(note for note in remarks(made) if "weighs" in note)
    grams = float(told.split("about ")[1].split(" g")[0])
    assert waists[1] - waists[0] == pytest.approx(growth(grams), abs=0.3)
    assert "hangs from the waist seam" in told


def test_each_skirt_is_hemmed_and_joined_in_its_own_way() -> None:
    """A circle hangs first, gathers are drawn up before they are pinned, a vent is finished."""
    for kind, keys, never in (
        ("circle", ("hang", "hem"), "waist-gather"),
        ("gathered", ("waist-stay", "waist-gather", "waist-pin", "waist", "hem"), "hang"),
        ("straight", ("panels", "waist", "vent", "hem"), "hang"),
    ):
        made = dress(skirt=kind, skirt_length="85")
        order = [one.key for one in operations(made.pattern, made.stitching)]
        at = [order.index(key) for key in keys]
        assert at == sorted(at), kind
        assert never not in order


def test_the_title_names_the_skirt() -> None:
    """On every sheet."""
    assert [dress(skirt=kind).pattern.title for kind in KINDS] == [
        f"Jersey dress with a {kind} skirt" for kind in KINDS
    ]


def test_options_of_another_skirt_are_not_at_work() -> None:
    """What has nothing to do in a style is not asked for there."""
    made = dress(skirt="straight")
    idle = {one.key for one in made.garment.options if not one.at_work(made.style)}
    assert {"circle", "panels", "fullness", "tiers", "tier-fullness", "vent-length"} <= idle
    assert not {"flare", "vent", "hip-ease", "skirt-length"} & idle


def test_a_set_in_bodice_is_the_set_in_top_cut_at_the_waist() -> None:
    """The same shoulder and sleeve; below the armhole the side ends at the waist seam."""
    whole = {**MIDDLE, **LEGS}
    top = draft(person(whole), "set-in-top", {"fit": "fitted", "waist-shaping": "100"}, made=DAY)
    made = dress(sleeve_cut="set-in", fit="fitted", weight_allowance="no")
    for piece in ("back", "front"):
        mine, other = made.pattern.piece(piece), top.pattern.piece(piece)
        assert mine.length("shoulder") == pytest.approx(other.length("shoulder"))
        assert not mine.has_edge("hem")
        assert mine.points["waist_seam_side"].y == pytest.approx(405.0, abs=0.01)
    assert made.pattern.piece("sleeve").length("sleeve_hem") > 0
    assert level(made, "upper_arm") == pytest.approx(level(top, "upper_arm"), abs=0.3)


def test_a_full_bust_keeps_its_dart_above_the_waist_seam() -> None:
    """Let down in front, taken up by a side dart, and the waist seam still meets the skirt."""
    made = dress("full bust", sleeve_cut="set-in", bust_room="side-dart")
    assert made.pattern.piece("front").has_edge("dart_upper")
    assert not made.failing


def test_each_cut_has_its_own_sleeve_unasked() -> None:
    """A cap is grown on; a set-in sleeve is short, and its ease is the fit's."""
    grown, set_in = (dress(sleeve_cut=cut).style for cut in ("grown-on", "set-in"))
    assert set_in.choice("sleeve") == "short"
    assert set_in.length("sleeve-ease").mm != grown.length("sleeve-ease").mm


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ({"sleeve": "cap"}, "A cap is no sleeve to set in"),
        ({"sleeve_length": "9"}, "a set-in sleeve's cap asks for 14 cm at least"),
        ({"neck_finish": "facing"}, "set neck-finish to band or turned"),
    ],
)
def test_what_no_set_in_sleeve_has_is_refused(asked: dict[str, str], says: str) -> None:
    """With what would do."""
    with pytest.raises(OptionError, match=says):
        dress(sleeve_cut="set-in", **asked)


CHILD = {
    "height": 110.0, "bust": 57.0, "waist": 53.0, "hip": 60.0, "head": 51.0, "neck": 26.5,
    "upper_arm": 17.5, "wrist": 12.0, "back_waist_length": 25.5, "armscye_depth": 12.5,
    "hip_depth": 12.0, "shoulder_length": 8.2, "shoulder_drop": 3.0, "arm_length": 38.0,
    "waist_to_knee": 35.0, "waist_to_floor": 66.0,
}  # fmt: skip


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("cut", ["grown-on", "set-in"])
def test_a_child_has_a_dress_of_every_kind_unasked(kind: str, cut: str) -> None:
    """The sleeve is no shorter than its cap, and the hem lets short legs stride."""
    made = draft(person(CHILD), "skirted-dress", {"skirt": kind, "sleeve-cut": cut}, made=DAY)
    assert [made.reader.spell(proof.says) for proof in made.failing] == []


def test_a_grown_on_bodice_is_silent_about_armholes() -> None:
    """By its style, since the other cut has them."""
    made = dress()
    silent = {one.id: made.reader.spell(one.reason) for one in made.silent}
    for about in (ProofId.CAP, ProofId.CAP_HEIGHT, ProofId.ARMHOLE):
        assert silent[about].startswith("The sleeves are grown on")


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("cut", ["grown-on", "set-in"])
def test_the_side_seam_of_a_straight_skirt_goes_on_from_the_bodices(who: str, cut: str) -> None:
    """A front made wider for the cup has a skirt front as much wider below it; hip and hem stay."""
    made = dress(who, skirt="straight", sleeve_cut=cut, flare="4")
    halves = {name: made.pattern.piece(name) for name in ("back", "skirt_back", "skirt_front")}
    seam = halves["back"].sewn("waist")
    assert halves["skirt_back"].length("waist") == pytest.approx(seam, abs=0.1)
    sides = [halves[f"skirt_{name}"].edge("side").path.length() for name in ("back", "front")]
    assert sides[0] == pytest.approx(sides[1], abs=0.01)
    for one in made.pattern.facts.levels:
        if one.name in ("hip", "hem") and not one.held_back:
            assert one.asked is not None
            assert one.given == pytest.approx(one.asked, abs=0.1)
    for drawn in made.pattern.drafts:
        for step in drawn.steps:
            for start, end, by in step.stated():
                assert (drawn[end] - drawn[start]).length() == pytest.approx(by.mm, abs=0.01)


def test_a_grown_on_sleeve_keeps_the_ease_that_it_was_drawn_with() -> None:
    """What an armhole settles while it is drawn is a set-in sleeve's alone."""
    made = dress("round belly", sleeve="cap")
    again = made.garment.draft(made.body, made.style)
    assert again.girths == made.pattern.girths


@pytest.mark.parametrize(
    ("garment", "says", "then"),
    [
        ("skirted-dress", "set sleeve-cut to set-in, or sleeve to none", {"sleeve-cut": "set-in"}),
        ("flared-dress", "set sleeve to none", {"sleeve": "none"}),
        ("jersey-top", "set sleeve to none", {"sleeve": "none"}),
    ],
)
def test_a_sleeve_that_meets_no_body_is_told_what_this_garment_has(
    garment: str, says: str, then: dict[str, str]
) -> None:
    """What is named can be drafted for her."""
    girths = {"bust": 118.0, "waist": 108.0, "hip": 122.0, "upper_arm": 38.0}
    full = person({**MIDDLE, **LEGS, **girths, "shoulder_length": 11.0})
    with pytest.raises(DraftError, match=f"(?i){says}"):
        draft(full, garment, {"sleeve-length": "3"}, made=DAY)
    assert draft(full, garment, then, made=DAY).pattern.pieces


SHORT_WAISTED = {
    "bust": 117.6, "high_bust": 101.8, "waist": 98.7, "hip": 111.4, "upper_arm": 35.0,
    "back_waist_length": 36.2, "front_waist_length": 41.8, "neck_to_bust_point": 33.0,
}  # fmt: skip


@pytest.mark.parametrize("asked", [{"sleeve": "none"}, {"sleeve-cut": "set-in"}])
def test_a_short_waisted_full_bust_has_its_dart(asked: dict[str, str]) -> None:
    """The waist seam lies 7.4 cm below the bust line; what the dart takes up lies on the body."""
    who = person({**MIDDLE, **LEGS, **SHORT_WAISTED})
    made = draft(who, "skirted-dress", {"armhole-finish": "turned", **asked}, made=DAY)
    front = made.pattern.piece("front")
    assert front.has_edge("dart_upper")
    side = [edge.path.length() for edge in front.edges if edge.name.startswith("side")]
    assert min(side) > 30
    assert [made.reader.spell(proof.says) for proof in made.failing] == []
