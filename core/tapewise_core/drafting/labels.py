"""What is printed on a piece besides its lines: the label, edge names and level lines."""

from __future__ import annotations

import math

from tapewise_core.drafting.piece import Piece
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import TextLine
from tapewise_core.paper.lettering import broken
from tapewise_core.text.told import LineName
from tapewise_core.units import Unit

LARGEST, SMALLEST = 5.0, 2.2
"""The type on a piece [mm]; below the smallest it can't be read from a cheap printer."""

TITLE = 10.0
"""The type of a piece's name where it has room [mm]: 28 points, read from a chair (our choice)."""

LEADING = 1.35
"""From baseline to baseline, as a share of the type's height."""


class LabelHead(Frozen):
    """What every label of one pattern says; ``estimated`` are measures with their ±.

    ``fingerprint`` is the same on all sheets of one draft; ``looks`` is its style in three words;
    ``fitted`` are what fittings changed, a line for each.
    """

    garment: str
    person: str
    date: str
    version: str
    unit: Unit
    estimated: tuple[str, ...] = ()
    fingerprint: str = ""
    looks: str = ""
    fitted: tuple[str, ...] = ()

    def set_words(self) -> str:
        """Say which set a sheet belongs to, or nothing where there is no fingerprint."""
        return f"set {self.fingerprint}: {self.looks}" if self.fingerprint else ""


TITLES = {
    "back": "Back",
    "front": "Front",
    "neckband": "Neckband",
    "armband": "Armhole band",
    "skirt": "Skirt",
    "waistband": "Waistband",
    "sleeve": "Sleeve",
}


def title(name: str) -> str:
    """Return a piece's name as a person reads it."""
    return TITLES.get(name, name.replace("_", " ").capitalize())


def cut_words(piece: Piece) -> str:
    """Say how many to cut and how."""
    if piece.on_fold:
        return f"cut {piece.count} on the fold"
    return f"cut {piece.count}, mirrored" if piece.mirrored else f"cut {piece.count}, single"


def allowance_words(piece: Piece, unit: Unit) -> str:
    """Say what each edge gets, edges alike told together."""
    groups: dict[str, list[str]] = {}
    for edge in piece.edges:
        if not edge.fold and edge.mouth is None:
            name = str(LineName(edge.name))
            group = groups.setdefault(unit.spell(edge.allowance), [])
            if name not in group:
                group.append(name)
    return "; ".join(f"{', '.join(names)} {spelt}" for spelt, names in groups.items())


WIDE = 46
"""Characters a line of the small print has at most (our choice)."""


def label_lines(piece: Piece, number: int, total: int, heading: LabelHead) -> list[str]:
    """Return the label's lines, the piece's own name first."""
    lines = [
        title(piece.name),
        f"{heading.garment}, for {heading.person}",
        f"piece {number} of {total}: {cut_words(piece)}",
        *broken(_allowances(piece, heading.unit), WIDE),
        *filter(None, (heading.set_words(),)),
        *_fitted(heading.fitted),
        f"{heading.date}, tapewise {heading.version}",
    ]
    if heading.estimated:
        lines += _listed("estimated, not measured:", heading.estimated)
    return lines


MOST_FITTED = 6
"""So many lines about fittings have room on the smallest piece (our choice)."""


def _fitted(fitted: tuple[str, ...]) -> list[str]:
    """What fittings changed, the newest first where not all has room."""
    lines = [line for words in fitted for line in broken(words, WIDE)]
    if len(lines) <= MOST_FITTED:
        return lines
    newest = [line for words in reversed(fitted) for line in broken(words, WIDE)]
    return [*newest[: MOST_FITTED - 1], "and more: see the instructions"]


def _allowances(piece: Piece, unit: Unit) -> str:
    """What is added to the stitch line; nothing where the whole pattern is without."""
    if any(edge.allowance for edge in piece.edges):
        return f"allowances included: {allowance_words(piece, unit)}"
    return "without allowances: add them on the cloth"


def _listed(opening: str, items: tuple[str, ...]) -> list[str]:
    """Items one after another, a line broken only between two of them."""
    lines = [opening]
    for i, item in enumerate(items):
        word = item + ("" if i == len(items) - 1 else ",")
        if len(lines[-1]) + 1 + len(word) > WIDE:
            lines.append(word)
        else:
            lines[-1] += f" {word}"
    return lines


def label_box(piece: Piece) -> Box:
    """Return the room for the label: right of the fold bracket, clear of grain and levels."""
    if piece.label is not None:
        return piece.label
    outline = box_of(piece.stitch_line())
    grain = min(p.x for p in piece.grain)
    if not piece.on_fold and outline.height < 120:
        half = outline.height / 2 if piece.inner else outline.height
        right = outline.left + outline.width * 0.72
        return Box(outline.left + 8, outline.top + 2, right, outline.top + half - 1)
    waist = piece.levels.get("waist", outline.top + outline.height * 0.5)
    top = piece.levels.get("armscye", outline.top + outline.height * 0.3) + 8
    return Box(26, top, max(grain - 6, 90), max(waist - 8, top + 40))


def set_label(lines: list[str], box: Box, part: str) -> tuple[TextLine, ...]:
    """Set lines into a box, in as many columns as give the largest type.

    Where there is room the first line, the piece's name, is large enough to be read from a chair.
    """
    head = _head_size(lines[0], box)
    if head <= LARGEST:
        return _set(lines, box, part, bold=True)
    name = TextLine(lines[0], Point(box.left, box.top + head), head, bold=True, part=part)
    below = Box(box.left, box.top + head * LEADING, box.right, box.bottom)
    return (name, *_set(lines[1:], below, part, bold=False))


def _head_size(name: str, box: Box) -> float:
    """Type for the piece's name: a quarter of the room's height at most, and within its width."""
    return min(TITLE, box.height / 4, 0.95 * box.width / (0.6 * len(name)))


def _set(lines: list[str], box: Box, part: str, *, bold: bool) -> tuple[TextLine, ...]:
    columns, size = max(
        ((c, _type_size(lines, box, c)) for c in (1, 2, 3, 4)), key=lambda pair: (pair[1], -pair[0])
    )
    size = max(size, SMALLEST)
    rows = math.ceil(len(lines) / columns)
    step = box.width / columns
    return tuple(
        TextLine(
            line,
            Point(box.left + step * (i // rows), box.top + size * (1 + LEADING * (i % rows))),
            size,
            bold=bold and i == 0,
            part=part,
        )
        for i, line in enumerate(lines)
    )


def _type_size(lines: list[str], box: Box, columns: int) -> float:
    rows = math.ceil(len(lines) / columns)
    longest = max(len(line) for line in lines)
    return min(LARGEST, box.height / (1.35 * rows), 0.95 * box.width / columns / (0.6 * longest))
