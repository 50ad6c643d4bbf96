/** A file that may be wrong in any place: old versions are brought up before anything is judged. */
export type Json = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The object without some of its keys. */
export function without(object: Json, ...keys: readonly string[]): Json {
  return Object.fromEntries(Object.entries(object).filter(([key]) => !keys.includes(key)));
}
