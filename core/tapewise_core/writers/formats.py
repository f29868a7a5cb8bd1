"""Every format a pattern can be printed, projected, cut or read in, by the name people give it."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from tapewise_core.errors import OptionError
from tapewise_core.paper import sizes
from tapewise_core.paper.cutting_out import cut_only
from tapewise_core.paper.look import DARK, LIGHT
from tapewise_core.paper.paging import OVERLAP
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.projector import canvas, projected
from tapewise_core.paper.roll import rolled
from tapewise_core.paper.sizes import PageSize
from tapewise_core.paper.tiling import large, tiled
from tapewise_core.text.told import OnPaper, said
from tapewise_core.writers.dxf import cutter_dxf, plain_dxf
from tapewise_core.writers.html import html
from tapewise_core.writers.pdf import pdf
from tapewise_core.writers.svg import svg


@dataclass(frozen=True, slots=True)
class PaperOptions:
    """What a person may choose about paper; lengths in mm."""

    overlap: float = OVERLAP
    roll: float = sizes.ROLL
    margin: float = sizes.MARGIN


Files = dict[str, bytes]


@dataclass(frozen=True, slots=True)
class Format:
    """One way onto paper, cloth or screen: its name, what it is for, the files it gives."""

    name: str
    says: str
    extension: str
    files: tuple[str, ...]
    make: Callable[[PatternSet, PaperOptions], list[bytes]]


def _pages(page: PageSize) -> Callable[[PatternSet, PaperOptions], list[bytes]]:
    return lambda pattern, paper: [pdf(tiled(pattern, page, paper.margin, paper.overlap))]


def _a0(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    return [pdf(large(pattern, sizes.A0, paper.margin, paper.overlap))]


def _roll(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    return [pdf(rolled(pattern, paper.roll, paper.margin))]


def _pdf_projector(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    prints = projected(canvas(pattern), pattern.person)
    return [pdf(prints, look) for look in (DARK, LIGHT)]


def _svg_projector(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    drawing = canvas(pattern)
    return [svg(drawing, look).encode() for look in (DARK, LIGHT)]


def _dxf(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    from tapewise_core.writers.dxf_2000 import cut_dxf, modern_dxf

    pieces = pattern.opened
    return [cutter_dxf(pieces), plain_dxf(pieces), modern_dxf(pieces), cut_dxf(pieces)]


def _svg_cut(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    return [svg(cut_only(pattern)).encode()]


def _html(pattern: PatternSet, paper: PaperOptions) -> list[bytes]:
    return [html(pattern).encode()]


_ALL = (
    Format(
        "pdf-a4",
        "pages of A4 to print at home and join, with a page map",
        "pdf",
        ("pattern-a4.pdf",),
        _pages(sizes.A4),
    ),
    Format(
        "pdf-letter",
        "pages of US Letter to print at home and join, with a page map",
        "pdf",
        ("pattern-letter.pdf",),
        _pages(sizes.LETTER),
    ),
    Format(
        "pdf-a4-letter",
        "pages that print unscaled on A4 and on Letter",
        "pdf",
        ("pattern-a4-letter.pdf",),
        _pages(sizes.A4_OR_LETTER),
    ),
    Format(
        "pdf-a3",
        "pages of A3 to join, with a page map",
        "pdf",
        ("pattern-a3.pdf",),
        _pages(sizes.A3),
    ),
    Format("pdf-a0", "sheets of A0 for a copy shop", "pdf", ("pattern-a0.pdf",), _a0),
    Format(
        "pdf-roll",
        "one long page for a plotter, as wide as its roll",
        "pdf",
        ("pattern-roll.pdf",),
        _roll,
    ),
    Format(
        "pdf-projector",
        "one canvas with heavy lines and a 5 cm grid, light on dark and dark on light",
        "pdf",
        ("projector-dark.pdf", "projector-light.pdf"),
        _pdf_projector,
    ),
    Format(
        "svg-projector",
        "the projector's canvas as SVG, light on dark and dark on light",
        "svg",
        ("projector-dark.svg", "projector-light.svg"),
        _svg_projector,
    ),
    Format(
        "dxf",
        "whole pieces in mm: a block a piece for cutters, plain for drawing programs (R12 and "
        "2000), and nothing but the lines to cut",
        "dxf",
        ("pattern-cutter.dxf", "pattern.dxf", "pattern-2000.dxf", "cut.dxf"),
        _dxf,
    ),
    Format(
        "svg-cut",
        "nothing but the lines to cut, whole pieces beside each other",
        "svg",
        ("cut.svg",),
        _svg_cut,
    ),
    Format(
        "html",
        "instructions, pictures and checklist in one page to read or print",
        "html",
        ("pattern.html",),
        _html,
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
