"""Views of a style: they alone know the keys, and what a garment without an option does."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest
from people_made_up import body

import tapewise_core
from tapewise_core.blocks.set_in.style import SetInStyle
from tapewise_core.blocks.skirt.style import SkirtStyle
from tapewise_core.blocks.top.style import TopStyle
from tapewise_core.garments.shelf import garment
from tapewise_core.garments.skirted_dress.style import bodice_style
from tapewise_core.parts.hem_style import HemShape
from tapewise_core.parts.neck_style import Neckline, NeckStyle
from tapewise_core.parts.waist_style import WaistStyle
from tapewise_core.style.cloth import ClothStyle
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.units import Unit

CORE = Path(tapewise_core.__file__).parent

READERS = {"length", "number", "choice", "switch"}
"""A style's methods that take a key."""


def style_of(name: str, **asked: str) -> Style:
    """Return a garment's style for a body of average build."""
    typed = {key.replace("_", "-"): value for key, value in asked.items()}
    return settle(garment(name).options, typed, body(), Unit.CM)


def readings(file: Path) -> Iterator[int]:
    """Yield the lines of a file that read a style by an option's key."""
    for node in ast.walk(ast.parse(file.read_text())):
        match node:
            case ast.Call(
                func=ast.Attribute(value=ast.Name(id="style" | "chosen"), attr=attr),
                args=[ast.Constant(value=str()), *_],
            ) if attr in READERS | {"asked"}:
                yield node.lineno


def test_only_views_and_options_know_the_keys() -> None:
    """Blocks, parts and garments read fields."""
    knowing = ("style.py", "options.py", "allowances.py", "cloth.py")
    found = {file: list(readings(file)) for file in CORE.rglob("*.py")}
    assert [
        file for file, lines in found.items() if lines and not file.name.endswith(knowing)
    ] == []
    assert sum(map(len, found.values())) > 50


def test_a_top_without_some_options_is_plain_there() -> None:
    """The set-in top has no lower or forward shoulder, no fuller arm, seat, slit or facing."""
    top = TopStyle.of(style_of("set-in-top"))
    assert top.figure.even
    plain = (
        top.figure.forward_shoulder,
        top.figure.full_arm,
        top.fullness.full_seat,
        top.hem.slit,
        top.neck.facing_width,
    )
    assert [length.mm for length in plain] == [0] * 5


def test_an_option_that_every_garment_of_a_kind_has_must_be_there() -> None:
    """A view does not invent a neck for a skirt."""
    for view in (NeckStyle, TopStyle, SetInStyle):
        with pytest.raises(KeyError):
            view.of(style_of("circle-skirt"))
    with pytest.raises(KeyError, match="body-length"):
        TopStyle.of(style_of("skirted-dress"))


def test_a_bodice_ends_at_the_waist_and_hangs_lower_in_front() -> None:
    """Shorter by what it is told, straight, longer at the centre front by the bust's lift."""
    one = body()
    style = style_of("skirted-dress", bust_lift="1.5", front_hem_drop="1")
    bodice = bodice_style(one, style, 12.0)
    assert bodice.trunk.length.mm == one["back_waist_length"].mm - 12
    assert bodice.hem.shape is HemShape.STRAIGHT
    assert bodice.fullness.front_hem_drop.mm == 25
    assert bodice.fullness.full_seat.mm == 0


def test_views_have_what_was_chosen() -> None:
    """Words as members, lengths in mm, percentages as fractions, switches as truth."""
    top = TopStyle.of(
        style_of("jersey-top", neckline="v", hem="split", split_length="9", waist_shaping="40")
    )
    assert top.neck.kind is Neckline.V
    assert top.neck.pointed
    assert (top.hem.split, top.hem.curved, top.hem.slit.mm) == (True, False, 90)
    assert top.trunk.shaping == 0.4
    skirt = style_of("circle-skirt", circle="3/4", panels="4", waist_finish="band", stretch="60")
    assert (SkirtStyle.of(skirt).circle, SkirtStyle.of(skirt).panels) == (0.75, 4)
    assert not WaistStyle.of(skirt).casing
    assert SkirtStyle.of(style_of("circle-skirt")).panels is None
    assert ClothStyle.of(skirt).stretch == 0.6


def test_allowances_go_by_the_line() -> None:
    """Hems and necklines have their own, every other line the seam's."""
    style = style_of("jersey-top", seam_allowance="1", neck_allowance="0.5", hem_allowance="3")
    allowances = TopStyle.of(style).allowances
    lines = ("side", "neckline", "hem", "sleeve_hem", "shoulder")
    assert [allowances.along(line) for line in lines] == [10, 5, 30, 30, 10]


def test_the_lower_shoulder_counts_only_where_one_is_lower() -> None:
    """Its amount has a default that means nothing for even shoulders."""
    even = TopStyle.of(style_of("jersey-top", shoulder_drop="5", lower_shoulder_by="2")).figure
    lower = TopStyle.of(
        style_of("jersey-top", shoulder_drop="5", lower_shoulder_by="2", lower_shoulder="right")
    ).figure
    assert (even.lowest_drop, lower.lowest_drop) == (50, 70)
