"""Review: every measure in one table, unlikely ones on top, mended in place."""

from __future__ import annotations

from tapewise_core.measures.body import Origin
from tapewise_core.measures.order import KEYS
from tapewise_tui import keys, measuring, readings_told, reviewing
from tapewise_tui.entry_page import EntryPage
from tapewise_tui.reviewing import USUAL
from tapewise_tui.widgets.entry_line import WIDTHS, guessed
from tapewise_tui.widgets.rows import Cell, Rows

ROOMY = 92
"""Columns from which there is room to say of every value where it comes from; where there is less,
it is said of what is not simply measured, and where nothing else is to be said."""

TOLD = (Origin.CONFIRMED.value, Origin.ESTIMATED.value)
"""Where a value comes from that is not simply measured."""


class ReviewPage(EntryPage):
    """All measures at a glance."""

    NAME = "review"
    PURPOSE = (
        "The measures, estimates in brackets with how far off they may be. What looks "
        "unlikely stands on top, with what to do about it. A number typed takes the place of the "
        "one marked; an emptied field takes the measure off."
    )
    BINDINGS = keys.of(
        "all", on="on to the garment", table="the measures in one table, to type from top to bottom"
    )

    def standing(self) -> tuple[reviewing.Standing, ...]:
        """What the garment uses and what was measured; all there are if that was asked for."""
        missing = self.desk.check.missing
        wanted = (key for key in KEYS if key in self.desk.order or key not in missing)
        return reviewing.rows(self.desk, wanted)

    def columns(self) -> tuple[tuple[str, int], ...]:
        unit = self.desk.unit
        origin = (("Origin", 10),) if self.room >= ROOMY else ()
        return (self.named, (unit.value, WIDTHS[unit]), *origin, ("±", 8), ("Remark", 12))

    def cells(self, row: reviewing.Standing) -> tuple[Cell, ...]:
        name, value, origin, off, remark = row.cells
        roomy = self.room >= ROOMY
        told = (origin,) if roomy else ()
        if origin in TOLD and not roomy:
            remark = remark or origin
        return (name, guessed(value) if off else value, *told, off, remark)

    @property
    def spelt(self) -> str:
        return self.row.value if readings_told.spelt(self.desk, self.key) else ""

    def summary(self) -> tuple[str, str]:
        there, helps = super().summary()
        return f"{reviewing.doubts(self.rows)} {there}", helps

    def typed(self, text: str) -> str:
        return measuring.replaced(self.desk, self.key, text)

    def go_down(self, row: reviewing.Standing, place: int) -> None:
        """Go to the next that is to be looked at, where one was: what was mended sinks.

        What has come to be looked at rises, and keeps the cursor: it is asked about.
        """
        if row.urgent == USUAL and self.row.urgent < USUAL:
            return
        keys = [one.measure.key for one in self.rows if one.urgent < USUAL]
        following = place + (row.measure.key in keys)
        if row.urgent < USUAL and following < len(keys):
            self.query_one(Rows).move_cursor(following)
        else:
            super().go_down(row, place)

    def action_table(self) -> None:
        key = self.key
        self.keep_typed()
        self.desk.place(measure=key)
        self.tapewise.go("table")
