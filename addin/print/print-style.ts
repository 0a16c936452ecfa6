import { Markup } from "./html";

/** One style for every printed page: black on white, large where it is read at arm's length. */
export const PRINT_STYLE = new Markup(`
@page { size: A4; margin: 10mm; }
* { box-sizing: border-box; }
body { font: 10pt/1.35 "Liberation Sans", Arial, sans-serif; color: #000; background: #fff; margin: 0 auto; max-width: 190mm; padding: 4mm; }
header { border-bottom: 0.6mm solid #000; margin-bottom: 4mm; }
h1 { font-size: 15pt; margin: 0; }
h2 { font-size: 12pt; margin: 5mm 0 2mm; break-after: avoid; }
header p { margin: 1mm 0 2mm; }
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
.label .reference, .label .warning { grid-column: 1 / -1; margin: 0; }
.warning { font-weight: 700; border: 0.4mm solid #000; padding: 1mm 2mm; }
.note { color: #222; }
`);
