/** Three kinds of file are read in three places: which of them is it? */
export type FileKind = 'moment' | 'brake' | 'sheets' | 'JSON' | 'text' | 'no text';

/** What a file of kept sheets calls itself. */
export const SHEETS = 'takeup-sheets';

/** Does it hold characters that stand in no text? A picture or a packed file is full of them. */
const isBinary = (text: string): boolean =>
  [...text.slice(0, 2000)].some((c) => c === '\ufffd' || (c < ' ' && !'\t\n\v\f\r'.includes(c)));

/** @param text a file's whole content */
export function fileKind(text: string): FileKind {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return isBinary(text) ? 'no text' : 'text';
  }
  if (typeof data !== 'object' || data === null) return 'JSON';
  if ('format' in data && data.format === 'takeup-scene') return 'brake';
  if ('format' in data && data.format === SHEETS) return 'sheets';
  return 'bench' in data && 'parts' in data ? 'moment' : 'JSON';
}

/** What a file is that is not the one asked for, in words; null where its content has to say it. */
export function otherFile(text: string, asked: 'moment' | 'brake' | 'sheets'): string | null {
  const kind = fileKind(text);
  if (kind === asked) return null;
  if (kind === 'moment') return 'It is a moment of the bench: Open a file, in Bench, reads it.';
  if (kind === 'brake') return 'It is a brake: Read a scene file, in My brake, reads it.';
  if (kind === 'sheets')
    return 'It is a file of kept sheets: Read a file of sheets, in Inspect, reads it.';
  if (kind === 'no text') return 'It is no text: a picture, or a packed file.';
  return asked === 'moment'
    ? 'It is no moment of the bench, as Save as a file writes it.'
    : asked === 'sheets'
      ? 'It is no file of sheets, as Save all sheets writes it.'
      : kind === 'text'
        ? 'It is no JSON, as Save as a file writes it.'
        : null;
}
