"""Words that stay data until they are read: a sentence in parts, spelt once for its reader.

Whatever the core says (steps, remarks, proofs, errors, sewing) is a ``Told``: plain words with
lengths, rough amounts, options and lines between them. Nothing that has been spelt is read
again; a ``Reader`` at the edge spells a sentence in one unit and one manner.
"""

from __future__ import annotations

import re
import string
from collections.abc import Iterable

from tapewise_core.frozen import Frozen
from tapewise_core.text.amounts import Amount
from tapewise_core.units import Length, Unit


class OptionKey(Frozen):
    """An option, named in a sentence by its key."""

    key: str

    def __str__(self) -> str:
        return self.key


class LineName(Frozen):
    """A line, edge or piece of the pattern by its name in the record, such as ``sleeve_hem``.

    >>> str(LineName("sleeve_hem_2")), str(LineName("side_4")), str(LineName("split"))
    ('sleeve hem', 'side', 'slit')
    """

    name: str

    def __str__(self) -> str:
        name = _NUMBERED.sub("", self.name)
        return CALLED.get(name, name.replace("_", " "))


_NUMBERED = re.compile(r"_[2-9]$")
"""What tells edges of one name apart on a piece."""

CALLED = {"split": "slit", "outer": "outer edge"}
"""Lines whose names in the record are not what people call them."""


Part = str | Length | OptionKey | LineName | Amount
"""What a sentence is made of."""

Told = tuple[Part, ...]
"""A sentence or several, not yet spelt."""


def said(template: str, *parts: Part | Told) -> Told:
    """Return a sentence with its parts put where the braces stand.

    Raises ValueError unless there are as many braces as parts.

    >>> from tapewise_core.text.amounts import About
    >>> said("The {} is {} round.", LineName("sleeve_hem"), About(400.0, 420.0))
    ('The ', LineName(name='sleeve_hem'), ' is ', About(low=400.0, high=420.0), ' round.')
    """
    rest = list(parts)
    found: list[Part] = []
    for words, field, _, _ in string.Formatter().parse(template):
        found += [words] if words else []
        if field is not None:
            if field or not rest:
                raise ValueError(f"{template!r} has more braces than parts, or named ones")
            part = rest.pop(0)
            found += part if isinstance(part, tuple) else (part,)
    if rest:
        raise ValueError(f"{template!r} leaves out {rest!r}")
    return tuple(found)


def ended(sentence: Told) -> Told:
    """Return a sentence with its full stop, where what it ends with brought none.

    >>> ended(said("The hem is bent")), ended(("Done.",))
    (('The hem is bent', '.'), ('Done.',))
    """
    return sentence if str(sentence[-1]).endswith(".") else (*sentence, ".")


def capital(sentence: Told) -> Told:
    """Return a sentence that begins with a capital.

    >>> capital(said("after the fitting"))
    ('After the fitting',)
    """
    first, *rest = sentence or ("",)
    begun = first[:1].upper() + first[1:] if isinstance(first, str) else first
    return (begun, *rest)


def joined(sentences: Iterable[Told], between: str = " ") -> Told:
    """Return several sentences as one, with words between them; empty ones are left out."""
    whole: Told = ()
    for sentence in sentences:
        if sentence:
            whole = (*whole, between, *sentence) if whole else sentence
    return whole


class Reader(Frozen):
    """Who reads: the unit lengths are told in, and whether options are told as one types them.

    >>> from tapewise_core.text.amounts import About, OnPaper, Span
    >>> from tapewise_core.units import mm
    >>> Reader(Unit.IN).spell(said("set {} to {}", OptionKey("neck-depth"), mm(101.6)))
    'set neck-depth to 4 in'
    >>> Reader(Unit.IN, plain=True).spell(said("{} for {}", OptionKey("hem-rise"), About(20)))
    'hem rise for 3/4 in'
    >>> Reader(Unit.IN).spell(said("{}, on paper up to {}", Span(620, 1900), OnPaper(95, "down")))
    '24 3/8 to 74 3/4 in, on paper up to 3 11/16 in'
    """

    unit: Unit
    plain: bool = False

    def spell(self, told: str | tuple[object, ...]) -> str:
        """Spell a sentence, or pass plain words; raises TypeError for what is no part of one."""
        parts = (told,) if isinstance(told, str) else told
        return "".join(self._part(part) for part in parts)

    def _part(self, part: object) -> str:
        match part:
            case str():
                return part
            case Length() | Amount():
                return part.tell(self.unit)
            case OptionKey():
                return part.key.replace("-", " ") if self.plain else part.key
            case LineName():
                return str(part)
        raise TypeError(f"{part!r} is no part of a sentence")
