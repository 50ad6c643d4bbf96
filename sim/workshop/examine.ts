import {
  type Axle,
  BAR,
  type BothWays,
  boreCheck,
  DRIVE,
  dragHeat,
  FELT,
  FIRM,
  firstTouch,
  HAND,
  handTurn,
  LIGHT,
  leverOff,
  notchesAt,
  parkedRoller,
  pedalAt,
  pedalPulse,
  pressedOnce,
  pullDrum,
  QUICK,
  ROLLER,
  releaseTime,
  restGap,
  roller,
  rubbing,
  stillOut,
  TOO_HOT,
  thinnest,
  type WheelBrake,
} from '../index.ts';
import type { Examination, ExaminationId } from './examinations.ts';
import type { FindingName, FindingWords, Observed } from './finding-text.ts';

/** N·mm to N·m. */
const NM = 1e-3;
/** Drag is felt by hand to a fifth, and from so many newton metres on; rollers to 8 %, as they waver. */
const HAND_SHARE = 0.2;
const HAND_LEAST = FELT * NM;
const ROLLER_SHARE = 0.08;
/** From this a driver notices a drum, K; below COOL it is told as cool. */
const WARM = 15;
const COOL = 5;
/** A foot notices: a pedal that goes far, mm; how much of it comes with the pressure, mm; a throb, mm. */
const FAR = 24;
const SPRINGY = 10;
const THROBS = 1;
/** Rulers at a pedal agree to this from van to van, mm. */
const PEDAL = 3;
/** A gauge at the bleed point reads to this, bar; and a hand on a wheel times to this, s; from memory. */
const GAUGE = 0.5;
const TIMED = 0.4;
/** A hand does not turn a wheel beyond this, N·m. */
const NO_HAND = 60;
/** Above this the tyre slips on any roller, N·m. */
const STANDS = 2000;

const num = (
  name: FindingName | '',
  value: number,
  unit: string,
  digits: number,
  resolves: number,
): Observed => ({ kind: 'number', name, value, unit, digits, resolves });
const words = (name: FindingName | '', says: FindingWords): Observed => ({
  kind: 'words',
  name,
  says,
});

function torque(name: FindingName, value: number, share: number, least: number): Observed {
  const v = value * NM;
  if (v > NO_HAND && share === HAND_SHARE) return words(name, 'hand does not turn it');
  if (v > STANDS) return words(name, 'stands still');
  return num(name, v, 'N·m', share === HAND_SHARE && v < 10 ? 1 : 0, Math.max(least, v * share));
}

const sides = ['left', 'right'] as const;

/** The wheels, or both in one line when they are alike. */
function each(
  a: Axle,
  of: (w: WheelBrake, label: (what: string) => string) => Observed[],
): Observed[] {
  const left = of(a.left, (what) => what);
  const right = of(a.right, (what) => what);
  const same = left.every((f, i) => alike(f, right[i] as Observed));
  const named = (list: Observed[], side: string) =>
    list.map((f) => ({ ...f, name: f.name ? `${side}, ${f.name}` : side }));
  return same ? named(left, 'both') : [...named(left, 'left'), ...named(right, 'right')];
}

const ways = (
  t: BothWays,
  what: '' | 'pedal ' | 'parked ',
  share: number,
  least: number,
): Observed[] => [
  torque(`${what}forward`, t.forward, share, least),
  torque(`${what}backward`, t.backward, share, least),
];

function story(a: Axle): Observed[] {
  const odd = sides.filter((s) => dragHeat(a[s], DRIVE) > WARM);
  const where =
    odd.length !== 1
      ? 'not at one wheel alone'
      : odd[0] === 'left'
        ? 'at the left rear only'
        : 'at the right rear only';
  const light = pedalAt(a, LIGHT).total;
  const firm = pedalAt(a, FIRM).total;
  const feel =
    firm < FAR ? 'as it should be' : firm - light > SPRINGY ? 'far and springy' : 'far and firm';
  return [
    words('trouble', where),
    words('pedal', feel),
    words('in a stop', pedalPulse(a, LIGHT) > THROBS ? 'throbs' : 'steady'),
  ];
}

