"""Where the elastic at the waist sits: asked on the waist's own page."""

from __future__ import annotations

from dataclasses import dataclass

from textual import on
from textual.app import ComposeResult
from textual.message import Message
from textual.widgets import Select
from textual.widgets._select import SelectCurrent, SelectOverlay

from tapewise_core.measures.body import WaistSite

SITES = (
    ("The elastic sits at the narrowest place", WaistSite.NARROWEST.value),
    ("The elastic sits midway from rib to hip bone", WaistSite.MIDWAY.value),
    ("The elastic sits at the navel", WaistSite.NAVEL.value),
    ("Where the elastic sits is not said", WaistSite.NOT_SAID.value),
)


class _Places(SelectOverlay):
    """Page Up and Page Down go to its ends: Textual's list ends the app where it is not laid out
    yet, and a key pressed before it opens may come to it then."""

    def action_page_up(self) -> None:
        self.action_first()

    def action_page_down(self) -> None:
        self.action_last()


class SiteField(Select[str]):
    """A list of the places a waist is found at."""

    @dataclass
    class Told(Message):
        """The person said where."""

        site: WaistSite

    def __init__(self, site: WaistSite) -> None:
        super().__init__(
            SITES,
            value=site.value,
            allow_blank=False,
            type_to_search=False,  # a number typed is a reading, not a word to look for
            id="site",
            compact=True,
        )

    def compose(self) -> ComposeResult:
        """The place chosen, and the list of all as :class:`_Places`."""
        yield SelectCurrent(self.prompt)
        yield _Places(type_to_search=self._type_to_search).data_bind(compact=Select.compact)

    def show(self, site: WaistSite) -> None:
        """Show what is known."""
        with self.prevent(Select.Changed):
            self.value = site.value

    def ask(self) -> None:
        """Open the list at once."""
        self.focus()
        self.call_after_refresh(self.action_show_overlay)

    def action_show_overlay(self) -> None:
        """Open the list, unless the page was left before it could."""
        if self.query(SelectCurrent):
            super().action_show_overlay()

    def watch_expanded(self, was: bool, now: bool) -> None:
        """A list closed again is an answer too, even if it leaves things as they were."""
        if was and not now:
            self.call_after_refresh(self._tell)

    def _tell(self) -> None:
        if isinstance(self.value, str):
            self.post_message(self.Told(WaistSite(self.value)))

    @on(Select.Changed)
    def told(self, event: Select.Changed) -> None:
        event.stop()
        self._tell()
