"""What is seen at bust, waist, sides and hem.

Symptoms, causes and amounts are those of extension bulletins [nmsu-c220] [nmsu-c228] and common
practice; the questions and the words are ours.
"""

from __future__ import annotations

from tapewise_core.fitting.folds import Folds, View, both
from tapewise_core.fitting.symptom import Answer, Symptom, once, remedy

BODY = (
    Symptom(
        "pulls-across-bust",
        "the front pulls level across the bust",
        Folds(View.FRONT, (((28, 36), (50, 38), (72, 36)), ((29, 42), (50, 43), (71, 42)))),
        (
            Answer(
                "yes",
                "yes, as it was tested",
                "it is tight there",
                (remedy("bust-out", 0.5, 1.0),),
            ),
            Answer(
                "no",
                "no, less",
                "the cloth gives less than the draft counted on",
                advice="Fold the cloth, measure its stretch anew, and draft with that stretch "
                "before changing anything else.",
            ),
        ),
        "Does the cloth stretch as far as it was tested?",
    ),
    Symptom(
        "folds-from-bust",
        "slanting folds run from the bust to side or hem, and the hem rises in front",
        Folds(
            View.FRONT,
            (
                *both(((40, 38), (32, 52), (28, 70)), ((43, 40), (38, 56), (34, 76))),
                ((22, 92), (50, 87), (78, 92)),
            ),
        ),
        (
            Answer(
                "no",
                "no, it hangs straight",
                "the bust takes up length",
                (remedy("front-longer", 1.0, 3.0),),
            ),
            Answer(
                "yes",
                "yes, it comes forward",
                "the bust takes up width as well",
                (remedy("front-wider", 0.5, 1.5), remedy("front-longer", 1.0, 3.0)),
            ),
        ),
        "Does the side seam swing forward too?",
    ),
    Symptom(
        "front-sags",
        "a fold lies under the bust and the front sags",
        Folds(View.FRONT, (((32, 48), (50, 52), (68, 48)), ((34, 54), (50, 57), (66, 54)))),
        once("the front is long, as for an upright bearing", remedy("front-taken-up", 0.5, 2.0)),
    ),
    Symptom(
        "fold-at-back-waist",
        "a level fold lies at the back waist",
        Folds(View.DRESS_BACK, (((36, 42), (50, 44), (64, 42)), ((38, 46), (50, 47), (62, 46)))),
        once("the back is hollow there", remedy("back-waist-shorter", 1.0, 2.5)),
    ),
    Symptom(
        "side-seam-forward",
        "the side seam swings forward",
        Folds(View.SIDE, (((50, 42), (48, 56), (40, 74), (35, 92)),)),
        once("the front is narrow for its half", remedy("sides-back", 0.5, 1.5)),
    ),
    Symptom(
        "side-seam-back",
        "the side seam swings back",
        Folds(View.SIDE, (((51, 42), (52, 56), (59, 74), (65, 92)),)),
        once("the back is narrow for its half", remedy("sides-forward", 0.5, 1.5)),
    ),
    Symptom(
        "waist-seam-rises-in-front",
        "the waist seam is drawn up at the centre front",
        Folds(View.DRESS_FRONT, (((32, 48), (43, 45), (50, 43), (57, 45), (68, 48)),)),
        once("the belly takes up length", remedy("front-waist-longer", 1.0, 2.0)),
    ),
    Symptom(
        "hem-rises-behind",
        "the hem is drawn up at the centre back",
        Folds(
            View.DRESS_BACK,
            (((8, 94), (30, 94), (50, 90), (70, 94), (92, 94)), *both(((44, 60), (38, 76)))),
        ),
        once("the seat takes up length", remedy("seat-longer", 1.0, 2.5)),
    ),
    Symptom(
        "hem-rises-in-front",
        "the front hem hangs higher, and there are no folds",
        Folds(View.FRONT, (((22, 92), (40, 88), (50, 87), (60, 88), (78, 92)),)),
        (
            Answer(
                "yes",
                "yes, it is level",
                "the front is short at the centre, by its bearing or for the bust",
                (remedy("front-hem-lower", 1.0, 3.0),),
            ),
            Answer(
                "no",
                "no, it hangs low",
                "the back is long at the centre",
                (remedy("back-shorter", 1.0, 3.0),),
            ),
        ),
        "Is the back hem level?",
    ),
    Symptom(
        "hem-corner-at-side",
        "the hem has a corner where it meets the side seam",
        Folds(View.FRONT, both(((66, 91), (78, 97), (80, 91)))),
        (
            Answer(
                "down",
                "it points down",
                "the side is long there",
                (remedy("sides-raised", 0.3, 1.0),),
            ),
            Answer(
                "up",
                "it is a notch upwards",
                "the side is short there",
                (remedy("sides-lowered", 0.3, 1.0),),
            ),
        ),
        "Which way does it go?",
    ),
    Symptom(
        "skirt-dips-at-sides",
        "the circle skirt hangs lower at the sides",
        Folds(View.SKIRT, (((6, 84), (20, 96), (50, 90), (80, 96), (94, 84)),)),
        (
            Answer(
                "yes",
                "yes",
                "cloth on the bias drops",
                (remedy("sides-raised", 1.0, 4.0),),
            ),
            Answer(
                "no",
                "not yet",
                "cloth on the bias drops, most of it in the first day",
                advice="Hang it up by its waist for a day before anything is levelled.",
            ),
        ),
        "Has it hung for a day?",
    ),
)
