import type { FaultId } from '../index.ts';

/** What each fault is called, apart from all that is said of it: titles and the way back need no more. */
export const faultNames: Readonly<Record<FaultId, string>> = {
  'seized short': 'Adjuster seized short',
  'worn teeth': 'Worn teeth let go',
  'broken lever spring': 'Spring of the toothed lever broken',
  'stepped hot': 'Stepped on while hot',
  'shoes swapped': 'Used shoes swapped front to rear',
  'wrong side': 'Adjusters left and right swapped',
  'strut mis-seated': 'Strut not in its seat',
  'dead adjuster to the end': 'Piston past its run-out',
  'short cable': 'Cable set too short',
  'kept pull': 'Cable keeps its pull',
  'stretched cable': 'Cable stretched or slack',
  'stiff pivot': 'Parking lever stiff in its pivot',
  'weak springs': 'Return springs weak',
  'strong springs': 'Return springs too strong',
  'stuck piston': 'One piston stuck',
  'sluggish pistons': 'Pistons sluggish',
  'leaning part': 'Something leans on one shoe',
  hose: 'Hose shuts on the way back',
  'port shut': 'No free play at the master',
  'other bore': 'Wrong cylinder: bore too large',
  air: 'Air in the circuit',
  'fluid on linings': 'Fluid on both linings of one wheel',
  'oil on one lining': 'Oil on one lining',
  glazed: 'Glazed linings',
  damp: 'Damp rust on the drum, first stops',
  'water inside': 'Water in the drum',
  'hot fade': 'Fade after a long descent',
  'oversize bore': 'Standard shoes in a worn drum',
  'lining ends': 'Linings ground too large',
  'oval drum': 'Drum oval',
  'drum off centre': 'Drum off centre',
  lip: 'Lip behind the linings',
  'hub rust': 'Rust at the hub',
  groove: 'Groove in a plate pad',
  bearing: 'Bearing lets the drum rise',
  'rusted on': 'Linings rusted on',
};

/** All faults, in the order of their groups. */
export const faultIds = Object.keys(faultNames) as readonly FaultId[];

export const isFault = (id: string): id is FaultId => Object.hasOwn(faultNames, id);
