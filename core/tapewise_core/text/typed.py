"""Lengths and numbers as people type them."""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction

from tapewise_core.errors import ReadingError
from tapewise_core.units import Unit

_AMOUNT = (
    r"(?P<sign>[-+]?) ?"
    r"(?:(?P<feet>\d{1,2}) ?(?:'|ft|feet|foot) ?)?"
    r"(?:(?P<decimal>\d{0,9}[.,]\d{1,20}|\d{1,9}[.,])"
    r"|(?:(?P<whole>\d{1,6})(?![\d/])(?:[ -](?=\d+/))?)?(?:(?P<top>\d{1,3})/(?P<bottom>\d{1,3}))?)"
    r" ?(?P<unit>mm|cm|m|yards|yard|yd|inches|inch|in|\"|'')?\.?"
)
_NUMBER = r"[-+]?(?:\d{1,15}[.,]?\d{0,20}|[.,]\d{1,20})"
"""No power of ten and no underscore: what people write, not what programs do."""

_RAISED = "([⁰¹²³⁴-⁹]{1,3})[⁄∕/]([₀-₉]{1,3})"
"""A fraction whose top is written small and high, and its bottom small and low."""

_MARKED = ("<super>", "<sub>", "<circle>")
"""Digits written so mean a power, an index or a list's number: never part of a length."""

_INCH = Fraction(254, 10)
_UNIT_MM = {
    **{"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000)},
    **dict.fromkeys(("yd", "yard", "yards"), 36 * _INCH),
}
_PLAIN = str.maketrans("−–″”“′’⁄∕", '--"""\'\'//')


def parse_length(text: str, unit: Unit, *, signed: bool = False, of: str = "") -> float:
    """Return what a person typed as millimetres; a bare number is in ``unit``.

    Zero and, if ``signed``, negatives pass: what a *measure* may be is for its
    own table to say. Raises ReadingError with a sentence for anything else, which
    names first what the length is ``of``.

    >>> [parse_length(t, Unit.CM) for t in ("92", "92,5", "92.5 cm", "925mm")]
    [920.0, 925.0, 925.0, 925.0]
    >>> [parse_length(t, Unit.IN) / 25.4 for t in ('36 1/4"', "36 1/4 in", "36.25in", "36¼")]
    [36.25, 36.25, 36.25, 36.25]
    >>> parse_length("36¹⁄₄", Unit.IN) / 25.4
    36.25
    >>> parse_length("5'6\\"", Unit.CM), parse_length("1 1/2 yd", Unit.IN)
    (1676.4, 1371.6)
    """
    if not text.strip():
        opening = f"{of}: nothing" if of else "Nothing"
        raise ReadingError(f"{opening} was typed; type a length like {_examples(unit)}.")
    found, shown = re.fullmatch(_AMOUNT, _plain(text)), _shown(text)
    shown = f"{of}: “{shown}”" if of else f"“{shown}”"
    if not found or not (found["decimal"] or found["whole"] or found["top"] or found["feet"]):
        raise ReadingError(f"{shown} is not a length; type it like {_examples(unit)}.")
    if found["bottom"] is not None and not int(found["bottom"]):
        raise ReadingError(f"{shown} divides by zero; type it like {_examples(unit)}.")
    if found["sign"] == "-" and not signed:
        raise ReadingError(f"{shown} is below zero; a length here is more than zero.")
    size = _size(found, unit)
    return -size if found["sign"] == "-" else size


def parse_number(text: str, of: str = "", like: str = "0.83 or 50") -> float:
    """Return a plain number, such as a ratio or a percentage, comma or point.

    Raises ReadingError with a sentence if the text is not a finite number: what it is the number
    ``of``, if that is named, and what it might be ``like``.
    """
    written = _plain(text).removesuffix("%").strip()
    if not re.fullmatch(_NUMBER, written):
        shown = f"{of}: “{_shown(text)}”" if of else f"“{_shown(text)}”"
        raise ReadingError(f"{shown} is not a number; type it like {like}.")
    return float(written.replace(",", "."))


def _plain(text: str) -> str:
    """Spell fractions and quotation marks one way: ``36¼`` becomes ``36 1/4``.

    Raised and lowered digits that make no fraction stay as they are, and so no length.
    """
    spaced = re.sub(r"(\d)([¼-¾⅐-⅞])", r"\1 \2", re.sub(_RAISED, _level, text))
    if any(unicodedata.decomposition(sign).startswith(_MARKED) for sign in spaced):
        return text
    return " ".join(unicodedata.normalize("NFKC", spaced).translate(_PLAIN).lower().split())


def _level(raised: re.Match[str]) -> str:
    top, bottom = (unicodedata.normalize("NFKC", part) for part in raised.groups())
    return f" {top}/{bottom} "


def _size(found: re.Match[str], unit: Unit) -> float:
    number = Fraction(found["decimal"].replace(",", ".")) if found["decimal"] else Fraction(0)
    number += int(found["whole"] or 0)
    if found["top"] is not None:
        number += Fraction(int(found["top"]), int(found["bottom"]))
    written = found["unit"] or ("in" if found["feet"] else unit.value)
    feet = int(found["feet"] or 0) * 12 * _INCH
    return float(number * _UNIT_MM.get(written, _INCH) + feet)


def _shown(text: str) -> str:
    """What was typed, short enough for one line."""
    flat = " ".join(text.split())
    return flat if len(flat) <= 24 else flat[:23] + "…"


def _examples(unit: Unit) -> str:
    return "92, 92.5 or 36 1/4 in" if unit is Unit.CM else "36, 36 1/4, 36.25 or 92 cm"
