"""Patterns made by hand, as small as a proof needs them; no garment has a part in them."""

from __future__ import annotations

from types import MappingProxyType

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.facts import Facts
from tapewise_core.drafting.pattern import Girth, Pattern
from tapewise_core.drafting.piece import Edge, Notch, Piece, make_piece
from tapewise_core.drafting.seam import EdgeRun, Join, Seam, SeamKind
from tapewise_core.geometry.path import ruled
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.case import Answer, Case
from tapewise_core.proofs.proof import Proof, Silent
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.style import Chosen, Style
from tapewise_core.text.told import Reader
from tapewise_core.units import Length, Unit

CLOTH = Cloth(stretch=0.5, seam=0.4, band=0.5)
"""A jersey of 50 %, sewn with seams that give 40 %."""

SIDES = ("top", "right", "bottom", "left")


def shape(
    name: str,
    corners: tuple[tuple[float, float], ...],
    edges: tuple[str, ...] = SIDES,
    *,
    allowance: float = 10.0,
    folds: tuple[str, ...] = (),
    notches: tuple[Notch, ...] = (),
    points: dict[str, Point] | None = None,
) -> Piece:
    """Return a piece with straight edges from corner to corner [mm], clockwise as seen."""
    places = [Point(*corner) for corner in corners]
    lines = zip(edges, places, [*places[1:], places[0]], strict=True)
    drawn = tuple(
        Edge(edge, ruled(a, b), 0.0 if edge in folds else allowance, fold=edge in folds)
        for edge, a, b in lines
    )
    grain = (places[0], places[-1])
    return make_piece(name, drawn, points or {}, grain, notches=notches, on_fold=bool(folds))


def oblong(name: str, width: float, height: float, edges: tuple[str, ...] = SIDES) -> Piece:
    """Return a piece of four right angles [mm]."""
    return shape(name, ((0, 0), (width, 0), (width, height), (0, height)), edges)


def strip(name: str, edge: str, length: float, *notches: Notch) -> Piece:
    """Return a piece whose upper edge has a name and a length [mm]."""
    corners = ((0.0, 0.0), (length, 0.0), (length, 60.0), (0.0, 60.0))
    return shape(name, corners, (edge, "end", "foot", "start"), notches=notches)


def sewn(kind: SeamKind, first: str, second: str, ratio: float = 1.0, where: str = "") -> Seam:
    """Return a seam of two edges, each written as piece.edge."""
    runs = []
    for one in (first, second):
        piece, edge = one.split(".")
        runs.append((EdgeRun(piece, (edge,)),))
    return Seam(kind, runs[0], runs[1], ratio, where=where)


def style(**values: Length | float | str) -> Style:
    """Return a style in which options have values, underscores for hyphens."""
    chosen = {}
    for name, value in values.items():
        kind = ValueKind.LENGTH if isinstance(value, Length) else ValueKind.RATIO
        chosen[name.replace("_", "-")] = Chosen(kind, value, True)
    return Style(MappingProxyType(chosen))


def case(
    *pieces: Piece,
    seams: tuple[Seam, ...] = (),
    joins: tuple[Join, ...] = (),
    girths: tuple[Girth, ...] = (),
    facts: Facts | None = None,
    style: Style | None = None,
    cloth: Cloth = CLOTH,
) -> Case:
    """Return what a proof is asked about."""
    none: dict[str, float] = {}
    pattern = Pattern(
        "by-hand", "By hand", (), pieces, seams, joins, girths, facts or Facts(), none
    )
    return Case(pattern, style or Style({}), cloth)


def only(answer: Answer) -> Proof:
    """Return the one proof of an answer."""
    assert isinstance(answer, tuple), answer
    (proof,) = answer
    return proof


def reason(answer: Answer) -> str:
    """Return why a proof is silent."""
    assert isinstance(answer, Silent), answer
    return Reader(Unit.CM).spell(answer.reason)


def in_cm(proof: Proof) -> str:
    """Spell what a proof says for a reader of centimetres."""
    return Reader(Unit.CM).spell(proof.says)


def in_inches(proof: Proof) -> str:
    """Spell the same for a reader of inches."""
    return Reader(Unit.IN).spell(proof.says)


def judged(proof: Proof) -> tuple[float, float, str, bool]:
    """Return the numbers of a proof: value, limit, unit, and whether it holds."""
    return proof.value, proof.limit, proof.unit, proof.holds
