"""The words of the trade: in order, each once, told in words that a beginner has."""

from __future__ import annotations

from units_seen import foreign

from tapewise_core.text.glossary import GLOSSARY, found, lines
from tapewise_core.units import Unit


def test_the_words_stand_in_order_and_once() -> None:
    """By the alphabet; no word and no American word twice; every meaning is a few words."""
    words = [term.word for term in GLOSSARY]
    assert words == sorted(set(words))
    both = [name for term in GLOSSARY for name in (term.word, term.american) if name]
    assert len(both) == len(set(both))
    assert all(10 < len(term.means) < 100 for term in GLOSSARY)
    assert all(foreign(lines(), unit) == [] for unit in Unit)


def test_what_sewing_teachers_are_asked_is_explained() -> None:
    """The words that a beginner does not have."""
    asked = {
        "ease", "allowance", "grain", "fold", "notch", "stay", "casing", "nape", "armscye",
        "true", "walk", "toile", "negative ease",
    }  # fmt: skip
    assert asked <= {term.word for term in GLOSSARY}


def test_a_word_is_found_by_either_name() -> None:
    """British or American, in any case; the word itself comes before what mentions it."""
    assert found("Serger")[0].word == "overlocker"
    assert found("muslin")[0].word == "toile"
    assert found("ease")[0].word == "ease"
    assert found("zipper") == ()
