/**
 * Colours of the two views: Sheet (light) and Board (dark). Colour says only role, adjuster, fluid
 * pressure and out of limit; every other difference is carried by shape, hatch or line type.
 */
export type ThemeName = 'sheet' | 'board';

const sheet = {
  /** Page behind the blocks. */
  desk: '#D9E0DE',
  sheet: '#FCFDFC',
  panel: '#EFF3F1',
  ink: '#12202A',
  /** Labels, axes, captions. */
  ink2: '#475863',
  /** Inner cell rules only. */
  rule: '#7F9098',
  /** What cannot be pressed now. */
  off: '#66757D',
  faint: '#C9D3D3',
  lead: '#B1440A',
  leadFill: '#F2A878',
  trail: '#07589B',
  trailFill: '#A3CDEC',
  adj: '#6E0F50',
  adjFill: '#EDB9D7',
  fluid: '#0E7A6E',
  fluidFill: '#C9EAE4',
  good: '#0B6D62',
  bad: '#9A1616',
  warn: '#F4C534',
  warnInk: '#12202A',
  plate: '#E9EEED',
  emboss: '#D2DAD9',
  drum: '#DDE4E7',
  cylinder: '#E4E1D6',
  piston: '#F4F3EC',
  web: '#CAD6DC',
  table: '#8298A4',
  lining: '#A98F79',
  grain: '#4C3A2C',
  hub: '#D6DEDF',
  strut: '#E0D394',
  strutPlate: '#EFE7BE',
  parkingLever: '#A8B8A0',
  keeper: '#BCC8CC',
  /** Rubber cut thin, and rubber seen. */
  rubber: '#2B3236',
  rubberSeen: '#B7BFC2',
  wire: '#F8FAFA',
  wireBehind: '#5D6C74',
  hatch: '#53646E',
  hole: '#F4F7F6',
  bolt: '#C3CDD0',
};

export type Token = keyof typeof sheet;
type Colours = Readonly<Record<Token, string>>;

const board: Colours = {
  desk: '#080E11',
  sheet: '#0F191E',
  panel: '#152127',
  ink: '#EDF3F3',
  ink2: '#A9BAC1',
  rule: '#5F737D',
  off: '#81949D',
  faint: '#26363E',
  lead: '#FFA25A',
  leadFill: '#B35C1C',
  trail: '#79C0F7',
  trailFill: '#1E5C8E',
  adj: '#F07FC0',
  adjFill: '#8C2A68',
  fluid: '#8AEBDB',
  fluidFill: '#1A4A46',
  good: '#8AEBDB',
  bad: '#FF9086',
  warn: '#F4C534',
  warnInk: '#12202A',
  plate: '#18252B',
  emboss: '#2A3A42',
  drum: '#22323A',
  cylinder: '#35342C',
  piston: '#47463C',
  web: '#41545F',
  table: '#7F96A3',
  lining: '#7A6250',
  grain: '#D9C4B0',
  hub: '#2A3940',
  strut: '#75692F',
  strutPlate: '#4C4622',
  parkingLever: '#55664E',
  keeper: '#4A5A62',
  rubber: '#06090B',
  rubberSeen: '#3B474D',
  wire: '#DDE7EA',
  wireBehind: '#7E9099',
  hatch: '#8FA3AD',
  hole: '#0B1216',
  bolt: '#3B4A52',
};

export interface Theme {
  readonly name: ThemeName;
  readonly colours: Colours;
  /** Heat: colour at 0, 100 … 500 °C. Hotter is lighter on the board and darker on the sheet. */
  readonly heat: readonly string[];
}

export const themes: Readonly<Record<ThemeName, Theme>> = {
  sheet: {
    name: 'sheet',
    colours: sheet,
    heat: ['#F6E3B4', '#F3D27A', '#E9A64B', '#D2702F', '#A83A26', '#5B1A33'],
  },
  board: {
    name: 'board',
    colours: board,
    heat: ['#5A2A24', '#93432F', '#B0452D', '#E0642E', '#F0973C', '#FBDB8C'],
  },
};

const black = '#000000';
const white = '#FFFFFF';
/** On paper: black and white, web and levers in greys, everything else told by line and hatch. */
export const printTheme: Theme = {
  name: 'sheet',
  heat: themes.sheet.heat,
  colours: {
    ...(Object.fromEntries(Object.keys(sheet).map((t) => [t, white])) as Colours),
    ink: black,
    ink2: black,
    rule: black,
    off: black,
    lead: black,
    trail: black,
    adj: black,
    adjFill: '#BDBDBD',
    fluid: black,
    good: black,
    bad: black,
    warnInk: black,
    emboss: '#D0D0D0',
    web: '#EBEBEB',
    table: '#8A8A8A',
    grain: black,
    hub: '#F4F4F4',
    parkingLever: '#D2D2D2',
    rubber: black,
    rubberSeen: '#BBBBBB',
    wireBehind: '#666666',
    hatch: '#444444',
    bolt: '#E0E0E0',
  },
};

/** A token or a colour written out ("#RRGGBB"). */
export type Ink = Token | `#${string}`;

export const isToken = (ink: Ink): ink is Token => !ink.startsWith('#');

/** "#RRGGBB" of an ink in a theme. */
export function colourOf(theme: Theme, ink: Ink): string {
  return isToken(ink) ? theme.colours[ink] : ink;
}

const channels = (hex: string): number[] =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/** Colour of a temperature (°C) on the heat ramp, straight lines between the steps. */
export function heatColour(theme: Theme, celsius: number): `#${string}` {
  const at = Math.max(0, Math.min(4.999, celsius / 100));
  const low = channels(theme.heat[Math.floor(at)] as string);
  const high = channels(theme.heat[Math.floor(at) + 1] as string);
  const share = at - Math.floor(at);
  const mixed = low.map((v, i) => Math.round(v + ((high[i] as number) - v) * share));
  return `#${mixed.map((v) => v.toString(16).padStart(2, '0')).join('')}`;
}

const kebab = (name: string): string => name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

const asProperties = (colours: Readonly<Record<Token, string>>): string =>
  Object.entries(colours)
    .map(([name, value]) => `--${kebab(name)}:${value}`)
    .join(';');

/**
 * The tokens where the reader's system says the colours (forced-colors: CSS Color Adjustment 1, section 3): as on
 * paper, what is black there in the system's ink. So what tells by an exchange of ground and ink, as a pressed
 * switch does, tells still; left to the browser, both would be the same.
 */
const forced = Object.fromEntries(
  Object.entries(printTheme.colours).map(([name, value]) => [
    name,
    value === black ? 'CanvasText' : 'Canvas',
  ]),
) as Record<Token, string>;
Object.assign(forced, {
  off: 'GrayText',
  faint: 'GrayText',
  table: 'GrayText',
  warnInk: 'Canvas',
  warn: 'CanvasText',
});

/**
 * The tokens as CSS custom properties, names in kebab case: leadFill is --lead-fill. Where the system's colours are
 * asked for they stand in the tokens' place, save in `.drawn`: what is painted in the theme's colours keeps its ground.
 */
export function themeCss(theme: Theme, selector = ':root'): string {
  const own = asProperties(theme.colours);
  const scheme = theme.name === 'sheet' ? 'light' : 'dark';
  return `${selector}{color-scheme:${scheme};${own}}
@media (forced-colors: active){${selector}{forced-color-adjust:none;${asProperties(forced)}}
.drawn{${own};background:var(--sheet);color:var(--ink)}}`;
}
