"""How much less cloth a longer search finds than that of a draft."""

from __future__ import annotations

import pytest

from tapewise_core.lay.lay import lay_of
from tapewise_core.lay.packing import LONG
from tapewise_core.tasks import people
from tapewise_core.tasks.drafting import draft


@pytest.mark.parametrize(
    ("name", "garment", "width"),
    [
        ("Rosa Benítez", "skirted-dress", "140"),
        ("Tomasz Wieczorek", "skirted-dress", "140"),
        ("Tomasz Wieczorek", "skirted-dress", "150"),
        ("Rosa Benítez", "set-in-top", "140"),
    ],
)
def test_a_draft_says_nearly_what_a_long_search_finds(name: str, garment: str, width: str) -> None:
    """The checklist's amount is within a twentieth of what whoever asks for the cloth is told."""
    made = draft(people.person(name), garment, {"cloth-width": width})
    assert made.lay.length <= 1.05 * lay_of(made.cut, made.cloth, LONG).length
