import type { Envelope } from './recipe.js';

/** Every class of post that an envelope names by `post` or is held to by an `expect post`, each once. */
export const postNamed = ({
  post,
  expectsPost,
}: Pick<Envelope, 'post' | 'expectsPost'>): readonly string[] => [
  ...new Set([...[...post.value, ...expectsPost].map((each) => each.post)]),
];
