"""Trying on, as it looks: a heading, lines beside a picture, what is said, and an amount."""

from __future__ import annotations

from collections.abc import Iterable

from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.screen import Screen
from textual.widgets import OptionList, Static
from textual.widgets.option_list import Option

from tapewise_core.errors import TapewiseError
from tapewise_tui.desk import Desk
from tapewise_tui.line import Line
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.leaf import Picture
from tapewise_tui.widgets.lines import Lines, option_of


class FittingSheet(Screen[None]):
    """Shows one thing at a time; ``-tried`` is its class while a change is shown."""

    VERTICAL_BREAKPOINTS = [(0, "-short"), (20, "-low")]
    DEFAULT_CSS = """
    FittingSheet { background: $background; }
    FittingSheet > Static { padding: 0 1; height: auto; }
    FittingSheet > .heading { margin: 0 0 1 0; }
    FittingSheet.-short > .heading { margin: 0; }
    FittingSheet > #fit { height: 1fr; }
    FittingSheet #fit-rows { width: 1fr; height: 100%; border: none; background: $background; }
    FittingSheet Picture { width: 40%; margin: 0 1; }
    FittingSheet.-tried Picture { width: 65%; }
    FittingSheet > #fit-says { max-height: 5; }
    FittingSheet > #fit-amount { display: none; width: 20; margin: 0 1; }
    FittingSheet.-tried > #fit-amount { display: block; }
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk

    def compose(self) -> ComposeResult:
        yield Static("", id="fit-heading", classes="heading", markup=False)
        with Horizontal(id="fit"):
            yield Lines(id="fit-rows")
            yield Picture()
        yield Static("", id="fit-says", markup=False)
        yield Field(self._amount, id="fit-amount")
        yield Static("", id="fit-keys", classes="quiet", markup=False)

    def _amount(self, text: str) -> None:
        """Try another amount."""
        raise NotImplementedError

    def _stand(self, heading: str, keys: str, *, tried: bool) -> None:
        self.set_class(tried, "-tried")
        self.query_one("#fit-heading", Static).update(heading)
        self.query_one("#fit-keys", Static).update(keys)
        if not tried:
            self.query_one(OptionList).focus()

    def _fill(self, lines: Iterable[Line], at: str = "") -> None:
        rows, options = self.query_one(OptionList), [option_of(line) for line in lines]
        rows.clear_options()
        rows.add_options(options)
        keys = [option.id for option in options]
        rows.highlighted = keys.index(at) if at in keys else 0 if options else None

    def _say(self, says: str, *, wrong: bool = False) -> None:
        told = self.query_one("#fit-says", Static)
        told.update(f"! {says}" if wrong else says)
        told.set_class(wrong, "wrong")

    def _warn(self, error: TapewiseError) -> None:
        self._say(self.desk.reader.spell(error.told), wrong=True)

    @property
    def _at(self) -> Option | None:
        return self.query_one(OptionList).highlighted_option
