"""Words of the trade for a beginner, with the American word where it differs.

Meanings are common practice in our own words; no length stands in them, so that they are the same
for every reader.
"""

from __future__ import annotations

from tapewise_core.frozen import Frozen


class Term(Frozen):
    """A word, what it means, and the American word for it, if there is another."""

    word: str
    means: str
    american: str = ""

    @property
    def named(self) -> str:
        """The word with the American one beside it."""
        return f"{self.word} ({self.american})" if self.american else self.word


GLOSSARY = (
    Term("allowance", "cloth beyond the stitch line, for a seam or a hem", "seam allowance"),
    Term("armscye", "where the arm leaves the trunk: the armhole, on the body"),
    Term("block", "the plain body a pattern is drafted from, before style is added", "sloper"),
    Term("bust", "the girth of the chest at the bust points; in men's wear it is called the chest"),
    Term("cap", "the curved top of a sleeve that is sewn into the armhole"),
    Term("casing", "a tunnel of cloth that an elastic is drawn through"),
    Term("coverstitch", "a machine that hems stretch cloth with two rows outside and loops inside"),
    Term(
        "cowl", "a neckline whose front is longer than the way across, so that it hangs in a fold"
    ),
    Term("dart", "a wedge of cloth sewn away, so that flat cloth rounds itself"),
    Term("ease", "what the garment is larger than the body there, to move in and for the look"),
    Term("facing", "a strip of the same cloth turned inside to finish an edge"),
    Term("fold", "“on the fold”: the piece is half of what is cut; lay its edge on folded cloth"),
    Term("fullness", "how much cloth is gathered into a length: 1.5 is half as much again"),
    Term("gather", "to draw cloth up along a thread into small folds, to sew it to a shorter edge"),
    Term("girth", "a length all the way round the body or the garment"),
    Term("grain", "the lengthwise direction of the cloth; the arrow on a piece lies along it"),
    Term("nap", "a pile, print or shading for which all pieces must point one way"),
    Term("nape", "the bone you feel where the back of the neck meets the back"),
    Term("negative ease", "the garment is smaller than the body, and the cloth stretches over it"),
    Term("notch", "a short mark across an edge; two that belong together meet when sewn"),
    Term(
        "overarm",
        "the seam along the top of the arm, from the neck over the shoulder to the sleeve's hem",
    ),
    Term("overlocker", "a machine that sews, trims and binds a seam that stretches", "serger"),
    Term("raglan", "a sleeve that runs up to the neck and takes the shoulder with it"),
    Term("raglan line", "where a raglan sleeve and the body meet, from the neck to the underarm"),
    Term("repeat", "the length after which a cloth's own pattern begins anew"),
    Term(
        "selvedge", "the firm edge along both sides of a cloth; nothing is cut from it", "selvage"
    ),
    Term("slash and spread", "to cut a pattern open and lay its parts apart, for more cloth there"),
    Term("slit", "an opening left unsewn at the end of a seam, to stride or for the look"),
    Term("stay", "a tape or elastic sewn into a seam so that it cannot grow long"),
    Term("stretch", "how far the cloth gives: per cent that a marked length on the fold gains"),
    Term("tier", "one of several strips of a skirt, each gathered to the one above"),
    Term("toile", "a trial garment of cheap cloth, to see how it fits", "muslin"),
    Term("true", "to redraw two edges that meet so that they run on smoothly across the seam"),
    Term("vent", "an opening in a hem whose two edges lie over each other, to stride"),
    Term("waist", "wherever you tie the elastic: measured there, and sewn there"),
    Term("walk", "to move one paper edge along another, to see that they are equally long"),
)
"""In the order of the alphabet."""


def lines(terms: tuple[Term, ...] = GLOSSARY) -> list[str]:
    """Return a line for each word."""
    width = max(len(term.named) for term in terms) + 2
    return [f"{term.named:<{width}}{term.means}" for term in terms]


def found(word: str) -> tuple[Term, ...]:
    """Return the terms that a word names or stands in, those it names first."""
    asked = word.casefold().strip()
    named = [term for term in GLOSSARY if asked in (term.word, term.american)]
    told = f"{asked} "
    others = [
        term
        for term in GLOSSARY
        if term not in named and told in f"{term.word} {term.american} {term.means} ".casefold()
    ]
    return (*named, *others)
