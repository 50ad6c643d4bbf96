import type { Table } from '../math/table.ts';
import type { Duty } from './duty.ts';
import type { Films } from './films.ts';
import type { HeatOf } from './heat-of.ts';
import type { Rubbing } from './rubbing.ts';
import type { SurfaceFrictions } from './surface.ts';

/**
 * What is built: constant, deeply readonly, in inside units (mm, tonne, s, N, MPa, rad).
 *
 * Frame: view from outside the wheel, origin on the drum axis, x right, y up, angles from +x
 * counter-clockwise. All coordinates are those of the reference pose: arc centre of each lining
 * on the drum axis, an unworn lining touching a new drum.
 */
export type Point = readonly [x: number, y: number];

/** A wheel of the axle, as the driver sits. */
export type Wheel = 'left' | 'right';

/** Position of a shoe. Leading and trailing are roles and follow the turning; see readings. */
export type Side = 'front' | 'rear';

/** Turning of the drum: +1 forward (counter-clockwise on a left-hand wheel), -1 backward. */
export type Turning = -1 | 0 | 1;

/** The drum: radii, limits and what it takes of heat; mm, °C. */
export interface Drum {
  readonly radiusNew: number;
  readonly radiusMax: number;
  readonly lipRadius: number;
  /** Largest allowed out-of-round on diameter, mm. */
  readonly outOfRoundMax: number;
  readonly rim: number;
  /** Moment of inertia about the axis with what turns with it, tonne·mm². */
  readonly inertia: number;
  /** N·mm/K. */
  readonly heatCapacity: number;
  /** Heat given to the air: at rest, and what a km/h adds, both in N·mm/s/K. */
  readonly cooling: { readonly still: number; readonly perKmh: number };
  readonly expansion: number;
  /** Archard wear coefficient, mm²/N: depth per pressure and sliding distance. */
  readonly wearRate: number;
}

/** What holds a heel: a pin, or a flat that its round end slides on. */
export type Anchor =
  | { readonly kind: 'pin'; readonly at: Point }
  | {
      readonly kind: 'abutment';
      /** Centre of the round heel. */
      readonly at: Point;
      readonly heelRadius: number;
      /** Angle of the flat's outward normal (from the abutment towards the heel), rad. */
      readonly normal: number;
      readonly friction: number;
      /** Of heel and bracket, square to the flat, N/mm. */
      readonly stiffness: number;
    };

/** A lining: where it rubs, how thick and stiff it is, what it rubs and wears by. */
export interface Lining {
  /** Ends of the rubbing arc, rad, from < to. */
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly thicknessNew: number;
  readonly thicknessMin: number;
  /** Radius the rubbing face was ground to; equal to the new drum's on a matched pair. */
  readonly groundRadius: number;
  /** Sloped ends: arc of the slope (rad) and depth at the very end (mm); 0 for square ends. */
  readonly chamferArc: number;
  readonly chamferDepth: number;
  /** Arc at each end where the edge beside the lip is cut back, rad: it rubs, but does not catch there. */
  readonly cutEdgeArc: number;
  /** Pressure over strain of the lining as it is pressed on its shoe, where it cannot widen along its arc, MPa. */
  readonly modulus: number;
  readonly friction: number;
  readonly wearRate: number;
  /** Rivet heads over the table, mm: a lining worn down to them bears on rivets; 0 when bonded. */
  readonly rivetHeight: number;
}

/** Sizes along the axle, mm, outward from the backing plate's outer face; only removing the drum asks for them. */
export interface Across {
  readonly plate: number;
  /** From the plate to the linings' edge. */
  readonly liningOff: number;
  /** Unworn edge of the drum, and the play between it and the linings' edge. */
  readonly lipWidth: number;
  readonly lipGap: number;
  /** From the linings' other edge to the drum's disc, and the disc's thickness. */
  readonly discOff: number;
  readonly disc: number;
  readonly holdDown: {
    /** N/mm */
    readonly rate: number;
    /** Until its coils stand on each other, mm. */
    readonly travel: number;
    /** Diameter of its pin, mm. */
    readonly pin: number;
  };
}

