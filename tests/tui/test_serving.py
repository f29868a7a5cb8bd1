"""The app in a browser: for whoever has its address, and for nobody else."""

from __future__ import annotations

import asyncio
import contextlib
import json
import re
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any

import pytest

aiohttp = pytest.importorskip("aiohttp", reason="the extra “serve” is not installed")
pytest.importorskip("textual_serve", reason="the extra “serve” is not installed")

from tapewise_tui.serving import MOST_WINDOWS, LockedServer  # noqa: E402


def free_port() -> int:
    """A port nobody listens on."""
    with socket.socket() as tried:
        tried.bind(("127.0.0.1", 0))
        return int(tried.getsockname()[1])


Ask = Callable[..., Awaitable[Any]]


def served(steps: Callable[[LockedServer, Any], Awaitable[None]]) -> None:
    """Run steps with a client beside a server; its windows wait for nothing."""

    async def waiting(request: Any) -> Any:
        window = aiohttp.web.WebSocketResponse()
        await window.prepare(request)
        async for _ in window:
            pass
        return window

    async def whole() -> None:
        server = LockedServer(free_port())
        server.handle_websocket = waiting
        runner = await server.runner()
        await runner.setup()
        await aiohttp.web.TCPSite(runner, server.host, server.port).start()
        try:
            jar = aiohttp.CookieJar(unsafe=True)
            async with aiohttp.ClientSession(cookie_jar=jar) as client:
                await steps(server, client)
        finally:
            await runner.cleanup()

    asyncio.run(whole())


def test_the_address_opens_the_page_and_the_page_opens_a_window() -> None:
    """The token is in the address once; a cookie that no script reads has it from then on."""

    async def steps(server: LockedServer, client: Any) -> None:
        page = await client.get(server.address)
        assert page.status == 200
        assert "httponly" in page.headers["Set-Cookie"].lower()
        assert "samesite=strict" in page.headers["Set-Cookie"].lower()
        origin = {"Origin": server.public_url}
        window = await client.ws_connect(f"{server.public_url}/ws", headers=origin)
        assert not window.closed
        await window.close()

    served(steps)


def test_the_page_fetches_nothing_from_elsewhere() -> None:
    """Every address in it is its own, the typeface too; the browser is told to hold it to that."""

    async def steps(server: LockedServer, client: Any) -> None:
        page = await client.get(server.address)
        text = await page.text()
        found = re.findall(r"(?:src|href)=\"((?:https?:)?//[^\"]+)", text)
        assert all(one.startswith(server.public_url) for one in found)
        assert "default-src 'self'" in page.headers["Content-Security-Policy"]
        (font,) = re.findall(r"url\(\"(/static/fonts/[^\"]+)", text)
        assert (await client.get(server.public_url + font)).status == 200

    served(steps)


STRANGERS: dict[str, tuple[str, dict[str, str]]] = {
    "without the token": ("/", {}),
    "with a wrong token": ("/?token=x", {}),
    "the files beside the page": ("/static/js/textual.js", {}),
    "under another name for this machine": ("/?token={token}", {"Host": "evil.example"}),
    "from another page": ("/?token={token}", {"Origin": "http://evil.example"}),
    "from a page of no origin": ("/?token={token}", {"Origin": "null"}),
    "from another port": ("/?token={token}", {"Origin": "http://127.0.0.1:1"}),
}


@pytest.mark.parametrize("who", STRANGERS)
def test_a_stranger_gets_nothing(who: str) -> None:
    """A refusal that says nothing of any person."""
    path, headers = STRANGERS[who]

    async def steps(server: LockedServer, client: Any) -> None:
        asked = server.public_url + path.format(token=server.token)
        answer = await client.get(asked, headers=headers)
        assert answer.status == 403
        assert "Set-Cookie" not in answer.headers
        assert server.token not in await answer.text()

    served(steps)


MALFORMED = (
    b"GET / HTTP/1.1\r\nNo colon here\r\n\r\n",
    b"GET / HTTP/1.1\r\nContent-Length: x\r\n\r\n",
    b"GET / HTTP/9\r\n\r\n",
    b"\x16\x03\x01\x02\x00\x01",
)


@pytest.mark.parametrize("sent", MALFORMED)
def test_what_is_no_http_is_refused_without_a_word_on_the_console(
    sent: bytes, capfd: pytest.CaptureFixture[str]
) -> None:
    """Whoever sends it is told; whoever started the server reads no traceback."""

    async def steps(server: LockedServer, client: Any) -> None:
        answer, ask = await asyncio.open_connection(server.host, server.port)
        ask.write(sent)
        assert b" 400 " in await answer.readline()
        ask.close()

    served(steps)
    assert capfd.readouterr() == ("", "")


