"""How examples made by chance are drawn: few enough to be quick, the same ones where CI runs."""

import os

from hypothesis import settings

settings.register_profile(
    "house",
    deadline=None,
    max_examples=60,
    database=None,
    derandomize=bool(os.environ.get("CI")),
)
settings.load_profile("house")
