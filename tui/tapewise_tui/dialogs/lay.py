"""How the pieces lie on the cloth, and how much of it to buy: before anybody buys."""

from __future__ import annotations

from collections import Counter
from functools import partial

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import Screen
from textual.widgets import Static

from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.laid import Laid, laid
from tapewise_tui import drafting
from tapewise_tui.desk import Desk
from tapewise_tui.lay_canvas import draw_lay
from tapewise_tui.widgets.leaf import Picture

KEYS = "Up, Down: more words · Escape: close"


class LayDialog(Screen[None]):
    """What to buy first, then the plan."""

    BINDINGS = [
        Binding("escape,ctrl+r,enter", "dismiss", "Close"),
        Binding("down", "scroll(1)", show=False),
        Binding("up", "scroll(-1)", show=False),
    ]

    DEFAULT_CSS = """
    LayDialog { background: $background; }
    LayDialog > .heading, LayDialog > .quiet, LayDialog > #lay-names { padding: 0 2; }
    LayDialog.-short > .heading { margin: 0; }
    LayDialog.-short > #lay-told { margin: 0; max-height: 3; }
    LayDialog > #lay-names { height: auto; max-height: 2; }
    LayDialog > #lay-told { height: auto; max-height: 6; padding: 0 2; margin-bottom: 1; }
    LayDialog > Picture { width: 1fr; height: 1fr; margin: 0 2; }
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk

    def compose(self) -> ComposeResult:
        yield Static("The cloth", classes="heading", markup=False)
        with VerticalScroll(id="lay-told", can_focus=False):
            yield Static("", id="lay-words", markup=False)
        yield Picture()
        yield Static("", id="lay-names", markup=False)
        yield Static(KEYS, classes="quiet", markup=False)

    def on_mount(self) -> None:
        self.show()

    def show(self) -> None:
        """Draw afresh from the desk."""
        found = drafting.drafted(self.desk)
        if isinstance(found, Drafted):
            self._show(laid(found))

    def _show(self, lay: Laid) -> None:
        words = self.query_one("#lay-words", Static)
        words.update(lay.says if lay.fits else f"! {lay.says}")
        words.set_class(not lay.fits, "wrong")
        self.query_one("#lay-names", Static).update(_names(lay))
        self.query_one(Picture).show(partial(draw_lay, cloth=lay) if lay.pieces else None)

    def action_scroll(self, by: int) -> None:
        """Show words that have no room."""
        self.query_one("#lay-told").scroll_relative(y=by, animate=False)


def _names(lay: Laid) -> str:
    """Which piece each number is, and how many of it lie there."""
    many = Counter((one.number, one.name) for one in lay.pieces)
    told = (
        f"{number} {name}{f' ({count})' if count > 1 else ''}"
        for (number, name), count in sorted(many.items())
    )
    return ", ".join(told)
