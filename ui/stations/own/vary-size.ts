import type { OwnKey, Scene } from '../../../sim/index.ts';

/** Where a size of one's own brake stands among what can be varied; an arc is told by two angles there, and has none. */
const at: Readonly<Record<Exclude<OwnKey, SpringKey | 'liningArc' | Derived>, string>> = {
  drumNew: 'drum.diameterNew',
  drumMax: 'drum.diameterMax',
  liningWidth: 'shoes.lining.width',
  liningNew: 'shoes.lining.thicknessNew',
  liningMin: 'shoes.lining.thicknessMin',
  friction: 'shoes.lining.friction',
  pinsApart: 'shoes.anchor.at.0',
  pinBelow: 'shoes.anchor.at.1',
  toeHeight: 'shoes.toe.1',
  bore: 'cylinder.bore',
  stroke: 'cylinder.stroke',
  strutHeight: 'shoes.strutSeat.1',
  strutLength: 'adjuster.lengthAtZero',
  lostMotion: 'adjuster.lostMotion',
  perNotch: 'parkingLever.perNotch',
  masterBore: 'hydraulics.masterBore',
  pedalRatio: 'hydraulics.pedalRatio',
  freePlay: 'hydraulics.freePlay',
  tyre: 'vehicle.tyreRadius',
  mass: 'vehicle.mass',
};

/** Two places apart, or a length of a table: no number of the scene. */
type Derived = 'leverNotch' | 'leverHook' | 'teeth';
type SpringKey = 'upperForce' | 'upperRate' | 'lowerForce' | 'lowerRate';

const springs: Readonly<Record<SpringKey, readonly [which: string, what: 'fitted' | 'rate']>> = {
  upperForce: ['upper', 'fitted'],
  upperRate: ['upper', 'rate'],
  lowerForce: ['lower', 'fitted'],
  lowerRate: ['lower', 'rate'],
};

const isSpring = (key: OwnKey): key is SpringKey => key in springs;
const isPlain = (key: OwnKey): key is keyof typeof at => key in at;

/** Its id among the quantities of a scene; null where it is no number there. */
export function varyId(key: OwnKey, scene: Scene): string | null {
  if (isPlain(key)) return at[key];
  if (!isSpring(key)) return null;
  const [which, what] = springs[key];
  const place = scene.springs.findIndex(({ name }) =>
    name.toLowerCase().split(/\W+/).includes(which),
  );
  return place < 0 ? null : `springs.${place}.${what}`;
}
