"""The pieces of a pattern on screen: laid out, drawn, chosen, and drawn in time."""

import pytest
from quiet import run
from textual.app import App, ComposeResult

from tapewise_core.drafting.piece import Piece
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import person
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas
from tapewise_tui.pattern_canvas import draw_pattern, pairs, seam_lengths
from tapewise_tui.pattern_places import placed
from tapewise_tui.widgets_drawn import FigureView, PatternView


@pytest.fixture(scope="module")
def pieces() -> tuple[Piece, ...]:
    """The demo person's jersey top."""
    return draft(person("Marta Lindqvist"), "jersey-top", {}).pattern.pieces


class Shown(App[None]):
    """One drawing widget that fills the screen; remembers what was chosen."""

    def __init__(self, widget: FigureView | PatternView) -> None:
        super().__init__()
        self.widget = widget
        self.chosen: list[str] = []

    def compose(self) -> ComposeResult:
        yield self.widget

    def on_pattern_view_selected(self, message: PatternView.Selected) -> None:
        self.chosen.append(message.name)


def _pattern(pieces, selected=None, unit=Unit.CM):
    view = PatternView()
    view.show(pieces, selected, unit)
    return view


def _walk(app, steps=None, size=(100, 30)):
    """Run an app on a screen of a size, do steps, and return the screen's text."""

    async def drawn():
        async with app.run_test(size=size) as pilot:
            await pilot.pause()
            if steps:
                await steps(pilot)
                await pilot.pause()
            strips = app.screen._compositor.render_strips()
            return "\n".join(strip.text for strip in strips)

    return run(drawn())


@pytest.mark.parametrize("size", [(120, 40), (80, 24), (40, 16), (24, 10), (30, 60)])
def test_pieces_lie_apart_and_inside(pieces, size):
    """At every size all pieces are on the canvas, at one scale, and none on another."""
    canvas = Canvas(*size)
    places = placed(pieces, canvas.width, canvas.height)
    assert [place.piece.name for place in places] == [piece.name for piece in pieces]
    assert len({place.times for place in places}) == 1
    boxes = [_box(place) for place in places]
    for left, top, right, low in boxes:
        assert left >= 0
        assert top >= 0
        assert right <= canvas.width
        assert low <= canvas.height
    for i, one in enumerate(boxes):
        for other in boxes[i + 1 :]:
            assert one[2] < other[0] or other[2] < one[0] or one[3] < other[1] or other[3] < one[1]


