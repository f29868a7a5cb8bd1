"""Save: which files, where to, and what was written."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path

from textual import on, work
from textual.binding import Binding
from textual.containers import Horizontal
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Input, Label, Static

from tapewise_core.errors import TapewiseError
from tapewise_core.profiles.slug import slug
from tapewise_core.tasks import files
from tapewise_core.tasks.drafting import Drafted
from tapewise_tui import drafting, words
from tapewise_tui.page import PAGES_KEY, Page


class SavePage(Page):
    """Where the pattern leaves the program."""

    NAME = "save"
    PURPOSE = (
        "Name a folder and press Enter: all files are written there, or none. The pattern is "
        "full size; check the 100 mm square with a ruler once it is printed."
    )
    BINDINGS = [
        Binding("f4", "on", "Sew", tooltip="on to the list to tick"),
        Binding("f6", "write", "Write", tooltip="write the files"),
        Binding("f7", "open", "Open folder", tooltip="open the folder on the desktop"),
        PAGES_KEY,
    ]

    class Written(Message):
        """The files are there, or a sentence says why not."""

        def __init__(self, folder: Path, result: list[tuple[str, int]] | str) -> None:
            super().__init__()
            self.folder, self.result = folder, result

    def parts(self) -> Iterable[Widget]:
        yield Static("", id="summary", markup=False)
        with Horizontal(id="where"):
            yield Label("Folder")
            yield Input(id="folder", compact=True)
        yield Static("", id="written", markup=False)

    def show(self) -> None:
        super().show()
        result = drafting.drafted(self.desk)
        self.draft = result if isinstance(result, Drafted) else None
        self.query_one("#summary", Static).update(self._summary(result))
        field = self.query_one("#folder", Input)
        if not field.value:
            field.value = self.desk.work.folder or str(self._usual())
        field.focus()

    def _usual(self) -> Path:
        garment = self.desk.work.garment
        return Path.cwd() / f"{slug(self.desk.profile.name)}-{garment}"

    def _summary(self, result: Drafted | str) -> str:
        if isinstance(result, str):
            return f"! {result}"
        said = f"{result.garment.title} for {result.person}. {drafting.verdict(result)}"
        if result.estimated:
            said += f" Estimated, not measured: {'; '.join(result.estimated)}."
        return said

    @on(Input.Submitted, "#folder")
    def action_write(self) -> None:
        """Write the files, unless there is nothing to write or nowhere to write it."""
        text = self.query_one("#folder", Input).value.strip()
        if self.draft is None:
            self.warn("There is no pattern yet; go back and see what is missing.")
        elif not text:
            self.warn("Name a folder to write into, such as top-for-me.")
        else:
            self.keep_typed()
            self.tell("Writing …")
            self._write(self.draft, Path(text).expanduser())

    @work(thread=True, exclusive=True)
    def _write(self, draft: Drafted, folder: Path) -> None:
        try:
            result: list[tuple[str, int]] | str = files.save(draft, folder)
        except TapewiseError as error:
            result = str(error)
        self.post_message(self.Written(folder, result))

    @on(Written)
    def written(self, event: Written) -> None:
        event.stop()
        if isinstance(event.result, str):
            self.warn(event.result)
            return
        total = sum(size for _, size in event.result)
        count = words.count(len(event.result), "file")
        self.tell(f"{count}, {words.size(total)}, written to {event.folder}.")
        lines = [f"{name:<28}{words.size(size):>10}" for name, size in event.result]
        self.query_one("#written", Static).update("\n".join(lines))

    def keep_typed(self) -> None:
        text = self.query_one("#folder", Input).value.strip()
        if text and text != (self.desk.work.folder or str(self._usual())):
            self.desk.change(f"folder {text}", made=replace(self.desk.work, folder=text))

    def action_open(self) -> None:
        folder = Path(self.query_one("#folder", Input).value.strip()).expanduser()
        if not folder.is_dir():
            self.warn("The folder is not there yet; F6 writes it.")
            return
        self.app.open_url(folder.absolute().as_uri())
        self.tell(f"{folder} should open on the desktop.")
