"""The lengths of the trunk; see :mod:`.catalogue`."""

from __future__ import annotations

from tapewise_core.measures.measure import Measure, Region, View

TRUNK_LENGTHS = (
    Measure(
        key="back_waist_length",
        name="back waist length",
        definition="From the nape bone down the middle of the back to the waist.",
        standard="ISO 8559-1:2017",
        landmarks=(
            "Bend the head: the nape bone is the one that sticks out most. The waist is your "
            "elastic."
        ),
        how=(
            "Stand upright, look straight ahead. The tape follows the back from the bone to the "
            "lower edge of the elastic. Alone: stick the tape's end to the bone with skin tape, "
            "let it hang, and read with two mirrors or from a photograph."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.BACK,
        is_girth=False,
        helper=True,
        agree=1.0,
        third=2.0,
        low=26.0,
        high=66.0,
    ),
    Measure(
        key="armscye_depth",
        name="armscye depth",
        definition=(
            "From the nape bone straight down to the level of the underarm: where the arm joins "
            "the body below."
        ),
        standard="ISO 8559-1:2017",
        landmarks=(
            "Clamp a ruler level under one arm, close up but not pressing: its upper edge, "
            "carried round to the middle of the back, is the level."
        ),
        how=(
            "Stand upright, arms hanging. Measure from the nape bone down the middle of the "
            "back to that level. Alone: tie a ribbon level round the chest at the ruler, and "
            "read as for the back waist length."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.BACK,
        is_girth=False,
        helper=True,
        agree=1.0,
        third=2.0,
        low=11.0,
        high=36.0,
    ),
    Measure(
        key="across_back",
        name="across back",
        definition=(
            "Across the back from one armpit crease to the other, halfway between shoulder "
            "point and underarm."
        ),
        standard="ISO 8559-1:2017",
        landmarks="The creases where the arms meet the back, while the arms hang.",
        how=(
            "Stand easily, shoulders neither drawn back nor rounded. The tape lies level over "
            "the shoulder blades from crease to crease. Alone: stick a dot at each crease, take "
            "a photograph of your back with a ruler held flat against it, and compare."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.BACK,
        is_girth=False,
        helper=True,
        agree=1.0,
        third=2.0,
        low=22.0,
        high=66.0,
    ),
    Measure(
        key="across_front",
        name="across front",
        definition=(
            "Across the chest from one armpit crease to the other, halfway between shoulder "
            "point and underarm."
        ),
        standard="common practice",
        landmarks="The creases where the arms meet the chest, while the arms hang.",
        how=(
            "Stand easily, arms hanging, shoulders neither drawn back nor rounded. Hold the tape "
            "level above the bust from crease to crease, follow the chest without pulling, and "
            "read in a mirror."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.FRONT,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=20.0,
        high=62.0,
    ),
    Measure(
        key="front_waist_length",
        name="front waist length",
        definition="From the side neck point over the bust point and straight down to the waist.",
        standard="ISO 8559-1:2017",
        landmarks=(
            "Side neck point: where a fine chain round the neck crosses the shoulder. The waist "
            "is your elastic."
        ),
        how=(
            "Hold the tape's end on the side neck point. Run it over the bust point and from "
            "there straight down to the lower edge of the elastic; below the bust it may hang "
            "free. Look ahead, have the reading in a mirror."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.FRONT,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=26.0,
        high=75.0,
    ),
    Measure(
        key="neck_to_bust_point",
        name="neck to bust point",
        definition="From the side neck point to the bust point of the same side.",
        standard="ISO 8559-1:2017",
        landmarks="The side neck point and the bust point, in the bra you will wear, if any.",
        bare="The side neck point and the nipple.",
        how=(
            "Hold the tape's end on the side neck point and run it straight to the bust point. "
            "Look ahead while you hold it, and keep the place with a finger before you read."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.FRONT,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=16.0,
        high=52.0,
    ),
    Measure(
        key="bust_span",
        name="bust span",
        definition="From one bust point straight across to the other.",
        standard="ISO 8559-1:2017",
        landmarks="Both bust points, in the bra you will wear, if any.",
        bare="Both nipples.",
        how=(
            "Hold the tape straight and level from point to point; it does not follow the "
            "hollow between the breasts. Arms down, and read in a mirror."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.FRONT,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=10.0,
        high=40.0,
    ),
    Measure(
        key="hip_depth",
        name="hip depth",
        definition="From the waist down the side of the body to the level of the hip.",
        standard="ISO 8559-1:2017",
        landmarks="The elastic at the waist, and the height you marked when measuring the hip.",
        how=(
            "Feet together. Follow the side of the body with the tape from the lower edge of "
            "the elastic to the marked level. Stand straight: read in a mirror, or hold the "
            "place with a thumb."
        ),
        region=Region.TRUNK_LENGTHS,
        view=View.SIDE,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=4.0,
        high=36.0,
    ),
)
