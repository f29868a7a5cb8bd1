"""How a page of HTML looks, on screens and on paper."""

STYLE = """
:root { color-scheme: light; }
body { font: 16px/1.5 "DejaVu Sans", Verdana, Arial, sans-serif; color: #111; background: #fff;
  max-width: 52rem; margin: 0 auto; padding: 1rem 1rem 4rem; overflow-wrap: anywhere; }
h1, h2, h3 { line-height: 1.25; break-after: avoid; }
nav a { margin-right: 1.25em; }
.note { border-left: 4px solid #111; padding-left: .75em; }
section { border-top: 2px solid #111; margin-top: 2.5rem; }
main section { border: 0; margin: 0; }
figure { margin: 0; break-inside: avoid; }
svg { display: block; max-width: 100%; height: auto; }
.pieces { display: grid; grid-template-columns: repeat(auto-fill, minmax(11rem, 1fr)); gap: 1rem; }
.pieces svg { width: 100%; max-height: 20rem; }
.pieces path { vector-effect: non-scaling-stroke; stroke-width: 1.2px; }
.pieces text, .pieces .scale { display: none; }
.steps { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
  gap: 1.5rem 1rem; align-items: start; }
.step { break-inside: avoid; }
.step p { margin: .25em 0 .5em; }
.step svg { width: 100%; max-width: 22rem; }
.wide { margin: 1.5rem 0; overflow: hidden; }
.wide figure { max-width: 20rem; }
.wide figure:first-of-type { float: right; width: 60%; max-width: 30rem; margin-left: 1rem; }
.wide svg { max-width: 100%; }
.alone svg { width: 100%; max-width: 34rem; }
.number { font-weight: bold; }
.fill { display: grid; grid-template-columns: 15rem minmax(0, 1fr) 10rem; gap: 1rem;
  border-top: 1px solid #777; padding: .6rem 0; break-inside: avoid; }
.fill p { margin: 0 0 .5em; }
.line { border-bottom: 1px solid #111; padding-bottom: 1.6em; line-height: 1.2; }
ul.ticks, ol.ticks { list-style: none; padding-left: 0; }
.ticks label { display: flex; gap: .6em; align-items: baseline; break-inside: avoid; }
.ticks li { margin: .35em 0; }
.ticks figure { margin: .25em 0 1em 1.65em; }
.ticks svg { width: 100%; max-width: 24rem; }
table { border-collapse: collapse; margin: 1em 0; width: 100%; }
th, td { border: 1px solid #777; padding: .3em .5em; text-align: left; vertical-align: top; }
th { overflow-wrap: normal; }
tr { break-inside: avoid; }
input { width: 1.05em; height: 1.05em; flex: none; }
@media screen and (max-width: 44rem) {
  .fill { display: block; }
  .fill svg { margin: 0 auto .5rem; width: 100%; max-width: 20rem; }
  .step svg, .wide figure { max-width: 100%; }
  .wide figure:first-of-type { float: none; width: 100%; margin: 0; }
  table { font-size: .8rem; }
  th, td { padding: .2em .25em; }
}
@page { margin: 14mm; }
@media print {
  body { max-width: none; padding: 0; font-size: 10pt; line-height: 1.35; }
  nav { display: none; }
  section { border-top: 0; margin-top: 8mm; }
  .steps { grid-template-columns: 1fr 1fr 1fr; gap: 3mm 4mm; }
  .step p { margin: 0 0 1mm; font-size: 9pt; }
  .step svg { width: auto; max-width: 100%; }
  .wide { margin: 3mm 0; }
  .alone svg, .ticks svg { width: auto; }
  .wide figure, .wide figure:first-of-type { width: auto; max-width: none; }
  .pieces { grid-template-columns: 1fr 1fr 1fr; }
  .fill { grid-template-columns: 66.5mm minmax(0, 1fr) 38mm; gap: 4mm; padding: 1.5mm 0;
    font-size: 9pt; }
}
"""
"""Readable on a telephone held upright; printed, letters in pictures stay as large as drawn."""
