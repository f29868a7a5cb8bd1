"""The neck: bands by their width and cloth, boats that lie, round backs without a step."""

from itertools import pairwise
from types import MappingProxyType

import pytest
from people_made_up import body

from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.seam import SeamKind
from tapewise_core.garments.shelf import garment
from tapewise_core.geometry.path import Path
from tapewise_core.parts.neck_options import BACK_CURVE
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Chosen, Style
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import DEMO, person
from tapewise_core.text.told import Reader, Told
from tapewise_core.units import Unit

GARMENTS = ("jersey-top", "set-in-top", "flared-dress", "skirted-dress")


def made(name: str = "jersey-top", **asked: str) -> Pattern:
    """Draft for an average body."""
    page = garment(name)
    typed = {key.replace("_", "-"): value for key, value in asked.items()}
    return page.draft(body(), settle(page.options, typed, body(), Unit.CM))


def ratio(pattern: Pattern) -> float:
    """Return the ratio the band is sewn on with."""
    return next(seam.ratio for seam in pattern.seams if seam.kind is SeamKind.NECKBAND)


def held_back(pattern: Pattern) -> Told:
    """Return why the band is no shorter."""
    assert pattern.facts.neck
    return pattern.facts.neck.held_back


def neckline(pattern: Pattern) -> float:
    """Return the whole stitched neckline [mm]."""
    return 2 * sum(pattern.piece(name).length("neckline") for name in ("back", "front"))


@pytest.mark.parametrize("name", GARMENTS)
@pytest.mark.parametrize(("width", "stretch"), [("1", "50"), ("2", "50"), ("3", "80")])
def test_a_band_is_shorter_by_three_quarters_of_what_it_narrows(
    name: str, width: str, stretch: str
):
    """Half the circle's law for a cone: the wider the band and the shorter the neckline, the
    more; a cloth that gives it leaves it so, to the hundredth."""
    pattern = made(name, band_width=width, stretch=stretch, neckline="scoop")
    wanted = 1 - 2 * 3.14159265 * 0.75 * float(width) * 10 / neckline(pattern)
    assert ratio(pattern) == pytest.approx(wanted, abs=0.0051)
    assert not held_back(pattern)


def test_a_band_is_never_stretched_on_by_more_than_its_cloth_gives():
    """Its ratio is 1 / 1.15 in a cloth of 25 %, rounded up, and the reason is kept."""
    pattern = made(band_width="4", stretch="25", neckline="scoop")
    assert ratio(pattern) == 0.87
    assert "stand up" in Reader(Unit.CM).spell(held_back(pattern))


def test_a_band_lets_the_head_through():
    """A narrow neck and a large head: the band is longer than it should be, with its reason, and
    opened by a seam of 40 % it is a centimetre over the head."""
    for head in (56.0, 60.0, 64.0):
        page, one = garment("jersey-top"), body(head=head, neck=33.0)
        pattern = page.draft(one, settle(page.options, {"stretch": "80"}, one, Unit.CM))
        assert pattern.facts.neck
        assert 0 <= pattern.facts.neck.opening * 1.4 - (head * 10 + 10) < 0.01 * 1.4 * 500
        assert "head" in Reader(Unit.CM).spell(held_back(pattern))


def test_a_chosen_ratio_and_that_of_a_v_are_kept():
    """What was asked for is drawn; a V's band is hardly stretched whatever its width."""
    assert ratio(made(band_ratio="0.9", band_width="4")) == 0.9
    assert ratio(made(neckline="v", band_width="3")) == 0.92


def test_the_style_of_a_draft_has_the_ratio_that_was_drawn():
    """Before it is drawn the ratio is as near as the sizes tell; the draft's own is recorded, and
    that it was not asked for."""
    drafted = draft(person(DEMO), "jersey-top", {"band-width": "4", "stretch": "100"})
    before = settle(
        drafted.garment.options, {"band-width": "4", "stretch": "100"}, drafted.body, Unit.CM
    )
    chosen = drafted.style.chosen["band-ratio"]
    assert chosen.value == ratio(drafted.pattern)
    assert not chosen.asked
    assert before.number("band-ratio") == pytest.approx(ratio(drafted.pattern), abs=0.03)


def test_why_a_band_stands_up_is_a_remark():
    """A band of four centimetres in a cloth of 50 % can't be short enough; one of two can."""
    for width, said in (("4", 1), ("2", 0)):
        drafted = draft(person(DEMO), "set-in-top", {"band-width": width})
        told = [drafted.reader.spell(remark) for remark in drafted.pattern.remarks]
        assert sum("stand up a little" in each for each in told) == said


def test_only_what_was_not_asked_is_settled_by_a_draft():
    """A chosen value stays whatever the draft found; an option that is not there is left out."""
    style = Style(MappingProxyType({"a": Chosen(ValueKind.RATIO, 0.9, True)}))
    assert style.drawn({"a": 0.8, "b": 0.7}) == style


@pytest.mark.parametrize("broad", ["0", "1"])
@pytest.mark.parametrize("drop", ["4", "5", "7"])
def test_a_boat_lies_three_to_five_below_its_ends(broad: str, drop: str):
    """Wherever a shoulder's slope brings the ends of a wide neckline."""
    front = made(neckline="boat", broad_neck=broad, shoulder_drop=drop).piece("front")
    edge = front.edge("neckline").path
    assert 29 <= abs(edge.start.y - edge.end.y) <= 51


def tightest(path: Path) -> float:
    """The least radius of a path, by its turning between points a millimetre apart [mm]."""
    steps = [path.at(float(at))[1] for at in range(int(path.length()))]
    turns = [a.angle_to(b) for a, b in pairwise(steps)]
    return 57.3 / max(max(turns), 1e-6)


@pytest.mark.parametrize("name", ["jersey-top", "set-in-top"])
@pytest.mark.parametrize("rounded", ["0", "0.5", "1", "1.3", "1.7"])
def test_a_round_back_has_no_step_in_its_neckline(name: str, rounded: str):
    """The back's neckline lies as deep below its ends as any, and bends as gently."""
    path = made(name, round_back=rounded).piece("back").edge("neckline").path
    assert abs(path.start.y - path.end.y) >= BACK_CURVE - 0.6
    assert tightest(path) > 9


@pytest.mark.parametrize("name", GARMENTS)
@pytest.mark.parametrize("drop", ["4", "5", "7"])
def test_a_boat_bends_no_more_tightly_than_its_turned_edge_is_wide(name: str, drop: str):
    """In front and at the back, so that its allowance can be cut."""
    pattern = made(name, neckline="boat", shoulder_drop=drop)
    for piece in ("back", "front"):
        assert tightest(pattern.piece(piece).edge("neckline").path) > 12
