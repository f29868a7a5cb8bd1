"""The skirted dress, as a list of garments tells of it; the rest is on its page."""

TITLE = "Jersey dress with a skirt"
SAYS = "A bodice with a circle skirt, a gathered or a straight one sewn to it at the waist."
