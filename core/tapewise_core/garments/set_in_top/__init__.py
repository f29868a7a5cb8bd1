"""The set-in top, as a list of garments tells of it; the rest is on its page."""

TITLE = "Jersey top with set-in sleeves"
SAYS = "A close top with armholes and set-in sleeves, or sleeveless."
