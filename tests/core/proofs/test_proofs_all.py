"""Every garment answers for its proofs, or a reason says why not."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from making import DAY, MIDDLE, person

from tapewise_core.garments.shelf import garment, garments
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.all import PROVERS
from tapewise_core.proofs.levels import ASKED
from tapewise_core.proofs.proof import LACKS, ProofId, Silent
from tapewise_core.tasks import people
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended
from tapewise_core.tasks.record import record
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

PLAIN: dict[str, str] = {}
STYLES: dict[str, tuple[dict[str, str], ...]] = {
    "jersey-top": (
        PLAIN,
        {"lower-shoulder": "left", "lower-shoulder-by": "1", "hem": "split", "neckline": "v"},
        {"lower-shoulder": "right", "lower-shoulder-by": "1", "neck-finish": "facing"},
        {"neckline": "v", "neck-finish": "facing", "sleeve": "long", "hem": "curved"},
        {"neck-finish": "turned", "body-length": "105"},
        {"body-length": "105", "hem": "split"},
        {"sleeve": "none"},
        {"sleeve": "long", "sleeve-finish": "cuff", "hem-finish": "band"},
        {"shoulder-placket": "left"},
    ),
    "flared-dress": (
        PLAIN,
        {"belt": "yes", "pockets": "yes", "hem": "split", "neckline": "v", "sleeve": "long"},
        {"lower-shoulder": "left", "lower-shoulder-by": "1", "pockets": "yes"},
        {"body-length": "120", "neckline": "boat", "neck-finish": "facing"},
        {"sleeve": "none", "belt": "yes"},
        {"sleeve": "long", "sleeve-finish": "cuff", "hem-finish": "band"},
    ),
    "circle-skirt": (
        PLAIN,
        {"circle": "1/2", "waist-finish": "band"},
        {"circle": "1/4", "skirt-length": "80", "cloth-width": "90"},
        {"skirt-length": "80", "cloth-width": "80"},
        {"waist-finish": "band", "panels": "2"},
    ),
    "gathered-skirt": (
        PLAIN,
        {"waist-finish": "band", "tiers": "3"},
    ),
    "straight-skirt": (
        PLAIN,
        {"skirt-length": "85", "waist-finish": "band", "vent": "slits"},
        {"flare": "-3", "vent": "none"},
        {"skirt-length": "85"},
    ),
    "skirted-dress": (
        PLAIN,
        {"lower-shoulder": "right", "lower-shoulder-by": "1", "circle": "1"},
        {"neckline": "v", "skirt-length": "90", "circle": "1/4", "sleeve": "long"},
        {"weight-allowance": "no"},
        {"skirt": "gathered", "tiers": "2"},
        {"skirt": "straight", "skirt-length": "85"},
        {"sleeve-cut": "set-in", "sleeve": "long", "sleeve-finish": "cuff"},
        {"sleeve": "none", "skirt": "straight", "hem-finish": "band"},
    ),
    "set-in-top": (
        PLAIN,
        {"neckline": "v", "sleeve": "long", "hem": "curved"},
        {"body-length": "105", "neck-finish": "turned"},
        {"sleeve": "none", "armhole-finish": "facing"},
        {"sleeve": "long", "sleeve-finish": "cuff", "hem-finish": "band"},
    ),
    "raglan-top": (
        PLAIN,
        {"neckline": "v", "sleeve": "long", "hem": "curved"},
        {"body-length": "105", "neck-finish": "turned"},
        {"sleeve": "long", "sleeve-finish": "cuff", "hem-finish": "band"},
    ),
}
"""Styles with every part that proofs look for, by garment."""

LONG = {**MIDDLE, "waist_to_knee": 59.0, "waist_to_floor": 104.0}


def drafts(profile: Profile) -> Iterator[Drafted]:
    """Draft every garment in every style, each plain one once from cloth of a known length."""
    for name, styles in STYLES.items():
        for asked in (*styles, {"cloth-length": "400"}):
            yield draft(profile, name, asked, made=DAY)


@pytest.fixture(scope="module")
def made() -> list[Drafted]:
    """One woman's garments, her legs measured."""
    return list(drafts(person(LONG)))


def spelt(silent: Silent) -> str:
    """Spell why a proof is silent."""
    return Reader(Unit.CM).spell(silent.reason)


