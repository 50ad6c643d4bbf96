import {
  adjusterKinds,
  type BrakeState,
  foundKeys,
  freshState,
  ownKeys,
  placeKeys,
  type Scene,
} from '../../../sim/index.ts';
import {
  cases,
  examinations,
  faults,
  limitSets,
  parkingRules,
} from '../../../sim/workshop/index.ts';
import { shipped } from '../../../ui/lessons/library.ts';
import { runStep } from '../../../ui/lessons/run.ts';
import { questions } from '../../../ui/questions/index.ts';
import { freshBench } from '../../../ui/record/bench.ts';
import { brakeOf, read } from '../../../ui/record/derive.ts';
import { handParts, secondParts } from '../../../ui/record/hands.ts';
import { intentions } from '../../../ui/record/intentions.ts';
import { lastStretch } from '../../../ui/record/life.ts';
import { type Moment, stationIds } from '../../../ui/record/moment.ts';
import { photoPoints, photoSizes } from '../../../ui/record/own-photo.ts';
import { layerNames } from '../../../ui/record/view.ts';
import { brakes } from '../../../ui/scenes.ts';
import { partNames } from '../../../ui/stage/part-names.ts';
import { complaints } from '../../../ui/stations/drum-off/complaints.ts';
import {
  axleLines,
  heads,
  limitWords,
  lines,
  newPartNames,
} from '../../../ui/stations/inspect/lines.ts';
import { BLANK } from '../../../ui/stations/inspect/paper.ts';
import { kindIds, setByIds } from '../../../ui/stations/kind/part.ts';
import { orderPages } from '../../../ui/stations/order/plan.ts';
import { topics } from '../../../ui/stations/see/part.ts';
import { ways } from '../../../ui/stations/start/part.ts';
import { FACTOR } from '../../../ui/stations/vary/part.ts';

/** Everything that a user can want, with anything that can be asked of it: what a finger or a stranger may bring. */

/** Chance that can be repeated: a linear congruential row. */
export class Chance {
  #x: number;
  constructor(seed: number) {
    this.#x = seed >>> 0;
  }
  next(): number {
    this.#x = (Math.imul(this.#x, 1664525) + 1013904223) >>> 0;
    return this.#x / 2 ** 32;
  }
  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }
  real(low: number, high: number): number {
    return low + this.next() * (high - low);
  }
  yes(): boolean {
    return this.next() < 0.5;
  }
  of<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)] as T;
  }
}

const texts = [
  '',
  '4.5',
  '5/64 in',
  '-3',
  '1e400',
  '<b>x</b>',
  'ä'.repeat(300),
  '\u0000',
  '203,2',
  '8"',
];

/** A state that a brake could be in. */
function state(m: Moment, c: Chance): BrakeState {
  const brake = brakeOf(m);
  const fresh = freshState(brake);
  const worn = (side: 'front' | 'rear') =>
    fresh.wear[side].map(() => c.real(0, brake.shoes[side].lining.thicknessNew));
  return {
    ...fresh,
    tooth: c.whole(0, brake.adjuster.teeth),
    wear: c.yes() ? fresh.wear : { front: worn('front'), rear: worn('rear') },
    drumRadius: c.real(brake.drum.radiusNew, brake.drum.radiusMax),
    temperature: c.real(0, 300),
    distance: c.real(0, 1e11),
    applications: c.whole(0, 1e6),
    leverOffStop: c.real(0, 8),
    ...(c.yes()
      ? { film: { water: c.real(0, 1), rust: 0, glaze: { front: c.real(0, 1), rear: 0 } } }
      : {}),
    ...(c.yes() ? { wornBy: c.of(['bending', 'neither'] as const) } : {}),
  };
}

/** Lessons that drive no life: those take their time. */
const taught = shipped.filter((l) => [1, 2, 4].includes(l.number ?? 0));

const scene = (c: Chance): Scene => read(c.of(brakes)).scene;
const own = (m: Moment, c: Chance): string =>
  c.of([...m.shelf.brakes.map((b) => b.name), 'own-none']);
