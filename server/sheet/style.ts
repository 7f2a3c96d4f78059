/**
 * How the sheet looks: black on paper white in any surroundings, on a desk, on a phone, and printed on Letter or A4.
 * Only what stands under `.sheet` and `.sheet-page` is styled, so that the fragment can live in another page.
 */
export const SHEET_STYLE = `
.sheet-page { margin: 0; background: #ddd; }
.sheet { color-scheme: light; background: #fff; color: #000; font: 12pt/1.38 sans-serif; text-align: left;
  max-width: 180mm; margin: 0 auto; padding: 14mm 15mm; overflow-wrap: break-word; }
.sheet h1 { font-size: 26pt; line-height: 1.15; margin: 0; font-weight: bold; }
.sheet h2 { font-size: 15pt; line-height: 1.2; margin: 8mm 0 2mm; padding-top: 1.5mm; border-top: 0.4mm solid #000; }
.sheet h3 { font-size: 12pt; line-height: 1.38; margin: 5mm 0 1mm; }
.sheet p { margin: 0 0 1.5mm; }
.sheet ul, .sheet ol { margin: 0 0 2mm; padding-left: 6mm; }
.sheet li { margin: 0 0 1.2mm; }
.sheet small { font-size: 10pt; }
.sheet .file, .sheet .source, .sheet .key, .sheet .below { font-size: 11pt; }
.sheet .file { margin: 1mm 0 4mm; }
.sheet .caution { border-left: 0.4mm solid #000; padding-left: 3mm; }
.sheet .whole { white-space: nowrap; }
.sheet .blank { display: inline-block; width: 30mm; height: 1.1em; border-bottom: 0.22mm solid #000; vertical-align: bottom; }

.sheet dl { margin: 0 0 2mm; }
.sheet dl div { display: grid; grid-template-columns: 42mm 1fr; column-gap: 3mm; padding: 0.5mm 0; }
.sheet dd { grid-column: 2; margin: 0; font-weight: bold; }
.sheet .light dd { font-weight: normal; }
.sheet .light div { grid-template-columns: 30mm 1fr; }
.sheet dl.columns, .sheet ul.columns { columns: 2 70mm; column-gap: 8mm; }
.sheet dl.columns div { grid-template-columns: 26mm 1fr; }

.sheet .below { list-style: none; padding: 0; margin: 0; }
.sheet .below li { margin: 0; }
.sheet .leads { list-style: none; padding: 0; }
.sheet .leads > li { margin: 0 0 4mm; padding-left: 24mm; }
.sheet .leads .lead { float: left; margin-left: -24mm; }
.sheet .leads .framed .lead { border: 0.4mm solid #000; padding: 0 1.5mm; }
.sheet .marks { list-style: none; padding: 0; columns: 3 48mm; column-gap: 6mm; }
.sheet .marks li { padding-left: 9mm; text-indent: -9mm; }
.sheet .marks .lead { display: inline-block; min-width: 7.5mm; text-indent: 0; }
.sheet .ticks { list-style: none; padding: 0; }
.sheet .drawings > figure { float: left; max-width: 100%; margin-right: 6mm; }
.sheet .drawings > .marks { min-width: 36mm; padding-top: 2.5mm; }
.sheet .drawings > .figures { clear: both; }

.sheet table { width: 100%; border-collapse: collapse; margin: 0 0 3mm; font-size: inherit; }
.sheet th, .sheet td { text-align: left; vertical-align: top; padding: 1.2mm 3mm 1.2mm 0; color: #000; }
.sheet th:last-child, .sheet td:last-child { padding-right: 0; }
.sheet thead th { font-size: 11pt; font-weight: normal; vertical-align: bottom; border-bottom: 0.22mm solid #000; }
.sheet tbody tr { border-bottom: 0.15mm solid #999; }
.sheet .group th { padding-top: 4mm; }
.sheet .group small { font-weight: normal; }
.sheet .sums tr { border: 0; }
.sheet .sums th { text-align: right; font-weight: normal; }
.sheet .sums td { font-weight: bold; }
.sheet td ul { padding: 0; margin: 0; list-style: none; }
.sheet td li { margin: 0; }
.sheet .mark { width: 8mm; }
.sheet .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
.sheet .plans th.number { white-space: normal; }
.sheet .count { width: 9mm; padding-right: 4mm; }
.sheet .part, .sheet .what, .sheet .piece, .sheet .wide { overflow-wrap: anywhere; }
.sheet .part, .sheet .piece { min-width: 26mm; }
.sheet .wide { min-width: 30mm; }
.sheet .what { min-width: 48mm; }
.sheet .length, .sheet .per { white-space: nowrap; }
.sheet .along, .sheet .across { min-width: 40mm; }

.sheet .tick { width: 9mm; line-height: 1; }
.sheet .cuts .tick { width: 26mm; min-width: 26mm; }
.sheet .tick-box { display: inline-block; padding: 0.6mm 1.2mm 0.6mm 0; }
.sheet .tick-box input { appearance: none; box-sizing: border-box; width: 4.4mm; height: 4.4mm; margin: 0;
  border: 0.3mm solid #000; border-radius: 0; background: #fff; vertical-align: middle; }
.sheet .tick-box input:checked { background: linear-gradient(to top right, transparent 45%, #000 45% 55%, transparent 55%),
  linear-gradient(to bottom right, transparent 45%, #000 45% 55%, transparent 55%), #fff; }
.sheet .progress[hidden], .sheet button[hidden] { display: none; }

.sheet figure { margin: 2.5mm 0 4mm; }
.sheet figcaption { font-weight: bold; margin: 0 0 0.5mm; }
.sheet .figures { display: flex; flex-wrap: wrap; justify-content: space-between; column-gap: 6mm; }
.sheet .figures figure { min-width: 0; max-width: 100%; }
.sheet .paper { overflow-x: auto; }
.sheet .drawing { display: block; background: #fff; max-width: none; }
.sheet .edge, .sheet .hidden, .sheet .trail, .sheet .screw, .sheet .dimension, .sheet .leader { pointer-events: none; }
.sheet figure:not(.to-scale) .drawing { margin: 0 auto; }
.sheet figure.to-scale { display: inline-block; vertical-align: top; max-width: 100%; }
.sheet .beside { float: right; margin: 0 0 2mm 4mm; max-width: 50%; }
.sheet .step { display: flow-root; border-bottom: 0.15mm solid #999; padding-bottom: 2mm; }

.sheet h2, .sheet h3, .sheet .key, .sheet tr.group, .sheet figcaption, .sheet h3 + .source { break-after: avoid; }
.sheet .goes-on { break-before: avoid; }
.sheet tr, .sheet .step, .sheet .box-figures, .sheet figure, .sheet li, .sheet dl div, .sheet p { break-inside: avoid; }

@media screen {
  .sheet figure:not(.to-scale) .drawing { max-width: 100%; height: auto; }
  .sheet .old { opacity: 0.5; transition: opacity 0.3s 0.4s; }
  .sheet .tick-box { padding: 0.5mm; cursor: pointer; }
  .sheet .tick-box input { width: 6.4mm; height: 6.4mm; cursor: pointer; }
  .sheet .tick-box input:focus-visible, .sheet button:focus-visible, .sheet .paper:focus-visible {
    outline: 0.8mm solid #000; outline-offset: 0.6mm; }
  .sheet .cut-list .tick-box input { scroll-margin-top: 20mm; }
  .sheet .progress { position: sticky; top: 0; z-index: 1; display: flex; justify-content: space-between; align-items: center;
    gap: 3mm; background: #fff; padding: 1.5mm 0; border-bottom: 0.22mm solid #000; font-weight: bold; }
  .sheet button { font: inherit; font-weight: normal; color: #000; background: #fff; border: 0.3mm solid #000; border-radius: 0;
    padding: 1mm 3mm; min-height: 8mm; cursor: pointer; }
}
@media (forced-colors: active) {
  .sheet .tick-box input { appearance: auto; }
  .sheet .drawing, .sheet .drawing * { forced-color-adjust: none; }
}
@media screen and (max-width: 760px) {
  .sheet { padding: 6mm 4mm; }
  .sheet h1 { font-size: 20pt; }
  .sheet .leads > li { padding-left: 0; }
  .sheet .leads .lead { float: none; margin-left: 0; }
  .sheet dl div, .sheet .light div, .sheet dl.columns div { grid-template-columns: 26mm 1fr; }
  .sheet .beside { float: none; margin: 2mm 0; max-width: none; }
  .sheet .drawings > figure { float: none; margin-right: 0; }
  .sheet figure:not(.to-scale):not(.beside) .drawing { max-width: none; zoom: 0.76; }
  .sheet .tick-box input { width: 9mm; height: 9mm; }
  .sheet .tick-box { padding: 1.4mm; }
  .sheet button { min-height: 12mm; }
  .sheet thead { display: none; }
  .sheet table, .sheet tbody { display: block; }
  .sheet tr { display: grid; grid-template-columns: auto auto 1fr auto; column-gap: 2.5mm; padding: 1.5mm 0; }
  .sheet th, .sheet td { display: block; padding: 0; width: auto; min-width: 0; grid-column: 1 / -1; }
  .sheet td:empty { display: none; }
  .sheet td.tick, .sheet .cuts .tick { width: auto; min-width: 0; }
  .sheet .part, .sheet .piece, .sheet .what, .sheet .wide, .sheet .along, .sheet .across { min-width: 0; }
  .sheet .cuts td.mark, .sheet .set-outs td.mark { grid-column: 1; min-width: 7mm; }
  .sheet .cuts td.count { grid-column: 2; padding: 0; text-align: left; }
  .sheet .cuts td.part, .sheet .set-outs td.piece { grid-column: 3; }
  .sheet .cuts td.length, .sheet .set-outs td.per { grid-column: 4; }
  .sheet .shop td.tick { grid-column: 1; grid-row: 1 / 3; }
  .sheet .shop td.count { grid-column: 2; }
  .sheet .shop td.sold { grid-column: 3; }
  .sheet .shop td.together { grid-column: 4; grid-row: 1; }
  .sheet .shop td.what, .sheet .shop td.each, .sheet .shop td.note { grid-column: 2 / -1; text-align: left; }
  .sheet .screws td.count { grid-column: 1; text-align: left; }
  .sheet .screws td.what { grid-column: 2 / -1; }
  .sheet tr.group { display: block; padding-top: 5mm; }
  .sheet tr.group th { padding: 0; }
  .sheet .sums th { grid-column: 1 / 4; }
  .sheet .sums td { grid-column: 4; }
  .sheet td[data-label]::before { content: attr(data-label) " "; font-size: 10pt; }
}

@media print {
  .sheet-page { background: #fff; }
  .sheet { max-width: none; padding: 0; font-size: 10.5pt; line-height: 1.28; }
  .sheet h1 { font-size: 22pt; }
  .sheet h2 { font-size: 14pt; margin: 5mm 0 1.5mm; }
  .sheet h3 { font-size: 10.5pt; line-height: 1.28; margin: 3.5mm 0 0.8mm; }
  .sheet small, .sheet .file, .sheet .source, .sheet .key, .sheet .below, .sheet thead th { font-size: 9.2pt; }
  .sheet th, .sheet td { padding-top: 0.8mm; padding-bottom: 0.8mm; }
  .sheet .group th { padding-top: 2.4mm; }
  .sheet dl div { padding: 0.3mm 0; }
  .sheet figure { margin: 2mm 0 3mm; }
  .sheet .leads > li { margin-bottom: 2mm; }
  .sheet .new-page { break-before: page; }
  .sheet .one-page { break-inside: avoid; }
  .sheet .paper { overflow: visible; }
  .sheet thead { display: table-header-group; }
  .sheet .progress { display: none; }
  .sheet .tick-box input { print-color-adjust: exact; }
}
@page { margin: 15mm; @bottom-right { content: counter(page) " of " counter(pages); font: 11pt sans-serif; } }
.sheet:lang(fr) { page: fr; }
@page fr { @bottom-right { content: counter(page) " sur " counter(pages); } }
`;

/** The hash of `SHEET_STYLE` for a content policy; a test holds it to the text. */
export const SHEET_STYLE_HASH = "sha256-RamQxV1BV9iZxUQzOh5Z/gNE1+XUidZO2gRKGBom84U=";