def test_every_id_has_its_prover() -> None:
    """In the order of the ids, which is the order they are told in."""
    assert list(PROVERS) == list(ProofId)
    assert set(STYLES) == {page.name for page in garments()}


def test_every_proof_answers_or_says_why_not(made: list[Drafted]) -> None:
    """Each id once among the silent, or else among the proofs; never in both, never in neither."""
    for drafted in made:
        spoken = {proof.id for proof in drafted.proofs}
        silent = [one.id for one in drafted.silent]
        assert len(silent) == len(set(silent))
        assert spoken.isdisjoint(silent)
        assert spoken | set(silent) == set(ProofId)
        assert all(spelt(one).endswith(".") for one in drafted.silent)


def test_no_two_proofs_of_a_draft_are_about_the_same(made: list[Drafted]) -> None:
    """Id and subject together are one of a kind, and so is the name a person reads."""
    for drafted in made:
        keys = [(proof.id, proof.of) for proof in drafted.proofs]
        assert len(keys) == len(set(keys))
        names = [proof.name for proof in drafted.proofs]
        assert len(names) == len(set(names)), drafted.garment.name


def test_a_garment_is_silent_only_by_style_about_what_it_covers(made: list[Drafted]) -> None:
    """And says that it has no such thing about everything else, whatever the style."""
    for drafted in made:
        covers = drafted.garment.covers
        assert {proof.id for proof in drafted.proofs} <= covers
        for one in drafted.silent:
            assert spelt(one).startswith(LACKS) is (one.id not in covers), (one.id, spelt(one))


def test_every_covered_proof_answers_in_some_style(made: list[Drafted]) -> None:
    """Nothing is claimed to be covered that never speaks."""
    for page in garments():
        spoken = {p.id for one in made if one.garment is page for p in one.proofs}
        assert spoken == page.covers, page.name


def test_a_measure_that_is_not_known_is_a_reason_too() -> None:
    """For a child nothing is estimated: a long skirt can't be judged for her stride."""
    child = person({"height": 110.0, "waist": 52.0, "hip": 60.0})
    drafted = draft(child, "circle-skirt", {"skirt-length": "80"}, made=DAY)
    silent = {one.id: spelt(one) for one in drafted.silent}
    assert silent[ProofId.STRIDE] == "How high knee and ankle lie is not known."
    assert not silent[ProofId.GIRTH].startswith(LACKS)


def test_the_record_has_ids_subjects_and_the_silent(made: list[Drafted]) -> None:
    """As plain values."""
    for drafted in made:
        told = record(drafted, [])
        proofs, silent = told["proofs"], told["silent"]
        assert isinstance(proofs, list)
        assert isinstance(silent, list)
        assert [(p["id"], p["of"]) for p in proofs] == [(p.id, p.of) for p in drafted.proofs]
        assert silent == [{"id": one.id, "reason": spelt(one)} for one in drafted.silent]


def test_a_long_set_in_top_answers_for_its_stride() -> None:
    """As one with grown-on sleeves does; her shorter length mends both."""
    noor = people.person("Noor Haddad")
    for name in ("set-in-top", "jersey-top"):
        drafted = mended(draft(noor, name, {"body-length": "105"}, made=DAY))
        (proof,) = (p for p in drafted.proofs if p.id is ProofId.STRIDE)
        assert not proof.holds
        again = draft(noor, name, proof.settings or {}, made=DAY)
        assert ProofId.STRIDE in {one.id for one in again.silent}


def test_an_inch_reader_is_told_inches_only(made: list[Drafted]) -> None:
    """No proof's sentence keeps a centimetre."""
    reader = Reader(Unit.IN)
    for drafted in made:
        for says in (*(p.says for p in drafted.proofs), *(s.reason for s in drafted.silent)):
            assert " cm" not in reader.spell(says)


def test_covers_can_be_asked_by_name() -> None:
    """The set-in top covers what the top does, its cap, and every level above its hem."""
    more = garment("set-in-top").covers - garment("jersey-top").covers
    assert more - set(ASKED) == {ProofId.CAP, ProofId.CAP_HEIGHT}
    assert garment("set-in-top").covers >= set(ASKED) - {ProofId.HEM}
