"""Draft garments for many people of the open tables and count whose proofs hold.

    python tests/population/run.py FOLDER GARMENT... [--people 500] [--set KEY=VALUE]

FOLDER holds the open tables (ANSUR I, 1988; NHANES 2017 to 2020). Half of the
people are soldiers with every measure taken, half civilians known by height,
weight, upper arm, waist and hip, whose other measures are estimated; both sexes,
spread evenly over the body mass index so that the thin and the very full count
as much as the many in between. Not collected by the tests: the tables are large
and not part of the project.
"""

from __future__ import annotations

import argparse
import time
from collections import Counter
from collections.abc import Iterator, Mapping
from pathlib import Path

import numpy as np

from tapewise_core.errors import TapewiseError
from tapewise_core.geometry.outline import is_simple
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.proof import Proof
from tapewise_core.statistics.building.fields import KEYS
from tapewise_core.statistics.building.tables import SEXES, civilians, soldiers_1988
from tapewise_core.tasks.drafting import Drafted, draft

KNOWN = ("height", "waist", "hip", "upper_arm")
"""What the civilian survey measured that a profile holds."""

FULLEST = 45.0
"""The greatest body mass index drafted for [kg/m²]."""


def main() -> None:
    """Run every garment asked for and print a table."""
    asked = _arguments()
    options = dict(pair.split("=", 1) for pair in asked.set)
    people = list(_people(asked.folder, asked.people))
    print(f"{len(people)} people, options {options or 'as they are'}")
    for garment in asked.garments:
        _run(garment, people, options)


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("garments", nargs="+")
    parser.add_argument("--people", type=int, default=500)
    parser.add_argument("--set", action="append", default=[], metavar="KEY=VALUE")
    return parser.parse_args()


def _run(garment: str, people: list[Profile], options: Mapping[str, str]) -> None:
    """Draft one garment for everybody and print how it went."""
    failed: Counter[str] = Counter()
    refused: Counter[str] = Counter()
    unmended: Counter[str] = Counter()
    whole = crossed = crashed = 0
    started = time.perf_counter()
    for profile in people:
        try:
            made = draft(profile, garment, options)
        except TapewiseError as fault:
            refused[str(fault)] += 1
            continue
        except Exception as fault:
            crashed += 1
            print(f"  crash for {profile.name}: {type(fault).__name__}: {fault}")
            continue
        crossed += _crossed(made)
        whole += not made.failing
        failed.update(proof.name for proof in made.failing)
        unmended.update(p.name for p in made.failing if not _mended(profile, garment, options, p))
    each = (time.perf_counter() - started) / max(len(people), 1)
    share = whole / max(len(people), 1)
    print(f"{garment}: all proofs hold for {share:.1%}, {each * 1000:.0f} ms a person")
    print(f"  crashes {crashed}, crossed outlines {crossed}, refused {sum(refused.values())}")
    for name, times in failed.most_common():
        print(f"  fails {times:4d}  {name}; without a mend that helps {unmended[name]}")
    for says, times in refused.most_common(5):
        print(f"  refused {times:4d}  {says[:110]}")


def _crossed(made: Drafted) -> bool:
    lines = [line for piece in made.pattern.pieces for line in (piece.stitch_line(), piece.cut)]
    return not all(is_simple(line) for line in lines)


def _mended(profile: Profile, garment: str, options: Mapping[str, str], proof: Proof) -> bool:
    """Say whether a failing proof's own mend makes it hold."""
    mend = proof.settings
    if not mend:
        return False
    try:
        again = draft(profile, garment, {**options, **mend})
    except TapewiseError:
        return False
    return all(p.holds for p in again.proofs if p.name == proof.name)


def _people(folder: Path, count: int) -> Iterator[Profile]:
    """Yield people, alternately from both tables and both sexes."""
    each = count // (2 * len(SEXES))
    for sex in SEXES:
        soldiers = soldiers_1988(folder, sex)
        yield from _chosen(soldiers.at(0.0), sex, "narrowest", KEYS, each, "soldier")
        yield from _chosen(civilians(folder, sex).columns, sex, "navel", KNOWN, each, "civilian")


def _chosen(
    columns: Mapping[str, np.ndarray],
    sex: str,
    site: str,
    keys: tuple[str, ...],
    count: int,
    kind: str,
) -> Iterator[Profile]:
    """Yield some people spread evenly over the body mass index."""
    index = columns["weight"] / (columns["height"] / 100) ** 2
    order = [i for i in np.argsort(index) if index[i] <= FULLEST]
    aims = np.linspace(index[order[0]], index[order[-1]], count)
    rng = np.random.default_rng(4)
    for number, aim in enumerate(aims):
        near = sorted(order, key=lambda i: abs(index[i] - aim))[:5]
        row = int(rng.choice(near))
        order.remove(row)
        yield _profile(columns, row, sex, site, keys, f"{kind} {sex} {number}")


def _profile(
    columns: Mapping[str, np.ndarray],
    row: int,
    sex: str,
    site: str,
    keys: tuple[str, ...],
    name: str,
) -> Profile:
    taken = {key: {"value": round(float(columns[key][row]), 1)} for key in keys if key in columns}
    kept = {"name": name, "reference": sex, "waist_site": site, "measures": taken}
    return Profile.model_validate(
        {"format": "tapewise profile", "version": 1, **kept}, strict=False
    )


if __name__ == "__main__":
    main()
