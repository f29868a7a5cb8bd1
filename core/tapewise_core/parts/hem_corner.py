"""A sleeve's hem under the arm, where back and front of a grown-on sleeve meet in a seam."""

from __future__ import annotations

from tapewise_core.drafting.piece import Join, Piece

WITHIN = 5.0
"""The hem runs on within so much of a straight angle [degrees]; more shows as a notch or a tail
(common practice)."""


def sleeve_hem_join(
    back: Piece, front: Piece, back_end: str = "", front_end: str = "", where: str = ""
) -> Join:
    """Return the hem's join under the arm of one side; the ends are those of its edges' names.

    A sleeve so short that it has no seam of its own under the arm ends on the side seam.
    """
    name = f"sleeve hem across the underarm{where}"
    return Join(name, _end(back, back_end), _end(front, front_end), WITHIN)


def _end(piece: Piece, end: str) -> tuple[str, str, str]:
    under = f"underarm{end}"
    return piece.name, f"sleeve_hem{end}", under if piece.has_edge(under) else f"side{end}"
