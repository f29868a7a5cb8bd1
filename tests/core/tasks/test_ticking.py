"""What a new draft takes over from the one before: what is still true, and nothing else."""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from making import DAY, MIDDLE, person
from msgspec.structs import replace

from tapewise_core.drafting.cloth import Cloth
from tapewise_core.drafting.pattern import Pattern
from tapewise_core.drafting.piece import Notch
from tapewise_core.sewing.machines import Machine
from tapewise_core.tasks import ticking
from tapewise_core.tasks.basis import Basis, after
from tapewise_core.tasks.chores import CUT, FINISH, MARK, NEEDS, SEW, Chores, chores
from tapewise_core.tasks.drafted import Drafted
from tapewise_core.tasks.drafting import draft
from tapewise_core.tasks.work import Work
from tapewise_core.units import Unit

BODY = {**MIDDLE, "across_back": 34.5, "across_front": 32.5}
BEFORE = "Before cutting"


def drafted(asked: Mapping[str, str] | None = None, **measures: float) -> Drafted:
    """Return a top whose sleeves are pieces of their own, some measures [cm] changed."""
    return draft(person({**BODY, **measures}), "set-in-top", asked or {}, made=DAY)


def keys(parts: tuple[Chores, ...], heading: str) -> dict[str, str]:
    """Return the keys under a heading by how their sentences begin."""
    part = next(part for part in parts if part.heading == heading)
    return {one.says.split(":")[0]: one.key for one in part.items}


def all_keys(parts: tuple[Chores, ...]) -> set[str]:
    """Return all keys that can be ticked."""
    return {one.key for part in parts for one in part.items if one.key}


@pytest.fixture(scope="module")
def plain() -> Drafted:
    """Return the top that others are compared with."""
    return drafted()


def test_every_thing_to_tick_has_a_key_of_its_own(plain: Drafted) -> None:
    """What is only to be minded has none; a key is the same in inches."""
    parts = chores(plain)
    boxes = [one.key for part in parts for one in part.items if part.heading != "Mind"]
    assert all(boxes)
    assert len(set(boxes)) == len(boxes)
    assert not any(one.key for part in parts if part.heading == "Mind" for one in part.items)
    assert all_keys(chores(replace(plain, unit=Unit.IN))) == all_keys(parts)


def test_a_piece_stays_cut_while_it_is_cut_the_same(plain: Drafted) -> None:
    """Another sleeve is cut again, back and front are not; the cloth stays washed, new sheets
    are measured again."""
    old, new = chores(plain), chores(drafted({"sleeve-length": "30 cm"}))
    for piece in ("Back", "Front", "Neckband"):
        assert keys(new, CUT)[piece] == keys(old, CUT)[piece]
        assert keys(new, MARK).get(piece) == keys(old, MARK).get(piece)
    assert keys(new, CUT)["Sleeve"] != keys(old, CUT)["Sleeve"]
    assert keys(new, MARK)["Sleeve"] != keys(old, MARK)["Sleeve"]
    same = {name for name, key in keys(new, BEFORE).items() if key in all_keys(old)}
    assert same == {"Wash and dry the cloth as the garment will be", "Measure the stretch"}
    assert not {*keys(new, FINISH).values()} & all_keys(old)


def test_what_is_sewn_stands_up_to_the_first_step_with_a_changed_piece(plain: Drafted) -> None:
    """Shoulders and neckband stand when the sleeve changes; pinning it in and all after are open.
    A longer body opens everything, for the first step lays tape on the back. Other machines change
    no step that is done."""
    old, longer = chores(plain), chores(drafted({"sleeve-length": "30 cm"}))
    steps = next(part.items for part in longer if part.heading == SEW)
    stands = [chore.key in all_keys(old) for chore in steps]
    first = stands.index(False)
    assert not any(stands[first:])
    assert "Sew the neckband on" in steps[first - 1].key
    assert "Pin the sleeves in" in steps[first].key
    assert not {*keys(chores(drafted({"body-length": "70 cm"})), SEW).values()} & all_keys(old)
    zigzag = draft(person(BODY), "set-in-top", {}, made=DAY, machines=frozenset({Machine.ZIGZAG}))
    sewn = next(part.items for part in chores(zigzag) if part.heading == SEW)
    assert sewn[1].key in all_keys(old)
    assert sewn[1].says not in {one.says for part in old for one in part.items}


