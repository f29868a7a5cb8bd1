"""When the disk refuses: one sentence, and nothing lost."""

from __future__ import annotations

import pytest
from walking import Walk, walk

from tapewise_core.errors import FilesError
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store


def test_what_the_disk_refuses_stays_on_the_desk(monkeypatch: pytest.MonkeyPatch) -> None:
    """A full disk is said; the value stays; once there is room everything is saved."""
    store.save(Profile.of("Abel Finch"))
    real = store.keep

    def full(mine: Profile, base: Profile | None) -> None:
        raise FilesError("The disk is full; free some space first.")

    async def steps(at: Walk) -> None:
        await at.press("enter", "enter")
        monkeypatch.setattr(store, "keep", full)
        await at.type("170", "enter")
        assert "Kept only until you leave: The disk is full" in at.said
        assert at.app.desk.profile.measures["height"].value == 170
        monkeypatch.setattr(store, "keep", real)
        await at.type("170", "enter")
        assert "full" not in at.said
        assert store.load("Abel Finch").measures["height"].readings == (170.0, 170.0)

    walk(steps)
