"""What only the draft itself can settle: options worked out while drawing, and their reasons."""

from __future__ import annotations

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.facts import Facts, Neck
from tapewise_core.style.kind import Value
from tapewise_core.style.style import Style
from tapewise_core.text.told import Told
from tapewise_core.units import mm


def as_drawn(style: Style, facts: Facts) -> Style:
    """Return a style with its bands' ratios and its placket's length, and with the depth of its
    armhole and its sleeve's eases, as they were drawn; what was asked stays."""
    return style.drawn({**_neck(facts.neck), **_bands(facts), **_armhole(style, facts)})


def _neck(neck: Neck | None) -> dict[str, Value]:
    """What the neckline made of its band, and the shoulder of its placket."""
    values: dict[str, Value] = {}
    if neck and neck.ratio is not None:
        values["band-ratio"] = neck.ratio
    if neck and neck.opens:
        values["placket-length"] = mm(neck.opens / 2)
    return values


def _bands(facts: Facts) -> dict[str, Value]:
    """What armholes, sleeves and hems made of their bands."""
    values: dict[str, Value] = {f"{_key(end.name)}-ratio": end.ratio for end in facts.ends}
    if facts.bare and facts.bare.ratio is not None:
        values["armhole-band-ratio"] = facts.bare.ratio
    return values


def _key(name: str) -> str:
    return name.replace(" ", "-")


def _armhole(style: Style, facts: Facts) -> dict[str, Value]:
    """What the arm made of an armhole's depth and of its sleeve, where one is cut: only such a
    body shows its armscye."""
    cut = any(level.name == "armscye" for level in facts.levels)
    if "armhole-drop" not in style.chosen or facts.underarm is None or not cut:
        return {}
    under = facts.underarm
    found: dict[str, Value] = {"armhole-drop": mm(round(under.level - under.armscye, 1))}
    for level, key in (("upper_arm", "sleeve-ease"), ("sleeve_hem", "sleeve-hem-ease")):
        for one in facts.levels:
            if one.name == level:
                found[key] = mm(round(one.given - one.body, 1))
    return found


def held_back(facts: Facts) -> tuple[Told, ...]:
    """Return why a neckband is no shorter, as a remark; nothing where it lies as it should."""
    return (facts.neck.held_back,) if facts.neck and facts.neck.held_back else ()


def for_later_wash(cloth: Cloth) -> tuple[Told, ...]:
    """Return what to know of pieces drawn larger than the garment, for a cloth washed later."""
    if cloth.washed:
        return ()
    shrinks = (cloth.shrinkage, cloth.shrinkage_across)
    along, across = (f"{round((1 / (1 - share) - 1) * 100, 1):g}" for share in shrinks)
    return (
        (
            f"The printed pieces are drawn larger than the garment, {along} % longer and {across} "
            "% wider, because this cloth is washed only after it is cut. What was proved, and the "
            "steps for drafting by hand, are of the garment after its wash: wash the cloth first "
            "if you draft by hand.",
        ),
    )
