"""The figure in the build of the person: hers, his, a child's, and the tape on it."""

from __future__ import annotations

import pytest

from tapewise_core.measures.body import Reference
from tapewise_core.measures.build import HIP, WAIST, Build, Kind, build_of, shaped_tape
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.croquis import croquis
from tapewise_core.measures.measure import Measure, View
from tapewise_core.measures.tapes import TAPES
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.figure import figure_of
from tapewise_core.tasks.people import body_of
from tapewise_tui.figures import drawn

SLIM = {"height": 172.0, "bust": 84.0, "waist": 64.0, "hip": 90.0, "shoulder_length": 12.5}
FULL = {"height": 163.0, "bust": 124.0, "waist": 112.0, "hip": 130.0, "upper_arm": 40.0}
SMALL = {"height": 128.0, "bust": 64.0, "waist": 58.0, "hip": 68.0}
SLIPS = {"height": 16.8, "bust": 300.0, "waist": 3.0, "waist_to_floor": 20.0, "hip_depth": 99.0}

PEOPLE = {
    "slim woman": build_of(Kind.WOMAN, SLIM),
    "full woman": build_of(Kind.WOMAN, FULL),
    "man": build_of(Kind.MAN, {"height": 182.0, "neck": 41.0, "waist": 90.0}),
    "child": build_of(Kind.CHILD, SMALL),
    "nobody measured": build_of(Kind.ANYBODY, {}),
}
BUILDS = PEOPLE | {"slips": build_of(Kind.ANYBODY, SLIPS)}
"""People, and values that nobody has."""


@pytest.mark.parametrize(("height", "key"), [(46.0, "bust"), (WAIST, "waist"), (HIP, "hip")])
def test_who_measures_more_is_drawn_wider_there_and_nowhere_else(height: float, key: str) -> None:
    """Ten in a hundred more in girth is ten more in width; the other levels stay."""
    more = build_of(Kind.WOMAN, SLIM | {key: SLIM[key] * 1.1, "under_bust": 76.0})
    same = build_of(Kind.WOMAN, SLIM | {"under_bust": 76.0})
    assert more.factor(height) == pytest.approx(1.1 * same.factor(height))
    others = {46.0, WAIST, HIP} - {height}
    assert all(more.factor(level) == same.factor(level) for level in others)


def test_the_waist_lies_where_it_was_measured() -> None:
    """Long legs raise the waist, and with it hip and knee."""
    usual = build_of(Kind.WOMAN, {"height": 170.0, "waist_to_floor": 105.0})
    long = build_of(Kind.WOMAN, {"height": 170.0, "waist_to_floor": 111.0})
    assert usual.y(WAIST) == pytest.approx(65.0)
    for level in (WAIST, HIP):
        assert long.y(level) == pytest.approx(usual.y(level) - 6)


def test_only_a_woman_has_a_breast() -> None:
    """From the front its lines are gone, from the side the chest is flatter."""
    lines = {kind: croquis(View.FRONT, build=Build(kind)).details for kind in Kind}
    assert lines[Kind.MAN] == lines[Kind.CHILD] == lines[Kind.ANYBODY] != lines[Kind.WOMAN]

    def front(kind: Kind) -> float:
        body = croquis(View.SIDE, build=Build(kind)).outline[2]
        return max(point.x for point in body.flattened(0.5) if 400 < point.y < 520)

    assert front(Kind.MAN) < front(Kind.WOMAN) - 10


def test_a_child_s_head_is_large_for_its_body() -> None:
    """A sixth of the height at eight years, not an eighth."""
    child, woman = BUILDS["child"], BUILDS["slim woman"]
    assert 170 / child.y(22.7) == pytest.approx(6.2)
    assert 170 / woman.y(22.7) == pytest.approx(7.5, abs=0.02)


@pytest.mark.parametrize("build", BUILDS.values(), ids=BUILDS)
@pytest.mark.parametrize("row", CATALOGUE, ids=lambda row: row.key)
def test_the_tape_is_on_the_person_and_in_the_picture(row: Measure, build: Build) -> None:
    """Whatever the build: inside its frame, drawn, and never upside down."""
    tape = shaped_tape(TAPES[row.key], build)
    paths = [tape.seen, *([tape.hidden] if tape.hidden else []), *tape.ends()]
    for point in (point for path in paths for point in path.flattened(1.0)):
        assert tape.frame.left <= point.x <= tape.frame.right
        assert tape.frame.top <= point.y <= tape.frame.bottom
    canvas = drawn(row.key, 30, 18, build=build)
    tones = list(canvas.tones.values())
    assert tones.count("tape") >= (4 if build in PEOPLE.values() else 1)
    assert tones.count("body") >= 30
    heights = [build.y(at) for at in range(0, 171, 5)]
    assert heights == sorted(heights)


@pytest.mark.parametrize("key", ["bust", "waist", "high_hip"])
@pytest.mark.parametrize("build", PEOPLE.values(), ids=PEOPLE)
def test_a_girth_s_tape_ends_at_the_body_s_sides(key: str, build: Build) -> None:
    """It goes out of sight where the body does: the path is hers."""
    tape = shaped_tape(TAPES[key], build)
    end = tape.seen.end
    sides = (p for path in croquis(View.FRONT, build=build).outline for p in path.flattened(0.5))
    nearest = min(abs(p.x - end.x) for p in sides if abs(p.y - end.y) < 6)
    assert nearest < 8


@pytest.mark.parametrize(
    ("reference", "age", "kind"),
    [
        (Reference.WOMEN, None, Kind.WOMAN),
        (Reference.MEN, None, Kind.MAN),
        (Reference.NOT_SAID, None, Kind.ANYBODY),
        (Reference.WOMEN, 8.0, Kind.CHILD),
    ],
)
def test_whose_figure_follows_from_the_person(
    reference: Reference, age: float | None, kind: Kind
) -> None:
    """From whose bodies estimates are drawn, and from the age."""
    person = Profile.of("A", reference=reference).with_age(age).with_value("height", 150)
    build = figure_of(person, body_of(person)[0])
    assert build.kind is kind
