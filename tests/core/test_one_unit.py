"""Whoever reads inches never sees centimetres, and the other way round: every sentence there is.

Every garment is drafted for several people in several styles; what a person could see of it is
collected and searched. Where both units are meant is listed in ``units_seen`` with the reason.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from contextlib import suppress
from functools import cache
from itertools import cycle

import pytest
from units_seen import foreign, inked, words_of, written

from tapewise_core.drafting.told_steps import all_points, told_steps
from tapewise_core.errors import DraftError, OptionError, ReadingError, TapewiseError
from tapewise_core.garments.shelf import PAGES
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.measures.catalogue import CATALOGUE
from tapewise_core.measures.reading import read
from tapewise_core.paper import sizes
from tapewise_core.paper.paging import Paging
from tapewise_core.paper.pattern_set import PatternSet
from tapewise_core.paper.projector import canvas, projected
from tapewise_core.paper.roll import rolled
from tapewise_core.paper.tiling import tiled
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Option
from tapewise_core.style.settle import settle
from tapewise_core.style.style import Style
from tapewise_core.tasks import cloth_tests, guesses, people, shop, wizard
from tapewise_core.tasks.contents import pattern_set
from tapewise_core.tasks.documents import checklist_of, drawings_of, instructions_of
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.people import body_of, person
from tapewise_core.tasks.sheet import measuring_sheet
from tapewise_core.text.told import Reader, joined
from tapewise_core.text.typed import parse_length
from tapewise_core.units import Unit
from tapewise_core.writers.formats import PaperOptions, render

WHO = ("Marta Lindqvist", "Adaeze Nwosu", "Noor Haddad")
"""Somebody fully measured, and people with estimates and figures that are not average."""

EACH_UNIT = pytest.mark.parametrize("unit", list(Unit), ids=lambda unit: unit.name)
EACH_GARMENT = pytest.mark.parametrize("garment", PAGES)


def _styles(garment: str) -> Iterator[dict[str, str]]:
    """The usual style, and others drawn at random among the words there are to choose from."""
    yield {}
    rng = random.Random(garment)
    options = [option for option in on_shelf(garment).options if option.words]
    for _ in range(3):
        yield {one.key: rng.choice(one.words) for one in options if rng.random() < 0.6}
    figure = {"round-back": "0.4 cm", "forward-shoulder": "1 cm", "lower-shoulder": "left"}
    known = {option.key for option in on_shelf(garment).options}
    yield {key: text for key, text in figure.items() if key in known}


@cache
def _drawn(garment: str) -> tuple[Drafted, ...]:
    """A garment for everybody in every style that fits, by turns for readers of either unit."""
    found, units = [], cycle(Unit)
    for who in WHO:
        for asked in _styles(garment):
            with suppress(TapewiseError):
                found.append(draft(person(who), garment, asked, unit=next(units)))
    assert len(found) >= 2 * len(WHO)
    return tuple(found)


@cache
def _drafts(garment: str, unit: Unit) -> tuple[Drafted, ...]:
    """The same, each told in one unit, whichever it was drafted for."""
    return tuple(made.told_in(unit) for made in _drawn(garment))


def _steps(made: Drafted, reader: Reader) -> Iterator[str]:
    """What every step says, and every row of its points."""
    for one in made.told:
        for told in told_steps(one, reader):
            yield from (told.text, *(cell for row in told.rows for cell in row))
        if one.paper.points:
            yield from (cell for row in all_points(one, reader)[1] for cell in row)
    yield from map(reader.spell, made.pattern.remarks)


def _labels(made: Drafted, reader: Reader) -> Iterator[str]:
    for drawing in drawings_of(made.told_in(reader.unit)):
        yield from written(drawing)


def _proofs(made: Drafted, reader: Reader) -> Iterator[str]:
    yield from (f"{proof.name}: {reader.spell(proof.says)}" for proof in made.proofs)


def _checklist(made: Drafted, reader: Reader) -> Iterator[str]:
    yield from words_of(checklist_of(made.told_in(reader.unit)))


@EACH_UNIT
@EACH_GARMENT
def test_a_draft_is_told_in_one_unit(garment: str, unit: Unit) -> None:
    """Steps with their remarks, labels, proofs and the checklist, of every garment."""
    for collect in (_steps, _labels, _proofs, _checklist):
        texts = [text for made in _drawn(garment) for text in collect(made, Reader(unit))]
        assert len(texts) > 50
        assert foreign(texts, unit) == []


@EACH_UNIT
@EACH_GARMENT
def test_instructions_with_their_pictures_are_told_in_one_unit(garment: str, unit: Unit) -> None:
    """The whole document, with the sizes written in its pictures, of one draft in four."""
    texts = [
        text for made in _drafts(garment, unit)[::4] for text in words_of(instructions_of(made))
    ]
    assert len(texts) > 50
    assert foreign(texts, unit) == []


@EACH_UNIT
@EACH_GARMENT
def test_options_are_told_in_one_unit(garment: str, unit: Unit) -> None:
    """What an option is, its value, limits and usual value, in the app and on the command line."""
    rows = wizard.option_rows(person(WHO[0]), garment, {}, unit)
    app = [f"{row.label}: {row.says}; {row.value}; {row.limits}; {row.usual}" for row in rows]
    assert foreign([*app, *shop.garment_lines(garment, unit)], unit) == []


def _extremes(option: Option, unit: Unit) -> tuple[str, ...]:
    """An option's limits, and values beyond them, as they are typed."""
    if option.words:
        return ("nonsense",)
    size = 1.0 if option.kind is not ValueKind.LENGTH or unit is Unit.CM else 2.54
    ends = (option.low - 5, option.low, option.high, option.high + 5)
    return (*(f"{end / size:.6f}" for end in ends), "nonsense", "")


