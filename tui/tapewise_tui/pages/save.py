"""Save: which files, where to, and what was written."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from msgspec.structs import replace
from textual import on
from textual.containers import Horizontal
from textual.widget import Widget
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.files import typed_path
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.paper_asked import paper_options
from tapewise_tui import drafting, keys, opening, reviewing, saving
from tapewise_tui.line import Line
from tapewise_tui.widgets.ticks import TickList
from tapewise_tui.writing_page import WritingPage

if TYPE_CHECKING:
    pass


class SavePage(WritingPage):
    """Where the pattern leaves the program."""

    NAME = "save"
    PURPOSE = (
        "Tick what else you want to have, name a folder, and press Enter or Ctrl+S: all files are "
        "written, or none. The pattern is full size; print at 100 %, never “fit to page”, and "
        "check the square of 100 mm or 4 in with a ruler before you cut. What your printer or "
        "roll asks for is typed beside the usual sizes; left empty, those hold."
    )
    BINDINGS = keys.of("find", "write", "open", "steps", "cloth", on="on to the list to tick")

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        with Horizontal(id="where"):
            yield Label("Folder")
            yield Input(id="folder", compact=True)
            yield Label("Enter writes", classes="quiet")
        with Horizontal(id="paper"):
            for name, label, _ in saving.PAPER:
                yield Label(label)
                yield Input(id=name, compact=True)
        yield Static(f"{saving.PRINTER} {saving.ALWAYS}", markup=False, id="always")
        yield TickList(id="formats")

    def begin(self) -> None:
        self.query_one("#folder", Input).value = saving.folder(self.desk)
        for name, _, _ in saving.PAPER:
            self.query_one(f"#{name}", Input).value = getattr(self.desk.work, name)
        self.query_one("#folder").focus()
        self.first_says = self.first_says or drafting.assumed(self.desk)

    def show(self) -> None:
        super().show()
        for name, _, usual in saving.PAPER:
            self.query_one(f"#{name}", Input).placeholder = self.desk.reader.spell((usual,))
        result = drafting.drafted(self.desk)
        self.draft = result if isinstance(result, Drafted) else None
        said = f"{saving.summary(result)} {reviewing.warning(self.desk)}".strip()
        self.query_one("#summary", Static).update(said)
        self.query_one(TickList).fill(saving.items(self.desk))

    @on(TickList.Ticked)
    def tick(self, event: TickList.Ticked) -> None:
        event.stop()
        made, ticked = self.desk.work, saving.formats(self.desk)
        kept = tuple(name for name in ticked if name != event.key)
        formats = kept if event.key in ticked else (*ticked, event.key)
        named = made.folder or self.query_one("#folder", Input).value.strip()
        chosen = replace(made, formats=formats, folder=named)
        self.desk.change(f"format {event.key}", made=chosen)
        self.show()

    @on(Input.Submitted)
    def action_write(self) -> None:
        """Write the files, unless there is nothing to write or nowhere to write it."""
        text = self.query_one("#folder", Input).value.strip()
        if self.draft is None:
            self.warn("There is no pattern yet; page 4, Garment, says what is missing.")
        elif not text:
            self.warn("Name a folder to write into, such as my-top.")
        elif self.keep_typed():
            self.desk.usual("paper", saving.paper_of(saving.formats(self.desk)))
            self._begin(self.draft, text)

    def _begin(self, draft: Drafted, text: str) -> None:
        try:
            folder = typed_path(text)
        except TapewiseError as error:
            self.warn(error)
            return
        self.write(draft, folder)

    def keep_typed(self) -> bool:
        text = self.query_one("#folder", Input).value.strip()
        if text and text != saving.folder(self.desk):
            ticked = saving.formats(self.desk)
            named = replace(self.desk.work, folder=text, formats=ticked)
            self.desk.change(f"folder {text}", made=named)
        made = self.desk.work.with_paper(*self._asked_of_paper())
        try:
            paper_options(made.paper, self.desk.unit)
        except TapewiseError as error:
            self.warn(error)
            return False
        if made != self.desk.work:
            self.desk.change("what is asked of paper", made=made)
        return True

    def _asked_of_paper(self) -> tuple[str, str, str]:
        overlap, margin, roll = (
            self.query_one(f"#{name}", Input).value.strip() for name, _, _ in saving.PAPER
        )
        return overlap, margin, roll

    def findable(self) -> tuple[Sequence[Line], str | None]:
        return self.query_one(TickList).lines()

    def found(self, key: str) -> None:
        self.query_one(TickList).to(key)

    def action_open(self) -> None:
        try:
            folder = typed_path(self.query_one("#folder", Input).value.strip())
        except TapewiseError as error:
            self.warn(error)
            return
        if not os.path.isdir(folder):
            self.warn("The folder is not there yet; Ctrl+S writes it.")
            return
        self.tell(opening.opened(self.app, folder))
