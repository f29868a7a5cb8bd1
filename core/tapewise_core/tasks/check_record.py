"""A check as a machine reads it: what ``check --json`` prints, lengths in cm."""

from __future__ import annotations

from typing import NamedTuple

from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.tasks.people import Check
from tapewise_core.tasks.shapes import NUMBER, TEXT, Key, Shape, by_name, listed, maybe, one_of
from tapewise_core.tasks.values import VALUES, values_json


class Gain(NamedTuple):
    """What one garment would gain from measuring, and the measures it makes no use of."""

    next: str
    unused: tuple[str, ...]


class Checked(NamedTuple):
    """A check, and for one garment what it would gain."""

    found: Check
    gain: Gain | None = None


FINDING: Shape[Finding] = Shape(
    "something to look at",
    (
        Key("measures", listed(TEXT), lambda one: list(one.measures), "keys of what it is about"),
        Key("severity", one_of(*Severity), lambda one: one.severity.value),
        Key("z", maybe(NUMBER), lambda one: None if one.z is None else round(one.z, 2), "spreads"),
        Key("slip", maybe(TEXT), lambda one: one.slip, "the likely slip of the hand"),
        Key(
            "proposed",
            maybe(by_name(NUMBER)),
            lambda one: dict(one.proposed) if one.proposed else None,
            "values in cm that would mend it",
        ),
        Key("says", TEXT, lambda one: one.says, "a sentence for a person"),
    ),
)

CHECK: Shape[Checked] = Shape(
    "what “tapewise check --json” prints",
    (
        Key("measures", VALUES, lambda one: values_json(one.found.body.values)),
        Key("missing", listed(TEXT), lambda one: list(one.found.missing), "keys not measured"),
        Key(
            "findings",
            listed(FINDING.kind),
            lambda one: [FINDING.of(finding) for finding in one.found.findings],
        ),
        Key("refused", maybe(TEXT), lambda one: one.found.refused or None, "why no estimates"),
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
    ),
)
