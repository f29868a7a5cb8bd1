"""What cutting and sewing share: one thing a page, ticked with Enter, turned with the arrows."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from textual import on
from textual.widget import Widget

from tapewise_core.tasks import ticking
from tapewise_core.tasks.drafted import Drafted
from tapewise_tui import keys, words
from tapewise_tui.chores_page import ChoresPage
from tapewise_tui.line import Line
from tapewise_tui.widgets.leaf import Leaf, Thing

ROOM = 40
"""As much of a thing's name is said as a narrow line holds with what was done."""

NOTHING = Thing("", (), ())


class LeafPage(ChoresPage):
    """One thing a page; the first that is not done when it is opened."""

    BINDINGS = keys.of("find", "steps", "cloth", table="everything to do, on one sheet")

    all: tuple[Thing, ...] = ()
    at = -1

    def things(self, draft: Drafted) -> tuple[Thing, ...]:
        """Return what there is, one a page."""
        raise NotImplementedError

    def parts(self) -> Iterable[Widget]:
        yield Leaf()

    def begin(self) -> None:
        super().begin()
        self.query_one(Leaf).focus()

    def show(self) -> None:
        super().show()
        self.all = self.things(self.draft) if self.draft else ()
        if self.at < 0:
            self.at = self._first()
        self._turn(0)

    def minds(self, heading: str) -> tuple[str, ...]:
        """Return what the checklist says to mind under a heading."""
        return tuple(part.mind for part in self.chores if part.heading == heading and part.mind)

    @property
    def thing(self) -> Thing:
        return self.all[self.at] if self.all else NOTHING

    def _first(self) -> int:
        """Where the person comes from, else the first thing that is not done, else the last."""
        marked, self.desk.marked, done = self.desk.marked, "", self.done
        keys_of = [[key for key, _ in thing.boxes] for thing in self.all]
        open_ = [at for at, found in enumerate(keys_of) if not set(found) <= set(done)]
        here = [at for at, found in enumerate(keys_of) if marked in found]
        return next(iter((*here, *open_)), max(len(self.all) - 1, 0))

    def _turn(self, by: int) -> None:
        self.at = min(max(self.at + by, 0), max(len(self.all) - 1, 0))
        self.query_one(Leaf).show(self.thing, self.done)

    @on(Leaf.Turn)
    def turn(self, event: Leaf.Turn) -> None:
        event.stop()
        self.tell("")
        self._turn(event.by)

    @on(Leaf.Done)
    def tick(self, event: Leaf.Done) -> None:
        """Tick the first open box; once none is open here, go on to the next thing."""
        event.stop()
        box = next(((k, says) for k, says in self.thing.boxes if k not in self.done), None)
        if box is None:
            self._go_on()
            return
        if self.opened(box[0]):
            return
        made = ticking.toggled(self.desk.work, box[0], self.chores, self.fingerprint)
        says = f"{words.shortened(self.thing.find.rstrip('.'), ROOM)}: {box[1]}"
        self.desk.change(says, made=made)
        self.tell(words.sentence(says))
        if all(key in self.done for key, _ in self.thing.boxes):
            self._go_on()
        else:
            self._turn(0)

    def opened(self, key: str) -> bool:
        """Open what a box is for that is not ticked; say whether there is something."""
        return False

    def _go_on(self) -> None:
        """Show the next thing; after the last say what comes next."""
        if self.at + 1 < len(self.all):
            self._turn(1)
        else:
            self._turn(0)
            self.tell(self.ended())

    def ended(self) -> str:
        """Say what comes after the last thing."""
        return ""

    def findable(self) -> tuple[Sequence[Line], str | None]:
        done = self.done
        lines = [
            Line(str(at), f"{'[x]' if all(k in done for k, _ in one.boxes) else '[ ]'} {one.find}")
            for at, one in enumerate(self.all)
        ]
        return lines, str(self.at)

    def found(self, key: str) -> None:
        self._turn(int(key) - self.at)

    def action_table(self) -> None:
        self.desk.marked = self.thing.boxes[0][0] if self.thing.boxes else ""
        self.tapewise.go("sew")
