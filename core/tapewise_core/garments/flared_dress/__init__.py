"""The flared jersey dress, as a list of garments tells of it; the rest is on its page."""

TITLE = "Flared jersey dress"
BARE_TITLE = "Flared jersey dress without sleeves"
SAYS = "An easy dress, flared from waist or hip, with grown-on sleeves or sleeveless; pulled on."
