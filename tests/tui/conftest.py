"""Every test of the app has a data folder of its own and a terminal that shows everything."""

from __future__ import annotations

from pathlib import Path

import pytest


@pytest.fixture(autouse=True)
def data_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Keep the test's people apart, and the terminal's settings out of it."""
    folder = tmp_path / "data"
    monkeypatch.setenv("TAPEWISE_DATA", str(folder))
    for name in ("NO_COLOR", "TAPEWISE_ASCII"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("TERM", "xterm-256color")
    monkeypatch.setattr("tapewise_tui.terminal.encoding_spoken", lambda: "utf-8")
    monkeypatch.chdir(tmp_path)
    return folder
