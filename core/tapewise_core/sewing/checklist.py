"""The checklist: what is needed, what to cut, what to mark, how to sew, what to mind."""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.labels import Heading as Label
from tapewise_core.drafting.labels import allowance_words, cut_words, title
from tapewise_core.drafting.piece import Pattern, Piece
from tapewise_core.paper.document import Block, Bullets, Document, Heading, Paragraph, Table, Ticks
from tapewise_core.sewing.cloth_needed import cloth_needed, cloth_words
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.notions import needles, stays
from tapewise_core.sewing.order import sewing_order
from tapewise_core.units import Unit

CAUTIONS = (
    "Follow your local rules and the makers' instructions; where they say more, they win.",
    "Blades: cut away from your fingers, lay rotary cutters down closed, count pins and needles.",
    "Machines: hands clear of needle and overlocker knife; switch off before threading.",
    "Iron: it burns and is hot for a while after; try heat and steam on a scrap first.",
    "For a child: no cords or drawstrings at hood or neck up to 7 years (134 cm), none with free "
    "ends at the neck from 7 to 14 (EN 14682); no small parts under three.",
    "Loose jersey nightwear burns: for a child, follow the nightwear rules of your country "
    "(in the US 16 CFR 1615 and 1616).",
)


def checklist(
    pattern: Pattern,
    cloth: Cloth,
    stitching: Stitching,
    label: Label,
    options: tuple[tuple[str, str], ...],
    proved: Table,
    doubt: str = "",
) -> Document:
    """Return the checklist; ``options`` are keys with spelt values, ``proved`` a table."""
    unit = label.unit
    name = f"{label.garment} for {label.person}: checklist"
    blocks: tuple[Block, ...] = (
        Heading(name, 1),
        Paragraph(f"Made {label.date} with tapewise {label.version}. Tick as you go."),
        *_estimates(label, doubt),
        Heading("Proved before cutting"),
        proved,
        *(Paragraph(remark) for remark in pattern.remarks),
        Heading("What you need"),
        Ticks(_needs(pattern, cloth, stitching, unit)),
        Heading("Before cutting"),
        Ticks(_before(pattern, cloth, unit)),
        Heading("Cut"),
        Ticks(tuple(_cut(piece, unit) for piece in pattern.pieces)),
        Heading("Mark"),
        Ticks(_marks(pattern)),
        Heading("Sew"),
        Ticks(sewing_order(pattern, stitching, unit), numbered=True),
        Heading("Press and finish"),
        Ticks(FINISH),
        Heading("Mind"),
        Bullets((*CAUTIONS, *of_weight(pattern))),
        Heading("Chosen style"),
        Table(("option", "value"), options),
    )
    return Document(name, blocks)


def of_weight(pattern: Pattern) -> tuple[str, ...]:
    """What to mind where a skirt's weight hangs from jersey."""
    if not any(piece.name.startswith("skirt") for piece in pattern.pieces):
        return ()
    return (
        "A full skirt is heavy and pulls jersey down: keep it folded in a drawer rather than on a "
        "hanger, and do not hang it wet.",
        "A skirt to the ankle can be trodden on: lift it on stairs, and keep it from chains.",
    )


FINISH = (
    "Press every seam after sewing it, lifting the iron rather than sliding it: jersey grows.",
    "Try on, look at hem and sleeves in a mirror, and note what to change in the next draft.",
)


def _estimates(label: Label, doubt: str) -> tuple[Block, ...]:
    if not label.estimated:
        return ()
    said = (f"Estimated, not measured: {'; '.join(label.estimated)}.", doubt, MEASURE_THEM)
    return (Paragraph(" ".join(filter(None, said))),)


MEASURE_THEM = "Measure them if you can, then draft again."


def _needs(pattern: Pattern, cloth: Cloth, stitching: Stitching, unit: Unit) -> tuple[str, ...]:
    stretch = f"It is weft-knit jersey stretching at least {cloth.stretch * 100:.0f} % across."
    return (
        f"{cloth_words(cloth_needed(pattern, cloth), cloth, unit)} {stretch}",
        f"machines: {', '.join(sorted(stitching.machines))}; {needles(stitching)}",
        *stays(pattern, unit),
        "pins or clips; chalk; iron and board",
    )


MARKED = {Unit.CM: 100.0, Unit.IN: 101.6}
"""The stretch of cloth marked for the fold test [mm]: 10 cm, or 4 in."""


def _before(pattern: Pattern, cloth: Cloth, unit: Unit) -> tuple[str, ...]:
    marked = MARKED[unit]
    return (
        "Wash and dry the cloth as the garment will be: cotton jersey shrinks 5 to 8 % in length.",
        f"Measure the stretch: fold the cloth across, mark {unit.spell(marked)} on the fold, "
        f"stretch until it resists; at least {unit.spell(marked * (1 + cloth.stretch))} must be "
        "reached. Let go: "
        "cloth that stays long will not hold a neckline.",
        "Check the 100 mm square on the printed pattern with a ruler before you cut anything.",
        "Lay the cloth without pulling, its ribs straight; askew, they make seams spiral.",
        f"Allowances are in the pattern, edge by edge; sew with those, not with a habit: "
        f"{allowance_words(pattern.pieces[0], unit)}.",
    )


def _cut(piece: Piece, unit: Unit) -> str:
    fold = ", the straight edge marked so on the fold" if piece.on_fold else _laid(piece)
    return f"{title(piece.name)}: {cut_words(piece)}{fold}; {len(piece.notches)} notches"


def _laid(piece: Piece) -> str:
    """How a piece that is not on a fold lies: a band across the cloth, others by their grain."""
    return ", its length across the cloth" if piece.inner else ", its grain line along the cloth"


def _marks(pattern: Pattern) -> tuple[str, ...]:
    marks = []
    for piece in pattern.pieces:
        pairs = list(dict.fromkeys(notch.pair for notch in piece.notches))
        if pairs:
            marks.append(f"{title(piece.name)}: {', '.join(pairs)}; snip no deeper than 3 mm")
    return (*marks, "wrong side of every piece with chalk, so that none is sewn in back to front")
