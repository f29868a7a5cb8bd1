"""The record of a draft that a machine reads: ``draft.json``, lengths in cm.

Each key is one row of a :class:`~tapewise_core.tasks.shapes.Shape`; a new key is a new row.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from tapewise_core import __version__
from tapewise_core.drafting.cloth import Cloth
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.fingerprint import LONG, SIGNS
from tapewise_core.tasks.guesses import Effect
from tapewise_core.tasks.judging import judged
from tapewise_core.tasks.record_adjustments import ADJUSTMENT, adjustments_json
from tapewise_core.tasks.record_levels import LEVEL, levels_json
from tapewise_core.tasks.record_like import LIKE, like_json
from tapewise_core.tasks.record_pieces import PIECE, in_cm
from tapewise_core.tasks.record_proofs import (
    PROOF,
    SILENT,
    VERDICT,
    proofs_json,
    silent_json,
    verdict_json,
)
from tapewise_core.tasks.record_spelt import spelt
from tapewise_core.tasks.shapes import (
    DAY,
    NUMBER,
    TEXT,
    JsonType,
    Key,
    Shape,
    always,
    by_name,
    listed,
    maybe,
    one_of,
)
from tapewise_core.tasks.values import VALUES, values_json

FORMAT, VERSION = "tapewise draft", 1


class Saved(NamedTuple):
    """A draft with the names of all the files it leaves."""

    drafted: Drafted
    files: Sequence[str]


def _percent(share: float) -> float:
    return round(share * 100, 1)


FABRIC: Shape[Cloth] = Shape(
    "the cloth; stretches and shrinkage in %",
    (
        Key("stretch", NUMBER, lambda cloth: _percent(cloth.stretch)),
        Key("band_stretch", NUMBER, lambda cloth: _percent(cloth.band)),
        Key("seam_stretch", NUMBER, lambda cloth: _percent(cloth.seam)),
        Key("width", NUMBER, lambda cloth: in_cm(cloth.width)),
        Key("shrinkage", NUMBER, lambda cloth: _percent(cloth.shrinkage), "along its ribs"),
        Key("shrinkage_across", NUMBER, lambda cloth: _percent(cloth.shrinkage_across)),
        Key("stretch_along", NUMBER, lambda cloth: _percent(cloth.stretch_along)),
    ),
)

EFFECT: Shape[Effect] = Shape(
    "where an estimate leaves the garment uncertain",
    (
        Key("measure", TEXT, lambda effect: effect.measure),
        Key("place", TEXT, lambda effect: effect.place),
        Key("plus_minus", NUMBER, lambda effect: round(effect.plus_minus, 2)),
    ),
)

FINISHED: Shape[tuple[float, float | None]] = Shape(
    "a girth or length of the finished garment",
    (
        Key("garment", NUMBER, lambda sizes: in_cm(sizes[0])),
        Key(
            "body",
            NUMBER,
            lambda sizes: None if sizes[1] is None else in_cm(sizes[1]),
            "the body's own girth",
            optional=True,
        ),
    ),
)


def _finished(drafted: Drafted) -> dict[str, object]:
    """Girths and lengths of the finished garment beside the body's own."""
    pattern = drafted.pattern
    sizes: dict[str, tuple[float, float | None]] = {
        girth.name: (girth.garment, girth.body) for girth in pattern.girths
    }
    sizes |= {name: (length, None) for name, length in pattern.lengths.items()}
    return {name.replace(" ", "_"): FINISHED.of(size) for name, size in sizes.items()}


def _remarks(drafted: Drafted) -> list[str]:
    """The remarks in the reader's unit."""
    return [drafted.reader.spell(remark) for remark in drafted.pattern.remarks]


def _used(drafted: Drafted) -> dict[str, dict[str, object]]:
    return values_json({key: drafted.body.values[key] for key in drafted.used})


def _machines(drafted: Drafted) -> list[str]:
    return sorted(machine.value for machine in drafted.stitching.machines)


FINGERPRINT: JsonType = {"type": "string", "pattern": f"^[{SIGNS}]{{{LONG}}}$"}
"""Six letters and digits."""

OPTION = {"type": ["number", "string"]}
"""An option's value: a length in cm, another number, or a word."""

RECORD: Shape[Saved] = Shape(
    "draft.json: all that was drafted for one person, in cm",
    (
        Key("format", always(FORMAT), lambda saved: FORMAT),
        Key("version", always(VERSION), lambda saved: VERSION, "of this format"),
        Key("tapewise", TEXT, lambda saved: __version__, "the version of the program"),
        Key("garment", TEXT, lambda saved: saved.drafted.garment.name),
        Key("person", TEXT, lambda saved: saved.drafted.person),
        Key(
            "fingerprint",
            FINGERPRINT,
            lambda saved: saved.drafted.fingerprint,
            "of person, garment, measures, options and cloth; the same on every sheet",
        ),
        Key("made", DAY, lambda saved: saved.drafted.made.isoformat()),
        Key("unit", always("cm"), lambda saved: "cm"),
        Key("measures", VALUES, lambda saved: _used(saved.drafted), "those this style uses"),
        Key("options", by_name(OPTION), lambda saved: saved.drafted.style.as_json()),
        Key(
            "adjustments",
            listed(ADJUSTMENT.kind),
            lambda saved: adjustments_json(saved.drafted),
            "what fittings taught about the person, the first one first",
        ),
        Key("fabric", FABRIC.kind, lambda saved: FABRIC.of(saved.drafted.cloth)),
        Key("machines", listed(one_of(*Machine)), lambda saved: _machines(saved.drafted)),
        Key(
            "pieces",
            listed(PIECE.kind),
            lambda saved: [PIECE.of(piece) for piece in saved.drafted.cut.pieces],
        ),
        Key(
            "proofs",
            listed(PROOF.kind),
            lambda saved: proofs_json(saved.drafted),
        ),
        Key("verdict", VERDICT.kind, lambda saved: verdict_json(saved.drafted)),
        Key("silent", listed(SILENT.kind), lambda saved: silent_json(saved.drafted)),
        Key("levels", listed(LEVEL.kind), lambda saved: levels_json(saved.drafted)),
        Key("finished", by_name(FINISHED.kind), lambda saved: _finished(saved.drafted)),
        Key(
            "uncertain",
            listed(EFFECT.kind),
            lambda saved: [EFFECT.of(effect) for effect in saved.drafted.effects],
        ),
        Key(
            "like",
            maybe(LIKE.kind),
            lambda saved: like_json(saved.drafted),
            "how it compares with a garment that fits, if it was drafted like one",
        ),
        Key("remarks", listed(TEXT), lambda saved: _remarks(saved.drafted)),
        Key(
            "files",
            listed(TEXT),
            lambda saved: list(saved.files),
            "all that were written, as paths in the same folder, with /",
        ),
    ),
)


def record(drafted: Drafted, files: Sequence[str]) -> dict[str, object]:
    """Return the record; x out from the centre and y down from the nape, in cm."""
    return RECORD.of(Saved(judged(drafted), files))


def record_text(drafted: Drafted, files: Sequence[str]) -> str:
    """Return the record as JSON text, points one outline a line."""
    return spelt(record(drafted, files)) + "\n"
