"""The trade's rules of thumb for a measure that was not taken: common practice, all of them.

They stand beside an estimate so that a person can compare. How far off each is on open data is
printed by ``python -m tapewise_core.statistics.proving``.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite

WOMEN, MEN = Reference.WOMEN, Reference.MEN
Known = Mapping[str, float]


class Rule(Frozen):
    """One rule: what it gives [cm], from which measures, for whom, and in which words.

    ``midway`` says that it means a waist midway between the narrowest place and the navel.
    """

    key: str
    text: str
    needs: tuple[str, ...]
    value: Callable[[Known], float]
    who: Reference | None = None
    midway: bool = False


def _times(
    key: str, source: str, factor: float, text: str, add: float = 0.0,
    who: Reference | None = None, midway: bool = False,
) -> Rule:  # fmt: skip
    """A multiple of one other measure, with something added [cm]."""
    return Rule(key, text, (source,), lambda known: known[source] * factor + add, who, midway)


def _flat(key: str, cm: float, who: Reference | None = None, midway: bool = False) -> Rule:
    """The same for everybody [cm]."""
    return Rule(key, f"{cm:g} cm for most", (), lambda _: cm, who, midway)


def _by_height(known: Known) -> float:
    """18 for a short person, 22 for a tall one, 20 for all between [cm]."""
    return 18.0 if known["height"] < 158 else 22.0 if known["height"] > 172 else 20.0


RULES = (
    _times("back_waist_length", "height", 1 / 4, "height ÷ 4", midway=True),
    _flat("back_waist_length", 40, WOMEN, midway=True),
    _flat("back_waist_length", 44, MEN, midway=True),
    Rule("hip_depth", "18, 20 or 22 cm by height", ("height",), _by_height, midway=True),
    _flat("hip_depth", 20, midway=True),
    _times("armscye_depth", "back_waist_length", 1 / 2, "half of nape to waist"),
    _times("armscye_depth", "height", 1 / 8, "height ÷ 8"),
    _flat("armscye_depth", 20),
    _flat("armscye_depth", 21),
    _times("arm_length", "height", 0.33, "a third of the height"),
    _times("high_bust", "bust", 1, "bust − 5 cm", -5, WOMEN),
    _times("under_bust", "bust", 1, "bust − 14 cm", -14, WOMEN),
    _times("bust", "hip", 1, "hip − 5 cm", -5, WOMEN),
    _times("hip", "bust", 1, "bust + 5 cm", 5, WOMEN),
    _times("waist", "hip", 1, "hip − 25 cm", -25, WOMEN),
    _times("waist", "bust", 1, "bust − 20 cm", -20, WOMEN),
    _times("waist", "bust", 1, "bust − 15 cm", -15, MEN),
    _flat("neck", 37, WOMEN),
    _flat("neck", 40, MEN),
    _flat("wrist", 16, WOMEN),
    _flat("wrist", 17.5, MEN),
    _flat("head", 56, WOMEN),
    _flat("head", 58, MEN),
    _flat("shoulder_length", 12.5, WOMEN),
    _flat("shoulder_length", 16, MEN),
    _times("across_back", "bust", 1 / 4, "bust ÷ 4 + 11 cm", 11, WOMEN),
    _times("neck_to_bust_point", "bust", 1 / 4, "bust ÷ 4 + 4 cm", 4, WOMEN),
    _times("bust_span", "bust", 1 / 5, "bust ÷ 5", who=WOMEN),
    _flat("waist_to_knee", 58, WOMEN, midway=True),
    _times("waist_to_floor", "height", 5 / 8, "5/8 of the height", midway=True),
)
"""The first that can be worked out is the one told.

Left out, because the open data show them far off: neck as two wrists (−4.4 cm), waist as two
necks, and height ÷ 10 + 4 as a waist depth (16 to 20 cm too short).
"""


def rules_for(key: str, known: Known, reference: Reference) -> Iterator[Rule]:
    """Yield the rules that can be worked out for a measure from what is known."""
    for rule in RULES:
        is_meant = rule.who is None or rule.who is reference
        if rule.key == key and is_meant and all(need in known for need in rule.needs):
            yield rule


def rule_of_thumb(
    key: str, known: Known, reference: Reference, site: WaistSite
) -> tuple[float, str] | None:
    """Return a rule's value [cm] and its words, or None where the trade has none that fits."""
    for rule in rules_for(key, known, reference):
        elsewhere = rule.midway and site in (WaistSite.NARROWEST, WaistSite.NAVEL)
        note = " (which means a waist midway between narrowest and navel)" if elsewhere else ""
        return rule.value(known), rule.text + note
    return None
