"""Like a garment that fits: which one, what it measures, and what that makes of the choices."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.fitted import Loved
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.liking.like import as_free, draft_like
from tapewise_core.tasks.work import Work
from tapewise_core.units import Unit
from tapewise_tui import words
from tapewise_tui.dialogs.loved import LovedDialog
from tapewise_tui.dialogs.telling import TellDialog
from tapewise_tui.line import Line
from tapewise_tui.page import Page
from tapewise_tui.widgets.find import FindDialog

Keep = Callable[[str, Work], bool]
"""Keeps a change of the work under its words; returns False where it cannot be kept."""

ANOTHER = "another"
"""The line for a garment that is not on file yet."""


def begin(page: Page, keep: Keep) -> None:
    """Ask which garment it shall be like, or what the first one measures."""
    desk = page.desk
    if not desk.profile.loved:
        _another(page, keep)
        return
    lines = [Line(one.name, _line(one, desk.unit)) for one in desk.profile.loved]
    lines.append(Line(ANOTHER, "another one: lay it flat and measure it"))

    def chosen(name: str | None) -> None:
        if name == ANOTHER:
            _another(page, keep)
        elif name is not None:
            _take(page, keep, name)

    page.app.push_screen(FindDialog("Like which garment that fits?", lines), chosen)


def _line(one: Loved, unit: Unit) -> str:
    """A garment by its name and what is known of it."""
    bust = one.flat.get("bust")
    known = [words.count(len(one.flat), "measure")]
    known += [f"bust {unit.spell(bust * 10)}"] if bust else []
    known += [] if one.stretch is None else [f"stretch {one.stretch:g} %"]
    return f"{one.name}: {', '.join(known)}"


def _another(page: Page, keep: Keep) -> None:
    desk = page.desk

    def measured(found: tuple[str, Profile] | None) -> None:
        if found is not None:
            name, profile = found
            desk.change(f"{name} as it lies flat", profile)
            _take(page, keep, name)

    page.app.push_screen(LovedDialog(desk.profile, desk.unit), measured)


def _take(page: Page, keep: Keep, name: str) -> None:
    """Choose what makes it like a garment, and tell what still differs and why."""
    desk = page.desk
    made = desk.work
    try:
        drafted = draft_like(desk.profile, made.garment, name, as_free(made.asked), unit=desk.unit)
    except TapewiseError as error:
        page.warn(error)
        return
    assert drafted.like is not None
    if keep(f"like {name}", replace(made, asked=dict(drafted.asked))):
        told = tuple(map(drafted.reader.spell, drafted.like.told))
        page.app.push_screen(TellDialog(f"Like “{name}”", told))