const call = (c: Chance) =>
  c.of([
    null,
    { kind: 'fault', id: c.of(faults).id },
    { kind: 'van', number: c.of(cases).number },
    { kind: 'question', id: c.of(questions).id },
    { kind: 'lesson', id: c.of(taught).name },
    { kind: 'state', name: 'Near the limit' },
  ]);
const sizes = (c: Chance) => (c.yes() ? { bore: c.real(15, 30) } : {});
const wheel = (c: Chance) => c.of(['left', 'right']);
/** Taps anywhere in a picture, and places of a brake that may be none. */
const photo = (c: Chance) => {
  const at = () => [c.real(-100, 100), c.real(-100, 100)];
  const tap = () => [c.of(photoPoints), [c.real(0, 4000), c.real(0, 3000)]];
  const seen = {
    places: Object.fromEntries([0, 1, 2].map(() => [c.of(placeKeys), at()])),
    clearance: c.of([null, c.real(0, 2)]),
    plateRadius: c.of([null, c.real(50, 200)]),
  };
  return {
    width: 4000,
    height: 3000,
    wheel: wheel(c),
    texts: side(photoSizes, c),
    taps: Object.fromEntries([0, 1, 2, 3].map(tap)),
    unseen: c.yes() ? [c.of(photoPoints)] : [],
    seen: c.yes() ? null : seen,
  };
};
const side = (keys: readonly string[], c: Chance) => ({ [c.of(keys)]: c.of(texts).slice(0, 40) });

type Asked = (m: Moment, c: Chance) => readonly unknown[];
const nothing: Asked = () => [];
const flag: Asked = (_m, c) => [c.yes()];
const spot = (c: Chance) => [c.real(-3000, 3000), c.real(-300, 300)];
const typed: Asked = (_m, c) => [c.of(texts)];

