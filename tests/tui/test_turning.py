"""Turning a page: it is styled and laid out for the room there is, and drawn once it stands."""

from __future__ import annotations

from collections.abc import Iterable

import pytest
from textual.css.stylesheet import Stylesheet
from textual.dom import DOMNode
from textual.screen import Screen
from walking import LARGE, Walk, walk

from tapewise_core.tasks.people import person
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
