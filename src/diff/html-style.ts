/** How the page is set: quiet tables, inks that are read on white as on black, pictures on white paper. */
export const HTML_STYLE = `
:root { color-scheme: light dark; --ink: #1d1d1b; --ground: #fff; --faint: #5f5f5c; --line: #d5d5d0; --paper: #9a3412; --words: #1d4e89; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #ecece8; --ground: #1a1a19; --faint: #a6a6a1; --line: #44443f; --paper: #f5a97f; --words: #8fbcf0; }
}
body { margin: 2rem auto; padding: 0 1rem; max-width: 60rem; font: 1rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--ground); }
h1 { font-size: 1.5rem; }
h2 { font-size: 1.15rem; margin: 0; }
section { border-top: 1px solid var(--line); margin-top: 2rem; padding-top: 1rem; }
.summary { font-weight: 600; }
.place { margin: 0; color: var(--faint); font-size: 0.875rem; overflow-wrap: anywhere; }
.paper, .words { font-size: 0.875rem; font-weight: 600; border: 1px solid; border-radius: 0.3rem; padding: 0 0.4rem; }
.paper, .error, .warning { color: var(--paper); }
.words, .note { color: var(--words); }
.gone { color: var(--faint); }
code { font: 0.9em ui-monospace, monospace; overflow-wrap: anywhere; }
.table { overflow-x: auto; }
tr > :first-child code { white-space: nowrap; }
table { border-collapse: collapse; margin: 1rem 0; font-variant-numeric: tabular-nums; }
th, td { text-align: left; vertical-align: top; padding: 0.2rem 1.2rem 0.2rem 0; border-bottom: 1px solid var(--line); }
th { font-weight: 400; }
thead th { color: var(--faint); font-size: 0.875rem; }
img { display: block; max-width: 100%; height: auto; margin: 1rem 0; padding: 0.5rem; background: #fff; border: 1px solid var(--line); }
@media print { section { break-inside: avoid; } }
`;
