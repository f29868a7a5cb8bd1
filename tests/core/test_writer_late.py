"""Libraries come without what nobody asks of them, and with it once somebody does."""

import sys
from pathlib import Path

import pytest

from tapewise_core.writers.late import imported


def test_what_is_left_for_later_comes_when_it_is_called(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A library is imported without another module; its function takes that along when called."""
    (tmp_path / "made_up_slow.py").write_text("def twice(x):\n    return 2 * x\n")
    (tmp_path / "made_up_quick.py").write_text("from made_up_slow import twice\n")
    monkeypatch.syspath_prepend(tmp_path)
    quick = imported("made_up_quick", "made_up_slow")
    assert "made_up_slow" not in sys.modules
    assert quick.twice(21) == 42
    assert "made_up_slow" in sys.modules
    assert imported("made_up_quick", "made_up_slow") is quick


def test_what_is_there_already_is_used_as_it_is(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A module that was imported before is neither replaced nor taken away."""
    (tmp_path / "made_up_there.py").write_text("def one():\n    return 1\n")
    (tmp_path / "made_up_user.py").write_text("from made_up_there import one\n")
    monkeypatch.syspath_prepend(tmp_path)
    there = imported("made_up_there")
    assert imported("made_up_user", "made_up_there").one is there.one
    assert sys.modules["made_up_there"] is there
