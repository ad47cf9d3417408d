/** The sheet's looks: black on white, one column, a page break before each large section, table heads repeated, no row cut in two. */
export const STYLE = `
@page { margin: 12mm; }
* { box-sizing: border-box; }
html { font: 9.5pt/1.35 Helvetica, Arial, sans-serif; color: #111; background: #fff; }
body { margin: 0 auto; max-width: 190mm; padding: 4mm; overflow-wrap: break-word; }
h1 { font-size: 17pt; line-height: 1.2; margin: 0 0 1mm; }
h2 { font-size: 13pt; margin: 4mm 0 2mm; border-bottom: 0.4mm solid #111; break-after: avoid; }
h3 { font-size: 10.5pt; margin: 3mm 0 1mm; break-after: avoid; }
p, ul, ol { margin: 1.5mm 0; }
ul { padding-left: 5mm; }
li { margin: 0.8mm 0; break-inside: avoid; }
.theirs { overflow-wrap: anywhere; }
table .theirs { display: inline-block; min-width: 20mm; }
.lead { font-size: 9pt; color: #333; }
figure { margin: 2mm 0; break-inside: avoid; text-align: center; }
figure svg { max-width: 100%; height: auto; stroke-linejoin: round; stroke-linecap: round; }
figure svg text { paint-order: stroke; stroke: #fff; stroke-width: 0.5; }
figcaption { font-size: 9pt; text-align: left; }
table { break-inside: avoid; border-collapse: collapse; width: 100%; margin: 2mm 0 3mm; font-size: 8.5pt; font-variant-numeric: tabular-nums; }
table.long { break-inside: auto; }
caption { text-align: left; font-weight: bold; padding: 0 0 1mm; break-after: avoid; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
table.long thead { break-after: avoid; break-inside: avoid; }
table.long tbody tr:nth-child(-n+2) { break-before: avoid; }
th, td { border: 0.2mm solid #666; padding: 0.8mm 1.4mm; text-align: left; vertical-align: top; }
thead th { background: #e8e8e8; }
small { display: block; font-size: 7.5pt; font-weight: normal; color: #333; }
.whole { white-space: nowrap; }
dl { display: grid; grid-template-columns: 38mm 1fr; gap: 0; margin: 2mm 0; border-top: 0.2mm solid #999; }
dt, dd { margin: 0; padding: 0.6mm 1mm; border-bottom: 0.2mm solid #999; break-inside: avoid; }
dt { font-weight: bold; }
.caution { border: 0.3mm solid #111; border-left-width: 2mm; padding: 1.2mm 2mm; break-inside: avoid; break-before: avoid; }
.beside { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm; }
#boards > p { break-inside: avoid; break-after: avoid; }
.board { break-inside: avoid; margin: 3mm 0 5mm; }
.board.beside { grid-template-columns: 96mm 1fr; align-items: start; }
.step { break-inside: auto; }
.whole-step { break-inside: avoid; }
.step:last-child, section > p:last-child { break-before: avoid; }
a { color: inherit; }
@media print {
  body { max-width: none; padding: 0; }
  section { break-before: page; }
  section.flow { break-before: auto; }
  section h2 { margin-top: 0; }
  section.flow h2 { margin-top: 3mm; }
}
@media screen and (max-width: 130mm) {
  dl, .beside, .board.beside { grid-template-columns: 1fr; }
  dt { border-bottom: 0; }
  table { display: block; overflow-x: auto; }
}
`;
