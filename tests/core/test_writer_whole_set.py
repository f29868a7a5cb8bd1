"""A set of files is all of the new one or all of the old, also when its writer is killed."""

from __future__ import annotations

import errno
import os
import shutil
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tapewise_core.errors import FilesError
from tapewise_core.writers.whole_set import finish, standing, write_set

OLD = {"a.txt": b"old a", "pieces/band.svg": b"old band", "draft.json": b"old"}
NEW = {"a.txt": b"new a", "steps/01.svg": b"<svg/>", "draft.json": b"new"}
DROP = ("pieces/band.svg",)
OWN = {"mine.txt": b"mine"}


def tree(folder: Path) -> dict[str, bytes]:
    """Return every file under a folder with what it holds."""
    return {p.relative_to(folder).as_posix(): p.read_bytes() for p in sorted(folder.rglob("*"))
            if p.is_file()}  # fmt: skip


def at_call(count: int, real: Callable[..., Any], act: Callable[[], object]) -> Callable[..., Any]:
    """A system call that does something else when it is called the ``count``-th time."""
    calls = 0

    def call(*arguments: Any, **options: Any) -> Any:
        nonlocal calls
        calls += 1
        if calls == count:
            act()
        return real(*arguments, **options)

    return call


def killed(folder: Path, name: str, count: int) -> bool:
    """Write the new set in a process that dies at some call; say whether it came so far."""
    child = os.fork()
    if child == 0:
        setattr(os, name, at_call(count, getattr(os, name), lambda: os._exit(9)))
        write_set(folder, NEW, DROP)
        os._exit(0)
    _, status = os.waitpid(child, 0)
    return os.waitstatus_to_exitcode(status) == 9


def test_a_new_folder_holds_the_set_and_nothing_else(tmp_path: Path) -> None:
    """Folders above are made as needed; it holds measures, so the owner alone may read it."""
    write_set(tmp_path / "x" / "y", NEW)
    assert tree(tmp_path) == {f"x/y/{name}": content for name, content in NEW.items()}
    assert (tmp_path / "x" / "y").stat().st_mode & 0o077 == 0


def test_a_later_set_takes_the_place_of_the_one_before(tmp_path: Path) -> None:
    """What is to go is gone, with its folder; what the person put there stays."""
    write_set(tmp_path / "top", OLD)
    (tmp_path / "top" / "mine.txt").write_bytes(b"mine")
    write_set(tmp_path / "top", NEW, DROP)
    assert tree(tmp_path / "top") == {**NEW, **OWN}
    assert not (tmp_path / "top" / "pieces").exists()
    assert [p.name for p in tmp_path.iterdir()] == ["top"]


@pytest.mark.skipif(not hasattr(os, "fork"), reason="only there can a process be split")
@pytest.mark.parametrize("fresh", [True, False])
@pytest.mark.parametrize("name", ["fsync", "link", "replace", "rename"])
def test_killed_anywhere_the_next_run_finds_all_or_nothing(
    tmp_path: Path, name: str, fresh: bool
) -> None:
    """At whichever call the writer dies: after the sweep it is the old set or the new one."""
    for count in range(1, 20):
        folder = tmp_path / f"{count}"
        before: dict[str, bytes] = {}
        if not fresh:
            write_set(folder, OLD)
            (folder / "mine.txt").write_bytes(b"mine")
            before = {**OLD, **OWN}
        came_so_far = killed(folder, name, count)
        finish(folder)
        assert tree(folder) in (before, {**NEW, **({} if fresh else OWN)}), (name, count)
        assert not [p for p in tmp_path.iterdir() if p.name != folder.name]
        if not came_so_far:
            assert folder.exists()
            return
        shutil.rmtree(folder, ignore_errors=True)
    raise AssertionError("never written to the end")


@pytest.mark.parametrize("fault", [OSError(errno.ENOSPC, "full"), KeyboardInterrupt()])
@pytest.mark.parametrize(("name", "count"), [
    ("fsync", 2), ("replace", 1), ("replace", 2), ("replace", 4), ("replace", 5),
])  # fmt: skip
def test_interrupted_the_folder_is_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, fault: BaseException, name: str, count: int
) -> None:
    """A full disk is told in a sentence, a key that stops the run is passed on."""
    write_set(tmp_path / "top", OLD)

    def fail() -> None:
        raise fault

    with monkeypatch.context() as patched:
        patched.setattr(os, name, at_call(count, getattr(os, name), fail))
        with pytest.raises((FilesError, KeyboardInterrupt)) as told:
            write_set(tmp_path / "top", NEW, DROP)
    assert isinstance(told.value, KeyboardInterrupt) or "full" in str(told.value)
    assert tree(tmp_path / "top") == OLD
    assert [p.name for p in tmp_path.iterdir()] == ["top"]


def test_nothing_is_dropped_by_way_of_a_link(tmp_path: Path) -> None:
    """A folder that leads elsewhere keeps what it leads to."""
    (tmp_path / "elsewhere").mkdir()
    (tmp_path / "elsewhere" / "band.svg").write_bytes(b"mine")
    write_set(tmp_path / "top", {"draft.json": b"old"})
    (tmp_path / "top" / "pieces").symlink_to(tmp_path / "elsewhere")
    names = ("pieces/band.svg", "../elsewhere/band.svg", "draft.json", "/etc/passwd", "a\0b")
    assert list(standing(tmp_path / "top", names)) == ["draft.json"]
    write_set(tmp_path / "top", NEW, DROP)
    assert (tmp_path / "elsewhere" / "band.svg").read_bytes() == b"mine"


def test_a_folder_reached_by_a_link_stays_one(tmp_path: Path) -> None:
    """The set is written where the link leads."""
    (tmp_path / "real").mkdir()
    (tmp_path / "link").symlink_to(tmp_path / "real")
    write_set(tmp_path / "link", NEW)
    assert (tmp_path / "link").is_symlink()
    assert tree(tmp_path / "real") == NEW


def test_what_is_in_the_way_is_told_and_left_alone(tmp_path: Path) -> None:
    """A file for a folder, a folder for a file, a name that cannot be."""
    (tmp_path / "file").write_bytes(b"mine")
    (tmp_path / "top" / "a.txt").mkdir(parents=True)
    for folder, says in (
        (tmp_path / "file", "is a file"),
        (tmp_path / "file" / "deeper", "file"),
        (tmp_path / "top", "is a folder"),
        (tmp_path / "a\0b", "holds a sign"),
        (tmp_path / ("x" * 300), "not a name this system allows"),
    ):
        with pytest.raises(FilesError, match=says):
            write_set(folder, NEW)
        with pytest.raises(FilesError, match="inside the folder"):
            write_set(folder, {"../out": b""})
    assert tree(tmp_path) == {"file": b"mine"}
