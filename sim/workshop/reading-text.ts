import type { Reading, ReadingKey, ShoeReading } from '../index.ts';

type Plain = Exclude<ReadingKey, ShoeReading | `spring${number}`>;

/** What a reading means, one plain sentence. */
const plain: Readonly<Record<Plain, string>> = {
  brakeFactor:
    'How many newtons of drag at the drum one newton on each toe makes, springs already paid.',
  brakeFactorFull: 'The same drag over the whole push of the piston, springs not taken off.',
  shoeFactorLeading: 'Drag of the shoe that the drum drags tighter, per newton on its toe.',
  shoeFactorTrailing: 'Drag of the shoe that the drum pushes away, per newton on its toe.',
  torque: 'Both shoes together against the turning of the drum.',
  linePressure: 'Pressure of the fluid behind the pistons.',
  pistonForce: 'Push of the fluid on each piston.',
  clearanceMean: 'Mean of the two gaps at the linings’ middles now.',
  restClearanceMean:
    'Mean of the two gaps at the linings’ middles with the pedal let go; below nothing: so far they stand inside the drum.',
  tooth: 'How many teeth the adjuster has stepped out.',
  strutForce: 'Clamp of the shoes on the strut; nothing once the pistons have spread them.',
  separation: 'How far the strut seats have parted beyond the strut.',
  toNextTooth:
    'Lost motion, one tooth, and what a weak spring is late: the play at which the lever drops in.',
  climb: 'Part of the next tooth that the lever has climbed.',
  drumDiameter: 'Inner diameter of the cold drum where it is swept.',
  temperature: 'Temperature of the drum.',
  stopFace:
    'Hottest that the drum’s rubbed face gets in a stop with this torque from the speed of the scene’s first stop, while the drum’s mean has risen far less. Nothing is told of stops so long that the heat is through the rim before they end.',
  distance: 'Driven since new.',
  leverOffStop: 'How far the cable holds the parking lever off its stop, at the hook.',
  waterFilm: 'Water on the drum’s track: the heat of the next stops dries it.',
  rustFilm: 'Rust on the drum’s track: the linings wear it off in the next stops.',
  glazeOfFront:
    'How far the front lining is glazed; it goes as the lining wears under a firmer foot.',
  glazeOfRear:
    'How far the rear lining is glazed; it goes as the lining wears under a firmer foot.',
  pedalTravel:
    'How far the pedal goes down: free play, then the gaps, then what the circuit gives, and what stands upstream.',
  pedalFree: 'Pedal travel before the master piston moves.',
  pedalGaps: 'Pedal travel that moves the wheel pistons of both brakes.',
  pedalCircuit: 'Pedal travel that goes into hoses and fluid: it grows with the pressure.',
  pedalForce:
    'Push of the foot for this pressure; a booster’s help, where there is one, is taken off.',
  fluid: 'Volume that both pistons of this brake have moved out.',
  runOut: 'How much farther the farther piston may go before its cup leaves the bore.',
  stopDistance:
    'From the pedal’s push to a stand, the torque as it is now held all the way; the time that foot and fluid take is not in it.',
  stopDeceleration:
    'How the vehicle slows if the other axle brakes in proportion and every tyre grips; air and rolling resistance left out.',
  stopTime: 'From that speed to a stand.',
  stopGrip:
    'Friction between tyre and road below which wheels slide, were every axle loaded as it brakes: a dry road gives about 0.8, a wet one 0.5.',
  stopForce: 'What all brakes of this axle together push back with where the tyres stand.',
  stopShare: 'Part of all braking that is told to be on this axle; the other axle does the rest.',
  stopEnergy: 'Heat that this one brake takes up in the stop.',
  stopRise: 'How much warmer the stop makes the drum, nothing yet carried away by the air.',
  stopFaceRise:
    'How much warmer the rubbed face gets in the middle of the stop, before the heat has gone through the rim; nothing is told of longer stops.',
  stopTorque:
    'What each brake of this axle must give, the other axle doing the rest in proportion.',
  stopPressure: 'Pressure in the wheel cylinders at which this brake gives that torque.',
  stopPedal: 'Push of the foot that makes that pressure.',
  dragTorque: 'What holds the wheel back with the pedal let go, the drum as warm as it is now.',
  dragPower: 'Heat that a brake which touches makes all the time while it is driven so.',
  dragShare: 'All such brakes together, beside rolling and air: so much more fuel, at most.',
  dragSettles:
    'It grows away from its shoes until it loses what it gets; at most 300 K over the air are told.',
  dragForce: 'As much more as the tyre has to be pushed along with.',
  wheelLeft: 'Both shoes of the left wheel together against its turning.',
  wheelRight: 'Both shoes of the right wheel together against its turning.',
  wheelDifference:
    'How much the weaker brake of the axle lacks: the vehicle pulls to the stronger one.',
  partFree: 'Before the push rod moves anything.',
  partBooster: 'Before the booster begins to help.',
  partLost: 'The piston of the circuit that holds no pressure runs to its end first.',
  partRollBack:
    'Seals drew the pistons back off their shoes at release: they have to come forward again.',
  partToDrum:
    'Until both linings lie on the drum: more of it is for the adjuster or worn linings to answer.',
  partElastic: 'What shoes and linings are pressed together by from there on.',
  partLines: 'Lines and hoses of this axle swell with the pressure.',
  partRest:
    'The other axle’s brakes, hoses and fluid: all that is not this axle’s, as the scene has it.',
  partOwn: 'How much of a long pedal this axle can answer for.',
  pedalTouch: 'Where a lining begins to rub, be it at one end alone.',
  pedalTouchForce: 'Push of the foot there: it pays the free play and the return springs.',
  pedalSeated: 'Where both linings lie on the drum: from here on the pedal only grows hard.',
  pedalSeatedForce: 'Push of the foot there.',
  pedalFloor: 'How far the pedal can go at all; the stroke of the master cylinder is the scene’s.',
  pedalReserve: 'Travel that is left at this push; none means the pedal goes to the floor.',
  slipForward: 'Torque up to which a wheel stands still, nose down.',
  slipBackward: 'Torque up to which a wheel stands still, nose up.',
  slopeDown: 'Steepest slope on which the vehicle stands facing down it.',
  slopeUp: 'Steepest slope on which the vehicle stands facing up it.',
  pivotForce: 'Push of the lever’s pivot on the shoe that carries it.',
  notches: 'Notches that slack, stretch and the lever’s travel take.',
  handForce: 'Pull at the grip for all cables together.',
  slopeTorque: 'Torque that each braked wheel must hold for the vehicle to stand on this slope.',
  cableNoseDown: 'Pull of each cable at which the vehicle just stands facing down the slope.',
  cableNoseUp: 'Pull of each cable at which the vehicle just stands facing up the slope.',
  handNoseDown: 'Pull at the grip for all cables together.',
  handNoseUp: 'Pull at the grip for all cables together.',
  marginNoseDown: 'What the brake can hold beyond what the slope asks for; negative: it rolls.',
  marginNoseUp: 'What the brake can hold beyond what the slope asks for; negative: it rolls.',
  turnFrontLeast: 'Gap at the middle of the lining as the drum goes round.',
  turnFrontGreatest: 'Gap at the middle of the lining as the drum goes round.',
  turnRearLeast: 'Gap at the middle of the lining as the drum goes round.',
  turnRearGreatest: 'Gap at the middle of the lining as the drum goes round.',
  turnTorqueLeast:
    'Torque against the turning as the drum goes round: what a foot feels as throbbing.',
  turnTorqueGreatest:
    'Torque against the turning as the drum goes round: what a foot feels as throbbing.',
  turnBoreLeast:
    'What a two-point gauge reads across: an oval drum shows, one off centre does not.',
  turnBoreGreatest:
    'What a two-point gauge reads across: an oval drum shows, one off centre does not.',
};

