"""Lay a piece that was drafted by hand from printed words over the pattern itself."""

from __future__ import annotations

import random
from dataclasses import dataclass

import numpy as np
import shapely
from hand_draws import Sheet, apart, dense, drawn
from hand_reads import read

from tapewise_core.drafting.by_hand import by_hand
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Piece
from tapewise_core.drafting.steps import spoken
from tapewise_core.drafting.told_steps import told_steps
from tapewise_core.garments.garment import Garment
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


@dataclass(frozen=True)
class Apart:
    """How far a piece's line and the hand's are apart at the worst [mm]."""

    piece: str
    line: str
    worst: float


def compared(
    pattern: Pattern, unit: Unit = Unit.CM, *, told: tuple[Draft, ...] | None = None
) -> list[Apart]:
    """Draft every piece from its printed words, and measure each line against the pattern's.

    Both ways: a line of the hand's that the pattern has not is found as well. ``told`` are the
    drafts with all that a hand is told, where that was worked out before.
    """
    found: list[Apart] = []
    done: dict[str, Sheet] = {}
    for raw, draft in zip(pattern.drafts, told or map(by_hand, pattern.drafts), strict=True):
        acts = read(told_steps(draft, Reader(unit)))
        sheet = drawn(acts, done)
        done[spoken(raw.title)] = sheet
        mine = np.vstack([line for _, line in sheet.lines])
        true = {
            name: dense([(p.x, p.y) for p in path.flattened()])
            for name, path in raw.paper.lines.items()
            if name != "cutting_line"
        }
        found += [Apart(raw.title, name, apart(line, mine).max()) for name, line in true.items()]
        for mark, at in zip(raw.paper.marks, sheet.notches, strict=True):
            if at is not None:
                off = float(np.linalg.norm(at - [mark.at.x, mark.at.y]))
                found.append(Apart(raw.title, f"notch {mark.name}", off))
        beyond = apart(mine, np.vstack(list(true.values()))).max()
        found.append(Apart(raw.title, "of the hand's own", beyond))
    return found


def in_words(pattern: Pattern) -> dict[str, float]:
    """Return how far each piece's edges are from the lines of its own draft [mm], folds left out.

    Pieces that were joined from two drafted halves are left out.
    """
    found = {}
    for piece in pattern.pieces:
        named = {slug(draft.title): draft for draft in pattern.drafts}
        own = named.get(piece.name) or named.get(stem(piece))
        edges = [edge.path.flattened() for edge in piece.edges if not edge.fold]
        if own:
            lines = [path.flattened() for path in own.paper.lines.values()]
            there = shapely.MultiLineString([[(p.x, p.y) for p in line] for line in lines])
            here = shapely.points([(p.x, p.y) for edge in edges for p in edge])
            found[piece.name] = float(shapely.distance(here, there).max())
    return found


def slug(title: str) -> str:
    """The name of a piece that a draft's title means."""
    return title.lower().replace(" ", "_")


def stem(piece: Piece) -> str:
    """A piece's name without what tells it from others like it."""
    return piece.name.partition("_")[0]


def asked_by_chance(page: Garment, rng: random.Random) -> dict[str, str]:
    """Return options of a garment as one types them: words mostly, here and there an amount."""
    asked = {}
    for option in page.options:
        if option.words and rng.random() < 0.4:
            asked[option.key] = rng.choice(option.words)
        elif option.bounded and rng.random() < 0.05:
            low, high = option.low, option.low + 0.6 * (option.high - option.low)
            asked[option.key] = f"{rng.uniform(low, high):.1f}"
    return asked
