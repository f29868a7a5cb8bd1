"""Drafts made up at random: any body, any garment, a few options anywhere within their limits."""

from __future__ import annotations

import random
from collections.abc import Iterator, Mapping

from builds import one_build

from tapewise_core.errors import TapewiseError
from tapewise_core.garments.shelf import garments
from tapewise_core.profiles.profile import Profile
from tapewise_core.style.kind import ValueKind
from tapewise_core.style.option import Option
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

Wish = tuple[Profile, str, Mapping[str, str]]
"""Who, which garment, and what is asked for."""


def wishes(count: int, seed: int = 5) -> Iterator[Wish]:
    """Yield so many; about one in three of those that can be drafted has a proof that fails."""
    rng = random.Random(seed)
    pages = garments()
    for number in range(count):
        page = pages[number % len(pages)]
        chosen = [option for option in page.options if rng.random() < 0.12]
        yield one_build(rng, f"wish {number}"), page.name, {o.key: _value(o, rng) for o in chosen}


def _value(option: Option, rng: random.Random) -> str:
    """A value as it is typed: a word, or a number nearer to the usual ones than to the limits."""
    if not option.bounded:
        return rng.choice(list(map(str, option.words)))
    usual = rng.betavariate(1.2, 2.2) if option.low >= 0 else rng.betavariate(3, 5)
    value = option.low + (option.high - option.low) * usual
    return f"{value:.2f}" if option.kind is ValueKind.RATIO else f"{value:.1f}"


def not_as_offered(made: Drafted) -> list[str]:
    """Return what is wrong with the mends of a draft: each is drafted, and mends its proof."""
    before, found = {one.which for one in made.failing}, []
    for proof in made.failing:
        if proof.settings is None:
            continue
        try:
            again = draft(made.profile, made.garment.name, {**made.asked, **proof.settings})
        except TapewiseError as fault:
            found.append(f"{proof.name}: refused, {fault}")
            continue
        failing = {one.which for one in again.failing}
        if proof.which in failing:
            found.append(f"{proof.name}: still fails with {proof.settings}")
        if failing - before:
            found.append(f"{proof.name}: with {proof.settings} another fails")
    return found
