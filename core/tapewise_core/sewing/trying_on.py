"""Trying a garment on before its edges are finished: a node of the sewing order, and its words.

Common practice in the trade.
"""

from __future__ import annotations

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.sewing.edges import HUNG_HEM
from tapewise_core.sewing.operation import Operation, Sort, Stage
from tapewise_core.sewing.way import made_so, of_kind

TRY_ON = "try-on"
"""The key of trying on."""

TURNED = {SeamKind.HEM: "hem", SeamKind.SLEEVE_HEM: "sleeves"}
BANDS = {SeamKind.HEM_BAND: "the hem band", SeamKind.CUFF: "the cuffs"}
"""What may still be open when a garment is tried on: edges to be turned, and bands to be sewn
on."""

MEND = "mend now what is wrong"


def tried(pattern: Pattern) -> Operation:
    """Return what every garment with a hem is asked, once it is closed."""
    hangs = bool(made_so(pattern, HUNG_HEM))
    turned = [
        word
        for kind, word in TURNED.items()
        if of_kind(pattern, kind) and not (hangs and kind is SeamKind.HEM)
    ]
    bands = [word for kind, word in BANDS.items() if of_kind(pattern, kind)]
    hung = " The hem is marked once it has hung." if hangs else ""
    do = f"Try it on before {_before(bands, hems=hangs or bool(turned))}{_look(turned, bands)}."
    return Operation(TRY_ON, "Try it on", (do + hung,), Sort.TEST, Stage.HEM)


def _before(bands: list[str], *, hems: bool) -> str:
    if not bands:
        return "anything is hemmed"
    many = len(bands) > 1 or bands[0].endswith("s")
    sewn = f"{' and '.join(bands)} {'are' if many else 'is'} sewn on"
    return f"anything is hemmed and {sewn}" if hems else sewn


def _look(turned: list[str], bands: list[str]) -> str:
    """What is marked and held against it, as far as there is any."""
    acts = []
    if turned:
        verb = "is" if turned == ["hem"] else "are"
        acts.append(f"mark with pins where the {' and '.join(turned)} {verb} to end")
    if bands:
        acts.append(f"hold {' and '.join(bands)} in place to see where the edge will lie")
    return f": {', '.join(acts)}, and {MEND}" if acts else f", and {MEND}"
