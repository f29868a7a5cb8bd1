"""One line of a page's choices: what it is about, its value, and how it is read."""

from __future__ import annotations

from rich.text import Text

from tapewise_core.frozen import Frozen


class ChoiceLine(Frozen):
    """One line: ``key`` is None for a heading; ``words`` are empty for what is typed or opened.

    ``opens`` is for lines that Enter opens something by; ``mark`` for what the wearer chose.
    """

    key: str | None
    label: str
    value: str = ""
    words: tuple[str, ...] = ()
    opens: bool = False
    mark: bool = False

    @property
    def is_typed(self) -> bool:
        """Whether a value is typed into it."""
        return self.key is not None and not (self.words or self.opens)


def told(line: ChoiceLine, width: int, typed: str | None = None) -> Text:
    """Return a line as it is read in so many columns: its name left, its value right, words in
    brackets; in place of the value what is being typed."""
    if line.key is None:
        return Text(line.label, "bold underline")
    name = f"{line.label}{' *' if line.mark else ''}"
    room = max(width - 3 - len(name), 8)
    shown = line.value if typed is None else f"{typed}_"
    value = shown if len(shown) <= room - 3 else f"{shown[: room - 4]}…"
    value = f"<{value}>" if line.words else f" {value} "
    return Text(f"{name}{value:>{room}}", no_wrap=True, overflow="ellipsis")


def begins(label: str, letters: str) -> bool:
    """Say whether a word of a name begins with some letters."""
    return any(word.startswith(letters) for word in label.casefold().split())
