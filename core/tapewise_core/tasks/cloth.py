"""A draft on its cloth: how much of it to buy, whether it fits, and how long it can be from it."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.lay.buying import Purchase, purchase
from tapewise_core.lay.closer import closer_lay, there_is_a_library
from tapewise_core.lay.lay import Lay, lay_of
from tapewise_core.lay.packing import LONG, Effort
from tapewise_core.parts.centre_seam import is_centre
from tapewise_core.proofs.cloth import on_length
from tapewise_core.proofs.proof import ProofId
from tapewise_core.sewing.cloth_words import cloth_words
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.mending import redrafted
from tapewise_core.text.told import LineName, OptionKey, Told, joined, said
from tapewise_core.units import mm

LONGEST = ("skirt-length", "body-length")
"""By which option a garment is made longer, the first that it has."""

HALVINGS = 8
"""How often the way to the longest is halved: to a few millimetres (our choice)."""

FINEST = 5.0
"""The longest is told in steps of this [mm] (our choice)."""


class ClothAnswer(Frozen):
    """One cloth: its ``width`` [mm], how the pieces lie on it, what to buy, and that in words.

    ``fits`` is whether all lie on the cloth, and on the length there is where that is known.
    """

    width: float
    lay: Lay
    bill: Purchase
    fits: bool
    says: Told


def cloth_answer(drafted: Drafted, price: float | None = None) -> ClothAnswer:
    """Return how a draft lies on its cloth, as :attr:`Drafted.lay` has it, and what to buy.

    ``price`` is that of a metre, or of a yard for who reads inches.
    """
    lay, cloth = drafted.lay, drafted.cloth
    bill = purchase(lay, cloth.as_cut, drafted.unit, price)
    says = joined((cloth_words(lay, cloth, drafted.unit, bill), *_halves(drafted)), " ")
    return ClothAnswer(cloth.width, lay, bill, fits(drafted), says)


def _halves(drafted: Drafted) -> Iterator[Told]:
    """What is cut in halves for a cloth, as another might not ask for."""
    names = tuple(LineName(seam.where) for seam in drafted.pattern.seams if is_centre(seam))
    if names and not drafted.lay.too_wide:
        listed = joined([(name,) for name in names], " and ")
        yield said("For it the {} {} cut in halves.", listed, "is" if len(names) == 1 else "are")


def fits(drafted: Drafted) -> bool:
    """Say whether all pieces lie on the cloth, and on the length there is where it is known."""
    lay, cloth = drafted.lay, drafted.cloth
    if lay.too_wide:
        return False
    least = purchase(lay, cloth.as_cut, drafted.unit).least
    return not cloth.length or least <= cloth.length + 1e-6


def laid_better(drafted: Drafted, effort: Effort = LONG) -> Drafted:
    """Return the same with a lay that was looked for longer, about a second."""
    return _with(drafted, lay_of(drafted.cut, drafted.cloth.as_cut, effort))


def laid_closer(
    drafted: Drafted, seconds: int, tell: Callable[[Told], object] = lambda _: None
) -> Drafted:
    """Return the same with the closest lay that is found in so many seconds; ``tell`` hears how it
    goes. Safe in a worker. To be asked before the draft is judged."""

    def heard(went: float, length: float) -> None:
        tell(said("{} of {} s: the pieces lie on {} …", f"{went:.0f}", str(seconds), mm(length)))

    if not there_is_a_library():
        tell(("Only the plain search is installed; .venv/bin/pip install '.[lay]' brings more.",))
    return _with(drafted, closer_lay(drafted.cut, drafted.cloth.as_cut, seconds, heard))


def _with(drafted: Drafted, lay: Lay) -> Drafted:
    """The same with a lay, by which the length of cloth there is was proved anew."""
    proofs = tuple(
        on_length(lay.length, drafted.cloth) if proof.id is ProofId.CLOTH_LENGTH else proof
        for proof in drafted.proofs
    )
    return replace(drafted, closer=lay, proofs=proofs)


class Longest(Frozen):
    """The longest a garment can be from the cloth there is: its option, and how long [mm]; None if
    not even the shortest fits."""

    key: str
    length: float | None

    @property
    def says(self) -> Told:
        """The sentence for a person."""
        key = OptionKey(self.key)
        if self.length is None:
            return said("Not even the shortest {} fits on this cloth.", key)
        return said("The longest {} that fits on this cloth is {}.", key, mm(self.length))


def longest(drafted: Drafted) -> Longest | None:
    """Return how long the garment can be from the length of cloth there is; None where that was
    not said, or the garment has no such option. Takes a dozen drafts."""
    key = next((key for key in LONGEST if key in drafted.garment.options), None)
    if key is None or not drafted.cloth.length:
        return None
    option = drafted.garment.options[key]
    low, high = option.low * 10, option.high * 10
    if fits(drafted):
        low = drafted.style.length(key).mm
    elif not _fits(drafted, key, low):
        return Longest(key, None)
    if _fits(drafted, key, high):
        return Longest(key, high)
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if _fits(drafted, key, middle) else (low, middle)
    return Longest(key, low // FINEST * FINEST)


def _fits(drafted: Drafted, key: str, length: float) -> bool:
    """Whether the garment can be drafted so long, and lies on the cloth there is."""
    again = redrafted(drafted, {key: f"{length / 10:.1f} cm"})
    return again is not None and fits(again)
