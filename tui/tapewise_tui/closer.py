"""A lay looked for at length, with a word on how it goes where somebody looks."""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from tapewise_core.errors import OptionError
from tapewise_core.text.legible import legible
from tapewise_core.text.told import Told

if TYPE_CHECKING:
    from tapewise_core.tasks.drafted import Drafted

LONGEST = 600
"""A lay is looked for no longer than this [s] (our choice)."""


def checked(options: argparse.Namespace) -> None:
    """Refuse seconds that cannot be meant; raises OptionError."""
    seconds = options.closer_lay
    if seconds is not None and not 1 <= seconds <= LONGEST:
        raise OptionError(
            f"--closer-lay is a number of seconds from 1 to {LONGEST}, not {seconds}."
        )


def laid(drafted: Drafted, options: argparse.Namespace) -> Drafted:
    """Return the draft with a lay looked for so long as was asked, else a little longer than for a
    draft."""
    from tapewise_core.tasks.cloth import laid_better, laid_closer

    checked(options)
    if options.closer_lay is None:
        return laid_better(drafted)
    quiet = options.quiet or options.json

    def tell(told: Told) -> None:
        if not quiet:
            print(legible(drafted.reader.spell(told)), file=sys.stderr)

    return laid_closer(drafted, options.closer_lay, tell)
