"""What a draft says about itself, for proofs to ask: typed facts, in millimetres.

None stands where a garment has no such thing, or where the body's own measure is not known.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from tapewise_core.frozen import Frozen
from tapewise_core.text.told import Told


class Level(Frozen):
    """One level of the body that a garment covers: girths [mm], darts closed.

    ``below_nape`` is its height on the back [mm], None for a sleeve or a skirt. ``asked`` is the
    body with its ``ease``, both None where a level is shown and never aimed at; ``held_back``
    says why ``given`` and ``asked`` differ.
    """

    name: str
    below_nape: float | None
    body: float
    ease: float | None
    asked: float | None
    given: float
    held_back: Told | None = None


class Neck(Frozen):
    """The neck: the smallest ``opening`` the head must pass [mm], not stretched.

    ``half_width`` is the neckline's from the centre [mm]; ``point`` the angle between a V and
    the fold [degrees], None for any other neckline. ``ratio`` is the length of its band as a
    share of the neckline, None without a band; ``held_back`` says why it is no shorter. ``opens``
    is what an opened placket adds, which does not stretch [mm].
    """

    opening: float
    half_width: float | None = None
    point: float | None = None
    ratio: float | None = None
    held_back: Told = ()
    opens: float = 0.0


class Underarm(Frozen):
    """How far below the nape the underarm, the armscye line and the waist lie [mm]."""

    level: float
    armscye: float
    waist: float


class Side(Frozen):
    """The side seam: a quarter of the waist with its ease [mm], inside which it may not pass."""

    waist: float


class BareArmhole(Frozen):
    """An armhole without a sleeve: how much shorter its finish holds the front's edge, and how far
    its underarm is turned out with a dart that folds it in again [mm]. ``ratio`` is the length of
    its band as a share of the armhole, None without a band."""

    taken: float
    turned: float = 0.0
    ratio: float | None = None


class EndBand(Frozen):
    """A band round a hem or a sleeve's end: its own length, and the girth of what it is pulled
    over [mm], None where nothing wider than its own place passes. ``ratio`` is its length as a
    share of the edge it is sewn to."""

    name: str
    opening: float
    over: float | None = None
    ratio: float = 1.0


class Passage(StrEnum):
    """What has to pass the body at the waist."""

    JOINED = "joined waist"
    BAND = "waistband"
    EDGE = "waist edge"


class Waist(Frozen):
    """A waist that the wearer gets through: the smallest ``opening`` and the body's easier way in.

    ``edge`` is the skirt's own waist, ``band`` the length of a band on it [mm].
    """

    what: Passage
    opening: float
    way_in: float
    edge: float
    band: float | None = None


class Casing(Frozen):
    """A casing: the ``edge`` that is turned down and the ``seam`` it is sewn to [mm]."""

    edge: float
    seam: float


class Hem(Frozen):
    """The hem round the legs: its girth, and its height below the waist and the nape [mm].

    ``below_nape`` is None for a skirt; ``knee`` and ``ankle`` are the body's below its waist,
    None where they are not known; ``slit`` is how long one is, 0 without, and ``above_slit`` the
    garment's girth where it begins, None where that is not known.
    """

    round: float
    below_waist: float
    below_nape: float | None = None
    knee: float | None = None
    ankle: float | None = None
    slit: float = 0.0
    above_slit: float | None = None


class Facts(Frozen, kw_only=True):
    """All of them. ``head`` is the body's girth, ``ease`` what was asked for round a close body,
    ``hand`` the hand's girth with the thumb laid in, where a sleeve ends below the elbow.

    ``levels`` run from the top down; ``gathers`` are what each gathered edge has for each length of
    what it is gathered to, empty where a style gathers nothing.
    """

    head: float | None = None
    ease: float | None = None
    hand: float | None = None
    neck: Neck | None = None
    underarm: Underarm | None = None
    side: Side | None = None
    bare: BareArmhole | None = None
    ends: tuple[EndBand, ...] = ()
    waist: Waist | None = None
    casing: Casing | None = None
    hem: Hem | None = None
    levels: tuple[Level, ...] = ()
    gathers: Mapping[str, float] | None = None
