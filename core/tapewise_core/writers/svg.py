"""A drawing as SVG at full size: one user unit is one millimetre."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from html import escape
from math import isfinite

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.segments import Line
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.look import FAMILY, NAMES, PRINTED, Look, dashes
from tapewise_core.paper.safe import checked, checked_sheet, plain, slug
from tapewise_core.writers.numbers import number, rounded
from tapewise_core.writers.svg_library import check, frame, layer, layer_of, library


def svg(drawing: Drawing, look: Look = PRINTED, *, debug: bool = False, inline: str = "") -> str:
    """Return the drawing as one SVG document.

    Layers are groups that vector editors list, with one group a piece inside.
    ``inline`` is for a page of HTML: the XML declaration is left out, and ids
    begin with it. ``debug`` lets the library check every attribute against
    the standard. Raises DraftError for a line that is nowhere.
    """
    body = _Sheet(checked_sheet(drawing), look, debug, inline).text()
    return body if inline else f'<?xml version="1.0" encoding="utf-8"?>\n{body}\n'


class _Sheet:
    """One SVG document while it is written."""

    def __init__(self, drawing: Drawing, look: Look, debug: bool, prefix: str) -> None:
        svgwrite = library()
        from svgwrite.extensions import Inkscape

        box = drawing.box
        self.drawing, self.look = drawing, look
        self.prefix = prefix
        self.ids: set[str] = set()
        self.pens: dict[tuple[Dash, float], str] = {}
        self.svg = svgwrite.Drawing(
            size=(f"{number(box.width)}mm", f"{number(box.height)}mm"),
            viewBox=" ".join(map(number, (box.left, box.top, box.width, box.height))),
            profile="full",
            debug=debug,
        )
        self.editor = Inkscape(self.svg)
        self.svg.set_desc(title=drawing.title, desc=drawing.description or None)

    def text(self) -> str:
        """Write everything and return the document."""
        if self.look.paper:
            self._ground(self.look.paper)
        by_layer = ((one, [ink for ink in self.drawing.inks if ink.layer is one]) for one in Layer)
        held = [self._layer(one, inks) for one, inks in by_layer if inks]
        before, after = frame(self.svg)
        return "".join((before, *held, after))

    def _ground(self, colour: str) -> None:
        box = self.drawing.box
        corner = (rounded(box.left), rounded(box.top))
        size = (rounded(box.width), rounded(box.height))
        self.svg.add(self.svg.rect(corner, size, fill=colour))

    def _layer(self, kind: Layer, inks: list[Ink]) -> str:
        colour = self.look.inks[kind]
        told = {"id": self._id(kind.value), "fill": "none", "stroke": colour}
        told |= {"stroke-linejoin": "round", "stroke-linecap": "butt"}
        if any(isinstance(ink, TextLine) for ink in inks):
            told["font-family"] = FAMILY
        given = NAMES[kind], tuple(told.items())
        before, after = frame(layer_of(self.editor, *given)) if self.svg.debug else layer(*given)
        held = (self._part(kind, part, own) for part, own in _by_part(inks))
        return "".join((before, *held, after))

    def _part(self, kind: Layer, part: str, inks: Iterable[Ink]) -> str:
        """The ink of one piece in a group of its own, or ink of none."""
        if not part:
            return self._leaves(inks, self.look.inks[kind])
        group = self.svg.g(id=self._id(f"{kind.value}-{slug(part, 'piece')}"))
        group.set_desc(title=part)
        before, after = frame(group)
        return f"{before}{self._leaves(inks, self.look.inks[kind])}{after}"

    def _leaves(self, inks: Iterable[Ink], colour: str) -> str:
        text = "".join(
            self._words(ink, colour) if isinstance(ink, TextLine) else self._stroke(ink, colour)
            for ink in inks
        )
        if self.svg.debug:
            check(text, self.svg.validator)
        return text

    def _stroke(self, stroke: Stroke, colour: str) -> str:
        data = outline(stroke.path, stroke.closed)
        if "n" in data or not isfinite(stroke.width):  # as nan and inf are spelt
            checked(self.drawing)
        told, name = f'd="{data}"', plain(stroke.name)
        if stroke.filled:
            told += f' fill="{colour}"'
        if name:
            told += f' id="{self._id(slug(f"{stroke.layer}-{plain(stroke.part)}-{name}"))}"'
        told += self._pen(stroke)
        return f"<path {told}>{_title(name)}</path>" if name else f"<path {told} />"

    def _pen(self, stroke: Stroke) -> str:
        """How wide and how broken a line is; one drawing has few kinds."""
        kind = stroke.dash, stroke.width
        if kind not in self.pens:
            told = f' stroke-width="{rounded(stroke.width)}"'
            if broken := dashes(*kind):
                told = f' stroke-dasharray="{" ".join(map(number, broken))}"{told}'
            self.pens[kind] = told
        return self.pens[kind]

    def _words(self, words: TextLine, colour: str) -> str:
        x, y = rounded(words.at.x), rounded(words.at.y)
        if not isfinite(x + y + words.size + words.angle):
            checked(self.drawing)
        told = f'fill="{colour}" font-size="{rounded(words.size)}"'
        if words.bold:
            told += ' font-weight="bold"'
        told += ' stroke="none"'
        if words.anchor != "start":
            told += f' text-anchor="{words.anchor}"'
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


def _by_part(inks: Iterable[Ink]) -> Iterator[tuple[str, list[Ink]]]:
    parts: dict[str, list[Ink]] = {}
    for ink in inks:
        parts.setdefault(plain(ink.part), []).append(ink)
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
    words = [f"M{number(start.x)},{number(start.y)}"]
    for segment in path.segments:
        end = segment.end
        if isinstance(segment, Line):
            words.append(f"L{number(end.x)},{number(end.y)}")
        else:
            words.append(f"C{_pair(segment.leave)} {_pair(segment.arrive)} {_pair(end)}")
    return " ".join([*words, "Z"] if closed else words)


def _pair(point: Point) -> str:
    return f"{number(point.x)},{number(point.y)}"
