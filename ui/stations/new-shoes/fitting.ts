import {
  type BedRow,
  type Brake,
  type BrakeState,
  bedIn,
  type CableFirst,
  cableFirst,
  type Fit,
  type NewFit,
  newFit,
  type PresetRow,
  presetRow,
  presetRows,
  type Rig,
  withNewLinings,
} from '../../../sim/index.ts';
import { AWAY } from '../../record/derive.ts';
import { Kept, KeptFor } from '../../record/kept.ts';

/**
 * The brake that is being fitted, and what follows from it: all of it derived from what is in the
 * hands. It stands on the stage while the station is open; the bench's own brake waits.
 */

/** How far a cable tightened first holds the lever off its stop, mm at the hook. */
export const HELD_OFF = 3;
/** Distances at which the new linings are looked at, km. */
export const BED_AT = [0, 100, 500, 1000, 2000] as const;
/** Thinnest lining that is sold, mm (own choice: under it the steel shows through at an end). */
const THINNEST = 1;

/** What is in the hands, as far as the brake on the bench takes it. */
export interface Hands {
  /** Of a new lining, mm. */
  readonly thickness: number;
  /** Diameter the linings are ground for, and of the drum, mm. */
  readonly ground: number;
  readonly bore: number;
  readonly tooth: number;
  /** How far the pair stands aside, mm at the front lining's middle. */
  readonly aside: number;
  readonly drumOn: boolean;
  readonly cable: 'slack' | 'home' | 'tight';
  /** Which row of the bedding in is shown. */
  readonly bedded: number;
}
type Size = 'thickness' | 'ground' | 'bore';

/** Least and most of each size that a brake takes, mm. */
export function spansOf({ drum, shoes }: Brake): Readonly<Record<Size, readonly [number, number]>> {
  const { lining } = shoes.front;
  const own = 2 * lining.groundRadius;
  return {
    thickness: [
      Math.min(lining.thicknessNew, Math.max(THINNEST, lining.thicknessMin)),
      lining.thicknessNew + 2,
    ],
    ground: [Math.min(own, 2 * drum.radiusNew - 2), Math.max(own, 2 * drum.radiusMax + 2)],
    bore: [2 * drum.radiusNew, 2 * drum.radiusMax + 1],
  };
}

/** A size brought between the least and the most that a brake takes, mm. */
export function sizeWithin(brake: Brake, size: Size, mm: number): number {
  const [low, high] = spansOf(brake)[size];
  return mm >= low ? Math.min(high, mm) : low;
}

/** Another adjuster may have fewer teeth than the one that was set. */
export const toothWithin = ({ adjuster }: Brake, tooth: number): number =>
  Math.max(0, Math.min(adjuster.teeth, tooth));

/** What a brake takes of what is in the hands: a link or another adjuster may hold more. */
export const handsOf = (brake: Brake, part: Hands): Hands => ({
  ...part,
  thickness: sizeWithin(brake, 'thickness', part.thickness),
  ground: sizeWithin(brake, 'ground', part.ground),
  bore: sizeWithin(brake, 'bore', part.bore),
  tooth: toothWithin(brake, part.tooth),
});

/** What a cable tightened first costs, with the clearance either way, mm. */
export interface CableCost extends CableFirst {
  readonly home0: number;
  readonly held0: number;
}

/** What follows from the hands on one brake; kept for the last hands asked for. */
class Fitting {
  readonly rig: Rig;
  readonly #state = new Kept<BrakeState>();
  readonly #shown = new Kept<BrakeState>();
  readonly #rows = new Kept<readonly PresetRow[]>();
  readonly #row = new Kept<PresetRow>();
  readonly #beds = new Kept<readonly BedRow[]>();
  readonly #cost = new Kept<CableCost>();
  readonly #fit = new Kept<NewFit>();

  constructor(rig: Rig) {
    this.rig = rig;
  }

  /** Linings, tooth and cable as they are, with the drum on. */
  state({ thickness, ground, bore, tooth, cable }: Hands): BrakeState {
    return this.#state.of([thickness, ground, bore, tooth, cable], () => ({
      ...withNewLinings(this.rig, { thickness, groundRadius: ground / 2 }, bore / 2, tooth),
      leverOffStop: cable === 'tight' ? HELD_OFF : 0,
    }));
  }

  /** The brake on the stage: bedded in so far; without a drum there is nothing near the linings. */
  shown(h: Hands): BrakeState {
    const state = this.state(h);
    return this.#shown.of([state, h.drumOn, h.bedded], () => {
      const { radiusMax } = this.rig.brake.drum;
      const there = h.drumOn
        ? ((h.bedded > 0 ? this.beds(h)[h.bedded]?.state : null) ?? state)
        : { ...state, drumRadius: AWAY * radiusMax };
      return { ...there, distance: 0 };
    });
  }

  /** As gauge and lip would find every tooth. */
  rows(h: Hands): readonly PresetRow[] {
    const key = [h.thickness, h.ground, h.bore, h.cable];
    return this.#rows.of(key, () => presetRows(this.rig, this.state(h)));
  }

  /** As the gauge and the lip find it now, with the pair where it stands. */
  row(h: Hands): PresetRow {
    const state = this.state(h);
    return this.#row.of([state, h.aside], () => presetRow(this.rig, state, h.aside));
  }

  /** How the shoes bed in from here; only with the drum on. */
  beds(h: Hands): readonly BedRow[] {
    if (!h.drumOn) return [];
    const state = this.state(h);
    return this.#beds.of([state], () => bedIn(this.rig, state, BED_AT));
  }

  fit(h: Hands): Fit {
    return this.newFit(h).fit;
  }

  /** How the linings lie and what they do at the first press, the strut at its shortest. */
  newFit({ thickness, ground, bore }: Hands): NewFit {
    return this.#fit.of([thickness, ground, bore], () =>
      newFit(this.rig, { thickness, groundRadius: ground / 2 }, bore / 2),
    );
  }

  /** What a cable tightened first costs, at this tooth. */
  cost(h: Hands): CableCost {
    const key = [h.thickness, h.ground, h.bore, h.tooth];
    return this.#cost.of(key, () => {
      const home = { ...this.state(h), leverOffStop: 0 };
      const at = (leverOffStop: number): number =>
        presetRow(this.rig, { ...home, leverOffStop }).centre;
      return { ...cableFirst(this.rig, home, HELD_OFF), home0: at(0), held0: at(HELD_OFF) };
    });
  }
}

const fittings = new KeptFor<Rig, Fitting>();
export const fittingOf = (rig: Rig): Fitting => fittings.of(rig, () => new Fitting(rig));
