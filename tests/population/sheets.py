"""Contact sheets: every garment for twelve builds in four styles, to be looked at.

    python tests/population/sheets.py OUT [--garments NAME...]

Writes one SVG for each garment: a row for each build, a column for each style. Stitch lines are
black, cut lines grey, the body's quarter at each level orange; what fails or is held back stands
below its pattern, and a refusal in its place.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Iterator, Sequence
from html import escape
from pathlib import Path

from builds import named
from styles import styles_of

from tapewise_core.drafting.piece import Piece
from tapewise_core.errors import TapewiseError
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.outline import box_of
from tapewise_core.geometry.point import Point
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

ACROSS, DOWN = 420.0, 330.0
"""A cell's size [units of the picture]."""

WORDS = 62
"""What is said below a pattern at the most [lines of 9 units, 5 of them]."""

TRUNK = ("back", "front")
"""The pieces on which the body is drawn."""


def main() -> None:
    """Write the sheets and say where."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("out", type=Path)
    parser.add_argument("--garments", nargs="+", default=[])
    asked = parser.parse_args()
    asked.out.mkdir(parents=True, exist_ok=True)
    people = list(named())
    for page in garments():
        if not asked.garments or page.name in asked.garments:
            path = asked.out / f"{page.name}.svg"
            path.write_text("\n".join(sheet(page, people)) + "\n", encoding="utf-8")
            print(path)


def sheet(page: Garment, people: Sequence[Profile]) -> Iterator[str]:
    """Yield the lines of one garment's sheet."""
    styles = list(styles_of(page))
    width, height = ACROSS * len(styles), DOWN * len(people)
    yield (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width:.0f} {height:.0f}" '
        f'width="{width:.0f}" height="{height:.0f}" font-family="sans-serif" font-size="8">'
    )
    yield f'<rect width="{width:.0f}" height="{height:.0f}" fill="white"/>'
    for row, profile in enumerate(people):
        for column, (name, style) in enumerate(styles):
            yield f'<g transform="translate({column * ACROSS:.0f} {row * DOWN:.0f})">'
            yield _text(6, 12, f"{profile.name}, {name}", "font-weight='bold'")
            yield from _cell(profile, page, style)
            yield "</g>"
    yield "</svg>"


def _cell(profile: Profile, page: Garment, style: dict[str, str]) -> Iterator[str]:
    try:
        made = draft(profile, page.name, style)
    except TapewiseError as fault:
        yield from _said([str(fault)], 30)
    except Exception as fault:  # a crash belongs on the sheet, where it is seen
        yield from _said([f"CRASH {type(fault).__name__}: {fault}"], 30)
    else:
        yield from _drawn(made)
        yield from _said(_faults(made), DOWN - WORDS)


def _faults(made: Drafted) -> list[str]:
    """What fails, then what is held back."""
    spell = made.reader.spell
    failing = [f"FAILS {proof.name}: {spell(proof.says)}" for proof in made.failing]
    levels = made.pattern.facts.levels
    return failing + [f"{one.name}: {spell(one.held_back)}" for one in levels if one.held_back]


def _said(sentences: Iterable[str], top: float) -> Iterator[str]:
    shown = list(sentences)[:5]
    yield from (_text(6, top + 11 * row, told[:100]) for row, told in enumerate(shown))


def _drawn(made: Drafted) -> Iterator[str]:
    """All pieces of a pattern in a row, at one scale."""
    pieces = made.pattern.pieces
    boxes = [box_of(piece.cut) for piece in pieces]
    whole = sum(box.width for box in boxes) + 20 * len(boxes)
    times = min((ACROSS - 12) / whole, (DOWN - WORDS - 26) / max(box.height for box in boxes))
    left = 6.0
    for piece, box in zip(pieces, boxes, strict=True):
        at = Point(left - box.left * times, 18 - box.top * times)
        yield _line(piece.cut, times, at, "#bbb")
        yield _line(piece.stitch_line(), times, at, "black")
        yield from _body(made, piece, times, at)
        left += (box.width + 20) * times


def _body(made: Drafted, piece: Piece, times: float, at: Point) -> Iterator[str]:
    for level in made.pattern.facts.levels:
        if level.below_nape is not None and piece.name in TRUNK:
            y = level.below_nape
            yield _line((Point(0, y), Point(level.body / 4, y)), times, at, "darkorange")


def _line(points: Sequence[Point], times: float, at: Point, colour: str) -> str:
    spots = " ".join(f"{p.x * times + at.x:.2f},{p.y * times + at.y:.2f}" for p in points)
    return f'<polygon points="{spots}" fill="none" stroke="{colour}" stroke-width="0.6"/>'


def _text(x: float, y: float, words: str, more: str = "") -> str:
    return f'<text x="{x:.0f}" y="{y:.0f}" {more}>{escape(words)}</text>'


if __name__ == "__main__":
    main()
