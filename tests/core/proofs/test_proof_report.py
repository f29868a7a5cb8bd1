"""Proofs as a table."""

from __future__ import annotations

from tapewise_core.proofs.proof import Proof, ProofId
from tapewise_core.proofs.report import proof_table
from tapewise_core.text.told import Reader, said
from tapewise_core.units import Unit, mm


def test_failing_proofs_stand_on_top_in_the_readers_unit() -> None:
    """Then the uncertain, otherwise in their order."""
    says = said("It is {} off.", mm(25.4))
    proofs = [
        Proof(ProofId.OUTLINE, "back", 0.0, 0.0, "1", True, says),
        Proof(ProofId.HEAD, "", 1.0, 2.0, "cm", False, says),
        Proof(ProofId.OUTLINE, "front", 0.0, 0.0, "1", True, says, sure=0.9),
        Proof(ProofId.BUST, "", 0.0, 0.3, "cm", True, says, sure=0.79),
    ]
    table = proof_table(proofs, Reader(Unit.IN))
    assert table.head == ("proof", "outcome", "what it says")
    assert table.rows == (
        ("head through the neck", "FAILS", "It is 1 in off."),
        ("bust as asked", "UNCERTAIN, 7 in 10 sure", "It is 1 in off."),
        ("back outline", "holds", "It is 1 in off."),
        ("front outline", "holds, 9 in 10 sure", "It is 1 in off."),
    )
