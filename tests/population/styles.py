"""The four styles that every garment is drafted in; each takes of them what it has."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.garments.garment import Garment

STYLES = {
    "usual": {},
    "close": {
        "fit": "close", "sleeve": "elbow", "waist-shaping": "100", "bust-room": "side-dart",
        "circle": "1", "flare": "-2", "vent": "back", "tiers": "2", "skirt": "straight",
    },
    "straight": {
        "fit": "straight", "sleeve": "long", "neckline": "v", "hem": "curved", "circle": "1/2",
        "waist-finish": "band", "vent": "slits", "fullness": "1.8", "skirt": "gathered",
    },
    "eased": {
        "fit": "eased", "sleeve": "short", "neckline": "boat", "waist-shaping": "0",
        "circle": "1/4", "flare": "12", "tiers": "4", "sleeve-cut": "set-in",
    },
}  # fmt: skip
"""By name, as a person would type them."""


def styles_of(page: Garment) -> Iterator[tuple[str, dict[str, str]]]:
    """Yield a garment's four styles by name."""
    for name, asked in STYLES.items():
        yield name, {key: text for key, text in asked.items() if _has(page, key, text)}


def _has(page: Garment, key: str, text: str) -> bool:
    if key not in page.options:
        return False
    option = page.options[key]
    return option.allows(float(text) if option.bounded else text)
