"""What is said of the cloth to buy: what stops a purchase first, then the amount and its reason."""

from __future__ import annotations

from msgspec.structs import replace
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.lay.buying import purchase
from tapewise_core.lay.lay import lay_of
from tapewise_core.sewing.cloth_words import cloth_words
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0, shrinkage=0.05)
"""1 m between its selvedges."""

METRE = pattern_of((rectangle("a", 500 - 16, 1000 - 16),))
"""A piece that lies on half a metre by one."""


def words(
    pattern: Pattern, cloth: Cloth = CLOTH, unit: Unit = Unit.CM, price: float | None = None
) -> str:
    """Spell what is said of a pattern's cloth."""
    lay = lay_of(pattern, cloth.as_cut)
    bill = purchase(lay, cloth.as_cut, unit, price)
    return Reader(unit).spell(cloth_words(lay, cloth, unit, bill))


def test_cloth_too_narrow_is_not_to_be_bought() -> None:
    """That stands first and alone, with how wide a cloth must be, and that is wide enough."""
    pieces = (rectangle("back", 1100, 500), rectangle("front", 1150, 500), rectangle("c", 9, 9))
    pattern = pattern_of(pieces)
    assert words(pattern) == (
        "DO NOT BUY YET: back and front are wider than this cloth. Take cloth at least 120 cm wide."
    )
    assert lay_of(pattern, replace(CLOTH, width=1200.0)).too_wide == ()
    assert lay_of(pattern, replace(CLOTH, width=1190.0)).too_wide == ("front",)


def test_one_piece_too_wide_is_one() -> None:
    """The sentence agrees with itself."""
    said = words(pattern_of((rectangle("back", 1100, 500),)))
    assert said.startswith("DO NOT BUY YET: back is wider than this cloth.")


def test_an_amount_stands_with_its_reason() -> None:
    """What cotton may lose beyond the allowance is told with what would be enough."""
    assert words(METRE, replace(CLOTH, shrinkage=0.0)) == (
        "Jersey 103 cm wide: buy 100 cm. The pieces lie on 100 cm after washing and cover 50 % of "
        "it. This amount allows for 0 % shrinkage; cotton can lose 8 %, so test a piece or buy "
        "110 cm."
    )
    assert "cotton" not in words(METRE, replace(CLOTH, shrinkage=0.08))


def test_inch_readers_buy_yards() -> None:
    """100 cm are 39 3/8 in; before washing a yard and an eighth is too little by a hair."""
    said = words(METRE, unit=Unit.IN, price=10.0)
    assert "buy 1 1/4 yd, which costs 12.50." in said
    assert "lie on 39 3/8 in after washing" in said


def test_too_little_cloth_is_not_to_be_cut() -> None:
    """How much there is and how much is needed stand first; what is enough is said to be."""
    assert words(METRE, replace(CLOTH, length=1040.0)).startswith(
        "DO NOT CUT YET: there are 104 cm of this cloth, and 105.3 cm are needed."
    )
    assert words(METRE, replace(CLOTH, length=1052.0)).startswith("DO NOT CUT YET")
    enough = words(METRE, replace(CLOTH, length=1100.0))
    assert "105.3 cm of the 110 cm there are will do." in enough


def test_cloth_washed_later_is_bought_as_it_is_cut() -> None:
    """Nothing is added: the pieces are larger already."""
    said = words(METRE, replace(CLOTH, washed=False))
    assert said == (
        "Jersey 103 cm wide: buy 100 cm. The pieces lie on 100 cm and cover 50 % of it. Nothing "
        "is added for shrinking: the pieces are drawn larger by what it shrinks."
    )


def test_how_the_cloth_lies_is_told_where_it_is_not_plain() -> None:
    """Two layers, one way, across, head to tail."""
    assert "selvedge on selvedge" in words(
        METRE, replace(CLOTH, width=1130.0, spread=Spread.FOLDED)
    )
    assert "Leave the tube" in words(METRE, replace(CLOTH, spread=Spread.TUBE))
    assert "tops towards the same end" in words(METRE, replace(CLOTH, nap=True))
    turned = words(pattern_of((rectangle("skirt", 300, 900, turnable=True),)))
    assert "Lay the skirt with the arrow across the cloth." in turned
    assert "One repeat of 20 cm is added." in words(METRE, replace(CLOTH, repeat=200.0))
