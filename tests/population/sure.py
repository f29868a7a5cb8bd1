"""Compare how sure proofs are said to be with bodies that are drafted one by one.

    python tests/population/sure.py [--bodies 2000] [--garments NAME...]

For a name alone, for two and for four measures, and for the example people. Prints every proof
that is in doubt, and at last the widest gap. Not collected by the tests: it takes an hour.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent))

from builds import AVERAGE, measured
from wearing import brute

from tapewise_core.garments.shelf import garments
from tapewise_core.profiles.examples import DEMO, example
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.how_sure import how_sure

KNOWN = {
    "a name alone": (),
    "two girths": ("bust", "hip"),
    "four measures": ("height", "bust", "waist", "hip"),
    "no arm": tuple(key for key in AVERAGE if "arm" not in key),
}
"""Who is drafted for: what is known of a woman of middle build."""

STYLES = ({}, {"sleeve": "long", "fit": "close"})


def people() -> Iterator[Profile]:
    """Yield everybody."""
    for name, keys in KNOWN.items():
        yield measured(name, {key: AVERAGE[key] for key in keys})
    yield example(DEMO)


def compare(who: Profile, garment: str, asked: dict[str, str], number: int) -> float:
    """Print what is in doubt of one draft; return the widest gap."""
    sure = how_sure(draft(who, garment, asked))
    shares, widest = brute(sure, number), 0.0
    for proof in sure.proofs:
        counted = shares.get(proof.which, 1.0)
        widest = max(widest, abs(counted - proof.sure))
        if min(counted, proof.sure) < 0.995:
            print(f"  {proof.name:42s} {proof.sure:.3f} said, {counted:.3f} counted")
    return widest


def main() -> None:
    """Compare what was asked for."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--bodies", type=int, default=2000)
    parser.add_argument("--garments", nargs="+", default=[page.name for page in garments()])
    asked, widest = parser.parse_args(), 0.0
    for who in people():
        for page in garments():
            for style in STYLES:
                own = {key: value for key, value in style.items() if key in page.options}
                if page.name in asked.garments and (own or not style):
                    print(f"{who.name}, {page.name} {own or ''}")
                    gap = compare(who, page.name, own, asked.bodies)
                    widest = max(widest, gap)
                    print(f"  widest gap {gap:.3f}", flush=True)
    print(f"widest gap of all: {widest:.3f}")


if __name__ == "__main__":
    main()
