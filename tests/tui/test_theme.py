"""Both looks in terminals of few colours: nothing that is read vanishes in its ground."""

from __future__ import annotations

import pytest
from rich.color import Color, ColorSystem
from textual.theme import Theme
from textual.widgets import OptionList
from walking import Walk, walk

from tapewise_tui.theme import THEMES

PALETTE = (
    (0, 0, 0), (205, 0, 0), (0, 205, 0), (205, 205, 0),
    (0, 0, 238), (205, 0, 205), (0, 205, 205), (229, 229, 229),
)  # fmt: skip
"""What a usual terminal makes of its eight colours (common practice)."""

READ = (
    ("foreground", "background"), ("foreground", "surface"), ("foreground", "panel"),
    ("secondary", "background"), ("secondary", "surface"), ("error", "background"),
    ("error", "surface"), ("text-warning", "background"), ("text-accent", "background"),
    ("text-primary", "background"), ("scrollbar", "scrollbar-background"), ("tape-ink", "tape"),
    ("footer-key-foreground", "footer-background"), ("foreground", "footer-background"),
    ("block-cursor-foreground", "block-cursor-background"),
    ("block-cursor-background", "background"), ("block-cursor-background", "surface"),
)  # fmt: skip
"""What is read, and the ground it stands on."""

LEAST = 3.0
"""The least contrast of large signs and of lines that carry meaning (WCAG 2.2, 1.4.11)."""


def light(color: tuple[int, int, int]) -> float:
    """Return the relative luminance of a colour (WCAG 2.2)."""
    parts = (part / 255 for part in color)
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def of_eight(spelt: str) -> tuple[int, int, int]:
    """Return what a terminal of eight colours shows for a colour."""
    number = Color.parse(spelt[:7].lower()).downgrade(ColorSystem.STANDARD).number
    assert number is not None
    return PALETTE[number % len(PALETTE)]


@pytest.mark.parametrize("theme", THEMES, ids=lambda theme: theme.name)
def test_what_is_read_stands_off_from_its_ground_in_eight_colours(theme: Theme) -> None:
    """Every pair of colours of a look, each made the nearest of eight."""
    colors = theme.to_color_system().generate() | theme.variables
    for ink, ground in READ:
        low, high = sorted(light(of_eight(colors[name])) for name in (ink, ground))
        assert (high + 0.05) / (low + 0.05) >= LEAST, (ink, ground)


@pytest.mark.parametrize("theme", THEMES, ids=lambda theme: theme.name)
@pytest.mark.parametrize("key", ["f5", "f9", "ctrl+p"])
def test_the_line_marked_stands_off_from_the_others_in_eight_colours(
    key: str, theme: Theme
) -> None:
    """In every list over a page, whether it or a field has the keyboard."""

    async def steps(at: Walk) -> None:
        at.app.theme = theme.name
        await at.press(key, "down", "up")
        rows = at.app.screen.query_one(OptionList)
        marked, other = (
            rows.get_visual_style(*part, "option-list--option").rich_style.bgcolor
            for part in (("option-list--option-highlighted",), ())
        )
        assert marked
        assert other
        low, high = sorted(light(of_eight(one.name)) for one in (marked, other))
        assert (high + 0.05) / (low + 0.05) >= LEAST

    walk(steps)
