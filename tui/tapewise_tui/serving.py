"""The app in a browser on this machine, for whoever has its address and nobody else.

The address holds a token made anew each time. What comes from another page, another machine or
without the token gets nothing, and the page itself fetches nothing from elsewhere.
"""

from __future__ import annotations

import asyncio
import contextlib
import hmac
import os
import re
import secrets
import shlex
import signal
import sys
from collections.abc import Awaitable, Callable
from typing import Any

from aiohttp import web
from aiohttp.http_exceptions import HttpProcessingError
from textual_serve.app_service import AppService
from textual_serve.server import Server

from tapewise_tui import trouble
from tapewise_tui.serving_page import FONT, KEYS, LINK

MOST_WINDOWS = 4
"""How many windows may be open at a time (our choice): each is a process of its own."""

_LAST_SECONDS = 0.25
"""How long open windows may take when the server ends [s] (our choice)."""

_PATIENCE = 5.0
"""How long the app may take to leave when its window is closed [s] (our choice)."""

Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]


class LockedServer(Server):
    """A server for this machine alone; ``token`` opens it."""

    def __init__(self, port: int, token: str = "") -> None:
        command = shlex.join([sys.executable, "-m", "tapewise_tui"])
        if os.name == "posix":  # the app is the process then, not a shell around it
            command = f"exec {command}"
        super().__init__(command, host="127.0.0.1", port=port, title="Tapewise")
        self.token = token or secrets.token_urlsafe(24)
        self.ending = False
        self.windows: set[asyncio.Task[object]] = set()

    @property
    def address(self) -> str:
        """What to open in the browser."""
        return f"{self.public_url}/?token={self.token}"

    @property
    def _cookie(self) -> str:
        return f"tapewise-{self.port}"

    async def make_app(self) -> web.Application:
        """Return the application, every request guarded."""
        app = await self._make_app()
        app.middlewares.append(self._guarded())
        return app

    async def runner(self) -> web.AppRunner:
        """Return what runs the application until it is cleaned up."""
        told = trouble.logger(HttpProcessingError)  # what is no HTTP is answered as such
        return web.AppRunner(await self.make_app(), shutdown_timeout=_LAST_SECONDS, logger=told)

    async def on_startup(self, app: web.Application) -> None:
        """Say nothing yet; nobody is listening."""

    async def handle_websocket(self, request: web.Request) -> web.WebSocketResponse:
        """Run the app for one window, and end its process with it."""
        window = web.WebSocketResponse(heartbeat=15)
        await window.prepare(request)
        service = AppService(
            self.command,
            write_bytes=window.send_bytes,
            write_str=window.send_str,
            close=lambda: _closed(window),
            download_manager=self.download_manager,
        )
        try:
            await service.start(_size(request, "width", 80), _size(request, "height", 24))
            await self._process_messages(window, service)
        finally:
            await self._end(service)
        return window

    async def _end(self, service: AppService) -> None:
        """Ask the app to leave; one that does not is ended, for all that was typed is kept."""
        with contextlib.suppress(TimeoutError, ConnectionError, asyncio.CancelledError):
            await asyncio.wait_for(service.stop(), _LAST_SECONDS if self.ending else _PATIENCE)
        process = service._process
        if process is not None and process.returncode is None:
            process.kill()
            await process.wait()

    async def on_shutdown(self, app: web.Application) -> None:
        """End every window at once."""
        self.ending = True
        for window in self.windows:
            window.cancel()

    def _guarded(self) -> Any:  # aiohttp names no public type for it
        @web.middleware
        async def guard(request: web.Request, handler: Handler) -> web.StreamResponse:
            if not self._from_here(request):
                raise web.HTTPForbidden(text="This page is for this machine alone.")
            if not self._known(request):
                raise web.HTTPForbidden(text="Open the address that “tapewise serve” printed.")
            if request.path == "/ws":
                return await self._window(request, handler)
            return self._private(request, await handler(request))

        return guard

    def _from_here(self, request: web.Request) -> bool:
        """Neither another name for this machine nor another page may ask."""
        hosts = {f"{name}:{self.port}" for name in ("127.0.0.1", "localhost")}
        host, origin = request.headers.get("Host", ""), request.headers.get("Origin")
        if host not in hosts:
            return False
        if origin is None:
            return request.path != "/ws"  # a browser always says whence a window is opened
        return origin in {f"http://{name}" for name in hosts}

    def _known(self, request: web.Request) -> bool:
        given = request.query.get("token") or request.cookies.get(self._cookie) or ""
        return hmac.compare_digest(given.encode(), self.token.encode())

    async def _window(self, request: web.Request, handler: Handler) -> web.StreamResponse:
        if len(self.windows) >= MOST_WINDOWS:
            raise web.HTTPServiceUnavailable(text=f"{MOST_WINDOWS} windows are open; close one.")
        task = asyncio.current_task()
        assert task is not None
        self.windows.add(task)
        try:
            return await handler(request)
        finally:
            self.windows.discard(task)

    def _private(self, request: web.Request, response: web.StreamResponse) -> web.StreamResponse:
        """Keep the token in a cookie, the typeface at home and other pages out."""
        if request.path == "/" and isinstance(response, web.Response) and response.text:
            text = LINK.sub(self._at_home, response.text)
            response.text = text.replace("</body>", KEYS)
            response.set_cookie(self._cookie, self.token, httponly=True, samesite="Strict")
        if not response.prepared:
            response.headers.update(_HEADERS | {"Content-Security-Policy": self._policy()})
        return response

    def _at_home(self, link: re.Match[str]) -> str:
        """A link to another machine, which asks for a typeface, is answered from here."""
        return link[0] if self.public_url in link[0] else FONT

    def _policy(self) -> str:
        sockets = " ".join(f"ws://{name}:{self.port}" for name in ("127.0.0.1", "localhost"))
        inline = "'self' 'unsafe-inline'"
        return (
            f"default-src 'self' data:; script-src {inline}; style-src {inline}; "
            f"connect-src 'self' {sockets}; frame-ancestors 'none'"
        )


_HEADERS = {"Referrer-Policy": "no-referrer", "Cache-Control": "no-store"}


async def _closed(window: web.WebSocketResponse) -> None:
    await window.close()


def _size(request: web.Request, name: str, usual: int) -> int:
    """A side of the window in characters; nothing that is none, or beyond any screen."""
    given = request.query.get(name, "")
    return min(int(given), 999) if given.isascii() and given.isdigit() else usual


def serve(port: int) -> None:
    """Serve until it is stopped; every window ends with it, within a second."""
    asyncio.run(_serve(LockedServer(port)))


async def _serve(server: LockedServer) -> None:
    stopped = asyncio.Event()
    for name in (signal.SIGINT, signal.SIGTERM):
        with contextlib.suppress(NotImplementedError):
            asyncio.get_running_loop().add_signal_handler(name, stopped.set)
    runner = await server.runner()
    await runner.setup()
    try:
        await web.TCPSite(runner, server.host, server.port).start()
        print(f"Tapewise is at {server.address}\nCtrl+C ends it.", flush=True)
        await stopped.wait()
    finally:
        await runner.cleanup()
