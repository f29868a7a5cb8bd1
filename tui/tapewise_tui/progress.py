"""How far somebody's measuring has come: what is open, what helps most, what changed."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.catalogue import measure
from tapewise_core.tasks import guesses, people, wizard
from tapewise_tui import trouble
from tapewise_tui.desk import Desk


def still_open(desk: Desk, *, brief: bool = False) -> tuple[str, str]:
    """Say how many of the garment's measures are there, and which of the others helps most;
    ``brief`` where there is little room."""
    missing, many = desk.open_measures, len(desk.used)
    are_there = "there" if brief else "measures are there"
    if not missing:
        return f"All {many} {are_there}.", ""
    there = f"{many - len(missing)} of {many} {are_there}."
    try:
        best = guesses.helps_most(desk.profile, desk.work.garment, desk.work.asked)
    except TapewiseError:
        raise
    except Exception as error:  # the page says what is open all the same
        return there, trouble.note(error)
    if best is None:
        return there, ""
    now, then = desk.unit.number(best.now * 10), desk.unit.spell(best.then * 10)
    return there, f"The {measure(best.key).name} helps most: ± {then} instead of ± {now}."


def at(desk: Desk) -> str:
    """Return the measure where the person stopped, else the first that is open."""
    kept, order, missing = desk.work.measure, desk.order, desk.check.missing
    return kept if kept in order else next((key for key in order if key in missing), order[0])


def scope(desk: Desk) -> str:
    """Say which measures are gone through."""
    title = wizard.garment(desk.work.garment).title.lower()
    if desk.all_measures:
        return f"All {len(desk.order)} measures; Ctrl+L goes back to those of the {title}."
    return f"The {len(desk.order)} measures of the {title}; Ctrl+L goes through all there are."


def before_today(desk: Desk) -> Mapping[str, float]:
    """Return what the measures were [cm] before today; nothing for somebody new."""
    try:
        states = people.store.states(desk.profile.name)
    except TapewiseError:
        return {}
    earlier = next((one.profile for one in states if one.when.date() < desk.today), None)
    return earlier.read_off() if earlier is not None else {}


def change(desk: Desk, key: str, before: Mapping[str, float]) -> str:
    """Spell how far a measure taken today is from what it was before, or nothing.

    Less than a millimetre is no change.
    """
    kept = desk.profile.measures.get(key)
    if kept is None or key not in before or kept.taken != desk.today:
        return ""
    more = (kept.value - before[key]) * 10
    if abs(more) < 1:
        return "as before"
    return f"{'+' if more > 0 else '–'}{desk.unit.number(abs(more))}"
