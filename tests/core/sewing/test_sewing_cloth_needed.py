"""How much cloth hand-made pieces take, and what is said of it."""

from __future__ import annotations

import pytest
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.sewing.cloth_needed import ClothNeeded, bought, cloth_needed, cloth_words
from tapewise_core.sewing.wedges import SPACE
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0, shrinkage=0.05)
"""1 m between its selvedges."""

ALLOWED = 16.0
"""What both allowances of a rectangle add to its width or height [mm]."""


def words(needed: ClothNeeded, cloth: Cloth = CLOTH, unit: Unit = Unit.CM) -> str:
    """Spell what is said of an amount."""
    return Reader(unit).spell(cloth_words(needed, cloth))


def test_pieces_share_a_row_while_there_is_room() -> None:
    """Two of 480 mm lie side by side on a metre; a third starts a row of its own."""
    wide = 480 - ALLOWED
    two = tuple(rectangle(name, wide, 484) for name in "ab")
    assert cloth_needed(pattern_of(two), CLOTH).length == pytest.approx(500 + SPACE)
    three = (*two, rectangle("c", wide, 284))
    assert cloth_needed(pattern_of(three), CLOTH).length == pytest.approx(800 + 2 * SPACE)


def test_a_row_is_as_high_as_its_tallest() -> None:
    """A low piece listed first does not make a row too low for the one beside it."""
    pieces = (rectangle("low", 400, 84), rectangle("tall", 400, 484))
    assert cloth_needed(pattern_of(pieces), CLOTH).length == pytest.approx(500 + SPACE)


def test_room_between_pieces_counts() -> None:
    """Two that would fit edge to edge and no more do not share a row."""
    pieces = tuple(rectangle(name, 500 - ALLOWED, 484) for name in "ab")
    assert cloth_needed(pattern_of(pieces), CLOTH).length == pytest.approx(2 * (500 + SPACE))


def test_a_piece_on_the_fold_counts_twice() -> None:
    """Its opened width is what the cloth has to hold."""
    half = rectangle("back", 500, 500, {"left": 0.0}, on_fold=True)
    assert cloth_needed(pattern_of((half,)), CLOTH).too_wide == ("back",)
    narrow = rectangle("back", 400, 500, {"left": 0.0}, on_fold=True)
    needed = cloth_needed(pattern_of((narrow,)), CLOTH)
    assert needed.too_wide == ()
    assert needed.used == pytest.approx(2 * 408 * 516 / (needed.length * 1030))


def test_what_is_cut_twice_takes_two_places() -> None:
    """The count is cut, not one of each."""
    once, twice = (rectangle("a", 600, 484, count=count) for count in (1, 2))
    lengths = [cloth_needed(pattern_of((piece,)), CLOTH).length for piece in (once, twice)]
    assert lengths == pytest.approx([510, 1020])


def test_a_piece_lies_as_its_grain_arrow_says() -> None:
    """A belt with its arrow along its length takes its length of cloth, not of width."""
    belt = rectangle("belt", 1700, 44, grain=(1, 0))
    needed = cloth_needed(pattern_of((belt,)), CLOTH)
    assert needed.too_wide == ()
    assert needed.length == pytest.approx(1716 + SPACE)
    band = rectangle("belt", 1700, 44)
    assert cloth_needed(pattern_of((band,)), CLOTH).too_wide == ("belt",)


def test_a_turnable_piece_lies_across_where_that_saves_cloth() -> None:
    """A tall one is turned, and said to be; one without leave is not."""
    tall = rectangle("skirt", 300, 900, turnable=True)
    needed = cloth_needed(pattern_of((tall,)), CLOTH)
    assert needed.turned == ("skirt",)
    assert needed.length == pytest.approx(316 + SPACE)
    assert "Lay the skirt with fold or middle across the cloth." in words(needed)
    plain = cloth_needed(pattern_of((rectangle("skirt", 300, 900),)), CLOTH)
    assert plain.turned == ()
    assert plain.length == pytest.approx(916 + SPACE)


def test_washing_is_bought_for_in_whole_tens() -> None:
    """950 mm after a loss of 5 % are 1000 mm bought; a hair more is 1100."""
    assert bought(950, 0.05) == 1000
    assert bought(951, 0.05) == 1100


def test_cloth_too_narrow_is_not_to_be_bought() -> None:
    """That stands first and alone, with how wide a cloth must be."""
    pieces = (rectangle("back", 1100, 500), rectangle("front", 1150, 500), rectangle("c", 9, 9))
    needed = cloth_needed(pattern_of(pieces), CLOTH)
    assert words(needed) == (
        "DO NOT BUY YET: back and front are wider than this cloth. Take cloth at least 120 cm wide."
    )
    wider = Cloth(stretch=0.5, seam=0.6, band=0.5, width=needed.width)
    assert cloth_needed(pattern_of(pieces), wider).too_wide == ()
    narrower = Cloth(stretch=0.5, seam=0.6, band=0.5, width=needed.width - 10)
    assert cloth_needed(pattern_of(pieces), narrower).too_wide == ("front",)


def test_one_piece_too_wide_is_one() -> None:
    """The sentence agrees with itself."""
    needed = cloth_needed(pattern_of((rectangle("back", 1100, 500),)), CLOTH)
    assert words(needed).startswith("DO NOT BUY YET: back is wider than this cloth.")


def test_an_amount_stands_with_its_reason() -> None:
    """What cotton may lose beyond the allowance is told with what would be enough."""
    needed = ClothNeeded(1000, bought(1000, 0.0), 0.5, ())
    dry = Cloth(stretch=0.5, seam=0.6, band=0.5, shrinkage=0.0)
    assert words(needed, dry) == (
        "Jersey 150 cm wide: buy 100 cm. The pieces lie on 100 cm after washing. This amount "
        "allows for 0 % shrinkage; cotton can lose 8 %, so test a piece or buy 110 cm."
    )
    safe = Cloth(stretch=0.5, seam=0.6, band=0.5, shrinkage=0.08)
    assert "cotton" not in words(ClothNeeded(1000, bought(1000, 0.08), 0.5, ()), safe)


def test_panels_are_told_to_lie_head_to_tail() -> None:
    """Only where there are several of a kind without a grain of their own."""
    panels = rectangle("skirt_panel", 400, 600, count=4, turnable=True)
    needed = cloth_needed(pattern_of((panels,)), CLOTH)
    assert needed.nested
    assert "head to tail" in words(needed)
    one = cloth_needed(pattern_of((rectangle("skirt", 400, 600, turnable=True),)), CLOTH)
    assert not one.nested
