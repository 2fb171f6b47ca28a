import { type CompiledRecipe, compileEnvelope } from '../../compile.js';
import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { placeIn } from '../../diagnostics/render-line.js';
import type { Host } from '../../host/host.js';
import { reader } from '../../host/reader.js';
import { traced } from '../../host/traced.js';
import { resolve } from '../../recipe/resolve.js';
import { SYNTAX_PROBLEMS } from '../../syntax/problems.js';
import { visible } from '../../text/visible.js';
import { readInputs } from '../inputs.js';

/** What a recipe file came to on some machine, an envelope at a time. */
export interface RecipeFile {
  /** What it says of an envelope. */
  readonly find: (name: string) => Found;
  /** All envelopes that it surely states. */
  readonly all: () => readonly CompiledRecipe[];
  /** Their names. */
  readonly names: readonly string[];
  /** Whether it is there at all. */
  readonly isThere: boolean;
  /** Whether it would come to the same on another machine, with all that it uses. */
  readonly isSameOn: (other: Host) => boolean;
}

export type Found =
  | { readonly kind: 'stated'; readonly recipe: CompiledRecipe }
  | { readonly kind: 'not stated' }
  /** Whether it states the envelope cannot be told, or not how; `reason` is safe to print. */
  | { readonly kind: 'unreadable'; readonly reason: string };

/** Reads a file and all that it uses. */
export async function recipeFile(host: Host, path: string): Promise<RecipeFile> {
  const trace = traced(host);
  const content = await contentOf(trace.host, path);
  return { ...content, isSameOn: trace.isSameOn };
}

/** A file that cannot be read, wherever it may be. */
export const unreadableFile = (reason: string): RecipeFile => ({
  ...unreadable(reason),
  isSameOn: () => false,
});

type Content = Omit<RecipeFile, 'isSameOn'>;

async function contentOf(host: Host, path: string): Promise<Content> {
  const kind = host.kind(path);
  if (kind === 'missing' || kind === 'folder') return { ...NOTHING, isThere: false };
  const { files, limits, troubles } = await readInputs(host, [path]);
  const [file] = files;
  if (file === undefined) return unreadable(troubles[0] ?? limits.map(inWords).join(''));
  const { envelopes, diagnostics } = resolve([file.input], reader(host, files));
  const compiled = new Map<string, CompiledRecipe>();
  const recipes = new Map(
    envelopes.map((envelope) => {
      const recipe = (): CompiledRecipe => {
        const known = compiled.get(envelope.name) ?? compileEnvelope(envelope);
        compiled.set(envelope.name, known);
        return known;
      };
      return [envelope.name, recipe];
    }),
  );
  return {
    names: [...recipes.keys()],
    all: () => [...recipes.values()].map((recipe) => recipe()),
    find: (name) => {
      const recipe = recipes.get(name);
      if (recipe) return { kind: 'stated', recipe: recipe() };
      const mistake = diagnostics.find((finding) => mayHide(finding, name, file.input.source.text));
      return mistake ? { kind: 'unreadable', reason: inWords(mistake) } : NOT_STATED;
    },
    isThere: true,
  };
}

const NOT_STATED: Found = { kind: 'not stated' };

const NOTHING = { names: [], all: () => [], find: () => NOT_STATED } as const;

const unreadable = (reason: string): Content => ({
  ...NOTHING,
  find: () => ({ kind: 'unreadable', reason }),
  isThere: true,
});

/** A slip of writing may hide any envelope; another mistake, one that the file names. */
const mayHide = ({ severity, problem }: Diagnostic, name: string, text: string): boolean =>
  severity === 'error' &&
  (SYNTAX_PROBLEMS.includes(problem) || (text.match(/[\w-]+/g)?.includes(name) ?? false));

/** `tides.plica:3:1: there is no paper `laid`` */
const inWords = ({ primary, message }: Diagnostic): string => `${placeIn(primary.span)}: ${visible(message)}`;
