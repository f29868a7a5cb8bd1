"""Every format a pattern can be printed, projected, cut or read in, by the name people give it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from types import MappingProxyType

from tapewise_core.errors import OptionError
from tapewise_core.paper import sizes
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.text.amounts import OnPaper
from tapewise_core.text.told import said
from tapewise_core.writers import makers
from tapewise_core.writers.makers import Files, Format, PaperOptions

_ALL = (
    Format(
        "pdf-a4",
        "pages of A4 to print at home and join, with a page map",
        "pdf",
        ("pattern-a4.pdf",),
        makers.pages(sizes.A4),
    ),
    Format(
        "pdf-letter",
        "pages of US Letter to print at home and join, with a page map",
        "pdf",
        ("pattern-letter.pdf",),
        makers.pages(sizes.LETTER),
    ),
    Format(
        "pdf-a4-letter",
        "pages that print unscaled on A4 and on Letter",
        "pdf",
        ("pattern-a4-letter.pdf",),
        makers.pages(sizes.A4_OR_LETTER),
    ),
    Format(
        "pdf-a3",
        "pages of A3 to join, with a page map",
        "pdf",
        ("pattern-a3.pdf",),
        makers.pages(sizes.A3),
    ),
    Format(
        "pdf-legal",
        "pages of US Legal to join, with a page map",
        "pdf",
        ("pattern-legal.pdf",),
        makers.pages(sizes.LEGAL),
    ),
    Format(
        "pdf-tabloid",
        "pages of US Tabloid or Ledger to join, with a page map",
        "pdf",
        ("pattern-tabloid.pdf",),
        makers.pages(sizes.TABLOID),
    ),
    Format(
        "pdf-a2",
        "sheets of A2 for a copy shop",
        "pdf",
        ("pattern-a2.pdf",),
        makers.sheets(sizes.A2),
    ),
    Format(
        "pdf-a1",
        "sheets of A1 for a copy shop",
        "pdf",
        ("pattern-a1.pdf",),
        makers.sheets(sizes.A1),
    ),
    Format(
        "pdf-a0",
        "sheets of A0 for a copy shop",
        "pdf",
        ("pattern-a0.pdf",),
        makers.sheets(sizes.A0),
    ),
    Format(
        "pdf-24x36",
        "sheets of Arch D, 24 by 36, for a copy shop",
        "pdf",
        ("pattern-24x36.pdf",),
        makers.sheets(sizes.ARCH_D),
    ),
    Format(
        "pdf-36x48",
        "sheets of Arch E, 36 by 48, for a copy shop",
        "pdf",
        ("pattern-36x48.pdf",),
        makers.sheets(sizes.ARCH_E),
    ),
    Format(
        "pdf-page",
        "paper of the size given with --page",
        "pdf",
        ("pattern-page.pdf",),
        makers.page,
    ),
    Format(
        "pdf-roll",
        "one long page for a plotter, as wide as its roll",
        "pdf",
        ("pattern-roll.pdf",),
        makers.roll,
    ),
    Format(
        "pdf-projector",
        "one canvas with heavy lines and a grid, and a page to set up by, light and dark",
        "pdf",
        ("projector-dark.pdf", "projector-light.pdf"),
        makers.pdf_projector,
    ),
    Format(
        "svg-projector",
        "the projector's canvas as SVG, light on dark and dark on light",
        "svg",
        ("projector-dark.svg", "projector-light.svg"),
        makers.svg_projector,
    ),
    Format(
        "dxf",
        "whole pieces: a block a piece for cutters, plain for drawing programs (R12 and "
        "2000), and nothing but the lines to cut",
        "dxf",
        ("pattern-cutter.dxf", "pattern.dxf", "pattern-2000.dxf", "cut.dxf"),
        makers.dxf,
    ),
    Format(
        "svg-cut",
        "nothing but the lines to cut, whole pieces beside each other",
        "svg",
        ("cut.svg",),
        makers.svg_cut,
    ),
    Format(
        "pdf-reading",
        "checklist, instructions and pictures in one PDF to read or print",
        "pdf",
        ("reading.pdf",),
        makers.reading,
    ),
    Format(
        "html",
        "instructions, pictures and checklist in one page to read or print",
        "html",
        ("pattern.html",),
        makers.html,
    ),
)

FORMATS: Mapping[str, Format] = MappingProxyType({one.name: one for one in _ALL})
"""Every format by name, in the order people are shown them."""


def render(name: str, pattern: PatternSet, paper: PaperOptions | None = None) -> Files:
    """Return the files of one format by name.

    Raises OptionError with a sentence for a format that does not exist or
    paper the pattern cannot be laid out on, DraftError for a broken line.
    """
    if name not in FORMATS:
        raise OptionError(f"There is no format “{name}”; choose {', '.join(FORMATS)}.")
    chosen, given = FORMATS[name], paper or PaperOptions()
    _refuse(given)
    return dict(zip(chosen.files, chosen.make(pattern, given), strict=True))


def _refuse(paper: PaperOptions) -> None:
    """What no paper has, whatever the format."""
    sizes_given = {"overlap": paper.overlap, "roll width": paper.roll, "margin": paper.margin}
    for name, value in sizes_given.items():
        if not math.isfinite(value) or value < 0:
            typed = OnPaper(value) if math.isfinite(value) else f"{value:g}"
            raise OptionError(said("The {} must be a length of zero or more, not {}.", name, typed))
