"""A garment's options: a set in the order in which they are settled, taken up by name."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from msgspec.structs import replace

from tapewise_core.frozen import Frozen
from tapewise_core.style.option import Option


class Options(Frozen):
    """Options by key, each settled after those above it.

    A garment that shares another's options names the ones it takes (``only``) and the words it
    is drafted for (``narrowed``), so that what is added to the other does not come along. Keys
    that are unknown, or there twice, raise ValueError, and so at import.
    """

    rows: tuple[Option, ...] = ()

    def __post_init__(self) -> None:
        keys = self.keys
        if len(set(keys)) < len(keys):
            twice = sorted({key for key in keys if keys.count(key) > 1})
            raise ValueError(f"options named twice: {', '.join(twice)}")

    @classmethod
    def of(cls, *rows: Option) -> Options:
        """Return a set of options in their order."""
        return cls(rows)

    @property
    def keys(self) -> tuple[str, ...]:
        """The options' keys in their order."""
        return tuple(option.key for option in self.rows)

    def __iter__(self) -> Iterator[Option]:
        return iter(self.rows)

    def __len__(self) -> int:
        return len(self.rows)

    def __contains__(self, key: object) -> bool:
        return key in self.keys

    def __getitem__(self, key: str) -> Option:
        for option in self.rows:
            if option.key == key:
                return option
        raise self._unknown(key)

    def __add__(self, other: Options) -> Options:
        return Options((*self.rows, *other.rows))

    def only(self, *keys: str) -> Options:
        """Return the options of these keys alone, in the order of this set."""
        self._known(*keys)
        return Options(tuple(option for option in self.rows if option.key in keys))

    def changed(self, key: str, **fields: object) -> Options:
        """Return the set with some of one option's fields changed."""
        new = replace(self[key], **fields)
        return Options(tuple(new if option.key == key else option for option in self.rows))

    def narrowed(self, words: Mapping[str, tuple[str, ...]]) -> Options:
        """Return the set with the words of some options kept to those given for them.

        Raises ValueError for a word that is not there to keep.
        """
        narrow = self
        for key, kept in words.items():
            unknown = [word for word in kept if word not in self[key].choices]
            if unknown:
                raise ValueError(f"{key} has no such words: {', '.join(unknown)}")
            narrow = narrow.changed(key, choices=kept)
        return narrow

    def _known(self, *keys: str) -> None:
        unknown = [key for key in keys if key not in self.keys]
        if unknown:
            raise self._unknown(*unknown)

    def _unknown(self, *keys: str) -> ValueError:
        return ValueError(f"no such options: {', '.join(keys)}; there are {self.keys}")
