"""A finished draft as a hand follows it: its curves get points, its tracings only what is needed.

A block draws curves through the points that mean something. What a pencil needs besides, points
C1, C2 … beside the straight lines between those and the directions at both ends, is found here
from the true curve (:mod:`geometry.hand_points`), for whoever is told the draft.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import count, pairwise

from msgspec.structs import replace

from tapewise_core.drafting.curve_steps import Curve
from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.guide_steps import Beside, off_line
from tapewise_core.drafting.steps import Straight, Trace
from tapewise_core.drafting.tracing import trimmed
from tapewise_core.drafting.ways import way_of
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import nearest
from tapewise_core.geometry.hand_points import bent_points, runs
from tapewise_core.geometry.path import Path

SNAP = 5.0
"""Where a ruled part ends so near to a point that has a name, it ends there [mm] (our choice)."""

CLOSE = 12.0
"""A named point so near to another of its curve is none of those it is drawn through [mm]: told
to the millimetre, two so close would turn it (our choice)."""

ON = 0.3
"""A named point that lies further from a curve is none of its points [mm]."""

BENT = 0.1
"""Ruled parts that turn by less go on in one line [degrees]."""

HARDLY = 0.4
"""A curve that is nowhere further from a straight line is ruled [mm] (our choice): pencils are as
wide."""

CURVE = "C"
"""The family of the points on curves."""


def by_hand(draft: Draft) -> Draft:
    """Return the draft with all that a hand needs to be told."""
    told = Draft(draft.title)
    for number, step in enumerate(draft.steps):
        match step:
            case Curve():
                told = _curve(told, step)
            case Trace():
                told = told.then(trimmed(step, draft.steps[number + 1 :]))
            case _:
                told = told.then(step)
    return told


Span = tuple[float, float]
"""From one walked distance to another [mm]."""


class _Node(Frozen):
    """A point of a curve: how far along it stands [mm], and its name, if it has one already."""

    at: float
    name: str


class _Shape(Frozen):
    """A curve's nodes in order, and the spans between them that are ruled."""

    nodes: tuple[_Node, ...]
    ruled: tuple[Span, ...]


def _curve(draft: Draft, step: Curve) -> Draft:
    """Mark the points that a curve lacks, then draw it through all of them."""
    shape = _named(draft, _shape(draft.paper, step))
    for start, end in pairwise(name for name in step.names if _known(shape, name)):
        draft = _beside(draft, step, shape, start, end)
    names = tuple(node.name for node in shape.nodes)
    straight = tuple(_ruled_names(shape))
    if straight == (names,) or (len(names) == 2 and _bends(step.path) < HARDLY):
        return draft.then(Straight(step.line, names))
    ruled = {end for parts in straight for end in (parts[0], parts[-1])}
    first, last = (
        () if end in ruled else way_of(draft, end, way, beside)
        for end, way, beside in (
            (names[0], step.path.leaving(), names[1]),
            (names[-1], -step.path.arriving(), names[-2]),
        )
    )
    return draft.then(replace(step, names=names, straight=straight, ways=(first, last)))


def _bends(path: Path) -> float:
    """How far a path is from the straight line between its ends [mm]."""
    way = (path.end - path.start).unit()
    return max(abs(way.cross(point - path.start)) for point in path.flattened())


def _known(shape: _Shape, name: str) -> bool:
    return any(node.name == name for node in shape.nodes)


def _shape(paper: DraftingPaper, step: Curve) -> _Shape:
    """Where a curve is ruled, and where the rest of it has its points."""
    between = [(*nearest(step.path, paper.point(name)), name) for name in step.names[1:-1]]
    nodes = {0.0: step.names[0], step.path.length(): step.names[-1]}
    for at, there, name in between:
        if (paper.point(name) - there).length() <= ON and all(
            abs(at - other) > CLOSE for other in nodes
        ):
            nodes[at] = name
    spans: list[Span] = []
    done = 0.0
    for run in runs(step.path):
        end = done + run.path.length()
        first, last = _snapped(done, nodes), _snapped(end, nodes)
        if run.straight:
            spans.append((first, last))
        else:
            inside = [at - done for at in nodes if done + CLOSE < at < end - CLOSE]
            for at in bent_points(run.path, inside)[1:-1]:
                nodes.setdefault(_snapped(at + done, nodes), "")
        nodes.setdefault(first, "")
        nodes.setdefault(last, "")
        done = end
    found = tuple(_Node(at, nodes[at]) for at in sorted(nodes))
    return _Shape(found, _in_line(step.path, spans))


def _snapped(at: float, nodes: dict[float, str]) -> float:
    """A distance, or that of a node which is hardly another."""
    return next((other for other in nodes if abs(other - at) < SNAP), at)


def _named(draft: Draft, shape: _Shape) -> _Shape:
    """Number the nodes that have no name."""
    numbers = count(draft.paper.next_of(CURVE))
    nodes = (
        node if node.name else replace(node, name=f"{CURVE}{next(numbers)}") for node in shape.nodes
    )
    return replace(shape, nodes=tuple(nodes))


def _beside(draft: Draft, step: Curve, shape: _Shape, start: str, end: str) -> Draft:
    """Mark a curve's own points between two that stand on the paper already."""
    names = [node.name for node in shape.nodes]
    between = shape.nodes[names.index(start) + 1 : names.index(end)]
    ends = draft[start], draft[end]
    places = tuple(off_line(node.name, step.path.at(node.at)[0], *ends) for node in between)
    return draft.then(Beside(start, end, step.line, places)) if places else draft


def _ruled_names(shape: _Shape) -> Iterator[tuple[str, ...]]:
    """The names along every ruled part, parts that go on in one line told as one."""
    for first, last in shape.ruled:
        yield tuple(node.name for node in shape.nodes if first <= node.at <= last)


def _in_line(path: Path, spans: Sequence[Span]) -> tuple[Span, ...]:
    """Ruled spans, those that go on in one line as one."""
    found: list[Span] = []
    for span in spans:
        turn = path.at(found[-1][1])[1].angle_to(path.at(span[1])[1]) if found else 0.0
        if found and abs(found[-1][1] - span[0]) < SNAP and turn < BENT:
            found[-1] = found[-1][0], span[1]
        else:
            found.append(span)
    return tuple(found)