def _settled(garment: str, unit: Unit) -> Iterator[Style | TapewiseError]:
    """For every extreme value of one option the style, or the refusal that it meets."""
    page = on_shelf(garment)
    body, _ = body_of(person(WHO[1]))
    for option in page.options:
        for text in _extremes(option, unit):
            try:
                style = settle(page.options, {option.key: text}, body, unit)
                if faults := page.agree(body, style):
                    raise OptionError(joined(faults))
                yield style
            except TapewiseError as error:
                yield error


@cache
def _undrafted(garment: str) -> tuple[TapewiseError, ...]:
    """Every refusal of such a style by the drafting itself, which knows no unit."""
    page, found = on_shelf(garment), []
    body, _ = body_of(person(WHO[1]))
    for style in _settled(garment, Unit.CM):
        try:
            if isinstance(style, Style):
                page.draft(body, style)
        except TapewiseError as error:
            found.append(error)
    return tuple(found)


def _refusals(garment: str, unit: Unit) -> Iterator[TapewiseError]:
    """Every refusal that an extreme value of one option meets, down to the drafting."""
    yield from (one for one in _settled(garment, unit) if isinstance(one, TapewiseError))
    yield from _undrafted(garment)


@EACH_UNIT
@EACH_GARMENT
def test_refused_options_are_told_in_one_unit(garment: str, unit: Unit) -> None:
    """A value at or beyond its limits is refused in the reader's unit, whatever was typed."""
    texts = [Reader(unit).spell(error.told) for error in _refusals(garment, unit)]
    assert len(texts) > 20
    assert foreign(texts, unit) == []


WILD = (
    ("jersey-top", {"sleeve-ease": "20 cm", "sleeve": "long", "shoulder-drop": "10 cm"}),
    ("jersey-top", {"body-length": "25 cm", "hem": "curved", "hem-rise": "12 cm"}),
    ("flared-dress", {"body-length": "60 cm", "flare": "40 cm"}),
    ("jersey-top", {"neck-rise": "1 cm", "round-back": "2 cm"}),
)
"""What no garment lets pass, each refused at another place of the drafting."""


@EACH_UNIT
@pytest.mark.parametrize(("garment", "asked"), WILD)
def test_what_the_drafting_itself_refuses_is_told_in_one_unit(
    garment: str, asked: dict[str, str], unit: Unit
) -> None:
    """An underarm at the waist, a hem above it, a flare too wide, a length below zero."""
    page, (body, _) = on_shelf(garment), body_of(person(WHO[0]))
    with pytest.raises(DraftError) as refused:
        page.draft(body, settle(page.options, asked, body, unit))
    told = Reader(unit).spell(refused.value.told)
    assert f" {unit.value}" in told
    assert foreign([told], unit) == []


@EACH_UNIT
@EACH_GARMENT
def test_paper_is_told_in_one_unit(garment: str, unit: Unit) -> None:
    """Page map, joining, trimming and the foot of every page; the roll; the projector."""
    drawn = pattern_set(_drafts(garment, unit)[0])
    texts = [text for page in (sizes.A4, sizes.LETTER) for text in _printed(drawn, page)]
    roll = rolled(drawn, sizes.ROLL, sizes.MARGIN)
    texts += [*written(roll.canvas), *(text for one in roll.sheets for text in inked(one.inks))]
    texts += written(canvas(drawn))
    texts += _flowing(inked(projected(drawn).sheets[0].inks))
    assert len(texts) > 100
    assert foreign(texts, unit) == []


