"""What to heed when trying on, and a tube of cheap jersey to pull on where estimates decide."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.people import for_child
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

TUBE = (
    "Before good cloth is cut: {} estimated, so sew a tube of cheap jersey with the same stretch "
    "first, {} round at the bust and as long as from underarm to hip, and pull it on. Where it is "
    "tight or loose, measure again; what it shows is worth more than an estimate."
)


PINS = "Mind the pins as it goes on and comes off; basting holds as well."
CHILD = "On a child baste, and leave no pin in it."
"""What to heed at a fitting."""


def caution(profile: Profile) -> str:
    """Return what to heed while trying on, for a grown person or for a child."""
    return CHILD if for_child(profile) else PINS


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
