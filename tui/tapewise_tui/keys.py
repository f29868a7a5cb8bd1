"""The key map: what each key means, the same on every page.

Footers, help, the command palette and tests read this one table. A page names the keys that do
something there and what that is there (:func:`of`); no page gives a key another word.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from textual.binding import Binding, BindingType
from textual.screen import Screen

from tapewise_core.frozen import Frozen


class Key(Frozen):
    """A key as Textual names it, the action, its word in footers, and what it does in a sentence.

    ``rank`` says how soon it stays out of a footer that has too little room; the lowest stay.
    ``other`` does the same, for browsers, which keep the first to themselves.
    """

    key: str
    action: str
    word: str
    says: str
    rank: int
    other: str = ""


KEYS: Mapping[str, Key] = {
    "help": Key("f1", "app.help", "Help", "what this page is for, its keys, words of the trade", 0),
    "quit": Key("ctrl+q", "app.quit", "Quit", "leave; everything is kept already", 0),
    "unit": Key("f2", "unit", "cm/in", "read and type in the other unit", 8),
    "back": Key("f3", "back", "Back", "to what comes before", 4),
    "on": Key("f4", "on", "On", "on to what comes next", 1),
    "find": Key("f5", "find", "Find", "find a line by some of its letters", 5),
    "take": Key("f6", "take", "Take", "take what is offered: an estimate or a change", 2),
    "confirm": Key("f7", "confirm", "Confirm", "keep what was read as right, though unlikely", 6),
    "change": Key("f8", "change", "Change", "go to where what is marked is changed", 3),
    "pages": Key("f9", "app.pages", "Pages", "turn to any page", 7),
    "new": Key("ctrl+n", "new", "New", "begin with somebody new", 1, "plus"),
    "write": Key("ctrl+s", "write", "Write", "write the files", 1),
    "sheet": Key("ctrl+b", "sheet", "Blank", "write the measuring sheet, to fill in by hand", 9),
    "open": Key("ctrl+o", "open", "Open", "open the folder on the desktop", 3),
    "all": Key("ctrl+l", "all", "All", "show all there is, or only what matters", 3),
    "table": Key("f10", "table", "Sheet", "all on one sheet, or one a page", 2),
    "piece": Key("ctrl+g", "piece", "Piece", "mark the next piece of the pattern", 9),
    "steps": Key(
        "f12", "app.steps", "Steps", "how to draft it by hand, a picture for each step", 8
    ),
    "cloth": Key(
        "ctrl+r", "app.cloth", "Cloth", "how the pieces lie on the cloth, and how much to buy", 6
    ),
    "fitting": Key(
        "ctrl+f", "app.fitting", "Try on", "what is seen when it is tried on, and what to change", 6
    ),
    "delete": Key("delete", "delete", "Delete", "delete what is marked, once you said yes", 5),
    "undo": Key("ctrl+z", "app.undo", "Undo", "take the last change back", 9),
    "redo": Key("ctrl+y", "app.redo", "Redo", "make it again", 10),
    "look": Key(
        "ctrl+t", "app.look", "Look", "chalk on dark cloth, or ink on paper", 11, "shift+f2"
    ),
    "palette": Key("ctrl+p", "app.command_palette", "All commands", "find anything by name", 10),
}
"""Every key that means something on more than a field, in the order of a footer."""

EVERYWHERE = ("help", "unit", "back", "on", "pages", "undo", "redo", "look")
"""What every page has; leaving and the palette are the app's own."""

MOVES = (
    ("arrows", "one line up or down, another word left or right"),
    ("Page Up, Page Down", "a screen up or down"),
    ("Home, End", "to the first line or the last"),
    ("Tab", "to the next part of the page"),
    ("Enter", "do what the line marked is for: open it, type into it, tick it"),
    ("Escape", "leave a question or a field as it was"),
)
"""Keys that move about, for help."""


def of(*names: str, **says: str) -> list[BindingType]:
    """Return keys for a page, some of them with what they do there."""
    return [made for name in (*names, *says) for made in _bindings(KEYS[name], says.get(name, ""))]


def of_the_app() -> list[BindingType]:
    """Return the keys that work over every page and dialog, whatever has the cursor."""
    rows = (KEYS["quit"], KEYS["palette"])
    return [Binding(r.key, r.action, r.word, tooltip=r.says, priority=True) for r in rows]


def hidden(*names: str) -> list[BindingType]:
    """Return keys of every page that do nothing on this one."""
    return [Binding(KEYS[name].key, KEYS[name].action, show=False) for name in names]


def at_work(screen: Screen[Any]) -> Iterator[tuple[Key, str]]:
    """Return the keys that mean something on a screen now, each with what it does there."""
    active = screen.active_bindings
    for row in KEYS.values():
        found = active.get(row.key)
        if found is not None and found.binding.show:
            yield row, found.binding.tooltip or row.says


def shown(key: str) -> str:
    """Spell a key as people read it.

    >>> shown("f1"), shown("ctrl+q"), shown("delete")
    ('F1', 'Ctrl+Q', 'Delete')
    """
    return "+".join(_SIGNS.get(part, part.capitalize()) for part in key.split("+"))


def both(row: Key) -> str:
    """Spell a key with the other one that does the same.

    >>> both(KEYS["new"]), both(KEYS["help"])
    ('Ctrl+N or +', 'F1')
    """
    return " or ".join(shown(key) for key in (row.key, row.other) if key)


_SIGNS = {"plus": "+"}


def _bindings(row: Key, says: str) -> Iterator[Binding]:
    yield Binding(row.key, row.action, row.word, tooltip=says or row.says)
    if row.other:
        yield Binding(row.other, row.action, row.word, show=False)
