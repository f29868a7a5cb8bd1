"""The grown-on-sleeve jersey top: dropped shoulder, no darts, no closure.

The back (:mod:`top_back`), the front traced from it (:mod:`top_front`) and a
band round the neck (:mod:`neckband`).
"""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.finish import with_allowances
from tapewise_core.drafting.piece import (
    Edge,
    EdgeRun,
    Girth,
    Join,
    Notch,
    Pattern,
    Piece,
    Seam,
    SeamKind,
    make_piece,
)
from tapewise_core.garments.garment import Garment
from tapewise_core.garments.neckband import cut_neckband, draft_neckband, whole_neckline
from tapewise_core.garments.option import Style
from tapewise_core.garments.sleeve import UPPER_ARM_AT, arm_at
from tapewise_core.garments.top_agree import agree
from tapewise_core.garments.top_back import draft_back
from tapewise_core.garments.top_front import draft_front, overarm_end
from tapewise_core.garments.top_options import MOST_RAISE, OPTIONS, raise_asked
from tapewise_core.geometry.crossings import distance_at_height, point_at_height
from tapewise_core.geometry.path import Path, ruled
from tapewise_core.geometry.point import Point, crossing
from tapewise_core.measures.body import Body
from tapewise_core.units import Unit

BUST_BELOW_ARMSCYE = 0.25
"""How far from the armscye line to the waist the bust is fullest (common practice)."""


def draft(body: Body, style: Style) -> Pattern:
    """Return the whole pattern; raises DraftError if the measures cannot be drawn."""
    back = draft_back(body, style)
    front = draft_front(back, style)
    back_piece, front_piece = _piece(back, "back", body, style), _piece(front, "front", body, style)
    halves = back_piece.length("neckline"), front_piece.length("neckline")
    band = draft_neckband(whole_neckline(*halves), style)
    back_piece, front_piece = _quarter_marked(back_piece, front_piece)
    band_piece = cut_neckband(band, style, "neck halfway", "centre front")
    pieces = (back_piece, front_piece, band_piece)
    return Pattern(
        garment="jersey-top",
        title="Jersey top with grown-on sleeves",
        drafts=tuple(map(with_allowances, (back, front, band), pieces)),
        pieces=pieces,
        seams=_seams(style),
        joins=JOINS,
        girths=_girths(back_piece, front_piece, body, style),
        facts=MappingProxyType(_facts(back, body, style)),
        lengths=MappingProxyType(_lengths(back_piece, front_piece)),
        remarks=_remarks(back, body, style),
    )


def _piece(draft: Draft, name: str, body: Body, style: Style) -> Piece:
    """Cut one half from its finished draft."""
    centre = draft["O" if "O" in draft.sheet.points else "B"]
    top = draft["F" if name == "front" else "N"]
    edges = tuple(_edge(draft, line, style) for line in LINES if line in draft.sheet.lines)
    edges = (*edges, Edge("centre", ruled(centre, top), 0.0, fold=True))
    levels = {"armscye": draft["A"].y, "waist": draft["W"].y, "hip": draft["J"].y}
    levels["bust"] = levels["armscye"] + BUST_BELOW_ARMSCYE * (levels["waist"] - levels["armscye"])
    points = _points(draft, name, levels)
    return make_piece(
        name,
        edges,
        points,
        _grain(points, top, centre),
        notches=_notches(draft, points),
        on_fold=True,
        levels=levels,
    )


LINES = ("neckline", "shoulder", "sleeve_hem", "underarm", "side", "hem")
"""The edges of a half, clockwise from the centre's top."""


def _edge(draft: Draft, line: str, style: Style) -> Edge:
    path = draft.sheet.line(line)
    if line == "hem":
        path = path.reversed()
    turned = line in ("hem", "sleeve_hem")
    key = {"neckline": "neck", "hem": "hem", "sleeve_hem": "hem"}.get(line, "seam")
    return Edge(line, path, style.length(f"{key}-allowance").mm, turned)


def _points(draft: Draft, name: str, levels: dict[str, float]) -> dict[str, Point]:
    sheet = draft.sheet
    centre = "centre_front" if name == "front" else "nape"
    points = {
        centre: draft["F" if name == "front" else "N"],
        "side_neck": sheet.line("shoulder").start,
        "shoulder_point": draft["P"],
        "overarm_end": sheet.line("shoulder").end,
        "sleeve_hem_end": sheet.line("sleeve_hem").end,
        "underarm": sheet.line("side").start,
        "hem_side": draft["M"],
        "centre_hem": draft["O" if "O" in sheet.points else "B"],
    }
    side: Path = sheet.line("side")
    for level in ("bust", "waist", "hip"):
        at = point_at_height(side, levels[level])
        if at is not None:
            points[f"{level}_side"] = at
    return points


