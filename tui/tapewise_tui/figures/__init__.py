"""Figures in the terminal: a person in line art, and where the tape goes."""

from tapewise_tui.figures.figure import drawn, figure

__all__ = ["drawn", "figure"]
