"""Trying on: what is seen, the question that tells its causes apart, the change tried and kept."""

from __future__ import annotations

from functools import partial

from textual import on
from textual.binding import Binding
from textual.widgets import OptionList

from tapewise_core.drafting.overlay import overlaid
from tapewise_core.errors import TapewiseError
from tapewise_core.tasks.fitting import (
    SYMPTOMS,
    Seen,
    Symptom,
    Trial,
    caution,
    kept,
    line_of,
    read_amount,
    seen,
    without,
)
from tapewise_tui import trying, words
from tapewise_tui.desk import Desk
from tapewise_tui.dialogs.fitting_sheet import FittingSheet
from tapewise_tui.fitting_canvas import draw_folds, draw_overlay
from tapewise_tui.line import Line
from tapewise_tui.trying import KEPT
from tapewise_tui.widgets.field import Field
from tapewise_tui.widgets.leaf import Picture

LOOK = "Enter: this is seen · Delete: take off what is kept · Escape: close"
ANSWER = "Enter: that is the answer · Escape: back"
TRIED = "Enter: try another amount · F4: keep it for later drafts · Escape: back"

AGAIN = "One thing at a time: baste it, try on again, then the next."


class FittingDialog(FittingSheet):
    """All that may be seen, from the shoulders down; then one question; then the change."""

    BINDINGS = [
        Binding("escape", "back", "Back"),
        Binding("f4,ctrl+s", "keep", "Keep"),
        Binding("delete", "take_off", "Take off"),
    ]

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.symptom: Symptom | None = None
        self.found: Seen | None = None
        self.trial: Trial | None = None

    def on_mount(self) -> None:
        self._look()

    def _look(self, at: str = "") -> None:
        """Show all that may be seen, and what is kept."""
        self.symptom = self.found = self.trial = None
        self._stand("Trying on: what is seen?", LOOK, tried=False)
        self._fill(trying.lines(self.desk), at)

    @on(OptionList.OptionHighlighted)
    def marked(self, event: OptionList.OptionHighlighted) -> None:
        """Say and draw what the line with the cursor is about."""
        event.stop()
        key = event.option.id or ""
        if self.trial is not None or event.option is not self._at:
            return
        if self.symptom is not None:
            self._say(trying.answered(self.symptom, key))
            return
        one = SYMPTOMS.get(key)
        self.query_one(Picture).show(partial(draw_folds, folds=one.folds) if one else None)
        self._say(trying.about(key, self.desk))

    @on(OptionList.OptionSelected)
    def chosen(self, event: OptionList.OptionSelected) -> None:
        event.stop()
        key = event.option.id or ""
        if self.trial is not None:
            self.query_one(Field).focus()
        elif self.symptom is not None:
            self._answered(self.symptom, key)
        elif key in SYMPTOMS:
            self._ask(SYMPTOMS[key])

    def _ask(self, symptom: Symptom) -> None:
        """Ask what tells causes apart, where there is anything to ask."""
        if not symptom.question:
            self._answered(symptom, symptom.answers[0].key)
            return
        self.symptom = symptom
        self._stand(symptom.question, ANSWER, tried=False)
        self._fill(Line(answer.key, answer.says) for answer in symptom.answers)

    def _answered(self, symptom: Symptom, answer: str) -> None:
        try:
            made = self.desk.work
            found = seen(self.desk.profile, made.garment, symptom.key, answer, made.asked)
            trial = trying.trial_of(self.desk, found)
        except TapewiseError as error:
            self._warn(error)
            return
        self.symptom, self.found = symptom, found
        self._show(trial)

    def _show(self, trial: Trial) -> None:
        """Show a change that was tried: what it moves, before and after over each other."""
        self.trial = trial
        spell, found = self.desk.reader.spell, self.found
        assert found is not None
        assert found.remedy is not None
        self._stand(words.sentence(spell(trial.says)), TRIED, tried=True)
        self._fill(trying.moved(trial, self.desk))
        pairs = overlaid(trial.before.pattern.pieces, trial.after.pattern.pieces)
        self.query_one(Picture).show(partial(draw_overlay, pairs=pairs))
        self._say(trying.says(found, trial, self.desk))
        field = self.query_one(Field)
        field.put(spell(found.remedy.change.amount_told(trial.adjustment.amount)))
        field.focus()

    def _amount(self, text: str) -> None:
        """Try another amount."""
        found = self.found
        if found is None or found.remedy is None:
            return
        try:
            amount = read_amount(found.remedy, text, self.desk.unit)
            self._show(trying.trial_of(self.desk, found, amount))
        except TapewiseError as error:
            self.query_one(Field).refused()
            self._warn(error)

    def action_keep(self) -> None:
        """Keep the change with the person, the amount as it is typed."""
        if self.trial is None:
            return
        if self.query_one(Field).touched:
            before = self.trial
            self._amount(self.query_one(Field).value)
            if self.trial is before:
                return
        says = self.desk.reader.spell(self.trial.says)
        try:
            self.desk.change(says, kept(self.desk.profile, self.trial.adjustment))
        except TapewiseError as error:
            self._warn(error)
            return
        key = f"{KEPT}{len(self.desk.profile.adjustments)}"
        self._look(key)
        self.call_after_refresh(self._say, f"Kept: {says}. {AGAIN} {caution(self.desk.profile)}")

    def action_take_off(self) -> None:
        """Take off what is marked of what is kept; undo brings it back."""
        key = (self._at.id or "") if self._at else ""
        if self.symptom is not None or self.trial is not None or not key.startswith(KEPT):
            return
        changed, gone = without(self.desk.profile, int(key.removeprefix(KEPT)))
        told = self.desk.reader.spell(line_of(gone, self.desk.today))
        self.desk.change(f"taken off: {told}", changed)
        self._look()
        self.call_after_refresh(self._say, f"Taken off: {told}. Later drafts are as before it.")

    def action_back(self) -> None:
        """To the step before, at last to the page."""
        if self.trial is not None and self.symptom is not None and self.symptom.question:
            symptom, self.trial = self.symptom, None
            self.query_one(Picture).show(partial(draw_folds, folds=symptom.folds))
            self._ask(symptom)
        elif self.symptom is not None:
            self._look(self.symptom.key)
        else:
            self.dismiss(None)
