"""A tube of cheap jersey to pull on before good cloth is cut, where estimates decide the fit."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.tasks.drafting import Drafted
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

TUBE = (
    "Before good cloth is cut: {} estimated, so sew a tube of cheap jersey with the same stretch "
    "first, {} round at the bust and as long as from underarm to hip, and pull it on. Where it is "
    "tight or loose, measure again; what it shows is worth more than an estimate."
)


def tube_told(drafted: Drafted) -> Told:
    """Return the advice of a tube test, where estimates decide how a garment fits."""
    guessed = [drafted.body.name(key) for key in drafted.estimated_keys if key in ROUND]
    bust = next((one for one in drafted.pattern.girths if one.name == "bust"), None)
    if not guessed or bust is None:
        return ()
    are = "is" if len(guessed) == 1 else "are"
    return said(TUBE, f"{_listed(guessed)} {are}", mm(bust.garment))


ROUND = ("bust", "high_bust", "under_bust", "waist", "hip", "upper_arm")
"""Measures that a tube of cloth shows."""


def _listed(names: Sequence[str]) -> str:
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"
