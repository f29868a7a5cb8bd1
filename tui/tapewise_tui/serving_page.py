"""What the page in the browser has of its own: a typeface from here, and the keyboard at once."""

from __future__ import annotations

import re

FONT = """<style>@font-face { font-family: "Roboto Mono";
src: url("/static/fonts/RobotoMono-VariableFont_wght.ttf"); }</style>"""

KEYS = """<script>const waits = setInterval(() => {
const field = document.querySelector(".xterm-helper-textarea");
if (field) { field.focus(); clearInterval(waits); } }, 50);</script></body>"""
"""Gives the terminal the keyboard, so that nobody has to click into it first."""

LINK = re.compile(r"<link[^>]*https?://[^>]*>")
"""A link to another machine."""
