"""Proofs as a table for people."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.paper.document import Table
from tapewise_core.proofs.proof import Proof
from tapewise_core.text.told import Reader


def proof_table(proofs: Sequence[Proof], reader: Reader) -> Table:
    """Return the proofs as a table, failing ones first."""
    ordered = sorted(proofs, key=lambda proof: proof.holds)
    rows = tuple(
        (proof.name, "holds" if proof.holds else "FAILS", reader.spell(proof.says))
        for proof in ordered
    )
    return Table(("proof", "outcome", "what it says"), rows)
