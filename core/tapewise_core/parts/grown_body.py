"""The body that a grown-on sleeve meets: its shoulder, its levels and its side seam.

Pure geometry in the millimetres of the back's draft, from the body and the views of its style.
"""

from __future__ import annotations

import math

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import distance_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.point import DOWN, Point, Vector
from tapewise_core.measures.body import Body
from tapewise_core.parts.figure_style import FigureStyle
from tapewise_core.parts.neck_options import fall_of, own_half_width
from tapewise_core.parts.shape.bends import Bend
from tapewise_core.parts.shape.grown_drawn import Trunk
from tapewise_core.parts.shape.levels import Levels
from tapewise_core.parts.shape.side_seam import SideSeam, side_seam
from tapewise_core.parts.shape.side_slopes import SideLevels, SideQuarters, SideWish
from tapewise_core.parts.shape.waist_darts import BACK_DOWN
from tapewise_core.parts.trunk_levels import levels_for, quarters
from tapewise_core.parts.trunk_style import TrunkStyle
from tapewise_core.units import Length, mm

ABOVE_WAIST = 0.35
"""The underarm's curve may end down to this share of the way from waist to bust above the waist,
where the side is upright at the bust (our choice)."""


BELOW_DART = 20.0
"""A waist dart is drawn only where the hem lies so far below it [mm] (our choice)."""


class BodyShoulder(Frozen):
    """The shoulder as the body has it in the draft, ``fall`` degrees under level."""

    neck: Point
    end: Point
    fall: float


def body_shoulder(
    body: Body, figure: FigureStyle, half_width: Length, rise: Length
) -> BodyShoulder:
    """Return the shoulder from the neck's own base, or a narrower neckline's end."""
    own = own_half_width(body, figure).mm
    base = min(own, half_width.mm)
    fall = fall_of(body, figure)
    along = Vector(math.cos(math.radians(fall)), math.sin(math.radians(fall)))
    long = body["shoulder_length"].mm + (own - base) / along.x
    neck = Point(base, figure.round_back.mm - rise.mm)
    return BodyShoulder(neck, neck + along * long, fall)


class SideOf(Frozen):
    """What a grown-on body's side is drawn from; ``bodice`` ends at its waist seam.

    ``hip`` is the hip's quarter where a flare makes it wider than asked.
    """

    levels: Levels
    wide: SideQuarters
    wish: SideWish
    bodice: bool = False

    def seam(self, underarm: float, bust: float | None = None, *, cap: bool = False) -> SideSeam:
        """Return the seam from an underarm's height [mm]; a cap's is upright at the bust."""
        at = SideLevels(
            underarm,
            self.levels.bust.depth if bust is None else bust,
            self.levels.waist.depth,
            None if self.bodice else self.levels.hip.depth,
        )
        return side_seam(at, self.wide, replace(self.wish, grown_on=not cap, upright=cap))

    def trunk(self, seam: SideSeam, ease: float) -> Trunk:
        """Return what the sleeve sees of a seam: its straight line past the bust."""
        bust = Point(self.wide.bust, self.levels.bust.depth)
        waist = self.levels.waist.depth
        way, straight = DOWN, waist - ABOVE_WAIST * (waist - bust.y)
        if leans(seam):
            upper = seam.trial.upper
            assert isinstance(upper, Bend), "a leaning line touches a circle at the waist"
            way, straight = Vector(-upper.lean, 1).unit(), upper.from_waist.y
        return Trunk(self.levels.armscye.depth, waist, bust, way, straight, ease)

    def plain_trunk(self, ease: float) -> Trunk:
        """Return the body with an upright side, as a cap meets it."""
        bust = Point(self.wide.bust, self.levels.bust.depth)
        waist = self.levels.waist.depth
        return Trunk(self.levels.armscye.depth, waist, bust, DOWN, bust.y, ease)


def leans(seam: SideSeam) -> bool:
    """Say whether a seam leaves the bust in the straight line of its waist's circle."""
    upper = seam.trial.upper
    return isinstance(upper, Bend) and upper.outer == 0.0 and upper.end.x > upper.waist.x


def below(seam: SideSeam, y: float) -> Path:
    """Return a seam from a height down [mm]; a crumb left of a line that ends there is dropped."""
    distance = distance_at_height(seam.path, y)
    assert distance is not None, "an underarm ends on its side seam"
    rest = seam.path.split(distance)[1] if distance > CRUMB else seam.path
    return Path(tuple(segment for segment in rest.segments if segment.length() > CRUMB))


CRUMB = 1e-6
"""A line this short is rounding [mm]."""


def side_of(body: Body, trunk: TrunkStyle, figure: FigureStyle, *, bodice: bool = False) -> SideOf:
    """Return what a body's side is drawn from, without a flare."""
    lift = lift_of(body, figure).mm
    at = lifted(levels_for(body, trunk), lift)
    if bodice:
        at = replace(at, waist=replace(at.waist, depth=trunk.length.mm + lift))
    ends = at.waist.depth + BACK_DOWN * (at.hip.depth - at.waist.depth) + BELOW_DART
    room = bodice or trunk.length.mm + lift >= ends
    wish = SideWish(trunk.shaping, darts=trunk.darts and room)
    return SideOf(at, quarters(body, trunk), wish, bodice)


def lift_of(body: Body, figure: FigureStyle) -> Length:
    """How far a round back lifts the nape off a waist that was not measured from it."""
    return mm(0) if body.has("back_waist_length") else figure.round_back.called("round back")


def lifted(levels: Levels, by: float) -> Levels:
    """Return levels that lie further below the nape [mm]."""
    if abs(by) < 1e-9:
        return levels
    moved = (replace(level, depth=level.depth + by) for level in levels.all())
    return Levels(*moved)