export const asked: Readonly<Record<string, Asked>> = {
  'bench.new': nothing,
  'bench.brake': (m, c) => [
    c.of([
      { kind: 'scene', name: c.of(brakes).name },
      { kind: 'whole', scene: scene(c) },
      ...m.shelf.brakes.map((b) => ({ kind: 'own', name: b.name })),
    ]),
  ],
  'bench.clicked': (m, c) => {
    const { teeth } = brakeOf(m).adjuster;
    return [{ ...m.bench.state, tooth: Math.min(teeth, m.bench.state.tooth + c.whole(1, 2)) }];
  },
  'bench.bedded': (m, c) => {
    const from = c.yes() ? m.bench.state : state(m, c);
    return [from, { wear: state(m, c).wear, wornBy: c.of(['bending', 'neither', undefined]) }];
  },
  'bench.apart': flag,
  'bench.adjuster': (_m, c) => [
    {
      kind: c.of(adjusterKinds),
      hotLock: c.yes(),
      drivenBy: c.of(['application', 'parking pull']),
    },
  ],
  'pedal.press': (_m, c) => [c.real(-10, 100)],
  'pedal.pressTo': (_m, c) => [c.real(-10, 100)],
  'pedal.release': nothing,
  'bench.standing': (m, c) => [c.of(brakeOf(m).states).name],
  'bench.state': (m, c) => [state(m, c)],
  'hands.open': flag,
  'hands.part': (_m, c) => [c.of(handParts)],
  'hands.grab': (_m, c) => [c.of(handParts), spot(c), spot(c), c.real(-9, 9)],
  'hands.pull': (_m, c) => [spot(c), c.real(-9, 9)],
  'hands.grab-second': (_m, c) => [c.of(secondParts), spot(c), spot(c)],
  'hands.pull-second': (_m, c) => [spot(c)],
  'hands.lift': (_m, c) => [c.of([0, 1] as const)],
  'hands.let-go': nothing,
  'hands.tool': flag,
  'hands.large': flag,
  'hands.drum': flag,
  'hands.spring': (_m, c) => [c.whole(0, 2), c.yes()],
  'hands.hold-down': (_m, c) => [c.of(['front', 'rear']), c.yes()],
  'view.bend': flag,
  'view.names': flag,
  'view.look': (_m, c) => [c.of(['sheet', 'board'])],
  'view.wheel': (_m, c) => [wheel(c)],
  'view.magnify': (_m, c) => [c.of([1, 20, 40])],
  'view.reveal': (_m, c) => [c.of(Object.keys(partNames))],
  'view.wall': flag,
  'view.slow': (_m, c) => [c.of([1, 20, 100, 400])],
  'view.sound': flag,
  'view.tip': (_m, c) => [{ holdDown: c.of(['fitted', 'lost']), groove: c.real(0, 2) }],
  'view.layer': (_m, c) => [c.of(layerNames)],
  'view.turn': (_m, c) => [c.of([1, 0, -1])],
  'view.zoom': (_m, c) => [{ factor: c.real(0, 20), dx: c.real(-900, 900), dy: c.real(-900, 900) }],
  'dial.back': nothing,
  'dial.turn': (m, c) => {
    const set = c.yes() ? [] : [{ id: 'cylinder.bore', value: c.real(10, 30) }];
    return ['Bore', set, { scene: scene(c), state: state(m, c) }];
  },
  'guest.leave': nothing,
  'guest.keep': nothing,
  'station.show': (_m, c) => [c.of(stationIds)],
  'place.walk': (_m, c) => [{ station: c.of(stationIds), guest: call(c) }],
  'lessons.again': (_m, c) => [c.of(taught)],
  'lessons.blank': flag,
  'lessons.choose': (_m, c) => [c.of(taught), c.whole(-1, 4)],
  'lessons.drop': typed,
  'lessons.forget': (_m, c) => [c.of(taught).name],
  'lessons.hand': (_m, c) => {
    const lesson = c.of(taught);
    const { beats } = runStep(lesson, c.of(lesson.steps));
    return [c.of(beats), c.whole(0, 3), c.whole(0, 5), c.yes()];
  },
  'lessons.keep': (_m, c) => [c.of(texts), c.of([null, ...texts])],
  'lessons.keys': flag,
  'lessons.write': (_m, c) => [c.of([null, ...texts])],
  'lessons.take-step': (_m, c) => [c.of([null, ...texts])],
  'lessons.list': nothing,
  'lessons.open': (_m, c) => [c.of(taught)],
  'lessons.step': (_m, c) => [c.of(taught), c.whole(-2, 9)],
  'lessons.tell': (_m, c) => [c.of(taught)],
  'lessons.vote': (_m, c) => [c.of(taught), c.whole(-1, 4), c.real(-3, 1200)],
  'wear.hill': (_m, c) => [c.whole(0, 4)],
  'wear.lane': (_m, c) => [c.of(['clearance', 'lining', 'factor', 'tooth', 'heat', 'pedal'])],
  'wear.page': (_m, c) => [c.of(['readings', 'events', 'hot', 'setup'])],
  'wear.reverse': (_m, c) => [c.of([null, 0, 0.25, 1])],
  'wear.road': (_m, c) => [c.whole(0, 9)],
  'wear.step': (_m, c) => [c.of([100, 1000, 'click', 'limit'])],
  'wear.stops': (_m, c) => [
    c.whole(0, 3),
    c.of(['perKm', 'speed', 'pressure', 'deceleration']),
    c.real(0.1, 9),
  ],
  'wear.follow': (m, c) => [
    lastStretch(m.bench.life) ?? {},
    c.whole(0, 50),
    c.yes() ? { at: 0, state: m.bench.life.start } : null,
  ],
  'wear.open': flag,
  'wear.hot': nothing,
  'wear.refused': (_m, c) => [c.of(['road-0-speed', 'road-1-perKm']), c.of(texts)],
  'wear.hotMoment': (_m, c) => [c.of(['before', 'hot', 'cold'])],
  'wear.show': (m) => [0, m.bench.life.start, true],
  'wear.from': (m, c) => [c.of(brakeOf(m).states).name],
  'wear.stop': (m) => [lastStretch(m.bench.life) ?? {}],
  'wear.on': nothing,
  'drum.answer': (_m, c) => [
    c.of([
      { fastening: 'screw' },
      { turns: 'lightly' },
      { turns: 'one way' },
      { hole: 'none' },
      { slides: 'a little' },
      { slack: 'helps' },
    ]),
  ],
  'drum.try': (_m, c) => [c.of(['pull', 'turn', 'rock', 'break'])],
  'drum.back-off': (_m, c) => [c.whole(-5, 5)],
  'drum.back-one': nothing,
  'drum.worn': nothing,
  'questions.which-kind': nothing,
  'drum.complain': (_m, c) => [c.of(complaints)],
  'drum.fastening': (_m, c) => [c.of(['studs', 'screw', 'nut'])],
  'drum.hold': (_m, c) => [
    c.of([{ hubRust: c.yes() }, { liningsRusted: c.yes() }, { aside: c.real(-1, 1) }]),
  ],
  'drum.let-go': (_m, c) => [
    c.of(['pressure in the line', 'cable keeps its pull', 'part leans on a shoe']),
  ],
  'drum.lever': (_m, c) => [c.real(-2, 12)],
  'drum.page': (_m, c) => [c.of(['brake', 'faults', 'mine', 'fastening'])],
  'drum.on': nothing,
  'drum.slacken': nothing,
  'park.fault': (_m, c) => [c.of(['none', 'stiff lever', 'oil on rear', 'oil on front', 'glazed'])],
  'park.loose': (_m, c) => [c.of([null, 0, c.real(-9, 9)])],
  'park.heat': (_m, c) => [c.real(-400, 400)],
  'park.rule': (_m, c) => [c.of([...parkingRules.map((r) => r.id), 'own', '?'])],
  'park.panel': (_m, c) => [c.of(['lever', 'wheels', 'hot'])],
  'park.pull': (_m, c) => [c.real(-50, 900)],
  'park.slack': (_m, c) => [c.real(-40, 40)],
  'park.slope': (_m, c) => [c.real(-5, 90)],
  'park.tight': (_m, c) => [c.real(-9, 9)],
  'park.nose': (_m, c) => [c.of(['up', 'down'])],
  'inspect.ask': flag,
  'inspect.back': nothing,
  'inspect.limits': (m, c) => [c.of(limitSets(brakeOf(m))).id],
  'inspect.plain': (_m, c) => [c.of(['mm', 'in'])],
  'inspect.clear': nothing,
  'inspect.fill': (_m, c) => [
    wheel(c),
    side(
      lines.filter((l) => l.kind === 'size').map((l) => l.key),
      c,
    ),
    side(
      axleLines.map((l) => l.key),
      c,
    ),
  ],
  'inspect.part': (_m, c) => [
    wheel(c),
    c.of(Object.keys(newPartNames)),
    c.of([...texts, 'other', 'this']),
  ],
  'inspect.drop': (_m, c) => [c.of(['', 'sheet-1', 'a b'])],
  'inspect.name': (_m, c) => [c.of(['', 'sheet-1', 'a b', 'x'.repeat(60)])],
  'inspect.lay': (m, c) => [
    c.yes()
      ? m.parts.inspect.paper
      : { ...m.parts.inspect.paper, id: 'sheet-2', wheels: BLANK.wheels },
    c.of(texts),
  ],
  'inspect.load': (m, c) => [wheel(c), state(m, c), c.of(texts)],
  'inspect.select': (_m, c) => [wheel(c), c.real(-3, 40)],
  'inspect.tell': (_m, c) => [c.of(texts), c.yes() ? [c.of(texts)] : []],
  'inspect.write': (_m, c) => [
    wheel(c),
    c.of(lines.filter((l) => l.kind === 'size')).key,
    c.of(texts),
  ],
  'inspect.axle': (_m, c) => [c.of(axleLines).key, c.of(texts)],
  'inspect.head': (_m, c) => [c.of(heads)[0], c.of(texts)],
  'inspect.limit': (_m, c) => [c.of(Object.keys(limitWords)), c.of(texts)],
  'new-shoes.drive': (_m, c) => [c.real(-1, 6)],
  'new-shoes.centre': nothing,
  'new-shoes.go': (_m, c) => [c.whole(1, 6)],
  'new-shoes.leave': nothing,
  'new-shoes.parts': (_m, c) => [
    c.of([{ thickness: c.real(0, 9) }, { ground: c.real(150, 300) }, { bore: c.real(150, 300) }]),
  ],
  'new-shoes.preset': nothing,
  'new-shoes.press': (_m, c) => [c.of(['once', 'silent'])],
  'new-shoes.aside': (_m, c) => [c.real(-1, 9)],
  'new-shoes.cable': (_m, c) => [c.of(['home', 'tight'])],
  'new-shoes.tooth': (_m, c) => [c.real(-3, 40)],
  'new-shoes.drum': nothing,
  'new-shoes.restart': nothing,
  'new-shoes.off': nothing,
  'new-shoes.take': nothing,
  'new-shoes.want': (_m, c) => [c.real(-1, 5)],
  'faults.another': nothing,
  'faults.van': (_m, c) => [c.of(cases).number],
  'faults.choose': (_m, c) => [c.of(faults).id],
  'faults.hint': nothing,
  'faults.name': nothing,
  'faults.pick': (_m, c) => [c.of(faults).id],
  'faults.cheapest': nothing,
  'faults.mode': (_m, c) => [c.of(['browse', 'find'])],
  'faults.take': (_m, c) => [c.of(examinations).id],
  'faults.out': nothing,
  'own.ask': (m, c) => [c.of([null, own(m, c)])],
  'own.make': (_m, c) => [
    `own-${c.whole(1, 1e9).toString(36)}`,
    scene(c),
    c.of(texts),
    { bore: c.of(texts).slice(0, 40) },
    sizes(c),
  ],
  'own.remove': (m, c) => [own(m, c)],
  'own.rename': (m, c) => [own(m, c), c.of(texts)],
  'own.restore': nothing,
  'own.found': (m, c) => [own(m, c), c.of(foundKeys), c.of(texts)],
  'own.from': (_m, c) => [c.of(brakes).name],
  'own.photo': (m, c) => [own(m, c), photo(c), c.of(texts)],
  'own.photo-off': (m, c) => [own(m, c)],
  'own.point': (_m, c) => [c.yes() ? c.of(photoPoints) : null],
  'own.tell': (_m, c) => [c.of(texts), []],
  'own.drum': typed,
  'own.write': (m, c) => [own(m, c), c.of(ownKeys), c.of(texts), c.yes() ? sizes(c) : null],
  'ask.text': typed,
  'ask.figures': (_m, c) => [
    c.of([
      {
        to: 'inspect',
        write: [
          ['drumA', c.of(texts), wheel(c)],
          ['drumMax', '184 mm', 'left'],
          ['drumNew', '180', 'left'],
        ],
      },
      { to: 'see', topic: 'lever', said: [['notches', c.of(texts)]] },
      { to: 'park', percent: c.real(-5, 80) },
    ]),
  ],
  'start.go': (_m, c) => [c.of(ways)],
  'apart.kind': (_m, c) => [c.of([null, ...adjusterKinds])],
  'apart.fit': (_m, c) => [c.whole(-3, 30)],
  'apart.without': (_m, c) => [c.of(['nothing', 'adjuster', 'strut', 0, 1, 2])],
  'names.ask': (_m, c) => [[c.of(Object.keys(partNames)), c.of(Object.keys(partNames))]],
  'names.answer': (_m, c) => [c.of(Object.keys(partNames))],
  'names.pass': nothing,
  'names.stop': nothing,
  'compare.keep': nothing,
  'compare.forget': nothing,
  'compare.ghost': flag,
  'compare.open': nothing,
  'compare.pair': (m, c) => {
    const kept = () => ({
      bench: {
        ...freshBench(m.bench.brake, state(m, c)),
        fault: m.bench.fault,
        adjuster: m.bench.adjuster,
      },
      turning: c.of([1, 0, -1]),
      bending: c.yes(),
      pedal: c.real(0, 80),
      cable: c.real(0, 900),
    });
    return [c.of(texts), kept(), c.yes() ? kept() : null];
  },
  'compare.swap': nothing,
  'compare.take': nothing,
  'compare.push': (_m, c) => [c.real(-10, 300)],
  'compare.by': (_m, c) => [c.of(['travel', 'pressure'])],
  'order.page': (_m, c) => [c.of(orderPages)],
  'order.worn': nothing,
  'order.go': (_m, c) => [c.whole(-2, 22)],
  'order.tick': typed,
  'order.back-off': (_m, c) => [c.whole(-9, 9)],
  'see.topic': (_m, c) => [c.of(topics)],
  'see.say': (_m, c) => [
    c.of(['hot', 'notches', 'turns', 'ways', ...texts]),
    c.of([null, 'one', 'stiff', ...texts]),
  ],
  'see.say-all': (_m, c) => [{ unlike: String(c.whole(0, 90)), pull: c.of(['yes', 'no']) }],
  'see.new': nothing,
  'see.carry': (_m, c) => [c.of(['drum-off', 'new-shoes', 'inspect'])],
  'see.cause': (_m, c) => [c.of(faults).id],
  'see.back': nothing,
  'see.tight': (_m, c) => [c.real(-1, 1)],
  'vary.of': (_m, c) => [c.of(['pressure', 'cylinder.bore', 'shoes.lining.friction', '?'])],
  'vary.range': (_m, c) => [c.real(-99, 99), c.of([c.real(-99, 99), Number.NaN])],
  'vary.read': (_m, c) => [c.of([[], ['torque'], ['torque', '?'], FACTOR, [...FACTOR, 'torque']])],
  'vary.and': (_m, c) => [
    c.of([null, { id: 'tooth', values: [0, 3, c.real(-9, 99)] }, { id: '?', values: [] }]),
  ],
  'vary.beside': (_m, c) => [
    c.of([null, { kind: 'scene', name: c.of(brakes).name }, { kind: 'own', name: 'gone' }]),
  ],
  'vary.press': (_m, c) => [c.real(-50, 400), c.of([0, c.real(-50, 9000), Number.NaN])],
  'vary.steps': flag,
  'vary.map': flag,
  'vary.formula': (_m, c) => [
    c.of(['', 'pull', 'x'.repeat(99)]),
    c.of(['torque / 2', '', '1 +', 'y'.repeat(999)]),
  ],
  'vary.spread': (_m, c) => [
    c.of([
      [],
      [{ id: 'cylinder.bore', kind: 'gauge', amount: 0.1 }],
      [{ id: '?', kind: 'times', amount: 2 }],
      [{ id: 'pressure', kind: 'percent', amount: 999 }],
    ] as const),
    c.of([1, 7, -3, 0.5]),
  ],
  'vary.forget': (_m, c) => [c.of(['pull', 'none'])],
  'vary.ask': (_m, c) => [c.of([{}, { of: 'cable', cable: 300 }, { read: ['torque'] }])],
  'vary.pick': (_m, c) => {
    const { brake, scene } = read(brakes[c.whole(0, brakes.length - 1)] ?? brakes[0]);
    return ['pressure', c.real(0, 99), { scene, state: freshState(brake) }];
  },
  'vary.home': nothing,
  'vary.seek': flag,
  'vary.free': (_m, c) => [
    c.of([
      [],
      [{ id: 'cylinder.bore', from: 15, to: 23 }],
      [
        { id: 'tooth', from: 0, to: 20 },
        { id: 'tooth', from: 9, to: 3 },
        { id: '?', from: c.real(-9, 9), to: Number.NaN },
      ],
    ]),
  ],
  'vary.wishes': (_m, c) => [
    c.of([
      [],
      [{ key: 'torque', least: 200, most: null, hot: null }],
      [
        { key: 'teethTaken', least: null, most: 0, hot: c.real(-99, 999) },
        { key: '', least: Number.NaN, most: c.real(-9, 9), hot: null },
      ],
    ]),
  ],
  'vary.seek-ask': (_m, c) => [
    {
      free: [{ id: 'cylinder.bore', from: 15, to: 23 }],
      wishes: [{ key: 'torque', least: c.real(0, 300), most: null, hot: null }],
      bar: c.real(-50, 400),
    },
  ],
  'kind.kind': (_m, c) => [c.of([null, ...kindIds])],
  'kind.set-by': (_m, c) => [c.of([null, ...setByIds])],
  'questions.list': nothing,
  'questions.close': nothing,
  'questions.search': typed,
  'questions.show': (_m, c) => [c.of(questions).id],
};

/** Those that change much at once come less often, so that the others have something to stand on. */
export const ids: readonly string[] = [...intentions.keys()];
