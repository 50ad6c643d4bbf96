import type { Brake } from '../../../sim/index.ts';
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
  { name: 'Factor against friction', ask: { of: FRICTION, read: FACTOR } },
  { name: 'Leading share against friction', ask: { of: FRICTION, read: ['leadingShare'] } },
  { name: 'Clearance against tooth', ask: { of: 'tooth', read: ['restClearanceMean'], bar: 0 } },
  { name: 'Torque against bore', ask: { of: 'cylinder.bore', read: ['torque'] } },
  {
    name: 'Slope held against cable',
    ask: { of: 'cable', read: ['slopeDown', 'slopeUp'], bar: 0, cable: 300 },
  },
  {
    name: 'Teeth taken hot',
    ask: { of: 'temperature', range: [20, 420], read: ['teethTaken'] },
  },
  {
    name: 'Distance to a click against slot play',
    ask: { of: 'adjuster.lostMotion', read: ['nextClick'] },
  },
  {
    name: 'Distance to a click against pitch',
    ask: { of: 'adjuster.pitch', read: ['nextClick'] },
    fits: ({ adjuster }) => adjuster.lever === null,
  },
  {
    name: 'Distance to a click against the lever’s tooth',
    ask: { of: 'adjuster.lever.toothAngle', read: ['nextClick'] },
    fits: ({ adjuster }) => adjuster.lever !== null,
  },
  {
    name: 'Map: torque over friction and bore',
    ask: {
      of: FRICTION,
      read: ['torque'],
      and: { id: 'cylinder.bore', values: [15, 25] },
      map: true,
    },
    fits: ({ cylinder }) => cylinder.bore > 15 && cylinder.bore < 25,
  },
  { name: 'Pedal travel against wear', ask: { of: 'wear', read: ['pedalTravel'] } },
];
