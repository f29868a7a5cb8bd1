"""The measures of head and neck and the girths of the trunk; see :mod:`.catalogue`."""

from __future__ import annotations

from tapewise_core.measures.measure import Measure, Region, View
from tapewise_core.text.told import About, said

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

TRUNK_ROUND = (
    Measure(
        key="high_bust",
        name="high bust",
        definition="The girth of the chest high under the arms, above the fullness of the bust.",
        standard="ISO 8559-1:2017",
        landmarks="The crease where the arm meets the body in front, on both sides.",
        how=(
            "Lay the tape round the back close up under both arms, lower the arms, and bring it "
            "together above the bust. In front it may rise a little. Breathe out and read "
            "without pulling."
        ),
        region=Region.TRUNK_ROUND,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=1.5,
        third=3.0,
        low=60.0,
        high=180.0,
    ),
    Measure(
        key="bust",
        name="bust",
        definition="The girth of the chest, level, at the height of the bust points.",
        standard="ISO 8559-1:2017",
        landmarks="The bust points, in the bra you will wear under the garment; else the nipples.",
        how=(
            "Lay the tape round the back and over both bust points. Turn sideways to a mirror: "
            "the tape must be level and not sag behind. Arms down, breathe out gently, and read "
            "with the tape just touching."
        ),
        region=Region.TRUNK_ROUND,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=1.5,
        third=3.0,
        low=62.0,
        high=190.0,
    ),
    Measure(
        key="under_bust",
        name="under bust",
        definition="The girth of the chest, level, directly below the breasts.",
        standard="ISO 8559-1:2017",
        landmarks="The crease below the breasts; on a flat chest, the lower edge of the muscle.",
        how=(
            "Lay the tape round the ribs directly below the breasts. Check in a mirror that it "
            "is level behind. Breathe out and read: close, but without pressing into the skin."
        ),
        region=Region.TRUNK_ROUND,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=1.5,
        third=3.0,
        low=54.0,
        high=175.0,
    ),
    Measure(
        key="waist",
        name="waist",
        definition=(
            "The girth, level, midway between the lowest rib and the top of the hip bone. Here: "
            "wherever your elastic sits; say which place it was."
        ),
        standard="ISO 8559-1:2017",
        landmarks=said(
            "Tie on a narrow elastic and note where: at the narrowest place, midway from rib "
            "to hip bone, or at the navel. These lie up to {} apart.",
            About(80.0),
        ),
        how=(
            "Leave the elastic on: every length to the waist ends there. Stand as usual, do not "
            "draw in the belly. Lay the tape level over the elastic, breathe out, read."
        ),
        region=Region.TRUNK_ROUND,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=1.5,
        third=3.0,
        low=46.0,
        high=200.0,
    ),
    Measure(
        key="hip",
        name="hip",
        definition=(
            "The girth, level, at the greatest prominence of the seat, which need not be the "
            "largest girth."
        ),
        standard="ISO 8559-1:2017",
        landmarks="Stand sideways to a mirror: the place where the seat stands out farthest.",
        how=(
            "Feet together, pockets empty. Lay the tape round that place and check in the "
            "mirror that it is level all the way. Read without pulling, and mark the height "
            "with a pin or a sticker: the hip depth ends there."
        ),
        region=Region.TRUNK_ROUND,
        view=View.SIDE,
        is_girth=True,
        helper=False,
        agree=1.5,
        third=3.0,
        low=66.0,
        high=200.0,
    ),
)
