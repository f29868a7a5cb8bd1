"""A closer lay, looked for at length by a library for nesting shapes, in a process of its own.

The process can be stopped at any time, and whatever goes wrong in it leaves the lay there was.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable, Iterator, Sequence
from importlib.util import find_spec
from itertools import combinations
from typing import Any

import numpy as np
from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.lay.lay import Lay, lay_of, share, start
from tapewise_core.lay.lying import Floats, Lying, Way, lines_of
from tapewise_core.lay.packing import LONG, SEED
from tapewise_core.lay.profile import GAP
from tapewise_core.lay.sorts import Choice, Sort, room, sorts

Heard = Callable[[float, float], None]
"""Told the seconds that went by and the length that is best so far [mm]."""

CHILD = "tapewise_core.lay.closer_child"
"""What runs in the other process."""

OVER = 1.0
"""Pieces that overlap by more than this do not lie as they should [mm²]."""


def there_is_a_library() -> bool:
    """Say whether the library is installed, as the extra ``lay`` brings it."""
    return find_spec("spyrrow") is not None


def closer_lay(pattern: Pattern, cloth: Cloth, seconds: int, heard: Heard = lambda *_: None) -> Lay:
    """Return the best lay that is found in about so many seconds, at least one.

    Never worse than the plain search at its longest, which alone serves where the library is not
    installed, for a cloth in two layers, or for one whose pattern repeats: the library can tie no
    piece to a place. Safe in a worker. The same seconds may find another lay on another machine.
    """
    plain = replace(lay_of(pattern, cloth, LONG), closer=True)
    fit_for_it = cloth.spread is Spread.OPEN and not cloth.repeat and not plain.too_wide
    if not (fit_for_it and plain.pieces and there_is_a_library()):
        return plain
    asked = sorts(pattern, cloth)
    pieces = _sound(_searched(asked, room(cloth), seconds, heard), room(cloth))
    length = max((one.box.bottom for one in pieces), default=plain.length)
    if length >= plain.length:
        return plain
    placed = tuple(replace(one, across=one.across + start(cloth)) for one in pieces)
    return replace(plain, pieces=placed, length=length, used=share(pattern, cloth, length))


def _searched(asked: Sequence[Sort], wide: float, seconds: int, heard: Heard) -> list[Lying]:
    """The pieces where the other process puts them; none if anything went wrong there."""
    task = {
        "wide": wide,
        "gap": GAP,
        "seconds": max(seconds, 1),
        "seed": SEED,
        "items": [_item(sort) for sort in asked],
    }
    last: dict[str, Any] = {}
    for last in _reports(json.dumps(task)):
        heard(float(last["seconds"]), float(last["length"]))
    placed = last.get("placed", ())
    return [_where(asked[int(n)], turn, along, across) for n, turn, along, across in placed]


def _reports(task: str) -> Iterator[dict[str, Any]]:
    """What the other process says, line by line; it ends with whoever asks."""
    path = os.pathsep.join(filter(None, sys.path))
    with subprocess.Popen(
        [sys.executable, "-m", CHILD],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
        encoding="utf-8",
        env={**os.environ, "PYTHONPATH": path},
    ) as child:
        assert child.stdin is not None
        assert child.stdout is not None
        try:
            child.stdin.write(task)
            child.stdin.close()
            for line in child.stdout:
                yield json.loads(line)
        except (OSError, ValueError):
            return
        finally:
            child.kill()


def _first(sort: Sort) -> Choice:
    return sort.turns[0][0]


def _item(sort: Sort) -> dict[str, object]:
    """A piece as the library takes it, its first choice unturned: along the cloth, then across."""
    base = _first(sort).way
    turns = sorted({(one.way.quarters - base.quarters) % 4 for turn in sort.turns for one in turn})
    points = base.laid(max(lines_of(sort.piece), key=_size))
    return {"points": points[:, ::-1].tolist(), "turns": [-90 * turn % 360 for turn in turns]}


def _where(sort: Sort, degrees: float, along: float, across: float) -> Lying:
    """A piece as the library puts it: turned so far about its origin, then moved [mm]."""
    base = _first(sort).way
    way = Way(base.image, (base.quarters - round(degrees / 90)) % 4)
    outline = np.concatenate([way.laid(line) for line in lines_of(sort.piece)])
    left, top = outline.min(0)
    return Lying(sort.piece, float(left) + across, float(top) + along, way)


def _sound(pieces: list[Lying], wide: float) -> list[Lying]:
    """The pieces if they lie on the cloth and none on another, else none."""
    from shapely import area, intersection, polygons

    shapes = [polygons(max(one.lines(), key=_size)) for one in pieces]
    boxes = [one.box for one in pieces]
    within = all(b.left > -0.5 and b.top > -0.5 and b.right < wide + 0.5 for b in boxes)
    apart = all(area(intersection(a, b)) < OVER for a, b in combinations(shapes, 2))
    return pieces if within and apart else []


def _size(line: Floats) -> float:
    """What the box round a line covers [mm²]."""
    return float(np.prod(np.ptp(line, 0)))
