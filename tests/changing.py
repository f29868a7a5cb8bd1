"""The single changes that a file of code can suffer: an operator, a constant, a sign."""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterator
from dataclasses import dataclass


@dataclass(frozen=True)
class Change:
    """One change: the number of the node in the tree, which of its changes, and words for both."""

    node: int
    which: int
    line: int
    says: str


OPERATORS: dict[type[ast.AST], tuple[type[ast.AST], ...]] = {
    ast.Lt: (ast.LtE, ast.GtE),
    ast.LtE: (ast.Lt, ast.Gt),
    ast.Gt: (ast.GtE, ast.LtE),
    ast.GtE: (ast.Gt, ast.Lt),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
    ast.Add: (ast.Sub,),
    ast.Sub: (ast.Add,),
    ast.Mult: (ast.Div,),
    ast.Div: (ast.Mult,),
    ast.FloorDiv: (ast.Div,),
    ast.Mod: (ast.Mult,),
    ast.Pow: (ast.Mult,),
    ast.BitOr: (ast.BitAnd,),
    ast.BitAnd: (ast.BitOr,),
    ast.And: (ast.Or,),
    ast.Or: (ast.And,),
}
"""What stands in for an operator: its neighbour at the boundary, and its contrary."""

SWAPPED = {"min": "max", "max": "min", "any": "all", "all": "any"}

SMALL = 1e-3
"""A number this small is a tolerance: it grows a thousandfold, a larger one by a tenth."""

Edit = Callable[[ast.AST], ast.AST]


def changes_of(text: str) -> Iterator[Change]:
    """Yield every change of a file, in the order of its lines."""
    tree = ast.parse(text)
    for number, node in enumerate(_nodes(tree)):
        for which, edit in enumerate(_edits(node)):
            before = ast.unparse(node)
            after = ast.unparse(edit(_copy(node)))
            line = getattr(node, "lineno", 0)
            yield Change(number, which, line, f"{before} → {after}")


def changed(text: str, change: Change) -> ast.Module:
    """Return a file's tree with one change made."""
    tree = ast.parse(text)
    node = list(_nodes(tree))[change.node]
    edited = list(_edits(node))[change.which](_copy(node))
    put = _Put(node, edited).visit(tree)
    assert isinstance(put, ast.Module)
    return ast.fix_missing_locations(put)


class _Put(ast.NodeTransformer):
    """Puts one node in another's place."""

    def __init__(self, old: ast.AST, new: ast.AST) -> None:
        self.old, self.new = old, new

    def visit(self, node: ast.AST) -> ast.AST:
        """Return the new node where the old one stands."""
        return self.new if node is self.old else self.generic_visit(node)


def _copy(node: ast.AST) -> ast.AST:
    """A node of its own with the same parts."""
    fields = dict(ast.iter_fields(node))
    return ast.copy_location(type(node)(**fields), node)


def _nodes(tree: ast.AST) -> Iterator[ast.AST]:
    """Every node that does something when it runs: no types, no decorators, no docstrings."""
    yield tree
    for name, value in ast.iter_fields(tree):
        if name in ("annotation", "returns", "decorator_list", "format_spec"):
            continue
        for part in value if isinstance(value, list) else [value]:
            if isinstance(part, ast.AST) and not _idle(part):
                yield from _nodes(part)


def _idle(node: ast.AST) -> bool:
    """Say whether a node is a string that stands alone, or an import for type checkers."""
    if isinstance(node, ast.Expr):
        return isinstance(node.value, ast.Constant)
    return isinstance(node, ast.If) and ast.unparse(node.test) == "TYPE_CHECKING"


def _edits(node: ast.AST) -> list[Edit]:
    """The changes of one node by itself."""
    match node:
        case ast.Compare():
            return [
                _compared(i, new)
                for i, operator in enumerate(node.ops)
                for new in OPERATORS[type(operator)]
            ]
        case ast.BinOp(op=operator) | ast.AugAssign(op=operator) | ast.BoolOp(op=operator):
            return [_operated(new) for new in OPERATORS.get(type(operator), ())]
        case ast.UnaryOp(op=ast.USub() | ast.Not()):
            return [lambda copy: copy.operand]  # type: ignore[attr-defined]
        case ast.Constant(value=bool() | int() | float()):
            return [_constant]
        case ast.Name(id=name) if name in SWAPPED and isinstance(node.ctx, ast.Load):
            return [lambda copy: ast.copy_location(ast.Name(SWAPPED[name], ast.Load()), copy)]
        case ast.IfExp() | ast.If() | ast.While() if not isinstance(node.test, ast.Compare):
            return [_turned_round] if not isinstance(node, ast.While) else []
    return []


def _compared(place: int, new: type[ast.AST]) -> Edit:
    def edit(copy: ast.AST) -> ast.AST:
        assert isinstance(copy, ast.Compare)
        operators = list(copy.ops)
        operators[place] = new()  # type: ignore[call-overload]
        copy.ops = operators
        return copy

    return edit


def _operated(new: type[ast.AST]) -> Edit:
    def edit(copy: ast.AST) -> ast.AST:
        copy.op = new()  # type: ignore[attr-defined]
        return copy

    return edit


def _turned_round(copy: ast.AST) -> ast.AST:
    assert isinstance(copy, ast.If | ast.IfExp)
    copy.test = ast.UnaryOp(ast.Not(), copy.test)
    return copy


def _constant(copy: ast.AST) -> ast.AST:
    assert isinstance(copy, ast.Constant)
    copy.value = _other(copy.value)
    return copy


def _other(value: object) -> bool | int | float:
    if isinstance(value, bool):
        return not value
    if isinstance(value, int):
        return value + 1
    assert isinstance(value, float)
    if value == 0:
        return 1.0
    return value * (1000 if abs(value) <= SMALL else 1.1)
