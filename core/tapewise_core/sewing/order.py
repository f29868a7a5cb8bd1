"""The sewing order, chosen by how a pattern's seams are made and by the machines there are.

The order of a top made at home (common practice): stay the shoulders, sew them, try
the head, finish the neck, set in sleeves that are not grown on, close side and
underarm in one, hem. A skirt: its seams, the waist, the hem; a circle hangs before it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from tapewise_core.drafting.making import How
from tapewise_core.drafting.piece import Pattern
from tapewise_core.sewing import body, darts, edges, extras, neck, waist
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sewing.work import Work, made_so
from tapewise_core.text.told import Told


def sewing_order(pattern: Pattern, stitching: Stitching) -> tuple[Told, ...]:
    """Return the sentences of the sewing order, first to last."""
    return darts.waist(pattern) + tuple(
        sentence
        for how, sentences in ORDER.items()
        if (seams := made_so(pattern, how))
        for sentence in sentences(Work(seams, pattern, stitching))
    )


ORDER: Mapping[How, Callable[[Work], tuple[Told, ...]]] = MappingProxyType(
    {
        How.SIDE_DART: darts.side,
        How.PLAIN: body.plain,
        How.STAYED: body.shoulders,
        How.BAND_RING: neck.ring,
        How.BAND: neck.band,
        How.BAND_MITRE: neck.mitre,
        How.V_BAND: neck.v_band,
        How.TURNED_NECK: neck.turned,
        How.TURNED_V: neck.turned_v,
        How.FACING_RING: neck.facing_ring,
        How.FACING: neck.facing,
        How.V_FACING: neck.v_facing,
        How.POCKET: extras.pocket,
        How.SLEEVE_FLAT: body.sleeves,
        How.SIDES: body.sides,
        How.SLEEVE_HEM: edges.sleeve_hems,
        How.PANELS: body.panels,
        How.VENT: edges.vent,
        How.STAYED_WAIST: waist.joined,
        How.WAISTBAND_RING: waist.ring,
        How.WAISTBAND: waist.band,
        How.CASING: waist.casing,
        How.SLIT: edges.slit,
        How.HEM: edges.hem,
        How.HUNG_HEM: edges.hung_hem,
        How.BELT: extras.belt,
    }
)
"""What is said of each making, in the order of sewing."""
