"""Notes for the next time: written while sewing, and told where the next garment begins."""

from __future__ import annotations

from tapewise_core.tasks.noted import elsewhere, noted
from tapewise_tui import words
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs.notes import NotesDialog
from tapewise_tui.page import Page

KEY, SAYS = "notes", "Notes for the next time"
"""The key and the words of a line that opens them."""

ROOM = 200
"""As many characters of notes are said as three lines hold; the notes themselves have them all."""


def begin(page: Page) -> None:
    """Let the person write what to change the next time; below stands what was noted before."""
    desk = page.desk
    before = tuple(f"{one.title}: {words.sentence(one.text)}" for one in elsewhere(desk.work))

    def kept(text: str | None) -> None:
        desk.jot(text or "")
        page.show()

    page.app.push_screen(NotesDialog(desk.work.notes, before), kept)


def told(desk: Desk) -> str:
    """Say what was noted for the next time, where the next garment begins; nothing elsewhere."""
    found = noted(desk.work)
    text = " ".join(f"{one.title}: {words.sentence(one.text)}" for one in found)
    return f"Noted for this time, {words.shortened(text, ROOM)}" if text else ""
