"""Draft garments for many people and made-up builds, and count how it goes.

    python tests/population/run.py [FOLDER] [--garments NAME...] [--people 500] [--builds 500]
                                   [--set KEY=VALUE] [--one-style]

FOLDER holds the open tables; without it only made-up builds are drafted, far wider than people
are. Every garment in four styles, unless some are named, or options are set. Not collected by
the tests: it takes minutes, and the tables are large and not part of the project.
"""

from __future__ import annotations

import argparse
from pathlib import Path

from builds import builds
from open_tables import people
from styles import styles_of
from tally import lines, run

from tapewise_core.garments.shelf import garments
from tapewise_core.profiles.profile import Profile


def main() -> None:
    """Run what was asked for and print a table."""
    asked = _arguments()
    options = dict(pair.split("=", 1) for pair in asked.set)
    crowds: dict[str, list[Profile]] = {"made-up builds": list(builds(asked.builds))}
    if asked.folder:
        crowds = {"people of the open tables": list(people(asked.folder, asked.people)), **crowds}
    for page in garments():
        if asked.garments and page.name not in asked.garments:
            continue
        for name, style in styles_of(page):
            if name != "usual" and (options or asked.one_style):
                continue
            for crowd, profiles in crowds.items():
                print(f"{page.name}, {name} {style | options or ''}, {crowd}:")
                print("\n".join(lines(run(profiles, page.name, style | options))), flush=True)


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("folder", type=Path, nargs="?")
    parser.add_argument("--garments", nargs="+", default=[])
    parser.add_argument("--people", type=int, default=500)
    parser.add_argument("--builds", type=int, default=500)
    parser.add_argument("--set", action="append", default=[], metavar="KEY=VALUE")
    parser.add_argument("--one-style", action="store_true", help="the usual style only")
    return parser.parse_args()


if __name__ == "__main__":
    main()
