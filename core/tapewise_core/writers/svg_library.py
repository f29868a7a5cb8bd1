"""svgwrite as the writer of drawings needs it: what nobody asks of it costs nothing."""

from __future__ import annotations

import sys
from collections.abc import Callable, Mapping
from importlib import import_module
from types import ModuleType
from typing import Any
from xml.etree.ElementTree import Element

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


class Leaf:
    """An element of a drawing without elements of its own but a title, in place of the library's,
    which goes over each attribute five times; its checks are asked all the same."""

    def __init__(
        self, name: str, attributes: Mapping[str, str], *, words: str = "", title: str = ""
    ) -> None:
        self.elementname, self.attributes = name, attributes
        self.words, self.title = words, title

    def get_xml(self) -> Element:
        """Return it as the library asks its elements for themselves."""
        told = Element(self.elementname, dict(sorted(self.attributes.items())))
        if self.words:
            told.text = self.words
        if self.title:
            child = Element("title")
            child.text = self.title
            told.append(child)
        return told

    def check(self, validator: Any) -> None:
        """Let the library check every attribute against the standard; raises its ValueError."""
        validator.check_all_svg_attribute_values(self.elementname, self.attributes)
