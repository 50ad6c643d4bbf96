/**
 * Colour tokens, both themes. Sheet is light, Board is dark. Colour says only role, adjuster, fluid
 * pressure and out of limit; every other difference is carried by shape, hatch or line type.
 */
const sheet = {
  desk: '#D9E0DE', sheet: '#FCFDFC', panel: '#EFF3F1', ink: '#12202A', ink2: '#475863',
  rule: '#7F9098', faint: '#C9D3D3', lead: '#B1440A', leadFill: '#F2A878', trail: '#07589B',
  trailFill: '#A3CDEC', adj: '#6E0F50', adjFill: '#EDB9D7', fluid: '#0E7A6E', fluidFill: '#C9EAE4',
  fluidDeep: '#7FC3B8', warn: '#F4C534', warnInk: '#12202A', bad: '#9A1616', good: '#0E7A6E',
  plate: '#E9EEED', emboss: '#D2DAD9', drum: '#DDE4E7', cylinder: '#E4E1D6', piston: '#F4F3EC',
  web: '#CAD6DC', table: '#8298A4', lining: '#A98F79', grain: '#4C3A2C', hub: '#D6DEDF',
  strut: '#E0D394', strutPlate: '#EFE7BE', parkLever: '#A8B8A0', keeper: '#BCC8CC', rubber: '#2B3236',
  rubberPale: '#B7BFC2', wire: '#F8FAFA', wireBack: '#5D6C74', hatch: '#53646E', hole: '#F4F7F6',
  bolt: '#C3CDD0',
};

export type Token = keyof typeof sheet;
export type Theme = Readonly<Record<Token, string>>;

const board: Theme = {
  desk: '#080E11', sheet: '#0F191E', panel: '#152127', ink: '#EDF3F3', ink2: '#A9BAC1',
  rule: '#5F737D', faint: '#26363E', lead: '#FFA25A', leadFill: '#B35C1C', trail: '#79C0F7',
  trailFill: '#1E5C8E', adj: '#F07FC0', adjFill: '#8C2A68', fluid: '#8AEBDB', fluidFill: '#1A4A46',
  fluidDeep: '#2F8077', warn: '#F4C534', warnInk: '#12202A', bad: '#FF9086', good: '#8AEBDB',
  plate: '#18252B', emboss: '#2A3A42', drum: '#22323A', cylinder: '#35342C', piston: '#47463C',
  web: '#41545F', table: '#7F96A3', lining: '#7A6250', grain: '#D9C4B0', hub: '#2A3940',
  strut: '#75692F', strutPlate: '#4C4622', parkLever: '#55664E', keeper: '#4A5A62', rubber: '#06090B',
  rubberPale: '#3B474D', wire: '#DDE7EA', wireBack: '#7E9099', hatch: '#8FA3AD', hole: '#0B1216',
  bolt: '#3B4A52',
};

export type ThemeName = 'Sheet' | 'Board';
export const themes: Readonly<Record<ThemeName, Theme>> = { Sheet: sheet, Board: board };

/** The tokens as CSS custom properties. */
export const customProperties = (theme: Theme): [string, string][] =>
  Object.entries(theme).map(([name, value]) => [`--${name}`, value]);
