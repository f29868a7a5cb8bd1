"""What is too little to be drawn."""

from __future__ import annotations

HAIR = 0.05
"""Nobody draws, sets off or moves anything by less [mm] (our choice: half a fine line)."""
