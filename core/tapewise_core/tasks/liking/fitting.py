"""A garment that fits, beside a body and the options of another garment."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Body
from tapewise_core.parts.neck_style import Neckline
from tapewise_core.profiles.fitted import Loved
from tapewise_core.style.option import Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.tasks.loved.flat import BY_KEY
from tapewise_core.tasks.loved.likeness import Want
from tapewise_core.tasks.loved.other_cloth import girth, longer
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length

TRUNK = ("bust", "waist", "hip")
"""The girths of the trunk, whose cloth draws up in length where it is stretched."""

EASES = {**{key: f"{key}-ease" for key in TRUNK}, "upper_arm": "sleeve-ease"}
"""Where a garment's ease is chosen, by the level it is measured at."""

CHOSEN = {
    "length": "body-length",
    "skirt_length": "skirt-length",
    "sleeve": "sleeve-length",
    "neck": "neck-half-width",
    "neck_depth": "neck-depth",
}
"""Where a length or the neck is chosen, by the flat measure."""


ALIKE = 1.4
"""A length that is so many times the usual one is another garment's (our choice)."""


def typed(option: Option, amount: float) -> str:
    """Return an amount [mm] as it would be typed, no further than an option goes."""
    return f"{min(max(amount / 10, option.low), option.high):.2f} cm"


class Fitting(Frozen):
    """What one garment asks of another: as much ease, level by level, in its own cloth.

    ``rise`` is how far the neck's side will lie above the nape.
    """

    loved: Loved
    options: Options
    body: Body
    style: Style
    rise: Length

    @property
    def _now(self) -> float:
        """How far this cloth stretches, 0.5 for half again."""
        return self.style.number("stretch") / 100

    @property
    def _was(self) -> float:
        """How far the other cloth stretches; as far as this one where that is not known."""
        return self._now if self.loved.stretch is None else self.loved.stretch / 100

    @property
    def _keys(self) -> tuple[str, ...]:
        return tuple(key for key in BY_KEY if key in self.loved.flat)

    def settings(self) -> dict[str, str]:
        """Return the options that ask for it, as they would be typed, but for those chosen."""
        found = {}
        for key in self._keys:
            option = self._option(key)
            if option and not self.style.asked(option.key):
                found[option.key] = typed(option, self._amount(key))
        known = [key for key in TRUNK if EASES[key] in found]
        if known:  # what is closest decides whether the cloth's stretch is enough
            closest = min(known, key=self._amount)
            found |= self._unless_asked("ease", found[EASES[closest]])
        if "waist-ease" in found and not self.style.asked("waist-shaping"):
            return self._shaped(found)
        return found

    def _shaped(self, found: dict[str, str]) -> dict[str, str]:
        """Return settings with the waist as close as asked, or its sides straight where the hip is
        narrower though the body's is wider: it would hang from the waist."""
        if "waist-shaping" not in self.options:
            return found
        bodies = [self.body[key].mm for key in ("waist", "hip") if key in self.body]
        if "hip-ease" in found and bodies == sorted(bodies) and self._tapers:
            rest = {key: text for key, text in found.items() if key != "waist-ease"}
            return {**rest, "waist-shaping": "0"}
        return {**found, "waist-shaping": "100"}

    @property
    def _tapers(self) -> bool:
        return "hip" in self._keys and self._here("hip") < self._here("waist")

    def _unless_asked(self, key: str, text: str) -> dict[str, str]:
        return {key: text} if key in self.options and not self.style.asked(key) else {}

    def wants(self) -> tuple[Want, ...]:
        """Return what is wanted of each measure that is known."""
        return tuple(self._wants())

    def _wants(self) -> Iterator[Want]:
        for key in self._keys:
            option, there, here = self._option(key), self._there(key), self._here(key)
            if option is None:
                yield Want(BY_KEY[key], there, here)
                continue
            within = option.low - 0.01 <= self._amount(key) / 10 <= option.high + 0.01
            held = () if within else said("{} goes no further", OptionKey(option.key))
            yield Want(BY_KEY[key], there, here, self.style.asked(option.key), held)

    def cloth(self) -> tuple[Told, Told]:
        """Return what is said of its cloth where little is known, and why its sizes change."""
        says = "How far the cloth of “{}” stretches is not known; it is taken to be like this one."
        unknown = () if self.loved.stretch is not None else said(says, self.loved.name)
        shares = (f"{share * 100:g}" for share in (self._now, self._was))
        return unknown, said("this cloth stretches by {} %, that one by {} %", *shares)

    def _there(self, key: str) -> float:
        """What it has there, whole [mm]."""
        return BY_KEY[key].whole(self.loved.flat[key]) * 10

    def _here(self, key: str) -> float:
        """What wears alike in this cloth [mm]."""
        there = self._there(key)
        if key in ("length", "skirt_length"):
            return there * (1 + self._grows(*TRUNK))
        if key == "sleeve":
            return there * (1 + self._grows("upper_arm"))
        if key in EASES and key in self.body:
            return girth(there, self.body[key].mm, self._was, self._now)
        return there

    def _grows(self, *keys: str) -> float:
        """By what share lengths grow here: the mean over the girths that are known of."""
        known = [key for key in keys if key in self.loved.flat and key in self.body]
        rows = ((self._there(key), self._here(key), self.body[key].mm) for key in known)
        return sum(longer(*row) for row in rows) / max(len(known), 1)

    def _option(self, key: str) -> Option | None:
        """The option that asks for a flat measure, if this garment has one.

        A skirt's waist is made by its elastic or band, not by its ease.
        """
        if key == "waist" and "bust-ease" not in self.options:
            return None
        name = EASES.get(key) or CHOSEN.get(key, "")
        if key == "length" and self._is_joined:
            name = "skirt-length"
        if key == "neck_depth" and self._is_cowl:
            name = "cowl-depth"
        if name not in self.options or self._is_another_length(key, name):
            return None
        return self.options[name]

    def _is_another_length(self, key: str, name: str) -> bool:
        """Whether a top's length is asked of a dress, or the other way round."""
        if key not in ("length", "skirt_length") or self.style.asked(name):
            return False
        share = self._amount(key) / self.style.length(name).mm
        return not 1 / ALIKE <= share <= ALIKE

    @property
    def _is_joined(self) -> bool:
        """Whether a skirt hangs from a bodice, so that its length is the rest."""
        return "skirt-length" in self.options and "bust-ease" in self.options

    @property
    def _is_cowl(self) -> bool:
        """Whether the neck's depth is how far a fold hangs below its sides."""
        chosen = self.style.chosen.get("neckline")
        return chosen is not None and chosen.value == Neckline.COWL

    def _amount(self, key: str) -> float:
        """What the option has to be [mm]."""
        here = self._here(key)
        if key in EASES:
            return here - self.body[key].mm
        if key == "neck":
            return here / 2
        if key == "neck_depth" and not self._is_cowl:
            return here - self.rise.mm
        if key == "length" and self._is_joined:
            return here - self.body["back_waist_length"].mm
        return here
