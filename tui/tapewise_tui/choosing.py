"""The garment page's lines: what may be chosen, the few that matter first or all of it."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.tasks import wizard
from tapewise_core.tasks.settings import settings
from tapewise_core.tasks.wizard import OptionRow
from tapewise_tui import words
from tapewise_tui.desk import Desk
from tapewise_tui.line import Line
from tapewise_tui.widgets.choice_line import ChoiceLine

GARMENT, LIKE, MACHINES = "garment", "like", "machines"
FOLD, BUY, ALL = "fold", "buy", "all"
"""Keys of the lines that are no options."""

SAYS = {
    GARMENT: "What is sewn: {}. Left and right take another garment, Enter lists them all.",
    LIKE: "As wide and long as a garment that fits, in this cloth: lay it flat, measure it once. "
    "Enter begins.",
    MACHINES: "Which machines you have; stitches, and how far seams stretch, follow from it. "
    "Enter changes it.",
    FOLD: "Works out the stretch from two pins and a ruler. Enter begins.",
    BUY: "How the pieces lie on the cloth, and how much of it to buy. Enter or Ctrl+R shows it.",
    ALL: "Enter or Ctrl+L shows all choices, or the few that matter most again; F5 finds any by "
    "its letters.",
}
"""What is told of lines that are no options."""


def lines(desk: Desk, rows: tuple[OptionRow, ...], every: bool) -> tuple[ChoiceLine, ...]:
    """Return the page's lines; ``every`` option that has something to do, or those decided first.

    What has nothing to do in this style is never shown.
    """
    shown = [row for row in rows if row.at_work and (every or row.first)]
    return (_garment(desk), *_options(shown, every), *_rest(desk, rows, every))


def _garment(desk: Desk) -> ChoiceLine:
    titles = tuple(page.title for page in wizard.garments())
    return ChoiceLine(GARMENT, "garment", wizard.garment(desk.work.garment).title, titles)


def _options(rows: list[OptionRow], headed: bool) -> Iterator[ChoiceLine]:
    heading = ""
    for row in rows:
        if headed and row.group != heading:
            heading = row.group
            yield ChoiceLine(None, heading)
        yield ChoiceLine(row.key, row.label, row.value, row.choices, mark=row.asked)
        if row.key == "stretch":
            yield ChoiceLine(FOLD, "  try your cloth", "…", opens=True)
        if row.key == "cloth-width":
            yield ChoiceLine(BUY, "  cloth to buy", "…", opens=True)


def _rest(desk: Desk, rows: tuple[OptionRow, ...], every: bool) -> Iterator[ChoiceLine]:
    if every:
        yield ChoiceLine(None, "Workshop")
    yield ChoiceLine(LIKE, "like one that fits", "…", opens=True)
    sure = "" if settings().machines else " ?"
    named = ", ".join(desk.work.machines)
    yield ChoiceLine(MACHINES, f"machines{sure}", named, opens=True)
    more = sum(row.at_work and not row.first for row in rows)
    if more:
        said = "fewer choices" if every else words.count(more, "more choice")
        yield ChoiceLine(ALL, said, "Ctrl+L", opens=True)


def about(key: str, rows: tuple[OptionRow, ...], garment: str) -> str:
    """Say what a line is about and what may be chosen; a garment's title whole, that is long."""
    row = next((row for row in rows if row.key == key), None)
    if row is None:
        return SAYS.get(key, "").format(wizard.garment(garment).title.lower())
    way = "one of" if row.choices else "from"
    return f"{words.sentence(row.says)}: {way} {row.limits}; usually {row.usual}."


def words_of(
    key: str, choices: tuple[str, ...], rows: tuple[OptionRow, ...]
) -> tuple[str, list[Line]]:
    """Return what a line's words are chosen for, and the words; garments with their sentence."""
    row = next((row for row in rows if row.key == key), None)
    if row is not None:
        return words.sentence(row.says), [Line(word, word) for word in choices]
    shelf = wizard.garments()
    return "What is sewn?", [Line(page.title, f"{page.title}: {page.says}") for page in shelf]


def findable(rows: tuple[OptionRow, ...]) -> list[Line]:
    """Return every option that has something to do, to be found by any word about it."""
    return [Line(row.key, _found_by(row)) for row in rows if row.at_work]


def _found_by(row: OptionRow) -> str:
    """What an option is found by: its name, what is chosen, what it is, its other words."""
    words = f": {row.limits}" if row.choices and "yes" not in row.choices else ""
    return f"{row.label}  {row.value}   {row.says}{words}"