def test_a_longer_body_is_cut_again_from_the_cloth_that_was_washed(plain: Drafted) -> None:
    """Back and front change, sleeve and band do not."""
    old, new = chores(plain), chores(drafted({"body-length": "70 cm"}))
    same = {name for name, key in keys(new, CUT).items() if key in all_keys(old)}
    assert same == {"Sleeve", "Neckband"}
    assert "Wash and dry the cloth as the garment will be" in {
        name for name, key in keys(new, BEFORE).items() if key in all_keys(old)
    }


@pytest.mark.parametrize(
    "other", [{"cloth-width": "140 cm"}, {"shrinkage": "8"}, {"stretch": "51"}], ids=str
)
def test_another_cloth_takes_over_nothing(plain: Drafted, other: Mapping[str, str]) -> None:
    """A cloth without a name is known by what it is like."""
    assert not all_keys(chores(plain)) & all_keys(chores(drafted(other)))


def test_how_the_cloth_is_laid_changes_nothing_that_is_done(plain: Drafted) -> None:
    """But how much of it is bought; pieces for cloth that is washed later are cut larger."""
    old, folded = chores(plain), chores(drafted({"lay": "folded", "nap": "yes"}))
    assert keys(folded, CUT) == keys(old, CUT)
    assert keys(folded, SEW) == keys(old, SEW)
    later = chores(drafted({"wash": "after"}), "red rib")
    assert not {*keys(later, CUT).values()} & all_keys(chores(plain, "red rib"))


def test_a_cloth_of_one_name_is_the_same_whatever_was_found_out_about_it(plain: Drafted) -> None:
    """Its stretch is measured once it is washed; the cloth of another name is another."""
    old, new = chores(plain, "red rib"), chores(drafted({"shrinkage": "8"}), "red rib")
    assert all(one in all_keys(old) for one in keys(new, CUT).values())
    assert not all_keys(old) & all_keys(chores(plain, "blue rib"))


def test_what_is_found_out_by_trying_a_cloth_makes_it_no_other(plain: Drafted) -> None:
    """It was washed before its stretch was measured; a stretch that is typed anew is of another."""
    old = chores(plain)
    washed = keys(old, BEFORE)["Wash and dry the cloth as the garment will be"]
    made = ticking.toggled(Work("Ada"), washed, old, plain.fingerprint)
    tried = ticking.found_out(made, {"stretch": "60"}, plain.cloth)
    again = ticking.found_out(tried, {"shrinkage": "6"}, drafted(tried.asked).cloth)
    for one in (tried, again):
        new = drafted(one.asked)
        assert washed in ticking.done(one, chores(new, ticking.known_as(one)), new.fingerprint)
    typed = again.with_option("stretch", "40")
    new = drafted(typed.asked)
    assert ticking.done(typed, chores(new, ticking.known_as(typed)), new.fingerprint) == ()
    assert again.with_option("hem", "straight").tried


def test_another_garment_takes_over_nothing(plain: Drafted) -> None:
    """Not even the cloth: that is another length of it."""
    other = draft(person(BODY), "jersey-top", {}, made=DAY)
    assert not all_keys(chores(plain)) & all_keys(chores(other))


def _basis(pattern: Pattern) -> Basis:
    return Basis.of("top", Cloth(0.5, 0.5, 0.5), pattern)


