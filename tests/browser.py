"""A real Chromium for tests: started without a window, told what to do over its own protocol."""

from __future__ import annotations

import asyncio
import base64
import contextlib
import json
import shutil
import subprocess
import time
from collections.abc import AsyncIterator, Callable
from pathlib import Path
from typing import Any

import aiohttp

PROGRAM = next(filter(None, map(shutil.which, ("chromium", "chromium-browser"))), None)
"""Where Chromium is, if it is here."""

_FLAGS = (
    "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
    "--no-first-run", "--disable-background-networking", "--remote-debugging-port=0",
    "--window-size=1100,700",
)  # fmt: skip

_CODES = {"Enter": 13, "Escape": 27, "ArrowDown": 40, "F4": 115, "F9": 120}
"""The numbers of keys that are no letters."""

PATIENCE = 180.0
"""How long something may take to be seen [s]; a browser starts slowly on a busy machine."""


class Tab:
    """One tab: where it goes, what is typed into it, and all that it fetched and received."""

    def __init__(self, socket: Any) -> None:
        self._socket = socket
        self._number = 0
        self._answers: dict[int, asyncio.Future[Any]] = {}
        self.fetched: list[str] = []
        self.received = ""
        self._listening = asyncio.create_task(self._listen())

    async def _listen(self) -> None:
        async for message in self._socket:
            told = json.loads(message.data)
            if "id" in told:
                self._answers.pop(told["id"]).set_result(told.get("result", {}))
            elif told["method"] == "Network.requestWillBeSent":
                self.fetched.append(told["params"]["request"]["url"])
            elif told["method"] == "Network.webSocketFrameReceived":
                self._take(told["params"]["response"])

    def _take(self, frame: dict[str, Any]) -> None:
        data = frame["payloadData"]
        whole = base64.b64decode(data) if frame["opcode"] == 2 else data.encode()
        self.received += whole.decode("utf-8", errors="replace")

    async def ask(self, method: str, **params: object) -> Any:
        """Tell the browser to do something and return its answer."""
        self._number += 1
        answer = self._answers[self._number] = asyncio.get_running_loop().create_future()
        row = {"id": self._number, "method": method, "params": params}
        await self._socket.send_str(json.dumps(row))
        return await asyncio.wait_for(answer, PATIENCE)

    async def go(self, address: str) -> None:
        """Open an address as somebody who looks at the page, and wait until it stands there."""
        await self.ask("Emulation.setFocusEmulationEnabled", enabled=True)
        await self.ask("Page.navigate", url=address)
        origin = "/".join(address.split("/")[:3])
        there = f"location.origin === {origin!r} && document.readyState === 'complete'"
        await self.holds(there, f"for {origin}")

    async def focused(self, selector: str) -> None:
        """Wait until a field of the page has the keyboard."""
        script = f"!!document.activeElement?.matches({selector!r})"
        await self.holds(script, f"for {selector} to have the keyboard")

    async def holds(self, script: str, what: str) -> None:
        """Wait until a script in the page gives true; fails after a while."""
        ends = time.monotonic() + PATIENCE
        while await self.run(script) is not True:
            assert time.monotonic() < ends, f"waited in vain {what}"
            await asyncio.sleep(0.02)

    async def run(self, script: str) -> Any:
        """Run a script in the page and return what it gives, waited for.

        None too where the page goes away meanwhile.
        """
        params = {"expression": script, "awaitPromise": True, "returnByValue": True}
        return (await self.ask("Runtime.evaluate", **params)).get("result", {}).get("value")

    async def press(self, key: str, *, ctrl: bool = False) -> None:
        """Press a key and let it go."""
        code = _CODES.get(key) or ord(key.upper())
        row = {"key": key, "windowsVirtualKeyCode": code, "modifiers": 2 if ctrl else 0}
        text = {"text": key} if len(key) == 1 and not ctrl else {}
        await self.ask("Input.dispatchKeyEvent", type="keyDown", **row, **text)
        await self.ask("Input.dispatchKeyEvent", type="keyUp", **row)

    async def enter(self) -> None:
        """Press Enter and wait until the screen that follows stands still."""
        self.received, length = "", -1
        await self.press("Enter")
        await until(lambda: bool(self.received), "for an answer to Enter")
        while length != len(self.received):
            length = len(self.received)
            await asyncio.sleep(0.3)

    async def type(self, text: str) -> None:
        """Type a text, sign by sign."""
        for sign in text:
            await self.press(sign)

    async def see(self, *words: str) -> None:
        """Wait until all of some words came from the server since the last look."""
        await until(lambda: all(word in self.received for word in words), f"to see {words}")
        self.received = ""


async def until(holds: Callable[[], bool], what: str) -> None:
    """Wait until something holds; fails after a while."""
    ends = time.monotonic() + PATIENCE
    while not holds():
        assert time.monotonic() < ends, f"waited in vain {what}"
        await asyncio.sleep(0.02)


@contextlib.asynccontextmanager
async def tab(folder: Path) -> AsyncIterator[Tab]:
    """A tab of a Chromium that keeps its things in a folder and ends with the test."""
    assert PROGRAM is not None
    command = [PROGRAM, *_FLAGS, f"--user-data-dir={folder}", "about:blank"]
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        port = folder / "DevToolsActivePort"
        await until(lambda: port.exists() and len(port.read_text().split()) == 2, "for Chromium")
        async with aiohttp.ClientSession() as client:
            base = f"http://127.0.0.1:{port.read_text().split()[0]}"
            async with client.get(f"{base}/json") as listed:
                pages = [row for row in await listed.json() if row["type"] == "page"]
            address = pages[0]["webSocketDebuggerUrl"]
            async with client.ws_connect(address, max_msg_size=0) as socket:
                made = Tab(socket)
                for domain in ("Page", "Network", "Runtime"):
                    await made.ask(f"{domain}.enable")
                yield made
    finally:
        process.kill()
        process.wait()
