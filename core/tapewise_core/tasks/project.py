"""A project: what is being made for a person, and where she stopped."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from msgspec import field
from msgspec.structs import asdict, replace

from tapewise_core.frozen import Frozen
from tapewise_core.tasks.asked_paper import Paper

PAGES = ("start", "measure", "review", "garment", "prove", "save", "sew")
"""The pages, in their order."""

PART_OF = {"table": "measure", "cut": "sew", "stitch": "sew"}
"""Places that are another way to look at a page: the measures on one sheet, one piece to cut, one
step to sew."""

PLACES = (*PAGES, *PART_OF)
"""Where a person can stop."""


class Work(Frozen):
    """One project for one person; ``asked`` maps options to what was typed.

    ``name`` is empty while it is called after its garment, ``owner`` is the person's id, ``cloth``
    what the cloth is called. ``drafts`` says what was written: when, where, the fingerprint on its
    sheets. ``overlap``, ``margin`` and ``roll_width`` are wishes for paper, empty if usual. How
    ``ticked``, ``tried`` and ``sewn`` are kept: ``tasks/ticking.py``. ``page`` and ``measure`` are
    where the person stopped, ``when`` is when.
    """

    person: str
    garment: str = "jersey-top"
    asked: Mapping[str, str] = field(default_factory=lambda: MappingProxyType({}))
    machines: tuple[str, ...] = ("overlocker", "coverstitch")
    folder: str = ""
    formats: tuple[str, ...] = ()
    overlap: str = ""
    margin: str = ""
    roll_width: str = ""
    ticked: tuple[str, ...] = ()
    sewn: str = ""
    notes: str = ""
    page: str = "measure"
    measure: str = ""
    when: str = ""
    name: str = ""
    owner: str = ""
    cloth: str = ""
    tried: str = ""
    drafts: tuple[Mapping[str, str], ...] = ()

    def __eq__(self, other: object) -> bool:
        """Two are alike whoever's id they carry: one that was never kept has none yet."""
        if not isinstance(other, Work):
            return NotImplemented
        return asdict(self) | {"owner": ""} == asdict(other) | {"owner": ""}

    @property
    def title(self) -> str:
        """What the project is called."""
        return self.name or self.garment

    @property
    def paper(self) -> Paper:
        """What is asked of paper."""
        return Paper(self.overlap or None, self.roll_width or None, self.margin or None)

    def with_paper(self, overlap: str, margin: str, roll_width: str) -> Work:
        """Return the work with other wishes for paper, each empty for the usual."""
        return replace(self, overlap=overlap, margin=margin, roll_width=roll_width)

    def with_option(self, key: str, text: str | None) -> Work:
        """Return the work with an option chosen, or back at its usual value if None."""
        from tapewise_core.style.cloth import KNOWN_BY  # not before it is wanted

        kept = {name: value for name, value in self.asked.items() if name != key}
        asked = {**kept, key: text} if text is not None else kept
        return replace(self, asked=asked, tried="" if key in KNOWN_BY else self.tried)

    def toggled(self, item: str) -> Work:
        """Return the work with one thing ticked, or no longer."""
        if item in self.ticked:
            return replace(self, ticked=tuple(one for one in self.ticked if one != item))
        return replace(self, ticked=(*self.ticked, item))
