import { element } from '../../../text/markup.js';
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

const tableRow = (row: Row): string =>
  `<tr id="row-${words(row.name)}"><th scope="row"><a href="#${words(recipeDestination(row))}">${words(row.title)}</a></th>${MEASUREMENTS.map(
    ({ readings }) =>
      `<td>${readings(row)
        .map(
          ({ read, other }) =>
            `${words(read)}${other === '' ? '' : `<span class="quiet">${words(other)}</span>`}`,
        )
        .join('')}</td>`,
  ).join('')}</tr>`;
