/**
 * For a language whose decimal mark is a comma: a figure that is put into a text as a plain number (2.5) gets its comma
 * there (2,5). Those that are written beforehand have it already (`format.ts`). It is loaded with such a language alone.
 */

/** What was made of a text with these parts. */
function withCommas(made: unknown, parts: readonly number[]): unknown {
  if (typeof made === 'string')
    return parts.reduce((text, part) => {
      const told = String(part);
      return text.replaceAll(told, told.replace('.', ','));
    }, made);
  return Array.isArray(made) ? made.map((piece) => withCommas(piece, parts)) : made;
}

const broken = (part: unknown): part is number =>
  typeof part === 'number' && Number.isFinite(part) && !Number.isInteger(part);

/** The same texts, with commas in the figures that are put in. */
export function commasIn<Texts>(texts: Texts): Texts;
export function commasIn(texts: unknown): unknown {
  if (typeof texts === 'function')
    return (...parts: unknown[]) => withCommas(texts(...parts), parts.filter(broken));
  if (Array.isArray(texts)) return texts.map(commasIn);
  // What a question is read by is no text: patterns and sets stay what they are.
  if (
    typeof texts === 'object' &&
    texts !== null &&
    Object.getPrototypeOf(texts) === Object.prototype
  )
    return Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, commasIn(text)]));
  return texts;
}
