"""The girths of the trunk; see :mod:`.catalogue`."""

from __future__ import annotations

from tapewise_core.measures.measure import Measure, Region, View
from tapewise_core.text.amounts import About
from tapewise_core.text.told import said

TRUNK_ROUND = (
    Measure(
        key="over_shoulder_girth",
        name="over-shoulder girth",
        definition=(
            "The girth, level, round both shoulders and both hanging arms, where the upper arms "
            "stand out most below the shoulder points."
        ),
        standard="common practice",
        landmarks="The roundest part of both upper arms, about a hand's breadth below the neck.",
        how=(
            "Arms hanging. Lay the tape round the back and both upper arms at that height, level "
            "all the way, and bring it together across the chest. Breathe out and read without "
            "pulling. Alone: check in a mirror that it has not slipped down behind."
        ),
        region=Region.TRUNK_ROUND,
        view=View.FRONT,
        is_girth=True,
        helper=True,
        agree=1.5,
        third=3.0,
        low=76.0,
        high=190.0,
    ),
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
        bare="The nipples. In men's wear this girth is called the chest.",
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
        key="high_hip",
        name="high hip",
        definition=(
            "The girth, level, over the tops of the hip bones, where the belly is fullest; about "
            "halfway from the waist to the hip."
        ),
        standard="common practice",
        landmarks="Both hip bones: press the thumbs in at the sides until you feel their tops.",
        how=(
            "Stand as usual, do not draw in the belly. Lay the tape level over the tops of both "
            "hip bones and over the belly; check the sides in a mirror. Breathe out and read "
            "without pulling."
        ),
        region=Region.TRUNK_ROUND,
        view=View.FRONT,
        is_girth=True,
        helper=False,
        agree=1.5,
        third=3.0,
        low=58.0,
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
