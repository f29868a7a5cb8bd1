"""The pattern file read back by an independent parser and an independent renderer."""

import io
import json
import re

import pytest
from making import top
from PIL.Image import Image
from PIL.Image import open as open_image
from svgelements import SVG, Matrix, Path

from tapewise_core.tasks.contents import contents


@pytest.fixture(scope="module")
def files() -> dict[str, bytes]:
    """Everything a draft leaves."""
    return contents(top({"sleeve-length": "25"}))


def shoelace(points: list[tuple[float, float]]) -> float:
    """The area inside a closed list of points."""
    pairs = zip(points, points[1:] + points[:1], strict=True)
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs)) / 2


def paths(svg: bytes) -> dict[str, list[Path]]:
    """Paths by the name in their title, in mm: 96 px an inch [css]."""
    found: dict[str, list[Path]] = {}
    for element in SVG.parse(io.BytesIO(svg), ppi=96).elements():
        if isinstance(element, Path):
            in_mm = abs(element * Matrix.scale(25.4 / 96))
            found.setdefault(str(element.values.get("id", "")), []).append(in_mm)
    return found


def named(found: dict[str, list[Path]], words: str) -> list[Path]:
    """Paths whose id carries some words."""
    slug = words.replace("_", "-").replace(" ", "-")
    return [
        path for name, group in found.items() if slug in name.replace("_", "-") for path in group
    ]


@pytest.mark.parametrize("name", ["back", "front", "neckband"])
def test_the_cut_line_encloses_the_recorded_area(files: dict[str, bytes], name: str) -> None:
    """svgelements reads the area of the record within the area of 0.1 mm all round."""
    record = json.loads(files["draft.json"])
    piece = next(p for p in record["pieces"] if p["name"] == name)
    cut = named(paths(files[f"pieces/{name}.svg"]), "cut")[0]
    points = [(float(p.x), float(p.y)) for p in cut.as_points()]
    recorded = [(x * 10, y * 10) for x, y in piece["cut_line"]]
    round_it = cut.length()
    assert abs(shoelace(points) - shoelace(recorded)) < 0.1 * round_it


@pytest.mark.parametrize("edge", ["neckline", "shoulder", "sleeve_hem", "underarm", "side", "hem"])
def test_every_edge_is_as_long_as_recorded(files: dict[str, bytes], edge: str) -> None:
    """svgelements' own arc lengths agree with the record within 0.1 mm."""
    record = json.loads(files["draft.json"])
    piece = next(p for p in record["pieces"] if p["name"] == "back")
    recorded = next(e["length"] for e in piece["edges"] if e["name"] == edge) * 10
    drawn = named(paths(files["pieces/back.svg"]), f"stitch {edge}")
    assert sum(path.length(error=1e-6) for path in drawn) == pytest.approx(recorded, abs=0.1)


def test_the_square_measures_100_mm_when_rendered(files: dict[str, bytes]) -> None:
    """resvg at four pixels a millimetre, lines found by their weight: 100 mm is 100 ± 0.1."""
    from resvg_py import svg_to_bytes

    text = files["pattern.svg"].decode()
    width = float(re.search(r'width="([\d.]+)mm"', text)[1])  # type: ignore[index]
    only = re.sub(r"<text.*?</text>", "", text, flags=re.DOTALL)
    pixels = 4 * round(width)
    png = svg_to_bytes(svg_string=only, dpi=96, width=pixels, background="white")
    image = open_image(io.BytesIO(bytes(png))).convert("L")
    scale = image.width / width
    assert squares(image, scale) == pytest.approx([100.0, 101.6], abs=0.1)


def squares(image: Image, scale: float) -> list[float]:
    """The widths [mm] of the two squares at the foot of the sheet, middle of line to middle."""
    row = image.height - round(60 * scale)
    lines: list[list[tuple[int, int]]] = []
    for x in range(image.width):
        ink = 255 - image.getpixel((x, row))
        if ink > 20 and lines and x - lines[-1][-1][0] <= 2:
            lines[-1].append((x, ink))
        elif ink > 20:
            lines.append([(x, ink)])
    middles = [sum(x * ink for x, ink in line) / sum(ink for _, ink in line) for line in lines]
    return [(b - a) / scale for a, b in zip(middles[::2], middles[1::2], strict=True)][:2]


def test_width_height_and_view_box_agree(files: dict[str, bytes]) -> None:
    """One user unit is one millimetre, so that the file opens at full size everywhere."""
    for name, content in files.items():
        if name.endswith(".svg"):
            head = content.decode()[:2000]
            size = {k: re.search(rf'\b{k}="([\d.]+)mm"', head) for k in ("width", "height")}
            box = re.search(r'viewBox="[-\d.]+[ ,][-\d.]+[ ,]([\d.]+)[ ,]([\d.]+)"', head)
            assert box, name
            assert size["width"], name
            assert size["height"], name
            assert size["width"][1] == box[1]
            assert size["height"][1] == box[2]
