"""Mends that were tried: a change of the style is offered only if it was drafted and helps.

It helps if the proof holds then, and no other fails that held before. Tried are, until one does:
the proof's own offer; more or less of one option or two, as little as is enough; what the wearer
asked for, taken back.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from itertools import combinations

from msgspec.structs import replace

from tapewise_core.errors import TapewiseError
from tapewise_core.proofs.mend import Change, Mend
from tapewise_core.proofs.proof import Proof
from tapewise_core.proofs.ways import AGAINST, ways_of
from tapewise_core.tasks.changing import Turn, at, taken_back, turns
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.text.told import OptionKey, Told, joined, said

Settings = Mapping[str, str]
"""Options and what is typed for them."""

SHARES = (1 / 8, 1 / 2, 1.0)
"""How far towards its end an option is moved, until that is enough (our choice)."""

HALVINGS = 3
"""How often the last step is halved, to change no more than needed (our choice)."""

MOST = 40
"""So many drafts are tried for one proof at the most, about a second's work (our choice)."""


Tried = dict[tuple[tuple[str, str], ...], Drafted | None]
"""What was drafted already, by its settings; None where it was refused."""


def mended(drafted: Drafted, wanted: Callable[[], bool] = lambda: True) -> Drafted:
    """Return the same draft, each failing proof with a mend that was tried or why there is none.

    Takes no time where every proof holds; what was tried before stays. Safe in a worker: once it
    is no longer ``wanted``, nothing more is drafted, and what it returns is of no use.
    """
    if all(map(_seen_to, drafted.proofs)):
        return drafted
    known: Tried = {}
    proofs = tuple(
        proof if _seen_to(proof) else _with_mend(Trial(drafted, proof, known, wanted))
        for proof in drafted.proofs
    )
    return replace(drafted, proofs=proofs)


def _seen_to(proof: Proof) -> bool:
    """Whether a proof needs no mend, or one was looked for before."""
    return bool(proof.holds or proof.mend or proof.against)


def _with_mend(trial: Trial) -> Proof:
    found = _found(trial)
    if found is None:
        return replace(trial.proof, against=_against(trial.drafted, trial.proof))
    return replace(trial.proof, mend=trial.mend(found))


def _found(trial: Trial) -> Settings | None:
    """The first change that helps, as small as it may be; what was asked for and is known to
    matter gives way before anything else is changed."""
    drafted = trial.drafted
    matter = {move.key for way in ways_of(trial.proof) for move in way}
    back = taken_back(drafted)
    own = [turn for turn in back if turn.option.key in matter]
    found = _along(trial, [(turn,) for turn in own])
    if found:
        return found
    if trial.proof.offered and trial.helps(trial.proof.offered):
        return trial.proof.offered
    usual = filter(None, (turns(drafted, way) for way in ways_of(trial.proof)))
    return _along(trial, [*usual, *((turn,) for turn in back), *combinations(back, 2)])


def _along(trial: Trial, ways: Sequence[Sequence[Turn]]) -> Settings | None:
    """The least change that helps on the first way that leads anywhere."""
    for way in ways:
        for before, share in zip((0.0, *SHARES), SHARES, strict=False):
            settings = at(way, share)
            if settings and trial.helps(settings):
                return _least(trial, way, before, share)
    return None


def _least(trial: Trial, way: Sequence[Turn], low: float, high: float) -> Settings:
    """The least of a change that helps, between a share that does not and one that does."""
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        settings = at(way, middle)
        if settings and trial.helps(settings):
            high = middle
        else:
            low = middle
    return at(way, high)


class Trial:
    """What is tried for one failing proof, each change once, whichever proof it was drafted for;
    ``left`` is how much more may be drafted."""

    def __init__(
        self,
        drafted: Drafted,
        proof: Proof,
        known: Tried | None = None,
        wanted: Callable[[], bool] = lambda: True,
    ) -> None:
        self.drafted, self.proof, self.left = drafted, proof, MOST
        self.before = {one.which for one in drafted.failing}
        self.known: Tried = {} if known is None else known
        self.wanted = wanted

    def helps(self, settings: Settings) -> bool:
        """Say whether the proof holds with some settings, and no other breaks."""
        again = self._drafted(settings)
        if again is None:
            return False
        failing = {one.which for one in again.failing}
        return self.proof.which not in failing and failing <= self.before

    def _drafted(self, settings: Settings) -> Drafted | None:
        key = tuple(sorted(settings.items()))
        if key not in self.known:
            if self.left <= 0 or not self.wanted():
                return None
            self.left -= 1
            self.known[key] = redrafted(self.drafted, settings)
        return self.known[key]

    def mend(self, settings: Settings) -> Mend:
        """Return settings that help as a mend, with what is said before and after."""
        again = self._drafted(settings)
        assert again is not None
        old, new = self.drafted.style.chosen, again.style.chosen
        changes = tuple(Change(key, old[key].told, new[key].told) for key in settings)
        return Mend(dict(settings), changes, _then(again, self.proof))


def _then(again: Drafted, proof: Proof) -> Told:
    """What a proof says of another draft, or why it has nothing to say there."""
    spoken = [one.says for one in again.proofs if one.which == proof.which]
    silent = [one.reason for one in again.silent if one.id is proof.id]
    return next(iter((*spoken, *silent)), said("what failed is no longer there."))


def redrafted(drafted: Drafted, settings: Settings) -> Drafted | None:
    """Return the same with some options set otherwise, or None if that cannot be drafted."""
    try:
        return draft(
            drafted.profile,
            drafted.garment.name,
            {**drafted.asked, **settings},
            unit=drafted.unit,
            machines=drafted.stitching.machines,
            made=drafted.made,
        )
    except TapewiseError:
        return None


def _against(drafted: Drafted, proof: Proof) -> Told:
    """What body and wish have against each other where nothing that was tried helps."""
    asked = joined([(OptionKey(key),) for key in drafted.asked], ", ")
    wish = said("what was asked for ({})", asked) if asked else said("the usual style")
    body = AGAINST.get(proof.id, "these measures")
    return said("Nothing that was tried mends it: {} and {} do not go together.", body, wish)
