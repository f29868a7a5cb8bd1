"""Everything to read about a pattern in one HTML file that needs no network and prints well."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from html import escape
from itertools import count, groupby, zip_longest

from tapewise_core.paper.document import (
    Block,
    Bullets,
    Document,
    Figure,
    FillIn,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
    Ticks,
)
from tapewise_core.paper.drawing import Drawing
from tapewise_core.paper.pattern_set import PatternSet, piece_name
from tapewise_core.paper.safe import plain
from tapewise_core.writers.html_style import STYLE
from tapewise_core.writers.svg import svg

WIDE = 70.0
"""Pictures wider than this have a row to themselves [mm]."""


def html(pattern: PatternSet) -> str:
    """Return instructions with their pictures, the checklist and the pieces as one page."""
    return _Page().text(pattern)


def page(document: Document) -> str:
    """Return one document with its pictures as a page to read or print."""
    return _whole(document.title, [f"<main>{_Page().section('document', document)}</main>"])


def _whole(title: str, parts: Iterable[str]) -> str:
    """A file of HTML round its parts."""
    return "\n".join(
        [
            '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">',
            '<meta name="viewport" content="width=device-width, initial-scale=1">',
            f"<title>{_clean(title)}</title>",
            f"<style>{STYLE}</style>\n</head>\n<body>",
            *parts,
            "</body>\n</html>\n",
        ]
    )


class _Page:
    """One HTML file while it is written; pictures are numbered so that ids stay apart."""

    def __init__(self) -> None:
        self.pictures = count(1)

    def text(self, pattern: PatternSet) -> str:
        """Write everything and return the file."""
        told = [
            ("instructions", pattern.instructions, "Draft it by hand"),
            ("checklist", pattern.checklist, "Cut and sew"),
        ]
        sections = (self.section(name, document) for name, document, _ in told)
        return _whole(pattern.label(), [*self._top(pattern), *sections])

    def _top(self, pattern: PatternSet) -> list[str]:
        words = (pattern.person, pattern.date, pattern.fingerprint, pattern.looks)
        facts = " · ".join(filter(None, words))
        figures = "\n".join(self._figure(piece) for piece in pattern.pieces)
        return [
            f"<header>\n<h1>{_clean(pattern.title)}</h1>\n<p>{_clean(facts)}</p>",
            f"<p>{_clean(pattern.description)}</p>",
            f'<p class="note">{_clean(pattern.note)}</p>' if pattern.note else "",
            '<nav><a href="#instructions">Draft it by hand</a>'
            '<a href="#checklist">Cut and sew</a></nav>\n</header>',
            f'<h2>The pieces</h2>\n<div class="pieces">\n{figures}\n</div>',
            "<p>These pictures are small; cut from a full-size file only.</p>",
        ]

    def _figure(self, drawing: Drawing) -> str:
        caption = f"<figcaption>{_clean(piece_name(drawing).replace('_', ' '))}</figcaption>"
        return f"<figure>{self._picture(drawing)}{caption}</figure>"

    def _picture(self, drawing: Drawing) -> str:
        return svg(drawing, inline=f"picture{next(self.pictures)}-")

    def section(self, name: str, document: Document) -> str:
        """Write one document, its pictures numbered on."""
        blocks = list(document.blocks)
        if not any(isinstance(block, Heading) and block.level == 1 for block in blocks):
            blocks.insert(0, Heading(document.title, 1))
        body = "\n".join(self._blocks(blocks))
        return f'<section id="{name}">\n{body}\n</section>'

    def _blocks(self, blocks: Sequence[Block]) -> Iterator[str]:
        """Blocks in order, steps that follow one another set side by side where there is room."""
        for beside, run in groupby(blocks, _beside_others):
            body = "\n".join(self._block(block) for block in run)
            yield f'<div class="steps">\n{body}\n</div>' if beside else body

    def _block(self, block: Block) -> str:
        match block:
            case Heading(text, level):
                rank = min(level + 1, 6)
                return f"<h{rank}>{_clean(text)}</h{rank}>"
            case Paragraph(text):
                return f"<p>{_clean(text)}</p>"
            case Bullets(items):
                return f"<ul>{''.join(f'<li>{_clean(item)}</li>' for item in items)}</ul>"
            case Ticks(items, numbered):
                return _ticks(items, numbered, [self._shown(one) for one in block.drawn()])
            case Table(head, rows):
                return _table(head, rows)
            case NumberedStep():
                return self._step(block)
            case FillIn():
                return self._to_fill(block)
            case Figure(picture, text):
                words = f"<figcaption>{_clean(text)}</figcaption>"
                return f'<figure class="alone">{words}{self._picture(picture)}</figure>'

    def _step(self, step: NumberedStep) -> str:
        kind = "step" if _beside_others(step) else "step wide"
        words = _numbered(step.number, step.text)
        shown = self._shown(step.picture) + self._shown(step.aside)
        return f'<div class="{kind}">{words}{shown}</div>'

    def _to_fill(self, block: FillIn) -> str:
        """A figure, how to measure, and lines to write on."""
        words = _numbered(block.number, block.text)
        ticks = _ticks(block.ticks, numbered=False) if block.ticks else ""
        lines = "".join(f'<p class="line">{_clean(line)}</p>' for line in block.lines)
        figure = self._shown(block.picture) or "<div></div>"
        return f'<div class="fill">{figure}<div>{words}{ticks}</div><div>{lines}</div></div>'

    def _shown(self, picture: Drawing | None) -> str:
        return f"<figure>{self._picture(picture)}</figure>" if picture else ""


def _beside_others(block: Block) -> bool:
    """Say whether a step's picture leaves room for others beside it."""
    if not isinstance(block, NumberedStep):
        return False
    return block.picture is None or block.picture.box.width <= WIDE


def _numbered(number: int, text: str) -> str:
    return f'<p><span class="number">{number}.</span> {_clean(text)}</p>'


def _ticks(items: tuple[str, ...], numbered: bool, figures: Sequence[str] = ()) -> str:
    tag = "ol" if numbered else "ul"
    rows = []
    for number, (item, figure) in enumerate(zip_longest(items, figures, fillvalue=""), 1):
        words = f"{number}. {item}" if numbered else item
        box = f'<label><input type="checkbox"><span>{_clean(words)}</span></label>'
        rows.append(f"<li>{box}{figure}</li>")
    return f'<{tag} class="ticks">{"".join(rows)}</{tag}>'


def _table(head: tuple[str, ...], rows: tuple[tuple[str, ...], ...]) -> str:
    top = "".join(f'<th scope="col">{_clean(cell)}</th>' for cell in head)
    body = "".join(f"<tr>{''.join(f'<td>{_clean(c)}</td>' for c in row)}</tr>" for row in rows)
    return f"<table><thead><tr>{top}</tr></thead><tbody>{body}</tbody></table>"


def _clean(text: str) -> str:
    return escape(plain(text))
