"""Which pages there are, and which one to turn to where another cannot be shown."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from importlib import import_module

from tapewise_core.profiles.profile import Profile
from tapewise_tui.page import Page

_PLACES = {
    "start": "StartPage",
    "measure": "MeasurePage",
    "table": "TablePage",
    "review": "ReviewPage",
    "garment": "GarmentPage",
    "prove": "ProvePage",
    "save": "SavePage",
    "sew": "SewPage",
    "cut": "CutPage",
    "stitch": "StitchPage",
}


class _Pages(Mapping[str, type[Page]]):
    """The pages by name, each read from its file when it is first asked for."""

    def __getitem__(self, name: str) -> type[Page]:
        found: type[Page] = getattr(import_module(f"tapewise_tui.pages.{name}"), _PLACES[name])
        assert issubclass(found, Page)
        return found

    def __iter__(self) -> Iterator[str]:
        return iter(_PLACES)

    def __len__(self) -> int:
        return len(_PLACES)


PAGE_OF: Mapping[str, type[Page]] = _Pages()


class Way:
    """The page that stood last, and those that failed since.

    >>> way = Way()
    >>> way.instead_of("prove"), way.instead_of("measure"), way.instead_of("start")
    ('measure', 'start', None)
    >>> way.stands("garment")
    >>> way.instead_of("prove"), way.instead_of("garment")
    ('garment', 'measure')
    """

    def __init__(self) -> None:
        self._stood = "start"
        self._fallen: set[str] = set()

    def stands(self, name: str) -> None:
        """Note that a page is on the screen."""
        self._stood, self._fallen = name, set()

    def instead_of(self, name: str) -> str | None:
        """Return the page before, else a plainer one that has not failed; None if all have."""
        self._fallen.add(name)
        before = () if self._stood == "start" else (self._stood,)
        ways = (way for way in (*before, "measure", "start") if way not in self._fallen)
        return next(ways, None)


def warm_up() -> None:
    """Read the code of pages, garments and estimates while the person reads the first page."""
    from tapewise_core.tasks import judging, wizard
    from tapewise_core.tasks.people import check
    from tapewise_tui import person_acts

    assert judging
    assert person_acts
    list(PAGE_OF.values())
    wizard.garments()
    check(Profile.of("nobody").with_value("height", 168.0))
