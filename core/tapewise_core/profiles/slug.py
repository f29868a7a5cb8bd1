"""File names for people, whatever script their names are in."""

from __future__ import annotations

import re
import unicodedata

_LONGEST = 48

_RESERVED = frozenset(
    ["con", "prn", "aux", "nul", "conin", "conout"]
    + [f"{device}{number}" for device in ("com", "lpt") for number in range(10)]
)
"""Names Windows keeps for devices, with any ending [memory]."""

_SPELT = str.maketrans(
    {"ß": "ss", "æ": "ae", "œ": "oe", "ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ı": "i"}
)
"""Latin letters that do not come apart into a plain letter and a mark."""


def slug(name: str) -> str:
    """Return a file name without ending: small letters, digits and hyphens only.

    Where letters were lost, a short digest of the whole name keeps two people
    apart.

    >>> slug("Zoë Łuczak"), slug("../../etc"), slug("张伟"), slug("Con")
    ('zoe-luczak', 'etc', 'person-a3a0bafd', 'con-3b6f52aa')
    """
    small = unicodedata.normalize("NFKD", name.casefold().translate(_SPELT))
    bare = "".join(sign for sign in small if not unicodedata.combining(sign))
    words = re.sub("[^a-z0-9]+", "-", bare).strip("-")
    short = words[:_LONGEST].strip("-") or "person"
    lost = any(sign.isalnum() and not sign.isascii() for sign in bare) or not words
    if lost or short in _RESERVED or len(words) > _LONGEST:
        return f"{short}-{digest(name)}"
    return short


def marked_slug(name: str) -> str:
    """Return a file name without ending for one of two names whose slugs are the same.

    >>> marked_slug("Ada Test")
    'ada-test-e277883b'
    """
    return f"{slug(name)}-{digest(name)}"


def digest(name: str, length: int = 8) -> str:
    """Return so many letters and digits that stand for exactly this name."""
    import hashlib  # takes 5 ms to load, and most names need none

    return hashlib.sha256(unicodedata.normalize("NFC", name).encode()).hexdigest()[:length]
