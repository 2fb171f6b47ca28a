import railroad from 'railroad-diagrams';
import { SPELLINGS } from '../spellings.js';
import { byKind, type GrammarRule, grammarRules, type Part, type PartTable } from './grammar-rules.js';

/** The grammar as one page of diagrams, which opens without a net and without a script. */
export const railroadPage = (): string => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>The grammar of Plica</title>
<style>
${STYLE}
</style>
<h1>The grammar of Plica</h1>
<p>Follow the line from the left, never round a sharp corner. What stands in a round box is written as it is; a
square box leads to the rule, or to the word below, of that name.</p>
<p>Lines are laid out first: comments and lines with nothing on them are passed over; no <i>line-end</i> is left after a
comma or an opening brace, nor before a brace; one is put where it may be left out, before a closing brace and at the end of
the file. Words become what their place makes them.</p>
${grammarRules().map(section).join('\n')}
<h2>Words</h2>
<dl>
${SPELLINGS.map((spelling) => ('name' in spelling ? term(spelling) : '')).join('')}</dl>
</html>
`;

const section = ({ name, part }: GrammarRule): string => {
  const diagram = railroad.Diagram(byKind(DRAWN, part)).format(PADDING).toString();
  const titled = `<svg role="group" aria-labelledby="title-${name}"`;
  return `<h2 id="${name}">${name}</h2>
<div>${diagram.replace('<svg', titled).replace('>', `>\n<title id="title-${name}">The rule ${name}</title>`)}</div>`;
};

const term = ({ name, means }: { readonly name: string; readonly means: string }): string =>
  `<dt id="${name}">${name}</dt><dd>${escaped(means)}</dd>\n`;

type Drawn = ReturnType<typeof railroad.Terminal>;

/** Round a diagram, in px. */
const PADDING = 8;

const DRAWN: PartTable<Drawn> = {
  sign: ({ sign }) => railroad.Terminal(sign),
  name: ({ name }) => linked(name),
  sequence: ({ parts }) => railroad.Sequence(...parts.map(draw)),
  choice: ({ parts }) => railroad.Choice(0, ...parts.map(draw)),
  optional: ({ part }) => railroad.Optional(draw(part)),
  repeated: ({ part }) => railroad.ZeroOrMore(draw(part)),
};

function draw(part: Part): Drawn {
  return byKind(DRAWN, part);
}

/** A box that leads to its rule. The library escapes what stands in it. */
function linked(name: string): Drawn {
  const box = railroad.NonTerminal(name);
  const drawn = box.toString.bind(box);
  return Object.assign(box, { toString: () => `<a href="#${name}">${drawn()}</a>` });
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const STYLE = `:root { color-scheme: light dark; --ink: #1d2b36; --paper: #fdfcf9; --box: #eef3f0; --sign: #dfeaf5; --link: #14577f; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #dde5e8; --paper: #14191d; --box: #232d31; --sign: #1f3346; --link: #8cc3e8; }
}
body { margin: 2rem auto; max-width: 60rem; padding: 0 1rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, sans-serif; }
h2 { margin: 2rem 0 0.25rem; font-size: 1.1rem; }
div { overflow-x: auto; }
path { fill: none; stroke: var(--ink); stroke-width: 1.5; }
rect { fill: var(--sign); stroke: var(--ink); stroke-width: 1.5; }
a rect { fill: var(--box); }
text { fill: var(--ink); font: 14px ui-monospace, monospace; text-anchor: middle; }
a text { fill: var(--link); text-decoration: underline; }
dt { font-family: ui-monospace, monospace; }
:target { outline: 2px solid var(--link); outline-offset: 4px; }`;
