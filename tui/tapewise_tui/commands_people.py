"""What the acts of ``tapewise profiles`` do."""

from __future__ import annotations

import argparse
import contextlib
from collections.abc import Callable, Mapping, Sequence

from tapewise_core.errors import FilesError, OptionError, TapewiseError
from tapewise_core.profiles import copying
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.store import State
from tapewise_core.tasks import people, people_changes
from tapewise_core.units import Unit
from tapewise_tui import people_in_out, telling, telling_states
from tapewise_tui.exits import FINE, STOPPED
from tapewise_tui.printing import print_json, say, say_done
from tapewise_tui.settings_asked import agreed

Act = Callable[[argparse.Namespace], int]


def profiles(options: argparse.Namespace) -> int:
    """Do one act with the people on file, what a crash left behind swept away before."""
    with contextlib.suppress(TapewiseError):  # the act itself says what is wrong
        people.store.tidy()
    return ACTS[options.act or "list"](options)


def _unit(options: argparse.Namespace, profile: Profile) -> Unit:
    options.unit = options.unit or profile.unit.value
    return Unit(options.unit)


def _list(options: argparse.Namespace) -> int:
    entries = people.store.listing()
    group = getattr(options, "group", None)
    if group is not None:
        entries = tuple(entry for entry in entries if group in entry.known.groups)
    if options.json:
        print_json([telling.entry_json(entry) for entry in entries])
    else:
        say("\n".join(telling.entry_lines(entries)))
    return FINE


def _show(options: argparse.Namespace) -> int:
    profile = people.person(options.person)
    unit = _unit(options, profile)
    say(profile.text() if options.json else "\n".join(telling.profile_lines(profile, unit)))
    return FINE


def _delete(options: argparse.Namespace) -> int:
    entry = people.store.named_exactly(options.person)
    how = ", for good" if options.for_good else ""
    question = f"Delete {entry.name} with everything kept about her{how}?"
    if not entry.shipped and not (options.yes or agreed(f"Deleting {entry.name}", question)):
        say(f"{entry.name} stays.")
        return STOPPED
    path = people.store.remove(entry, for_good=options.for_good)
    says = f"Deleted {entry.name}"
    says += " for good." if options.for_good else "; “tapewise profiles restore” undoes it today."
    say_done(options, {"deleted": str(path), "for_good": options.for_good}, says)
    return FINE


def _restore(options: argparse.Namespace) -> int:
    if options.person is None:
        return _deleted(options)
    if options.which is None:
        return _restore_whole(options)
    was = people.store.restore_state(options.person, options.which)
    when = was.when.isoformat(" ", "minutes")
    name = was.profile.name
    says = f"{name} is as on {when}; what she was before that stays in her history."
    say_done(options, {"restored": name, "when": was.when.isoformat()}, says)
    return FINE


def _restore_whole(options: argparse.Namespace) -> int:
    """Bring back whoever was deleted, or whose file is spoilt, as she was last."""
    entries = people.store.listing()
    spoilt = next((e for e in entries if e.fault and e.name == options.person.strip()), None)
    if spoilt is not None:
        was = people.store.take_good(spoilt)
        name, when = was.profile.name, was.when.isoformat(" ", "minutes")
        says = f"{name} is as on {when}; the file that could not be used is set aside."
    else:
        name = people.store.restore(options.person).name
        says = f"Restored {name}."
    say_done(options, {"restored": name}, says)
    return FINE


def _deleted(options: argparse.Namespace) -> int:
    """List whoever can be brought back."""
    rows = people.store.gone()
    if options.json:
        print_json(telling_states.gone_json(rows))
    else:
        say("\n".join(telling_states.gone_lines(rows)) or "Nobody was deleted within a day.")
    return FINE


def _groups(options: argparse.Namespace) -> int:
    """List all groups, with how many are in each."""
    found = people.store.groups()
    if options.json:
        print_json(found)
    else:
        say("\n".join(f"{name}: {count}" for name, count in found.items()) or "No groups yet.")
    return FINE


def _history(options: argparse.Namespace) -> int:
    states = people.store.states(options.person)
    unit = _unit(options, states[0].profile)
    if options.json:
        print_json(telling_states.states_json(states))
    else:
        say("\n".join(telling_states.state_lines(states, unit)))
    return FINE


def _compare(options: argparse.Namespace) -> int:
    states = people.store.states(options.person)
    first, second = _two(states, options)
    unit = _unit(options, states[0].profile)
    changes = people_changes.changes(first.profile, second.profile)
    if options.json:
        print_json(telling_states.changes_json(changes))
    else:
        say("\n".join(telling_states.change_lines(first, second, changes, unit)))
    return FINE


def _two(states: Sequence[State], options: argparse.Namespace) -> tuple[State, State]:
    """The states to compare; left out, those are now and the last day before."""
    if options.a is not None:
        which = (options.a, options.b or "1")
        first, second = (people_changes.state_of(states, one) for one in which)
        return first, second
    found = people_changes.last_time(states)
    if found is None:
        raise OptionError(
            f"All states of {states[0].profile.name} are of one day; name two that “tapewise "
            "profiles history” lists."
        )
    return found.before, found.now


def _duplicate(options: argparse.Namespace) -> int:
    name = copying.duplicate(options.person, options.name).name
    say_done(options, {"saved": name}, f"Saved {name} with the measures of {options.person}.")
    return FINE


def _set(options: argparse.Namespace) -> int:
    found = people.store.find(options.person)
    profile = people.store.load(options.person)
    unit = _unit(options, profile)
    changed = profile
    for setting in options.setting:
        changed = people_changes.with_setting(changed, setting, unit)
    kept = people.store.keep(changed, None if found.shipped else profile)
    if kept.clashes:
        told = "; ".join(telling_states.clash_line(one, unit) for one in kept.clashes)
        raise FilesError(f"Another window changed the same meanwhile: {told}. Set it once more.")
    say_done(options, {"saved": kept.profile.name}, f"Saved {kept.profile.name}.")
    return FINE


def _group(options: argparse.Namespace) -> int:
    if options.person is None:
        return _groups(options)
    profile = people.store.load(options.person)
    changed = people_changes.in_groups(profile, options.group, leave=options.leave)
    if options.group:
        on_file = people.store.on_file(profile)
        changed = people.store.keep(changed, profile if on_file else None).profile
    groups = changed.groups
    said = f"{profile.name}: {', '.join(groups) or 'in no group'}."
    say_done(options, {"name": profile.name, "groups": list(groups)}, said)
    return FINE


ACTS: Mapping[str, Act] = {
    "list": _list,
    "show": _show,
    "copy-in": people_in_out.copy_in,
    "copy-out": people_in_out.copy_out,
    "delete": _delete,
    "restore": _restore,
    "history": _history,
    "compare": _compare,
    "duplicate": _duplicate,
    "set": _set,
    "group": _group,
}
