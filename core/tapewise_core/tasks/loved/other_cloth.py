"""What fits in one cloth, in another: a girth and a length that wear alike."""

from __future__ import annotations

from tapewise_core.parts.shape.band import LENGTHENED


def girth(loved: float, body: float, was: float, now: float) -> float:
    """Return the girth that uses as much of another cloth's stretch, in the unit given.

    What is wider than the body stays as wide. What is narrower stretches to it by a share of
    what its cloth can (``was``, 0.5 for half again), and by the same share of ``now``.

    >>> [round(girth(80.0, 88.0, 0.5, now), 2) for now in (0.5, 1.0, 0.25, 0.0)]
    [80.0, 73.33, 83.81, 88.0]
    >>> girth(96.0, 88.0, 0.5, 1.0)
    96.0
    """
    if loved >= body or was <= 0:
        return loved
    strain = (body / loved - 1) * now / was
    return body / (1 + strain)


def longer(loved: float, here: float, body: float) -> float:
    """Return the share by which lengths grow where another cloth is stretched further across.

    Cloth stretched across draws up in length; less stretched, it does so less.

    >>> round(longer(80.0, 73.3, 88.0), 3), longer(96.0, 96.0, 88.0)
    (0.03, 0.0)
    """
    was, now = (max(1 - size / body, 0.0) for size in (loved, here))
    return LENGTHENED * (now - was)