def _box(place):
    xs, ys = zip(*(place.dot(point) for point in place.piece.cut), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def test_no_room_draws_nothing(pieces):
    """A canvas too small for any piece is left blank."""
    assert placed(pieces, 4, 4) == ()
    assert placed((), 100, 100) == ()


@pytest.mark.parametrize("ascii", [False, True])
def test_every_piece_is_named_and_the_chosen_one_bracketed(pieces, ascii):
    """The choice shows in letters, so that it needs no colour."""
    canvas = Canvas(100, 30, ascii=ascii)
    draw_pattern(canvas, placed(pieces, canvas.width, canvas.height), pieces[0].name)
    text = "\n".join(canvas.lines())
    assert f"[{pieces[0].name.capitalize()}]" in text
    assert all(piece.name.capitalize() in text for piece in pieces)
    assert not ascii or text.isascii()


@pytest.mark.parametrize("sleeve", ["short", "long"])
def test_names_of_narrow_pieces_beside_each_other_are_all_read(sleeve):
    """On the little room that a small terminal leaves: one stands lower than the other."""
    halves = draft(person("Adaeze Nwosu"), "raglan-top", {"sleeve": sleeve}).pattern.pieces
    canvas = Canvas(36, 16)
    draw_pattern(canvas, placed(halves, canvas.width, canvas.height), None)
    text = "\n".join(canvas.lines())
    for name in ("Back", "Front", "Sleeve back", "Sleeve front", "Neckband"):
        assert name in text


def test_stitch_cut_fold_and_notches_are_drawn(pieces):
    """On a large screen every kind of line is there; the cut line lies outside the stitch line."""
    canvas = Canvas(120, 40)
    draw_pattern(canvas, placed(pieces, canvas.width, canvas.height), None)
    assert {"stitch", "cut", "fold", "mark", "name"} <= set(canvas.tones.values())
    assert "chosen" not in canvas.tones.values()


def test_seam_lengths_are_the_stitch_lines(pieces):
    """Every edge is listed with its sewn length in the reader's unit."""
    listed = seam_lengths(pieces[0], Unit.IN)
    assert [told for _, told in listed] == [
        Unit.IN.spell(edge.path.length()) for edge in pieces[0].edges
    ]
    assert all(len(line) == 28 for line in pairs(listed, 28))


@pytest.mark.parametrize("width", [100, 50])
def test_the_chosen_piece_lists_its_seams(pieces, width):
    """Beside the pieces where there is room, else below them."""
    text = _walk(Shown(_pattern(pieces, pieces[0].name)), size=(width, 30))
    first, length = seam_lengths(pieces[0], Unit.CM)[0]
    assert first in text
    assert length in text


def test_arrows_walk_through_the_pieces_and_tell(pieces):
    """Right and left choose the next and the one before, round and round."""

    async def steps(pilot):
        app.widget.focus()
        await pilot.press("right", "right", "left", "left")

    app = Shown(_pattern(pieces))
    _walk(app, steps)
    names = [piece.name for piece in pieces]
    assert app.chosen == [names[0], names[1], names[0], names[-1]]


def test_a_click_chooses_the_piece_under_it(pieces):
    """A click on a piece chooses it; beside all of them it chooses nothing."""

    async def steps(pilot):
        place = app.widget._places[1]
        left, top, right, low = _box(place)
        at = int((left + right) / 4), int((top + low) / 8)
        await pilot.click(PatternView, offset=at)
        await pilot.click(PatternView, offset=(99, 29))

    app = Shown(_pattern(pieces))
    _walk(app, steps)
    assert app.chosen == [pieces[1].name]


@pytest.mark.parametrize("no_colour", [False, True])
@pytest.mark.parametrize("theme", ["textual-dark", "textual-light"])
def test_both_widgets_draw_in_every_theme(pieces, monkeypatch, no_colour, theme):
    """Dark, light and without colour the same letters stand on the screen."""
    if no_colour:
        monkeypatch.setenv("NO_COLOR", "1")
    for widget, word in ((_pattern(pieces), "Back"), (FigureView(), "bust")):
        app = Shown(widget)

        async def steps(pilot, widget=widget):
            pilot.app.theme = theme
            if isinstance(widget, FigureView):
                widget.show("bust")

        assert word in _walk(app, steps)


def test_a_widget_redraws_when_its_size_changes(pieces):
    """The drawing is as wide and high as the widget, before and after."""

    async def steps(pilot):
        assert len(app.widget.text().split("\n")) == 30
        await pilot.resize_terminal(60, 20)
        await pilot.pause(0.1)  # Textual gathers what a dragged edge sends

    app = Shown(_pattern(pieces))
    _walk(app, steps)
    lines = app.widget.text().split("\n")
    assert len(lines) == 20
    assert {len(line) for line in lines} == {60}


def test_an_empty_view_is_blank():
    """Before anything is shown, nothing is drawn and keys do no harm."""

    async def steps(pilot):
        app.widget.focus()
        await pilot.press("right")

    app = Shown(PatternView())
    assert not _walk(app, steps).strip()
    assert app.chosen == []
    assert not _walk(Shown(FigureView())).strip()


def test_a_plain_terminal_gets_ascii(pieces, monkeypatch):
    """Neither widget draws a letter beyond ASCII there."""
    monkeypatch.setenv("TERM", "linux")
    figure = FigureView()
    figure.show("waist")
    for widget in (_pattern(pieces, pieces[0].name), figure):
        text = _walk(Shown(widget))
        assert text.strip()
        assert text.isascii()
