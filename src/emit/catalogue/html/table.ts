import { element } from '../../../text/markup.js';
import type { Reading } from '../../cut-sheet/content.js';
import { NO_BREAK } from '../../cut-sheet/lengths.js';
import { recipeDestination } from '../destinations.js';
import type { Row } from '../leaf.js';
import { MEASUREMENTS } from '../measurement-columns.js';
import { words } from './recipe.js';

/** The table of measurements, every figure in both systems. */
export const tableOf = (rows: readonly Row[]): string =>
  `<h2 id="measurements">Measurements</h2>
<div class="table" tabindex="0" role="region" aria-labelledby="measurements">
${element('table', {}, [
  '<caption>Marks are measured from their corner along the edge; the second is that of a box’s wall.</caption>',
  `<thead><tr><th scope="col">Envelope</th>${MEASUREMENTS.map(({ heading }) => `<th scope="col">${heading}</th>`).join('')}</tr></thead>`,
  element('tbody', {}, rows.map(tableRow)),
])}
</div>`;

const tableRow = (row: Row): string => {
  const cells = MEASUREMENTS.map(({ readings }) => `<td>${readings(row).map(reading).join('')}</td>`);
  const link = `<a href="#${words(recipeDestination(row))}">${words(row.title)}</a>`;
  return `<tr id="row-${words(row.name)}"><th scope="row">${link}</th>${cells.join('')}</tr>`;
};

/** A figure over itself in the other system, neither broken within; what has no other system is a text like any. */
const reading = ({ read, other }: Reading): string =>
  other === '' ? words(read) : `${words(unbroken(read))}<span class="quiet">${words(unbroken(other))}</span>`;

const unbroken = (text: string): string => text.replaceAll(' ', NO_BREAK);
