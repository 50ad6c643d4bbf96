import type { FoundKey, OwnKey } from '../../../sim/index.ts';

/**
 * Names of what can be measured on one's own brake. Names alone, since the record speaks of them: how each
 * is measured comes with the station (`measures.ts`, `found-fields.ts`).
 */
export const ownNames: Readonly<Record<OwnKey, string>> = {
  drumNew: 'Drum Ø, new',
  drumMax: 'Drum Ø, largest allowed',
  liningWidth: 'Lining, width',
  liningNew: 'Lining, thickness new',
  liningMin: 'Lining, least',
  liningArc: 'Lining, length along the arc',
  friction: 'Lining, friction or its two letters',
  pinsApart: 'Heels apart',
  pinBelow: 'Heels below the axle',
  toeHeight: 'Cylinder above the axle',
  strutHeight: 'Strut above the axle',
  bore: 'Wheel cylinder, bore',
  stroke: 'Piston stroke to run-out',
  masterBore: 'Master cylinder, bore',
  pedalRatio: 'Pedal ratio',
  freePlay: 'Free play at the push rod',
  strutLength: 'Strut, shortest length',
  lostMotion: 'Slot play',
  teeth: 'Teeth, or steps',
  upperForce: 'Upper spring, pull when fitted',
  upperRate: 'Upper spring, rate',
  lowerForce: 'Lower spring, pull when fitted',
  lowerRate: 'Lower spring, rate',
  leverNotch: 'Lever, pivot to strut notch',
  leverHook: 'Lever, pivot to cable hook',
  perNotch: 'Cable for one notch',
  tyre: 'Tyre radius, loaded',
  mass: 'Vehicle, mass',
};

/** What is measured on one's own brake as it is now: names alone, since the record speaks of them. */
export const foundNames: Readonly<Record<FoundKey, string>> = {
  drumNow: 'Drum Ø now, largest',
  leading: 'Leading lining now, thinnest',
  trailing: 'Trailing lining now, thinnest',
  tooth: 'Adjuster stands at tooth',
  notches: 'Hand lever, notches',
  pedal: 'Pedal travel, firm press',
};
