"""The measures of head and neck; see :mod:`.catalogue`."""

from __future__ import annotations

from tapewise_core.measures.measure import Measure, Region, View

HEAD_AND_NECK = (
    Measure(
        key="head",
        name="head",
        definition="The largest girth of the head, above the ears.",
        standard="ISO 8559-1:2017",
        landmarks="The middle of the forehead, just above the brows, and the bump at the back.",
        how=(
            "Lay the tape over the forehead, above both ears and over the bump behind. Pull it "
            "until the hair lies flat. Slide it up and down a little and keep the largest "
            "reading: a neckline without an opening has to pass there."
        ),
        region=Region.HEAD_AND_NECK,
        view=View.SIDE,
        is_girth=True,
        helper=False,
        agree=0.6,
        third=1.2,
        low=47.0,
        high=68.0,
    ),
    Measure(
        key="neck",
        name="neck base",
        definition=(
            "The girth of the neck at its base: over the nape bone, both side neck points and "
            "the pit of the neck in front."
        ),
        standard="ISO 8559-1:2017",
        landmarks=(
            "Bend the head: the nape bone is the one that sticks out most. A fine chain worn "
            "round the neck settles on the line."
        ),
        how=(
            "Raise the head again. Stand the tape on its edge along the chain, over the nape "
            "bone and through the hollow between the collarbones. It touches everywhere and "
            "presses nowhere. Breathe out, then read."
        ),
        region=Region.HEAD_AND_NECK,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=0.6,
        third=1.2,
        low=26.0,
        high=62.0,
    ),
)
