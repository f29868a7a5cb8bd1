"""What every value that never changes is made of."""

from __future__ import annotations

from typing import dataclass_transform

from msgspec import Struct, field


@dataclass_transform(frozen_default=True, field_specifiers=(field,))
class Frozen(Struct, frozen=True):
    """A value of named fields that never changes: compared, hashed and shown by all of them.

    msgspec's, in C: a class is made in a tenth of the time that the standard library's frozen
    dataclass takes, and a value in a quarter. Whatever keeps something it has worked out
    (``cached_property``) says ``dict=True``.
    """
