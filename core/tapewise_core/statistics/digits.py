"""What a hand may have meant when it typed a number, digit by digit."""

from __future__ import annotations

from collections.abc import Iterator

Meant = Iterator[tuple[float, int]]
"""Numbers that may have been meant, each with the number of ways in which it could go wrong."""


def swapped(number: float) -> Meant:
    """Yield a number with two neighbours among its whole digits exchanged.

    >>> [meant for meant, _ in swapped(136.5)], list(swapped(88.0))
    ([316.5, 163.5], [])
    """
    whole = int(number + 1e-6)
    digits = str(whole)
    for i in range(len(digits) - 1):
        turned = digits[:i] + digits[i + 1] + digits[i] + digits[i + 2 :]
        if turned != digits and turned[0] != "0":
            yield int(turned) + number - whole, len(digits) - 1


def mistyped_from(number: float) -> Meant:
    """Yield the numbers that become this one when one whole digit is mistyped.

    >>> sorted(meant for meant, _ in mistyped_from(4.5))[:3]
    [1.5, 2.5, 3.5]
    """
    whole = int(number + 1e-6)
    digits = str(whole)
    for i, digit in enumerate(digits):
        for other in "0123456789":
            if other != digit and not (i == 0 and other == "0"):
                turned = digits[:i] + other + digits[i + 1 :]
                yield int(turned) + number - whole, 9 * len(digits)


def short_of_a_digit(number: float) -> Meant:
    """Yield the numbers that become this one when a digit is left out, each once.

    >>> 165.0 in [meant for meant, _ in short_of_a_digit(65.0)]
    True
    >>> 93.5 in [meant for meant, _ in short_of_a_digit(9.5)]
    True
    """
    text = f"{number:.4f}".rstrip("0").rstrip(".")
    places = [i for i in range(len(text) + 1) if "." not in text[:i]]
    longer = {
        text[:i] + digit + text[i:] for i in places for digit in "0123456789"
    }  # fmt: skip
    for meant in sorted(longer):
        if meant[0] != "0":
            yield float(meant), len(meant.replace(".", ""))
