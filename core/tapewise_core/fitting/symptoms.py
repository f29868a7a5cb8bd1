"""All that may be seen at a fitting, from the shoulders down."""

from __future__ import annotations

from tapewise_core.errors import OptionError
from tapewise_core.fitting.at_body import BODY
from tapewise_core.fitting.at_neck import NECK
from tapewise_core.fitting.at_shoulder import SHOULDERS
from tapewise_core.fitting.symptom import Symptom, by_key
from tapewise_core.text.near import near_words

SYMPTOMS = by_key((*NECK, *SHOULDERS, *BODY))
"""Every symptom by its key, in the order in which they are looked for."""


def symptom(key: str) -> Symptom:
    """Return a symptom; raises OptionError for one there is not."""
    if key not in SYMPTOMS:
        raise OptionError(f"There is no symptom “{key}”; {near_words(key, tuple(SYMPTOMS))}")
    return SYMPTOMS[key]
