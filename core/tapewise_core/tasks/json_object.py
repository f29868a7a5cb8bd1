"""A file that must hold one JSON object, and why one cannot be used."""

from __future__ import annotations

import json
from pathlib import Path


def read_object(place: Path) -> dict[str, object]:
    """Return the object a file holds; raises OSError, or ValueError with the reason."""
    return object_of(text_in(place))


def text_in(place: Path) -> str:
    """Return a file's text; raises OSError, or ValueError with the reason."""
    try:
        return place.read_text("utf-8")
    except UnicodeDecodeError:
        raise ValueError("it is not text in UTF-8") from None


def object_of(text: str) -> dict[str, object]:
    """Return the object a text holds; raises ValueError with the reason."""
    try:
        content = json.loads(text)
    except RecursionError:
        raise ValueError("it is nested far too deeply") from None
    except ValueError:
        raise ValueError("it cannot be read as JSON") from None
    if not isinstance(content, dict):
        raise ValueError("it does not hold one JSON object")
    return content
