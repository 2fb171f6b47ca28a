// The same pages by the PDF library alone: content operators by hand, each text encoded once. No tags, links or outline.
import Document from 'pdfkit';

/** Writes pages of plain items; how many bytes came of it. */
export async function barePdf(pages, size, fonts) {
  const pdf = new Document({ autoFirstPage: false, font: '' });
  pdf.registerFont('regular', fonts.regular);
  pdf.registerFont('bold', fonts.bold);
  const faces = Object.fromEntries(
    ['regular', 'bold'].map((weight) => [weight, pdf.font(weight)._font]),
  );
  const known = { regular: new Map(), bold: new Map() };
  const shown = (text, weight) => {
    const texts = known[weight];
    if (!texts.has(text)) texts.set(text, operand(...faces[weight].encode(text)));
    return texts.get(text);
  };
  let bytes = 0;
  const drained = () => {
    const chunk = pdf.read();
    if (chunk !== null) bytes += chunk.length;
  };
  for (const { groups } of pages) {
    pdf.addPage({ size: [size.width, size.height], margin: 0 });
    for (const face of Object.values(faces)) pdf.page.fonts[face.id] = face.ref();
    const lines = [`1 0 0 -1 0 ${size.height} cm`];
    for (const { x, y, scale, items } of groups) {
      lines.push(`q ${scale} 0 0 ${scale} ${x} ${y} cm`);
      for (const item of items) {
        if (item.operators) lines.push('q', item.operators, 'Q');
        for (const run of runsOf(item)) {
          const angle = ((run.angleDegrees ?? 0) * Math.PI) / 180;
          const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
          lines.push(
            `BT ${run.ink === 'full' ? 0 : 0.35} g /${faces[run.weight].id} ${run.size} Tf ${cosine} ${sine} ${-sine} ${cosine} ${run.x} ${run.y} Tm [${shown(run.text, run.weight)}] TJ ET`,
          );
        }
      }
      lines.push('Q');
    }
    pdf.addContent(lines.join('\n'));
    drained();
  }
  pdf.end();
  drained();
  return bytes;
}

const operand = (glyphs, positions) =>
  glyphs
    .map((glyph, index) => {
      const { advanceWidth, xAdvance } = positions[index];
      return advanceWidth === xAdvance ? `<${glyph}>` : `<${glyph}>${advanceWidth - xAdvance}`;
    })
    .join('');

/** All the lines of text of an item, whatever its role. */
export function runsOf({ runs = [], items = [], rows = [] }) {
  return [
    ...runs,
    ...items.flatMap((item) => [...(item.runs ?? []), ...(item.label?.runs ?? []), ...(item.body?.runs ?? [])]),
    ...rows.flat().flatMap((cell) => cell.runs),
  ];
}
