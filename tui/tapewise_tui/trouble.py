"""What a person reads when the program itself is at fault; the details go to a file."""

from __future__ import annotations

import traceback
from pathlib import Path

from tapewise_core.errors import TapewiseError


def note(error: BaseException) -> str:
    """Write down where an unforeseen error came from and return a sentence for a person."""
    sentence = (
        f"Something went wrong inside the program ({type(error).__name__}); what you had entered "
        "is kept."
    )
    try:
        return f"{sentence} Details for whoever mends it are in {_written(error)}."
    except (OSError, TapewiseError):
        return sentence


def _written(error: BaseException) -> Path:
    from tapewise_core.tasks.people import store

    place = store.people_folder().parent / "trouble.txt"
    place.parent.mkdir(parents=True, exist_ok=True)
    place.write_text("".join(traceback.format_exception(error)), "utf-8")
    return place
