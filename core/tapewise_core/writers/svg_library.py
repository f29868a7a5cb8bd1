"""svgwrite as the writer of drawings needs it: what nobody asks of it costs nothing."""

from __future__ import annotations

from collections.abc import Iterable
from types import ModuleType
from typing import Any
from xml.etree.ElementTree import Element, fromstring

from tapewise_core.writers.late import imported

LATE = ("svgwrite.data.svgparser", "urllib.request")
"""Where the library keeps the patterns of its checks, compiled when they are imported, and what it
would fetch fonts with. Both together take several times as long to import as all the rest of it;
the patterns are needed only where ``debug`` asks for checks, the other never."""


def library() -> ModuleType:
    """Return svgwrite, what it seldom needs left for later."""
    return imported("svgwrite", *LATE)


class Leaves:
    """Lines and words of a group, spelt one after another, in place of the library's elements,
    which cost more than all else of a picture: each attribute is gone over five times. The library
    writes the groups, and at the place of these an empty element, which :func:`filled` replaces."""

    elementname = "path"

    def __init__(self, texts: Iterable[str]) -> None:
        self.text = "".join(texts)

    def get_xml(self) -> Element:
        """Return their place, as the library asks its elements for themselves."""
        return Element(PLACE)

    def check(self, validator: Any) -> None:
        """Let the library check every attribute against the standard; raises its ValueError."""
        for leaf in fromstring(f"<g>{self.text}</g>"):
            validator.check_all_svg_attribute_values(leaf.tag, leaf.attrib)


PLACE = "leaves"


def filled(text: str, leaves: Iterable[Leaves]) -> str:
    """Return what the library wrote with all leaves in their places."""
    first, *others = text.split(f"<{PLACE} />")
    return first + "".join(one.text + after for one, after in zip(leaves, others, strict=True))
