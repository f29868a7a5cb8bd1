"""What the exit codes mean."""

FINE = 0
"""All is well."""

LOOK = 1
"""Done, but a proof fails or is uncertain, or a value is unlikely."""

WRONG = 2
"""Wrong input; nothing was written."""

BROKEN = 3
"""The program itself is at fault."""

STOPPED = 130
"""Stopped from the keyboard, or an answer was no."""

MEANINGS = {
    FINE: "all is well",
    LOOK: "done, but a proof fails or is uncertain, a row failed or a value is unlikely",
    WRONG: "wrong input, or an output that takes no more; nothing was written",
    BROKEN: "the program itself is at fault",
    STOPPED: "stopped from the keyboard, or an answer was no",
}
"""What each code means, for help and the manual page."""
