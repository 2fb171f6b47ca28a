/** As much of an envelope as says what it holds, in mm. */
export interface Holds {
  /** The largest card, width along the flap's hinge, at the bulk that the recipe is made for. */
  readonly room: { readonly width: number; readonly height: number; readonly depth: number | null };
  readonly bulk: number;
  readonly depth: number;
}

/** How a card goes in: turned as it fits better, and what room is left; in mm. */
export interface Fit {
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
  /** Null where no thickness was asked for, or where the envelope is flat. */
  readonly depth: number | null;
}

/**
 * Whether an envelope takes a card, and how. A card thicker than its walls are deep takes as much from width and height as it stands
 * out; a thickness that is not said is the one that the recipe is made for. It runs in the page, so it names nothing outside itself.
 */
export function fitOf(
  { room, bulk, depth }: Holds,
  card: { readonly width: number; readonly height: number } | null,
  thick: number | null,
): Fit | null {
  const noise = 1e-6;
  const spread = thick === null ? 0 : Math.max(0, thick - depth) - Math.max(0, bulk - depth);
  const tooThick =
    thick !== null && (room.depth === null ? thick > bulk + 1 + noise : thick > room.depth + noise);
  if (tooThick) return null;
  const left = room.depth === null || thick === null ? null : room.depth - thick;
  if (card === null) return { turned: false, width: 0, height: 0, depth: left };
  const ways = [false, true]
    .map((turned) => ({
      turned,
      width: room.width - spread - (turned ? card.height : card.width),
      height: room.height - spread - (turned ? card.width : card.height),
      depth: left,
    }))
    .filter(({ width, height }) => width >= -noise && height >= -noise);
  return ways.sort((a, b) => a.width + a.height - b.width - b.height)[0] ?? null;
}
