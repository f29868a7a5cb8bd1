"""The questions that lines of the garment page open: machines, cloth, a garment that fits."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from msgspec.structs import replace

from tapewise_core.tasks import ticking
from tapewise_core.tasks.settings import settings
from tapewise_core.tasks.work import Work
from tapewise_tui import choosing, drafting, liking, words
from tapewise_tui.dialogs.fold import FoldDialog
from tapewise_tui.dialogs.machines import MachinesDialog
from tapewise_tui.page import Page


class GarmentAsks:
    """Asks over a page; ``kept`` keeps what is answered and says so."""

    def __init__(self, page: Page, kept: Callable[[str, Work], bool]) -> None:
        self.page, self.kept = page, kept
        self.ways: Mapping[str, Callable[[], object]] = {
            choosing.MACHINES: self.machines,
            choosing.FOLD: self.fold,
            choosing.LIKE: lambda: liking.begin(page, kept),
            choosing.BUY: self.cloth,
        }

    def cloth(self) -> None:
        """Show how the pieces lie on the cloth, and how much to buy."""
        self.page.app.call_later(self.page.run_action, "app.cloth")

    def fold(self) -> None:
        """Ask for what a strip of the cloth shows."""
        self.page.app.push_screen(FoldDialog(self.page.desk.unit), self._folded)

    def _folded(self, found: dict[str, str] | None) -> None:
        if found is None:
            return
        before = drafting.drafted(self.page.desk)
        cloth = None if isinstance(before, str) else before.cloth
        made = ticking.found_out(self.page.desk.work, found, cloth)
        told = ", ".join(f"{key.replace('-', ' ')} {value} %" for key, value in found.items())
        self.kept(told, made)

    def machines_once(self) -> None:
        """Ask for the machines unless that was done, or they are set for good."""
        desk = self.page.desk
        if not desk.asked_machines and not settings().machines:
            desk.asked_machines = True
            self.page.app.call_later(self.machines)

    def machines(self) -> None:
        """Ask for the machines; none is ticked until somebody has said which there are."""
        made = self.page.desk.work
        known = settings().machines or made.machines != Work("").machines
        self.page.app.push_screen(MachinesDialog(made.machines if known else ()), self._machined)

    def _machined(self, machines: tuple[str, ...] | None) -> None:
        if machines is None:
            return
        desk = self.page.desk
        desk.usual("machines", ", ".join(machines))
        if machines != desk.work.machines:
            made = replace(desk.work, machines=machines)
            self.kept(f"machines {words.listed(machines)}", made)
        else:
            self.page.show()
