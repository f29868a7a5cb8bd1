"""Garments that fit: what is noticed about them, and drafts that wear like them."""

from __future__ import annotations

from functools import cache

import pytest

from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.profiles.fitted import Loved
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.proof import ProofId
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.liking.like import draft_like
from tapewise_core.tasks.loved.flat import BY_KEY, FLAT
from tapewise_core.tasks.loved.keeping import loved_of, with_loved, without_loved
from tapewise_core.tasks.loved.likeness import given_of
from tapewise_core.tasks.loved.noticing import odd
from tapewise_core.tasks.people import body_of, person
from tapewise_core.tasks.record import record
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

NAME = "the blue one"

FLAT_CM = {
    "bust": 45.0, "waist": 37.0, "hip": 48.5, "length": 62.0, "sleeve": 20.0, "upper_arm": 16.5,
    "sleeve_hem": 16.0, "neck": 24.0, "neck_depth": 12.0,
}  # fmt: skip
"""A top of an example person whose bust is 92, waist 75, hip 99.5 and upper arm 29 [cm]."""


def owner(stretch: float | None = 50.0, **flat: float) -> Profile:
    """An example person with a garment that fits."""
    one = Loved(name=NAME, stretch=stretch, flat={**FLAT_CM, **flat})
    return person("Marta Lindqvist").having(loved=(one,))


@cache
def drafted(garment: str, now: float = 50.0, was: float | None = 50.0, **flat: float) -> Drafted:
    """A garment like it, in a cloth that stretches by ``now`` %."""
    return draft_like(owner(was, **flat), garment, NAME, {"stretch": f"{now:g}"})


def levels(made: Drafted) -> dict[str, float]:
    """The girths given [cm]."""
    return {level.name: level.given / 10 for level in made.pattern.facts.levels}


def rows(made: Drafted) -> dict[str, tuple[float, float | None]]:
    """There and given, by measure [cm]."""
    assert made.like is not None
    return {
        row.row.key: (row.there / 10, None if row.given is None else row.given / 10)
        for row in made.like.rows
    }


def test_in_the_same_cloth_everything_measures_as_there() -> None:
    """All nine flat measures of a set-in top come out within 3 mm, girths twice the width."""
    made = drafted("set-in-top")
    for key, flat in FLAT_CM.items():
        there, given = rows(made)[key]
        assert there == pytest.approx(BY_KEY[key].whole(flat))
        assert given == pytest.approx(there, abs=0.3), key
    assert made.like is not None
    assert all(row.same for row in made.like.rows)


def test_narrower_than_the_body_goes_with_the_stretch() -> None:
    """The share of the stretch that the cloth gives to the bust is the same; a sleeve wider
    than the arm stays as wide."""
    given = levels(drafted("set-in-top", 100.0))
    assert (92 / given["bust"] - 1) / 1.0 == pytest.approx((92 / 90 - 1) / 0.5, abs=0.002)
    assert given["upper_arm"] == pytest.approx(33.0, abs=0.1)
    stiff = levels(drafted("set-in-top", 0.0))
    assert stiff["bust"] == pytest.approx(92.0, abs=0.1)


def test_lengths_grow_where_the_cloth_narrows() -> None:
    """The body is longer in a cloth that stretches further across, and shorter in a stiffer."""
    soft, same, stiff = (rows(drafted("set-in-top", now))["length"][1] for now in (100, 50, 20))
    assert soft is not None
    assert same is not None
    assert stiff is not None
    assert soft > same + 0.3 > stiff + 0.5
    assert rows(drafted("set-in-top", 100))["sleeve"][1] == pytest.approx(20.0)


