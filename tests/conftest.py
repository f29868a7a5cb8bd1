"""How examples made by chance are drawn: few enough to be quick, the same ones where CI runs; how
often memory is looked through for what can go; that compiled code is kept, and no disk waited for.
"""

import gc
import os
import sys
from collections.abc import Iterator

import pytest
from hypothesis import Phase, settings

gc.set_threshold(50_000, 20, 50)  # drafts are thousands of small values: a fifth of the time else

os.environ.pop("PYTHONDONTWRITEBYTECODE", None)  # a hundred commands are started: each would
sys.dont_write_bytecode = False  # compile all of the code anew, which is half of what it takes

settings.register_profile(
    "house",
    deadline=None,
    max_examples=60,
    database=None,
    derandomize=bool(os.environ.get("CI")),
)
settings.register_profile(
    "mutations",
    deadline=None,
    max_examples=12,
    database=None,
    derandomize=True,
    phases=[Phase.explicit, Phase.generate],
)
settings.load_profile("house")


def pytest_collection_finish() -> None:
    """Leave out of every later look what stays to the end: modules and the tests themselves."""
    gc.collect()
    gc.freeze()


@pytest.fixture(scope="session", autouse=True)
def quick_disk() -> Iterator[None]:
    """Wait for no disk: no power is cut in a test. A file that is closed already still fails."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(os, "fsync", os.fstat)
        yield
