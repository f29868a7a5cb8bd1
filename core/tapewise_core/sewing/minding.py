"""What to mind: safety, and how a garment is kept."""

from __future__ import annotations

from tapewise_core.sewing.edges import HANG
from tapewise_core.sewing.machines import Machine, Stitching
from tapewise_core.sewing.operation import Operation
from tapewise_core.text.amounts import About
from tapewise_core.text.told import Told, said

LOCAL = "Follow your local rules and the makers' instructions; where they say more, they win."
BLADES = (
    "Blades: cut away from your fingers, lay rotary cutters down closed, keep them from children."
)
IRON = "The iron burns, and is hot for a while after; try heat and steam on a scrap first."
MELTS = "Clear elastic melts under it."
TALL = About(1340)
"""How tall a child is at seven years [en14682]."""

LOOSE = About(140)
"""The longest loose end of a belt on a child's garment [en14682], from memory."""

BUTTONS = (
    "Buttons are small parts: under three years take snaps that are fixed firmly, or leave them "
    "off; pull on each before every wearing.",
)

NIGHTWEAR = (
    "Loose jersey nightwear burns: for a child, follow the nightwear rules of your country (in "
    "the US 16 CFR 1615 and 1616)."
)


def at_machine(stitching: Stitching) -> str:
    """Say what to mind while sewing, by what is sewn with."""
    knife = " and overlocker knife" if Machine.OVERLOCKER in stitching.machines else ""
    pins = "Count the pins afterwards: none stays in the garment."
    if stitching.machines == {Machine.HAND}:
        return f"Needles: put each back when you stop. {pins}"
    return f"Machines: hands clear of needle{knife}; switch off before threading. {pins}"


def at_pressing(chain: tuple[Operation, ...]) -> str:
    """Say what to mind with the iron, by what may lie under it."""
    elastic = any("clear elastic" in str(part) for op in chain for use in op.uses
                  for part in use.what)  # fmt: skip
    return f"{IRON} {MELTS}" if elastic else IRON


def cautions(
    chain: tuple[Operation, ...], stitching: Stitching, *, child: bool, skirt: float = 0.0
) -> tuple[Told, ...]:
    """Return what to mind while sewing and wearing; ``child`` says whether a child wears it,
    ``skirt`` how long its skirt is [mm]."""
    own = for_children(chain) if child else ()
    trodden = ((TRODDEN,),) if skirt >= LONG else ()
    return ((LOCAL,), (at_machine(stitching),), *own, *of_weight(chain), *trodden)


LONG = 800.0
"""From what length a skirt may be trodden on [mm] (our choice: to the ankle of a short person)."""

TRODDEN = "A skirt to the ankle can be trodden on: lift it on stairs, and keep it from chains."


def for_children(chain: tuple[Operation, ...]) -> tuple[Told, ...]:
    """Return what to mind where a child will wear it."""
    belt = said(
        "For a child: sew the belt down at the sides, no loose end longer than {}, or leave it "
        "off.",
        LOOSE,
    )
    return (
        said(
            "For a child: no cords or drawstrings at hood or neck up to 7 years ({}), none with "
            "free ends at the neck from 7 to 14 (EN 14682); no small parts under three.",
            TALL,
        ),
        *((belt,) if any(operation.key == "belt" for operation in chain) else ()),
        *((BUTTONS,) if any(operation.key == "placket-buttons" for operation in chain) else ()),
        (NIGHTWEAR,),
    )


def of_weight(chain: tuple[Operation, ...]) -> tuple[Told, ...]:
    """What to mind where the weight of a circle hangs from jersey."""
    if all(operation.key != HANG for operation in chain):
        return ()
    return (
        (
            "A full skirt is heavy and pulls jersey down: keep it folded in a drawer rather than "
            "on a hanger, and do not hang it wet.",
        ),
    )
