/**
 * How a card looks: for a kitchen wall, read from an arm's length with wet hands. Ink on paper, brass
 * for what belongs to the balance, rules between rows. Never more than two columns to a row, so that a phone shows what a sheet does. Sizes
 * follow the type, so that a sheet of A5 is the A4 one made smaller by the square root of a half.
 */
export const style: string = `
:root{color-scheme:light dark;--paper:#fffdf9;--ink:#1b1916;--quiet:#5a5348;--rule:#c9c0b0;--brass:#7d5200;--solid:#2f2a22;--second:#5f5648;--third:#867c6c;--warn:#9b1c1c;--warn-paper:#fdf1ee}
@media (prefers-color-scheme:dark){:root{--paper:#171512;--ink:#f4efe6;--quiet:#bdb4a4;--rule:#4a443a;--brass:#e6b65c;--solid:#f4efe6;--second:#c6bcab;--third:#9c9280;--warn:#ffb4a8;--warn-paper:#2b1815}}
*{box-sizing:border-box}
html{font:112.5%/1.4 "Gill Sans","Gill Sans Nova",Seravek,"Trebuchet MS",Verdana,sans-serif;background:var(--paper);color:var(--ink)}
body{overflow-wrap:anywhere;margin:0 auto;padding:1.2rem;max-width:76rem}
header,.sides,footer{min-width:0}
h1,h2,h3,h4,p,ul,ol,figure,table{margin:0}
h1{font-size:2.6em;line-height:1.05;letter-spacing:-.01em}
h1 small{font-size:.5em;font-weight:400;letter-spacing:0}
h2{font-size:1.35em;line-height:1.15;color:var(--brass);margin-top:.7em;break-after:avoid}
h3{font-size:1.1em;line-height:1.2;margin-top:.6em;break-after:avoid}
h4{font-size:1em;margin-top:.5em;break-after:avoid}
.head{border-bottom:.16rem solid var(--brass);padding-bottom:.4rem}
.issued,.about{color:var(--quiet)}
.allergens{font-weight:700}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.sides section:first-child>h2:first-child{margin-top:0}
.sides{margin-top:.6rem}
table{border-collapse:collapse;table-layout:fixed;width:100%;font-variant-numeric:tabular-nums;position:relative}
th,td{text-align:start;vertical-align:baseline;padding:.2em .5em .2em 0;font-weight:inherit}
td:last-child{padding-inline-end:0}
tbody tr,tfoot tr{border-top:.06rem solid var(--rule);break-inside:avoid}
tfoot{display:table-row-group}
.short,tfoot{break-inside:avoid}
tfoot,tfoot tr{break-before:avoid}
thead th{color:var(--quiet);font-size:.85em;vertical-align:bottom}
th[scope=rowgroup]{color:var(--brass);font-weight:700;padding-top:.45em}
.weigh,.brings{text-align:end;width:45%}
td,th{overflow-wrap:break-word}
.weigh{font-weight:700;font-size:1.2em}
thead .weigh{font-size:.85em;font-weight:inherit}
.lead{white-space:nowrap}.long,.pot-share .lead{white-space:normal}
.weigh small{display:block;font-size:.7em;font-weight:400;overflow-wrap:break-word}
.nutrients .brings{text-align:start}
.brings .lead,th .lead{font-weight:700}
.brings small,.nutrients th small{display:block}
.pot-share .weigh{font-size:1.9em;line-height:1.15}
.pot-share .weigh small{font-size:.5em}
.pot-share th{font-weight:700}
.bowl tfoot th,.bowl tfoot td{font-weight:700}
.day .weigh{width:32%}
.day .weigh small{display:inline;font-size:.78em}
.day h2{border-bottom:.12rem solid var(--brass)}
small,.small{font-size:.85em;color:var(--quiet)}
tr.dose th[scope=row]::before{content:"";display:inline-block;width:.5em;height:.5em;margin-inline-end:.35em;background:var(--brass);border-radius:50%}
ol{padding-inline-start:1.4em;margin-top:.4em}
ol>li{margin-bottom:.25em}
ol>li::marker{font-weight:700;color:var(--brass)}
b{font-weight:700}
.patterns{position:absolute}
.nutrients{break-inside:avoid}
.nutrients th{width:48%}
.large .lead{font-size:1.5em;line-height:1.1}
.axis{position:relative;display:block;height:1.3em;margin-inline-start:5.6em}
.axis i{position:absolute;font-style:normal;transform:translateX(-50%);inset-inline-start:0}
.axis i:nth-child(2){inset-inline-start:41.67%}
.axis i:nth-child(3){inset-inline-start:83.33%;white-space:nowrap}
.of-day{display:flex;align-items:center;gap:.6em}
.percent{flex:0 0 5em;text-align:end;line-height:1.15}
.energy,.share{display:block;width:100%;height:1.15em}
.share{flex:1;min-width:0;height:.8em}
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
.cautions ul,footer ul,.sources ol{padding-inline-start:1.1em}
.over-text{color:var(--warn);font-weight:700}
sup{line-height:0}
a{color:inherit}
footer{border-top:.06rem solid var(--rule);margin-top:1em;padding-top:.4em;font-size:.85em;color:var(--quiet)}
footer h2{font-size:1em;margin:.3em 0 0;color:inherit}
.sources{margin-top:.6em}
summary{cursor:pointer;padding:.3em 0}
.sources ol>li::marker{font-weight:400;color:inherit}
.whose{display:none}
.page+.page{margin-top:3rem;border-top:.3rem double var(--rule);padding-top:1.2rem}
.order{font-size:1.05em;margin-bottom:.4em;columns:20rem auto}
.pot{break-inside:avoid-page;border-top:.06rem solid var(--rule);padding-bottom:.7em}
.facts,.asides{color:var(--quiet)}
.asides{padding-inline-start:1.1em;font-size:.85em}
.work{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1.2fr);gap:0 1.6rem;align-items:start}
.served{margin-top:.5em}
.served .weigh{padding-inline-end:1em;width:22%}
.served th{width:20%}
.added{width:45%}
.box{display:inline-block;width:.9em;height:.9em;border:.1em solid var(--ink);margin-inline-end:.6em;vertical-align:-.08em}
.buy th small,.buy td small{display:block;font-weight:400}
.buy th{padding-inline-start:1.5em;text-indent:-1.5em}.buy th small{text-indent:0}
.buy .weigh{width:48%;font-size:1.05em}
.buy .lead{white-space:normal}
.shop h2::first-letter{text-transform:uppercase}
.total{margin-top:.8em;font-size:1.2em}
@media (max-width:40rem){.work{grid-template-columns:minmax(0,1fr)}
.served thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.served tr{display:grid;grid-template-columns:minmax(0,1fr) auto;gap:0 .6em;padding:.2em 0}
.served th,.served td{padding:0}
.served .weigh{grid-area:1/2;padding:0}
.served .added{grid-column:1/-1;width:auto}}
@media (max-width:24rem){body{padding:.8rem}}
@media (min-width:60rem){.sides,footer>ul,.sources ol{columns:2;column-gap:2.4rem}.sides.cook{columns:1}}
@page{margin:9mm}
@media print{
:root{color-scheme:light;--paper:#fff;--ink:#000;--quiet:#3d3a35;--rule:#9a958c;--brass:#5f3f00;--solid:#2b2721;--second:#575044;--third:#7d7465;--warn:#8a1010;--warn-paper:#fff}
html{font-size:var(--type);line-height:1.25;print-color-adjust:exact;-webkit-print-color-adjust:exact}
body{padding:0;max-width:none}
small,.small,.weigh small,.day .weigh small,.pot-share .weigh small,thead th,footer{font-size:max(.85rem,10.5pt*var(--paper-share,1))}
h1 small{font-size:.5em}
.sides,footer>ul,.sources ol{columns:2;column-gap:1.6rem}
.sides{orphans:1;widows:1}
.sides.cook{columns:1}
.sources{break-before:page;margin:0}
.sources.follow{break-before:auto;margin-top:1em}
.sources::details-content{content-visibility:visible;display:block;height:auto}
.sources summary{list-style:none;font-size:1.3em;font-weight:700}
.sources summary::-webkit-details-marker{display:none}
.whose{display:inline;font-weight:400}
.page{break-after:page}
.page:last-child{break-after:auto}
.page+.page{margin-top:0;border-top:0;padding-top:0}
}
@media print and (max-width:160mm){html{--paper-share:.7;font-size:calc(var(--type)*.7)}}
`;
