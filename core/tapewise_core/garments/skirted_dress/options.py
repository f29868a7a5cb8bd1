"""The options of a dress whose skirt is sewn to its bodice."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from tapewise_core.blocks.set_in.options import (
    ARMHOLE,
    EASE_SAYS,
    HEM_SAYS,
    KINDS,
    LEAST_SLEEVE,
    SHARE_SAYS,
    sleeve_ease,
    sleeve_hem_ease,
    sleeve_length,
)
from tapewise_core.blocks.skirt.hung_options import SKIRTS
from tapewise_core.blocks.top.options import TOP
from tapewise_core.blocks.top.words import GROWN_ON
from tapewise_core.frozen import Frozen
from tapewise_core.garments.skirted_dress.cut_style import SleeveCut
from tapewise_core.measures.body import Body
from tapewise_core.parts import cowl_options
from tapewise_core.parts.bare_options import BARE
from tapewise_core.parts.bare_style import is_bare
from tapewise_core.parts.centre_options import CENTRE
from tapewise_core.parts.end_options import ENDS
from tapewise_core.parts.hanging import growth
from tapewise_core.parts.neck_style import NeckFinish
from tapewise_core.parts.passing_options import passing
from tapewise_core.parts.sleeve_style import WITH_SLEEVE, SleeveKind
from tapewise_core.style.cloth import CLOTH, WEIGHT
from tapewise_core.style.kind import Value, ValueKind, value_told
from tapewise_core.style.option import Group, Option
from tapewise_core.style.options import Options
from tapewise_core.style.style import Style
from tapewise_core.text.told import OptionKey, Told, said
from tapewise_core.units import Length, cm, mm

LEAST_SIDE = 85.0
"""What is left between armscye and waist, whatever the skirt weighs [mm] (common practice)."""


def shortened_by(grams: float, body: Body) -> float:
    """Return how much shorter a bodice is cut for a skirt's weight [mm]."""
    room = body["back_waist_length"].mm - body["armscye_depth"].mm - LEAST_SIDE
    return max(0.0, min(growth(grams), room))


def bust_lift(body: Body, style: Style) -> Length:
    """One more allowance."""
    return style.length("seam-allowance")


JOINED = Options.of(
    Option(
        key="bust-lift",
        group=Group.CLOTH,
        says=said(
            "how much longer the bodice is at the centre front's waist, because the bust lifts it"
        ),
        default=bust_lift,
        default_says=said("one more {}", OptionKey("seam-allowance")),
        low=0,
        high=5,
    ),
    Option(
        key="weight-allowance",
        group=Group.CLOTH,
        says=said("cut the bodice shorter by what the skirt's weight will stretch it"),
        kind=ValueKind.SWITCH,
        default="yes",
    ),
)

OF_THE_TOP = (
    "fit", "ease", "bust-ease", "waist-ease", "waist-darts", "bust-room",
    "shoulder-drop", "lower-shoulder", "lower-shoulder-by", "forward-shoulder", "broad-neck",
    "round-back", "full-arm",
    "neckline", "neck-finish", "neck-half-width", "neck-rise", "back-neck-depth", "neck-depth",
    "cowl-depth",
    "sleeve", "sleeve-ease", "sleeve-length", "sleeve-hem-ease",
    "band-width", "band-ratio", "collar", "collar-height", "band-sewn", "facing-width",
    "full-belly", "front-hem-drop",
    *CLOTH.keys,
    "seam-allowance", "neck-allowance", "hem-allowance",
)  # fmt: skip
"""The top's options that a bodice has: none of the hem, which is the waist seam."""

WORDS = {**GROWN_ON, "sleeve": (SleeveKind.NONE, *GROWN_ON["sleeve"])}
"""The words of the top's options that a bodice is drafted for."""


CUT = Option(
    key="sleeve-cut",
    group=Group.STYLE,
    says=said("sleeves grown on, in one with the bodice, or set into armholes"),
    kind=ValueKind.CHOICE,
    default=SleeveCut.GROWN_ON,
    choices=tuple(SleeveCut),
    where=("sleeve", *WITH_SLEEVE),
)

