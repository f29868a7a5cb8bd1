"""What to mind: safety, and how a garment is kept."""

from __future__ import annotations

from tapewise_core.sewing.edges import HANG
from tapewise_core.sewing.machines import Machine, Stitching
from tapewise_core.sewing.operation import Operation
from tapewise_core.text.told import About, Told, said

LOCAL = "Follow your local rules and the makers' instructions; where they say more, they win."
BLADES = (
    "Blades: cut away from your fingers, lay rotary cutters down closed, count pins and needles."
)
IRON = "Iron: it burns and is hot for a while after; try heat and steam on a scrap first."
TALL = About(1340)
"""How tall a child is at seven years [en14682]."""

NIGHTWEAR = (
    "Loose jersey nightwear burns: for a child, follow the nightwear rules of your country (in "
    "the US 16 CFR 1615 and 1616)."
)


def cautions(chain: tuple[Operation, ...], stitching: Stitching) -> tuple[Told, ...]:
    """Return what to mind while sewing and wearing."""
    knife = " and overlocker knife" if Machine.OVERLOCKER in stitching.machines else ""
    return (
        (LOCAL,),
        (BLADES,),
        (f"Machines: hands clear of needle{knife}; switch off before threading.",),
        (IRON,),
        said(
            "For a child: no cords or drawstrings at hood or neck up to 7 years ({}), none with "
            "free ends at the neck from 7 to 14 (EN 14682); no small parts under three.",
            TALL,
        ),
        (NIGHTWEAR,),
        *of_weight(chain),
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
        ("A skirt to the ankle can be trodden on: lift it on stairs, and keep it from chains.",),
    )
