import { type Brake, KM, type WheelReadings } from '../../../sim/index.ts';
import {
  type AsNew,
  type AxleFound,
  type Found,
  type LimitKey,
  type Limits,
  type LookKey,
  limitSets,
  type SizeKey,
  type Wheel,
} from '../../../sim/workshop/index.ts';
import { readTyped, type TypedSize } from '../../typed-size.ts';
import type { AxleKey } from './lines.ts';
import type { Paper } from './paper.ts';

/** From the texts of the sheet to numbers: what each was read as, or what is wrong with it. */
export type Read = TypedSize | null;

/** What a brake of any size can read on a line: wide, so that only slips are refused. */
function rangeOf(key: SizeKey, brake: Brake): readonly [number, number] {
  const drum = 2 * brake.drum.radiusNew;
  if (key.startsWith('drum')) return [Math.round(drum * 0.9), Math.round(drum * 1.1)];
  if (key === 'tooth') return [0, brake.adjuster.teeth];
  if (key === 'lip') return [0, 5];
  return key === 'leverOff' ? [0, 50] : [0, 25];
}

/** Words that people put on the lever's line. */
const HOME = /^(yes|on|home|on (its |the )?stop)$/i;

export function readSize(text: string, key: SizeKey, brake: Brake, plain: Paper['plain']): Read {
  if (text.trim() === '') return null;
  const range = rangeOf(key, brake);
  if (key === 'tooth') return readCount(text, range[1], 'tooth');
  if (key === 'leverOff' && HOME.test(text.trim())) {
    return { ok: true, value: 0, echo: 'read as 0 mm: on its stop' };
  }
  return readTyped(text, 'mm', range, plain);
}

function readCount(text: string, most: number, what: string): Read {
  const value = Number(text.trim());
  return text.trim() !== '' && Number.isInteger(value) && value >= 0 && value <= most
    ? { ok: true, value, echo: `read as ${what} ${value}` }
    : { ok: false, found: `"${text}"`, allowed: `a whole number, 0 to ${most}` };
}

export function readAxle(text: string, key: AxleKey, brake: Brake, plain: Paper['plain']): Read {
  if (text.trim() === '') return null;
  if (key === 'distance') return readTyped(text, 'km', [0, 1000000]);
  if (key === 'drumFitted') return readTyped(text, 'mm', rangeOf('drumA', brake), plain);
  const value = Number(text.trim().replace(',', '.'));
  return Number.isFinite(value) && value >= 0 && value <= 40
    ? { ok: true, value, echo: `read as ${value} notches` }
    : { ok: false, found: `"${text}"`, allowed: 'a number of notches, 0 to 40' };
}

export function readLimit(text: string, key: LimitKey, brake: Brake, plain: Paper['plain']): Read {
  if (text.trim() === '') return null;
  if (key === 'notches') return readAxle(text, 'notchesAfter', brake, plain);
  if (key === 'drumMax') return readTyped(text, 'mm', rangeOf('drumA', brake), plain);
  return readTyped(text, 'mm', key === 'liningMin' ? [0, 25] : [0, 2], plain);
}

const numberOf = (r: Read): number | undefined => (r?.ok ? r.value : undefined);

const sizeKeys: readonly SizeKey[] = [
  'drumA',
  'drumB',
  'drumC',
  'drumDeep',
  'lip',
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
  /** mm; undefined when not typed. */
  readonly distance: number | undefined;
  readonly drumFitted: number | undefined;
  /** Places whose text could not be read. */
  readonly wrong: number;
}

/** Reads the whole sheet against the brake on the bench. */
export function understand(paper: Paper, brake: Brake): Understood {
  const { plain } = paper;
  let wrong = 0;
  const noted = (r: Read): Read => {
    if (r && !r.ok) wrong += 1;
    return r;
  };
  const wheel = (w: Wheel) =>
    Object.fromEntries(
      sizeKeys.map((k) => [k, noted(readSize(paper.wheels[w][k] ?? '', k, brake, plain))]),
    ) as Partial<Record<SizeKey, Read>>;
  const sizes = { left: wheel('left'), right: wheel('right') };
  const axle = Object.fromEntries(
    (['notchesBefore', 'notchesAfter', 'distance', 'drumFitted'] as const).map((k) => [
      k,
      noted(readAxle(paper.axle[k] ?? '', k, brake, plain)),
    ]),
  ) as Partial<Record<AxleKey, Read>>;
  const all = limitSets(brake);
  const set = all.find((s) => s.id === paper.limitsFrom) ?? all[0];
  const keys = Object.keys(set.limits) as LimitKey[];
  const limitReads: Partial<Record<LimitKey, Read>> = {};
  const limits: Record<string, number | null> = { ...set.limits };
  const whose: Record<string, string> = {};
  for (const k of keys) {
    const text = paper.limits[k];
    whose[k] = set.limits[k] === null ? (set.id === 'maker' ? set.whose : '') : set.whose;
    if (text === undefined) continue;
    const read = noted(readLimit(text, k, brake, plain));
    limitReads[k] = read;
    // A limit that cannot be read is none: it must not let anything pass.
    limits[k] = read?.ok ? read.value : null;
    whose[k] = read === null ? 'none' : set.id === 'maker' ? 'the maker’s, as typed' : 'typed here';
  }
  const foundOf = (w: Wheel): Found => {
    const s: Partial<Record<SizeKey, number>> = {};
    for (const k of sizeKeys) {
      const v = numberOf(sizes[w][k] ?? null);
      if (v !== undefined) s[k] = v;
    }
    const looks: Partial<Record<LookKey, 'good' | 'bad'>> = {};
    for (const k of lookKeys) {
      const text = paper.wheels[w][k];
      if (text === 'good' || text === 'bad') looks[k] = text;
    }
    return { sizes: s, looks };
  };
  const before = numberOf(axle.notchesBefore ?? null);
  const after = numberOf(axle.notchesAfter ?? null);
  const km = numberOf(axle.distance ?? null);
  return {
    sizes,
    axle,
    limitReads,
    found: {
      left: foundOf('left'),
      right: foundOf('right'),
      ...(before === undefined ? {} : { notchesBefore: before }),
      ...(after === undefined ? {} : { notchesAfter: after }),
    },
    limits: limits as unknown as Limits,
    whose: whose as Record<LimitKey, string>,
    asNew: {
      drum: 2 * brake.drum.radiusNew,
      lining: brake.shoes.front.lining.thicknessNew,
      teeth: brake.adjuster.teeth,
    },
    distance: km === undefined ? undefined : km * KM,
    drumFitted: numberOf(axle.drumFitted ?? null),
    wrong,
  };
}

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
