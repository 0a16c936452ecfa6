import { Markup } from "./html";

/** One style for every printed page: black on white, large where it is read at arm's length. */
export const PRINT_STYLE = new Markup(`
@page { margin: 10mm 10mm 13mm; @bottom-right { content: counter(page) " of " counter(pages); font: 8pt sans-serif; } }
* { box-sizing: border-box; }
body { font: 10pt/1.35 "Liberation Sans", Arial, sans-serif; color: #000; background: #fff; margin: 0 auto; max-width: 190mm; padding: 4mm; }
@media print { body { max-width: none; padding: 0 0.5mm; } }
header { border-bottom: 0.6mm solid #000; margin-bottom: 4mm; }
h1 { font-size: 15pt; margin: 0; }
h2 { font-size: 12pt; margin: 5mm 0 2mm; break-after: avoid; }
header p { margin: 1mm 0 2mm; }
header .not-told { margin: 0 0 2mm; padding: 1mm 2mm; border: 0.4mm solid #000; list-style: none; font-size: 9pt; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 0.2mm solid #555; padding: 1mm 1.6mm; text-align: left; vertical-align: top; }
th { background: #eee; font-weight: 600; }
td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
.labels { display: grid; grid-template-columns: 1fr 1fr; gap: 5mm; }
.label { border: 0.5mm solid #000; border-radius: 2mm; padding: 3mm; break-inside: avoid; display: grid; grid-template-columns: 1fr auto; gap: 1mm 3mm; align-content: start; }
.label .mark { font-size: 30pt; font-weight: 700; line-height: 1; overflow-wrap: anywhere; }
.label .mark.long { font-size: 16pt; line-height: 1.1; }
.label dd.whole { grid-column: 2 / -1; }
.label .part { text-align: right; font-size: 12pt; }
.label dl { grid-column: 1 / -1; margin: 1mm 0 0; display: grid; grid-template-columns: auto 1fr auto 1fr; gap: 0.6mm 2mm; }
.label dt { color: #333; }
.label dd { margin: 0; font-weight: 600; overflow-wrap: anywhere; }
.label .reference, .label .warning, .label .waived, .label .remark { grid-column: 1 / -1; margin: 0; }
.remark { overflow-wrap: anywhere; white-space: pre-line; }
.warning { font-weight: 700; border: 0.4mm solid #000; padding: 1mm 2mm; }
.note { color: #222; }
.refused { border: 0.9mm solid #000; padding: 1mm 3mm 2mm; }
.refused h2 { margin-top: 1mm; }
.refused ul { margin: 0; padding-left: 5mm; }
.refused li, .stops { overflow-wrap: anywhere; }
.to-buy { width: auto; min-width: 60%; }
.ticket { border: 0.5mm solid #000; padding: 2mm 3mm; margin: 0 0 3mm; break-inside: avoid; }
.ticket .remark { margin: 1mm 0 0; font-size: 9.5pt; }
.ticket .strip { display: grid; grid-template-columns: auto 1fr auto 17mm; gap: 0 4mm; align-items: center; border-bottom: 0.4mm solid #000; padding-bottom: 1.5mm; }
.ticket .mark { font-size: 24pt; font-weight: 700; line-height: 1; overflow-wrap: anywhere; }
.ticket .mark.long { font-size: 13pt; line-height: 1.1; max-width: 50mm; }
.ticket .what { font-size: 9.5pt; }
.ticket .what strong { font-size: 15pt; }
.ticket .cut { text-align: right; }
.ticket .cut strong { font-size: 20pt; font-variant-numeric: tabular-nums; }
.ticket .code { grid-column: 4; grid-row: 1 / 3; width: 17mm; height: 17mm; }
.ticket .reference { grid-column: 1 / 4; font-size: 8.5pt; color: #222; margin-top: 1mm; }
.ticket .deviation { font-size: 8.5pt; white-space: nowrap; }
.ticket .bar { display: grid; grid-template-columns: 92mm 1fr; gap: 4mm; margin: 1.5mm 0; align-items: start; }
.ticket figure { margin: 0; }
.ticket figure svg { display: block; width: 100%; height: auto; }
.ticket figcaption { font-size: 8pt; color: #222; }
.ticket .none { font-style: italic; }
.ticket .facts { margin: 0; display: grid; grid-template-columns: auto 1fr; gap: 0.5mm 3mm; align-content: start; font-size: 8.8pt; line-height: 1.25; }
.ticket .facts dt { color: #222; }
.ticket .facts dd { margin: 0; overflow-wrap: anywhere; }
.ticket .facts .dim { white-space: nowrap; margin-right: 2mm; }
.ticket .facts small { display: block; font-size: 7.5pt; color: #333; }
.ticket .bends { font-size: 8.5pt; }
.ticket .bends th { font-size: 7.5pt; vertical-align: bottom; }
.ticket .bends th, .ticket .bends td { padding: 0.8mm 1.2mm; }
.ticket .bends td strong { font-size: 10.5pt; font-variant-numeric: tabular-nums; }
.ticket .bends .trial { font-weight: 700; }
.ticket .order { margin: 0.8mm 0 0; font-size: 8.3pt; line-height: 1.25; }
.ticket .warnings { margin: 1mm 0 0; padding: 0.6mm 2mm; border: 0.4mm solid #000; list-style: none; font-size: 8.8pt; line-height: 1.25; }
.ticket .hold { border-width: 0.9mm; margin-top: 1.5mm; font-size: 9.5pt; }
.ticket .hold .lead { font-weight: 700; }
.ticket .warnings b { text-transform: uppercase; font-size: 8pt; margin-right: 1mm; }
.ticket .cautions { margin: 1mm 0 0; padding: 0 0 0 3.5mm; columns: 2; column-gap: 6mm; font-size: 7.8pt; line-height: 1.25; }
.ticket .cautions li { break-inside: avoid; }
@media screen and (max-width: 190mm) {
.ticket .strip, .ticket .bar { grid-template-columns: 1fr; }
.ticket .code, .ticket .reference { grid-column: 1; grid-row: auto; }
.ticket .cut { text-align: left; }
.ticket .bends { display: block; overflow-x: auto; }
.ticket .cautions { columns: 1; }
}
@media print { .ticket { font-size: 92%; } }
.chart .plot { display: block; width: 100%; height: auto; margin: 2mm 0; }
.chart .plot text { font-size: 10px; fill: #000; }
.chart .plot .head, .chart .plot .name { font-weight: 700; font-size: 11px; }
.chart .plot .none { font-style: italic; }
.chart .plot .grid { stroke: #ccc; stroke-width: 0.6; }
.chart .plot .axis { stroke: #000; stroke-width: 1; }
.chart .plot .band { fill: #f1f1f1; }
.chart .plot .interval { stroke: #000; stroke-width: 1.2; fill: none; }
.chart .plot .dot { fill: #000; }
.chart .plot .ring { fill: none; stroke: #000; stroke-width: 1.2; }
.chart .plot .cross { stroke: #000; stroke-width: 2; fill: none; }
.chart .angles { font-size: 9pt; }
.chart + .chart { break-before: page; }
.chart .angles strong { font-size: 11pt; }
.chart .problems { padding-left: 5mm; font-size: 9pt; }
@media print { .band { print-color-adjust: exact; } }
`);
