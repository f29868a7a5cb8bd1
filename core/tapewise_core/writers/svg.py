"""A drawing as SVG at full size: one user unit is one millimetre."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import Point
from tapewise_core.paper.drawing import Drawing, Ink, Layer, Stroke, TextLine
from tapewise_core.paper.look import FAMILY, NAMES, PRINTED, Look, dashes
from tapewise_core.paper.safe import checked, slug
from tapewise_core.writers.numbers import number, rounded
from tapewise_core.writers.svg_library import Leaf, library


def svg(drawing: Drawing, look: Look = PRINTED, *, debug: bool = False, inline: str = "") -> str:
    """Return the drawing as one SVG document.

    Layers are groups that vector editors list, with one group a piece inside.
    ``inline`` is for a page of HTML: the XML declaration is left out, and ids
    begin with it. ``debug`` lets the library check every attribute against
    the standard. Raises DraftError for a line that is nowhere.
    """
    body = _Sheet(checked(drawing), look, debug, inline).text()
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
        for layer in Layer:
            inks = [ink for ink in self.drawing.inks if ink.layer is layer]
            if inks:
                self._layer(layer, inks)
        from svgwrite.etree import etree

        # The library's own way goes through bytes, one small write after another.
        body: str = etree.tostring(self.svg.get_xml(), encoding="unicode")
        return body

    def _ground(self, colour: str) -> None:
        box = self.drawing.box
        corner = (rounded(box.left), rounded(box.top))
        size = (rounded(box.width), rounded(box.height))
        self.svg.add(self.svg.rect(corner, size, fill=colour))

    def _layer(self, layer: Layer, inks: list[Ink]) -> None:
        colour = self.look.inks[layer]
        group = self.editor.layer(label=NAMES[layer], id=self._id(layer.value))
        group.update({"fill": "none", "stroke": colour})
        group.update({"stroke-linejoin": "round", "stroke-linecap": "butt"})
        if any(isinstance(ink, TextLine) for ink in inks):
            group.update({"font-family": FAMILY})
        for part, members in _by_part(inks):
            holder = group
            if part:
                holder = self.svg.g(id=self._id(f"{layer.value}-{slug(part, 'piece')}"))
                holder.set_desc(title=part)
                group.add(holder)
            for ink in members:
                holder.add(self._ink(ink, colour))
        self.svg.add(group)

    def _ink(self, ink: Ink, colour: str) -> Leaf:
        leaf = self._words(ink, colour) if isinstance(ink, TextLine) else self._stroke(ink, colour)
        if self.svg.debug:
            leaf.check(self.svg.validator)
        return leaf

    def _stroke(self, stroke: Stroke, colour: str) -> Leaf:
        told = {
            "d": outline(stroke.path, stroke.closed),
            "stroke-width": str(rounded(stroke.width)),
        }
        broken = dashes(stroke.dash, stroke.width)
        if broken:
            told["stroke-dasharray"] = " ".join(map(number, broken))
        if stroke.filled:
            told["fill"] = colour
        if stroke.name:
            told["id"] = self._id(slug(f"{stroke.layer}-{stroke.part}-{stroke.name}"))
        return Leaf("path", told, title=stroke.name)

    def _words(self, words: TextLine, colour: str) -> Leaf:
        x, y = rounded(words.at.x), rounded(words.at.y)
        told = {"x": str(x), "y": str(y), "font-size": str(rounded(words.size))}
        told |= {"fill": colour, "stroke": "none"}
        if words.anchor != "start":
            told["text-anchor"] = words.anchor
        if words.bold:
            told["font-weight"] = "bold"
        if words.angle:
            told["transform"] = f"rotate({rounded(words.angle)},{x},{y})"
        return Leaf("text", told, words=words.text)

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
        parts.setdefault(ink.part, []).append(ink)
    yield from parts.items()


class _Outline:
    """A pen that spells a path as SVG path data."""

    def __init__(self) -> None:
        self.words: list[str] = []

    def move_to(self, point: Point) -> None:
        self.words.append(f"M{_pair(point)}")

    def line_to(self, point: Point) -> None:
        self.words.append(f"L{_pair(point)}")

    def curve_to(self, leave: Point, arrive: Point, end: Point) -> None:
        self.words.append(f"C{_pair(leave)} {_pair(arrive)} {_pair(end)}")


def outline(path: Path, closed: bool = False) -> str:
    """Return a path as SVG path data [mm]."""
    pen = _Outline()
    path.draw(pen)
    return " ".join([*pen.words, "Z"] if closed else pen.words)


def _pair(point: Point) -> str:
    return f"{number(point.x)},{number(point.y)}"