def test_a_fault_of_the_program_is_a_sentence_on_the_console(
    capfd: pytest.CaptureFixture[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its traceback goes to the file for whoever mends it."""
    monkeypatch.setenv("TAPEWISE_DATA", str(tmp_path))

    async def steps(server: LockedServer, client: Any) -> None:
        monkeypatch.setattr(server, "_known", lambda request: 1 / 0)
        assert (await client.get(server.address)).status == 500

    served(steps)
    (line,) = capfd.readouterr().err.splitlines()
    assert "Something went wrong inside the program (ZeroDivisionError)" in line
    assert "ZeroDivisionError" in (tmp_path / "trouble.txt").read_text()


@pytest.mark.parametrize("origin", [None, "http://evil.example", "null"])
def test_another_page_opens_no_window_even_with_the_cookie(origin: str | None) -> None:
    """Whatever is open in the same browser."""

    async def steps(server: LockedServer, client: Any) -> None:
        await client.get(server.address)
        headers = {"Origin": origin} if origin else {}
        with pytest.raises(aiohttp.WSServerHandshakeError) as refused:
            await client.ws_connect(f"{server.public_url}/ws", headers=headers)
        assert refused.value.status == 403

    served(steps)


def test_there_are_only_so_many_windows() -> None:
    """One more is refused; one closed makes room."""

    async def steps(server: LockedServer, client: Any) -> None:
        await client.get(server.address)

        async def opened() -> Any:
            address = f"{server.public_url}/ws"
            return await client.ws_connect(address, headers={"Origin": server.public_url})

        windows = [await opened() for _ in range(MOST_WINDOWS)]
        with pytest.raises(aiohttp.WSServerHandshakeError) as refused:
            await opened()
        assert refused.value.status == 503
        await windows[0].close()
        ends = time.monotonic() + 10
        while True:
            with contextlib.suppress(aiohttp.WSServerHandshakeError):
                await opened()
                break
            assert time.monotonic() < ends, "the window that was closed made no room"
            await asyncio.sleep(0.02)

    served(steps)


def children(pid: int) -> list[int]:
    """The processes a process started."""
    place = Path(f"/proc/{pid}/task/{pid}/children")
    return [int(word) for word in place.read_text().split()]


@pytest.mark.skipif(not Path("/proc/self/task").exists(), reason="no /proc to look for them in")
def test_its_windows_end_with_it_within_a_second() -> None:
    """Ctrl-C takes the app in a window with it, and ends well itself."""
    port = free_port()
    command = [sys.executable, "-m", "tapewise_tui", "serve", "--port", str(port)]
    served_here = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    assert served_here.stdout is not None
    address = re.findall(r"http\S+", served_here.stdout.readline())[0]

    async def look() -> float:
        async with aiohttp.ClientSession(cookie_jar=aiohttp.CookieJar(unsafe=True)) as client:
            await client.get(address)
            base = address.partition("/?")[0]
            window = await client.ws_connect(f"{base}/ws", headers={"Origin": base})
            await window.receive(timeout=30)
            inner = children(served_here.pid)
            served_here.send_signal(signal.SIGINT)
            begun = time.monotonic()
            while any(Path(f"/proc/{pid}").exists() for pid in inner):
                assert time.monotonic() - begun < 10
                await asyncio.sleep(0.01)
            passed = time.monotonic() - begun
            await asyncio.to_thread(served_here.wait, 10)
            assert inner
            return passed

    try:
        assert asyncio.run(look()) < 1.0
    finally:
        served_here.kill()
    assert served_here.returncode == 0


KEYS = {"Enter": "\r", "F9": "\x1b[20~", "Ctrl+S": "\x13"}
"""Keys as a terminal sends them."""


def test_a_window_leads_from_nothing_to_written_files(tmp_path: Path) -> None:
    """An example person is opened and her top is written, through the socket alone."""
    port = free_port()
    command = [sys.executable, "-m", "tapewise_tui", "serve", "--port", str(port)]
    here = subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=tmp_path)
    assert here.stdout is not None
    address = re.findall(r"http\S+", here.stdout.readline())[0]

    async def path() -> None:
        async with aiohttp.ClientSession(cookie_jar=aiohttp.CookieJar(unsafe=True)) as client:
            await client.get(address)
            base = address.partition("/?")[0]
            size = "width=100&height=30"
            window = await client.ws_connect(f"{base}/ws?{size}", headers={"Origin": base})

            async def see(words: str) -> None:
                seen = ""
                while words not in seen:
                    told = await window.receive(timeout=120)
                    whole = told.data if isinstance(told.data, bytes) else str(told.data).encode()
                    seen += whole.decode("utf-8", errors="replace")

            await see("Adaeze Nwosu")
            for key, words in (("Enter", "are there"), ("F9", "unlikely"), ("6", "the printer")):
                await window.send_json(["stdin", KEYS.get(key, key)])
                await see(words)
            written = tmp_path / "adaeze-nwosu-jersey-top" / "draft.json"
            while not written.exists():
                # a key pressed before the page stands does nothing: press it again
                await window.send_json(["stdin", KEYS["Ctrl+S"]])
                again = time.monotonic() + 3
                while not written.exists() and time.monotonic() < again:
                    await asyncio.sleep(0.05)

    try:
        asyncio.run(asyncio.wait_for(path(), 240))
    finally:
        here.send_signal(signal.SIGINT)
        here.wait(10)
    record = json.loads((tmp_path / "adaeze-nwosu-jersey-top" / "draft.json").read_text("utf-8"))
    assert record["person"] == "Adaeze Nwosu"
