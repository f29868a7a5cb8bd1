"""The app in a real browser: from nothing to written files, and what another page gets."""

from __future__ import annotations

import asyncio
import contextlib
import json
import re
import signal
import subprocess
import sys
from collections.abc import AsyncIterator, Iterator
from pathlib import Path
from typing import Any

import pytest

web = pytest.importorskip("aiohttp.web", reason="the extra “serve” is not installed")
pytest.importorskip("textual_serve", reason="the extra “serve” is not installed")

import browser  # noqa: E402

from tapewise_core.profiles import store  # noqa: E402

pytestmark = pytest.mark.skipif(
    browser.PROGRAM is None, reason="no Chromium is here; Debian's package “chromium” brings one"
)


@pytest.fixture
def address(tmp_path: Path) -> Iterator[str]:
    """The address of a server started as a person starts it, its port chosen for it."""
    import socket

    with socket.socket() as tried:
        tried.bind(("127.0.0.1", 0))
        port = tried.getsockname()[1]
    command = [sys.executable, "-m", "tapewise_tui", "serve", "--port", str(port)]
    served = subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=tmp_path)
    assert served.stdout is not None
    yield re.findall(r"http\S+", served.stdout.readline())[0]
    served.send_signal(signal.SIGINT)
    assert served.wait(10) == 0


def test_a_whole_path_to_written_files(address: str, tmp_path: Path) -> None:
    """A new person, three measures, estimates for the rest; nothing is fetched from elsewhere."""

    async def steps() -> None:
        async with browser.tab(tmp_path / "browser") as tab:
            await tab.go(address)
            await tab.see("Person", "New")
            await tab.focused(".xterm-helper-textarea")
            await tab.press("p", ctrl=True)  # a browser keeps Ctrl+N to itself
            await tab.type("new")
            await tab.see("Begin with somebody new")
            await tab.enter()
            await tab.type("Ada Quist")
            for _ in range(4):
                await tab.enter()
            await tab.see("What is made for Ada Quist?", "grown-on sleeves")
            await tab.enter()
            await tab.see("Before the first measure")
            await tab.enter()
            await measured(tab)
            await tab.press("F9")
            await tab.press("6")
            await tab.see("Always written")
            await tab.press("s", ctrl=True)
            record = tmp_path / "ada-quist-jersey-top" / "draft.json"
            await browser.until(record.exists, "for the files")
            own = address.partition("?")[0]
            elsewhere = [one for one in tab.fetched if not one.startswith((own, "data:", "blob:"))]
            assert elsewhere == []

    asyncio.run(steps())
    told = json.loads((tmp_path / "ada-quist-jersey-top" / "draft.json").read_text("utf-8"))
    assert told["measures"]["head"] == {"value": 56, "origin": "measured", "how": "measured"}
    assert (tmp_path / "ada-quist-jersey-top" / "pattern.svg").stat().st_size > 1000


async def measured(tab: browser.Tab) -> None:
    """Type the first measures, two readings each, once their page stands."""

    def kept(key: str) -> int:
        found = store.load("Ada Quist").measures.get(key)
        return len(found.readings) if found else 0

    for key, reading in MEASURED.items():
        for number in (1, 2):
            await tab.type(reading)
            await tab.enter()
            await browser.until(
                lambda key=key, number=number: kept(key) == number, f"for the {key}, {number}"
            )


MEASURED = {"height": "169", "head": "56", "neck": "36"}
"""What is asked first, in its order [cm]."""

FOREIGN = """
(async () => {
  const told = {};
  const address = "ADDRESS", base = new URL(address).origin;
  for (const [name, asked] of [["page", address], ["root", base + "/"]]) {
    try { told[name] = await (await fetch(asked, {credentials: "include"})).text(); }
    catch (fault) { told[name] = "refused"; }
  }
  told.window = await new Promise(done => {
    const socket = new WebSocket(base.replace("http", "ws") + "/ws?width=80&height=24");
    socket.onmessage = () => done("a window");
    socket.onerror = socket.onclose = () => done("refused");
  });
  const frame = document.createElement("iframe");
  frame.src = address;
  document.body.append(frame);
  await new Promise(done => { frame.onload = done; setTimeout(done, 3000); });
  try { told.frame = frame.contentDocument ? "read" : "closed"; }
  catch (fault) { told.frame = "closed"; }
  return told;
})()
"""


@contextlib.asynccontextmanager
async def foreign() -> AsyncIterator[str]:
    """Another page on this machine, at another port."""

    async def page(request: object) -> Any:
        return web.Response(text="<body>A page</body>", content_type="text/html")

    app = web.Application()
    app.router.add_get("/", page)
    runner = web.AppRunner(app)
    await runner.setup()
    site = web.TCPSite(runner, "127.0.0.1", 0)
    await site.start()
    try:
        yield f"http://127.0.0.1:{runner.addresses[0][1]}/"
    finally:
        await runner.cleanup()


def test_a_foreign_page_in_the_same_browser_gets_nothing(address: str, tmp_path: Path) -> None:
    """Not with the cookie that the browser holds, not even where it knows the whole address."""

    async def steps() -> None:
        async with browser.tab(tmp_path / "browser") as tab, foreign() as elsewhere:
            await tab.go(address)
            await tab.see("Person")
            await tab.go(elsewhere)
            assert await tab.run("document.body.textContent") == "A page"
            told = await tab.run(FOREIGN.replace("ADDRESS", address))
            assert told == {
                "page": "refused", "root": "refused", "window": "refused", "frame": "closed",
            }  # fmt: skip

    asyncio.run(steps())
