"""The desk without its pages: in which order what was done is taken back."""

from __future__ import annotations

import pytest

from tapewise_core.measures.body import Origin
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people import store
from tapewise_tui import kept_desk
from tapewise_tui.desk import Desk
from tapewise_tui.desk_state import Done


@pytest.mark.parametrize("more", [2, 3, 5])
def test_the_last_thing_done_is_taken_back_first(
    more: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A change of the list of people after all changes of measures since, of which no more than
    so many are kept."""
    monkeypatch.setattr(kept_desk, "MOST_UNDONE", 3)
    store.save(Profile.of("Ada Byron"))
    desk, back = Desk(), list[str]()
    desk.open(store.load("Ada Byron"))
    desk.value("hip", (98.0,), 98.0, Origin.MEASURED, "hip 98")
    desk.acted(Done("Zoe Hart deleted", "Zoe Hart", lambda: back.append("Zoe Hart")))
    for cm in range(70, 70 + more):
        desk.value("waist", (float(cm),), float(cm), Origin.MEASURED, f"waist {cm}")
    last = [f"Ada Byron, waist {cm}" for cm in reversed(range(70, 70 + more))][:3]
    assert [desk.undo_any() for _ in last] == last
    assert back == []
    assert desk.undo_any() == "Zoe Hart"
    assert back == ["Zoe Hart"]
    assert desk.undo_any() == ("Ada Byron, hip 98" if more == 2 else None)
