import {
  application,
  BAR,
  type Condition,
  descended,
  driveLife,
  KM,
  KMH,
  type LifeEvent,
  type LifeRow,
  parkingPull,
  swapShoes,
  withNewLinings,
} from '../../sim/index.ts';
import { lessonsAct as words } from '../../sim/words/en.ts';
import { freshBench, withBegun, withState } from '../record/bench.ts';
import {
  brakeOf,
  brakeOfRef,
  read,
  rigOf,
  sceneOf,
  standingOf,
  startOf,
} from '../record/derive.ts';
import { Kept, KeptFor } from '../record/kept.ts';
import { type Moment, withPart } from '../record/moment.ts';
import { layersOf, withLayers } from '../record/parts.ts';
import { dutyOn, PLAIN_ROAD } from '../record/road.ts';
import type { LayerName } from '../record/view.ts';
import type { PartId } from '../stage/part-names.ts';
import type { Action } from './actions.ts';

/** What an action makes of the record, by the mechanics: the moments on its way, and what was driven. */
export interface Acted {
  /** On the way, the last one where it ends. */
  readonly moments: readonly Moment[];
  readonly rows: readonly LifeRow[];
  readonly events: readonly LifeEvent[];
}

/** Most moments of a drive that are shown. */
const MOST_SHOWN = 60;
/** Air and a cold drum, °C. */
const COLD = 20;

type Of<K extends Action['do']> = Extract<Action, { do: K }>;
type Tree = Readonly<Record<string, unknown>>;

const changedScenes = new KeptFor<object, Kept<object>>();

/** The brake on the bench with its scene changed; its state stays. */
function withScene(m: Moment, key: string, change: (scene: Tree) => Tree): Moment {
  const now = sceneOf(m.bench.brake, m.shelf);
  if (!now) return m;
  const made = changedScenes
    .of(now, () => new Kept())
    .of([key], () => read(change(now as Tree)).scene);
  const { scene } = read(made);
  return { ...m, bench: { ...m.bench, brake: { kind: 'whole', scene } } };
}

const at = (tree: Tree, key: string): Tree => (tree[key] ?? {}) as Tree;

function friction(m: Moment, a: Of<'friction'>): Moment {
  const shoe = (shoes: Tree, side: 'front' | 'rear'): Tree => {
    const lining = at(at(shoes, side), 'lining');
    return { ...at(shoes, side), lining: { ...lining, friction: a[side] ?? lining['friction'] } };
  };
  return withScene(m, words.friction(a.front, a.rear), (scene) => {
    const shoes = at(scene, 'shoes');
    return { ...scene, shoes: { front: shoe(shoes, 'front'), rear: shoe(shoes, 'rear') } };
  });
}

/** New shoes in a drum of a bore, its unworn edge as the scene has it or as told. */
function shoes(m: Moment, a: Of<'shoes'>): Moment {
  const here =
    a.lip === undefined
      ? m
      : withScene(m, words.lip(a.lip), (scene) => ({
          ...scene,
          drum: { ...at(scene, 'drum'), lipDiameter: a.lip },
        }));
  const rig = rigOf(here);
  const { groundRadius, thicknessNew } = rig.brake.shoes.front.lining;
  const lining = { thickness: thicknessNew, groundRadius };
  return withBegun(here, withNewLinings(rig, lining, a.bore / 2, a.tooth), null);
}

function ailing(m: Moment, a: Of<'condition'>): Moment {
  const { condition } = m.bench.state;
  const { do: _what, keptPressure, leanFront, leanRear, ...plain } = a;
  const lean = {
    front: leanFront ?? condition.lean.front,
    rear: leanRear ?? condition.lean.rear,
  };
  const kept = keptPressure === undefined ? condition.keptPressure : keptPressure * BAR;
  const given = Object.fromEntries(Object.entries(plain).filter(([, x]) => x !== undefined));
  const next: Condition = { ...condition, ...given, lean, keptPressure: kept };
  return withState(m, { ...m.bench.state, condition: next });
}

const withTooth = (m: Moment, tooth: number): Moment => {
  const most = brakeOf(m).adjuster.teeth;
  const to = Math.max(0, Math.min(most, Math.round(tooth)));
  return withState(m, { ...m.bench.state, tooth: to });
};

const released = (m: Moment): Moment => ({ ...m, pedal: 0, follows: false });

/** Presses: what the adjuster takes up at it is in the state from then on. */
function press(m: Moment, bar: number): Moment {
  const { state } = m.bench;
  const pressed =
    bar > 0
      ? application(rigOf(m), state, { pressure: bar * BAR, turning: m.turning }).state
      : state;
  // A press wears nothing here: only what the adjuster did is kept.
  const next = pressed.tooth === state.tooth ? m : withState(m, { ...state, tooth: pressed.tooth });
  return { ...next, pedal: bar, follows: false };
}

/** Moments a second of a pedal that is pressed slowly. */
const SLOWLY = 12;

