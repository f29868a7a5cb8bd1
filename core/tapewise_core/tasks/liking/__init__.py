"""Draft like a garment that fits: to its ease by level, in another cloth."""
