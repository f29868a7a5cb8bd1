"""The option of a seam at the centre of back and front."""

from __future__ import annotations

from tapewise_core.parts.centre_style import CentreSeams
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.text.told import said

CENTRE = Options.of(
    Option(
        key="centre-seams",
        group=Group.CLOTH,
        says=said(
            "a seam at the centre instead of a fold, for a cloth that is narrow or short: as "
            "needed where a piece would be wider than the cloth, none, at the back, or at back "
            "and front"
        ),
        kind=ValueKind.CHOICE,
        default=CentreSeams.AS_NEEDED,
        choices=tuple(CentreSeams),
    ),
)
"""Common practice where a piece opened out is wider than the cloth."""
