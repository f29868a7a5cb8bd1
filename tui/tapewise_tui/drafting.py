"""Drafting for the pages: the work on the desk becomes a proved pattern, or a sentence."""

from __future__ import annotations

from textual.worker import get_current_worker

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import drafting, verdicts, wizard
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.settings import settings
from tapewise_core.tasks.wizard import Proof
from tapewise_core.tasks.work import Work
from tapewise_core.text.told import Reader, joined
from tapewise_core.units import Unit
from tapewise_tui import trouble, words
from tapewise_tui.desk import Desk

REMEMBERED = 4
"""How many drafts are remembered (our choice): the one kept, and those just tried."""

SURE = 14
"""How wide the column is that says how proofs stand."""


def drafted(desk: Desk) -> Drafted | str:
    """Return the draft of what lies on the desk, or a sentence saying why there is none."""
    return of(desk.profile, desk.work, desk)


def of(profile: Profile, made: Work, desk: Desk) -> Drafted | str:
    """Return the draft of some work, which need not be kept yet; safe in a worker.

    The last ones are remembered, so that no page drafts again what the page before drew.
    """
    wish = (made.garment, dict(made.asked), made.machines, desk.today)
    for whose, what, there in desk.drawn:
        if whose is profile and what == wish and isinstance(there, Drafted):
            return there
    try:
        machines = wizard.machines(made.machines)
        new = drafting.draft(profile, made.garment, made.asked, machines=machines, made=desk.today)
        desk.drawn = ((profile, wish, new), *desk.drawn[: REMEMBERED - 1])
        return new
    except TapewiseError as error:
        return desk.reader.spell(error.told)
    except Exception as error:  # a garment at fault leaves the page usable, to choose another
        return trouble.note(error)


def judged(draft: Drafted, desk: Desk) -> Drafted:
    """Return a draft with its verdict and the mends that were tried; for a worker.

    It is remembered in place of the draft, unless nobody waits for it any more: then it is cut
    short.
    """
    from tapewise_core.tasks.judging import judged as judge  # not before it is wanted: numpy

    worker = get_current_worker()
    sure = judge(draft, lambda: not worker.is_cancelled)
    if worker.is_cancelled:
        return draft
    assert sure.lay  # found once, here, so that the list of what there is to do comes at once
    desk.drawn = tuple(
        (whose, what, sure if there is draft else there) for whose, what, there in desk.drawn
    )
    return sure


def sureness(profile: Profile, made: Work, desk: Desk) -> str:
    """Say in a few words how sure a garment is, nothing where it cannot be drafted yet; safe in a
    worker."""
    from tapewise_core.tasks.how_sure import how_sure

    found = of(profile, made, desk)
    if isinstance(found, str):
        return ""
    try:
        judged = how_sure(found)
    except Exception as error:  # the page says what is open all the same
        return trouble.note(error)
    if judged.failing:
        fail = "fails" if len(judged.failing) == 1 else "fail"
        return f"By now {len(judged.failing)} of {len(judged.proofs)} proofs {fail}."
    sure = min((proof.sure for proof in judged.proofs), default=1.0)
    return f"By now {verdicts.told_sure(sure)}."


def missing(desk: Desk, made: Work) -> tuple[str, ...]:
    """Return the measures that some work cannot be drafted without; safe in a worker.

    None where the garment is at fault, which :func:`of` says.
    """
    try:
        return wizard.missing(desk.profile, made.garment, made.asked)
    except Exception as error:
        trouble.note(error)
        return ()


def assumed(desk: Desk) -> str:
    """Say which machines are taken for granted, as long as nobody said which there are."""
    if settings().machines or desk.work.machines != Work("").machines:
        return ""
    taken = words.listed(desk.work.machines)
    return f"Nobody said yet which machines there are: {taken} are assumed. Page 4 changes that."


def with_mend(made: Work, proof: Proof) -> Work:
    """Return some work with the change that a proof offers."""
    for key, text in (proof.settings or {}).items():
        made = made.with_option(key, wizard.plainly(made.garment, key, text, Unit.CM))
    return made


def says(proof: Proof, unit: Unit) -> str:
    """Spell what a proof says and why nothing mends it, options as the pages name them."""
    return Reader(unit, plain=True).spell(joined((proof.says, proof.against)))


def verdict(draft: Drafted) -> str:
    """Say in one sentence how the proofs stand, and what the first that fails says."""
    if not draft.failing:
        return stands(draft)
    first = draft.failing[0]
    return f"{stands(draft)} {words.sentence(first.name)}: {says(first, draft.unit)}"


def stands(draft: Drafted) -> str:
    """Say in one sentence how the proofs stand, marked where something wants attention."""
    mark = "! " if draft.failing else "? " if draft.uncertain else ""
    return mark + Reader(draft.unit, plain=True).spell(verdicts.verdict_told(draft))


def given(draft: Drafted, unit: Unit) -> tuple[str, ...]:
    """Return what was asked and given at the garment's levels, in a unit."""
    return wizard.given(draft.pattern, unit)


def proof_lines(draft: Drafted, most: int = 8) -> str:
    """Return a line for each of the first proofs, failing ones before the others."""
    proofs = verdicts.in_order(draft.proofs)[:most]
    return "\n".join(f"{_stands(one)}  {says(one, draft.unit)}" for one in proofs)


def _stands(proof: Proof) -> str:
    """How a proof stands, in a column of its own."""
    stands = verdicts.outcome(proof)
    mark = {"fails": "! ", "uncertain": "? "}.get(stands, "")
    return f"{mark}{stands}".removesuffix(" sure").ljust(SURE)


def mend_words(proof: Proof, unit: Unit) -> str:
    """Spell the changes that mend a proof, lengths in the reader's unit; nothing without a mend."""
    spell, changes = Reader(unit).spell, proof.mend.changes if proof.mend else ()
    return words.listed([f"{one.key.replace('-', ' ')} {spell(one.after)}" for one in changes])
