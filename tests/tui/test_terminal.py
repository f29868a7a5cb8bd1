"""Terminals that show less: no colour, no letters beyond ASCII, little room."""

from __future__ import annotations

from pathlib import Path

import pytest
from quiet import run
from walking import Walk, walk

from tapewise_tui.screens import SCENES, Scene, own_data, play
from tapewise_tui.terminal import PlainFilter, ascii_only, plain

FOLDER = Path(__file__).with_name("snapshots")
SIZES = [(40, 12), (20, 6), (200, 60)]


@pytest.mark.parametrize("scene", [one for one in SCENES if not one.keys], ids=lambda one: one.name)
def test_every_page_works_without_colour(scene: Scene, monkeypatch: pytest.MonkeyPatch) -> None:
    """NO_COLOR changes no letter of any page."""
    coloured = (FOLDER / f"{scene.name}-80x24.txt").read_text("utf-8")
    monkeypatch.setenv("NO_COLOR", "1")
    with own_data(scene.page):
        assert run(play(scene, (80, 24))).text == coloured


@pytest.mark.parametrize("size", SIZES)
def test_no_page_fails_for_want_of_room(size: tuple[int, int]) -> None:
    """Every page opens on terminals from tiny to huge."""

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for number in "2345671":
            await at.press("f9", number)

    walk(steps, size)


def test_a_plain_terminal_gets_ascii_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    """Figures, boxes and sentences are written cell for cell in ASCII."""
    monkeypatch.setenv("TAPEWISE_ASCII", "1")

    async def steps(at: Walk) -> None:
        await at.press("enter")
        for number in "23456":
            await at.press("f9", number)
            assert any(isinstance(one, PlainFilter) for one in at.app.get_line_filters())
            shown = at.app.export_screenshot()
            words = shown.split("</style>", 1)[-1]
            assert "⣿" not in words
            assert "╷" not in words

    walk(steps)


@pytest.mark.parametrize(
    ("term", "encoding", "expected"),
    [
        ("xterm-256color", "utf-8", False),
        ("xterm", "UTF8", False),
        ("linux", "utf-8", True),
        ("dumb", "utf-8", True),
        ("xterm", "latin-1", True),
        ("xterm", "ascii", True),
    ],
)
def test_a_terminal_is_known_by_name_and_encoding(term: str, encoding: str, expected: bool) -> None:
    """Text consoles and streams that are not UTF-8 are plain."""
    assert ascii_only({"TERM": term}, encoding) is expected


@pytest.mark.parametrize(
    ("told", "expected"),
    [
        ({"LANG": "C"}, True),
        ({"LANG": "POSIX", "LC_CTYPE": "C.UTF-8"}, True),
        ({"LANG": "C.UTF-8"}, False),
        ({"LANG": "C", "LC_ALL": "de_DE.UTF-8"}, False),
        ({"LANG": "de_DE.UTF-8", "LC_ALL": "C"}, True),
        ({"LANG": "C", "TAPEWISE_ASCII": "0"}, False),
        ({"LANG": "de_DE.UTF-8", "TAPEWISE_ASCII": "1"}, True),
    ],
)
def test_a_locale_that_promises_no_more_gets_ascii(told: dict[str, str], expected: bool) -> None:
    """LANG=C is plain, though Python speaks UTF-8 there; the own variable decides over all."""
    assert ascii_only(told, "utf-8") is expected


def test_a_plain_spelling_keeps_every_column() -> None:
    """Each sign has one ASCII sign in its place; wide ones have as many as they are wide."""
    text = "“92½ ± 3 cm” ÷ 4 · Łódź – ⣿ ┃╷ 張"
    spelt = plain(text)
    assert spelt.isascii()
    assert len(spelt) == len(text) + 1


def test_plus_or_minus_is_read_in_plain_ascii() -> None:
    """It takes the spaces beside it, so that it is told from about, and no column moves."""
    for text, spelt in (("92 ± 3", "92+/-3"), ("± 3", "+-3"), ("±    ", "+/-  "), ("(±)", "(~)")):
        assert plain(text) == spelt
        assert len(plain(text)) == len(text)


def test_every_height_of_a_scroll_bar_s_end_has_a_plain_sign() -> None:
    """A bar ends in blocks of eight heights; none of them is a question mark."""
    assert "?" not in plain("▁▂▃▄▅▆▇█")
