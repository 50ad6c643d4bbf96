import { usualSpeed } from '../../brake/duty.ts';
import { filmWorkings } from './film.ts';
import { adjusterWorkings } from './now-adjuster.ts';
import { brakeWorkings } from './now-brake.ts';
import { type Now, shoeWorkings } from './now-shoe.ts';
import { pedalWorkings } from './pedal.ts';
import type { Derivations } from './working.ts';

/** Workings of all readings of an instant. @param speed that a stop is told from, mm/s */
export const nowWorkings = (now: Now, speed = usualSpeed(now.rig.brake)): Derivations => ({
  ...brakeWorkings(now),
  ...shoeWorkings(now, 'front'),
  ...shoeWorkings(now, 'rear'),
  ...adjusterWorkings(now, speed),
  ...pedalWorkings(now.rig.brake, now.instant),
  ...filmWorkings(now.state),
});
