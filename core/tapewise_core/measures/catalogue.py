"""The one table of measures: what each is, how to take it alone, and what is believable.

Definitions follow [iso8559-1] in our own words and from memory, not from
a copy; where ours differs, as at the waist and the upper arm, the row says so.

``agree`` and ``third`` [cm] are common practice for a person alone: 1.5 and 3
on large girths, 0.6 and 1.2 on small ones, 1 and 2 on lengths.

``low`` to ``high`` [cm] reaches past every adult in four open tables: ANSUR I
(US Army 1988, 2,208 women and 1,774 men), ANSUR II (2012, 1,986 and 4,082) and
NHANES 2017-2020 (US civilians: height, upper arm, waist and hip, among them
people far above a body mass index of 45). Soldiers hold few very full bodies,
so what only they were measured for has been widened further by judgement, and
no row is narrower than the data plus a twentieth. ``front_waist_length`` is in
none of the tables; its limits are the back's with a full bust added. Nor are
``across_front`` and ``high_hip``: their limits are those of ``across_back`` and of
waist and hip, set by judgement.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from types import MappingProxyType

from tapewise_core.errors import ReadingError
from tapewise_core.measures.catalogue_arm import ARM
from tapewise_core.measures.catalogue_head import HEAD_AND_NECK
from tapewise_core.measures.catalogue_lengths import TRUNK_LENGTHS
from tapewise_core.measures.catalogue_long import LONG_LENGTHS
from tapewise_core.measures.catalogue_round import TRUNK_ROUND
from tapewise_core.measures.measure import Measure

CATALOGUE: tuple[Measure, ...] = HEAD_AND_NECK + TRUNK_ROUND + ARM + TRUNK_LENGTHS + LONG_LENGTHS
"""All measures, in the order in which they are best taken."""

BY_KEY: Mapping[str, Measure] = MappingProxyType({row.key: row for row in CATALOGUE})
"""Every measure by its name in files."""

NAMES: Mapping[str, str] = MappingProxyType({row.key: row.name for row in CATALOGUE})
"""The trade's name of every measure, by its name in files."""

ALSO: Mapping[str, str] = MappingProxyType({"bust": "chest"})
"""What else the trade calls a measure: men's wear the bust."""

_AS_KEYS = {re.sub(r"[ -]", "_", row.name): row.key for row in CATALOGUE} | {
    name: key for key, name in ALSO.items()
}
"""Every measure's key by its trade's names."""


def measure(key: str) -> Measure:
    """Return the measure of that name in files or in the trade.

    Raises ReadingError naming the near ones if there is none.

    >>> measure("hip").name, measure("Back waist length").key, measure("hip-depth").key
    ('hip', 'back_waist_length', 'hip_depth')
    >>> measure("Chest").key, measure("neck base").key
    ('bust', 'neck')
    """
    wanted = re.sub(r"[\s-]+", "_", key.strip().lower())
    wanted = _AS_KEYS.get(wanted, wanted)
    if wanted in BY_KEY:
        return BY_KEY[wanted]
    raise ReadingError(f"“{key}” is not a measure; {near_measures(wanted)}.")


def near_measures(key: str) -> str:
    """Spell the measures whose names come near, or all, as the end of a sentence."""
    from difflib import get_close_matches

    near = get_close_matches(key, BY_KEY, n=3, cutoff=0.5)
    return f"did you mean {' or '.join(near)}" if near else f"there are {', '.join(BY_KEY)}"