@pytest.mark.parametrize("garment", ["jersey-top", "flared-dress", "skirted-dress", "circle-skirt"])
def test_what_differs_is_told_with_its_reason(garment: str) -> None:
    """Each row is the same, or has a reason, or is told to be no part of the garment."""
    made = drafted(garment, 80.0)
    assert made.like is not None
    told = " ".join(Reader(Unit.CM).spell(one) for one in made.like.told)
    for row in made.like.rows:
        assert row.row.name in told or row.row.name.capitalize() in told
        assert row.same or row.given is None or row.why
    assert set(made.like.told) <= set(made.pattern.remarks)


@pytest.mark.parametrize("sleeve", ["cap", "short"])
def test_a_grown_on_top_comes_out_like_itself(sleeve: str) -> None:
    """Though its bust lies on the curve under the arm, and a cap's width is an armhole's."""
    own = draft(person("Marta Lindqvist"), "jersey-top", {"sleeve": sleeve})
    flat = {
        row.key: size / (20 if row.round else 10)
        for row in FLAT
        if (size := given_of(row.key, own.pattern, own.style)) is not None
    }
    made = draft_like(owner(**flat), "jersey-top", NAME, {"sleeve": sleeve, "stretch": "50"})
    assert made.like is not None
    assert [row.row.key for row in made.like.rows if not row.same] == []


def test_a_caps_width_that_no_sleeve_could_have_is_not_refused() -> None:
    """It is an armhole's: the draft begins with the usual sleeve and comes as near as it can."""
    made = draft_like(owner(upper_arm=26.0, sleeve=8.0), "jersey-top", NAME, {"sleeve": "cap"})
    given = rows(made)["upper_arm"][1]
    assert given is not None
    assert 47.0 < given < 52.5


def test_a_garment_that_narrows_below_its_waist_comes_out_like_itself() -> None:
    """Its hip does not hang from the waist: its sides are shaped as far as the waist asks."""
    who = person("Tomasz Wieczorek").with_value("hip", 97.0)
    own = draft(who, "set-in-top", {"fit": "straight"})
    sizes = {level.name: level.given for level in own.pattern.facts.levels}
    widths = {key: sizes[key] / 20 for key in ("bust", "waist", "hip")}
    assert widths["waist"] > widths["hip"] + 1.0
    mine = who.having(loved=(Loved(name=NAME, stretch=50.0, flat=widths),))
    made = draft_like(mine, "set-in-top", NAME, {})
    assert made.like is not None
    assert all(row.same for row in made.like.rows)


def test_a_loose_garment_is_loose_enough_for_a_cloth_that_hardly_stretches() -> None:
    """Its ease is that of its closest level; a close one is honestly too close."""
    for more, holds in ((8.0, True), (-1.0, False)):
        flat = {key: (FLAT_CM[key] + more) for key in ("bust", "waist", "hip")}
        made = draft_like(owner(**flat), "set-in-top", NAME, {"stretch": "20"})
        assert (ProofId.EASE not in {one.id for one in made.failing}) is holds


def test_a_tops_hem_is_not_asked_of_a_dress() -> None:
    """Which ends elsewhere, and has a stride to allow for."""
    made = drafted("flared-dress", hem=50.0)
    assert "flare" not in made.asked
    assert made.failing == ()


def test_a_tops_hem_is_not_asked_of_a_skirt() -> None:
    """A skirt has no such length at all, and keeps its own flare."""
    assert "flare" not in drafted("straight-skirt", hem=50.0).asked
    assert "flare" in drafted("straight-skirt", hem=54.0, skirt_length=58.0).asked


def test_no_sleeve_is_compared_where_there_is_none() -> None:
    """It is no part of the garment, not one of no length."""
    bare = draft_like(owner(), "set-in-top", NAME, {"sleeve": "none"})
    assert rows(bare)["sleeve"] == (20.0, None)
    assert rows(drafted("set-in-top"))["sleeve"][1] == pytest.approx(20.0, abs=0.3)


def test_a_cowl_hangs_as_deep_as_the_other_neck() -> None:
    """Both are measured below a line between the side necks."""
    made = draft_like(owner(neck_depth=11.5, neck=19.0), "set-in-top", NAME, {"neckline": "cowl"})
    assert made.style.length("cowl-depth").mm == pytest.approx(115)
    assert rows(made)["neck_depth"] == (11.5, pytest.approx(11.5))


