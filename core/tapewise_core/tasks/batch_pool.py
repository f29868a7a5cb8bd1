"""Rows of a batch worked on in several processes, a few at a time."""

from __future__ import annotations

import os
import signal
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import parent_process
from threading import Thread

from tapewise_core.tasks.batch_row import FAILED, Order, Result, written_row

AHEAD = 4
"""How many rows wait for each process (our choice): enough to keep it busy, no more."""


def results(jobs: int) -> Callable[[Sequence[Order], str], Iterator[Result]]:
    """Return a way to work on rows in so many processes, each row told when it is done."""
    return _here if jobs == 1 else lambda asked, out: _in_processes(jobs, asked, out)


def _here(asked: Sequence[Order], out: str) -> Iterator[Result]:
    for order in asked:
        yield written_row(order, out)


def _in_processes(jobs: int, asked: Sequence[Order], out: str) -> Iterator[Result]:
    waiting, busy = list(reversed(asked)), dict[Future[Result], Order]()
    pool = ProcessPoolExecutor(jobs, initializer=_deaf)
    try:
        while waiting or busy:
            while waiting and len(busy) < jobs * AHEAD:
                order = waiting.pop()
                busy[pool.submit(written_row, order, out)] = order
            ready, _ = wait(busy, return_when=FIRST_COMPLETED)
            for future in ready:
                yield future.result()
                del busy[future]
    except BrokenProcessPool:  # one row took its process down; find out which
        for order in (*busy.values(), *reversed(waiting)):
            yield _alone(order, out)
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


def _alone(order: Order, out: str) -> Result:
    """Work on a row in a process of its own, which it may take down."""
    try:
        with ProcessPoolExecutor(1, initializer=_deaf) as pool:
            return pool.submit(written_row, order, out).result()
    except BrokenProcessPool:
        says = "the process that drafted it was ended"
        return Result(order.row, order.folder, "", FAILED, says=says)


def _deaf() -> None:
    """Ctrl-C is for the process that waits; it stops the others, which end with it."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    Thread(target=_end_with_parent, daemon=True).start()


def _end_with_parent() -> None:
    """A process that waits for rows is told nothing when whoever hands them out is killed."""
    parent = parent_process()
    assert parent is not None, "this runs in a process of the pool"
    parent.join()
    os._exit(1)
