"""The lay in the app: how much to buy, and how the pieces lie."""

from __future__ import annotations

import pytest
from walking import Walk, walk

from tapewise_core.tasks import work
from tapewise_core.tasks.people import person, store

NAME = "Marta Lindqvist"


@pytest.mark.parametrize("size", [(60, 15), (80, 24)], ids=str)
def test_the_lay_is_shown_from_any_page_after_the_measures(size: tuple[int, int]) -> None:
    """What to buy, every piece by its number, and back with Escape; where it does not fit, that is
    said first, and marked as wrong."""
    store.save(person(NAME))
    work.save(work.Work(NAME, garment="set-in-top", page="cut", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for page in ("cut", "prove"):
            at.app.go(page)
            await at.settle()
            await at.press("ctrl+r")
            told = at.text()
            assert "buy" in told
            for piece in ("1 Back", "2 Front", "3 Sleeve (2)", "4 Neckband"):
                assert piece in told
            await at.press("escape")
            assert at.app.screen is at.page
        desk = at.app.desk
        await at.press("ctrl+r", "right", "space")
        assert dict(desk.work.asked) == {"lay": "folded", "nap": "yes"}
        assert "open [folded] tube" in at.text()
        assert "fold top" in at.text()
        assert "Fold the cloth lengthwise" in " ".join(at.app.screen.lay.says.split())  # type: ignore[attr-defined]
        await at.press("left", "left", "escape", "ctrl+z")
        assert desk.work.asked["lay"] == "open"
        whole = desk.work.with_option("centre-seams", "none")
        desk.change("narrow", made=whole.with_option("cloth-width", "50 cm"))
        at.app.go("garment")
        await at.settle()
        at.page.found("buy")
        await at.press("enter")
        assert "! DO NOT BUY YET" in at.text()

    walk(steps, size)


def test_cloths_are_compared_and_the_longest_is_told() -> None:
    """Widths with their prices, what cannot be read told beside them; a length there is kept as an
    option, and how long a garment it gives is said."""
    store.save(person(NAME))
    work.save(work.Work(NAME, garment="set-in-top", page="cut", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+r", "w")
        await at.type("140=10 x 150=12", "enter")
        told = " ".join(at.text().replace("╏", " ").split())
        assert "140 cm: " in told
        assert "! The width of a cloth: “x” is not a length" in told
        assert "Cheapest is the cloth 140 cm wide." in told
        await at.press("escape", "l")
        await at.type("x", "enter")
        assert "is not a length" in at.text()
        assert at.app.desk.work.asked == {}
        await at.press("backspace")  # what was refused is still there, to be mended
        await at.type("150", "enter")
        assert "The longest body-length that fits on this cloth is" in " ".join(at.text().split())
        assert at.app.desk.work.asked == {"cloth-length": "150 cm"}
        await at.press("escape", "l", "enter")
        assert at.app.desk.work.asked == {}

    walk(steps, (80, 24))