/** What holds a shoe against the plate, and the friction that it makes there; N, mm. */
export interface HoldDown {
  readonly at: Point;
  /** Friction of hold-down and plate pads on the shoe, N. */
  readonly friction: number;
  /** Of its grip before it slips, N/mm. */
  readonly stiffness: number;
  /** Share of that friction which a turning drum shakes off once the strut is unloaded, 0..1. */
  readonly shakenOff: number;
}

/** Web and table of a shoe: what bends, where shoes bend; mm, MPa. */
export interface ShoeSteel {
  readonly tableThickness: number;
  readonly tableArc: readonly [from: number, to: number];
  readonly webThickness: number;
  readonly webDepth: number;
  readonly webCount: number;
  readonly modulus: number;
  readonly poisson: number;
}

/** A shoe as built: what holds its heel, where forces act on it, its lining, its steel. */
export interface Shoe {
  readonly side: Side;
  readonly anchor: Anchor;
  readonly toe: Point;
  readonly strutSeat: Point;
  readonly holdDown: HoldDown;
  readonly lining: Lining;
  readonly steel: ShoeSteel;
  /** tonne */
  readonly mass: number;
  /** About pin or heel centre, tonne·mm². */
  readonly inertia: number;
  readonly webHoles: readonly { readonly at: Point; readonly radius: number }[];
}

/** The wheel cylinder; mm, N. */
export interface Cylinder {
  readonly at: Point;
  readonly bore: number;
  readonly area: number;
  /** Stroke of each piston to run-out. */
  readonly stroke: number;
  readonly cupFriction: number;
  /** Of a cup's grip before it slips, N/mm. */
  readonly cupStiffness: number;
  /** Push of the spring between the cups, N. */
  readonly centreSpring: number;
  readonly outerRadius: number;
  readonly halfLength: number;
}

/** What an end of a spring is hooked to, and where. */
export interface SpringEnd {
  readonly on: Side | 'plate';
  readonly at: Point;
}

/** A return spring by its two ends; rate N/mm, force as fitted N. */
export interface ReturnSpring {
  readonly name: string;
  readonly ends: readonly [SpringEnd, SpringEnd];
  readonly rate: number;
  readonly fitted: number;
  /** Length as fitted: end to end in the reference pose. */
  readonly fittedLength: number;
}

/** Kinds of adjuster that a scene may have. */
export type AdjusterKind = 'toothed lever' | 'incremental' | 'screw strut' | 'wedge';

/** The adjuster in the strut: how long each step makes it, and what drives a step. */
export interface Adjuster {
  readonly kind: AdjusterKind;
  /** Strut length (seat to seat) at tooth 0. */
  readonly lengthAtZero: number;
  readonly lostMotion: number;
  readonly teeth: number;
  /** Growth of the strut from tooth 0 to tooth n, index n = 0..teeth, strictly rising. */
  readonly growth: readonly number[];
  /** Most teeth taken up in one application. */
  readonly perApplication: number;
  /** Force at the strut seats while a tooth is climbed, N, where no spring is told: see climbForceAt. */
  readonly climbForce: number;
  /** Spring that presses a toothed lever into its teeth; null where none is told. */
  readonly spring: LeverSpring | null;
  /** Temperature above which a bimetal holds the lever, °C; Infinity without a hot lock. */
  readonly hotLock: number;
  /** What it steps on: the pedal's application, or only a pull of the parking lever. */
  readonly drivenBy: 'application' | 'parking pull';
  /** Toothed lever as the growth is derived from: see brake/adjuster.ts; as a part: brake/lever-form.ts. */
  readonly lever: ToothedLever | null;
}

/** The spring that turns the toothed lever. */
export interface LeverSpring {
  /** N/mm, and N with the lever in its teeth, both along its slot. */
  readonly rate: number;
  readonly fitted: number;
  /** Where its coil sits on the strut, from the lever's pin; null: a usual place. */
  readonly at: Point | null;
}

