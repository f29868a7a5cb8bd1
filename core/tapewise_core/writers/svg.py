"""A drawing as SVG at full size: one user unit is one millimetre."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import lru_cache
from html import escape
from math import isfinite

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.segments import Line
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.look import FAMILY, NAMES, PRINTED, Look, dashes
from tapewise_core.paper.safe import checked, checked_sheet, plain, slug
from tapewise_core.writers.numbers import number, place, rounded
from tapewise_core.writers.svg_library import check, layer, part, sheet


def svg(drawing: Drawing, look: Look = PRINTED, *, debug: bool = False, inline: str = "") -> str:
    """Return the drawing as one SVG document.

    Layers are groups that vector editors list, with one group a piece inside.
    ``inline`` is for a page of HTML: the XML declaration is left out, and ids
    begin with it. ``debug`` lets the library check every attribute against
    the standard. Raises DraftError for a line that is nowhere.
    """
    body = _Sheet(checked_sheet(drawing), look, inline).text()
    if debug:
        check(body)
    return body if inline else f'<?xml version="1.0" encoding="utf-8"?>\n{body}\n'


class _Sheet:
    """One SVG document while it is written."""

    def __init__(self, drawing: Drawing, look: Look, prefix: str) -> None:
        self.drawing, self.look = drawing, look
        self.prefix = prefix
        self.ids: set[str] = set()

    def text(self) -> str:
        """Write everything and return the document."""
        before, after = sheet(told=bool(self.drawing.description))
        ground = self._ground(self.look.paper) if self.look.paper else ""
        by_layer = ((one, [ink for ink in self.drawing.inks if ink.layer is one]) for one in Layer)
        held = [self._layer(one, inks) for one, inks in by_layer if inks]
        return "".join((before.format(**self._own()), ground, *held, after))

    def _own(self) -> dict[str, str]:
        """What this drawing has of its own."""
        drawing, box = self.drawing, self.drawing.box
        return {
            "width": number(box.width),
            "height": number(box.height),
            "view": " ".join(map(number, (box.left, box.top, box.width, box.height))),
            "title": _escaped(drawing.title),
            "told": _escaped(drawing.description),
        }

    def _ground(self, colour: str) -> str:
        box = self.drawing.box
        size = f'height="{rounded(box.height)}" width="{rounded(box.width)}"'
        corner = f'x="{rounded(box.left)}" y="{rounded(box.top)}"'
        return f'<rect fill="{colour}" {size} {corner} />'

    def _layer(self, kind: Layer, inks: list[Ink]) -> str:
        colour = self.look.inks[kind]
        told = {"id": self._id(kind.value), "fill": "none", "stroke": colour}
        told |= {"stroke-linejoin": "round", "stroke-linecap": "butt"}
        if any(isinstance(ink, TextLine) for ink in inks):
            told["font-family"] = FAMILY
        before, after = layer(NAMES[kind], tuple(told.items()))
        held = [self._part(kind, name, own) for name, own in _by_part(inks)]
        return "".join((before, *held, after))

    def _part(self, kind: Layer, name: str, inks: Iterable[Ink]) -> str:
        """The ink of one piece in a group of its own, or ink of none."""
        colour = self.look.inks[kind]
        held = [
            self._words(ink, colour) if isinstance(ink, TextLine) else self._stroke(ink, colour)
            for ink in inks
        ]
        if not name:
            return "".join(held)
        before, after = part()
        own = self._id(f"{kind.value}-{slug(name, 'piece')}")
        return "".join((before.format(id=own, title=_escaped(name)), *held, after))

    def _stroke(self, stroke: Stroke, colour: str) -> str:
        data = outline(stroke.path, stroke.closed)
        if "n" in data or not isfinite(stroke.width):  # as nan and inf are spelt
            checked(self.drawing)
        told = f'd="{data}" fill="{colour}"' if stroke.filled else f'd="{data}"'
        if not stroke.name or not (name := plain(stroke.name)):
            return f"<path {told}{_pen(stroke.dash, stroke.width)} />"
        own = self._id(slug(f"{stroke.layer}-{plain(stroke.part)}-{name}"))
        return f'<path {told} id="{own}"{_pen(stroke.dash, stroke.width)}>{_title(name)}</path>'

    def _words(self, words: TextLine, colour: str) -> str:
        x, y = rounded(words.at.x), rounded(words.at.y)
        if not isfinite(x + y + words.size + words.angle):
            checked(self.drawing)
        told = _type(colour, words.size, words.bold, words.anchor)
        if words.angle:
            told += f' transform="rotate({rounded(words.angle)},{x},{y})"'
        return f'<text {told} x="{x}" y="{y}">{_escaped(plain(words.text))}</text>'

    def _id(self, wanted: str) -> str:
        wanted = self.prefix + wanted
        found, again = wanted, 1
        while found in self.ids:
            again += 1
            found = f"{wanted}-{again}"
        self.ids.add(found)
        return found


@lru_cache(maxsize=256)
def _pen(dash: Dash, width: float) -> str:
    """How wide and how broken a line is; all drawings have the same few kinds."""
    told = f' stroke-width="{rounded(width)}"'
    broken = " ".join(map(number, dashes(dash, width)))
    return f' stroke-dasharray="{broken}"{told}' if broken else told


@lru_cache(maxsize=256)
def _type(colour: str, size: float, bold: bool, anchor: str) -> str:
    """How words are set, apart from where."""
    told = f'fill="{colour}" font-size="{rounded(size)}"'
    if bold:
        told += ' font-weight="bold"'
    told += ' stroke="none"'
    return told if anchor == "start" else f'{told} text-anchor="{anchor}"'


def _by_part(inks: Iterable[Ink]) -> Iterator[tuple[str, list[Ink]]]:
    parts: dict[str, list[Ink]] = {}
    for ink in inks:
        parts.setdefault(plain(ink.part) if ink.part else "", []).append(ink)
    yield from parts.items()


def _title(name: str) -> str:
    return f"<title>{_escaped(name)}</title>"


def _escaped(text: str) -> str:
    return escape(text, quote=False)


def outline(path: Path, closed: bool = False) -> str:
    """Return a path as SVG path data [mm].

    All in one loop, without the pen that other writers draw with: a set has thousands of lines.
    """
    start = path.segments[0].start
    words = [f"M{place(start.x, start.y)}"]
    for segment in path.segments:
        end = segment.end
        if isinstance(segment, Line):
            words.append(f"L{place(end.x, end.y)}")
        else:
            leave, arrive = segment.leave, segment.arrive
            handles = f"{place(leave.x, leave.y)} {place(arrive.x, arrive.y)}"
            words.append(f"C{handles} {place(end.x, end.y)}")
    return " ".join([*words, "Z"] if closed else words)
