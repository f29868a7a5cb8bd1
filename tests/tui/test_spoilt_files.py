"""Files that cannot be used are named on the first page."""

from __future__ import annotations

from pathlib import Path

from walking import Walk, walk

from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import work
from tapewise_core.tasks.people import store


def test_a_spoilt_project_and_spoilt_settings_are_named_at_the_start(data_folder: Path) -> None:
    """Briefly; the doctor tells the rest."""
    store.save(Profile.of("Abel Finch"))
    work.save(work.Work("Abel Finch", name="summer"))
    (place,) = (data_folder / "projects").rglob("*.json")
    place.write_text("[")
    (data_folder / "settings.json").write_text("{")

    async def steps(at: Walk) -> None:
        said = " ".join(at.text().split())
        assert "Cannot be used: “summer” of Abel Finch, what is set once for all." in said

    walk(steps)
