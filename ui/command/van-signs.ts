import { type SignTable, signTable } from '../../sim/workshop/index.ts';
import { vanRig, vanState } from '../stations/faults/van.ts';

/** Figures are kept to what tells them apart. */
const rounded = (_key: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toPrecision(4)) : value;

/** What a sound van and one with each fault show. */
export const vanSigns = (): SignTable => {
  const base = (name: string) => ({ rig: vanRig(), state: vanState(name) });
  const table = signTable({ worn: base('Worn-in'), clicked: base('Just clicked') });
  return JSON.parse(JSON.stringify(table, rounded)) as SignTable;
};
