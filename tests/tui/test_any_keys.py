"""Whatever is pressed and typed, on every page, with every garment: the app goes on."""

from __future__ import annotations

import os
import random
from pathlib import Path

import pytest
from textual.events import Key
from textual.widgets import Input
from walking import LARGE, Walk, walk

from tapewise_core.measures.body import Reference
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import wizard, work
from tapewise_core.tasks.people import person, store
from tapewise_core.units import Unit
from tapewise_tui.app import TapewiseApp
from tapewise_tui.keys import KEYS
from tapewise_tui.pages.garment import GarmentPage

PRESSES = int(os.environ.get("TAPEWISE_KEYS", "1000"))
"""How many keys the walk presses; set the variable for a longer one."""

BURSTS = (1, 1, 3, 8, 20)
"""How many keys are sent at once, by chance: from somebody who looks to somebody who does not."""

SEED = int(os.environ.get("TAPEWISE_SEED", "20261102"))
"""Where the walk's chance begins; a walk that failed is walked again by its seed."""

FUNCTION = tuple(row.key for name, row in KEYS.items() if name != "quit")
MOVES = ("up", "down", "left", "right", "tab", "shift+tab", "home", "end", "pagedown")
OTHERS = ("enter", "enter", "space", "escape", "backspace", "delete", "ctrl+z", "ctrl+y", "ctrl+a")
TYPED = (
    "92", "0", "-3", "1e9", "nan", "inf", "36 1/4", "36¼ in", "9,9,9", "½", "x", "~bob/x", "[red]",
    "a" * 300, "cm", "  ", "\u202e", "é", "1/0", "5'", "100000000000000000000", "٣", "😀",
)  # fmt: skip
"""What nobody in their senses types, and some of what they do."""


@pytest.fixture(autouse=True)
def no_browser(monkeypatch: pytest.MonkeyPatch) -> None:
    """Open no folder on the desktop of whoever runs the tests."""
    monkeypatch.setattr(TapewiseApp, "open_url", lambda self, url: None)


def begin(chance: random.Random) -> None:
    """Put people on file: nothing measured, a child, too little, everything; one in inches."""
    store.save(Profile.of("Abel Finch", reference=Reference.MEN))
    store.save(Profile.of("Ben Hart").with_age(8).with_value("height", 128))
    store.save(Profile.of("Zoe Hart").with_value("bust", 90))
    store.save(person("Marta Lindqvist").with_unit(Unit.IN))
    page = chance.choice(work.PLACES)
    work.save(work.Work("Marta Lindqvist", page=page, folder="top", when="2026-11-01T10:00:00"))


def at_random(chance: random.Random) -> str:
    """Choose the next key; function keys and moves come more often than the rest."""
    return chance.choice(chance.choice((FUNCTION, MOVES, OTHERS, "0123456789", ("typed",))))


def burst(at: Walk, keys: list[str], chance: random.Random) -> None:
    """Send some keys faster than anything is drawn; a text goes into the field with the cursor,
    a garment is chosen where there is none."""
    for key in keys:
        field = at.app.screen.focused
        if key != "typed":
            letter = key if len(key) == 1 else " " if key == "space" else None
            at.app.post_message(Key(key, letter))
        elif isinstance(field, Input):
            field.value = chance.choice(TYPED)
        elif isinstance(at.app.screen, GarmentPage) and at.app.screen.stands:
            at.app.screen.take("garment", chance.choice(wizard.garments()).title)


def lost(at: Walk) -> str:
    """Return what the desk knows and the file does not, or nothing: values live on disk."""
    profile = at.app.desk.state.profile
    if profile is None or not store.on_file(profile):
        return ""
    return "" if store.load(profile.name).measures == profile.measures else profile.name


@pytest.mark.parametrize("size", [(60, 15), LARGE])
def test_keys_at_random_never_stop_the_app(size: tuple[int, int], data_folder: Path) -> None:
    """A walk over all pages, repeatable by its seed, without an end or a lost value.

    What failed is told with the last keys.
    """
    chance = random.Random(f"{SEED} {size}")
    begin(chance)
    pressed: list[str] = []

    async def steps(at: Walk) -> None:
        while len(pressed) < PRESSES // 2:
            page = at.page.NAME
            keys = [at_random(chance) for _ in range(chance.choice(BURSTS))]
            pressed.extend(f"{page}: {key}" for key in keys)
            burst(at, keys, chance)
            await at.settle()
            assert not (data_folder / "trouble.txt").exists(), pressed[-12:]
            assert not lost(at), pressed[-12:]

    try:
        walk(steps, size)
    except BaseException:
        print("the last keys:", pressed[-12:])
        raise
