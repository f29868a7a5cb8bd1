"""Ticks belong to a project's draft; a new draft takes over only what is still true.

- A tick is kept under the signs of what it rests on (:mod:`tapewise_core.tasks.basis`): a cloth
  that was washed stays washed for all that is cut from it, a piece stays cut while its cut line
  is the same, and what is sewn stands while every piece and every step before it does.
- Another garment or another cloth takes over nothing; what is found out about a cloth by trying it
  makes it no other.
- Once a draft is sewn to the end, the next one is another garment of another length of cloth.
- What a new draft has no use for is forgotten as soon as something is ticked for it: whoever
  only tries a change and goes back finds all ticks again.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.tasks.basis import cloth_signs
from tapewise_core.tasks.chores import SEW, Chores
from tapewise_core.tasks.project import Work


def known_as(work: Work) -> str:
    """Return by what the cloth is known besides what it is like: its name, or the signs it had
    before it was tried."""
    return work.cloth or work.tried


def done(work: Work, chores: Sequence[Chores], fingerprint: str) -> tuple[str, ...]:
    """Return the keys of what is done for a draft, in the order it was ticked."""
    if work.sewn not in ("", fingerprint):
        return ()
    keys = {one.key for part in chores for one in part.items}
    return tuple(key for key in work.ticked if key in keys)


def toggled(work: Work, key: str, chores: Sequence[Chores], fingerprint: str) -> Work:
    """Return some work with one thing ticked, or no longer; what is true no more is forgotten."""
    now = replace(work, ticked=done(work, chores, fingerprint)).toggled(key)
    last = all(one.key in now.ticked for part in chores if part.heading == SEW
               for one in part.items)  # fmt: skip
    return replace(now, sewn=fingerprint if last else "")


def open_again(work: Work, chores: Sequence[Chores], fingerprint: str) -> int:
    """Return how many things were done for the draft before and are not true of this one."""
    if work.sewn not in ("", fingerprint):
        return 0
    return len(work.ticked) - len(done(work, chores, fingerprint))


def once_more(work: Work) -> Work:
    """Return some work with nothing done, to make the same once more."""
    return replace(work, ticked=(), sewn="", tried="")


def found_out(work: Work, found: Mapping[str, str], before: Cloth | None) -> Work:
    """Return some work with what was found out about its cloth by trying it: it is the same cloth
    as ``before``, if that is known."""
    tried = work.tried or (cloth_signs(before) if before else "")
    for key, text in found.items():
        work = work.with_option(key, text)
    return replace(work, tried=tried)
