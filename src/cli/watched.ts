import { type Compilation, type CompiledRecipe, compile, compileEnvelope } from '../compile.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Host } from '../host/host.js';
import { reader } from '../host/reader.js';
import type { Envelope } from '../recipe/recipe.js';
import { readInputs } from './inputs.js';

/** What the files watched came to at one moment. */
export interface Watched extends Compilation {
  /** Every file that takes part, given or used, by its real path. */
  readonly files: ReadonlyMap<string, WatchedFile>;
  /** Names of the files whose envelopes were folded and checked anew. */
  readonly again: ReadonlySet<string>;
  /** Sentences about what could not be read. */
  readonly troubles: readonly string[];
}

export interface WatchedFile {
  readonly name: string;
  readonly given: boolean;
  /** Its text; null: too long to be read. */
  readonly text: string | null;
  /** What each `use` in it came to: a file's real path, or why there is none. */
  readonly uses: readonly string[];
}

/**
 * Reads all that is watched and compiles it. Names and `use` are looked into over all files, as that is quick and a name may
 * be taken by any of them; an envelope is folded and checked anew only if its file, or one that this uses, is not as `before`.
 */
export async function lookAgain(
  host: Host,
  paths: readonly string[],
  isPassedOver: (id: string) => boolean,
  before: Watched | null,
): Promise<Watched> {
  const inputs = await readInputs(host, paths);
  const placed = inputs.files.filter(({ input }) => !isPassedOver(input.id));
  const files = new Map<string, WatchedFile & { readonly uses: string[] }>();
  for (const { input } of placed) {
    const { name, text } = input.source;
    files.set(input.id, { name, given: true, text, uses: [] });
  }
  for (const { primary } of inputs.limits) {
    const { name } = primary.span.source;
    files.set(host.realPath(name) ?? name, { name, given: true, text: null, uses: [] });
  }

  const readUsed = reader(host, placed);
  const read: typeof readUsed = (path, from) => {
    const result = readUsed(path, from);
    files.get(from)?.uses.push(result.kind === 'source' ? result.id : JSON.stringify([path, result]));
    if (result.kind === 'source' && !files.has(result.id)) {
      const { name, text } = result.source;
      files.set(result.id, { name, given: false, text, uses: [] });
    }
    return result;
  };

  // Asked for at the first envelope, when every file has been read.
  let again: ReadonlySet<string> | null = null;
  const kept = new Map(before?.recipes.map((recipe) => [keyOf(recipe.envelope), recipe]));
  const made = (envelope: Envelope): CompiledRecipe => {
    again ??= namesOf(affected(files, before), files);
    const known = again.has(envelope.span.source.name) ? undefined : kept.get(keyOf(envelope));
    return known ?? compileEnvelope(envelope);
  };
  const compiled = compile(
    placed.map(({ input }) => input),
    read,
    made,
  );
  return {
    recipes: compiled.recipes,
    batches: compiled.batches,
    papers: compiled.papers,
    diagnostics: [...inputs.limits, ...compiled.diagnostics],
    files,
    again: again ?? namesOf(affected(files, before), files),
    troubles: inputs.troubles,
  };
}

const keyOf = ({ name, span }: Envelope): string => `${span.source.name}\n${name}`;

const namesOf = (ids: Iterable<string>, files: ReadonlyMap<string, WatchedFile>): ReadonlySet<string> =>
  new Set([...ids].flatMap((id) => files.get(id)?.name ?? []));

/** The files that are not as before, and those that use one of them, directly or through others. */
function affected(files: ReadonlyMap<string, WatchedFile>, before: Watched | null): ReadonlySet<string> {
  const usedBy = new Map<string, string[]>();
  for (const [id, { uses }] of files) {
    for (const used of uses) {
      const users = usedBy.get(used);
      if (users) users.push(id);
      else usedBy.set(used, [id]);
    }
  }
  const reached = new Set<string>();
  const open = [...files].flatMap(([id, file]) => (isAsBefore(file, before?.files.get(id)) ? [] : [id]));
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (reached.has(id)) continue;
    reached.add(id);
    open.push(...(usedBy.get(id) ?? []));
  }
  return reached;
}

const isAsBefore = (now: WatchedFile, before: WatchedFile | undefined): boolean =>
  before !== undefined && now.text === before.text && now.uses.join('\n') === before.uses.join('\n');

/** A line for each file that came, went or changed, in the order in which the files are met. */
export function changesSince(before: Watched, now: Watched, host: Host): readonly string[] {
  const ids = new Set([...now.files.keys(), ...before.files.keys()]);
  return [...ids].flatMap((id) => {
    const [old, young] = [before.files.get(id), now.files.get(id)];
    if (old === undefined) return `${young?.name} is new`;
    if (young === undefined) return `${old.name} ${host.kind(id) === 'missing' ? 'is gone' : 'is left out'}`;
    return young.text === old.text ? [] : `${young.name} changed`;
  });
}

/** The names of the files that there is something new to say about: checked again, or found otherwise than before. */
export function toTell(before: Watched | null, now: Watched): ReadonlySet<string> {
  const [old, young] = [findingsByFile(before?.diagnostics ?? []), findingsByFile(now.diagnostics)];
  const otherwise = [...new Set([...old.keys(), ...young.keys()])].filter(
    (name) => old.get(name)?.join('\n') !== young.get(name)?.join('\n'),
  );
  const given = new Set([...now.files.values()].map(({ name }) => name));
  return new Set([...now.again, ...otherwise].filter((name) => given.has(name)));
}

function findingsByFile(diagnostics: readonly Diagnostic[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { primary, problem, message } of diagnostics) {
    const { source, start } = primary.span;
    const said = found.get(source.name);
    const line = `${start} ${problem.name} ${message}`;
    if (said) said.push(line);
    else found.set(source.name, [line]);
  }
  return found;
}
