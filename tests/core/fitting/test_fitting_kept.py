"""What a fitting taught is kept with the person, used by later drafts, and can be taken away."""

from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest
from fitted_pieces import WHO
from making import DAY

from tapewise_core.drafting.labels import label_lines
from tapewise_core.errors import OptionError, ReadingError
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.ways import Move
from tapewise_core.tasks.changing import taken_back, turns
from tapewise_core.tasks.documents import drawings_of
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.fitting import (
    caution,
    kept,
    line_of,
    read_amount,
    seen,
    tried,
    tube_told,
    without,
)
from tapewise_core.tasks.fitting_still import still_told
from tapewise_core.tasks.people import store
from tapewise_core.tasks.record import record, record_text
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

THIRD = date(2026, 3, 3)
CM = Reader(Unit.CM)


def found(key: str = "back-neck-stands-off", answer: str = "above") -> Adjustment:
    """What a fitting on a jersey top found."""
    return tried(WHO, seen(WHO, "jersey-top", key, answer), 0.5, day=THIRD).adjustment


def test_a_later_draft_of_any_garment_uses_it_and_says_so() -> None:
    """In the instructions, on the label and in the record, with the day of the fitting."""
    who = kept(WHO, found())
    for garment in ("jersey-top", "flared-dress", "set-in-top"):
        drafted = draft(who, garment, {}, made=DAY)
        words = "after the fitting of 3 March: back neck raised 0.5 cm"
        assert drafted.fitted == (words,)
        assert words in drawings_of(drafted)[0].description.replace("; ", " ")
        assert drafted.reader.spell(drafted.pattern.remarks[0]) == f"A{words[1:]}."
        assert drafted.fingerprint != draft(WHO, garment, {}, made=DAY).fingerprint
        (row,) = record(drafted, ())["adjustments"]  # type: ignore[misc]
        assert (row["what"], row["amount"], row["used"]) == ("back-neck-raised", 0.5, True)
        assert (row["date"], row["why"]) == ("2026-03-03", None)


def test_a_garment_without_a_way_for_it_says_why() -> None:
    """It is listed as not used, and the garment is as it was."""
    who = kept(WHO, found())
    drafted, plain = (draft(one, "circle-skirt", {}, made=DAY) for one in (who, WHO))
    says = "Found at a fitting and not used here: back neck raised 0.5 cm, because the circle "
    assert drafted.reader.spell(drafted.pattern.remarks[0]) == f"{says}skirt has no neckline."
    assert drafted.fingerprint == plain.fingerprint
    assert drafted.fitted == ()


def test_what_cannot_be_drawn_is_left_out_alone() -> None:
    """A shoulder that cannot go so far forward leaves the other adjustments in the draft."""
    days = [THIRD + timedelta(days) for days in range(3)]
    forward = [Adjustment(what="shoulder-forward", amount=1.5, date=day) for day in days]
    who = WHO.having(adjustments=(*forward, found()))
    drafted = draft(who, "jersey-top", {"sleeve": "cap"}, made=DAY)
    assert [one.used for one in drafted.applied] == [True, False, False, True]
    assert "forward-shoulder" in CM.spell(drafted.applied[1].why)


def test_a_skirt_of_another_kind_says_why() -> None:
    """The hem of a circle skirt is levelled; under the same bodice a gathered one is left alone."""
    one = Adjustment(what="sides-raised", amount=1.0, date=THIRD)
    who = WHO.having(adjustments=(one,))
    drafted = draft(who, "skirted-dress", {"skirt": "gathered"}, made=DAY)
    assert "takes no change of its hem at the sides" in CM.spell(drafted.applied[0].why)
    drafted = draft(who, "skirted-dress", {"panels": "2"}, made=DAY)
    assert drafted.applied[0].used


def test_a_style_without_the_place_has_no_use_for_its_change() -> None:
    """A turned neckline has no band, a bare arm no sleeve, a grown-on sleeve no armhole."""
    days = ("band-longer", 3.0), ("sleeve-wider", 1.0), ("underarm-raised", 1.0)
    found = tuple(Adjustment(what=what, amount=by, date=THIRD) for what, by in days)
    who = WHO.having(adjustments=found)
    used = {
        ("jersey-top", "neck-finish", "turned"): [False, True, False],
        ("set-in-top", "neck-finish", "band"): [True, True, True],
        ("set-in-top", "sleeve", "none"): [True, False, True],
        ("skirted-dress", "sleeve-cut", "grown-on"): [True, True, False],
        ("skirted-dress", "sleeve-cut", "set-in"): [True, True, True],
    }
    for (garment, key, word), uses in used.items():
        drafted = draft(who, garment, {key: word, "fit": "eased"}, made=DAY)
        assert [one.used for one in drafted.applied] == uses, (garment, word)
    assert seen(WHO, "jersey-top", "band-puckers", asked={"neck-finish": "turned"}).remedy is None


