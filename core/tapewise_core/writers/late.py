"""Libraries imported without what they take along and nobody here asks of them."""

from __future__ import annotations

import sys
from collections.abc import Callable
from importlib import import_module
from types import ModuleType
from typing import Any


class _Late(ModuleType):
    """Stands in for a module while a library is imported: a function that the library takes from
    here imports the module when it is called."""

    def __getattr__(self, name: str) -> Callable[..., Any]:
        if name.startswith("__"):
            raise AttributeError(name)

        def call(*given: Any) -> Any:
            return getattr(import_module(self.__name__), name)(*given)

        return call


def imported(name: str, *late: str) -> ModuleType:
    """Return a module, other modules left for later where they were not imported yet."""
    if name in sys.modules:
        return import_module(name)
    standing = {one: _Late(one) for one in late if one not in sys.modules}
    sys.modules.update(standing)
    try:
        return import_module(name)
    finally:
        for one, stand_in in standing.items():
            if sys.modules.get(one) is stand_in:  # another worker may have done so already
                del sys.modules[one]
