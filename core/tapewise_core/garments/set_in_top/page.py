"""A jersey top with set-in sleeves: armholes in the body, and a sleeve drafted to them.

Body in :mod:`blocks.set_in.body`, sleeve in :mod:`blocks.set_in.sleeve`, each with its lettered
figure. The method is that of a mannish shirt [baldt], brought to jersey: an
armhole through the across-back width halfway down, a sleeve whose cap is a quarter
of the armhole high, and no fullness.
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.blocks.set_in.body import draft_back, draft_front
from tapewise_core.blocks.set_in.cut import cut_half, cut_sleeve
from tapewise_core.blocks.set_in.sleeve import CAP_SHARE, Cap, draft_sleeve, solve_cap, taper_of
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.top.agree import agree as top_agrees
from tapewise_core.blocks.top.needs import COVERS, LONG_HELPS, MOVES, NEEDS, idle_below
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.facts import Facts, Side, Underarm
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.making import How, Making
from tapewise_core.drafting.piece import (
    EdgeRun,
    Girth,
    Join,
    Pattern,
    Piece,
    Seam,
    SeamKind,
)
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.set_in_top.options import OPTIONS
from tapewise_core.measures.body import Body
from tapewise_core.parts.arm import arm_at
from tapewise_core.parts.girths import trunk_girths
from tapewise_core.parts.hand import hand_of
from tapewise_core.parts.neck_finish import Finish, Halves, finish_neck, head_of
from tapewise_core.parts.stride import body_hem
from tapewise_core.proofs.proof import ProofId
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, mm

TITLE = "Jersey top with set-in sleeves"

DEEPER, DEEPEST = 5.0, 80.0
"""An armhole too small for its arm is deepened in steps, up to this much [mm] (practice)."""

LEAST_SEAM = 30.0
"""The shortest underarm seam of a sleeve worth sewing [mm] (common practice)."""


def draft(body: Body, chosen: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    style = SetInStyle.of(chosen)
    back, front, drop = _armholes(body, style)
    cap = cap_of(back, front, body, style)
    around = _armhole(back) + _armhole(front)
    whole = Length(around, ("the whole armhole, ", _armhole(back), " + ", _armhole(front)))
    length = sleeve_of(cap, style)
    sleeve = draft_sleeve(cap, whole, length, _hem(body, style))
    halves = Halves((back, front), cut_half(back, "back", style), cut_half(front, "front", style))
    finish = finish_neck(halves, style.neck, head=head_of(body))
    piece = cut_sleeve(sleeve, back, front, style)
    pieces = (finish.back, finish.front, piece, *finish.pieces)
    drafts = (back, front, sleeve, *finish.drafts)
    return Pattern(
        garment="set-in-top",
        title=TITLE,
        drafts=tuple(map(with_allowances, drafts, pieces)),
        pieces=pieces,
        seams=_seams(style.armhole.cap_share, finish.seams),
        joins=JOINS,
        girths=_girths(finish.back, finish.front, piece, cap, body, style),
        facts=_facts(back, body, style, finish),
        lengths=MappingProxyType(_lengths(finish.back, finish.front, piece, around)),
        remarks=_remarks(cap, whole, drop, length, style),
    )


def _armhole(draft: Draft) -> float:
    return draft.paper.line("armhole").length()


def _armholes(body: Body, style: SetInStyle) -> tuple[Draft, Draft, Length]:
    """Back and front with an armhole large enough for the arm, deepened only as far as needed."""
    drop = style.armhole.drop
    while True:
        back = draft_back(body, style, drop)
        front = draft_front(back, style)
        wide = cap_of(back, front, body, style).width >= _least(body, style).mm - 0.1
        if wide or style.armhole.drop_asked or drop.mm >= _deepest(body):
            return back, front, drop
        drop = mm(drop.mm + DEEPER)


def _deepest(body: Body) -> float:
    """Not lower than nearly halfway from the armscye line to the waist [mm]."""
    room = (body["back_waist_length"].mm - body["armscye_depth"].mm) / 2
    return min(DEEPEST, room - DEEPER)


def _least(body: Body, style: SetInStyle) -> Length:
    """The narrowest the sleeve may be under the arm."""
    return body["upper_arm"] + style.sleeve.ease


def cap_of(back: Draft, front: Draft, body: Body, style: SetInStyle) -> Cap:
    """Return the cap for two armholes, its seams slanting as far as the hem asks."""
    share = style.armhole.cap_share
    halves = _armhole(back) * share, _armhole(front) * share
    cap = solve_cap(*halves, _least(body, style).mm, 0.0)
    for _ in range(3):
        seam = sleeve_of(cap, style).mm - cap.height
        lean = taper_of(cap.width, _hem(body, style), seam) / seam
        cap = solve_cap(*halves, _least(body, style).mm, lean)
    return cap


def sleeve_of(cap: Cap, style: SetInStyle) -> Length:
    """Return the sleeve's length, long enough for an underarm seam below its cap."""
    asked = style.sleeve.length
    least = cap.height + LEAST_SEAM
    return asked if asked.mm >= least else mm(least)


