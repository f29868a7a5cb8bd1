"""``python -m tapewise_core.statistics.proving FOLDER`` prints the figures."""

from __future__ import annotations

import argparse
from pathlib import Path

from tapewise_core.errors import TapewiseError
from tapewise_core.statistics.proving.report import figures


def main() -> None:
    """Hold the model against the tables in a folder and print what comes out."""
    parser = argparse.ArgumentParser(prog="tapewise_core.statistics.proving", description=__doc__)
    parser.add_argument("folder", type=Path, help="the folder with the open tables")
    parser.add_argument(
        "--people", type=int, default=200, help="at most so many of each fifth (default 200)"
    )
    options = parser.parse_args()
    try:
        for line in figures(options.folder, options.people):
            print(line, flush=True)
    except TapewiseError as fault:
        parser.error(str(fault))


if __name__ == "__main__":
    main()
