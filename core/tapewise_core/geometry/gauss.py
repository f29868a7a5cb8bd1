"""Gauss-Legendre quadrature with 24 nodes on 0 to 1, prepared for cubic Bézier speeds.

Nodes and weights [abramowitz], n = 24: the half with positive abscissae, the rest mirrored.
"""

from __future__ import annotations

_HALF = (
    (0.06405689286260563, 0.12793819534675202),
    (0.19111886747361631, 0.12583745634682825),
    (0.31504267969616340, 0.12167047292780329),
    (0.43379350762604513, 0.11550566805372552),
    (0.54542147138883956, 0.10744427011596556),
    (0.64809365193697555, 0.09761865210411393),
    (0.74012419157855436, 0.08619016153195320),
    (0.82000198597390295, 0.07334648141108016),
    (0.88641552700440107, 0.05929858491543636),
    (0.93827455200273280, 0.04427743881741941),
    (0.97472855597130947, 0.02853138862893356),
    (0.99518721999702131, 0.01234122979998869),
)


NODES = tuple(((1 + sign * x) / 2, w / 2) for x, w in _HALF for sign in (1, -1))
"""Each node on 0 to 1 with its weight."""

WEIGHTS = tuple((3 * (1 - t) ** 2, 6 * t * (1 - t), 3 * t * t, w) for t, w in NODES)
"""Per node: the three factors of a cubic's velocity, and the quadrature weight."""
