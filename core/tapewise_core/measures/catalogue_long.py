"""The long lengths; see :mod:`.catalogue`."""

from __future__ import annotations

from tapewise_core.measures.measure import Measure, Region, View

LONG_LENGTHS = (
    Measure(
        key="height",
        name="height",
        definition="From the crown of the head straight down to the floor, without shoes.",
        standard="ISO 8559-1:2017",
        landmarks="The highest point of the head, hair pressed flat.",
        how=(
            "Stand barefoot with heels, seat and back against a door frame, and look straight "
            "ahead. Lay a book on the head so that its spine touches the frame, mark below "
            "it, step away, and measure from the floor to the mark."
        ),
        region=Region.LONG_LENGTHS,
        view=View.SIDE,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=124.0,
        high=220.0,
    ),
    Measure(
        key="nape_to_floor",
        name="nape to floor",
        definition="From the nape bone straight down to the floor, without shoes.",
        standard="ISO 8559-1:2017",
        landmarks="Bend the head: the nape bone is the one that sticks out most.",
        how=(
            "Stand upright and barefoot. The tape hangs from the bone to the floor without "
            "following the back. Alone: stand with your back to a door frame, reach behind, "
            "make a mark level with the bone, and measure the mark's height."
        ),
        region=Region.LONG_LENGTHS,
        view=View.BACK,
        is_girth=False,
        helper=True,
        agree=1.0,
        third=2.0,
        low=105.0,
        high=195.0,
    ),
    Measure(
        key="waist_to_floor",
        name="waist to floor",
        definition="From the waist at the side straight down to the floor, without shoes.",
        standard="ISO 8559-1:2017",
        landmarks="The elastic at the waist, at the side of the body.",
        how=(
            "Stand barefoot on the tape's end, feet together. Draw the tape straight up to the "
            "lower edge of the elastic without following the hip, hold the place with a "
            "thumb, then look."
        ),
        region=Region.LONG_LENGTHS,
        view=View.SIDE,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=68.0,
        high=150.0,
    ),
    Measure(
        key="waist_to_knee",
        name="waist to knee",
        definition="From the waist straight down to the middle of the kneecap.",
        standard="ISO 8559-1:2017",
        landmarks="The elastic at the waist, and the middle of the kneecap; stick a dot there.",
        how=(
            "Stand upright. Hold the tape's end at the lower edge of the elastic and let it "
            "hang in front to the dot on the kneecap. Do not bend to look: hold the place "
            "with a thumb, or read in a mirror."
        ),
        region=Region.LONG_LENGTHS,
        view=View.FRONT,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=35.0,
        high=85.0,
    ),
)
