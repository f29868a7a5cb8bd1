"""What a record that lies in a folder says about the files beside it."""

from __future__ import annotations

import json
from pathlib import Path

from tapewise_core.tasks.record import FORMAT

NAME = "draft.json"


def listed(folder: Path) -> tuple[str, ...]:
    """Return the files the draft in a folder wrote, itself too; none if there is no such draft."""
    try:
        found = json.loads((folder / NAME).read_text("utf-8"))
    except (OSError, ValueError):
        return ()
    if not isinstance(found, dict) or found.get("format") != FORMAT:
        return ()
    files = found.get("files")
    names = files if isinstance(files, list) else []
    return tuple(dict.fromkeys([*(name for name in names if isinstance(name, str)), NAME]))
