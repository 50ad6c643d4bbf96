import {
  aroundTurn,
  axleWith,
  BAR,
  CHECKED,
  type FaultChange,
  type FaultId,
  type WheelBrake,
  withFault,
} from '../../index.ts';
import { examinations } from '../examinations.ts';
import { examine } from '../examine.ts';
import { faults } from '../faults.ts';
import { type Findings, type Shown, shownBy } from './signs.ts';

/** What a sound axle shows, and one with each fault. */
export interface SignTable {
  readonly sound: Shown;
  readonly faults: Readonly<Partial<Record<FaultId, Shown>>>;
}

type Axle = ReturnType<typeof axleWith>;

/** Places in a turn at which rollers are read. */
const AROUND = 16;

/** Swing of the roller's force in a turn, % of its greatest: greatest less least (as print-outs tell it). */
function swingOf({ rig, state }: WheelBrake): number {
  const { offCentre, oval } = state.condition;
  if (offCentre === 0 && oval === 0) return 0;
  const press = { pressure: CHECKED.roller * BAR, turning: 1 } as const;
  const all = aroundTurn(rig, state, press, AROUND).map((p) => p.torque);
  const most = Math.max(...all);
  return most > 0 ? (100 * (most - Math.min(...all))) / most : 0;
}

/** All that the workshop's examinations find on an axle. */
export function findingsOf(axle: Axle, allWheels = false): Findings {
  const all = Object.fromEntries(examinations.map((e) => [e.id, examine(axle, e.id, allWheels)]));
  const swing = Math.max(swingOf(axle.left), swingOf(axle.right));
  return { ...all, swing } as unknown as Findings;
}

/** The same in pieces, an examination each: of shoes that bend all of them at once take half a second. */
function findingPieces(axle: () => Axle, allWheels = false) {
  const found: Record<string, unknown> = {};
  const pieces = examinations.map((e) => () => {
    found[e.id] = examine(axle(), e.id, allWheels);
  });
  const swing = () => {
    const { left, right } = axle();
    found['swing'] = Math.max(swingOf(left), swingOf(right));
  };
  return { pieces: [...pieces, swing], findings: () => found as unknown as Findings };
}

/** A drum that steps while hot begins where a tooth has just dropped in. */
export interface Bases {
  readonly worn: WheelBrake;
  readonly clicked: WheelBrake;
}

const tyreOf = (base: Bases): number => base.worn.rig.brake.vehicle.tyreRadius;

/** A row of the table as work in pieces: all of them, then the row. */
export interface RowWork {
  readonly pieces: readonly (() => void)[];
  row(): readonly [FaultId | 'sound', Shown];
}

/**
 * The table in pieces, the sound axle first: no row can be told without it.
 *
 * @param only faults that are asked for; all of them where left out
 */
export function* tableWork(base: Bases, only?: readonly FaultId[]): Generator<RowWork> {
  const once = (make: () => Axle): (() => Axle) => {
    let axle: Axle | null = null;
    return () => {
      axle ??= make();
      return axle;
    };
  };
  const plain = findingPieces(once(() => axleWith(base.worn, null)));
  const tyre = tyreOf(base);
  const row = (id: FaultId | 'sound', of: Findings) =>
    [id, shownBy(of, plain.findings(), tyre)] as const;
  yield { pieces: plain.pieces, row: () => row('sound', plain.findings()) };
  for (const f of faults) {
    if (only && !only.includes(f.id)) continue;
    const from = f.id === 'stepped hot' ? base.clicked : base.worn;
    const { pieces, findings } = findingPieces(
      once(() => axleWith(from, f)),
      f.allWheels,
    );
    yield { pieces, row: () => row(f.id, findings()) };
  }
}

/** The table at once. @param only faults that are asked for; all of them where left out */
export function signTable(base: Bases, only?: readonly FaultId[]): SignTable {
  const rows = [...tableWork(base, only)].map(({ pieces, row }) => {
    for (const piece of pieces) piece();
    return row();
  });
  const { sound, ...faults } = Object.fromEntries(rows) as Record<FaultId | 'sound', Shown>;
  return { sound, faults };
}

/** What an axle shows with two faults at once, each on a wheel of its own or on the same. */
export function shownByTwo(
  base: Bases,
  a: FaultChange & { readonly id: FaultId },
  b: FaultChange & { readonly id: FaultId },
  sides: readonly ['left' | 'right', 'left' | 'right'],
  sound = findingsOf(axleWith(base.worn, null)),
): Shown {
  const put = (w: WheelBrake, f: FaultChange, mine: boolean): WheelBrake =>
    f.wheels === 'both' || mine ? withFault(w, f) : w;
  const wheel = (side: 'left' | 'right'): WheelBrake => {
    const first = put(base.worn, a, sides[0] === side);
    const second = put(first, b, sides[1] === side);
    const held = { ...first.held, ...second.held };
    return Object.keys(held).length > 0
      ? ({ ...second, wet: second.wet ?? first.wet, held } as WheelBrake)
      : first.wet && !second.wet
        ? { ...second, wet: first.wet }
        : second;
  };
  const axle: Axle = { left: wheel('left'), right: wheel('right') };
  return shownBy(
    findingsOf(axle, a.allWheels === true || b.allWheels === true),
    sound,
    tyreOf(base),
  );
}
