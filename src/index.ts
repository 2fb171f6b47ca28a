/*
 * The library's only door. `compile` reads sources and comes to envelopes with their facts and findings; `diff` compares two
 * such outcomes; the rest prints them. `format` lays out what `parse` has read. Nothing here touches a disk: what a recipe uses is read by the Reader that
 * the caller hands in.
 */
export { parse } from '../grammar/parser.js';
export { type Compilation, type CompiledRecipe, compile } from './compile.js';
export { applyFixes, type Look, type Mended } from './diagnostics/apply-fixes.js';
export type { Diagnostic, Label, Severity } from './diagnostics/diagnostic.js';
export { renderJson } from './diagnostics/render-json.js';
export { renderLine } from './diagnostics/render-line.js';
export { renderSarif, type Tool } from './diagnostics/render-sarif.js';
export { renderText } from './diagnostics/render-text.js';
export { diff } from './diff/diff.js';
export type { Changed, Consequence, Difference, EnvelopeChange, Side } from './diff/difference.js';
export { renderHtml as renderDifferenceHtml } from './diff/render-html.js';
export { renderJson as renderDifferenceJson } from './diff/render-json.js';
export { renderMarkdown as renderDifferenceMarkdown } from './diff/render-markdown.js';
export { renderText as renderDifferenceText } from './diff/render-text.js';
export { renderSheetText as renderCutSheetText } from './emit/cut-sheet/render-text.js';
export { cutSheet } from './emit/cut-sheet/sheet.js';
export { arrange } from './emit/catalogue/arrange.js';
export type { Book, BookEmitter, BookOptions, BookSource, Chapter } from './emit/catalogue/book.js';
export { BOOK_EMITTERS } from './emit/catalogue/index.js';
export { makeLeaf } from './emit/catalogue/leaf/make-leaf.js';
export type { Leaf, Row } from './emit/catalogue/leaf.js';
export { rowOf } from './emit/catalogue/row.js';
export type { EmitOptions, Emitter, Job, PageName } from './emit/emitter.js';
export { fontMeasure } from './emit/font-measure.js';
export { EMITTERS } from './emit/index.js';
export { renderFacts } from './emit/json/render-facts.js';
export type { Facts } from './folding/facts.js';
export { format } from './format/format.js';
export type { Input, Reader, ReadResult } from './recipe/reader.js';
export type { Envelope, Paper, Size } from './recipe/recipe.js';
export { type Source, source } from './text/source.js';
