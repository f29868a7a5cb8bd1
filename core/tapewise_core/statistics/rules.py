"""The trade's rules of thumb for a measure that was not taken: common practice, all of them.

They stand beside an estimate so that a person can compare. How far off each is on open data is
printed by ``python -m tapewise_core.statistics.proving``.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from tapewise_core.measures.body import WaistSite


@dataclass(frozen=True)
class Rule:
    """One rule: what it gives, from which measures, and in which words.

    ``midway`` says that it means a waist midway between narrowest and navel.
    """

    key: str
    text: str
    needs: tuple[str, ...]
    value: Callable[[Mapping[str, float]], float]
    midway: bool = False


def _hip_depth(body: Mapping[str, float]) -> float:
    """18 for a short person, 22 for a tall one, 20 for all between [cm]."""
    return 18.0 if body["height"] < 158 else 22.0 if body["height"] > 172 else 20.0


RULES = (
    Rule("back_waist_length", "height ÷ 4", ("height",), lambda b: b["height"] / 4, midway=True),
    Rule("back_waist_length", "40 cm for most", (), lambda _: 40.0, midway=True),
    Rule("hip_depth", "18, 20 or 22 cm by height", ("height",), _hip_depth, midway=True),
    Rule("hip_depth", "20 cm for most", (), lambda _: 20.0, midway=True),
    Rule(
        "armscye_depth",
        "half of the nape to waist",
        ("back_waist_length",),
        lambda b: b["back_waist_length"] / 2,
    ),
    Rule("armscye_depth", "height ÷ 8", ("height",), lambda b: b["height"] / 8),
    Rule("armscye_depth", "20 cm for most", (), lambda _: 20.0),
    Rule("arm_length", "a third of the height", ("height",), lambda b: b["height"] * 0.33),
    Rule("arm_length", "58 cm for most", (), lambda _: 58.0),
    Rule("high_bust", "bust − 5 cm", ("bust",), lambda b: b["bust"] - 5),
    Rule("under_bust", "bust − 14 cm", ("bust",), lambda b: b["bust"] - 14),
    Rule("bust", "hip − 5 cm", ("hip",), lambda b: b["hip"] - 5),
    Rule("hip", "bust + 5 cm", ("bust",), lambda b: b["bust"] + 5),
    Rule("waist", "hip − 25 cm", ("hip",), lambda b: b["hip"] - 25),
    Rule("waist", "bust − 20 cm", ("bust",), lambda b: b["bust"] - 20),
    Rule("neck", "37 cm for most", (), lambda _: 37.0),
    Rule("upper_arm", "bust ÷ 3 − 2 cm", ("bust",), lambda b: b["bust"] / 3 - 2),
    Rule("wrist", "16 cm for most", (), lambda _: 16.0),
    Rule("head", "56 cm for most", (), lambda _: 56.0),
    Rule("shoulder_length", "12.5 cm for most", (), lambda _: 12.5),
    Rule("across_back", "bust ÷ 4 + 11 cm", ("bust",), lambda b: b["bust"] / 4 + 11),
    Rule("across_back", "35 cm for most", (), lambda _: 35.0),
    Rule("neck_to_bust_point", "bust ÷ 4 + 4 cm", ("bust",), lambda b: b["bust"] / 4 + 4),
    Rule("bust_span", "bust ÷ 5", ("bust",), lambda b: b["bust"] / 5),
    Rule(
        "front_waist_length",
        "nape to waist + 4 cm",
        ("back_waist_length",),
        lambda b: b["back_waist_length"] + 4,
    ),
    Rule("waist_to_knee", "58 cm for most", (), lambda _: 58.0, midway=True),
    Rule("waist_to_floor", "⅝ of the height", ("height",), lambda b: b["height"] * 5 / 8),
    Rule("nape_to_floor", "⁶⁄₇ of the height", ("height",), lambda b: b["height"] * 6 / 7),
)
"""The first that can be worked out is the one told.

Left out, because the open data show them far off: neck as two wrists (−4.4 cm), waist as two
necks, and height ÷ 10 + 4 as a waist depth (16 to 20 cm too short).
"""


def rule_for(key: str, known: Mapping[str, float], site: WaistSite) -> tuple[float, str] | None:
    """Return a rule's value [cm] and its words, or None where the trade has none that fits."""
    for rule in RULES:
        if rule.key == key and all(need in known for need in rule.needs):
            elsewhere = rule.midway and site in (WaistSite.NARROWEST, WaistSite.NAVEL)
            note = ", which means a waist midway between narrowest and navel" if elsewhere else ""
            return rule.value(known), rule.text + note
    return None
