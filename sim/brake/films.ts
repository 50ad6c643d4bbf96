/**
 * What lies on the rubbing faces and goes with use: rain on the drum's track, which a stop's heat dries; rust
 * of a night, which the linings wear off; glaze on a lining. A whole film makes of friction what its surface
 * does (wet, damp, glazed: brake/surface.ts), a part of one that part of it.
 */
export interface Film {
  /** On the drum's track, mm thick. */
  readonly water: number;
  readonly rust: number;
  /** Of each lining, 0 none to 1 whole. */
  readonly glaze: { readonly front: number; readonly rear: number };
}

/** A scene's films: how thick they must be to count whole, and how they come and go. */
export interface Films {
  readonly water: { readonly full: number };
  /** Wear rate of the rust itself, mm²/N: far above the iron's. */
  readonly rust: { readonly full: number; readonly wearRate: number };
  /** Null: glaze neither comes nor goes. */
  readonly glaze: Glazing | null;
  readonly source: string;
}

/**
 * Glaze comes with what is braked on a drum hotter than `above` by a lining pressed less than `below`, and goes
 * with the depth worn off it. No published law was found: the numbers are the scene's own.
 */
export interface Glazing {
  /** °C */
  readonly above: number;
  /** Mean pressure of the lining, MPa. */
  readonly below: number;
  /** That makes it whole, N·mm. */
  readonly energy: number;
  /** Worn off a lining, mm, that takes a whole one away. */
  readonly depth: number;
}
