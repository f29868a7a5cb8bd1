"""How to draft by hand, in the terminal: every step with its picture and its sentences."""

from __future__ import annotations

import pytest
from making import DAY, person
from walking import LARGE, SMALL, Walk, walk

from tapewise_core.garments.shelf import garments
from tapewise_core.tasks import people
from tapewise_core.tasks.by_hand import HandStep, hand_steps
from tapewise_core.tasks.drafting import draft
from tapewise_core.units import Unit
from tapewise_tui.canvas import Canvas
from tapewise_tui.dialogs.steps import StepsDialog
from tapewise_tui.step_canvas import draw_corner, draw_step

NAME = "Marta Lindqvist"


def _words(step: HandStep, unit: Unit) -> list[str]:
    """What the picture of a step must say."""
    scene = step.scene
    if step.nearer:
        return ["fold line"]
    if scene.shown:
        return [unit.spell(size.by.mm) for size in scene.shown.sizes]
    named = [", ".join(spot.names) for spot in scene.spots if spot.new or spot.named]
    told = [unit.spell(one.by) for one in scene.measures]
    return [*named, *told, *(mark.name for mark in scene.new_marks)]


@pytest.mark.parametrize("plain", [False, True], ids=["dots", "ASCII"])
@pytest.mark.parametrize("garment", [page.name for page in garments()])
def test_every_letter_and_length_of_a_step_can_be_read(garment: str, plain: bool) -> None:
    """In 80 columns and the 14 rows that are left when the words are long."""
    for who, unit in ((people.person(NAME), Unit.CM), (person(), Unit.IN)):
        for step in hand_steps(draft(who, garment, {}, unit=unit, made=DAY)):
            canvas = Canvas(80, 14, ascii=plain)
            (draw_corner if step.nearer else draw_step)(canvas, step.scene, unit)
            shown = "\n".join(canvas.lines())
            missing = [word for word in _words(step, unit) if word not in shown]
            assert not missing, (step.piece, step.number, missing)


def test_a_canvas_of_any_size_can_be_drawn_on() -> None:
    """A terminal may be very small, or being drawn larger."""
    for step in hand_steps(draft(person(), "set-in-top", {}, made=DAY))[:40]:
        for columns, rows in ((0, 0), (1, 1), (12, 3), (200, 60)):
            draw_step(Canvas(columns, rows), step.scene, Unit.CM)
            draw_corner(Canvas(columns, rows), step.scene, Unit.CM)


@pytest.mark.parametrize("size", [SMALL, LARGE], ids=str)
def test_f12_shows_the_steps_and_escape_goes_back(size: tuple[int, int]) -> None:
    """From each page after the measures, with the sentence of the step below its picture."""
    people.store.save(people.person(NAME))

    async def steps(at: Walk) -> None:
        for page in ("garment", "prove", "save", "sew"):
            at.app.open_person(people.store.load(NAME), page)
            await at.settle()
            await at.press("f12")
            assert isinstance(at.app.screen, StepsDialog), page
            assert "Back, step 1 of" in at.text()
            assert "Mark N" in at.text()
            await at.press("right")
            assert "step 2 of" in at.text()
            assert "From N measure straight down" in at.text()
            await at.press("escape")
            assert at.app.screen is at.page
            assert page == at.page.NAME

    walk(steps, size)


def test_steps_and_pieces_are_turned_through_and_end_at_the_ends() -> None:
    """Left of the first step and right of the last there is none; a piece begins with its first."""
    people.store.save(people.person(NAME))

    async def steps(at: Walk) -> None:
        at.app.open_person(people.store.load(NAME), "garment")
        await at.settle()
        await at.press("f12", "left")
        assert "step 1 of" in at.text()
        await at.press("pagedown")
        assert "Front, step" in at.text()
        front = at.text()
        await at.press("right", "pageup")
        assert at.text() == front
        await at.press("pageup")
        assert "Back, step 1 of" in at.text()
        await at.press("end", "right")
        first, last = at.text().split(" of ")[0].split()[-1], at.text().split(" of ")[1].split()[0]
        assert first == last
        await at.press("home")
        assert "step 1 of" in at.text()

    walk(steps)


def test_without_a_pattern_the_page_says_why() -> None:
    """For a child nothing is estimated: what is missing is named where the steps would be."""
    nobody = people.person(NAME).having(name="Ida Blank", measures={}, age=9.0)
    people.store.save(nobody)

    async def steps(at: Walk) -> None:
        at.app.open_person(people.store.load("Ida Blank"), "save")
        await at.settle()
        await at.press("f12")
        assert at.app.screen is at.page
        assert "Still to measure" in at.said

    walk(steps)


def test_a_mirrored_corner_is_seen_nearer_by_after_its_step() -> None:
    """As much below the fold line as above it, on a page of its own."""
    made = draft(people.person(NAME), "jersey-top", {}, made=DAY)
    steps = hand_steps(made)
    nearer = [place for place, step in enumerate(steps) if step.nearer]
    assert [steps[place].piece for place in nearer] == ["Back", "Front"]
    for place in nearer:
        before, step = steps[place - 1], steps[place]
        assert before.number == step.number
        canvas = Canvas(80, 16)
        draw_corner(canvas, step.scene, Unit.CM)
        assert "\n".join(canvas.lines()).count("2 cm") == 2
