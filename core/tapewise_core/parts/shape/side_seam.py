"""The side seam: bust as asked, hip as asked, the waist moved between by its shaping.

How much shaping the cloth can take is found here; the line itself is drawn in ``side_trial``.
Order of what gives way: waist darts where the seam would lean over 30° (common practice); then
the seam leans in at the bust line, up to 15°; then the waist keeps more than asked, and it is
said.
"""

from __future__ import annotations

import math

from tapewise_core.frozen import Frozen
from tapewise_core.geometry.crossings import point_at_height
from tapewise_core.geometry.path import Path
from tapewise_core.geometry.roots import most
from tapewise_core.parts.shape.below_hip import below_hip
from tapewise_core.parts.shape.bends import INWARD, OUTWARD
from tapewise_core.parts.shape.curves import inflections
from tapewise_core.parts.shape.side_slopes import SideLevels, SideQuarters, SideWish, unshaped
from tapewise_core.parts.shape.side_trial import (
    DART_LEAN,
    LEAN,
    Trial,
    tried,
    whole,
)
from tapewise_core.text.told import Told, said
from tapewise_core.units import mm

TILT = math.tan(math.radians(15))
"""How far the seam may lean in at the bust line before the waist keeps more (our choice)."""

DART_MOST, DART_LEAST = 35.0, 2.5
"""The intake of a waist dart, at the most (common practice) and at the least (our choice) [mm]."""

SAID = 0.2
"""A waist's quarter that keeps less than this more than asked is not worth a word [mm]."""


class SideSeam(Frozen):
    """The seam, from the underarm to the hip line or to a bodice's waist.

    ``asked`` is the waist's quarter that the shaping asks for, ``unshaped`` that of the seam
    without any; ``dart`` is taken up in each half back and half front; ``kept`` is what a
    quarter of the waist, darts closed, has more than asked, with the reason in ``held_back``.
    ``wider_hip`` is what a quarter of the hip has more, because it hangs from a wider waist.
    """

    at: SideLevels
    trial: Trial
    path: Path
    asked: float
    unshaped: float
    dart: float
    kept: float
    held_back: Told
    wider_hip: float
    hip_held_back: Told
    flare: float

    def width(self, y: float) -> float:
        """Return the quarter at a height [mm], below the hip line too."""
        if y > self.path.end.y:
            return self.down_to(y).end.x
        found = point_at_height(self.path, y)
        return self.path.start.x if found is None else found.x

    @property
    def inflections(self) -> int:
        """How often the seam changes the way it bends."""
        return inflections(self.path)

    def down_to(self, y: float) -> Path:
        """Return the seam down to a height [mm] at or below the hip line.

        It leans on with its slope, or passes over to the flare within 12 cm.
        """
        hip = self.path.end
        below = below_hip(hip, self.trial.slope, self.flare, y - hip.y)
        return self.path.then(below) if below else self.path


def side_seam(at: SideLevels, wide: SideQuarters, wish: SideWish) -> SideSeam:
    """Return the side seam for heights and quarters [mm].

    A waist wider than the hip draws the hip out with it. Where the unshaped seam is no wider
    than the waist the seam goes out to it, whatever the shaping.
    """
    hip = max(wide.hip, wide.waist) if at.hip is not None else wide.hip
    drawn = SideQuarters(wide.bust, wide.waist, hip)
    plain = unshaped(at, drawn)
    share = 1.0 if at.hip is None else wish.shaping
    asked = max(wide.waist, plain - share * (plain - wide.waist))
    search = _Search(at, drawn, wish, plain, asked)
    trial, waist, dart = search.found()
    kept = max(waist - dart - asked, 0.0)
    why = search.reason(waist) if kept > SAID else ()
    more = hip - wide.hip if at.hip is not None else 0.0
    slope = trial.slope if wish.flare is None else wish.flare
    if wish.out and slope > trial.slope:
        slope = wish.out.slope_from(trial.slope)
    return SideSeam(
        at,
        trial,
        whole(trial),
        asked,
        plain,
        dart,
        kept,
        _kept(kept, why),
        more,
        _hung(more),
        slope,
    )


class _Search(Frozen):
    """The search for the closest waist that the cloth can take."""

    at: SideLevels
    wide: SideQuarters
    wish: SideWish
    plain: float
    asked: float

    def found(self) -> tuple[Trial, float, float]:
        """Return the seam, the waist's quarter it has, and the intake of the waist darts.

        A waist that is no narrower than the unshaped seam is met, however it bends.
        """
        asked = self._trial(self.asked)
        if self.asked >= self.plain:
            return asked, self.asked, 0.0
        if self.wish.darts and not asked.keeps(DART_LEAN):
            gentle = self._closest(DART_LEAN)
            rest = gentle - self.asked
            if rest > DART_MOST:
                waist = self.asked + DART_MOST
                trial, waist = self._leaning(waist, self._trial(waist))
                return trial, waist, DART_MOST
            if rest > DART_LEAST:
                return self._trial(gentle), gentle, rest
        return (*self._leaning(self.asked, asked), 0.0)

    def _trial(self, waist: float, tilt: float = 0.0) -> Trial:
        return tried(
            self.at,
            self.wide,
            waist,
            tilt=tilt,
            flare=self.wish.flare,
            grown_on=self.wish.grown_on,
        )

    def _closest(self, lean: float, tilt: float = 0.0, nearest: float | None = None) -> float:
        """The narrowest waist down to ``nearest`` that keeps the limits."""
        nearest = self.asked if nearest is None else nearest
        way = self.plain - nearest

        def keeps(share: float) -> bool:
            return self._trial(self.plain - share * way, tilt).keeps(lean)

        return self.plain - most(keeps, 0.0, 1.0) * way

    def _leaning(self, waist: float, upright: Trial) -> tuple[Trial, float]:
        """The seam for a waist, leaning in at the bust line only as far as it must; ``upright`` is
        the one that does not."""
        if upright.keeps(LEAN):
            return upright, waist
        widest = self._most_tilt()
        if not self._trial(waist, widest).keeps(LEAN):
            waist = self._closest(LEAN, widest, waist)
        less = most(lambda less: self._trial(waist, widest - less).keeps(LEAN), 0.0, widest)
        return self._trial(waist, widest - less), waist

    def _most_tilt(self) -> float:
        return 0.0 if self.wish.grown_on or self.wish.upright else TILT

    def reason(self, waist: float) -> Told:
        """Say what would not hold a little closer in."""
        closer = self._trial(max(waist - 1.0, self.asked - DART_MOST), self._most_tilt())
        if closer.lean > LEAN:
            return said("the side seam would lean over 39°")
        if closer.inward < INWARD:
            return said("its bend at the waist would be tighter than {}", mm(INWARD))
        return said("its bend at bust or hip would be tighter than {}", mm(OUTWARD))


def _kept(kept: float, why: Told) -> Told:
    if not why:
        return ()
    return said("The waist keeps {} more than asked, because {}.", mm(4 * kept), why)


def _hung(more: float) -> Told:
    if more <= SAID:
        return ()
    words = "The hip is {} wider than asked, because it hangs straight from the wider waist."
    return said(words, mm(4 * more))
