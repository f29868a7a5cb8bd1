"""A set-in top put together: planned, searched, drawn, cut, and measured again."""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.set_in.back import draft_back
from tapewise_core.blocks.set_in.cut import Trunk, cut_half, cut_sleeve, trunk_of
from tapewise_core.blocks.set_in.ends import at_bust, ended
from tapewise_core.blocks.set_in.front import draft_front
from tapewise_core.blocks.set_in.ledger import Made, girths, levels_of, moved_bust
from tapewise_core.blocks.set_in.seams import joins, seams
from tapewise_core.blocks.set_in.sleeve import draft_sleeve, hem_asked, hem_of, length_of, squared
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.set_in.wish import Planned, planned
from tapewise_core.drafting.facts import Facts, Level, Side, Underarm
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import Pattern, Piece
from tapewise_core.measures.body import Body
from tapewise_core.parts.hand import hand_of
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of
from tapewise_core.parts.shape.set_in import set_in
from tapewise_core.parts.stride import body_hem
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, mm


def assemble(garment: str, title: str, body: Body, style: SetInStyle) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    plan = planned(body, style)
    drawn = set_in(plan.wish)
    sides = at_bust(ended(drawn, style.trunk.length, style.hem), drawn, plan)
    trunk = trunk_of(plan, drawn, sides, style)
    back = draft_back(body, style, plan, drawn, sides)
    front = draft_front(back, body, style, plan, drawn, sides)
    halves = Halves(
        (back, front), cut_half(back, trunk, front=False), cut_half(front, trunk, front=True)
    )
    finish = finish_neck(halves, style.neck, head=head_of(body))
    at_hem = hem_asked(body, style, drawn)
    solved = squared(drawn, style.sleeve.length, at_hem)
    length = length_of(solved, style.sleeve.length)
    hem = hem_of(solved, length.mm, at_hem)
    around = Length(drawn.armhole, _working(drawn.back_armhole.length, drawn.front_armhole.length))
    sleeve = draft_sleeve(solved, around, length, hem)
    piece = cut_sleeve(sleeve, solved, drawn, style)
    levels = levels_of(trunk, Made(finish.back, finish.front, piece, solved, at_hem), body)
    pieces = (finish.back, finish.front, piece, *finish.pieces)
    return Pattern(
        garment=garment,
        title=title,
        drafts=tuple(map(with_allowances, (back, front, sleeve, *finish.drafts), pieces)),
        pieces=pieces,
        seams=seams(finish.front, 1 - style.armhole.shorter, finish.seams, trunk.full),
        joins=joins(finish.front),
        girths=girths(levels),
        facts=_facts(trunk, body, finish, levels),
        lengths=MappingProxyType(_lengths(finish.back, finish.front, piece, drawn.armhole)),
        remarks=_remarks(trunk, length),
    )


def _working(back: float, front: float) -> tuple[str | float, ...]:
    return ("the whole armhole, ", back, " + ", front)


def _facts(trunk: Trunk, body: Body, finish: Finish, levels: tuple[Level, ...]) -> Facts:
    seam, style = trunk.drawn.seam, trunk.style
    at = trunk.plan.wish.levels
    own = trunk.plan.wish.quarters.waist + seam.dart - trunk.drawn.share.at(seam.at.waist)
    return Facts(
        head=body["head"].mm if "head" in body else None,
        ease=style.trunk.ease.mm,
        hand=hand_of(body, style.sleeve.length),
        neck=finish.neck,
        underarm=Underarm(seam.at.underarm, at.armscye.depth, at.waist.depth),
        side=Side(own),
        hem=body_hem(body, style.hem, finish.back, finish.front),
        levels=levels,
    )


def _lengths(back: Piece, front: Piece, sleeve: Piece, around: float) -> dict[str, float]:
    return {
        "centre back length": back.points["centre_hem"].y - back.points["nape"].y,
        "centre front length": front.points["centre_hem"].y - front.points["centre_front"].y,
        "shoulder length": back.length("shoulder"),
        "armhole": around,
        "sleeve cap": sleeve.length("cap"),
        "sleeve length": sleeve.points["hem_middle"].y,
        "side length": back.length("side"),
        "neckline": 2 * (back.length("neckline") + front.length("neckline")),
    }


def _remarks(trunk: Trunk, length: Length) -> tuple[Told, ...]:
    style, plan, drawn = trunk.style, trunk.plan, trunk.drawn
    return tuple(
        words
        for words in (
            *drawn.told,
            moved_bust(trunk),
            _deeper(trunk),
            _shorter_shoulder(plan),
            _no_dart(trunk),
            _longer_sleeve(length, style),
        )
        if words
    )


def _deeper(trunk: Trunk) -> Told:
    """Where the underarm lies other than the fit has it, and why."""
    fit, asked = trunk.plan.wish.fit, trunk.style.armhole.drop
    by = trunk.drawn.drop - fit.drop
    if asked is not None or abs(by) < 1:
        return ()
    words = "The underarm lies {} {} than this fit's own, for the arm and its sleeve; set {} to "
    words += "change it."
    return said(words, mm(abs(by)), "deeper" if by > 0 else "higher", OptionKey("armhole-drop"))


def _shorter_shoulder(plan: Planned) -> Told:
    """The shoulder is drawn shorter than measured."""
    if plan.out > -2:
        return ()
    words = "The shoulder is drawn {} shorter than measured, because the body is narrow under the "
    return said(words + "arm for so long a one.", mm(-plan.out))


def _no_dart(trunk: Trunk) -> Told:
    """The hem lies too near the bust for a dart."""
    if trunk.plan.dart_fits or not (trunk.plan.room.left > 0.5):
        return ()
    return said("The hem lies too near the bust for a side dart.")


def _longer_sleeve(length: Length, style: SetInStyle) -> Told:
    longer_by = length.mm - style.sleeve.length.mm
    if longer_by <= 0.5:
        return ()
    words = "The sleeve is longer than {} says by {}, to leave an underarm seam below the cap."
    return said(words, OptionKey("sleeve-length"), mm(longer_by))
