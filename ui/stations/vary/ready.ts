import type { Brake } from '../../../sim/index.ts';
import { varyReady as words } from '../../../sim/words/en.ts';
import { FACTOR, FRICTION, type VaryPart } from './part.ts';

/** Questions that are asked of a brake most, ready made. */
export interface Ready {
  readonly name: string;
  readonly ask: Partial<
    Pick<VaryPart, 'of' | 'range' | 'read' | 'and' | 'map' | 'bar' | 'cable' | 'steps'>
  >;
  /** Only for a brake that has what it asks for. */
  readonly fits?: (brake: Brake) => boolean;
}

export const readyMade: readonly Ready[] = [
  { name: words.factorAgainstFrictionName, ask: { of: FRICTION, read: FACTOR } },
  { name: words.leadingShareAgainstName, ask: { of: FRICTION, read: ['leadingShare'] } },
  {
    name: words.clearanceAgainstToothName,
    ask: { of: 'tooth', read: ['restClearanceMean'], bar: 0 },
  },
  { name: words.torqueAgainstBoreName, ask: { of: 'cylinder.bore', read: ['torque'] } },
  {
    name: words.slopeHeldAgainstName,
    ask: { of: 'cable', read: ['slopeDown', 'slopeUp'], bar: 0, cable: 300 },
  },
  {
    name: words.teethTakenHotName,
    ask: { of: 'temperature', range: [20, 420], read: ['teethTaken'] },
  },
  {
    name: words.distanceToAName,
    ask: { of: 'adjuster.lostMotion', read: ['nextClick'] },
  },
  {
    name: words.distanceToAName2,
    ask: { of: 'adjuster.pitch', read: ['nextClick'] },
    fits: ({ adjuster }) => adjuster.lever === null,
  },
  {
    name: words.distanceToAName3,
    ask: { of: 'adjuster.lever.toothAngle', read: ['nextClick'] },
    fits: ({ adjuster }) => adjuster.lever !== null,
  },
  {
    name: words.mapTorqueOverName,
    ask: {
      of: FRICTION,
      read: ['torque'],
      and: { id: 'cylinder.bore', values: [15, 25] },
      map: true,
    },
    fits: ({ cylinder }) => cylinder.bore > 15 && cylinder.bore < 25,
  },
  { name: words.pedalTravelAgainstName, ask: { of: 'wear', read: ['pedalTravel'] } },
];
