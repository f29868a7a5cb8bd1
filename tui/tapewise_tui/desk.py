"""The desk the pages work at: what they ask of it, and what they change."""

from __future__ import annotations

import contextlib
from collections.abc import Mapping
from datetime import date
from pathlib import Path

from msgspec.structs import replace

from tapewise_core.errors import TapewiseError
from tapewise_core.measures.body import Origin, WaistSite
from tapewise_core.measures.order import KEYS
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import people, settings, work
from tapewise_core.tasks.people import Check
from tapewise_core.tasks.work import Work
from tapewise_tui import trouble
from tapewise_tui.desk_state import State as State
from tapewise_tui.kept_desk import KeptDesk


class Desk(KeptDesk):
    """One person's measures and work at a time; ``today`` is fixed in tests.

    ``all_measures`` says that all are gone through, not the garment's alone; ``judges`` that pages
    work out how sure the garment is while the person measures.
    """

    def __init__(self, today: date | None = None) -> None:
        super().__init__(today)
        self.asked_machines = self.asked_site = False
        self.marked = ""
        self.drawn: tuple[tuple[Profile, object, object], ...] = ()
        self.all_measures = False
        self.judges = True
        self._ordered: tuple[Profile, tuple[str, Mapping[str, str]], tuple[str, ...]] | None = None
        self._checked: tuple[Profile, Check] | None = None

    @property
    def check(self) -> Check:
        """What is missing, estimated and unlikely; worked out once for each profile."""
        if self._checked is None or self._checked[0] is not self.profile:
            self._checked = (self.profile, people.check(self.profile))
        return self._checked[1]

    @property
    def used(self) -> tuple[str, ...]:
        """The measures that the garment makes use of, in the order of taking them."""
        made, known = self.work, self._ordered
        if known is None or known[0] is not self.profile or known[1] != (made.garment, made.asked):
            from tapewise_core.tasks.guesses import used  # not before it is wanted

            try:
                found = used(made.garment, made.asked, self.profile, self.unit)
            except TapewiseError:
                raise
            except Exception as error:  # a garment at fault leaves the measures to be taken
                trouble.note(error)
                found = KEYS
            known = self._ordered = (self.profile, (made.garment, made.asked), found)
        return known[2]

    @property
    def order(self) -> tuple[str, ...]:
        """The measures to go through: those used, or all if that was asked for."""
        return KEYS if self.all_measures else self.used

    @property
    def open_measures(self) -> tuple[str, ...]:
        """The measures that the garment makes use of and that are not measured yet."""
        missing = self.check.missing
        return tuple(key for key in self.used if key in missing)

    def open(self, profile: Profile, project: Work | None = None) -> str:
        """Lay a person's things on the desk; what was undone before is forgotten.

        If no project is named, it is the latest. What lay there already, unchanged since, can
        still be taken back.

        Returns a sentence if the work kept for the person had to be set aside, else nothing.
        """
        made, remark = work.take_up(profile.name)
        self.lay(profile, project or made)
        self.all_measures = self.asked_site = False
        return remark

    def value(
        self, key: str, readings: tuple[float, ...], cm: float, origin: Origin, says: str
    ) -> None:
        """Keep one measure [cm] with its readings [cm]."""
        profile = self.profile.with_value(
            key, cm, origin=origin, readings=readings, taken=self.today
        )
        self.change(says, profile)

    def waist_site(self, site: WaistSite) -> None:
        self.change(f"waist: {site.value}", self.profile.with_waist_site(site))

    def usual(self, key: str, text: str) -> None:
        """Remember for everybody what is usual here, such as the machines; no change to undo."""
        with contextlib.suppress(TapewiseError):  # the work itself is kept all the same
            settings.keep(settings.changed(settings.settings(), key, text))

    def place(self, page: str | None = None, measure: str | None = None) -> None:
        """Remember where the person is; no change to undo."""
        if self.state.work is None:
            return
        now = self.work
        where = replace(now, page=page or now.page, measure=measure or now.measure)
        if where != self.work:
            self.state = replace(self.state, work=self._stamped(where))
            self._save_work()

    def jot(self, notes: str) -> None:
        """Keep notes; the notes' own field undoes typing."""
        if self.state.work is not None and notes != self.work.notes:
            self.state = replace(self.state, work=self._stamped(replace(self.work, notes=notes)))
            self._save_work()

    def wrote(self, folder: Path, fingerprint: str) -> None:
        """Note a draft that was written; no change to undo, for its files are there."""
        when = self._stamped(self.work).when
        made = work.with_draft(self.work, folder, fingerprint, when)
        self.state = replace(self.state, work=self._stamped(made))
        self._save_work()
