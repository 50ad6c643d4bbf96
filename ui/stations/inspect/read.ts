import {
  type Brake,
  KM,
  type OwnSizes,
  type Wheel,
  type WheelReadings,
} from '../../../sim/index.ts';
import { inspectRead as pageWords } from '../../../sim/words/en.ts';
import {
  type AsNew,
  type AxleFound,
  boresOf,
  type Found,
  holdsFor,
  type LimitKey,
  type LimitSet,
  type Limits,
  type LookKey,
  limitSets,
  type SizeKey,
  voided,
} from '../../../sim/workshop/index.ts';
import { readTyped, type TypedSize } from '../../typed-size.ts';
import type { AxleKey, Line } from './lines.ts';
import { axleKeys, type Paper } from './paper.ts';

/** From the texts of the sheet to numbers: what each was read as, or what is wrong with it. */
export type Read = TypedSize | null;

/** Any drum of a car, van or trailer, mm: the sheet is for the user's drum, not for the one on the bench. */
const DRUM = [100, 500] as const;
/** A mark may stand above the largest drum by what drums are allowed to wear, mm. */
const MARK = [100, 510] as const;
/** More teeth or turns than any adjuster has, for one whose count nobody has said. */
const MOST_TEETH = 2000;

/** What any brake can read on a line: wide, so that only slips are refused. */
function rangeOf(key: SizeKey): readonly [number, number] {
  if (key.startsWith('drum')) return DRUM;
  if (key === 'lip' || key === 'score') return [0, 5];
  return key === 'leverOff' ? [0, 50] : [0, 25];
}

/** Words that people put on the lever's line. */
const HOME = /^(yes|on|home|on (its |the )?stop)$/i;

export function readSize(
  text: string,
  key: SizeKey,
  teeth: number | null,
  plain: Paper['plain'],
): Read {
  if (text.trim() === '') return null;
  if (key === 'tooth') return readCount(text, teeth ?? MOST_TEETH, 'tooth');
  if (key === 'leverOff' && HOME.test(text.trim())) {
    return { ok: true, value: 0, echo: pageWords.readAs0MmOn };
  }
  return readTyped(text, 'mm', rangeOf(key), plain);
}

function readCount(text: string, most: number, what: string): Read {
  const value = Number(text.trim());
  return text.trim() !== '' && Number.isInteger(value) && value >= 0 && value <= most
    ? { ok: true, value, echo: pageWords.readAs(what, value) }
    : { ok: false, found: `"${text}"`, allowed: pageWords.aWholeNumber0To(most) };
}

export function readAxle(text: string, key: AxleKey, plain: Paper['plain']): Read {
  if (text.trim() === '') return null;
  if (key === 'distance' || key === 'odometer') return readTyped(text, 'km', [0, 3000000]);
  if (key === 'drumNew' || key === 'drumFitted') return readTyped(text, 'mm', DRUM, plain);
  if (key === 'liningFitted') return readTyped(text, 'mm', rangeOf('leadThin'), plain);
  const value = Number(text.trim().replace(',', '.'));
  return Number.isFinite(value) && value >= 0 && value <= 40
    ? { ok: true, value, echo: pageWords.readAsNotches(value) }
    : { ok: false, found: `"${text}"`, allowed: pageWords.aNumberOfNotches0 };
}

/**
 * @param fresh new diameter of the drum, mm, where typed: its mark stands above that
 * @param marked its mark, mm, where typed: no drum is machined beyond it
 */
export function readLimit(
  text: string,
  key: LimitKey,
  plain: Paper['plain'],
  fresh: number | undefined,
  marked?: number,
): Read {
  if (text.trim() === '') return null;
  if (key === 'notches') return readAxle(text, 'notchesAfter', plain);
  if (key === 'drumMax' || key === 'drumCut') {
    const mark = readTyped(text, 'mm', MARK, plain);
    if (mark.ok && fresh !== undefined && mark.value <= fresh) {
      return { ok: false, found: `"${text}"`, allowed: pageWords.moreThanMmTheNew(short(fresh)) };
    }
    return key === 'drumCut' && mark.ok && marked !== undefined && mark.value > marked
      ? { ok: false, found: `"${text}"`, allowed: pageWords.atMostMmTheMark(short(marked)) }
      : mark;
  }
  return readTyped(text, 'mm', key === 'liningMin' ? [0, 25] : [0, 2], plain);
}

