"""The measures of arm and shoulder; see :mod:`.catalogue`."""

from __future__ import annotations

from tapewise_core.measures.measure import Measure, Region, View

ARM = (
    Measure(
        key="shoulder_length",
        name="shoulder length",
        definition="From the side neck point along the shoulder to the shoulder point.",
        standard="ISO 8559-1:2017",
        landmarks=(
            "Side neck point: where a fine chain round the neck crosses the shoulder. Shoulder "
            "point: the dent at the end of the bone when the arm is lifted sideways."
        ),
        how=(
            "Mark the point and let the arm hang. With the other hand lay the tape from the "
            "chain along the top of the shoulder to the mark; read in a mirror."
        ),
        region=Region.ARM,
        view=View.FRONT,
        is_girth=False,
        helper=False,
        agree=1.0,
        third=2.0,
        low=8.0,
        high=22.0,
    ),
    Measure(
        key="shoulder_drop",
        name="shoulder drop",
        definition=(
            "How much higher the side neck point lies than the shoulder point, measured "
            "straight down: a difference of two heights, not the length along the shoulder."
        ),
        standard="common practice; ISO 8559-1:2017 has the shoulder's slope as an angle",
        landmarks="The side neck point and the shoulder point, marked as for the shoulder length.",
        how=(
            "Shoulders loose, hold a ruler level outwards from the side neck point. The drop is "
            "from the ruler straight down to the shoulder point. Alone: photograph yourself "
            "from the front, ruler in the picture."
        ),
        region=Region.ARM,
        view=View.FRONT,
        is_girth=False,
        helper=True,
        agree=1.0,
        third=2.0,
        low=1.0,
        high=14.0,
    ),
    Measure(
        key="arm_length",
        name="arm length",
        definition="From the shoulder point over the slightly bent elbow to the wrist bone.",
        standard="ISO 8559-1:2017",
        landmarks="The shoulder point, the elbow's tip, the wrist bone below the little finger.",
        how=(
            "Put the hand on the hip, so that the elbow bends a little. Run the tape down the "
            "outside of the arm, over the elbow, to the wrist bone. Alone: fix the tape's end "
            "to the shoulder with a strip of skin tape."
        ),
        region=Region.ARM,
        view=View.BACK,
        is_girth=False,
        helper=True,
        agree=1.0,
        third=2.0,
        low=38.0,
        high=80.0,
    ),
    Measure(
        key="upper_arm",
        name="upper arm",
        definition=(
            "The girth of the hanging arm midway between shoulder and elbow. Here: the largest "
            "girth from there up to the armpit, because the sleeve has to hold it."
        ),
        standard="ISO 8559-1:2017",
        landmarks="Halfway from the shoulder point to the tip of the elbow.",
        how=(
            "Let the arm hang, muscles loose. Lay the tape square round the arm with the other "
            "hand, slide it up towards the armpit, and keep the largest reading. It touches the "
            "skin without denting it."
        ),
        region=Region.ARM,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=0.6,
        third=1.2,
        low=16.0,
        high=70.0,
    ),
    Measure(
        key="wrist",
        name="wrist",
        definition="The girth of the wrist over the bone at the little finger's side.",
        standard="ISO 8559-1:2017",
        landmarks="The bone that stands out at the wrist, on the little finger's side.",
        how=(
            "Hold the hand straight with the fingers loose. Lay the tape round the wrist over "
            "that bone, close but not tight, and read."
        ),
        region=Region.ARM,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=0.6,
        third=1.2,
        low=11.0,
        high=26.0,
    ),
)
