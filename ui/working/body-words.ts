import type { BodyForce, BodyKind } from '../../sim/index.ts';

const kinds: Readonly<Record<Exclude<BodyKind, 'spring' | 'other'>, string>> = {
  piston: 'piston',
  climbing: 'climbing lever',
  'hold-down': 'hold-down',
  strut: 'strut',
  normal: 'drum’s pressure',
  friction: 'drum’s friction',
  anchor: 'anchor',
};

/** What a force on a shoe comes from, in a word or two. */
export const words = ({ kind, name }: BodyForce): string =>
  kind === 'spring' || kind === 'other' ? name : kinds[kind];
