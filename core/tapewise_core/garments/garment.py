"""What a garment page offers to the rest of the house."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from msgspec import field

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told


class Garment(Frozen, kw_only=True):
    """One garment: what it needs, what may be chosen, and how it is drafted.

    ``needs`` are the measures it cannot be drafted without, ``helps`` those
    that make it fit better; no other measure is used. ``agree`` returns a
    sentence for every pair of values that disagree; ``idle`` names measures that
    a style makes no use of, ``measured_only`` those that are of no use estimated.
    ``moves`` says how many cm
    the garment moves for each cm of a measure, where an estimate's uncertainty
    matters, with the place in words. ``covers`` are the proofs it must answer for: they may
    be silent only because of a style, or of a measure that is not known. ``sources`` are the
    publications that its page, block and parts rest on, by their keys in
    :mod:`tapewise_core.sources`, ``apart`` those of them that a style does not rest on.
    ``fitted`` are the options that only a fitting sets.
    """

    name: str
    title: str
    says: str
    needs: tuple[str, ...]
    helps: tuple[str, ...]
    options: Options
    agree: Callable[[Body, Style], tuple[Told, ...]]
    draft: Callable[[Body, Style], Pattern]
    covers: frozenset[ProofId]
    measured_only: tuple[str, ...] = ()
    idle: Callable[[Style], tuple[str, ...]] = lambda style: ()
    moves: Mapping[str, tuple[float, str]] = field(default_factory=dict)
    sources: tuple[str, ...] = ()
    fitted: Options = field(default_factory=Options)
    apart: Callable[[Style], tuple[str, ...]] = lambda style: ()

    @property
    def cited(self) -> tuple[str, ...]:
        """The keys of everything that the garment and its options rest on."""
        return tuple(dict.fromkeys((*self.sources, *(option.source for option in self.options))))

    @property
    def estimates(self) -> tuple[str, ...]:
        """The measures that are of use estimated, too."""
        return tuple(key for key in (*self.needs, *self.helps) if key not in self.measured_only)

    def sees(self, body: Body) -> Body:
        """Return what the garment may know of a body: the measures it declares, no others."""
        known = [key for key in (*self.needs, *self.helps) if self._of_use(key, body)]
        return body.only(tuple(known))

    def _of_use(self, key: str, body: Body) -> bool:
        return key not in self.measured_only or body.has(key)
