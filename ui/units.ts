import { create, createUnitDependencies, type Unit, unitDependencies } from 'mathjs';
import { units as texts } from '../sim/words/en.ts';

/**
 * Sizes as people write them. The text is brought to the spelling that the unit library knows, then
 * read by it, then echoed: what was understood is always said. Never guesses a unit.
 */
// Of the library only what reads units: all of it would be three times as large.
const math = create({ ...createUnitDependencies, ...unitDependencies });
// Units of the trade that the library lacks; exact by definition.
math.createUnit({
  thou: texts.of0001Inch,
  hundredth: '0.01 mm',
  micron: texts.of1Um,
  kph: '1 km/h',
  mph: texts.of1MileHour,
  rpm: texts.of1CycleMinute,
  ksi: texts.of1000Psi,
});

export type QuantityResult =
  | { readonly ok: true; readonly value: number; readonly echo: string }
  | { readonly ok: false; readonly found: string; readonly allowed: string };

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Units in words and in other spellings, as the library has them. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^(millimet(re|er)s?|mm\.)$/i, 'mm'],
  [/^(centimet(re|er)s?|cm\.)$/i, 'cm'],
  [/^(thous|thousandths?( of an inch)?|mils?)$/i, 'thou'],
  [/^(hundredths?( of a mm| of a millimet(re|er))?)$/i, 'hundredth'],
  [/^(bars?)$/i, 'bar'],
  [/^(newtons?)$/i, 'N'],
  [/^(kilograms?|kgs?|kilos?)$/i, 'kg'],
  [/^(°|degrees?|degs?)$/i, 'deg'],
  [/^(kilomet(re|er)s?|kms?)$/i, 'km'],
  [/^(miles?|mi)$/i, 'mile'],
];

/** Letters, powers, products and quotients: what the library is asked about, and no sum to work out. */
const UNIT = /^[a-z]+(\^[23])?([ /][a-z]+(\^[23])?)*$/i;

/** A size under this part of the greatest allowed, in a unit of one's own choice, is a slip of the prefix. */
const SLIP = 1e-6;

/** Longest text worth reading. */
const LONGEST = 60;

