"""What is handed on: a source archive of what belongs to it, a wheel that runs on its own."""

import os
import subprocess
import sys
import sysconfig
import tarfile
import venv
import zipfile
from email.parser import Parser
from pathlib import Path

import pytest

HOUSE = Path(__file__).parents[1]
BIN = "Scripts" if os.name == "nt" else "bin"

BELONGS = {
    "core", "tui", "profiles", "tests", "pyproject.toml",
    "README.md", "DEVELOPERS.md", "LICENSE", "PKG-INFO", ".gitignore",
}  # fmt: skip
"""The top level of the source archive; the builder adds the last two."""


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build both from the checkout as it lies there, with whatever else lies in it."""
    folder = tmp_path_factory.mktemp("built")
    command = [sys.executable, "-m", "hatchling", "build", "-d", str(folder)]
    subprocess.run(command, cwd=HOUSE, check=True, capture_output=True)
    return folder


def kept(folder: Path) -> set[str]:
    """The files of a folder of the checkout that are no leavings of a run."""
    files = (path for path in folder.rglob("*") if path.is_file())
    return {
        str(path.relative_to(HOUSE).as_posix()) for path in files if "__pycache__" not in path.parts
    }


def test_the_source_archive_holds_what_belongs_to_it(built: Path) -> None:
    """All code, tests, pictures and people; no caches, no environment, no machinery."""
    [archive] = built.glob("*.tar.gz")
    with tarfile.open(archive) as tar:
        names = {name.partition("/")[2] for name in tar.getnames()}
    assert {name.partition("/")[0] for name in names} == BELONGS
    assert not [name for name in names if "cache" in name or name.endswith(".pyc")]
    wanted = set[str]().union(*(kept(HOUSE / part) for part in ("core", "tui", "profiles")))
    assert {name for name in wanted if ".egg-info" not in name} <= names


def test_the_wheel_is_complete_and_names_its_licences(built: Path) -> None:
    """Font, body model, styles and example people are in it; the font's licence beside ours."""
    [wheel] = built.glob("*.whl")
    with zipfile.ZipFile(wheel) as opened:
        names = set(opened.namelist())
        [about] = [name for name in names if name.endswith("METADATA")]
        told = Parser().parsestr(opened.read(about).decode())
    code = kept(HOUSE / "core" / "tapewise_core") | kept(HOUSE / "tui" / "tapewise_tui")
    people = {f"tapewise_core/profiles/people/{path.name}" for path in HOUSE.glob("profiles/*")}
    assert {name.partition("/")[2] for name in code} | people <= names
    assert {name.partition("/")[0] for name in names if ".dist-info" not in name} == {
        "tapewise_core",
        "tapewise_tui",
    }
    assert told["License-Expression"] == "MIT"
    assert set(told.get_all("License-File", [])) == {
        "LICENSE",
        "core/tapewise_core/writers/fonts/LICENSE.txt",
    }


def test_the_wheel_drafts_the_demo_in_an_environment_of_its_own(
    built: Path, tmp_path: Path
) -> None:
    """Nothing of the checkout is needed; what it depends on is lent by this environment."""
    [wheel] = built.glob("*.whl")
    fresh = tmp_path / "fresh"
    venv.create(fresh, symlinks=os.name != "nt")
    python = fresh / BIN / "python"
    install = ["pip", "--python", str(python), "install", "--no-deps", "--no-index", str(wheel)]
    clean = {key: text for key, text in os.environ.items() if key != "PYTHONPATH"}
    clean["TAPEWISE_DATA"] = str(tmp_path / "data")
    subprocess.run([sys.executable, "-m", *install], check=True, capture_output=True, env=clean)
    [home] = fresh.rglob("site-packages")
    (home / "lent.pth").write_text(sysconfig.get_path("purelib") + "\n", encoding="utf-8")
    where = "import tapewise_core; print(tapewise_core.__file__)"
    told = subprocess.run([python, "-c", where], capture_output=True, cwd=tmp_path, env=clean)
    assert str(home) in told.stdout.decode()
    command = [fresh / BIN / "tapewise", "demo"]
    demo = subprocess.run(command, capture_output=True, cwd=tmp_path, env=clean)
    assert demo.returncode == 0, demo.stderr.decode()
    assert (tmp_path / "tapewise-demo" / "pattern.svg").is_file()
