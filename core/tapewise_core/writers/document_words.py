"""Running words as the library sets them."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from tapewise_core.writers.document_tables import LEADING
from tapewise_core.writers.lettering import FONT

if TYPE_CHECKING:
    from reportlab.platypus import Flowable


def running(marked: str, size: float, before: float) -> Flowable:
    """Return words, marked up as the library reads them, of a size and with room ``before`` them
    [points]."""
    words: Flowable = _kind()(marked, _style(size, before))
    return words


@cache
def _kind() -> Any:
    from reportlab.platypus import Paragraph

    class Words(Paragraph):
        """A paragraph that is broken into lines once for each width it is asked about: a table and
        what is kept together ask three times each."""

        asked: float | None = None
        took: tuple[float, float] = (0.0, 0.0)

        def wrap(self, wide: float, high: float) -> tuple[float, float]:
            if wide != self.asked or not hasattr(self, "blPara"):  # its lines, else dropped
                self.took, self.asked = super().wrap(wide, high), wide
            return self.took

    return Words


@cache
def _style(size: float, before: float) -> Any:
    from reportlab.lib.styles import ParagraphStyle

    return ParagraphStyle(
        "words", fontName=FONT, fontSize=size, leading=size * LEADING,
        spaceBefore=before, spaceAfter=4,
    )  # fmt: skip
