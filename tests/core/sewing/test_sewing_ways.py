"""A new way of making a seam finds its place in the order by itself."""

from __future__ import annotations

from graphlib import CycleError

import pytest
from msgspec.structs import replace
from seams_made_up import SAMPLES
from sewing_styles import drafted

from tapewise_core.drafting.seam import EdgeRun, Seam, SeamKind
from tapewise_core.sewing.machines import read_machines, stitching
from tapewise_core.sewing.neck import BAND
from tapewise_core.sewing.operation import Laid, Lies, Meeting, Operation, Stage
from tapewise_core.sewing.order import operations
from tapewise_core.sewing.sleeves import SLEEVE_FLAT
from tapewise_core.sewing.way import Way, Work


def test_a_new_way_finds_its_place_by_its_edges_alone() -> None:
    """Whatever its stage: a flat band goes before the sides, one in the round after them."""

    def flat(work: Work) -> tuple[Operation, ...]:
        stitch = work.stitching.seam
        return (
            work.do("armhole-band", "Band", ("Sew it.",), Stage.ROUND, meets=work.joins(),
                    lies=Lies.FLAT, stitches=(stitch,), after=("shoulders",)),
        )  # fmt: skip

    def late(work: Work) -> tuple[Operation, ...]:
        stitch = work.stitching.seam
        return (
            work.do("armhole-band", "Band", ("Sew it.",), Stage.INSIDE, meets=work.joins(),
                    stitches=(stitch,)),
        )  # fmt: skip

    pattern = drafted("set-in-top", 0)
    for make, before in ((flat, True), (late, False)):
        seams = tuple(
            replace(one, making=Way("armhole band", make)) if one.making == SLEEVE_FLAT else one
            for one in pattern.seams
        )
        chain = operations(replace(pattern, seams=seams), stitching(read_machines("zigzag")))
        keys = [operation.key for operation in chain]
        assert (keys.index("armhole-band") < keys.index("sides")) is before
        assert keys.index("shoulders") < keys.index("armhole-band")


def test_what_is_sewn_to_a_part_of_an_edge_goes_before_the_edge() -> None:
    """Whatever its stage: a label on the side is on it before the side is closed."""

    def label(work: Work) -> tuple[Operation, ...]:
        part = Meeting((), (EdgeRun("front", ("side",)),), partly=True)
        return (work.do("label", "Label", ("Sew it.",), Stage.WAIST, meets=(part,)),)

    pattern = drafted("set-in-top", 0)
    more = Seam(SeamKind.BELT, pattern.seams[0].first, (), making=Way("label", label))
    labelled = replace(pattern, seams=(*pattern.seams, more))
    keys = [one.key for one in operations(labelled, stitching(read_machines("zigzag")))]
    assert keys.index("label") < keys.index("sides")


def test_operations_that_each_ask_to_be_first_are_refused() -> None:
    """A part that contradicts itself is found by its author, not by who sews."""

    def both(work: Work) -> tuple[Operation, ...]:
        one = work.do("a", "A", ("A.",), Stage.NECK, after=("b",))
        return (one, work.do("b", "B", ("B.",), Stage.NECK))

    band = SAMPLES["band"]
    seams = tuple(replace(one, making=Way("both", both)) for one in band.seams)
    assert BAND in {one.making for one in band.seams}
    with pytest.raises(CycleError):
        operations(replace(band, seams=seams), stitching(read_machines("zigzag")))


def test_an_edge_sewn_to_its_own_copy_is_finished_once() -> None:
    """A meeting of a run with itself, as a pocket's two bags, counts its edge one time."""
    runs = (EdgeRun("pocket", ("top",)),)
    assert Meeting(runs, runs).finished == runs
    assert Meeting(runs, (), Laid.TURNED).finished == runs
