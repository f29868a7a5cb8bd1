"""A change of the style that was tried and makes a failing proof hold."""

from __future__ import annotations

from collections.abc import Mapping

from tapewise_core.frozen import Frozen
from tapewise_core.text.told import OptionKey, Told, joined, said


class Change(Frozen):
    """One option: what it was, what it is to be."""

    key: str
    before: Told
    after: Told

    @property
    def told(self) -> Told:
        """Return it as a few words."""
        return said("{} {} in place of {}", OptionKey(self.key), self.after, self.before)


class Mend(Frozen):
    """Options with the values to type (``settings``), and what the proof says then."""

    settings: Mapping[str, str]
    changes: tuple[Change, ...]
    then: Told

    @property
    def changed(self) -> Told:
        """The changes in words."""
        return joined([change.told for change in self.changes], " and ")

    @property
    def told(self) -> Told:
        """The sentence for a person, before and after."""
        return (*said("With {} it holds: ", self.changed), *self.then)
