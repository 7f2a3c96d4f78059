/**
 * How the sheet looks: black on paper white in any surroundings, on a desk, on a phone, and printed on Letter or A4.
 * Only what stands under `.sheet` and `.sheet-page` is styled, so that the fragment can live in another page.
 */
export const SHEET_STYLE = `
.sheet-page { margin: 0; background: #ddd; }
.sheet { color-scheme: light; background: #fff; color: #000; font: 12pt/1.38 sans-serif; text-align: left;
  max-width: 180mm; margin: 0 auto; padding: 14mm 15mm; overflow-wrap: break-word; }
.sheet h1 { font-size: 24pt; line-height: 1.15; margin: 0; font-weight: bold; }
.sheet h2 { font-size: 15pt; line-height: 1.2; margin: 8mm 0 2mm; padding-top: 1.5mm; border-top: 0.4mm solid #000; }
.sheet h3 { font-size: 12pt; margin: 5mm 0 1mm; }
.sheet p { margin: 0 0 1.5mm; }
.sheet ul, .sheet ol { margin: 0 0 2mm; padding-left: 6mm; }
.sheet li { margin: 0 0 1.2mm; }
.sheet small { font-size: 10pt; }
.sheet .file, .sheet .source, .sheet .key, .sheet .where { font-size: 11pt; }
.sheet .file { margin: 1mm 0 4mm; }

.sheet dl { margin: 0 0 2mm; }
.sheet dl div { display: flex; gap: 3mm; padding: 0.5mm 0; }
.sheet dt { flex: 0 0 42mm; }
.sheet dd { margin: 0; font-weight: bold; }

.sheet .problem-list { list-style: none; padding: 0; }
.sheet .problem { margin: 0 0 4mm; padding-left: 24mm; }
.sheet .problem p { margin: 0; }
.sheet .class { float: left; margin-left: -24mm; }
.sheet .hazard .class { border: 0.4mm solid #000; padding: 0 1.5mm; margin-left: -24mm; }
.sheet .caution { border-left: 0.4mm solid #000; padding-left: 3mm; }

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
.sheet td ul, .sheet ol ul { padding: 0; list-style: none; }
.sheet td ul, .sheet td li, .sheet ol ul, .sheet ol ul li { margin: 0; }
.sheet .tick { width: 8mm; }
.sheet .mark { width: 8mm; }
.sheet .whole, .sheet .per { white-space: nowrap; }
.sheet .grid { min-width: 40mm; }
.sheet .set-outs .group th { font-weight: bold; }
.sheet .count { width: 9mm; text-align: right; padding-right: 4mm; }
.sheet .name, .sheet .what, .sheet .wide { overflow-wrap: anywhere; }
.sheet .name { min-width: 26mm; }
.sheet .wide { min-width: 30mm; }
.sheet .what { min-width: 52mm; }
.sheet .length, .sheet .rip { white-space: nowrap; }
.sheet .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
.sheet .box { display: inline-block; width: 3.6mm; height: 3.6mm; border: 0.3mm solid #000; vertical-align: -0.5mm; }

.sheet figure { margin: 2.5mm 0 4mm; }
.sheet figcaption { font-weight: bold; margin: 0 0 0.5mm; }
.sheet .paper { overflow-x: auto; }
.sheet .drawing { display: block; background: #fff; max-width: none; }
.sheet .edge, .sheet .hidden, .sheet .trail, .sheet .screw, .sheet .dimension, .sheet .leader { pointer-events: none; }
.sheet .marks { list-style: none; padding: 0; columns: 3 48mm; column-gap: 6mm; }
.sheet .marks li { padding-left: 7mm; text-indent: -7mm; }
.sheet .marks strong { display: inline-block; min-width: 7mm; text-indent: 0; }

.sheet h2, .sheet h3, .sheet .key, .sheet tr.group, .sheet figcaption, .sheet h3 + .source { break-after: avoid; }
.sheet tr, .sheet tbody, .sheet .box-figures, .sheet figure, .sheet li, .sheet .problem, .sheet dl div, .sheet p { break-inside: avoid; }

@media screen {
  .sheet .drawings .drawing { max-width: 100%; height: auto; }
  .sheet .drawings .old { opacity: 0.5; transition: opacity 0.3s 0.4s; }
}
@media screen and (max-width: 760px) {
  .sheet { padding: 6mm 4mm; }
  .sheet h1 { font-size: 20pt; }
  .sheet .problem { padding-left: 0; }
  .sheet .class, .sheet .hazard .class { float: none; margin-left: 0; }
  .sheet dt { flex-basis: 26mm; }
  .sheet thead { display: none; }
  .sheet table, .sheet tbody { display: block; }
  .sheet tr { display: grid; grid-template-columns: 7mm 9mm 1fr auto; column-gap: 2mm; padding: 1.5mm 0; }
  .sheet .ring-list tr { grid-template-columns: 0 0 1fr auto; column-gap: 0; }
  .sheet th, .sheet td { display: block; padding: 0; width: auto; min-width: 0; grid-column: 3 / -1; }
  .sheet td:empty { display: none; }
  .sheet .tick { grid-column: 1; }
  .sheet .count { grid-column: 2; }
  .sheet .name, .sheet .each { grid-column: 3; text-align: left; }
  .sheet .length, .sheet .together { grid-column: 4; }
  .sheet tr.group { display: block; padding-top: 5mm; }
  .sheet tr.group th { padding: 0; }
  .sheet .name, .sheet .what, .sheet .wide { min-width: 0; }
  .sheet .cuts tr { grid-template-columns: 7mm 8mm 9mm 1fr auto; }
  .sheet .cuts td { grid-column: 4 / -1; }
  .sheet .cuts .tick { grid-column: 1; }
  .sheet .cuts .mark { grid-column: 2; }
  .sheet .cuts .count { grid-column: 3; }
  .sheet .cuts .name { grid-column: 4; }
  .sheet .cuts .length { grid-column: 5; }
  .sheet .set-outs tr { grid-template-columns: 8mm 1fr; }
  .sheet .set-outs .mark { grid-column: 1; }
  .sheet .set-outs td { grid-column: 2; }
  .sheet .sums th { grid-column: 1 / 4; }
  .sheet .sums td { grid-column: 4; }
  .sheet td[data-label]::before { content: attr(data-label) " "; font-size: 10pt; }
}

@media print {
  .sheet-page { background: #fff; }
  .sheet { max-width: none; padding: 0; }
  .sheet h2 { margin-top: 6mm; }
  .sheet .paper { overflow: visible; }
  .sheet thead { display: table-header-group; }
}
@page { margin: 15mm; @bottom-right { content: counter(page) " of " counter(pages); font: 11pt sans-serif; } }
`;

/** The hash of `SHEET_STYLE` for a content policy; a test holds it to the text. */
export const SHEET_STYLE_HASH = "sha256-AOq5pbcRM+HTKtxh1xAsgx5Y5FqQ7qZObehWmhl3trY=";
