"""Files of one draft appear together or not at all, and trouble is told in a sentence."""

import errno
import os
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tapewise_core.errors import FilesError
from tapewise_core.writers.files import write_all

NEW = {"a.txt": b"new a", "steps/01.svg": b"<svg/>"}


def tree(folder: Path) -> dict[str, bytes]:
    """Return every file under a folder with what it holds."""
    return {str(p.relative_to(folder)): p.read_bytes() for p in folder.rglob("*") if p.is_file()}


def failing(fault: int, on: int, real: Callable[..., Any]) -> Callable[..., Any]:
    """A system call that fails the ``on``-th time."""
    calls = 0

    def call(*arguments: Any, **options: Any) -> Any:
        nonlocal calls
        calls += 1
        if calls == on:
            raise OSError(fault, os.strerror(fault))
        return real(*arguments, **options)

    return call


def test_names_and_sizes_are_told(tmp_path: Path) -> None:
    """Folders are made as needed and nothing but the files is left."""
    assert write_all(tmp_path / "x" / "y", NEW) == [("a.txt", 5), ("steps/01.svg", 6)]
    assert tree(tmp_path) == {"x/y/a.txt": b"new a", "x/y/steps/01.svg": b"<svg/>"}
    assert not [p for p in (tmp_path / "x" / "y").iterdir() if p.name.startswith(".")]


def test_a_second_run_replaces_its_own_and_leaves_others(tmp_path: Path) -> None:
    """What the person put beside the files stays."""
    write_all(tmp_path, {"a.txt": b"old"})
    (tmp_path / "mine.txt").write_bytes(b"mine")
    write_all(tmp_path, NEW)
    assert tree(tmp_path) == {**NEW, "mine.txt": b"mine"}


@pytest.mark.parametrize(("call", "on"), [("fsync", 2), ("replace", 1), ("replace", 2)])
def test_a_full_disk_leaves_the_old_files(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str, on: int
) -> None:
    """Wherever the disk gives out, the old files stand and nothing new lies about."""
    write_all(tmp_path, {"a.txt": b"old"})
    monkeypatch.setattr(os, call, failing(errno.ENOSPC, on, getattr(os, call)))
    with pytest.raises(FilesError, match="full"):
        write_all(tmp_path, NEW)
    assert tree(tmp_path) == {"a.txt": b"old"}
    assert [p.name for p in tmp_path.iterdir()] == ["a.txt"]


def test_a_full_disk_leaves_no_new_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A folder made for files that never came is taken back."""
    monkeypatch.setattr(os, "fsync", failing(errno.ENOSPC, 1, os.fsync))
    with pytest.raises(FilesError, match="full"):
        write_all(tmp_path / "x" / "y", NEW)
    assert not list(tmp_path.iterdir())


def test_a_forbidden_folder_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without leave to write the sentence says so, and one line is enough."""
    monkeypatch.setattr("tempfile.mkdtemp", failing(errno.EACCES, 1, os.mkdir))
    with pytest.raises(FilesError, match="may not be written to") as told:
        write_all(tmp_path, NEW)
    assert "\n" not in str(told.value)


def test_files_and_folders_in_the_way_are_told(tmp_path: Path) -> None:
    """A file where a folder is needed, and the other way round, are named and left alone."""
    (tmp_path / "steps").write_bytes(b"mine")
    with pytest.raises(FilesError, match="steps is a file"):
        write_all(tmp_path, NEW)
    with pytest.raises(FilesError, match="is a file; give the name of a folder"):
        write_all(tmp_path / "steps", NEW)
    with pytest.raises(FilesError, match="runs through a file"):
        write_all(tmp_path / "steps" / "deeper", NEW)
    (tmp_path / "a.txt").mkdir()
    with pytest.raises(FilesError, match=r"a\.txt is a folder"):
        write_all(tmp_path, NEW)
    assert tree(tmp_path) == {"steps": b"mine"}


@pytest.mark.parametrize("name", ["../out", "/etc/x", "", "a/../../b", "a\\b"])
def test_names_stay_inside(tmp_path: Path, name: str) -> None:
    """No name leads out of the folder."""
    with pytest.raises(FilesError, match="inside the folder"):
        write_all(tmp_path, {name: b""})
