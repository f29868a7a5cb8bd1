"""When Python tidies its memory: while somebody reads, not while she waits.

A page that is left leaves some eight thousand objects that point at each other. Looking for them
takes as long as turning the page, and left to itself Python looks in the middle of that.
"""

from __future__ import annotations

import gc

REST = 1.0
"""Seconds after which a page is being read (our choice)."""

MANY = 50_000
"""New objects after which Python tidies up all the same, whoever waits (our choice): some six pages
turned without a rest."""


def later() -> None:
    """Put tidying off, from before the first library is read until somebody rests."""
    gc.set_threshold(MANY, 20, 100)


def keep() -> None:
    """Take all that there is now as here to stay: it is not looked through again."""
    gc.collect()
    gc.freeze()


def tidy() -> None:
    """Let go of pages that were left, and of the lines drawn on them, which Textual remembers."""
    from textual._styles_cache import StylesCache  # not before the first page is on its way

    StylesCache.get_inner_outer.cache_clear()
    gc.collect()
