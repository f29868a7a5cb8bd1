"""The proofs of a draft as the record keeps them: each one, those that are silent, the verdict."""

from __future__ import annotations

from typing import NamedTuple

from tapewise_core.proofs.proof import Proof, ProofId, Silent
from tapewise_core.proofs.verdict import Verdict
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.judging import judged
from tapewise_core.tasks.shapes import (
    NUMBER,
    TEXT,
    YES_OR_NO,
    JsonType,
    Key,
    Shape,
    by_name,
    maybe,
    one_of,
)
from tapewise_core.text.told import Reader

SHARE: JsonType = {"type": "number", "minimum": 0, "maximum": 1}
"""A share of bodies."""


class Proved(NamedTuple):
    """A proof with whoever reads its sentence."""

    proof: Proof
    reader: Reader


PROOF: Shape[Proved] = Shape(
    "what was proved before cutting",
    (
        Key("id", one_of(*ProofId), lambda told: told.proof.id.value, "what kind of proof"),
        Key("of", TEXT, lambda told: told.proof.of, "which side or seam, or nothing"),
        Key("name", TEXT, lambda told: told.proof.name),
        Key("value", NUMBER, lambda told: told.proof.value),
        Key("limit", NUMBER, lambda told: told.proof.limit),
        Key("unit", TEXT, lambda told: told.proof.unit, "of value and limit; 1 for a bare number"),
        Key("holds", YES_OR_NO, lambda told: told.proof.holds),
        Key(
            "sure",
            SHARE,
            lambda told: round(told.proof.sure, 3),
            "the share of the bodies that estimates leave open for which it holds; uncertain "
            "where it holds and this is under 0.8",
        ),
        Key("says", TEXT, lambda told: told.reader.spell(told.proof.told), "for a person"),
        Key(
            "mend",
            maybe(by_name(TEXT)),
            lambda told: told.proof.settings,
            "options and the values to type that were tried and make it hold",
        ),
    ),
)


class Stands(NamedTuple):
    """A verdict with whoever reads its sentence."""

    verdict: Verdict
    reader: Reader


VERDICT: Shape[Stands] = Shape(
    "how all proofs stand",
    (
        Key("holds", YES_OR_NO, lambda told: told.verdict.holds, "every proof, as estimated"),
        Key("sure", SHARE, lambda told: round(told.verdict.sure, 3), "of the least sure proof"),
        Key("says", TEXT, lambda told: told.reader.spell(told.verdict.says), "a sentence"),
        Key(
            "helps_most",
            maybe(TEXT),
            lambda told: told.verdict.helps_most,
            "the measure whose taking would make the proofs surest",
        ),
    ),
)


class Unsaid(NamedTuple):
    """A silent proof with whoever reads its reason."""

    silent: Silent
    reader: Reader


SILENT: Shape[Unsaid] = Shape(
    "a proof that has nothing to say about this draft",
    (
        Key("id", one_of(*ProofId), lambda told: told.silent.id.value),
        Key("reason", TEXT, lambda told: told.reader.spell(told.silent.reason)),
    ),
)


def proofs_json(drafted: Drafted) -> list[dict[str, object]]:
    """Return a draft's proofs, their sentences in its reader's unit."""
    reader = drafted.reader
    return [PROOF.of(Proved(proof, reader)) for proof in drafted.proofs]


def verdict_json(drafted: Drafted) -> dict[str, object]:
    """Return a draft's verdict, which is asked for if it was not yet."""
    found = judged(drafted)
    assert found.verdict is not None
    return VERDICT.of(Stands(found.verdict, found.reader))


def silent_json(drafted: Drafted) -> list[dict[str, object]]:
    """Return the proofs that are silent, each with its reason."""
    reader = drafted.reader
    return [SILENT.of(Unsaid(silent, reader)) for silent in drafted.silent]
