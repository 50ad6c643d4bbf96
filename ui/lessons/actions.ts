import * as v from 'valibot';
import { part, words } from '../../sim/index.ts';

/** What a hand does to the brake in a lesson: a list of these is its script. */

const num = (about: string, least: number, most: number) =>
  v.pipe(
    v.number('a number'),
    v.minValue(least, `at least ${least}`),
    v.maxValue(most, `at most ${most}`),
    v.description(about),
  );
const yes = (about: string) => v.pipe(v.boolean('true or false'), v.description(about));
const act = <const K extends string, const T extends v.ObjectEntries>(
  name: K,
  about: string,
  entries: T,
) => part(about, { do: v.literal(name), ...entries });
const maybe = v.optional;

/** What is out of order: keys as the record's condition has them, in its units. */
const condition = {
  springFactor: maybe(num('Force of the return springs, 1: as built', 0, 10)),
  adjusterSeized: maybe(yes('The adjuster is stuck where it stands')),
  teethHold: maybe(num('Teeth let go above this load of the strut, N', 0, 1e6)),
  keptPressure: maybe(num('Pressure that stays in the line, bar', 0, 100)),
  leanFront: maybe(num('A stuck part leans on the front shoe, N', 0, 1e4)),
  leanRear: maybe(num('A stuck part leans on the rear shoe, N', 0, 1e4)),
  offCentre: maybe(num('Drum off centre, mm', 0, 5)),
  oval: maybe(num('Drum oval by ± mm', 0, 5)),
};

export const action = v.variant(
  'do',
  [
    act('pedal', 'Presses the pedal and holds it', {
      bar: num('Line pressure, bar', 0, 80),
      seconds: maybe(num('How long the pedal takes, s', 0, 20)),
    }),
    act('release', 'Lets the pedal go', {}),
    act('drum', 'Turns the drum', {
      way: v.picklist(['forward', 'backward', 'stands'], 'forward, backward or stands'),
    }),
    act('wear', 'Drives the brake on by its first duty', {
      km: maybe(num('So far, km', 0, 500000)),
      to: maybe(v.picklist(['click', 'limit'], 'click or limit')),
      reverse: maybe(num('Share of the stops in reverse, %', 0, 100)),
      past: maybe(yes('On past the limits')),
      seconds: maybe(num('How long it is shown, s', 0, 60)),
    }),
    act('tooth', 'Sets the adjuster by hand', {
      to: maybe(num('To this tooth', 0, 1e5)),
      by: maybe(num('On by so many; less than 0: back', -1e5, 1e5)),
    }),
    act('lever', 'Lets the cable hold the parking lever off its stop', {
      mm: num('At the hook, mm', 0, 8),
    }),
    act('cable', 'Pulls the parking cable', {
      newton: num('At each brake, N; 0 lets go', 0, 600),
      slack: maybe(num('Slack beyond the brake’s own, mm', 0, 30)),
    }),
    act('descend', 'Goes down a hill, the brake holding the speed', {
      slope: num('Slope, %', 1, 40),
      km: num('Length, km', 0.1, 30),
      kmh: maybe(num('Speed, km/h', 5, 120)),
    }),
    act('cool', 'Lets the drum cool down to the air', {}),
    act('grow', 'Warms the drum by so much', { kelvin: num('K', 0, 400) }),
    act('state', 'Puts on a standing state of the brake', { name: words('Its name') }),
    act('brake', 'Puts another teaching brake on, new', { name: words('Its name') }),
    act('condition', 'Puts something out of order', condition),
    act('friction', 'Linings of another friction', {
      front: maybe(num('Plain number', 0.05, 1)),
      rear: maybe(num('Plain number', 0.05, 1)),
    }),
    act('circuit', 'Another give of the rest of the circuit', {
      mm3PerMPa: num('mm³/MPa', 1, 5000),
    }),
    act('shoes', 'Fits new shoes', {
      bore: num('Bore of the drum, mm', 50, 500),
      lip: maybe(num('Diameter of the unworn edge, mm', 50, 500)),
      tooth: num('Tooth the adjuster stands at', 0, 1e5),
    }),
    act('swap', 'Puts the worn shoes in each other’s place', {}),
    act('try', 'Tries the drum by hand', {
      what: v.picklist(['pull', 'turn', 'rock'], 'pull, turn or rock'),
    }),
    act('hold', 'Something holds the drum besides', {
      hubRust: maybe(yes('Rust at the hub')),
      liningsRusted: maybe(yes('Linings rusted on')),
    }),
    act('show', 'Layers and what is looked at', {
      on: maybe(v.array(words('A layer'))),
      off: maybe(v.array(words('A layer'))),
      fan: maybe(v.picklist([1, 20, 40], '1, 20 or 40')),
      names: maybe(v.array(words('A part'))),
      holdDown: maybe(v.picklist(['fitted', 'lost'], 'fitted or lost')),
    }),
    act('note', 'Keeps the values of this moment under a name', { as: words('The name', 20) }),
    act('wait', 'Holds still', { seconds: num('s', 0, 60) }),
  ],
  'an action: do',
);
export type Action = v.InferOutput<typeof action>;
