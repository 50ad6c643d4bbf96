/** One thing wrong with a scene: where, what was found, what is allowed. */
export interface Finding {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}
