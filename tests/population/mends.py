"""Try every mend that is offered in many random drafts.

    python tests/population/mends.py [--drafts 2000] [--seed 5]

Prints how many proofs fail, how many have a mend and how many have none, by proof, with one
example each of what has none; and every mend that does not do what it says. Not collected by the
tests: it takes a quarter of an hour.
"""

from __future__ import annotations

import argparse
from collections import Counter

from wishes import not_as_offered, wishes

from tapewise_core.errors import TapewiseError
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.mending import mended


def main() -> None:
    """Try what was asked for."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--drafts", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=5)
    asked = parser.parse_args()
    drafts, with_mend, without = 0, Counter[str](), Counter[str]()
    examples, wrong = dict[str, str](), list[str]()
    for who, garment, wish in wishes(asked.drafts, asked.seed):
        try:
            made = mended(draft(who, garment, wish))
        except TapewiseError:
            continue
        drafts += 1
        wrong += [f"{who.name}, {garment}: {fault}" for fault in not_as_offered(made)]
        for proof in made.failing:
            (with_mend if proof.mend else without)[proof.id.value] += 1
            if not proof.mend:
                examples[proof.id.value] = f"{garment} {dict(wish)}"
    print(f"{drafts} drafts, {with_mend.total() + without.total()} proofs fail")
    for name in sorted({*with_mend, *without}):
        print(f"  {name}: {with_mend[name]} with a mend, {without[name]} without", end="")
        print(f", such as {examples[name]}" if name in examples else "")
    print(f"mends that do not do what they say: {len(wrong)}", *wrong, sep="\n  ")


if __name__ == "__main__":
    main()
