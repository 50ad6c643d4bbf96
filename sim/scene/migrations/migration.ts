/** A file that may be wrong in any place: old versions are brought up before anything is judged. */
export type Json = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The object without some of its keys. */
export function without(object: Json, ...keys: readonly string[]): Json {
  return Object.fromEntries(Object.entries(object).filter(([key]) => !keys.includes(key)));
}

/** One step from a version of the format to the next. */
export interface Migration {
  /** Pure. What it does not understand it leaves as it is, for the schema to find. */
  readonly up: (scene: Json) => Json;
  /** Where the older file has what the newer one has at a path. */
  readonly was: (path: string) => string;
}
