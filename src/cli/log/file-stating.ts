import { parse } from '../../../grammar/parser.js';
import type { Host, Trouble } from '../../host/host.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import { type GivenFile, readInputs } from '../inputs.js';
import { didYouMean } from '../words.js';

/** The file in the working folder that states an envelope of this name. */
export async function fileStating(
  name: string,
  host: Host,
): Promise<{ readonly kind: 'file'; readonly path: string } | Trouble> {
  const { files } = await readInputs(host, []);
  const stated = files.map((file) => ({ path: file.input.source.name, names: envelopesIn(file) }));
  const [first, ...others] = stated.filter(({ names }) => names.includes(name)).map(({ path }) => path);
  if (first === undefined) {
    const near = nearest(
      name,
      stated.flatMap(({ names }) => names),
    );
    return trouble(`no recipe in this folder has an envelope \`${visible(name)}\`${didYouMean(near)}`);
  }
  if (others.length === 0) return { kind: 'file', path: first };
  const choices = [first, ...others].map((path) => `\`${visible(`${path}#${name}`)}\``).join(', ');
  return trouble(`several files have an envelope \`${visible(name)}\`; name one of them: ${choices}`);
}

const envelopesIn = ({ input }: GivenFile): readonly string[] =>
  parse(input.source).file.statements.flatMap((statement) =>
    statement.kind === 'block' && statement.type === 'envelope' ? [statement.name.text] : [],
  );

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
