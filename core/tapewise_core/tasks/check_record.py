"""A check as a machine reads it: what ``check --json`` prints, lengths in cm."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.tasks.people import Check
from tapewise_core.tasks.shapes import NUMBER, TEXT, Key, Shape, by_name, listed, maybe, one_of
from tapewise_core.tasks.values import VALUES, values_json
from tapewise_core.text.told import Reader


class Gain(NamedTuple):
    """What one garment would gain from measuring, the measures it makes no use of, and what those
    taken suggest for it, in sentences."""

    next: str
    unused: tuple[str, ...]
    posture: tuple[str, ...] = ()


class Checked(NamedTuple):
    """A check with whoever reads it, and for one garment what it would gain."""

    found: Check
    reader: Reader
    gain: Gain | None = None


class Found(NamedTuple):
    """A finding with whoever reads its sentence."""

    finding: Finding
    reader: Reader


def _spreads(told: Found) -> float | None:
    return None if told.finding.z is None else round(told.finding.z, 2)


FINDING: Shape[Found] = Shape(
    "something to look at",
    (
        Key(
            "measures",
            listed(TEXT),
            lambda f: list(f.finding.measures),
            "the keys",
        ),
        Key("severity", one_of(*Severity), lambda f: f.finding.severity.value),
        Key(
            "z",
            maybe(NUMBER),
            _spreads,
            "spreads",
        ),
        Key("slip", maybe(TEXT), lambda f: f.finding.slip, "the likely slip of the hand"),
        Key(
            "proposed",
            maybe(by_name(NUMBER)),
            lambda f: dict(f.finding.proposed) if f.finding.proposed else None,
            "values in cm that would mend it",
        ),
        Key("says", TEXT, lambda f: f.reader.spell(f.finding.says), "a sentence for a person"),
    ),
)


def findings_json(findings: Sequence[Finding], reader: Reader) -> list[dict[str, object]]:
    """Return findings as plain values, their sentences in the reader's unit."""
    return [FINDING.of(Found(finding, reader)) for finding in findings]


CHECK: Shape[Checked] = Shape(
    "what “tapewise check --json” prints",
    (
        Key("measures", VALUES, lambda one: values_json(one.found.body.values)),
        Key("missing", listed(TEXT), lambda one: list(one.found.missing), "keys not measured"),
        Key(
            "findings",
            listed(FINDING.kind),
            lambda one: findings_json(one.found.findings, one.reader),
        ),
        Key(
            "refused",
            maybe(TEXT),
            lambda one: one.reader.spell(one.found.refused) or None,
            "why no estimates",
        ),
        Key(
            "for_child",
            listed(TEXT),
            lambda one: [one.reader.spell(caution) for caution in one.found.for_child],
            "what to heed in clothes for a child; empty for a grown person",
        ),
        Key(
            "next",
            TEXT,
            lambda one: one.gain and one.gain.next,
            "with --garment: which missing measure helps it most",
            optional=True,
        ),
        Key(
            "unused",
            listed(TEXT),
            lambda one: None if one.gain is None else list(one.gain.unused),
            "with --garment: the measures it makes no use of",
            optional=True,
        ),
        Key(
            "posture",
            listed(TEXT),
            lambda one: None if one.gain is None else list(one.gain.posture),
            "with --garment: what the measures suggest to ask for, in sentences",
            optional=True,
        ),
    ),
)