def test_nobody_else_and_a_newer_version_do_no_harm() -> None:
    """A change that this version does not know is told and left alone."""
    who = WHO.having(adjustments=(Adjustment(what="hem of glass", amount=1.0),))
    drafted = draft(who, "jersey-top", {}, made=DAY)
    assert not drafted.applied[0].used
    assert "knows no change of that name" in CM.spell(drafted.pattern.remarks[0])


def test_fittings_add_up_and_taking_one_away_brings_the_old_draft_back() -> None:
    """To the byte, whichever is taken."""
    first, second = found(), found("front-neck-chokes", "front")
    one, both = kept(WHO, first), kept(kept(WHO, first), second)
    texts = [record_text(draft(who, "jersey-top", {}, made=DAY), ()) for who in (WHO, one, both)]
    assert len(set(texts)) == 3
    back, gone = without(both, 2)
    assert gone == second
    assert record_text(draft(back, "jersey-top", {}, made=DAY), ()) == texts[1]
    plain, _ = without(back, 1)
    assert record_text(draft(plain, "jersey-top", {}, made=DAY), ()) == texts[0]
    with pytest.raises(OptionError, match="There is no adjustment 3; there are 2"):
        without(both, 3)


def test_one_fitting_changes_no_more_than_two_centimetres_at_a_place() -> None:
    """The same change at one fitting is added up; more than 2 cm says measure again."""
    one = Adjustment(what="front-longer", amount=1.5, date=THIRD, garment="jersey-top")
    more = replace(one, amount=0.5)
    assert [row.amount for row in kept(kept(WHO, one), more).adjustments] == [2.0]
    with pytest.raises(OptionError, match=r"2\.1 cm at one fitting.*take it again"):
        kept(kept(WHO, one), replace(one, amount=0.6))
    later = replace(one, date=DAY)
    assert len(kept(kept(WHO, one), later).adjustments) == 2


def test_amounts_are_typed_within_the_limits_and_refused_beyond() -> None:
    """In the reader's unit; what was told passes as it was told."""
    remedy = seen(WHO, "jersey-top", "back-neck-stands-off", "above").remedy
    assert remedy is not None
    assert read_amount(remedy, "0.5", Unit.CM) == 0.5
    assert read_amount(remedy, "3/8", Unit.IN) == pytest.approx(0.95, abs=0.01)
    with pytest.raises(OptionError) as fault:
        read_amount(remedy, "3", Unit.CM)
    assert CM.spell(fault.value.told) == (
        "At one fitting this is changed by 0.3 cm to 1 cm, and not by 3 cm."
    )
    with pytest.raises(ReadingError):
        read_amount(remedy, "a bit", Unit.CM)
    band = seen(WHO, "jersey-top", "band-puckers").remedy
    assert band is not None
    assert read_amount(band, "4 %", Unit.CM) == 4.0


def test_a_question_must_be_answered() -> None:
    """The sentence has the question and its answers; near names are offered."""
    with pytest.raises(OptionError, match=r"lifted a little\? Answer yes: .*; no: "):
        seen(WHO, "jersey-top", "front-neck-gapes")
    with pytest.raises(OptionError, match=r"“maybe” is no answer for front-neck-gapes"):
        seen(WHO, "jersey-top", "front-neck-gapes", "maybe")
    with pytest.raises(OptionError, match="did you mean band-waves"):
        seen(WHO, "jersey-top", "band-wave")


def test_a_cause_that_no_pattern_mends_is_advice() -> None:
    """Cloth that spirals is not drafted away, and a sleeve that is cut on has no pitch."""
    with pytest.raises(OptionError, match="Wash the cloth"):
        tried(WHO, seen(WHO, "set-in-top", "sleeve-twists", "cloth"))
    other = seen(WHO, "jersey-top", "sleeve-twists", "sleeve")
    assert other.remedy is None
    with pytest.raises(OptionError, match="no sleeve that could be turned"):
        tried(WHO, other)


