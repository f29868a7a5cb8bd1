"""What has to be traced from another draft: the points that later steps name, and no others."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from tapewise_core.drafting.curve_steps import Curve, Round
from tapewise_core.drafting.guide_steps import Beside
from tapewise_core.drafting.steps import MeasureOff, Step, Straight, Trace

AT = 0.1
"""A point so near to a traced line's end stands there [mm]."""


def trimmed(step: Trace, rest: Sequence[Step]) -> Trace:
    """Return a tracing of only those points that later steps name, or at which a line ends."""
    source = step.source
    named = {name for later in rest for name in _names(later)}
    ends = [end for path in source.lines.values() for end in (path.start, path.end)]
    kept = [
        name
        for name, at in source.points.items()
        if name in named or any((at - end).length() < AT for end in ends)
    ]
    return replace(step, source=source.only(kept, source.lines))


def _names(step: Step) -> tuple[str, ...]:
    """The points that a step needs on the paper."""
    match step:
        case MeasureOff():
            return (step.start, *step.line)
        case Straight() | Curve():
            return step.names
        case Round():
            return (step.centre, *step.names)
        case Beside():
            return (step.start, step.end)
    return ()
