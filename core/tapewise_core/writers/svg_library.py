"""svgwrite as the writer of drawings needs it: what nobody asks of it costs nothing."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from importlib import import_module
from types import ModuleType
from typing import Any
from xml.etree.ElementTree import Element, fromstring

PATTERNS = "svgwrite.data.svgparser"
"""Where the library keeps the patterns of its checks. It compiles them when it is imported, which
takes longer than all the rest of it, and they are needed only where ``debug`` asks for checks."""


class _Late(ModuleType):
    """Stands in for the patterns while the library is imported: what it takes from here imports
    them when it is called."""

    def __getattr__(self, name: str) -> Callable[[str], bool]:
        if name.startswith("__"):
            raise AttributeError(name)

        def check(text: str) -> bool:
            return bool(getattr(import_module(PATTERNS), name)(text))

        return check


def library() -> ModuleType:
    """Return svgwrite, its patterns left for later where it was not imported yet."""
    if "svgwrite" in sys.modules or PATTERNS in sys.modules:
        return import_module("svgwrite")
    sys.modules[PATTERNS] = _Late(PATTERNS)
    try:
        return import_module("svgwrite")
    finally:
        del sys.modules[PATTERNS]


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
