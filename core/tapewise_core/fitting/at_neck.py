"""What is seen at the neck and its band.

Symptoms, causes and amounts are those of extension bulletins [fitting-dresses] [wsu-2246] and
common practice; the questions and the words are ours.
"""

from __future__ import annotations

from tapewise_core.fitting.folds import Folds, View, both
from tapewise_core.fitting.symptom import Answer, Symptom, once, remedy

NECK = (
    Symptom(
        "front-neck-gapes",
        "the front neckline stands away from the body",
        Folds(View.FRONT, both(((46, 20), (44, 27), (42, 36)), ((48, 21), (48, 29), (47, 37)))),
        (
            Answer(
                "yes",
                "yes, lifted it lies flat",
                "the front is a little long above the bust",
                (remedy("front-taken-up", 0.3, 0.8), remedy("neck-narrower", 0.3, 0.8)),
            ),
            Answer(
                "no",
                "no, it still stands off",
                "the neckline is wide for this neck",
                (remedy("neck-narrower", 0.3, 0.8),),
            ),
        ),
        "Does it lie flat when the shoulder seams are lifted a little?",
    ),
    Symptom(
        "back-neck-stands-off",
        "the back neckline stands away from the neck",
        Folds(View.BACK, both(((44, 14), (42, 20)), ((48, 14), (47, 21)))),
        (
            Answer(
                "above",
                "above the band: the bone shows",
                "the back neck lies low, as where the head is held forward or the back is round",
                (remedy("back-neck-raised", 0.3, 1.0),),
            ),
            Answer(
                "beside",
                "covered, and the band stands off at the sides",
                "the neckline is wide behind",
                (remedy("neck-narrower", 0.3, 1.0),),
            ),
            Answer(
                "behind",
                "covered, and the band stands off behind",
                "the band is long behind",
                (remedy("band-shorter", 3.0, 5.0), remedy("neck-narrower", 0.3, 1.0)),
            ),
        ),
        "Where is the bone at the back of the neck, against the band?",
    ),
    Symptom(
        "front-neck-chokes",
        "the neckline presses at the throat",
        Folds(View.FRONT, both(((43, 18), (38, 24)), ((47, 21), (45, 28)))),
        (
            Answer(
                "front",
                "in front alone",
                "the front neckline is high",
                (remedy("front-neck-lower", 0.5, 1.5),),
            ),
            Answer(
                "sides",
                "at the sides of the neck too",
                "the neckline is close all round",
                (remedy("neck-wider", 0.3, 0.3), remedy("front-neck-lower", 0.5, 1.5)),
            ),
        ),
        "Where does it press?",
    ),
    Symptom(
        "band-waves",
        "the neckband stands up in waves",
        Folds(
            View.FRONT, (((40, 10), (43, 20), (46, 17), (50, 23), (54, 17), (57, 20), (60, 10)),)
        ),
        (
            Answer(
                "all",
                "all of it waves",
                "the band is long, or was not stretched enough when it was sewn on",
                (remedy("band-shorter", 3.0, 5.0),),
            ),
            Answer(
                "edge",
                "only its free edge stands up",
                "the band is wide for so round a neckline",
                (remedy("band-narrower", 0.3, 0.3),),
            ),
        ),
        "Does all of the band wave, or only its free edge?",
    ),
    Symptom(
        "band-puckers",
        "the neckline puckers along the band",
        Folds(
            View.FRONT,
            both(((42, 17), (39, 21)), ((45, 20), (43, 25)), ((49, 21), (48, 27))),
        ),
        once("the band is short", remedy("band-longer", 3.0, 5.0)),
    ),
)