/** A press, at once or over its time. */
function presses(m: Moment, a: Of<'pedal'>): Acted {
  const steps = Math.max(1, Math.round((a.seconds ?? 0) * SLOWLY));
  const way = Array.from({ length: steps - 1 }, (_, i) => ({
    ...m,
    pedal: m.pedal + ((a.bar - m.pedal) * (i + 1)) / steps,
    follows: false,
  }));
  return { moments: [...way, press(m, a.bar)], rows: [], events: [] };
}

function drive(m: Moment, a: Of<'wear'>): Acted {
  const rig = rigOf(m);
  const { state } = m.bench;
  const reverse = a.reverse === undefined ? null : a.reverse / 100;
  const duty = dutyOn(rig.brake, { ...PLAIN_ROAD, reverse });
  const way = a.km === undefined ? {} : { distance: state.distance + a.km * KM };
  const life = driveLife(rig, state, duty, {
    ...way,
    toNextClick: a.to === 'click',
    stopAtLimit: a.past !== true,
    rowEvery: Math.max(KM, ((a.km ?? 60000) * KM) / MOST_SHOWN),
    askLocks: false,
  });
  const { events, rows } = life;
  const every = Math.max(1, Math.ceil(rows.length / MOST_SHOWN));
  const seen = rows.filter((_, i) => i % every === 0);
  const moments = seen.map((row) => withState(released(m), row.state));
  return { moments: [...moments, withState(released(m), life.state())], rows, events };
}

function pull(m: Moment, a: Of<'cable'>): Moment {
  const slack = a.slack ?? m.parts.park.moreSlack;
  const next = withPart(released(m), 'park', { cable: a.newton, moreSlack: slack });
  if (a.newton === 0) return next;
  const { state } = parkingPull(rigOf(m), m.bench.state, a.newton);
  return withState(next, state);
}

const warm = (m: Moment, temperature: number): Moment =>
  withState(m, { ...m.bench.state, temperature });

function show(m: Moment, a: Of<'show'>): Moment {
  const all = (names: readonly string[] = [], on: boolean) =>
    names.map((n) => [n as LayerName, on]);
  let next = m;
  if (a.on || a.off) {
    next = withLayers(next, Object.fromEntries([...all(a.on, true), ...all(a.off, false)]));
  }
  if (a.fan) next = { ...next, view: { ...next.view, magnification: a.fan } };
  if (a.holdDown) {
    next = { ...next, view: { ...next.view, tilt: { ...next.view.tilt, holdDown: a.holdDown } } };
  }
  if (!a.names) return next;
  const named = { ...next, view: { ...next.view, revealed: a.names as PartId[] } };
  return layersOf(named).names ? named : withLayers(named, { names: true });
}

const WAYS = { forward: 1, backward: -1, stands: 0 } as const;

const ways: {
  readonly [K in Action['do']]?: (m: Moment, a: Of<K>) => Moment;
} = {
  release: released,
  drum: (m, a) => ({ ...m, turning: WAYS[a.way] }),
  tooth: (m, a) => withTooth(released(m), a.to ?? m.bench.state.tooth + (a.by ?? 0)),
  lever: (m, a) => withState(released(m), { ...m.bench.state, leverOffStop: a.mm }),
  cable: pull,
  descend: (m, a) => {
    const hill = { slope: a.slope / 100, length: a.km * KM, speed: (a.kmh ?? 40) * KMH };
    return warm(m, descended(brakeOf(m), m.bench.state.temperature, hill, COLD));
  },
  cool: (m) => warm(released(m), COLD),
  grow: (m, a) => warm(m, m.bench.state.temperature + a.kelvin),
  state: (m, a) => withBegun(m, standingOf(brakeOf(m), a.name), a.name),
  brake: (m, a) => {
    const ref = { kind: 'scene', name: a.name } as const;
    return released({ ...m, bench: freshBench(ref, startOf(brakeOfRef(ref, m.shelf))) });
  },
  condition: ailing,
  friction,
  circuit: (m, a) =>
    withScene(m, words.circuit(a.mm3PerMPa), (scene) => ({
      ...scene,
      hydraulics: { ...at(scene, 'hydraulics'), circuit: a.mm3PerMPa },
    })),
  shoes,
  swap: (m) => withState(released(m), swapShoes(m.bench.state)),
  try: (m, a) =>
    withPart(released(m), 'drum-off', {
      tried: { what: a.what, held: m.bench.held },
      page: 'brake',
    }),
  hold: (m, a) => {
    const { held } = m.bench;
    const hubRust = a.hubRust ?? held.hubRust;
    const liningsRusted = a.liningsRusted ?? held.liningsRusted;
    const bench = { ...m.bench, held: { ...held, hubRust, liningsRusted } };
    return withPart({ ...m, bench }, 'drum-off', { tried: null });
  },
  show,
};

/** Does an action to the record. */
export function act(m: Moment, a: Action): Acted {
  if (a.do === 'wear') return drive(m, a);
  if (a.do === 'pedal') return presses(m, a);
  const way = ways[a.do] as ((m: Moment, a: Action) => Moment) | undefined;
  return { moments: [way ? way(m, a) : m], rows: [], events: [] };
}
