"""People: who is on file, and the body a draft is made for."""

from __future__ import annotations

import os
from collections.abc import Collection
from datetime import date
from pathlib import Path
from types import MappingProxyType

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body, Origin, Reference, Value
from tapewise_core.measures.catalogue import CATALOGUE, NAMES
from tapewise_core.measures.finding import Finding, Severity
from tapewise_core.profiles import store
from tapewise_core.profiles.examples import DEMO
from tapewise_core.profiles.files import read_file
from tapewise_core.profiles.identity import new_id
from tapewise_core.profiles.merging import merged
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks.people_changes import to_come
from tapewise_core.text.told import Told
from tapewise_core.units import Unit

__all__ = [
    "DEMO",
    "Check",
    "body_of",
    "check",
    "merged",
    "person",
    "somebody_new",
    "store",
    "wears_bra",
]


class Check(Frozen):
    """What a person should know about her measures before drafting.

    ``refused`` says why nothing could be estimated, or is empty; ``for_child`` holds what to
    heed in children's clothes where the person is a child; ``oldest`` is the day of the oldest
    reading that has one.
    """

    body: Body
    missing: tuple[str, ...]
    findings: tuple[Finding, ...]
    refused: Told = ()
    for_child: tuple[Told, ...] = ()
    oldest: date | None = None

    def too_old(self, today: date) -> bool:
        """Say whether the oldest reading is past trusting: more than a year (common practice)."""
        return self.oldest is not None and (today - self.oldest).days > 365

    @property
    def cautions(self) -> tuple[str, ...]:
        """What estimates cannot know, in sentences."""
        from tapewise_core.statistics.population import cautions

        return cautions()

    @property
    def unlikely(self) -> bool:
        """Say whether any value deserves a warning."""
        return any(finding.severity is Severity.WARNING for finding in self.findings)

    def about(self, keys: Collection[str]) -> tuple[Finding, ...]:
        """Return the findings that touch any of some measures."""
        return tuple(f for f in self.findings if any(key in keys for key in f.measures))


def person(name_or_file: str) -> Profile:
    """Return a saved person, an example, or whoever a profile file holds.

    Raises FilesError or ProfileError with a sentence.
    """
    path = Path(name_or_file)
    if name_or_file.lower().endswith(".json") or (os.path.isfile(path) and path.suffix):
        return read_file(path)
    return store.load(name_or_file)


def somebody_new(profile: Profile) -> Profile:
    """Return the same measures as those of a person who is not on file yet."""
    return profile.having(id=new_id())


def body_of(profile: Profile, keys: Collection[str] | None = None) -> tuple[Body, Told]:
    """Return a person's body with every gap filled by an estimate, and why not, if not; only the
    gaps among some ``keys`` where those are all that somebody makes use of.

    An estimate on file is drawn afresh, for it followed from what was known then; where nothing
    can be estimated it stands as it was.
    """
    from tapewise_core.statistics.estimate import estimate
    from tapewise_core.statistics.whose import refusal

    values = dict(profile.values())
    taken, sure = profile.read_off(), profile.confirmed()
    guessed = estimate(taken, profile.reference, profile.waist_site, sure, profile.age, keys)
    values |= {key: found.as_value() for key, found in guessed.items()}
    known = Body(MappingProxyType(values), NAMES, profile.reference, profile.waist_site)
    return known, refusal(taken, sure, profile.age)


def plausible_bodies(profile: Profile, number: int, seed: int = 0) -> tuple[Body, ...]:
    """Return so many bodies as the person's may be: what was read as it is, the rest drawn.

    What was not measured is drawn together, so that each body hangs together; the same seed
    gives the same bodies. Where nothing is missing or estimated all are alike.
    """
    from tapewise_core.statistics.joint import unmeasured

    own = profile.read_off()
    kept = {key: value for key, value in profile.values().items() if key in own}
    spread = unmeasured(
        own, profile.reference, profile.waist_site, profile.confirmed(), profile.age
    )
    drawn = ({key: Value(cm, Origin.ESTIMATED) for key, cm in one.items()}
             for one in spread.draw(number, seed))  # fmt: skip
    return tuple(Body(MappingProxyType(kept | one), NAMES) for one in drawn)


def check(profile: Profile, unit: Unit | None = None) -> Check:
    """Return what is missing, estimated and unlikely about a person's measures."""
    from tapewise_core.statistics.judge import judge

    body, refused = body_of(profile)
    findings = judge(
        profile.read_off(),
        profile.confirmed(),
        profile.reference,
        profile.waist_site,
        unit or profile.unit,
        profile.age,
    )
    findings = (*findings, *to_come(profile, date.today()))
    known = profile.read_off()
    missing = tuple(row.key for row in CATALOGUE if row.key not in known)
    taken = [reading.taken for reading in profile.measures.values() if reading.taken]
    return Check(body, missing, findings, refused, for_child(profile), min(taken, default=None))


def asks_age(profile: Profile, finding: Finding) -> bool:
    """Say whether a finding is one that an age would settle: grown, or a child."""
    from tapewise_core.statistics.whose import MAYBE_CHILD, refusal

    whose = (MAYBE_CHILD, refusal(profile.read_off(), profile.confirmed()))
    return profile.age is None and finding.says in whose


def for_child(profile: Profile) -> tuple[Told, ...]:
    """Return what to heed in clothes for a child, if the person is one."""
    from tapewise_core.statistics.young import cautions_for

    return cautions_for(profile.read_off(), profile.confirmed(), profile.age)


def wears_bra(profile: Profile) -> bool:
    """Say whether words about a bra may concern the person: not a man's, not a child's."""
    return profile.reference is not Reference.MEN and not for_child(profile)


def estimated_words(body: Body, keys: tuple[str, ...], unit: Unit) -> tuple[str, ...]:
    """Spell estimated measures, each with how far off it may be."""
    return tuple(_estimated(body.name(key), body.values[key], unit) for key in keys)


def _estimated(name: str, value: Value, unit: Unit) -> str:
    spelt = f"{name} {unit.number(value.cm * 10)}"
    off = value.plus_minus
    return f"{spelt} ± {unit.spell(off * 10)}" if off else f"{spelt} {unit.value}"
