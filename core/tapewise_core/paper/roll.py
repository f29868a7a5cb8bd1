"""A pattern on the long paper of a plotter: pages as wide as the roll, as long as they need."""

from __future__ import annotations

import math
from collections.abc import Sequence

from tapewise_core.errors import OptionError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Ink, TextLine
from tapewise_core.paper.lettering import shortened
from tapewise_core.paper.packing import BORDER, filled_strip, ink_box, joined, turned
from tapewise_core.paper.pattern_set import PatternSet, piece_name
from tapewise_core.paper.scale import MARK, mark, squares
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.paper.sizes import LONGEST
from tapewise_core.text.told import OnPaper, PaperSpan, said

FOOT = 12.0
"""Room for the line of text below the pieces [mm]."""

NARROWEST = 2 * BORDER + 215
"""The least that must be printed across: the two squares side by side [mm]."""


def rolled(pattern: PatternSet, width: float, margin: float) -> Prints:
    """Return pages of a roll [mm]; more than one only where a page would pass the format's limit.

    A piece too wide for the roll is turned a quarter. Raises OptionError if
    it does not fit either way.
    """
    usable = width - 2 * margin
    longest = LONGEST - 2 * margin - FOOT
    if not (usable >= NARROWEST and width <= LONGEST):
        raise OptionError(
            said(
                "A roll of {} with margins of {} can't be used; choose a width from {}.",
                OnPaper(width),
                OnPaper(margin),
                PaperSpan(round(NARROWEST + 2 * margin), LONGEST),
            )
        )
    pieces = [_fitted(piece, usable, longest, width) for piece in pattern.pieces]
    pages = _pages([*pieces, squares()], usable, longest)
    stacked, windows = _stacked(pages, margin)
    canvas = joined(pattern.title, pattern.description, stacked, BORDER)
    sheets = [
        _sheet(pattern, number, len(windows), window, width, margin)
        for number, window in enumerate(windows, 1)
    ]
    return Prints(pattern.title, pattern.person, pattern.description, canvas, tuple(sheets))


def _fitted(piece: Drawing, usable: float, longest: float, width: float) -> Drawing:
    """The piece as it is, or turned a quarter where only that fits."""
    across, down = usable - 2 * BORDER, longest - 2 * BORDER
    for way in (piece, turned(piece)):
        box = ink_box(way)
        if box.width <= across and box.height <= down:
            return way
    box = ink_box(piece)
    least = min(box.width, box.height) + width - across
    raise OptionError(
        said(
            "“{}” is {} wide and {} long and does not fit a roll of {}, on which a page may be {} "
            "long; a roll of {} or more, or pages to join such as pdf-a4, would take it.",
            piece_name(piece),
            OnPaper(round(box.width)),
            OnPaper(round(box.height)),
            OnPaper(width),
            OnPaper(LONGEST, "down"),
            OnPaper(math.ceil(least), "up"),
        )
    )


def _pages(pieces: Sequence[Drawing], usable: float, longest: float) -> list[list[Drawing]]:
    """Pieces laid out page by page, a new page begun where the next piece would not fit."""
    pages: list[list[Drawing]] = []
    waiting = list(pieces)
    while waiting:
        count = len(waiting)
        laid = filled_strip(waiting, usable)
        while count > 1 and max(ink_box(piece).bottom for piece in laid) + BORDER > longest:
            count -= 1
            laid = filled_strip(waiting[:count], usable)
        pages.append(laid)
        waiting = waiting[count:]
    return pages


def _stacked(
    pages: Sequence[Sequence[Drawing]], margin: float
) -> tuple[list[Drawing], list[Window]]:
    """All pages' pieces on one canvas, one page below another, and a window on each."""
    stacked: list[Drawing] = []
    windows: list[Window] = []
    top = 0.0
    for page in pages:
        bottom = max(ink_box(piece).bottom for piece in page) + BORDER
        right = max(ink_box(piece).right for piece in page) + BORDER
        stacked += [piece.moved(Vector(0, top)) for piece in page]
        windows.append(Window(Box(0, top, right, top + bottom), Point(margin, margin)))
        top += bottom
    return stacked, windows


def _sheet(
    pattern: PatternSet, number: int, count: int, window: Window, width: float, margin: float
) -> Sheet:
    """One page: the pieces, and a line that says what it is with the mark to measure."""
    top = margin + window.seen.height
    place = f"page {number} of {count} · print at 100\u00a0%"
    after = margin + MARK + 10
    room = width - margin - after
    inks: list[Ink] = [
        *mark(margin + 2, top + 6),
        TextLine(
            shortened(f"{pattern.label()} · {place}", room, 4), Point(after, top + 5), 4, bold=True
        ),
        TextLine(shortened(pattern.note, room, 3), Point(after, top + 9.5), 3),
    ]
    inks = [ink for ink in inks if not isinstance(ink, TextLine) or ink.text]
    height = top + FOOT + margin
    return Sheet(f"page {number}", width, height, tuple(inks), window)
