"""The circle skirt, as a list of garments tells of it; the rest is on its page."""

TITLE = "Circle skirt"
SAYS = "A skirt cut from a circle or part of one, on an elastic or a wide band."