/** A size in a sentence: no more digits than a gauge reads. */
const short = (mm: number): string => String(Number(mm.toFixed(3)));

const numberOf = (r: Read): number | undefined => (r?.ok ? r.value : undefined);

const sizeKeys: readonly SizeKey[] = [
  'drumA',
  'drumB',
  'drumC',
  'drumDeep',
  'lip',
  'score',
  'leadToe',
  'leadThin',
  'leadHeel',
  'trailToe',
  'trailThin',
  'trailHeel',
  'leverOff',
  'tooth',
];
const lookKeys: readonly LookKey[] = ['faces', 'boots', 'springs', 'adjuster'];

export interface Understood {
  readonly sizes: Readonly<Record<Wheel, Readonly<Partial<Record<SizeKey, Read>>>>>;
  readonly axle: Readonly<Partial<Record<AxleKey, Read>>>;
  readonly limitReads: Readonly<Partial<Record<LimitKey, Read>>>;
  readonly found: AxleFound;
  readonly limits: Limits;
  /** Whose each limit is, in a few words. */
  readonly whose: Readonly<Record<LimitKey, string>>;
  readonly asNew: AsNew;
  /** Does the chosen set hold for another drum than the one on the sheet? Then none of its limits is used. */
  readonly otherDrum: boolean;
  /** mm; undefined when not typed. */
  readonly distance: number | undefined;
  /** Drum and lining when the linings were fitted, mm; null where not known. */
  readonly fitted: Pick<AsNew, 'drum' | 'lining'>;
  /** Places whose text could not be read. */
  readonly wrong: number;
}

/** What was typed in the places of one wheel, in numbers. */
function foundOf(
  texts: Paper['wheels'][Wheel],
  sizes: Readonly<Partial<Record<SizeKey, Read>>>,
): Found {
  const s: Partial<Record<SizeKey, number>> = {};
  for (const k of sizeKeys) {
    const v = numberOf(sizes[k] ?? null);
    if (v !== undefined) s[k] = v;
  }
  const looks: Partial<Record<LookKey, 'good' | 'bad'>> = {};
  for (const k of lookKeys) {
    const text = texts[k];
    if (text === 'good' || text === 'bad') looks[k] = text;
  }
  return { sizes: s, looks };
}

/** Whose a limit is that was not typed over. */
const ownerOf = (set: LimitSet, key: LimitKey, otherDrum: boolean): string => {
  if (set.limits[key] === null) return '';
  return otherDrum ? pageWords.notForThisDrum : set.whose;
};

/** Whose a limit of one's own vehicle is, where its place says it. */
const typedWhose: Readonly<Partial<Record<LimitKey, string>>> = pageWords.typedWhose;

/** The set's limits with what was typed over them, and whose each is. */
function limitsOf(
  texts: Paper['limits'],
  reads: Understood['limitReads'],
  set: LimitSet,
  otherDrum: boolean,
): Pick<Understood, 'limits' | 'whose'> {
  const limits: Record<LimitKey, number | null> = { ...(otherDrum ? voided(set) : set).limits };
  const keys = Object.keys(limits) as LimitKey[];
  const whose = Object.fromEntries(keys.map((k) => [k, ownerOf(set, k, otherDrum)])) as Record<
    LimitKey,
    string
  >;
  for (const k of keys) {
    if (texts[k] === undefined) continue;
    const read = reads[k] ?? null;
    // A limit that cannot be read is none: it must not let anything pass.
    limits[k] = read?.ok ? read.value : null;
    whose[k] =
      read === null ? 'none' : set.id === 'maker' ? (typedWhose[k] ?? set.whose) : 'typed here';
  }
  return { limits, whose };
}

/**
 * Reads the whole sheet.
 *
 * @param brake on the bench, whose limits may have been chosen
 * @param own what was typed of that brake, where it is one's own
 */
