"""The proofs: what each mend changes, and one key to where a line is changed."""

from __future__ import annotations

import pytest
from walking import Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.people import person, store
from tapewise_core.units import Unit
from tapewise_tui import proving
from tapewise_tui.pages.prove import ProvePage
from tapewise_tui.widgets.choices import Choices
from tapewise_tui.widgets.rows import Rows

NAME = "Marta Lindqvist"


def begin(unit: Unit = Unit.CM, **asked: str) -> None:
    """Put an example person on file who stopped at the proofs, with options chosen."""
    store.save(person(NAME).with_unit(unit))
    made = work.Work(NAME, page="prove", when="2026-11-01T10:00:00")
    for key, text in asked.items():
        made = made.with_option(key.replace("_", "-"), text)
    work.save(made)


def mark(at: Walk, key: str) -> None:
    """Put the cursor on a line."""
    at.page.query_one(Rows).to(key)


@pytest.mark.parametrize("unit", Unit)
def test_a_mend_is_told_before_and_after(unit: Unit) -> None:
    """Beside a failing proof stands what the change makes of its number, and what is left."""
    begin(unit, stretch="10", neck_depth="6 cm")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        mark(at, "ease for this cloth ")
        await at.settle()
        shown = " ".join(at.text().split())
        told = "F6 sets ease 3 cm: 0 cm → 3 cm against 3 cm"
        inches = "F6 sets ease 1 1/8 in: 0 in → 1 1/8 in against"
        assert (told if unit is Unit.CM else inches) in shown
        assert "1 proof still failing" in shown
        assert "F6 Take" in shown
        mark(at, "notches ")
        await at.settle()
        assert "F6 Take" not in at.text()

    walk(steps)


def test_a_failing_proof_leads_to_its_choice() -> None:
    """F8: the garment page with the cursor on what the proof hangs on, shown or not."""
    begin(stretch="10", neck_depth="6 cm")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        mark(at, "head through the neck ")
        await at.settle()
        assert "F8 goes to neck depth." in " ".join(at.text().split())
        await at.press("f8")
        assert at.page.NAME == "garment"
        line = at.page.query_one(Choices).at
        assert line is not None
        assert line.key == "neck-depth"

    walk(steps)


def test_an_unsure_proof_leads_to_the_measure_that_helps() -> None:
    """Three measures taken: F8 on what is unsure opens the measure that would make it surest."""
    known = Profile.of("Ida Voss").with_value("height", 168).with_value("bust", 95)
    store.save(known.with_value("hip", 104))
    work.save(work.Work("Ida Voss", page="prove", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert isinstance(at.page, ProvePage)
        unsure = next(row for row in at.page.rows if row.proof and row.proof.uncertain)
        assert at.page.draft is not None
        assert at.page.draft.verdict is not None
        helps = at.page.draft.verdict.helps_most
        mark(at, unsure.key)
        await at.press("enter")
        assert (at.page.NAME, at.app.desk.work.measure) == ("measure", helps)

    walk(steps)


def test_remarks_stand_last_and_lead_to_the_option_they_name() -> None:
    """Each remark of the pattern is a line of its own; F8 goes to its option, or to the garment."""
    store.save(person(NAME))
    work.save(work.Work(NAME, garment="skirted-dress", page="prove", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        assert isinstance(at.page, ProvePage)
        notes = [row for row in at.page.rows if row.proof is None]
        assert at.page.draft is not None
        assert len(notes) == len(at.page.draft.pattern.remarks) > 0
        assert list(at.page.rows[-len(notes) :]) == notes
        named = next(row for row in notes if "weight allowance" in row.says)
        mark(at, named.key)
        await at.press("f8")
        line = at.page.query_one(Choices).at
        assert line is not None
        assert line.key == "weight-allowance"

    walk(steps)


def test_every_proof_hangs_on_something_of_its_garment() -> None:
    """The options that a proof hangs on are options of a garment that has the proof."""
    options = {key for page in wizard.garments() for key in page.options.keys}
    for proof, keys in proving.CHANGED_BY.items():
        assert set(keys) <= options, proof
        assert proof in {str(one) for page in wizard.garments() for one in page.covers} | {
            "allowances"
        }, proof
