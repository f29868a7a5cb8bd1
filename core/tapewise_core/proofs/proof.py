"""What one proof is: a number against a limit, and a sentence for a person."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.proofs.mend import Mend
from tapewise_core.text.told import Told, joined, said
from tapewise_core.units import Length


class ProofId(StrEnum):
    """Everything that can be proved, in the order it is told."""

    HEAD = "head through the neck"
    NECKBAND = "neckband against neckline"
    WAIST = "waist over the body"
    WAISTBAND = "waistband against waist"
    CASING = "casing turned down"
    GATHERS = "gathers for this cloth"
    STRIDE = "hem for a stride"
    GIRTH = "girth of the garment"
    BUST = "bust as asked"
    WAIST_LEVEL = "waist as asked"
    HIP = "hip as asked"
    UPPER_ARM = "upper arm as asked"
    SLEEVE_HEM = "sleeve hem as asked"
    HEM = "hem as asked"
    EASE = "ease for this cloth"
    HAND = "hand through the sleeve"
    BAND = "band against its edge"
    BAND_OVER = "band over the body"
    SEAM = "seam as long on both sides"
    CAP = "sleeve cap against armhole"
    CAP_HEIGHT = "height of the sleeve cap"
    ARMHOLE = "armhole inside the shoulder"
    GAPE = "front armhole lies close"
    LINE = "line across a seam"
    FOLD = "square to the fold"
    BEHIND_FOLD = "behind its fold"
    UNDERARM_TOP = "underarm below the armscye line"
    UNDERARM_FOOT = "underarm above halfway to the waist"
    SIDE = "side seam at the waist"
    OUTLINE = "outline"
    ALLOWANCES = "allowances"
    TEETH = "cut line without teeth"
    CLOTH = "pieces within the cloth"
    CLOTH_LENGTH = "pieces on the length there is"
    NOTCHES = "notches"


Which = tuple[ProofId, str]
"""Which proof: its id, and what it is of."""

NAMES = {
    ProofId.WAIST: "{of} over the body",
    ProofId.GIRTH: "{of} of the garment",
    ProofId.SEAM: "{of}",
    ProofId.BAND: "{of} against its edge",
    ProofId.BAND_OVER: "{of} over the body",
    ProofId.LINE: "{of}",
}
"""How a proof is named where that is not its subject followed by its id."""

ALWAYS = frozenset(
    {
        ProofId.SEAM,
        ProofId.FOLD,
        ProofId.BEHIND_FOLD,
        ProofId.OUTLINE,
        ProofId.ALLOWANCES,
        ProofId.TEETH,
        ProofId.CLOTH,
        ProofId.CLOTH_LENGTH,
        ProofId.NOTCHES,
    }
)
"""What every garment answers for: whatever has pieces can be asked these."""


SURE_ENOUGH = 0.8
"""The share of bodies for which a proof must hold to be trusted (our choice)."""


class Proof(Frozen):
    """One proof's outcome; no other proof of a draft has its ``id`` and ``of`` together.

    ``of`` is the side, seam or piece that was judged, empty where there is but one. ``value``
    and ``limit`` are in ``unit``: cm, %, degrees or a bare number (1). ``sure`` is the share of
    the bodies that the estimates leave open for which it holds, 1 where nothing estimated matters.
    ``offer`` maps options to values that may make it hold, nobody tried it yet; ``mend`` was tried,
    and where nothing that was tried helps, ``against`` says why.
    """

    id: ProofId
    of: str
    value: float
    limit: float
    unit: str
    holds: bool
    says: Told
    offer: Mapping[str, Length | str] | None = None
    sure: float = 1.0
    mend: Mend | None = None
    against: Told = ()

    @property
    def which(self) -> Which:
        """What tells it from every other proof of a draft."""
        return self.id, self.of

    @property
    def told(self) -> Told:
        """What it says, and what mends it or why nothing does, as far as that was tried."""
        return joined((self.says, self.mend.told if self.mend else self.against))

    @property
    def uncertain(self) -> bool:
        """Whether it holds as estimated, and too seldom for the bodies that may be."""
        return self.holds and self.sure < SURE_ENOUGH

    @property
    def name(self) -> str:
        """A few words for a person."""
        return NAMES.get(self.id, "{of} {id}").format(of=self.of, id=self.id.value).strip()

    @property
    def settings(self) -> dict[str, str] | None:
        """The mend as options are typed, lengths in cm; None if there is none."""
        return dict(self.mend.settings) if self.mend else None

    @property
    def offered(self) -> dict[str, str] | None:
        """The offer as options are typed, lengths in cm; None if there is none."""
        return {key: typed(value) for key, value in self.offer.items()} if self.offer else None


def typed(value: Length | str) -> str:
    """Return a value as an option takes it: a length in cm, to the millimetre."""
    return value if isinstance(value, str) else f"{value.mm / 10:.1f} cm"


class Silent(Frozen):
    """A proof that has nothing to say about a draft, with its reason."""

    id: ProofId
    reason: Told


LACKS = "This garment has no "
"""How the reason starts where no style and no measure would make a proof speak."""


def lacking(about: ProofId, thing: str) -> Silent:
    """Return a silence that lies in the garment itself, which has no such thing."""
    return Silent(about, said(f"{LACKS}{thing}."))
