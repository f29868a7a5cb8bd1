"""Garments that fit: what they measure flat, and how a draft compares with them."""
