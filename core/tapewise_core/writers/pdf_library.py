"""reportlab as both writers of PDF need it."""

from __future__ import annotations

from typing import Any

from tapewise_core.writers.late import imported, wide_patterns_late


def prepare() -> None:
    """Let reportlab write binary streams: a fifth smaller, and faster to write.

    It is imported without PIL, with which it reads pictures: there are none in these files, and
    PIL is a fifth of all that it imports.
    """
    config: Any = imported("reportlab.rl_config", "PIL")
    config.useA85 = 0


def prepare_documents() -> None:
    """The same for what sets documents: it comes without a pattern of addresses on the web, which
    it would hyphenate by, and without what sets programs. Both are two thirds of its import."""
    prepare()
    with wide_patterns_late():
        imported("reportlab.platypus", "reportlab.platypus.xpreformatted")
