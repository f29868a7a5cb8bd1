"""What every writer asks of a drawing first: finite places and printable words."""

from __future__ import annotations

import math
import re
import unicodedata
from collections.abc import Callable, Iterable

from msgspec.structs import replace

from tapewise_core.errors import DraftError
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.segments import Line
from tapewise_core.paper.drawing import Drawing, Ink, TextLine

_UNPRINTABLE = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]+")


def plain(text: str) -> str:
    """Return the text with control characters and broken code points turned into spaces.

    >>> plain("Zoë\\x00\\x07 – Ελένη")
    'Zoë – Ελένη'
    """
    if text.isprintable() and not (text[:1] == " " or text[-1:] == " " or "  " in text):
        return text
    return " ".join(_UNPRINTABLE.sub(" ", text).split())


def checked(drawing: Drawing) -> Drawing:
    """Return the drawing with printable words; raises DraftError for a place that is no number."""
    return replace(checked_sheet(drawing), inks=tuple(_checked(ink) for ink in drawing.inks))


def checked_sheet(drawing: Drawing) -> Drawing:
    """Return the drawing with a printable title; its ink is left to whoever goes through it anyway.

    Raises DraftError for an edge that is no number.
    """
    box, title = drawing.box, plain(drawing.title)
    if not all(map(math.isfinite, (box.left, box.top, box.right, box.bottom))):
        raise DraftError(f"The sheet “{title}” has an edge that is not a number.")
    return replace(drawing, title=title, description=plain(drawing.description))


def _checked(ink: Ink) -> Ink:
    """One line or text, refused if it stands nowhere."""
    if isinstance(ink, TextLine):
        text, part = plain(ink.text), plain(ink.part)
        _refuse_nowhere(ink.at.x + ink.at.y, lambda: f"The words “{text}” stand")
        _refuse_nowhere(ink.size + ink.angle, lambda: f"The words “{text}” are set")
        return ink if (text, part) == (ink.text, ink.part) else replace(ink, text=text, part=part)
    label, part = plain(ink.name), plain(ink.part)

    def of() -> str:
        return " ".join(word for word in (part, label or ink.layer.value) if word)

    _refuse_nowhere(_summed(ink.path), lambda: f"The line “{of()}” goes")
    _refuse_nowhere(ink.width, lambda: f"The line “{of()}” is drawn")
    return ink if (label, part) == (ink.name, ink.part) else replace(ink, name=label, part=part)


def _summed(path: Path) -> float:
    """The sum of all that a path is drawn by, handles too: a number only if each of them is."""
    start = path.segments[0].start
    found = start.x + start.y
    for segment in path.segments:
        end = segment.end
        found += end.x + end.y
        if not isinstance(segment, Line):
            leave, arrive = segment.leave, segment.arrive
            found += leave.x + leave.y + arrive.x + arrive.y
    return found


def _refuse_nowhere(number: float, says: Callable[[], str]) -> None:
    if not math.isfinite(number):
        raise DraftError(f"{says()} where no number says, so nothing was written.")


def slug(name: str, otherwise: str = "sheet") -> str:
    """Return a name for files and ids: small Latin letters, digits and hyphens, never empty.

    >>> slug("Front (left)"), slug("Ärmel"), slug("../etc"), slug("後ろ", "piece")
    ('front-left', 'armel', 'etc', 'piece')
    """
    bare = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", bare.lower()).strip("-")[:60] or otherwise


def distinct(names: Iterable[str]) -> list[str]:
    """Return the names with ``-2``, ``-3`` … added where one came before.

    >>> distinct(["a", "a", "a-2", "b"])
    ['a', 'a-2', 'a-2-2', 'b']
    """
    taken: set[str] = set()
    result = []
    for name in names:
        candidate, again = name, 1
        while candidate in taken:
            again += 1
            candidate = f"{name}-{again}"
        taken.add(candidate)
        result.append(candidate)
    return result