function pump(a: Axle): Observed[] {
  const first = pedalAt(a, FIRM);
  const { axle, clicked } = pressedOnce(a, FIRM);
  const next = pedalAt(axle, FIRM);
  // Pumped before the fluid is back, a press starts where the last one ended: a gap is closed already.
  const up = next.gaps * stillOut(QUICK);
  return [
    num('at 10 bar', pedalAt(a, LIGHT).total, 'mm', 1, PEDAL),
    num('at 40 bar', first.total, 'mm', 1, PEDAL),
    num('next press', next.total, 'mm', 1, PEDAL),
    words('clicks', clicked > 0 ? 'heard' : 'none'),
    num('pumped quickly up by', up, 'mm', 1, PEDAL),
  ];
}

function heat(a: Axle, allWheels: boolean): Observed[] {
  const rear = each(a, (w) => {
    const rise = dragHeat(w, DRIVE);
    if (rise >= TOO_HOT) return [words('', 'too hot to touch')];
    if (rise < COOL) return [words('', 'cool')];
    return [num('hotter by', rise, 'K', 0, Math.max(10, 0.2 * rise))];
  });
  return [...rear, words('front wheels', allWheels ? 'warm too' : 'as ever')];
}

function turn(a: Axle): Observed[] {
  return each(a, (w) => {
    const pull = pullDrum(w);
    const hands = handTurn(w);
    const rubs = [rubbing(w, 'front'), rubbing(w, 'rear')];
    const times = Math.max(...rubs.map((r) => r.times));
    const drags = Math.max(hands.forward, hands.backward) * NM > HAND_LEAST;
    const stuck = pull.signs.turns === 'not at all' && pull.heldBy === 'linings rusted on';
    const slides = pull.signs.slides;
    const drum =
      slides === 'off'
        ? 'slides off'
        : slides === 'a little'
          ? 'slides, then stops'
          : 'does not slide';
    if (stuck) return [words('turns', 'not at all, then frees with one jerk'), words('drum', drum)];
    return [
      ...(drags ? ways(hands, '', HAND_SHARE, HAND_LEAST) : [words('turns', 'freely')]),
      ...(times === 0 || !Number.isFinite(times)
        ? []
        : [
            words(
              'rubs',
              times === 1 ? 'once a turn' : times === 2 ? 'twice a turn' : 'here and there',
            ),
          ]),
      words('drum', drum),
    ];
  });
}

function rock(a: Axle): Observed[] {
  return each(a, (w) => {
    const play = w.state.condition.drumRise;
    const touch = Math.min(rubbing(w, 'front').least, rubbing(w, 'rear').least) < 0;
    return [
      play > 0 ? num('wheel rocks', play, 'mm', 2, 0.05) : words('wheel', 'does not rock'),
      words('drum', touch || restGap(w) < 0 ? 'dull' : 'rings'),
    ];
  });
}

/** Trodden slowly with a gauge in the line, then let go: when the wheel begins to drag, and when it is free. */
function press(a: Axle): Observed[] {
  return each(a, (w) => {
    const touch = firstTouch(w) / BAR;
    const free = releaseTime(w);
    return [
      touch === 0
        ? words('drags', 'already')
        : Number.isNaN(touch)
          ? words('drags', 'not up to 40 bar')
          : num('drags from', touch, 'bar', 1, GAUGE),
      words('comes on', w.state.condition.groove > 0 ? 'late, all at once' : 'smoothly'),
      Number.isFinite(free)
        ? num('goes back in', free, 's', 1, TIMED)
        : words('goes back', 'not by itself'),
    ];
  });
}

/** The same wheel with no pressure in its line. */
const bled = (w: WheelBrake): WheelBrake => ({
  ...w,
  state: { ...w.state, condition: { ...w.state.condition, keptPressure: 0 } },
});

function bleed(a: Axle): Observed[] {
  return each(a, (w) => {
    if (w.state.condition.keptPressure === 0) return [words('', 'nothing changes')];
    const after = handTurn(bled(w));
    return [words('', after.forward * NM < HAND_LEAST ? 'frees at once' : 'eases')];
  });
}

function lever(a: Axle): Observed[] {
  return each(a, (w) => {
    const off = leverOff(w);
    return [
      off > 0.3 ? num('off its stop', off, 'mm', 0, 1.5) : words('lever', 'home'),
      words('flexed', w.state.condition.leverLoss > 0 ? 'comes slowly' : 'comes and goes'),
    ];
  });
}

