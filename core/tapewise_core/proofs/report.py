"""Proofs as a table for people."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.paper.document import Table
from tapewise_core.proofs.proof import Proof
from tapewise_core.proofs.verdict import in_ten, outcome
from tapewise_core.text.told import Reader


def proof_table(proofs: Sequence[Proof], reader: Reader) -> Table:
    """Return the proofs as a table, failing ones first, then the uncertain."""
    rows = tuple(
        (proof.name, _outcome(proof), reader.spell(proof.told)) for proof in in_order(proofs)
    )
    return Table(("proof", "outcome", "what it says"), rows)


def in_order(proofs: Sequence[Proof]) -> list[Proof]:
    """Return proofs as they want attention: failing, then uncertain, then those that hold."""
    return sorted(proofs, key=lambda proof: (proof.holds, not proof.uncertain))


def _outcome(proof: Proof) -> str:
    """How a proof stands, loud where it wants attention."""
    stands = outcome(proof)
    if proof.uncertain:
        return f"{stands.upper()}, {in_ten(proof.sure)} sure"
    return stands if proof.holds else stands.upper()
