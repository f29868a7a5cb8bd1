"""The gathered skirt, as a list of garments tells of it; the rest is on its page."""

TITLE = "Gathered skirt"
SAYS = "A skirt of straight strips, gathered at the waist and in tiers, on an elastic or a band."