function rollers(a: Axle): Observed[] {
  return each(a, (w) => [
    ...ways(roller(w, ROLLER), 'pedal ', ROLLER_SHARE, 3),
    ...ways(parkedRoller(w, HAND), 'parked ', ROLLER_SHARE, 3),
  ]);
}

function off(a: Axle): Observed[] {
  return each(a, (w) => {
    const pull = pullDrum(w);
    const teeth = pull.backOff.teeth;
    const stuck = w.state.condition.pistonStuck;
    return [
      words('held by', pull.heldBy ?? 'nothing'),
      ...(pull.fit.greatest > 0
        ? [num('overlap at the lip', pull.fit.greatest, 'mm', 2, 0.03)]
        : []),
      teeth === null
        ? words('teeth back', 'all are not enough')
        : num('teeth back', teeth, '', 0, 0.9),
      words('pads', w.state.condition.groove > 0 ? 'grooved' : 'smooth'),
      words('shoes', stuck.front || stuck.rear ? 'one will not rock' : 'rock alike'),
    ];
  });
}

function measure(a: Axle): Observed[] {
  return each(a, (w) => {
    const b = boreCheck(w);
    return [
      num('least bore', b.least, 'mm', 2, 0.04),
      num('greatest', b.greatest, 'mm', 2, 0.04),
      num('front lining', Math.max(0, thinnest(w.rig, w.state, 'front')), 'mm', 2, 0.1),
      num('rear lining', Math.max(0, thinnest(w.rig, w.state, 'rear')), 'mm', 2, 0.1),
    ];
  });
}

const dial = (a: Axle): Observed[] =>
  each(a, (w) => [num('swing', boreCheck(w).dial, 'mm', 2, 0.05)]);

function tooth(a: Axle): Observed[] {
  return each(a, (w) => {
    const { adjusterSeized, leverSpring, adjusterStep } = w.state.condition;
    const says = adjusterSeized
      ? 'stiff'
      : leverSpring <= 0
        ? 'swings free'
        : adjusterStep < 0
          ? 'of the other side'
          : 'drops in';
    return [num('tooth', w.state.tooth, '', 0, 0.9), words('lever', says)];
  });
}

const boots = (a: Axle): Observed[] => each(a, (w) => [words('', w.wet ?? 'dry')]);

const bore = (a: Axle): Observed[] =>
  each(a, (w) => [num('', w.rig.brake.cylinder.bore, 'mm', 2, 0.1)]);

/** What an examination of this axle finds. */
export function examine(a: Axle, id: ExaminationId, allWheels = false): Observed[] {
  switch (id) {
    case 'story':
      return story(a);
    case 'pump':
      return pump(a);
    case 'notches':
      return [num('notches', notchesAt(a, HAND), '', 1, 1.2)];
    case 'heat':
      return heat(a, allWheels);
    case 'turn':
      return turn(a);
    case 'rock':
      return rock(a);
    case 'press':
      return press(a);
    case 'bleed':
      return bleed(a);
    case 'lever':
      return lever(a);
    case 'roller':
      return rollers(a);
    case 'off':
      return off(a);
    case 'measure':
      return measure(a);
    case 'dial':
      return dial(a);
    case 'tooth':
      return tooth(a);
    case 'boots':
      return boots(a);
    case 'bore':
      return bore(a);
  }
}

/** Cannot be told apart by this check. */
function alike(a: Observed, b: Observed): boolean {
  if (a.name !== b.name || a.kind !== b.kind) return false;
  if (a.kind === 'words') return a.says === (b as typeof a).says;
  return (
    Math.abs(a.value - (b as typeof a).value) <= Math.max(a.resolves, (b as typeof a).resolves)
  );
}

/** What of `there` differs from `here`: those findings of `there`. Empty: this check does not part them. */
export function parted(here: readonly Observed[], there: readonly Observed[]): Observed[] {
  return there.filter((f) => !here.some((h) => h.name === f.name && alike(h, f)));
}

/** Minutes of an examination on this axle: a drum takes one more for each tooth to back off. */
export function minutesOf(e: Examination, a: Axle): number {
  if (e.id !== 'off') return e.minutes;
  const teeth = sides.map((s) => pullDrum(a[s]).backOff.teeth ?? a[s].state.tooth);
  return e.minutes + Math.max(...teeth);
}
