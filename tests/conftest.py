"""How examples made by chance are drawn: few enough to be quick, the same ones where CI runs."""

import os

from hypothesis import Phase, settings

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
