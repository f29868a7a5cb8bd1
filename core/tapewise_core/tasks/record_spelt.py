"""A record spelt as JSON: a key a line, an outline or a list of words on one line.

The library spells either all on one line or each number on a line of its own; the latter makes
files twice as long, and spelling them ten times as slow.
"""

from __future__ import annotations

import json
from json.encoder import encode_basestring as _words
from math import isfinite
from typing import Any

_on_one_line = json.JSONEncoder(ensure_ascii=False, allow_nan=False).encode


def spelt(value: object) -> str:
    """Return a value as JSON text; raises ValueError for a number that JSON has not.

    >>> print(spelt({"a": [[1, 2], [3, 4]], "b": [{"c": None}], "d": {}}))
    {
     "a": [[1, 2], [3, 4]],
     "b": [
      {
       "c": null
      }
     ],
     "d": {}
    }
    """
    return _spelt(value, "\n")


def _spelt(value: Any, line: str) -> str:
    """The text of a value; ``line`` begins a line as deep as the value stands.

    Words and numbers by themselves are spelt without the library's encoder, which is made anew
    for each of a thousand.
    """
    if isinstance(value, str):
        return _words(value)
    if type(value) in (int, float) and isfinite(value):
        return repr(value)
    deeper = f"{line} "
    if isinstance(value, dict) and value:
        rows = [f"{_words(key)}: {_spelt(one, deeper)}" for key, one in value.items()]
        return f"{{{deeper}{f',{deeper}'.join(rows)}{line}}}"
    if isinstance(value, list) and dict in map(type, value):
        rows = [_spelt(one, deeper) for one in value]
        return f"[{deeper}{f',{deeper}'.join(rows)}{line}]"
    return _on_one_line(value)
