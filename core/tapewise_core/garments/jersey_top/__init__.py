"""The jersey top, as a list of garments tells of it; the rest is on its page."""

TITLE = "Jersey top with grown-on sleeves"
SAYS = "A close top without closure, its sleeves cut in one with the body, or sleeveless."
BARE_TITLE = "Jersey top without sleeves"
