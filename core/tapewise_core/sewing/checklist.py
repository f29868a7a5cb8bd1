"""The checklist: what is needed, what to cut, what to mark, how to sew, what to mind."""

from __future__ import annotations

from functools import partial

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.drafting.labels import LabelHead
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.lay.buying import purchase
from tapewise_core.lay.lay import Lay
from tapewise_core.paper.document import (
    Block,
    Bullets,
    Document,
    Figure,
    Heading,
    Paragraph,
    Table,
    Ticks,
)
from tapewise_core.sewing.before_cutting import before_cutting
from tapewise_core.sewing.cloth_words import cloth_words
from tapewise_core.sewing.cutting_out import cut_out
from tapewise_core.sewing.lay_plan import lay_plan
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.marks import marks
from tapewise_core.sewing.minding import BLADES, at_machine, at_pressing, cautions
from tapewise_core.sewing.notions import notions
from tapewise_core.sewing.operation import Operation
from tapewise_core.sewing.order import operations, words
from tapewise_core.sewing.pictures import picture
from tapewise_core.text.told import Reader, Told, joined
from tapewise_core.units import Unit


def checklist(
    pattern: Pattern,
    cloth: Cloth,
    lay: Lay,
    stitching: Stitching,
    label: LabelHead,
    options: tuple[tuple[str, str], ...],
    proved: tuple[Block, ...],
    given: Table,
    doubt: str = "",
    *,
    allowances: bool = True,
    unfolded: bool = False,
    child: bool = False,
) -> Document:
    """Return the checklist; ``options`` are keys with spelt values, ``proved`` is what was proved,
    ``given`` a table of the levels, which may have no row; ``allowances`` and ``unfolded`` say how
    the printed pieces are, ``child`` whether a child will wear it."""
    reader = Reader(label.unit)
    chain = operations(pattern, stitching)
    name = f"{label.garment} for {label.person}: checklist"
    blocks: tuple[Block, ...] = (
        Heading(name, 1),
        Paragraph(f"Made {label.date} with tapewise {label.version}{_set(label)}. Tick as you go."),
        *_estimates(label, doubt),
        Heading("Proved before cutting"),
        *proved,
        *((Heading("Asked and given"), given) if given.rows else ()),
        *map(Paragraph, _spelt(pattern.remarks, reader)),
        Heading("What you need"),
        Ticks(_spelt(_needs(pattern, cloth, lay, label.unit, chain, stitching), reader)),
        Heading("Before cutting"),
        Ticks(_spelt(before_cutting(pattern, cloth, label.unit, allowances=allowances), reader)),
        Heading("Cut"),
        Paragraph(BLADES),
        Ticks(tuple(cut_out(piece, unfolded=unfolded) for piece in pattern.pieces)),
        *_plan(lay, cloth, label),
        Heading("Mark"),
        Ticks(_spelt(marks(pattern), reader)),
        *_sewing(pattern, stitching, chain, reader),
        Heading("Mind"),
        Bullets(_spelt(cautions(chain, stitching, child=child, skirt=_skirt(pattern)), reader)),
        Heading("Chosen style"),
        Table(("option", "value"), options),
    )
    return Document(name, blocks)


def _spelt(sentences: tuple[Told, ...], reader: Reader) -> tuple[str, ...]:
    return tuple(map(reader.spell, sentences))


def _sewing(
    pattern: Pattern, stitching: Stitching, chain: tuple[Operation, ...], reader: Reader
) -> tuple[Block, ...]:
    """What to sew, each step with its picture, and how it is pressed and finished."""
    pictures = tuple(partial(picture, pattern, one) for one in chain)
    return (
        Heading("Sew"),
        Paragraph(at_machine(stitching)),
        Ticks(_spelt(tuple(map(words, chain)), reader), numbered=True, pictures=pictures),
        Heading("Press and finish"),
        Paragraph(at_pressing(chain)),
        Ticks(FINISH),
    )


def _skirt(pattern: Pattern) -> float:
    """How long a pattern's skirt is [mm]; 0 where it has none."""
    return pattern.lengths.get("skirt length", 0.0)


def _plan(lay: Lay, cloth: Cloth, label: LabelHead) -> tuple[Block, ...]:
    plan = lay_plan(lay, cloth.as_cut, label)
    return (Figure(plan, PLANS[cloth.spread], "lay-plan.svg"),) if plan is not None else ()


PLANS = {
    Spread.OPEN: (
        "How the pieces lie on the cloth, opened to its full width, its ribs running up and down. "
        "Pieces that are cut on the fold are shown whole. Other ways may need less."
    ),
    Spread.FOLDED: (
        "How the pieces lie on the cloth, folded lengthwise, its ribs running up and down: what "
        "is not on the fold is cut from both layers, or from one where it is cut once. Other ways "
        "may need less."
    ),
    Spread.TUBE: (
        "How the pieces lie on the tube, its ribs running up and down: what is on neither fold is "
        "cut from both layers, or from one where it is cut once. Other ways may need less."
    ),
}
"""What is said of the plan, by how the cloth lies."""

FINISH = (
    "Press every seam after sewing it, lifting the iron rather than sliding it: jersey grows.",
    "Try on, look at every edge in a mirror, and note what to change in the next draft.",
)


def _set(label: LabelHead) -> str:
    return f", {label.set_words()}" if label.fingerprint else ""


def _estimates(label: LabelHead, doubt: str) -> tuple[Block, ...]:
    if not label.estimated:
        return ()
    said = (f"Estimated, not measured: {'; '.join(label.estimated)}.", doubt, MEASURE_THEM)
    return (Paragraph(" ".join(filter(None, said))),)


MEASURE_THEM = "Measure them if you can, then draft again."


def _needs(
    pattern: Pattern,
    cloth: Cloth,
    lay: Lay,
    unit: Unit,
    chain: tuple[Operation, ...],
    stitching: Stitching,
) -> tuple[Told, ...]:
    along = f" and {cloth.stretch_along * 100:g} % along" if cloth.stretch_along else ""
    stretches = f"{cloth.stretch * 100:.0f} % across{along}"
    stretch = f"It is weft-knit jersey stretching at least {stretches}."
    bill = purchase(lay, cloth.as_cut, unit)
    return (
        joined((cloth_words(lay, cloth, unit, bill), (stretch,))),
        *notions(pattern, chain, stitching.machines),
        ("scissors or a rotary cutter; pins or clips; chalk; iron and board",),
    )
