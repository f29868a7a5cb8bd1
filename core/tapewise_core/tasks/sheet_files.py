"""The measuring sheet as a file: Markdown with its pictures beside it, or one page of HTML."""

from __future__ import annotations

from pathlib import Path

from tapewise_core.errors import OptionError
from tapewise_core.paper.document import Document
from tapewise_core.tasks.files import step_files
from tapewise_core.writers.files import write_all
from tapewise_core.writers.html import page
from tapewise_core.writers.markdown import markdown
from tapewise_core.writers.svg import svg


def sheet_text(sheet: Document) -> str:
    """Return the sheet as text for a terminal or a printer: Markdown without its pictures."""
    lines = markdown(sheet).split("\n\n")
    return "\n\n".join(line for line in lines if not line.startswith("![")).rstrip("\n") + "\n"


def write_sheet(sheet: Document, path: Path) -> list[tuple[str, int]]:
    """Write the sheet; return names and sizes [bytes].

    Raises OptionError for an ending other than .md and .html, FilesError if the
    file cannot be written; nothing is half written then.
    """
    ending = path.suffix.lower()
    if ending == ".html":
        return write_all(path.parent, {path.name: page(sheet).encode()})
    if ending != ".md":
        raise OptionError(f"The sheet's file ends in .html or .md, and not as “{path.name}” does.")
    pictures = {name: svg(drawing).encode() for name, drawing in step_files(sheet).items()}
    return write_all(path.parent, {path.name: markdown(sheet).encode(), **pictures})
