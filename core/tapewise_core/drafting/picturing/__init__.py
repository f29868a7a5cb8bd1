"""What the picture of a drafting step shows, and how its letters and lengths find room."""
