"""After a fitting: what was seen, the change it asks for, tried on the draft, and kept or not."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from types import MappingProxyType

from tapewise_core.drafting.overlay import overlaid, overlay
from tapewise_core.drafting.piece import COLLAR_PIECE
from tapewise_core.errors import OptionError
from tapewise_core.fitting.change import Measured
from tapewise_core.fitting.folds import Folds as Folds
from tapewise_core.fitting.symptom import Answer as Answer
from tapewise_core.fitting.symptom import Remedy as Remedy
from tapewise_core.fitting.symptom import Symptom as Symptom
from tapewise_core.fitting.symptoms import SYMPTOMS as SYMPTOMS
from tapewise_core.fitting.symptoms import symptom
from tapewise_core.frozen import Frozen
from tapewise_core.garments import shelf
from tapewise_core.paper.drawing import Drawing
from tapewise_core.profiles.fitted import Adjustment
from tapewise_core.profiles.profile import Profile
from tapewise_core.proofs.proof import Proof
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks.adjusting import Table, adjustment_told
from tapewise_core.tasks.adjustments import kept as kept
from tapewise_core.tasks.adjustments import line_of as line_of
from tapewise_core.tasks.adjustments import without as without
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import USUAL_MACHINES, draft
from tapewise_core.tasks.people import body_of
from tapewise_core.tasks.tube import caution as caution
from tapewise_core.tasks.tube import tube_told as tube_told
from tapewise_core.text.told import Told, said
from tapewise_core.text.typed import parse_length, parse_number
from tapewise_core.units import Unit

WORTH = 0.5
"""A length that moved by less is not told [mm]: half of what a tape shows."""


class Seen(Frozen):
    """What was seen and why: ``remedy`` is proposed, None where no pattern helps or this garment
    has no way for any; ``passed`` are changes that it has no way for, each with why."""

    symptom: Symptom
    answer: Answer
    garment: str
    remedy: Remedy | None
    passed: tuple[tuple[str, Told], ...] = ()


def seen(
    profile: Profile,
    garment: str,
    key: str,
    answer: str = "",
    asked: Mapping[str, str] = MappingProxyType({}),
) -> Seen:
    """Return what a symptom and the answer to its question ask of a garment as it was asked for.

    Raises OptionError for a symptom, an answer or a garment that there is not, and for a question
    that was not answered.
    """
    what, page = symptom(key), shelf.garment(garment)
    table = Table(page, page.sees(body_of(profile)[0]), asked, profile.unit)
    if not answer and len(what.answers) > 1:
        ways = "; ".join(f"{one.key}: {one.says}" for one in what.answers)
        raise OptionError(f"{what.question} Answer {ways}.")
    given = what.answer(answer) if answer else what.answers[0]
    passed: list[tuple[str, Told]] = []
    for remedy in given.remedies:
        why = table.lacking(remedy.change)
        if not why:
            return Seen(what, given, garment, remedy, tuple(passed))
        passed.append((remedy.change.plain, why))
    return Seen(what, given, garment, None, tuple(passed))


def read_amount(remedy: Remedy, text: str, unit: Unit) -> float:
    """Return a typed amount [cm, percent or degrees]; a bare length is in ``unit``.

    Raises ReadingError for what is none, OptionError for what is outside the remedy's limits.
    """
    length = remedy.change.measured is Measured.LENGTH
    amount = parse_length(text, unit) / 10 if length else parse_number(text.rstrip("°"))
    if not remedy.low - NEAR <= amount <= remedy.high + NEAR:
        told = remedy.change.amount_told
        words = "At one fitting this is changed by {} to {}, and not by {}."
        raise OptionError(said(words, told(remedy.low), told(remedy.high), told(amount)))
    return round(amount, 2)


NEAR = 0.08
"""What is typed as it was told in inches may be so much beyond a limit [cm]: a sixteenth."""


class Trial(Frozen):
    """A change tried on a garment: the drafts before and after, and what it would be kept as."""

    adjustment: Adjustment
    before: Drafted
    after: Drafted

    @property
    def says(self) -> Told:
        """The change with its amount."""
        return adjustment_told(self.adjustment)

    @property
    def moved(self) -> tuple[tuple[str, float, float], ...]:
        """The finished lengths and girths that it moves, before and after [mm]."""
        old, new = (_sizes(drafted) for drafted in (self.before, self.after))
        names = (name for name in new if name in old and abs(new[name] - old[name]) >= WORTH)
        return tuple((name, old[name], new[name]) for name in names)

    @property
    def failing(self) -> tuple[Proof, ...]:
        """The proofs that held before and fail after."""
        held = {proof.which for proof in self.before.failing}
        return tuple(proof for proof in self.after.failing if proof.which not in held)

    def overlay(self) -> Drawing:
        """Return both drafts laid over each other."""
        who = f"{self.before.garment.title} for {self.before.person}"
        says = self.after.reader.spell(self.says)
        pairs = overlaid(self.before.pattern.pieces, self.after.pattern.pieces)
        return overlay(f"{who}: {says}", pairs)


def _sizes(drafted: Drafted) -> dict[str, float]:
    """Finished lengths and girths [mm], and how long a neckband is."""
    pattern = drafted.pattern
    girths = {girth.name: girth.garment for girth in pattern.girths}
    bands = {
        f"{piece.name} length": piece.length("neckline")
        for piece in pattern.pieces
        if piece.name in ("neckband", COLLAR_PIECE)
    }
    return {**girths, **pattern.lengths, **bands}


def tried(
    profile: Profile,
    found: Seen,
    amount: float | None = None,
    asked: Mapping[str, str] | None = None,
    *,
    day: date | None = None,
    unit: Unit | None = None,
    machines: frozenset[Machine] = USUAL_MACHINES,
) -> Trial:
    """Draft the garment without and with the change that was proposed.

    Without an amount [cm, percent or degrees] the middle of what is usual is tried, or the least
    where that breaks no proof and the middle does. Raises OptionError where nothing is proposed or
    the garment cannot be drawn so, and what a draft raises.
    """
    if found.remedy is None:
        raise OptionError(found.answer.advice or _no_way(found))
    when = day or date.today()

    def drafted(who: Profile) -> Drafted:
        wish = asked or {}
        return draft(who, found.garment, wish, unit=unit, machines=machines, made=when)

    def trial(by: float) -> Trial:
        assert found.remedy is not None
        one = Adjustment(
            what=found.remedy.change.key,
            amount=by,
            date=when,
            garment=found.garment,
            symptom=found.symptom.key,
        )
        return Trial(one, before, _used(drafted(kept(profile, one))))

    before = drafted(profile)
    if amount is not None:
        return trial(amount)
    middle = trial(found.remedy.proposed)
    if not middle.failing:
        return middle
    least = trial(found.remedy.low)
    return middle if least.failing else least


def _used(after: Drafted) -> Drafted:
    """The draft, once it has the last adjustment; raises OptionError with why it has not."""
    last = after.applied[-1]
    if not last.used:
        words = "This {} cannot be drawn so: {}"
        raise OptionError(said(words, after.garment.title.lower(), last.why))
    return after


def _no_way(found: Seen) -> str:
    whys = "; ".join(f"{says}: {''.join(map(str, why))}" for says, why in found.passed)
    return f"Nothing of this garment can be changed for that: {whys}"
