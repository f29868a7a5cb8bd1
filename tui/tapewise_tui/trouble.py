"""What a person reads when the program itself is at fault; the details go to a file."""

from __future__ import annotations

import contextlib
import logging
import sys
import traceback
from pathlib import Path

from tapewise_core.errors import TapewiseError


def note(error: BaseException) -> str:
    """Write down where an unforeseen error came from and return a sentence for a person."""
    error = _first(error)
    sentence = (
        f"Something went wrong inside the program ({type(error).__name__}); what you had entered "
        "is kept."
    )
    try:
        return f"{sentence} Details for whoever mends it are in {_written(error)}."
    except (OSError, TapewiseError):
        return sentence


def _first(error: BaseException) -> BaseException:
    """What went wrong in a worker, not that a worker failed: only the first tells where."""
    inner = getattr(error, "error", None)
    return inner if isinstance(inner, BaseException) else error


def _written(error: BaseException) -> Path:
    from tapewise_core.profiles.folders import data_folder, write_private

    place = data_folder() / "trouble.txt"
    write_private(place, "".join(traceback.format_exception(error)))
    return place


def keep(trace: str) -> None:
    """Write down what went wrong in another process, if there is room for it."""
    from tapewise_core.profiles.folders import data_folder, write_private

    with contextlib.suppress(OSError, TapewiseError):
        write_private(data_folder() / "trouble.txt", trace)


class _Console(logging.Handler):
    """Tells an error that a library caught as this program tells it."""

    def __init__(self, foreseen: type[BaseException]) -> None:
        super().__init__()
        self.foreseen = foreseen

    def emit(self, record: logging.LogRecord) -> None:
        """Tell one record, if there is an error in it."""
        fault = record.exc_info[1] if record.exc_info else None
        if fault is not None and not isinstance(fault, self.foreseen):
            print(note(fault), file=sys.stderr)


def logger(foreseen: type[BaseException]) -> logging.Logger:
    """Return what a library may report to: a sentence for an error, nothing for those foreseen."""
    found = logging.Logger("tapewise")
    found.addHandler(_Console(foreseen))
    return found