Default = Callable[[Body, Style], Value]

SET_IN: Mapping[str, Default] = MappingProxyType(
    {
        "sleeve": lambda body, style: SleeveKind.SHORT,
        "sleeve-length": sleeve_length,
        "sleeve-ease": sleeve_ease,
        "sleeve-hem-ease": sleeve_hem_ease,
        "cowl-depth": cowl_options.SET_IN,
    }
)
"""What a set-in sleeve has unasked."""


class ByCut(Frozen):
    """The default of whichever cut the sleeves have: the top's own, or that of a set-in one."""

    grown: Option
    set_in: Default

    def __call__(self, body: Body, style: Style) -> Value:
        """Work it out."""
        if SleeveCut.of(style) is SleeveCut.SET_IN:
            return self.set_in(body, style)
        if callable(self.grown.default):
            return self.grown.default(body, style)
        assert self.grown.fixed is not None, "a default is worked out or fixed"
        return self.grown.fixed


def _sleeves(top: Options) -> Options:
    """The top's options with the sleeve of either cut."""
    for key in SET_IN:
        option = top[key]
        fixed = option.fixed
        grown = option.default_says if fixed is None else value_told(option.kind, fixed)
        both = grown
        if key in SET_IN_SAYS:
            both = said("grown on: {}; set in: {}", grown, SET_IN_SAYS[key])
        top = top.changed(key, default=ByCut(option, SET_IN[key]), default_says=both)
    return top.changed("full-arm", where=("sleeve-cut", SleeveCut.GROWN_ON.value))


SET_IN_SAYS: Mapping[str, Told] = MappingProxyType(
    {
        "sleeve": (SleeveKind.SHORT.value,),
        "sleeve-length": SHARE_SAYS,
        "sleeve-ease": EASE_SAYS,
        "sleeve-hem-ease": HEM_SAYS,
    }
)
"""The same in words, where they differ."""


def _armhole() -> Options:
    """What only a set-in sleeve has a use for, but for the armhole of any body without sleeves."""
    options = ARMHOLE
    for key in options.keys:
        own = options[key].where
        options = options.changed(key, where=("sleeve-cut", SleeveCut.SET_IN.value), besides=own)
    return options.changed("armhole-drop", instead=("sleeve", SleeveKind.NONE.value))


def options_from(top: Options) -> Options:
    """Return the dress's options: what its bodice takes from the top's, the skirt's, and its own
    where both are joined."""
    top = top.changed("sleeve", choices=(SleeveKind.NONE, *WITH_SLEEVE))
    top = top.changed("hem-allowance", where=("sleeve", *WITH_SLEEVE))
    bodice = passing(_sleeves(top.only(*OF_THE_TOP).narrowed(WORDS)))
    upper = Options.of(CUT) + bodice + _armhole() + BARE + ENDS + CENTRE
    return upper + Options.of(WEIGHT) + SKIRTS + JOINED


def cut_agrees(style: Style) -> tuple[Told, ...]:
    """Return a sentence for what is chosen and cannot be had with set-in sleeves."""
    if is_bare(style) or SleeveCut.of(style) is SleeveCut.GROWN_ON:
        return ()
    found: list[Told] = []
    if SleeveKind(style.choice("sleeve")) not in KINDS:
        words = "A cap is no sleeve to set in; choose another {}, or {} grown-on."
        found.append(said(words, OptionKey("sleeve"), OptionKey("sleeve-cut")))
    elif style.length("sleeve-length").mm < LEAST_SLEEVE * 10 - 0.01:
        words = "{} is {}, and a set-in sleeve's cap asks for {} at least."
        length, least = style.length("sleeve-length"), cm(LEAST_SLEEVE)
        found.append(said(words, OptionKey("sleeve-length"), mm(length.mm), least))
    if style.choice("neck-finish") == NeckFinish.FACING:
        words = "A facing is drafted for {} grown-on; set {} to band or turned."
        found.append(said(words, OptionKey("sleeve-cut"), OptionKey("neck-finish")))
    return tuple(found)


OPTIONS = options_from(TOP)
