"""The command ``tapewise``: no arguments open the app, the rest asks nothing.

Everything a command needs is imported when it runs, so that ``--version`` and
``--help`` start as fast as the interpreter.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence

from tapewise_core import __version__
from tapewise_core.errors import ProfileError, TapewiseError
from tapewise_tui.exits import BROKEN, FINE, WRONG


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code; every foreseen fault is one line on stderr."""
    given = list(sys.argv[1:] if arguments is None else arguments)
    if given in (["--version"], ["-V"]):
        print(f"tapewise {__version__}")
        return FINE
    try:
        return _run(given)
    except TapewiseError as error:
        return _wrong(error, None)
    except BrokenPipeError:
        return _closed_pipe()
    except Exception as error:  # whatever it is, a person reads a sentence
        from tapewise_tui import trouble

        print(f"tapewise: {trouble.note(error)}", file=sys.stderr)
        return BROKEN
    except KeyboardInterrupt:
        print("tapewise: stopped; nothing half written is left.", file=sys.stderr)
        return 130


def _wrong(error: TapewiseError, unit: str | None) -> int:
    """Tell an error on one line in the reader's unit, with every fault of a file."""
    from tapewise_core.text.told import Reader
    from tapewise_core.units import Unit

    whole = " ".join(Reader(Unit(unit or Unit.CM)).spell(error.told).split())
    if isinstance(error, ProfileError) and len(error.faults) > 1:
        whole = f"{error.place}: {'; '.join(error.faults)}."
    print(f"tapewise: {whole}", file=sys.stderr)
    return WRONG


def _run(given: list[str]) -> int:
    if not given:
        from tapewise_tui.app import run

        return run()
    from tapewise_tui.parser import parser

    options = parser().parse_args(given)
    from tapewise_tui import commands

    try:
        return commands.run(options)
    except TapewiseError as error:
        return _wrong(error, getattr(options, "unit", None))


def _closed_pipe() -> int:
    """Whoever read the output has gone; keep the interpreter from complaining at its end."""
    import os

    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return FINE


if __name__ == "__main__":
    sys.exit(main())
