import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ReadResult, readSceneText } from '../../sim/index.ts';
import { quoted, UsageError } from './args.ts';

const scenes = fileURLToPath(new URL('../../scenes/', import.meta.url));

/** Longest file worth reading, bytes: the scenes here have a few thousand. */
const LONGEST = 5e6;
/** Of what this program wrote itself, which is a machine's share of many points. */
const LONGEST_OWN = 1e9;

/** What stands in a path's way, by the system's code for it. */
const IN_THE_WAY: Readonly<Record<string, string>> = {
  EACCES: 'which may not be read',
  EPERM: 'which may not be read',
  ENOTDIR: 'which leads through a file',
  ELOOP: 'whose links lead round in a circle',
  ENAMETOOLONG: 'a name too long for the system',
  ERR_INVALID_ARG_VALUE: 'with a character that no path has',
};

/** The file's bytes, or why there are none: null where nothing is there. */
function bytesOf(path: string, longest = LONGEST): Uint8Array | string | null {
  try {
    const there = statSync(path);
    if (there.isDirectory()) return `the folder ${quoted(path)}`;
    // A pipe is one too, but a device may go on for ever.
    if (!there.isFile() && !there.isFIFO()) return `${quoted(path)}, which is no file`;
    if (there.size > longest) return `${quoted(path)}, ${there.size} bytes long`;
    return readFileSync(path);
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    return code === 'ENOENT' ? null : `${quoted(path)}, ${IN_THE_WAY[code] ?? `error ${code}`}`;
  }
}

/** UTF-8, or UTF-16 where its mark says so, as some shells write; the mark itself is no part of the text. */
function textOf(bytes: Uint8Array): string {
  const wide = bytes[0] === 0xff && bytes[1] === 0xfe;
  return new TextDecoder(wide ? 'utf-16le' : 'utf-8', { fatal: true }).decode(bytes);
}

/** The text of a file by its path, or by its name among the scenes and lessons; null where its bytes are no text. */
export function textBy(name: string): string | null {
  let found: string | null = null;
  const places = ['', '.json'].flatMap((end) => [
    join(scenes, `${name}${end}`),
    join(scenes, 'lessons', `${name}${end}`),
  ]);
  for (const path of [name, ...places]) {
    const bytes = bytesOf(path);
    if (typeof bytes === 'string') found ??= bytes;
    else if (bytes) {
      try {
        return textOf(bytes);
      } catch (error) {
        if (!(error instanceof TypeError)) throw error;
        return null;
      }
    }
  }
  throw new UsageError('SCENE', found ?? `no file ${quoted(name)}`, 'a path or a name in scenes/');
}

/** The text of a file by its path alone. @throws UsageError where there is none */
export function fileText(path: string): string {
  const bytes = bytesOf(path, LONGEST_OWN);
  if (typeof bytes === 'string') throw new UsageError('FILES', bytes, 'files that can be read');
  if (!bytes) throw new UsageError('FILES', `no file ${quoted(path)}`, 'files that are there');
  return textOf(bytes);
}

/** What is told of a file that is no text. */
export const NO_TEXT = {
  path: '(file)',
  found: 'bytes that are no text',
  allowed: 'JSON in UTF-8',
} as const;

/** A scene of a file's text. */
export const sceneIn = (text: string | null): ReadResult =>
  text === null ? { ok: false, findings: [NO_TEXT] } : readSceneText(text);
