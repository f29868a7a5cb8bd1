"""Defaults that are worked out keep to the words and limits that a wearer has to keep to."""

from collections.abc import Iterator

import pytest
from people_made_up import bodies

from tapewise_core.garments.garment import Garment
from tapewise_core.garments.shelf import garments
from tapewise_core.style.settle import settle, within
from tapewise_core.units import Unit

COUNT = 30
"""Bodies of all kinds."""

EACH = 3
"""A word chosen alone is tried on every third body, each word on others than the word before."""


def styles(page: Garment, number: int) -> Iterator[dict[str, str]]:
    """Yield the usual style, and those with one word chosen that a body is tried with."""
    yield {}
    words = [(option.key, word) for option in page.options for word in option.words]
    yield from ({key: word} for key, word in words[number % EACH :: EACH])


@pytest.mark.parametrize("page", garments(), ids=lambda page: page.name)
def test_worked_out_defaults_keep_to_their_words_and_limits(page: Garment) -> None:
    """For thirty bodies in the usual style, and for ten of them with each word chosen alone."""
    for number, body in enumerate(bodies(COUNT)):
        for asked in styles(page, number):
            style = settle(page.options, asked, body, Unit.CM)
            for option in page.options:
                value = style.chosen[option.key].value
                if isinstance(value, str):
                    assert value in option.words, (option.key, asked)
                assert within(option, value) == (), (option.key, asked)
