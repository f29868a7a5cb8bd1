"""Small patterns made by hand for tests: rectangles, and one seam made in one way."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from msgspec.structs import replace

from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.making import PLAIN, Making
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Dart, Edge, Notch, Piece, make_piece
from tapewise_core.drafting.seam import EdgeRun, Fullness, Seam, SeamKind
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.parts.band_ways import (
    ARMBAND,
    ARMBAND_RING,
    CUFF_ON,
    CUFF_RING,
    HEM_BAND,
    HEM_HALVES,
    HEM_HALVES_RING,
    HEM_RING,
)
from tapewise_core.parts.bare_ways import (
    ARM_FACING,
    ARM_FACING_RING,
    TURNED_ARMHOLE,
)
from tapewise_core.parts.centre_seam import CENTRE_SEAM
from tapewise_core.parts.cowl_way import BENT_SHOULDERS, COWL
from tapewise_core.parts.placket_ways import PLACKET, PLACKET_BAND, PLACKET_SHOULDERS
from tapewise_core.sewing.closing import PANELS, SIDES_CLOSED
from tapewise_core.sewing.darts import SIDE_DART
from tapewise_core.sewing.edges import HUNG_HEM, SLEEVE_HEM, SLIT, TURNED_UP, VENT
from tapewise_core.sewing.extras import BELT, POCKET
from tapewise_core.sewing.gathers import GATHERED_BAND, GATHERED_WAIST, TIER
from tapewise_core.sewing.joining import SHOULDERS
from tapewise_core.sewing.neck import BAND, BAND_MITRE, BAND_RING, COLLAR, V_BAND
from tapewise_core.sewing.neck_edge import (
    FACING,
    FACING_RING,
    TURNED_NECK,
    TURNED_V,
    V_FACING,
)
from tapewise_core.sewing.neck_flat import BAND_FLAT
from tapewise_core.sewing.raglan import OVERARM, RAGLAN
from tapewise_core.sewing.sleeves import SLEEVE_FLAT, SLEEVE_ROUND, SLEEVE_SEAM
from tapewise_core.sewing.waist import CASING, STAYED_WAIST, WAISTBAND, WAISTBAND_RING
from tapewise_core.sewing.way import Elastic

SIDES = ("top", "right", "bottom", "left")
"""The edges of a rectangle as they are walked."""


def rectangle(
    name: str,
    wide: float,
    high: float,
    allowances: Mapping[str, float] = MappingProxyType({}),
    *,
    notches: tuple[Notch, ...] = (),
    grain: tuple[float, float] = (0.0, 1.0),
    count: int = 1,
    on_fold: bool = False,
    turnable: bool = False,
) -> Piece:
    """Return a piece [mm] with edges top, right, bottom and left, 8 mm of allowance at each
    that has no other; ``grain`` is the direction of its arrow."""
    a, b, c, d = Point(0, 0), Point(wide, 0), Point(wide, high), Point(0, high)
    ends = zip(SIDES, ((a, b), (b, c), (c, d), (d, a)), strict=True)
    edges = tuple(
        Edge(side, ruled(*line), allowances.get(side, 8.0), fold=on_fold and side == "left")
        for side, line in ends
    )
    arrow = Point(wide / 2, high / 2), Point(wide / 2 + grain[0], high / 2 + grain[1])
    return make_piece(
        name, edges, {}, arrow, notches=notches, count=count, on_fold=on_fold, turnable=turnable
    )


def pattern_of(pieces: tuple[Piece, ...], seams: tuple[Seam, ...] = ()) -> Pattern:
    """Return a pattern of pieces and seams, with no draft behind it."""
    none: Mapping[str, float] = MappingProxyType({})
    return Pattern("sample", "Sample", (), pieces, seams, (), (), Facts(), none)


def seam(kind: SeamKind, how: Making, first: str, second: str = "") -> Seam:
    """Return a seam between edges written as “piece edge”; no second one for an edge turned."""
    runs = [tuple(EdgeRun(*_run(side)) for side in (text,) if side) for text in (first, second)]
    return Seam(kind, runs[0], runs[1], making=how)


def _run(text: str) -> tuple[str, tuple[str, ...]]:
    piece, edge = text.split()
    return piece, (edge,)


def _named(piece: Piece, **names: str) -> Piece:
    """A rectangle whose edges are called otherwise."""
    return replace(piece, edges=tuple(replace(e, name=names[e.name]) for e in piece.edges))


FRONT = rectangle("front", 200, 500, {"bottom": 25, "right": 10})
BACK = rectangle("back", 200, 500, {"bottom": 25, "right": 10})
LONGER = rectangle("front", 204, 500)
SLEEVE = rectangle("sleeve", 396, 300, {"bottom": 20})
_HALVES = rectangle("sleeve_back", 170, 500), rectangle("sleeve_front", 150, 500)
STRIP = rectangle("neckband", 480, 40, {"top": 6, "bottom": 6})
SKIRT = rectangle("skirt", 700, 600, {"top": 23, "bottom": 15})
SASH = rectangle("belt", 1700, 60, grain=(1, 0))
BAG = rectangle("pocket", 170, 260, count=4)
_STRIPS = tuple(
    replace(
        _named(
            rectangle(name, 70, 50), top="shoulder", right="end", bottom="shoulder_2", left="neck"
        ),
        points={f"button_{i}": Point(35 * i - 17.5, 12.5) for i in (1, 2)},
    )
    for name in ("placket_facing", "placket_underlap")
)
OPEN_BAND = _named(STRIP, top="neckline", right="end", bottom="neckline_2", left="end_2")
FACED = rectangle("back_facing", 200, 80, {"bottom": 0})

_SHOULDER = seam(SeamKind.SHOULDER, SHOULDERS, "front top", "back top")
_PLACKET = tuple(
    replace(seam(SeamKind.PLACKET, PLACKET, *run), where="left")
    for run in (("placket_facing shoulder", "front top"), ("placket_underlap shoulder", "back top"))
)
_SIDE = seam(SeamKind.SIDE, SIDES_CLOSED, "front right", "back right")
_POCKET = seam(SeamKind.POCKET, POCKET, "pocket right", "pocket right")
_SLIT = seam(SeamKind.SLIT, SLIT, "panel right", "panel right")
_WAIST = seam(SeamKind.WAIST, STAYED_WAIST, "skirt top", "skirt bottom")
_PANEL = rectangle("panel", 200, 80, {"right": 15})
_TIER = rectangle("second_tier", 1050, 300)
_HUNG = replace(seam(SeamKind.WAIST, TIER, "second_tier top", "skirt bottom"), ratio=1.5)
_BODY = (FRONT, BACK)
_DART = Dart("waist dart", ruled(Point(90, 150), Point(100, 250), Point(90, 350)), 20.0)


def _banded(kind: SeamKind, how: Making, edges: str) -> Pattern:
    """A pattern with one seam of the band to itself or to the back."""
    return pattern_of((STRIP, BACK), (seam(kind, how, *edges.split(", ")),))


SAMPLES: Mapping[str, Pattern] = MappingProxyType(
    {
        "plain": pattern_of(
            _BODY,
            (
                seam(SeamKind.SIDE, PLAIN, "front right", "back right"),
                seam(SeamKind.BAND_JOIN, PLAIN, "front top", "front bottom"),
            ),
        ),
        "centre-seams": pattern_of(
            _BODY, (seam(SeamKind.PANEL, CENTRE_SEAM, "back left", "back left"),)
        ),
        "side-darts": pattern_of(
            _BODY, (seam(SeamKind.DART, SIDE_DART, "front top", "front bottom"),)
        ),
        "waist-darts": pattern_of((replace(FRONT, darts=(_DART,)), replace(BACK, darts=(_DART,)))),
        "sides-eased": pattern_of(_BODY, (replace(_SIDE, fullness=Fullness(12, 40, 120)),)),
        "sides-gathered": pattern_of(
            _BODY, (replace(_SIDE, fullness=Fullness(40, 40, 120, gathered=True)),)
        ),
        "shoulders": pattern_of(_BODY, (_SHOULDER,)),
        "shoulders-bent": pattern_of(
            _BODY, (seam(SeamKind.SHOULDER, BENT_SHOULDERS, "front top", "back top"),)
        ),
        "shoulders-eased": pattern_of((LONGER, BACK), (_SHOULDER,)),
        "band-ring": _banded(SeamKind.BAND_JOIN, BAND_RING, "neckband left, neckband right"),
        "band": _banded(SeamKind.NECKBAND, BAND, "neckband top, back top"),
        "collar": pattern_of(
            (rectangle("collar", 480, 120, {"top": 6, "bottom": 6}), BACK),
            (seam(SeamKind.NECKBAND, COLLAR, "collar top", "back top"),),
        ),
        "band-flat": pattern_of(
            (STRIP, *_BODY),
            (
                _SHOULDER,
                seam(SeamKind.BAND_JOIN, BAND_FLAT, "neckband left", "neckband right"),
                seam(SeamKind.NECKBAND, BAND_FLAT, "neckband top", "back bottom"),
            ),
        ),
        "band-mitre": _banded(SeamKind.BAND_JOIN, BAND_MITRE, "neckband left, neckband right"),
        "v-band": _banded(SeamKind.NECKBAND, V_BAND, "neckband top, back top"),
        "placket": pattern_of(
            (OPEN_BAND, *_STRIPS, *_BODY),
            (
                replace(_SHOULDER, making=PLACKET_SHOULDERS),
                *_PLACKET,
                seam(SeamKind.NECKBAND, PLACKET_BAND, "neckband neckline", "back bottom"),
            ),
        ),
        "turned-neck": pattern_of(_BODY, (seam(SeamKind.NECK_EDGE, TURNED_NECK, "front top"),)),
        "turned-v": pattern_of(_BODY, (seam(SeamKind.NECK_EDGE, TURNED_V, "front top"),)),
        "cowl": pattern_of(_BODY, (seam(SeamKind.NECK_EDGE, COWL, "front top", "back top"),)),
        "facing-ring": pattern_of(
            (FACED,),
            (
                seam(
                    SeamKind.FACING_SHOULDER,
                    FACING_RING,
                    "back_facing left",
                    "back_facing right",
                ),
            ),
        ),
        "facing": pattern_of(
            (FACED, BACK),
            (seam(SeamKind.FACING, FACING, "back_facing top", "back top"),),
        ),
        "v-facing": pattern_of(
            (FACED, BACK),
            (seam(SeamKind.FACING, V_FACING, "back_facing top", "back top"),),
        ),
        "armband-ring": _banded(SeamKind.BAND_JOIN, ARMBAND_RING, "neckband left, neckband right"),
        "cuff-ring": _banded(SeamKind.BAND_JOIN, CUFF_RING, "neckband left, neckband right"),
        "cuff": _banded(SeamKind.CUFF, CUFF_ON, "neckband top, back top"),
        "hem-band-ring": _banded(SeamKind.BAND_JOIN, HEM_RING, "neckband left, neckband right"),
        "hem-halves-ring": pattern_of(
            (rectangle("neckband", 400, 120),),
            (
                seam(SeamKind.BAND_JOIN, HEM_HALVES_RING, "neckband left", "neckband left"),
                seam(SeamKind.BAND_JOIN, HEM_HALVES_RING, "neckband right", "neckband right"),
            ),
        ),
        "hem-halves": _banded(SeamKind.HEM_BAND, HEM_HALVES, "neckband top, back top"),
        "hem-band": _banded(SeamKind.HEM_BAND, HEM_BAND, "neckband top, back top"),
        "armband": _banded(SeamKind.ARMBAND, ARMBAND, "neckband top, back top"),
        "armhole-turned": pattern_of(
            _BODY, (seam(SeamKind.ARM_EDGE, TURNED_ARMHOLE, "front left", "back left"),)
        ),
        "arm-facing-ring": pattern_of(
            (FACED,),
            (
                seam(
                    SeamKind.FACING_SHOULDER,
                    ARM_FACING_RING,
                    "back_facing left",
                    "back_facing right",
                ),
            ),
        ),
        "arm-facing": pattern_of(
            (FACED, BACK),
            (seam(SeamKind.ARM_FACING, ARM_FACING, "back_facing top", "back top"),),
        ),
        "pocket": pattern_of((BAG,), (_POCKET,)),
        "sleeves": pattern_of(
            (SLEEVE, rectangle("back", 396, 500)),
            (seam(SeamKind.SLEEVE, SLEEVE_FLAT, "sleeve top", "back top"),),
        ),
        "sleeves-stretched": pattern_of(
            (SLEEVE, rectangle("back", 400, 500)),
            (seam(SeamKind.SLEEVE, SLEEVE_FLAT, "sleeve top", "back top"),),
        ),
        "sleeves-round": pattern_of(
            (SLEEVE, rectangle("back", 396, 500)),
            (
                seam(SeamKind.SIDE, SLEEVE_SEAM, "sleeve left", "sleeve right"),
                seam(SeamKind.SLEEVE, SLEEVE_ROUND, "sleeve top", "back top"),
            ),
        ),
        "raglan": pattern_of(
            (*_HALVES, BACK),
            (
                seam(SeamKind.SHOULDER, OVERARM, "sleeve_front left", "sleeve_back right"),
                seam(SeamKind.RAGLAN, RAGLAN, "sleeve_back left", "back right"),
            ),
        ),
        "raglan-band": pattern_of(
            (STRIP, *_HALVES, BACK),
            (
                seam(SeamKind.RAGLAN, RAGLAN, "sleeve_back left", "back right"),
                seam(SeamKind.NECKBAND, BAND, "neckband top", "back top"),
            ),
        ),
        "sides": pattern_of(_BODY, (_SIDE,)),
        "sides-above-a-slit": pattern_of((*_BODY, _PANEL), (_SIDE, _SLIT)),
        "sides-with-pockets": pattern_of((*_BODY, BAG), (_POCKET, _SIDE)),
        "sides-to-a-waist": pattern_of((*_BODY, SKIRT), (_SIDE, _WAIST)),
        "sleeve-hem": pattern_of(
            (SLEEVE,), (seam(SeamKind.SLEEVE_HEM, SLEEVE_HEM, "sleeve bottom"),)
        ),
        "panels": pattern_of(
            (SKIRT,), (seam(SeamKind.PANEL, PANELS, "skirt left", "skirt right"),)
        ),
        "stayed-waist": pattern_of((SKIRT,), (_WAIST,)),
        "drawn-in-waist": pattern_of(
            (SKIRT,),
            (replace(_WAIST, making=replace(STAYED_WAIST, elastic=Elastic(650.0, 8.0))),),
        ),
        "drawn-in-gathers": pattern_of(
            (SKIRT, _TIER),
            (replace(_HUNG, making=replace(GATHERED_WAIST, elastic=Elastic(650.0, 8.0))),),
        ),
        "waistband-ring": _banded(
            SeamKind.BAND_JOIN, WAISTBAND_RING, "neckband left, neckband right"
        ),
        "waistband": _banded(SeamKind.WAISTBAND, WAISTBAND, "neckband top, back top"),
        "casing": pattern_of(
            (SKIRT,),
            (seam(SeamKind.CASING, replace(CASING, elastic=Elastic(710.0, 15.0)), "skirt top"),),
        ),
        "tier": pattern_of((SKIRT, _TIER), (replace(_HUNG, kind=SeamKind.TIER),)),
        "gathered-waist": pattern_of((SKIRT, _TIER), (replace(_HUNG, making=GATHERED_WAIST),)),
        "gathered-band": pattern_of(
            (SKIRT, _TIER),
            (
                replace(
                    _HUNG,
                    kind=SeamKind.WAISTBAND,
                    first=_HUNG.second,
                    second=_HUNG.first,
                    making=GATHERED_BAND,
                    ratio=0.6,
                    drawn_in=1 / 1.5,
                ),
            ),
        ),
        "slit": pattern_of((_PANEL,), (_SLIT,)),
        "panels-above-a-slit": pattern_of(
            (SKIRT, _PANEL),
            (seam(SeamKind.PANEL, PANELS, "skirt left", "skirt right"), _SLIT),
        ),
        "vent": pattern_of((_PANEL,), (seam(SeamKind.SLIT, VENT, "panel right", "panel right"),)),
        "hem": pattern_of(_BODY, (seam(SeamKind.HEM, TURNED_UP, "front bottom"),)),
        "hung-hem": pattern_of((SKIRT,), (seam(SeamKind.HEM, HUNG_HEM, "skirt bottom"),)),
        "belt": pattern_of((SASH,), (seam(SeamKind.BELT, BELT, "belt top", "belt bottom"),)),
    }
)
"""A pattern for every way of making a seam, and for what changes its sentences."""
