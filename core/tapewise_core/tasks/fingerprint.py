"""What tells one draft from another on paper: six signs, and the style in three words."""

from __future__ import annotations

import json
from collections.abc import Mapping
from hashlib import sha256

from tapewise_core.measures.body import Value
from tapewise_core.style.cloth import CUTTING, Wash
from tapewise_core.style.style import Style

SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"
"""Digits and capitals that are not mistaken for one another in handwriting."""

LONG = 6
"""Signs: two drafts of one class look alike once in 31 ** 6, nine hundred million (our choice)."""

LOOKS = {
    "neckline": "{} neck",
    "sleeve": "{} sleeve",
    "skirt": "{} skirt",
    "circle": "{} circle",
    "fit": "{}",
    "hem": "{} hem",
    "waist-finish": "{} waist",
}
"""Options that are seen on the finished garment, the most telling first."""


BARE = "without allowances"
"""What sheets say on which only stitch lines are drawn."""

UNWASHED = "for cloth not washed yet"
"""What sheets say whose pieces are drawn larger."""


def fingerprint(
    person: str,
    garment: str,
    measures: Mapping[str, Value],
    style: Style,
    cloth: object,
    *,
    allowances: bool = True,
) -> str:
    """Return six letters and digits that are the same exactly where all of these are.

    How the cloth is laid and what there is of it changes no line, and so nothing here.
    ``measures`` are those the style uses, ``cloth`` is plain data as the record keeps it.
    Sheets without ``allowances`` are another set: none may lie beside one that has them.
    """
    taken = {key: (round(one.cm, 2), one.origin.value) for key, one in measures.items()}
    chosen = {key: one for key, one in style.as_json().items() if key not in CUTTING}
    said = [person, garment, taken, chosen, cloth, *(() if allowances else (BARE,))]
    return signs_of(said)


def signs_of(said: object) -> str:
    """Return six letters and digits that are the same exactly where plain data is.

    >>> signs_of(["cut", 1]) == signs_of(["cut", 1]), signs_of(["cut", 1]) == signs_of(["cut", 2])
    (True, False)
    """
    number = int.from_bytes(sha256(json.dumps(said, sort_keys=True).encode()).digest())
    signs = ""
    for _ in range(LONG):
        number, place = divmod(number, len(SIGNS))
        signs += SIGNS[place]
    return signs


def _shown(key: str, plain: Mapping[str, float | str]) -> bool:
    """Whether an option is chosen and seen; a circle tells which skirt it is, others have none."""
    circle = plain.get("skirt", "circle") == "circle"
    return key in plain and (key not in ("circle", "skirt") or circle == (key == "circle"))


def _look(key: str, word: float | str) -> str:
    return "no sleeves" if (key, word) == ("sleeve", "none") else LOOKS[key].format(word)


def looks(style: Style, *, allowances: bool = True) -> str:
    """Return the style in three words or fewer, for the foot of a page.

    The cloth's stretch and the like are left out: they are not seen. That there are no
    ``allowances``, or that pieces are drawn larger, comes before all of it.
    """
    plain = style.as_json()
    seen = [_look(key, plain[key]) for key in LOOKS if _shown(key, plain)][:3]
    later = (UNWASHED,) if plain.get("wash") == Wash.AFTER else ()
    return ", ".join((*(() if allowances else (BARE,)), *later, *seen))
