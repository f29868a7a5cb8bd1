"""A closer lay: never worse than the plain one, sound, and nothing lost where it cannot be had."""

from __future__ import annotations

from itertools import combinations

import pytest
from making import DAY
from msgspec.structs import replace
from seams_made_up import pattern_of, rectangle

from tapewise_core.drafting.cloth import Cloth, Spread
from tapewise_core.geometry.outline import polygon
from tapewise_core.lay import closer
from tapewise_core.lay.closer import closer_lay, there_is_a_library
from tapewise_core.lay.lay import lay_of
from tapewise_core.lay.packing import LONG
from tapewise_core.tasks import people
from tapewise_core.tasks.drafting import draft

CLOTH = Cloth(stretch=0.5, seam=0.6, band=0.5, width=1030.0)

needs_library = pytest.mark.skipif(not there_is_a_library(), reason="the extra “lay” is absent")


def test_without_the_library_the_plain_search_serves(monkeypatch: pytest.MonkeyPatch) -> None:
    """The longest one, and nobody waits for anything."""
    monkeypatch.setattr(closer, "there_is_a_library", lambda: False)
    monkeypatch.setattr(closer, "_reports", lambda task: pytest.fail("asked all the same"))
    pattern = pattern_of((rectangle("a", 400, 300), rectangle("b", 700, 200)))
    found = closer_lay(pattern, CLOTH, 1)
    assert found.closer
    assert found.length == lay_of(pattern, CLOTH, LONG).length


@pytest.mark.parametrize("cloth", [{"spread": Spread.FOLDED}, {"repeat": 100.0}])
def test_what_the_library_cannot_tie_down_is_not_asked_of_it(
    cloth: dict[str, object], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A fold and a repeat are kept by the plain search."""
    monkeypatch.setattr(closer, "_reports", lambda task: pytest.fail("asked all the same"))
    pattern = pattern_of((rectangle("a", 300, 300),))
    assert closer_lay(pattern, replace(CLOTH, **cloth), 1).pieces  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "says", [[], [{"seconds": 1.0, "length": 1.0, "placed": [[0, 0.0, 0.0, 0.0], [1, 0.0, 1, 1]]}]]
)
def test_a_lay_that_is_none_leaves_the_plain_one(
    says: list[dict[str, object]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nothing came back, or pieces that lie on each other."""
    monkeypatch.setattr(closer, "there_is_a_library", lambda: True)
    monkeypatch.setattr(closer, "_reports", lambda task: iter(says))
    pattern = pattern_of((rectangle("a", 400, 300), rectangle("b", 700, 200)))
    assert closer_lay(pattern, CLOTH, 1).length == lay_of(pattern, CLOTH, LONG).length


@needs_library
def test_the_library_finds_a_sound_lay_in_a_process_of_its_own() -> None:
    """Every piece once, none on another, its grain kept, no longer than the plain lay; and it says
    how it goes."""
    made = draft(people.person("Marta Lindqvist"), "set-in-top", {"sleeve": "long"}, made=DAY)
    heard: list[float] = []
    found = closer_lay(made.pattern, made.cloth, 1, lambda went, length: heard.append(length))
    assert found.length <= lay_of(made.pattern, made.cloth, LONG).length
    assert heard
    assert len(found.pieces) == sum(piece.count for piece in made.pattern.pieces)
    assert found.turned == ()
    shapes = [polygon(one.outlines()[0]) for one in found.pieces]
    assert all(a.intersection(b).area < 1 for a, b in combinations(shapes, 2))
    assert all(one.box.left >= 14 and one.box.right <= 1486 for one in found.pieces)
