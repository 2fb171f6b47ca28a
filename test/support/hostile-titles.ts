/** Turns the line round, ends it, clears a terminal, hides: below U+0100, below U+10000 and beyond. */
export const TITLE =
  'Tide \u202eesrever\u202c \u2028\u2029 \u001b[2J\u0007\u007f \u0085\u009b2J \u200b\u00ad\ufeff \u{e0041}\u{110bd}';

/** Each would be more than text in one of the formats, if it were let. */
export const HOSTILE_TITLES = [
  TITLE,
  '<script>alert(1)</script><img src=x onerror=alert(1)>',
  '</title></svg></script></style><script>alert(1)</script>',
  "]]> --> ?> <![CDATA[ <!-- <?xml ?> <!DOCTYPE x [<!ENTITY y SYSTEM 'file:///etc/passwd'>]> &y;",
  ') Tj ET endstream endobj (',
  '/JavaScript (app.alert(1)) >> /OpenAction <<',
  "=HYPERLINK('http://x') @SUM(1) |calc",
  '%%d ^J 0\u200b SECTION ENTITIES',
  '| a | b | ![x](http://x) [y](javascript:alert(1)) `c`',
];
