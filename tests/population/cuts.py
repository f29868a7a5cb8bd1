"""Draw the cut lines of made-up builds both ways and say how far they are apart.

    python tests/population/cuts.py [BUILDS]

Every garment in four styles. Not collected by the tests: it takes minutes.
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from builds import builds
from cut_lines_compared import apart
from styles import styles_of

from tapewise_core.drafting.piece import Piece
from tapewise_core.errors import DraftError
from tapewise_core.garments.shelf import garments
from tapewise_core.geometry.cutting import drawn
from tapewise_core.tasks.drafting import draft


def main(count: int) -> None:
    """Print a line for each garment and style."""
    crowd = list(builds(count))
    for page in garments():
        for name, style in styles_of(page):
            pieces: list[Piece] = []
            for profile in crowd:
                try:
                    pieces += draft(profile, page.name, style).pattern.pieces
                except DraftError:
                    continue
            told(f"{page.name}, {name}", pieces)


def told(what: str, pieces: list[Piece]) -> None:
    """Print how many lines were drawn from corner to corner, and the worst of them."""
    found = [[edge.margin() for edge in piece.edges] for piece in pieces]
    lines = [(drawn(margins), margins) for margins in found]
    off = [apart(line, margins) for line, margins in lines if line is not None]
    print(
        f"{what}: {len(off)} of {len(found)} drawn, {max(off, default=0):.1e} mm apart at the most"
    )


if __name__ == "__main__":
    main(int(sys.argv[1]) if sys.argv[1:] else 100)