def _printed(drawn: PatternSet, page: sizes.PageSize) -> list[str]:
    prints = tiled(drawn, page, sizes.MARGIN, sizes.OVERLAP)
    furniture = [text for sheet in prints.sheets for text in inked(sheet.inks)]
    return [*written(prints.canvas), *_flowing(furniture)]


def _flowing(lines: list[str]) -> list[str]:
    """Set lines joined with their next, since a length may be broken across two of them."""
    return [f"{line} {after}" for line, after in zip(lines, [*lines[1:], ""], strict=True)]


@EACH_UNIT
def test_refused_paper_is_told_in_one_unit(unit: Unit) -> None:
    """Margins, overlaps and rolls that cannot be, and pieces too large."""
    drawn = pattern_set(_drafts("flared-dress", unit)[0])
    texts = [
        _refused(lambda: Paging(sizes.A4, 60, sizes.OVERLAP).grid(), unit),
        _refused(lambda: Paging(sizes.A4, 10, 300).grid(), unit),
        _refused(lambda: rolled(drawn, 150, 10), unit),
        _refused(lambda: rolled(drawn, 270, 10), unit),
        _refused(lambda: render("pdf-a4", drawn, PaperOptions(margin=-3)), unit),
        *(says for _, says in shop.formats()),
    ]
    assert foreign(texts, unit) == []


def _refused(act: Callable[[], object], unit: Unit) -> str:
    with pytest.raises(OptionError) as refused:
        act()
    return Reader(unit).spell(refused.value.told)


@EACH_UNIT
def test_measuring_is_told_in_one_unit(unit: Unit) -> None:
    """The sheet to measure by, refused readings, what is unlikely, what measuring would gain."""
    texts = words_of(measuring_sheet(None, unit))
    for row in CATALOGUE:
        texts += list(_misread(row.key, unit))
    for profile in (person(who) for who in WHO):
        odd = profile.with_value("hip", 46).with_value("waist", 170).with_value("wrist", 40)
        for one in (profile, odd, profile.with_value("bust", 36), profile.with_value("height", 64)):
            texts += [Reader(unit).spell(found.says) for found in people.check(one, unit).findings]
        texts += [guesses.next_measure(profile.without("upper_arm"), name, unit) for name in PAGES]
    assert foreign(texts, unit) == []


def _misread(key: str, unit: Unit) -> Iterator[str]:
    row = next(row for row in CATALOGUE if row.key == key)
    for text in ("", "x", "0", "-3", "1/0", "99999"):
        try:
            read(text, row, unit)
        except ReadingError as error:
            yield Reader(unit).spell(error.told)


@EACH_UNIT
def test_the_fold_test_is_told_in_one_unit(unit: Unit) -> None:
    """A fold that cannot be, and a square after its wash that cannot."""
    for test in (cloth_tests.stretch_from_fold, cloth_tests.shrinkage_from_wash):
        with pytest.raises(ReadingError) as refused:
            test("1", unit)
        assert foreign([Reader(unit).spell(refused.value.told)], unit) == []


@pytest.mark.parametrize(
    ("text", "unit", "found"),
    [
        ("the hem of 4 cm", Unit.IN, True),
        ("pages overlap by 12 mm", Unit.IN, True),
        ("the 100 mm square", Unit.IN, False),
        ("the hem of 1 1/2 in", Unit.CM, True),
        ("two pieces in 4 colours", Unit.CM, False),
        ("4 in a row", Unit.CM, True),
        ("4 in by 4 in", Unit.CM, False),
    ],
)
def test_the_search_finds_the_other_unit(text: str, unit: Unit, found: bool) -> None:
    """It would see a length in the wrong unit, and lets pass where both are meant."""
    assert (foreign([text], unit) == [text]) is found


def test_an_example_of_a_length_may_be_in_either_unit() -> None:
    """What may be typed is shown in both units; nothing else of that sentence is let pass."""
    with pytest.raises(ReadingError) as refused:
        parse_length("x", Unit.CM)
    assert foreign([str(refused.value)], Unit.CM) == []
    assert foreign([f"It is 3 in. {refused.value}"], Unit.CM)
