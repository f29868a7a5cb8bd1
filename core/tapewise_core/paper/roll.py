"""A pattern on the long paper of a plotter: pages as wide as the roll, as long as they need."""

from __future__ import annotations

import math
from collections.abc import Sequence

from tapewise_core.errors import OptionError, PaperError
from tapewise_core.geometry.outline import Box
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.paper.drawing import Drawing, Ink, TextLine
from tapewise_core.paper.lettering import shortened
from tapewise_core.paper.nesting import nested_pages
from tapewise_core.paper.packing import BORDER, ink_box, joined
from tapewise_core.paper.pattern_set import PatternSet, piece_name
from tapewise_core.paper.scale import MARK, mark, squares
from tapewise_core.paper.sheet import Prints, Sheet, Window
from tapewise_core.paper.sizes import LONGEST
from tapewise_core.paper.turning import least_width, ways
from tapewise_core.text.amounts import OnPaper, PaperSpan
from tapewise_core.text.told import said

FOOT = 12.0
"""Room for the line of text below the pieces [mm]."""

NARROWEST = 2 * BORDER + 215
"""The least that must be printed across: the two squares side by side [mm]."""


def rolled(pattern: PatternSet, width: float, margin: float) -> Prints:
    """Return pages of a roll [mm]; more than one only where a page would pass the format's limit.

    Pieces are laid by their outlines, turned as it suits. Raises OptionError for a roll that
    cannot be, PaperError for a piece that fits no way.
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
    pieces = [_fitting(piece, usable, longest, width) for piece in pattern.pieces]
    pages = nested_pages([*pieces, [squares()]], usable, longest)
    stacked, windows = stacked_pages(pages, margin)
    canvas = joined(pattern.title, pattern.description, stacked, BORDER)
    sheets = [
        roll_sheet(pattern, number, len(windows), window, width, margin)
        for number, window in enumerate(windows, 1)
    ]
    return Prints(pattern.title, pattern.person, pattern.description, canvas, tuple(sheets))


def _fitting(piece: Drawing, usable: float, longest: float, width: float) -> list[Drawing]:
    """The piece in every way it fits the roll, turned as paper allows: by any angle."""
    across, down = usable - 2 * BORDER, longest - 2 * BORDER
    boxes = [(way, ink_box(way)) for way in ways(piece)]
    fits = [way for way, box in boxes if box.width <= across and box.height <= down]
    if fits:
        return fits
    box = ink_box(piece)
    least = least_width(piece) + width - across
    raise PaperError(
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


def stacked_pages(
    pages: Sequence[Sequence[Drawing]], margin: float
) -> tuple[list[Drawing], list[Window]]:
    """Return all pages' pieces on one canvas, one page below another, and a window on each."""
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


def roll_sheet(
    pattern: PatternSet, number: int, count: int, window: Window, width: float, margin: float
) -> Sheet:
    """Return one page: the pieces, and a line that says what it is with the mark to measure."""
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
