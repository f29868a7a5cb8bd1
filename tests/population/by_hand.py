"""Draft every garment by hand from its printed words, for many builds, and print how far off.

    python tests/population/by_hand.py [--people 200] [--unit in] [--garments NAME...]

Made-up builds with options by chance; the hand is that of the tests. Not collected by them: it
takes a quarter of an hour.
"""

from __future__ import annotations

import argparse
import random
import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1]))

from hand_compares import asked_by_chance, compared
from people_made_up import made_up

from tapewise_core.errors import TapewiseError
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garments
from tapewise_core.style.settle import settle
from tapewise_core.units import Unit


def main() -> None:
    """Print the worst, the 95th of 100 and the middle deviation of each garment [mm]."""
    asked = _arguments()
    for page in garments():
        if not asked.garments or page.name in asked.garments:
            worst, refused = _deviations(page, asked.people, Unit(asked.unit))
            middle, most, last = np.percentile(worst, (50, 95, 100))
            print(
                f"{page.name}: worst {last:.2f}, 95 % {most:.2f}, middle {middle:.2f}; "
                f"{len(worst)} drafted, {refused} refused",
                flush=True,
            )


def _deviations(page: Garment, count: int, unit: Unit) -> tuple[list[float], int]:
    """The worst deviation of each draft [mm], and how many were refused on the way."""
    rng, found, refused = random.Random(2), list[float](), 0
    while len(found) < count:
        body, options = page.sees(made_up(rng)), asked_by_chance(page, rng)
        try:
            style = settle(page.options, options, body, unit)
            if page.agree(body, style):
                refused += 1
                continue
            pattern = page.draft(body, style)
        except TapewiseError:
            refused += 1
            continue
        found.append(max(float(one.worst) for one in compared(pattern, unit)))
    return found, refused


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--people", type=int, default=200)
    parser.add_argument("--unit", choices=[unit.value for unit in Unit], default=Unit.CM.value)
    parser.add_argument("--garments", nargs="+", default=[])
    return parser.parse_args()


if __name__ == "__main__":
    main()
