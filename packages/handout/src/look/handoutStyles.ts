import { unsafeCSS, type CSSResult } from "lit";

/** White paper and black ink, whatever the reader's screen is set to: the greys are what a mono laser can hold. */
const paper = `
--paper:#fff;--ink:#14110d;--soft:#4d463d;--rule:#a8a196;--night:#efede9;--accent:#9c2710;
--sun-tint:#fbf0c8;--sun-mark:#8a5f00;--road-tint:#e3edf3;--road-mark:#1f5578;--mains-tint:#f0e7f4;--mains-mark:#6a3d8a;
--tone-1:#cf8a5e;--tone-2:#c5dde0;--tone-3:#8fa66b;--tone-4:#f0d9b5;--tone-5:#9d97c4;--tone-6:#e3e3c3;--tone-rest:#c9c4ba;`;

const sheet = `
@page{size:A4;margin:9mm 13mm 8mm}
.handout{${paper}
box-sizing:border-box;background:#fff;color:var(--ink);color-scheme:light;
font:400 8.6pt/1.32 var(--sheet-font,"Sheet",system-ui,"Liberation Sans",Arial,sans-serif);
font-variant-numeric:tabular-nums lining-nums;overflow-wrap:anywhere;
-webkit-print-color-adjust:exact;print-color-adjust:exact}
.handout *{box-sizing:border-box}
.handout p,.handout h1,.handout h2,.handout ul,.handout table{margin:0;padding:0}
.handout ul{list-style:none}
.handout b{font-weight:700}
.handout .note{color:var(--soft);font-size:7pt;line-height:1.25;margin-top:.8mm}

.handout.sheet{width:184mm;display:flex;flex-direction:column;break-after:page;page-break-after:always}
.handout.sheet:last-child{break-after:auto;page-break-after:auto}
.handout.customer{height:279.5mm;overflow:hidden}

.handout .masthead{display:flex;align-items:flex-end;gap:5mm;padding-bottom:2mm;border-bottom:2.5pt double var(--ink)}
.handout .logo{max-width:46mm;max-height:14mm;object-fit:contain;object-position:left bottom}
.handout .shop{flex:1;min-width:0;font-size:8.2pt;color:var(--soft)}
.handout .shop b{display:block;font-size:12pt;line-height:1.15;color:var(--ink)}
.handout .stamp{text-align:right;font-size:8.2pt;color:var(--soft);white-space:nowrap}
.handout .stamp b{display:block;color:var(--ink);font-size:9pt}

.handout .titled{padding:2.6mm 0 2.2mm 9mm}
.handout h1{font-size:15pt;line-height:1.15;font-weight:700;letter-spacing:-.01em;white-space:nowrap;overflow:hidden;text-overflow:ellipsis}
.handout .titled p{color:var(--soft);margin-top:.6mm}

.handout .numbered{border-top:.75pt solid var(--ink);padding:1.5mm 0 2.4mm 9mm;position:relative}
.handout h2{font-size:9.2pt;line-height:1.2;font-weight:700;margin-bottom:1.1mm;break-after:avoid}
.handout h2 b{position:absolute;left:0;top:.7mm;width:7mm;font-size:17pt;line-height:1;font-weight:300;color:var(--soft)}
.handout .lead{font-size:12.2pt;line-height:1.28;font-weight:500;letter-spacing:-.004em;text-wrap:pretty}
.handout .lead+p{margin-top:1mm;font-size:9.4pt}
.handout .long{flex:1 1 0;min-height:50mm;display:flex;flex-direction:column}
.handout .long .body{flex:1;min-height:0;display:flex;flex-direction:column}
.handout .long .picture{flex:1 1 0;min-height:0;width:100%;height:auto}
.handout .pair{display:grid;grid-template-columns:minmax(0,5fr) minmax(0,6fr);gap:0 6mm;margin-top:1.2mm;align-items:start}

.handout .ruled{width:100%;border-collapse:collapse}
.handout .ruled th,.handout .ruled td{padding:.6mm 0 .6mm 2.4mm;text-align:left;vertical-align:baseline;font-weight:400}
.handout .ruled tr>:first-child{padding-left:0}
.handout .ruled .figures{text-align:right}
.handout .ruled td.figures{white-space:nowrap}
.handout thead th{font-size:7.2pt;line-height:1.15;color:var(--soft);vertical-align:bottom;border-bottom:.75pt solid var(--ink)}
.handout thead{display:table-header-group}
.handout tbody tr{break-inside:avoid}
.handout tbody th,.handout tbody td{border-bottom:.4pt solid var(--rule)}
.handout tbody tr:last-child th,.handout tbody tr:last-child td{border-bottom:0}
.handout .options tbody th{width:37%}
.handout .tight{font-size:7.8pt}
.handout .tight th,.handout .tight td{padding-top:.35mm;padding-bottom:.35mm}
.handout .letter{display:inline-block;min-width:3.6mm;margin-right:1.2mm;border:.6pt solid var(--ink);text-align:center;font-size:7pt;line-height:3.1mm;font-weight:700;color:var(--ink)}
.handout .figures .letter{margin-right:0}
.handout .letters{margin-right:.6mm;white-space:nowrap}
.handout .letters .letter,.handout .runs .letter{margin-right:.5mm}
.handout .marks .letter{line-height:2.7mm}
.handout .named{display:flex;align-items:baseline}
.handout .named bdi{flex:1;display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden}
.handout .many .named bdi{-webkit-line-clamp:1}
.handout .unbroken{white-space:nowrap}
.handout .oneLine{display:inline-block;max-width:34mm;overflow:hidden;text-overflow:ellipsis;white-space:nowrap;vertical-align:bottom}
.handout .sample{flex:none;align-self:flex-start;margin-top:1.25mm;display:inline-block;width:10mm;height:1.5mm;vertical-align:middle;margin-right:2mm}
.handout .bar{display:inline-block;width:11.6mm;height:2.4mm;vertical-align:baseline}

.handout .marks li{padding-left:3mm;position:relative;margin-bottom:.5mm}
.handout .marks li::before{content:"";position:absolute;left:0;top:.72em;width:1.5mm;border-top:.9pt solid var(--ink)}
.handout .columns{columns:3;column-gap:5mm}
.handout .small{position:relative;margin-top:auto;padding:1.4mm 0 0 9mm;border-top:.75pt solid var(--ink);font-size:6.5pt;line-height:1.25;color:var(--soft);break-inside:avoid}

.handout.fitter{font-size:7.8pt;line-height:1.28;min-height:279mm}
.handout.fitter .masthead{padding-bottom:1mm;align-items:baseline}
.handout.fitter .stamp b{display:inline;margin-right:4mm}
.handout.fitter .titled{padding:1.2mm 0 1.2mm 9mm;display:flex;justify-content:space-between;align-items:baseline;gap:6mm}
.handout.fitter h1{font-size:11.5pt}
.handout.fitter .titled p{font-size:7.3pt;text-align:right;flex:0 0 auto;max-width:60mm}
.handout.fitter .numbered{padding:.9mm 0 1mm 9mm}
.handout.fitter h2{margin-bottom:.5mm}
.handout.fitter .ruled th,.handout.fitter .ruled td{padding-top:.25mm;padding-bottom:.25mm}
.handout .parts{table-layout:fixed}
.handout .parts+.parts{margin-top:2mm}
.handout .parts tr>:first-child{width:25mm;color:var(--soft)}
.handout .parts thead th{color:var(--ink);font-size:7.8pt;font-weight:700}
.handout .line{display:block}
.handout .wire .line~.line{font-weight:400;font-size:6.9pt;line-height:1.22}
.handout .changed{font-weight:700}
.handout .none{color:var(--soft)}
.handout .runs{font-size:7.3pt}
.handout.fitter .wire th,.handout.fitter .wire td{padding-top:.2mm;padding-bottom:.35mm}
.handout .runs tr>:first-child{white-space:nowrap;width:1%}
.handout .ticks{columns:3;column-gap:5mm}
.handout .ticks li{position:relative;padding-left:5mm;margin-bottom:.7mm;break-inside:avoid;font-size:6.8pt;line-height:1.2}
.handout .box{position:absolute;left:0;top:.35mm;width:2.7mm;height:2.7mm;border:.8pt solid var(--ink)}
.handout.fitter .marks{font-size:6.8pt;line-height:1.2}
.handout.fitter .small{font-size:5.8pt;line-height:1.16;padding-top:.9mm}
.handout.fitter .note{font-size:6.6pt;line-height:1.2;margin-top:.5mm}
`;

/** Style sheet of the printed pages: put it, with `chartStyles`, where they are placed. */
export const handoutStyles: CSSResult = /* @__PURE__ */ unsafeCSS(sheet);

/** How the file looks on a screen: sheets of paper, one under the other. */
export const screenStyles = `
html,body{margin:0;padding:0;background:#fff}
@media screen{
body{background:#d8d4cc;padding:6mm 0}
.handout.sheet{box-sizing:content-box;margin:0 auto 6mm;padding:9mm 13mm 8mm}
}`;