def _grain(points: dict[str, Point], top: Point, centre: Point) -> tuple[Point, Point]:
    """A line down the middle of the body, clear of the neckline."""
    x = points["underarm"].x * 0.55
    height = centre.y - top.y
    return Point(x, centre.y - height * 0.55), Point(x, centre.y - height * 0.12)


def _notches(draft: Draft, points: dict[str, Point]) -> tuple[Notch, ...]:
    sheet = draft.sheet
    shoulder = sheet.line("shoulder")
    side = sheet.line("side")
    notches = [
        Notch("shoulder", (points["shoulder_point"] - draft["S"]).length(), "shoulder point")
    ]
    if "underarm" in sheet.lines:
        notches.append(Notch("side", 0.0, "underarm", 2))
    for level, strokes in (("waist", 1), ("hip", 2)):
        at = points.get(f"{level}_side")
        distance = None if at is None else distance_at_height(side, at.y)
        if distance is not None and 10 < distance < side.length() - 10:
            notches.append(Notch("side", distance, level, strokes))
    return tuple(n for n in notches if n.edge != "shoulder" or n.distance < shoulder.length() - 10)


def _quarter_marked(back: Piece, front: Piece) -> tuple[Piece, Piece]:
    """Mark both necklines at the quarter of the whole, which lies on the longer of the two."""
    from dataclasses import replace

    ours, theirs = back.length("neckline"), front.length("neckline")
    surplus = (theirs - ours) / 2
    centre = Notch("neckline", 0.0, "centre front")
    if surplus >= 0:
        half = Notch("neckline", theirs - surplus, "neck halfway")
        return back, replace(front, notches=(centre, half, *front.notches))
    half = Notch("neckline", ours + surplus, "neck halfway")
    return (
        replace(back, notches=(half, *back.notches)),
        replace(front, notches=(centre, *front.notches)),
    )


def _seams(style: Style) -> tuple[Seam, ...]:
    def both(kind: SeamKind, *edges: str) -> Seam:
        return Seam(kind, (EdgeRun("front", edges),), (EdgeRun("back", edges),))

    neckline = (EdgeRun("back", ("neckline",), 2), EdgeRun("front", ("neckline",), 2, True))
    band = (EdgeRun("neckband", ("neckline",)),)
    return (
        both(SeamKind.SHOULDER, "shoulder"),
        Seam(
            SeamKind.BAND_JOIN,
            (EdgeRun("neckband", ("join",)),),
            (EdgeRun("neckband", ("join_2",)),),
        ),
        Seam(SeamKind.NECKBAND, band, neckline, style.number("band-ratio")),
        both(SeamKind.SIDE, "underarm", "side"),
        both(SeamKind.SLEEVE_HEM, "sleeve_hem"),
        both(SeamKind.HEM, "hem"),
    )


JOINS = (
    Join("neckline across the shoulder", ("back", "neckline", "shoulder"), ("front", "neckline", "shoulder")),
    Join("sleeve hem across the overarm", ("back", "sleeve_hem", "shoulder"), ("front", "sleeve_hem", "shoulder")),
    Join("hem across the side seam", ("back", "hem", "side"), ("front", "hem", "side")),
)  # fmt: skip
"""A line on each piece, and the edge beside it that is sewn to the other's."""


def _girths(back: Piece, front: Piece, body: Body, style: Style) -> tuple[Girth, ...]:
    found = []
    for key in ("bust", "waist", "hip"):
        at = [piece.points.get(f"{key}_side") for piece in (back, front)]
        if at[0] is not None and at[1] is not None:
            found.append(Girth(key, 2 * (at[0].x + at[1].x), body[key].mm))
    return (*found, *_arm_girths(back, body, style))


