"""What the files of a draft hold: its drawings and documents as bytes, by name."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import cache, partial

from msgspec.structs import replace as changed

from tapewise_core.drafting.sheets import beside, with_squares
from tapewise_core.errors import PaperError
from tapewise_core.frozen import Frozen
from tapewise_core.paper.document import Document, Figure, FillIn, NumberedStep
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.pattern_set import PatternSet, piece_name
from tapewise_core.tasks.asked_paper import AS_DRAFTED, USUAL_PAPER, Paper, Shown
from tapewise_core.tasks.documents import checklist_of, control_of, drawings_of, instructions_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.judging import judged
from tapewise_core.tasks.paper_asked import paper_options
from tapewise_core.tasks.record import record_text
from tapewise_core.units import Unit
from tapewise_core.writers.markdown import markdown
from tapewise_core.writers.svg import svg

Tell = Callable[[str], object]
"""Whoever wants to know what is at hand while long work goes on."""


class Failed(Frozen):
    """A format whose paper the pattern does not fit, and why; the others are written."""

    format: str
    told: tuple[object, ...]


class Made(Frozen):
    """Every file by its relative name, and what could not be made."""

    files: Mapping[str, bytes]
    failed: tuple[Failed, ...] = ()


def contents(
    drafted: Drafted,
    formats: Sequence[str] = (),
    paper: Paper = USUAL_PAPER,
    tell: Tell = str,
) -> Mapping[str, bytes]:
    """Return every file by its relative name; formats the pattern does not fit are left out."""
    return made(drafted, formats, paper, tell).files


def made(
    drafted: Drafted,
    formats: Sequence[str] = (),
    paper: Paper = USUAL_PAPER,
    tell: Tell = str,
) -> Made:
    """Return every file, and the formats whose paper the pattern does not fit.

    Raises OptionError for a format that does not exist or paper that cannot be.
    """
    wanted, drafted = tuple(dict.fromkeys(formats)), judged(drafted.on_sheets(paper.shown))
    tell(f"1 of {len(wanted) + 2}: drawing the pieces and the drafting steps …")
    drawn = pattern_set(drafted, paper.shown)
    files = {name: text.encode() for name, text in _texts(drafted, drawn)}
    failed: list[Failed] = []
    for number, name in enumerate(wanted, start=2):
        tell(f"{number} of {len(wanted) + 2}: laying out {name} …")
        try:
            files |= _further(drawn, name, paper, drafted.unit)
        except PaperError as fault:
            failed.append(Failed(name, fault.told))
    files["draft.json"] = record_text(drafted, [*files, "draft.json"]).encode()
    return Made(files, tuple(failed))


def short_contents(
    drafted: Drafted, formats: Sequence[str] = (), paper: Paper = USUAL_PAPER
) -> dict[str, bytes]:
    """Return the files a batch writes: all but how to draft it by hand, with its pictures."""
    texts = _pattern_texts(drafted, drawings_of(drafted))
    files = {name: text.encode() for name, text in texts}
    told = _with_pictures("checklist.md", checklist_of(drafted))
    files |= {name: text.encode() for name, text in told}
    if formats:
        drawn = pattern_set(drafted)
        for name in dict.fromkeys(formats):
            files |= _further(drawn, name, paper, drafted.unit)
    files["draft.json"] = record_text(drafted, [*files, "draft.json"]).encode()
    return files


def _further(drawn: PatternSet, name: str, paper: Paper, unit: Unit) -> Mapping[str, bytes]:
    """The files of one further format."""
    from tapewise_core.writers.formats import render

    return render(name, drawn, paper_options(paper, unit))


def pattern_set(drafted: Drafted, shown: Shown = AS_DRAFTED) -> PatternSet:
    """Return everything a paper format needs; raises OptionError for a piece there is not."""
    drafted = drafted.on_sheets(shown)
    drawings = drawings_of(drafted, shown)
    return PatternSet(
        title=drafted.garment.title,
        description=f"{len(drawings)} pieces at full size. Measure a square before cutting.",
        person=drafted.person,
        date=drafted.label.date,
        pieces=drawings,
        whole=cache(partial(drawings_of, drafted, changed(shown, unfolded=True))),
        by_hand=cache(partial(instructions_of, drafted)),
        checklist=checklist_of(drafted),
        reader=drafted.reader,
        note=f"estimated: {', '.join(drafted.estimated)}" if drafted.estimated else "",
        fingerprint=drafted.fingerprint,
        looks=drafted.label.looks,
    )


def _texts(drafted: Drafted, drawn: PatternSet) -> Iterator[tuple[str, str]]:
    """The files that are always written, by name, from what is drawn and told already."""
    yield from _pattern_texts(drafted, drawn.pieces)
    yield from _with_pictures("instructions.md", drawn.instructions)
    yield "hand.md", hand_sheet(drafted)
    yield from _with_pictures("checklist.md", drawn.checklist)


def _with_pictures(name: str, told: Document) -> Iterator[tuple[str, str]]:
    """A document as text, and the pictures it refers to."""
    yield name, markdown(told)
    yield from ((file, svg(picture)) for file, picture in step_files(told).items())


def hand_sheet(drafted: Drafted) -> str:
    """Return the lengths by which a draft made by hand is checked, as it reads on a screen."""
    return markdown(control_of(drafted))


def _pattern_texts(drafted: Drafted, drawings: Sequence[Drawing]) -> Iterator[tuple[str, str]]:
    """All pieces on one sheet, and each by itself."""
    title = f"{drafted.garment.title} for {drafted.person}"
    yield "pattern.svg", svg(beside(title, _description(drafted), tuple(drawings)))
    for drawing in drawings:
        yield f"pieces/{piece_name(drawing)}.svg", svg(with_squares(drawing))


def step_files(told: Document) -> Mapping[str, Drawing]:
    """Return the pictures a document refers to, by file name."""
    found: dict[str, Drawing] = {}
    for block in told.blocks:
        if isinstance(block, NumberedStep | FillIn | Figure) and block.picture is not None:
            found[block.file] = block.picture
        if isinstance(block, NumberedStep) and block.aside is not None:
            found[block.aside_file] = block.aside
    return found


def _description(drafted: Drafted) -> str:
    said = f"{len(drafted.pattern.pieces)} pieces at full size, {drafted.label.set_words()}. "
    if drafted.estimated:
        said += f"Estimated, not measured: {', '.join(drafted.estimated)}. "
    return said + "Measure the 100 mm square before cutting."
