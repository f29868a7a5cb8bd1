"""``python -m tapewise_core.statistics.building FOLDER`` writes ``model.json``."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

from tapewise_core.errors import TapewiseError
from tapewise_core.statistics.building.model import model_of

OUT = Path(__file__).parent.parent / "model.json"


def main() -> None:
    """Read the tables in a folder and write the model beside the code that uses it."""
    parser = argparse.ArgumentParser(prog="tapewise_core.statistics.building", description=__doc__)
    parser.add_argument("folder", type=Path, help="the folder with the open tables")
    parser.add_argument("--out", type=Path, default=OUT, help="where the model goes")
    options = parser.parse_args()
    try:
        model = model_of(options.folder)
    except TapewiseError as fault:
        parser.error(str(fault))
    text = json.dumps(model, ensure_ascii=False, separators=(",", ":"))
    options.out.write_text(text.replace('],"', '],\n"') + "\n", encoding="utf-8")
    print(f"Wrote {options.out}: {options.out.stat().st_size} bytes.")


if __name__ == "__main__":
    main()
