/**
 * How a card looks: for a kitchen wall, read from an arm's length with wet hands. Ink on paper, brass
 * for what belongs to the balance, rules between rows. Sizes follow the type, so that a sheet of A5
 * is the A4 one made smaller by the square root of a half.
 */
export const style: string = `
:root{color-scheme:light dark;--paper:#fffdf9;--ink:#1b1916;--quiet:#5a5348;--rule:#c9c0b0;--brass:#7d5200;--solid:#2f2a22;--second:#5f5648;--third:#867c6c;--warn:#9b1c1c;--warn-paper:#fdf1ee}
@media (prefers-color-scheme:dark){:root{--paper:#171512;--ink:#f4efe6;--quiet:#bdb4a4;--rule:#4a443a;--brass:#e6b65c;--solid:#f4efe6;--second:#c6bcab;--third:#9c9280;--warn:#ffb4a8;--warn-paper:#2b1815}}
*{box-sizing:border-box}
html{font:112.5%/1.4 "Gill Sans","Gill Sans Nova",Seravek,"Trebuchet MS",Verdana,sans-serif;background:var(--paper);color:var(--ink)}
body{overflow-wrap:anywhere;margin:0 auto;padding:1.2rem;max-width:76rem}
header,main,footer{min-width:0}
h1,h2,h3,p,ul,ol,figure,table{margin:0}
h1{font-size:2.6em;line-height:1.05;letter-spacing:-.01em}
h2{font-size:1.35em;line-height:1.15;color:var(--brass);margin-top:.7em;break-after:avoid}
h3{font-size:1.1em;line-height:1.2;margin-top:.6em;break-after:avoid}
h4{font-size:1em;margin:.5em 0 0;break-after:avoid}
.head{display:flex;flex-wrap:wrap;align-items:end;justify-content:space-between;gap:.2rem 1.2rem;border-bottom:.16rem solid var(--brass);padding-bottom:.4rem}
.head>*{min-width:0}
.issued,.about{color:var(--quiet)}
.beam{width:15rem;max-width:100%;height:auto;fill:none;stroke:var(--brass);stroke-width:1.6}
.beam .weight{fill:var(--brass)}
main section:first-child>h2:first-child{margin-top:0}
main{margin-top:.6rem}
table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums}
caption{text-align:start;color:var(--quiet);font-size:.85em;padding:.1em 0}
th,td{text-align:start;vertical-align:baseline;padding:.16em .5em .16em 0;font-weight:inherit}
td{overflow-wrap:break-word}
tbody tr,tfoot tr{border-top:.06rem solid var(--rule);break-inside:avoid}
tfoot{display:table-row-group}
.short,tfoot{break-inside:avoid}
tfoot,tfoot tr{break-before:avoid}
thead th{color:var(--quiet);font-size:.8em;vertical-align:bottom}
th[scope=rowgroup]{color:var(--brass);font-weight:700;padding-top:.45em}
.weigh{font-weight:700;font-size:1.2em;text-align:end;white-space:nowrap}
.brings,.percent{text-align:end}
thead .weigh{font-size:.8em;font-weight:inherit}
.measure{padding-inline-start:.4em;min-width:4.6em;overflow-wrap:anywhere}
tbody th[scope=row]{min-width:6em}
td:last-child{padding-inline-end:0}
tfoot th,tfoot td{font-weight:700}
small,.small{font-size:.8em;color:var(--quiet)}
tr.dose th[scope=row]::before{content:"";display:inline-block;width:.5em;height:.5em;margin-inline-end:.35em;background:var(--brass);border-radius:50%}
ol{padding-inline-start:1.4em;margin-top:.4em}
ol>li{margin-bottom:.25em}
ol>li::marker{font-weight:700;color:var(--brass)}
b{font-weight:700}
.patterns{position:absolute}
.energy,.share{display:block;width:100%;height:1.15em}
.share{min-width:4.5em;height:.8em}
.swatch{width:.85em;height:.85em;vertical-align:-.08em;margin-inline-end:.3em}
.key{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.1em 1em}
figure{margin:.5em 0;break-inside:avoid}
.solid{fill:var(--solid)}.dots{fill:url(#dots)}.stripes{fill:url(#stripes)}.bars{fill:url(#bars)}.plain{fill:var(--paper)}.unknown{fill:url(#hatch)}.over{fill:var(--warn)}
.dot-ground,.stripe-line{fill:var(--second)}.dot,.stripe-ground{fill:var(--paper)}.stripe-line{fill:var(--third)}.bars-ground{fill:var(--paper)}.bars-line{fill:var(--ink)}.hatch-line{fill:var(--quiet)}
.frame{fill:none;stroke:var(--ink);stroke-width:1;vector-effect:non-scaling-stroke}
.day-mark,.upper-mark{stroke:var(--ink);stroke-width:2;vector-effect:non-scaling-stroke}
.upper-mark{stroke:var(--warn);stroke-dasharray:3 2}
.beyond{fill:var(--paper)}
.cautions{border-inline-start:.3rem solid var(--warn);background:var(--warn-paper);padding:.4em .7em;margin-top:.9em}
.cautions h2{color:var(--warn);margin-top:0;font-size:1.15em}
.cautions ul,footer ul,footer ol{padding-inline-start:1.1em}
.over-text{color:var(--warn);font-weight:700}
sup{line-height:0}
a{color:inherit}
footer{border-top:.06rem solid var(--rule);margin-top:1em;padding-top:.4em;font-size:.78em;color:var(--quiet)}
footer h2{font-size:1em;margin:.3em 0 0;color:inherit}
footer ol{margin-top:0}
footer ol>li{margin:0}
footer ol>li::marker{font-weight:400;color:inherit}
.page+.page{margin-top:3rem;border-top:.3rem double var(--rule);padding-top:1.2rem}
.pot-share .weigh{font-size:1.7em}
.pot-share th{font-weight:700}
.order{font-size:1.05em;margin-bottom:.4em}
.pot{break-inside:avoid-page;border-top:.06rem solid var(--rule);padding-bottom:.7em}
.facts{color:var(--quiet)}
.work{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1.2fr);gap:0 1.6rem;align-items:start}
.served{margin-top:.5em}
.served .weigh{padding-inline-end:1em}
.added{width:45%}
.shop section{break-inside:avoid}
.box{display:inline-block;width:.85em;height:.85em;border:.1em solid var(--ink);margin-inline-end:.5em;vertical-align:-.08em}
.need,.price{text-align:end;white-space:nowrap;color:var(--quiet)}
.buy th[scope=col]:nth-child(n+3){text-align:end}
.buy{table-layout:fixed}
.buy th[scope=col]:nth-child(2){width:36%}
.buy th[scope=col]:nth-child(n+3){width:22%}
.buy .weigh{white-space:normal}
.shop h2::first-letter{text-transform:uppercase}
.total{margin-top:.8em;font-size:1.2em}
@media (max-width:40rem){.buy thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.buy tr{display:grid;grid-template-columns:minmax(0,1fr) auto;gap:0 .6em;padding:.25em 0}
.buy th,.buy td{padding:0}
.buy th[scope=row]{grid-column:1/-1}
.buy .weigh{text-align:start;white-space:normal;padding-inline-start:1.2em}}
@media (max-width:40rem){.work{grid-template-columns:minmax(0,1fr)}
.served thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.served tr{display:grid;grid-template-columns:minmax(0,1fr) auto;gap:0 .6em;padding:.2em 0}
.served th,.served td{padding:0}
.served .weigh{grid-area:1/2;padding:0}
.served .added{grid-column:1/-1;width:auto}}
@media (min-width:60rem){main.cook{columns:1}}
@media (max-width:24rem){body{padding:.8rem}.share{min-width:2.5em}tbody th[scope=row]{min-width:5em}}
@media (min-width:60rem){main{columns:2;column-gap:2.4rem}footer{columns:2;column-gap:2.4rem}}
@page{margin:9mm}
@media print{
:root{color-scheme:light;--paper:#fff;--ink:#000;--quiet:#3d3a35;--rule:#9a958c;--brass:#5f3f00;--solid:#2b2721;--second:#575044;--third:#7d7465;--warn:#8a1010;--warn-paper:#fff}
html{font-size:var(--type);line-height:1.25;print-color-adjust:exact;-webkit-print-color-adjust:exact}
body{padding:0;max-width:none}
main,footer{columns:2;column-gap:1.6rem}
main{orphans:1;widows:1}
main.cook{columns:1}
.page{break-after:page}
.page:last-child{break-after:auto}
.page+.page{margin-top:0;border-top:0;padding-top:0}
}
@media print and (max-width:160mm){html{font-size:calc(var(--type)*.7)}}
`;
