import { recordFileKind as texts } from '../../sim/words/en.ts';
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
  if (kind === 'moment') return texts.itIsAMomentOf;
  if (kind === 'brake') return texts.itIsABrakeRead;
  if (kind === 'sheets') return texts.itIsAFileOf;
  if (kind === 'no text') return texts.itIsNoTextA;
  return asked === 'moment'
    ? texts.itIsNoMomentOf
    : asked === 'sheets'
      ? texts.itIsNoFileOf
      : kind === 'text'
        ? texts.itIsNoJsonAs
        : null;
}
