/** How the page is set: quiet as a printed list of sizes, light or dark as its reader's screen is; drawings on white paper. */
export const STYLE = `
:root { color-scheme: light dark; --ink: #1b1b19; --ground: #fbfaf7; --faint: #5c5a54; --line: #d6d2c8; --tint: #efece4; --mark: #8a3b12; }
@media (prefers-color-scheme: dark) { :root { --ink: #eceae3; --ground: #191917; --faint: #aaa79d; --line: #43413b; --tint: #24231f; --mark: #f0a27a; } }
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0 auto; padding: 2rem 1.25rem 4rem; max-width: 66rem; font: 1rem/1.55 Georgia, 'Iowan Old Style', 'Times New Roman', serif; color: var(--ink); background: var(--ground); }
h1 { font-size: 2.1rem; line-height: 1.15; margin: 0 0 .5rem; text-wrap: balance; }
h2 { font-size: 1.3rem; margin: 2.5rem 0 .75rem; border-bottom: 2px solid currentColor; padding-bottom: .25rem; }
h3 { font-size: 1.1rem; margin: 0; display: inline; }
h4 { font-size: 1rem; margin: 1.25rem 0 .25rem; }
p { max-width: 42rem; margin: .4rem 0; overflow-wrap: anywhere; }
a { color: var(--mark); }
.by { font-style: italic; margin-bottom: 1rem; }
.quiet { color: var(--faint); }
.unseen::before { content: attr(title); color: var(--faint); }
form { margin: 1.5rem 0; padding: 1rem; background: var(--tint); border: 1px solid var(--line); display: grid; gap: .75rem; }
form[hidden] { display: none; }
.filters { display: flex; flex-wrap: wrap; gap: .75rem 1.25rem; align-items: end; }
label, .label { display: grid; gap: .2rem; font-size: .9rem; }
input, select, button { font: inherit; color: inherit; background: var(--ground); border: 1px solid var(--faint); border-radius: 2px; padding: .35rem .6rem; min-width: 0; }
input[type=search] { width: 100%; font-size: 1.1rem; }
button { cursor: pointer; }
:focus-visible { outline: 3px solid var(--mark); outline-offset: 2px; }
.answer { min-height: 1.55em; margin: 0; }
.table { overflow-x: auto; }
table { border-collapse: collapse; font-size: .9rem; font-variant-numeric: tabular-nums; margin: .5rem 0; }
caption { text-align: left; color: var(--faint); padding-bottom: .4rem; }
th, td { text-align: left; vertical-align: top; padding: .3rem 1rem .3rem 0; border-bottom: 1px solid var(--line); }
thead th { font-weight: 600; white-space: nowrap; }
tbody th { font-weight: 400; }
td .quiet, th .quiet { display: block; }
details { border-bottom: 1px solid var(--line); }
summary { cursor: pointer; padding: .6rem 0; }
summary .quiet { margin-left: .5rem; overflow-wrap: anywhere; }
.fit { color: var(--mark); }
.inside { padding: 0 0 1.5rem 1.1rem; }
figure { margin: 1rem 0; max-width: 40rem; }
.paper { forced-color-adjust: none; background: #fff; border: 1px solid var(--line); overflow: auto; max-height: 85vh; }
.paper img { display: block; width: 100%; height: auto; }
.tools { display: flex; flex-wrap: wrap; gap: .5rem; margin: .4rem 0; }
figcaption { color: var(--faint); font-size: .9rem; }
pre { overflow: auto; background: var(--tint); border: 1px solid var(--line); padding: .75rem; font: .85rem/1.5 ui-monospace, monospace; }
dl { display: grid; grid-template-columns: minmax(6rem, max-content) 1fr; gap: .2rem 1rem; margin: .4rem 0; }
dt { font-weight: 600; } dd { margin: 0; overflow-wrap: anywhere; }
.warning { border-left: 4px solid var(--mark); padding-left: .75rem; }
@media (max-width: 36rem) { dl { grid-template-columns: 1fr; } dd { margin-bottom: .4rem; } }
@media (prefers-reduced-motion: no-preference) { html { scroll-behavior: smooth; } }
@media print {
  :root { --ink: #000; --ground: #fff; --faint: #444; --line: #bbb; --tint: #fff; --mark: #000; }
  body { max-width: none; padding: 0; font-size: 10pt; }
  form, .tools { display: none !important; }
  thead { display: table-header-group; }
  tr, figure { break-inside: avoid; }
  table { font-size: 8pt; }
  th, td { padding-right: .6rem; }
  details[open] { break-before: page; border: 0; }
  .paper { max-height: none; overflow: visible; border: 0; }
  .paper img { width: 100% !important; }
}
`;
