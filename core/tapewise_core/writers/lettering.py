"""The one font printed files carry: what it has, and what stands for what it has not."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable
from functools import cache, lru_cache
from pathlib import Path
from typing import Any

from tapewise_core.paper.drawing import Ink, TextLine

FONT = "Tapewise"
"""The name the font is registered under."""

FILE = Path(__file__).parent / "fonts" / "DejaVuSans-subset.ttf"

WORDS = 4096
"""So many words are remembered with how wide they are set."""

STAND_IN = "?"
"""Drawn for a sign the font does not have and that no Latin letters spell."""


class Lettering:
    """The font while one file is written, and whether it could spell every word."""

    def __init__(self) -> None:
        self._font = _registered()
        self._known: dict[int, int] = self._font.face.charToGlyph
        self._plain: set[str] = set()
        self._short = False
        self._seen: dict[str, str] = {}

    def note(self, inks: Iterable[Ink]) -> None:
        """Look through words that are drawn later, so that what is missing can be said first."""
        for ink in inks:
            if isinstance(ink, TextLine):
                self.shaped(ink.text)

    def shaped(self, text: str) -> str:
        """Return the text in drawing order, letters the font lacks spelt in Latin ones."""
        if text not in self._seen:
            self._seen[text] = self._shape(text)
        return self._seen[text]

    def _shape(self, text: str) -> str:
        known = unicodedata.normalize("NFC", text)
        letters = set(known) - self._plain  # few are left after some lines
        leftward = any(unicodedata.bidirectional(letter) in {"R", "AL"} for letter in letters)
        if leftward:
            known = _right_to_left(known)
            letters = set(known)
        if all(ord(letter) in self._known for letter in letters):
            self._plain |= set() if leftward else letters
            return known
        self._short = True
        return "".join(self._spelt(letter) for letter in known)

    def _spelt(self, letter: str) -> str:
        """A letter the font has, or its sound in Latin ones; a mark that has none is silent."""
        from anyascii import anyascii

        if ord(letter) in self._known:
            return letter
        silent = unicodedata.category(letter) in {"Mn", "Mc", "Me", "Cf"}
        return anyascii(letter) or ("" if silent else STAND_IN)

    def width(self, text: str, size: float) -> float:
        """Return how wide shaped text is set, in the unit of ``size``."""
        return float(self._font.stringWidth(text, size))

    def says(self) -> str:
        """Return a sentence about letters that could not be drawn, or nothing."""
        if not self._short:
            return ""
        return (
            "Letters this file's font does not have are spelt in Latin ones; "
            "the SVG and HTML files spell every name in full."
        )


@cache
def _registered() -> Any:
    """The font as the library knows it, read once; what each file uses of it is kept by file."""
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont

    class Font(TTFont):
        """Measures a word once: the library adds up its letters whenever it sets a paragraph."""

        def stringWidth(self, text: str, size: float, encoding: str = "utf8") -> float:  # noqa: N802
            return 0.001 * size * units(text)

    font: Any = Font(FONT, str(FILE))
    widths, otherwise = font.face.charWidths, font.face.defaultWidth

    @lru_cache(maxsize=WORDS)
    def units(text: str) -> float:
        total: float = sum(widths.get(ord(letter), otherwise) for letter in text)
        return total

    pdfmetrics.registerFont(font)
    return font


def _right_to_left(text: str) -> str:
    """Join and order Arabic and Hebrew letters as they are written, between dividing dots.

    Each stretch by itself, or a date after a name would be turned round with it.
    """
    from arabic_reshaper import reshape
    from bidi.algorithm import get_display

    parts = text.split(" · ")
    return " · ".join(str(get_display(reshape(part), base_dir="L")) for part in parts)
