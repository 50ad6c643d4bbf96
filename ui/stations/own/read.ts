import {
  bandOfLetters,
  type FoundKey,
  keyOfPath,
  type OwnFound,
  type OwnKey,
  type OwnSizes,
  ownScene,
  readScene,
  type Scene,
  tellFinding,
} from '../../../sim/index.ts';
import { ownRead as said } from '../../../sim/words/en.ts';
import { ownWords } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';
import type { FoundTexts, OwnBrake, OwnTexts } from '../../record/shelf.ts';
import { brakes } from '../../scenes.ts';
import { readTyped, type TypedSize } from '../../typed-size.ts';
import { foundFields } from './found-fields.ts';
import { ownFields } from './measures.ts';

/** From the texts of one's own brake to its sizes: what each was read as, or what is wrong with it. */
export interface OwnJudged {
  readonly reads: Readonly<Partial<Record<OwnKey, TypedSize | null>>>;
  /** What is wrong, by field; the rest of the findings, which belong to none. */
  readonly wrong: Readonly<Partial<Record<OwnKey, string>>>;
  readonly other: readonly string[];
  /** Sizes that make a sound brake; null while something is wrong. */
  readonly sizes: OwnSizes | null;
  /** Made of what could be read, sound or not: what the other fields then have. */
  readonly draft: Scene;
}

/** Keys of the scene file in the fields' own words. */
const plain = (text: string): string =>
  text
    .replace(/\bdiameterNew\b/g, 'the new diameter')
    .replace(/\bdiameterMax\b/g, 'the largest diameter')
    .replace(/\bthicknessNew\b/g, 'the new thickness');

/** A teaching brake's scene with its defaults filled in. */
export function teachingScenes(): readonly Scene[] {
  return brakes.map((b) => {
    const read = readScene(b);
    if (!read.ok) throw new Error(read.findings.map(tellFinding).join('\n'));
    return read.scene;
  });
}

/** Drum of one's own as typed, mm; null where nothing is typed. */
export const readDrum = (text: string): TypedSize | null =>
  text.trim() === '' ? null : readTyped(text, 'mm', [80, 500]);

/** Reads one's texts to the sizes of a sound brake, or to findings at their fields. */
export function judgeOwn(
  own: Pick<OwnBrake, 'name' | 'title' | 'base' | 'photo'>,
  texts: OwnTexts,
): OwnJudged {
  const reads: Partial<Record<OwnKey, TypedSize | null>> = {};
  const wrong: Partial<Record<OwnKey, string>> = {};
  const sizes: Partial<Record<OwnKey, number>> = {};
  for (const { key, unit, range, digits } of ownFields) {
    const text = texts[key] ?? '';
    if (text.trim() === '') continue;
    const r =
      (key === 'friction' ? letters(text) : null) ??
      (unit === '' ? plainNumber(text, range, digits === 0) : readTyped(text, unit, range));
    reads[key] = r;
    if (r.ok) sizes[key] = r.value;
    else wrong[key] = said.foundAllowed(r.found, r.allowed);
  }
  const draft = ownScene(own.base, sizes, ownWords(own.base, sizes, own), own.photo?.seen);
  const none = { reads, wrong, draft, sizes: null };
  if (Object.keys(wrong).length > 0) return { ...none, other: [] };
  const read = readScene(draft);
  if (read.ok) return { ...none, other: [], sizes };
  const other: string[] = [];
  // A mark under the new diameter is one mistake, though lip and start cannot be right then either.
  const mark = read.findings.some((f) => f.path === 'drum.diameterMax');
  for (const finding of read.findings) {
    if (mark && /^(start\.|states\.|drum\.lipDiameter)/.test(finding.path)) continue;
    const key = keyOfPath(draft, finding.path, (k) => sizes[k] !== undefined);
    const reason = finding.reason ? `. ${finding.reason}` : '';
    if (!key) other.push(tellFinding(finding));
    else {
      wrong[key] ??= said.foundAllowed2(plain(finding.found), plain(finding.allowed), reason);
    }
  }
  return { ...none, other };
}

export interface FoundRead {
  readonly reads: Readonly<Partial<Record<FoundKey, TypedSize>>>;
  /** Those that could be read. */
  readonly found: OwnFound;
}

/** What was measured of one's brake as it is now, read. */
export function readFound(texts: FoundTexts): FoundRead {
  const reads: Partial<Record<FoundKey, TypedSize>> = {};
  const found: Partial<Record<FoundKey, number>> = {};
  for (const { key, unit, range, whole } of foundFields) {
    const text = texts[key] ?? '';
    if (text.trim() === '') continue;
    const r = unit === '' ? plainNumber(text, range, whole) : readTyped(text, unit, range);
    reads[key] = r;
    if (r.ok) found[key] = r.value;
  }
  return { reads, found };
}

/** How well friction is known where a number was typed, or nothing (common practice). */
const FRICTION_BAND = 0.1;

/** Friction with its band: by the letters on the lining's edge, else a tenth either way. */
export function frictionBand(
  text: string,
  value: number,
): {
  readonly from: 'letters' | 'typed' | 'assumed';
  readonly least: number;
  readonly most: number;
} {
  const letters = bandOfLetters(text);
  if (letters) return { from: 'letters', least: letters.least, most: letters.most };
  return {
    from: text.trim() === '' ? 'assumed' : 'typed',
    least: value * (1 - FRICTION_BAND),
    most: value * (1 + FRICTION_BAND),
  };
}

/** Sizes that texts say, where they make a sound brake. */
export const sizesOfTexts = (
  own: Pick<OwnBrake, 'name' | 'title' | 'base' | 'photo'>,
  texts: OwnTexts,
): OwnSizes | null => judgeOwn(own, texts).sizes;

/** Friction by the two letters on a lining's edge; null where none are typed. */
function letters(text: string): TypedSize | null {
  const band = bandOfLetters(text);
  if (!band) return null;
  const [least, most, value] = [band.least, band.most, band.middle].map((x) =>
    Number(x.toFixed(3)),
  );
  return {
    ok: true,
    value: value as number,
    echo: said.readAsToColdTaken(
      number(least as number, 2),
      number(most as number, 2),
      number(value as number, 2),
    ),
  };
}

function plainNumber(text: string, range: readonly [number, number], whole: boolean): TypedSize {
  const value = Number(text.trim().replace(',', '.'));
  const fits = Number.isFinite(value) && value >= range[0] && value <= range[1];
  return fits && (!whole || Number.isInteger(value))
    ? { ok: true, value, echo: said.readAs(value) }
    : {
        ok: false,
        found: `"${text}"`,
        allowed: said.aNumberTo(whole ? said.whole : '', range[0], range[1]),
      };
}
