"""What a person should look at: not an error, but a value that deserves a second reading."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.text.told import Told


class Severity(StrEnum):
    """How loudly a finding speaks; neither ever blocks."""

    HINT = "hint"
    WARNING = "warning"


class Finding(Frozen):
    """One remark on one measure or several.

    ``z`` is the distance from what the other measures suggest, in spreads;
    ``slip`` names the likely slip of the hand and ``proposed`` holds the values
    [cm] that would mend it. ``says`` is what a person reads, not yet spelt.
    """

    measures: tuple[str, ...]
    severity: Severity
    says: Told
    z: float | None = None
    slip: str | None = None
    proposed: Mapping[str, float] | None = None
