// What the bench of the catalogue wants of the program's inside; bundled for it, and part of no package.
export { pagesOf } from '../../src/emit/catalogue/pages/pieces.js';
export { writePdf } from '../../src/emit/catalogue/pdf/write-pdf.js';
export { arrange } from '../../src/emit/catalogue/arrange.js';
export { makeLeaf } from '../../src/emit/catalogue/leaf/make-leaf.js';
export { rowOf } from '../../src/emit/catalogue/row.js';
export { fontMeasure } from '../../src/emit/font-measure.js';
export { compile } from '../../src/compile.js';
export { source } from '../../src/text/source.js';
