"""The skirted dress, as a list of garments tells of it; the rest is on its page."""

TITLE = "Jersey dress with a circle skirt"
SAYS = "The jersey top cut at the waist, with a circle skirt sewn to it."