/** The toothed lever by its sizes. */
export interface ToothedLever {
  readonly pin: Point;
  readonly noseRadius: number;
  readonly startAngle: number;
  readonly toothAngle: number;
  readonly toothRadius: number;
  readonly toothHeight: number;
  readonly window: { readonly x: number; readonly y: number };
}

/** Parking lever, cable and hand lever. */
export interface ParkingLever {
  readonly pivot: Point;
  readonly hook: Point;
  /** Direction of the cable's pull on the hook, unit vector. */
  readonly pull: Point;
  readonly cableGuide: Point;
  /** Point that the cable pulls the hook towards: the guide, or far away when a direction is given. */
  readonly pullFrom: Point;
  readonly handRatio: number;
  readonly handEfficiency: number;
  /** Cable taken up by one notch of the hand lever, mm. */
  readonly perNotch: number;
  readonly slack: number;
  /** N/mm, each side. */
  readonly stiffness: number;
}

/** A booster: what the push rod gets beside the foot. */
export interface Booster {
  /** Push on the master's piston over the push of the pedal on the booster, while it helps more and more. */
  readonly gain: number;
  /** Force of the foot at which its help is spent, N: it stays as great from there on. */
  readonly knee: number;
  /** Travel at the push rod before it begins to help, mm. */
  readonly play: number;
}

/** A valve that holds this axle's pressure back above its knee. */
export interface RearValve {
  /** MPa */
  readonly knee: number;
  /** Growth of this axle's pressure over that of the master cylinder's above it, more than 0 to 1. */
  readonly slope: number;
}

/** Two circuits from one tandem master cylinder, as this axle sees them. */
export interface Circuits {
  /** One circuit an axle, or each with one brake of either axle. */
  readonly split: 'axles' | 'diagonal';
  /** Give of the lines of this axle's brakes, mm³/MPa: part of the whole circuit's. */
  readonly give: number;
  /** Stroke of the piston that presses this axle's circuit (split diagonally: half of it) to its end, mm. */
  readonly stroke: number;
  /** The circuit that holds no pressure: its piston runs to the end of its stroke. */
  readonly failed: 'none' | 'this' | 'other';
}

/** Sizes of what bears the strut's force, mm and MPa: see strut-path.ts. */
export interface StrutPath {
  readonly bar: {
    readonly width: number;
    readonly thickness: number;
    /** Its slot; both 0 without one. */
    readonly slotWidth: number;
    readonly slotLength: number;
  };
  /** Adjuster lever as a beam; null where the adjuster has none. */
  readonly lever: {
    readonly thickness: number;
    readonly depth: number;
    /** From its pin to where it bears, and to its teeth. */
    readonly nose: number;
    readonly arm: number;
  } | null;
  /** Rounding of edges and notches that bear. */
  readonly edgeRadius: number;
  readonly parkingLever: {
    readonly thickness: number;
    readonly depth: number;
    /** From the strut's seat down to the stop. */
    readonly toStop: number;
  };
  /** Anchor pins; null where the shoes do not turn on pins. */
  readonly pins: {
    readonly diameter: number;
    /** From the plate to the middle of the web. */
    readonly webOff: number;
    readonly plate: number;
    /** Radius at which the plate is held. */
    readonly heldAt: number;
  } | null;
  /** Give of both steel shoes and of the drum, as felt at the strut, mm/N. */
  readonly shoesGive: number;
  readonly drumGive: number;
  /** Yield of levers and pins, and of the bar, MPa. */
  readonly yield: number;
  readonly barYield: number;
}

/** From the foot to the wheel cylinder: pedal, master cylinder, lines, valves. */
export interface Hydraulics {
  readonly masterBore: number;
  readonly pedalRatio: number;
  /** At the push rod, mm. */
  readonly freePlay: number;
  /** Rest of the circuit, mm³/MPa. */
  readonly circuit: number;
  /** Stroke of the master cylinder until its piston stands at the end, mm. */
  readonly masterStroke: number;
  // What of these a scene leaves out is not there: see brake/upstream.ts.
  readonly booster: Booster | null;
  readonly rearValve: RearValve | null;
  readonly circuits: Circuits | null;
  /** Pressure that a valve keeps in this axle's line after release, MPa. */
  readonly residual: number;
  /** How far its seal draws each piston back off its shoe at release, mm. */
  readonly rollBack: number;
}

