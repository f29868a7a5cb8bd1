"""Turning a page: it is styled and laid out for the room there is, and drawn once it stands."""

from __future__ import annotations

from collections.abc import Iterable

import pytest
from msgspec.structs import replace
from textual.css.stylesheet import Stylesheet
from textual.dom import DOMNode
from textual.events import Key
from textual.screen import Screen
from walking import LARGE, Walk, walk

from tapewise_core.measures.body import WaistSite
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import person, store
from tapewise_tui.page import Page
from tapewise_tui.turning import PAGE_OF

WHOLE = 10
"""More widgets than any part of a page has that changes its look by itself."""


def test_a_page_is_drawn_when_it_stands_and_styled_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """No page is drawn half made, and none has its widgets styled again for the terminal's size."""
    drawn: list[bool] = []
    styled: list[int] = []
    draw, style = Screen._compositor_refresh, Stylesheet.update_nodes

    def drawing(screen: Screen[object]) -> None:
        if isinstance(screen, Page):
            drawn.append(screen.stands)
        draw(screen)

    def styling(sheet: Stylesheet, nodes: Iterable[DOMNode], animate: bool = False) -> None:
        all_of_them = list(nodes)
        styled.append(len(all_of_them))
        style(sheet, all_of_them, animate)

    async def steps(at: Walk) -> None:
        at.app.open_person(person("Marta Lindqvist"), "measure")
        await at.settle()
        monkeypatch.setattr(Screen, "_compositor_refresh", drawing)
        monkeypatch.setattr(Stylesheet, "update_nodes", styling)
        for page in ("table", "garment", "save", "measure"):
            at.app.go(page)
            await at.settle()
            assert isinstance(at.page, PAGE_OF[page])
            assert at.page.has_class("-wide")
        assert drawn
        assert all(drawn)
        assert max(styled) < WHOLE

    walk(steps, LARGE)


def test_what_was_begun_on_a_page_is_said_on_the_one_on_show() -> None:
    """A page that was left is silent; one that is still being made says it once it stands."""

    async def steps(at: Walk) -> None:
        at.app.open_person(person("Marta Lindqvist"), "measure")
        await at.settle()
        left = at.page
        at.app.go("table")
        at.app.say("It could not be written.", wrong=True)
        left.tell("gone")
        await at.settle()
        assert at.said == "! It could not be written."
        left.warn("gone")
        at.app.say("It is written.")
        assert at.said == "It is written."

    walk(steps)


@pytest.mark.parametrize(
    ("page", "key", "readings"),
    [("measure", "f10", (55.5,)), ("review", "f10", (55.5,)), ("review", "f8", (55.5, 36.0))],
)
def test_a_number_typed_while_a_page_is_made_is_whole(
    page: str, key: str, readings: tuple[float, ...]
) -> None:
    """Whoever types at once what the tape says, on turning to where it is typed, loses no digit
    and merges no two numbers."""
    store.save(Profile.of("Ida Berg", waist_site=WaistSite.NAVEL).with_value("height", 168))

    async def steps(at: Walk) -> None:
        made = replace(work.fresh("Ida Berg"), measure="head")
        at.app.open_person(store.load("Ida Berg"), page, made)
        await at.settle()
        at.page.found("head")
        await at.settle()
        for sign in (key, *"55", "full_stop", "5", "enter", *"36", "enter"):
            letter = "." if sign == "full_stop" else sign if len(sign) == 1 else None
            at.app.post_message(Key(sign, letter))
        await at.settle()
        kept = store.load("Ida Berg").measures
        assert kept["head"].readings == readings
        assert key == "f8" or kept["neck"].readings == (36.0,)

    walk(steps)
