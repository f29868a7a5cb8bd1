"""Which pages there are, and which one to turn to where another cannot be shown."""

from __future__ import annotations

from tapewise_core.profiles.profile import Profile
from tapewise_tui.page import Page
from tapewise_tui.pages.garment import GarmentPage
from tapewise_tui.pages.measure import MeasurePage
from tapewise_tui.pages.prove import ProvePage
from tapewise_tui.pages.review import ReviewPage
from tapewise_tui.pages.save import SavePage
from tapewise_tui.pages.sew import SewPage
from tapewise_tui.pages.start import StartPage
from tapewise_tui.pages.table import TablePage

PAGE_OF: dict[str, type[Page]] = {
    page.NAME: page
    for page in (
        StartPage,
        MeasurePage,
        TablePage,
        ReviewPage,
        GarmentPage,
        ProvePage,
        SavePage,
        SewPage,
    )
}


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
    """Read the code of garments, estimates and formats while the person reads the first page."""
    from tapewise_core.tasks import wizard
    from tapewise_core.tasks.people import check

    wizard.garments()
    check(Profile.of("nobody").with_value("height", 168.0))
