/** An element of XML or HTML: around one text, or around other elements, each on lines of its own. The content is markup. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string>>,
  content: string | readonly string[] = '',
): string {
  const opening = [
    name,
    ...Object.entries(attributes).map(([key, value]) => `${key}="${escaped(value)}"`),
  ].join(' ');
  if (content.length === 0) return `<${opening}/>`;
  const inner = typeof content === 'string' ? content : `\n${content.join('\n')}\n`;
  return `<${opening}>${inner}</${name}>`;
}

/** A text with the signs of markup spelled out, for content and for values of attributes. */
export const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
