"""Patterns drafted to a person's own measures; knows nothing of terminals."""

__version__ = "0.1.0"
