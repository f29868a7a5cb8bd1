"""Invented pieces to put on paper: a half front, a half back, a sleeve and a band."""

from tapewise_core.geometry.cutting import cut_line
from tapewise_core.geometry.outline import Margin, area, box_of
from tapewise_core.geometry.path import Path, curved, joined, ruled
from tapewise_core.geometry.point import Point
from tapewise_core.geometry.rows import points
from tapewise_core.paper.document import (
    Bullets,
    Document,
    Heading,
    NumberedStep,
    Paragraph,
    Table,
    Ticks,
)
from tapewise_core.paper.drawing import Dash, Drawing, Ink, Layer, Stroke, TextLine, extent
from tapewise_core.paper.pattern_set import PatternSet

Edges = dict[str, tuple[Path, float]]


def body(length: float = 640.0, half: float = 250.0, neck_depth: float = 90.0) -> Edges:
    """Return a half front or back, on the fold at x = 0: edge name to path and allowance."""
    nape, side_neck = Point(0, neck_depth), Point(95, 0)
    sleeve, cuff = Point(half + 60, 75), Point(half + 45, 230)
    underarm, waist, hem = Point(half, 250), Point(half - 25, 430), Point(half + 10, length)
    side = joined(
        [
            curved(underarm, Point(half - 12, 310), Point(half - 25, 380), waist),
            curved(waist, Point(half - 25, 480), Point(half - 5, length - 70), hem),
        ]
    )
    neckline = curved(nape, Point(58, neck_depth), Point(90, 45), side_neck)
    return {
        "centre": (ruled(Point(0, length), nape), 0.0),
        "neckline": (neckline, 7.0),
        "shoulder": (ruled(side_neck, sleeve), 10.0),
        "sleeve_hem": (ruled(sleeve, cuff), 25.0),
        "underarm": (ruled(cuff, underarm), 10.0),
        "side": (side, 10.0),
        "hem": (ruled(hem, Point(0, length)), 25.0),
    }


def band(length: float = 480.0, height: float = 50.0) -> Edges:
    """Return a straight band, its long edges across."""
    a, b, c, d = Point(0, 0), Point(length, 0), Point(length, height), Point(0, height)
    sides = {"top": (a, b), "end": (b, c), "seam": (c, d), "end_2": (d, a)}
    return {name: (ruled(*ends), 7.0) for name, ends in sides.items()}


def cut_of(edges: Edges) -> list[Point]:
    """Return the closed line to cut along."""
    turned = ("hem", "sleeve_hem")
    return points(
        cut_line(
            [
                Margin(path, width, turned=name in turned, fold=name == "centre")
                for name, (path, width) in edges.items()
            ]
        )
    )


def cut_area(edges: Edges) -> float:
    """Return the area inside the line to cut along [mm²]."""
    return area(cut_of(edges))


def piece(name: str, edges: Edges) -> Drawing:
    """Return a piece as a drawing with lines, marks and a label."""
    cut = cut_of(edges)
    at = Point(40, max(20.0, box_of(cut).bottom / 3))
    inks: list[Ink] = [
        Stroke(path, Layer.STITCH, Dash.DASHED, 0.35, name=f"stitch {edge}", part=name)
        for edge, (path, _) in edges.items()
    ]
    inks += [
        Stroke(ruled(*cut, cut[0]), Layer.CUT, width=0.6, closed=True, name="cut", part=name),
        Stroke(ruled(Point(120, 20), Point(120, 45)), Layer.MARKS, name="grain", part=name),
        Stroke(ruled(Point(200, 0), Point(200, 7)), Layer.MARKS, name="notch 1", part=name),
        TextLine(name, at, 5.0, bold=True, part=name),
        TextLine("Jersey top, for Zoë Œhler", Point(at.x, at.y + 7), part=name),
    ]
    drawing = tuple(inks)
    return Drawing(name, f"The {name} of a top", extent(drawing, 10), drawing)


EDGES: dict[str, Edges] = {
    "front": body(660, 255, 90),
    "back": body(640, 245, 25),
    "sleeve": band(390, 430),
    "neckband": band(),
}

PICTURE = Drawing(
    "Rule the fold",
    "",
    extent(piece("front", EDGES["front"]).inks, 5),
    (
        Stroke(EDGES["front"]["side"][0], Layer.CUT),
        TextLine("A", Point(0, 0), 14.0),
    ),
)


def pattern(person: str = "Zoë Œhler", times: int = 1) -> PatternSet:
    """Return a whole set, its pieces repeated to make it longer."""
    pieces = [piece(name, edges) for _ in range(times) for name, edges in EDGES.items()]
    instructions = Document(
        "Jersey top by hand",
        (
            Paragraph("Use a long ruler & a pencil <B>."),
            NumberedStep(1, "Rule a line AB of 64 cm.", PICTURE, "steps/01.svg"),
            NumberedStep(2, "Square out from A.", PICTURE, "steps/02.svg"),
        ),
    )
    checklist = Document(
        "Checklist",
        (
            Heading("Cut"),
            Ticks(("2 front", "1 back")),
            Bullets(("pins",)),
            Table(("seam", "stitch"), (("side", "514"),)),
        ),
    )
    return PatternSet(
        "Jersey top",
        "A close top in jersey",
        person,
        "2026-11-02",
        tuple(pieces),
        lambda: instructions,
        checklist,
        "Estimated: armscye depth, hip depth.",
    )
