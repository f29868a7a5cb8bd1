"""The look: chalk on dark cloth, and ink on pattern paper; tape yellow and thread red in both.

Each colour can be told from its ground in a terminal of eight colours too.
"""

from __future__ import annotations

from textual.theme import Theme

CHALK = Theme(
    name="chalk",
    primary="#e8b72c",
    secondary="#8fb8c4",
    accent="#e8b72c",
    foreground="#f1ede2",
    background="#18242b",
    surface="#21313a",
    panel="#2c404a",
    warning="#f0a35e",
    error="#ef7a6d",
    success="#9ccb8f",
    dark=True,
    variables={
        "tape": "#e8b72c",
        "tape-ink": "#1b1a14",
        "footer-key-foreground": "#e8b72c",
        "footer-background": "#21313a",
        "input-selection-background": "#e8b72c 35%",
        "scrollbar": "#6d8f9a",
        "scrollbar-background": "#18242b",
        "block-cursor-background": "#e8b72c",
        "block-cursor-foreground": "#1b1a14",
    },
)
"""Tailor's chalk on dark cloth."""

PAPER = Theme(
    name="paper",
    primary="#7a3b2e",
    secondary="#2f5d6b",
    accent="#7a3b2e",
    foreground="#25231d",
    background="#f3ead6",
    surface="#eadfc6",
    panel="#dccfb0",
    warning="#8a1f00",
    error="#a3221b",
    success="#2f6130",
    dark=False,
    variables={
        "tape": "#e2b33a",
        "tape-ink": "#1b1a14",
        "footer-key-foreground": "#7a3b2e",
        "footer-background": "#eadfc6",
        "input-selection-background": "#c9a24a 45%",
        "scrollbar": "#2f5d6b",
        "scrollbar-background": "#ddd4c1",
        "block-cursor-background": "#2f5d6b",
        "block-cursor-foreground": "#f8f3e6",
    },
)
"""Ink on pattern paper."""

THEMES = (CHALK, PAPER)
