"""Names that are looked at before anything else is read: a slip in one is told at once."""

from tapewise_core.garments.shelf import refuse_unknown as refuse_unknown
