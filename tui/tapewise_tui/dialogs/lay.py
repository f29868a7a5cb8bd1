"""How the pieces lie on the cloth, and how much of it to buy: before anybody buys."""

from __future__ import annotations

from collections import Counter
from functools import partial

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import Screen
from textual.widgets import Static

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks import wizard
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.laid import Laid, laid
from tapewise_core.tasks.work import Work
from tapewise_tui import drafting
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs import cloth_questions
from tapewise_tui.dialogs.asking import AskDialog
from tapewise_tui.dialogs.telling import TellDialog
from tapewise_tui.lay_canvas import draw_lay, lies
from tapewise_tui.widgets.leaf import Picture

KEYS = "Arrows: lay · Space: nap · W: widths · L: length · Escape"

KEPT = "cloth-length"
"""The option that keeps the length of the cloth there is."""

LIES, NAP = "lay", "nap"
"""The options that may be tried here."""


class LayDialog(Screen[None]):
    """What to buy first, then the plan."""

    BINDINGS = [
        Binding("escape,ctrl+r,enter", "dismiss", "Close"),
        Binding("right", "lie(1)", show=False),
        Binding("left", "lie(-1)", show=False),
        Binding("space", "nap", show=False),
        Binding("w", "widths", show=False),
        Binding("l", "length", show=False),
        Binding("down", "scroll(1)", show=False),
        Binding("up", "scroll(-1)", show=False),
    ]

    DEFAULT_CSS = """
    LayDialog { background: $background; }
    LayDialog > Static { padding: 0 2; }
    LayDialog > #lay-way { height: 1; text-style: bold; margin-bottom: 1; }
    LayDialog.-short > #lay-way { margin: 0; }
    LayDialog.-short > .heading { margin: 0; }
    LayDialog.-short > #lay-told { margin: 0; max-height: 3; }
    LayDialog > #lay-names { height: auto; max-height: 2; }
    LayDialog > #lay-told { height: auto; max-height: 6; padding: 0 2; }
    LayDialog > Picture { width: 1fr; height: 1fr; margin: 0 2; }
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.lay: Laid | None = None

    def compose(self) -> ComposeResult:
        yield Static("The cloth", classes="heading", markup=False)
        with VerticalScroll(id="lay-told", can_focus=False):
            yield Static("", id="lay-words", markup=False)
        yield Static("", id="lay-way", markup=False)
        yield Picture()
        yield Static("", id="lay-names", markup=False)
        yield Static(KEYS, classes="quiet", markup=False)

    def on_mount(self) -> None:
        self.show()

    def show(self) -> None:
        """Draw afresh from the desk."""
        found = drafting.drafted(self.desk)
        if isinstance(found, Drafted):
            self.lay = laid(found)
            self._show(found, self.lay)

    def _show(self, found: Drafted, lay: Laid) -> None:
        self.query_one("#lay-way", Static).update(_way(found))
        words = self.query_one("#lay-words", Static)
        words.update(lay.says if lay.fits else f"! {lay.says}")
        words.set_class(not lay.fits, "wrong")
        self.query_one("#lay-names", Static).update(_names(lay))
        self.query_one(Picture).show(partial(draw_lay, cloth=lay) if lay.pieces else None)

    def action_lie(self, by: int) -> None:
        """Lay the cloth another way: open, folded or as a tube."""
        self._turn(LIES, by)

    def action_nap(self) -> None:
        """Let all pieces point one way, or either."""
        self._turn(NAP, 1)

    def action_widths(self) -> None:
        """Compare the cloths on offer."""
        found = drafting.drafted(self.desk)
        if isinstance(found, Drafted):
            cloth_questions.which_width(self, found)

    def action_length(self) -> None:
        """Ask how long the piece is that there is, and say how long a garment it gives."""
        asked = AskDialog(
            "The length there is",
            cloth_questions.LENGTH,
            fault=self._fault,
        )
        self.app.push_screen(asked, self._have)

    def _made(self, text: str) -> Work:
        """The work with a length of cloth; raises TapewiseError."""
        made = self.desk.work
        plain = cloth_questions.typed_length(made.garment, text, self.desk.unit)
        return made.with_option(KEPT, plain)

    def _fault(self, text: str) -> str:
        """Say what is wrong with a length, or nothing."""
        try:
            made = self._made(text)
            wizard.refuse_wrong(self.desk.profile, made.garment, made.asked)
        except TapewiseError as error:
            return self.desk.reader.spell(error.told)
        return ""

    def _have(self, text: str | None) -> None:
        if text is None:
            return
        desk = self.desk
        desk.change(f"cloth there is {text or 'enough'}", made=self._made(text))
        self.show()
        found = drafting.drafted(desk)
        told = cloth_questions.how_long(found) if isinstance(found, Drafted) else ""
        if told:
            self.app.push_screen(TellDialog("The length there is", (told,)))

    def _turn(self, key: str, by: int) -> None:
        """Keep the next word of an option, unless the garment lacks it or cannot be drafted so."""
        found = drafting.drafted(self.desk)
        if isinstance(found, str) or key not in found.garment.options:
            return
        words = found.garment.options[key].words
        word = words[(words.index(str(found.style.chosen[key].value)) + by) % len(words)]
        made = self.desk.work.with_option(key, word)
        if isinstance(drafting.of(self.desk.profile, made, self.desk), Drafted):
            self.desk.change(f"{key} {word}", made=made)
            self.show()

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
    ribs = "left to right" if lies(lay) else "up and down"
    edges = ("top", "bottom") if lies(lay) else ("left", "right")
    folds = " and ".join(edges[across > 0] for across in lay.folds)
    return f"{', '.join(told)}. Ribs {ribs}{f', fold {folds}' if folds else ''}."


def _way(found: Drafted) -> str:
    """How the cloth lies and whether it has a nap, what is chosen in brackets."""
    told = [
        f"{says} {_chosen(found.garment.options[key].words, str(found.style.chosen[key].value))}"
        for key, says in ((LIES, "The cloth lies"), (NAP, "nap"))
        if key in found.garment.options
    ]
    return " · ".join(told)


def _chosen(words: tuple[str, ...], at: str) -> str:
    return " ".join(f"[{word}]" if word == at else word for word in words)
