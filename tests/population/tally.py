"""What a run counts: crashes, refusals, crossings, teeth, and how asked and given agree."""

from __future__ import annotations

import time
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from tapewise_core.errors import TapewiseError
from tapewise_core.garments.shelf import garment as on_shelf
from tapewise_core.geometry.outline import is_simple
from tapewise_core.geometry.rows import rows
from tapewise_core.geometry.teeth import teeth
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft

NEAR = 1.0
"""Given may differ from asked by so much without being counted [mm]."""


@dataclass
class Tally:
    """Counts over one garment in one style; ``levels`` how often each was asked for."""

    drafts: int = 0
    whole: int = 0
    seconds: float = 0.0
    crashes: Counter[str] = field(default_factory=Counter)
    refused: Counter[str] = field(default_factory=Counter)
    failed: Counter[str] = field(default_factory=Counter)
    crossed: int = 0
    toothed: int = 0
    levels: Counter[str] = field(default_factory=Counter)
    held_back: Counter[str] = field(default_factory=Counter)
    unsaid: Counter[str] = field(default_factory=Counter)

    def draft(self, profile: Profile, garment: str, options: Mapping[str, str]) -> None:
        """Draft for somebody and count how it went."""
        started = time.perf_counter()
        try:
            made = draft(profile, garment, options)
        except TapewiseError as fault:
            self.refused[str(fault)] += 1
            return
        except Exception as fault:  # what a run is there to find
            self.crashes[f"{type(fault).__name__}: {fault} ({profile.name})"] += 1
            return
        finally:
            self.seconds += time.perf_counter() - started
        self._judge(made)

    def _judge(self, made: Drafted) -> None:
        self.drafts += 1
        self.whole += not made.failing
        self.failed.update(proof.name for proof in made.failing)
        pieces = made.pattern.pieces
        lines = [line for piece in pieces for line in (piece.stitch_line(), piece.cut)]
        self.crossed += not all(is_simple(rows(line)) for line in lines)
        self.toothed += any(teeth(piece.cut_rows) for piece in pieces)
        for level in made.pattern.facts.levels:
            if level.asked is not None:
                self.levels[level.name] += 1
                self.held_back[level.name] += level.held_back is not None
                off = abs(level.given - level.asked) > NEAR
                self.unsaid[level.name] += off and level.held_back is None


def run(people: Iterable[Profile], garment: str, options: Mapping[str, str]) -> Tally:
    """Draft one garment in one style for everybody."""
    on_shelf(garment)
    tally = Tally()
    for profile in people:
        tally.draft(profile, garment, options)
    return tally


def lines(tally: Tally) -> Iterator[str]:
    """Return a tally in words, what is wrong in detail."""
    many = tally.drafts + sum(tally.refused.values()) + sum(tally.crashes.values())
    yield (
        f"{many} people, {tally.seconds / max(many, 1) * 1000:.0f} ms each: crashes "
        f"{sum(tally.crashes.values())}, refused {sum(tally.refused.values())}, crossed "
        f"{tally.crossed}, teeth {tally.toothed}, all proofs hold "
        f"{tally.whole / max(tally.drafts, 1):.1%}"
    )
    for level, count in tally.levels.items():
        yield (
            f"  {level.replace('_', ' ')}: held back {tally.held_back[level] / count:.1%}, "
            f"over {NEAR:g} mm off without a reason {tally.unsaid[level]}"
        )
    yield from (f"  fails {times:4d}  {name}" for name, times in tally.failed.most_common())
    yield from (f"  refused {times:4d}  {why[:110]}" for why, times in _most(tally.refused))
    yield from (f"  crash {times:4d}  {what[:110]}" for what, times in _most(tally.crashes))


def _most(counts: Counter[str]) -> list[tuple[str, int]]:
    return counts.most_common(5)
