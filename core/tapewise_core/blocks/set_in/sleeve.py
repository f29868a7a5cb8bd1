"""The sleeve of a top with set-in sleeves, drafted to its armhole.

::

           O              O  crown            G  below the crown, on the sleeve's width
         .   .            L  back underarm    R  front underarm
      L____G_K_R          K  its middle       Q  hem in the middle
       \\       /
       L1__Q_R1           L1, R1  ends of the hem

Both halves of the cap are as long as their halves of the armhole, less what jersey is stretched
by; one height makes them add up to the width asked (:mod:`parts.shape.cap`).
"""

from __future__ import annotations

from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.errors import DraftError
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_at, past_elbow
from tapewise_core.parts.seam_steps import set_off
from tapewise_core.parts.shape.cap import Cap, cap
from tapewise_core.parts.shape.set_in import SetIn
from tapewise_core.parts.shape.sleeve import Sleeve, sleeve, sleeve_hem
from tapewise_core.text.told import said
from tapewise_core.units import Length, mm

LEAST_SEAM = 30.0
"""The shortest underarm seam of a sleeve worth sewing [mm] (common practice)."""

MOST_TAPER = 0.28
"""How much a sleeve narrows or widens on each side for each length of its seam, at the most
(common practice)."""

CAP_MANNER = "Fuller at the back and more hollow at the front; it passes O level."


def length_of(solved: Cap, asked: Length) -> Length:
    """Return the sleeve's length, long enough for an underarm seam below its cap."""
    least = solved.height + LEAST_SEAM
    return asked if asked.mm >= least else mm(least)


def hem_ease(body: Body, style: SetInStyle, width: float) -> float:
    """Return the ease at the hem [mm] of a sleeve so wide at the arm: as asked, or what the arm
    has, less from the elbow on."""
    asked = style.armhole.hem_ease
    if asked is not None:
        return asked.mm
    more = width - body["upper_arm"].mm - style.sleeve.ease.mm
    return style.sleeve.hem_ease.mm + more * (1 - past_elbow(body, style.sleeve.length.mm))


def hem_asked(body: Body, style: SetInStyle, width: float) -> float:
    """Return the girth of the hem of a sleeve so wide [mm]: the arm there, and its ease."""
    return arm_at(body, style.sleeve.length.mm).mm + hem_ease(body, style, width)


def cap_of(drawn: SetIn) -> Cap:
    """Return the solved cap; raises DraftError for a body without sleeves."""
    if drawn.cap is None:
        raise DraftError("A sleeve needs a cap, and this body was drawn without one.")
    return drawn.cap


def hem_of(solved: Cap, length: float, asked: float) -> float:
    """Return the hem's width between its corners for a hem so long [mm], within what its seams may
    slant; bent square to them it is a little longer than it is wide."""
    most = 2 * MOST_TAPER * (length - solved.height)
    low, high = solved.width - most, solved.width + most

    def kept(width: float) -> float:
        return min(max(width, low), high)

    width = kept(asked)
    for _ in range(NEARER):
        short = asked - sleeve_hem(solved, length, width).length()
        if abs(short) < NEAR:
            break
        width = kept(width + short)
    return width


NEARER, NEAR = 8, 0.05
"""A hem's length is met within so much [mm], in so many rounds at the most."""


def squared(drawn: SetIn, asked: Length, hem: float) -> Cap:
    """Return the solved cap with its corners square to the underarm seams, which slant as far as
    the hem asks [mm]; raises DraftError for a body without sleeves."""
    solved, lean = cap_of(drawn), 0.0
    front, back = drawn.front_armhole.length, drawn.back_armhole.length
    for _ in range(SQUARINGS):
        seam = length_of(solved, asked).mm - solved.height
        slant = (solved.width - hem_of(solved, seam + solved.height, hem)) / 2 / seam
        if abs(slant - lean) < SQUARE:
            break
        lean = slant
        solved = cap(front, back, solved.asked, solved.shorter, lean)
    return solved


SQUARINGS, SQUARE = 3, 1e-3
"""The slant depends on the cap's height, and that on the slant: so many rounds at the most, until
they agree to a twentieth of a degree."""


def draft_sleeve(solved: Cap, armhole: Length, length: Length, hem: float) -> Draft:
    """Return the sleeve as drawn by hand; ``hem`` is its width at the hem [mm]."""
    drawn = sleeve(solved, length.mm, hem)
    called = said(
        "the line of the sleeve's width: from there the cap goes into {}, and is as wide as the "
        "arm and its ease", armhole,
    )  # fmt: skip
    draft = (
        Draft("Sleeve")
        .start("O", "the crown, in the middle of the paper near its top")
        .down("O", "G", mm(solved.height), called)
        .inward("G", "L", mm(solved.back_width), "the back's underarm")
        .across("G", "R", mm(solved.front_width), "the front's underarm")
    )
    draft, middle = _middle(draft, solved)
    draft = draft.down(middle, "Q", length - mm(solved.height), "the hem in the middle")
    return _cap_line(_below(draft, drawn), solved)


def at_crown(solved: Cap, path: Path) -> Path:
    """Return a path of the cap's own paper laid with its crown on O."""
    return path.moved(Point(0, 0) - solved.crown)


def _cap_line(draft: Draft, solved: Cap) -> Draft:
    """The cap from the back's underarm over the crown to the front's."""
    back, front = (at_crown(solved, Path((half,))) for half in (solved.back, solved.front))
    return draft.curve("cap", back.then(front), ("L", "O", "R"), CAP_MANNER)


def _middle(draft: Draft, solved: Cap) -> tuple[Draft, str]:
    """The sleeve's middle, which lies behind the crown: arms hang forward."""
    if abs(solved.pitch) < 0.05:
        return draft, "G"
    verb = draft.inward if solved.pitch > 0 else draft.across
    return verb("G", "K", mm(abs(solved.pitch)), "the sleeve's middle"), "K"


def _below(draft: Draft, drawn: Sleeve) -> Draft:
    """Both underarm seams, equally long and equally slanted, and the hem square to them."""
    solved = drawn.cap
    hem = at_crown(solved, drawn.hem)
    draft = set_off(draft, "Q", "L1", hem.start, "the end of the hem at the back")
    draft = set_off(draft, "Q", "R1", hem.end, "the end of the hem at the front")
    draft = draft.rule("underarm", "R", "R1").rule("underarm_2", "L", "L1", remark="as long")
    return draft.curve("sleeve_hem", hem, ("L1", "Q", "R1"))
