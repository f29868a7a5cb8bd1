"""Gathered skirts: what is drawn, told, proved and sewn."""

from __future__ import annotations

import pytest
from making import DAY, person
from read_aloud import remarks, spelt

from tapewise_core.errors import OptionError
from tapewise_core.lay.lay import lay_of
from tapewise_core.proofs.gathers import most_gathers
from tapewise_core.proofs.proof import ProofId
from tapewise_core.sewing.order import sewing_order
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

WOMAN = {
    "height": 167.0, "waist": 74.0, "hip": 99.0, "hip_depth": 20.5, "waist_to_knee": 59.0,
    "waist_to_floor": 104.0,
}  # fmt: skip
PEOPLE = {
    "middle": {},
    "big hip, small waist": {"waist": 64.0, "hip": 122.0},
    "round belly": {"waist": 112.0, "hip": 106.0, "high_hip": 115.0},
    "very full": {"waist": 138.0, "hip": 144.0},
    "thin": {"waist": 60.0, "hip": 84.0},
}
STYLES: tuple[dict[str, str], ...] = (
    {},
    {"waist_finish": "band"},
    {"tiers": "3", "skirt_length": "95"},
    {"tiers": "2", "waist_finish": "band", "cloth_width": "100", "cloth_weight": "300"},
    {"tiers": "3", "wash": "after", "shrinkage_across": "9"},
)


def skirt(who: str = "middle", /, **asked: str) -> Drafted:
    """Draft a skirt for one of these builds."""
    options = {key.replace("_", "-"): value for key, value in asked.items()}
    return draft(person({**WOMAN, **PEOPLE[who]}), "gathered-skirt", options, made=DAY)


@pytest.mark.parametrize("who", PEOPLE)
@pytest.mark.parametrize("asked", STYLES)
def test_every_build_can_wear_one(who: str, asked: dict[str, str]) -> None:
    """In one tier and in several, on elastic and band, from narrow and heavy cloth."""
    made = skirt(who, **asked)
    assert [proof.name for proof in made.failing if proof.id is not ProofId.CLOTH] == []
    tiers = [piece for piece in made.pattern.pieces if piece.name != "waistband"]
    too_wide = lay_of(made.pattern, made.cloth).too_wide
    assert not {piece.name for piece in tiers} & set(too_wide)
    for one in made.pattern.facts.levels:
        assert one.asked is None or one.given == pytest.approx(one.asked, abs=0.01)


@pytest.mark.parametrize("asked", STYLES)
def test_what_is_told_is_what_is_drawn(asked: dict[str, str]) -> None:
    """Every distance in the instructions is the distance between the points on the paper."""
    for drawn in skirt(**asked).pattern.drafts:
        for step in drawn.steps:
            for start, end, by in step.stated():
                assert (drawn[end] - drawn[start]).length() == pytest.approx(by.mm, abs=0.01)
            assert spelt(step)


def around(made: Drafted, name: str, edge: str) -> float:
    """The length of an edge of all panels of a tier [cm]."""
    piece = made.pattern.piece(name)
    return 2 * piece.count * piece.length(edge) / 10


def test_each_tier_is_gathered_by_its_ratio() -> None:
    """Waist 74: 1.8 times it, and each tier 1.4 times the one above, whatever its panels."""
    made = skirt(tiers="3", fullness="1.8", tier_fullness="1.4", cloth_width="90")
    assert around(made, "first_tier", "waist") == pytest.approx(74 * 1.8)
    assert around(made, "second_tier", "upper_edge") == pytest.approx(74 * 1.8 * 1.4)
    assert around(made, "third_tier", "hem") == pytest.approx(74 * 1.8 * 1.4**2)
    counts = [made.pattern.piece(f"{name}_tier").count for name in ("first", "second", "third")]
    assert counts == [2, 4, 4]
    assert all(made.pattern.pieces[i].length("side") * 3 == pytest.approx(590) for i in range(3))


