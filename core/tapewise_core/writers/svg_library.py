"""svgwrite as the writer of drawings needs it: what nobody asks of it costs nothing."""

from __future__ import annotations

from functools import cache, lru_cache
from types import ModuleType
from typing import Any
from xml.etree.ElementTree import Element, fromstring, tostring

from tapewise_core.writers.late import imported

LATE = ("svgwrite.data.svgparser", "urllib.request")
"""Where the library keeps the patterns of its checks, compiled when they are imported, and what it
would fetch fonts with. Both together take several times as long to import as all the rest of it;
the patterns are needed only where ``debug`` asks for checks, the other never."""


def library() -> ModuleType:
    """Return svgwrite, what it seldom needs left for later."""
    return imported("svgwrite", *LATE)


class Held:
    """Stands in the library's tree for text that is put there afterwards: lines and words, spelt
    one after another. As elements of the library they cost more than all else of a picture, since
    it goes over each attribute five times."""

    elementname = "path"  # which any group may hold, as the library checks

    def get_xml(self) -> Element:
        """Return its place, as the library asks its elements for themselves."""
        return Element(PLACE)


PLACE = "held"


def _frame(element: Any) -> tuple[str, str]:
    """What the library writes before and after the text that an element is to hold."""
    element.add(Held())
    before, after = tostring(element.get_xml(), encoding="unicode").split(f"<{PLACE} />")
    return before, after


def _editor(drawing: Any) -> Any:
    """What vector editors are told by a drawing."""
    from svgwrite.extensions import Inkscape

    return Inkscape(drawing)


@cache
def sheet(*, told: bool) -> tuple[str, str]:
    """Return the frame of a drawing with a title, ``told`` about or not.

    Written once, with blanks to fill for what every drawing has of its own: its ``width``,
    ``height``, ``view``, ``title`` and what is ``told``.
    """
    drawing = library().Drawing(
        size=("{width}mm", "{height}mm"), viewBox="{view}", profile="full", debug=False
    )
    _editor(drawing)
    drawing.set_desc(title="{title}", desc="{told}" if told else None)
    return _frame(drawing)


@cache
def part() -> tuple[str, str]:
    """Return the frame of a piece's group, blanks for its ``id`` and ``title``."""
    group = library().Drawing(debug=False).g(id="{id}")
    group.set_desc(title="{title}")
    return _frame(group)


@lru_cache(maxsize=256)
def layer(label: str, of: tuple[tuple[str, str], ...]) -> tuple[str, str]:
    """Return the frame of a layer with some attributes, as vector editors list it, written once
    for all pictures that have it: they are small, and half of what they cost was such groups."""
    group = _editor(library().Drawing(profile="full", debug=False)).layer(label=label)
    group.update(dict(of))
    return _frame(group)


def check(text: str) -> None:
    """Let the library check every attribute of a drawing against the standard; raises its
    ValueError or TypeError."""
    drawing = library().Drawing(profile="full", debug=True)
    _editor(drawing)
    for element in fromstring(text).iter():
        named = {_prefixed(name): value for name, value in element.attrib.items()}
        drawing.validator.check_all_svg_attribute_values(_prefixed(element.tag), named)


def _prefixed(name: str) -> str:
    """A name as it stands in the file."""
    space, _, own = name.rpartition("}")
    return f"inkscape:{own}" if space == f"{{{EDITOR}" else own


EDITOR = "http://www.inkscape.org/namespaces/inkscape"
"""What the names are of that vector editors read."""
