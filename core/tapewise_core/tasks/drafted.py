"""A draft, and what can be asked of it: measures, label, fingerprint, sources, cut pieces, lay."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from functools import cached_property

from msgspec import field
from msgspec.structs import replace

from tapewise_core import __version__
from tapewise_core.drafting.by_hand import by_hand
from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.labels import LabelHead
from tapewise_core.drafting.larger import as_cut
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.frozen import Frozen
from tapewise_core.garments.garment import Garment
from tapewise_core.lay.lay import Lay, lay_of
from tapewise_core.measures.body import Body
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.ledger import ledger_lines
from tapewise_core.proofs.proof import Proof, Silent
from tapewise_core.proofs.verdict import Verdict
from tapewise_core.sewing.machines import Stitching
from tapewise_core.sources import ESTIMATES, citations
from tapewise_core.style.style import Style
from tapewise_core.tasks.adjusting import Applied, used_told
from tapewise_core.tasks.asked_paper import AS_DRAFTED, Shown
from tapewise_core.tasks.fingerprint import fingerprint, looks
from tapewise_core.tasks.guesses import Effect, effects
from tapewise_core.tasks.loved.likeness import Likeness
from tapewise_core.tasks.people import estimated_words
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit


class Drafted(Frozen, dict=True):
    """A garment drafted and proved for one person; what is looked up of it comes when asked for.

    ``asked`` is what was typed for options. ``verdict`` is None, every proof 1 ``sure`` and no
    mend tried until :func:`tapewise_core.tasks.judging.judged` was asked.
    """

    garment: Garment
    person: str
    unit: Unit
    made: date
    body: Body
    style: Style
    cloth: Cloth
    stitching: Stitching
    pattern: Pattern
    proofs: tuple[Proof, ...]
    silent: tuple[Silent, ...]
    profile: Profile
    asked: Mapping[str, str]
    verdict: Verdict | None = None
    like: Likeness | None = None
    """How it compares with the garment that fits it was drafted like, if it was."""
    shown: Shown = AS_DRAFTED
    """How the pieces are on the sheets; what is drafted is the same."""
    applied: tuple[Applied, ...] = ()
    """What fittings taught about her, and whether this draft has a use for it."""
    moved: Mapping[str, float] = field(default_factory=dict)
    """By how much that moved each option beyond what was asked or is usual."""
    closer: Lay | None = None
    """A lay that was found before: looked for at length, or for a reader of the other unit."""

    def on_sheets(self, shown: Shown) -> Drafted:
        """Return the draft as its sheets tell of it: itself, with all that was looked up of it, if
        it does so already."""
        return self if shown == self.shown else replace(self, shown=shown)

    def told_in(self, unit: Unit) -> Drafted:
        """Return the same draft for a reader of a unit; its pieces lie on the cloth as they do."""
        return self if unit is self.unit else replace(self, unit=unit, closer=self.lay)

    @property
    def reader(self) -> Reader:
        """Whoever the draft is told to, in its unit."""
        return Reader(self.unit)

    @property
    def given(self) -> tuple[str, ...]:
        """What was asked and given at its levels, in a few lines."""
        return ledger_lines(self.pattern.facts.levels, self.reader)

    @property
    def failing(self) -> tuple[Proof, ...]:
        """The proofs that do not hold."""
        return tuple(proof for proof in self.proofs if not proof.holds)

    @property
    def uncertain(self) -> tuple[Proof, ...]:
        """The proofs that hold as estimated, and for too few of the bodies that may be."""
        return tuple(proof for proof in self.proofs if proof.uncertain)

    @property
    def used(self) -> tuple[str, ...]:
        """The measures this style makes use of."""
        idle = self.garment.idle(self.style)
        wanted = (*self.garment.needs, *self.garment.helps)
        return tuple(key for key in wanted if key in self.body and key not in idle)

    @property
    def estimated_keys(self) -> tuple[str, ...]:
        """The measures used that were estimated."""
        return tuple(key for key in self.used if not self.body.has(key))

    @cached_property
    def estimated(self) -> tuple[str, ...]:
        """The measures used that were estimated, each with how far off it may be."""
        return estimated_words(self.body, self.estimated_keys, self.unit)

    @cached_property
    def effects(self) -> tuple[Effect, ...]:
        """Where estimates leave the garment uncertain."""
        return effects(self.garment, self.body, self.estimated_keys)

    @cached_property
    def label(self) -> LabelHead:
        """What every label says."""
        return LabelHead(
            self.garment.title,
            self.person,
            self.made.isoformat(),
            __version__,
            self.unit,
            self.estimated,
            self.fingerprint,
            looks(self.style, allowances=self.shown.allowances),
            self.fitted,
        )

    @cached_property
    def fingerprint(self) -> str:
        """Six signs that every sheet of this draft carries and no sheet of another.

        The seams' stretch is left out: it follows from the machines, which change no line.
        """
        own = self.cloth
        larger = () if own.washed else (own.shrinkage_across,)
        cloth = (own.stretch, own.band, own.width, own.shrinkage, own.weight, *larger)
        used = {key: self.body.values[key] for key in self.used}
        drawn = self.garment.name, used, self.style, cloth
        return fingerprint(self.person, *drawn, allowances=self.shown.allowances)

    @property
    def fitted(self) -> tuple[str, ...]:
        """What fittings changed of it, a line for each."""
        return tuple(map(self.reader.spell, used_told(self.applied, self.made)))

    @property
    def sources(self) -> tuple[str, ...]:
        """The publications it rests on, spelt out; an estimate rests on surveys."""
        surveys = ESTIMATES if self.estimated_keys else ()
        apart = self.garment.apart(self.style)
        own = (key for key in self.garment.cited if key not in apart)
        return citations((*own, *surveys))

    @cached_property
    def lay(self) -> Lay:
        """How the pieces lie on the cloth: a lay that was found before, or a usual one."""
        return self.closer or lay_of(self.cut, self.cloth.as_cut)

    @cached_property
    def cut(self) -> Pattern:
        """The pattern as it is cut: larger than it is worn where the cloth shrinks only later."""
        return as_cut(self.pattern, self.cloth)

    @cached_property
    def told(self) -> tuple[Draft, ...]:
        """The drafts with all that a hand is told of them."""
        return tuple(map(by_hand, self.pattern.drafts))
