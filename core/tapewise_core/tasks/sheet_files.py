"""Write a document for people to one file, in the format its name asks for."""

from __future__ import annotations

from pathlib import Path

from msgspec.structs import replace as changed

from tapewise_core.errors import FilesError, ForeignFilesError
from tapewise_core.paper.document import Document, FillIn
from tapewise_core.writers.files import write_all
from tapewise_core.writers.markdown import markdown
from tapewise_core.writers.svg import svg

ENDINGS = (".md", ".html", ".pdf")
"""What a file's name may end in."""


def sheet_text(document: Document) -> str:
    """Return the document as text without its pictures."""

    blocks = tuple(
        changed(block, picture=None, file="") if isinstance(block, FillIn) else block
        for block in document.blocks
    )
    return markdown(Document(document.title, blocks))


def write_sheet(document: Document, path: Path, *, replace: bool = False) -> list[tuple[str, int]]:
    """Write a document to a .md, .html or .pdf file; return names and sizes [bytes].

    Beside a .md file the pictures lie in a folder of their own. What stands there and says
    something else is replaced only if ``replace`` says so. Raises ForeignFilesError for that,
    FilesError for any other ending, or if the file cannot be written.
    """
    files = {path.name: _content(document, path), **_beside(document, path)}
    others = tuple(name for name, content in files.items() if _differs(path.parent / name, content))
    if others and not replace:
        raise ForeignFilesError(path.parent, others)
    return write_all(path.parent, files)


def _differs(place: Path, content: bytes) -> bool:
    try:
        return place.is_file() and place.read_bytes() != content
    except OSError:
        return True


def _content(document: Document, path: Path) -> bytes:
    ending = path.suffix.lower()
    if ending == ".md":
        return markdown(document).encode()
    if ending == ".html":
        from tapewise_core.writers.html import page

        return page(document).encode()
    if ending == ".pdf":
        from tapewise_core.writers.document_pdf import document_pdf

        return document_pdf(document)
    raise FilesError(f"“{path.name}” ends in none of {', '.join(ENDINGS)}; give it one of these.")


def _beside(document: Document, path: Path) -> dict[str, bytes]:
    """The pictures a Markdown file points to."""
    if path.suffix.lower() != ".md":
        return {}
    from tapewise_core.tasks.contents import step_files  # and with it all that drafts

    return {name: svg(drawing).encode() for name, drawing in step_files(document).items()}
