"""Every error the core raises on purpose; each message is a sentence for a person.

* TapewiseError
  + ReadingError    what was typed is not a usable length or amount
  + ProfileError    a person's file does not say what it must
  + OptionError     a style option is unknown, out of its limits, or disagrees with another
    - PaperError      a pattern does not fit the paper one format has
  + DraftError      the measures cannot be drawn as asked
    - MissingMeasure  one of them is not there
  + FilesError      a file or folder cannot be read or written
    - ForeignFilesError  files stand in the way that the program did not write
"""

from __future__ import annotations


class TapewiseError(Exception):
    """Base of all errors a caller may show to a person.

    ``told`` is the sentence in parts (see :mod:`tapewise_core.text.told`), so that its lengths
    are spelt in the reader's unit; ``str`` spells it in centimetres, for logs.
    """

    def __init__(self, told: str | tuple[object, ...]) -> None:
        super().__init__(told)
        self.told: tuple[object, ...] = (told,) if isinstance(told, str) else told

    def __str__(self) -> str:
        return "".join(map(str, self.told))


class ReadingError(TapewiseError):
    """What was typed is not a usable length or amount."""


class ProfileError(TapewiseError):
    """A person's file does not say what it must; ``faults`` lists all, ``place`` is the file."""

    def __init__(
        self, told: str | tuple[object, ...], faults: tuple[str, ...] = (), place: str = ""
    ) -> None:
        super().__init__(told)
        self.faults = faults or (str(self),)
        self.place = place


class OptionError(TapewiseError):
    """A style option is unknown, out of its limits, or disagrees with another."""


class PaperError(OptionError):
    """A pattern does not fit the paper of one format; others may take it."""


class DraftError(TapewiseError):
    """The measures cannot be drawn as asked."""


class MissingMeasure(DraftError):  # noqa: N818 - it names what is missing, no fault
    """A measure is needed that is not known; ``key`` is its key, ``name`` the trade's name."""

    def __init__(self, key: str, name: str) -> None:
        self.key = key
        super().__init__(f"This garment needs the {name}; measure it first.")


class FilesError(TapewiseError):
    """A file or folder cannot be read or written."""


class ForeignFilesError(FilesError):
    """Files stand where some are to be written, and may be a person's own; ``names`` lists them."""

    def __init__(self, folder: object, names: tuple[str, ...]) -> None:
        self.names = names
        many = f" and {len(names) - 3} more" if len(names) > 3 else ""
        listed = ", ".join(f"“{name}”" for name in names[:3]) + many
        them = "it" if len(names) == 1 else "them"
        super().__init__(
            f"{folder} holds {listed} already, and nothing says that Tapewise wrote {them} there; "
            f"nothing is touched. Name another place, or let {them} be replaced (--replace)."
        )
