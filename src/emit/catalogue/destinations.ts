import type { Row } from './leaf.js';

/** What links to a recipe name. */
export const recipeDestination = ({ name }: Pick<Row, 'name'>): string => `recipe-${name}`;
