import type { Envelope } from '../recipe/recipe.js';
import { asMade } from './as-made.js';
import { closedFlap } from './closed-flap.js';
import { closure } from './closure.js';
import { cover } from './cover.js';
import { creases } from './creases.js';
import { type Crease, eachFlap, type Folding, type Piece } from './folding.js';
import { glueLines } from './glue.js';
import { liner } from './liner.js';
import { blankOutline, cutOutline, flapRegions } from './outline.js';
import { pieces } from './pieces.js';

/** Folds one envelope: rounds it to the ruler, cuts its outline, lays its flaps down, and looks what is bare. */
export function fold(envelope: Envelope): Folding {
  return new Folded(envelope);
}

/** A folding. Creases and pieces, which a check seldom asks for, are worked out when somebody does. */
class Folded implements Folding {
  readonly made;
  readonly blankOutline;
  readonly flapRegions;
  readonly cutOutline;
  readonly closedFlaps;
  readonly closure;
  readonly centreSeam;
  readonly glue;
  readonly liner;
  readonly layers;
  readonly bare;
  readonly #caliper: number;
  #creases: readonly Crease[] | null = null;
  #pieces: readonly Piece[] | null = null;

  constructor(envelope: Envelope) {
    const made = asMade(envelope);
    this.made = made;
    this.#caliper = envelope.caliper.value;
    this.blankOutline = blankOutline(made);
    this.flapRegions = flapRegions(made, this.#caliper);
    this.cutOutline = cutOutline(made, this.flapRegions, this.#caliper);
    this.closedFlaps = eachFlap((flap) => closedFlap(made, flap, this.flapRegions[flap]));
    const closed = closure(envelope, made, this.closedFlaps);
    this.closure = closed.length;
    this.centreSeam = closed.centreSeam;
    this.glue = glueLines(envelope, made, this.closedFlaps, closed);
    this.liner = liner(envelope, made, this.glue);
    const { layers, bare } = cover(this);
    this.layers = layers;
    this.bare = bare;
  }

  get creases(): readonly Crease[] {
    this.#creases ??= creases(this.made, this.#caliper);
    return this.#creases;
  }

  get pieces(): readonly Piece[] {
    this.#pieces ??= pieces(this.made, this.cutOutline);
    return this.#pieces;
  }
}
