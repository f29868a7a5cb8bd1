"""What stands round the lines and words of an SVG document: its frame, a layer's and a piece's.

A few words with blanks to fill, always the same, attributes in the order of the alphabet; tests
let svgwrite check whole drawings against the standard.
"""

from __future__ import annotations

SHEET = (
    '<svg baseProfile="full" height="{height}mm" version="1.1" viewBox="{view}" width="{width}mm"'
    ' xmlns="http://www.w3.org/2000/svg" xmlns:ev="http://www.w3.org/2001/xml-events"'
    ' xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape"'
    ' xmlns:sodipodi="http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd"'
    ' xmlns:xlink="http://www.w3.org/1999/xlink">{titles}<defs />{held}</svg>'
)
"""One user unit is one millimetre; what vector editors read has names of its own."""

GROUND = '<rect fill="{colour}" height="{height}" width="{width}" x="{left}" y="{top}" />'

LAYER = (
    '<g fill="none"{font} id="{id}" inkscape:groupmode="layer" inkscape:label="{label}"'
    ' stroke="{colour}" stroke-linecap="butt" stroke-linejoin="round">{held}</g>'
)

PIECE = '<g id="{id}">{titles}{held}</g>'