export function understand(paper: Paper, brake: Brake, own: OwnSizes | null = null): Understood {
  const { plain } = paper;
  let wrong = 0;
  const noted = (r: Read): Read => {
    if (r && !r.ok) wrong += 1;
    return r;
  };
  const all = limitSets(brake, own);
  const set = all.find((s) => s.id === paper.limitsFrom) ?? (all[0] as LimitSet);
  const wheel = (w: Wheel) =>
    Object.fromEntries(
      sizeKeys.map((k) => [
        k,
        noted(readSize(paper.wheels[w][k] ?? '', k, set.asNew.teeth, plain)),
      ]),
    ) as Partial<Record<SizeKey, Read>>;
  const sizes = { left: wheel('left'), right: wheel('right') };
  const axle = Object.fromEntries(
    axleKeys.map((k) => [k, noted(readAxle(paper.axle[k] ?? '', k, plain))]),
  ) as Partial<Record<AxleKey, Read>>;
  const fresh = numberOf(axle.drumNew ?? null);
  const limitReads: Partial<Record<LimitKey, Read>> = {};
  for (const k of Object.keys(set.limits) as LimitKey[]) {
    const text = paper.limits[k];
    const marked = numberOf(limitReads.drumMax ?? null);
    if (text !== undefined) limitReads[k] = noted(readLimit(text, k, plain, fresh, marked));
  }
  const left = foundOf(paper.wheels.left, sizes.left);
  const right = foundOf(paper.wheels.right, sizes.right);
  const otherDrum = !holdsFor(set, fresh ?? null, [...boresOf(left), ...boresOf(right)]);
  const { asNew: theirs } = otherDrum ? voided(set) : set;
  const asNew = { ...theirs, drum: fresh ?? theirs.drum };
  const before = numberOf(axle.notchesBefore ?? null);
  const after = numberOf(axle.notchesAfter ?? null);
  const km = numberOf(axle.distance ?? null);
  return {
    sizes,
    axle,
    limitReads,
    found: {
      left,
      right,
      ...(before === undefined ? {} : { notchesBefore: before }),
      ...(after === undefined ? {} : { notchesAfter: after }),
    },
    ...limitsOf(paper.limits, limitReads, set, otherDrum),
    asNew,
    otherDrum,
    distance: km === undefined ? undefined : km * KM,
    fitted: {
      drum: numberOf(axle.drumFitted ?? null) ?? asNew.drum,
      lining: numberOf(axle.liningFitted ?? null) ?? asNew.lining,
    },
    wrong,
  };
}

/** What the text at a line was read as; null where none stands, or none can be typed. */
export function readAt(u: Understood, line: Line, wheel: Wheel): Read {
  if (line.kind === 'ask') {
    return (line.key === 'drumNew' ? u.axle.drumNew : u.limitReads[line.key]) ?? null;
  }
  return line.kind === 'size' ? (u.sizes[wheel][line.key] ?? null) : null;
}

/** The text at a line, word for word; the chosen set's figure where its mark was not typed over. */
export function textAt(paper: Paper, u: Understood, line: Line, wheel: Wheel): string {
  if (line.kind === 'worked') return '';
  if (line.kind !== 'ask') return paper.wheels[wheel][line.key] ?? '';
  if (line.key === 'drumNew') return paper.axle.drumNew ?? '';
  return paper.limits[line.key] ?? u.limits[line.key]?.toFixed(2) ?? '';
}

/** A line as it is said of a wheel; what is asked once is said of both. */
export const placeOf = (line: Line, wheel: Wheel): string =>
  line.kind === 'ask' ? line.name : pageWords.wheel(line.name, wheel);

/** One wheel's findings as the readings that the brake is loaded from. */
export function toReadings(u: Understood, wheel: Wheel): WheelReadings {
  const { sizes, looks } = u.found[wheel];
  const lining = (which: 'lead' | 'trail') => {
    const toe = sizes[`${which}Toe`];
    const thinnest = sizes[`${which}Thin`];
    const heel = sizes[`${which}Heel`];
    return {
      ...(toe === undefined ? {} : { toe }),
      ...(thinnest === undefined ? {} : { thinnest }),
      ...(heel === undefined ? {} : { heel }),
    };
  };
  return {
    drum: [sizes.drumA, sizes.drumB, sizes.drumC].filter((d) => d !== undefined),
    lining: { front: lining('lead'), rear: lining('trail') },
    ...(sizes.tooth === undefined ? {} : { tooth: sizes.tooth }),
    ...(sizes.leverOff === undefined ? {} : { leverOffStop: sizes.leverOff }),
    adjusterSeized: looks.adjuster === 'bad',
    ...(u.distance === undefined ? {} : { distance: u.distance }),
  };
}