def test_what_the_wearer_chose_herself_stays() -> None:
    """Her own ease counts, and the difference is hers."""
    made = draft_like(owner(), "set-in-top", NAME, {"bust-ease": "6"})
    assert levels(made)["bust"] == pytest.approx(98.0, abs=0.1)
    assert made.like is not None
    assert "it was chosen so" in Reader(Unit.CM).spell(made.like.told[1])


def test_a_flared_dress_takes_the_width_of_the_hem() -> None:
    """A hem of 70 flat comes out 140 round, within half a centimetre."""
    made = drafted("flared-dress", length=98.0, hem=70.0)
    assert rows(made)["hem"][1] == pytest.approx(140.0, abs=0.5)


def test_the_length_of_a_top_is_not_asked_of_a_dress() -> None:
    """The dress keeps its usual length, and says that the other has another."""
    dress = drafted("flared-dress")
    assert rows(dress)["length"][1] == pytest.approx(99.0, abs=1.0)
    assert "body-length" not in dress.asked


def test_the_record_has_both_and_why() -> None:
    """One row a measure, in cm; a draft like no other has none."""
    told = record(drafted("jersey-top", 80.0), ())["like"]
    assert isinstance(told, dict)
    assert told["name"] == NAME
    assert [row["name"] for row in told["rows"]] == [r.key for r in FLAT if r.key in FLAT_CM]
    hip = next(row for row in told["rows"] if row["name"] == "hip")
    assert (hip["there"], hip["given"]) == (97.0, pytest.approx(hip["wanted"], abs=0.3))
    assert hip["why"].startswith("this cloth stretches by 80 %")


@pytest.mark.parametrize(
    ("key", "typed", "proposed"),
    [("bust", 92.0, 46.0), ("hip", 24.0, 48.0), ("waist", 76.0, 38.0), ("upper_arm", 8.0, 16.0),
     ("shoulder", 38.0, 19.0), ("neck", 8.0, 16.0)],
)  # fmt: skip
def test_a_whole_for_a_half_and_a_folded_one_are_noticed(
    key: str, typed: float, proposed: float
) -> None:
    """The half or the double is proposed where that is likely."""
    profile = owner(**{key: typed})
    found = odd(loved_of(profile, NAME), body_of(profile)[0])
    assert [(one.key, one.proposed) for one in found] == [(key, proposed)]


@pytest.mark.parametrize(
    ("slips", "key", "proposed", "says"),
    [
        ({"upper_arm": 33.0}, "upper_arm", 16.5, "where the width at the bust is 45 cm"),
        ({"sleeve_hem": 32.0}, "sleeve_hem", 16.0, "Laid flat it would be 16 cm"),
        ({"shoulder": 22.0}, "shoulder", 11.0, "is that measured twice"),
        ({"neck": 12.0}, "neck", 24.0, "only half of it"),
        ({"length": 31.0}, "length", 62.0, "only half of it"),
        ({"bust": 17.7}, "bust", 45.0, "typed in the other unit"),
        ({"hip": 48.5 * 2.54}, "hip", 48.5, "typed in the other unit"),
        ({"waist": 48.5, "hip": 37.0}, "waist", 37.0, "are these two exchanged"),
    ],
)
def test_other_slips_are_noticed(
    slips: dict[str, float], key: str, proposed: float, says: str
) -> None:
    """By the body, or by the rest of the garment; each once, with what it may be instead."""
    profile = owner(**slips)
    (found,) = odd(loved_of(profile, NAME), body_of(profile)[0])
    assert found.key == key
    assert found.proposed == pytest.approx(proposed, abs=0.1)
    assert says in Reader(Unit.CM).spell(found.says)


