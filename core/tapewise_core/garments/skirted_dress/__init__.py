"""The skirted dress, as a list of garments tells of it; the rest is on its page."""

TITLE = "Jersey dress with a skirt"
SAYS = "A bodice with sleeves or sleeveless, and a circle, gathered or straight skirt sewn to it."
