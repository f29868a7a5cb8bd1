"""One thing a page: its picture, few words with room about them, and boxes that Enter ticks."""

from __future__ import annotations

import textwrap
from collections.abc import Callable, Iterable, Sequence
from typing import ClassVar

from msgspec.structs import replace
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.events import Resize
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from tapewise_core.frozen import Frozen
from tapewise_tui.canvas import Canvas
from tapewise_tui.drawn import Drawn
from tapewise_tui.terminal import ascii_only

Paint = Callable[[Canvas], None]


class Thing(Frozen):
    """What one page shows: ``heading``, sentences, keys with the words of their boxes, what to
    mind, and how its picture is painted; ``find`` is how F5 lists it."""

    heading: str
    says: tuple[str, ...]
    boxes: tuple[tuple[str, str], ...]
    mind: tuple[str, ...] = ()
    paint: Paint | None = None
    find: str = ""


class Picture(Drawn):
    """The picture of one thing."""

    COMPONENT_CLASSES = {
        "drawn--stitch", "drawn--cut", "drawn--fold", "drawn--mark", "drawn--name", "drawn--chosen",
    }  # fmt: skip
    TONES = frozenset({"stitch", "cut", "fold", "mark", "name", "chosen"})
    DEFAULT_CSS = """
    Picture {
        width: 2fr; height: 100%;
        & > .drawn--stitch { color: $foreground; }
        & > .drawn--cut { color: $foreground-muted; }
        & > .drawn--fold { color: $text-accent; }
        & > .drawn--mark { color: $foreground; }
        & > .drawn--name { color: $foreground; text-style: bold; }
        & > .drawn--chosen { color: $text-primary; text-style: bold; }
    }
    """

    painted: Paint | None = None

    def show(self, paint: Paint | None) -> None:
        """Show another picture, or none."""
        self.painted = paint
        self.redraw()

    def paint(self) -> Canvas:
        canvas = Canvas(*self.size, ascii=ascii_only())
        if self.painted is not None and canvas.columns and canvas.rows:
            self.painted(canvas)
        return canvas


class Leaf(Widget, can_focus=True):
    """Shows one thing; arrows and page keys turn, Enter ticks the first open box."""

    class Turn(Message):
        """Show the thing so many further on."""

        def __init__(self, by: int) -> None:
            super().__init__()
            self.by = by

    class Done(Message):
        """The first open box is to be ticked."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("enter,space", "done", "Done", show=False),
        Binding("right,pagedown", "turn(1)", "Next", show=False),
        Binding("left,pageup", "turn(-1)", "Before", show=False),
        Binding("down", "scroll(1)", "Further down", show=False),
        Binding("up", "scroll(-1)", "Further up", show=False),
        Binding("home", "turn(-9999)", "First", show=False),
        Binding("end", "turn(9999)", "Last", show=False),
    ]

    thing: Thing | None = None
    done: Sequence[str] = ()

    def compose(self) -> Iterable[Widget]:
        yield Static("", id="leaf-heading", markup=False)
        with Horizontal(id="leaf"):
            yield Picture()
            with Vertical(id="leaf-column"):
                with VerticalScroll(id="leaf-words", can_focus=False):
                    yield Static("", id="leaf-says", markup=False)
                yield Static("", id="leaf-boxes", markup=False)

    def show(self, thing: Thing, done: Sequence[str]) -> None:
        """Show a thing and what of it is done."""
        other = self.thing is None or _words(thing) != _words(self.thing)
        self.thing, self.done = thing, done
        self.query_one("#leaf-heading", Static).update(thing.heading)
        self.query_one("#leaf-boxes", Static).update("\n".join(_boxes(thing, done)))
        self.set_class(thing.paint is None, "bare")
        self.query_one(Picture).show(thing.paint)
        if other:
            self.query_one("#leaf-words").scroll_home(animate=False)
        self.call_after_refresh(self._spread)

    def on_resize(self, event: Resize) -> None:
        self.call_after_refresh(self._spread)

    def _spread(self) -> None:
        """Set the sentences with a blank line between them where there is room for it."""
        if self.thing is None or not (
            words := self.query("#leaf-words")
        ):  # not shown yet, or no more
            return
        says, room = (*self.thing.says, *self.thing.mind), words.first().size
        lines = sum(len(textwrap.wrap(one, max(room.width - 1, 8))) for one in says)
        between = "\n\n" if lines + len(says) - 1 <= room.height else "\n"
        self.query_one("#leaf-says", Static).update(between.join(says))

    def action_done(self) -> None:
        self.post_message(self.Done())

    def action_scroll(self, by: int) -> None:
        """Show words that have no room, where there are any."""
        self.query_one("#leaf-words").scroll_relative(y=by, animate=False)

    def action_turn(self, by: int) -> None:
        self.post_message(self.Turn(by))


def _boxes(thing: Thing, done: Sequence[str]) -> Iterable[str]:
    """A box for each thing done, and which of them Enter ticks."""
    first = next((key for key, _ in thing.boxes if key not in done), None)
    for key, says in thing.boxes:
        box = "[x]" if key in done else "[ ]"
        yield f"{box} {says}{' ← Enter' if key == first else ''}"


def _words(thing: Thing) -> Thing:
    """What is read of a thing; its picture is another each time it is made."""
    return replace(thing, paint=None)
