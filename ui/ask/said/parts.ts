import type { cautions } from '../../cautions.ts';
import type { PartId } from '../../stage/part-names.ts';

/** What people call the parts, beside what the file of words knows. */
export const partsSaid: Readonly<Partial<Record<PartId, readonly string[]>>> = {
  plate: ['metal plate behind the shoes', 'backing plate what is it'],
  'access hole': [
    'hole to reach the adjuster',
    'where is the adjuster hole',
    'rubber plug at the back of the drum',
    'where do I put the screwdriver',
    'cant find the hole',
  ],
  hub: ['where the drum sits', 'hub flange'],
  drum: ['brake drum'],
  web: ['rib of the shoe'],
  table: ['metal the lining is glued to', 'steel shoe'],
  lining: ['friction material on the shoe', 'brake lining'],
  'hold-down': [
    'pin that holds the shoe to the plate',
    'how to take the hold down spring off',
    'nail with a spring and cup',
    'quarter turn cap',
  ],
  cylinder: ['wheel cylinder where is it', 'slave cylinder'],
  'bleed port': ['bleed nipple where', 'bleed screw'],
  piston: ['piston in the wheel cylinder'],
  cup: ['rubber cup seal in the cylinder'],
  boot: ['rubber boot on the cylinder'],
  strut: [
    'bar between the shoes',
    'spreader bar what does it do',
    'long bar across the brake',
    'which way round does the strut go',
  ],
  'toothed lever': [
    'lever with teeth',
    'pawl where is it',
    'ratchet lever',
    'quadrant',
    'little lever with teeth what is it for',
  ],
  'lever spring': ['thin spring on the pawl', 'small spring at the adjuster'],
  'star wheel': [
    'star wheel where is it',
    'toothed wheel on the strut',
    'which way do I turn the star wheel',
    'cog in the middle of the strut',
  ],
  wedge: ['wedge shaped key', 'wedge between strut and shoe'],
  'hot lock': ['bimetal strip'],
  'return spring': ['spring between the shoes', 'return springs which way round'],
  'upper spring': ['top spring'],
  'lower spring': ['bottom spring'],
  'parking lever': [
    'handbrake arm on the shoe',
    'lever that the cable hooks to',
    'handbrake lever behind the shoe',
  ],
  cable: ['handbrake cable', 'cable end nipple', 'how to unhook the handbrake cable'],
  'anchor pin': ['bottom pin of the shoes', 'pivot of the shoe'],
  abutment: ['block at the bottom', 'flats where the shoes stand'],
};

/** When a caution is asked for. */
export const cautionsSaid: Readonly<Partial<Record<keyof typeof cautions, readonly string[]>>> = {
  wear: ['brake dust danger', 'is the dust poisonous'],
  drumOff: [
    'how to jack up safely',
    'chock the wheels',
    'where to put axle stands',
    'before the drum comes off',
  ],
  park: ['handbrake off on a slope danger', 'car may roll while working'],
  piston: [
    'can I press the pedal with the drum off',
    'press brake with drum off',
    'someone pressed the pedal while drum was off',
  ],
  springs: [
    'springs fly off danger',
    'how to get springs off safely',
    'spring tool eye protection',
  ],
  hot: ['drum too hot to touch burns', 'pour water on a hot drum', 'cool the drum with water'],
  fluid: ['brake fluid on skin', 'brake fluid on paint', 'brake fluid in eyes'],
  stands: ['working on the jack', 'axle stands'],
  doubt: ['I am not sure about my work', 'should I ask a garage'],
};
