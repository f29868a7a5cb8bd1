"""Every test of the app has a data folder of its own and a terminal that shows everything."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

SETTINGS = '{"machines": "overlocker, coverstitch"}'
"""What is set once, so that no page asks for it where a test is about something else."""


@pytest.fixture(autouse=True)
def data_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, request: pytest.FixtureRequest
) -> Iterator[Path]:
    """Keep the test's people apart, and the terminal's settings out of it.

    A fault that the app noted and went on from fails the test, unless it was planted.
    """
    folder = tmp_path / "data"
    folder.mkdir()
    (folder / "settings.json").write_text(SETTINGS, "utf-8")
    monkeypatch.setenv("TAPEWISE_DATA", str(folder))
    for name in ("NO_COLOR", "TAPEWISE_ASCII", "LANG", "LC_ALL"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("TERM", "xterm-256color")
    monkeypatch.setattr("tapewise_tui.terminal.encoding_spoken", lambda: "utf-8")
    monkeypatch.chdir(tmp_path)
    yield folder
    noted = folder / "trouble.txt"
    if noted.exists() and request.node.get_closest_marker("trouble") is None:
        pytest.fail(noted.read_text("utf-8"))
