"""What ``help``, ``words``, ``doctor``, ``completion`` and ``man`` do."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from importlib.metadata import PackageNotFoundError, version

from tapewise_core import __version__
from tapewise_core.errors import OptionError
from tapewise_core.text.near import near_words
from tapewise_tui.exits import FINE, LOOK
from tapewise_tui.parser import parser
from tapewise_tui.parser_base import acts_of
from tapewise_tui.printing import print_json, say


def help(options: argparse.Namespace) -> int:
    """Print the help of a command, or of all."""
    found = parser()
    for word in options.words:
        acts = acts_of(found)
        if word not in acts:
            hint = near_words(word, tuple(acts)) if acts else "nothing follows after that."
            raise OptionError(f"There is no command “{word}”; {hint}")
        found = acts[word]
    found.print_help()
    return FINE


def completion(options: argparse.Namespace) -> int:
    """Print what a shell needs to complete commands and options."""
    import shtab

    say(shtab.complete(parser(), shell=options.shell))
    return FINE


def man(options: argparse.Namespace) -> int:
    """Print the manual page, made from what the commands understand."""
    from tapewise_tui.manual import manual

    print(manual(parser()), end="")
    return FINE


def versions() -> dict[str, object]:
    """Return the versions of the program and of what it writes."""
    from tapewise_core.profiles import version as person
    from tapewise_core.tasks import settings, work_text

    formats = {
        person.FORMAT: person.VERSION,
        work_text.FORMAT: work_text.VERSION,
        settings.FORMAT: settings.VERSION,
    }
    return {"tapewise": __version__, "python": _python(), "formats": formats}


def _python() -> str:
    import platform

    return platform.python_version()


PARTS = ("textual", "pydantic", "shapely", "reportlab", "svgwrite", "platformdirs", "filelock")
EXTRAS = {"serve": "textual-serve", "cluster": "distributed", "lay": "spyrrow"}


def doctor(options: argparse.Namespace) -> int:
    """Say what is installed, where things lie and what is wrong with them; exit 1 if something."""
    from tapewise_core.tasks.health import trouble, where

    installed = {name: _version(name) for name in (*PARTS, *EXTRAS.values())}
    missing = [name for name in PARTS if installed[name] is None]
    faults = [f"{name} is not installed; run “pip install .” again." for name in missing]
    faults += trouble()
    places = where()
    if options.json:
        print_json(versions() | {"packages": installed, "places": places, "faults": faults})
    else:
        say("\n".join(_lines(installed, places, faults)))
    return LOOK if faults else FINE


def words(options: argparse.Namespace) -> int:
    """Explain words of the trade; exit 2 for one that is not among them."""
    from tapewise_core.text.glossary import GLOSSARY, found, lines

    terms = found(options.word) if options.word else GLOSSARY
    if not terms:
        near = near_words(options.word, tuple(term.word for term in GLOSSARY))
        raise OptionError(f"“{options.word}” is not among the words explained; {near}")
    if options.json:
        print_json({term.word: {"means": term.means, "american": term.american} for term in terms})
    else:
        say("\n".join(lines(terms)))
    return FINE


def _lines(
    installed: dict[str, str | None], places: dict[str, str], faults: list[str]
) -> Iterator[str]:
    yield f"tapewise {__version__}, Python {_python()}"
    for name in PARTS:
        yield f"  {name}: {installed[name] or 'missing'}"
    for extra, name in EXTRAS.items():
        yield f"  {name}: {installed[name] or f'not installed; the extra “{extra}” brings it'}"
    yield from (f"{what}: {place}" for what, place in places.items())
    yield from (f"Wrong: {fault}" for fault in faults)
    if not faults:
        yield "Nothing is wrong."


def _version(name: str) -> str | None:
    try:
        return version(name)
    except PackageNotFoundError:
        return None
