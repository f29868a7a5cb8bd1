"""The bibliography: one entry for every book, standard and survey that a number rests on.

A docstring cites an entry by its key in brackets, such as ``[baldt]``, and an option by its
``source``. A number without a publication rests on one of the ``GROUNDS``.
"""

from __future__ import annotations

from collections.abc import Iterable

from tapewise_core.frozen import Frozen


class Source(Frozen, kw_only=True):
    """One publication; ``where`` names the places in it that are used.

    >>> print(Source(author="Ada", year="1921", title="Skirts", publisher="Bath", where="page 3"))
    Ada (1921): Skirts. Bath. Used here: page 3.
    """

    title: str
    author: str = ""
    year: str = ""
    publisher: str = ""
    where: str = ""
    note: str = ""

    def __str__(self) -> str:
        return " ".join(f"{part}." for part in self._parts() if part)

    def _parts(self) -> tuple[str, ...]:
        year = f" ({self.year})" if self.year else ""
        work = f"{self.author}{year}: {self.title}" if self.author else f"{self.title}{year}"
        used = f"Used here: {self.where}" if self.where else ""
        return work, self.publisher, used, self.note


GROUNDS = {
    "practice": "common practice in the trade; no publication named",
    "memory": "written down from memory; not checked against a copy",
    "exact": "arithmetic; anyone can redo it",
}
"""What a number rests on where no publication is named."""

_ISO = "Geneva: International Organization for Standardization"
_ASTM = "West Conshohocken: ASTM International"
_ARMY = "Natick: U.S. Army Natick Research, Development and Engineering Center"

SOURCES = {
    "abramowitz": Source(
        author="Abramowitz, M. and Stegun, I. A.",
        year="1964",
        title="Handbook of Mathematical Functions",
        publisher="Washington: National Bureau of Standards",
        where="table 25.4, n = 24",
    ),
    "ansur1": Source(
        author="Gordon, C. C. and others",
        year="1989",
        title="1988 Anthropometric Survey of U.S. Army Personnel, TR-89/044",
        publisher=_ARMY,
        where="the measures of every soldier",
        note="Public domain",
    ),
    "ansur2": Source(
        author="Gordon, C. C. and others",
        year="2014",
        title="2012 Anthropometric Survey of U.S. Army Personnel, TR-15/007",
        publisher=_ARMY,
        where="the measures of every soldier",
        note="Public domain",
    ),
    "astm-d5585": Source(
        title="ASTM D5585-11e1, Standard tables of body measurements for adult female misses",
        publisher=_ASTM,
    ),
    "astm-d6673": Source(
        title="ASTM D6673, Standard practice for sewn products pattern data interchange",
        publisher=_ASTM,
        where="the layers by number, from memory",
    ),
    "baldt": Source(
        author="Baldt, L. I.",
        year="1916",
        title="Clothing for Women: Selection, Design, Construction",
        publisher="Philadelphia and London: J. B. Lippincott",
        where="chapter 5, to draft a shirt: figures 44 and 45, and shirt sleeve, figure 46A",
        note="Public domain in the United States",
    ),
    "conover": Source(
        author="Conover, I. DeN.",
        year="1921 and 1922",
        title="A Complete Course in Dressmaking",
        publisher="New York: Edward J. Clode",
        where=(
            "volume 2, page 56, what a low underarm does; volume 9, Infants' Clothes, page 22, "
            "the armhole as one true curve across the shoulder"
        ),
        note="Public domain in the United States",
    ),
    "css": Source(
        author="W3C",
        title="CSS Values and Units Module Level 3",
        where="5.2, absolute lengths: 96 px an inch",
    ),
    "en13402-3": Source(
        title="EN 13402-3, Size designation of clothes, part 3: body measurements and intervals",
        publisher="Brussels: European Committee for Standardization",
        where="bust limits of women's sizes; waist and hip from memory",
    ),
    "en14682": Source(
        title="EN 14682, Safety of children's clothing: cords and drawstrings",
        publisher="Brussels: European Committee for Standardization",
    ),
    "fitting-dresses": Source(
        title="Fitting Dresses, a bulletin for home sewers",
        publisher="Washington: United States Department of Agriculture",
        where="what folds in a garment say",
        note="A work of the US government",
    ),
    "herr-32": Source(
        year="1966",
        title="Pattern Alteration: A Guide for Leaders in Clothing Programs",
        publisher="Washington: Department of Agriculture, Home Economics Research Report 32",
        where="shoulders, armholes and sleeves",
        note="A work of the US government",
    ),
    "iso216": Source(
        title="ISO 216, Writing paper and certain classes of printed matter: trimmed sizes",
        publisher=_ISO,
        where="the A sizes",
    ),
    "iso32000-1": Source(
        year="2008",
        title="ISO 32000-1, Document management: portable document format, part 1",
        publisher=_ISO,
        where="8.3.2.3, 8.4, 8.5 and annex C",
    ),
    "iso4915": Source(
        year="1991",
        title="ISO 4915, Textiles: stitch types, classification and terminology",
        publisher=_ISO,
    ),
    "iso8559-1": Source(
        year="2017",
        title="ISO 8559-1, Size designation of clothes, part 1: anthropometric definitions",
        publisher=_ISO,
        note="In our own words and from memory",
    ),
    "nhanes": Source(
        author="National Center for Health Statistics",
        year="2020",
        title="National Health and Nutrition Examination Survey 2017 to March 2020",
        publisher="Hyattsville",
        where="body measures of adults and children",
        note="Public domain",
    ),
    "nmsu-c220": Source(
        author="Hamilton, W.",
        title="Check Your Pattern for Proper Fit, Guide C-220",
        publisher="Las Cruces: New Mexico State University, Cooperative Extension Service",
        where="lengths and widths of bodice and skirt",
    ),
    "nmsu-c228": Source(
        author="Hamilton, W.",
        title="Pattern Alteration, Guide C-228",
        publisher="Las Cruces: New Mexico State University, Cooperative Extension Service",
        where="what is changed for shoulders, bust, back and hip",
    ),
    "rosenfeld": Source(
        author="Rosenfeld, I.",
        year="1918",
        title="The Practical Designer",
        publisher="New York: Leading Pattern Company",
        where="page 58, the underarm of a grown-on sleeve",
        note="Public domain in the United States",
    ),
    "snyder": Source(
        author="Snyder, R. G. and others",
        year="1977",
        title="Anthropometry of infants, children and youths to age 18 for product safety design",
        publisher="Ann Arbor: University of Michigan",
        where="the measures of every child from 2 to 16 years",
        note="A work of the US government",
    ),
    "wsu-2246": Source(
        year="1962",
        title="Extension Mimeograph 2246, on fitting and altering",
        publisher="Pullman: Washington State University, Agricultural Extension Service",
        where="causes of what is seen at neck and shoulder",
    ),
}
"""Key to publication."""

ESTIMATES = ("ansur1", "ansur2", "nhanes")
"""The surveys that every estimate of a measure rests on."""


def citations(keys: Iterable[str]) -> tuple[str, ...]:
    """Return the publications among some keys, spelt out, each once and by author or title.

    Raises KeyError for a key that is neither a publication's nor one of the ``GROUNDS``.
    """
    named = {str(SOURCES[key]) for key in keys if key not in GROUNDS}
    return tuple(sorted(named))