def test_gathers_are_told_for_each_length() -> None:
    """On the table and at the machine, in the reader's own unit."""
    made = skirt(waist_finish="band", fullness="1.75", tiers="2", tier_fullness="1.5")
    steps = [spelt(step) for drawn in made.pattern.drafts for step in drawn.steps]
    assert "Gathered: 17.5 cm of the waist go to each 10 cm of what it is sewn to." in steps
    assert "Gathered: 15 cm of the upper edge go to each 10 cm of what it is sewn to." in steps
    order = sewing_order(made.pattern, made.stitching)
    inches = " ".join(Reader(Unit.IN).spell(told) for told in order)
    assert "7 in of this edge to each 4 in of that" in inches
    assert "6 in of this edge to each 4 in of that" in inches


def test_the_tiers_are_sewn_before_the_waist() -> None:
    """Panels, tiers from the top down, the waist, the hem."""
    made = skirt(tiers="3")
    order = [made.reader.spell(told) for told in sewing_order(made.pattern, made.stitching)]
    starts = ["Sew the skirt's seams", "Gather the second tier's", "Gather the third tier's",
              "Neaten the waist's edge", "Turn up the hem"]  # fmt: skip
    at = [next(i for i, one in enumerate(order) if one.startswith(start)) for start in starts]
    assert at == sorted(at)
    assert "pin it all round" in order[at[3]]


@pytest.mark.parametrize(
    ("weight", "most"), [(150.0, 440 / 150), (220.0, 2.0), (280.0, 440 / 280), (500.0, 1.25)]
)
def test_a_thick_cloth_takes_fewer_gathers(weight: float, most: float) -> None:
    """By its weight; what is just within it holds, a hundredth more does not."""
    assert most_gathers(weight) == pytest.approx(most)
    for more, holds in ((-0.006, True), (0.006, False)):
        asked = {"fullness": f"{most + more:.3f}", "cloth_weight": f"{weight:g}"}
        found = [p for p in skirt(**asked).proofs if p.id is ProofId.GATHERS]
        assert [proof.holds for proof in found] == [holds]


def test_too_many_gathers_are_mended_by_fewer() -> None:
    """The waist's or a tier's own."""
    for key, asked in (
        ("fullness", {"fullness": "2.5"}),
        ("tier-fullness", {"tiers": "2", "tier_fullness": "2.5"}),
    ):
        (proof,) = mended(skirt(**asked)).failing
        assert proof.settings
        assert list(proof.settings) == [key]


def test_heavy_cloth_is_gathered_less_unasked() -> None:
    """Down to what it takes."""
    for weight in ("220", "350", "600"):
        made = skirt(cloth_weight=weight)
        assert made.style.number("fullness") <= most_gathers(float(weight))
    assert skirt(cloth_weight="350").style.number("fullness") == pytest.approx(1.25)


def test_a_band_is_stretched_to_the_gathers_and_no_further() -> None:
    """The edge that the band meets is what the skirt is gathered to, not its whole width."""
    made = skirt(waist_finish="band", fullness="2")
    proof = next(proof for proof in made.proofs if proof.id is ProofId.WAISTBAND)
    edge = made.pattern.lengths["waist edge"]
    assert f"stretched to {edge / 10:g} cm of waist" in made.reader.spell(proof.says)
    assert proof.holds


def test_it_says_what_it_weighs_and_how_it_is_cut() -> None:
    """Area times the cloth's weight: 74 × 1.75 wide and 59 long of 300 g/m² are 229 g."""
    told = remarks(skirt(fullness="1.75", cloth_weight="250", skirt_length="60"))
    assert "2 of 64.8 cm" in told[0]
    assert f"about {0.74 * 1.75 * 0.6 * 250:.0f} g" in told[1]


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ({"tiers": "4", "skirt_length": "30"}, "choose fewer tiers, or at least 32 cm"),
        ({"tiers": "4", "fullness": "3", "tier_fullness": "3"}, "1200 cm is the most"),
    ],
)
def test_what_cannot_be_sewn_is_refused(asked: dict[str, str], says: str) -> None:
    """Tiers too low to sew, and a hem nobody would."""
    with pytest.raises(OptionError, match=says):
        skirt(**asked)
