"""The ledger of levels: asked, given and why."""

from __future__ import annotations

from making import top
from msgspec.structs import replace

from tapewise_core.drafting.facts import Level
from tapewise_core.proofs.ledger import HEAD, ledger, ledger_lines
from tapewise_core.tasks.documents import checklist_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.files import Written
from tapewise_core.text.told import Reader, said
from tapewise_core.units import Unit, mm
from tapewise_core.writers.markdown import markdown
from tapewise_tui.telling import draft_lines

LEVELS = (
    Level("armscye", 200.0, 880.0, None, None, 990.0),
    Level("bust", 260.0, 900.0, 60.0, 960.0, 961.0),
    Level("waist", 420.0, 700.0, 40.0, 740.0, 800.0, said("it leans {} already", mm(30.0))),
    Level("hip", 620.0, 1000.0, 0.0, 1000.0, 1004.0),
)


def drawn() -> Drafted:
    """A draft that has these levels."""
    made = top()
    facts = replace(made.pattern.facts, levels=LEVELS)
    return replace(made, pattern=replace(made.pattern, facts=facts))


def test_every_level_has_its_row() -> None:
    """What nothing was asked for is blank there; a reason stands only where there is one."""
    table = ledger(LEVELS, Reader(Unit.CM))
    assert table.head == HEAD
    assert table.rows == (
        ("armscye", "88 cm", "", "99 cm", ""),
        ("bust", "90 cm", "96 cm", "96.1 cm", ""),
        ("waist", "70 cm", "74 cm", "80 cm", "it leans 3 cm already"),
        ("hip", "100 cm", "100 cm", "100.4 cm", ""),
    )


def test_the_lines_begin_with_what_is_as_asked() -> None:
    """Up to three millimetres off; the others have a line each."""
    assert ledger_lines(LEVELS, Reader(Unit.CM)) == (
        "As wide as asked: bust 96.1 cm.",
        "Waist: 74 cm asked, 80 cm given: it leans 3 cm already.",
        "Hip: 100 cm asked, 100.4 cm given.",
    )
    assert ledger_lines(LEVELS[:1], Reader(Unit.CM)) == ()
    assert all(" cm" not in line for line in ledger_lines(LEVELS, Reader(Unit.IN)))


def test_the_checklist_has_the_ledger_after_the_proofs() -> None:
    """And no heading for one without levels."""
    text = markdown(checklist_of(drawn()))
    assert text.index("Proved before cutting") < text.index("Asked and given")
    assert text.index("Asked and given") < text.index("What you need")
    assert "it leans 3 cm already" in text
    empty = replace(drawn().pattern, facts=replace(drawn().pattern.facts, levels=()))
    assert "Asked and given" not in markdown(checklist_of(replace(drawn(), pattern=empty)))


def test_the_command_tells_it_in_short() -> None:
    """Among what is said of a draft."""
    lines = list(draft_lines(drawn(), (), "here", Written(())))
    assert "As wide as asked: bust 96.1 cm." in lines
    assert "Hip: 100 cm asked, 100.4 cm given." in lines
