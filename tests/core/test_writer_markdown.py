"""A document becomes Markdown that reads as plain text and renders with boxes, tables, pictures."""

from tapewise_core.geometry.outline import Box
from tapewise_core.paper.document import (
    Bullets,
    Document,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
    Ticks,
)
from tapewise_core.paper.drawing import Drawing
from tapewise_core.writers.markdown import markdown

PICTURE = Drawing("Step 1", "", Box(0, 0, 10, 10), ())


def test_every_block_has_its_form() -> None:
    """Headings, sentences, items, boxes, a lined-up table and steps with pictures."""
    document = Document(
        "Top",
        (
            Heading("Cut"),
            Paragraph("Wash first."),
            Bullets(("pins", "chalk")),
            Ticks(("front",)),
            Ticks(("sew", "press"), numbered=True),
            Table(("piece", "n"), (("front", "1"),)),
            NumberedStep(1, "Rule a line.", PICTURE, "steps/01.svg"),
        ),
    )
    assert markdown(document) == (
        "# Top\n\n## Cut\n\nWash first.\n\n- pins\n- chalk\n\n- [ ] front\n\n"
        "1. [ ] sew\n2. [ ] press\n\n"
        "| piece | n   |\n| ----- | --- |\n| front | 1   |\n\n"
        "**1.** Rule a line.\n\n![Step 1](steps/01.svg)\n"
    )


def test_text_is_never_taken_for_markup() -> None:
    """A name with stars, bars or brackets shows as it was typed, on one line."""
    text = markdown(Document("T", (Paragraph("# not *a* [head](x) | <b>\n\n- no"),)))
    assert text == "# T\n\n\\# not \\*a\\* \\[head\\](x) \\| \\<b\\> - no\n"


def test_a_document_with_its_own_title_gets_no_second() -> None:
    """The title stands once."""
    assert markdown(Document("T", (Heading("Mine", 1),))) == "# Mine\n"
