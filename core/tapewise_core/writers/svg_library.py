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


def frame(element: Any) -> tuple[str, str]:
    """Return what the library writes before and after the text that an element is to hold."""
    element.add(Held())
    before, after = tostring(element.get_xml(), encoding="unicode").split(f"<{PLACE} />")
    return before, after


def check(text: str, validator: Any) -> None:
    """Let the library check every attribute of lines and words against the standard; raises its
    ValueError."""
    for leaf in fromstring(f"<g>{text}</g>"):
        validator.check_all_svg_attribute_values(leaf.tag, leaf.attrib)


@cache
def _editor() -> Any:
    from svgwrite.extensions import Inkscape

    return Inkscape(library().Drawing(profile="full", debug=False))


@lru_cache(maxsize=256)
def layer(label: str, of: tuple[tuple[str, str], ...]) -> tuple[str, str]:
    """Return the frame of a layer with some attributes, written once for all pictures that have
    it: they are small, and half of what they cost was their layers' groups."""
    return frame(layer_of(_editor(), label, of))


def layer_of(editor: Any, label: str, of: tuple[tuple[str, str], ...]) -> Any:
    """Return a layer as the library's element, as vector editors list it."""
    group = editor.layer(label=label)
    group.update(dict(of))
    return group
