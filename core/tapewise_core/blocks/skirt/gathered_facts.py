"""What a gathered skirt says of itself: gathers, levels, lengths, and how its tiers are cut."""

from __future__ import annotations

from itertools import pairwise

from tapewise_core.blocks.skirt.gathered import GatheredSkirt
from tapewise_core.drafting.facts import Level
from tapewise_core.drafting.pattern import Girth
from tapewise_core.measures.body import Body
from tapewise_core.text.told import Told, joined, said
from tapewise_core.units import mm


def skirt_gathers(skirt: GatheredSkirt) -> dict[str, float]:
    """Return what each gathered edge has for each length of what it is gathered to, as drawn."""
    found = {"waist": skirt.top / skirt.edge}
    for above, below in pairwise(zip(skirt.tiers, skirt.pieces, strict=True)):
        upper = below[0].runs * below[1].length("upper_edge")
        found[f"top of the {below[0].spoken}"] = upper / (
            above[0].runs * above[1].length("lower_edge")
        )
    return found


def skirt_levels(skirt: GatheredSkirt, body: Body) -> tuple[Level, ...]:
    """Return high hip and hip, which are shown, and the hem as asked and as drawn."""
    hip, asked = body["hip"].mm, skirt.edge * skirt.style.growth
    found = []
    if "hip_depth" in body and body["hip_depth"].mm <= skirt.style.length.mm:
        depth = body["hip_depth"].mm
        high = body["high_hip"].mm if "high_hip" in body else (body["waist"].mm + hip) / 2
        found = [
            Level("high_hip", None, high, None, None, skirt.around(depth / 2)),
            Level("hip", None, hip, None, None, skirt.around(depth)),
        ]
    return (*found, Level("hem", None, hip, asked - hip, asked, skirt.hem))


def skirt_girths(skirt: GatheredSkirt, body: Body) -> tuple[Girth, ...]:
    """Return the skirt at the hip line, where it reaches that far."""
    levels = skirt_levels(skirt, body)
    return tuple(Girth("hip", one.given, one.body) for one in levels if one.name == "hip")


def skirt_lengths(skirt: GatheredSkirt) -> dict[str, float]:
    """Return the finished skirt's lengths by name [mm]."""
    return {
        "skirt length": skirt.style.length.mm,
        "waist edge": skirt.edge,
        "before gathering": skirt.top,
        "hem round": skirt.hem,
    }


def panels_told(skirt: GatheredSkirt) -> Told:
    """Say how many panels each tier is cut in."""
    each = (
        said("{} of {}", f"{tier.count}", mm(tier.upper.mm / tier.count)) for tier in skirt.tiers
    )
    return said("Panels, from the top down: {}, each within the cloth's width.", joined(each, ", "))
