"""The chords of many paths at once: taken apart by outlines, and closed."""

from tapewise_core.geometry.chords import chords
from tapewise_core.geometry.path import curved, ruled
from tapewise_core.geometry.point import Point

LINE = ruled(Point(0, 0), Point(100, 0), Point(100, 50))
BEND = curved(Point(100, 50), Point(100, 120), Point(60, 150), Point(0, 150))
BACK = ruled(Point(0, 150), Point(0, 0))


def test_they_are_split_as_each_outline_alone() -> None:
    """So many paths after so many, whatever comes before and after them."""
    outlines = [[LINE, BEND, BACK], [BEND], [BACK, LINE]]
    whole = chords([path for paths in outlines for path in paths], 0.05)
    split = list(whole.split([3, 1, 2]))
    assert len(split) == 3
    for found, paths in zip(split, outlines, strict=True):
        alone = chords(paths, 0.05)
        assert found.rows.tolist() == alone.rows.tolist()
        assert found.firsts.tolist() == alone.firsts.tolist()


def test_a_ring_has_every_place_once() -> None:
    """Where a path begins the one before has ended."""
    found = chords([LINE, BEND, BACK], 0.05)
    inner = [(p.x, p.y) for p in BEND.flattened(0.05)[1:]]
    assert len(inner) > 5
    assert list(map(tuple, found.ring.tolist())) == [(100, 0), (100, 50), *inner, (0, 0)]
