import type { Finding } from './finding.ts';
import { adjusterRules } from './rules/adjuster.ts';
import { cylinderRules } from './rules/cylinder.ts';
import { drumRules } from './rules/drum.ts';
import { dutyRules } from './rules/duty.ts';
import { frictionRules } from './rules/friction.ts';
import { hydraulicsRules } from './rules/hydraulics.ts';
import { liningRules } from './rules/lining.ts';
import { parkingRules } from './rules/parking.ts';
import type { Rule } from './rules/rule.ts';
import { shoeRules } from './rules/shoe.ts';
import { springRules } from './rules/springs.ts';
import { startRules } from './rules/start.ts';
import { stateRules } from './rules/states.ts';
import type { Scene } from './schema.ts';

/**
 * What makes a brake one that can be built, part by part. Every value has the right type and lies within
 * its own bounds before these are asked (schema.ts): they judge how the values stand to each other.
 */
export const rules: readonly Rule[] = [
  ...drumRules,
  ...liningRules,
  ...shoeRules,
  ...cylinderRules,
  ...springRules,
  ...adjusterRules,
  ...parkingRules,
  ...hydraulicsRules,
  ...frictionRules,
  ...startRules,
  ...stateRules,
  ...dutyRules,
];

/** Values that have the right type and cannot be built together. Called on a scene that passed the schema. */
export const impossible = (scene: Scene): Finding[] =>
  rules.flatMap(({ reason, broken }) => broken(scene).map((breach) => ({ ...breach, reason })));
