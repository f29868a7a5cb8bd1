"""The prove page's rows: proofs as they want attention, then remarks, and where each changes."""

from __future__ import annotations

from collections.abc import Iterator

from tapewise_core.frozen import Frozen
from tapewise_core.measures.catalogue import BY_KEY
from tapewise_core.tasks import verdicts, wizard
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.wizard import Proof
from tapewise_core.text.told import OptionKey, Told
from tapewise_core.units import Unit
from tapewise_tui import drafting, words
from tapewise_tui.desk import Desk


class Row(Frozen):
    """One line of the table; ``proof`` is None for a remark."""

    key: str
    mark: str
    name: str
    says: str
    proof: Proof | None = None
    told: Told = ()

    @property
    def cells(self) -> tuple[str, str, str]:
        """The row as the table shows it."""
        return self.mark, self.name, self.says


def rows(draft: Drafted, desk: Desk) -> tuple[Row, ...]:
    """Return a row for each proof, failing and uncertain ones first, then one for each remark."""
    proofs = (_proof(one, desk.unit) for one in verdicts.in_order(draft.proofs))
    remarks = (
        Row(f"remark {place}", "note", "Remark", desk.reader.spell(told), told=told)
        for place, told in enumerate(draft.pattern.remarks)
    )
    return (*proofs, *remarks)


def _proof(proof: Proof, unit: Unit) -> Row:
    stands = verdicts.outcome(proof)
    mark = {"fails": "! fails", "uncertain": "? unsure"}.get(stands, "holds")
    says = drafting.says(proof, unit)
    if proof.holds and stands != "holds":
        says = f"{stands.capitalize()}. {says}"
    return Row(f"{proof.id} {proof.of}", mark, words.sentence(proof.name), says, proof)


CHANGED_BY = {
    "head through the neck": ("neck-half-width", "neck-depth", "stretch"),
    "neckband against neckline": ("band-ratio", "band-width"),
    "waist over the body": ("waist-ease", "ease"),
    "waistband against waist": ("band-length", "waist-ease"),
    "casing turned down": ("elastic-width",),
    "hem for a stride": ("split-length", "hem", "body-length", "flare"),
    "girth of the garment": ("ease", "waist-ease"),
    "bust as asked": ("bust-ease", "ease"),
    "waist as asked": ("waist-ease", "waist-shaping"),
    "hip as asked": ("hip-ease", "ease"),
    "upper arm as asked": ("sleeve-ease",),
    "sleeve hem as asked": ("sleeve-hem-ease",),
    "ease for this cloth": ("ease", "stretch"),
    "hand through the sleeve": ("sleeve-hem-ease", "stretch"),
    "sleeve cap against armhole": ("cap-shortening", "sleeve-ease"),
    "height of the sleeve cap": ("sleeve-ease", "armhole-drop"),
    "armhole inside the shoulder": ("shoulder-drop", "neck-half-width"),
    "underarm below the armscye line": ("sleeve-ease", "armhole-drop"),
    "underarm above halfway to the waist": ("sleeve-ease", "armhole-drop"),
    "side seam at the waist": ("waist-shaping", "waist-darts"),
    "allowances": ("seam-allowance",),
}
"""The options that move a proof's number, the one that moves it most first (our choice)."""

STYLE = ("fit", "circle")
"""Where a style begins: what moves a proof that no single option moves."""


def where(row: Row, draft: Drafted, garment: str) -> tuple[str, str]:
    """Return the page where a row's matter is changed, and the option or measure there."""
    helps = draft.verdict.helps_most if draft.verdict else None
    if row.proof is not None and row.proof.holds and row.proof.sure < 1 and helps:
        return "measure", helps
    keys = wizard.garment(garment).options.keys
    wanted = [key for key in _wanted(row) if key in keys]
    return "garment", next(iter(wanted), "")


def _wanted(row: Row) -> Iterator[str]:
    if row.proof is None:
        yield from (part.key for part in row.told if isinstance(part, OptionKey))
    else:
        yield from row.proof.mend.settings if row.proof.mend else ()
        yield from CHANGED_BY.get(str(row.proof.id), ())
        yield from STYLE


def named(page: str, key: str) -> str:
    """Say where a row's matter is changed."""
    if page == "measure":
        return f"F8 measures the {BY_KEY[key].name}, which makes it surest."
    return f"F8 goes to {key.replace('-', ' ')}." if key else "F8 goes to the garment."


def changed(proof: Proof, desk: Desk) -> str:
    """Say what a proof's mend changes, before and after, as tried just now; empty without one.

    Drafts once: for a worker.
    """
    if not proof.mend:
        return ""
    offered = f"F6 sets {drafting.mend_words(proof, desk.unit)}"
    tried = drafting.of(desk.profile, drafting.with_mend(desk.work, proof), desk)
    if isinstance(tried, str):
        return f"{offered}."
    after = next((p for p in tried.proofs if p.which == proof.which), None)
    if after is None:
        return f"{offered}; then there is nothing to prove here."
    step = f"{_value(proof.value, proof, desk.unit)} → {_value(after.value, proof, desk.unit)}"
    limit = _value(proof.limit, proof, desk.unit)
    left = len(tried.failing)
    others = f"; {words.count(left, 'proof')} still failing" if left else "; all proofs hold then"
    return f"{offered}: {step} against {limit}{others}."


def _value(number: float, proof: Proof, unit: Unit) -> str:
    """A proof's number in the reader's unit; its own unit where it is no length."""
    if proof.unit == "cm":
        return unit.spell(number * 10)
    mark = {"%": " %", "degrees": "°"}.get(proof.unit, "")
    return f"{number:.3g}{mark}"