type OfShoe = ShoeReading extends `${infer What}Front` | `${infer What}Rear` ? What : never;

const ofShoe: Readonly<Record<OfShoe, (where: 'front' | 'rear') => string>> = {
  toeForce: (where) =>
    `What the piston has left to push the ${where} shoe with once the return springs are paid.`,
  pistonTravel: (where) => `How far the ${where} piston has come out since rest.`,
  drag: (where) => `Friction of the ${where} lining at the drum’s face.`,
  peak: (where) => `Greatest pressure anywhere on the ${where} lining.`,
  clearance: (where) => `Gap between the middle of the ${where} lining and the drum now.`,
  restClearance: (where) =>
    `Gap at the middle of the ${where} lining when the pedal is let go; below nothing: so far both stand inside the drum.`,
  lining: (where) => `Thickness of the ${where} lining at its thinnest point.`,
  liningShare: (where) => `Part of the usable ${where} lining that is left.`,
  anchorForce: (where) => `Force of the pin on the ${where} shoe.`,
};

const isPlain = (key: ReadingKey): key is Plain => key in plain;

/** What a reading means, one plain sentence. */
export function meaningOf({ key, name }: Reading): string {
  if (isPlain(key)) return plain[key];
  const shoe = /^(.*)(Front|Rear)$/.exec(key);
  if (shoe) return ofShoe[shoe[1] as OfShoe](shoe[2] === 'Front' ? 'front' : 'rear');
  return `What the ${name.replace(/^Pull of the /, '')} pulls with now.`;
}
