"""Sentences, and the amounts that are told in a manner of their own."""

import pytest

from tapewise_core.text.amounts import OnPaper, PaperSpan
from tapewise_core.text.told import Reader, said
from tapewise_core.text.typed import parse_length
from tapewise_core.units import Unit


@pytest.mark.parametrize("unit", list(Unit))
def test_what_paper_may_be_passes_when_typed_as_told(unit: Unit):
    """Both ends of what is told, read again, lie within it."""
    low, high = 4.0, 95.0
    first, last = PaperSpan(low, high).tell(unit).split(" to ")
    suffix = last.rpartition(" ")[2]
    assert low <= parse_length(f"{first} {suffix}", unit) <= high
    assert low <= parse_length(last, unit) <= high
    most = OnPaper(45.0, "down").tell(unit)
    assert 40 < parse_length(most, unit) <= 45


def test_sentences_refuse_what_does_not_fit():
    """Too few parts, too many, named braces, and what is no part of a sentence."""
    for template, parts in (("{} and {}", ("a",)), ("{}", ("a", "b")), ("{0}", ("a",))):
        with pytest.raises(ValueError, match=r"parts|leaves out"):
            said(template, *parts)
    with pytest.raises(TypeError, match="no part of a sentence"):
        Reader(Unit.CM).spell((1.5,))
