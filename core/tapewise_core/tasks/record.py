"""The record of a draft that a machine reads: ``draft.json``, lengths in cm."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence

from tapewise_core import __version__
from tapewise_core.drafting.piece import Edge, Notch, Piece
from tapewise_core.geometry.point import Point
from tapewise_core.proofs.proof import Proof
from tapewise_core.tasks.drafting import Drafted
from tapewise_core.tasks.people import values_json

FORMAT, VERSION = "tapewise draft", 1


def record(drafted: Drafted, files: Sequence[str]) -> dict[str, object]:
    """Return the record; x out from the centre and y down from the nape, in cm."""
    used = {key: drafted.body.values[key] for key in drafted.used}
    cloth = drafted.cloth
    return {
        "format": FORMAT,
        "version": VERSION,
        "tapewise": __version__,
        "garment": drafted.garment.name,
        "person": drafted.person,
        "made": drafted.made.isoformat(),
        "unit": "cm",
        "measures": values_json(used),
        "options": drafted.style.as_json(),
        "fabric": {
            "stretch": round(cloth.stretch * 100, 1),
            "band_stretch": round(cloth.band * 100, 1),
            "seam_stretch": round(cloth.seam * 100, 1),
            "width": _cm(cloth.width),
            "shrinkage": round(cloth.shrinkage * 100, 1),
        },
        "machines": sorted(machine.value for machine in drafted.stitching.machines),
        "pieces": [_piece(piece) for piece in drafted.pattern.pieces],
        "proofs": [proof_json(proof) for proof in drafted.proofs],
        "finished": _finished(drafted),
        "uncertain": [
            {"measure": e.measure, "place": e.place, "plus_minus": round(e.plus_minus, 2)}
            for e in drafted.effects
        ],
        "remarks": [drafted.reader.spell(remark) for remark in drafted.pattern.remarks],
        "files": list(files),
    }


def record_text(drafted: Drafted, files: Sequence[str]) -> str:
    """Return the record as JSON text, points one outline a line."""
    return json.dumps(record(drafted, files), ensure_ascii=False, indent=1, allow_nan=False) + "\n"


def proof_json(proof: Proof) -> dict[str, object]:
    """Return one proof as plain values."""
    return {
        "name": proof.name,
        "value": proof.value,
        "limit": proof.limit,
        "unit": proof.unit,
        "holds": proof.holds,
        "says": proof.says,
        "mend": dict(proof.mend) if proof.mend else None,
    }


def _finished(drafted: Drafted) -> dict[str, object]:
    """Girths and lengths of the finished garment beside the body's own."""
    found: dict[str, object] = {
        girth.name.replace(" ", "_"): {"garment": _cm(girth.garment), "body": _cm(girth.body)}
        for girth in drafted.pattern.girths
    }
    for name, length in drafted.pattern.lengths.items():
        found[name.replace(" ", "_")] = {"garment": _cm(length)}
    return found


def _piece(piece: Piece) -> dict[str, object]:
    return {
        "name": piece.name,
        "cut": {"count": piece.count, "on_fold": piece.on_fold, "mirrored": piece.mirrored},
        "stitch_line": _points(piece.stitch_line()),
        "cut_line": _points(piece.cut),
        "edges": [_edge(edge) for edge in piece.edges],
        "points": {name: _pair(at) for name, at in piece.points.items()},
        "notches": [_notch(piece, notch) for notch in piece.notches],
        "grain": [_pair(at) for at in piece.grain],
    }


def _edge(edge: Edge) -> dict[str, object]:
    return {
        "name": edge.name,
        "points": _points(edge.path.flattened()),
        "length": round(edge.path.length() / 10, 4),
        "allowance": _cm(edge.allowance),
        "turned": edge.turned,
        "fold": edge.fold,
    }


def _notch(piece: Piece, notch: Notch) -> dict[str, object]:
    at, _ = piece.edge(notch.edge).path.at(notch.distance)
    return {
        "edge": notch.edge,
        "pair": notch.pair,
        "distance": _cm(notch.distance),
        "at": _pair(at),
        "strokes": notch.strokes,
    }


def _points(points: Iterable[Point]) -> list[list[float]]:
    return [_pair(point) for point in points]


def _pair(point: Point) -> list[float]:
    return [_cm(point.x), _cm(point.y)]


def _cm(mm: float) -> float:
    return round(mm / 10, 4) + 0.0