/** Number part: decimal point or comma, thousands by space or comma groups, fractions, mixed fractions. */
function readNumber(text: string, comma: 'decimal' | 'thousands'): number {
  const t = text.trim().replace(/^\+/, '');
  const mixed = /^(-?)(?:(\d+)\s*[\s-]\s*)?(\d+)\/(\d+)$/.exec(t);
  if (mixed) {
    const [, sign, whole, top, bottom] = mixed;
    if (Number(bottom) === 0) return Number.NaN;
    const value = Number(whole ?? 0) + Number(top) / Number(bottom);
    return sign ? -value : value;
  }
  let plain = t.replace(/(\d)[\s\u202f\u00a0'](?=\d{3}(\D|$))/g, '$1');
  // "1,234" and "1,234.5": thousands first; "3,8" and "0,060": a decimal comma.
  const thousands = /^-?[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(plain);
  if (thousands && comma === 'thousands') plain = plain.replace(/,/g, '');
  else if (/^-?\d*,\d+$/.test(plain)) plain = plain.replace(',', '.');
  return /^-?(\d+\.?\d*|\.\d+)(e-?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
}

/** Spelling of a unit as the library has it; case is kept, save for common slips. */
function unitName(text: string): string {
  const t = text
    .trim()
    .replace(/[\u00b5\u03bc]m/g, 'um')
    .replace(/^("|″|”|“|''|’’|′′|inches|inch|ins?\.?)$/i, 'inch')
    .replace(/^('|′|’|ft)$/, 'ft')
    .replace(/^(°|deg\.?)\s*c$/i, 'degC')
    .replace(/^(°|deg\.?)\s*f$/i, 'degF')
    .replace(/^°$/, 'deg')
    .replace(/²/g, '^2')
    .replace(/³/g, '^3')
    .replace(/[·⋅*]/g, ' ')
    .replace(/^(N\s?mm|Nmm)$/, 'N mm')
    .replace(/^(N\s?m|Nm)$/, 'N m')
    .replace(/^(lb|lbf)[\s-]?ft$/i, 'lbf ft')
    .replace(/^(lb|lbf)[\s-]?in$/i, 'lbf inch')
    .replace(/^mm$/i, 'mm')
    .replace(/^cm$/i, 'cm')
    .replace(/^km$/i, 'km')
    .replace(/^bar$/i, 'bar')
    .replace(/^psi$/i, 'psi')
    .replace(/^kgf\/cm\^2$/, 'kgf/cm^2');
  for (const [words, name] of WORDS) if (words.test(t)) return name;
  return t === 'C' ? 'degC' : t === 'F' ? 'degF' : t;
}

/** A size in another spelling is echoed with both: what was typed, and what it is. */
const short = (value: number): string => String(Number(value.toPrecision(6)));

/**
 * Reads a size as typed into a wanted unit.
 *
 * @param text as typed, e.g. `7 57/64 in`, `3,8 mm`, `0.060"`, `40 bar`
 * @param unit wanted, in the library's spelling; also taken when none is typed
 * @param range allowed, in that unit
 * @param plain unit of a number without one; the wanted unit when left out
 */
export function readQuantity(
  text: string,
  unit: string,
  range: readonly [number, number],
  plain = unit,
): QuantityResult {
  const first = readWith(text, unit, range, plain, 'thousands');
  if (first.ok || !/\d,\d{3}(?!\d)/.test(text)) return first;
  // "200,421 mm": as thousands out of range, and a decimal comma is in it.
  const second = readWith(text, unit, range, plain, 'decimal');
  return second.ok ? second : first;
}

/** The size in the wanted unit; null for a unit that is not known, NaN for one of another kind. */
function sizeIn(unit: string, value: number, name: string): number | null {
  if (!UNIT.test(name)) return null;
  try {
    const read: Unit = math.unit(value, name);
    return read.equalBase(math.unit(1, unit)) ? read.toNumber(unit) : Number.NaN;
  } catch {
    // The library throws on a unit it does not know.
    return null;
  }
}

function readWith(
  text: string,
  unit: string,
  range: readonly [number, number],
  plain: string,
  comma: 'decimal' | 'thousands',
): QuantityResult {
  const allowed = texts.allowed(range[0], range[1], unit);
  const bad = (found: string): QuantityResult => ({ ok: false, found, allowed });
  let t = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[Øø⌀]/g, '')
    .trim();
  for (const [sign, words] of Object.entries(FRACTIONS))
    t = t.replace(new RegExp(`\\s*${sign}`, 'g'), ` ${words}`).trim();
  if (t === '') return bad('nothing');
  if (t.length > LONGEST) return bad(texts.characters(text.slice(0, 20), text.length));
  const parts = /^([+-]?[\d.,/\s\u202f\u00a0'-]*\d\.?(?:e-?\d+)?)\s*([^\d\s.].*)?$/i.exec(t);
  const value = readNumber(parts?.[1] ?? '', comma);
  if (!parts || Number.isNaN(value)) return bad(`"${text}"`);
  const name = parts[2] === undefined ? plain : unitName(parts[2]);
  const inUnit = sizeIn(unit, value, name);
  // A unit that is not known is the finding.
  if (inUnit === null) return bad(texts.withTheUnknownUnit(text, parts[2] ?? ''));
  if (Number.isNaN(inUnit)) return bad(texts.whichIsNo(text, unit));
  const inside = (size: number): boolean => size >= range[0] && size <= range[1];
  const least = SLIP * Math.max(...range.map(Math.abs));
  const slip = name !== unit && inUnit !== 0 && Math.abs(inUnit) < least;
  if (!Number.isFinite(inUnit) || !inside(inUnit) || slip) {
    const mega = name.replace(/^m/, 'M');
    const meant = slip && mega !== name ? sizeIn(unit, value, mega) : null;
    const asked = meant !== null && inside(meant) ? texts.mIsMilliWasMeant(value, mega) : '';
    return bad(texts.readAs(text, short(inUnit), unit, asked));
  }
  const typed = parts[2] === undefined && name !== unit ? `${t} ${plain}` : t;
  const same = name === unit && /^[+-]?\d*\.?\d*$/.test((parts[1] ?? '').trim());
  return {
    ok: true,
    value: inUnit,
    echo: same ? texts.readAs2(short(inUnit), unit) : texts.readAs3(typed, short(inUnit), unit),
  };
}
