"""The raglan top, as a list of garments tells of it; the rest is on its page."""

TITLE = "Jersey top with raglan sleeves"
SAYS = "A top whose sleeves run up to the neck, each in two halves over shoulder and arm."
