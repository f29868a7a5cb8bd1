"""What every garment asks about its cloth; usual values are common practice."""

from __future__ import annotations

from tapewise_core.style.option import Kind, Option

CLOTH = (
    Option(
        key="stretch",
        says="how far the cloth stretches across: (stretched − 10) ÷ 10 for 10 cm on the fold",
        kind=Kind.PERCENT,
        default=50.0,
        low=0,
        high=200,
    ),
    Option(key="cloth-width", says="width of the cloth as bought", default=150.0, low=50, high=320),
    Option(
        key="shrinkage",
        says="how much shorter the cloth is after its first wash",
        kind=Kind.PERCENT,
        default=5.0,
        low=0,
        high=20,
    ),
)
WEIGHT = Option(
    key="cloth-weight",
    says="weight of the cloth for a square metre",
    kind=Kind.WEIGHT,
    default=220.0,
    low=60,
    high=600,
)