def test_each_thing_about_a_piece_counts_where_it_matters(plain: Drafted) -> None:
    """Scissors see the cut line, how many and how it lies; chalk sees notches and the stitch line
    as well; a sewn step sees all that came before it."""
    piece, *others = plain.pattern.pieces
    now = _basis(plain.pattern)

    def changed(**fields: object) -> Basis:
        return _basis(replace(plain.pattern, pieces=(replace(piece, **fields), *others)))  # type: ignore[arg-type]

    for fields in ({"count": 2}, {"on_fold": not piece.on_fold}, {"mirrored": True},
                   {"cut_as": piece.cut[1:]},
                   {"grain": (piece.grain[0], piece.grain[0])}):  # fmt: skip
        assert changed(**fields).pieces[piece.name] != now.pieces[piece.name]
    more = changed(notches=(*piece.notches, Notch(piece.edges[0].name, 10, "new")))
    assert more.pieces == now.pieces
    assert more.marked[piece.name] != now.marked[piece.name]
    narrow = tuple(replace(edge, allowance=edge.allowance + 1) for edge in piece.edges)
    sewn_else = changed(edges=narrow, cut_as=piece.cut)
    assert sewn_else.pieces == now.pieces
    assert sewn_else.marked[piece.name] != now.marked[piece.name]
    assert sewn_else.whole != now.whole
    assert after(after("a", "b"), "c") != after(after("a", "x"), "c")


def test_a_change_tried_and_taken_back_costs_no_tick(plain: Drafted) -> None:
    """Only once something is ticked for the new draft is forgotten what it has no use for."""
    old, other = chores(plain), drafted({"sleeve-length": "30 cm"})
    new = chores(other)
    made = Work("Ada")
    for key in (*keys(old, NEEDS).values(), *keys(old, CUT).values()):
        made = ticking.toggled(made, key, old, plain.fingerprint)
    assert ticking.open_again(made, old, plain.fingerprint) == 0
    assert ticking.open_again(made, new, other.fingerprint) == 3  # the sleeve, cloth and thread
    assert len(ticking.done(made, old, plain.fingerprint)) == len(made.ticked)
    moved = ticking.toggled(made, keys(new, CUT)["Sleeve"], new, other.fingerprint)
    assert ticking.open_again(moved, new, other.fingerprint) == 0
    assert keys(old, CUT)["Sleeve"] not in moved.ticked


def test_after_a_garment_that_is_sewn_the_next_begins_with_nothing(plain: Drafted) -> None:
    """Its cloth was cut; the same draft stands as it was left, until it is made once more."""
    old = chores(plain)
    made = Work("Ada")
    for key in all_keys(old):
        made = ticking.toggled(made, key, old, plain.fingerprint)
    assert made.sewn == plain.fingerprint
    assert len(ticking.done(made, old, plain.fingerprint)) == len(all_keys(old))
    other = drafted({"sleeve-length": "30 cm"})
    new = chores(other)
    assert ticking.done(made, new, other.fingerprint) == ()
    assert ticking.open_again(made, new, other.fingerprint) == 0
    begun = ticking.toggled(made, keys(new, CUT)["Back"], new, other.fingerprint)
    assert (begun.ticked, begun.sewn) == ((keys(new, CUT)["Back"],), "")
    again = ticking.once_more(made)
    assert ticking.done(again, old, plain.fingerprint) == ()


def test_a_garment_is_sewn_when_its_last_seam_is_and_no_longer_when_one_is_opened(
    plain: Drafted,
) -> None:
    """Whether chalk and pins were ticked does not matter."""
    old = chores(plain)
    made = Work("Ada")
    for key in keys(old, SEW).values():
        assert made.sewn == ""
        made = ticking.toggled(made, key, old, plain.fingerprint)
    assert made.sewn == plain.fingerprint
    opened = ticking.toggled(made, next(iter(keys(old, SEW).values())), old, plain.fingerprint)
    assert opened.sewn == ""