/** The vehicle as its brakes have it. */
export interface Vehicle {
  /** tonne */
  readonly mass: number;
  readonly tyreRadius: number;
  readonly brakes: number;
  /** Share of the braking on these wheels, 0..1. */
  readonly share: number;
  /** Rolling resistance over weight. */
  readonly rolling: number;
  /** Drag of the air over speed squared, N/(mm/s)². */
  readonly air: number;
}

/** Sizes that carry no force and are only drawn. */
export interface Look {
  readonly plateRadius: number;
  readonly hubRadius: number;
  readonly studCircle: number;
  readonly studRadius: number;
  readonly studs: number;
  readonly pinRadius: number;
  readonly eyeRadius: number;
  readonly accessHole: {
    readonly at: Point;
    readonly along: number;
    readonly length: number;
    readonly radius: number;
  };
}

/** What a brake is driven to: a distance (mm), a click counted from new, a share of what a lining may lose. */
export type Goal =
  | { readonly kind: 'distance'; readonly distance: number }
  | { readonly kind: 'click'; readonly click: number }
  | { readonly kind: 'worn'; readonly share: number }
  | { readonly kind: 'lining limit' | 'drum limit' };

/** A state of the brake that a scene offers by name, made by a recipe from new. */
export interface StandingState {
  readonly name: string;
  readonly drumRadius: number | null;
  readonly until: Goal;
  /** Driven on beyond that, mm; negative: stopped so long before. */
  readonly beyond: number;
  /** To the nearest whole of this distance, mm; 0: to wherever it falls. */
  readonly round: number;
}

/**
 * Depth worn off a lining by where along its arc, mm: the parabola through the depths at its toe end, its
 * middle and its heel end (three points, one parabola: Lagrange). With the middle between its ends it is a
 * straight taper.
 */
export interface WornAlong {
  readonly toe: number;
  readonly middle: number;
  readonly heel: number;
}

/** How the brake stands when a scene is opened. */
export interface StartState {
  readonly tooth: number;
  readonly drumRadius: number;
  /** Depth worn off each lining, mm: a number where it is even. */
  readonly wear: Readonly<Record<Side, number | WornAlong>>;
  /** °C */
  readonly temperature: number;
  readonly leverOffStop: number;
}

/** A brake as built and the vehicle that it stops: what `readScene` makes of a scene file. */
export interface Brake {
  readonly name: string;
  readonly title: string;
  readonly about: string;
  readonly source: string;
  readonly wheel: Wheel;
  readonly drum: Drum;
  readonly shoes: Readonly<Record<Side, Shoe>>;
  readonly cylinder: Cylinder;
  readonly springs: readonly ReturnSpring[];
  readonly adjuster: Adjuster;
  readonly parkingLever: ParkingLever;
  /** Sizes of what bears the strut's force; null where it is told as rigid. */
  readonly strutPath: StrutPath | null;
  readonly hydraulics: Hydraulics;
  readonly vehicle: Vehicle;
  /** Duties to choose from; its standing states are worn on by the first. */
  readonly duties: readonly [Duty, ...Duty[]];
  readonly frictionTable: Table;
  /** What pressure and speed make of friction; null: nothing. */
  readonly rubbing: Rubbing | null;
  /** What the state of a lining's surface makes of its friction. */
  readonly surfaces: SurfaceFrictions;
  readonly films: Films;
  readonly wearTable: Table;
  readonly heat: HeatOf;
  readonly across: Across;
  readonly look: Look;
  readonly start: StartState;
  /** How the brake of the axle's other wheel stands then; null: alike. */
  readonly otherStart: StartState | null;
  readonly states: readonly StandingState[];
}
