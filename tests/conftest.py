"""How examples made by chance are drawn: few enough to be quick, the same ones where CI runs; and
how often memory is looked through for what can go."""

import gc
import os

from hypothesis import Phase, settings

gc.set_threshold(50_000, 20, 50)  # drafts are thousands of small values: a fifth of the time else

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
