"""How to draft it by hand, page by page: a step's picture and its sentences."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.screen import Screen
from textual.widgets import Static

from tapewise_core.tasks.by_hand import HandStep
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas
from tapewise_tui.drawn import Drawn
from tapewise_tui.step_canvas import draw_corner, draw_step
from tapewise_tui.terminal import ascii_only

KEYS = "Left, Right: a step · Page Up, Page Down: a piece · Home, End · Escape: close"


class StepView(Drawn):
    """The picture of one step."""

    COMPONENT_CLASSES = {
        "drawn--stitch", "drawn--cut", "drawn--mark", "drawn--name", "drawn--chosen",
    }  # fmt: skip
    TONES = frozenset({"stitch", "cut", "mark", "name", "chosen"})
    DEFAULT_CSS = """
    StepView {
        width: 1fr; height: 1fr; min-height: 6;
        & > .drawn--stitch { color: $foreground; }
        & > .drawn--cut { color: $foreground-muted; }
        & > .drawn--mark { color: $foreground; }
        & > .drawn--name { color: $foreground; text-style: bold; }
        & > .drawn--chosen { color: $text-primary; text-style: bold; }
    }
    """

    def __init__(self, unit: Unit) -> None:
        super().__init__()
        self.unit = unit
        self.step: HandStep | None = None

    def show(self, step: HandStep) -> None:
        """Show a step."""
        self.step = step
        self.redraw()

    def paint(self) -> Canvas:
        canvas = Canvas(*self.size, ascii=ascii_only())
        if self.step is not None:
            draw = draw_corner if self.step.nearer else draw_step
            draw(canvas, self.step.scene, self.unit)
        return canvas


class StepsDialog(Screen[None]):
    """All steps of a draft, one on show."""

    BINDINGS = [
        Binding("escape,f12", "dismiss", "Close"),
        Binding("right,enter,space", "step(1)", "Next step"),
        Binding("left,backspace", "step(-1)", "Step before"),
        Binding("pagedown", "piece(1)", "Next piece"),
        Binding("pageup", "piece(-1)", "Piece before"),
        Binding("home", "step(-9999)", "First step"),
        Binding("end", "step(9999)", "Last step"),
    ]
    DEFAULT_CSS = """
    StepsDialog { background: $surface; }
    StepsDialog > #step { padding: 0 1; }
    StepsDialog > #step-told { height: auto; max-height: 7; padding: 0 1; }
    StepsDialog > .quiet { padding: 0 1; }
    """

    def __init__(self, steps: tuple[HandStep, ...], unit: Unit) -> None:
        super().__init__()
        self.steps, self.unit = steps, unit
        self.at = 0

    def compose(self) -> ComposeResult:
        yield Static("", id="step", classes="heading", markup=False)
        yield StepView(self.unit)
        with VerticalScroll(id="step-told", can_focus=False):
            yield Static("", id="step-words", markup=False)
        yield Static(KEYS, classes="quiet", markup=False)

    def on_mount(self) -> None:
        self._show()

    def _show(self) -> None:
        step = self.steps[self.at]
        told = f"{step.piece}, step {step.number} of {self.steps[-1].number}"
        told += ", seen nearer by" if step.nearer else ""
        self.query_one("#step", Static).update(told)
        self.query_one("#step-words", Static).update(step.says)
        self.query_one("#step-told").scroll_home(animate=False)
        self.query_one(StepView).show(step)

    def action_step(self, by: int) -> None:
        """Turn to another step; the first and the last are the ends."""
        self.at = min(max(self.at + by, 0), len(self.steps) - 1)
        self._show()

    def action_piece(self, by: int) -> None:
        """Turn to the first step of the next piece, or of this one or the one before."""
        firsts = [i for i, step in enumerate(self.steps) if step.first]
        if by > 0:
            self.at = next((i for i in firsts if i > self.at), self.at)
        else:
            self.at = next((i for i in reversed(firsts) if i < self.at), 0)
        self._show()