def _arm_girths(back: Piece, body: Body, style: Style) -> tuple[Girth, ...]:
    """Twice the sleeve's half, square to the overarm, at its hem and at the upper arm."""
    sleeve = style.length("sleeve-length").mm
    hem = Girth("sleeve hem", 2 * back.length("sleeve_hem"), arm_at(body, sleeve).mm)
    past = body["arm_length"].mm * UPPER_ARM_AT if "arm_length" in body else sleeve
    if sleeve <= past or not back.has_edge("underarm"):
        return (Girth("upper arm", hem.garment, body["upper_arm"].mm), hem)
    overarm = back.edge("shoulder").path
    at, along = overarm.at((back.points["shoulder_point"] - overarm.start).length() + past)
    underarm = back.edge("underarm").path
    opposite = crossing(at, along.square(), underarm.start, underarm.leaving())
    half = (opposite - at).length() if opposite else hem.garment / 2
    return (Girth("upper arm", 2 * half, body["upper_arm"].mm), hem)


def _lengths(back: Piece, front: Piece) -> dict[str, float]:
    return {
        "centre back length": back.points["centre_hem"].y - back.points["nape"].y,
        "centre front length": front.points["centre_hem"].y - front.points["centre_front"].y,
        "overarm length": back.length("shoulder"),
        "side length": back.length("underarm", "side"),
        "neckline": 2 * (back.length("neckline") + front.length("neckline")),
    }


def _facts(back: Draft, body: Body, style: Style) -> dict[str, float]:
    ease = style.length("ease").mm
    facts = {
        "armscye level": back["A"].y,
        "waist level": back["W"].y,
        "underarm level": back.sheet.line("side").start.y,
        "waist limit": (body["waist"].mm + ease) / 4,
        "ease": ease,
        "neck half width": style.length("neck-half-width").mm,
    }
    if "head" in body:
        facts["head"] = body["head"].mm
    return facts


def _remarks(back: Draft, body: Body, style: Style) -> tuple[str, ...]:
    """What the drafter should read: amounts that went elsewhere, a sleeve that ends badly."""
    said = []
    asked = raise_asked(body, style)
    if asked is not None and asked.mm > MOST_RAISE and not style.asked("front-raise"):
        said.append(
            f"The front asks for a raise of {Unit.CM.spell(asked.mm)}; 3 cm are taken at the side "
            f"neck and {Unit.CM.spell(asked.mm - MOST_RAISE)} at the centre front's hem."
        )
    return (*said, *_cap_remark(back, style))


def _cap_remark(back: Draft, style: Style) -> tuple[str, ...]:
    sheet = back.sheet
    if "underarm" in sheet.lines or "H" not in sheet.points or "U" not in sheet.points:
        return ()
    if sheet.points["H"].x >= sheet.points["U"].x - 0.05:
        return ()
    return (
        "This short sleeve would end inside the body's quarter, so its underarm was moved out "
        "to it; a longer sleeve-length gives a straight, square hem.",
    )


def _idle(style: Style) -> tuple[str, ...]:
    """The arm below its fullest matters only to sleeves that reach it."""
    return () if style.length("sleeve-length").mm > SHORT_SLEEVE else ("wrist", "arm_length")


SHORT_SLEEVE = 130.0
"""A sleeve no longer ends above the fullest upper arm of nearly everybody [mm] [ansur1]."""


JERSEY_TOP = Garment(
    name="jersey-top",
    title="Jersey top with grown-on sleeves",
    says="A close top without darts or closure, its sleeves cut in one with the body.",
    needs=(
        "bust", "waist", "hip", "upper_arm", "head",
        "back_waist_length", "hip_depth", "armscye_depth", "shoulder_length", "shoulder_drop",
    ),
    helps=("neck", "front_waist_length", "wrist", "arm_length"),
    measured_only=("front_waist_length",),
    idle=_idle,
    options=OPTIONS,
    agree=agree,
    draft=draft,
    moves=MappingProxyType({
        "bust": (1.0, "round the bust"),
        "waist": (0.5, "round the waist"),
        "hip": (1.0, "round the hip"),
        "upper_arm": (1.0, "round the sleeve"),
        "head": (1.0, "at the neckline"),
        "back_waist_length": (1.0, "the waist line"),
        "hip_depth": (1.0, "the length"),
        "armscye_depth": (1.0, "the underarm"),
        "shoulder_length": (1.0, "the sleeve's length"),
        "shoulder_drop": (1.5, "the sleeve's slope"),
        "neck": (0.4, "the neckline's width"),
        "front_waist_length": (1.0, "the front's length"),
        "arm_length": (0.3, "the sleeve's width"),
        "wrist": (0.5, "the sleeve's hem"),
    }),
)  # fmt: skip
