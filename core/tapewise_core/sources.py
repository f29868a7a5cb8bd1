"""The bibliography: a short key for every source that a number elsewhere cites.

``practice`` marks common practice in the trade, for which no publication is
named; ``memory`` marks a value written down from memory.
"""

from __future__ import annotations

SOURCES = {
    "practice": "Common practice in the trade; no publication named.",
    "memory": "Written down from memory; not checked against a copy.",
    "exact": "Arithmetic; anyone can redo it.",
    "ansur1": (
        "Gordon, C. C. and others (1989): 1988 Anthropometric Survey of U.S. Army Personnel, "
        "TR-89/044. Public domain data."
    ),
    "ansur2": (
        "Gordon, C. C. and others (2014): 2012 Anthropometric Survey of U.S. Army Personnel, "
        "TR-15/007. Public domain data."
    ),
    "nhanes": (
        "National Center for Health Statistics: National Health and Nutrition Examination "
        "Survey 2017 to March 2020, body measures. Public domain data."
    ),
    "iso8559-1": (
        "ISO 8559-1:2017, Size designation of clothes, part 1: anthropometric definitions."
    ),
    "iso20685-1": "ISO 20685-1:2018, 3-D scanning methodologies, part 1: evaluation protocol.",
    "iso4915": "ISO 4915:1991, Textiles. Stitch types. Classification and terminology.",
    "iso4916": "ISO 4916:1991, Textiles. Seam types. Classification and terminology.",
    "astm-d5585": "ASTM D5585-11e1, Standard tables of body measurements for adult female misses.",
    "rosenfeld": "Rosenfeld, I. (1918): The Practical Designer.",
    "conover": "Conover: Complete Course in Dressmaking, volume 2, page 56.",
    "conover-9": (
        "Conover: A Complete Course in Dressmaking, volume 9, Infants' Clothes, page 22: the "
        "armhole "
        "as one true curve across the shoulder."
    ),
    "baldt": (
        "Baldt, L. I. (1916): Clothing for Women: Selection, Design, Construction. "
        "Philadelphia and "
        "London: J. B. Lippincott. Chapter 5, to draft a shirt: back and front, figures 44 and 45, "
        "and shirt sleeve, figure 46A. Public domain in the United States."
    ),
    "okuwaki": "Okuwaki (1998): shoulder slope of 362 men.",
    "en14682": "EN 14682: Safety of children's clothing. Cords and drawstrings.",
    "css": "W3C: Cascading Style Sheets, absolute lengths; 96 px an inch.",
}
"""Key to full citation."""
