"""Finding lengths told in the unit that a reader does not read."""

from __future__ import annotations

import re
from collections.abc import Iterable

from tapewise_core.paper.document import Bullets, Document, FillIn, Table, Ticks
from tapewise_core.paper.drawing import Drawing, Ink, TextLine
from tapewise_core.units import Unit

OTHER = {
    Unit.IN: re.compile(r"\b(?:cm|mm|\d+(?:cm|mm))\b|centimet|millimet"),
    Unit.CM: re.compile(r"[\d¼½¾⅛⅜⅝⅞] ?(?:in|inch|inches|ft|\")(?![a-z’'])"),
}
"""What the other unit looks like; “in” is a word too, so that it counts after a number alone."""

BOTH_MEANT = {
    # what is printed in both units for everyone, and called by its size
    r"\b(?:100 mm|4 in) (?:each way|by (?:100 mm|4 in))": "the two squares, called by their sizes",
    r"square of 100 mm or 4 in|square: 100 mm, or 4 in": "either of the two squares will do",
    r"100 mm square": "the square, called by its size",
    r"\b200 mm, across and down|\b50 mm\b": "the rule and the mark printed on every page",
    r"\b(?:9[34][.\d]*(?: to 97.1)?|97.3|100) mm\b": "what a square of 100 mm measures when wrong",
    r"a 5 cm grid": "the projector's grid is 5 cm for everyone",
    # examples of what may be typed
    r"(?:type it|a length) like .*?(?: in| cm)\b": "either unit may be typed, whatever is read",
    r"92\.5 cm, 36 1/4 in or 36¼": "the same, in the app's help",
    r"30x42 cm or 11x17 in": "the same, a sheet of paper",
    r"in mm, or in inches for those who read inches": "what a bare number about paper means",
    r"unit=cm or in": "the choice of a unit, on the command line",
    r"--unit cm\b|\{cm,in\}": "the same, on the command line",
    r"sheets of (?:24 by 36|36 by 48) in for a copy shop": "paper sizes called by their inches",
    r"whole pieces in mm: a block": "the unit that the file is drawn in, whoever reads",
    # names of the units themselves
    r"\bcm/in\b|in cm or in inches|the other unit": "the key that changes the unit",
    r"\( ?\*? ?\) (?:centimetres|inches)": "the choice of a unit",
    r"typed in (?:centimetres|inches)\?": "a slip: the other unit was typed",
    r"\b\d in 10\b": "a share of bodies, not a length",
    r"\bBy now (?:under )?\d in$": "the same, at the end of a line",
    # what is a unit's own
    r"\d+ mm is usual \([\d/ ]+ in\)": "told before it is known who reads",
    r"must be more than 0 and at most 300 cm": "a person's file holds cm, whoever reads",
    r"\(134 cm\)": "a size of EN 14682, a standard in cm",
}
"""Where both units are meant: what it looks like, and why."""

_MEANT = re.compile("|".join(BOTH_MEANT))


def foreign(texts: Iterable[str], unit: Unit) -> list[str]:
    """Return the texts that tell a length in the unit that is not ``unit``, without doubles."""
    return list(dict.fromkeys(text for text in texts if OTHER[unit].search(_MEANT.sub("", text))))


def words_of(document: Document) -> list[str]:
    """Return every sentence of a document."""
    found = [document.title]
    for block in document.blocks:
        if isinstance(block, Table):
            found += [*block.head, *(" | ".join(row) for row in block.rows)]
        elif isinstance(block, Ticks | Bullets):
            found += block.items
        else:
            found.append(block.text)
            found += (*block.lines, *block.ticks) if isinstance(block, FillIn) else ()
            for picture in (getattr(block, "picture", None), getattr(block, "aside", None)):
                found += written(picture) if picture else ()
    return found


def written(drawing: Drawing) -> list[str]:
    """Return every word on a drawing, and what it is called."""
    return [drawing.title, drawing.description, *inked(drawing.inks)]


def inked(inks: Iterable[Ink]) -> list[str]:
    """Return the words among inks."""
    return [ink.text for ink in inks if isinstance(ink, TextLine)]