def test_a_proposal_breaks_no_proof_where_less_would_not() -> None:
    """The least is proposed where the middle would fail; what moves is told before and after."""
    trial = tried(WHO, seen(WHO, "jersey-top", "band-waves", "all"), day=THIRD)
    assert trial.failing == () or trial.adjustment.amount == 3.0
    names = {name: (old, new) for name, old, new in trial.moved}
    old, new = names["neckband length"]
    assert new < old
    overlay = trial.overlay()
    assert {ink.part for ink in overlay.inks if ink.part} == {"back", "front", "neckband"}


def test_a_change_that_moves_nothing_says_so_and_why() -> None:
    """A back as wide as its shoulder lets it be cannot be widened; on a usual one it moves."""
    wide = WHO.with_value("across_back", 46.0)
    trials = [
        tried(who, seen(who, "set-in-top", "pulls-between-blades", "across"), 1.0, day=THIRD)
        for who in (wide, WHO)
    ]
    told = " ".join(Reader(Unit.CM).spell(one) for one in still_told(trials[0]))
    assert told.startswith("Nothing moves: this pattern goes no further there. Half the across")
    assert told.endswith("narrower than measured: the shoulder ends there.")
    assert trials[1].moved
    assert still_told(trials[1]) == ()


def test_it_is_in_the_file_in_history_and_in_copies(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Saved, merged with another window's change, restored and copied like a measure."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path))
    store.save(WHO)
    base = store.load(WHO.name)
    other = store.keep(base.with_value("hip", 100.0), base).profile
    now = store.keep(kept(base, found()), base).profile
    assert (now.adjustments[0].what, now.values()["hip"].cm) == ("back-neck-raised", 100.0)
    assert store.states(WHO.name)[1].profile == other
    store.restore_state(WHO.name, "2")
    assert store.load(WHO.name).adjustments == ()
    store.restore_state(WHO.name, "2")
    again = store.load(WHO.name)
    assert Profile.from_text(again.text()).adjustments == now.adjustments
    gone, _ = without(again, 1)
    assert store.keep(gone, again).profile.adjustments == ()


def test_a_list_tells_what_when_and_on_what() -> None:
    """The year is told where it is another one."""
    one = found()
    assert CM.spell(line_of(one, DAY)) == (
        "back neck raised 0.5 cm (after the fitting of 3 March, jersey top with grown-on sleeves)"
    )
    assert "3 March 2026" in CM.spell(line_of(one, date(2027, 1, 1)))


def test_a_mend_is_typed_as_if_no_fitting_had_moved_the_option() -> None:
    """What fittings moved is moved once more when a mend is typed, so it begins without it."""
    who = WHO.having(adjustments=(Adjustment(what="neck-narrower", amount=0.8, date=THIRD),))
    plain, drafted = (draft(one, "jersey-top", {}, made=DAY) for one in (WHO, who))
    wide, narrow = (one.style.length("neck-half-width").mm for one in (plain, drafted))
    assert wide - narrow == pytest.approx(8.0)
    (turn,) = turns(drafted, (Move("neck-half-width", "more"),))
    assert turn.start == pytest.approx(wide / 10)
    assert taken_back(drafted) == []


def test_pins_are_minded_and_a_child_has_none() -> None:
    """What to heed while trying on."""
    assert "Mind the pins" in caution(WHO)
    assert "no pin" in caution(WHO.having(age=7.0))


def test_a_label_has_room_for_many_fittings() -> None:
    """The newest are told, the rest is in the instructions."""
    days = [THIRD + timedelta(days) for days in range(9)]
    found = tuple(Adjustment(what="front-neck-lower", amount=0.5, date=day) for day in days)
    drafted = draft(WHO.having(adjustments=found), "jersey-top", {}, made=DAY)
    lines = label_lines(drafted.pattern.pieces[0], 1, 3, drafted.label)
    told = [line for line in lines if line.startswith("after the fitting")]
    assert told[0] == "after the fitting of 11 March: front neck"
    assert len(told) < 6
    assert "and more: see the instructions" in lines


def test_a_tube_is_advised_where_estimates_decide() -> None:
    """Of girths that were not measured; nothing where all were."""
    who = WHO
    assert tube_told(draft(who, "jersey-top", {}, made=DAY)) == ()
    guessed = who.without("hip")
    words = CM.spell(tube_told(draft(guessed, "jersey-top", {}, made=DAY)))
    assert "hip is estimated" in words
    assert "tube of cheap jersey" in words
