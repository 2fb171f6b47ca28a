/*
 * For any text whatsoever `check` ends with findings or none, and keeps what it promises of them: with
 * check-any-figures.test.ts a hundred thousand texts, the same in every run.
 */
import { describe } from 'vitest';
import { keepsPromises } from '../support/promises.js';
import { anyText, slipped } from '../support/texts.js';

describe('text that nobody meant as a recipe', () => keepsPromises(anyText, { rounds: 12, texts: 5_000 }));

describe('good recipes with slips in them', () => keepsPromises(slipped, { rounds: 17, texts: 2_000 }));
