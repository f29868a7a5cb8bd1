"""Small questions asked over a page."""
