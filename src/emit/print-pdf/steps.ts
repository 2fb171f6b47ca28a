import type { Layer } from '../../drawing/drawing.js';
import type { PdfLayer } from '../pdf/layers.js';

/** What a print shop makes of some lines: a layer of the file, and a spot colour of that name. */
export type Step = PdfLayer;

/**
 * Groups and types of ISO 19593-1:2018, "processing steps"; keys and values as the PDF Association's open model has them
 * (arlington-pdf-model, tsv/latest/OptContentGroup.tsv and GTS_ProcStepsGroup.tsv). Only the groups Structural and
 * Positions have types. The reverse is the face that the page does not show.
 */
const step = (name: string, group: string, type?: string): Step => ({
  name,
  metadata: {
    GTS_ProcStepsGroup: group,
    ...(type === undefined ? {} : { GTS_ProcStepsType: type }),
  },
});

// What has no such key counts as artwork and is printed, so whatever only explains goes to the legend.
const LEGEND = step('Legend', 'Legend');
const ZONES = step('Zones', 'Positions', 'ContentArea');
const FALLS_AWAY = step('Falls away', 'Legend');

/** In the order in which viewers list the steps. */
export const STEP_OF: Readonly<Record<Layer, Step>> = {
  cut: step('Cut', 'Structural', 'Cutting'),
  score: step('Score', 'Structural', 'Creasing'),
  'second-score': step('Second score', 'Structural', 'Creasing'),
  'odd-score': step('Score from the other face', 'Structural', 'ReverseCreasing'),
  lining: step('Cut the lining', 'Structural', 'Cutting'),
  'lining-fold': step('Fold the lining', 'Structural', 'Creasing'),
  seam: step('Seams', 'Legend'),
  glue: step('Glue', 'Structural', 'Gluing'),
  zone: ZONES,
  'raised-zone': ZONES,
  mark: step('Marks', 'Dimensions'),
  dimension: step('Dimensions', 'Dimensions'),
  blank: FALLS_AWAY,
  waste: FALLS_AWAY,
  edge: LEGEND,
  hidden: LEGEND,
  inside: LEGEND,
  'show-side': LEGEND,
  card: LEGEND,
  join: LEGEND,
  page: LEGEND,
  scale: LEGEND,
  sample: LEGEND,
  rule: LEGEND,
  lettering: LEGEND,
};

/** Each step once. */
export const STEPS: readonly Step[] = [...new Set(Object.values(STEP_OF))];

/** Whether what these lines enclose remains once the sheet is cut. */
export const isCutting = ({ metadata }: Step): boolean => metadata['GTS_ProcStepsType'] === 'Cutting';
