/**
 * A file's name, as messages show it, as a URI: relative, or `file:` where it starts at a machine's root. All but plain
 * letters, digits and `-._~!*'()` is percent-encoded, so that any name comes to a valid URI (RFC 3986).
 */
export function uriOf(name: string): string {
  const path = name.replace(LONE, '\ufffd').split('/').map(encodeURIComponent).join('/');
  if (path.startsWith('//')) return `file:${path}`;
  if (path.startsWith('/')) return `file://${path}`;
  return DRIVE.test(name) ? `file:///${path.replace('%3A', ':')}` : path;
}

/** Half of a pair of surrogates: no character, and nothing that could be encoded. */
const LONE = /\p{Cs}/gu;
const DRIVE = /^[A-Za-z]:\//;
