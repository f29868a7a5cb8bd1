"""What ``garments``, ``measure``, ``schema`` and ``serve`` do: nobody's measures are needed."""

from __future__ import annotations

import argparse
from pathlib import Path

from tapewise_core.errors import OptionError
from tapewise_tui.exits import FINE
from tapewise_tui.printing import print_json, say
from tapewise_tui.settings_asked import unit_of


def garments(options: argparse.Namespace) -> int:
    """List garments, or one with its options."""
    from tapewise_core.tasks import shop

    if options.sources:
        return _sources(options)
    if options.formats:
        rows = shop.format_list()
    elif options.name is None:
        rows = shop.garment_list()
    elif options.json:
        print_json(shop.garment_sheet(options.name))
        return FINE
    else:
        say("\n".join(shop.garment_lines(options.name, unit_of(options.unit))))
        return FINE
    if options.json:
        print_json(rows)
    else:
        say("\n".join(f"{row['name']}: {row['says']}" for row in rows))
    return FINE


def _sources(options: argparse.Namespace) -> int:
    """List the publications one garment rests on."""
    from tapewise_core.tasks import shop

    if options.name is None:
        raise OptionError("--sources needs a garment: tapewise garments jersey-top --sources.")
    if options.json:
        print_json(shop.garment_sources(options.name))
    else:
        say("\n".join(shop.source_lines(options.name)))
    return FINE


def measure(options: argparse.Namespace) -> int:
    """Print the measuring sheet, or write it to a file."""
    from tapewise_core.tasks.sheet import measuring_sheet
    from tapewise_core.tasks.sheet_files import sheet_text, write_sheet

    sheet = measuring_sheet(options.garment, unit_of(options.unit))
    if options.out is not None:
        write_sheet(sheet, Path(options.out), replace=options.replace)
        say(f"Wrote {options.out}.")
    else:
        say(sheet_text(sheet))
    return FINE


def schema(options: argparse.Namespace) -> int:
    """Print the JSON schema of what a machine reads or writes."""
    from tapewise_core.tasks.schemas import schema as schema_of

    print_json(schema_of(options.name))
    return FINE


def serve(options: argparse.Namespace) -> int:
    """Show the app in a browser on this machine only, until it is stopped."""
    if not 1 <= options.port <= 65535:
        raise OptionError(f"--port is a number from 1 to 65535, not {options.port}.")
    try:
        from tapewise_tui import serving
    except ModuleNotFoundError:
        raise OptionError(
            "Serving needs one more package: .venv/bin/pip install '.[serve]' brings it."
        ) from None
    try:
        serving.serve(options.port)
    except OSError as error:
        reason = (error.strerror or "the system gives no reason").lower()
        raise OptionError(f"Port {options.port} cannot be used: {reason}.") from None
    return FINE
