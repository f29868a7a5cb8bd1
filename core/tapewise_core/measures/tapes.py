"""The tape's path on the figure for every measure of the catalogue."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from tapewise_core.measures.tape import Tape
from tapewise_core.measures.tapes_long import LONG
from tapewise_core.measures.tapes_round import ROUND

TAPES: Mapping[str, Tape] = MappingProxyType(ROUND | LONG)
"""Where the tape goes, by the measure's name in files."""
