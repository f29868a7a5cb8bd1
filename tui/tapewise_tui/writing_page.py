"""A page that writes files aside: how far it is, what is in the way, and what was written."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from textual import on, work
from textual.message import Message

from tapewise_core.errors import ForeignFilesError, TapewiseError
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.work import Work
from tapewise_tui import saving, trouble, words
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs.replacing import ReplacingDialog
from tapewise_tui.dialogs.written import WrittenDialog
from tapewise_tui.page import Page

if TYPE_CHECKING:
    from tapewise_core.tasks.files import Written


class WritingPage(Page):
    """Writes all files of a draft or none, while the page stays at work; ``draft`` is what there
    is to write."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.writing = False
        self.draft: Drafted | None = None

    class Progress(Message):
        """A worker is at some file."""

        def __init__(self, says: str) -> None:
            super().__init__()
            self.says = says

    class Written(Message):
        """The files are there, or a sentence says why not."""

        def __init__(self, folder: Path, result: Written | str, fingerprint: str) -> None:
            super().__init__()
            self.folder, self.result, self.fingerprint = folder, result, fingerprint

    class InTheWay(Message):
        """Files stand in the way that no draft wrote."""

        def __init__(self, folder: Path, names: tuple[str, ...]) -> None:
            super().__init__()
            self.folder, self.names = folder, names

    def write(self, draft: Drafted, folder: Path, *, replaced: bool = False) -> None:
        """Write a draft's files into a folder, aside; what came of it is said."""
        self.writing = True
        self._write(draft, folder, self.desk.work, replaced)

    @work(thread=True, exclusive=True, group="write", description="write")
    def _write(self, draft: Drafted, folder: Path, made: Work, replaced: bool) -> None:
        from tapewise_core.tasks.files import save

        def tell(says: str) -> None:
            self.post_message(self.Progress(saving.named(says)))

        try:
            result: Written | str = save(
                draft, folder, saving.formats(self.desk), made.paper, tell, replace=replaced
            )
        except ForeignFilesError as error:
            self.post_message(self.InTheWay(folder, error.names))
            return
        except TapewiseError as error:
            result = self.desk.reader.spell(error.told)
        except Exception as error:  # what is at fault must not take the page down with it
            result = trouble.note(error)
        self.post_message(self.Written(folder, result, draft.fingerprint))

    @on(Progress)
    def progress(self, event: Progress) -> None:
        event.stop()
        self.tell(event.says)

    @on(Written)
    def written(self, event: Written) -> None:
        event.stop()
        self.writing = False
        if isinstance(event.result, str):
            self.warn(event.result)
            return
        self.desk.wrote(event.folder, event.fingerprint)
        files = event.result.files
        total = sum(size for _, size in files)
        count = words.count(len(files), "file")
        self.tell(f"{count}, {words.size(total)}, written to {event.folder}")
        self.app.push_screen(WrittenDialog(event.folder, event.result, self.desk.reader))

    @on(InTheWay)
    def in_the_way(self, event: InTheWay) -> None:
        """Ask before anything of somebody else's is replaced."""
        event.stop()
        self.writing = False

        def answered(replaced: bool | None) -> None:
            if replaced and self.draft is not None:
                self.write(self.draft, event.folder, replaced=True)
            else:
                self.tell("Nothing was written; name another folder.")

        self.app.push_screen(ReplacingDialog(event.folder, event.names), answered)

    def action_on(self) -> None:
        """Go on to sewing, once what is being written can be seen."""
        if self.writing:
            self.tell("Still writing; what is written shows in a moment.")
        else:
            super().action_on()
