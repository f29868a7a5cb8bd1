"""Rows of a batch worked on by a cluster of machines; what they make is written here."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import Any

from tapewise_core.errors import OptionError
from tapewise_core.tasks.batch_row import Order, Result, drafted_row, put_files

AHEAD = 64
"""How many rows are with the cluster at a time (our choice), so that memory stays flat."""


def results(address: str) -> Callable[[Sequence[Order], str], Iterator[Result]]:
    """Return a way to work on rows on the cluster at an address such as tcp://10.0.0.1:8786.

    Raises OptionError if what it needs is not installed, or nobody answers there.
    """
    try:
        import distributed
    except ModuleNotFoundError:
        raise OptionError(
            "A cluster needs one more package: .venv/bin/pip install '.[cluster]' brings it."
        ) from None
    try:
        client: Any = getattr(distributed, "Client")(address, timeout=10)  # noqa: B009, untyped
    except (OSError, ValueError, TimeoutError):
        raise OptionError(
            f"No cluster answers at {address}; it looks like tcp://HOST:8786."
        ) from None

    def work(asked: Sequence[Order], out: str) -> Iterator[Result]:
        with client:
            for first in range(0, len(asked), AHEAD):
                futures = client.map(drafted_row, asked[first : first + AHEAD], pure=False)
                for future in futures:
                    result, files = future.result()
                    yield put_files(result, files, out)

    return work
