"""The instructions for drafting by hand, numbered through, each with its picture."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.labels import LabelHead
from tapewise_core.drafting.pictures import step_pictures
from tapewise_core.drafting.told_steps import all_points, told_steps
from tapewise_core.paper.document import (
    Block,
    Bullets,
    Document,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
)
from tapewise_core.text.told import Reader, Told
from tapewise_core.units import Unit

TOOLS = (
    "paper at least as long as the garment, a soft pencil, a long ruler, a set square, a tape, a "
    "protractor",
    "a curved ruler helps and is not needed: every curve has points to pass through",
)

CURVES = (
    "Points of a curve, C1, C2 and so on, are told from a straight line between two others: so "
    "far along it, then so far out, square to it. Put a dot at each, then draw one smooth line "
    "through them, in the direction that is told for its ends: “at 94° to S–P, downwards” is the "
    "angle between the curve and that line, the curve lying below it."
)


def instructions(
    drafts: tuple[Draft, ...],
    label: LabelHead,
    whole: Mapping[str, float],
    remarks: tuple[Told, ...],
    sources: tuple[str, ...] = (),
) -> Document:
    """Return the document; the drafts have all that a hand is told of them.

    ``whole`` are the girths drafted from [mm], told so that a quarter misread by an inch is
    seen; ``sources`` are citations, spelt out.
    """
    reader = Reader(label.unit)
    blocks: list[Block] = [
        Heading(f"{label.garment} for {label.person}: drafting by hand", 1),
        Paragraph(
            "Lines here are stitching lines; allowances are added last. Draw full lines where the "
            "pattern's own edges are, thin ones where a line only helps. “Across” and “level” are "
            "square to the fold, “down” and “upright” along it."
        ),
        Paragraph(CURVES),
        Bullets(TOOLS),
        *_set(label),
    ]
    if label.estimated:
        said = "Estimated, not measured: " + ", ".join(label.estimated) + "."
        blocks.append(Paragraph(said))
    if whole:
        blocks += [Heading("Whole girths, to check the quarters by"), _girths(whole, label.unit)]
    blocks += [Paragraph(reader.spell(remark)) for remark in remarks]
    blocks += _steps(drafts, reader)
    blocks += _sources(sources)
    return Document(f"{label.garment} for {label.person}", tuple(blocks))


def _set(label: LabelHead) -> Iterator[Block]:
    """Which set of sheets this belongs to."""
    if label.fingerprint:
        yield Paragraph(f"This is {label.set_words()}; every sheet of it says so.")


def _sources(cited: tuple[str, ...]) -> Iterator[Block]:
    """The last section: the publications that the draft's numbers rest on."""
    yield Heading("Where the numbers come from")
    if cited:
        yield Bullets(cited)
    yield Paragraph(REST)


REST = "Numbers with no publication named are common practice in the trade."

QUARTERED = ("bust", "waist", "hip", "hem")
"""Girths drawn as quarters; an arm's are drawn as halves."""


def _girths(whole: Mapping[str, float], unit: Unit) -> Bullets:
    return Bullets(tuple(_girth(name, size, unit) for name, size in whole.items()))


def _girth(name: str, size: float, unit: Unit) -> str:
    part, parts = ("a quarter", 4) if name in QUARTERED else ("half", 2)
    return f"{name}: {unit.spell(size)} round, {part} is {unit.spell(size / parts)}"


def _steps(drafts: tuple[Draft, ...], reader: Reader) -> Iterator[Block]:
    number = 0
    for draft in drafts:
        yield Heading(draft.title)
        pictures = step_pictures(draft, reader.unit)
        for told, shown in zip(told_steps(draft, reader), pictures, strict=True):
            number += 1
            file = f"steps/{number:02d}"
            aside = (shown[1], f"{file}-corner.svg") if len(shown) > 1 else ()
            yield NumberedStep(number, told.text, shown[0], f"{file}.svg", *aside)
            if told.rows:
                yield Table(told.head, told.rows)
        if draft.paper.points:
            first = next(iter(draft.paper.points))
            yield Paragraph(
                f"All points of this piece, across and down from {first}, to check by; − is to the "
                "left, or up:"
            )
            yield Table(*all_points(draft, reader))
