"""Trying on in the app: what is seen, its question, the change tried, kept and taken off."""

from __future__ import annotations

import pytest
from walking import Walk, walk

from tapewise_core.drafting.overlay import overlaid
from tapewise_core.tasks import work
from tapewise_core.tasks.fitting import SYMPTOMS, seen, tried
from tapewise_core.tasks.people import person, store
from tapewise_tui.canvas import Canvas
from tapewise_tui.dialogs.fitting import FittingDialog
from tapewise_tui.fitting_canvas import draw_folds, draw_overlay

NAME = "Marta Lindqvist"


@pytest.mark.parametrize("size", [(60, 15), (80, 24)], ids=str)
def test_a_fitting_is_gone_through_by_keys(size: tuple[int, int]) -> None:
    """From the sew page: the question, the change with its limits, another amount, kept; then
    listed, taken off, and brought back by undo."""
    store.save(person(NAME))
    work.save(work.Work(NAME, garment="set-in-top", page="sew", when="2026-11-01T10:00:00"))

    async def steps(at: Walk) -> None:
        await at.press("enter", "ctrl+f")
        assert isinstance(at.app.screen, FittingDialog)
        assert "The front neckline stands away from the body. Does it lie" in at.text()
        await at.press("down", "down", "enter")
        assert "Where does it press?" in at.text()
        await at.press("enter")
        assert "Front neck lowered 1 cm" in at.text()
        await at.type("9", "enter")
        assert "! At one fitting this is changed by 0.5 cm to 1.5 cm" in at.text()
        assert store.load(NAME).adjustments == ()
        await at.press("home", "shift+end")
        await at.type("0.5", "f4")
        assert "Kept: front neck lowered 0.5 cm." in at.text()
        (one,) = store.load(NAME).adjustments
        assert (one.what, one.amount, one.garment) == ("front-neck-lower", 0.5, "set-in-top")
        await at.press("delete")
        assert "Taken off: front neck lowered 0.5 cm" in at.text()
        assert store.load(NAME).adjustments == ()
        await at.press("escape")
        assert at.app.screen is at.page
        await at.press("ctrl+z")
        assert store.load(NAME).adjustments == (one,)

    walk(steps, size)


def test_what_no_pattern_mends_is_said(data_folder: object) -> None:
    """Advice, and why a garment has no way for a change; Escape goes a step back each time."""
    store.save(person(NAME))
    work.save(work.Work(NAME, garment="jersey-top", page="garment", when="2026-11-01T10:00:00"))
    twists = list(SYMPTOMS).index("sleeve-twists")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        at.app.action_fitting()
        await at.settle()
        await at.press(*["down"] * twists, "enter", "enter")
        assert "! Wash the cloth" in at.text()
        await at.press("down", "enter")
        assert "has no sleeve that could be" in at.text()
        await at.press("escape")
        assert "Trying on: what is seen?" in at.text()
        await at.press("escape")
        assert at.app.screen is at.page

    walk(steps)


@pytest.mark.parametrize("plain", [False, True], ids=["dots", "ASCII"])
def test_folds_and_overlays_fit_any_canvas(plain: bool) -> None:
    """Every drawing shows its folds heavier than the figure; a terminal may be very small."""
    for symptom in SYMPTOMS.values():
        canvas = Canvas(24, 9, ascii=plain)
        draw_folds(canvas, symptom.folds)
        assert "chosen" in canvas.tones.values()
        assert "cut" in canvas.tones.values()
    trial = tried(person(NAME), seen(person(NAME), "jersey-top", "front-neck-chokes", "front"))
    pairs = overlaid(trial.before.pattern.pieces, trial.after.pattern.pieces)
    canvas = Canvas(40, 12, ascii=plain)
    draw_overlay(canvas, pairs)
    assert "front" in "\n".join(canvas.lines())
    assert "back" not in "\n".join(canvas.lines())
    for columns, rows in ((1, 1), (3, 2), (12, 3), (200, 60)):
        draw_folds(Canvas(columns, rows, ascii=plain), SYMPTOMS["band-waves"].folds)
        draw_overlay(Canvas(columns, rows, ascii=plain), pairs)
