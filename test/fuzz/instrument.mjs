// Puts a counter into every branch of the program's own files in a bundle. (The engine's own coverage was tried first: what
// it tells depends on what it has compiled and thrown away meanwhile, so that no two runs were alike.)
import { parseAst } from 'vitest/node';

/** Where the counts are, for the fuzzer to read. */
export const COUNTS = '__plicaCounts';

/**
 * The bundle with its counters, and the room that each of them lies in. Only what lies in a room of the program counts: the
 * bundler writes each file's path above what it holds.
 */
export function instrument(bundle) {
  const heads = [...bundle.matchAll(/^\/\/ ([\w@./-]+)$/gm)].map(({ 1: path, index }) => ({
    index,
    room: /^(?:src\/\w+(?=\/)|grammar(?=\/))/.exec(path)?.[0],
  }));
  const rooms = [];
  const inserts = [];

  /** A counter for what runs from one place on; `around` makes text of it, before and after. */
  const count = (start, end, [before, after]) => {
    const { room } = heads.findLast(({ index }) => index <= start) ?? {};
    if (room === undefined) return;
    inserts.push({ at: start, order: 1, text: before(`${COUNTS}[${rooms.length}]++`) });
    if (after !== '') inserts.push({ at: end, order: 0, text: after });
    rooms.push(room);
  };
  const inExpression = (node) => count(node.start, node.end, [(step) => `(${step}, `, ')']);
  const inBody = (node) =>
    node.type === 'BlockStatement'
      ? count(node.start + 1, node.start + 1, [(step) => `${step};`, ''])
      : count(node.start, node.end, [(step) => `{${step};`, '}']);
  const inFunction = ({ body }) => (body.type === 'BlockStatement' ? inBody(body) : inExpression(body));
  const inLoop = ({ body }) => inBody(body);

  const BRANCHES = {
    FunctionDeclaration: inFunction,
    FunctionExpression: inFunction,
    ArrowFunctionExpression: inFunction,
    ForStatement: inLoop,
    ForOfStatement: inLoop,
    ForInStatement: inLoop,
    WhileStatement: inLoop,
    DoWhileStatement: inLoop,
    IfStatement: ({ consequent, alternate }) => {
      inBody(consequent);
      if (alternate) inBody(alternate);
    },
    SwitchCase: ({ consequent: [first] }) => {
      if (first) count(first.start, first.start, [(step) => `${step};`, '']);
    },
    CatchClause: inLoop,
    ConditionalExpression: ({ consequent, alternate }) => {
      inExpression(consequent);
      inExpression(alternate);
    },
    LogicalExpression: ({ right }) => inExpression(right),
    AssignmentPattern: ({ right }) => inExpression(right),
  };

  const visit = (value) => {
    if (Array.isArray(value)) for (const each of value) visit(each);
    else if (typeof value?.type === 'string') {
      BRANCHES[value.type]?.(value);
      for (const part of Object.values(value)) if (typeof part === 'object') visit(part);
    }
  };
  visit(parseAst(bundle));
  return { text: `const ${COUNTS} = (globalThis.${COUNTS} = new Uint32Array(${rooms.length}));\n${woven(bundle, inserts)}`, rooms };
}

/** A text with others put in. At one place what ends comes before what begins, inner ends before outer ones. */
function woven(text, inserts) {
  const ends = inserts.filter(({ order }) => order === 0).reverse();
  const begins = inserts.filter(({ order }) => order === 1);
  const pieces = [];
  let from = 0;
  for (const { at, text: put } of [...ends, ...begins].sort((a, b) => a.at - b.at || a.order - b.order)) {
    pieces.push(text.slice(from, at), put);
    from = at;
  }
  return [...pieces, text.slice(from)].join('');
}
