import type { PdfDocument } from './document.js';

/** A layer that viewers list and can hide: an optional-content group (ISO 32000-1, 8.11). */
export interface PdfLayer {
  readonly name: string;
  /** What machines read of it: keys and values of its dictionary `GTS_Metadata` (ISO 19593-1), all of them names. */
  readonly metadata: Readonly<Record<string, string>>;
}

/** Paints what belongs to a layer onto the page begun last. */
export type WithinLayer = (layer: PdfLayer, paint: () => void) => void;

/** Declares a document's layers, listed in this order and all of them shown. */
export function declareLayers({ pdf }: PdfDocument, layers: readonly PdfLayer[]): WithinLayer {
  const groups = layers.map(({ name, metadata }) => {
    const group = pdf.ref({ Type: 'OCG', Name: new String(name), GTS_Metadata: metadata });
    group.end();
    return group;
  });
  pdf._root.data['OCProperties'] = {
    OCGs: groups,
    D: { Name: new String('All layers'), Order: groups, ON: groups },
  };
  return (layer, paint) => {
    const index = layers.indexOf(layer);
    const key = `Layer${index + 1}`;
    const { data } = pdf.page.resources;
    data['Properties'] = { ...data['Properties'], [key]: groups[index] };
    pdf.addContent(`/OC /${key} BDC`);
    paint();
    pdf.addContent('EMC');
  };
}
