"""The straight skirt, as a list of garments tells of it; the rest is on its page."""

TITLE = "Straight skirt"
SAYS = "A skirt from slightly pegged to A-line, on an elastic or a wide band."
