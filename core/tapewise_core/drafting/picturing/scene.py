"""What the picture of one step shows: the part of the paper where it happens, before any format."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping

from tapewise_core.drafting.draft import Draft
from tapewise_core.drafting.drafting_paper import DraftingPaper
from tapewise_core.drafting.guide_steps import Beside
from tapewise_core.drafting.marks import Finished, NotchMark
from tapewise_core.drafting.outline_step import Outline
from tapewise_core.drafting.steps import Step
from tapewise_core.frozen import Frozen
from tapewise_core.geometry.outline import Box, box_of
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point

TOGETHER = 1.0
"""Points nearer to each other than this share one place [mm]."""

COARSE = 1.0
"""Flattening of lines when their extent is looked for [mm]."""

WORDS = frozenset("AaI")
"""Letters that are words as well."""

SPREAD = 1.5
"""A new guide that reaches further than so many times what is lettered is cut off."""


class Spot(Frozen):
    """Points at one place: their letters; ``new`` ones are of this step, ``named`` ones told."""

    names: tuple[str, ...]
    at: Point
    new: bool
    named: bool


class Measure(Frozen):
    """A length the step states, from a point straight to another [mm]."""

    start: Point
    end: Point
    by: float


class Scene(Frozen):
    """One step on the paper: old and new lines, and old and new guides, in the order drawn.

    ``focus`` is where the step happens, ``whole`` is all that the draft comes to [mm].
    """

    step: Step
    focus: Box
    whole: Box
    lines: tuple[Path, ...]
    new_lines: tuple[Path, ...]
    guides: tuple[Path, ...]
    new_guides: tuple[Path, ...]
    spots: tuple[Spot, ...]
    measures: tuple[Measure, ...]
    marks: tuple[NotchMark, ...]
    new_marks: tuple[NotchMark, ...]
    shown: Finished | None


def scenes(draft: Draft) -> Iterator[Scene]:
    """Yield what the picture of each step shows."""
    whole = _whole(draft.paper)
    before = DraftingPaper()
    for step, paper in zip(draft.steps, draft.papers, strict=True):
        yield _scene(step, paper, before, whole)
        before = paper


def _whole(paper: DraftingPaper) -> Box:
    """All that is lettered or belongs to the pattern in the end."""
    points = list(paper.points.values())
    for path in paper.lines.values():
        points += path.flattened(COARSE)
    return box_of(points)


def _scene(step: Step, paper: DraftingPaper, before: DraftingPaper, whole: Box) -> Scene:
    lines, new_lines = _parted(paper.lines, before.lines)
    guides, new_guides = _parted(paper.guides, before.guides)
    spots = tuple(_spots(step, paper, before))
    measures = tuple(_measures(step, paper))
    new_marks = paper.marks[len(before.marks) :]
    happens = [spot.at for spot in spots if spot.new or spot.named]
    happens += [point for path in new_lines for point in path.flattened(COARSE)]
    happens += [mark.at for mark in new_marks]
    happens += _reached(new_guides, happens)
    return Scene(
        step,
        box_of(happens) if happens else whole,
        whole,
        lines,
        new_lines,
        guides,
        tuple(path for path in new_guides if not _measured(path, measures)),
        spots,
        measures,
        paper.marks[: len(before.marks)],
        new_marks,
        step.shown if isinstance(step, Outline) else None,
    )


def _parted(
    now: Mapping[str, Path], before: Mapping[str, Path]
) -> tuple[tuple[Path, ...], tuple[Path, ...]]:
    """Lines that were there before, and those that are new or new drawn."""
    old: list[Path] = []
    new: list[Path] = []
    for name, path in now.items():
        (old if before.get(name) is path else new).append(path)
    return tuple(old), tuple(new)


def _spots(step: Step, paper: DraftingPaper, before: DraftingPaper) -> Iterator[Spot]:
    """Letters with their points; letters at one place are set as one word."""
    named, places = _named(step, paper), dict[tuple[int, int], list[str]]()
    now, then = paper.points, before.points
    moved = {name for name, at in now.items() if _moved(then.get(name), at)}
    for name, at in now.items():
        places.setdefault((round(at.x / TOGETHER), round(at.y / TOGETHER)), []).append(name)
    for names in places.values():
        new, told = not moved.isdisjoint(names), not named.isdisjoint(names)
        yield Spot(tuple(names), now[names[0]], new, told)


def _moved(before: Point | None, now: Point) -> bool:
    """Say whether a point is new or lies elsewhere; most are the very same."""
    return before is not now and before != now


def _named(step: Step, paper: DraftingPaper) -> set[str]:
    """The letters that the step's words name; what may be a word too only where it is sure."""
    told = " ".join(part for part in step.tell() if isinstance(part, str))
    found = set(re.findall(r"\w+", told)).intersection(paper.points)
    unsure = found & WORDS
    if not unsure:
        return found
    sure = {name for line in re.findall(r"\w+(?:–\w+)+", told) for name in line.split("–")}
    return found - {name for name in unsure - sure if name not in _held(step)}


def _held(part: object) -> Iterator[object]:
    """What a step is made of, one level deep."""
    for name in getattr(part, "__struct_fields__", ()):
        held = getattr(part, name)
        yield from held if isinstance(held, tuple) else (held,)


def _measures(step: Step, paper: DraftingPaper) -> Iterator[Measure]:
    for start, end, by in step.stated():
        if start in paper.points and end in paper.points:
            yield Measure(paper.points[start], paper.points[end], by.mm)
    if isinstance(step, Beside) and not step.table():
        for foot, place in zip(step.feet(paper), step.places, strict=True):
            yield Measure(paper.points[step.start], foot, place.along.mm)
            if place.beside:
                yield Measure(foot, paper.points[place.name], place.out.mm)


def _measured(path: Path, measures: Iterable[Measure]) -> bool:
    """Say whether a guide is no more than the line of a measure, which is drawn anyway."""
    if len(path.segments) > 1:
        return False
    return any((path.start, path.end) == (one.start, one.end) for one in measures)


def _reached(guides: Iterable[Path], happens: list[Point]) -> list[Point]:
    """The extent of new guides, but for those that reach far beyond what is lettered."""
    room = box_of(happens) if happens else None
    found: list[Point] = []
    for path in guides:
        points = path.flattened(COARSE)
        own = box_of(points)
        if room is None or max(own.width, own.height) <= SPREAD * max(room.width, room.height):
            found += points
    return found or ([] if happens else [p for path in guides for p in path.flattened(COARSE)])