@pytest.mark.parametrize("times", [1 / 2.54, 2.54])
def test_a_whole_garment_in_the_other_unit_is_one_remark(times: float) -> None:
    """Inches taken for centimetres, or the other way round."""
    loved = Loved(name=NAME, flat={key: size * times for key, size in FLAT_CM.items()})
    (found,) = odd(loved, body_of(owner())[0])
    assert found.proposed == pytest.approx(45.0)
    assert "all typed in the other unit" in Reader(Unit.CM).spell(found.says)


def test_a_full_skirt_is_as_wide_as_it_likes_at_the_hip() -> None:
    """A hip of 97 flat is a slip in a straight skirt, and none in a circle."""
    body = body_of(owner())[0]
    for hem, noticed in ((105.0, True), (200.0, False)):
        found = odd(Loved(name="x", flat={"hip": 97.0, "hem": hem}), body)
        assert bool(found) is noticed


def test_an_honest_garment_is_not_remarked_on() -> None:
    """Neither a close top nor a wide one."""
    body = body_of(owner())[0]
    assert odd(loved_of(owner(), NAME), body) == ()
    assert odd(Loved(name="tent", stretch=20.0, flat={"bust": 70.0, "hip": 75.0}), body) == ()


def test_a_cloth_stretched_beyond_what_it_can_is_noticed() -> None:
    """A waist of 60 on one of 75 in a cloth that stretches by 10 %."""
    found = odd(Loved(name="x", stretch=10.0, flat={"waist": 30.0}), body_of(owner())[0])
    assert [one.key for one in found] == ["waist"]
    assert "25 %" in Reader(Unit.CM).spell(found[0].says)


def test_garments_are_kept_changed_and_taken_off() -> None:
    """By their names, small and large letters alike; a measure taken off is gone."""
    made = with_loved(person("Marta Lindqvist"), "Red", ["bust=18 in", "stretch=40"], Unit.CM)
    made = with_loved(made, "RED", ["hip=49", "stretch="], Unit.CM)
    assert dict(loved_of(made, "red").flat) == {"bust": 45.72, "hip": 49.0}
    assert loved_of(made, "red").stretch is None
    assert dict(loved_of(with_loved(made, "red", ["hip="], Unit.CM), "red").flat) == {"bust": 45.72}
    assert without_loved(made, "Red").loved == ()


@pytest.mark.parametrize(
    ("setting", "fault", "says"),
    [("bst=4", OptionError, "did you mean bust?"), ("bust", OptionError, "not MEASURE=LENGTH"),
     ("bust=x", ReadingError, "not a length"), ("bust=400", ReadingError, "cannot be"),
     ("stretch=900", ReadingError, "percentage"),
     ("stretch=0.5", ReadingError, "half again is 50"),
     ("stretch=9", OptionError, "say a measure")],
)  # fmt: skip
def test_what_cannot_be_kept_is_told(setting: str, fault: type[Exception], says: str) -> None:
    """In one sentence; nothing is changed."""
    with pytest.raises(fault, match=says.replace("?", r"\?")):
        with_loved(person("Marta Lindqvist"), "red", [setting], Unit.CM)


@pytest.mark.parametrize(
    ("name", "says"),
    [(" ", "must not be empty"), ("a\x1bb", "plain characters"), ("x" * 81, "at most 80")],
)
def test_what_is_no_name_is_told(name: str, says: str) -> None:
    """A garment's name is one line, as a person's is."""
    with pytest.raises(OptionError, match=f"The garment's name .*{says}"):
        with_loved(person("Marta Lindqvist"), name, ["bust=46"], Unit.CM)


def test_a_name_that_is_not_on_file() -> None:
    """The sentence says which there are, or how to keep one."""
    with pytest.raises(OptionError, match="did you mean the blue one"):
        draft_like(owner(), "jersey-top", "the bleu one", {})
    with pytest.raises(OptionError, match="tapewise loved"):
        draft_like(person("Marta Lindqvist"), "jersey-top", "x", {})
