"""What the drafter of a set-in top should read: what was moved for the arm, and why."""

from __future__ import annotations

from tapewise_core.blocks.set_in.ledger import moved_bust
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.trunk import Trunk
from tapewise_core.blocks.set_in.wish import Planned
from tapewise_core.measures.body import Body
from tapewise_core.parts.bust_told import room_told
from tapewise_core.parts.figure_told import taken_told
from tapewise_core.parts.shape.underarm import BARE_IN
from tapewise_core.parts.trunk_levels import hangs_told
from tapewise_core.text.told import LineName, OptionKey, Told, said
from tapewise_core.units import Length, mm


def remarks(body: Body, trunk: Trunk, length: Length | None) -> tuple[Told, ...]:
    """Return the sentences; ``length`` is the sleeve's, None without one."""
    style, plan, drawn = trunk.style, trunk.plan, trunk.drawn
    return tuple(
        words
        for words in (
            *taken_told(style.fullness),
            room_told(plan.room),
            *(_as_known(body, words) for words in drawn.told),
            moved_bust(trunk),
            hangs_told(body, style.trunk),
            _deeper(trunk),
            _shorter_shoulder(plan),
            _no_dart(trunk),
            _narrow(trunk),
            _longer_sleeve(length, style),
            _turned(style),
        )
        if words
    )


ACROSS = {"across back": "across_back", "across front": "across_front"}


def _as_known(body: Body, told: Told) -> Told:
    """A sentence about a width that was estimated does not call it measured."""
    words = (part for part in told if isinstance(part, str))
    key = next((ACROSS[word] for word in words if word in ACROSS), "")
    if not key or body.has(key):
        return told
    return tuple(
        part.replace("than measured", "than estimated") if isinstance(part, str) else part
        for part in told
    )


def _deeper(trunk: Trunk) -> Told:
    """Where the underarm lies other than the fit has it, and why."""
    fit, asked = trunk.plan.wish.fit, trunk.style.armhole.drop
    by = trunk.drawn.drop - fit.drop
    if asked is not None or abs(by) < 1:
        return ()
    why = "the arm" if trunk.style.bare else "the arm and its sleeve"
    words = f"The underarm lies {{}} {{}} than this fit's own, for {why}; set {{}} to change it."
    return said(words, mm(abs(by)), "deeper" if by > 0 else "higher", OptionKey("armhole-drop"))


def _shorter_shoulder(plan: Planned) -> Told:
    """The shoulder is drawn shorter than measured."""
    own = BARE_IN if plan.wish.sleeveless else 0.0
    if plan.shoulder.out > -own - 2:
        return ()
    words = "The shoulder is drawn {} shorter than measured, because the body is narrow under the "
    return said(words + "arm for so long a one.", mm(-plan.shoulder.out))


def _no_dart(trunk: Trunk) -> Told:
    """The hem lies too near the bust for a dart."""
    if trunk.plan.dart_fits or not (trunk.plan.room.left > 0.5):
        return ()
    words = "The {} lies too near the bust for a side dart."
    return said(words, LineName(trunk.style.lower))


def _narrow(trunk: Trunk) -> Told:
    """Armhole and cap bend too tightly for the seam's allowance."""
    has, bare = trunk.armhole_allowance, trunk.style.bare
    if has >= (bare.allowance.mm if bare else trunk.style.allowances.along("armhole")):
        return ()
    if bare:
        words = "The armholes bend too tightly for a wider allowance than {}, so that is theirs."
        return said(words, mm(has))
    words = (
        "Armhole and cap bend too tightly for a wider allowance than {}, so that is what they get."
    )
    return said(words, mm(has))


def _turned(style: SetInStyle) -> Told:
    """A sleeve that a fitting turned forward is set in round."""
    by = style.fitted.cap_forward
    if not by:
        return ()
    words = (
        "The sleeve is turned forward by {}: sew its own seam and the side seam first, then set it "
        "in round, its seam to the mark on the back armhole."
    )
    return said(words, mm(by))


def _longer_sleeve(length: Length | None, style: SetInStyle) -> Told:
    if length is None:
        return ()
    longer_by = length.mm - style.sleeve.length.mm
    if longer_by <= 0.5:
        return ()
    words = "The sleeve is longer than {} says by {}, to leave an underarm seam below the cap."
    return said(words, OptionKey("sleeve-length"), mm(longer_by))
