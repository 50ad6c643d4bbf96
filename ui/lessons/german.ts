import talk from '../../scenes/lessons/de/00-how-this-brake-works.json';
import partsAndNames from '../../scenes/lessons/de/01-parts-and-names.json';
import restPosition from '../../scenes/lessons/de/02-rest-position.json';
import thePress from '../../scenes/lessons/de/03-the-press.json';
import selfEnergising from '../../scenes/lessons/de/04-self-energising.json';
import whyItGrows from '../../scenes/lessons/de/05-why-it-grows.json';
import theClick from '../../scenes/lessons/de/06-the-click.json';
import holdingTheTooth from '../../scenes/lessons/de/07-holding-the-tooth.json';
import wearAndLimits from '../../scenes/lessons/de/08-wear-and-limits.json';
import drumOff from '../../scenes/lessons/de/09-drum-off.json';
import newShoes from '../../scenes/lessons/de/10-new-shoes.json';
import parkingBothWays from '../../scenes/lessons/de/11-parking-both-ways.json';
import heat from '../../scenes/lessons/de/12-heat.json';
import cheapestReading from '../../scenes/lessons/de/13-cheapest-reading.json';
import verdict from '../../scenes/lessons/de/14-verdict.json';

/** The lessons' texts in German, as files; loaded with that language alone. */
export const germanTexts: readonly unknown[] = [
  talk,
  partsAndNames,
  restPosition,
  thePress,
  selfEnergising,
  whyItGrows,
  theClick,
  holdingTheTooth,
  wearAndLimits,
  drumOff,
  newShoes,
  parkingBothWays,
  heat,
  cheapestReading,
  verdict,
];
