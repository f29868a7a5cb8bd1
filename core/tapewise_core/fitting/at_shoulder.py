"""What is seen at shoulders, armholes and sleeves.

Symptoms, causes and amounts are those of extension bulletins [herr-32] [nmsu-c228] and common
practice; the questions and the words are ours.
"""

from __future__ import annotations

from tapewise_core.fitting.folds import Folds, View, both
from tapewise_core.fitting.symptom import Answer, Symptom, once, remedy

LEFT, RIGHT = "the wearer's left", "the wearer's right"
ONE_SIDE = "no two shoulders are alike; this one hangs lower"

SHOULDERS = (
    Symptom(
        "shoulder-seam-behind",
        "the shoulder seam lies behind the top of the shoulder",
        Folds(View.SIDE, (((50, 8), (56, 15)), ((57, 8), (56, 15)))),
        once("the shoulders stand forward", remedy("shoulder-forward", 0.5, 1.5)),
    ),
    Symptom(
        "folds-to-shoulder-end",
        "folds run from the neck down to the end of the shoulder",
        Folds(View.FRONT, both(((61, 13), (76, 21)), ((60, 17), (75, 27)))),
        (
            Answer(
                "both",
                "yes, both",
                "the shoulders slope more than drafted",
                (remedy("shoulders-lower", 0.5, 1.5),),
            ),
            Answer(
                "left", f"no, {LEFT} alone", ONE_SIDE, (remedy("left-shoulder-lower", 0.5, 1.5),)
            ),
            Answer(
                "right",
                f"no, {RIGHT} alone",
                ONE_SIDE,
                (remedy("right-shoulder-lower", 0.5, 1.5),),
            ),
        ),
        "Are both sides alike?",
    ),
    Symptom(
        "folds-from-shoulder-point",
        "folds run from the shoulder point towards the middle, and the neck stands up",
        Folds(View.FRONT, both(((76, 18), (58, 26)), ((75, 22), (56, 33)))),
        (
            Answer(
                "both",
                "yes, both",
                "the shoulders are squarer than drafted",
                (remedy("shoulders-higher", 0.5, 1.2),),
            ),
            Answer(
                "left",
                f"no, {LEFT} alone",
                "no two shoulders are alike; the right one hangs lower",
                (remedy("right-shoulder-lower", 0.5, 1.2),),
            ),
            Answer(
                "right",
                f"no, {RIGHT} alone",
                "no two shoulders are alike; the left one hangs lower",
                (remedy("left-shoulder-lower", 0.5, 1.2),),
            ),
        ),
        "Are both sides alike?",
    ),
    Symptom(
        "one-side-lower",
        "one side hangs lower than the other",
        Folds(
            View.BACK, (((24, 88), (50, 92), (77, 97)), ((22, 19), (40, 11)), ((60, 11), (77, 22)))
        ),
        (
            Answer(
                "left-shoulder",
                "the left shoulder",
                ONE_SIDE,
                (remedy("left-shoulder-lower", 0.5, 1.5),),
            ),
            Answer(
                "right-shoulder",
                "the right shoulder",
                ONE_SIDE,
                (remedy("right-shoulder-lower", 0.5, 1.5),),
            ),
            Answer(
                "hip",
                "a hip; the shoulders are even",
                "one hip is higher",
                advice="Level the hem from the floor, each side by itself: the draft keeps both "
                "sides alike below the waist.",
            ),
        ),
        "Which is it, as the wearer has it?",
    ),
    Symptom(
        "pulls-between-blades",
        "the back pulls between the shoulder blades",
        Folds(View.BACK, (((32, 27), (68, 27)), ((33, 33), (67, 33)))),
        (
            Answer(
                "across",
                "across alone",
                "the back is wide",
                (remedy("across-back-wider", 0.5, 1.0),),
            ),
            Answer(
                "up",
                "it pulls up as well",
                "the back is round and asks for length",
                (remedy("back-longer", 0.5, 2.0),),
            ),
        ),
        "Does it pull across alone, or up as well?",
    ),
    Symptom(
        "slack-below-armhole",
        "there is slack below the armhole, and the body drags when an arm is lifted",
        Folds(View.LIFTED, (((74, 42), (70, 50), (74, 58)), ((70, 40), (65, 50), (69, 60)))),
        once("the armhole is low or large", remedy("underarm-raised", 1.0, 2.0)),
    ),
    Symptom(
        "armhole-cuts-in",
        "the armhole cuts in",
        Folds(View.FRONT, both(((74, 24), (67, 25)), ((74, 29), (66, 32)))),
        (
            Answer(
                "under",
                "under the arm",
                "the armhole is high",
                (remedy("underarm-lower", 0.5, 1.5),),
            ),
            Answer(
                "front",
                "in front of the arm",
                "the front is narrow across",
                (remedy("across-front-wider", 0.3, 0.5),),
            ),
            Answer(
                "back",
                "behind the arm",
                "the back is narrow across",
                (remedy("across-back-wider", 0.3, 0.5),),
            ),
        ),
        "Where does it cut in?",
    ),
    Symptom(
        "sleeve-tight",
        "the sleeve is tight at the upper arm",
        Folds(View.FRONT, both(((80, 22), (78, 33)), ((85, 26), (81, 37)))),
        once("the arm wants more room", remedy("sleeve-wider", 0.5, 1.5)),
    ),
    Symptom(
        "arm-not-lifted",
        "the arm cannot be lifted without the hem riding up",
        Folds(View.LIFTED, (((76, 34), (74, 50), (75, 70)), ((73, 38), (68, 54), (68, 74)))),
        (
            Answer(
                "own",
                "cut by themselves and sewn on",
                "the underarm is low",
                (remedy("underarm-raised", 1.0, 2.0), remedy("sleeve-flatter", 10.0, 15.0)),
            ),
            Answer(
                "grown",
                "cut in one with the body",
                "the sleeve hangs steeply",
                (remedy("sleeve-flatter", 10.0, 15.0), remedy("underarm-raised", 1.0, 2.0)),
            ),
        ),
        "How are its sleeves made?",
    ),
    Symptom(
        "sleeve-twists",
        "the sleeve twists, and its seam comes forward",
        Folds(View.SIDE, (((47, 38), (44, 52), (38, 66)), ((53, 40), (51, 54), (45, 68)))),
        (
            Answer(
                "cloth",
                "yes, the body's seams turn too",
                "the cloth spirals, or was cut off the grain",
                advice="Wash the cloth, let it dry flat, and cut along its ribs; no change of the "
                "pattern mends this.",
            ),
            Answer(
                "sleeve",
                "no, the sleeve alone",
                "the arm hangs further forward than the sleeve",
                (remedy("sleeve-forward", 0.5, 1.0),),
            ),
        ),
        "Is the cloth turning as well?",
    ),
)
