"""The two pictures of a fitting as files: the folds that were seen, and what the change moves."""

from __future__ import annotations

from pathlib import Path

from tapewise_core.errors import ForeignFilesError
from tapewise_core.fitting.folds import folds_drawing
from tapewise_core.tasks.fitting import Seen, Trial
from tapewise_core.writers.files import write_all
from tapewise_core.writers.svg import svg

FOLDS, OVERLAY = "fitting-folds.svg", "fitting-overlay.svg"
"""What the files are called."""


def write_pictures(
    folder: Path, found: Seen, trial: Trial, *, replace: bool = False
) -> list[tuple[str, int]]:
    """Write both pictures into a folder; return names and sizes [bytes].

    Raises ForeignFilesError for files of those names that are not to be replaced, FilesError if
    they cannot be written.
    """
    folds = folds_drawing(found.symptom.says, found.symptom.folds)
    files = {FOLDS: svg(folds).encode(), OVERLAY: svg(trial.overlay()).encode()}
    there = tuple(name for name in files if (folder / name).exists())
    if there and not replace:
        raise ForeignFilesError(folder, there)
    return write_all(folder, files)
