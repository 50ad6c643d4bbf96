import type { Reading, ReadingKey, ShoeReading } from '../index.ts';
import { workshopReadingText as words } from '../words/en.ts';

type Plain = Exclude<ReadingKey, ShoeReading | `spring${number}`>;

/** What a reading means, one plain sentence. */
const plain: Readonly<Record<Plain, string>> = words.plain;

type OfShoe = ShoeReading extends `${infer What}Front` | `${infer What}Rear` ? What : never;

const ofShoe: Readonly<Record<OfShoe, (where: 'front' | 'rear') => string>> = {
  toeForce: (where) => words.whatThePistonHasLeft(where),
  pistonTravel: (where) => words.howFarThePistonHas(where),
  drag: (where) => words.frictionOfTheLiningAt(where),
  peak: (where) => words.greatestPressureAnywhereOn(where),
  clearance: (where) => words.gapBetweenTheMiddleOf(where),
  restClearance: (where) => words.gapAtTheMiddleOf(where),
  lining: (where) => words.thicknessOfTheLiningAt(where),
  liningShare: (where) => words.partOfTheUsableLining(where),
  anchorForce: (where) => words.forceOfThePinOn(where),
};

const isPlain = (key: ReadingKey): key is Plain => key in plain;

/** What a reading means, one plain sentence. */
export function meaningOf({ key, name }: Reading): string {
  if (isPlain(key)) return plain[key];
  const shoe = /^(.*)(Front|Rear)$/.exec(key);
  if (shoe) return ofShoe[shoe[1] as OfShoe](shoe[2] === 'Front' ? 'front' : 'rear');
  return words.whatThePullsWithNow(name.replace(/^Pull of the /, ''));
}
