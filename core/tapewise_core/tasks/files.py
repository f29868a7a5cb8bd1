"""Write the files a draft leaves, all or none, and say what a person does with each."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from tapewise_core.errors import ForeignFilesError
from tapewise_core.frozen import Frozen
from tapewise_core.tasks.asked_paper import USUAL_PAPER, Paper
from tapewise_core.tasks.contents import Failed, Tell, made
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.record_read import listed
from tapewise_core.text.told import Reader
from tapewise_core.writers.whole_set import finish, standing, write_set

READ = (
    "reading.pdf", "pattern.html", "instructions.md", "hand.md", "checklist.md", "lay-plan.svg",
)  # fmt: skip


def purpose(name: str) -> str:
    """Say what a person does with a file of the set: print, read or keep it.

    >>> purpose("pattern-a4.pdf"), purpose("reading.pdf"), purpose("pieces/front.svg")
    ('print', 'read', 'keep')
    """
    if name.startswith("pattern-") and name.endswith(".pdf"):
        return "print"
    return "read" if name in READ else "keep"


class Written(Frozen):
    """What was written, names and sizes [bytes], what is gone of the draft before, what failed."""

    files: tuple[tuple[str, int], ...]
    removed: tuple[str, ...] = ()
    failed: tuple[Failed, ...] = ()

    def by_purpose(self) -> dict[str, list[tuple[str, int]]]:
        """The files to print, to read (what is easiest to read first) and to keep; step pictures
        are left out."""
        found: dict[str, list[tuple[str, int]]] = {"print": [], "read": [], "keep": []}
        for name, size in self.files:
            if not name.startswith("steps/"):
                found[purpose(name)].append((name, size))
        found["read"].sort(key=lambda file: READ.index(file[0]))
        return found

    def removed_words(self) -> str:
        """Say which files of the draft before are gone, pictures of steps counted, or nothing."""
        names = [name for name in self.removed if not name.startswith("steps/")]
        if many := len(self.removed) - len(names):
            names.append("1 picture in steps/" if many == 1 else f"{many} pictures in steps/")
        return f"Removed, left by the draft before: {', '.join(names)}." if names else ""

    def failed_words(self, reader: Reader) -> list[str]:
        """Say which formats are missing, and why."""
        return [f"Not written: {one.format}. {reader.spell(one.told)}" for one in self.failed]


def save(
    drafted: Drafted,
    folder: Path,
    formats: Sequence[str] = (),
    paper: Paper = USUAL_PAPER,
    tell: Tell = str,
    *,
    replace: bool = False,
) -> Written:
    """Write all files of a draft into a folder, all or none, in place of the draft before.

    ``formats`` are names of further formats; ``tell`` hears what is at hand. What no draft
    wrote is replaced only if ``replace`` says so. Raises OptionError for an unknown format,
    ForeignFilesError for what stands in the way, and FilesError with a sentence; nothing is
    half written then.
    """
    finish(folder)
    whole = made(drafted, formats, paper, tell)
    files, old = whole.files, listed(folder)
    if not replace:
        foreign = tuple(standing(folder, [name for name in files if name not in old]))
        if foreign:
            raise ForeignFilesError(folder, foreign)
    last = len(dict.fromkeys(formats)) + 2
    tell(f"{last} of {last}: writing {len(files)} files …")
    removed = tuple(standing(folder, [name for name in old if name not in files]))
    write_set(folder, files, removed)
    sizes = tuple((name, len(content)) for name, content in files.items())
    return Written(sizes, removed, whole.failed)
