"""Where people are kept, and how they are found again."""

import os
import stat
from pathlib import Path

import pytest

from tapewise_core.errors import FilesError, ProfileError
from tapewise_core.profiles import copying, files, store
from tapewise_core.profiles.examples import DEMO
from tapewise_core.profiles.profile import Profile
from tapewise_core.profiles.slug import slug

ADA = Profile.of("Ada Byron").with_value("hip", 98.0)

posix = pytest.mark.skipif(os.name != "posix", reason="permissions as POSIX has them")


@pytest.fixture(autouse=True)
def people(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty data folder of the test's own."""
    monkeypatch.setenv(store.DATA_VARIABLE, str(tmp_path / "data"))
    return tmp_path / "data" / "people"


def test_a_saved_person_is_found_by_name_capitals_and_file_name(people):
    """Exactly as written, in other capitals, or by the name of the file."""
    assert store.save(ADA) == people / "ada-byron.json"
    for name in ("Ada Byron", "ada byron", " ADA  BYRON ", "ada-byron"):
        assert store.load(name) == ADA


def test_saving_again_replaces_the_file(people):
    """One person, one file, and no litter beside it."""
    store.save(ADA)
    store.save(ADA.with_value("hip", 99.0))
    assert [path.name for path in people.iterdir()] == ["ada-byron.json"]
    assert store.load("Ada Byron").values()["hip"].cm == 99.0


@pytest.mark.parametrize(
    "name", ["../../etc/passwd", "/", "..", "张伟", "COM1", "a" * 80, "Ольга", "nul.json", "🙂"]
)
def test_a_file_name_never_comes_from_the_name_as_typed(people, name):
    """Whatever a person is called, the file stays in the folder and works on any system."""
    place = store.save(ADA.with_name(name))
    assert place.parent == people
    assert place.stem == slug(name)
    assert set(place.stem) <= set("abcdefghijklmnopqrstuvwxyz0123456789-")
    assert place.stem not in {"com1", "nul", ""}
    assert len(place.name) < 80
    assert store.load(name).name == name


def test_two_people_of_one_file_name_do_not_overwrite_each_other():
    """Names that differ only in marks or signs share a slug and keep a file each."""
    names = ["Zoe", "Zoë", "zoe", "Zoe!", "张伟", "李娜"]
    places = {store.save(Profile.of(name)) for name in names}
    assert len(places) == len(names)
    assert [store.load(name).name for name in names] == names


def test_saved_people_come_before_the_examples():
    """Whoever saves somebody under an example's name has the own one from then on."""
    assert store.find(DEMO).shipped
    store.save(ADA.with_name(DEMO))
    assert not store.find(DEMO).shipped
    assert store.load(DEMO).values() == ADA.values()
    assert [entry.name for entry in store.listing()].count(DEMO) == 1
    assert store.listing()[0].name == DEMO


def test_a_broken_file_is_listed_with_its_fault(people):
    """It neither disappears nor takes the others with it."""
    store.save(ADA)
    (people / "bent.json").write_text('{"name": ', "utf-8")
    (people / "binary.json").write_bytes(b"\xff\xfe\x00")
    (people / "folder.json").mkdir()
    broken = {entry.name: entry.fault for entry in store.listing() if entry.profile is None}
    assert set(broken) == {"bent", "binary", "folder"}
    assert "not a JSON file" in broken["bent"]
    assert "UTF-8" in broken["binary"]
    assert store.load("Ada Byron") == ADA
    with pytest.raises(ProfileError, match="not a JSON file"):
        store.load("bent")


def test_a_broken_file_is_not_written_over(people):
    """Its content may still be mended by hand."""
    people.mkdir(parents=True)
    (people / "ada-byron.json").write_text("oops", "utf-8")
    store.save(ADA)
    assert (people / "ada-byron.json").read_text("utf-8") == "oops"
    assert store.load("Ada Byron") == ADA


def test_an_unknown_name_is_answered_with_near_ones():
    """The sentence names who comes near, else who is there."""
    store.save(ADA)
    with pytest.raises(
        FilesError, match=r"Nobody is saved as “Ada Biron”; did you mean Ada Byron\?"
    ):
        store.load("Ada Biron")
    with pytest.raises(FilesError, match=f"there are .*{DEMO}"):
        store.load("qqqq")
    with pytest.raises(FilesError, match="Nobody"):
        store.load("")


def test_a_saved_person_can_be_deleted_and_an_example_not(people):
    """Examples belong to the program."""
    store.save(ADA)
    assert store.delete("Ada Byron") == people / "ada-byron.json"
    assert not list(people.iterdir())
    with pytest.raises(FilesError, match="example that came with the program"):
        store.delete(DEMO)


def test_copying_in_asks_before_it_replaces(tmp_path):
    """Somebody saved is only replaced when that was said."""
    path = tmp_path / "ada.json"
    path.write_text(ADA.text(), "utf-8")
    assert copying.copy_in(path) == ADA
    path.write_text(ADA.with_value("hip", 99.0).text(), "utf-8")
    with pytest.raises(FilesError, match="saved already"):
        copying.copy_in(path)
    assert store.load("Ada Byron") == ADA
    copying.copy_in(path, replace=True)
    assert store.load("Ada Byron").values()["hip"].cm == 99.0


def test_copying_out_asks_before_it_replaces(tmp_path):
    """To a file, or into a folder under the slug."""
    store.save(ADA)
    assert copying.copy_out("Ada Byron", tmp_path) == tmp_path / "ada-byron.json"
    with pytest.raises(FilesError, match="exists already"):
        copying.copy_out("Ada Byron", tmp_path / "ada-byron.json")
    copying.copy_out("Ada Byron", tmp_path, replace=True)
    assert files.read_file(tmp_path / "ada-byron.json") == ADA
    with pytest.raises(FilesError, match="cannot be written: no such file"):
        copying.copy_out("Ada Byron", tmp_path / "nowhere" / "ada.json")


def test_a_failed_save_leaves_the_old_file_and_no_litter(people, monkeypatch):
    """When the disk fails at the last moment, what was there is there."""
    store.save(ADA)

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(files.os, "fsync", full)
    with pytest.raises(FilesError, match="cannot be written: no space left on device"):
        store.save(ADA.with_value("hip", 99.0))
    assert [path.name for path in people.iterdir()] == ["ada-byron.json"]
    assert store.load("Ada Byron") == ADA


@posix
def test_files_are_for_their_owner_alone(people):
    """How a person is built is nobody else's business."""
    place = store.save(ADA)
    assert stat.S_IMODE(place.stat().st_mode) == 0o600
    assert stat.S_IMODE(people.stat().st_mode) == 0o700


@posix
def test_a_link_stays_a_link(people, tmp_path):
    """Whoever keeps the file elsewhere and links it has it written there."""
    store.save(ADA)
    place, elsewhere = people / "ada-byron.json", tmp_path / "kept.json"
    place.rename(elsewhere)
    place.symlink_to(elsewhere)
    store.save(ADA.with_value("hip", 99.0))
    assert place.is_symlink()
    assert files.read_file(elsewhere).values()["hip"].cm == 99.0


def test_a_data_folder_that_is_a_file_is_one_sentence(tmp_path, monkeypatch):
    """Nothing can be kept there, and that is said."""
    (tmp_path / "data").write_text("", "utf-8")
    with pytest.raises(FilesError, match="cannot be"):
        store.save(ADA)


def test_without_the_variable_the_system_s_data_folder_is_used(monkeypatch):
    """Where this system keeps what belongs to programs."""
    monkeypatch.delenv(store.DATA_VARIABLE)
    assert store.people_folder().parts[-2:] == ("tapewise", "people")


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b"x" * 1_000_001, "larger than 1 MB"),
        (b"\xff\xfe", "not text in UTF-8"),
        (b"{}", "format: is missing"),
    ],
    ids=["large", "not UTF-8", "empty"],
)
def test_a_file_that_is_no_person_s_is_named(tmp_path, content, says):
    """The sentence begins with the file."""
    path = tmp_path / "odd.json"
    path.write_bytes(content)
    with pytest.raises(ProfileError, match=says) as refused:
        files.read_file(path)
    assert str(refused.value).startswith(str(path))


def test_a_mark_at_the_start_of_the_text_is_no_fault(tmp_path):
    """Some editors put a byte order mark before UTF-8."""
    path = tmp_path / "ada.json"
    path.write_text(ADA.text(), "utf-8-sig")
    assert files.read_file(path) == ADA


@pytest.mark.parametrize("name", ["missing.json", "", "nul\0.json", "x" * 300])
def test_a_file_that_is_not_there_is_one_sentence(tmp_path, name):
    """No file, a folder, an impossible name."""
    with pytest.raises(FilesError):
        files.read_file(tmp_path / name)
