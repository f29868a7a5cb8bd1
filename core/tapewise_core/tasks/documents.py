"""The documents of a draft: pieces drawn, how it is drafted and checked by hand, its checklist."""

from __future__ import annotations

import re

from tapewise_core.drafting.control import control_sheet
from tapewise_core.drafting.instructions import instructions
from tapewise_core.drafting.render import piece_drawing, whole_drawing
from tapewise_core.drafting.unfolding import bare
from tapewise_core.errors import OptionError
from tapewise_core.paper.document import Document, Paragraph
from tapewise_core.paper.drawing import Drawing
from tapewise_core.proofs.ledger import ledger
from tapewise_core.proofs.report import proof_table
from tapewise_core.sewing.checklist import checklist
from tapewise_core.tasks.asked_paper import AS_DRAFTED, Shown
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.guesses import effect_words, grounds_words
from tapewise_core.tasks.people import for_child


def drawings_of(drafted: Drafted, shown: Shown = AS_DRAFTED) -> tuple[Drawing, ...]:
    """Return each piece at full size; raises OptionError for a piece there is not."""
    pieces, wanted = drafted.cut.pieces, _wanted(drafted, shown)
    draw = whole_drawing if shown.unfolded else piece_drawing
    return tuple(
        draw(piece if shown.allowances else bare(piece), number, len(pieces), drafted.label)
        for number, piece in enumerate(pieces, start=1)
        if piece.name in wanted
    )


def _wanted(drafted: Drafted, shown: Shown) -> tuple[str, ...]:
    """The names of the pieces that are shown, all if none are chosen, each named as it is
    printed or recorded. Raises OptionError for a piece there is not."""
    names = tuple(piece.name for piece in drafted.pattern.pieces)
    asked = tuple(re.sub(r"[\s-]+", "_", name.strip().lower()) for name in shown.pieces)
    for name, plain in zip(shown.pieces, asked, strict=True):
        if plain not in names:
            raise OptionError(
                f"There is no piece “{name}” in this draft; choose from {', '.join(names)}."
            )
    return tuple(name for name in names if not asked or name in asked)


def instructions_of(drafted: Drafted) -> Document:
    """Return how to draft it by hand, with this person's numbers."""
    whole = {girth.name: girth.garment for girth in drafted.pattern.girths}
    return instructions(
        drafted.told, drafted.label, whole, drafted.pattern.remarks, drafted.sources
    )


def control_of(drafted: Drafted) -> Document:
    """Return the lengths by which a draft made by hand is checked."""
    return control_sheet(drafted.pattern, drafted.told, drafted.label)


def checklist_of(drafted: Drafted) -> Document:
    """Return the cut list and sewing order, of the pieces as they are cut and sewn."""
    reader = drafted.reader
    verdict = (Paragraph(reader.spell(drafted.verdict.says)),) if drafted.verdict else ()
    return checklist(
        drafted.cut,
        drafted.cloth,
        drafted.lay,
        drafted.stitching,
        drafted.label,
        _options(drafted),
        (*verdict, proof_table(drafted.proofs, reader)),
        ledger(drafted.pattern.facts.levels, reader),
        _doubt(drafted),
        allowances=drafted.shown.allowances,
        unfolded=drafted.shown.unfolded,
        child=bool(for_child(drafted.profile)),
    )


def _options(drafted: Drafted) -> tuple[tuple[str, str], ...]:
    """What was chosen, each with its words; what has nothing to do in this style is left out."""
    options, style = drafted.garment.options, drafted.style
    return tuple(
        (key, drafted.reader.spell(one.told))
        for key, one in style.chosen.items()
        if key not in options or options[key].at_work(style)
    )


def _doubt(drafted: Drafted) -> str:
    """What the estimates rest on, and where they leave the garment uncertain."""
    grounds = grounds_words(drafted.body, drafted.estimated_keys)
    return " ".join(filter(None, (grounds, effect_words(drafted.effects, drafted.unit))))
