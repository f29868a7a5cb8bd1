"""What is typed for a choice, made part of a project, and whether that can be kept."""

from __future__ import annotations

from tapewise_core.tasks import wizard
from tapewise_core.tasks.work import Work
from tapewise_tui import drafting
from tapewise_tui.desk import Desk


def tried(desk: Desk, key: str, text: str) -> Work:
    """Return the project with a choice as it was typed, or as usual where nothing was.

    Raises OptionError for what is no value of it.
    """
    made = desk.work
    if not text:
        return made.with_option(key, None)
    return made.with_option(key, wizard.plainly(made.garment, key, text, desk.unit))


def refusal(desk: Desk, made: Work) -> str:
    """Say why a project cannot be kept, or nothing: it can be drafted, or waits for a measure.

    Raises OptionError for options that are wrong whatever is measured.
    """
    result = drafting.of(desk.profile, made, desk)
    if not isinstance(result, str):
        return ""
    if not drafting.missing(desk, made):
        return f"{result} Not kept."
    wizard.refuse_wrong(desk.profile, made.garment, made.asked)
    return ""
