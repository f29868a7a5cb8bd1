"""What somebody may have meant by a name that there is not."""

from __future__ import annotations

from collections.abc import Sequence


def near_words(typed: str, there: Sequence[str]) -> str:
    """Return the names that come near, or all, as the end of a sentence with its stop.

    >>> near_words("jersey-tpo", ("jersey-top", "circle-skirt"))
    'did you mean jersey-top?'
    >>> near_words("x", ("cm", "in"))
    'choose from cm, in.'
    """
    from difflib import get_close_matches

    near = get_close_matches(typed.casefold(), there, n=3, cutoff=0.6)
    return f"did you mean {' or '.join(near)}?" if near else f"choose from {', '.join(there)}."
