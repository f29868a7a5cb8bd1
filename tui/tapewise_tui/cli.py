"""The command ``tapewise``: no arguments open the app, the rest asks nothing.

Everything a command needs is imported when it runs, so that ``--version`` and
``--help`` start as fast as the interpreter.
"""

from __future__ import annotations

import atexit
import contextlib
import errno
import gc
import os
import sys
from collections.abc import Sequence

from tapewise_core import __version__
from tapewise_core.errors import ProfileError, TapewiseError
from tapewise_tui.exits import BROKEN, FINE, STOPPED, WRONG


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code; every foreseen fault is one line on stderr."""
    if arguments is None:
        _end_at_once()
    given = list(sys.argv[1:] if arguments is None else arguments)
    try:
        code = _answer(given)
        sys.stdout.flush()
        return code
    except BrokenPipeError:
        _let_go()
        return FINE
    except OSError as error:
        return _unforeseen(error) if error.errno not in _NO_ROOM else _no_room(error)


def _end_at_once() -> None:
    """Let Python end without looking through memory for rings, as it does several times else.

    The system takes all memory back at once; looking is a fifth of what a small command takes.
    """
    atexit.register(gc.freeze)


def _answer(given: list[str]) -> int:
    if given in (["--version"], ["-V"]):
        print(f"tapewise {__version__}")
        return FINE
    if sorted(given) in (["--json", "--version"], ["--json", "-V"]):
        from tapewise_tui.commands_about import versions
        from tapewise_tui.printing import print_json

        print_json(versions())
        return FINE
    from tapewise_tui.printing import let_every_sign_pass

    let_every_sign_pass()
    try:
        return _run(given)
    except TapewiseError as error:
        return _wrong(error, None)
    except OSError:
        raise
    except Exception as error:  # whatever it is, a person reads a sentence
        return _unforeseen(error)
    except KeyboardInterrupt:
        print("tapewise: stopped; what was not finished is taken back.", file=sys.stderr)
        return STOPPED


_NO_ROOM = {errno.ENOSPC, errno.EDQUOT, errno.EFBIG, errno.EIO}
"""What the system says where an output takes no more."""


def _no_room(error: OSError) -> int:
    """The output is full: the one thing left is to say so, if that can be said."""
    _let_go()
    with contextlib.suppress(OSError):
        reason = (error.strerror or "the system gives no reason").lower()
        print(f"tapewise: The output cannot be written: {reason}.", file=sys.stderr)
    return WRONG


def _unforeseen(error: Exception) -> int:
    from tapewise_tui import trouble

    print(f"tapewise: {trouble.note(error)}", file=sys.stderr)
    return BROKEN


SELDOM = 100_000, 20, 50
"""How often memory is looked through for rings that can go (our choice): what is imported and
drafted is thousands of small values without one, and looking takes time and frees little."""

LIBRARIES = {"PYDANTIC_DISABLE_PLUGINS": "__all__", "OPENBLAS_NUM_THREADS": "1"}
"""What libraries are told before they are imported: pydantic would look for plugins first; numpy
would start a thread for each core, which wait busily, as no table here is large enough for them."""


def _let_go() -> None:
    """Nobody takes the output; keep the interpreter from complaining at its end."""
    with contextlib.suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _wrong(error: TapewiseError, unit: str | None) -> int:
    """Tell an error on one line in the reader's unit, with every fault of a file."""
    from tapewise_core.text.told import Reader
    from tapewise_core.units import Unit
    from tapewise_tui.printing import complain

    whole = Reader(Unit(unit or Unit.CM)).spell(error.told)
    if isinstance(error, ProfileError) and len(error.faults) > 1:
        whole = f"{error.place}: {'; '.join(error.faults)}."
    complain(whole)
    return WRONG


def _run(given: list[str]) -> int:
    gc.set_threshold(*SELDOM)
    for name, value in LIBRARIES.items():
        os.environ.setdefault(name, value)
    if not given:
        from tapewise_tui import tidying

        tidying.later()
        from tapewise_tui.app import run

        return run()
    from tapewise_tui.parser import parser

    options = parser(given[0]).parse_args(given)
    from tapewise_tui import commands

    try:
        return commands.run(options)
    except TapewiseError as error:
        return _wrong(error, getattr(options, "unit", None))


if __name__ == "__main__":
    sys.exit(main())
