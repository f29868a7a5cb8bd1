"""What a person was before, as lines for a person and as plain values for a machine."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from tapewise_core.measures.catalogue import NAMES
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import Clash, Gone, State
from tapewise_core.tasks.people_changes import Change, changes
from tapewise_core.text.told import Reader
from tapewise_core.units import Unit
from tapewise_tui import words


def state_lines(states: Sequence[State], unit: Unit) -> Iterator[str]:
    """Return every state kept, the newest first, with what changed from the one before."""
    many = words.count(len(states), "state")
    yield f"{states[0].profile.name}, {many}; 1 is how she is now:"
    for number, state in enumerate(states, start=1):
        when = state.when.isoformat(" ", "minutes")
        before = states[number].profile if number < len(states) else None
        if before is None:
            yield f"  {number}  {when}  {len(state.profile.measures)} measures"
        else:
            told = [_change(one, unit) for one in changes(before, state.profile)]
            told += _fitted(before, state.profile, unit)
            yield f"  {number}  {when}  {'; '.join(told) or 'no measure changed'}"


def _fitted(before: Profile, after: Profile, unit: Unit) -> list[str]:
    if before.adjustments == after.adjustments:
        return []
    from tapewise_core.tasks.adjustments import differing  # with all that a draft is

    return [Reader(unit).spell(told) for told in differing(before, after)]


def states_json(states: Sequence[State]) -> list[dict[str, object]]:
    """Return the same for a machine, lengths in cm."""
    return [
        {
            "number": number,
            "when": state.when.isoformat(),
            "name": state.profile.name,
            "measures": {key: row.value for key, row in state.profile.measures.items()},
        }
        for number, state in enumerate(states, start=1)
    ]


def change_lines(
    first: State, second: State, changed: Sequence[Change], unit: Unit
) -> Iterator[str]:
    """Return what differs between two states, a line for each measure."""
    ends = (state.when.isoformat(" ", "minutes") for state in (first, second))
    yield f"{second.profile.name}, {' to '.join(ends)}:"
    yield from (f"  {_change(one, unit)}" for one in changed)
    fitted = _fitted(first.profile, second.profile, unit)
    yield from (f"  {told}" for told in fitted)
    if not (changed or fitted):
        yield "  no measure differs."


def changes_json(changed: Sequence[Change]) -> dict[str, object]:
    """Return the same for a machine, lengths in cm."""
    return {one.key: {"before": one.before, "after": one.after} for one in changed}


def _change(one: Change, unit: Unit) -> str:
    before, after = (
        "open" if cm is None else unit.spell(cm * 10) for cm in (one.before, one.after)
    )
    if one.before is None or one.after is None:
        return f"{NAMES[one.key]} {before} to {after}"
    sign = "+" if one.after > one.before else "−"
    off = unit.spell(abs(one.after - one.before) * 10)
    return f"{NAMES[one.key]} {before} to {after} ({sign}{off})"


def clash_line(clash: Clash, unit: Unit) -> str:
    """Say of a measure changed in two places what is on file and what was wanted."""
    mine, theirs = (
        "nothing" if row is None else unit.spell(row.value * 10)
        for row in (clash.mine, clash.theirs)
    )
    return f"{NAMES[clash.key]} is {theirs}, not {mine}"


def gone_lines(rows: Sequence[Gone]) -> Iterator[str]:
    """Return what can be brought back, a line each."""
    for one in rows:
        whose = f" for {one.person}" if one.person else ""
        when, until = (moment.isoformat(" ", "minutes") for moment in (one.when, one.until))
        yield f"{one.name}{whose}: deleted {when}, can be restored until {until}"


def gone_json(rows: Sequence[Gone]) -> list[dict[str, object]]:
    """Return the same for a machine."""
    return [
        {
            "name": one.name,
            "person": one.person or None,
            "deleted": one.when.isoformat(),
            "until": one.until.isoformat(),
        }
        for one in rows
    ]
