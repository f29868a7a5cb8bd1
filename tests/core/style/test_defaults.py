"""Defaults that are worked out keep to the words and limits that a wearer has to keep to."""

from collections.abc import Iterator

import pytest
from people_made_up import bodies

from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garments
from tapewise_core.style.settle import settle, within
from tapewise_core.units import Unit


def styles(page: Garment) -> Iterator[dict[str, str]]:
    """Yield the usual style, and each with one word chosen."""
    yield {}
    for option in page.options:
        yield from ({option.key: word} for word in option.words)


@pytest.mark.parametrize("page", garments(), ids=lambda page: page.name)
def test_worked_out_defaults_keep_to_their_words_and_limits(page: Garment) -> None:
    """For thirty bodies of all kinds, and for each word chosen alone."""
    for body in bodies(30):
        for asked in styles(page):
            style = settle(page.options, asked, body, Unit.CM)
            for option in page.options:
                value = style.chosen[option.key].value
                if isinstance(value, str):
                    assert value in option.words, (option.key, asked)
                assert within(option, value) == (), (option.key, asked)
