"""Changes of two windows to one project, put together choice by choice."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from msgspec.structs import replace

from tapewise_core.profiles.merging import grown
from tapewise_core.tasks.project import Work

_PLACE = ("page", "measure", "when")
"""Where a person stopped: the window that writes last says."""


def merged(base: Work, mine: Work, theirs: Work) -> Work:
    """Return what is on file (theirs) with everything I changed since ``base``.

    Options and ticks are taken one by one, drafts all; of the rest, what I changed counts.

    >>> plain = Work("Ada", asked={"hem": "split"})
    >>> both = merged(plain, plain.with_option("ease", "4 cm"), plain.toggled("Cut"))
    >>> dict(both.asked), both.ticked
    ({'hem': 'split', 'ease': '4 cm'}, ('Cut',))
    """
    changes: dict[str, Any] = {
        name: getattr(mine, name)
        for name in Work.__struct_fields__
        if name in _PLACE or getattr(mine, name) != getattr(base, name)
    }
    changes["asked"] = _options(base.asked, mine.asked, theirs.asked)
    changes["ticked"] = grown(base.ticked, mine.ticked, theirs.ticked)
    changes["drafts"] = grown(base.drafts, mine.drafts, theirs.drafts)
    return replace(theirs, **changes)


def _options(
    base: Mapping[str, str], mine: Mapping[str, str], theirs: Mapping[str, str]
) -> Mapping[str, str]:
    kept = {k: text for k, text in theirs.items() if k in mine or k not in base}
    own = {k: text for k, text in mine.items() if text != base.get(k)}
    return MappingProxyType({**kept, **own})
