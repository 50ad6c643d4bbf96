import { labelWords, awayFigureMake as said } from '../../../sim/words/en.ts';
import { fanFactor } from '../../fan-factor.ts';
import { stationNames } from '../../record/moment.ts';
import { themes } from '../../theme.ts';
import { originOf, originText } from '../origin.ts';
import { type Kind, plainName, saveFile } from '../save.ts';
import type { DrawAsk, Stand } from '../stand.ts';
import { type Choices, lastChoices, reduction } from './choices.ts';
import { type Composed, compose, type Figure, smallestText } from './compose.ts';
import { captionOf, factsOf, titleOf } from './facts.ts';
import { fontsFor } from './fonts.ts';
import { greyTheme } from './grey.ts';
import { marksOf } from './legend.ts';
import { paint, withText } from './png.ts';

/** Makes a figure of what stands on the bench, by choices and words. */

const SVG: Kind = { tells: labelWords.drawing, type: 'image/svg+xml', endings: ['.svg'] };
const PNG: Kind = { tells: labelWords.picture, type: 'image/png', endings: ['.png'] };
export const kindOf = ({ kind }: Choices): Kind => (kind === 'svg' ? SVG : PNG);

/** A sheet of its own for the whole brake, px: as on a wide stage. */
const SHEET = { width: 1180, height: 960 };
/** Where a figure is shown so small that its words would be, they are drawn larger, as far as there is room. */
const WORDS = { '2:1': 1, '1:1': 1, '1:2': 1.45, '1:5': 2 } as const;

const themeOf = ({ look }: Choices) =>
  look === 'grey' ? greyTheme : look === 'dark' ? themes.board : themes.sheet;

/** A stage that a phone shows is no figure: it has numbers for names, and its words in the corners. */
export const stageWorks = ({ size }: Pick<Stand, 'size'>): boolean => size !== 'narrow';

/** What is drawn for some choices. */
export function askOf(stand: Stand, choices: Choices): DrawAsk {
  const whole = choices.frame === 'whole' || !stageWorks(stand);
  return {
    theme: themeOf(choices),
    ...(choices.names === 'as' ? {} : { layers: { names: choices.names === 'with' } }),
    ...(whole ? { ...SHEET, foot: 0, whole: true, words: WORDS[choices.scale] } : {}),
  };
}

export interface Words {
  readonly title: string;
  readonly caption: string;
}
export const wordsOf = (stand: Stand): Words => ({
  title: titleOf(stand),
  caption: captionOf(stand),
});

export interface Made extends Composed {
  /** Of its words, points on paper. */
  readonly smallest: number;
  readonly origin: Figure['origin'];
}

/** What the file of a figure is called. */
export const nameOf = ({ session, station }: Stand, { kind }: Choices): string =>
  `takeup-${plainName(session.brake.name)}-${plainName(stationNames[station.id])}.${kind}`;

export async function makeFigure(stand: Stand, choices: Choices, words: Words): Promise<Made> {
  const { session } = stand;
  const drawings = stand.draw(askOf(stand, choices));
  const figure: Omit<Figure, 'fonts'> = {
    drawings,
    theme: themeOf(choices),
    grey: choices.look === 'grey',
    clear: choices.clear,
    reduction: reduction(choices.scale),
    scale: choices.scale,
    title: choices.title ? words.title : '',
    caption: choices.caption ? words.caption : '',
    bar: choices.bar,
    facts: choices.facts ? factsOf(stand) : [],
    marks: choices.legend ? marksOf(drawings, session.layers.fan ? fanFactor(session) : 0) : [],
    foot: said.aTeachingBrakeItsFigures,
    origin: await originOf(session),
  };
  const texts = JSON.stringify([words, drawings.map((d) => d.labels.map((l) => l.text))]);
  // Without a network that has the typeface the reader's own stands in.
  const fonts = await fontsFor(texts).catch(() => '');
  return {
    ...compose({ ...figure, fonts }),
    smallest: smallestText(figure),
    origin: figure.origin,
  };
}

/** Most points of a picture that every browser paints: as a screen of 3 840 px, upright. */
const MOST_POINTS = 3840 * 8640;

/** The file of a figure. Throws what cannot be painted, in words. */
export async function fileOf(made: Made, choices: Choices): Promise<Blob> {
  if (choices.kind === 'svg') return new Blob([made.svg], { type: SVG.type });
  const [width, height] = [choices.wide, Math.round((choices.wide * made.height) / made.width)];
  const blob = width * height > MOST_POINTS ? null : await paint(made.svg, width, height);
  if (!blob) throw new Error(said.thisBrowserCannotPaintSo);
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const whole = withText(bytes, originText(made.origin), (width / made.paper[0]) * 1000);
  return new Blob([whole as Uint8Array<ArrayBuffer>], { type: PNG.type });
}

/** A figure with the last choices and the words that stand by themselves. Gives what to say. */
export async function saveFigure(stand: Stand): Promise<string> {
  const choices = lastChoices();
  const name = nameOf(stand, choices);
  try {
    const file = makeFigure(stand, choices, wordsOf(stand)).then((made) => fileOf(made, choices));
    return await saveFile(name, kindOf(choices), file);
  } catch (error: unknown) {
    return error instanceof Error ? error.message : String(error);
  }
}