def _hem(body: Body, style: SetInStyle) -> float:
    """The sleeve's girth at its hem [mm]."""
    arm = arm_at(body, style.sleeve.length.mm)
    return (arm + style.sleeve.hem_ease).mm


def _seams(ratio: float, neck: tuple[Seam, ...]) -> tuple[Seam, ...]:
    def both(kind: SeamKind, how: How, edge: str) -> Seam:
        front, back = EdgeRun("front", (edge,)), EdgeRun("back", (edge,))
        return Seam(kind, (front,), (back,), making=Making(how))

    behind = EdgeRun("back", ("armhole",), backwards=True)
    armhole = (behind, EdgeRun("front", ("armhole",)))
    under = (EdgeRun("sleeve", ("underarm",)),), (EdgeRun("sleeve", ("underarm_2",)),)
    cap, hem = (EdgeRun("sleeve", ("cap",)),), (EdgeRun("sleeve", ("sleeve_hem",)),)
    return (
        both(SeamKind.SHOULDER, How.STAYED, "shoulder"),
        *neck,
        Seam(SeamKind.SLEEVE, cap, armhole, ratio, Making(How.SLEEVE_FLAT)),
        both(SeamKind.SIDE, How.SIDES, "side"),
        Seam(SeamKind.SIDE, *under, making=Making(How.SIDES), where="sleeve"),
        Seam(SeamKind.SLEEVE_HEM, hem, (), making=Making(How.SLEEVE_HEM)),
        both(SeamKind.HEM, How.HEM, "hem"),
    )


def _across(name: str, line: str, beside: str) -> Join:
    return Join(name, ("back", line, beside), ("front", line, beside))


JOINS = (
    _across("neckline across the shoulder", "neckline", "shoulder"),
    _across("armhole across the shoulder", "armhole", "shoulder"),
    _across("armhole across the side seam", "armhole", "side"),
    Join(
        "cap across the underarm",
        ("sleeve", "cap", "underarm"),
        ("sleeve", "cap", "underarm_2"),
    ),
    Join(
        "sleeve hem across the underarm",
        ("sleeve", "sleeve_hem", "underarm"),
        ("sleeve", "sleeve_hem", "underarm_2"),
    ),
    _across("hem across the side seam", "hem", "side"),
)
"""Lines that run on across a seam; an armhole must be one true curve [conover, volume 9]."""


def _girths(
    back: Piece, front: Piece, sleeve: Piece, cap: Cap, body: Body, style: SetInStyle
) -> tuple[Girth, ...]:
    hem = arm_at(body, sleeve.points["hem_middle"].y)
    return (
        *trunk_girths((back, front, back, front), body),
        Girth("upper arm", cap.width, body["upper_arm"].mm),
        Girth("sleeve hem", sleeve.length("sleeve_hem"), hem.mm),
    )


def _facts(back: Draft, body: Body, style: SetInStyle, finish: Finish) -> Facts:
    ease = style.trunk.ease.mm
    return Facts(
        head=body["head"].mm if "head" in body else None,
        ease=ease,
        hand=hand_of(body, style.sleeve.length),
        neck=finish.neck,
        underarm=Underarm(back["U"].y, back["A"].y, back["W"].y),
        side=Side((body["waist"].mm + ease) / 4),
        hem=body_hem(body, style.hem, finish.back, finish.front),
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


def _remarks(
    cap: Cap, whole: Length, drop: Length, length: Length, style: SetInStyle
) -> tuple[Told, ...]:
    found: list[Told] = []
    lower = whole.mm / CAP_SHARE - cap.height
    if lower > 0.5:
        template = (
            "The cap is lower than a quarter of the armhole by {}, so that the sleeve is as wide "
            "as the arm and its ease."
        )
        found.append(said(template, mm(lower)))
    deeper = drop.mm - style.armhole.drop.mm
    if deeper > 0.5:
        template = "The armhole lies deeper than {} says by {}, because the arm is full."
        found.append(said(template, OptionKey("armhole-drop"), mm(deeper)))
    longer = length.mm - style.sleeve.length.mm
    if longer > 0.5:
        template = (
            "The sleeve is longer than {} says by {}, to leave an underarm seam below the cap."
        )
        found.append(said(template, OptionKey("sleeve-length"), mm(longer)))
    return tuple(found)


def agree(body: Body, style: Style) -> tuple[Told, ...]:
    """Return a sentence for every pair of values that disagree; none if all agree."""
    return top_agrees(body, TopStyle.of(style))


SET_IN_TOP = Garment(
    name="set-in-top",
    title=TITLE,
    says="A close top with armholes and set-in sleeves, whose caps are as long as their armholes.",
    needs=NEEDS,
    helps=(*LONG_HELPS, "across_back"),
    measured_only=("front_waist_length", "high_bust"),
    idle=idle_below,
    options=OPTIONS,
    agree=agree,
    draft=draft,
    covers=COVERS | {ProofId.CAP, ProofId.CAP_HEIGHT, ProofId.ARMHOLE},
    moves=MappingProxyType({**MOVES, "across_back": (1.0, "the armhole")}),
    sources=("ansur1", "baldt", "conover", "iso8559-1"),
)
