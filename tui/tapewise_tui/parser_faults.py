"""What the parser finds wrong, in the program's own words instead of the library's."""

from __future__ import annotations

import argparse
import re
from collections.abc import Callable, Iterable, Sequence

Say = Callable[[re.Match[str]], str]


def plainly(message: str, after: Callable[[str], str] = lambda name: "something") -> str:
    """Return a sentence for what argparse says is wrong; what it does not know stays as it is.

    ``after`` says what follows an option.

    >>> plainly("argument --out: expected one argument", lambda name: "DIR")
    '--out needs DIR after it'
    >>> plainly("ambiguous option: --p could match --page, --piece")
    '--p may be --page or --piece; write it out'
    """
    alone = re.fullmatch(r"argument (.+?): expected (?:one|at least one|\d+) arguments?", message)
    if alone is not None:
        return f"{_name(alone[1])} needs {after(_name(alone[1]))} after it"
    for pattern, say in _SAYS:
        found = re.fullmatch(pattern, message, re.DOTALL)
        if found is not None:
            return say(found)
    return message


_SAYS: Sequence[tuple[str, Say]] = (
    (r"argument (.+?): ignored explicit argument (['\"].*['\"])",
     lambda m: f"{_name(m[1])} stands alone; take away what is after it, “{m[2][1:-1]}”"),
    (r"argument (.+?): not allowed with argument (.+)",
     lambda m: f"{_name(m[1])} and {_name(m[2])} do not go together; leave one out"),
    (r"ambiguous option: (\S+) could match (.+)",
     lambda m: f"{m[1].partition('=')[0]} may be {_or(m[2].split(', '))}; write it out"),
    (r"the following arguments are required: (.+)",
     lambda m: f"Missing: {m[1]}"),
    (r"argument (.+?): (.+)", lambda m: f"{_name(m[1])}: {m[2]}"),
)  # fmt: skip


def _name(names: str) -> str:
    """An option by its long name."""
    return names.rpartition("/")[2]


def _or(names: Sequence[str]) -> str:
    return " or ".join(filter(None, (", ".join(names[:-1]), names[-1])))


def unknown(given: Iterable[str], there: Iterable[str]) -> str | None:
    """Return the first option among what was given that there is not, not even cut short."""
    known = tuple(there)
    for word in given:
        if word == "--":
            return None
        name = word.partition("=")[0]
        known_here = any(one.startswith(name) or one == name[:2] for one in known)
        if re.match(r"-[^\d.]", name) and not known_here:
            return name
    return None


def whole_number(text: str) -> int:
    """Read a whole number as it is typed; raises what argparse tells."""
    if not (text.isascii() and text.strip().removeprefix("-").isdigit() and len(text) < 12):
        raise argparse.ArgumentTypeError(f"“{text[:24]}” is no whole number such as 4")
    return int(text)
