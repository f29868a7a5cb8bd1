"""Widths at a hem that only a first draft can settle: a sleeve's, and a flared dress's."""

from __future__ import annotations

from collections.abc import Sequence

from tapewise_core.style.option import Option
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.liking.fitting import ALIKE, typed
from tapewise_core.tasks.loved.likeness import NEAR, Want, given_of

HEMS = {"sleeve_hem": "sleeve-hem-ease", "hem": "flare"}
"""Where a hem's width is chosen, by the flat measure."""

LENGTHS = ("length", "skirt_length")
"""How far down a garment reaches."""


def hem_settings(wants: tuple[Want, ...], drafted: Drafted) -> dict[str, str]:
    """Return what the hems' options have to be for widths that are wanted, by a first draft.

    A top's hem is none for a dress, which ends elsewhere.
    """
    found: dict[str, str] = {}
    elsewhere = _ends_elsewhere([want for want in wants if want.row.key in LENGTHS], drafted)
    for want in wants:
        if elsewhere and want.row.key == "hem":
            continue
        given = given_of(want.row.key, drafted.pattern, drafted.style)
        option = _option(want.row.key, drafted)
        if given is None or option is None or abs(given - want.here) <= NEAR:
            continue
        amount = _amount(want, drafted, given)
        if amount is not None:
            found[option.key] = typed(option, amount)
    return found


def _ends_elsewhere(lengths: Sequence[Want], drafted: Drafted) -> bool:
    """Whether a length came out as another garment's, or none of those known is one of this."""
    found = [(given_of(one.row.key, drafted.pattern, drafted.style), one.here) for one in lengths]
    alike = [1 / ALIKE <= given / here <= ALIKE for given, here in found if given is not None]
    return bool(lengths) and not (alike and all(alike))


def _option(key: str, drafted: Drafted) -> Option | None:
    name = HEMS.get(key, "")
    options = drafted.garment.options
    return options[name] if name in options and not drafted.style.asked(name) else None


def _amount(want: Want, drafted: Drafted, given: float) -> float | None:
    """How wide the option has to be [mm]; a flare goes out at four quarters."""
    if want.row.key == "hem":
        return drafted.style.length("flare").mm + (want.here - given) / 4
    for level in drafted.pattern.facts.levels:
        if level.name == "sleeve_hem":
            return want.here - level.body
    return None
