"""Asked against given: as wide as was asked for at every level, or held back with its reason."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import NamedTuple

from tapewise_core.drafting.facts import Level
from tapewise_core.proofs.case import Answer, Case, Prover
from tapewise_core.proofs.limits import in_cm, keeps_to
from tapewise_core.proofs.proof import Proof, ProofId, Silent, lacking
from tapewise_core.text.told import LineName, Told, ended, said
from tapewise_core.units import mm

WORTH_A_WORD = 3.0
"""Asked and given may differ by so much without a reason [mm] (common practice)."""

HALF_A_FIT = 20.0
"""How far the ease at a level may come out from what was drafted before it is another fit than
the one asked for [mm]: half of the 4 cm from one fit to the next (our choice)."""


class Asked(NamedTuple):
    """A level that is asked for: its name in the facts, the option of its ease, and why a garment
    that has both may not reach it."""

    level: str
    option: str
    beyond: str


SKIRTED = "A full skirt is as wide at the hip as its cut makes it."

ASKED: Mapping[ProofId, Asked] = MappingProxyType(
    {
        ProofId.BUST: Asked("bust", "bust-ease", "The sleeves reach down to the bust line."),
        ProofId.WAIST_LEVEL: Asked("waist", "waist-ease", "It ends above the waist."),
        ProofId.HIP: Asked("hip", "hip-ease", "It ends above the hip."),
        ProofId.UPPER_ARM: Asked(
            "upper_arm", "sleeve-ease", "The sleeves end above the upper arm, at the armhole."
        ),
        ProofId.SLEEVE_HEM: Asked(
            "sleeve_hem", "sleeve-hem-ease", "The sleeves have no hem round the arm."
        ),
        ProofId.HEM: Asked("hem", "vent", "A circle's hem is as wide as its cut makes it."),
    }
)
"""Every level that is asked for, from the top down."""


def as_asked(about: ProofId) -> Prover:
    """Return the proof of one level; a skirt sewn on at the waist passes the hip as its own cut
    has it, and nothing is asked for there."""
    asked = ASKED[about]

    def prove(case: Case) -> Answer:
        levels = [level for level in case.facts.levels if level.asked is not None]
        found = tuple(_given(about, level) for level in levels if level.name == asked.level)
        if found:
            return found
        if not levels or not case.offers(asked.option):
            return lacking(about, f"{LineName(asked.level)} to be compared with what was asked")
        skirted = about is ProofId.HIP and case.facts.waist is not None
        return Silent(about, said(SKIRTED if skirted else asked.beyond))

    return prove


def _given(about: ProofId, level: Level) -> Proof:
    assert level.asked is not None
    off = abs(level.given - level.asked)
    near = keeps_to(off, WORTH_A_WORD)
    holds = near or level.held_back is not None
    says = _near(level) if near else _apart(level, level.asked)
    return in_cm(about, "", off, WORTH_A_WORD, holds, says)


def _near(level: Level) -> Told:
    what, ease = LineName(level.name), level.given - level.body
    return said(
        "The {} is {} round, as asked: {} of ease on {}.", what, mm(level.given), mm(ease),
        mm(level.body),
    )  # fmt: skip


def _apart(level: Level, asked: float) -> Told:
    what, off = LineName(level.name), level.given - asked
    way = "wider" if off > 0 else "narrower"
    says = said("The {} is {} round, {} {} than asked", what, mm(level.given), mm(abs(off)), way)
    if level.held_back is None:
        return (*says, ", and nothing says why.")
    return ended((*says, ": ", *level.held_back))
