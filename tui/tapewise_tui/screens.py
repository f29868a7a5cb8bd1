"""Pictures of the real screens, as SVG: ``python -m tapewise_tui.screens tui/pictures``.

Each scene is keys pressed in the app with invented people in a data folder of
its own, on a fixed day, so that a picture changes only if the app does.
"""

from __future__ import annotations

import asyncio
import os
import re
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

from textual.pilot import Pilot

from tapewise_core.frozen import Frozen
from tapewise_core.measures.body import Reference, WaistSite
from tapewise_core.profiles.profile import Profile
from tapewise_core.tasks import settings, work
from tapewise_core.tasks.people import store
from tapewise_tui.app import TapewiseApp
from tapewise_tui.desk import Desk
from tapewise_tui.widgets.live import LivePattern

TODAY = date(2026, 11, 2)
SIZES = ((80, 24), (120, 40))


class Scene(Frozen):
    """One screen: the page that Bea Larkin stopped at, and keys pressed once it is open."""

    name: str
    page: str
    keys: tuple[str, ...] = ()


SCENES = (
    Scene("start", ""),
    Scene("person", "", ("ctrl+n",)),
    Scene("before", "", ("up", "enter")),
    Scene("measure", "measure"),
    Scene("measure-again", "measure", ("9", "4", "enter")),
    Scene("measure-refused", "measure", ("x", "enter")),
    Scene("list", "measure", ("f5",)),
    Scene("table", "table"),
    Scene("table-slip", "table", ("7", "7", "enter", "9", "4", "enter", "3", "0")),
    Scene("review", "review"),
    Scene("review-mend", "review", ("7", "7")),
    Scene("garment", "garment"),
    Scene("garment-piece", "garment", ("ctrl+g", "ctrl+g")),
    Scene("fold-test", "garment", ("t", "r", "enter", "1", "5")),
    Scene("machines", "garment", ("m", "enter")),
    Scene("prove", "prove"),
    Scene("save", "save"),
    Scene("sew", "sew"),
    Scene("cut", "cut"),
    Scene("stitch", "stitch", ("right",)),
    Scene("lay", "cut", ("ctrl+r",)),
    Scene("steps", "garment", ("f12", "right", "right")),
    Scene("pages", "measure", ("f9",)),
    Scene("help", "measure", ("f1",)),
)


def people(page: str) -> None:
    """Put two invented people on file: one new, one with gaps, and a slip until it is reviewed."""
    store.save(Profile.of("Abel Finch"))
    bea = Profile.of("Bea Larkin", reference=Reference.WOMEN, waist_site=WaistSite.MIDWAY)
    slip = {"waist": 30.5} if page == "review" else {}
    for key, cm in (_BEA | slip).items():
        bea = bea.with_value(key, cm, readings=(cm,), taken=date(2026, 10, 30))
    store.save(bea)
    made = work.Work(
        "Bea Larkin",
        page=page or "measure",
        measure="bust",
        folder="bea-top",
        formats=("pdf-a4", "pdf-reading"),
        when="2026-11-01",
    )
    made = made.with_option("neck-depth", "11 cm")
    work.save(made.with_option("stretch", "15") if page == "prove" else made)


_BEA = {
    "head": 55.5, "neck": 36.0, "high_bust": 90.0, "under_bust": 79.0, "waist": 77.5,
    "hip": 101.0, "shoulder_length": 13.5, "upper_arm": 29.5, "back_waist_length": 41.5,
    "front_waist_length": 44.5, "hip_depth": 20.0, "height": 169.0,
}  # fmt: skip


@contextmanager
def own_data(page: str) -> Iterator[None]:
    """Keep a scene's people in a folder that goes away, and the person's own data out of it."""
    before = os.environ.get(store.DATA_VARIABLE)
    with tempfile.TemporaryDirectory() as folder:
        os.environ[store.DATA_VARIABLE] = folder
        try:
            people(page)
            settings.keep(settings.Settings(machines="overlocker, coverstitch"))
            yield
        finally:
            os.environ.pop(store.DATA_VARIABLE)
            if before is not None:
                os.environ[store.DATA_VARIABLE] = before


class Shown(Frozen):
    """What a scene came to: the screen as text and as SVG."""

    text: str
    svg: str


async def play(scene: Scene, size: tuple[int, int], look: str = "chalk") -> Shown:
    """Run the app to a scene and return its screen."""
    app = TapewiseApp(Desk(TODAY))
    app.theme = look
    LivePattern.REST = 0.0  # so that no scene depends on how quick the machine is
    async with app.run_test(size=size) as pilot:
        await _settle(app, pilot)
        for key in (*(("enter",) if scene.page else ()), *scene.keys):
            await pilot.press(key)
            await _settle(app, pilot)
        return Shown(text(app), _portable(app.export_screenshot(title="Tapewise")))


async def _settle(app: TapewiseApp, pilot: Pilot[None]) -> None:
    for _ in range(2):
        await app.workers.wait_for_complete()
        await pilot.pause()
    for covered in app.screen_stack[:-1]:  # else laid out only where work ended before a question
        covered._refresh_layout()
        await pilot.pause()


def text(app: TapewiseApp) -> str:
    """The screen as it is read, trailing blanks cut."""
    lines = (strip.text.rstrip() for strip in app.screen._compositor.render_strips())
    return "\n".join(lines) + "\n"


def _portable(svg: str) -> str:
    """A picture that fetches no letters from elsewhere and is the same each time."""
    svg = re.sub(r"@font-face \{.*?\}", "", svg, flags=re.DOTALL)
    svg = re.sub(r"<!--.*?-->", "", svg, flags=re.DOTALL)
    svg = re.sub(r"terminal-\d+-", "tapewise-", svg)
    return re.sub(r"font-family: [^;]*;", "font-family: monospace;", svg)


PICTURES = (
    ("measure", SIZES[0], "chalk"),
    ("table", SIZES[1], "chalk"),
    ("review", SIZES[0], "chalk"),
    ("garment-piece", SIZES[1], "chalk"),
    ("prove", SIZES[0], "paper"),
    ("sew", SIZES[0], "chalk"),
    ("stitch", SIZES[0], "chalk"),
)
"""The screens that the README shows: scene, size and look."""


def main(arguments: list[str]) -> int:
    """Write the README's pictures; with ``--all`` every scene in both sizes."""
    every = "--all" in arguments
    folders = [word for word in arguments if word != "--all"]
    if len(folders) != 1:
        print("Say which folder to write into: python -m tapewise_tui.screens [--all] FOLDER")
        return 2
    folder = Path(folders[0])
    folder.mkdir(parents=True, exist_ok=True)
    wanted = [(s.name, size, "chalk") for s in SCENES for size in SIZES] if every else PICTURES
    for name, size, look in wanted:
        _write(folder / f"{name}-{size[0]}x{size[1]}.svg", name, size, look)
    return 0


def _write(place: Path, name: str, size: tuple[int, int], look: str) -> None:
    scene = next(scene for scene in SCENES if scene.name == name)
    with own_data(scene.page):
        shown = asyncio.run(play(scene, size, look))
    place.write_text(shown.svg, "utf-8")
    print(place)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
