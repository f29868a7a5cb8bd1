"""Opening files and folders on the desktop, where there is one."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import Any

from textual.app import App


def has_desktop() -> bool:
    """Say whether there is a desktop that can open something."""
    if sys.platform in ("win32", "darwin"):
        return True
    return any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY"))


def opened(app: App[Any], place: Path) -> str:
    """Open a file or a folder on the desktop; return what to say."""
    whole = place.absolute()
    if not has_desktop():
        return f"There is no desktop here to open it on; it is {whole}."
    app.open_url(whole.as_uri())
    return f"{whole.name} opens on your desktop."
