"""The curves of a neckline: square to the fold and flat there, square to the overarm line.

Where a seam joins front and back the two corners add up to a straight angle.
They are not both exactly square: the front's is four degrees less and the
back's four more, because a front neckline runs steeply into a sloping shoulder
and a back neckline almost level (common practice).
"""

from __future__ import annotations

from tapewise_core.drafting.draft import Draft
from tapewise_core.geometry.path import Path, curved, ruled
from tapewise_core.geometry.point import Point, Vector
from tapewise_core.parts.neck_style import Neckline
from tapewise_core.units import Length, mm

ASKEW = 4.0
"""How far the front's corner is under a right angle, and the back's over it [degrees]."""

FLAT = 12.0
"""The front neckline is ruled straight so far from the fold [mm], and hardly bends as far again."""

V_MANNER = "Almost straight: it only bends before the shoulder. The point lies on the fold."


def back_neckline(centre: Point, neck: Point, overarm: Vector) -> Path:
    """Return a back neckline; ``overarm`` is the way in which the shoulder leaves ``neck``."""
    return _shallow(centre, neck, overarm, ASKEW)


def neckline_off(draft: Draft, depth: Length) -> Draft:
    """Return a back's draft with N1, where its neckline meets the fold: below the nape, or above
    it by a depth under nothing."""
    called = "the neckline on the centre back"
    if depth.mm > 0:
        return draft.down("N", "N1", depth, called)
    return draft.up("N", "N1", mm(-depth.mm), f"{called}, raised after fittings")


def boat_neckline(centre: Point, neck: Point, overarm: Vector) -> Path:
    """Return a boat's front, drawn as a back is: level, and bent no more tightly than it must."""
    return _shallow(centre, neck, overarm, -ASKEW)


def _shallow(centre: Point, neck: Point, overarm: Vector, askew: float) -> Path:
    """A neckline that is wide for its depth.

    It is ruled level, then bent towards the corner where the two directions
    meet: over more of the level line where the bend is deep, over as much as
    of the slanting one where it is shallow, so that its curve is never tight.
    The deeper it is, the nearer that corner comes to the fold; it is then drawn
    more and more as a round one.
    """
    down = overarm.square().turned(askew)
    reach = (centre.y - neck.y) / max(down.y, 0.3)
    corner = neck + down * reach
    room = corner.x - centre.x - FLAT
    run = max(min(reach * min(max(reach / 10, 1.0), 2.5), room), 0.0)
    start = Point(max(corner.x - run, centre.x + FLAT), corner.y)
    shallow = min(max(room / ROOM - 1, 0.0), 1.0)
    leave, arrive = _round(start, centre, neck, down)
    leave = leave.toward(start.toward(corner, 0.6), shallow)
    arrive = arrive.toward(neck.toward(corner, 0.6), shallow)
    return ruled(centre, start).then(curved(start, leave, arrive, neck))


ROOM = 25.0
"""A shallow neckline has twice as much level line to bend over; with less it is drawn as a round
one (our choice) [mm]."""


def _round(start: Point, centre: Point, neck: Point, down: Vector) -> tuple[Point, Point]:
    """The handles of a round neckline."""
    leave = start + Vector((neck.x - start.x) * 0.55, 0)
    reach = 0.5 * (centre.y - neck.y)
    if down.x < 0:
        reach = min(reach, 0.75 * (neck.x - leave.x) / -down.x)
    return leave, neck + down * reach


def front_neckline(centre: Point, neck: Point, overarm: Vector) -> Path:
    """Return a round front neckline of any depth."""
    start = centre + Vector(FLAT, 0)
    handles = _round(start, centre, neck, overarm.square().turned(-ASKEW))
    return ruled(centre, start).then(curved(start, *handles, neck))


def v_neckline(centre: Point, neck: Point, overarm: Vector) -> Path:
    """Return a V: straight from its point on the fold, bent square to the overarm at its end."""
    down = overarm.square().turned(-ASKEW)
    chord = neck - centre
    return curved(centre, centre + chord * 0.45, neck + down * (chord.length() * 0.25), neck)


FRONTS = {Neckline.V: v_neckline, Neckline.BOAT: boat_neckline}
"""The necklines that are not as a round one in front."""


def front_curve(kind: Neckline, centre: Point, neck: Point, overarm: Vector) -> tuple[Path, str]:
    """Return the front neckline of a kind, and how to draw it in words."""
    manner = V_MANNER if kind is Neckline.V else ""
    return FRONTS.get(kind, front_neckline)(centre, neck, overarm), manner


def point_angle(path: Path) -> float:
    """Return the angle between a V and the fold at its point [degrees]."""
    return path.leaving().angle_to(Vector(0, -1))


def neck_of(draft: Draft) -> str:
    """Return the letter at which a back's neckline meets its shoulder."""
    return "N2" if "N2" in draft.paper.points else "S"
