"""A set of files in one folder: all of the new set or all of the old, whatever happens.

A set is written in a fresh folder beside the one asked for. Where that one is new, the fresh
folder takes its name. Else a plan is written first, and then each file is moved into its place:
stopped before the plan, the old set stands; stopped after it, even by pulling the plug, the next
run ends what the plan says.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import shutil
import tempfile
from collections.abc import Collection, Iterator, Mapping
from pathlib import Path

from tapewise_core.errors import FilesError
from tapewise_core.frozen import Frozen
from tapewise_core.writers.files import made_folder, refuse_blocked, safe, says, unmake, write_aside

PLAN = "plan.json"


class _Plan(Frozen):
    """What is to be put in place of what stands, and what is to go."""

    put: tuple[str, ...]
    drop: tuple[str, ...]


def write_set(folder: Path, files: Mapping[str, bytes], drop: Collection[str] = ()) -> None:
    """Write files by relative name into a folder, and remove those named in ``drop``.

    Raises FilesError with a sentence; then, and when interrupted, the folder is as it was.
    """
    put = tuple(safe(name) for name in files)
    plan = _Plan(put, tuple(standing(folder, [name for name in drop if name not in put])))
    place = _place(folder)
    made = made_folder(folder.parent)
    try:
        aside = _fresh(place)
        try:
            write_aside(aside, files)
            _settle(aside, place, plan)
        finally:
            if not (aside / PLAN).exists():
                shutil.rmtree(aside, ignore_errors=True)
    except OSError as fault:
        unmake(made)
        raise FilesError(says(fault, folder)) from fault
    except BaseException:
        unmake(made)
        raise


def finish(folder: Path) -> None:
    """End what a run that was killed had begun in a folder, and sweep what it left.

    Raises FilesError with a sentence if the system does not allow it.
    """
    place = _place(folder)
    try:
        for aside in [*_leftovers(place)]:
            plan = _planned(aside)
            if plan is not None:
                _go_on(aside, place, plan)
            shutil.rmtree(aside, ignore_errors=True)
    except OSError as fault:
        raise FilesError(says(fault, folder)) from fault


def standing(folder: Path, names: Collection[str]) -> Iterator[str]:
    """Yield those of the names that are files in the folder itself, none by way of a link."""
    place = _place(folder)
    for name in names:
        with contextlib.suppress(FilesError, OSError, ValueError):
            file = place / safe(name)
            if os.path.lexists(file) and not file.is_dir() and file.parent.resolve() == file.parent:
                yield name


def _place(folder: Path) -> Path:
    try:
        return folder.resolve()
    except ValueError:
        shown = str(folder).replace("\0", "?")
        raise FilesError(f"{shown} holds a sign that no folder's name can have.") from None
    except (OSError, RuntimeError) as fault:
        raise FilesError(f"{folder} leads nowhere; give the name of a folder.") from fault


def _mark(place: Path) -> str:
    """Begins the names of folders that belong beside one folder and no other."""
    return f".tapewise-{hashlib.sha256(place.name.encode(errors='replace')).hexdigest()[:8]}-"


def _fresh(place: Path) -> Path:
    """A folder beside, or inside where nothing can be made or moved beside."""
    if not place.exists() or place.stat().st_dev == place.parent.stat().st_dev:
        try:
            return Path(tempfile.mkdtemp(prefix=_mark(place), dir=place.parent))
        except OSError:
            if not place.exists():
                raise
    return Path(tempfile.mkdtemp(prefix=_mark(place), dir=place))


def _leftovers(place: Path) -> Iterator[Path]:
    for where in (place.parent, place):
        if where.is_dir():
            yield from (p for p in where.glob(f"{_mark(place)}*") if p.is_dir())


def _settle(aside: Path, place: Path, plan: _Plan) -> None:
    """Put the set in place of what stands."""
    if not os.path.lexists(place):
        os.rename(aside / "new", place)
        return
    if not place.is_dir():
        raise FilesError(f"{place} is a file; give the name of a folder to write into.")
    refuse_blocked(place, list(plan.put))
    _write_plan(aside, plan)
    try:
        _go_on(aside, place, plan, keep=True)
    except BaseException:
        _go_back(aside, place, plan)
        (aside / PLAN).unlink()
        raise
    (aside / PLAN).unlink()


def _write_plan(aside: Path, plan: _Plan) -> None:
    """All of it or nothing: it is written under another name."""
    half = aside / "half"
    with half.open("w", encoding="utf-8") as file:
        json.dump({"put": plan.put, "drop": plan.drop}, file)
        file.flush()
        os.fsync(file.fileno())
    os.replace(half, aside / PLAN)


def _planned(aside: Path) -> _Plan | None:
    try:
        plan = json.loads((aside / PLAN).read_text("utf-8"))
        return _Plan(tuple(map(safe, plan["put"])), tuple(map(safe, plan["drop"])))
    except (OSError, ValueError, KeyError, TypeError, FilesError):
        return None


def _go_on(aside: Path, place: Path, plan: _Plan, *, keep: bool = False) -> None:
    """Move what still waits into place; what stood there is kept until all is well."""
    for name in plan.put:
        if (aside / "new" / name).exists():
            _keep(aside, place, name)
            _move(aside / "new" / name, place / name)
    for name in standing(place, plan.drop):
        _move(place / name, aside / "old" / name)
        _unmake_empty(place, name)
    if not keep:
        (aside / PLAN).unlink(missing_ok=True)


def _keep(aside: Path, place: Path, name: str) -> None:
    """Keep a copy of what stands in a place, so that the place is never empty."""
    old = aside / "old" / name
    if (place / name).exists() and not old.exists():
        old.parent.mkdir(parents=True, exist_ok=True)
        try:
            os.link(place / name, old)
        except OSError:
            shutil.copy2(place / name, old)


def _go_back(aside: Path, place: Path, plan: _Plan) -> None:
    """Undo in such an order that going on is possible at each moment."""
    for name in plan.put:
        new, old = aside / "new" / name, aside / "old" / name
        if not new.exists() and (place / name).exists():
            _move(place / name, new)
            _unmake_empty(place, name)
        if old.exists():
            _move(old, place / name)
    for name in plan.drop:
        if (aside / "old" / name).exists():
            _move(aside / "old" / name, place / name)


def _unmake_empty(place: Path, name: str) -> None:
    """Take away the folder a file stood in, if nothing else does."""
    above = (place / name).parent
    if above != place:
        with contextlib.suppress(OSError):
            above.rmdir()


def _move(start: Path, end: Path) -> None:
    end.parent.mkdir(parents=True, exist_ok=True)
    os.replace(start, end)
