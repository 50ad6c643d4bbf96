import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import type { Brake, Goal, Lining, StandingState } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { createLife } from './life.ts';
import type { Life, LifeRow } from './life-types.ts';
import { wearOn } from './wear-on.ts';

/** Distance between two looks at what is worn, mm. Between them a lining wears evenly. */
const LOOK = 100 * KM;

function recipeOf(brake: Brake, name: string): StandingState {
  const recipe = brake.states.find((s) => s.name === name);
  if (recipe) return recipe;
  throw new Error(
    `No state "${name}"; this scene has ${brake.states.map((s) => s.name).join(', ')}`,
  );
}

const boreOf = ({ drum }: Brake, recipe: StandingState): number =>
  recipe.drumRadius ?? drum.radiusNew;

/** Share of what a lining may lose that is worn off where it is thinnest. */
const lost = ({ thicknessNew, thicknessMin }: Lining, left: number): number =>
  (thicknessNew - left) / (thicknessNew - thicknessMin);

/** Of the lining that has lost most, as a row of the life has it. */
const mostLost = ({ shoes }: Brake, row: LifeRow): number =>
  Math.max(lost(shoes.front.lining, row.liningFront), lost(shoes.rear.lining, row.liningRear));

/** Where on the way driven so far a goal was met, mm; null while it was not. */
function metAt(brake: Brake, life: Life, goal: Goal): number | null {
  if (goal.kind === 'distance') return goal.distance;
  if (goal.kind !== 'worn') {
    const met = life.events.find((e) =>
      goal.kind === 'click' ? e.kind === 'click' && e.tooth >= goal.click : e.kind === goal.kind,
    );
    return met ? met.distance : null;
  }
  const at = life.rows.findIndex((row) => mostLost(brake, row) >= goal.share);
  const [before, row] = [life.rows[at - 1], life.rows[at]];
  if (!row) return null;
  if (!before) return row.distance;
  const from = mostLost(brake, before);
  const part = (goal.share - from) / (mostLost(brake, row) - from);
  return before.distance + part * (row.distance - before.distance);
}

function driven(rig: Rig, recipe: StandingState): number {
  const { brake } = rig;
  if (recipe.until.kind === 'distance') return recipe.until.distance;
  const life = createLife(rig, freshState(brake, boreOf(brake, recipe)), brake.duties[0], {
    stopAtLimit: false,
    rowEvery: LOOK,
    askLocks: false,
  });
  for (;;) {
    const met = metAt(brake, life, recipe.until);
    if (met !== null || life.done) return met ?? life.distance;
    life.advance(LOOK);
  }
}

/** Whether a recipe wears the brake at all: new parts are a state too. */
export const isDriven = ({ until, beyond }: StandingState): boolean =>
  until.kind !== 'distance' || until.distance + beyond > 0;

/** Kept for each rig: the way is driven once to be measured, and once more to stand at its end. */
const kept = new WeakMap<Rig, Map<StandingState, number>>();

/**
 * How far from new a standing state is driven, mm: to what its recipe names, by the first duty, or as
 * far as the brake goes where that never comes. Throws on an unknown name.
 */
export function standingDistance(rig: Rig, name: string): number {
  const recipe = recipeOf(rig.brake, name);
  const known = kept.get(rig) ?? new Map<StandingState, number>();
  kept.set(rig, known);
  const seen = known.get(recipe);
  if (seen !== undefined) return seen;
  const { beyond, round } = recipe;
  const way = Math.max(0, driven(rig, recipe) + beyond);
  const distance = round > 0 ? Math.round(way / round) * round : way;
  known.set(recipe, distance);
  return distance;
}

/** One of the scene's standing states, made by its recipe from new. Throws on an unknown name. */
export function standingState(rig: Rig, name: string): BrakeState {
  const start = freshState(rig.brake, boreOf(rig.brake, recipeOf(rig.brake, name)));
  const distance = standingDistance(rig, name);
  return distance > 0 ? wearOn(rig, start, { distance }).state : start;
}
