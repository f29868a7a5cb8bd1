"""The tool that changes one thing at a time: what it changes, and that it runs what it changed."""

import ast
import os
import subprocess
import sys
from pathlib import Path

import pytest
from changing import changed, changes_of


def results(text: str) -> set[str]:
    """Every changed form of a piece of code."""
    return {ast.unparse(changed(text, change)) for change in changes_of(text)}


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("a + b", {"a - b"}),
        ("a * -b", {"a / -b", "a * b"}),
        ("a < b", {"a <= b", "a >= b"}),
        ("a <= b < c", {"a < b < c", "a > b < c", "a <= b <= c", "a <= b >= c"}),
        ("x = 2.0", {"x = 2.2"}),
        ("x = 0.0", {"x = 1.0"}),
        ("x = 1e-09", {"x = 1.0000000000000002e-06"}),
        ("x = 3", {"x = 4"}),
        ("x = not a and True", {"x = not a or True", "x = a and True", "x = not a and False"}),
        ("x += min(a)", {"x -= min(a)", "x += max(a)"}),
        ("if a:\n    b", {"if not a:\n    b"}),
    ],
)
def test_each_operator_constant_and_sign_is_changed_by_itself(text: str, wanted: set[str]) -> None:
    """One change at a time, and no other."""
    assert results(text) == wanted


def test_types_docstrings_and_decorators_stay_as_they_are() -> None:
    """They do nothing when the code runs."""
    text = (
        '@frozen(slots=True)\ndef f(a: Literal[1]) -> int | None:\n    """Add 1."""\n    return a'
    )
    assert results(text) == set()


def test_a_change_is_what_the_tests_import() -> None:
    """In its process the module has the changed constant; in the file it stays."""
    told = (
        "import mutations as m\n"
        "from changing import changed, changes_of\n"
        "subject = m.Subject(m.CODE / 'geometry' / 'arc.py')\n"
        "text = subject.path.read_text(encoding='utf-8')\n"
        "first = next(c for c in changes_of(text) if c.says == '30.0 → 33.0')\n"
        "m.sys.meta_path.insert(0, m.Finder(subject.module, subject.path, "
        "compile(changed(text, first), 'arc.py', 'exec')))\n"
        "from tapewise_core.geometry.arc import WIDEST\n"
        "print(WIDEST, any('arc' in name for name in subject.tests()))\n"
    )
    tests = Path(__file__).parent
    found = subprocess.run(
        [sys.executable, "-X", "utf8", "-c", told],
        capture_output=True,
        check=True,
        env={"PYTHONPATH": os.pathsep.join([str(tests), str(tests.parent / "core")])},
    )
    assert found.stdout.decode().split() == ["33.0", "True"]
    assert "WIDEST = 30.0" in (tests.parent / "core/tapewise_core/geometry/arc.py").read_text()
