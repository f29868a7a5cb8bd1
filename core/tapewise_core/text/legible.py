"""Text from files and from other people, made fit to be shown."""

from __future__ import annotations

import unicodedata

_TURNING = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
"""Signs that turn the direction of all that follows."""


def legible(text: str) -> str:
    r"""Put a mark for every sign that a screen would obey instead of showing it.

    >>> legible("a\x1b[31m b\u202e c\udcff\nd")
    'a?[31m b? c?\nd'
    """
    if text.isascii() and text.isprintable():
        return text
    return "".join(sign if _harmless(sign) else "?" for sign in text)


def _harmless(sign: str) -> bool:
    if sign in "\n\t":
        return True
    return sign not in _TURNING and unicodedata.category(sign) not in ("Cc", "Cs", "Zl", "Zp")
