import { askEnglish } from './ask-english.ts';
import { section } from './section.ts';
import { tradeWords } from './trade-word.ts';

/** What is a language's own to do with a word. */
export const language = section('language', {
  /** Names, one after the other. */
  and: (all: readonly string[]) => all.join(' and '),
  /** A name as it stands inside a sentence: its first letter is small, but that of a sign or of letters that stand for words. */
  inside: (name: string) =>
    /^(?!A )\p{Lu}(?:\p{Lu}|\P{L}|$)/u.test(name)
      ? name
      : `${name.charAt(0).toLowerCase()}${name.slice(1)}`,
});

/** Names of what the brake tells at a moment. */
export const readingNames = section('readingNames', {
  clearanceBothLinings: 'Clearance, both linings',
  clearanceAtRestBoth: 'Clearance at rest, both linings',
  strutForce: 'Strut force',
  strutPlaySensed: 'Strut play sensed',
  drumDiameter: 'Drum diameter',
  drum: 'Drum',
  drumsFaceInStop: 'Drum’s face in such a stop',
  distance: 'Distance',
  leverOffStop: 'Parking lever off its stop',
  waterOnDrum: 'Water on the drum',
  rustOnDrum: 'Rust on the drum',
  frontGlazed: 'Front lining glazed',
  rearGlazed: 'Rear lining glazed',
  pedalTravel: 'Pedal travel',
  ofItFreePlay: 'of it free play',
  ofItGaps: 'of it to close the gaps',
  ofItGive: 'of it give in the circuit',
  pedalForce: 'Pedal force',
  fluidTaken: 'Fluid taken by this brake',
  travelLeft: 'Piston travel left to run-out',
  brakeFactor: 'Brake factor, after springs',
  brakeFactorFull: 'Brake factor on full piston force',
  leading: 'Leading',
  trailing: 'Trailing',
  brakeTorque: 'Brake torque',
  linePressure: 'Line pressure',
  pistonForceEach: 'Piston force, each',
  leftOnToe: 'Left on the toe after springs',
  pistonTravel: 'Piston travel',
  drag: 'Drag',
  highestPressure: 'Highest pressure',
  clearance: 'Clearance',
  clearanceAtRest: 'Clearance at rest',
  liningLeft: 'Lining left',
  liningLeftAbove: 'Lining left above its limit',
  forceAtAnchor: 'Force at the anchor',
  adjusterTooth: 'Adjuster tooth',
  adjusterStep: 'Adjuster step',
  neededTooth: 'Needed for the next tooth',
  neededStep: 'Needed for the next step',
  toothClimbed: 'Tooth climbed',
  stepClimbed: 'Step climbed',
  ofTeeth: (all: string) => `of ${all}`,
  pullOf: (spring: string) => `Pull of the ${spring}`,
  spring: 'spring',
});

/** Formulas of readings that have a word in them; what is a symbol stays one in every language. */
export const readingFormulas = section('readingFormulas', {
  strut: 'S from the balance of both shoes',
  toNextTooth: 'lost motion + (2 − spring) · (L(n+1) − L(n))',
  climbed: '(s − L − lost motion) / (L(n+1) − L(n))',
  driven: 'sum of the lumps driven',
  hook: 'hook travel',
  spring: 'F_s = fitted + rate · stretch',
  pedal: 'x_pedal = i · (free play + (V_pistons + C · p) / A_master)',
  freePlay: 'i · free play',
  helped: 'F_pedal = (p · A_master − help) / i',
  stroke: 'stroke − x',
  toe: 'x = toe now − toe at rest',
  pressure: 'p = E / t · penetration',
  gap: 'g = R − face of the lining',
  gapAtRest: 'g_0 = R − face of the lining',
  lining: 't = t_new − wear',
  anchor: 'R_a = −Σ of all other forces on the shoe',
  water: 'film − E / (ρ · A · (c · 80 K + L))',
  rust: 'film − E · k_r / (A · μ)',
  glaze: 'hot light stops − depth worn',
});

/** Names of what a stop, a slope, a drive and a varied brake tell. */
export const studyNames = section('studyNames', {
  stoppingDistance: 'Stopping distance',
  meanDeceleration: 'Mean deceleration',
  timeOfStop: 'Time of the stop',
  gripNeeded: 'Grip that the tyres need',
  brakingOfAxle: 'Braking of this axle at the road',
  shareOfAxle: 'Share of this axle',
  energyOfStop: 'Energy of the stop in this brake',
  drumWarmer: 'Drum warmer by it',
  faceWarmer: 'Drum’s face warmer at its hottest',
  torqueNeeded: 'Torque needed of each brake',
  pressureNeeded: 'Line pressure needed',
  pedalForceNeeded: 'Pedal force needed',
  dragReleased: 'Drag of the released brake',
  itsPower: 'Its power at that speed',
  moreRolling: 'More rolling resistance at the tyre',
  ofLevelRoad: 'Of what the level road asks for',
  drumSettles: 'Drum settles at',
  slipForward: 'Slip torque, rolling forward',
  slipBackward: 'Slip torque, rolling backward',
  slopeDown: 'Slope held, nose down',
  slopeUp: 'Slope held, nose up',
  pivotOnShoe: 'Pivot on its own shoe',
  handNotches: 'Hand-lever notches',
  pullAtHand: 'Pull at the hand lever',
  torqueOfSlope: 'Torque the slope asks for, a wheel',
  linePressure: 'Line pressure',
  pullOfCable: 'Pull of the parking cable',
  toothOfAdjuster: 'Tooth of the adjuster',
  wornEvenly: 'Worn off both linings, evenly',
  drumAsIs: 'Diameter of the drum as it is',
  temperatureOfDrum: 'Temperature of the drum',
  leverHeldOff: 'Parking lever held off its stop',
  strengthOfSprings: 'Strength of all return springs',
  frictionOfCups: 'Friction of each cup beyond the scene’s',
  drumOval: 'Drum oval, radius ±',
  drumOffCentre: 'Drum off centre',
  pressureKept: 'Pressure kept in the line',
  teethTaken: 'Teeth that one such press takes',
  drivenToClick: 'Driven to the next click',
  gapAtClick: 'Clearance just before the next click',
  drivenToLimit: 'Driven to its first limit',
  hillTeeth: 'Teeth too many after its hottest descent',
  hillGap: 'Clearance the morning after its hottest descent',
});

/** Single words that several parts of the page show: heads of columns, names of buttons, of layers, of turns. */
export const labelWords = section('labelWords', {
  adjuster: 'Adjuster',
  axis: 'Axis',
  back: 'Back',
  backward: 'Backward',
  bar: 'Bar',
  bearing: 'Bearing',
  before: 'Before',
  begin: 'Begin',
  board: 'Board',
  bore: 'Bore',
  brake: 'Brake',
  browse: 'Browse',
  cable: 'Cable',
  caption: 'Caption',
  captions: 'Captions',
  caution: 'Caution',
  clearance: 'Clearance',
  click: 'Click',
  clip: 'Clip',
  comb: 'Comb',
  cylinder: 'Cylinder',
  dark: 'Dark',
  data: 'Data',
  date: 'Date',
  density: 'Density',
  dials: 'Dials',
  diameter: 'Diameter',
  difference: 'Difference',
  distance: 'Distance',
  done: 'Done',
  drawing: 'Drawing',
  drum: 'Drum',
  equaliser: 'Equaliser',
  events: 'Events',
  explain: 'Explain',
  faces: 'Faces',
  factor: 'Factor',
  fade: 'Fade',
  figure: 'Figure',
  file: 'File',
  forces: 'Forces',
  forward: 'Forward',
  friction: 'Friction',
  from: 'From',
  gapOfCuts: 'Play',
  ghost: 'Ghost',
  group: 'Group',
  hand: 'Hand',
  heat: 'Heat',
  hose: 'Hose',
  kept: 'Kept',
  kerf: 'Kerf',
  key: 'Key',
  leading: 'Leading',
  left: 'Left',
  legend: 'Legend',
  lessons: 'Lessons',
  light: 'Light',
  lining: 'Lining',
  lip: 'Lip',
  look: 'Look',
  loop: 'Loop',
  loupe: 'Loupe',
  mass: 'Mass',
  moment: 'Moment',
  name: 'Name',
  names: 'Names',
  notch: 'Notch',
  notches: 'Notches',
  now: 'Now',
  observe: 'Observe',
  off: 'Off',
  pedal: 'Pedal',
  picture: 'Picture',
  pins: 'Pins',
  pistons: 'Pistons',
  pivot: 'Pivot',
  plate: 'Plate',
  play: 'Play',
  polygons: 'Polygons',
  predict: 'Predict',
  pressure: 'Pressure',
  rate: 'Rate',
  reading: 'Reading',
  readings: 'Readings',
  right: 'Right',
  rigid: 'Rigid',
  row: 'Row',
  share: 'Share',
  sheet: 'Sheet',
  sheets: 'Sheets',
  shoe: 'Shoe',
  shoes: 'Shoes',
  shortly: 'Shortly',
  size: 'Size',
  slope: 'Slope',
  spring: 'Spring',
  springs: 'Springs',
  stations: 'Stations',
  step: 'Step',
  stop: 'Stop',
  stopped: 'Stopped',
  strip: 'Strip',
  strut: 'Strut',
  studs: 'Studs',
  table: 'Table',
  talks: 'Talks',
  temperature: 'Temperature',
  thickness: 'Thickness',
  title: 'Title',
  tooth: 'Tooth',
  trailing: 'Trailing',
  transcript: 'Transcript',
  turned: 'Turned',
  undo: 'Undo',
  undone: 'Undone',
  unit: 'Unit',
  value: 'Value',
  vehicle: 'Vehicle',
  web: 'Web',
  wedge: 'Wedge',
  what: 'What',
  why: 'Why',
  width: 'Width',
  with: 'With',
  without: 'Without',
  yours: 'Yours',
});

/** Groups of questions, in ui/questions/. */
export const questionGroups = section('questionGroups', {
  off: 'Drum will not come off',
  on: 'Drum will not go on',
  how: 'How the adjuster works',
  far: 'Adjusted too far',
  drag: 'Drag and heat',
  ways: 'Forwards and backwards',
  park: 'Parking brake',
  cylinder: 'Cylinder and leaks',
  round: 'Drum worn or not round',
  grab: 'Grabbing and locking',
  limits: 'Limits and life',
  noises: 'Noises',
  pedal: 'Pedal',
  side: 'Pulling to one side',
  setting: 'Setting',
  wear: 'Wear',
  which: 'Which shoe where',
});

/** sim/scene/adjuster.ts */
export const sceneAdjuster = section('sceneAdjuster', {
  strutFromSeatToSeat: 'Strut from seat to seat at tooth 0',
  slotPlay: 'Slot play',
  stepsFromZeroToThe: 'Steps from zero to the end',
  mostStepsInOneApplication: 'Most steps in one application; as its kind has it when left out',
  forceAtTheStrutWhile: 'Force at the strut while a tooth is climbed',
  temperatureAboveWhichTheLever: 'Temperature above which the lever is held',
  whatItStepsOn: 'What it steps on',
  evenGrowthOfTheStrut: 'Even growth of the strut a step',
  springThatPressesTheLever:
    'Spring that presses the lever into its teeth; the climb force follows from it',
  rateAlongTheSlot: 'Rate along the slot',
  forceAlongTheSlotWith: 'Force along the slot with the lever in its teeth',
  whereItsCoilSitsOn: 'Where its coil sits on the strut, from the lever’s pin',
  geometryOfTheToothedLever: 'Geometry of the toothed lever, in place of a pitch',
  leverPinInTheZero: 'Lever pin in the zero position',
  pinToNose: 'Pin to nose',
  noseFromTheStrutAxis: 'Nose from the strut axis at tooth 0',
  turnOfOneTooth: 'Turn of one tooth',
  pinToToothRoot: 'Pin to tooth root',
  heightOfATooth: 'Height of a tooth',
  directionOfTooth0From:
    'Direction of tooth 0 from the pin; read in old files, the teeth stand square to the strut',
  fingerWidth: 'Finger width',
  windowHeight: 'Window height',
  kindOfAdjuster: 'Kind of adjuster',
  noInA: (input: unknown, kind: unknown) => `no ${input} in a ${kind}`,
  aKind: (adjusterKinds: string) => `a kind: ${adjusterKinds}`,
  strutAndAdjusterWhichKeys: 'Strut and adjuster; which keys there are depends on its kind',
});

/** sim/scene/duty.ts */
export const sceneDuty = section('sceneDuty', {
  howOften: (about: string) => `How often ${about}`,
  aDuty: 'A duty',
  atMostLetters: (long: number) => `at most ${long} letters`,
  whatItIs: 'What it is',
  trueOrFalse: 'true or false',
  whetherTheDrumHeatsAnd: 'Whether the drum heats and cools; else it stays as it stands',
  massThatIsStoppedThe: 'Mass that is stopped; the vehicle’s when left out',
  itsKindsOfStops: 'Its kinds of stops',
  oneKindOfStop: 'One kind of stop',
  stoppedFrom: 'Stopped from',
  linePressureOrGiveA: 'Line pressure; or give a deceleration',
  decelerationOrGiveAPressure: 'Deceleration; or give a pressure',
  itComes: 'it comes',
  shareOfThemInReverse: 'Share of them in reverse, 0 to 1',
  hillsDrivenDownWithThe: 'Hills driven down with the brakes holding the speed',
  aHill: 'A hill',
  lengthAlongTheRoad: 'Length along the road',
  speedHeld: 'Speed held',
  leavingTheVehicleParked: 'Leaving the vehicle parked',
  pullOfEachCable: 'Pull of each cable',
  itIsLeft: 'it is left',
  whatTheCableIsTightened: 'What the cable is tightened by',
  filmOfRustThatA: 'Film of rust that a drum has after standing',
  surfacesThatAShareOf: 'Surfaces that a share of the stops meet',
  aSurface: 'A surface',
  stateOfTheLinings: 'State of the linings',
  shareOfTheStops0: 'Share of the stops, 0 to 1',
  filmThatThoseStopsFind:
    'Film that those stops find on the drum, water when wet and rust when damp, and that goes over the following ones; when left out the surface stays for just those stops',
});

/** sim/scene/films.ts */
export const sceneFilms = section('sceneFilms', {
  usual: 'weak: worked out from how soon wet and rusted brakes are as before',
  filmsOfWaterRustAnd: 'Films of water, rust and glaze, and how they go',
  waterOnTheDrum: 'Water on the drum',
  thicknessFromWhichItCounts: 'Thickness from which it counts whole',
  rustOnTheDrum: 'Rust on the drum',
  archardCoefficientOfTheRust: 'Archard coefficient of the rust',
  glazeOfTheLiningsIt: 'Glaze of the linings; it neither comes nor goes when left out',
  drumHotterThanThis: 'Drum hotter than this',
  liningPressedLessThanThis: 'Lining pressed less than this, mean',
  energyBrakedSoThatMakes: 'Energy braked so that makes it whole',
  depthWornOffALining: 'Depth worn off a lining that takes it away',
  whereTheseNumbersComeFrom: 'Where these numbers come from',
});

/** sim/scene/finding.ts */
export const sceneFinding = section('sceneFinding', {
  foundAllowed: (path: string, found: string, allowed: string, reason: string) =>
    `${path}: found ${found}; allowed: ${allowed}${reason}`,
});

/** sim/scene/heat.ts */
export const sceneHeat = section('sceneHeat', {
  usual: 'usual orders of magnitude of grey iron and of moulded linings, from memory',
  conductivityOfHeat: 'Conductivity of heat',
  specificHeat: 'Specific heat',
  howHeatGoesThroughDrum: 'How heat goes through drum, linings and shoes',
  stuffOfTheDrumGrey: 'Stuff of the drum; grey iron when left out',
  stuffOfTheLiningsA: 'Stuff of the linings; a moulded one when left out',
  shoesThatWarmThroughTheir: 'Shoes that warm through their linings; cold when left out',
  heatCapacityOfBothShoes: 'Heat capacity of both shoes; that of steel of their mass when left out',
  heatThatBothShoesGive: 'Heat that both shoes give to the air',
  thermalExpansionOfTheirSteel: 'Thermal expansion of their steel',
  thermalExpansionOfTheLinings: 'Thermal expansion of the linings',
  whereTheseNumbersComeFrom: 'Where these numbers come from',
});

/** sim/scene/hydraulics.ts */
export const sceneHydraulics = section('sceneHydraulics', {
  growthOfThisAxlesPressure:
    'Growth of this axle’s pressure over the master cylinder’s above the knee',
  pedalAndCircuit: 'Pedal and circuit',
  boreOfTheMasterCylinder: 'Bore of the master cylinder',
  pedalRatio: 'Pedal ratio',
  freePlayAtThePush: 'Free play at the push rod',
  giveOfTheRestOf: 'Give of the rest of the circuit',
  strokeOfTheMasterCylinder: 'Stroke of the master cylinder to its end',
  boosterNoneWhenLeftOut: 'Booster; none when left out',
  pushOnTheMastersPiston: 'Push on the master’s piston over the foot’s',
  forceOfTheFootAt: 'Force of the foot at which its help is spent',
  travelAtThePushRod: 'Travel at the push rod before it helps',
  aKneeThatStays: 'A knee that stays',
  theKneeIsAlwaysThe: 'The knee is always the same',
  pressureFromWhichItHolds: 'Pressure from which it holds back',
  aKneeThatGoesWith: 'A knee that goes with the load',
  aRodOrSpringTo: 'A rod or spring to the axle shifts the knee',
  pressureFromWhichItHolds2: 'Pressure from which it holds back, the vehicle empty',
  theSameWithTheVehicle: 'The same with the vehicle laden',
  load0EmptyTo1: 'Load, 0 empty to 1 laden',
  aKindFixedOrLoad: 'a kind: fixed or load',
  valveThatHoldsThisAxles: 'Valve that holds this axle’s pressure back; none when left out',
  twoCircuitsFromATandem: 'Two circuits from a tandem master cylinder; one for all when left out',
  oneCircuitAnAxleOr: 'One circuit an axle, or each with one brake of either',
  giveOfTheLinesOf: 'Give of the lines of this axle’s brakes, of the whole give',
  strokeOfThePistonOf: 'Stroke of the piston of this axle’s circuit to its end',
  circuitThatHoldsNoPressure: 'Circuit that holds no pressure',
  pressureThatAValveKeeps: 'Pressure that a valve keeps in this axle’s line after release',
  howFarItsSealDraws: 'How far its seal draws each piston back off its shoe at release',
});

/** sim/scene/issues.ts */
export const sceneIssues = section('sceneIssues', {
  moreFindings: (length: number) => `${length} more findings`,
  anUnknownKey: 'an unknown key',
  thisKeyIsNeeded: 'this key is needed',
});

/** sim/scene/migrations/from-1.ts */
export const sceneMigrationsFrom1 = section('sceneMigrationsFrom1', {
  allStopsAlikeForwardThe: 'All stops alike, forward, the drum cool at each.',
});

/** sim/scene/migrations/migrate.ts */
export const sceneMigrationsMigrate = section('sceneMigrationsMigrate', {
  theFileWasMadeBy: (version: number) => `${version}: the file was made by a later program`,
  of1To: (version: number) => `1 to ${version}`,
});

/** sim/scene/parts.ts */
export const sceneParts = section('sceneParts', {
  plain: 'plain number',
  whole: 'whole number',
  text: 'text',
  oneOf: (of: readonly string[]) => [of.slice(0, -1).join(', '), ...of.slice(-1)].join(' or '),
  aNumber: 'a number',
  aFiniteNumber: 'a finite number',
  atLeast: (min: number) => `at least ${min}`,
  atMost: (max: number) => `at most ${max}`,
  moreThan0: 'more than 0',
  aWholeNumber: 'a whole number',
  textThatIsNotEmpty: 'text that is not empty',
  atMostLetters: (most: number) => `at most ${most} letters`,
  anObject: 'an object',
  thisKeyIsNeeded: 'this key is needed',
  onlyTheKeysOfThe: (meant: string) => `only the keys of the format; the nearest is ${meant}`,
  onlyTheKeysOfThe2: (known: string) => `only the keys of the format: ${known}`,
  aList: 'a list',
  atLeast2: (least: number) => `at least ${least}`,
  atMost2: (most: number) => `at most ${most}`,
});

/** sim/scene/rubbing.ts */
export const sceneRubbing = section('sceneRubbing', {
  frictionOnTheDrumCold: 'Friction on the drum, cold',
  twoLetters: 'two letters',
  twoLettersFromCTo: 'two letters from C to H, such as FF',
  lettersOfTheLiningsEdge:
    'Letters of the lining’s edge code, cold and hot (SAE J866): the middle of the cold band is taken; the tables must lead to the hot one',
  aNumberOrTwoLetters: 'a number, or two letters such as FF',
  frictionOnTheDrumCold2: 'Friction on the drum, cold: a number, or two letters',
  frictionThatHangsOnPressure:
    'Friction that hangs on pressure and speed: F = K·P^a·V^b; constant when left out',
  a1WhenFrictionGoes: 'a: 1 when friction goes with pressure',
  b0WhenItDoes: 'b: 0 when it does not hang on speed',
  meanPressureOfALining: 'Mean pressure of a lining at which its friction is told',
  speedOfTheVehicleAt: 'Speed of the vehicle at which its friction is told',
  whereTheExponentsComeFrom: 'Where the exponents come from',
});

/** sim/scene/rules/adjuster.ts */
export const sceneRulesAdjuster = section('sceneRulesAdjuster', {
  strutBetweenSeatsName: 'strut between seats',
  strutBetweenSeatsReason:
    'Right back, the strut lies between its seats with a little play and lets the drum on.',
  betweenSeatsApartInThe: (lengthAtZero: string, seats: string) =>
    `${lengthAtZero} between seats ${seats} apart in the reference pose`,
  to: (seats: string, seats2: string) => `${seats} to ${seats2}`,
  pitchOrLeverName: 'pitch or lever',
  pitchOrLeverReason: 'The growth of a step is told once.',
  pitchAndLeverBothGiven: 'pitch and lever both given',
  eitherAPitchOrA: 'either a pitch or a lever, not both',
  neitherPitchNorLever: 'neither pitch nor lever',
  aPitchInMmA: 'a pitch in mm a step, or the lever geometry',
  climbToldOnceName: 'climb told once',
  climbToldOnceReason: 'What the seats feel of a climb follows from the lever’s spring.',
  nBesideTheLeversSpring: (climbForce: number) => `${climbForce} N beside the lever’s spring`,
  eitherASpringOrA: 'either a spring or a climb force, not both',
  teethRunForwardName: 'teeth run forward',
  teethRunForwardReason: 'Each step makes the strut longer.',
  atLeastAStep: (finest: string) => `at least ${finest} a step`,
  theTeethWouldRunBackwards: (toothAngle: unknown) =>
    `${toothAngle}°: the teeth would run backwards`,
  moreThan0: 'more than 0°',
  theLastToothAt: (last: string) => `the last tooth at ${last}°`,
  atMost175PastThat: 'at most 175°: past that the nose lets the strut shorten',
  growthInReachName: 'growth in reach',
  growthInReachReason: 'A strut that grows farther would push the shoes through the drum.',
  thatMakeTheStrutLonger: (teeth: number, growth: string) =>
    `${teeth} that make the strut ${growth} longer`,
  atMostHalfAsMuch: (most: string) =>
    `at most ${most}, half as much again as two linings worn through take`,
  stepsInOneName: 'steps in one press',
  stepsInOneReason: 'No more steps are taken than there are.',
  atMostTheTeethThere: (teeth: number) => `at most ${teeth}, the teeth there are`,
  slotPlayName: 'slot play',
  slotPlayReason: 'With more play than a worn-out pair takes up the adjuster would never step.',
  atMostWhatTwoLinings: (most: string) => `at most ${most}, what two linings worn through take`,
  leverInDrumName: 'lever in drum',
  leverInDrumReason: 'The toothed lever turns inside the drum.',
  withTeethOutToFrom: (place: string, reach: string) =>
    `${place}, with teeth out to ${reach} from the axis`,
  insideTheDrumUnder: (bore: string) => `inside the drum, under ${bore}`,
  noseAtTheName: 'nose at the strut',
  noseAtTheReason:
    'The lever’s nose pushes the front shoe through its window, where the strut lies.',
  aNoseAboveTheAxle: (y: string) => `a nose ${y} above the axle`,
  theFrontSeatsToWithin: (seat: string, window: string) =>
    `the front seat's ${seat}, to within half of the window's height, ${window}`,
  teethToHoldName: 'teeth to hold',
  teethToHoldReason: 'Teeth have to be coarse enough to hold and low enough to be passed.',
  teethApart: (pitch: string) => `teeth ${pitch} apart`,
  atLeast: (finesttooth: string) => `at least ${finesttooth}`,
  atMostOnTeethApart: (steepest: string, pitch: string) =>
    `at most ${steepest} on teeth ${pitch} apart`,
});

/** sim/scene/rules/cylinder.ts */
export const sceneRulesCylinder = section('sceneRulesCylinder', {
  wallOfTheName: 'wall of the cylinder',
  wallOfTheReason: 'The wall round the bore holds the pressure.',
  atMostInACylinder: (outerDiameter: string, outerDiameter2: string) =>
    `at most ${outerDiameter} in a cylinder of ${outerDiameter2}`,
  cylinderInDrumName: 'cylinder in drum',
  cylinderInDrumReason: 'The wheel cylinder stands inside the drum, over the hub.',
  aCornerFromTheAxis: (place: string, far: string) => `${place}, a corner ${far} from the axis`,
  insideTheDrumUnder: (bore: string) => `inside the drum, under ${bore}`,
  downToAboveTheAxis: (place: string, low: string) => `${place}, down to ${low} above the axis`,
  overTheHubMoreThan: (hubRadius: string) => `over the hub, more than ${hubRadius}`,
  cylinderBetweenTablesName: 'cylinder between tables',
  cylinderBetweenTablesReason: 'The tables end beside the wheel cylinder.',
  anEndAtXOver: (inner: string, far: string) =>
    `an end at x ${inner}, over a cylinder that reaches ${far} out`,
  anEndBesideTheCylinder: (at: string) => `an end beside the cylinder, past x ${at}`,
  strutUnderCylinderName: 'strut under cylinder',
  strutUnderCylinderReason: 'The strut goes from web to web between hub and wheel cylinder.',
  aboveTheAxle: (strutSeat: string) => `${strutSeat} above the axle`,
  underTheCylinder: (low: string) => `under the cylinder, ${low}`,
  pistonsInCylinderName: 'pistons in cylinder',
  pistonsInCylinderReason:
    'Each piston has its half of the cylinder, and stays in it over its stroke.',
  atMostHalfOfThe: (length: string) => `at most ${length}, half of the cylinder's length`,
  toeOnTheName: 'toe on the cylinder’s axis',
  toeOnTheReason: 'A piston pushes along its axis; a toe beside it would tilt it.',
  aboveTheAxle2: (toe: string) => `${toe} above the axle`,
  theCylindersToWithin: (y: string, off: string) => `the cylinder's ${y}, to within ${off}`,
  toeOutsideTheName: 'toe outside the cylinder',
  toeOutsideTheReason: 'The toes stand at the cylinder’s two ends.',
  outsideTheCylindersEndAt: (end: string) => `outside the cylinder's end at x ${end}`,
  travelWithinStrokeName: 'travel within stroke',
  travelWithinStrokeReason:
    'With new linings the pistons have to press them on before they leave the cylinder.',
  thePistonTravelsToThe: (clearance: string, side: 'front' | 'rear', travel: string) =>
    `${clearance}: the ${side} piston travels ${travel} to the first touch`,
  aTravelWithinTheStroke: (stroke: string) => `a travel within the stroke of ${stroke}`,
});

/** sim/scene/rules/drum.ts */
export const sceneRulesDrum = section('sceneRulesDrum', {
  drumLimitOverName: 'drum limit over new',
  drumLimitOverReason: 'A drum only ever gets larger.',
  atLeastDiameterNew: (diameterNew: string) => `at least diameterNew, ${diameterNew}`,
  drumLimitWithinName: 'drum limit within rim',
  drumLimitWithinReason: 'With more than half of its rim turned off a drum bursts or cracks.',
  atMostHalfOfThe: (diameterNew: string, rim: string) =>
    `at most ${diameterNew}, half of the rim's ${rim} on each side`,
  rimOnDrumName: 'rim on drum',
  rimOnDrumReason: 'The rim is the drum’s wall, not its bulk.',
  atMost: (bore: string) => `at most ${bore}`,
  lipUnderLimitName: 'lip under limit',
  lipUnderLimitReason: 'The lip is the edge that no lining has worn.',
  atMostDiameterMax: (diameterMax: string) => `at most diameterMax, ${diameterMax}`,
  lipAsWideName: 'lip as wide as new',
  lipAsWideReason:
    'A new drum has no lip: its edge is as wide as its bore, to within a casting’s skin.',
  atLeast98OfDiameter: (diameterNew: string) => `at least ${diameterNew}, 98 % of diameterNew`,
  outOfRoundName: 'out of round in limit',
  outOfRoundReason: 'A drum that runs out by more than its wear is no longer the same drum.',
  atMost2OfDiameter: (diameterNew: string) => `at most ${diameterNew}, 2 % of diameterNew`,
  hubInsideDrumName: 'hub inside drum',
  hubInsideDrumReason: 'Shoes, cylinder and strut stand about the hub, inside the drum.',
  atMostSixTenthsOf: (bore: string) => `at most ${bore}, six tenths of the drum's radius`,
  webClearOfName: 'web clear of hub',
  webClearOfReason: 'The hub turns between the shoes’ webs.',
  inToFromTheAxis: (webDepth: string, inner: string) => `${webDepth}, in to ${inner} from the axis`,
  underClearOfTheHub: (webRadius: string) => `under ${webRadius}, clear of the hub`,
  studsOnHubName: 'studs on hub',
  studsOnHubReason: 'The wheel studs sit in the hub, beside each other.',
  studsOutTo: (studCircle: string) => `studs out to ${studCircle}`,
  atMostTheHub: (hubRadius: string) => `at most the hub, ${hubRadius}`,
  ofOnACircleOf: (studs: number, studRadius: string, pi: string) =>
    `${studs} of ${studRadius} on a circle of ${pi}`,
  asManyAsHaveRoom: 'as many as have room beside each other',
  plateBehindDrumName: 'plate behind drum',
  plateBehindDrumReason: 'The backing plate closes the drum: it is about as large.',
  toForThisDrum: (bore: string, bore2: string) => `${bore} to ${bore2} for this drum`,
  accessHoleInName: 'access hole in drum',
  accessHoleInReason: 'The hole opens to the adjuster, inside the drum.',
  aHoleOutToFrom: (reach: string) => `a hole out to ${reach} from the axis`,
  insideTheDrumUnder: (bore: string) => `inside the drum, under ${bore}`,
  anchorPinInName: 'anchor pin in eye',
  anchorPinInReason: 'The shoe’s eye turns on the pin and the pin goes through it.',
  underTheEyes: (eyeRadius: string) => `under the eye's, ${eyeRadius}`,
  pinsBesideEachName: 'pins beside each other',
  pinsBesideEachReason: 'Two pins cannot stand in one place.',
  fromTheFrontOne: (off: string) => `${off} from the front one`,
  atLeastApart: (bore: string) => `at least ${bore} apart`,
  wheelOverDrumName: 'wheel over drum',
  wheelOverDrumReason: 'The wheel goes over the drum.',
  moreThanTheDrumsOutside: (outside: string) => `more than the drum's outside, ${outside}`,
  ironOfTheName: 'iron of the drum',
  ironOfTheReason: 'Iron holds the heat: a drum with less than a tenth of its rim’s would be foil.',
  atLeastJKA: (ceil: number) => `at least ${ceil} J/K, a tenth of an iron rim of this size`,
});

/** sim/scene/rules/duty.ts */
export const sceneRulesDuty = section('sceneRulesDuty', {
  dutyOfItsName: 'duty of its own name',
  dutyOfItsReason: 'A duty is chosen by its name.',
  pressureOrDecelerationName: 'pressure or deceleration',
  pressureOrDecelerationReason: 'One of them follows from the other.',
  neitherPressureNorDeceleration: 'neither pressure nor deceleration',
  pressureAndDeceleration: 'pressure and deceleration',
  oneOfTheTwo: 'one of the two',
  pressureToLockName: 'pressure to lock at',
  pressureToLockReason: 'The first stop of the first duty is what shoes are asked to lock at.',
  aDeceleration: 'a deceleration',
  aPressure: 'a pressure',
  sharesOfTheName: 'shares of the weather',
  sharesOfTheReason: 'The rest of the stops is dry.',
  sharesThatAddUpTo: (shares: number) => `shares that add up to ${shares}`,
  atMost1Together: 'at most 1 together',
  filmsOfWaterName: 'films of water and rust',
  filmsOfWaterReason:
    'Rain and rust lie on a drum and go; glaze and grease do not come with a stop.',
  aFilmOf: (surface: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet') => `a film of ${surface}`,
  aFilmOfWetOr: 'a film of wet or damp',
  descentsOnTheName: 'descents on the road',
  descentsOnTheReason: 'No more road goes down than there is.',
  kmOfDescentInEach: (down: number) => `${down} km of descent in each km`,
});

/** sim/scene/rules/friction.ts */
export const sceneRulesFriction = section('sceneRulesFriction', {
  cAfterC: (row: number, before: unknown) => `${row} °C after ${before} °C`,
  risingTemperatures: 'rising temperatures',
  tablesRiseName: 'tables rise',
  tablesRiseReason: 'A table is read from cold to hot.',
  lettersAsTheName: 'letters as the tables have it',
  lettersAsTheReason: 'A lining’s second letter is its friction hot, and that the tables say.',
  byFrictionAgainstTemperature: (friction: string, letters: string, hot: string) =>
    `"${friction}", by frictionAgainstTemperature ${letters} (${hot} hot)`,
  orATableThatLeads: (letters: string, friction: string) =>
    `${letters}, or a table that leads to ${friction}`,
  frictionOfAName: 'friction of a lining',
  frictionOfAReason: 'No lining grips harder than that, hot or damp.',
  upToByItsTables: (friction: string | number, friction2: string) =>
    `${friction}, up to ${friction2} by its tables`,
  atMostWithAllFactors: (most: number) => `at most ${most} with all factors`,
});

/** sim/scene/rules/hydraulics.ts */
export const sceneRulesHydraulics = section('sceneRulesHydraulics', {
  linesOfTheName: 'lines of the whole circuit',
  linesOfTheReason: 'The lines of this axle are a part of the whole circuit.',
  atMostTheWholeCircuits: (circuit: number) => `at most the whole circuit's ${circuit} mm³/MPa`,
  strokeForBothName: 'stroke for both circuits',
  strokeForBothReason: 'Each circuit has its part of the master cylinder’s stroke.',
  lessThanTheWholeStroke: (masterStroke: string) => `less than the whole stroke, ${masterStroke}`,
  kneeThatRisesName: 'knee that rises with the load',
  kneeThatRisesReason: 'A laden axle may be braked harder than an empty one.',
  atLeastTheEmptyVehicles: (kind: number) => `at least the empty vehicle's ${kind} bar`,
  residualPressureUnderName: 'residual pressure under the springs',
  residualPressureUnderReason:
    'The springs bring the shoes home against the pressure that stays in the line.',
  atMostBarWithThe: (a: string, side: 'front' | 'rear') =>
    `at most ${a} bar with the ${side} shoe's springs`,
});

/** sim/scene/rules/lining.ts */
export const sceneRulesLining = section('sceneRulesLining', {
  liningArcName: 'lining arc',
  liningArcReason: 'A shoe lines at most half of the drum, and a strip of some length.',
  afterFrom: (to: number, from: number) => `${to}° after from ${from}°`,
  moreThanFromBy2: 'more than from, by 2° to 175°',
  liningOnItsName: 'lining on its side',
  liningOnItsReason:
    'The front shoe stands left of the axle, the rear one right: else both lie in one place.',
  allowed: (low: number, high: number) => `${low}° to ${high}°, its own half of the drum`,
  tableUnderLiningName: 'table under lining',
  tableUnderLiningReason: 'The lining is bonded or riveted to the table along all its length.',
  toUnderALiningFrom: (tableArc: number, tableArc2: number, from: number, to: number) =>
    `${tableArc}° to ${tableArc2}° under a lining from ${from}° to ${to}°`,
  atLeastTheLiningsArc: 'at least the lining’s arc',
  tableOnItsName: 'table on its side',
  tableOnItsReason: 'The tables of both shoes do not reach over the line between them.',
  to: (tableArc: number, tableArc2: number) => `${tableArc}° to ${tableArc2}°`,
  fromLessThanToWithin: (low: number, high: number) =>
    `from less than to, within ${low}° to ${high}°`,
  liningWidthName: 'lining width',
  liningWidthReason: 'No drum is as deep as its radius and half of it again.',
  atMostInThisDrum: (bore: string) => `at most ${bore} in this drum`,
  websUnderLiningName: 'webs under lining',
  websUnderLiningReason: 'The webs stand beside each other under the table.',
  ofWeb: (webs: string) => `${webs} of web`,
  atMostTheLiningsWidth: (width: string) => `at most the lining's width, ${width}`,
  liningLimitReason: 'A lining is worn from new down to its limit.',
  lessThanThicknessNew: (thicknessNew: string) => `less than thicknessNew, ${thicknessNew}`,
  liningInDrumName: 'lining in drum',
  liningInDrumReason: 'Lining, table and web have to go between drum and hub.',
  onATableOf: (thicknessNew: string, tableThickness: string) =>
    `${thicknessNew} on a table of ${tableThickness}`,
  atMostTogetherInThis: (bore: string) => `at most ${bore} together in this drum`,
  rivetsInLiningName: 'rivets in lining',
  rivetsInLiningReason: 'Rivet heads are sunk in the lining.',
  slopeInLiningName: 'slope in lining',
  slopeInLiningReason: 'A sloped end is cut into the lining and not through it.',
  atEachEnd: (chamferArc: number) => `${chamferArc}° at each end`,
  lessThanHalfTheArc: 'less than half the arc',
  atEachEnd2: (cutEdgeArc: number) => `${cutEdgeArc}° at each end`,
  groundRadiusName: 'ground radius',
  groundRadiusReason:
    'Ground to another radius than the drum’s by this much it would never fit it.',
  toForThisDrum: (r: string, r2: string) => `${r} to ${r2} for this drum`,
  liningEndsOverName: 'lining ends over limit',
  liningEndsOverReason: 'Ground too small, its new ends would be as thin as a worn lining.',
  whichLeavesAtTheEnds: (groundRadius: string, ends: string) =>
    `${groundRadius}, which leaves ${ends} at the ends`,
  asMuchAsLeavesMore: (thicknessMin: string) =>
    `as much as leaves more than thicknessMin there, ${thicknessMin}`,
  drumGoesOnName: 'drum goes on',
  drumGoesOnReason: 'With new linings and the adjuster right back the drum has to go on.',
  atRestAnEndStands: (groundRadius: string, worst: string) =>
    `${groundRadius}: at rest an end stands ${worst} outside the new drum`,
  atMost: (bears: string) => `at most ${bears}`,
  liningGoesOutwardName: 'lining goes outward',
  liningGoesOutwardReason: 'A shoe that opens presses all of its lining outward.',
  pastTheAnchorAt: (end: number, at: number, at2: number) =>
    `${end}°, past the anchor at (${at}, ${at2})`,
  anEndBeforeTheLine: 'an end before the line from the axis to the anchor',
});

/** sim/scene/rules/parking.ts */
export const sceneRulesParking = section('sceneRulesParking', {
  parkingLeverInName: 'parking lever in drum',
  parkingLeverInReason: 'Lever and cable end lie inside the drum, beside the hub.',
  fromTheAxis: (place: string, fromAxis: string) => `${place}, ${fromAxis} from the axis`,
  toFromTheAxisBetween: (hubRadius: string, room: string) =>
    `${hubRadius} to ${room} from the axis, between hub and table`,
  pivotOnRearName: 'pivot on rear shoe',
  pivotOnRearReason: 'The lever’s pivot is riveted to the rear shoe’s web.',
  rightOfTheAxleOn: 'right of the axle, on the rear shoe',
  guideOffTheName: 'guide off the hook',
  guideOffTheReason:
    'The cable pulls the hook towards its guide: past the hub and from some way off.',
  withACableFromThe: (place: string, off: string) => `${place}, with a cable ${off} from the axis`,
  aCablePastTheHub: (hubRadius: string) => `a cable past the hub, ${hubRadius}`,
  fromTheHook: (place: string, apart: string) => `${place}, ${apart} from the hook`,
  atLeastFromIt: (swing: string) => `at least ${swing} from it`,
  pullPushesTheName: 'pull pushes the strut',
  pullPushesTheReason:
    'A pull of the cable turns the lever so that it pushes the strut, with a longer arm than the strut’s.',
  fromTheStrutsLine: (notch: string) => `${notch} from the strut's line`,
  atLeast1MmElse: 'at least 1 mm: else the lever cannot push it',
  whereThePullHasAn: (place: string, way: string) =>
    `${place}, where the pull has an arm of ${way} about the pivot`,
  atLeastTheStrutsTurning: (notch: string) =>
    `at least the strut's, ${notch}, turning it towards the strut`,
  slackToTakeName: 'slack to take up',
  slackToTakeReason: 'The hand lever has to take the cable up within its own way.',
  atMostFortyNotches: (perNotch: string) => `at most ${perNotch}, forty notches`,
});

/** sim/scene/rules/rule.ts */
export const sceneRulesRule = section('sceneRulesRule', {
  again: (name: string) => `"${name}" again`,
  aNameOfItsOwn: 'a name of its own',
});

/** sim/scene/rules/shoe.ts */
export const sceneRulesShoe = section('sceneRulesShoe', {
  shoeOnItsName: 'shoe on its side',
  shoeOnItsReason: 'The front shoe stands left of the axle, the rear one right.',
  xOf0OrLess: 'x of 0 or less, left of the axle',
  xOf0OrMore: 'x of 0 or more, right of the axle',
  shoeInDrumName: 'shoe in drum',
  shoeInDrumReason: 'All of the shoe lies inside the drum.',
  outToFromTheAxis: (place: string, fromAxis: string) =>
    `${place}, out to ${fromAxis} from the axis`,
  theTable: 'the table',
  theDrum: 'the drum',
  underInside: (room: string, theTable: string) => `under ${room}, inside ${theTable}`,
  shoeClearOfName: 'shoe clear of hub',
  shoeClearOfReason: 'The hub turns between the shoes.',
  fromTheAxis: (place: string, fromAxis: string) => `${place}, ${fromAxis} from the axis`,
  moreThanClearOfThe: (hubRadius: string) => `more than ${hubRadius}, clear of the hub`,
  anchorBelowAxleName: 'anchor below axle',
  anchorBelowAxleReason:
    'Nearer to the middle a shoe turns along the drum and not onto it: the pistons run out before it touches.',
  belowTheAxle: (at: string) => `${at} below the axle`,
  atLeastBelowItFour: (bore: string) =>
    `at least ${bore} below it, four tenths of the drum's radius`,
  aMiddleAtWhichGoes: (from: number, openingMiddle: string) =>
    `a middle at ${from}°, which goes out by ${openingMiddle} a radian`,
  atLeastARadianA: (bore: string) => `at least ${bore} a radian: a middle farther from the anchor`,
  toeOverAnchorName: 'toe over anchor',
  toeOverAnchorReason: 'Else the piston cannot turn the shoe.',
  aboveTheAnchor: (over: string) => `${over} above the anchor`,
  atLeastAboveIt: (bore: string) => `at least ${bore} above it`,
  seatOverAnchorName: 'seat over anchor',
  seatOverAnchorReason: 'Else the strut cannot hold the shoe.',
  heelOnItsName: 'heel on its flat',
  heelOnItsReason:
    'The flat stands inside the heel and holds it outward: the drum pushes the shoe inward.',
  of135To225Outward: '135° to 225°, outward',
  of45To45Outward: '-45° to 45°, outward',
  webHolesInName: 'web holes in web',
  webHolesInReason:
    'A hole is cut in the shoe’s web: inside the table, clear of the hub, on its own side.',
  toFromTheAxis: (place: string, r: string, r2: string) => `${place}, ${r} to ${r2} from the axis`,
  onTheShoesSideTo: (hubRadius: string, webRadius: string) =>
    `on the shoe's side, ${hubRadius} to ${webRadius} from the axis`,
  steelOfTheName: 'steel of the table',
  steelOfTheReason: 'Table and web are sheet or cast steel of some thickness.',
  atLeast03Mm: 'at least 0.3 mm',
  atLeast: (bore: string) => `at least ${bore}`,
  weightOfTheName: 'weight of the shoe',
  weightOfTheReason: 'The shoe’s weight lies within the drum, about its anchor.',
  kgMmWithKgAs: (inertia: number, mass: number, arm: string) =>
    `${inertia} kg·mm² with ${mass} kg: as if ${arm} from the anchor`,
  toTheRootOfInertia: (bore: string, bore2: string) =>
    `${bore} to ${bore2}: the root of inertia over mass`,
  strutBetweenShoesName: 'strut between shoes',
  strutBetweenShoesReason: 'The strut goes from shoe to shoe, over the hub.',
  withTheRearOneAt: (place: string, place2: string) => `${place} with the rear one at ${place2}`,
  leftOfTheRearSeat: (bore: string) =>
    `left of the rear seat by ${bore} or more, and about as high`,
  aStrutFromTheAxis: (off: string) => `a strut ${off} from the axis`,
  overTheHubMoreThan: (hubRadius: string) => `over the hub, more than ${hubRadius} from the axis`,
});

/** sim/scene/rules/springs.ts */
export const sceneRulesSprings = section('sceneRulesSprings', {
  springOfSomeName: 'spring of some length',
  springOfSomeReason: 'A spring of no length pulls nowhere.',
  apart: (apart: string) => `${apart} apart`,
  atLeast5MmApart: 'at least 5 mm apart',
  springBetweenTwoName: 'spring between two parts',
  springBetweenTwoReason: 'A spring with both ends on one part moves nothing.',
  bothOn: (on: 'front' | 'plate' | 'rear') => `both on ${on}`,
  twoDifferentParts: 'two different parts',
  springEndsInName: 'spring ends in drum',
  springEndsInReason: 'A spring is hooked into the shoe’s web or the plate, inside the drum.',
  fromTheAxis: (place: string, fromAxis: string) => `${place}, ${fromAxis} from the axis`,
  theDrum: 'the drum',
  theTable: 'the table',
  underInside: (room: string, theDrum: string) => `under ${room}, inside ${theDrum}`,
  left: 'left',
  right: 'right',
  onTheShoeOfThe: (on: 'front' | 'plate' | 'rear', left: string) =>
    `on the ${on} shoe, ${left} of the axle`,
  springClearOfName: 'spring clear of hub',
  springClearOfReason: 'The hub turns between the springs.',
  aSpringFromTheAxis: (off: string) => `a spring ${off} from the axis`,
  moreThanPastTheHub: (hubRadius: string) => `more than ${hubRadius}, past the hub`,
  springsPullBackName: 'springs pull back',
  springsPullBackReason: 'The return springs draw the shoes off the drum.',
  theShoesSpringsTogetherPress: (side: 'front' | 'rear', inward: number) =>
    `the ${side} shoe's springs together press it onto the drum with ${inward} N·mm`,
  springsThatPullItBack: 'springs that pull it back',
});

/** sim/scene/rules/start.ts */
export const sceneRulesStart = section('sceneRulesStart', {
  toothThatIsName: 'tooth that is there',
  toothThatIsReason: 'The adjuster stands on one of its teeth.',
  of0ToTheTeethThere: (teeth: number) => `0 to ${teeth}, the teeth there are`,
  drumAtTheName: 'drum at the start',
  drumAtTheReason: 'A drum is worn from new on.',
  asNewToTwoPast: (diameterNew: string, diameterMax: string) =>
    `${diameterNew} as new to ${diameterMax}, two past its limit`,
  liningAtTheName: 'lining at the start',
  liningAtTheReason: 'Some lining is left.',
  lessThanTheLining: (thicknessNew: string) => `less than the lining, ${thicknessNew}`,
  wearThatTakesName: 'wear that takes off',
  wearThatTakesReason:
    'Wear takes off everywhere: a parabola through the depths must not rise over a new lining.',
  betweenTheDepths: (least: string) => `${least} between the depths`,
  depthsWhoseParabolaStaysAt: 'depths whose parabola stays at 0 mm or more',
  strutAtTheName: 'strut at the start',
  strutAtTheReason: 'The drum goes over shoes that the strut holds no farther apart than that.',
  aStrutOf: (tooth: number, bare: string) => `${tooth}, a strut of ${bare}`,
  withItAStrutOf: (leverOffStop: string, length: string) =>
    `${leverOffStop}, with it a strut of ${length}`,
  aStrutOfAtMost: (room: string) => `a strut of at most ${room} with these linings in this drum`,
});

/** sim/scene/rules/states.ts */
export const sceneRulesStates = section('sceneRulesStates', {
  stateOfItsName: 'state of its own name',
  stateOfItsReason: 'A state is chosen by its name.',
  drumsOfTheName: 'drums of the states',
  drumsOfTheReason: 'A standing state has a drum within its limit.',
  toMm: (diameterNew: number, diameterMax: number) => `${diameterNew} to ${diameterMax} mm`,
  lessOrMoreName: 'less or more',
  lessOrMoreReason: 'A state stands before its goal or beyond it.',
  lessAndMore: 'less and more',
  oneOfTheTwo: 'one of the two',
  clickThatComesName: 'click that comes',
  clickThatComesReason: 'The adjuster clicks once a tooth.',
  of1ToTheTeethThere: (teeth: number) => `1 to ${teeth}, the teeth there are`,
});

/** sim/scene/schema.ts */
export const sceneSchema = section('sceneSchema', {
  holdDown: 'Hold-down',
  rowsCFactorStraightBetween: (about: string) =>
    `${about}: rows [°C, factor], straight between them`,
  liningsThatAreCommonPractice: (name: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet') =>
    `Linings that are ${name}; common practice when left out`,
  factorOnTheFrictionOf: (name: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet') =>
    `Factor on the friction of a dry lining when ${name}`,
  whereTheFactorsComeFrom: 'Where the factors come from',
  heelOnAPin: 'Heel on a pin',
  hingedOnAPin: 'Hinged on a pin',
  pinCentre: 'Pin centre',
  heelOnAnAbutment: 'Heel on an abutment',
  slidingOnAnAbutment: 'Sliding on an abutment',
  centreOfTheRoundHeel: 'Centre of the round heel',
  radiusOfTheHeel: 'Radius of the heel',
  directionFromTheFlatTowards: 'Direction from the flat towards the heel, from +x',
  frictionOfHeelOnFlat: 'Friction of heel on flat',
  stiffnessOfHeelAndBracket: 'Stiffness of heel and bracket, square to the flat',
  aKindPinOrAbutment: 'a kind: pin or abutment',
  whatHoldsTheHeel: 'What holds the heel',
  firstEndOfTheArc: 'First end of the arc, from +x',
  otherEndOfTheArc: 'Other end of the arc, more than from',
  widthAlongTheAxle: 'Width along the axle',
  thicknessWhenNew: 'Thickness when new',
  limitOfTheLining: 'Limit of the lining',
  radiusTheRubbingFaceIs: 'Radius the rubbing face is ground to',
  arcOfTheSlopedEnds: 'Arc of the sloped ends',
  depthOfTheSlopeAt: 'Depth of the slope at the very end',
  arcAtEachEndWhere: 'Arc at each end where the edge beside the lip is cut back',
  compressiveModulusAsPressed: 'Compressive modulus, as pressed on its shoe',
  archardCoefficient: 'Archard coefficient',
  rivetHeadsOverTheTable: 'Rivet heads over the table; 0 when bonded',
  theShoe: (side: string) => `The ${side} shoe`,
  whereThePistonPushes: 'Where the piston pushes',
  whereTheStrutPushesOn: 'Where the strut pushes (on the lever notch for the shoe that bears it)',
  whereItPresses: 'Where it presses',
  frictionOfHoldDownAnd: 'Friction of hold-down and plate pads',
  itsGripBeforeItSlips: 'Its grip before it slips',
  shareOfItATurning: 'Share of it a turning drum shakes off once the strut is unloaded, 0 to 1',
  webAndTable: 'Web and table',
  thicknessOfTheTable: 'Thickness of the table',
  firstEnd: 'First end',
  otherEnd: 'Other end',
  thicknessOfAWeb: 'Thickness of a web',
  depthOfTheWebUnder: 'Depth of the web under the table',
  numberOfWebs: 'Number of webs',
  elasticModulus: 'Elastic modulus',
  poissonRatio: 'Poisson ratio',
  massWithItsLining: 'Mass with its lining',
  momentOfInertiaAboutPin: 'Moment of inertia about pin or heel centre',
  holesInTheWebDrawn: 'Holes in the web, drawn only',
  aHole: 'A hole',
  itsCentre: 'Its centre',
  itsRadius: 'Its radius',
  oneEnd: 'One end',
  whatItIsHookedTo: 'What it is hooked to',
  springHole: 'Spring hole',
  aBrakeHowItIs: 'A brake, how it is driven, and the states it is shown in',
  whereAnEditorFindsThe: 'Where an editor finds the schema of this file; says nothing of the brake',
  whatKindOfFileThis: 'What kind of file this is',
  theNumber: (version: number) => `the number ${version}`,
  versionOfTheFormatOlder: 'Version of the format; older files are still read',
  shortName: 'Short name',
  smallLettersDigitsAnd: 'small letters, digits and -',
  nameShown: 'Name shown',
  whatThisBrakeIs: 'What this brake is',
  whereItsValuesComeFrom: 'Where its values come from',
  onWhichSideOfThe: 'On which side of the vehicle it is',
  innerDiameterWhenNew: 'Inner diameter when new',
  discardDiameter: 'Discard diameter',
  innerDiameterOfTheUnworn: 'Inner diameter of the unworn edge',
  largestOutOfRoundAllowed: 'Largest out-of-round allowed, on diameter',
  radialThicknessOfTheRim: 'Radial thickness of the rim',
  momentOfInertiaOfThe: 'Moment of inertia of the drum and what turns with it',
  heatCapacity: 'Heat capacity',
  heatGivenToTheAir: 'Heat given to the air',
  atRest: 'At rest',
  growthWithSpeed: 'Growth with speed',
  thermalExpansion: 'Thermal expansion',
  bothShoes: 'Both shoes',
  wheelCylinder: 'Wheel cylinder',
  middleOfTheWheelCylinder: 'Middle of the wheel cylinder',
  strokeOfEachPistonTo: 'Stroke of each piston to run-out',
  frictionOfEachCup: 'Friction of each cup',
  gripOfACupBefore: 'Grip of a cup before it slips',
  pushOfTheSpringBetween: 'Push of the spring between the cups',
  outerDiameterDrawnOnly: 'Outer diameter, drawn only',
  lengthDrawnOnly: 'Length, drawn only',
  returnSprings: 'Return springs',
  aReturnSpring: 'A return spring',
  itsTwoEnds: 'Its two ends',
  forceAsFittedReferencePose: 'Force as fitted (reference pose)',
  parkingLeverAndItsCable: 'Parking lever and its cable',
  pivotOnTheRearWeb: 'Pivot on the rear web',
  cableHook: 'Cable hook',
  whereTheCableLeaves: 'Where the cable leaves',
  directionOfThePullFrom: 'Direction of the pull, from +x; towards the guide when left out',
  ratioOfTheHandLever: 'Ratio of the hand lever',
  efficiencyOfLeverAndCable: 'Efficiency of lever and cable, up to 1',
  cableForOneNotch: 'Cable for one notch',
  slackOfTheCable: 'Slack of the cable',
  stiffnessOfEachCable: 'Stiffness of each cable',
  rollingRadiusOfTheTyre: 'Rolling radius of the tyre',
  numberOfSuchBrakes: 'Number of such brakes',
  shareOfTheBrakingOn: 'Share of the braking on these wheels, 0 to 1',
  rollingResistanceOverWeight: 'Rolling resistance over weight',
  dragOfTheAirOver: 'Drag of the air over speed squared',
  whatItIsDrivenBy: 'What it is driven by; the standing states are made by the first',
  factorOnFriction: 'Factor on friction',
  factorOnWear: 'Factor on wear',
  frictionOfLiningsThatAre: 'Friction of linings that are not dry',
  sizesAlongTheAxleOutward:
    'Sizes along the axle, outward from the backing plate; only taking the drum off asks for them',
  thicknessOfTheBackingPlate: 'Thickness of the backing plate',
  fromThePlateToThe: 'From the plate to the edge of the linings',
  widthOfTheDrumsUnworn: 'Width of the drum’s unworn edge',
  playBetweenThatEdgeAnd: 'Play between that edge and the linings',
  fromTheLiningsToThe: 'From the linings to the disc of the drum',
  thicknessOfTheDisc: 'Thickness of the disc',
  springAndPinOfA: 'Spring and pin of a hold-down',
  rateOfItsSpring: 'Rate of its spring',
  travelOfThatSpringUntil: 'Travel of that spring until its coils stand on each other',
  diameterOfItsPin: 'Diameter of its pin',
  sizesThatCarryNoForce: 'Sizes that carry no force and are only drawn',
  radiusOfTheBackingPlate: 'Radius of the backing plate',
  radiusOfTheHub: 'Radius of the hub',
  radiusOfTheCircleOf: 'Radius of the circle of studs',
  radiusOfAStud: 'Radius of a stud',
  numberOfStuds: 'Number of studs',
  radiusOfAnAnchorPin: 'Radius of an anchor pin',
  radiusOfTheEyeAround: 'Radius of the eye around it',
  holeThatAToolReaches: 'Hole that a tool reaches the adjuster through',
  itsMiddle: 'Its middle',
  directionOfItsLengthFrom: 'Direction of its length, from +x',
  itsLength: 'Its length',
  radiusOfItsEnds: 'Radius of its ends',
  howTheBrakeStandsWhen: 'How the brake stands when the scene is opened',
  howTheBrakeOfThe:
    'How the brake of the axle’s other wheel stands then; like this one when left out',
  standingStatesEachMadeFrom: 'Standing states, each made from new by the first duty',
  theTextTakeupScene: 'the text "takeup-scene"',
});

/** sim/scene/sizes.ts */
export const sceneSizes = section('sceneSizes', {
  xy: ['to the right', 'upward'],
  frontTheRearsMirrorsIt: (name: string) => `${name}, front; the rear’s mirrors it`,
});

/** sim/scene/start.ts */
export const sceneStart = section('sceneStart', {
  depthWornOffAt: (where: string) => `Depth worn off at ${where}`,
  depthWornEvenlyOffThe: (side: string) => `Depth worn evenly off the ${side} lining`,
  depthsAlongTheArcA: 'Depths along the arc, a parabola through them',
  theToeEnd: 'the toe end',
  theMiddleHalfwayBetweenThe: 'the middle; halfway between the ends when left out',
  theHeelEnd: 'the heel end',
  aDepthOrDepthsBy: 'a depth, or depths by toe, middle and heel',
  wearOfTheLining: (side: string) => `Wear of the ${side} lining`,
  toothTheAdjusterStandsOn: 'Tooth the adjuster stands on',
  innerDiameterOfTheCold: 'Inner diameter of the cold drum; new when left out',
  wearOfTheLinings: 'Wear of the linings',
  temperatureOfTheDrum: 'Temperature of the drum',
  parkingLeverHeldOffIts: 'Parking lever held off its stop, at the hook',
});

/** sim/scene/states.ts */
export const sceneStates = section('sceneStates', {
  innerDiameterOfTheDrum: 'Inner diameter of the drum that new shoes are put into',
  stopThisLongBefore: 'Stop this long before',
  driveOnByThis: 'Drive on by this',
  toTheNearestWholeOf: 'To the nearest whole of this',
  whatTheBrakeIsDriven: 'What the brake is driven to',
  drivenByADistance: 'Driven by a distance',
  fromNew: 'From new',
  drivenToAClickOf: 'Driven to a click of the adjuster',
  whichOneCountedFromNew: 'Which one, counted from new',
  drivenUntilALiningHas: 'Driven until a lining has worn',
  ofWhatALiningMay: 'Of what a lining may lose, on the one that has lost most; 0 to 1',
  drivenUntilALiningIs: 'Driven until a lining is at its limit',
  drivenUntilTheDrumIs: 'Driven until the drum is at its limit',
  aGoalDistanceClickWorn: 'a goal: distance, click, worn, lining limit or drum limit',
  aStateThatTheBrake: 'A state that the brake can be put into, as far as it can be driven to it',
});

/** sim/scene/strut-path.ts */
export const sceneStrutPath = section('sceneStrutPath', {
  thicknessOfItsPlate: 'Thickness of its plate',
  depthInThePlaneOf: 'Depth in the plane of bending',
  sizesOfWhatBearsThe: 'Sizes of what bears the force of the strut; rigid when left out',
  barOfTheStrut: 'Bar of the strut',
  widthOfItsSlot0: 'Width of its slot; 0 without one',
  lengthOfItsSlot: 'Length of its slot',
  adjusterLeverWhereTheAdjuster: 'Adjuster lever, where the adjuster has one',
  fromItsPinToIts: 'From its pin to its nose',
  fromItsPinToIts2: 'From its pin to its teeth',
  roundingOfEdgesAndNotches: 'Rounding of edges and notches that bear',
  parkingLeverAsABeam: 'Parking lever as a beam',
  fromTheSeatOfThe: 'From the seat of the strut to its stop',
  anchorPinsWhereTheShoes: 'Anchor pins, where the shoes turn on pins',
  fromThePlateToThe: 'From the plate to the middle of the web',
  radiusAroundThePinAt: 'Radius around the pin at which the plate is held',
  giveOfBothSteelShoes: 'Give of both steel shoes, felt at the strut',
  giveOfTheDrumFelt: 'Give of the drum, felt at the strut',
  yieldOfLeversAndPins: 'Yield of levers and pins',
  yieldOfTheStrutsBar: 'Yield of the strut’s bar',
  whereTheSizesComeFrom: 'Where the sizes come from',
  lessThanTheBarMm: (width: number) => `less than the bar, ${width} mm`,
  shorterThanTheStrut: 'shorter than the strut',
  sizesByWhichItGives: (toPrecision: string) => `sizes by which it gives ${toPrecision} mm/N`,
  atMostMmN: (mostgive: number) => `at most ${mostgive} mm/N`,
  found: (name: 'lever arm' | 'lever nose' | 'lever teeth' | 'strut', toPrecision: string) =>
    `sizes by which the ${name} yield at ${toPrecision} N`,
  atLeastN: (leastforce: number) => `at least ${leastforce} N`,
});

/** sim/workshop/axle.ts */
export const workshopAxle = section('workshopAxle', {
  drumOutOfRound: 'Drum out of round',
  drumTwoDepths: 'Drum, two depths',
  deepestScore: 'Deepest score',
  leadingLining: 'Leading lining',
  trailingLining: 'Trailing lining',
  parkingLever: 'Parking lever',
  differsByBetweenTheWheels: (nameOf: string, by: string) =>
    `${nameOf} differs by ${by} between the wheels: look for a stuck piston, cable or adjuster.`,
  handLever: (a: string, action: string) => `Hand lever: ${a}. ${action}`,
  doNotRefitYet: 'Do not refit yet',
  line: 'line',
  lines: 'lines',
  notCompleteToGo: (open: number, line: string) => `Not complete: ${open} ${line} to go`,
  refitOnlyWithADate: 'Refit only with a date',
  withinTheLimitsMindWhat: 'Within the limits; mind what is marked',
  withinTheLimitsOnThis: 'Within the limits on this sheet',
});

/** sim/workshop/cases.ts */
export const workshopCases = section('workshopCases', {
  pedalGoesHalfwayDownThen:
    'Pedal goes halfway down, then it’s solid. Handbrake nearly in the roof.',
  likeSteppingOnASponge: 'Like stepping on a sponge since the pipe was changed.',
  pedalsLovelyLeversHopeless: 'Pedal’s lovely, lever’s hopeless.',
  badEachMorningFirstPress: 'Bad each morning, first press goes down, tick-tick, then fine.',
  nearsideStaysCoolTheOther: 'Nearside stays cool, the other one stinks.',
  fineTillIBrakeThen: 'Fine till I brake, then it drags for a bit.',
  afterThePassItWas: 'After the pass it was free, next morning it wouldn’t roll.',
  justClicked: 'Just clicked',
  allOfThemWarmWorse: 'All of them warm, worse the longer I drive.',
  throbsThroughThePedalRubs: 'Throbs through the pedal; rubs since it was set up a tooth.',
  swishSwishOnceEachTurn: 'Swish, swish, once each turn, since the hub was off.',
  spinsFreeOnTheJack: 'Spins free on the jack, hot on the road.',
  comesABitThenIts: 'Comes a bit, then it’s like a wall.',
  hitItAllDayNot: 'Hit it all day, not a hair.',
  cameOffLastYearAnd: 'Came off last year, and I only tightened the handbrake.',
  pullsLeftForwardsButBacking: 'Pulls left forwards, but backing up it pulls far less.',
  pulledLeftSinceTheWinter: 'Pulled left since the winter.',
  alwaysPulledRightSinceThe: 'Always pulled right since the repair.',
  creepsEitherWayUpAnd: 'Creeps either way up, and the pedal feels wooden.',
  holdsFacingTheSeaSlides: 'Holds facing the sea, slides facing the hill.',
  holdsOnTheFlatBeen: 'Holds on the flat. Been slow to let go too.',
});

/** sim/workshop/cut.ts */
export const workshopCut = section('workshopCut', {
  renewTheDrumAndThe: (wheel: 'left' | 'right', other: 'left' | 'right') =>
    `Renew the ${wheel} drum, and the ${other} with it`,
  aCutThatClearsThe: (more: string) =>
    `A cut that clears the score passes the mark on the drum by ${more}.`,
  aCutThatClearsThe2: (more: string) =>
    `A cut that clears the score passes the machining limit by ${more}.`,
  theMarkOnTheDrum: 'the mark on the drum',
  theMachiningLimit: 'the machining limit',
  noVerdictOnACut: 'No verdict on a cut yet',
  notSetALimitThat: (open: string) =>
    `Not set: ${open}. A limit that nobody owns gives no verdict.`,
  cutToBothDrumsStand: (more: string) => `Cut to ${more}, both drums stand at their mark`,
  nothingIsLeftToWear: 'Nothing is left to wear after such a cut: renew them rather.',
  bothDrumsCanBeCut: (more: string) => `Both drums can be cut, alike, to ${more}`,
  isThenLeftToWear: (less: string) =>
    `${less} is then left to wear to the mark. Linings that stay must bed in again, so a light score is best left with the pair that ran in it.`,
});

/** sim/workshop/examinations.ts */
export const workshopExaminations = section('workshopExaminations', {
  storyAndFeel: 'Story and feel',
  hearWhichWheelAndWhen: 'Hear which wheel and when; tread on the pedal.',
  pumpThePedal: 'Pump the pedal',
  afterANightParkedMeasure:
    'After a night parked: measure the pedal at 10 and 40 bar, and once more.',
  notchesAt300N: 'Notches at 300 N',
  countTheHandLeversClicks: 'Count the hand lever’s clicks to 300 N in each cable.',
  heatOfTheDrumsAfter: 'Heat of the drums after a drive',
  driveAt50KmH: 'Drive at 50 km/h without braking, feel or gauge.',
  wheelsUpTurnBothWays: 'Wheels up, turn both ways',
  onStandsTurnEachWheel: 'On stands: turn each wheel by hand, pull at the drum.',
  rockTheWheelTapThe: 'Rock the wheel, tap the drum',
  playAtTheRimA: 'Play at the rim; a clear ring or a dull one.',
  treadSlowlyLetGo: 'Tread slowly, let go',
  wheelsUpAGaugeIn: 'Wheels up, a gauge in the line: when it begins to drag, when it is free.',
  openTheBleedPoint: 'Open the bleed point',
  withTheWheelsUpWhat: 'With the wheels up: what changes when pressure can go.',
  seeAndFlexTheParking: 'See and flex the parking lever',
  isItOnItsStop: 'Is it on its stop; does it come back at once.',
  rollerTest20Bar: 'Roller test, 20 bar',
  eachWheelOnThePedal: 'Each wheel on the pedal, then parked at 300 N, both ways.',
  drumOffAnd1A: 'Drum off, and 1 a tooth',
  backOffAsFarAs: 'Back off as far as it needs, take the drum off, rock the shoes.',
  measureDrumAndLinings: 'Measure drum and linings',
  twoPointGaugeAtSeveral: 'Two-point gauge at several angles, linings at their thinnest.',
  dialGaugeOnTheDrum: 'Dial gauge on the drum',
  swingOfTheBoreAs: 'Swing of the bore as it turns on its hub.',
  countTheTooth: 'Count the tooth',
  atWhichToothDoesThe: 'At which tooth does the strut stand; does the lever drop in.',
  lookBehindTheBoots: 'Look behind the boots',
  wetOrDryCylinderAnd: 'Wet or dry, cylinder and hub.',
  boreMarkBehindThePlate: 'Bore mark behind the plate',
  readTheMarkOnThe: 'Read the mark on the cylinder.',
});

/** sim/workshop/fault-names.ts */
export const workshopFaultNames = section('workshopFaultNames', {
  faultNames: {
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
  },
});

/** sim/workshop/faults-adjuster.ts */
export const workshopFaultsAdjuster = section('workshopFaultsAdjuster', {
  seizedShortShort: 'the strut stays at tooth 0',
  seizedShortChange: 'adjuster seized, tooth 0 on linings worn as they are',
  seizedShortMechanism:
    'Linings and drum wear, the strut does not follow: the whole wear stands as gap. The pedal closes it anew at each press. Once the lining touches, it brakes as before.',
  seizedShortTells:
    'A long pedal that is firm, nearly all of it already there at 10 bar, with many notches.',
  seizedShortRemedy:
    'Free or renew lever and strut, reset, and see to the other wheel too. Do not take it up at the cable.',
  wornTeethShort: 'the strut slips back under a parking pull',
  wornTeethChange: 'teeth hold 1 000 N, two teeth lost on the parking brake',
  wornTeethMechanism:
    'Parked, the strut carries far more than at rest. Rounded teeth slip back under it; the springs alone they hold. The next firm press clicks them out again.',
  wornTeethTells: 'The first press after parking is long and clicks, the next is good.',
  wornTeethRemedy: 'Renew lever and strut as a pair.',
  brokenLeverSpringShort: 'the lever never drops in',
  brokenLeverSpringChange: 'lever spring at 0, tooth 0 on linings worn as they are',
  brokenLeverSpringMechanism:
    'The lever is lifted over the tooth but nothing pulls it in: no click, and the gap grows with the wear.',
  brokenLeverSpringTells: 'As a seized adjuster, but with the drum off the lever swings free.',
  brokenLeverSpringRemedy: 'Renew the spring, reset the adjuster.',
  steppedHotShort: 'teeth taken on a grown drum',
  steppedHotChange: (descent: number) =>
    `one firm press with the drum ${descent} K hotter, then cold again`,
  steppedHotMechanism:
    'A hot drum is wider. The lever feels travel and cannot know the reason: it takes teeth that the cold drum has no room for.',
  steppedHotTells:
    'Free while hot, tight when cold, both wheels; the lever is home and the bleed point changes nothing.',
  steppedHotRemedy:
    'Back the adjuster off, see that the hot lock works if it has one, ask about descents.',
  shoesSwappedShort: 'each lining runs where the other was worn in',
  shoesSwappedChange: 'worn profiles of the two linings exchanged',
  shoesSwappedMechanism:
    'The thick lining now leads and the thin one trails. Fit and shares are wrong until both are bedded anew, and the thin lining sits where little is worn.',
  shoesSwappedTells:
    'Torque a little off at first; measured linings are thinnest on the trailing shoe.',
  shoesSwappedRemedy: 'Put each shoe back where it ran, or fit a new set on both sides.',
  wrongSideShort: 'a passed tooth winds the strut back',
  wrongSideChange: 'a step goes the wrong way; back at tooth 0',
  wrongSideMechanism:
    'Fitted on the other side, the adjuster works backwards or idles. The gap grows faster than by wear.',
  wrongSideTells: 'As a seized adjuster; with the drum off the hand of its parts shows it.',
  wrongSideRemedy: 'Swap them, reset, press until silent.',
  strutMisSeatedShort: 'the shoes stand held out',
  strutMisSeatedChange: 'strut 1.5 mm longer between its seats',
  strutMisSeatedMechanism:
    'A strut end that rides on the edge of its notch spaces the shoes by so much more.',
  strutMisSeatedTells: 'Gap gone at once after the work, at any tooth; the drum hardly goes on.',
  strutMisSeatedRemedy: 'Reseat the strut; both ends in their notches before the drum goes on.',
  deadAdjusterToTheEndShort: 'linings gone, drum worn, strut at 0',
  deadAdjusterToTheEndChange: 'linings worn to the table, drum 1 mm on radius past new, tooth 0',
  deadAdjusterToTheEndMechanism:
    'Each piston travels about twice the gap at the lining’s middle. With nothing taken up and everything worn, its cup leaves the bore. Too loose does that, never too tight.',
  deadAdjusterToTheEndTells: 'Travel left to run-out, read before it is gone.',
  deadAdjusterToTheEndRemedy: 'All of it: cylinder, shoes, adjuster, drum, on both sides.',
});

/** sim/workshop/faults-cable.ts */
export const workshopFaultsCable = section('workshopFaultsCable', {
  shortCableShort: 'the lever never gets home',
  shortCableChange: 'lever held 6 mm off its stop',
  shortCableMechanism:
    'The lever stands in line with the strut, so the cable and not the stop sets the rest position. The slot play is used up and the adjuster does not step any more.',
  shortCableTells: 'Few notches, and the lever is off its stop.',
  shortCableRemedy: 'Slacken the cable, set the shoes, the cable last.',
  keptPullShort: 'seized in its sheath: the lever never gets home',
  keptPullChange: '40 N stay in one cable after release',
  keptPullMechanism:
    'A cable that sticks in its sheath goes on pulling after release. Strut and pivot press both shoes, so it drags the same both ways.',
  keptPullTells: 'One wheel; the lever stands off its stop, and the bleed point changes nothing.',
  keptPullRemedy: 'Renew the cable.',
  stretchedCableShort: 'the lever’s stroke is lost before the hook',
  stretchedCableChange: 'cable slack 10 mm more',
  stretchedCableMechanism:
    'The hand lever takes up the slack before anything moves in the drum. The shoes are as they were.',
  stretchedCableTells:
    'Many notches with a good pedal: the pedal judges the gap, the lever gap and cable.',
  stretchedCableRemedy: 'Set or renew the cable once the shoes are right. Never set shoes with it.',
  stiffPivotShort: 'half the pull never gets to the shoes',
  stiffPivotChange: 'half the cable’s pull lost in the lever’s pivot',
  stiffPivotMechanism:
    'A rusted pivot takes part of the cable’s pull, on the way out and on the way back.',
  stiffPivotTells: 'Weak parked, both ways alike, with a good pedal; the lever moves slowly.',
  stiffPivotRemedy: 'Free or renew the lever, check the other side.',
});

/** sim/workshop/faults-drum.ts */
export const workshopFaultsDrum = section('workshopFaultsDrum', {
  ovalDrumShort: 'rubs twice a turn',
  ovalDrumChange: 'radius ± 0.12 mm, adjuster a tooth further out',
  ovalDrumMechanism:
    'Set until it just runs free at one place, it rubs where the bore is narrower, and in a stop the pedal is pushed back twice a turn. By itself the adjuster does not go further here: a long lining meets an oval bore with its ends first, which shortens its stroke.',
  ovalDrumTells: 'The two-point gauge changes with the angle.',
  ovalDrumRemedy: 'Renew, or machine within its marked limit; in pairs.',
  drumOffCentreShort: 'rubs once a turn',
  drumOffCentreChange: 'axis of the bore 0.20 mm beside the axle’s',
  drumOffCentreMechanism:
    'Dirt or rust at the flange moves the whole bore aside. It is round, but turns about another point. So on the rollers it brakes harder, not less: the pistons push no harder, but each lining bears with one end alone, now the toe, now the heel, and there it is wedged into the drum.',
  drumOffCentreTells: 'The two-point gauge stays the same all round, the dial swings.',
  drumOffCentreRemedy: 'Clean both faces and refit. No hammer on the rim.',
  lipShort: 'the unworn edge holds the drum',
  lipChange: 'swept face and linings worn 0.15 mm deeper, the edge as new',
  lipMechanism:
    'The swept face wears, the edge does not. Linings that rest outside the edge’s radius cannot pass it.',
  lipTells: 'It turns freely, slides a little, then stops; with teeth backed off it comes.',
  lipRemedy: 'Back off by teeth, then judge drum and lining. Do not lever on the plate.',
  hubRustShort: 'the drum is bonded to its spigot',
  hubRustChange: 'bond at the hub set',
  hubRustMechanism:
    'Drum and hub have rusted together where they fit. It acts along the axle, nothing in the brake changes.',
  hubRustTells: 'It turns freely and does not slide at all.',
  hubRustRemedy: 'Penetrant, and the threaded holes if it has them.',
  grooveShort: 'the shoe’s edge catches, then snaps',
  grooveChange: 'an edge breaks out of its groove at 150 N',
  grooveMechanism:
    'The shoe sits in a groove and comes out late, with a jerk. How deep, and how it tilts, lies along the axle and is not shown.',
  grooveTells: 'Nothing at first, then all at once; marks on the pads.',
  grooveRemedy: 'Repair or renew the plate.',
  bearingShort: 'free on stands, hot on the road',
  bearingChange: 'the loaded drum rises 0.30 mm against the plate',
  bearingMechanism:
    'Under load the drum goes up against shoes that stay with the plate: the heel ends lose most of their gap.',
  bearingTells: 'No rub on stands; the wheel rocks; bore and dial are good.',
  bearingRemedy: 'The bearing, as the maker says.',
  rustedOnShort: 'stuck until it breaks once',
  rustedOnChange: 'rust bond between lining and bore set',
  rustedOnMechanism:
    'Parked wet, iron rust grips the lining. It shears once and is gone. Its strength is an order, from memory.',
  rustedOnTells: 'It does not turn at all, then frees with one jerk.',
  rustedOnRemedy: 'Rock it free, dry it by light braking, do not park wet on the lever.',
});

/** sim/workshop/faults-friction.ts */
export const workshopFaultsFriction = section('workshopFaultsFriction', {
  common: 'Factor on friction: common practice, without a published table.',
  fluidOnLiningsShort: 'half the friction, both shoes',
  fluidOnLiningsChange: 'friction × 0.5 on both linings',
  fluidOnLiningsMechanism: (common: string) =>
    `A film halves the friction; the torque falls by more, since the drum’s own help goes with it. ${common}`,
  fluidOnLiningsTells: 'Weak both ways alike, and a wet boot.',
  fluidOnLiningsRemedy: 'Cylinder, and shoes on both sides.',
  oilOnOneLiningShort: 'the rear shoe has lost its grip',
  oilOnOneLiningChange: 'friction × 0.5 on the rear lining of one wheel',
  oilOnOneLiningMechanism: (common: string) =>
    `Oil past the hub seal wets one lining. That shoe is missed where it would lead. ${common}`,
  oilOnOneLiningTells:
    'Parked it holds one way and lets go the other; weak backwards means the rear shoe.',
  oilOnOneLiningRemedy: 'Find the leak, shoes on both sides.',
  glazedShort: 'polished, a quarter of the friction lost',
  glazedChange: 'friction × 0.75 on all linings',
  glazedMechanism: (common: string) =>
    `Many gentle stops polish the face. Gap and travel stay as they were, force does not. ${common}`,
  glazedTells: 'Pedal hard and short as ever, torque low on both wheels and both ways.',
  glazedRemedy: 'Find why, bed them again or renew.',
  dampShort: 'more friction for a few stops',
  dampChange: 'friction × 1.45 on all linings',
  dampMechanism: (common: string) =>
    `A bloom of rust lifts friction, and the leading shoe’s help makes more than double of it. It is gone after a few stops. ${common}`,
  dampTells: 'Only cold and damp, only the first stops; all clearances normal.',
  dampRemedy: 'Dry it by light braking. If it locks, see to lining grade and springs.',
  waterInsideShort: 'a film for some stops',
  waterInsideChange: 'friction × 0.4 on all linings',
  waterInsideMechanism: (common: string) =>
    `The drum holds water, and a film carries the lining. ${common}`,
  waterInsideTells: 'Right after deep water or rain, gone when dried by light braking.',
  waterInsideRemedy: 'Dry it with the brake lightly on.',
  hotFadeShort: 'less friction in a wider drum',
  hotFadeChange: 'drum 287 K hotter',
  hotFadeMechanism:
    'Friction falls with heat, and the drum has grown: the lining bears on its crown. So the pedal is harder and longer at once.',
  hotFadeTells: 'Temperature; all of it comes back on cooling.',
  hotFadeRemedy: 'Let it cool. Use the engine on the next descent.',
  oversizeBoreShort: 'bears in the middle until bedded',
  oversizeBoreChange: 'new shoes in a drum 0.30 mm larger on radius, pressed until silent',
  oversizeBoreMechanism:
    'Linings ground for a new drum are too sharply curved for a larger one: only their middle bears.',
  oversizeBoreTells: 'New linings, contact in the middle only; blue the lining and it shows.',
  oversizeBoreRemedy: 'Bed them in, or shoes and drum that fit each other.',
  liningEndsShort: 'bears at toe and heel only',
  liningEndsChange: 'linings ground 0.20 mm larger on radius than a new drum',
  liningEndsMechanism: 'The ends touch first. Pressure at the toe counts most, so it grabs.',
  liningEndsTells: 'Hard to fit, and contact at the ends only.',
  liningEndsRemedy: 'The right shoes.',
});

/** sim/workshop/faults-pistons.ts */
export const workshopFaultsPistons = section('workshopFaultsPistons', {
  weakSpringsShort: 'the shoes come off the strut too early',
  weakSpringsChange: 'half the rate and force of all return springs',
  weakSpringsMechanism:
    'Springs clamp the shoes on the strut. Weaker ones leave the rest gap as it is, but the shoes part at half the pressure, and less is left to bring pistons and lever home.',
  weakSpringsTells: 'First touch at half the pressure, the gap unchanged.',
  weakSpringsRemedy: 'A new set of springs on both sides.',
  strongSpringsShort: 'wrong springs, or fitted in the wrong holes',
  strongSpringsChange: 'rate and force of all return springs half as much again',
  strongSpringsMechanism:
    'Each piston must carry the spring before its lining presses. More spring leaves less for the drum.',
  strongSpringsTells: 'The wheel brakes later and less at light pedal, with all else in order.',
  strongSpringsRemedy: 'Refit by the picture or the other side.',
  stuckPistonShort: 'the front shoe is not pushed',
  stuckPistonChange: 'front piston does not move',
  stuckPistonMechanism:
    'Only the rear shoe is pushed: forwards it trails and does little, backwards it leads.',
  stuckPistonTells: 'Weak forwards, much less weak backwards; one shoe will not rock.',
  stuckPistonRemedy: 'Renew the cylinder, look at the other side.',
  sluggishPistonsShort: 'dry cups hold back both ways',
  sluggishPistonsChange: 'each cup rubs with 100 N more',
  sluggishPistonsMechanism:
    'Cup friction takes its part of the push, and holds the piston out against the springs after release.',
  sluggishPistonsTells: 'Less torque at the same pressure; after release the drag goes slowly.',
  sluggishPistonsRemedy: 'Renew the cylinder.',
  leaningPartShort: 'a stuck part pushes the front toe',
  leaningPartChange: '100 N on the front toe',
  leaningPartMechanism:
    'The springs hang between the shoes, so the pair goes over and one lining bears on the drum. It leads one way and trails the other.',
  leaningPartTells: 'Three times as stiff by hand one way as the other.',
  leaningPartRemedy: 'Find the part: piston, lever, edge on its pad.',
  hoseShort: 'the line stays under pressure',
  hoseChange: '8 bar stay in one line after release, for minutes',
  hoseMechanism:
    'A swollen hose lets pressure in and hardly out. Above the springs’ threshold the drum’s own help makes drag rise fast.',
  hoseTells: 'One wheel; the lever is home, and it is free the moment the bleed point opens.',
  hoseRemedy: 'Renew hoses in pairs.',
  portShutShort: 'the port stays covered, all wheels hold pressure',
  portShutChange: 'no free play; 8 bar stay in the line once the fluid is warm (6 cold)',
  portShutMechanism:
    'The master piston covers its return port. Fluid that warms has nowhere to go, and the pressure rises as one drives.',
  portShutTells: 'All wheels alike; no free play at the pedal; any bleed point frees them all.',
  portShutRemedy: 'Set the free play. Road test last.',
  otherBoreShort: 'the same pressure pushes harder',
  otherBoreChange: 'bore 20.64 mm on one wheel',
  otherBoreMechanism:
    'Force is pressure times area. The springs take the same from both, so the difference is largest at light pedal.',
  otherBoreTells: 'One wheel too strong, both ways alike, and dry; parked it is as the other.',
  otherBoreRemedy: 'Match by the bore mark, by the maker’s list.',
  airShort: 'the pedal squeezes gas first',
  airChange: 'rest of the circuit gives 600 mm³ for each MPa',
  airMechanism:
    'Gas shrinks as the pressure rises, so travel grows with the pressure instead of coming before it.',
  airTells: 'A springy pedal: short at 10 bar, long at 40, with normal notches and gaps.',
  airRemedy: 'Bleed, and find why.',
});

/** sim/workshop/faults.ts */
export const workshopFaults = section('workshopFaults', {
  stepTooCoarse: {
    name: 'Step too coarse for the gap',
    because:
      'the tooth belongs to the brake: choose one with finer teeth; on a drum that is not true it is shown as Drum oval',
  },
  bellMouthedOrTapered: {
    name: 'Bell-mouthed or tapered drum',
    because: 'the bore changes along the axle, and this view looks along it',
  },
  holdDownLost: {
    name: 'Hold-down lost',
    because: 'the shoe tilts out of this plane: the layer Edge-on shows it',
  },
  liningLooseOn: {
    name: 'Lining loose on its table',
    because: 'a loose lining wedges anywhere; here linings are fast to their shoes',
  },
  pinOrAbutment: {
    name: 'Pin or abutment worn',
    because: 'pins have no play here; the single clunk after a change of direction is its sign',
  },
});

/** sim/workshop/finding-text.ts */
export const workshopFindings = section('workshopFindings', {
  wheels: {
    left: 'left',
    right: 'right',
  },
  names: {
    trouble: 'trouble',
    pedal: 'pedal',
    'in a stop': 'in a stop',
    'at 10 bar': 'at 10 bar',
    'at 40 bar': 'at 40 bar',
    'next press': 'next press',
    clicks: 'clicks',
    'pumped quickly up by': 'pumped quickly up by',
    notches: 'notches',
    'hotter by': 'hotter by',
    'front wheels': 'front wheels',
    turns: 'turns',
    forward: 'forward',
    backward: 'backward',
    rubs: 'rubs',
    drum: 'drum',
    'wheel rocks': 'wheel rocks',
    wheel: 'wheel',
    drags: 'drags',
    'drags from': 'drags from',
    'comes on': 'comes on',
    'goes back in': 'goes back in',
    'goes back': 'goes back',
    'off its stop': 'off its stop',
    lever: 'lever',
    flexed: 'flexed',
    'pedal forward': 'pedal forward',
    'pedal backward': 'pedal backward',
    'parked forward': 'parked forward',
    'parked backward': 'parked backward',
    'held by': 'held by',
    'overlap at the lip': 'overlap at the lip',
    'teeth back': 'teeth back',
    pads: 'pads',
    shoes: 'shoes',
    'least bore': 'least bore',
    greatest: 'greatest',
    'front lining': 'front lining',
    'rear lining': 'rear lining',
    swing: 'swing',
    tooth: 'tooth',
  },
  says: {
    'hand does not turn it': 'hand does not turn it',
    'stands still': 'stands still',
    'at the left rear only': 'at the left rear only',
    'at the right rear only': 'at the right rear only',
    'not at one wheel alone': 'not at one wheel alone',
    'as it should be': 'as it should be',
    'far and springy': 'far and springy',
    'far and firm': 'far and firm',
    throbs: 'throbs',
    steady: 'steady',
    heard: 'heard',
    none: 'none',
    'too hot to touch': 'too hot to touch',
    cool: 'cool',
    'warm too': 'warm too',
    'as ever': 'as ever',
    'slides off': 'slides off',
    'slides, then stops': 'slides, then stops',
    'does not slide': 'does not slide',
    'not at all, then frees with one jerk': 'not at all, then frees with one jerk',
    freely: 'freely',
    'once a turn': 'once a turn',
    'twice a turn': 'twice a turn',
    'here and there': 'here and there',
    'does not rock': 'does not rock',
    dull: 'dull',
    rings: 'rings',
    already: 'already',
    'not up to 40 bar': 'not up to 40 bar',
    'late, all at once': 'late, all at once',
    smoothly: 'smoothly',
    'not by itself': 'not by itself',
    'nothing changes': 'nothing changes',
    'frees at once': 'frees at once',
    eases: 'eases',
    home: 'home',
    'comes slowly': 'comes slowly',
    'comes and goes': 'comes and goes',
    nothing: 'nothing',
    lip: 'lip',
    'lever off its stop': 'lever off its stop',
    'shoes not centred': 'shoes not centred',
    'adjuster too far out': 'adjuster too far out',
    'pressure in the line': 'pressure in the line',
    'cable keeps its pull': 'cable keeps its pull',
    'part leans on a shoe': 'part leans on a shoe',
    'rust at the hub': 'rust at the hub',
    'linings rusted on': 'linings rusted on',
    'all are not enough': 'all are not enough',
    grooved: 'grooved',
    smooth: 'smooth',
    'one will not rock': 'one will not rock',
    'rock alike': 'rock alike',
    stiff: 'stiff',
    'swings free': 'swings free',
    'of the other side': 'of the other side',
    'drops in': 'drops in',
    dry: 'dry',
    'boot wet': 'boot wet',
    'oil from the hub': 'oil from the hub',
  },
});

/** sim/workshop/forecast-text.ts */
export const workshopForecastText = section('workshopForecastText', {
  one: { mm: 'mm', teeth: 'tooth', steps: 'step' },
  many: { mm: 'mm', teeth: 'teeth', steps: 'steps' },
  limitOfMm: (limit: number) => `limit of ${limit} mm`,
  largestDiameterOfMm: (limit: number) => `largest diameter of ${limit} mm`,
  lastOf: (limit: number) => `last of ${limit}`,
  leftToThe: (margin: string, to: string) => `${margin} left to the ${to}`,
  noneLeftToThe: (to: string) => `none left to the ${to}`,
  theRateMayBeHalf: '; the rate may be half or twice that',
  lostInKmIsIn: (
    lost: string,
    distance: string,
    each: string,
    unit: 'mm' | 'steps' | 'teeth',
    left: string,
    theRate: string,
  ) => `${lost} lost in ${distance} km is ${each} ${unit} in 1000 km; ${left}${theRate}.`,
});

/** sim/workshop/inspection.ts */
export const workshopInspection = section('workshopInspection', {
  noScore: 'none',
  facesSound: 'sound',
  springsSound: 'sound',
  dry: 'dry',
  leaks: 'leaks',
  theLimit: (more: string, past: 'over' | 'under') => `${more} ${past} the limit`,
  left: (less: string) => `${less} left`,
  refitOnlyWithADate: 'Refit only with a date to measure again.',
  renewDrum: 'Renew the drum, and the other wheel’s to match.',
  noLimitSet: 'no limit set',
  typeInTheMarkCast: 'Type in the mark cast on the drum.',
  noLimitSet2: (more: string) => `${more}, no limit set`,
  overTheLimit: (more: string, more2: string) => `${more}: ${more2} over the limit`,
  seenLikely: (more: string, more2: string) => `${more} seen, ${more2} likely`,
  threeAnglesCanMissThe:
    'Three angles can miss the widest one: turn the gauge to find greatest and least.',
  inLimit: (more: string) => `${more}: in limit`,
  fromEdgeToDeepNo: (more: string) => `${more} from edge to deep, no limit set`,
  alikeAtBothDepths: 'alike at both depths',
  backOffBeforePulling: 'back off before pulling',
  backTheAdjusterOffBefore: 'Back the adjuster off before the drum goes on or comes off.',
  tooLowToCatch: 'too low to catch',
  cutOrRenewBothDrums: 'Cut or renew both drums.',
  deepCutBelow: (more: string) => `${more} deep: cut, below`,
  lightlyScoredItMayStay:
    'Lightly scored, it may stay with the linings that ran in it; under new ones cut or renew.',
  thinnestPointNotMeasured: 'thinnest point not measured',
  lookAlongTheWholeArc: 'Look along the whole arc for it.',
  typeInTheMakersLeast: 'Type in the maker’s least lining.',
  renewTheLiningsOnBoth: 'Renew the linings on both wheels.',
  notSound: 'not sound',
  renewWhatIsCrackedLoose: 'Renew what is cracked, loose, deeply scored or touched by fluid.',
  renewTheCylinderAndAny:
    'Renew the cylinder, and any lining that fluid has touched, on both wheels.',
  stretchedOrBroken: 'stretched or broken',
  renewTheSpringsOnBoth: 'Renew the springs on both wheels.',
  movesFreely: 'moves freely',
  stuckOrWorn: 'stuck or worn',
  freeOrRenewLeverAnd: 'Free or renew lever and strut as a pair, then reset.',
  numberOfAllNotSet: (tooth: number) => `${tooth}; number of all not set`,
  wordsWord: (tooth: number, teeth: number) => `${tooth} of ${teeth}`,
  noneLeft: (a: string) => `${a}: none left`,
  fromHereTheClearanceGrows: 'From here the clearance grows.',
  offItsStop: (more: string) => `${more} off its stop`,
  slackenTheCableUntilThe:
    'Slacken the cable until the lever is home; set the shoes, the cable last.',
  onItsStop: 'on its stop',
  noLimitSet3: (now: number, change: string) => `${now}${change}, no limit set`,
  overTheLimit2: (now: number, change: string) => `${now}${change}: over the limit`,
  shoesFirstLeverHomeCable: 'Shoes first, lever home, cable last.',
  inLimit2: (now: number, change: string) => `${now}${change}: in limit`,
});

/** sim/workshop/letters-text.ts */
export const workshopLettersText = section('workshopLettersText', {
  youTypedItsFirstLetter: (own: string, letters: string | undefined, own2: string | undefined) =>
    ` You typed ${own}: its first letter is taken. How far friction falls in the heat is the table’s, which leads to ${letters} where yours has ${own2}; so what is told hot is not your lining’s.`,
  itsLiningsGripAsWould: (letters: string, cold: string, hot: string, other: string) =>
    `Its linings grip as ${letters} would: ${cold} cold, ${hot} hot.${other} The two letters are printed on a lining’s edge, each for a band a tenth wide: yours may differ by a quarter and bear the same.`,
});

/** sim/workshop/life-text.ts */
export const workshopLifeText = section('workshopLifeText', {
  at: (grouped: string) => `at ${grouped} km`,
  woundBackToTooth: (tooth: number, at: string) => `Wound back to tooth ${tooth} ${at}`,
  clickTooth: (tooth: number, at: string) => `Click: tooth ${tooth} ${at}`,
  noneItDrags: 'none, it drags',
  steppedOnADrumOf: (temperature: number, at: string, noneIt: string) =>
    `Stepped on a drum of ${temperature} °C ${at}: a cold press would not have; clearance cold ${noneIt}`,
  aWornToothLetGo: (at: string, tooth: number) =>
    `A worn tooth let go under the parking pull ${at}: back to tooth ${tooth}`,
  lastToothUsedFromHere: (stop: number, at: string) =>
    `Last tooth, ${stop}, used ${at}: from here the clearance grows`,
  liningAtItsLimitOf: (cap: string, thicknessMin: number, at: string) =>
    `${cap} lining at its limit of ${thicknessMin} mm ${at}`,
  liningWornToItsRivets: (cap: string, at: string) =>
    `${cap} lining worn to its rivets ${at}: rivet heads rub on the drum`,
  liningWornThroughTheTable: (cap: string, at: string) =>
    `${cap} lining worn through ${at}: the table rubs on the drum`,
  drumPastItsLargestDiameter: (radiusMax: number, at: string) =>
    `Drum past its largest diameter of ${radiusMax} mm ${at}`,
  pistonOutOfItsBore: (cap: string, at: string, stroke: number) =>
    `${cap} piston out of its bore ${at}: it travels more than ${stroke} mm`,
  noBalanceFoundTheDrum: (at: string) =>
    `No balance found ${at}: the drum carries a shoe off its anchor; not driven on`,
  dragsAtRestWithA: (at: string, value: string, torque: number) =>
    `Drags at rest with a cold drum ${at}: a lining stands ${value} mm inside it, and ${torque} N·m turn it`,
  freeAgainAtRestWith: (at: string) => `Free again at rest with a cold drum ${at}`,
  seizedTheWheelWouldSlide: (at: string, value: number) =>
    `Seized ${at}: the wheel would slide before it turns, ${value} N·m a brake; not driven on`,
  clampedMoreThanTheStrut: (at: string, value: string) =>
    `Clamped more than the strut can bear ${at}, ${value} kN: a part gives way; not driven on`,
  parkingLeverHeldMmOff: (value: string, at: string) =>
    `Parking lever held ${value} mm off its stop ${at}: the cable sets the shoes, and the next click is late`,
  theShoeWouldLockBy: (side: 'front' | 'rear', at: string) =>
    `The ${side} shoe would lock by itself ${at}: not driven on`,
});

/** sim/workshop/limits.ts */
export const workshopLimits = section('workshopLimits', {
  thisTeachingBrake: (title: string) => `This teaching brake: ${title}`,
  thisTeachingBrake2: 'this teaching brake',
  inventedForThisBrakeThey: 'Invented for this brake. They are not your vehicle’s.',
  myBrake: (title: string) => `My brake: ${title}`,
  myBrakeAsTyped: 'my brake, as typed',
  asYouTypedThemIn: 'As you typed them in My brake. What was not typed there has no limit.',
  makerName: 'My own brake, typed here',
  makerWhose: 'my own, as typed',
  makerAbout:
    'From the mark on the drum and the vehicle’s service data. Nothing is set until typed.',
  regulationName: 'US road rule, trucks and trailers',
  regulationWhose: 'US 49 CFR 393.47(d)',
  regulationAbout:
    '49 CFR 393.47(d): hydraulic drum brakes at least 1.6 mm (1/16 in) at the shoe’s centre; here it is asked of the thinnest point. 570.59(b): the drum within the mark cast on it; type that in.',
  testName: 'British test text of 2012',
  testWhose: 'British test, 2012',
  testAbout:
    'Fails a lining under 1.5 mm at any point, as read in a text of 2012; newer ones may differ. Type in the mark on the drum.',
});

/** sim/workshop/measured-notes.ts */
export const workshopMeasuredNotes = section('workshopMeasuredNotes', {
  noDrumDiameterLoadedAs: 'No drum diameter: loaded as new.',
  noThicknessOfTheLining: (side: 'front' | 'rear') =>
    `No thickness of the ${side} lining: loaded as new.`,
  notAllOfTheLining: (side: 'front' | 'rear', thinnest: number) =>
    `Not all of the ${side} lining measured: even from ${thinnest} mm on.`,
  toothNotCountedWherePresses: (tooth: number) =>
    `Tooth not counted: ${tooth}, where presses fall silent.`,
});

/** sim/workshop/new-parts.ts */
export const workshopNewParts = section('workshopNewParts', {
  theDrumDoesNotGo: 'The drum does not go on over them at the shortest strut: wrong part.',
  bearsAllAlong: 'Bears all along',
  bearsAtTheFirstOff: (where: 'crown' | 'ends' | 'heel' | 'toe', gap: string) =>
    `Bears at the ${where} first, ${gap} off elsewhere`,
  locksDoNotFit: (bears: string) => `${bears}: locks. Do not fit.`,
  first: (torque: string, right: string) =>
    `${torque} N·m at the first press where the right ones give ${right}`,
  itGrabsDoNotFit: (bears: string, first: string) => `${bears}: ${first}. It grabs; do not fit.`,
  weakUntilBeddedInSome: (bears: string, first: string) =>
    `${bears}: ${first}. Weak until bedded in, some hundred km.`,
  noVerdictOfYourBrake: (what: string) =>
    `No verdict: ${what} of your brake is assumed. Type it in My brake.`,
  drumOrNewLining: 'drum or new lining',
  madeForTheOtherSide: 'Made for the other side: swap the pair, do not fit.',
  forThisSide: 'For this side.',
  forEitherSide: 'For either side.',
  liningsWidth: 'lining’s width',
  asWideAsTheOld: (right: string) => `As wide as the old, ${right}.`,
  widerThanLookWhetherIt: (by: string, right: string) =>
    `${by} wider than ${right}: look whether it clears the plate and stays in the swept track.`,
  narrowerThanPressedHarder: (by: string, right: string, right2: string) =>
    `${by} narrower than ${right}: pressed ${right2} % harder, so it wears faster by as much.`,
  cylindersBore: 'cylinder’s bore',
  theBoreOfTheOld: (right: string) => `The bore of the old one, ${right}.`,
  anotherCylinderForceOnBoth: (share: string, right: string) =>
    `Another cylinder: ${share} force on both shoes against ${right}. It pulls, or the axle brakes too much or too little.`,
  names: {
    lining: 'Linings',
    ground: 'Ground radii',
    width: 'Widths',
    bore: 'Cylinder bores',
  },
  unlikeLeftAndRightOne: (names: string, left: string, right: string) =>
    `${names} unlike, left ${left} and right ${right}: one of them is the wrong part.`,
  oneIsMadeForOne: 'One is made for one side and the other for either: not a pair.',
});

/** sim/workshop/own-brake.ts */
export const workshopOwnBrake = section('workshopOwnBrake', {
  ownBrakeMadeFrom: (title: string) => `Own brake, made from ${title}.`,
  nothingYet: 'nothing yet',
  measuredByItsOwnerAll: (ownKeys: string, title: string) =>
    `Measured by its owner: ${ownKeys}. All else assumed in the proportions of ${title}.`,
});

/** sim/workshop/own-says.ts */
export const workshopOwnSays = section('workshopOwnSays', {
  theDrumIsSmallerThan: (fresh: string) => `The drum is ${fresh} smaller than new.`,
  itCannotBeMeasureIn:
    'It cannot be. Measure in the swept track, not on the lip, and look at the new Ø again.',
  drumNoMarkTyped: (drumNow: string) => `Drum ${drumNow}, no mark typed.`,
  noVerdictTypeTheLargest: 'No verdict: type the largest Ø cast on it.',
  theDrumIsOverIts: (drumNow: string) => `The drum is ${drumNow} over its mark.`,
  foundCastOnItRenew: (drumNow: string, mark: string) =>
    `Found ${drumNow}, cast on it ${mark}: renew it, and the other wheel’s to match.`,
  drumLeftToTheMark: (floor: string) => `Drum: ${floor} left to the mark.`,
  foundCastOnIt: (drumNow: string, mark: string) => `Found ${drumNow}, cast on it ${mark}.`,
  theLiningIsThickerThan: (name: 'leading' | 'trailing', t: string) =>
    `The ${name} lining is ${t} thicker than new.`,
  asAssumed: ' as assumed',
  foundNewMeasureTheLining: (t: string, thicknessNew: string, asAssumed: string) =>
    `Found ${t}, new ${thicknessNew}${asAssumed}: measure the lining without the steel table, and type its new thickness.`,
  theLiningIsUnderIts: (name: 'leading' | 'trailing', liningMin: string) =>
    `The ${name} lining is ${liningMin} under its least.`,
  foundLeastAsYouTyped: (t: string, liningMin: string) =>
    `Found ${t}, least ${liningMin} as you typed it: renew the linings on both wheels.`,
  aDrumAsNew: 'a drum as new',
  aBoreOf: (drumNow: string) => `a bore of ${drumNow}`,
  worn: (leading: string, trailing: string, bore: string) =>
    `Linings of ${leading} and ${trailing} in ${bore}`,
  should: (as: number, clearance: string) => `tooth ${as} with ${clearance}`,
  toothIsWhereItShould: (as: number) => `Tooth ${as} is where it should stand.`,
  leaveThereCountTheTeeth: (worn: string, clearance: string) =>
    `${worn} leave ${clearance} there. Count the teeth and type them.`,
  here: (tooth: number, clearanceFound: string) => `Tooth ${tooth} leaves ${clearanceFound}.`,
  thereIsNoTooth: (tooth: number) => `There is no tooth ${tooth}.`,
  thisAdjusterHasCountAgain: (teeth: number) =>
    `This adjuster has ${teeth}: count again, or type how many it has.`,
  shouldStandAtItHas: (worn: string, should: string) =>
    `${worn} should stand at ${should}: it has stopped stepping, or lets its teeth slip.`,
  shouldStandAtSetOn: (worn: string, should: string) =>
    `${worn} should stand at ${should}: set on by hand, stepped on a hot drum, or these are not the linings it stepped for.`,
  shouldStandAtTheAdjuster: (worn: string, should: string) =>
    `${worn} should stand at ${should}: the adjuster steps.`,
  withTheLeverAsAssumed: ', with the lever as assumed',
  computed: (as: string, hand: number, withThe: string) =>
    `${as} computed at ${hand} N in the cable${withThe}`,
  notchesFitThatGap: (notches: number) => `${notches} notches fit that gap.`,
  theCableIsNotThe: (computed: string) => `${computed}. The cable is not the cause.`,
  notchesAreMoreThanThat: (notches: number) => `${notches} notches are more than that gap needs.`,
  thePedalIsLongToo: (computed: string) =>
    `${computed}. The pedal is long too: the gap is larger than measured.`,
  thePedalFits: 'The pedal fits',
  whereThePedalIsGood: 'Where the pedal is good',
  cableStretchedOrSetWith: (computed: string, thePedal: string) =>
    `${computed}. ${thePedal}: cable stretched, or set with slack.`,
  notchesAreFewerThanThat: (notches: number) => `${notches} notches are fewer than that gap needs.`,
  lookWhetherTheParkingLever: (computed: string) =>
    `${computed}. Look whether the parking lever lies on its stop: a short cable holds it off.`,
  withMasterCylinderAndPedal: ', with master cylinder and pedal as assumed',
  computed2: (as: string, firm: number, withMaster: string) =>
    `${as} mm computed at ${firm} bar${withMaster}`,
  mmOfPedalFitThat: (pedal: string) => `${pedal} mm of pedal fit that gap.`,
  mmOfPedalAreMore: (pedal: string) => `${pedal} mm of pedal are more than that gap needs.`,
  theNotchesFitAirIn: (computed: string) =>
    `${computed}. The notches fit: air in the line, or another gap than at these shoes.`,
  countTheNotchesWithThem: (computed: string) =>
    `${computed}. Count the notches: with them too many it is the gap, with them right it is air.`,
  mmOfPedalAreLess: (pedal: string) => `${pedal} mm of pedal are less than that gap needs.`,
  liningsStandNearerThanMeasured: (computed: string) =>
    `${computed}. Linings stand nearer than measured, or it was a lighter press.`,
  head: (a: string, b: string) => `Worn ${a} and ${b}`,
  model: (ratio: string) => `This brake wears ${ratio} to 1`,
  theNewThicknessIsAssumed: ' The new thickness is assumed.',
  theTrailingLiningIsThe: (head: string) => `${head}: the trailing lining is the thinner.`,
  theLeadingOneMoreShoes: (model: string, fresh: string) =>
    `${model}, the leading one more. Shoes in each other’s place, or the leading one was not pushed: rock both by hand.${fresh}`,
  to1: (a: string) => `${a} to 1`,
  theTrailingOneHardly: 'the trailing one hardly',
  theTrailingShoeDoesLess: (model: string, fresh: string) =>
    `${model}. The trailing shoe does less than its share: look for a stuck piston or one that is held.${fresh}`,
  nearlyAlike: (head: string, found1: string) => `${head}: ${found1}, nearly alike.`,
  theTrailingShoeDoesMore: (model: string, fresh: string) =>
    `${model}. The trailing shoe does more than its share: much reversing, parking while rolling, or a shoe that drags.${fresh}`,
  theLeadingShoeDoesThe: (model: string, fresh: string) =>
    `The leading shoe does the more. ${model}; that is the mechanism, no fault.${fresh}`,
});

/** sim/workshop/parking-rules.ts */
export const workshopParkingRules = section('workshopParkingRules', {
  of20What: 'Cars, both ways round, five minutes (FMVSS 135; UN R13-H laden, from memory)',
  of30What: 'Cars by an older rule, both ways round, five minutes (FMVSS 105)',
  of18wWhat: 'Kit-car test of the United Kingdom: holding force over weight',
  of16wWhat: 'Often asked at a yearly test: holding force over weight',
  of12What: 'Tractor and trailer held together (EU rule)',
});

/** sim/workshop/reading-text.ts */
export const workshopReadingText = section('workshopReadingText', {
  plain: {
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
    pedalFloor:
      'How far the pedal can go at all; the stroke of the master cylinder is the scene’s.',
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
  },
  whatThePistonHasLeft: (where: 'front' | 'rear') =>
    `What the piston has left to push the ${where} shoe with once the return springs are paid.`,
  howFarThePistonHas: (where: 'front' | 'rear') =>
    `How far the ${where} piston has come out since rest.`,
  frictionOfTheLiningAt: (where: 'front' | 'rear') =>
    `Friction of the ${where} lining at the drum’s face.`,
  greatestPressureAnywhereOn: (where: 'front' | 'rear') =>
    `Greatest pressure anywhere on the ${where} lining.`,
  gapBetweenTheMiddleOf: (where: 'front' | 'rear') =>
    `Gap between the middle of the ${where} lining and the drum now.`,
  gapAtTheMiddleOf: (where: 'front' | 'rear') =>
    `Gap at the middle of the ${where} lining when the pedal is let go; below nothing: so far both stand inside the drum.`,
  thicknessOfTheLiningAt: (where: 'front' | 'rear') =>
    `Thickness of the ${where} lining at its thinnest point.`,
  partOfTheUsableLining: (where: 'front' | 'rear') =>
    `Part of the usable ${where} lining that is left.`,
  forceOfThePinOn: (where: 'front' | 'rear') => `Force of the pin on the ${where} shoe.`,
  whatThePullsWithNow: (name: string) => `What the ${name} pulls with now.`,
});

/** sim/workshop/see/signs.ts */
export const seeSigns = section('seeSigns', {
  hot: {
    name: 'Hot',
    ask: 'After a drive with little braking: which drums are hot?',
    how: 'Hold a hand near each, not on it.',
    values: {
      none: 'none',
      one: 'one rear',
      both: 'both rear',
      all: 'all four',
    },
  },
  heat: {
    name: 'How hot',
    ask: 'How hot?',
    how: 'By feel from near, or with a thermometer that needs no touch.',
    values: {
      cool: 'cool',
      warm: 'warm',
      'too hot': 'too hot to touch',
    },
  },
  travel: {
    name: 'Pedal goes',
    ask: 'How far does the pedal go at a firm press?',
    how: 'Against what you are used to.',
    values: {
      short: 'shorter',
      ever: 'as ever',
      long: 'longer',
      half: 'half way',
      floor: 'to the floor',
    },
  },
  feel: {
    name: 'Pedal feels',
    ask: 'How does the pedal feel?',
    how: 'Engine running, a firm press, held.',
    values: {
      firm: 'firm',
      springy: 'springy, soft',
      throbs: 'pulses, throbs',
      wooden: 'hard, and brakes badly',
      sinks: 'sinks slowly',
    },
  },
  pumped: {
    name: 'Pumped',
    ask: 'Two or three quick presses: does the pedal come up?',
    how: 'Standing still.',
    values: {
      up: 'comes up',
      same: 'no change',
    },
  },
  first: {
    name: 'First press',
    ask: 'The first press after a night: like the next?',
    how: 'Parked on the lever.',
    values: {
      like: 'like the next',
      long: 'long, then good',
    },
  },
  clicks: {
    name: 'Clicks',
    ask: 'Do you hear the adjuster click as you press?',
    how: 'Quiet place, window open.',
    values: {
      none: 'none',
      heard: 'yes',
    },
  },
  notches: {
    name: 'Notches',
    ask: 'How many notches does the hand lever take to a firm pull?',
    how: 'Count its clicks.',
  },
  turns: {
    name: 'By hand',
    ask: 'On stands: how does the worst wheel turn by hand?',
    how: 'Nothing pressed, lever down, out of gear.',
    values: {
      freely: 'freely',
      rubs: 'light rub',
      stiff: 'stiff',
      not: 'not at all',
      jerk: 'not, then one jerk',
    },
  },
  ways: {
    name: 'Both ways',
    ask: 'Forwards and backwards alike?',
    how: 'The same wheel.',
    values: {
      alike: 'alike',
      unlike: 'one way much stiffer',
    },
  },
  force: {
    name: 'Stiff',
    ask: 'What pull at the tyre keeps it turning?',
    how: 'A luggage scale on a strap round the tyre; 10 N is a kilogram.',
  },
  rubs: {
    name: 'Rubs',
    ask: 'Does it rub at places as it goes round?',
    how: 'One slow turn.',
    values: {
      no: 'no',
      once: 'once a turn',
      twice: 'twice a turn',
    },
  },
  slides: {
    name: 'Drum pulled',
    ask: 'Pull the drum straight: how far does it come?',
    how: 'Its screw or clip is out.',
    values: {
      off: 'off',
      some: 'a few mm',
      not: 'not a hair',
    },
  },
  rocks: {
    name: 'Wheel rocks',
    ask: 'Does the wheel rock at its top and bottom?',
    how: 'Hands at twelve and six.',
    values: {
      no: 'no',
      yes: 'yes',
    },
  },
  tap: {
    name: 'Tapped',
    ask: 'Tap the drum: does it ring?',
    how: 'Light hammer on its face.',
    values: {
      rings: 'rings',
      dull: 'dull',
    },
  },
  comes: {
    name: 'Comes on',
    ask: 'Pedal trodden slowly: how does the brake come on?',
    how: 'Wheel turned by hand meanwhile.',
    values: {
      smooth: 'smoothly',
      jump: 'late, all at once',
    },
  },
  touch: {
    name: 'Touch',
    ask: 'At what pressure does it begin to drag?',
    how: 'A gauge at the bleed point.',
  },
  release: {
    name: 'Lets go',
    ask: 'Pedal let go: when is the wheel free again?',
    how: 'Turned by hand.',
    values: {
      once: 'at once',
      seconds: 'in seconds',
      not: 'minutes, or not',
    },
  },
  bleed: {
    name: 'Bleed point',
    ask: 'Open the bleed point of the stiff wheel: what changes?',
    how: 'A hose on it into a jar; close it again.',
    values: {
      nothing: 'nothing',
      frees: 'frees at once',
    },
  },
  lever: {
    name: 'Lever in drum',
    ask: 'Hand lever down: is the parking lever on its stop?',
    how: 'Through the hole, or at the cable behind the plate.',
    values: {
      home: 'home',
      off: 'off its stop',
    },
  },
  flexed: {
    name: 'Cable flexed',
    ask: 'Pull the cable at the plate and let go: does the lever follow?',
    how: 'By hand.',
    values: {
      comes: 'comes and goes',
      slow: 'comes slowly',
    },
  },
  bite: {
    name: 'Brakes',
    ask: 'How does it brake, forwards?',
    how: 'By the foot, or by rollers: against what is usual.',
    values: {
      right: 'as ever',
      weak: 'weak',
      strong: 'grabs, too strong',
    },
  },
  pull: {
    name: 'Pulls',
    ask: 'Does it pull to one side, or are the rear wheels unlike on rollers?',
    how: 'More than a tenth counts.',
    values: {
      no: 'no',
      yes: 'yes',
    },
  },
  back: {
    name: 'Backwards',
    ask: 'On rollers, backwards against forwards?',
    how: 'The wheel that is odd.',
    values: {
      alike: 'alike',
      less: 'much less backwards',
      more: 'much more backwards',
    },
  },
  parked: {
    name: 'Parked',
    ask: 'How does the parking brake hold?',
    how: 'On a slope, or by rollers.',
    values: {
      right: 'holds',
      weak: 'weak',
      strong: 'stronger than before',
    },
  },
  oneway: {
    name: 'Holds',
    ask: 'Parked, facing up and facing down alike?',
    how: 'A slope that it just holds.',
    values: {
      alike: 'alike',
      one: 'one way only',
    },
  },
  unlike: {
    name: 'Unlike',
    ask: 'Rollers, by the pedal: how much does the weaker wheel lack?',
    how: 'In per cent of the stronger one.',
  },
  share: {
    name: 'Strength',
    ask: 'Rollers: how strong is the odd wheel against what it gave before?',
    how: 'In per cent; 100 is as it was.',
  },
  backshare: {
    name: 'Back against forward',
    ask: 'Rollers: the odd wheel backwards, against forwards?',
    how: 'In per cent; 100 is alike.',
  },
  swing: {
    name: 'Swing',
    ask: 'Rollers: how much does the force swing in a turn?',
    how: 'Often printed as ovality, in per cent.',
  },
  holder: {
    name: 'Teeth back',
    ask: 'Drum held: how many teeth back let it go?',
    how: '0 where it came by itself.',
  },
  shoes: {
    name: 'Shoes',
    ask: 'Rock both shoes by hand: do both move?',
    how: 'Drum off. Never by the pedal.',
    values: {
      both: 'both alike',
      one: 'one will not',
    },
  },
  pads: {
    name: 'Pads',
    ask: 'The raised pads on the plate?',
    how: 'Where the shoe’s edge slides.',
    values: {
      smooth: 'smooth',
      grooved: 'grooved',
    },
  },
  round: {
    name: 'Bore',
    ask: 'Two-point gauge round the drum?',
    how: 'At three angles.',
    values: {
      same: 'the same all round',
      differs: 'differs',
    },
  },
  swings: {
    name: 'Dial',
    ask: 'Dial gauge on the turning drum?',
    how: 'Drum on its clean hub.',
    values: {
      still: 'still',
      swings: 'swings',
    },
  },
  thin: {
    name: 'Thinner lining',
    ask: 'Which lining is the thinner one?',
    how: 'At their thinnest.',
    values: {
      lead: 'the front one',
      trail: 'the rear one',
      alike: 'alike',
      gone: 'both gone',
    },
  },
  drumsize: {
    name: 'Drum',
    ask: 'Drum Ø against the mark on it?',
    how: 'The largest that you read.',
    values: {
      within: 'well within',
      large: 'large, or past it',
    },
  },
  tooth: {
    name: 'Tooth',
    ask: 'At which tooth does the adjuster stand?',
    how: '0 is its shortest.',
  },
  pawl: {
    name: 'Its lever',
    ask: 'The adjuster’s lever, moved by a finger?',
    how: 'Drum off, strut unloaded.',
    values: {
      drops: 'drops in',
      stiff: 'stiff',
      free: 'swings free',
      other: 'of the other side',
    },
  },
  wet: {
    name: 'Wet',
    ask: 'Anything wet behind the drum?',
    how: 'Under the cylinder’s boots and at the hub.',
    values: {
      dry: 'dry',
      fluid: 'fluid at a boot',
      oil: 'oil from the hub',
    },
  },
  mark: {
    name: 'Cylinder',
    ask: 'Bore marks of both wheel cylinders?',
    how: 'Cast or stamped behind the plate.',
    values: {
      same: 'the same',
      other: 'unlike',
    },
  },
});

/** sim/workshop/see/told.ts */
export const seeTold = section('seeTold', {
  whenName: 'When',
  whenAsk: 'When does it happen?',
  justAfterBraking: 'just after braking',
  worseTheLongerIDrive: 'worse the longer I drive',
  onlyCold: 'only cold',
  afterParking: 'after parking',
  onlyLaden: 'only laden',
  afterALongDescent: 'after a long descent',
  dampFirstStops: 'damp, first stops',
  sinceName: 'Since',
  sinceAsk: 'Since when?',
  allAtOnce: 'all at once',
  monthsSlowlyWorse: 'months, slowly worse',
  sinceSomeWork: 'since some work',
  afterName: 'After work on',
  afterAsk: 'After which work?',
  wheelCylinder: 'wheel cylinder',
  hoseOrPipe: 'hose or pipe',
  cableLever: 'cable, lever',
  hubBearing: 'hub, bearing',
  masterBoosterPedal: 'master, booster, pedal',
  washingRain: 'washing, rain',
  stoodForMonths: 'stood for months',
  noiseName: 'Noise',
  noiseAsk: 'Which noise?',
  groanHonk: 'groan, honk',
  oneClunkChangeOfDirection: 'one clunk, change of direction',
  rubSwish: 'rub, swish',
  popAtTheFirstTouch: 'pop at the first touch',
  bangThenLocksOneWay: 'bang, then locks one way',
  smellName: 'Smell',
  smellAsk: 'A smell?',
  burntLining: 'burnt lining',
  fluidFishy: 'fluid, fishy',
  always: 'always',
  weeks: 'weeks',
  nothing: 'none',
  shoes: 'shoes',
  drum: 'drum',
  noNoise: 'none',
  squeal: 'squeal',
  grinding: 'grinding',
  rattle: 'rattle',
  noSmell: 'none',
  oil: 'oil',
  feelSinksText:
    'A pedal that sinks is a master seal or a leak: not on this bench. Do not drive it.',
  noiseSquealText:
    'Noise is not computed. Shiny linings, loose hold-downs, dry pads are looked at first.',
  noiseGrindText:
    'Grinding may be metal on metal, out of this plane. Do not drive it before the drum was off.',
  noiseClunkText:
    'One clunk at a change of direction is a worn pin or abutment: pins here have no play.',
  noiseRattleText: 'A rattle may be a hold-down lost: the shoe tilts out of this plane.',
  noiseBangText: 'A loose lining wedges one way: not on this bench. Do not drive it.',
  travelFloorText: 'A pedal on the floor: do not drive it, whatever the cause.',
  thinGoneText: 'No lining is left: do not drive it.',
  wetFluidText: 'A leak of fluid: do not drive it.',
  neverSeen:
    'Not to be seen on this bench: a bell-mouthed drum, a lost hold-down, a loose lining, a worn pin.',
});

/** sim/workshop/stop-text.ts */
export const workshopStopText = section('workshopStopText', {
  onlyThisAxlesBrakesAre: (share: string) =>
    `Only this axle’s brakes are known: they are told to do ${share} of the braking, and the other axle is taken to do the rest in proportion.`,
  theTorqueIsThatOf:
    'The torque is that of the drum as warm as it is now. The time that foot and fluid take, air and rolling resistance are not in it.',
  aValveHoldsThisAxles:
    'A valve holds this axle’s pressure back; the other axle gets all of the pedal’s.',
  oneOfTheTwoCircuits: 'One of the two circuits has failed: only the brakes of the other one stop.',
  noTyreIsLikelyTo: (grip: string, dryroad: number) =>
    `No tyre is likely to give that: it asks for a grip of ${grip}, and a dry road gives about ${dryroad}. The wheels slide before.`,
  noLiningTouchesTheDrum: 'No lining touches the drum up to this pressure.',
  thePedalStandsOnIts: 'The pedal stands on its floor before this pressure is there.',
  aPistonsCupLeavesIts: 'A piston’s cup leaves its bore before this pressure is there.',
  itIsSeizedTheWheel:
    'It is seized: the wheel would slide on the road rather than turn. Nothing is told of driving it.',
  noForceCanBeTold: 'No force can be told of this brake, so nothing is told of driving it.',
});

/** sim/workshop/working-text.ts */
export const workshopWorkingText = section('workshopWorkingText', {
  laws: {
    definition: 'By definition: a ratio that says what one thing is of another.',
    given: 'Not worked out: it is what was set, or counted while the brake was driven.',
    geometry: 'Plane geometry of where the parts stand.',
    statics: 'Parts of a force at right angles: Pythagoras.',
    moments:
      'Moments of a body at rest about one point add up to nothing (statics; any text on engineering mechanics).',
    coulomb:
      'Dry friction: drag is friction times what presses (Coulomb), summed over 48 elements of each lining.',
    winkler:
      'The lining as a bed of springs: pressure is its modulus over its thickness times how far it is pressed in (Winkler). Towards an end the line through the last two elements goes on.',
    hooke:
      'A spring pulls by its fitted force and its rate times its stretch (Hooke), and never pushes.',
    pascal: 'Fluid carries pressure alike everywhere, and volume goes where pistons go (Pascal).',
    lever: 'A lever gives force for travel: ratio of its arms.',
    booster:
      'A booster multiplies the foot until its help is spent (Limpert, Brake Design and Safety, chapter 5, from memory).',
    stack: 'Travels in one line add.',
    ratchet: 'The lever drops in once the seats have parted by lost motion and one whole tooth.',
    kinematics: 'Even deceleration from a speed to a stand.',
    newton: 'Force is mass times acceleration (Newton), all braking at the road.',
    energy: 'Energy of motion, or work of the drag over the way.',
    heat: 'Heat over heat capacity: nothing is carried away in so short a time.',
    flash:
      'Heat that enters a thick body at its face, falling evenly to nothing (Carslaw & Jaeger, Conduction of Heat in Solids, chapter 2).',
    power: 'Power is torque times turning speed.',
    slope: 'The part of the weight that pulls down the slope, shared by the braked wheels.',
    cable: 'Slack, stretch and the lever’s travel lie in one line of cable, so they add.',
    search:
      'Found by trying: the brake is worked out anew at each try. The two tries beside it give it again by the line between them.',
    turn: 'The brake worked out at 72 places of one turn; this is the one that counts.',
    settles: 'A drum settles where the air takes as much heat as the drag makes.',
  },
  from: {
    scene: 'the brake’s size',
    state: 'as it stands',
    asked: 'as it is pressed or asked',
    balance: 'by the balance of both shoes',
    reading: 'a reading',
    worked: 'worked out on the way',
    constant: 'a constant',
  },
  steps: {
    'sine sum':
      'Pressure goes as the sine of the angle from the pin; summed over the lining’s arc that is',
    'pressure arm': 'Arm of the pressure about the pin, per unit of that pressure',
    'friction arm': 'Arm of the friction about the pin',
    'closed pressure': 'Moments about the pin give the pressure at 90° from it',
    'closed normal moment': 'So the drum’s pressure pushes the shoe back with',
    'closed friction moment': 'and its friction turns the shoe with',
    'closed factor': 'Drag over push, the shoe factor by the closed form',
    'closed lock': 'The shoe would lock, whatever pushes it, at a friction of',
    'element drag': 'The same without a law of the pressure: friction of all elements as they bear',
    'element balance': 'Moments about the anchor leave for hold-down, strut and heel',
    'element factor': 'Shoe factor by the elements’ own moments',
    'read factor': 'Shoe factor as it is read, drag over what is left on the toe',
  },
  theShoesHeelSlidesOn:
    'The shoe’s heel slides on a flat: it does not turn about a point, so the closed form of a pinned shoe is none for it.',
  theShoeBendsPointsOf:
    'The shoe bends: points of its face do not go into the drum as the sine of their angle.',
  thePressureIsNotThe: (share: string) =>
    `The pressure is not the sine of the angle: it misses it by up to ${share} of its peak, as the face is ground, worn or bent.`,
  ofTheLiningDoNot: (share: string) => `${share} of the lining do not touch the drum.`,
  otherPartsPushOnThe: (share: string) =>
    `Other parts push on the shoe too: hold-down, strut or the heel’s own friction, ${share} of the push’s moment.`,
  alikeText:
    'Closed form and element sum agree: the shoe is stiff and on a pin, its face lies on the drum all along, and nothing else pushes on it. What is left comes from the elements’ number.',
});

/** sim/workshop/yield-text.ts */
export const workshopYieldText = section('workshopYieldText', {
  parts: {
    'lever arm': 'the arm of the adjuster lever bends',
    'lever nose': 'the nose of the adjuster lever bends',
    'lever teeth': 'the lever’s tooth shears off',
    strut: 'the strut is crushed',
  },
  moreThanTheStrutCan: (parts: string, force: number) =>
    `More than the strut can bear: ${parts} at about ${force} kN. No force beyond that can be told.`,
});

/** sim/study/both-wheels.ts */
export const studyBothWheels = section('studyBothWheels', {
  leftWheel: 'Torque of the left wheel',
  rightWheel: 'Torque of the right wheel',
  weakerLacks: 'The weaker wheel lacks',
});

/** sim/study/lesson-values-drum.ts */
export const studyLessonValuesDrum = section('studyLessonValuesDrum', {
  liningLimit: 'Limit of the lining',
  liningAboveLimit: 'Lining above its limit',
  frontAtToe: 'Front lining at its toe',
  frontAtThinnest: 'Front lining at its thinnest',
  frontAtHeel: 'Front lining at its heel',
  wornOffFront: 'Worn off the front lining',
  wornOffRear: 'Worn off the rear lining',
  drumLimit: 'Limit of the drum',
  drumUnderLimit: 'Drum under its limit',
  wornOffDrum: 'Worn off the drum’s radius',
  heightOfLip: 'Height of the lip',
  liningsOverLip: 'Linings over the lip',
  overLipAtToe: 'Over the lip at the toe',
  overLipInMiddle: 'Over the lip in the middle',
  overLipAtHeel: 'Over the lip at the heel',
  teethThatFree: 'Teeth back that free it',
  drumSlides: 'The drum slides',
  boreLessSize: 'Bore less size across the linings',
  sizeAcross: 'Size across the linings',
  overLipASide: 'Over the lip, a side',
  roomAtLip: 'Room at the lip, a side',
  longestStrut: 'Longest strut on which the drum goes on, tooth',
});

/** sim/study/lesson-values-life.ts */
export const studyLessonValuesLife = section('studyLessonValuesLife', {
  clearanceWhenNew: 'Clearance when new',
  clearanceOnStrut: 'Clearance, the shoes on their strut',
  driven: 'Driven',
  drivenFromNew: 'Driven from new',
  clicks: 'Clicks',
  lastClickAt: 'Last click at',
  clickToClick: 'From click to click',
  lastToothAt: 'Last tooth taken at',
  clearanceBeforeClick: 'Clearance before the click',
  leastClearance: 'Least clearance between clicks',
  greatestClearance: 'Greatest clearance between clicks',
  liningLasts: 'Lining lasts another',
  atTheLeast: 'at the least',
  atTheMost: 'at the most',
  clickLateBy: 'Next click late by, lever 3 mm off its stop',
});

/** sim/study/lesson-values-press.ts */
export const studyLessonValuesPress = section('studyLessonValuesPress', {
  bothTouchAt: 'Both linings touch at',
  firstTouchesAt: 'The first lining touches at',
  strutUnloadedAt: 'Strut unloaded at',
  lostMotion: 'Lost motion',
  teeth: 'Teeth',
  strutLength: 'Strut length',
  strutLongerBy: 'Strut longer by',
  dragOfLeading: 'Drag of the leading shoe',
  arcFront: 'Arc that bears, front',
  arcRear: 'Arc that bears, rear',
  handForward: 'Torque by hand, forward',
  handBackward: 'Torque by hand, backward',
  pullInCable: 'Pull in the cable',
  leverNotches: 'Notches of the hand lever',
  springsTip: 'Springs tip the shoe with',
  holdDownRights: 'Hold-down rights it with',
  leansWithout: 'It leans without a hold-down by',
});

/** sim/study/measured.ts */
export const studyMeasured = section('studyMeasured', {
  toPastMark: (low: string, high: string, past: number) =>
    `${low} mm (new) to ${high} mm, ${past} past this brake's mark`,
  toNewLining: (fresh: string) => `0 to ${fresh} mm, this brake's new lining`,
  atMostAsEnds: (ends: string) => `at most ${ends} mm, which one of its ends has`,
  wholeTo: (teeth: number) => `a whole number, 0 to ${teeth}`,
  toMostOffStop: '0 to 50 mm',
});

/** sim/study/parked-readings.ts */
export const studyParkedReadings = section('studyParkedReadings', {
  notches: 'z = (slack + F_cable / k + travel) / notch',
});

/** sim/study/pedal-readings.ts */
export const studyPedalReadings = section('studyPedalReadings', {
  pedalAtTouch: 'Pedal at the first touch',
  footAtTouch: 'Foot at the first touch',
  pedalSeated: 'Pedal with both linings on the drum',
  footSeated: 'Foot with both linings on the drum',
  pedalAtEnd: 'Pedal with the master cylinder at its end',
  travelLeft: 'Pedal travel left to there',
  travelAtTouch: 'x_pedal at N > 0',
  forceAtTouch: 'F_pedal at N > 0',
  travelSeated: 'x_pedal at g = 0',
  forceSeated: 'F_pedal at g = 0',
  toEnd: 'i · (free play + stroke)',
  reserve: 'floor − x_pedal',
  freePlay: 'Free play',
  freePlayTravel: 'i · free play',
  playOfBooster: 'Play of the booster',
  playTravel: 'i · play',
  strokeOfFailed: 'Stroke of the failed circuit',
  strokeTravel: 'i · stroke',
  pistonsDrawnBack: 'Pistons drawn back',
  shoesToDrum: 'This axle’s shoes to the drum',
  giveOfShoes: 'Give of its shoes and linings',
  giveOfLines: 'Give of its lines',
  restOfCircuit: 'Rest of the circuit',
  partOfAxle: 'This axle’s part',
  ownOfAll: 'own parts / x_pedal',
});

/** sim/study/slope-readings.ts */
export const studySlopeReadings = section('studySlopeReadings', {
  cableThatHolds: (nose: 'down' | 'up') => `Cable pull that just holds, nose ${nose}`,
  handForIt: (nose: 'down' | 'up') => `Pull at the hand lever for it, nose ${nose}`,
  marginOfCable: (nose: 'down' | 'up') => `Margin of the cable, nose ${nose}`,
});

/** sim/study/stop-readings.ts */
export const studyStopReadings = section('studyStopReadings', {
  share: 'share',
  deceleration: 'a = n T / (r m share)',
  energy: 'E = ½ m v² share / n',
  torque: 'T = m a share r / n',
  ofLevelRoad: 'n T_0 v / r over (c m g + k v²) v',
});

/** sim/study/turn.ts */
export const studyTurn = section('studyTurn', {
  clearanceFront: 'Clearance, front',
  clearanceRear: 'Clearance, rear',
  torque: 'Torque',
  bore: 'Bore',
  leastInATurn: (name: string) => `${name}, least in a turn`,
  greatestInATurn: (name: string) => `${name}, greatest in a turn`,
});

/** ui/adjusters.ts */
export const adjusters = section('adjusters', {
  inWord: (many: string) => `in ${many}`,
  teethBack: 'Teeth back',
  oneToothBack: 'One tooth back',
  oneToothOnAgain: 'One tooth on again',
  toothNow: 'Tooth now',
  of1Tooth: 'of 1 tooth',
  ofTeeth: (back: number) => `of ${back} teeth`,
  /** What a drum comes free by, as it stands in `orderSide.still` and `orderWordsBack.pressItHomeTurnIt3`. */
  by1Tooth: '1 tooth',
  byTeeth: (back: number) => `${back} teeth`,
  byMm: (shorter: string) => `${shorter}\u00a0mm`,
  of: (teeth: number) => `of ${teeth}`,
  oneStep: 'one step',
  steps: (to: number) => `${to} steps`,
  backOffTheAdjusterThrough: 'Back off the adjuster through the access hole',
  backItOff: 'Back it off',
  tooth: (at: string) => `tooth ${at}`,
  noClick: 'no click',
  pushTheWedgeUpThrough: 'Push the wedge up through the access hole; it shortens the strut',
  shorterByMm: 'Shorter by, mm',
  aLittleBack: 'A little back',
  aLittleOnAgain: 'A little on again',
  strutNow: 'Strut now',
  ofMm: (shorter: string) => `of ${shorter}\u00a0mm`,
  toothedLeverName: 'Toothed lever, all passed teeth',
  toothedLeverIdea:
    'When a stroke carries the shoe past the slot play by a whole tooth, the lever drops into the next one',
  incrementalName: 'Toothed lever, one a press',
  incrementalIdea:
    'When a stroke carries the shoe past the slot play by a whole tooth, the lever drops in, one tooth a press',
  screwStrutName: 'Screw strut, star wheel',
  screwStrutIdea:
    'When a stroke passes the play by a whole tooth, the lever catches and turns the star wheel',
  turnTheStarWheelBack: 'Turn the star wheel back through the access hole, its lever held away',
  wedgeName: 'Wedge, stepless',
  wedgeIdea:
    'When a stroke has used the play behind the hook, the wedge drops as far as there is room: no teeth, no click',
  wedgeUnlisted: 'The wedge moves in steps too small to tell one by one; the chart shows them.',
  strutLongerBy: 'Strut longer by',
  ofMm2: (growth: string) => `of ${growth} mm`,
  theWedgeMadeTheStrut: (growth: string) => `the wedge made the strut ${growth} mm longer`,
  wedgeSetBack: 'Push the wedge up',
  strutMm: (at: string) => `strut ${at} mm`,
  noStep: 'no step',
  strutMmLonger: (longer: string, inPresses: string) => `strut ${longer} mm longer ${inPresses}`,
});

/** ui/app/announcer.ts */
export const appAnnouncer = section('appAnnouncer', {
  pedalReleased: 'Pedal released',
  pedalPressedToBarAnd: (most: number) => `Pedal pressed to ${most} bar and released`,
  pedalPressedBar: (bar: number) => `Pedal pressed: ${bar} bar`,
});

/** ui/pieces/language-choice.ts */
export const piecesLanguageChoice = section('piecesLanguageChoice', {
  language: 'Language',
  germanIsMadeByMachine: 'Maschinell übersetzt; noch von keiner Lehrkraft gelesen.',
});

/** ui/app/bench-sheet.ts */
export const appBenchSheet = section('appBenchSheet', {
  wall: 'Wall',
  showOnTheDrawing: 'Show on the drawing',
  notHere: 'not here',
  on: 'on',
  off: 'off',
  bench: 'Bench',
  done: 'Done',
  brakeOnTheBench: 'Brake on the bench',
  view: 'View',
  wallHalfDrawingHalfWords: 'Wall: half drawing, half words, for a projector. Key w.',
  wheelSeenFromOutside: 'Wheel, seen from outside',
  leftHand: 'Left-hand',
  rightHand: 'Right-hand',
  theWheelsOfTheAxle: 'The wheels of the axle',
  eachItsOwn: 'Each its own',
  bothAlike: 'Both alike',
  twoWheelsOfOneAxle:
    'Two wheels of one axle, each with its own wear, tooth and life: the one chosen above stands on the bench, and what is done is done to it. Park and All readings tell both.',
  shoes: 'Shoes',
  thatBend: 'That bend',
  rigid: 'Rigid',
  shoesThatBendWebAnd:
    'Shoes that bend: web and table of steel give as they really do, and everything is worked out with them, rigid figures beside. Worn linings are bedded in anew, and a life driven so far begins anew. Key b.',
  takeAway: 'Take away…',
  picturesFiguresThisMoment: 'Pictures, figures, this moment for a phone, and more. Key e.',
  wordsOfTheTradeHere: 'Words of the trade here',
  wordsWithADottedLine: 'Words with a dotted line are told by a tap, British and American. Key d.',
  thisMoment: 'This moment',
  keepAsGhost: 'Keep as ghost',
  sideBySide: 'Side by side',
  aKeptMomentIsDrawn:
    'A kept moment is drawn thin and grey over what comes after, with its figures beside. Keys g and x.',
  allReadings: 'All readings…',
  keys: 'Keys (?)',
  soundOfTheClick: 'Sound of the click',
  on2: 'On',
  off2: 'Off',
  whatHasChangedOnThis: 'What has changed on this bench',
  licencesOfTakeupAndOf: 'Licences of Takeup and of what it is built with',
  allOfTakeupAsOne:
    'All of Takeup as one file, for a memory stick: opens by a double click, without a network',
});

/** ui/app/bending.ts */
export const appBending = section('appBending', {
  clicksOfAPressTo: (mostbar: number) => `Clicks of a press to ${mostbar} bar`,
  toothByThisMuchWear: 'Tooth by this much wear',
  shoesThatBend: 'shoes that bend',
  rigidShoes: 'rigid shoes',
  shoesThatBend2: 'Shoes that bend',
  theLiningsAreBeddedIn: (kind: string) => `The linings are bedded in under ${kind}`,
  shoesThatBendBesideRigid: 'Shoes that bend, beside rigid ones',
  shoes: 'Shoes',
  thatBend: 'that bend',
  rigid: 'rigid',
  webAndTableOfYour:
    ' Web and table of your brake are its base’s, made as much larger; only what they really measure tells how it bends.',
  outlinesTheBowOfEach: (bowscale: number, webAnd: string) =>
    `Outlines: the bow of each shoe, ×${bowscale}.${webAnd}`,
  theSameWearUnderRigid: 'The same wear under rigid shoes is worked out',
  bendingRigid: (name: string, bend: string, rigid: string) =>
    `${name}: ${bend} bending, ${rigid} rigid`,
});

/** ui/app/case-bar.ts */
export const appCaseBar = section('appCaseBar', {
  yourCase: 'Your case',
  whatISee: 'What I see',
});

/** ui/app/class-kit.ts */
export const appClassKit = section('appClassKit', {
  keepThisMomentAsA: 'Keep this moment as a thin grey ghost (g)',
  keep: 'Keep',
});

/** ui/app/dials/dials.ts */
export const appDialsDials = section('appDialsDials', {
  anchors: {
    pin: { front: 'Front pin', rear: 'Rear pin' },
    heel: { front: 'Front heel', rear: 'Rear heel' },
  },
  name: (name: string, side: 'front' | 'rear') => `${name}, ${side} shoe`,
  pedalLinePressure: 'Pedal, line pressure',
  boreOfTheWheelCylinder: 'Bore of the wheel cylinder',
  forceAsFitted: (charAt: string, name: string) => `${charAt}${name}, force as fitted`,
  ofTheAdjuster: (step: string) => `${step} of the adjuster`,
  frictionOfTheLiningsCold: 'Friction of the linings, cold',
  thicknessOfTheLiningsWhen: 'Thickness of the linings when new',
  lining: 'Lining',
  temperatureOfTheDrum: 'Temperature of the drum',
});

/** ui/app/dials/handles.ts */
export const appDialsHandles = section('appDialsHandles', {
  yours: (dial: string) => `; yours ${dial}`,
  dragItOrArrowKeys: (name: string, dial: string) =>
    `${name}: ${dial}. Drag it, or arrow keys; a double click snaps it back`,
});

/** ui/app/dials/index.ts */
export const appDials = section('appDials', {
  notTold: 'not told',
  theShoeLocks: (locked: string) => `the ${locked} shoe locks`,
  pressIt: 'Press it',
  brakeFactorAtBar: (bar: string) => `Brake factor at ${bar} bar:`,
  backTo: (name: string, dial: string) => `${name}: back to ${dial}`,
  back: 'Back',
  dials: 'Dials',
  theyTurnYourOwnBrake: 'They turn your own brake, and a guest stands on the bench.',
  makeItMine: 'Make it mine',
  backToMine: 'Back to mine',
  dragItOrArrowKeys: 'Drag it, or arrow keys.',
  dragItAcrossOrArrow: 'Drag it across, or arrow keys.',
  aDoubleClickOrBackspace: (dragIt: string) =>
    `${dragIt} A double click or Backspace snaps it back.`,
  takeAHandleOnThe: 'Take a handle on the drawing: drag it, or Tab to it and use the arrow keys.',
  noFurtherThereIsNo: (refused: string) => `No further: there is no such brake. ${refused}.`,
  esc: 'Esc',
  allBack: 'All back',
});

/** ui/app/drop.ts */
export const appDrop = section('appDrop', {
  wasNotOpenedNothingElse: (name: string, error: string) =>
    `${name} was not opened; nothing else has changed. ${error}`,
  letGoToOpenIt: 'Let go to open it',
});

/** ui/app/edge-card.ts */
export const appEdgeCard = section('appEdgeCard', {
  stops: {
    pads: 'It stands on all its pads.',
    'hold-down spring': 'The hold-down spring has given until it answers.',
    guides: 'Only its guides stop it.',
  },
  edgeOnFrontShoeTilt: (tiltdrawn: number) => `Edge-on, front shoe; tilt drawn ×${tiltdrawn}`,
  mmAcrossTheLining: (degrees: string, acrossLining: string) =>
    `${degrees}°, ${acrossLining} mm across the lining.`,
  upright: 'Upright.',
  nPullMmBesideThe: (
    pull: string,
    beside: string,
    moment: string,
    righting: string,
    mmAcross: unknown,
    stops: string,
  ) => [
    pull,
    ' N pull ',
    beside,
    ' mm beside the web’s middle: ',
    moment,
    ' N·mm tip it, the hold-down answers up to ',
    righting,
    '. ',
    mmAcross,
    ' ',
    stops,
  ],
  holdDownLost: 'Hold-down lost',
  endPadsWornMm: (hollow: number) => `End pads worn ${hollow} mm`,
});

/** ui/app/forces-beside.ts */
export const appForcesBeside = section('appForcesBeside', {
  front: 'Front',
  rear: 'Rear',
  shoe: (front: string) => `${front} shoe`,
  leftOverN: (gap: string) => `Left over: ${gap}\u00a0N`,
  allForcesOnEachShoe: 'All forces on each shoe',
  headToTailTheyClose:
    'Head to tail they close: a shoe at rest. While it moves, what is left over is its inertia.',
  noForceIsToldHere: 'No force is told here.',
});

/** ui/app/guest-bar.ts */
export const appGuestBar = section('appGuestBar', {
  tooth: (tooth: number) => `, tooth ${tooth}`,
  makeItMine: 'Make it mine',
  backToMine: 'Back to mine',
  guestOnTheBenchYours: (guest: unknown, yours: string) => [
    'Guest on the bench: ',
    guest,
    '. Yours waits as you left it: ',
    yours,
    '.',
  ],
  yourQuestion: 'Your question',
  questions: 'Questions',
  close: 'Close',
  guestOnTheBench: 'Guest on the bench',
  guestOnTheBench2: 'Guest on the bench:',
  yoursWaitsAsYouLeft: (yours: string) => `Yours waits as you left it: ${yours}.`,
});

/** ui/app/kept.ts */
export const appKept = section('appKept', {
  thePedal: 'the pedal',
  keptAsAGhost: 'Kept as a ghost',
  nothingDiffersYet: 'Nothing differs yet.',
  oneThingDiffers: (names: string | undefined) => `One thing differs: ${names}.`,
  thingsDiffer: (count: number) => `${count} things differ`,
  kept: 'kept',
  now: 'now',
  sideBySide: (x: unknown) => ['Side by side', x],
  hideIt: 'Hide it',
  drawIt: 'Draw it',
  forget: 'Forget',
});

/** ui/app/keys-sheet.ts */
export const appKeysSheet = section('appKeysSheet', {
  space: 'Space',
  theBrake: 'The brake',
  holdThePedalDownWhere: 'hold the pedal down, where there is one',
  and: '. and ,',
  brackets: '[ and ]',
  oneStepOnOneStep: 'one step on, one step back',
  slowerFaster: 'slower, faster',
  lookBackOverTheLast: 'look back over the last ten seconds, and now again',
  theLastClickSlowly: 'the last click, slowly',
  shoesThatBendOrRigid: 'shoes that bend, or rigid ones',
  theDrawing: 'The drawing',
  arrowKeys: 'arrow keys',
  onceItHasTheFocus: 'once it has the focus: from part to part',
  shiftAndArrows: 'Shift and arrows',
  moveItWhileItIs: 'move it while it is zoomed',
  nearerFartherWhole: 'nearer, farther, whole',
  allForcesOnEachShoe: 'all forces on each shoe, head to tail, and away',
  dialsHandlesOnTheBrake: 'dials: handles on the brake, and away',
  keepThisMomentAsA: 'keep this moment as a ghost',
  hAndN: 'H and N',
  hideTheNamesShowThe: 'hide the names; show the next one',
  thePage: 'The page',
  theTableOfAllReadings: 'the table of all readings',
  wordsOfTheTradeThat: 'words of the trade that stand here',
  takeAwayWhatStandsHere: 'take away what stands here: figure, link, code, file',
  shiftE: 'Shift E',
  aFigureAtOnceWith: 'a figure at once, with the last choices',
  whatTellsMostOrAll: 'what tells most, or all of it',
  theWallAndBack: 'the wall, and back',
  fullScreen: 'full screen',
  ctrlZCtrlY: 'Ctrl Z, Ctrl Y',
  undoRedo: 'undo, redo',
  letGoBackToNow: 'let go, back to now, back to mine',
  theseKeys: 'these keys',
  keys: 'Keys',
  close: 'Close',
  keysOfOneSign: 'Keys of one sign',
  onOffOnlyTabEnter:
    'On. Off, only Tab, Enter, arrows, Esc, the space bar and keys with Ctrl do something.',
  offKeptOnThisDevice:
    'Off, kept on this device. All is still to be reached by Tab, Enter and arrows.',
  aFieldKeepsItsKeys:
    'A field keeps its keys. The wall and a lesson have keys of their own, and ? lists them there.',
});

/** ui/app/layer-names.ts */
export const appLayerNames = section('appLayerNames', {
  edgeOn: 'Edge-on',
  gapFan: (magnification: number) => `Gap fan ×${magnification}`,
  pressureComb: 'Pressure comb',
  restGhost8: 'Rest ghost ×8',
  forcePolygons: 'Force polygons',
});

/** ui/app/legend.ts */
export const appLegend = section('appLegend', {
  visibleEdge: 'Visible edge',
  leaderDimensionHatching: 'Leader, dimension, hatching',
  hiddenEdge: 'Hidden edge',
  whereAMovingPartRests: 'Where a moving part rests',
  drumCut: 'Drum, cut',
  cylinderBodyCut: 'Cylinder body, cut',
  pistonCut: 'Piston, cut',
  frictionLining: 'Friction lining',
  brakeFluid: 'Brake fluid',
  rubberSeen: 'Rubber, seen',
  rubberCutThin: 'Rubber, cut thin',
  springWire: 'Spring wire',
  leadingSolid: 'Leading: solid',
  trailingOpen: 'Trailing: open',
});

/** ui/app/moment-file.ts */
export const appMomentFile = section('appMomentFile', {
  thisMomentOfTheBench: 'This moment of the bench',
  copyItsLink: 'Copy its link',
  saveAsAFile: 'Save as a file',
  openAFile: 'Open a file',
  openAMomentsFile: 'Open a moment’s file',
  undo: (canUndo: string) => `Undo${canUndo}`,
  redo: 'Redo',
});

/** ui/app/more-readings.ts */
export const appMoreReadings = section('appMoreReadings', {
  aStopFromKmH: (town: number, hard: string) => `A stop from ${town} km/h at ${hard} bar`,
  bothWheelsAtThatPress: 'Both wheels at that press',
  drivenAtKmHWith: (town: number) => `Driven at ${town} km/h with the pedal let go`,
  thePedalPushedToBar: (most: string) => `The pedal pushed to ${most} bar`,
  whereThatTravelGoes: 'Where that travel goes',
  parkedWithNInThe: (cable: number) => `Parked with ${cable} N in the cable`,
  onceAroundTheDrum: 'Once around the drum',
});

/** ui/app/names-bar.ts */
export const appNamesBar = section('appNamesBar', {
  namesOfTheParts: 'Names of the parts',
  showAllNames: 'Show all names',
  hideTheNames: 'Hide the names',
  whatIsIt: (number: unknown) => [number, 'what is it?'],
});

/** ui/app/names-beside.ts */
export const appNamesBeside = section('appNamesBeside', {
  yes: (part: string) => `Yes: ${part}.`,
  justShown: 'Just shown:',
  is: (number: number) => `${number} is`,
  the: (justShown: string, last: string) => `${justShown} the ${last}.`,
  score: (hits: number, found: number) => `${hits} of ${found} at the first tap`,
  allFound: (found: number) => `All ${found} found`,
  tapThe: (sought: string) => `Tap the ${sought}`,
  thatIsThe: (wrong: string) => `That is the ${wrong}.`,
  toGo: (score: string, length: number) => `${score}, ${length} to go`,
  showIt: 'Show it',
  onceMore: 'Once more',
  stopAsking: 'Stop asking',
  showAllNames: 'Show all names',
  hideTheNames: 'Hide the names',
  askMe: 'Ask me',
  nextName: 'Next name',
  hidden: (hidden: number) => `${hidden} hidden`,
  askForAPart: 'Ask for a part',
  namesOfTheParts: 'Names of the parts',
  namesInApply: 'Names in Apply',
  offHere: 'Off here',
  whatIsIt: (no: unknown) => [no, 'what is it?'],
  linesAndMarks: 'Lines and marks',
});

/** ui/app/offline.ts */
export const appOffline = section('appOffline', {
  aNewerTakeupIsReady: 'A newer Takeup is ready; what stands on the bench stays.',
  openIt: 'Open it',
  later: 'Later',
});

/** ui/app/part-pointer.ts */
export const appPartPointer = section('appPartPointer', {
  shoe: (side: 'front' | 'rear') => `, ${side} shoe`,
  enterThisOne: (partNames: string) => `${partNames} Enter: this one.`,
});

/** ui/app/pedal.ts */
export const appPedal = section('appPedal', {
  pedal: 'Pedal',
  ofBar: (bar: number, mostbar: number) => `${bar} of ${mostbar} bar`,
  holdOrDrag: 'hold or drag',
});

/** ui/app/print-page.ts */
export const appPrintPage = section('appPrintPage', {
  brakeDrawing: 'Brake drawing',
  teachingBrakeItsFiguresAre: 'Teaching brake: its figures are not your vehicle’s.',
});

/** ui/app/readings-table.ts */
export const appReadingsTable = section('appReadingsTable', {
  shoesBend: 'Shoes bend',
  whatItMeans: 'What it means',
  oneThingChanged: (name: string) => `one thing changed: ${name}`,
  whatIf: (name: unknown) => ['What if', name],
  of: (name: string) => `of ${name}`,
  working: (name: unknown) => ['Working', name],
  allReadings: 'All readings',
  done: 'Done',
});

/** ui/app/stage-drawing.ts */
export const appStageDrawing = section('appStageDrawing', {
  shoesBend: 'shoes bend',
  rigidShoesStill: 'rigid shoes still',
  left: 'Left',
  right: 'Right',
  handWheelFromOutsideDrum: (left: string) => `${left}-hand wheel from outside, drum cut away`,
  time: (paceName: string) => ` · time ${paceName}`,
  gapFanMm: (magnification: number, slowed: string) => `Gap fan ×${magnification}, mm${slowed}`,
});

/** ui/app/stage-view.ts */
export const appStageView = section('appStageView', {
  brakeArrowKeysGoFrom:
    'Brake: arrow keys go from part to part; zoomed in, Shift and arrow keys move it',
  zoom: 'Zoom',
  zoomOut: 'Zoom out',
  zoomOut2: 'Zoom out (−)',
  zoomIn: 'Zoom in',
  zoomIn2: 'Zoom in (+)',
  of0WholeBrake: '0: Whole brake',
  wholeBrake0: 'Whole brake (0)',
});

/** ui/app/takeup-app.ts */
export const appTakeupApp = section('appTakeupApp', {
  linkOpened: 'link opened',
  sheet: 'Sheet',
  board: 'Board',
  view: (sheet: string) => `View: ${sheet}`,
  takeup: 'Takeup',
  station: 'Station',
  stations: 'Stations',
  brakeOnTheBench: (onBench: string) => `Brake on the bench: ${onBench}`,
  brake: 'Brake',
  table: 'Table',
  view2: 'View:',
  start: 'Start',
  lessons: 'Lessons',
  ask: 'Ask',
  takeAway: 'Take away',
  takeAwayE: 'Take away (e)',
  show: 'Show',
  bench: 'Bench',
  shoesThatBendB: 'shoes that bend (b)',
  allLayersReadingsAndSteps: 'All layers, readings and steps of time (m)',
  more: 'More',
  nothingWord: 'nothing',
  on: (on: string) => `On: ${on}`,
  less: 'Less',
  brakeDrawing: 'Brake drawing',
  twoWaysToTheSame: (agreement: string) => `Two ways to the same balance differ by ${agreement} %`,
});

/** ui/app/teacher.ts */
export const appTeacher = section('appTeacher', {
  takeupForTheTeacher: 'Takeup: for the teacher',
  theWall: 'The wall',
  onTheWallNow: 'On the wall now',
  nothingTheWallIsBlank: 'Nothing: the wall is blank.',
  theQuestion: 'The question.',
  whatHappens: 'What happens.',
  theOutcome: 'The outcome.',
  theEnd: 'The end.',
  theDeskView: 'The desk view.',
  covered: 'Covered:',
  blank: 'Blank (.)',
  deskView: 'Desk view',
  wall: 'Wall',
  moments: 'Moments',
  steps: 'Steps',
  theStep: 'The step',
  minutes: (minutes: number) => `, ${minutes} minutes`,
  holds: ' (holds)',
  itShows: (shows: string) => `It shows: ${shows}.`,
  giveBack: (back: string) => `Give back: ${back}`,
  behindIt: 'Behind it',
  itShows2: 'It shows',
  pointAt: 'Point at',
  askNext: 'Ask next',
  valuesBeforeAndNow: 'Values, before and now',
  whatComesNext: 'What comes next',
  handsFor: 'Hands for',
  oneHandLessFor: (letter: string) => `One hand less for ${letter}`,
  oneHandMoreFor: (letter: string) => `One hand more for ${letter}`,
  hand: 'hand',
  hands: 'hands',
  theCountsStayBesideThe: (all: number, hand: string) =>
    `${all} ${hand}. The counts stay beside the outcome.`,
  next: 'Next',
  stepBack: 'Step back',
  showAgain: 'Show again',
  thenWord: 'Then',
  noLessonIsOpenIn:
    'No lesson is open in the other window. Open one there; this window follows it.',
  lesson: (clock: unknown) => ['lesson', clock],
  thisStep: (clock: unknown) => ['this step', clock],
  stopTheClock: 'Stop the clock',
  goOn: 'Go on',
});

/** ui/app/trouble-bar.ts */
export const appTroubleBar = section('appTroubleBar', {
  close: 'Close',
});

/** ui/app/undo-bar.ts */
export const appUndoBar = section('appUndoBar', {
  undo: (lastDone: string) => `Undo: ${lastDone}`,
  ctrlZ: (name: string) => `${name} (Ctrl+Z)`,
  undo2: 'Undo',
  redo: 'Redo',
});

/** ui/part.ts */
export const part = section('part', {
  notLoaded:
    'What this needs could not be loaded: is the network there? What was typed is kept; open it again, or load the page anew.',
});

/** ui/app/wall-code.ts */
export const appWallCode = section('appWallCode', {
  codeForPhones: 'Code for phones',
  thisMomentOnYourPhone: 'This moment on your phone',
  closeQ: 'Close Q',
  thereIsTooMuchOn:
    'There is too much on the bench for a code that a phone reads from here. At the desk, Take away saves it as a file.',
  thatIsTheBenchThis: (length: number) =>
    `That is the bench; this moment of it is in the code alone (${length} letters more).`,
  thisPageRunsOnThis: 'This page runs on this computer alone: a phone cannot follow it.',
});

/** ui/app/wall.ts */
export const appWall = section('appWall', {
  blankShowItAgain: (key: unknown) => ['Blank: show it again ', key],
});

/** ui/app/wall-ghost.ts */
export const wallGhost = section('wallGhost', {
  hideTheGhost: 'Hide the ghost',
  drawTheGhost: 'Draw the ghost',
  forgetTheGhost: 'Forget the ghost',
  compare: (pair: string) => `Compare: ${pair}`,
  keepThisMomentInstead: 'Keep this moment instead',
  keepThisMoment: 'Keep this moment',
  ghostAndNow: 'Ghost and now side by side',
  sideBySide: 'Side by side',
  ghostAndCompare: 'Ghost and compare',
  close: 'Close',
});

/** ui/app/wall-keys.ts */
export const appWallKeys = section('appWallKeys', {
  gapFan: 'Gap fan',
  brackets: '[ and ]',
  stations: 'stations',
  lessons: 'lessons',
  desk: 'desk',
  space: 'Space, →',
  theFilledButton: 'the filled button',
  pageDown: 'Page Down',
  theSameByARemote: 'the same, by a remote',
  bPageUp: 'B, ←, Page Up',
  theOtherButton: 'the other button',
  layersAndLoupe: 'layers and loupe',
  keepAGhostChooseMore: 'keep a ghost; choose more',
  compareWithAChoiceOf: 'compare, with a choice of what',
  theLastClickSlowly: 'the last click, slowly',
  slowerFaster: 'slower, faster',
  lookBackAndNow: 'look back, and now',
  of1To9: '1 to 9',
  blankAndShownAgain: 'blank, and shown again',
  thisMomentAsACode: 'this moment as a code for phones',
  fullScreen: 'full screen',
  wEsc: 'W, Esc',
  theseKeys: 'these keys',
});

/** ui/app/wall-side.ts */
export const appWallSide = section('appWallSide', {
  space: 'Space',
  pressName: 'Press',
  letGo: 'Let go',
  turnRoundName: 'Turn round',
  timeAt: (agoText: string, paceName: string) => `${agoText}, time at ${paceName}.`,
  keysOfTheWall: 'Keys of the wall',
  keysOfOneLetterWork: 'Keys of one letter work',
  close: (piece: unknown) => ['Close ', piece],
  forTheClass: 'For the class',
  guest: (guest: string) => `Guest: ${guest}`,
  show: 'Show',
  backToMine: 'Back to mine',
  keys: '? keys',
  keys2: ' keys',
  mCompareAndGhost: 'M compare and ghost',
  compare: (m: unknown) => [m, ' compare'],
  escDeskLeaveTheWall: 'Esc desk: leave the wall',
  esc: 'Esc',
  desk: ' desk',
});

/** ui/app/words-here.ts */
export const appWordsHere = section('appWordsHere', {
  first: (l: 'American' | 'British') => `${l} first`,
  wordsOfTheTrade: 'Words of the trade',
  close: 'Close',
  whoseWordsFirst: 'Whose words first',
});

/** How what people ask is read. */
export const askPatterns = section('askPatterns', {
  fold: askEnglish.fold,
  words: askEnglish.words,
  stem: askEnglish.stem,
  turnsBack: askEnglish.turnsBack,
  neverMixed: askEnglish.neverMixed,
  twofold: askEnglish.twofold,
  figures: askEnglish.figures,
});

/** What people say beside the lists above, each in the words of a language alone: lines by what they lead to. */
export const askMore = section('askMore', {
  lines: {} as Readonly<Record<string, readonly string[]>>,
});

/** ui/ask/also.ts */
export const askAlso = section('askAlso', {
  theHandLeversNotches: 'the hand lever’s notches',
  handbrakeNotchesTooMany: 'handbrake notches too many',
  theAdjustersClick: 'the adjuster’s click',
  adjusterClickWhenIPress: 'adjuster click when I press',
  theAdjusterClicksTooOften: 'the adjuster clicks too often',
  adjusterClicksEveryPress: 'adjuster clicks every press',
  theDrumWillNotCome: 'the drum will not come off',
  drumWillNotComeOff: 'drum will not come off',
  theWheelWillNotTurn: 'the wheel will not turn',
  wheelWillNotTurn: 'wheel will not turn',
  thePedalGoesFar: 'the pedal goes far',
  lowPedal: 'low pedal',
  weakOnTheRollers: 'weak on the rollers',
  lowEffortOnTheRoller: 'low effort on the roller test',
  thePedalSinks: 'the pedal sinks',
  pedalSinksSlowly: 'pedal sinks slowly',
  setTheCable: 'set the cable',
  adjustTheHandbrakeCable: 'adjust the handbrake cable',
  aHardPedal: 'a hard pedal',
  hardPedalWeakBrakes: 'hard pedal weak brakes',
  theWheelIsHardTo: 'the wheel is hard to turn',
  wheelHardToTurnBy: 'wheel hard to turn by hand',
  aServoKindOfBrake: 'a servo kind of brake',
  duoServoBrake: 'duo servo brake',
});

/** ui/ask/entries.ts */
export const askEntries = section('askEntries', {
  kindNames: {
    question: 'Question',
    fault: 'Fault',
    station: 'Station',
    check: 'What I see',
    reading: 'Reading',
    part: 'Part',
    word: 'Word',
    lesson: 'Lesson',
    caution: 'Caution',
    'take away': 'Take away',
    'not here': 'Not on this bench',
  },
  notShown: (because: string) => `Not shown: ${because}.`,
  whereIsThe: (id: string) => `where is the ${id}`,
});

/** ui/ask/figures.ts */
export const askFigures = section('askFigures', {
  saidOf: {
    drum: 'drum',
    mark: 'mark',
    score: 'score',
    lip: 'lip',
    new: 'new',
    lining: 'lining',
    slope: 'slope',
    unlike: 'imbalance',
  },
  inWord: (text: string) => `${text} in`,
  acrossTheOtherWay: 'across the other way',
  trailingLining: 'trailing lining',
  swingInATurn: 'swing in a turn',
  notches: (text: string) => `${text} notches`,
  nToTurnIt: (text: string) => `${text} N to turn it`,
  theMarkIsTheLimit: 'The mark is the limit that the drum itself tells.',
  noVerdictBeforeItsLimit:
    'No verdict before its limit has an owner: the mark on the drum, the maker’s figure.',
  judgeIt: 'Judge it',
  onTheSheetOfInspect: (owner: string) => `On the sheet of Inspect, filled in. ${owner}`,
  whatItPointsTo: 'What it points to',
  whatISeeWithThe:
    'What I see, with the figure filled in: likely causes, and the cheapest next check.',
  willItHold: 'Will it hold?',
  parkWithThisSlopeThe: 'Park, with this slope: the pull that it takes, nose up and nose down.',
});

/** ui/ask/rank.ts */
export const askRank = section('askRank', {
  bothwheelsAllwheelsHowmuch: 'bothwheels allwheels howmuch explain right press',
  hotSmellDragSpinCoast: 'hot smell drag spin coast wontturn',
  handbrakeNotchCableSlopeCreep: 'handbrake notch cable slope creep roll lever',
  pedalSoftLongSinkHard: 'pedal soft long sink hard throb',
  pullGrabWeakYankSkid: 'pull grab weak yank skid wet fade damp',
  noiseSquealGrindGroanClunk: 'noise squeal grind groan clunk swish rattle',
  comeoffSlidStudDrumSeized: 'comeoff slid stud drum seized',
  limitThickScoreMachineMeasure: 'limit thick score machine measure worn mark',
  fitShoeTogetherBedLining: 'fit shoe together bed lining goon',
});

/** ui/ask/read.ts */
export const askRead = section('askRead', {
  theAAnMyYour:
    'the a an my your his her our their this that these those them it both rear back old just right really even all of bloody damn flipping ruddy wee little',
  not: (as: string) => `not ${as}`,
  adjusterStarPawlPedalPress: 'adjuster star pawl pedal press backoff noise tooth',
});

/** ui/ask/readings.ts */
export const askReadings = section('askReadings', {
  saidOf: {
    clearanceMean: ['gap between shoe and drum in mm'],
    restClearanceMean: ['gap with the pedal let go', 'running clearance in mm'],
    pedalTravel: ['how far does the pedal go in mm'],
    runOut: ['how far may a piston go', 'piston travel left'],
    torque: ['braking torque', 'brake force in newton metres'],
    notches: ['notches of the lever'],
    drumDiameter: ['drum diameter now'],
    strutForce: ['force on the strut'],
  },
});

/** ui/ask/said/away.ts */
export const askSaidAway = section('askSaidAway', {
  theDrawingAsAPicture: 'The drawing as a picture: lines (SVG) or points (PNG), true to scale.',
  saveTheDrawingAsA: 'save the drawing as a picture',
  exportPicture: 'export picture',
  exportSvg: 'export svg',
  exportPng: 'export png',
  pictureForMySlides: 'picture for my slides',
  screenshotOfTheDrawing: 'screenshot of the drawing',
  imageForADocument: 'image for a document',
  saveImage: 'save image',
  downloadDrawing: 'download drawing',
  figureForABook: 'figure for a book',
  posterOfTheDrawing: 'poster of the drawing',
  whatTheBrakeDoesAs: 'What the brake does as a film with its clicks, a short loop, or a strip.',
  makeAVideo: 'make a video',
  makeAFilm: 'make a film',
  recordAClip: 'record a clip',
  exportVideo: 'export video',
  saveAsMp4: 'save as mp4',
  animationForMySlides: 'animation for my slides',
  gifOfTheBrake: 'gif of the brake',
  shortLoopForAWeb: 'short loop for a web page',
  filmStrip: 'film strip',
  movieOfTheClick: 'movie of the click',
  worksheetsMeasurementsReports:
    'Worksheets, measurements, reports and orders of work, for A4 and Letter.',
  printAWorksheet: 'print a worksheet',
  handoutForPupils: 'handout for pupils',
  printTheMeasurements: 'print the measurements',
  printOnPaper: 'print on paper',
  blankMeasuringSheetToPrint: 'blank measuring sheet to print',
  pdfToHandOut: 'pdf to hand out',
  wearReportToPrint: 'wear report to print',
  printableSheets: 'printable sheets',
  testPaperWithAnswers: 'test paper with answers',
  checklistToPrint: 'checklist to print',
  cutOutModel: 'Cut-out model',
  theBrakeAsFlatParts: 'The brake as flat parts, to cut of card, plywood or acrylic.',
  cutOutModel2: 'cut out model',
  paperModelOfTheBrake: 'paper model of the brake',
  cardboardModel: 'cardboard model',
  laserCutParts: 'laser cut parts',
  exportDxf: 'export dxf',
  buildAModelOfPlywood: 'build a model of plywood',
  acrylicModel: 'acrylic model',
  templateToCutOut: 'template to cut out',
  makeAModelForThe: 'make a model for the class',
  cncFileOfTheParts: 'cnc file of the parts',
  readingsALifeCurvesAs: 'Readings, a life, curves: as a table for a spreadsheet or a program.',
  exportData: 'export data',
  exportCsv: 'export csv',
  openInASpreadsheet: 'open in a spreadsheet',
  downloadTheReadings: 'download the readings',
  saveTheNumbersAsA: 'save the numbers as a table',
  copyTheTable: 'copy the table',
  exportJson: 'export json',
  dataOfTheCurve: 'data of the curve',
  saveTheReadingsToA: 'save the readings to a file',
  thisMomentAsALink: 'This moment as a link, as a code for a phone’s camera, or as a file.',
  shareALink: 'share a link',
  copyLink: 'copy link',
  qrCode: 'qr code',
  sendThisToAFriend: 'send this to a friend',
  sendThisToMyPhone: 'send this to my phone',
  openThisOnMyPhone: 'open this on my phone',
  codeForPhones: 'code for phones',
  emailThisBrake: 'email this brake',
  saveTheMomentAsA: 'save the moment as a file',
  saveMyWork: 'save my work',
  openASavedFile: 'open a saved file',
  linkForMyStudents: 'link for my students',
  awayOneFileTitle: 'All of it as one file',
  awayOneFileText:
    'One file to carry along, on the Bench sheet: it opens by a double click, without a network.',
  awayOneFileSays: [
    'download takeup',
    'download the whole program',
    'one file',
    'all in one file',
    'usb',
    'usb drive',
    'thumb drive',
    'single html file',
  ],
  awayOfflineTitle: 'Without a network, as an app',
  awayOfflineText:
    'After one visit it opens without a network. The browser’s own menu installs it as an app; the Bench sheet has it as one file too.',
  useItOffline: 'use it offline',
  withoutInternet: 'without internet',
  noInternetInTheWorkshop: 'no internet in the workshop',
  noWifi: 'no wifi',
  noNetwork: 'no network',
  installAsAnApp: 'install as an app',
  installOnMyPhone: 'install on my phone',
  isThereAnApp: 'is there an app',
  addToHomeScreen: 'add to home screen',
  stationWriteALessonTitle: 'Lessons: write one of your own',
  stationWriteALessonText:
    'Do on the stage what a step is to show, take it, type the question. Write a lesson stands in Lessons.',
  stationWriteALessonSays: [
    'write a lesson',
    'write my own lesson',
    'make a lesson',
    'lesson editor',
    'create a lesson',
    'my own exercise for the class',
    'own quiz for my students',
    'edit a lesson',
  ],
  wordListTitle: 'Words of the trade here',
  wordListText:
    'Each word that stands beside the drawing in one sentence, British and American. Key d.',
  wordListSays: [
    'list of words',
    'words of the trade',
    'glossary',
    'dictionary',
    'vocabulary',
    'what do these words mean',
    'british and american words',
    'explain the terms',
  ],
});

/** ui/ask/said/faults.ts */
export const askSaidFaults = section('askSaidFaults', {
  faultsSaid: {
    'seized short': [
      'adjuster is seized',
      'adjuster seized up solid',
      'self adjuster not working',
      'adjuster does not work any more',
      'pedal goes half way down but then solid',
      'long pedal firm comes up when pumped',
      'low pedal and handbrake too high',
      'never clicks any more',
      'adjusters not taking up',
      'pedal and handbrake travel got longer over months',
      'stuck adjuster wont click',
      'adjusters dont self adjust',
    ],
    'worn teeth': [
      'long pedal in the morning then good',
      'first press long with clicks next fine',
      'clicks every morning',
      'keeps clicking each time after parking',
      'adjuster teeth worn rounded',
      'teeth chewed slips back',
      'handbrake different from day to day',
      'pedal long after parking then comes up',
      'adjuster slips wont stay',
    ],
    'broken lever spring': [
      'small spring on the adjuster snapped',
      'adjuster spring broke',
      'small spring of the adjuster broken',
      'adjuster lever hangs loose',
      'pawl swings free',
      'broken adjuster spring',
      'pawl does not engage',
      'spring on the ratchet lever missing',
    ],
    'stepped hot': [
      'wheels locked the morning after a mountain descent',
      'tight after a long downhill',
      'brakes free when hot tight when cold',
      'adjusted too far when hot',
      'wont roll next morning after the pass',
      'over adjusted itself',
      'self adjuster adjusts too much',
      'self adjuster went too far both drums',
      'brake tight cold next day after hard braking',
    ],
    'shoes swapped': [
      'shoes in the wrong place',
      'put shoes back front to rear',
      'mixed up leading and trailing shoe',
      'trailing lining thinner than leading',
      'used shoes swapped',
      'front and rear shoe swapped',
    ],
    'wrong side': [
      'adjusters left and right swapped',
      'adjuster winds the wrong way',
      'adjuster on the wrong side',
      'left adjuster on right side',
      'adjuster gets shorter instead of longer',
      'self adjuster works backwards',
      'left hand right hand thread mixed up',
    ],
    'strut mis-seated': [
      'strut not seated',
      'spreader bar not in its notch',
      'drum will hardly go on after fitting shoes one side',
      'wheel wont turn since I put it together',
      'strut out of its slot',
      'push rod sits wrong',
      'one wheel locked after fitting shoes',
    ],
    'dead adjuster to the end': [
      'piston popped out of the cylinder',
      'pedal to the floor',
      'linings worn to nothing',
      'grinding metal pedal on the floor',
      'drum worn out and shoes gone',
      'ignored for years pedal goes to the floor',
      'piston overextended',
    ],
    'short cable': [
      'cable too tight',
      'handbrake cable adjusted too tight',
      'handbrake only two clicks and drags',
      'I tightened the cable and now the drum wont come off',
      'lever in the drum held off its stop by the cable',
      'few clicks on handbrake',
      'handbrake comes on after one notch',
      'cable adjusted before the shoes',
      'self adjuster stopped since cable was tightened',
    ],
    'kept pull': [
      'handbrake cable seized',
      'cable sticks in its sheath',
      'cable does not return',
      'handbrake stays on one wheel after release',
      'one rear wheel hot handbrake not releasing',
      'handbrake stuck on',
      'handbrake wont release',
      'handbrake wont let go in frost',
      'cable frozen',
      'one drum stinks and is hot lever off',
      'rear brake sticking on one side after using handbrake',
      'one rear wheel gets hot',
    ],
    'stretched cable': [
      'handbrake comes up too high but pedal is good',
      'cable stretched',
      'slack handbrake cable',
      'too many clicks',
      'lever goes right up pedal fine',
      'handbrake loose',
      'handbrake lever pulls up to the roof',
      'handbrake travel too long',
      'no tension in the handbrake cable',
    ],
    'stiff pivot': [
      'lever on the shoe is rusted',
      'handbrake weak one side lever stiff',
      'parking lever pivot rusted',
      'lever inside the drum seized',
      'handbrake slow to let go',
      'handbrake weak one wheel pedal fine',
      'handbrake arm seized in the shoe',
      'handbrake poor on one side',
      'lever on the shoe is stiff',
      'handbrake works on one side only',
    ],
    'weak springs': [
      'return springs weak',
      'springs stretched tired',
      'broken return spring',
      'spring snapped',
      'brakes early one side',
      'old springs',
      'spring lost its colour and tension',
      'one wheel grabs at light pedal',
    ],
    'strong springs': [
      'wrong return springs',
      'springs too strong',
      'springs in the wrong hole',
      'one wheel brakes late at light pedal',
      'spring fitted in the wrong place',
    ],
    'stuck piston': [
      'one piston seized',
      'wheel cylinder stuck',
      'seized wheel cylinder',
      'only one shoe moves',
      'brakes weak forwards better in reverse',
      'piston wont move',
      'pulls to one side forwards but not in reverse',
      'one shoe hardly worn',
    ],
    'sluggish pistons': [
      'slow to release',
      'brakes slow to let go',
      'drags a few seconds after braking then free',
      'pistons sticky',
      'wheel cylinder slow return',
      'wheel cylinder sticking',
      'hangs on for a moment after I let the pedal up',
      'late at light pedal one side',
    ],
    'leaning part': [
      'drags one way only',
      'much stiffer forwards than backwards',
      'turns backwards but not forwards',
      'wheel turns easy one way hard the other',
      'something pushes on one shoe',
      'one shoe stands out',
      'one shoe rubs the other is free',
    ],
    hose: [
      'drags after braking then slowly frees',
      'brake stays on after pedal let go',
      'collapsed hose',
      'hose swollen inside',
      'one wheel drags frees when bleed screw opened',
      'brake hose blocked',
      'pressure stays in the line',
      'wheel locked until I open the bleeder',
      'brake drags for minutes after braking',
      'one wheel sticking on after braking',
    ],
    'port shut': [
      'free cold locked when hot',
      'wheel turns when cold but locked when hot',
      'all four wheels drag',
      'all brakes get hot and drag the longer I drive',
      'no free play at the pedal',
      'brakes come on by themselves',
      'brakes drag when warm',
      'brakes tighten up as they get hot',
      'since master cylinder was replaced brakes drag',
      'pushrod too long',
      'pedal gets higher and harder while driving',
      'all wheels binding',
    ],
    'other bore': [
      'wrong wheel cylinder',
      'cylinder bore different',
      'cylinder of another size',
      'pulls since wheel cylinder was replaced',
      'one side stronger since repair',
      'wheel cylinders not the same',
      'fitted a bigger wheel cylinder',
    ],
    air: [
      'spongy pedal',
      'soft pedal',
      'pedal springy since bleeding',
      'air in the brakes',
      'pedal feels like a sponge',
      'mushy pedal after replacing wheel cylinder',
      'pedal soft after changing the pipe',
      'need to pump the pedal soft',
      'squishy brake',
      'cant get a firm pedal after bleeding',
      'bled the brakes still spongy',
      'pedal soft after changing the hose',
    ],
    'fluid on linings': [
      'brake fluid inside the drum',
      'wheel cylinder leaking onto shoes',
      'leaking wheel cylinder',
      'brake fluid on the shoes',
      'wet inside the drum',
      'linings soaked',
      'fluid running down the tyre',
      'losing brake fluid',
      'wheel wet on the inside',
      'one side weak and wet boot',
      'fluid level drops',
      'fishy smell from the wheel',
      'brake fluid leak at the rear wheel',
      'clean contaminated shoes',
    ],
    'oil on one lining': [
      'axle seal leaking on brake',
      'oil on the shoes',
      'gear oil in the drum',
      'grease on the lining',
      'handbrake holds one way only',
      'hub seal leak',
      'diff oil in the brake drum',
      'half shaft seal leaking',
      'holds facing downhill rolls facing uphill',
      'oil in the drum',
    ],
    glazed: [
      'have to stand on the pedal to stop',
      'need a lot of force on the pedal',
      'shiny linings',
      'glazed shoes',
      'hard pedal and weak brakes',
      'wooden pedal',
      'linings polished like glass',
      'brakes weak both sides pedal firm',
      'have to press hard',
      'brakes honk and linings shine',
      'roughen up linings with sandpaper',
      'brakes dont bite but pedal is hard',
      'poor brakes although everything is adjusted',
    ],
    damp: [
      'grabs in the morning',
      'brakes grab first stop when damp',
      'locks up cold and wet first stop',
      'sharp brakes in the morning then normal',
      'rear locks when wet',
      'grabs after rain',
      'grabby first thing in the morning',
      'snatches when cold and damp',
      'rear wheels lock after washing the car',
    ],
    'water inside': [
      'no brakes after driving through water',
      'weak after deep water',
      'brakes weak after a puddle',
      'water in the drum',
      'brakes dont work after car wash',
      'no brakes after the flood',
      'boat trailer brakes weak',
      'brakes gone after rain for some stops',
      'poor braking in the wet',
    ],
    'hot fade': [
      'brakes fade on a long hill',
      'no brakes after descent',
      'pedal long and weak when hot',
      'brakes go away down the mountain',
      'lost the brakes coming down',
      'brake fade',
      'weak after hard braking then come back',
      'brakes get weak when hot',
      'towing downhill brakes faded',
    ],
    'oversize bore': [
      'new shoes weak brakes',
      'weak after fitting new shoes',
      'new shoes in a worn drum',
      'shoes dont fit the drum contact only in the middle',
      'drum machined oversize and standard shoes',
      'drum skimmed and now brakes poor',
      'new shoes bear in the middle only',
      'brakes worse since new shoes',
    ],
    'lining ends': [
      'shoes touch at the ends only',
      'grabs since new shoes',
      'new shoes grab',
      'contact at the ends of the lining only',
      'linings touch only at toe and heel',
      'new shoes too big radius',
      'fierce brakes after new shoes',
      'shoes need arcing',
      'shoe radius too big for the drum',
    ],
    'oval drum': [
      'pedal pulses',
      'drum is oval',
      'drum warped',
      'drum out of round',
      'rubs twice a turn',
      'judder when braking',
      'brake pedal shudders',
      'pulsating pedal',
      'thump thump when braking',
      'egg shaped drum',
      'tight in two places when turned by hand',
      'wheel has tight spots',
    ],
    'drum off centre': [
      'rubs once a turn',
      'drum runs out',
      'drum not central',
      'swish once per revolution',
      'rust under the drum flange',
      'drum eccentric',
      'scuffing noise each turn',
      'catches at one spot each turn',
      'drum wobbles since hub was off',
      'tight spot once per rotation',
      'drum not true on the hub',
    ],
    lip: [
      'drum comes a bit then stops',
      'lip on the drum holds it',
      'wear ridge stops the drum',
      'drum slides out a few mm and stops',
      'ridge inside the drum catches the shoes',
      'drum hits the shoes coming off',
      'drum comes out slightly but wont come off',
      'rust ridge on the drum edge',
    ],
    'hub rust': [
      'drum turns but does not move outwards',
      'turns fine but wont come off',
      'drum rusted to the hub',
      'drum wont budge',
      'drum seized to the hub',
      'drum stuck on the hub turns but wont come',
      'hit it with a hammer and it wont move',
      'drum stuck solid to the flange',
      'drum is rusted on will not come off',
      'drum spins but will not pull off',
      'drum frozen on',
    ],
    groove: [
      'brake comes on late then snaps',
      'shoe catches in a groove in the backing plate',
      'clunk pop when braking first touch',
      'shoes hang up on the plate',
      'grooves worn in the backing plate',
      'shoe sticks then jumps',
      'popping noise when I press',
      'worn ledges on backing plate',
      'brakes snap on suddenly',
    ],
    bearing: [
      'drags only when loaded',
      'rubs when the car is laden',
      'free on the jack but hot on the road',
      'wheel bearing play',
      'wheel wobbles',
      'wheel rocks',
      'hub hot and rumble',
      'growling from the rear wheel',
      'spins free on stands gets hot driving',
      'play in the wheel',
      'noise changes in corners',
      'bearing gone',
    ],
    'rusted on': [
      'wheels locked after standing for months',
      'car stood for half a year wheels locked',
      'brakes stuck since it was parked',
      'stuck after rain then frees with a bang',
      'brakes stuck after standing for months',
      'shoes rusted to the drum',
      'car has been sitting and wheel wont turn',
      'rear wheel locked after washing the car and parking',
      'parked with handbrake on all winter wont move',
      'rear wheels skid along wont turn after standing',
      'brakes froze while parked',
      'shoes stuck to drum',
      'stuck overnight handbrake on wet',
    ],
  },
});

/** ui/ask/said/lessons.ts */
export const askSaidLessons = section('askSaidLessons', {
  howThisBrakeWorks: {
    title: 'How this brake works, in four minutes',
    idea: 'Part by part and cause by cause; it plays by itself, can be stopped anywhere and handled, and goes on.',
    says: [
      'talk me through a drum brake',
      'play me the whole thing',
      'a talk about how a drum brake works',
      'show it all by itself',
      'four minute explanation',
      'overview for beginners',
    ],
  },
  partsAndNames: {
    title: 'Parts and names',
    idea: 'A part is known by what stops working without it.',
    says: [
      'lesson about the parts of a drum brake',
      'learn the names of the parts',
      'teach the parts and what they do',
      'what happens without a part',
    ],
  },
  restPosition: {
    title: 'What sets the rest position',
    idea: 'Released, the return springs clamp the shoes on the strut; the strut decides.',
    says: [
      'lesson about the rest position',
      'what sets the gap when released',
      'lesson about return springs and strut',
      'teach why the shoes stop where they stop',
    ],
  },
  thePress: {
    title: 'The press',
    idea: 'A press is a chain: free play, springs, gap, force.',
    says: [
      'lesson about pressing the pedal',
      'what happens when the pedal goes down step by step',
      'teach pedal travel',
      'lesson about hydraulics of the wheel cylinder',
    ],
  },
  selfEnergising: {
    title: 'Self-energising and direction',
    idea: 'The drum helps one shoe and hinders the other.',
    says: [
      'lesson about self energising',
      'teach leading and trailing shoes',
      'explain to a class why one shoe does more',
      'lesson about direction of turning',
    ],
  },
  whyItGrows: {
    title: 'Why the clearance grows',
    idea: 'Wear of both linings and the drum all end up as travel.',
    says: [
      'lesson about wear and clearance',
      'teach why the gap grows',
      'why does the pedal get longer lesson',
    ],
  },
  theClick: {
    title: 'The click and the lost motion',
    idea: 'It steps when a press carries the shoes past the slot play by one whole tooth.',
    says: [
      'lesson about the click',
      'lesson about the self adjuster',
      'teach how the adjuster steps',
      'lesson about lost motion',
    ],
  },
  holdingTheTooth: {
    title: 'Holding the tooth',
    idea: 'The tooth carries load at rest and most when parked, none while braking.',
    says: [
      'lesson about worn teeth',
      'what loads the tooth of the adjuster',
      'teach when the tooth holds',
    ],
  },
  wearAndLimits: {
    title: 'Wear shares and limits',
    idea: 'Thinnest point, rate, limit, and an honest band.',
    says: [
      'lesson about wear limits',
      'teach how to measure linings',
      'lesson about how long shoes last',
    ],
  },
  drumOff: {
    title: 'The drum will not come off',
    idea: 'Four locks, four signs; pulling harder is not one of them.',
    says: [
      'lesson about a stuck drum',
      'teach taking a drum off',
      'exercise about a drum that does not come off',
    ],
  },
  newShoes: {
    title: 'New shoes right first time',
    idea: 'Adjuster back, preset, press, cable last, bed in.',
    says: [
      'lesson about fitting shoes',
      'teach fitting new shoes',
      'lesson about setting the shoes',
      'learn to change brake shoes',
    ],
  },
  parkingBothWays: {
    title: 'The parking brake, both ways',
    idea: 'One cable works both shoes through the strut.',
    says: [
      'lesson about the parking brake',
      'teach how the handbrake works',
      'lesson about parking on a slope',
      'class about the handbrake on a hill',
    ],
  },
  heat: {
    title: 'Heat: growth, a step too far, fade',
    idea: 'A hot drum looks like a worn one.',
    says: ['lesson about heat and fade', 'teach brake fade', 'lesson about hot drums'],
  },
  cheapestReading: {
    title: 'The cheapest reading',
    idea: 'Choose the reading that splits the causes, not the one you like.',
    says: [
      'lesson about fault finding',
      'teach diagnosis',
      'lesson about which check first',
      'exercise in diagnosis for students',
    ],
  },
  verdict: {
    title: 'From measurements to a verdict',
    idea: 'Measured, limit, margin, next date, whose limit.',
    says: [
      'lesson about inspection',
      'teach judging a brake',
      'lesson about measuring and verdict',
    ],
  },
});

/** ui/ask/said/order.ts */
export const askSaidOrder = section('askSaidOrder', {
  orderSaid: {
    back: [
      'how to back off the adjuster step by step',
      'back off through the hole',
      'adjuster will not lift in the hole',
      'which way do I push the lever in the hole',
      'other way without a hole',
      'how do I collapse the shoes',
      'shorten the adjuster with the drum on',
      'the lever in the hole will not move',
      'screwdriver in the hole adjuster will not move',
      'how much does one tooth give',
    ],
    apart: [
      'take the brake apart step by step',
      'in what order do the parts come off',
      'strip the brake',
      'dismantle the drum brake',
      'how do I get the springs off',
      'take the return spring off safely',
      'tool for the hold downs',
      'how to undo the hold down pins',
      'what to photograph first',
      'hold the pistons in',
      'clamp on the wheel cylinder',
      'what may fly off when I take it apart',
      'which spring first',
    ],
    together: [
      'put the brake back together',
      'in what order does it go together',
      'reassemble the brake',
      'which way round does the strut go in',
      'refit the springs and shoes',
      'how do I get the top spring on',
      'where do the springs hook in',
      'what gets greased when it goes together',
    ],
    set: [
      'set the shoes in order',
      'set new shoes step by step',
      'press until silent then the cable',
      'how many presses after new shoes',
      'how stiff should the wheel turn after fitting',
      'how free should the wheel be when it is all together',
      'cable last or first when setting',
      'notches after setting',
    ],
    bed: [
      'bed in step by step',
      'how many stops to bed in new shoes',
      'do ten stops bed them in',
      'how far to drive gently on new shoes',
      'run in new linings',
      'first drive after new shoes',
      'how hot do new shoes get when bedding in',
      'test drive after the brake job',
    ],
  },
});

/** ui/ask/said/other.ts */
export const askSaidOther = section('askSaidOther', {
  apply: [
    'how does a drum brake work',
    'show me how it works',
    'press the pedal',
    'explain drum brakes',
    'how do shoes press on the drum',
    'self energising effect',
    'forces on the shoes',
    'leading and trailing shoe',
    'torque of the brake',
    'pressure on the lining',
  ],
  wear: [
    'how do linings wear',
    'how long do linings last',
    'when does it click next',
    'life of the brake',
    'let it wear',
    'how many km do shoes last',
    'wear over km',
    'wear rate of shoes',
  ],
  drumOff: [
    'drum seized',
    'get a stuck drum off',
    'stuck brake drum',
    'drum jammed',
    'rear drum stuck on',
    'drum stuck',
    'drum wont come off',
    'cant get the drum off',
    'drum will not come off',
    'take the drum off',
    'how to remove a brake drum',
    'rear drum is stuck',
    'what holds the drum',
    'drum is seized on',
    'order of release for a stuck drum',
    'pulling a drum',
    'drum removal',
  ],
  park: [
    'handbrake on a slope',
    'will it hold on a hill',
    'how steep a slope does it hold',
    'how hard to pull the handbrake',
    'how many clicks should the handbrake have',
    'handbrake rolls back',
    'parking brake adjustment notches',
    'how many notches is normal',
    'handbrake efficiency',
    'where do the notches go',
  ],
  inspect: [
    'are these parts still good',
    'measure drum and linings',
    'are my shoes worn out',
    'how thin can linings be',
    'maximum drum diameter',
    'can I reuse the drum',
    'drum wear limit',
    'minimum lining thickness',
    'check brakes for inspection',
    'measurement sheet',
    'how much lining left',
    'is the drum still good',
    'inspect the brakes',
    'when to replace brake shoes',
    'max dia on the drum',
    'what does the number stamped on the drum mean',
    'number cast on the drum',
    'shoe thickness limit',
  ],
  newShoes: [
    'fit new brake shoes',
    'how do I change the shoes',
    'changing drum brake shoes',
    'replacing shoes step by step',
    'fit new shoes',
    'how to replace brake shoes',
    'change brake shoes',
    'set the shoes up',
    'adjust new shoes',
    'initial adjustment',
    'drum wont go on with new shoes',
    'preset shoes with a gauge',
    'bed in new shoes',
    'how to adjust drum brakes',
    'put it back together',
    'brake job',
    'set back the adjuster for new linings',
    'how tight should new shoes be',
    'bedding in',
  ],
  faults: [
    'what faults are there',
    'list of faults',
    'look at faults',
    'faulty brake',
    'find the fault exercise',
    'practise fault finding',
    'diagnosis',
  ],
  own: [
    'my own brake',
    'type in my sizes',
    'my drum is 8 inch',
    'my brake is different',
    'enter dimensions',
    'other drum size',
    'sizes of my car',
  ],
  questions: ['questions people ask', 'list of questions', 'faq', 'all questions'],
  see: [
    'what is wrong with my brake',
    'diagnose my brake',
    'say what I see',
    'I dont know what is wrong',
    'help me find out',
    'symptoms',
    'troubleshoot',
    'several things wrong at once',
  ],
  vary: [
    'what if I change one thing',
    'what happens if the friction is higher',
    'more friction lining what does it do',
    'bigger wheel cylinder bore what changes',
    'plot a curve of the brake factor',
    'draw a graph of torque against pressure',
    'vary a size over a range',
    'how does the brake factor depend on friction',
    'compare two brakes curve',
    'sensitivity of the brake to a size',
    'when does a shoe lock itself at which friction',
    'formula with the numbers put in',
  ],
  apart: [
    'adjuster taken apart',
    'how does the adjuster go together',
    'parts of the self adjuster',
    'what is behind the adjuster',
    'which way round does the toothed lever go',
    'what does the little spring on the adjuster do',
    'adjuster on the bench',
  ],
  compare: [
    'compare two brakes side by side',
    'two brakes with one pedal',
    'keep this as a ghost',
    'show what it was before beside what it is now',
    'new against worn side by side',
    'hot brake next to a cold one',
    'before and after side by side',
    'difference between two brakes',
  ],
  kind: [
    'which kind of drum brake is mine',
    'which type do I have',
    'servo or leading trailing',
    'identify my brake',
    'what adjuster do I have',
    'is mine self adjusting',
    'types of drum brakes',
    'types of adjusters',
  ],
  lessons: [
    'lessons for a class',
    'list of lessons',
    'teach my students',
    'learn drum brakes',
    'training course',
    'teaching material for pupils',
    'exercises',
  ],
  whereDoIBegin: 'where do I begin',
  firstPage: 'first page',
  topicsSaid: {
    drag: [
      'brake drags',
      'wheel gets hot',
      'one wheel hot',
      'brakes binding',
      'rear wheel is hot after driving',
      'smell of burning from the wheel',
      'car feels held back',
      'car wont coast',
      'smoke from the wheel',
      'brakes stick on',
      'drum too hot to touch',
      'rear brakes dragging',
      'wheel hard to turn',
    ],
    pedal: [
      'long pedal',
      'soft pedal',
      'pedal goes to the floor',
      'brake pedal goes far down',
      'pedal pulses',
      'pedal not right',
      'low pedal',
      'pedal travel too long',
    ],
    lever: [
      'car rolls away with the handbrake on',
      'handbrake on but car moves',
      'handbrake doesnt catch',
      'handbrake goes too far',
      'handbrake does not hold',
      'handbrake too many clicks',
      'handbrake wont hold on a hill',
      'handbrake weak',
      'handbrake no good',
      'handbrake useless',
      'parking brake not working',
      'failed on handbrake',
      'failed handbrake efficiency',
    ],
    braking: [
      'brakes weak',
      'brake grabs',
      'pulls to one side when braking',
      'car pulls',
      'rear wheel locks up',
      'imbalance on the rollers',
      'failed the brake test imbalance',
      'low brake effort',
      'brakes do not bite',
      'uneven braking',
      'one rear wheel locks up',
    ],
    noise: [
      'brake makes a noise',
      'squealing brakes',
      'grinding noise',
      'clunk from the rear brake',
      'noise from the rear wheel',
      'rubbing noise',
      'scraping noise from the drum',
      'brake groans',
    ],
  },
  computedSaid: {
    free: [
      'will it wear free by itself',
      'new shoes rub will it bed in and free itself',
      'will the drag go away if I drive it',
      'too tight will it loosen by itself',
      'can I drive it until it frees',
      'how far until it wears free',
      'how hot does a dragging drum get',
      'how hot should a drum get',
      'shoes a bit tight will they wear in',
      'how many km until the drag is gone',
      'how hot will the drum get if it rubs',
      'does a slight drag matter',
      'fuel consumption of a dragging brake',
    ],
  },
  stay: 'Do not drive it: a brake that may not stop does not leave.',
  sinkingTitle: 'Pedal that sinks under a steady foot',
  sinkingText: (stay: string) =>
    `${stay} A master seal or a leak lets fluid past: not in this model. Look for wet at all four wheels and along the pipes; have it moved on a trailer and seen to.`,
  sinkingSays: [
    'pedal sinks slowly to the floor',
    'pedal creeps down while I hold it',
    'pedal goes down at the lights',
    'pedal drops when I keep my foot on',
    'pedal bleeds down',
    'pedal slowly goes to floor with engine running',
  ],
  safeTitle: 'Is it safe to drive?',
  safeText: (stay: string) =>
    `Nobody can say yes from here. ${stay} Test only at walking pace on level, empty ground, or have it moved on a trailer; a qualified person decides.`,
  safeSays: [
    'is it safe to drive',
    'can I drive it like this',
    'can I still drive home',
    'is it dangerous',
    'ok to drive with one brake',
    'can I leave it',
    'can I keep driving with grinding brakes',
    'how long can I drive like this',
    'will it be ok for a trip',
  ],
  looseLiningTitle: 'Loose lining, or a lock one way with a bang',
  looseLiningText: (stay: string) =>
    `${stay} A lining that has come off its shoe wedges anywhere; here linings are fast to their shoes. Drum off, and shoes on both wheels.`,
  looseLiningSays: [
    'lining came off the shoe',
    'lining peeled off',
    'lining delaminated',
    'shoe lining broken loose',
    'bang and wheel locked one way',
    'lining come unstuck',
    'piece of lining fell out of the drum',
  ],
  crackTitle: 'Cracked drum',
  crackText:
    'A cracked drum is scrap: never weld it, never refit it. A clear ring when tapped says whole, a dull one look again. Renew both drums of the axle.',
  crackSays: [
    'drum is cracked',
    'crack in the drum',
    'can a cracked drum be welded',
    'hairline cracks in the drum',
    'heat cracks',
    'drum sounds dull when tapped',
  ],
  discs: {
    id: 'discs',
    title: 'Disc brakes',
    text: 'Not on this bench: it computes drums with a leading and a trailing shoe. Front discs are for their maker’s handbook.',
    says: [
      'front disc brake',
      'front brake pads',
      'disc brake caliper sticking',
      'brake disc warped',
      'rear discs',
      'front brakes squeal',
    ],
  },
  inDiscTitle: 'Drum inside a disc',
  inDiscText:
    'Small shoes inside the disc’s hat are for parking alone: pedal, shares and clicks do not carry over. Lip, rust and a seized cable do. See which kind is yours.',
  inDiscSays: [
    'drum in disc handbrake',
    'handbrake shoes inside the disc',
    'drum in hat parking brake',
    'parking shoes inside rear rotor',
    'rear disc will not come off handbrake shoes',
  ],
  servoTitle: 'Servo brake (duo-servo)',
  servoText:
    'Not here: one shoe pushes the other round. Directions, the shares of the shoes and what turns the adjuster do not carry over; lip, rust, cable and drum do. See which kind is yours.',
  servoSays: [
    'duo servo brake',
    'primary and secondary shoe which goes in front',
    'primary shoe shorter lining',
    'long lining to the front or the short lining',
    'self adjuster adjusts in reverse',
    'adjusts when reversing',
    'back up and brake to adjust',
    'servo drum brake',
    'star wheel at the bottom anchor at the top',
  ],
  otherKindsTitle: 'Twin leading, cam, air, electric and band brakes',
  otherKindsText:
    'Not here. What is said of lip, rust, heat and worn drums holds for them too; pedal, shares and adjuster do not.',
  otherKindsSays: [
    'twin leading shoe',
    'air brake s cam',
    'electric trailer brake magnet',
    'motorcycle drum brake',
    'bicycle drum brake',
    'cam operated brake',
    'washing machine drum',
    'snare drum',
    'overrun trailer brake reversing',
  ],
  boosterTitle: 'Vacuum booster',
  boosterText: (stay: string) =>
    `Its inside is not in this model. A hard pedal with weak brakes: engine off, pump until firm, hold, start: the pedal should drop a little. If not, have it seen to. ${stay}`,
  boosterSays: [
    'brake booster',
    'vacuum servo not working',
    'hissing when I press the brake',
    'pedal hard no vacuum',
    'hard pedal with engine off',
  ],
  lamp: {
    id: 'lamp',
    title: 'Warning lamps, anti-lock, brake lights',
    text: 'Not on this bench. A brake lamp may mean fluid low: thin linings or a leak. Look at the level, then for wet; the handbook names the lamp.',
    says: [
      'brake warning light on',
      'abs light on',
      'warning lamp',
      'brake light stays on',
      'handbrake light stays on',
      'red brake light',
    ],
  },
  electric: {
    id: 'electric',
    title: 'Electric parking brake',
    text: 'Not here: a motor pulls or presses where this bench has a lever and a cable. Put it in its service position by the maker’s way before any work.',
    says: ['electric parking brake', 'electronic handbrake wont release', 'epb motor'],
  },
  noise: {
    id: 'noise',
    title: 'Squeal and other noise',
    text: 'Noise is not computed. Shiny linings, loose hold-downs and dry pads on the plate are looked at first; a thin film of high-temperature grease on pads and pivots, none on a lining. Grinding of metal: do not drive it.',
    says: [
      'brakes squeal',
      'squeaky brakes',
      'screeching noise',
      'squeal when letting go the pedal',
      'how to stop brake squeal',
      'chirping from rear wheel',
      'brakes moan',
      'shudder and groan noise at low speed',
    ],
  },
  rattle: {
    id: 'rattle',
    title: 'Rattle: hold-down lost or loose',
    text: 'A shoe that tilts lies out of this plane: the layer Edge-on shows it. Look at pins, cups and springs: one missing lets the shoe rattle and wears one edge.',
    says: [
      'rattle from the drum',
      'something loose rattles in the drum',
      'hold down spring came off',
      'lost a hold down pin',
      'pin and cup missing',
      'tinkling noise from brake',
      'one edge of the lining worn',
      'lining worn on the inner edge',
      'shoe sits crooked tilted',
    ],
  },
  clunk: {
    id: 'clunk',
    title: 'One clunk after a change of direction',
    text: 'A shoe crosses the play of a worn pin or abutment. Pins here have none, so it is not shown; rock the shoe on its pin with the drum off.',
    says: [
      'clunk when changing direction',
      'clunk first brake after reversing',
      'one clunk forward to reverse',
      'knock when I brake after backing up',
      'single clunk when reversing then braking',
    ],
  },
  bell: {
    id: 'bell',
    title: 'Bell-mouthed or tapered drum',
    text: 'The bore changes along the axle, and this view looks along it. Measure at three depths; the sheet in Inspect takes two and judges the taper.',
    says: ['bell mouthed drum', 'drum is tapered', 'drum conical', 'bore bigger at the open end'],
  },
  prices: {
    id: 'prices',
    title: 'Prices, brands, part numbers',
    text: 'Not here. What the part must have is on the sheet in Inspect: drum Ø, lining width and thickness, cylinder bore, side. Buy for both wheels of the axle.',
    says: [
      'how much do brake shoes cost',
      'which brand of shoes',
      'part number',
      'where to buy shoes',
      'which shoes should I buy',
      'price of a drum',
      'best brake shoes',
    ],
  },
  torqueTitle: 'Tightening torque',
  torqueText:
    'The maker’s figure alone, never one from elsewhere. Wheel nuts again after the maker’s distance; a hub nut is often for one use.',
  torqueSays: [
    'wheel nut torque',
    'hub nut torque',
    'how tight hub nut',
    'torque for the wheel cylinder bolts',
    'how many nm',
    'drum nut torque',
  ],
  fluidGrade: {
    id: 'fluid grade',
    title: 'Which brake fluid',
    text: 'The grade the maker names on the cap, from a sealed container; kinds are never mixed. Level too low: linings are worn or it leaks.',
    says: [
      'which brake fluid',
      'dot 4 or dot 5',
      'can I mix brake fluid',
      'can I use oil instead of brake fluid',
      'top up brake fluid',
      'when to change brake fluid',
    ],
  },
  legal: {
    id: 'legal',
    title: 'Legal limits and official tests',
    text: 'Limits are of the place: ask the body that inspects. Inspect keeps each limit with its owner; the rollers’ figures are read in What I see.',
    says: [
      'what is the legal limit',
      'minimum for the mot',
      'handbrake percentage for the test',
      'is it a fail',
      'allowed imbalance',
      'how many percent handbrake needs',
      'law on brake lining thickness',
    ],
  },
  cleaning: {
    id: 'cleaning',
    title: 'Cleaning soaked linings',
    text: 'Not done: no sanding, roasting or washing. Find the leak, then shoes on both wheels.',
    says: [
      'can I clean oil off brake shoes',
      'burn off brake fluid from linings',
      'brake cleaner on contaminated shoes',
      'wash soaked shoes with petrol',
      'bake the brake shoes',
      'degrease linings',
    ],
  },
  heatItTitle: 'Heating or striking a stuck drum',
  heatItText:
    'No flame near fluid, no blow on the rim: it cracks or bends. Name what holds it first: Drum off tells lip, rust, adjuster, cable and pressure apart.',
  heatItSays: [
    'heat the drum with a torch',
    'blowtorch on stuck drum',
    'hit the drum with a big hammer',
    'hammer on the rim',
    'beat it off with a sledgehammer',
    'can I use a puller on the drum',
    'lever it off with a pry bar',
  ],
  bleeding: {
    id: 'bleeding',
    title: 'How to bleed',
    text: 'Shoes set first, drums on, reservoir never empty, the named fluid, wheel by wheel in the maker’s order until no bubble comes; then hold a firm press for a minute: it must not sink. Who has never done it does it with one who has.',
    says: [
      'how to bleed rear brakes',
      'which wheel to bleed first',
      'bleeding order',
      'bleed brakes alone',
      'do I have to bleed after changing the wheel cylinder',
      'gravity bleeding',
      'bleed nipple snapped',
      'bleed screw seized',
    ],
  },
  dustTitle: 'Dust in the drum',
  dustText:
    'Harmful whatever the lining. Wet it or collect it with a fine-filter vacuum; no air line, no dry brush, no household vacuum.',
  dustSays: [
    'blow out brake dust',
    'clean the dust with compressed air',
    'is brake dust asbestos',
    'asbestos in old shoes',
    'vacuum the brake dust',
    'clean inside of the drum',
  ],
  grease: {
    id: 'grease',
    title: 'What is greased',
    text: 'A thin film of high-temperature grease on the plate’s pads, the pivots and the adjuster’s thread; none on teeth, linings or drum.',
    says: [
      'where to grease drum brakes',
      'which grease for brake shoes',
      'copper grease on backing plate',
      'lubricate adjuster',
      'grease the star wheel',
      'can I oil the adjuster',
    ],
  },
  oneSide: {
    id: 'one side',
    title: 'Only one side renewed',
    text: 'Both wheels of the axle alike: shoes, springs, drums, cylinders of one size. One relined wheel brakes less until it is bedded and pulls to the other.',
    says: [
      'can I change shoes on one side only',
      'replace only one wheel cylinder',
      'do I have to do both sides',
      'one new drum only',
      'replace one drum',
    ],
  },
  chamfer: {
    id: 'chamfer',
    title: 'Filing, notching or chamfering linings',
    text: 'Not done: unlike wear is how the mechanism works, about three to one. A noise or a grab has a cause; find it in What I see.',
    says: [
      'chamfer the lining edges',
      'file the leading edge',
      'grind the shoe ends',
      'notch the lining',
      'bevel the shoes',
    ],
  },
  airBags: {
    id: 'air bags',
    title: 'Other axle, tyres, suspension',
    text: 'A pull without braking, or from the front axle, is not this brake’s: tyres, tracking and front brakes first.',
    says: [
      'car pulls without braking',
      'wheel alignment',
      'tyre wear uneven',
      'steering shakes',
      'suspension noise',
    ],
  },
  bendingSaid: {
    title: 'Shoes that bend',
    text: 'Web and table give as steel does, and the whole bench goes by them, rigid figures beside. Key b, or on the Bench sheet.',
    says: [
      'bending shoes',
      'shoes that bend',
      'do brake shoes bend',
      'flexible shoes',
      'shoe flex',
      'rigid or flexible shoe',
      'how much does a shoe bend',
      'shoe deflection under pressure',
      'elastic shoes',
      'stiffness of the shoe',
      'bow of the shoe',
    ],
  },
  dialsOnTheBrake: 'Dials on the brake',
  handlesOnTheDrawingDrag:
    'Handles on the drawing: drag a pin, the friction, a spring, the bore, and watch the factor. Each snaps back to your brake’s own. Key u.',
  handlesOnTheDrawing: 'handles on the drawing',
  dragAPin: 'drag a pin',
  moveTheAnchorPin: 'move the anchor pin',
  moveThePivotOfThe: 'move the pivot of the shoe',
  changeTheFriction: 'change the friction',
  whatIfTheFrictionWere: 'what if the friction were higher',
  changeTheBoreByHand: 'change the bore by hand',
  turnASizeAndWatch: 'turn a size and watch the factor',
  slidersOnTheBrake: 'sliders on the brake',
  makeTheSpringStronger: 'make the spring stronger',
  playWithTheSizes: 'play with the sizes',
  dragTheSizesOfThe: 'drag the sizes of the brake',
  polygonsSaid: {
    title: 'Force polygons',
    text: 'All forces on each shoe as arrows head to tail: they close, as for any body at rest. Key p.',
    says: [
      'force polygon',
      'polygon of forces',
      'free body of the shoe',
      'free body diagram',
      'head to tail arrows',
      'tip to tail',
      'vector sum of the forces',
      'do the forces add up',
      'equilibrium of the shoe',
      'forces in balance on a shoe',
    ],
  },
  leadingShoe: 'Leading shoe',
  theShoeThatTheTurning:
    'The shoe that the turning drum drags tighter onto itself. Turn the drum the other way and it is the other one.',
  whatIsALeadingShoe: 'what is a leading shoe',
  primaryShoeMeaning: 'primary shoe meaning',
  whichShoeIsLeading: 'which shoe is leading',
  frontShoeOrRearShoe: 'front shoe or rear shoe leading',
  trailingShoe: 'Trailing shoe',
  theShoeThatTheTurning2:
    'The shoe that the turning drum pushes away; it does about a quarter of the work.',
  whatIsATrailingShoe: 'what is a trailing shoe',
  secondaryShoeMeaning: 'secondary shoe meaning',
  whyDoesOneShoeWear: 'why does one shoe wear less',
  theDrumsDragPressesThe:
    'The drum’s drag presses the leading shoe on harder than the piston alone.',
  selfEnergisingWord: 'Self-energising',
  whatIsSelfEnergising: 'what is self energising',
  servoEffectInDrumBrakes: 'servo effect in drum brakes',
  whyIsADrumBrake: 'why is a drum brake so strong',
  theToothedLeverDropsInto:
    'The toothed lever drops into the next tooth: the strut is one tooth longer.',
  whatIsTheClickWhen: 'what is the click when I press the pedal',
  whyDoesItClick: 'why does it click',
  clickingWhenIPressThe: 'clicking when I press the brake after new shoes',
  oneClickOfTheHand: 'One click of the hand lever.',
  whatIsANotchOn: 'what is a notch on the handbrake',
  howManyClicksIsNormal: 'how many clicks is normal',
  theGapBetweenLiningAnd:
    'The gap between lining and drum with nothing pressed: a few tenths of a millimetre.',
  howMuchGapBetweenShoe: 'how much gap between shoe and drum',
  runningClearance: 'running clearance',
  whatClearanceShouldBrakeShoes: 'what clearance should brake shoes have',
  gapOfBrakeShoesIn: 'gap of brake shoes in mm',
  lostMotion: 'Lost motion',
  playInTheSlotThat: 'Play in the slot that the shoes may part by before a tooth is climbed.',
  lostMotionMeaning: 'lost motion meaning',
  slotPlay: 'slot play',
  playInTheStrut: 'play in the strut',
  strutEndPlay: 'strut end play',
  toeAndHeel: 'Toe and heel',
  toeTheEndOfA: 'Toe: the end of a shoe at the cylinder. Heel: the end at its pin or abutment.',
  toeOfTheShoe: 'toe of the shoe',
  heelOfTheShoe: 'heel of the shoe',
  whichEndIsTheToe: 'which end is the toe',
  theUnwornEdgeOfThe: 'The unworn edge of the drum that stands inside the worn track.',
  whatIsTheLip: 'what is the lip',
  ridgeAtTheEdgeOf: 'ridge at the edge of the drum',
  hotLock: 'Hot lock',
  aStripOfTwoMetals:
    'A strip of two metals that keeps the adjuster from stepping while the drum is hot.',
  whatIsTheBimetalFor: 'what is the bimetal for',
  thermalClipOnTheAdjuster: 'thermal clip on the adjuster',
  runOutOfAPiston: 'Run-out of a piston',
  soFarAPistonMay: 'So far a piston may go before its cup leaves the bore.',
  pistonComingOutOfCylinder: 'piston coming out of cylinder how far',
  outOfRound: 'Out of round',
  theBoreIsLongerOne: 'The bore is longer one way than the other: it rubs twice a turn.',
  whatDoesOvalityMean: 'what does ovality mean',
  ovalityPercentOnTheBrake: 'ovality percent on the brake test',
  howMuchOutOfRound: 'how much out of round is allowed',
  frictionFallsAndTheDrum:
    'Friction falls and the drum grows when it is hot: weak and long together.',
  whatIsBrakeFade: 'what is brake fade',
  beddingIn: 'Bedding in',
  newLiningsWearUntilThey:
    'New linings wear until they bear along their whole arc: hundreds of kilometres, not ten stops.',
  howToBedInBrake: 'how to bed in brake shoes',
  howLongDoesBeddingIn: 'how long does bedding in take',
  breakInNewShoes: 'break in new shoes',
  runningInNewBrakeShoes: 'running in new brake shoes',
  howManyStopsToBed: 'how many stops to bed in',
  driveGentlyForTheFirst: 'drive gently for the first hundred miles',
  brakeFactor: 'Brake factor',
  howManyNewtonsOfDrag: 'How many newtons of drag at the drum one newton on the toes makes.',
  whatIsBrakeFactor: 'what is brake factor',
  shoeFactor: 'shoe factor',
  theBarThatSharesThe: 'The bar that shares the hand lever’s pull between both cables.',
  whatIsTheEqualiser: 'what is the equaliser',
  compensatorOnTheCable: 'compensator on the cable',
  yPieceOfTheHandbrake: 'y piece of the handbrake',
  leadAndTrailSwap: 'Lead and trail swap',
  backwardsTheRearShoeLeads: 'Backwards the rear shoe leads: role, not place.',
  whichShoeLeadsInReverse: 'which shoe leads in reverse',
  doTheShoesSwapIn: 'do the shoes swap in reverse',
  backOff: 'Back off',
  makingTheAdjusterShorterLift:
    'Making the adjuster shorter: lift the lever first, then move it back.',
  whatDoesBackOffMean: 'what does back off mean',
  backOffTheAdjusterHow: 'back off the adjuster how',
  rollerTest: 'Roller test',
  eachWheelIsDrivenOn:
    'Each wheel is driven on rollers while you brake: force a wheel, both ways, and its swing in a turn.',
  whatIsARollerTest: 'what is a roller test',
  rollingRoadBrakeTest: 'rolling road brake test',
  howDoesTheBrakeTester: 'how does the brake tester work',
  brakeTestPrintOutExplained: 'brake test print out explained',
});

/** ui/ask/said/parts.ts */
export const askSaidParts = section('askSaidParts', {
  partsSaid: {
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
  },
  cautionsSaid: {
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
  },
});

/** ui/ask/said/questions.ts */
export const askSaidQuestions = section('askSaidQuestions', {
  questionsSaid: {
    q001: [
      'drum slides out a few mm then stops handbrake cable slack',
      'drum comes out 6 mm and stops',
      'drum moves a bit but wont come off cable is off',
    ],
    q002: [
      'how do I hold the lever away to wind the adjuster back',
      'hold the pawl off while turning the star wheel',
    ],
    q003: [
      'no access hole how to back off adjuster',
      'there is no hole to get at the adjuster',
      'cant find a hole in the drum or backing plate',
    ],
    q004: [
      'ridge or rust holding the drum',
      'is it the lip or the rust at the hub',
      'which way do I turn the adjuster to release the drum',
      'which direction to back off the adjuster',
      'adjuster clockwise or anticlockwise to loosen',
    ],
    q005: [
      'tried penetrating oil puller heat and hammer drum still on',
      'tried everything drum wont come off',
      'drum still stuck after hammering',
    ],
    q006: [
      'threaded holes in the drum what for',
      'use jacking bolts to push the drum off',
      'two bolts to push the drum off',
      'how to use the screw holes to get the drum off',
    ],
    q007: [
      'set shoes by number of wheel turns and drum is stuck',
      'adjusted until two turns of the wheel now drum wont come off',
    ],
    q008: [
      'cant find the adjuster through the hole',
      'what do I feel for through the hole',
      'where is the lever behind the drum seen through the hole',
    ],
    q009: [
      'tightened the handbrake and now the drum wont come off',
      'drum came off before I adjusted the handbrake cable',
    ],
    q010: [
      'drum hangs on one shoe after new shoes',
      'no star wheel how to set the adjuster back',
      'no screw adjuster only a spring loaded one how to reset',
    ],
    q011: [
      'drum sits crooked',
      'drum goes only part way on',
      'drum wont seat adjuster all the way in',
      'drum wont go all the way on',
      'drum wont go back on everything adjusted in',
      'wheel very hard to turn after forcing the drum on',
    ],
    q012: [
      'drum too tight over new shoes',
      'new shoes drum too tight',
      'new shoes drum wont fit over',
      'drum went on with old shoes not with new',
      'new shoes too thick for the drum',
      'drum will not go over new shoes',
    ],
    q013: [
      'changed wheel cylinder and now drum too tight',
      'after new wheel cylinder shoes are too tight',
      'new wheel cylinder drum wont go on',
    ],
    q014: [
      'new drum went on tight and seized',
      'replacement drum too tight',
      'new drum is tight on old shoes',
    ],
    q015: ['ground the lip off the drum now pedal long', 'removed the ridge from the drum'],
    q016: [
      'how does the self adjuster work',
      'how does the stepped adjuster take up wear',
      'when does the adjuster click',
      'how does the ratchet adjuster work',
      'explain the self adjuster',
    ],
    q017: [
      'what moves the adjuster',
      'adjuster does not adjust what should turn it',
      'what makes the adjuster turn',
    ],
    q018: [
      'clicking noise when I press the brake pedal',
      'it clicks when I press is that normal',
      'click from the rear when braking',
      'clicks when I press the pedal after new shoes',
    ],
    q019: [
      'new shoes handbrake goes vertical wont ratchet',
      'adjuster wont step after new shoes however hard I pull',
    ],
    q020: [
      'does it adjust the shoes or the cable',
      'does the self adjuster shorten the cable',
      'does the automatic adjuster take up the cable',
    ],
    q021: [
      'do I have to reverse to adjust the brakes',
      'brake in reverse to adjust',
      'reverse and brake hard to self adjust',
      'adjust by driving backwards',
    ],
    q022: [
      'self adjusters did not keep up',
      'both drums fifteen clicks out nothing broken',
      'why did the adjusters not keep up',
    ],
    q023: [
      'found a loose threaded part in the drum',
      'part fell out of the drum',
      'strut fell out',
      'loose part inside the brake',
    ],
    q024: [
      'adjuster works off the handbrake',
      'never use the handbrake does it still adjust',
      'self adjusts with the handbrake lever',
      'dont use my handbrake so it never adjusts',
    ],
    q025: [
      'adjuster cannot be lifted under load',
      'adjuster jammed wont lift',
      'cant back off adjuster even with lever pushed away',
      'adjuster jammed tight cannot back off',
      'wound it out until it locked now stuck',
    ],
    q026: [
      'turned adjuster the wrong way shoes locked',
      'turned the star wheel the wrong way',
      'went the wrong way and now it is locked',
    ],
    q027: [
      'how far do I wind the adjuster back',
      'how many clicks do I turn the star wheel back',
      'how many clicks to back off',
      'how many teeth back to free the wheel',
      'how far do I back the adjuster off',
    ],
    q028: [
      'keeps over adjusting',
      'adjuster keeps tightening itself until hot',
      'set a light drag then drum gets burning hot again',
      'self adjuster too tight again and again',
    ],
    q029: ['one more click and wheel is tight', 'pulled the handbrake once more and now tight'],
    q030: [
      'over adjusted will it wear free',
      'can I just drive it until it frees up',
      'shoes too tight will it sort itself out',
    ],
    q031: ['star wheel turns one way springs back the other', 'wheel of the adjuster springs back'],
    q032: [
      'adjuster can go in either way',
      'which way up does the adjuster go',
      'which way takes up slack',
    ],
    q033: [
      'how tight should I set the shoes',
      'how much drag when adjusting drum brakes',
      'what gap for new shoes',
      'should there be a slight drag when adjusting',
      'light drag how much',
    ],
    q034: [
      'adjust until solid press once and it spins free pedal low',
      'wheel locks press the pedal then free again',
    ],
    q035: ['new tight cable still creeps', 'new handbrake cable still wont hold'],
    q036: [
      'adjust shoes or handbrake cable first',
      'order shoes or cable first',
      'when do I adjust the handbrake cable',
      'handbrake cable adjustment after new shoes',
      'do I adjust the cable before the shoes',
      'cable before or after pressing the pedal',
      'is the cable set last',
    ],
    q037: [
      'wheel free on stands but hot on the road',
      'spins freely jacked up but gets hot driving',
    ],
    q038: [
      'hot and smoking then fine when cold',
      'smoking brake cable or cylinder',
      'smoke from rear wheel fine after cooling',
    ],
    q039: [
      'how freely should the wheel spin',
      'how much drag is normal when turned by hand',
      'should the wheel turn freely',
      'how many turns should the wheel spin',
    ],
    q040: [
      'one drum warm the other cold after a drive',
      'how warm should drums be',
      'one drum cool should I tighten it',
    ],
    q041: [
      'one side 50 the other 68 degrees',
      'infrared thermometer drum temperature difference',
      'normal drum temperature',
      'what temperature should drums be',
    ],
    q042: [
      'all four brakes tighten as I drive',
      'brakes get tighter the longer I drive',
      'brakes drag when warm free after standing',
    ],
    q043: [
      'new shoes one drum too hot after twenty minutes',
      'drum hot after fitting new shoes',
      'new shoes get hot normal',
      'hot drums after brake job',
    ],
    q044: [
      'handbrake never fully released linings worn on inner edge hot again',
      'worn on the backing plate side only',
    ],
    q045: [
      'burning smell from one wheel',
      'one wheel smells after driving',
      'smell of burning brake',
    ],
    q046: ['shoes rode off their pads', 'shoes and drums burned out early'],
    q047: [
      'drove with the handbrake on',
      'left the handbrake on while driving',
      'forgot the handbrake did I damage it',
      'drove off with parking brake on',
    ],
    q048: [
      'brakes hang on after each stop hose or cylinder',
      'brake drags a while after stopping then lets go',
    ],
    q049: [
      'holds nose down but not nose up',
      'holds facing one way',
      'handbrake holds forwards not backwards',
      'handbrake holds one way only',
      'rolls back but holds forward',
      'parking brake wont hold backwards',
    ],
    q050: [
      'locks forwards turns backwards',
      'wheel locked forwards only',
      'wheel turns in reverse but locks forward',
    ],
    q051: [
      'why does the front shoe do more',
      'why does the leading shoe brake more',
      'which shoe does most of the work',
      'why is one shoe stronger forwards',
      'why does one shoe bite harder than the other',
    ],
    q052: ['after reversing brake locked going forward', 'locks after I reverse'],
    q053: [
      'handbrake holds if pulled before stopping but creeps when pulled at rest',
      'handbrake holds when rolling not when stopped',
    ],
    q054: [
      'weak forwards better in reverse',
      'brakes better in reverse than forward',
      'brakes work better backwards',
    ],
    q055: [
      'what is the leading shoe',
      'leading shoe the first to touch',
      'which shoe is the leading one',
      'difference leading and trailing',
    ],
    q056: ['hard to turn forwards easy backwards', 'stiff one way only by hand'],
    q057: [
      'one shoe worn more than the other',
      'front shoe worn twice as much',
      'leading shoe thinner than trailing',
      'uneven wear of the two shoes',
      'one shoe gone the other like new',
    ],
    q058: [
      'shoe thick at one end thin at the other',
      'lining worn at one end',
      'lining worn at the top only tapered wear',
    ],
    q059: ['shoe worn to metal only at the upper half', 'top half of shoe down to metal'],
    q060: [
      'left shoes worn more than right',
      'one wheel wears faster',
      'shoes on one side worn out other side like new',
    ],
    q061: ['shoe worn at the outer edge', 'edge of lining worn screech'],
    q062: [
      'swap the shoes over to even the wear',
      'can I swap leading and trailing shoes',
      'can I put the worn shoe at the back',
    ],
    q063: [
      'grabs first stop in the damp morning',
      'brakes bite first thing in the morning then fine',
    ],
    q064: [
      'after wet days the brake held then broke free',
      'brake stuck after rain then let go as I backed up',
    ],
    q065: ['rear wheel locks after rain causes', 'tyre locks in the wet'],
    q066: ['grabs since new shoes will it bed in', 'new shoes grab will it go away'],
    q067: ['grabs hard pulses when gentle', 'one side grabs when pressed hard'],
    q068: [
      'clunk only first stop after changing direction',
      'clunk once when I change from reverse to forward',
    ],
    q069: [
      'pop when I press after standing',
      'popping noise first press',
      'bang from the brake when setting off',
    ],
    q070: ['drum honks linings shiny', 'can I roughen shiny linings', 'sand glazed brake shoes'],
    q071: ['grind bright spot on shoe edge and rivets', 'bright ring in the drum grinding'],
    q072: ['how do I stop drum brake squeal', 'cure for squealing drums'],
    q073: ['squeals when I let the pedal up', 'squeal on release standing still'],
    q074: ['grinding with pedal none with handbrake'],
    q075: ['rattle in the drum on rough road', 'something loose in the drum rattles'],
    q076: [
      'catches at one spot when turned by hand',
      'rubs under braking one spot',
      'lining bearing or drum rub',
    ],
    q077: ['pulled one way now pulls the other', 'pulls other way after sorting shoes'],
    q078: ['pulls since wheel cylinder renewed', 'new wheel cylinder on one side car pulls'],
    q079: [
      'only one shoe moves when I press with drum off',
      'one shoe moves other does not drum off',
    ],
    q080: [
      'test found low effort one side tightened cable',
      'low brake effort one side handbrake and pedal',
    ],
    q081: [
      'roller test imbalance',
      'failed on imbalance',
      'brake imbalance across the axle',
      'too much difference between left and right on the rollers',
    ],
    q082: [
      'everything new wont hold on slope',
      'all new parts handbrake still wont hold drum worn',
    ],
    q083: [
      'new drum differs across two diameters',
      'oval or off centre drum',
      'drum knocks half a millimetre out',
    ],
    q084: [
      'can the drum be skimmed',
      'how deep can the drum be machined',
      'machine the drum or renew it',
      'skim or replace the drum',
      'drum is scored can it be turned',
      'how deep can a groove in the drum be',
      'deep scores in the drum',
    ],
    q085: [
      'how do I know if the drum needs replacing',
      'is my drum worn out looks smooth',
      'when to replace a brake drum',
      'check if drum is worn',
    ],
    q086: [
      'free when backed off rubs at some points after pumping',
      'how much out of round is ok',
      'rubs in places after adjusting',
    ],
    q087: [
      'wet behind the plate brake fluid or axle oil',
      'is it brake fluid or gear oil',
      'oil or brake fluid in the drum',
    ],
    q088: ['piston comes out of the cylinder when pressed', 'piston pops out with worn shoes'],
    q089: [
      'wheel cylinder blew after new shoes',
      'wheel cylinder burst adjusted too tight',
      'wheel cylinder leaks since new shoes',
    ],
    q090: [
      'spongy since wheel cylinder changed',
      'how to tell air in the brakes',
      'air or adjustment soft pedal',
    ],
    q091: [
      'pedal goes far down master cylinder replaced twice',
      'new master cylinder still low pedal',
    ],
    q092: [
      'new cylinders shoes drums bled still half pedal',
      'replaced everything still low pedal',
      'bled it three times still low pedal',
    ],
    q093: ['first press of the day is long then ok', 'pedal long every morning'],
    q094: ['drum tight fit but long pedal', 'drum snug over shoes but pedal long lip'],
    q095: ['pedal low comes up when pumped', 'pedal pumps up', 'pump pedal twice and it is fine'],
    q096: [
      'pedal throbs when braking gently',
      'is it the rear drum or the front disc that judders',
      'pedal pulses lightly braking',
    ],
    q097: [
      'lever slack shoes or cable',
      'handbrake too many clicks shoes or cable',
      'is it the shoes or the cable',
      'handbrake comes up too far cable or shoes',
    ],
    q098: [
      'creeps back on a slope however hard I pull',
      'rolls on a hill even pulled hard',
      'handbrake wont hold on a steep hill',
    ],
    q099: [
      'how many clicks on the handbrake',
      'how many notches should the handbrake have',
      'handbrake clicks normal',
    ],
    q100: [
      'new shoes wheels lock but roller test says nothing',
      'handbrake failed on rollers with new shoes',
    ],
    q101: ['holds on mild slopes slides on steep', 'handbrake ok on gentle hill not on steep'],
    q102: [
      'handbrake stays on in frost',
      'handbrake frozen on',
      'handbrake stuck on after pulling hard',
      'handbrake wont come off',
    ],
    q103: ['rebuilt handbrake worked once then slack', 'handbrake slack again after one pull'],
    q104: [
      'handbrake useless what is usually seized',
      'how to reset the handbrake adjusters',
      'handbrake does nothing where do I begin',
    ],
    q105: [
      'handbrake holds on one wheel only',
      'handbrake one side weak cable or drum',
      'handbrake uneven left right',
    ],
    q106: [
      'equaliser stays put when I let go',
      'compensator does not return',
      'do the springs in the drum pull the cable back',
    ],
    q107: ['parked on slope brakes hang on after release', 'hangs on after parking on a hill'],
    q108: [
      'how steep should the handbrake hold',
      'what slope must the parking brake hold',
      'twenty percent slope handbrake',
    ],
    q109: [
      'both wheels move a little then lock after months',
      'stood for months both rear wheels locked',
    ],
    q110: ['after two months one tyre drags', 'one wheel stuck after standing lever off'],
    q111: [
      'how long will these shoes last',
      'how many km left on my linings',
      'when will I need new shoes',
      '3 mm left how long',
    ],
    q112: [
      '4 mm of lining left can I leave it',
      'lining 4 mm still good',
      '2 mm left on shoes',
      'how many mm left before replacing',
    ],
    q113: [
      'drums never off in years',
      'drums never off in 100000 miles leave them',
      'never looked at the drums handbrake strong',
      'do I need to open the drums',
    ],
    q114: [
      'is the mark on the drum the machining limit',
      'where is the maximum diameter on the drum',
      'max dia stamped on drum',
    ],
    q115: ['inspector says shoe is on backwards', 'shoe fitted back to front does it matter'],
    q116: [
      'which shoe goes to the front',
      'which shoe goes at the back',
      'shoe upside down',
      'how to tell which end is leading',
      'which way up does the shoe go',
      'which shoe goes where',
    ],
    q117: [
      'which way round do the springs go',
      'which hole does the spring hook into',
      'how does the strut go back',
      'where does this spring go',
      'put it together which way',
      'diagram of how it goes together',
    ],
    q118: ['scared of the springs and setting', 'took fifty photos still unsure'],
  },
});

/** ui/ask/said/told-faults.ts */
export const askSaidToldFaults = section('askSaidToldFaults', {
  told: {
    'seized short': `
    pedal is low on both rear wheels and handbrake comes up high too
    handbrake thirteen notches and pedal long
    adjuster stuck solid both sides gap keeps growing
    every few months I have to adjust the brakes by hand
    I have to tighten the handbrake again and again
    adjuster screw rusted will not turn by hand
    threads of the adjuster frozen
    adjuster nut will not move
    star wheel rusted cannot turn it
    adjusters not doing anything any more
    pump the pedal and it comes up because of too much gap
    brakes out of adjustment all the time
    not heard a click for years
    auto adjusters gave up`,
    'worn teeth': `
    teeth of the adjuster chewed off
    ratchet jumps teeth
    adjuster loses its setting when parked
    notches differ from one day to the next
    handbrake good one day long the next
    clicks again after each parking
    first push of the day is low second is fine and I hear clicks
    adjuster teeth stripped it slips
    long pedal first thing then normal the rest of the day
    number of clicks on the lever changes daily`,
    'broken lever spring': `
    adjuster lever hangs down loose
    no spring on the adjuster lever
    little spring missing from the adjuster
    tiny spring found broken at the bottom of the drum
    lever of the adjuster does not touch the teeth
    pawl floppy
    nothing holds the lever against the star wheel
    thin spring rusted through`,
    'stepped hot': `
    brakes locked after they cooled down
    over night both rear wheels tight after hard braking
    handbrake suddenly only two notches and wheels tight
    adjuster clicked while the drum was hot
    clicked on the hill and now too tight
    went over the mountains and next day it would not move
    adjusted too much because the drum was hot
    wheels free while hot but wont turn when they are cold
    towing down the hill then brakes on tight next day`,
    'shoes swapped': `
    long shoe at the wrong end
    shoes on the wrong way front for back
    someone put the front shoe at the back
    the rear shoe is worn and the front one is thick
    leading lining thicker than trailing
    leading and trailing shoes wrong way round
    worn shoe put on the other side of the brake
    inspector says shoes are on backwards`,
    'wrong side': `
    left adjuster in the right brake
    adjusters crossed over
    adjuster from the other wheel
    right hand screw on the left side
    adjuster marked L fitted on the right
    adjuster unwinds itself
    star wheel goes the wrong direction when it adjusts
    pedal gets longer each time it should adjust
    mixed the two sides up when rebuilding
    parts stamped L and R which side`,
    'strut mis-seated': `
    strut jumped out of its slot
    end of the strut stands on the edge of the shoe
    spreader bar not in the slot of the shoe
    drum will only just go on and the wheel locks
    bar between the shoes came out of place
    one wheel solid after reassembly
    drum hard to get on one side after new shoes
    strut not sitting in the lever
    push rod slipped when I put the drum on`,
    'dead adjuster to the end': `
    piston came right out
    cylinder piston out of its bore fluid everywhere
    shoes and drum worn right out pedal hits the floor
    down to bare metal and pedal on the floor
    linings gone grinding and pedal drops to the floor
    worn past the limit and fluid came out
    never looked after and now no pedal and grinding
    pedal to the carpet and metal noise`,
    'short cable': `
    handbrake on at the first click
    adjusted the cable first now the shoes never adjust
    cable so tight the lever in the drum cannot go home
    after new cable wheels drag
    new handbrake cable too short
    someone tightened the cable instead of the shoes
    handbrake bites at once and wheels are tight
    since the cable was tightened the pedal gets longer
    no slack in the cable at rest
    arm in the drum not back on its stop both sides`,
    'kept pull': `
    rear wheel stays braked after the handbrake is let down
    lever down but cable still tight
    rusty cable does not slide back
    cable frozen inside the sleeve
    wheel frees when I shake the cable
    pushing the arm back by hand frees the wheel
    one wheel hot after parking with the handbrake
    handbrake frozen on in winter
    water in the cable froze overnight
    handbrake light off but still dragging
    cable has to be pushed back by hand
    rear wheel binding lever off
    arm at the drum not going back one wheel`,
    'stretched cable': `
    handbrake high but foot brake fine
    lever up to the elbow
    lots of clicks before it holds brakes are fine
    cable has gone long
    slack wire on the handbrake
    handbrake needs to be pulled right up
    nut at the equaliser needs tightening
    handbrake travel grew shoes are good
    handbrake needs more clicks than before pedal unchanged
    cable hangs loose under the car`,
    'stiff pivot': `
    arm on the shoe hard to move
    lever inside the drum moves stiffly
    handbrake arm returns slowly
    cable moves freely but the arm in the drum is stuck
    handbrake only works one side arm rusted
    pin of the handbrake lever rusted
    worked once and then slack
    lever in the drum stays out after the first pull
    arm does not spring back
    handbrake lever in the drum jammed after rain
    parking lever needs to be freed and greased`,
    'weak springs': `
    springs do not pull the shoes back properly
    tired springs
    springs have lost their tension
    shoes rattle against the drum springs are weak
    stretched return spring
    one spring is longer than the other
    springs got hot and went soft
    brake comes on too soon one side
    pull off spring missing
    spring found broken in the drum
    shoe does not retract by itself`,
    'strong springs': `
    new springs are too hard
    springs from another car fitted
    shoes pulled back too hard
    heavier springs fitted and brake comes in late
    one side late at gentle braking since new springs
    wrong colour of spring fitted
    brakes need more pedal since the spring kit`,
    'stuck piston': `
    one piston rusted into the cylinder
    piston will not push out on one side
    shoe does not move when someone presses
    low figure on the rollers one wheel better backwards
    car pulls to one side when braking forwards
    cylinder half seized
    only one shoe of the two is worn the other like new
    piston solid in the bore
    one cylinder does not push
    stood a long time cylinders rusty inside`,
    'sluggish pistons': `
    brakes come off slowly
    takes a few seconds to roll free after braking
    pistons move sluggish
    dirty cylinder pistons move slowly
    brake lags behind when released
    releases slow
    slow return of the shoes
    drags a moment after each stop
    sticky wheel cylinder
    shoe does not go back when the pedal is let go
    shoe does not retract`,
    'leaning part': `
    something is pushing one shoe against the drum
    wheel stiffer to turn forward than back
    drags in one direction only
    a bent part pushes the shoe
    bent backing plate pushes a shoe
    hard to turn forward easy backward
    one shoe always touching
    one shoe does not go back to rest`,
    hose: `
    wheel drags after the pedal and frees in minutes
    opened the bleeder and wheel came free
    cracked the nipple and it let go
    pressure trapped in the wheel
    hose is swollen closed inside
    old rubber hose acts as a one way valve
    brake holds on after stop and slowly lets go
    one rear wheel hot brake not releasing after pedal
    flexible hose failed inside
    wheel locked after braking free in the morning
    clamped the flexi and forgot
    drags on and off once it is warm one wheel
    shoe does not come back after pressing until the bleeder is opened`,
    'port shut': `
    brakes lock on gradually while driving
    brakes come on more and more then free when cool
    all four wheels hot
    pedal rises and gets hard on the road
    since the servo was changed brakes bind
    since the pedal was adjusted the brakes drag
    no play at the top of the pedal
    loosening the master cylinder frees the brakes
    opening a bleed screw frees all the wheels
    have to wait until it cools before it rolls
    new master cylinder and brakes stay on
    pedal rod adjusted too long
    every wheel drags after a few miles`,
    'other bore': `
    cylinders left and right are different
    one wheel cylinder bigger than the other
    wrong size slave cylinder
    pulls to the side with the new cylinder
    imbalance after a new cylinder
    bore stamped on the cylinder is not the same
    new cylinder says 22 the old one 19`,
    air: `
    pedal squashy after work on the brakes
    bubbles in the pipe
    soft pedal gets a bit better when pumped
    opened the hydraulics and now pedal is soft
    pedal feels like there is a spring in it
    bleeding did not help pedal still springy
    changed the cylinder and now pedal spongy
    pedal has no firm point
    pedal soft after fluid change
    rubbery pedal
    let the reservoir run dry`,
    'fluid on linings': `
    cylinder weeps under the boot
    boot full of fluid
    brake fluid dripping from the drum
    inside of the wheel is wet
    shoes wet with fluid
    one wheel brakes badly and it is wet inside
    have to top up the fluid often
    fluid level going down no leak to see
    wheel cylinder seals gone
    slave cylinder pissing out
    weak one side wet backing plate
    low on the rollers one wheel and wet`,
    'oil on one lining': `
    oil from the axle on one shoe
    axle grease got on the lining
    wheel bearing grease on the shoes
    black oil in the drum
    smells of gear oil in the drum
    rear axle seal gone oil on brakes
    handbrake weak one way on that wheel
    differential oil leaking into the brake
    holds going forward but not backward and oily inside
    one lining greasy the other dry`,
    glazed: `
    linings like glass
    pedal hard but it does not stop well
    shoes gone hard and shiny
    braking poor after lots of light braking
    brakes feel like wood
    press with all my might and it only slows
    both rear wheels weak on the tester pedal firm
    linings overheated and polished
    burnt linings no bite
    shiny spots on the shoes`,
    damp: `
    very sharp first thing in the morning
    first stop of the day nearly locks the wheels
    after standing in the wet the first press grabs
    light rust in the drum grabs once
    brakes snatch on a wet morning then normal
    rear skids at the first touch after rain
    locks the back wheels on a damp road first brake
    squeals and grabs in the morning then goes away
    fierce after washing the car`,
    'water inside': `
    drove through a flood and no brakes
    brakes did not bite after wading through water
    water splash and brakes useless for a while
    after rain brakes weak until dried
    brakes come back after a few presses in the wet
    after the car wash hardly any brakes
    after launching the boat brakes are poor
    deep puddle no braking`,
    'hot fade': `
    brakes gone at the bottom of the hill
    pedal gets longer going down the mountain
    brakes weak when hot fine when cold
    brake got weaker and weaker on the long descent
    smell and no brakes after the pass
    heavy trailer downhill lost the brakes
    brakes cooked after the descent
    fine again after they cooled
    brakes die when I use them a lot`,
    'oversize bore': `
    new shoes only touch in the middle
    contact patch in the centre of the lining
    drum is bigger than the shoes are made for
    drum was turned and the new shoes dont match
    new linings dont match the curve of the drum
    brakes poor after new shoes in old drums
    stopping worse since shoes were changed
    shoe curve tighter than the drum
    old drum with new shoes needs bedding`,
    'lining ends': `
    linings touch at both ends and not in the middle
    ends of the linings worn the middle untouched
    new shoes grab since fitting
    shoe curve too flat for the drum
    shoes made for a bigger drum
    lining radius larger than the drum
    brake grabs when cold since the new shoes
    relined shoes not ground to the drum
    arc of the shoe bigger than the drum`,
    'oval drum': `
    pedal pumps under my foot
    rubs in two places each turn
    tight twice per turn
    braking comes and goes twice each turn of the wheel
    drum measures different across
    two diameters not the same
    drum went oval from the handbrake while hot
    shudder at low speed when braking
    car shakes when I brake from the back
    wub wub in the seat when braking
    ovality figure on the test sheet is high
    brake force swings up and down on the rollers
    hard spots in the drum`,
    'drum off centre': `
    one scrape each turn of the wheel
    scuffs at the same place each time round
    drum sits off centre since it was refitted
    dirt or rust under the drum when it was fitted
    drum does not sit flush on the hub
    dial gauge moves once per turn
    tight at one spot and free for the rest
    brushing sound once each turn
    new bearing and now the drum rubs
    throbs once per turn`,
    lip: `
    drum comes out a bit and then hits something
    drum moves out half an inch and then stops dead
    slides off part way and catches on the shoes
    wear edge in the drum catches the linings
    it comes so far and no further
    shoes sit behind the ridge
    drum pulls out until it touches the shoes
    ridge on the open edge of the drum
    edges of the linings chewed by the drum edge
    worn groove in the drum keeps the shoes in
    drum hard to get off when the shoes are adjusted right because of the lip`,
    'hub rust': `
    drum goes round but will not come off the hub
    rusted in the middle at the hub
    wheel turns freely but drum is fast on the hub
    rust around the centre hole
    drum does not move outward at all
    stuck at the spigot
    corroded to the flange
    drum is off the shoes but will not leave the hub
    penetrating oil around the hub does not help
    no movement whatever when I pull the drum`,
    groove: `
    shoes catch in the backing plate
    notches worn where the shoes slide
    plate worn where the shoe edge rests
    shoe hangs in a groove then lets go
    nothing happens then it bites suddenly
    brake sticks in a groove of the plate after reversing
    pop from the brake on the first press
    ridges on the plate pads`,
    bearing: `
    hub has play top and bottom
    wheel wobbles when I shake it
    rocking the wheel clicks
    humming that gets louder with speed
    drone from the rear that changes in bends
    hub gets hot with the brake free
    drum rubs when the car is full of people
    rear wheel bearing worn
    play in the bearing makes the shoes rub
    bearing noise or brake noise`,
    'rusted on': `
    wheel stuck after the car stood outside for weeks
    not moved for a month and now a back wheel is locked
    left with the handbrake on and it will not roll
    shoes stuck to the drum with rust
    stood by the sea wheels stuck
    parked wet and now it wont move
    brakes stuck on after the winter
    came free with a bang
    let go with a crack when I drove off
    trailer stood for years brakes stuck
    back wheel slides along the ground without turning
    washed it and parked it next day wheels locked
    washed it and overnight it froze to the drum
    shoes frozen to the drums in the frost`,
  },
});

/** ui/ask/said/told-other.ts */
export const askSaidToldOther = section('askSaidToldOther', {
  toldOther: {
    'station:apply': `
    how does it work in simple words
    drum brakes explained for beginners
    show me the forces
    what pushes what
    where does the lining press hardest
    pressure along the lining
    show pressure on the shoe
    watch it brake slowly`,
    'station:wear': `
    watch it wear over the years
    drive it until it is worn out
    how fast do linings wear
    run a hundred thousand kilometres`,
    'station:drum-off': `
    drums wont budge
    back drum stuck fast
    been trying all morning to get the drum off
    drum will not move at all
    how to get a rusted drum off
    get drum off old pickup
    need the drum off what do I undo
    drum held by the shoes
    shoes hold the drum
    drum stuck what holds it
    does the handbrake have to be off to pull the drum
    hit it with a hammer and it stays on
    drum came half way
    trailer drum wont come off`,
    'station:park': `
    does it hold on a hill
    how steep can I park
    hill holding
    pull on the lever for a slope
    newtons at the lever to hold`,
    'station:inspect': `
    rivets showing is it worn out
    where do I measure the lining
    how to measure drum and shoes
    still good or bin
    what is the least lining
    print a sheet for measuring
    worksheet to write the sizes in
    record of measurements for the workshop
    is it worn out
    drum over its mark
    drum measures more than stamped
    minimum shoe thickness
    how little lining can I run
    do I need new drums
    are the drums finished
    lining crumbling or cracked
    check the cylinders for rust and leaks
    all looks good anything else to check
    how to check whether a shoe is bent
    bent shoe web`,
    'station:new-shoes': `
    put new shoes on
    shoe change guide
    set new shoes
    adjust without taking the wheel off
    adjust rear brakes
    brakes need adjusting how
    how to set up after fitting
    arcing shoes to the drum
    fit of new shoes in an old drum`,
    'station:faults': `
    look at what each fault does
    fault finding practice for students
    find the fault in a van
    guess the fault game
    set my class a fault`,
    'station:own': `
    photograph my brake and work it out
    take a photo of my brake
    use a picture of my brake
    put in my own measurements
    put my own brake sizes in
    my car has different sizes
    camera`,
    'station:questions': `
    what do other people ask
    common questions`,
    'station:see': `
    something is wrong what is it
    find the fault on my car
    tell it what I notice
    help me work out the cause
    I do not know what it is called`,
    'station:vary': `
    how does friction change the brake
    brake factor against friction curve
    what does a bigger drum do
    what happens with a longer lining
    change one size and see the effect
    graph`,
    'station:kind': `
    which adjuster is mine
    what sort of drum brake is this
    difference between simplex and duo servo
    wedge adjuster with small spring
    adjuster works when reversing or by handbrake
    how do I know which design I have`,
    'station:lessons': `
    something for apprentices
    teach drum brakes
    lesson plan
    material for the classroom`,
    'check:drag': `
    roasting hot wheel
    rim too hot to touch after a short trip
    wheel cooking
    car feels like something is holding it back
    it slows by itself when I let off
    car does not roll when I lift off
    it will not roll on by itself
    more fuel than before and stops quickly when coasting
    brakes dragging
    one wheel hotter than the others
    smoke from the back wheel in the drive
    burns my hand
    wheel jammed
    brake jamming
    wheel tight to turn
    wheel will not turn
    back brake stuck on
    drags and smells
    drags now and then after new shoes and drums
    intermittent drag once warm
    dragging thread shoes rub since the brake job
    feels like driving with the handbrake on
    wheel will not turn since the shoes were changed`,
    'check:pedal': `
    pedal goes too far
    pedal nearly flat before it grips
    half the pedal does nothing
    have to press twice
    pedal bites at the bottom
    pedal feels wrong
    brake pedal went down
    pedal dead at the top
    pedal hard
    pedal shakes
    brake pedal is bad
    pedal to the carpet`,
    'check:lever': `
    handbrake no use
    handbrake goes too far
    handbrake too far up
    park brake weak
    car rolls back at hill start
    handbrake does not grip on the ramp
    parking brake goes to the floor and still rolls
    handbrake up to the roof
    handle comes up too far
    only a few clicks and it drags
    lever has no resistance
    it will not hold one wheel
    one side holds the other does not`,
    'check:braking': `
    not stopping well
    poor stopping
    takes long to stop
    brakes too sharp
    car goes sideways when braking
    back end slides when I brake
    one rear wheel weaker on the tester
    brake force left and right differ
    stronger on one side
    test says nothing on one rear wheel`,
    'check:noise': `
    funny noise from the back
    scraping noise
    metal noise when reversing
    humming louder with speed
    shh shh each turn
    squeak when rolling not braking
    ticking while driving
    noise goes away when I touch the pedal
    what is this noise
    scraping that goes away when I tap the pedal`,
    'check:free': `
    can it wear itself free
    rubs a little after adjusting
    tight shoes will they ease
    how hot will it get if I drive it so
    how far can I go with a dragging brake
    slight rub after adjusting is it ok
    fuel used by a dragging brake`,
    'not here:sinking': `
    pedal sinks while waiting at a light
    pedal keeps going down while pressed
    pedal slowly falls when I hold it
    goes to the floor slowly when held`,
    'not here:safe': `
    can I still use the car
    may I drive with this
    how far can I drive with it
    is it dangerous to drive
    can it wait until next week`,
    'not here:loose lining': `
    lining loose on the shoe
    glue let go lining fell off
    friction material separated from the shoe`,
    'not here:crack': `
    drum does not ring when I knock it
    tapped the drum and it sounds dead
    drum sounds dull instead of ringing
    small cracks on the inside of the drum`,
    'not here:rattle': `
    shoes flap against the drum
    hold down springs weak or broken
    hold down pin has no tension`,
    'not here:in disc': `
    drum inside of a disc brake
    little drum in the rear disc`,
    'not here:servo': `
    big anchor pin on top of the brake
    one shoe short lining one long lining
    both shoes hang on one pin at the top
    which shoe is primary`,
    'not here:booster': `
    hard pedal since the engine
    no power assistance
    vacuum hose to the brakes`,
    'not here:legal': `
    percent needed to pass
    what do they allow at the inspection
    failed the annual test for the parking brake`,
    'not here:cleaning': `
    wash grease off the shoes
    clean the linings with petrol
    can oily shoes be saved
    brake shoes soaked can I clean them`,
    'not here:dust': `
    is the dust poisonous
    how to clean the drum of dust`,
    'not here:grease': `
    where does grease go
    grease on the backing plate where
    lubricate the points where the shoes slide`,
    'not here:one side': `
    do I change both sides
    just the left one
    only one drum machined`,
    'not here:noise': `
    squeals like a pig
    groan like a ship
    squeak in the morning`,
    'order:back': `
    adjust through the hole at the back with the wheel on
    loosen the shoes from behind
    slacken the adjuster with a screwdriver
    hold the lever off and turn the wheel back
    no hole how do I slacken it`,
    'order:apart': `
    what comes off first
    remove the shoes in order
    which tools do I need for the springs
    take off the hold down pin and cap
    take drum brake apart without losing anything
    unhook the springs`,
    'order:together': `
    parts left over after putting it together
    which spring goes on first
    where does each spring go
    put hold down pin and cap back
    which order to put the springs on
    refit everything
    fitting the springs back`,
    'order:set': `
    set the handbrake cable after the shoes
    what is set first shoes or cable
    correct adjustment how many turns should the wheel spin
    how tight should the wheel be after adjusting
    weight to turn the wheel at the tyre
    final setting`,
    'order:bed': `
    how far until new shoes grip
    how many kilometres until new shoes bite
    do I drive gently with new shoes
    run in new shoes`,
    'word:leading shoe': `
    which one is leading
    front one or back one`,
    'word:self-energising': `
    what does self energising mean
    why does it pull itself on`,
    'word:clearance': `
    normal gap
    how far is the shoe from the drum`,
    'word:bedding in': `
    how many km before new shoes grip properly
    when do new brakes get good
    new linings do not bite yet`,
    'word:run-out of a piston': `
    how far may a piston come out`,
    'word:out of round': `
    how much oval is too much`,
    'word:fade': `
    why do brakes get weak when hot`,
    'word:equaliser': `
    bar where the two cables join
    one cable longer than the other`,
    'word:roller test': `
    brake test figures what do they mean
    machine that tests brakes
    left and right force on the test`,
    'caution:springs': `
    spring flew off
    spring shot across the room
    spring went flying what to watch out for
    springs hurt eyes`,
    'caution:wear': `
    black dust in the drum dangerous`,
    'caution:hot': `
    burnt my fingers on the wheel
    too hot to work on`,
    'caution:piston': `
    pressed the pedal without the drum
    piston pushed out`,
    'caution:stands': `
    only on the jack
    car fell off the jack`,
    'caution:drumOff': `
    how do I hold the car while the handbrake is off`,
    'part:hot lock': `
    why does it not click when the drum is hot
    no clicks while hot`,
    'reading:toeForceFront': `
    force at the tip of the shoe
    force on the toe`,
    'reading:linePressure': `
    pressure in the brake line
    at what pressure do the shoes touch
    bar or psi in the pipe`,
    'reading:pistonForce': `
    force of the wheel cylinder
    how hard does the piston push`,
    'reading:fluid': `
    how much fluid does a press use
    volume of fluid for one press`,
    'reading:temperature': `
    how hot is the drum now`,
    'reading:toNextTooth': `
    how far to the next click
    how far must the shoe move before it clicks`,
    'reading:brakeFactor': `
    brake factor number`,
  },
});

/** ui/ask/said/told-questions.ts */
export const askSaidToldQuestions = section('askSaidToldQuestions', {
  toldQuestions: {
    q001: `
    drum comes part way and no further cable already undone
    comes out a finger width then it is held
    one side came off the other comes a bit and stops`,
    q002: `
    there is a little lever to be held off the cog how
    how do I push the catch away while I turn
    need two screwdrivers to wind it back
    keep the pawl clear of the star wheel
    lever stops me turning the wheel back
    is there a clip or plate to push away to free the star wheel
    do I push something to let the star wheel turn`,
    q003: `
    my backplate has no hole how do I loosen the shoes
    no inspection hole anywhere
    nowhere to get a screwdriver in
    adjuster cannot be reached from outside
    slacken the shoes without a hole`,
    q004: `
    is it up or down to loosen
    which way do I turn the wheel to slacken the shoes
    left side clockwise or not
    direction to loosen the adjuster on each side
    hub rust or wear ridge how do I tell`,
    q005: `
    heated it soaked it hammered it still on
    puller does not move it
    bending the drum with the puller nothing comes
    been at it for days with everything I have
    what is the last resort to get it off`,
    q006: `
    use two bolts to push the drum off
    what thread are the holes in the drum for
    screws in the drum face to force it off`,
    q007: `
    adjusted by counting turns of the wheel
    which rule of setting is right turns or gauge
    wheel must spin two turns rule`,
    q008: `
    poking about in the hole and cannot find the adjuster
    what does it look like through the hole
    where behind the hole is the lever
    working blind through the slot what do I feel`,
    q009: `
    cable was tightened and now the drum is held
    drum came off fine before the handbrake was adjusted`,
    q010: `
    spring loaded adjuster how do I put it back to zero
    reset a ratchet strut for new shoes
    one shoe is too far out drum hangs on it
    how do I set the toothed lever right back`,
    q011: `
    drum will not go home everything wound in
    drum stands off by a few mm
    had to force the drum on and now the wheel is stiff
    drum not fully seated why`,
    q012: `
    bought shoes and the drum is too small for them
    shoes thicker than the old ones
    new shoes do not fit inside the drum
    cannot get the drum over the new linings adjuster fully in
    are these the wrong shoes
    new shoes wider than the old ones
    new linings rub the backing plate`,
    q013: `
    only the cylinder is new and now it is tight
    replaced the slave and the drum wont go over`,
    q014: `
    bought a new drum it locked
    new drum tight is the cable too tight
    drum replaced and now it is stiff`,
    q015: `
    filed the lip away and now there is more travel
    second hand drum with the ridge removed`,
    q016: `
    what is the stepped thing with the spring on the arm
    how does the toothed lever take up the wear
    how does it know when to step
    what makes the adjuster move one tooth`,
    q017: `
    nothing turns the adjuster
    star wheel just spins and does nothing
    what is supposed to move it
    self adjuster does nothing how should it work`,
    q018: `
    ticking when I press the pedal
    is the click normal
    click from the back with each press
    how many clicks until it is quiet`,
    q019: `
    since the new shoes the lever comes right up and it does not ratchet
    pulling the handbrake does not adjust anything
    how do I get the adjuster to begin`,
    q020: `
    is it the shoes or the cable that is adjusted by itself
    does the auto adjuster take up the handbrake cable
    where does the self adjusting happen`,
    q021: `
    do I need to drive backwards to adjust
    brake hard in reverse to make it adjust
    does it take up when reversing`,
    q022: `
    nothing broken but both sides far out
    why did they not self adjust
    adjuster good yet there is a big gap`,
    q023: `
    what if the strut is left out
    brake without the strut what happens
    threaded rod fell out when I opened it
    loose bar in the drum where does it belong`,
    q024: `
    does it adjust by the handbrake
    adjust by pulling the lever many times
    handbrake never used is it out of adjustment`,
    q025: `
    wound out solid and it will not come back
    adjuster under tension cannot turn it back
    lever pushed away and still it will not turn
    too much load on the teeth`,
    q026: `
    turned it the wrong way and now it is jammed tight
    clicked the star wheel the wrong direction now locked
    tightened when I meant to loosen
    shoes hard on the drum by my mistake`,
    q027: `
    how many teeth must I go back
    number of clicks back to clear the drum
    how much does one tooth loosen`,
    q028: `
    gets tight by itself every few days
    brakes tighten up on their own after setting
    set it right and two days later it is hot again
    adjusts itself too far again and again
    why does it over adjust`,
    q029: `
    one tooth too many and it is tight
    last click made it drag
    was free until I pulled once more`,
    q030: `
    too tight after adjusting will it wear off
    can I drive until it rubs itself free
    leave it tight and let it wear`,
    q031: `
    star wheel springs back when I turn it
    only turns one way
    cog clicks one way and will not go the other`,
    q032: `
    is it up or down to tighten
    which way is tighter
    right hand or left hand thread on the adjuster
    adjuster upside down does it matter`,
    q033: `
    how much gap should I leave
    how tight to set them
    should it scrape a little
    is a bit of drag right on new shoes
    turn the wheel while adjusting until it just drags
    slight drag on new shoes ok or back it off`,
    q034: `
    locked the wheel with the adjuster pressed once and free again
    press the pedal and the shoes move to the middle
    shoes not in the middle after adjusting`,
    q035: `
    new cable and still it rolls
    cable as tight as it goes and it creeps`,
    q036: `
    tighten the handbrake at the lever or at the drum first
    what is adjusted first
    do the shoes and then the cable
    set up order of shoes and handbrake`,
    q037: `
    free by hand yet hot after a drive
    turns free on the stands and boils on the road
    nothing rubs on the jack but it gets hot`,
    q038: `
    smoke then all right when it cooled
    trapped pressure or cable or cylinder
    hot and stuck then free when cold`,
    q039: `
    how easily should the wheel turn
    how stiff is too stiff
    is it normal that it drags a bit by hand
    force at the tyre to turn the wheel
    how many times should it go round when I spin it
    wheel hard to turn how much is too much
    kilos to turn the wheel
    one wheel spins longer than the other
    hard to turn by hand but it rolls when driven`,
    q040: `
    one side warm the other stone cold
    is it normal that one drum is hotter
    temperature left and right differ`,
    q041: `
    how hot is too hot for a drum
    what temperature is normal after driving
    measured with a temperature gun
    degrees fahrenheit of the drum after a drive`,
    q042: `
    brakes lock on while I drive and free after an hour
    tight when warm free when cold all wheels
    more and more drag the further I go`,
    q043: `
    new shoes and one wheel too hot is that bedding in
    hot after the first drive with new shoes
    drags since new shoes and drums
    rebuilt the brakes and now both drag and smoke
    new shoes made the dragging worse`,
    q044: `
    handbrake never lets go completely
    linings worn on the inner side only and hot again`,
    q045: `
    smell when I stop at the lights
    stink from one wheel what do I check first
    burning smell after braking`,
    q046: `
    shoes slipped off the plate pads
    shoe came off its ledge`,
    q047: `
    drove miles with the handbrake on what is damaged
    forgot to release the parking brake
    handbrake was half on while driving`,
    q048: `
    brake hangs after every stop for a minute
    not letting go straight after a stop`,
    q049: `
    holds facing down but not facing up
    rolls back on the drive but not forward
    handbrake good one direction`,
    q050: `
    locks going forward turns going back no pressure
    one way lock`,
    q051: `
    why is it stronger forward
    which shoe works harder and why
    why does direction matter
    why is the brake weaker backwards`,
    q052: `
    jams after I reverse
    reversed out and then it was locked going forward
    hot after backing out
    drum locks up after going in reverse
    backed up and then the wheel was locked
    it locks when I reverse into the garage`,
    q053: `
    holds when I pull it still rolling
    stopped first then pulled and it creeps`,
    q054: `
    brakes stronger backwards
    poor forwards good backwards`,
    q055: `
    leading means touches first
    how do I recognise the leading shoe
    what is the difference between leading and trailing`,
    q056: `
    easier to turn back than forward on the stand
    stiff forwards and free backwards by hand`,
    q057: `
    is it normal that the front shoe wears more
    one shoe thin other thick
    leading shoe worn much more normal
    shoe at the front down to nothing the other nearly new`,
    q058: `
    lining is tapered along its length
    thicker at the top than at the bottom
    worn skew thick one end`,
    q059: `
    top half worn to the metal the rest is fine
    worn through only at the top`,
    q060: `
    one side of the car wears shoes faster
    shoes on the left gone on the right good`,
    q061: `
    worn on one edge and makes a noise
    outer edge of the lining thin`,
    q062: `
    change the shoes about to even the wear
    put the less worn shoe in front`,
    q063: `
    first brake in the morning grabs
    sharp when cold and damp is it dangerous`,
    q064: `
    wheel stuck after rain then cracked loose
    held on for a moment after wet weather`,
    q065: `
    rear wheel skids in the rain
    back wheels lock as soon as it is wet
    why does one back wheel lock in the wet`,
    q066: `
    new shoes bite too hard
    will grabbing bed in
    brakes too sharp after new shoes`,
    q067: `
    grabs and pulses is the drum oval
    after the rebuild one side grabs`,
    q068: `
    loud bang when I go forward after reversing and brake
    knock at the first stop after changing direction`,
    q069: `
    pop sound first press after parking
    crack from the drum when I first press`,
    q070: `
    sand the shiny shoes
    honking drum what does it
    sounds like a horn when stopping`,
    q071: `
    rivets rub on the drum
    bright spot where metal touches
    what touches metal to metal in the drum`,
    q072: `
    squeaky drum brakes what helps
    squeal every time I brake
    stop it squeaking`,
    q073: `
    noise when I let go the pedal
    squeak on letting up
    creak as the brake is released`,
    q074: `
    grinds with the foot not with the hand brake
    noise by pedal only`,
    q075: `
    rattling on bumps from the drum
    something shakes in the brake on bad roads`,
    q076: `
    rubs at one place is it the drum or the bearing
    catches at one point when I turn it
    scrape at one spot every turn`,
    q077: `
    shoes put right and now it goes to the other side
    pulled left now right`,
    q078: `
    car dives to one side since a cylinder was changed
    pulls after cylinder repair`,
    q079: `
    drum off someone presses and one shoe stays still
    only one side of the cylinder moves
    one piston moves the other does not`,
    q080: `
    tester shows little on one wheel
    nothing on one wheel by foot and lever
    low reading one rear wheel after the cable was adjusted`,
    q081: `
    too much difference left right on the brake test
    failed on brake balance
    imbalance percent at the inspection
    left wheel brakes half of the right on the rollers`,
    q082: `
    everything replaced and still no hold on a hill
    adjuster at its end and it still rolls`,
    q083: `
    brand new drum is not round
    new drum measures different two ways
    knock from a new drum`,
    q084: `
    is the score too deep
    groove I can hang a nail in
    both drums machined the same
    how much can be turned off
    drum lathe or new drum`,
    q085: `
    how do I tell whether the drum is done
    drum looks fine to the eye
    measure the drum where and how
    can I measure it with a tape`,
    q086: `
    how much ovality can a drum have
    rubs here and there after pumping
    0.1 mm out of round is that too much`,
    q087: `
    what is the wet stuff behind the brake
    brown oil or clear fluid
    grease or fluid in the drum
    leak at the back plate which liquid`,
    q088: `
    piston fell out of the wheel cylinder
    piston comes too far out
    pushed the piston out by accident`,
    q089: `
    wheel cylinder started to leak after new shoes
    did I adjust it too tight and burst the cylinder`,
    q090: `
    soft after I changed the slave cylinder
    is it air or is it adjustment
    pedal squishy what is it`,
    q091: `
    pedal low and master cylinder is new
    could badly adjusted drums make the pedal long
    far travel at every stop`,
    q092: `
    pedal still half way down after everything is new
    bled three times no better`,
    q093: `
    first press each day goes down
    morning pedal low then good`,
    q094: `
    drum tight over the shoes but pedal low
    lip makes me think it is adjusted`,
    q095: `
    second press is high
    pump and it is good do I need new shoes
    low pedal gets better when pumped
    pedal near the floor first and fine the second time`,
    q096: `
    shudder is it front or rear
    pedal pulses when slowing gently
    pedal kicks at my foot`,
    q097: `
    is the cable stretched or are the shoes worn
    lever slack what is it
    cable or shoes how do I tell`,
    q098: `
    rolls back at a hill start with the lever fully pulled
    pulled up hard and it still rolls
    does not hold on the ramp
    car rolls on the driveway
    handle right up and the truck still rolls`,
    q099: `
    too many clicks on the lever
    normal number of clicks
    fourteen clicks before it holds
    two clicks only
    clicks changed from three to seven
    garage changed the number of clicks`,
    q100: `
    roller test failed but wheels lock on the road
    parking brake efficiency low with new shoes
    new shoes failed the handbrake test`,
    q101: `
    fine on flat but not on steep
    does not hold on a very steep hill`,
    q102: `
    frozen handbrake in the cold
    brake will not release after a frosty night
    handbrake will not let go`,
    q103: `
    good at first then slack again
    handbrake went loose after one use`,
    q104: `
    no handbrake at all
    lever pulls up with no effect
    where to begin with a dead handbrake
    handbrake pulls up a long way and does nothing`,
    q105: `
    one back wheel holds and the other turns
    handbrake works left not right
    pull the lever and only one wheel locks`,
    q106: `
    bar under the car does not go back
    yoke stays crooked after release
    cables do not return by themselves`,
    q107: `
    stays on after standing on a hill
    brake grips after release on the slope until I roll back`,
    q108: `
    what hill should it hold by rule
    per cent slope for the parking brake`,
    q109: `
    both back wheels slide locked after long standing
    small play then locked after storage`,
    q110: `
    one wheel drags after standing two months
    single wheel stuck after storage`,
    q111: `
    how many miles do I have left
    life of the linings
    when do I have to change them
    how much life is left in the shoes`,
    q112: `
    is 2 mm enough
    shoes thin can they stay until summer
    how thin may they be
    rivets nearly showing
    lining nearly down to the rivets
    no lining left on the shoe
    no material left on one shoe`,
    q113: `
    brakes never opened handbrake fine
    high mileage and drums never off
    handbrake strong drums never opened leave it
    never had the drums off in years is that ok`,
    q114: `
    what is the number cast in the drum
    MAX on the drum what does it mean
    where do I read the biggest allowed size
    drum says max`,
    q115: `
    shoe on backwards does it matter
    how does he see that a shoe is the wrong way`,
    q116: `
    long shoe to the front or the back
    does the bigger lining go forward
    left and right shoes the same
    how do I tell the shoes apart
    which end of the shoe is up`,
    q117: `
    springs look the same which goes where
    which way round does it go together
    where does each spring hook in
    strut which end to the front
    does the adjuster have a left and a right`,
    q118: `
    worried about putting it together
    afraid of the springs
    took pictures and still lost`,
  },
});

/** ui/ask/texts.ts */
export const askTexts = section('askTexts', {
  start: { title: 'Start', text: 'Seven ways in, by what is wrong.' },
  apply: { title: 'Apply: how it works', text: 'Press the pedal and see every force, both ways.' },
  wear: {
    title: 'Wear: let it wear and click',
    text: 'Drive it on, press by press, to its limits.',
  },
  drumOff: {
    title: 'Drum off: what holds it',
    text: 'A few plain questions, then the order of release.',
  },
  park: {
    title: 'Park: notches and slope',
    text: 'Where the notches go, and which slope it holds.',
  },
  inspect: {
    title: 'Inspect: are these parts still good?',
    text: 'Type what you measure, read the verdict.',
  },
  newShoes: { title: 'New shoes: fit and set them', text: 'In order, with the sizes to set.' },
  faults: { title: 'Faults: what each one does', text: 'Readings sound and with the fault.' },
  own: { title: 'My brake', text: 'Type in the sizes of your own.' },
  questions: { title: 'Questions', text: 'All of them, with their answers.' },
  lessons: {
    title: 'Lessons',
    text: 'A question, a guess, then the brake itself; and a talk that plays by itself.',
  },
  see: {
    title: 'What I see',
    text: 'Tap what you notice: likely causes, and the cheapest next check.',
  },
  vary: {
    title: 'What if: change one thing',
    text: 'Any size over a range, what follows as a curve, and the brake of any point.',
  },
  apart: {
    title: 'The adjuster, taken apart',
    text: 'Its parts from both sides, put together in order, and what each spring does.',
  },
  compare: {
    title: 'Compare: two brakes, one pedal',
    text: 'Forward against backward, hot against cold, new against worn, tooth by tooth, side by side.',
  },
  kind: {
    title: 'Which kind is yours?',
    text: 'Pictures of kinds and adjusters, and what carries over.',
  },
  back: {
    title: 'Back off through the hole, step by step',
    text: 'Lift first, then back: what is seen and felt, what a tooth gives, and ways without a hole.',
  },
  apart2: {
    title: 'Take it apart, in order',
    text: 'Part by part: which tool, which way round, what may fly, what to look at.',
  },
  together: {
    title: 'Put it together, in order',
    text: 'Part by part, each with its check before the next.',
  },
  set: {
    title: 'Set new shoes, in order',
    text: 'Gauge, presses until silent, lever home, cable last, notches; how stiff a wheel may turn.',
  },
  bed: {
    title: 'Bed them in',
    text: 'What ten stops do and what they do not; the first drive, and when it does not leave.',
  },
  drag: {
    title: 'It drags or gets hot',
    text: 'One wheel or all, when and how: tap what you see.',
  },
  pedal: {
    title: 'Long or soft pedal',
    text: 'Far, springy, sinking, pulsing: tap what you feel.',
  },
  lever: {
    title: 'Lever goes too far, will not hold',
    text: 'Notches, hold, one way or both: tap what you see.',
  },
  braking: {
    title: 'It brakes badly: weak, grabs, pulls',
    text: 'With or without figures of a roller test.',
  },
  noise: {
    title: 'It makes a noise',
    text: 'Which noise, and when; noise itself is not computed.',
  },
  free: {
    title: 'Will it wear free, how far, how hot?',
    text: 'Worked out for the brake on the bench.',
  },
});

/** ui/ask/words.ts */
export const askWords = section('askWords', {
  drumDrumsBrakeDrumDrum:
    'drum, drums, brake drum, drum brake, rear drum, brake hub, rotor, pot, casing, trommel, tambour, drumm, durm',
  boreInsideDiameterInnerDiameter:
    'bore, inside diameter, inner diameter, inner dia, diameter, diametre, diamiter, dia, inner wall, size of drum',
  sweptFaceBrakingSurfaceFriction:
    'swept face, braking surface, friction surface, running surface, machined surface, contact surface, drum surface, surface of the drum, hard spots, hard spot',
  lipRidgeWearRidgeRust:
    'lip, ridge, wear ridge, rust ridge, step at the edge, edge of the drum, burr, pocketed, collar, shoulder, shelf in the drum, edge of drum, worn edge, rim of the drum, step in the drum',
  backingPlateBackplateBack:
    'backing plate, backplate, back plate, baking plate, brake plate, anchor plate, dust shield, splash guard, back of the brake, tin plate, mounting plate, metal plate at the back',
  accessHoleInspectionHoleAdjusting:
    'access hole, inspection hole, adjusting hole, viewing hole, slot in the plate, grommet, bung, rubber plug, plug at the back, hole, window, port in the plate, back hole, plug hole, slot in the back, slot, peephole, opening in the back, little hole, oval hole, hole in the back',
  hubBossSpigotRegisterMating:
    'hub, boss, spigot, register, mating face, flange, centre of the drum, center of the drum, stub axle, spindle',
  retainingScrewLocatingScrew:
    'retaining screw, locating screw, countersunk screw, drum screw, hub nut, castle nut, split pin, cotter pin, stake nut, grease cap, big nut',
  jackingHoleThreadedHoleExtractor:
    'jacking hole, threaded hole, extractor hole, jack bolt, jacking bolt, jack screw, screw bolts in, threads in the drum, tapped hole, holes with a thread, bolts into the drum, screws into the drum, threads in the face, two threaded holes, threaded holes, two holes in the drum, screw holes, m8, bolt holes in the drum',
  bearingWheelBearingHubBearing:
    'bearing, wheel bearing, hub bearing, wheel bearings, bearing play, hub play, wobbly wheel, wheel play, play in the hub, rocks top and bottom, rock the wheel',
  shoeShoesBrakeShoeShoe:
    'shoe, shoes, brake shoe, shoe set, axle set, pad, pads, rear pad, drum pad, jaw, jaws, segment, sheos, shoos, brake block',
  liningLiningsLinerBrakeLiner:
    'lining, linings, liner, brake liner, friction material, facing, meat, covering, linning, lineing, pad material, asbestos, material, friction lining, linings left, brake linings, lining thickness, stuff on the shoe, friction stuff',
  shoeTablePlatformShoeFrame:
    'shoe table, platform, shoe frame, bare metal, down to metal, down to the metal, down to the backing plate, metal on metal, on the rivets, rivet, rivets, metal backing, steel backing, metal showing, rivets showing, rivet heads',
  leadingLeedingSelfEnergising:
    'leading, leeding, self energising, self energizing, forward shoe, front facing, primary, primary shoe, first shoe, front shoe, shoe at the front, shoe in front, forward facing',
  trailingRecedingRearFacing:
    'trailing, receding, rear facing, non energised, secondary, secondary shoe, trailling, rear shoe, back shoe, shoe at the back, rearward shoe',
  arcedArcArcdRadiusedGround: 'arced, arc, arcd, radiused, ground radius, contour, fit of the shoe',
  anchorPinAnchorPivotPost: 'anchor pin, anchor, pivot post, fulcrum, bottom pin, hinge pin',
  abutmentAnchorBlockBottom:
    'abutment, anchor block, bottom block, floating end, sliding anchor, flats',
  springSpringsReturnSpring:
    'spring, springs, return spring, pull off spring, retracting spring, retractor spring, top spring, bottom spring, big spring, sping, srping, coil spring, pull back spring, return coil',
  holdDownSteadySpringSteady:
    'hold down, steady spring, steady pin, pin and cup, spring cap, shoe clip, dished washer, quarter turn, nail, hold downs, holddown, hold down pin, hold down clip, cup washer, nail thing, retainer clip, pin with a spring, clips on the hold down, hold down spring, hold down springs, shoe retainer',
  raisedPadLandLandsLedge:
    'raised pad, land, lands, ledge, ledges, shoe rest, contact point, six bumps, pads on the plate, pad on the plate, backing plate groove, grooved plate, groove in the plate, groove in the backing plate, catch in a groove, shoe rests, places where the shoe slides, rubbing points, slide points, pads of the plate, where the shoe slides',
  wheelCylinderWheelCylSlave:
    'wheel cylinder, wheel cyl, slave, slave cylinder, brake cylinder, cylinder, cylnder, cilinder, cyclinder, w c, caliper piston',
  pistonPistonsPlungerBucket: 'piston, pistons, plunger, bucket',
  sealSealsCupSealRubbers:
    'seal, seals, cup seal, rubbers, lip seal, dust boot, dust cover, gaiter, boot, repair kit, rubber, rubber boots, rubber cap, dust cap, rubber boot, cups',
  bleedNippleBleedScrewBleeder:
    'bleed nipple, bleed screw, bleeder, bleeder screw, bleeder valve, bleed point, bleed valve, nipple, bleading, bleed bolt, bleedscrew, cracked the bleed, bleed plug',
  brakeFluidFluidBrakeOil:
    'brake fluid, fluid, brake oil, hydraulic oil, juice, dot 4, dot 3, topping up, low level, hydraulic fluid, dot4, dot3, dot5',
  hoseFlexiFlexiHoseFlexible:
    'hose, flexi, flexi hose, flexible hose, rubber line, rubber hose, brake hose, hose pipe, flexible pipe, rubber pipe, flex hose, flex line, brake flexi, flexible brake hose, bendy pipe',
  masterCylinderMasterMC:
    'master cylinder, master, m c, main cylinder, main pump, compensating port, return port, pushrod too long, pedal rod, rod adjustment, main cyl, new master, mc, pedal pushrod',
  adjusterAdjustersSelfAdjuster:
    'adjuster, adjusters, self adjuster, auto adjuster, automatic adjuster, self adjusting, self adjust, adjustor, ajuster, adjsuter, adjster, addjuster, adjust, adjustment, adjusting mechanism, gizmo, slack adjuster, tightener, adj, auto adjusters, adjusting, adjusts, adjusted',
  strutSpreaderBarSpreaderPush:
    'strut, spreader bar, spreader, push rod, pushrod, cross bar, connecting bar, brace, long bar, rod between the shoes, bar between the shoes, cross strut, rod across, adjuster rod, adjuster bar, long rod, link rod',
  toothedLeverPawlPallPaul:
    'toothed lever, pawl, pall, paul, prawl, ratchet lever, quadrant, sector, stepped cam, latch, catch, adjuster lever, adjusting lever, clicker, little lever, spring loaded catch, little arm, small arm, small lever, thin lever, finger of the adjuster, little catch, wee lever, catch thing, small catch, locking lever, tooth lever, lever that locks, clip behind the adjuster, little plate, clip, sort of plate, retaining lever',
  toothTeethTheethSerration: 'tooth, teeth, theeth, serration, cog tooth',
  starWheelStarStarwheelStar:
    'star wheel, star, starwheel, star adjuster, adjuster wheel, gear wheel, sprocket, serrated nut, knurled nut, start wheel, stair wheel, cog, little wheel, toothed wheel, wheel with teeth, star cog, adjuster cog, cogwheel',
  screwStrutThreadedRodAdjuster:
    'screw strut, threaded rod, adjuster bolt, screw and sleeve, turnbuckle, threaded part, thread',
  wedgeAdjustingKeySlidingWedge: 'wedge, adjusting key, sliding wedge, taper key',
  hotLockBimetalBiMetal: 'hot lock, bimetal, bi metal, thermal clip, heat strip, temperature guard',
  lostMotionSlotPlayEnd: 'lost motion, slot play, end play of the strut, free travel, dead travel',
  backOffBackItOff:
    'back off, back it off, back them off, backed off, slacken off, slack off, slacken, wind in, wind back, wind it back, wound in, wound back, retract, set back, set it back, reset, de adjust, unwind, let it back, back the adjuster off, loosen the adjuster, release the adjuster, right in, ease the shoes, loosen, loosen off, let off, undo the adjuster, unscrew, ease off, screw in, screw back, wind down, collapse, release the shoes, bring the shoes in, back it out, make it smaller, run it back, slackened off, slackened, loosening, wind it in, fully in, adjuster in, all the way in',
  takeUpTakesUpTighten:
    'take up, takes up, tighten up, wind out, wound out, adjust up, wind up, snug up, expand, crank out, take up the slack, taking up, tighten, tighten it, tighten them, tightening, tightening up, tightened, tightens, turn it out, snug it up, adjust out',
  shoeGaugeSettingGaugeDrum:
    'shoe gauge, setting gauge, drum gauge, preset, light drag, slight drag, slight scrape, hint of drag, so many clicks back, lock and back off, initial setting, initial adjustment',
  centraliseCentralizeCentring:
    'centralise, centralize, centring, centering, centre the shoes, center the shoes, square up, sits to one side',
  clearanceGapRunningClearance:
    'clearance, gap, running clearance, shoe to drum, air gap, space between, gap size, spacing, air between, how close',
  overAdjustedOveradjustedOver:
    'over adjusted, overadjusted, over adjust, overtightened, over tightened, too tight, too far out, adjusted too far, wound right out, keeps tightening, over adjusting, keeps tightening itself, tightens itself, tighten by itself, tighten by themselves, tightening by itself, tightening themselves, tightening up by themselves, tightening up by itself, self tightening, gets tighter, adjusts too much, tighter every, keep tightening, keep on tightening, over tight, tightened too much, too far adjusted',
  handbrakeHandBrakeParking:
    'handbrake, hand brake, parking brake, parking break, park brake, e brake, ebrake, emergency brake, p brake, hb, h b, hanbrake, handbreak, hand break, stop brake, hand braking, parkbrake, pbrake, e break, p break, park break, foot parking brake, foot operated brake, parking pedal, hbrake, handbreaks, handbrakes, hand brakes, brake lever, brake handle',
  handLeverLeverHandleLeaver: 'hand lever, lever, handle, leaver',
  notchNotchesHandbrakeClick:
    'notch, notches, handbrake click, clicks on the handbrake, clicks on the lever, clicks of the lever, clicks of the handbrake, clicks up, clicks before, number of clicks',
  pullsUpToTheRoof:
    'pulls up to the roof, up to the roof, in the roof, nearly vertical, vertical, comes right up, comes up high, goes right up, all the way up, pulls up too far, goes too far, comes up too far, too high, travels too far, too many, very high, comes up, goes up, up too far, way up, miles up, sky high, too far up, up a lot, a long way, pulls up high, high up, far up, to the sky, up high, too much travel on the lever, higher, lot of clicks, loads of clicks, pulled right up, pull it right up',
  parkingLeverHandbrakeArmLever:
    'parking lever, handbrake arm, lever on the shoe, actuating lever, operating lever, shoe lever, trailing lever, handbrake lever inside the drum, lever inside the drum, parking brake arm, pivot of the lever, lever in the drum, arm in the drum, handbrake lever on the shoe, arm on the shoe, hand brake arm, arm inside the drum, lever arm, lever arm in the drum, swinging arm',
  offItsStopLeverStop: 'off its stop, lever stop, peg, nib, not going back all the way',
  cableCablesHandbrakeCable:
    'cable, cables, handbrake cable, brake wire, inner cable, outer cable, sheath, conduit, cabel, cabal, bowden, wire rope, wires, bowden cable, linkage, cord',
  slackLooseFloppyBaggyNo:
    'slack, loose, floppy, baggy, no tension, lose, loosing, stretched, stretch, streched, hangs down',
  equaliserEqualizerCompensator:
    'equaliser, equalizer, compensator, balance bar, yoke, swivel, y piece, balance beam, splitter, cross bar under the car, t bar, divider bar',
  holdHoldsHoldingGripGrips: 'hold, holds, holding, grip, grips, catching',
  notCatchingWontCatchNot:
    'not catching, wont catch, not gripping, not working, doesnt work, dont work, not work, wont work, lets go, let go on, no handbrake, no parking brake, doesnt keep, wont keep, doesnt hold the car, not keep',
  crookedAskewTiltedAtAn: 'crooked, askew, tilted, at an angle, cocked, not straight',
  rollsRollsAwayRollAway:
    'rolls, rolls away, roll away, roll back, rolls back, creeps, creep, slips, crawls, rolled away, rolling away, rolls forward, moves, rolling, rolls off, roll, runs away, starts to roll, moving, creeping, moves off, goes backwards by itself, rolling back, run back, runs back',
  slopeHillInclineGradientGrade:
    'slope, hill, incline, gradient, grade, ramp, driveway, steep, uphill, downhill, nose up, nose down, facing down, facing up, hills, bank, brae, sloping, slopes, inclined, hilly, car park ramp, slanted, flyover, ghat road',
  pedalBrakePedalPeddlePetal: 'pedal, brake pedal, peddle, petal, padel',
  longPedalLowPedalPedal:
    'long pedal, low pedal, pedal low, goes far, goes far down, goes a long way, long way down, half way, halfway, half way down, nearly to the floor, to the floor, on the floor, way down, bites late, lots of travel, too much travel, excessive travel, dead spot, far down, long travel, deep, goes down a long way, sits low, travel has got longer, excess travel, to the carpet, to the boards, to the mat, hits the floor, hits the carpet, all the way down, lots of pedal, bites low, grips late, before it grips, before it bites, before anything happens, before it does anything, before brakes work, bites near the floor, goes flat, nearly flat, too far down, to the bottom, a lot of travel, pedal far, pedal falls, low brake, near the floor, near floor, long throw, nothing at the top, nearly on the floor, to carpet, to floor, to the metal',
  spongySpungySoftSpringyMushy:
    'spongy, spungy, soft, springy, mushy, squishy, squidgy, soggy, bouncy, elastic, spongey, squashy, sponge, like a sponge, like sponge, marshmallow, jelly, rubbery, like stepping on a balloon',
  woodenHardPedalRockHard:
    'wooden, hard pedal, rock hard, like a brick, stiff pedal, pedal is hard, pedal hard, pedal feels dead, pedal stiff, hard as rock, hard as a rock, like concrete, heavy pedal, brick, stiff brake, press very hard, push very hard, push hard, press hard, have to push, stamp hard, lots of force, lot of force, lot of effort, both feet, like wood, solid pedal',
  sinksSinkingDropsSlowlyCreeps:
    'sinks, sinking, drops slowly, creeps down, bleeds down, goes down slowly, slowly goes down, leaks down, sinks to the floor, goes down at the lights, pedal drops, slowly falls, drops away, keeps going down, wont stay up, creeps to the floor, slowly to the floor, goes down on its own, slowly goes to the floor, slowly sinks',
  pulsingPulsatesPulsatePulsation:
    'pulsing, pulsates, pulsate, pulsation, judder, shudder, shutter, kick back, kicks back, surging, throb, throbs, pedal shakes, pedal vibrates, vibration, vibrates, wobbles, pulses, wub, bounces, pedal up and down, shakes, shaking, vibrating, vibrate, shimmy, lumpy, hopping, kick, kicks, pushes my foot back, pushed back, thumps, thumping, jumping',
  pumpPumpedPumpingPumpIt:
    'pump, pumped, pumping, pump it, pump up, pumped up, several times, second press, press again, two presses, pump twice, press twice, second time, two pumps, second push, second pump, second go, second stab, stamp twice, few pumps, couple of pumps, pump a few times, pumps up, third press',
  pressPushStepOnStamp: 'press, push, step on, stamp, tread, stand on, half press',
  grabGrabsGrabbyBitesSnatch:
    'grab, grabs, grabby, bites, snatch, snatches, fierce, sharp, digs in, over keen, sprag, lock up, locks up under braking, skids, grabbing, touchy, bite, too sharp, snappy, violent, locks too early, locks up easily, locks up too easily, over sensitive, oversensitive, throws me forward, threw me, savage, aggressive, jerks, lock the wheels, wheels lock up, locks the wheel, skid, slides in the wet, grabbing hard, over braking',
  weakPoorNoBrakesLow:
    'weak, poor, no brakes, low effort, no bite, long stopping, lazy, useless, hopeless, rubbish, no good, doesnt stop, dont stop, bad brakes, low brake force, feeble, pathetic, inefficient, low efficiency, not stopping, wont stop, will not stop, barely stops, hardly slows, hardly stops, takes ages to stop, long to stop, stopping distance, not strong, little effort, low reading, stopping power, ineffective, crap, dodgy, no power, doing nothing, does nothing, less braking, weaker, brakes worse, not braking, no braking, brake less, brakes less, nothing happens, sucks, terrible, awful, longer to stop, takes longer to stop, takes long to stop, does not slow, hardly slow',
  pullsLeftPullsRightPulls:
    'pulls left, pulls right, pulls to one side, pull to one side, pulls to the left, pulls to the right, pulling to the left, pulling to the right, pulling left, pulling right, pulls to, veers, goes sideways, dives, one side stronger, imbalance, imbalanced, unbalanced, imballance, uneven braking, difference left and right, drags to one side, swerves, yanks, tugs, darts, drifts, dives to one side, jerks to one side, car pulls, car goes to, goes to the left, goes to the right, goes left, goes right, wants to go left, pull left, pull right, pulls over, tugs to, to one side, steers itself, more to one side',
  dragDragsDraggingBindingBinds:
    'drag, drags, dragging, binding, binds, bind, rubs, rub, rubbing, catches, scrapes, hangs on, hanging on, stays on, stay on, heavy to push, not free, brakes by itself, brake jam, sticking, sticks on, stick on, not releasing, stiff to turn, stiff to spin, hard to turn, tight to turn, wont let go, wont release, slow to release, slow to let go, late release, lingers, not letting go, brakes sticking, resistance, held back, holding back, holding it back, holds back, holds me back, wont coast, doesnt coast, not rolling freely, doesnt roll freely, not rolling on, half on, partly on, slows by itself, slows down by itself, stops by itself, stays tight, rubs on, brake on by itself, brakes coming on, pulling up on its own, not fully releasing, doesnt release, does not release, not released, wont free, touching all the time',
  lockedLockedOnLockedUp:
    'locked, locked on, locked up, seized on, frozen, jammed, stuck on, solid, wont turn, will not turn, wont move, wont roll, doesnt turn, not turning, cant turn, skids along, stuck fast, wheel locked, wheel stuck, wheel is stuck, brake stuck, brakes stuck, brakes seized, brake seized, brakes locked, brakes frozen, handbrake stuck, handbrake stuck on, handbrake seized, wheel will not move, wheel seized, not rotating, jam, jams, jamming, get jam, locks solid, jammed up, wheel wont move, wheels dont turn, wheel will not turn, wheel wont budge, stuck wheel, solid wheel, tyre skids along, wheel drags along, skidding along, locked tight, locked solid, turn the wheel by hand cant, cant turn the wheel, cant turn the wheels by hand, turn by hand cant, freezes up, wheel and it wont budge, turn the wheel and it wont budge',
  seizedSiezedSeazedCeasedRusted:
    'seized, siezed, seazed, ceased, rusted up, dead, frozen up, stuck, struck, stcuk, stuk, jam tight, seize, rusted solid, idle, froze, rusted shut, rusted tight, gummed up, clagged up, seized up, locked with rust, will not budge by hand',
  wearFreeWearsFreeFree:
    'wear free, wears free, free itself, frees itself, free off, loosen itself, wear off, wear in by itself, work itself free, settle down, sort itself out, drive it off, ease off by itself, burn off, will it ease',
  howLongWillTheyLast:
    'how long will they last, how long last, life left, how much left, how many km left, how many miles left, how long have i got, km left, miles left',
  squealSqueakScreechChirpWhistle:
    'squeal, squeak, screech, chirp, whistle, howl, squeel, squeek, squeaky, shriek, screaming, scream, screams, squeaking, squealing, chirps, whine, whining, sing, singing',
  grindGrindingGratingGraunching:
    'grind, grinding, grating, graunching, graunch, scratching, rasp, crunch, metal on metal noise, scraping, gritty, metallic, metal sound, scrape, scraping sound, scrapy, grinds, scrapes metal, rough sound, growling metal',
  groanMoanCreakHonkHum:
    'groan, moan, creak, honk, hum, growl, drone, foghorn, moans, bellow, moo, cow, buzz, buzzing, trumpet, humming, whirr, whirring, rumble, rumbling, roar',
  clunkClonkKnockThudBang:
    'clunk, clonk, knock, thud, bang, pop, snap, ping, knocking, click clack, donk, tonk, thunk, clank, clanging, bonk, knocks, bangs, smack, crack noise, jolt',
  swishShhWhooshWuhWuh:
    'swish, shh, whoosh, wuh wuh, scuff, one spot, tight spot, same place every time, once per turn, once a turn, once each turn, once every turn, every revolution, once per revolution, every turn, each rotation, once per rotation, once a revolution, each turn, every rotation, per turn, once round, once a rev, per rev, same spot, one place, certain spot, certain point, one point, single spot, one part of the turn, part of the turn, some points, rhythmic, sh sh, each revolution, wheel turn, every wheel turn, specific point, specific spot, particular spot',
  twiceATurnTwicePer:
    'twice a turn, twice per turn, two spots, two places, twice per revolution, twice a revolution',
  noiseNoisySoundVoiceRacket:
    'noise, noisy, sound, voice, racket, noises, sounds, sounding, hear, hearing',
  rattleRattlesRattlingTinkle:
    'rattle, rattles, rattling, tinkle, chatter, jingle, jingling, clatter, loose bit, loose bits, flap, flaps, flapping',
  hotBoilingScorchingRedHot:
    'hot, boiling, scorching, red hot, too hot, too hot to touch, burns my finger, heats up, heating, overheat, over heat, overheating, heat, glowing, warm, blue, hotter, sizzles, smoke, smoking, steam, roasting, roasted, baking, scalding, burning hot, blistering, cooking, cooks, fry an egg, fry eggs, steaming, smoulder, smouldering, toasty, burns my hand, burnt my fingers, burnt my hand, burns your hand, burned my hand, burned my fingers, cant touch it, cant keep my hand on, cherry red, temperature, overheats, on fire, flames, smokes, smoky, roasty, hot to the touch',
  smellSmellsBurningBurntStinks:
    'smell, smells, burning, burnt, stinks, stink, pong, burnt hair, hot metal, smelling, smelly, whiff, reek, reeks, niffs, scorched, acrid, scent, odour, odor',
  fadeFadesGoesAwayOn:
    'fade, fades, goes away on hills, nothing left, cooked, after the descent, descent, mountain, mountains, pass, ghats, long hill, long downhill, down a hill, long descent, down the mountain, mountain road, coming down, coming down the hill, downhill run, descending, alpine, mountain pass, heat fade',
  wetRainRainyWaterPuddle:
    'wet, rain, rainy, water, puddle, deep water, flood, car wash, washing, washed, washed the car, drowned, river, drizzle, monsoon, storm, raining, rains, jet wash, pressure wash, hosed down, waded, flooded, wading, creek, launch ramp, puddles, soaking, snow, salt, road salt, slush',
  dampHumidMorningMorningsOvernight:
    'damp, humid, morning, mornings, overnight, first stop, first stops, dew, frost, cold morning, first thing, frosty, foggy, dewy, first brake, first time in the morning, cold start, winter morning, after a night, each morning, every morning, night, condensation',
  leakLeaksWeepingSeepingDripping:
    'leak, leaks, weeping, seeping, dripping, soaked, greasy, contaminated, gunk, black goo, fluid down the tyre, losing fluid, oily, milky, seep, wet inside, leaking, weepy, sweating, oozing, ooze, drip, running down, runs down, dribble, dribbling, losing, level drops, level goes down, level going down, drips, seepage, leaked',
  gearOilDiffOilAxle:
    'gear oil, diff oil, axle oil, half shaft seal, hub seal, wheel seal, axle seal, grease on the lining, grease on the shoe, oil on the shoe, oil on the lining, oil from the hub, diff leak, axle grease, grease from the axle, grease from the hub, bearing grease, hub grease, differential oil, axle leak, grease got on, rear axle oil, oil from the axle, grease on linings, grease on shoes, grease on brake shoes',
  rustedOnRustedToThe:
    'rusted on, rusted to the drum, stuck to the drum, welded itself, stuck after washing, stuck after rain, freed with a bang, with a bang, with a jerk, stood for months, parked for months, stood for weeks, standing for months, been standing, been sitting, sat for months, parked up, laid up, months of standing, long time parked, stood for six months, stood six months, stood all winter, stood for a year, storage, winter storage, sitting all winter, parked for ages, hasnt moved, not been moved, not moved for, left standing, parked for weeks, parked a month, stood outside, sat in the yard, sat for years, sat for a year, off the road, in the barn, long standing, after standing, sat ten years, sitting for, sat there, unused, not driven, not used for, laid over, parked at the beach, parked by the sea, near the sea, fortnight, long parking, stood for, stood over, frozen to the drum, shoes frozen, shoe frozen, were frozen to, iced up, ice, sat a long time, sitting a long time, sat for a long time, stood a long time',
  rustRustyCorrodedCorrosion: 'rust, rusty, corroded, corrosion, surface rust, rusted',
  wornWearThinFinishedGone:
    'worn, wear, thin, finished, gone, worn out, wore down, worn down, wearing, thinner, knackered, clapped out, worn away, paper thin, wearing out, worn through, wearing down, wears, low shoes, buggered, had it, toast, no material, no lining left, no friction left, nothing left on the shoe, bald, gone to nothing, down to nothing',
  limitMaximumDiameterMaxDia:
    'limit, maximum diameter, max dia, discard, minimum thickness, min thickness, wear limit, service limit, legal, stamped on it, stamped on the drum, cast on the drum, how thin, spec, tolerance, mark on the drum, minimum, min, how little, least, smallest, lowest, biggest, largest, maximum, max, permissible, too thin, too worn, too far gone, good enough, still ok, still good, usable, reusable, reuse, within spec, out of spec, must be replaced, when to replace, when to change, when must i, how low, needs replacing, how bad',
  glazedGlazeShinyPolishedGlassy:
    'glazed, glaze, shiny, polished, glassy, hardened, roughen, sand them, sanding, sandpaper',
  scoreScoredGrooveGroovedScratches:
    'score, scored, groove, grooved, scratches, deep marks, like a record, scoring, grooves, deep groove, catch my nail, hang my nail, nail catches, fingernail, gouge, gouged, grooves in drum, lines in the drum, deep line, rings in the drum',
  ovalOvalityOvelOvialityEgg:
    'oval, ovality, ovel, oviality, egg shaped, warped, bent drum, out of round, not round, elliptical, distorted, oval drum, ovalised, egg, lopsided, squashed, buckled',
  offCentreOffCenterEccentric:
    'off centre, off center, eccentric, excentric, runout, run out of the drum, not true, not concentric, swing of the drum, offcentre, offcenter, wobble, wobbling, not centred, not centered, off center drum, runs out, not running true, out of true',
  taperBellMouthBellMouthed:
    'taper, bell mouth, bell mouthed, belled, conical, barrel, tapered drum',
  crackCrackedHairlineHeatCheck:
    'crack, cracked, hairline, heat check, crazed, cracks, ringing, rings, dull sound, doesnt ring, not ring, sounds dead, no ring, split, fracture, broken drum',
  skimSkimmedSkimmingMachine:
    'skim, skimmed, skimming, machine the drum, machined, machining, turn the drum, turned down, cut the drum, lathe, resurface, rectify, bore out, regrind, turning the drum, true up, lathed, reface, trued, turn a drum, machining shop, turned at the shop, engineering shop, cut on a lathe',
  measureMeasuredVernierMicrometer:
    'measure, measured, vernier, micrometer, mic, bore gauge, depth gauge, feeler, dial gauge, clock, dti, dial indicator, calliper, caliper, measuring, ruler, tape, tape measure, callipers, how thick is, gauge it, verniers, sizes',
  rollerRollersRollerTestBrake:
    'roller, rollers, roller test, brake rollers, rolling road, rbt, brake machine, dyno, plate tester, brake test, effort, print out, tester, test lane, brake tester, testing station, inspection line, readings on the test, printout, test slip, test centre, test station, brake readings, kgf, efforts, efficiency',
  motNctDoeCvrtWof:
    'mot, nct, doe, cvrt, wof, warrant, cof, roadworthy, rwc, pink slip, rego, fitness, state inspection, safety inspection, technical inspection, main inspection, advisory, retest, defect notice, inspector, failed, fail, test failed, tuv, failed its, failed the, annual test, yearly test, safety check, inspectors, tested, vehicle test, test fail, rejected, check over',
  comeOffComeOfComes:
    'come off, come of, comes off, comes of, coming off, get off, get it off, get the drum off, take off, take the drum off, taking off, remove, removal, pull off, pull the drum, pop off, drum off, drum removal, prise, drag it off, off the car, wont come, get the rear drum off, getting the drum off, getting off, to come off, came off, get it free, drum free, get drum off, drums off, wont budge, will not budge, budge, wont shift, shift it, will not shift, slide off, slides off, slide it off, slip off, pull it off, pulled off, pulls off, knock off, knock it off, tap it off, lift off, remove drum, extract, separate it, break it loose, get drum free, get free, get drum, get drums, come loose, come away, comes away, come out, comes out',
  halfWayOnHalfwayOn:
    'half way on, halfway on, part way on, go on, goes on, only goes, go back on, goes back on, put back on, wont go on, wont fit over, fit over, refit the drum, slide back on, slide on, go over, drum on, put the drum on, drum back on, get the drum on, get it back on, seat the drum, fit the drum, get back on, go home, seat fully, wont seat, will not seat, go over the shoes, slide over, fits over, get over, slides over, under the drum, inside the drum again, drum fit, drum fits, sit on, push on, wont fit, does not fit, doesnt fit, will not fit',
  takeApartStripDownDismantle: 'take apart, strip down, dismantle, open up, disassemble, strip',
  putBackPutTogetherReassemble:
    'put back, put together, reassemble, assembly, assemble, reassembly, put it back together, back together, left over, leftover, assembling, how it goes back, goes together, fit it all back, build it up',
  fitFittingFittedInstallInstalled:
    'fit, fitting, fitted, install, installed, installing, replace, replaced, replacing, change, changed, changing, swap, swapped, renew, renewed, new, brake job, reline, overhaul, overhauled, rebuild, rebuilt, put in, put on, put new, redid, done the shoes, brake change, put in new, did the, have done, put new shoes, after changing, after replacing, just changed, just fitted',
  bleedBleedingBledPurgeFlush:
    'bleed, bleeding, bled, purge, flush, get the air out, gravity bleed, two person bleed',
  airAirInTheSystem: 'air, air in the system, air in the line, air bubble, bubbles',
  bedInBeddingInBedding:
    'bed in, bedding in, bedding, break in, breaking in, burnish, run in, running in, wear in, bet in, bedded, settle in, grip properly, bite properly, grip well, scrub in, run them in, break them in, bed them in, burnishing, bed, break the shoes in, wear to shape',
  byHandSpinSpinsRotate:
    'by hand, spin, spins, rotate, free wheel, freewheel, coast, coasts, spun, how free, turn freely, turns freely, spins freely, how many turns, turn the wheel, turn it, turning the wheel, rotate the wheel, free spin, to turn, turns, turn, rotation, rotates, spinning, spin it',
  clickClicksClickingTickSnick:
    'click, clicks, clicking, tick, snick, ratchet, ratchets, ratcheting, clix, ticks',
  reverseReversingBackingUp:
    'reverse, reversing, backing up, backwards, backward, in reverse, going back, going backward, back out, backing out, backed up, back up, going backwards, rearward, reversed, driving back, drive backwards',
  forwardForwardsGoingForward:
    'forward, forwards, going forward, ahead, driving off, setting off, set off, pull away, pulling away, move off',
  oneSideOneWheelOne:
    'one side, one wheel, one corner, left side, right side, one drum, one rear, nearside, offside, only one, lefthand, driver side, passenger side, single wheel, one of the rear, left rear, right rear, rear left, rear right, left wheel, right wheel, back left, back right, left back, right back, just one, one back wheel, one back, nsr, osr, n s r, o s r, n s, o s, lh rear, rh rear, back wheel only, the other side fine, other is fine, other side is fine, other one fine, one rear wheel, one of them, left drum, right drum, one hub, on one, left one, right one',
  allFourAllWheelsAll:
    'all four, all wheels, all four wheels, every wheel, all brakes, front and rear, front too, all the brakes',
  bothSidesBothRearBoth: 'both sides, both rear, both wheels, both drums, both back',
  leftAndRightWrongSide:
    'left and right, wrong side, other side parts, mixed up, swapped left and right, left right swapped, sides mixed, on the right side by mistake, sides swapped, swapped sides, left on the right, other side adjuster, wrong hand, wrong handed, side to side mixed',
  upsideDownWrongWayRound:
    'upside down, wrong way round, wrong way up, backwards on, on backwards, back to front, wrong way, back to front on, other way up, inverted, the wrong way, wrong way around, wrongly fitted',
  towTowingTrailerCaravanHorse:
    'tow, towing, trailer, caravan, horse float, horsebox, boat trailer, tow a van, pulling a trailer',
  loadedLadenFullyLoadedHeavy: 'loaded, laden, fully loaded, heavy load, under load, full load',
  whichWayDirectionClockwise:
    'which way, direction, clockwise, anticlockwise, counterclockwise, up or down, which direction, what way, way to turn, way do i turn, way round do i turn, left or right, lefty, which side, way does it turn, up to tighten, down to tighten',
  howMuchHowManyHow: 'how much, how many, how far, how big, what size, how wide',
  toolToolsBrakeSpoonSpoon:
    'tool, tools, brake spoon, spoon, adjuster spanner, screwdriver, puller, slide hammer, hammer, mallet, pliers, spring pliers, special tool, which tools, spring hook, brake tool, pliers for springs, screw driver, prybar, pry bar, wrench, spanner',
  blowtorchTorchFlameHeatGun: 'blowtorch, torch, flame, heat gun, heat the drum',
  dustBrakeDustBlowOut:
    'dust, brake dust, blow out, compressed air, air line, vacuum, brake cleaner, powder, breathe, breathing, inhale, asbestos dust, air gun, blow it out, compressor',
  axleStandAxleStandsJack:
    'axle stand, axle stands, jack stand, jack stands, jack, safety stand, chock, chocks, jacked up, jack it up, on stands, on the jack',
  safeToDriveSafeCan:
    'safe to drive, safe, can i drive, ok to drive, drive it, drive on it, drive home, keep driving, dangerous, still drive, leave it, limp home, risky, safely, is it ok to drive, can it be driven, drive with it, carry on driving, dangerous to drive, drivable, driveable, get home, unsafe',
  duoServoDualServoServo:
    'duo servo, dual servo, servo brake, servo kind, self servo, big anchor at the top, adjusts in reverse, short and long lining, adjust in reverse, adjusts when reversing, big anchor pin, big anchor, anchor pin on top, anchor at the top, anchor pin at the top, one big pin on top',
  brakeBoosterBoosterVacuum: 'brake booster, booster, vacuum servo, vacuum booster, brake servo',
  drumInDiscDrumIn:
    'drum in disc, drum in hat, drum in rotor, drum inside disc, drum inside the disc, handbrake shoes inside the disc, shoes inside the disc, inside the rotor, disc brake handbrake shoes, top hat, drum in disk, inside disc, inside the disk, drum inside of disc, drum inside of disk, drum inside rotor, drum within the disc, shoes in the disc, parking drum',
  discDiscsDiskDiskBrake:
    'disc, discs, disk, disk brake, front disc, front brake, front brakes, front pads, calipers',
  twinLeadingTwoLeadingTwin:
    'twin leading, two leading, twin leading shoe, 2ls, cam brake, s cam, air brake, electric magnet, electric trailer brake, band brake, motorcycle, motorbike, scooter, bicycle, washing machine',
  whichKindWhatKindWhich:
    'which kind, what kind, which type, what type, type of brake, kind of brake, identify, simplex, non servo, which design, what sort, which sort, what model of brake, what system',
  electricParkingBrakeElectronic:
    'electric parking brake, electronic parking brake, epb, electric handbrake',
  warningLightWarningLampAbs:
    'warning light, warning lamp, abs light, abs, brake light, dashboard light, light on the dash, esp',
  priceCostHowMuchDoes:
    'price, cost, how much does it cost, cheap, brand, part number, where to buy, which shoes to buy, buy, how expensive, bucks, quid, rupees, rand, which brand, where can i get, supplier',
  torqueSettingTighteningTorque:
    'torque setting, tightening torque, nut torque, how tight is the nut, torque wrench, nm for the nut, how tight the nuts, newton metres for, foot pounds for, torque figure, torque spec',
  greaseLubricateLubeCopper:
    'grease, lubricate, lube, copper grease, copper slip, anti seize, ceramic grease',
  howDoesExplainWhatIs:
    'how does, explain, what is, what are, whats, meaning, works, how it works, principle, show me, why does, why do, how do, what does, understand, tell me how, why is, why are, why it, whys, meaning of, for dummies, in simple words, simple explanation, basics, reason, how come',
  photoPhotographPhotographs:
    'photo, photograph, photographs, picture, pic, pics, photos, camera, image, snapshot, take a picture',
  whichOrderWhatOrderIn:
    'which order, what order, in order, right order, order of, sequence, step by step, steps, first and last, order to, in what order, order for',
  toeShoeTipTipOf: 'toe, shoe tip, tip of the shoe, end at the cylinder, cylinder end',
  forceForcesThrustNewtons: 'force, forces, thrust, newtons',
  pressurePsiBarOfPressure: 'pressure, psi, bar of pressure, hydraulic pressure, line pressure',
  touchTouchesContactMakeContact:
    'touch, touches, contact, make contact, meets the drum, bears, bear on, touching the drum, start touching, first contact',
  thenStopsThenItStops:
    'then stops, then it stops, and stops, and then stops, then catches, then it catches, and then it catches, and catches, hits something, hits the shoes, hits shoes, then jams, and jams, snags, catches the shoes, catches on the shoes, then sticks, wont come no more, wont come any more, wont come further, no further, stops dead, and holds',
  slidesOutSlidesSlidSlide:
    'slides out, slides, slid, slide out, comes out a bit, comes a bit, comes a little, comes out a little, comes out slightly, moves a bit, moves out, moves outwards, pulls out a little, pulls out a bit, pulls off about, comes out about, a few mm, few millimetres, half an inch, half a inch, half inch, half a centimetre, couple of mm, quarter inch, part of the way, partway, part way, finger width',
  sameSameLookAlikeLook:
    'same same, look alike, look the same, all look same, identical, all the same',
  lessonClassStudentsPupils:
    'lesson, class, students, pupils, teach, teaching, worksheet, exam, homework, course, apprentice, apprentices, trainee, trainees, college, classroom, my class, show my class, presentation, teacher, instructor, pupil, student',
  empty:
    'a an the my me i im ive we our it its is are am was were be been being of to and or so but that this these those there then than with for from by as at in into do does did doing have has had having just really very quite bit some any please help thanks hi hello guys anyone mate dear sir hey need want would could should can will may might like got get gets getting when where what which who how why if about also even still only now today after before while again ever since he she they them his her their you your us because cause seem seems feel feels felt car van truck vehicle ute bakkie rear back brake brakes break braking wheel wheels tyre tire side thing stuff something use used using make makes made go goes going know tell think one two much many lot all well ok old year years ago time day week month months weeks days hours minutes hour mile miles km bought out past let whether allow allowed permitted',
  not: 'not no wont dont doesnt didnt cant cannot couldnt isnt aint arent wasnt werent hasnt havent shouldnt wouldnt never without stopped refuses refuse fails nothing neither nor hardly barely wnt dosent doesn t nae',
  affOffOotOutDoon:
    'aff off, oot out, doon down, roon round, aboot about, cannae cant,  \n  dinnae doesnt, dunno doesnt know, didnae doesnt, wilnae wont, willnae wont, winnae wont, wisnae wasnt, doesnae doesnt, isnae isnt,\n  wouldnae wont, havnae havent, hasnae hasnt, couldnae cant, heid head, deid dead, ither other, fae from, wi with, tae to,\n  ma my, meself myself, summat something, owt anything, nowt nothing, gonna going to, gotta got to,\n  wanna want to, gimme give me, lemme let me, kinda kind of, dunt doesnt, aint isnt, yall you, ya you, ur your, \n  thru through, tho though, cos because, coz because, cuz because, bout about, abt about, pls please, plz please, nd and,\n  mins minutes, hrs hours, kms km, kilometers km, kilometres km, wudnt wont, wud would, shud should, cud could,\n  dosnt doesnt, doesent doesnt, dosent doesnt, wnt wont, wouldent wont, nothin nothing, goin going, comin coming,\n  stickin sticking, bindin binding, draggin dragging, grindin grinding, squeakin squeaking, smokin smoking, brakin braking,\n  rubbin rubbing, drivin driving, sumthing something, sumtimes sometimes, alot lot, infront in front, abit bit, gunna going to,\n  outta out of, offa off, upto up to, inbetween between, tire wheel, tyre wheel, tires wheel, tyres wheel, wheres where is, hows how is',
  aboveAcrossAfterAgainAgainst:
    'above across after again against almost along already also although always another anything around autumn away bad battery because before begin begins below belt bend bending bends best better between bits black board boat bolt boot boots both brother brown burst came care careful carpet cheap check chuck city clean cleaned clear clutch come cost costs country dear done door doors drove during each early easier east easy eight end ended ends engine every everything exhaust fast faster father feet fell final finally find fine finger fingers first five floor foot form found four free friend from full garage gave gear gears give given glass gone good great green grey guess half hand hands harder hardest hear heard hears heavier heavy high higher highest hitting home hour hours house hundred inside iron keep kept large larger last late later least left less light lights listen little long longer longest look looked looking looks loud louder lower lowest matter maybe metal mind minds mine minute mirror money month months more most mother motor near nearly neighbour never next night nights nine normal north nothing odd often older oldest other others outside over paint pair pairs paper part parts people perhaps person piece pieces place places plain plastic plate point points price quick quickly quiet quite read reads ready real really right rights road roads rubber said same sand saying says scared seat seats second seconds seeing seen sees sell sense seven shoot shop shops short shorter shoulder shout show shown shows sides since sits sitting sizes slow slowly small smaller sold some something sometimes soon sooner sound sounds south spring stand start started starts stay stays steel steering still stone stood stop store stores straight strange street summer sure take taken talk talked talks tell tells think thinks though thought thousand threw through till today told tonight took torn town uncle under until usual usually wait waits walk walks wall walls weather week weeks weird west while whilst white whole window windows winter within without wood word words work worked working works worse worst wrong year years young younger',
});

/** ui/away/clip/clip-way.ts */
export const awayClipClipWay = section('awayClipClipWay', {
  aPress: 'A press',
  theBrakeAsItStands: 'The brake as it stands, pressed once; slowed where it moves fast.',
  tenClicks: 'Ten clicks',
  itsNextTenClicksEach: 'Its next ten clicks, each slowed down, and the wear between them.',
  aLifeInTwelveSeconds: 'A life in twelve seconds',
  fromNewToItsLimit: 'From new to its limit on the road of Wear.',
  aPullAtTheDrum: 'A pull at the drum',
  whatHoldsTheDrumOr: 'What holds the drum, or that it comes.',
  theOpenLessonsStep: 'The open lesson’s step',
  itsQuestionWhatHappensAnd: 'Its question, what happens, and why.',
  theWholeTalk: 'The whole talk',
  fourMinutesWithWhatIs: 'Four minutes, with what is said as captions.',
  h264PlaysNearlyEverywhere: 'H.264: plays nearly everywhere, in slides too.',
  vp9OrVp8PlaysIn: 'VP9, or VP8: plays in every browser.',
  anAnimatedPngForA: 'An animated PNG for a web page: runs by itself, without sound.',
  eightPicturesOnASheet: 'Eight pictures on a sheet for paper, as SVG and PNG.',
  madeWithTakeup: (address: string) => `Made with Takeup: ${address}`,
  itIsMade: 'It is made.',
  stoppedNothingWasKeptOf: 'Stopped. Nothing was kept of it.',
  whatIsFilmed: 'What is filmed',
  thisOneIsTooLong: ' This one is too long for a loop or a strip.',
  thisBrowserEncodesNoFilms:
    ' This browser encodes no films: take a loop or a strip, or another browser.',
  picturesASecond: 'Pictures a second',
  whatIsSaidStandsIn: 'What is said stands in the picture too',
  preview: (title: string) => `Preview: ${title}`,
  captions: 'Captions',
  sPicturesAtASecond: (lasts: string, pictures: string, rate: number, codecs: string) =>
    `${lasts} s, ${pictures} pictures at ${rate} a second, ${codecs}`,
  kBTheSameBench: (title: unknown, told: string, byteLength: string) => [
    title,
    ': ',
    told,
    ', ',
    byteLength,
    ' kB. The same bench gives the same pictures each time.',
  ],
  theFilm: 'the film',
  save: (theFilm: string) => `Save ${theFilm}`,
  saveAsSvg: 'Save as SVG',
  saveCaptions: 'Save captions',
  saveTranscript: 'Save transcript',
  what: 'What',
  how: 'How',
  howMuchOfItIs: 'How much of it is made',
  stop: 'Stop',
  makeIt: 'Make it',
  thePageGoesOnMeanwhile: 'The page goes on meanwhile; closing this stops it.',
  captionsAreInTheFilms: 'Captions are in the film’s file too.',
  everyPictureTellsThePace: (captionsAre: string) =>
    `Every picture tells the pace of time and how much larger gaps are drawn. ${captionsAre}`,
});

/** ui/away/clip/film.ts */
export const awayClipFilm = section('awayClipFilm', {
  time: (paceName: string) => `Time ${paceName}`,
  gaps: (magnification: number) => ` · gaps ×${magnification}`,
});

/** ui/away/clip/kinds.ts */
export const awayClipKinds = section('awayClipKinds', {
  openALessonFirstIts: 'Open a lesson first: its open step is filmed.',
  thisAdjusterGoesInSteps: 'This adjuster goes in steps too small to tell one by one.',
  aPress: 'A press',
  tenClicks: 'Ten clicks',
  theOnlyClick: 'The only click',
  clicks: (n: number) => `${n} clicks`,
  fromNew: ' from new',
  aLifeInTwelveSeconds: 'A life in twelve seconds',
  aPullAtTheDrum: 'A pull at the drum',
  step: (title: string, at: number) => `${title}, step ${at}`,
});

/** ui/away/clip/loop-sink.ts */
export const awayClipLoopSink = section('awayClipLoopSink', {
  animatedPng: 'animated PNG',
});

/** ui/away/clip/scripts.ts */
export const awayClipScripts = section('awayClipScripts', {
  thePedalGoesDown: 'The pedal goes down',
  theShoesGoOut: 'The shoes go out',
  theLeverClimbsItsTooth: 'The lever climbs its tooth',
  overTheCrestItDrops: 'Over the crest: it drops',
  letGoTheStrutIs: 'Let go: the strut is longer',
  thePedalGoesDownTo: (bar: number) => `The pedal goes down, to ${bar} bar`,
  thePedalIsLetGo: 'The pedal is let go',
  clickOfWornOnThen: (n: number, length: number) =>
    `Click ${n} of ${length}: worn on, then pressed`,
  of1SIsKm: (distance: string) => `1 s is ${distance} km`,
  lining: (side: 'front' | 'rear', down: string, unit: string) =>
    `Lining, ${side}: ${down} ${unit}`,
  kmTooth: (distance: string, tooth: string) => `${distance} km · tooth ${tooth}`,
  ofMm: (needed: string) => ` of ${needed} mm`,
  pressureBar: (bar: string) => `Pressure ${bar} bar`,
  shoesApart: (there: string, next: string) => `Shoes apart ${there}${next}`,
  tooth: (tooth: string) => `Tooth ${tooth}`,
  of1SIsKm2: (far: string) => `1 s is ${far} km`,
  fromNewTheLiningsWear: 'From new: the linings wear, and tooth by tooth the strut gets longer',
  end: 'At its limit: new linings are due',
  pulled: 'The drum is pulled straight',
});

/** ui/away/clip/worker-run.ts */
export const awayClipWorkerRun = section('awayClipWorkerRun', {
  stopped: 'Stopped.',
  whatMakesFilmsCouldNot: 'What makes films could not be loaded.',
  whatMakesFilmsHasEnded:
    'What makes films has ended by itself, and nothing was kept of this one: make it again.',
});

/** ui/away/cut/assembly.ts */
export const awayCutAssembly = section('awayCutAssembly', {
  caution:
    'Blades and lasers cut: work as their makers say, with eye protection. Rubber bands and springs of the model pinch too; the springs of a real brake are far stronger and need the proper tool.',
  noToothedLeverHereNothing: 'No toothed lever here: nothing that would have to click.',
  itWillNotWorkSo: (faults: string) => `It will not work so: ${faults}.`,
  checkedAsCutAllTeeth: (last: number, b: string) =>
    `Checked as cut: all ${last} teeth are passed, taken and held, the pin is free in its slot and the finger in its window. Each drop comes within ${b} mm of where the bench has it.`,
  trueSize: 'True size',
  timesItsSize: (factor: string) => `${factor} times its size`,
  theSmallestToothIsMm: (size: string, wide: string, high: string) =>
    `${size}: the smallest tooth is ${wide} mm wide and ${high} mm high.`,
  under: (sizeText: string, kerf: string, play: string, pin: string) =>
    `${sizeText} Kerf ${kerf} mm, play ${play} mm, pins ${pin} mm.`,
  cutOutModelPuttingIt: 'Cut-out model: putting it together',
  heights: 'Heights.',
  of0IsTheBoardEach:
    '0 is the board; each height is one thickness of the sheet. Build from the board up.',
  springs: 'Springs.',
  rubberBandsBetweenTheSmall:
    'Rubber bands between the small holes of the two shoes, above and below; one from the lever’s pin down to its block.',
  aPress: 'A press.',
  pushBothToesOutWith:
    'Push both toes out with finger and thumb until the linings meet the drum, and let go. Hold the front lining further out, as if it were worn: the lever climbs and clicks, and the strut is longer.',
  check: 'Check.',
  no: 'No.',
  part: 'Part',
  pieces: 'Pieces',
  height: 'Height',
  whatToDoWithIt: 'What to do with it',
});

/** ui/away/cut/cut-way.ts */
export const awayCutCutWay = section('awayCutCutWay', {
  drawingForACutter: 'Drawing for a cutter',
  pagesToPrint: 'Pages to print',
  kerfPlayPinsMm: (title: string, sizeText: string, kerf: string, play: string, pin: string) =>
    `${title}. ${sizeText} Kerf ${kerf}, play ${play}, pins ${pin} mm.`,
  cutOutX: (name: string, factor: number) => `cut-out ${name} x${factor}`,
  itCouldNotBeSaved: (error: string) => `It could not be saved (${error}).`,
  toBeCutOf: 'To be cut of',
  timesItsSize: 'Times its size',
  kerfIsWhatTheCut:
    'Kerf is what the cut takes away; play, how much wider holes and slots are than their pins.',
  allPartsOnOneSheet: (width: string, height: string) =>
    `All parts on one sheet take ${width} × ${height} mm. They are cut from the outlines that the bench draws and reckons with, as this brake stands now.`,
  tryingTheLeverAtEvery: 'Trying the lever at every tooth…',
  forACutter: 'For a cutter',
  svgWord: 'SVG',
  dxf: 'DXF',
  redIsCutBlueAre: 'Red is cut, blue are names. The lines run half a kerf outside of each part.',
  onPaper: 'On paper',
  sizeOfPaper: 'Size of paper',
  pdfToGlueTogether: 'PDF to glue together',
  printHowItGoesTogether: 'Print how it goes together…',
});

/** ui/away/cut/materials.ts */
export const awayCutMaterials = section('awayCutMaterials', {
  card: 'Card',
  knifeOrScissorsSplitPins:
    'Knife or scissors, split pins of 3 mm. Thick card, or paper glued on it.',
  plywood: 'Plywood',
  laserOrFretsaw3Mm:
    'Laser or fretsaw, 3 mm thick, dowels or M4 screws. Try kerf and play on one hole first.',
  acrylic: 'Acrylic',
  laser3MmThickM4:
    'Laser, 3 mm thick, M4 screws. Let the machine’s air run: the fumes are harmful.',
});

/** ui/away/cut/moves.ts */
export const awayCutMoves = section('awayCutMoves', {
  everyTooth: 'every tooth',
  tooth: (list: string) => `tooth ${list}`,
  theLeversPinBindsIn: 'The lever’s pin binds in its slot',
  theFingersDiscDoesNot: 'The finger’s disc does not fit the window',
  theSlotIsTooShort: 'The slot is too short to lift the lever over',
  theLeverStandsOffIts: 'The lever stands off its root, the cut rounds it too much',
  theLeverDropsTooLate: 'The lever drops too late or too early',
  theToothDoesNotHold: 'The tooth does not hold',
});

/** ui/away/cut/parts.ts */
export const awayCutParts = section('awayCutParts', {
  turnsOnItsAnchorPin: 'Turns on its anchor pin in the board',
  itsRoundHeelStandsOn: 'Its round heel stands on the block of the board',
  frontShoe: 'Front shoe',
  rearShoe: 'Rear shoe',
  aPinWithAWasher: (turns: string) =>
    `${turns}; a pin with a washer through the wide hole keeps it flat.`,
  drumRing: 'Drum ring',
  liesLooseBetweenTheFour: 'Lies loose between the four outer pins of the board, and turns.',
  parkingLever: 'Parking lever',
  turnsOnAPinIn:
    'Turns on a pin in the rear shoe. A string from its hook through the board’s hole is the cable.',
  stopOfTheParkingLever: 'Stop of the parking lever',
  gluedUnderTheLeverSo: 'Glued under the lever so that it rests on the edge of the rear web.',
  heelBlock: (side: 'front' | 'rear') => `Heel block, ${side}`,
  gluedOnTheBoardThe: 'Glued on the board; the heel slides on its flat.',
  board: 'Board',
  carriesAllItsPinsAnchors:
    'Carries all. Its pins: anchors, hold-downs, guides of the strut, four around the drum; the last hole is for the cable.',
});

/** ui/away/cut/pdf.ts */
export const awayCutPdf = section('awayCutPdf', {
  cutOutModel: 'Cut-out model',
  of100MmMeasureItPrint: '100 mm: measure it. Print at 100 %, not fitted to the page.',
  ofRowsColumnsCrossesLie: (rows: number, columns: number) =>
    `of ${rows} rows, ${columns} columns; crosses lie on crosses`,
});

/** ui/away/cut/picture.ts */
export const awayCutPicture = section('awayCutPicture', {
  theFlatPartsInTheir: 'The flat parts in their places',
});

/** ui/away/cut/strut-other.ts */
export const awayCutStrutOther = section('awayCutStrutOther', {
  wedgeSeat: 'Wedge seat',
  gluedOnTheFrontWeb: 'Glued on the front web, its face upright.',
  looseBetweenSeatAndStrut:
    'Loose between seat and strut, thick end up. A rubber band from its foot to the web pulls it down.',
  itsSlopedEndLiesOn:
    'Its sloped end lies on the wedge, its other end stands on the parking lever.',
  gluedOverTheStrutsEnd: (right: string) =>
    `Glued over the strut’s end; it reaches over the parking lever to the tine, ${right} mm long in all on the real brake.`,
  gluedUnderTheArmsEnd:
    'Glued under the arm’s end, behind the parking lever: the room before it is the lost motion.',
  strutScrewAtStep: (tooth: number) => `Strut, screw at step ${tooth}`,
  onePieceAThreadCannot:
    'One piece: a thread cannot be cut flat, so it keeps the length of this step. Its slot takes the pin of the front web, its other end stands on the parking lever. Cut another at another step and put it in: the clearance changes.',
  armOfTheStrut: 'Arm of the strut',
  tineOfTheHook: 'Tine of the hook',
});

/** ui/away/cut/strut-toothed.ts */
export const awayCutStrutToothed = section('awayCutStrutToothed', {
  strutPlate: 'Strut, plate',
  liesOnTheShoesBlock:
    'Lies on the shoes. Block, spacer and foot are glued on it or beside it, the bar over them.',
  blockWithTheTooth: 'Block with the tooth',
  gluedOnThePlatesLower:
    'Glued on the plate’s lower end, their small holes in line: a pin there holds the band of the lever.',
  spacer: 'Spacer',
  gluedBetweenPlateAndBar: 'Glued between plate and bar, clear of the lever’s whole way.',
  strutFoot: 'Strut, foot',
  twoOnEachOtherUnder: 'Two on each other under the bar’s end: they stand on the parking lever.',
  strutBarWithTheSlot: 'Strut, bar with the slot',
  gluedOverSpacerAndFoot:
    'Glued over spacer and foot. Its slot takes the lever’s pin, its long hole the two guide pins of the board.',
  toothedLever: 'Toothed lever',
  betweenPlateAndBarIts:
    'Between plate and bar. Its pin is fast in it and slides in the bar’s slot; a rubber band from the pin to the block’s pin presses it into its tooth.',
  discOfTheFinger: 'Disc of the finger',
  twoOnEachOtherGlued:
    'Two on each other, glued under the round end of the lever’s finger: they stand in the window of the front web, which is wider by the lost motion.',
});

/** ui/away/data/collect.ts */
export const awayDataCollect = section('awayDataCollect', {
  readingsOf: (title: string) => `Readings of ${title}`,
  clearanceAtRest: 'Clearance at rest',
  liningLeftFront: 'Lining left, front',
  liningLeftRear: 'Lining left, rear',
  brakeFactorAfterSprings: 'Brake factor, after springs',
  adjusterTooth: 'Adjuster tooth',
  highestDrumTemperature: 'Highest drum temperature',
  pedalTravel: 'Pedal travel',
  drumRadius: 'Drum radius',
  dragReleased: 'Drag, released',
  powerOfTheDrag: 'Power of the drag',
  lifeOf: (title: string) => `Life of ${title}`,
  bandFrom: (name: string) => `${name}, band from`,
  bandTo: (name: string) => `${name}, band to`,
  band95Of100: 'Band, 95 of 100',
  notAllOfThemTold: 'not all of them told',
  asFarAsItHas: ', as far as it has come',
  varied: (name: string, title: string, asFar: string) => `${name} varied, ${title}${asFar}`,
  curveName: 'Curve',
  answerWhatIsAskedFirst: 'Answer what is asked first: the readings would tell.',
  readingsName: 'All readings of the moment',
  lifeName: 'The life that was driven',
  noneYetLetItWear: 'None yet: let it wear on in Wear, then come back.',
  whatIfName: 'The curves of What if',
  noneHereOpenWhatIf: 'None here: open What if (key v), ask something, and take it from there.',
});

/** ui/away/data/data-way.ts */
export const awayDataDataWay = section('awayDataDataWay', {
  tableCopiedPasteItInto: 'Table copied: paste it into a spreadsheet or a text.',
  theBrowserDoesNotLet: 'The browser does not let the page copy: save the table.',
  firstRows: (title: string) => `First rows: ${title}`,
  theFirstShownRounded: (seen: number) => `, the first ${seen} shown, rounded`,
  shownRounded: ', shown rounded',
  rowsTheFileHasAll: (length: number, theFirst: string) =>
    `${length} rows${theFirst}; the file has all digits.`,
  theTablesAreBeingMade: 'The tables are being made.',
  saveCsv: (name: string) => `Save CSV: ${name}`,
  saveCsv2: 'Save CSV',
  saveJson: (name: string) => `Save JSON: ${name}`,
  saveJson2: 'Save JSON',
  copyTable: (name: string) => `Copy table: ${name}`,
  copyTable2: 'Copy table',
  unitsStandInTheHeader:
    'Units stand in the header or beside each value. Scene, version and this moment’s link stand in every file: dropped on this page, it opens the bench as it was. A teaching brake: its figures are not your vehicle’s.',
});

/** ui/away/dialog.ts */
export const awayDialog = section('awayDialog', {
  whatToTake: 'What to take',
  takeAway: 'Take away',
  done: 'Done',
});

/** ui/away/figure/compose.ts */
export const awayFigureCompose = section('awayFigureCompose', {
  told: (scale: string) => `Scale ${scale} when printed at 100 %`,
  brakeDrawing: 'Brake drawing',
});

/** ui/away/figure/facts.ts */
export const awayFigureFacts = section('awayFigureFacts', {
  turns: {
    1: 'drum turning forward',
    0: 'drum standing still',
    '-1': 'drum turning backward',
  },
  left: 'Left',
  right: 'Right',
  wheel: (left: string) => `${left}-hand wheel from outside, drum cut away`,
  pedalPressed: 'pedal pressed',
  pedalReleased: 'pedal released',
});

/** ui/away/figure/figure-way.ts */
export const awayFigureFigureWay = section('awayFigureFigureWay', {
  asOnTheStage: 'As on the stage',
  wholeBrake: 'Whole brake',
  asShown: 'As shown',
  blackAndWhite: 'Black and white',
  drawingSvg: 'Drawing (SVG)',
  picturePng: 'Picture (PNG)',
  scaleBar: 'Scale bar',
  readingsThatMatter: 'Readings that matter',
  pictureCopied: 'Picture copied.',
  theBrowserDoesNotLet: 'The browser does not let the page copy a picture: save it.',
  smallestWordsPt: (smallest: string) => `, smallest words ${smallest} pt`,
  mmOnPaper: (wide: string | undefined, high: string | undefined, c: string) =>
    `${wide} × ${high} mm on paper${c}.`,
  namesOfTheParts: 'Names of the parts',
  noGroundWhatLiesBehind: 'No ground: what lies behind shows through',
  scaleOnPaperBrakeDrawn: 'Scale on paper (brake drawn : real)',
  title: 'Title',
  caption: 'Caption',
  widthOfThePicturePx: 'Width of the picture, px',
  theFigureAsItWill: 'The figure as it will be',
  theFigureIsBeingMade: 'The figure is being made.',
  saveFigure: 'Save figure',
  copyPicture: 'Copy picture',
  sceneVersionAndThisMoments:
    'Scene, version and this moment’s link are in the file: dropped on this page, it opens the bench as it was. Shift and E on the desk save a figure with these choices at once.',
});

/** ui/away/figure/legend.ts */
export const awayFigureLegend = section('awayFigureLegend', {
  hatches: {
    drum: 'Drum, cut',
    lining: 'Lining',
    cylinder: 'Wheel cylinder, cut',
    piston: 'Piston, cut',
    rubber: 'Rubber',
    fluid: 'Brake fluid',
    overlap: 'Overlap with the lip',
  },
  leadingShoeSolid: 'Leading shoe: solid',
  trailingShoeOpen: 'Trailing shoe: open',
  gapTrueSize: 'Gap, true size',
  gapDrawn: (fan: number) => `Gap, drawn ×${fan}`,
  restPosition: 'Rest position',
  heatLargerDotsAreHotter: 'Heat: larger dots are hotter',
});

/** ui/away/figure/make.ts */
export const awayFigureMake = section('awayFigureMake', {
  aTeachingBrakeItsFigures: 'A teaching brake: its figures are not your vehicle’s.',
  thisBrowserCannotPaintSo: 'This browser cannot paint so large a picture: choose a smaller one.',
});

/** ui/away/save.ts */
export const awaySave = section('awaySave', {
  isWithYourDownloads: (name: string) => `${name} is with your downloads.`,
  thereIsNoRoomOn: 'there is no room on the disk',
  itMayNotBeWritten: 'it may not be written there',
  isSaved: (name: string) => `${name} is saved.`,
  wasNotSavedWhatStands: (name: string, whyNot: string) =>
    `${name} was not saved: ${whyNot}. What stands on the bench stays as it is.`,
});

/** ui/away/share/dropped.ts */
export const awayShareDropped = section('awayShareDropped', {
  taken:
    'A moment, a brake, a lesson, kept sheets, a figure or a table of this bench, or a photograph of your brake.',
  opened: (name: string) => `${name} opened`,
  wasNotOpenedNothingElse: (
    name: string,
    path: string | undefined,
    found: string | undefined,
    allowed: string | undefined,
  ) =>
    `${name} was not opened; nothing else has changed. Its moment, ${path}: found ${found}; allowed: ${allowed}.`,
  isAPictureStartA: (name: string) =>
    `${name} is a picture: start a brake of your own here, then drop the picture again and its places can be tapped in it.`,
  wasNotOpenedNothingElse2: (name: string, tellFinding: string) =>
    `${name} was not opened; nothing else has changed. ${tellFinding}`,
  isAmongTheLessons: (name: string) => `${name} is among the lessons.`,
  oneFileAtATime: (name: string, more: number) =>
    `One file at a time: ${name} was taken, ${more} more were not.`,
  wasNotOpenedFoundBytes: (name: string, size: number, most: number) =>
    `${name} was not opened: found ${size} bytes; allowed: ${most}.`,
});

/** ui/away/share/moment.ts */
export const awayShareMoment = section('awayShareMoment', {
  momentOfTheBench: 'Moment of the bench',
  tooMuchForALink: 'Too much for a link: save it as a file.',
  linkCopied: 'Link copied.',
  theBrowserDoesNotLet:
    'The browser does not let the page copy: take the address from its own bar.',
  wasNotOpenedFoundBytes: (name: string, size: number, mostfile: number) =>
    `${name} was not opened: found ${size} bytes; allowed: ${mostfile}.`,
  wasNotOpenedNothingElse: (name: string, other: string) =>
    `${name} was not opened; nothing else has changed. ${other}`,
  opened: (name: string) => `${name} opened`,
  allOfIt: 'All of it',
  wasNotOpenedNothingElse2: (
    name: string,
    path: string,
    found: string | undefined,
    allowed: string | undefined,
  ) =>
    `${name} was not opened; nothing else has changed. ${path}: found ${found}; allowed: ${allowed}.`,
});

/** ui/away/share/share-way.ts */
export const awayShareShareWay = section('awayShareShareWay', {
  codeWithTheLinkOf: 'Code with the link of this moment',
  linkCopied: 'Link copied.',
  theBrowserDoesNotLet:
    'The browser does not let the page copy: mark the link and copy it by hand.',
  title: (title: string) => `Takeup: ${title}`,
  handedToTheSystem: 'Handed to the system.',
  theSystemDidNotTake: 'The system did not take it: copy the link, or save the file.',
  itOpensThisBenchJust:
    'It opens this bench just as it stands: brake, wear, tooth, pressure, layers. Nothing is sent anywhere: the link itself holds it all.',
  linkLetters: (length: number) => `Link, ${length} letters`,
  copyLink: 'Copy link',
  share: 'Share…',
  thisPageRunsOnThis: 'This page runs on this computer alone',
  aFile: 'a file',
  theLinkAndTheCode: (file: string) =>
    `(${file}). The link and the code open here, not on a phone. For another device save the file and open it there.`,
  theKeptMomentIsNot:
    'The kept moment is not in the code, so that it can be read at once. The link has it.',
  tooLongForACode: (length: number) =>
    `Too long for a code that a phone reads at once (${length} letters, at most 1 273). Copy the link, or send the file.`,
  linkAndCode: 'Link and code',
  thereIsTooMuchOn:
    'There is too much on the bench for a link (a brake of your own with a long life, say). Send it as a file.',
  file: 'File',
  theSameMomentAsA:
    'The same moment as a file of a few kilobytes, for mail or a memory stick, or where a messenger cuts a long link short. Drop it on the page, or open it here.',
  saveAsAFile: 'Save as a file',
  shareTheFile: 'Share the file…',
  openAFile: 'Open a file',
  openAMomentsFile: 'Open a moment’s file',
});

/** ui/away/sheets/sheets-way.ts */
export const awaySheetsSheetsWay = section('awaySheetsSheetsWay', {
  onePage: 'One page',
  pages: (length: number) => `${length} pages`,
  of: (onePage: string, paper: string) => `${onePage} of ${paper}.`,
  paper: 'Paper',
  blackOnWhiteOfThe:
    'Black on white, of the brake as it stands on the bench. The browser’s own print does the same for the station that is open.',
  lesson: 'Lesson',
  print: (name: string, name2: string) => `Print: ${name}, ${name2}`,
});

/** ui/away/sheets/sheets.ts */
export const awaySheetsSheets = section('awaySheetsSheets', {
  namesName: 'Names',
  namesTells: 'The brake with numbered leaders, and lines to write the names on.',
  namesName2: 'To fill in',
  namesAnswersName: 'With answers',
  predictionsName: 'Predictions',
  predictionsTells:
    'A lesson’s questions, with room for the guess, for what was seen, and for why.',
  answers: 'Answers',
  measurementsName: 'Measurements',
  measurementsTells:
    'The sheet of Inspect for both wheels: to take to a vehicle, or as it was filled in there.',
  blank: 'Blank',
  asFilledIn: 'As filled in',
  wearName: 'Wear report',
  wearTells: 'The life on the bench: its charts, what happened in it, and what ends first.',
  wearName2: 'Print',
  logName: 'Find-the-fault log',
  logTells:
    'The readings with their minutes: blank, or with what was found at the van that is open.',
  logFilledName: 'As it stands',
  orderName: 'Order of the work',
  orderTells:
    'Each step for this brake: what to do, what may fly, what to look at, and its caution.',
  removalName: 'Taking apart',
  fittingName: 'Putting together',
});

/** ui/away/ways.ts */
export const awayWays = section('awayWays', {
  figureName: 'Figure',
  figureTells:
    'The drawing as it stands, for a text, a slide or a wall: lines or points, true to scale.',
  dataName: 'Data',
  dataTells: 'Readings, a life, the curves of What if: as a table for a spreadsheet or a program.',
  shareTells: 'This moment as a link, as a code for a phone’s camera, or as a file.',
  sheetsName: 'Sheets',
  sheetsTells: 'Worksheets, measurements, reports and orders of work, for A4 and Letter.',
  cutName: 'Cut-out model',
  cutTells: 'The brake as flat parts, to cut of card, plywood or acrylic: SVG, DXF, pages.',
  clipName: 'Clip',
  clipTells: 'What the brake does as a film with its clicks, a short loop, or a strip for paper.',
});

/** ui/cautions.ts */
export const cautions = section('cautions', {
  cautions: {
    wear: 'Brake dust is harmful to breathe, whatever the lining. Wet it or collect it with a fine-filter vacuum; never blow or dry-brush.',
    /** The same where there is less room. */
    wearShort:
      'Brake dust is harmful to breathe. Wet it or collect it with a fine-filter vacuum; never blow or dry-brush.',
    drumOff:
      'Chock the wheels and set the vehicle on stands on firm ground before the parking brake is let off. Never strike the rim; if it stays, look for another lock.',
    park: 'A vehicle on a slope rolls when the brake lets go. Chock it before testing or slackening a cable.',
    inspect:
      'A teaching brake’s limits are no other brake’s. Use the maker’s figures and the mark on the drum; some places allow only licensed people to do this work.',
    /** At the foot of a printed sheet, above `standing`. */
    paper:
      'Use the maker’s figures and the mark on the drum; some places allow only licensed people to do this work. Brake dust is harmful: wet it or collect it; never blow or dry-brush.',
    fault: 'Test only a vehicle that is safe to move. If it may not stop, it does not leave.',
    /** Before the pedal with the drum off. */
    piston: 'With the drum off, do not press the pedal: a piston can leave its bore.',
    /** Before a toothed lever is lifted. */
    strut:
      'Unload the strut before lifting the lever; a loaded tooth lets go suddenly. Keep fingers clear and wear eye protection.',
    /** Beside a forecast. */
    forecast: 'A forecast is no approval. Measure at the interval the maker gives, or sooner.',
    /** With a drum off, beside `drumOff`. */
    springs: 'Springs store force; use the proper tool and eye protection.',
    /** New shoes. */
    fitting:
      'Leave one side whole as your pattern and fit both wheels of the axle alike. Test at walking pace on level ground before any road.',
    /** Parking, beside `park`. */
    proof: 'A brake that holds in this model proves nothing about a real one.',
    hot: 'A drum can burn skin and set fluid alight long after the stop. Let it cool; do not quench it.',
    /** Beside `inspect`. */
    doubt: 'In doubt, do not refit; ask a qualified person.',
    hubRust: 'Wear eye protection. No heat near fluid.',
    stands: 'Set the vehicle on stands, never on the jack alone.',
    fluid:
      'Brake fluid harms eyes, skin and paint. Use only the grade the maker names, from a sealed container.',
    /** Standing foot of Inspect, Drum off and all prints. */
    standing:
      'This shows how the mechanism works. It is no repair instruction: the vehicle maker’s figures, local rules and licensed practice come first.',
  },
});

/** ui/embed/address.ts */
export const embedAddress = section('embedAddress', {
  foundAllowed: (path: string, found: string, allowed: string) =>
    `${path}: found ${found}; allowed: ${allowed}.`,
  noneOrSomeOf: (controlNames: string) => `none, or some of ${controlNames}`,
  allOfIt: 'all of it',
});

/** ui/embed/embed.ts */
export const embedEmbed = section('embedEmbed', {
  readings: 'Readings',
  drum: 'Drum',
  parts: 'Parts',
  names: 'Names',
  brakeDrawing: 'Brake drawing',
  openItOnTheBench: 'Open it on the bench',
});

/** ui/embed/main.ts */
export const embedMain = section('embedMain', {
  thisBrakeCouldNotBe: (wrong: string) => `This brake could not be shown. ${wrong}`,
});

/** ui/format.ts */
export const format = section('format', {
  decimalMark: '.',
});

/** ui/formula-reader.ts */
export const formulaReader = section('formulaReader', {
  noMoreThanParts: (mostparts: number) => `no more than ${mostparts} parts`,
  aPlainNumber: 'a plain number',
  andBrackets: '+ − · / ^ and brackets',
  oneOf: (functions: string) => `one of ${functions}`,
  bracketsAfter: (name: string) => `brackets after ${name}`,
  aReadingASizeOr: 'a reading, a size, or a unit',
  numbersNamesUnitsAndBrackets: 'numbers, names, units, + − · / ^ and brackets',
  aSumOfReadingsAnd: 'a sum of readings and sizes',
  characters: (length: number) => `${length} characters`,
  atMost: (longest: number) => `at most ${longest}`,
  oneNumberAsItsResult: 'one number as its result',
  theEnd: 'the end',
  aWholeSumSomethingIs: 'a whole sum: something is missing or too much here',
  unitsThatGoTogetherOnly:
    'units that go together: only alike ones add, and sin, exp and log take pure numbers',
  aSumThatCanBe: 'a sum that can be worked out',
});

/** sim/study/working/pedal.ts */
export const studyWorkingPedal = section('studyWorkingPedal', {
  ratioOfThePedal: 'Ratio of the pedal',
  areaOfTheMasterCylinder: 'Area of the master cylinder, π·d²/4',
  freePlayAtThePush: 'Free play at the push rod',
  brakesThatArePressed: 'Brakes of this axle that are pressed',
  fluidThatOneBrakeTakes: 'Fluid that one brake takes',
  giveWithoutThisAxlesLines: 'Give of the circuit without this axle’s lines',
  pressureOfTheMasterCylinder: 'Pressure of the master cylinder',
  giveOfThisAxlesLines: 'Give of this axle’s lines',
  pressureInThisAxlesLine: 'Pressure in this axle’s line',
  pressureThatStaysInIt: 'Pressure that stays in it',
  gainOfTheBooster: 'Gain of the booster',
  footAtWhichItsHelp: 'Foot at which its help is spent',
  freePlayAtThePedal: 'Free play at the pedal',
  movesThePistons: 'Moves the pistons',
  giveInTheCircuit: 'Give in the circuit',
  airInTheCircuit: 'Air in the circuit',
  playOfTheBooster: 'Play of the booster',
  pistonsThatSealsDrewBack: 'Pistons that seals drew back',
  strokeOfTheFailedCircuit: 'Stroke of the failed circuit',
  pistonTravel: (side: 'front' | 'rear') => `Piston travel, ${side}`,
  areaOfTheWheelCylinder: 'Area of the wheel cylinder, π·d²/4',
  strokeOfEachPiston: 'Stroke of each piston',
  masterCylinderAtItsEnd: 'Master cylinder at its end',
  pedalAtThatPush: 'Pedal at that push',
  playOfTheBoosterAt: 'Play of the booster at the push rod',
  strokeOfTheMasterCylinder: 'Stroke of the master cylinder',
  fluidThatOneBrakeTakesAtTheEnd: 'Fluid that one brake takes at the end',
  ofItUntilBothLinings: 'Of it until both linings lie',
  giveOfTheRestOf: 'Give of the rest of the circuit',
  howFarASealDraws: 'How far a seal draws its piston back',
  strokeThatIsLost: 'Stroke that is lost',
  pistonsDrawnBack: 'Pistons drawn back',
  shoesToTheDrumAnd: 'Shoes to the drum and their give',
  giveOfItsLines: 'Give of its lines',
  theWholeTravel: 'The whole travel',
});

/** sim/study/working/road.ts, sim/study/working/parked.ts */
export const studyWorkingRoad = section('studyWorkingRoad', {
  massOfTheVehicle: 'Mass of the vehicle',
  rollingRadiusOfTheTyre: 'Rolling radius of the tyre',
  brakesOfThisAxle: 'Brakes of this axle',
  shareOfTheBrakingOn: 'Share of the braking on this axle',
  standardGravity: 'Standard gravity',
  speedBeforeIt: 'Speed before it',
  meanDeceleration: 'Mean deceleration',
  torqueOfEachBrakeAt: 'Torque of each brake at that pressure',
  brakingOfThisAxleAt: 'Braking of this axle at the road',
  brakingOfTheOtherAxle: 'Braking of the other axle at the road',
  brakesThatWork: 'Brakes that work',
  energyOfTheStop: 'Energy of the stop',
  heatCapacityOfTheDrum: 'Heat capacity of the drum',
  stoppingDistance: 'Stopping distance',
  theEndOfWhatIs: (name: string) => `${name}: the end of what is looked for`,
  aLittleLess: (name: string) => `${name}, a little less`,
  aLittleMore: (name: string) => `${name}, a little more`,
  byTheFirst: (name: string) => `${name} by the first`,
  byTheSecond: (name: string) => `${name} by the second`,
  thatIsWanted: (name: string) => `${name} that is wanted`,
  decelerationThatIsWanted: 'Deceleration that is wanted',
  torqueAtThePressureThat: 'Torque at the pressure that was found',
  itSlowsSoWithThe: 'It slows so with the pedal let go',
  linePressure: 'Line pressure',
  deceleration: 'Deceleration',
  torqueOfTheBrakeLet: 'Torque of the brake let go, turning',
  speed: 'Speed',
  rollingResistanceOverWeight: 'Rolling resistance over weight',
  airsDragOverSpeedSquared: 'Air’s drag over speed squared',
  drumAsWarmAsIt: 'Drum as warm as it is',
  riseAtWhichItLoses: 'Rise at which it loses what it gets',
  theStrongerWheel: 'The stronger wheel',
  theWeakerWheel: 'The weaker wheel',
  bothShoesOfTheLeft: 'Both shoes of the left wheel',
  bothShoesOfTheRight: 'Both shoes of the right wheel',
  neitherBrakes: 'Neither brakes',
  ratioOfTheHandLever: 'Ratio of the hand lever',
  efficiencyOfCableAndLever: 'Efficiency of cable and lever',
  pullOfEachCable: 'Pull of each cable',
  torqueOfTheShoe: (side: 'front' | 'rear') => `Torque of the ${side} shoe`,
  slipTorqueOfEachWheel: 'Slip torque of each wheel',
  pushOfTheStrutMean: 'Push of the strut, mean of both ways',
  slack: 'Slack',
  stiffnessOfTheCable: 'Stiffness of the cable',
  travelOfTheHook: 'Travel of the hook',
  cableThatANotchTakes: 'Cable that a notch takes',
  riseOverLevelDistance: 'Rise over level distance',
  torqueAtWhichTheWheel: 'Torque at which the wheel slips',
  torqueThatTheSlopeAsks: 'Torque that the slope asks for',
  pullOfTheCable: 'Pull of the cable',
  torque: 'Torque',
});

/** sim/study/working/turn.ts, sim/study/working/film.ts */
export const studyWorkingTurn = section('studyWorkingTurn', {
  gapWithTheDrumAt: (angle: string) => `Gap with the drum at ${angle}`,
  torqueWithTheDrumAt: (angle: string) => `Torque with the drum at ${angle}`,
  meanRadiusOfTheDrum: 'Mean radius of the drum now',
  radiusVariesByThisTwice: 'Radius varies by ± this twice a turn',
  cosineOfTwice: (angle: string) => `Cosine of twice ${angle}`,
  onTheFaceNow: 'On the face now',
});

/** ui/glossary.ts */
export const glossary = section('glossary', {
  terms: tradeWords({
    drum: { word: 'drum', means: 'Turning ring that the linings press on.' },
    bore: { word: 'bore', means: 'Inner diameter of the drum.' },
    lip: { word: 'lip', means: 'Unswept edge of the drum, left standing as the rest wears.' },
    'backing plate': {
      word: 'backing plate',
      means: 'Fixed plate that carries the parts.',
      pair: ['back plate', 'backing plate'],
      forms: ['plate'],
    },
    'access hole': {
      word: 'access hole',
      means: 'Plugged opening to reach the adjuster with the drum on.',
    },
    machining: {
      word: 'machining',
      means: 'Cutting the bore of the drum true.',
      pair: ['skimming', 'turning'],
      forms: ['machined', 'cut of the drum'],
    },
    shoe: { word: 'shoe', means: 'Steel carrier of a lining.', forms: ['shoes'] },
    web: {
      word: 'web',
      means: 'Flat plate of the shoe, seen full: it takes the pushes.',
      forms: ['webs'],
    },
    table: { word: 'table', means: 'Curved strip of the shoe that carries the lining.' },
    toe: { word: 'toe', means: 'End of the shoe at the cylinder.', forms: ['toes'] },
    heel: { word: 'heel', means: 'End of the shoe at its pin.', forms: ['heels'] },
    lining: { word: 'lining', means: 'Friction material on the shoe.', forms: ['linings'] },
    'bedding in': {
      word: 'bedding in',
      means: 'Wearing of new linings until all of their arc bears.',
      pair: ['bedding in', 'burnishing'],
      forms: ['bedded in'],
    },
    'leading shoe': {
      word: 'leading shoe',
      means: 'The drum drags it tighter onto itself.',
      forms: ['leading lining', 'leading'],
    },
    'trailing shoe': {
      word: 'trailing shoe',
      means: 'The drum pushes it off.',
      forms: ['trailing lining', 'trailing'],
    },
    'anchor pin': {
      word: 'anchor pin',
      means: 'Hinge of a shoe.',
      pair: ['pivot pin', 'anchor pin'],
      forms: ['anchor pins'],
    },
    abutment: { word: 'abutment', means: 'Flat on which a heel slides.' },
    'return spring': {
      word: 'return spring',
      means: 'Pulls the shoes together.',
      pair: ['pull-off spring', 'return spring'],
      forms: ['return springs', 'springs'],
    },
    'hold-down': {
      word: 'hold-down',
      means: 'Keeps a shoe on the plate.',
      pair: ['steady spring', 'hold-down'],
      forms: ['hold-downs', 'hold-down pin'],
    },
    'wheel cylinder': {
      word: 'wheel cylinder',
      means: 'Pushes both toes apart.',
      pair: ['slave cylinder', 'wheel cylinder'],
      forms: ['cylinder', 'wheel cylinders'],
    },
    piston: {
      word: 'piston',
      means: 'Plunger of the cylinder; it pushes its shoe.',
      forms: ['pistons'],
    },
    cup: { word: 'cup', means: 'Seal of a piston.', forms: ['cups'] },
    'bleed point': {
      word: 'bleed point',
      means: 'Lets out air and fluid.',
      pair: ['bleed nipple', 'bleeder screw'],
    },
    'free play': { word: 'free play', means: 'Pedal travel before the master piston moves.' },
    strut: { word: 'strut', means: 'Bar that spaces the shoes; its length sets the gap.' },
    'toothed lever': {
      word: 'toothed lever',
      means: 'Catches the strut’s teeth and makes it longer, tooth by tooth.',
      forms: ['lever'],
    },
    tooth: { word: 'tooth', means: 'One step of the adjuster.', forms: ['teeth'] },
    'lost motion': {
      word: 'lost motion',
      means: 'Free travel before the adjuster senses anything.',
      forms: ['slot play'],
    },
    click: { word: 'click', means: 'The lever drops into the next tooth.', forms: ['clicks'] },
    'star wheel': {
      word: 'star wheel',
      means: 'Toothed wheel on a screw strut.',
      pair: ['adjuster wheel', 'star wheel'],
    },
    wedge: { word: 'wedge', means: 'Stepless spacer between strut and shoe.' },
    'hot lock': {
      word: 'hot lock',
      means: 'Bimetal that stops the adjuster while the drum is hot.',
    },
    'back off': {
      word: 'back off',
      means: 'Make the adjuster shorter, tooth by tooth.',
      pair: ['slacken off', 'back off'],
      forms: ['backed off', 'backing off'],
    },
    preset: { word: 'preset', means: 'Setting of the shoes before the drum goes on.' },
    clearance: {
      word: 'clearance',
      means: 'Gap from lining to drum at rest.',
      forms: ['gap', 'gaps'],
    },
    'parking brake': {
      word: 'parking brake',
      means: 'Holds the vehicle at rest by a cable.',
      pair: ['handbrake', 'parking or emergency brake'],
      forms: ['parked brake'],
    },
    'parking lever': {
      word: 'parking lever',
      means: 'Lever on the rear shoe that the cable pulls.',
    },
    notch: { word: 'notch', means: 'One click of the hand lever.', forms: ['notches'] },
    slack: { word: 'slack', means: 'Cable that is pulled before anything moves.' },
    'brake factor': {
      word: 'brake factor',
      means: 'Drag of both linings over the push on one toe.',
    },
    'self-energising': { word: 'self-energising', means: 'Drag adds to the push.' },
    fade: { word: 'fade', means: 'Loss of braking with heat.' },
    stands: {
      word: 'stands',
      means: 'Hold the jacked-up vehicle.',
      pair: ['axle stands', 'jack stands'],
    },
    'split pin': {
      word: 'split pin',
      means: 'Bent wire that keeps a nut from turning.',
      pair: ['split pin', 'cotter pin'],
    },
    tyre: { word: 'tyre', means: 'Rubber on the wheel.', pair: ['tyre', 'tire'], forms: ['tyres'] },
    gauge: { word: 'gauge', means: 'Tool that measures.', pair: ['gauge', 'gage'] },
  }),
  britishAmerican: (british: string, american: string) =>
    `British: ${british} · American: ${american}`,
  americanBritish: (american: string, british: string) =>
    `American: ${american} · British: ${british}`,
});

/** ui/lessons/act.ts */
export const lessonsAct = section('lessonsAct', {
  friction: (front: unknown, rear: unknown) => `friction ${front} ${rear}`,
  lip: (lip: number) => `lip ${lip}`,
  circuit: (mm3PerMPa: number) => `circuit ${mm3PerMPa}`,
});

/** ui/lessons/action-text.ts */
export const lessonsActionText = section('lessonsActionText', {
  codes: {
    forward: 'forward',
    backward: 'backward',
    stands: 'stands',
    click: 'the next click',
    limit: 'the first limit',
    pull: 'pull',
    turn: 'turn',
    rock: 'rock',
    fitted: 'fitted',
    lost: 'lost',
    on: 'on',
    off: 'off',
    names: 'names',
  },
  isValue: (name: string, value: string | number) => `${name}: ${value}`,
  no: 'no',
});

/** ui/lessons/actions.ts */
export const lessonsActions = section('lessonsActions', {
  aNumber: 'a number',
  atLeast: (least: number) => `at least ${least}`,
  atMost: (most: number) => `at most ${most}`,
  trueOrFalse: 'true or false',
  forceOfTheReturnSprings: 'Force of the return springs, 1: as built',
  theAdjusterIsStuckWhere: 'The adjuster is stuck where it stands',
  teethLetGoAboveThis: 'Teeth let go above this load of the strut, N',
  pressureThatStaysInThe: 'Pressure that stays in the line, bar',
  aStuckPartLeansOn: 'A stuck part leans on the front shoe, N',
  aStuckPartLeansOn2: 'A stuck part leans on the rear shoe, N',
  drumOffCentreMm: 'Drum off centre, mm',
  drumOvalByMm: 'Drum oval by ± mm',
  pressesThePedalAndHolds: 'Presses the pedal and holds it',
  linePressureBar: 'Line pressure, bar',
  howLongThePedalTakes: 'How long the pedal takes, s',
  letsThePedalGo: 'Lets the pedal go',
  turnsTheDrum: 'Turns the drum',
  forwardBackwardOrStands: 'forward, backward or stands',
  drivesTheBrakeOnBy: 'Drives the brake on by its first duty',
  soFarKm: 'So far, km',
  clickOrLimit: 'click or limit',
  shareOfTheStopsIn: 'Share of the stops in reverse, %',
  onPastTheLimits: 'On past the limits',
  howLongItIsShown: 'How long it is shown, s',
  setsTheAdjusterByHand: 'Sets the adjuster by hand',
  toThisTooth: 'To this tooth',
  onBySoManyLess: 'On by so many; less than 0: back',
  letsTheCableHoldThe: 'Lets the cable hold the parking lever off its stop',
  atTheHookMm: 'At the hook, mm',
  pullsTheParkingCable: 'Pulls the parking cable',
  atEachBrakeN0: 'At each brake, N; 0 lets go',
  slackBeyondTheBrakesOwn: 'Slack beyond the brake’s own, mm',
  goesDownAHillThe: 'Goes down a hill, the brake holding the speed',
  slope: 'Slope, %',
  lengthKm: 'Length, km',
  speedKmH: 'Speed, km/h',
  letsTheDrumCoolDown: 'Lets the drum cool down to the air',
  warmsTheDrumBySo: 'Warms the drum by so much',
  putsOnAStandingState: 'Puts on a standing state of the brake',
  itsName: 'Its name',
  putsAnotherTeachingBrakeOn: 'Puts another teaching brake on, new',
  putsSomethingOutOfOrder: 'Puts something out of order',
  liningsOfAnotherFriction: 'Linings of another friction',
  plainNumber: 'Plain number',
  anotherGiveOfTheRest: 'Another give of the rest of the circuit',
  fitsNewShoes: 'Fits new shoes',
  boreOfTheDrumMm: 'Bore of the drum, mm',
  diameterOfTheUnwornEdge: 'Diameter of the unworn edge, mm',
  toothTheAdjusterStandsAt: 'Tooth the adjuster stands at',
  putsTheWornShoesIn: 'Puts the worn shoes in each other’s place',
  triesTheDrumByHand: 'Tries the drum by hand',
  pullTurnOrRock: 'pull, turn or rock',
  somethingHoldsTheDrumBesides: 'Something holds the drum besides',
  rustAtTheHub: 'Rust at the hub',
  liningsRustedOn: 'Linings rusted on',
  layersAndWhatIsLooked: 'Layers and what is looked at',
  aLayer: 'A layer',
  of120Or40: '1, 20 or 40',
  aPart: 'A part',
  fittedOrLost: 'fitted or lost',
  keepsTheValuesOfThis: 'Keeps the values of this moment under a name',
  theName: 'The name',
  holdsStill: 'Holds still',
  anActionDo: 'an action: do',
});

/** ui/lessons/translated.ts */
export const lessonsTranslated = section('lessonsTranslated', {
  textsOfALesson: 'Texts of a lesson in another language',
  nameOfTheLesson: 'Name of the lesson',
  language: 'Language',
  aPath: 'a path, its keys with points between them',
  atLeastOneLetter: 'at least one letter',
  textsByTheirPaths: 'Texts by their paths',
});

/** ui/lessons/format.ts */
export const lessonsFormat = section('lessonsFormat', {
  aLayerOfTheDrawing: 'A layer of the drawing',
  whatTheChoiceSaysPiece: 'What the choice says, piece by piece',
  aPieceOfIt: 'A piece of it',
  theWords: 'The words',
  trueOrFalse: 'true or false',
  doTheseWordsHold: 'Do these words hold?',
  aChoice: 'A choice',
  forTheTeacherWhatChoosing: 'For the teacher: what choosing it shows',
  forTheTeacherTheOne: 'For the teacher: the one sentence to give back',
  aConditionWithoutWhichThe: 'A condition without which the step is not true',
  keyOfTheValueWith: 'Key of the value, with the name of a noted moment and a point before it',
  aSecondKeyTheValue: 'A second key: the value is divided by its',
  aNumber: 'a number',
  atLeast: 'At least',
  atMost: 'At most',
  whereToLook: 'Where to look',
  layersThatAreOn: 'Layers that are on',
  theNotedMomentThatThey:
    'The noted moment that they are told before; the step’s start when left out',
  theNotedMomentThatThey2: 'The noted moment that they are told at; the end when left out',
  valuesToldCoveredWhileThe: 'Values told, covered while the question is open',
  partsNamedAllWithThe: 'Parts named; all with the layer of names, where it is left out',
  aPartOfTheDrawing: 'a part of the drawing',
  theChartOfWhatIs: 'The chart of what is driven',
  forTheTeacher: 'For the teacher',
  whatTheStepIsReally: 'What the step is really about',
  whatToPointAt: 'What to point at',
  whatToAskNext: 'What to ask next',
  atLeast0: 'at least 0',
  withTheVote: 'With the vote',
  aStep: 'A step',
  inTheListOfSteps: 'In the list of steps',
  whichDrawing: 'Which drawing',
  howTheStepBeginsFrom: 'How the step begins, from the lesson’s own start',
  whatIsDone: 'What is done',
  theQuestion: 'The question',
  whatOneMayChooseFrom: 'What one may choose from',
  whatTheButtonSaysThat: 'What the button says that does it',
  whatItShows: 'What it shows',
  whatFollowsSaidOnceThe: 'What follows: said once the step is told',
  whatIsSaidInA: 'What is said, in a talk',
  atLeast1: 'at least 1',
  atMost120: 'at most 120',
  howLongItTakesIn: 'How long it takes, in a talk, s',
  whatOneMayTryWhen: 'What one may try when the talk is stopped here',
  holdsIf: 'Holds if',
  aLessonOrATalk: 'A lesson, or a talk',
  whereEditorsFindTheSchema: 'Where editors find the schema',
  smallLettersFiguresAndHyphens: 'small letters, figures and hyphens',
  itsNameAmongAllLessons: 'Its name among all lessons',
  aTalkHasNoQuestions: 'A talk has no questions and plays by itself',
  itsPlaceInACourse: 'Its place in a course',
  itsOneIdea: 'Its one idea',
  forWhom: 'For whom',
  howLongItTakes: 'How long it takes',
  aTeachingBrake: 'A teaching brake',
  aWholeSceneInThe: 'A whole scene, in the place of a teaching brake',
  theStandingStateItBegins: 'The standing state it begins in',
  cautionInViewAllThe: 'Caution, in view all the time',
  forTheTeacherBeforeIt: 'For the teacher: before it',
  forTheTeacherAfterIt: 'For the teacher: after it',
  forTheTeacherWithTen: 'For the teacher: with ten minutes only',
  whatIfTheEndOf: 'What if: the end of the lesson',
  itsSteps: 'Its steps',
});

/** ui/lessons/holds.ts */
export const lessonsHolds = section('lessonsHolds', {
  atLeast: (least: number) => `at least ${least}`,
  atMost: (most: number) => `at most ${most}`,
  aValueThatIsTold: 'a value that is told here',
  over: (over: string) => ` over ${over}`,
  found: (value: string, over: string, toPrecision: string) => `${value}${over} of ${toPrecision}`,
  whatTheBrakeCanDo: 'what the brake can do',
});

/** ui/lessons/read.ts */
export const lessonsRead = section('lessonsRead', {
  theNearestIs: (what: string, meant: string) => `${what}; the nearest is ${meant}`,
  aMoment: (moments: string) => `a moment: ${moments}`,
  theKeyOfAValue: 'the key of a value',
  aStateOfTheBrake: (own: string) => `a state of the brake: ${own}`,
  aTeachingBrake: (brakes: string) => `a teaching brake: ${brakes}`,
  aStateOfTheBrake2: (known: string) => `a state of the brake: ${known}`,
  aQuestion: 'a question',
  noneInATalk: 'none in a talk',
  whatIsSaid: 'what is said',
  thisKeyIsNeeded: 'this key is needed',
  thatHoldInAllTheir: (right: number) => `${right} that hold in all their words`,
  exactlyOne: 'exactly one',
  aTeachingBrake2: (known: string) => `a teaching brake: ${known}`,
  allowed: (mostlesson: number) => `at most ${mostlesson} letters`,
});

/** ui/lessons/recorded.ts */
export const lessonsRecorded = section('lessonsRecorded', {
  size: (path: string, was: string, is: string) => `a size of the brake, ${path}: ${was} to ${is}`,
  fault: 'a fault that is built into the brake',
  adjuster: 'another kind of adjuster',
  otherWheel: 'what the axle’s other wheel is like',
  linings: 'linings and drum worn otherwise than by driving on the plain road',
  tooth: (tooth: number) => `the adjuster at tooth ${tooth}, which a press at once leaves`,
  temperature: (degrees: number) => `the drum at ${degrees} °C`,
  film: 'what lies on the rubbing faces',
  condition: (what: string) => `out of order: ${what}`,
  conditions: {
    surface: 'the surface of a lining',
    pistonStuck: 'a stuck piston',
    cupExtra: 'a sluggish piston',
    groove: 'a grooved plate pad',
    teethHold: 'teeth that hold again',
    leverSpring: 'the spring of the adjuster’s lever',
    adjusterStep: 'the adjuster on the wrong side',
    keptCable: 'a cable that keeps its pull',
    leverLoss: 'a stiff parking lever',
    drumRise: 'a worn wheel bearing',
    unhooked: 'a return spring unhooked',
  } as Readonly<Record<string, string>>,
  aside: 'the pair of shoes pushed aside',
  brokenLoose: 'linings broken loose by a blow',
  rightWheel: 'what is out of order on the right-hand wheel',
  rolls: 'the chocks taken away',
  groove: 'a groove in a plate pad, edge-on',
  bending: 'shoes that bend',
  hands: 'hands in the brake',
  notOn: 'new shoes, as long as the drum is not on',
  drawing: (station: string) => `the drawing of ${station}`,
});

/** ui/lessons/wants.ts */
export const lessonsWants = section('lessonsWants', {
  step: (clamp: number) => `step ${clamp}`,
  endOfTheLesson: 'end of the lesson',
  choice: (a: string) => `choice ${a}`,
  handsOfTheClass: 'hands of the class',
  talkGoesOn: 'talk goes on',
  whatHappens: 'what happens',
  askedAgain: 'asked again',
  lessonLeft: 'lesson left',
  lessonFromItsStart: 'lesson from its start',
  lessonKept: 'lesson kept',
  typedIntoYourLesson: 'typed into your lesson',
  draftPutAway: 'draft put away',
  yourLesson: 'your lesson',
  lessonTakenOffTheShelf: 'lesson taken off the shelf',
  wallBlank: 'wall blank',
  wallShown: 'wall shown',
});

/** ui/life-run.ts */
export const lifeRun = section('lifeRun', {
  itsNewsCouldNotBe: 'its news could not be read',
});

/** ui/pieces/ago-text.ts */
export const piecesAgoText = section('piecesAgoText', {
  sAgo: (ago: string) => `${ago}\u00a0s ago`,
});

/** ui/pieces/ask-field.ts */
export const piecesAskField = section('piecesAskField', {
  ask: 'Ask',
  askInYourOwnWords: 'Ask in your own words',
});

/** ui/pieces/cells.ts */
export const piecesCells = section('piecesCells', {
  atItsLimit: 'at its limit',
  pastItsLimit: 'past its limit',
  liningLeft: (side: 'front' | 'rear') => `Lining left, ${side}`,
  brakeFactorAfterSprings: 'Brake factor, after springs',
  locks: 'locks',
  leading: (value: string) => `Leading ${value}`,
  trailing: (value: string) => `Trailing ${value}`,
  onFullPistonForce: (value: unknown) => [value, ' on full piston force'],
});

/** ui/pieces/chart-strip.ts */
export const piecesChartStrip = section('piecesChartStrip', {
  theCurvesCannotBeDrawn: (error: unknown) =>
    `The curves cannot be drawn in this browser (${error}). All else works.`,
  nothingDriven: 'nothing driven',
  kmClearanceMmTooth: (km: string, clearance: string, tooth: number, keptText: string) =>
    `${km} km, clearance ${clearance} mm, tooth ${tooth}${keptText}`,
  shownInTheLastLane: 'Shown in the last lane',
  momentOfTheRunArrow: 'Moment of the run: arrow keys move along it, page keys from event to event',
  clearanceAndLiningsOverThe: 'Clearance and linings over the distance',
});

/** ui/pieces/few.ts */
export const piecesFew = section('piecesFew', {
  readings: 'Readings',
  why: 'Why',
});

/** ui/pieces/icons.ts */
export const piecesIcons = section('piecesIcons', {
  caution: 'Caution',
});

/** ui/pieces/look-back-rows.ts */
export const piecesLookBackRows = section('piecesLookBackRows', {
  msMarked: (to: string) => `${to}\u00a0ms marked`,
  sMarked: (to: string) => `${to}\u00a0s marked`,
  click: 'Click',
  lookBack: 'Look back',
  stepBack: 'Step back',
  stepOn: 'Step on',
  lastClick: 'Last click',
  fromHere: 'From here',
  toHere: 'To here',
});

/** ui/pieces/marks.ts */
export const piecesMarks = section('piecesMarks', {
  inLimit: 'In limit',
  watch: 'Watch',
  reject: 'Reject',
  open: 'Open',
});

/** ui/pieces/names-on-paper.ts */
export const piecesNamesOnPaper = section('piecesNamesOnPaper', {
  theBrakeWithNumberedParts: 'The brake with numbered parts',
  under: (wheel: 'Left' | 'Right', front: 'left' | 'right') =>
    `${wheel} rear wheel from outside, drum cut away. The front of the vehicle is to the ${front}.`,
  nameThePartsAnswers: 'Name the parts: answers',
  nameTheParts: 'Name the parts',
  namesAnswers: 'names, answers',
  theFrontShoeIsThe: 'The front shoe is the',
  shoe: (roleOf: 'leading' | 'trailing') => `${roleOf} shoe`,
  theDrumTurns: 'The drum turns',
  againstTheClockForward: 'against the clock, forward',
  withTheClockForward: 'with the clock, forward',
  theRearShoeIsThe: 'The rear shoe is the',
  chooseThreePartsWhatWould: 'Choose three parts. What would go wrong without them?',
  withoutPart: (piece: unknown) => ['Without part ______', piece],
});

/** ui/pieces/number-field.ts */
export const piecesNumberField = section('piecesNumberField', {
  found: (name: string, value: string, least: string, most: string, unit: string) =>
    `${name}: found “${value}”; allowed: a number from ${least} to ${most}${unit}.`,
});

/** ui/pieces/paper-sheet.ts */
export const piecesPaperSheet = section('piecesPaperSheet', {
  sceneVersionStepKm: (
    guest: string,
    name: string,
    sceneversion: number,
    tooth: number,
    km: string,
  ) => `${guest}, scene ${name}, version ${sceneversion}, step ${tooth}, ${km} km`,
  teachingBrakeItsLimitsAre: (standLine: string) =>
    `${standLine} · Teaching brake: its limits are not your vehicle’s.`,
  takeup: (kind: string) => `Takeup · ${kind}`,
});

/** ui/pieces/picker.ts */
export const piecesPicker = section('piecesPicker', {
  none: 'none',
  find: (label: string) => `Find: ${label}`,
  typeToFind: 'Type to find',
  nothingOfThatNameTry: 'Nothing of that name. Try a part: spring, lining, cable.',
});

/** ui/pieces/press-panel.ts */
export const piecesPressPanel = section('piecesPressPanel', {
  stages: {
    rest: 'Springs hold',
    out: 'Out',
    climb: 'Climb',
    drop: 'Drop',
    ring: 'Click',
    held: 'Held',
    release: 'Release',
  },
  ofItsTooth: (part: string) => `${part} % of its tooth`,
  nothingOfItsTooth: 'nothing of its tooth',
  itsPlayWasNotUsed: 'Its play was not used up',
  itClimbed: (share: string) => `It climbed ${share}`,
  thePedalGoesDownThe: 'The pedal goes down: the springs still hold the shoes on the strut',
  theShoesGoOutThe: 'The shoes go out; the play is used up first',
  pastThePlayTheLever: 'Past the play the lever climbs its tooth',
  overTheCrestItDrops: 'Over the crest: it drops',
  tooth: 'tooth',
  clickTheStrutIsLonger: (tooth: string, tooth2: string) =>
    `Click: ${tooth} ${tooth2}. The strut is longer`,
  andMoreIsNeeded: (back: string) => `${back}, and more is needed`,
  thePedalIsLetGo: 'The pedal is let go: the shoes rest on the longer strut',
  andFallsBackNo: (back: string, step: 'click' | 'step') => `${back} and falls back: no ${step}`,
  theLastToothIsIn: 'The last tooth is in: it takes up nothing more',
  aPressThatS: (step: 'click' | 'step') => `A press that ${step}s`,
  itClimbs: (share: string) => `It climbs ${share}`,
  theLastPressClimbedAnd: (share: string) => `The last press climbed ${share} and fell back`,
  pressTheBarShowsHow: 'Press: the bar shows how far the shoes part at the strut',
  there: (there: unknown) => ['there ', there],
  needed: (needed: unknown) => ['needed ', needed],
  shoesApartAtTheStrut: 'Shoes apart at the strut',
  time: (paceName: string) => `time ${paceName}`,
  skipAnyKey: 'Skip (any key)',
});

/** ui/pieces/reading-name.ts */
export const piecesReadingName = section('piecesReadingName', {
  side: (side: 'front' | 'rear'): string => side,
  ofSide: (name: string, side: string) => `${name}, ${side}`,
});

/** ui/pieces/time-line.ts */
export const piecesTimeLine = section('piecesTimeLine', {
  timeRunsAt: 'Time runs at',
  oneStep: 'One step',
  goOn: 'Go on',
  stepBack: 'Step back',
  lookBack: 'Look back',
});

/** ui/plot/lanes.ts */
export const plotLanes = section('plotLanes', {
  keptAsAGhostKm: (
    distance: string,
    clearance: string,
    down: string,
    down2: string,
    tooth: number,
  ) =>
    `; kept as a ghost: ${distance} km, clearance ${clearance} mm, linings ${down} and ${down2} mm, tooth ${tooth}`,
  brakeFactor: 'Brake factor',
  drumTemperature: 'Drum temperature',
  pedalTravel: 'Pedal travel',
  dragReleased: 'Drag, released',
  clearance: 'Clearance',
  mmAShoe: 'mm a shoe',
  dragsBelow0: 'drags below 0',
  lining: 'Lining',
  front: (down: string) => `front ${down}`,
  rear: (down: string) => `rear ${down}`,
  limit: (thin: string) => `limit ${thin}`,
  afterSprings: 'after springs',
  of: (teeth: number) => `of ${teeth}`,
  cAtThePress: '°C at the press',
  mmOfTravel: 'mm of travel',
  drag: 'Drag',
  nMTurnTheCold: 'N·m turn the cold drum',
});

/** ui/plot/pedal-plot.ts */
export const plotPedalPlot = section('plotPedalPlot', {
  plotKey:
    'White: a lining begins to rub. Green: both lie on the drum. Black: the pedal as it stands now.',
  forceOfTheFootAgainst: 'Force of the foot against pedal travel',
  pedalTravelMm: 'pedal travel, mm',
});

/** ui/questions/list-one.ts */
export const questionsListOne = section('questionsListOne', {
  q001Ask:
    'The drum slides out a little and stops, though the parking cable is slack. What holds it?',
  q001Answer:
    'The lip at the drum’s edge. Linings that rest outside it must come in, tooth by tooth.',
  q001Steps: 'Pull the drum; read the overlap at toe, centre and heel, and the teeth to back off.',
  q001SetupState: 'Second set',
  q002Ask: 'How do I hold the lever clear so that the adjuster can be run back?',
  q002Answer: 'Lift the lever out of its teeth first, then move it back: saw teeth hold one way.',
  q002Steps: 'Back off one tooth; the loupe shows the lever lift before it moves.',
  q004Ask: 'Wear ridge or rust at the hub, and which way does the adjuster go?',
  q004Answer:
    'A lip lets it slide a little, rust at the hub not at all. Shorter is back towards tooth 0, whichever side.',
  q004Steps: 'Answer the plain questions of Which is mine?; the likely locks stand in order.',
  q005Ask: 'Penetrant, puller, heat and hammer have not moved it. What else is there?',
  q005Answer:
    'Force goes through lip, lining and hold-down pin. Look for the lock that is left and release that one.',
  q005Steps: 'Set each lock, pull, and read what the pull does to lining and hold-downs.',
  q007Ask:
    'I set the shoes by a rule of turns of the wheel and now the drum is stuck. How do I let it back, and which rule is right?',
  q007Answer:
    'Back off by teeth until the overlap is gone. A gauge on the bore is the rule that does not depend on feel.',
  q007Steps: 'Read the teeth to back off; then open New shoes, step preset, for the gauge.',
  q008Ask:
    'I feel about through the hole and cannot find the part that frees the adjuster. What am I looking for?',
  q008Answer: 'The toothed lever on the front shoe, above the hub.',
  q008Steps:
    'Names are on: find toothed lever and access hole. Bench turns the view to the other wheel.',
  q010Ask:
    'New shoes are on, the drum hangs on one of them, and there is no screw to turn back. How is it reset?',
  q010Answer: 'Lift the toothed lever and set it back to the first teeth; centre the pair.',
  q010Steps: 'Set it back, then go on to Centre; whether the drum passes stands beside it.',
  q011Ask: 'Everything is in place and the adjuster right in, yet the drum will not seat. Why?',
  q011Answer:
    'Strut seated wrong, lever off its stop, pair off centre, lip or lining too large: each moves the size over the shoes.',
  q011Steps:
    'Right parts first, then set back and centre: whether the drum passes stands at each step.',
  q013Ask: 'I only changed the wheel cylinder and now the same shoes are too tight. What moved?',
  q013Answer:
    'Pressure left in the line holds the pistons out; open the bleed point and the springs bring them home.',
  q013Steps: 'Hose shuts on the way back: look at Wheels up and Open the bleed point.',
  q014Ask: 'A replacement drum went on snug and then seized. Adjuster or cable?',
  q014Answer:
    'The adjuster still stands for the worn drum: a smaller bore has no room for it. Reset it; the cable last.',
  q014Steps:
    'Set the drum new in step 1: with the strut left for worn linings it does not pass. Set it back.',
  q016Ask: 'How does the stepped adjuster take up wear, and when does it catch?',
  q016Answer:
    'The shoes part on the press; past the slot play by a whole tooth, the lever drops into the next one.',
  q016Steps:
    'Wear on to the next click and watch the loupe; it drops in on the press, at the crest.',
  q016SetupState: 'Before a click',
  q017Ask: 'The adjuster does not seem to adjust. What movement is meant to turn it?',
  q017Answer:
    'The two shoes moving apart, by slot play and one tooth more. Anything less falls back.',
  q017Steps: 'Press: the loupe shows how much of the tooth was climbed.',
  q019Ask:
    'Since new shoes the lever goes right up and the adjuster will not step, however hard I pull. How do I start it?',
  q019Answer:
    'It steps on the pedal, not on the lever. Preset by hand, then press until it is silent.',
  q019Steps: 'Preset by gauge, then Drum on, press: count the clicks.',
  q020Ask: 'Does it adjust the shoes or shorten the cable?',
  q020Answer: 'The shoes: strut length is one thing, cable length another.',
  q020Steps:
    'Change the cable’s slack: notches change, the gap does not. Change the tooth: both do.',
  q022Ask:
    'Both drums were far out of adjustment though nothing was broken. Why did it not keep up?',
  q022Answer:
    'It allows a band: slot play and one tooth more. Pressing harder does not help, only gap does.',
  q022Steps: 'Wear on to the next click and read clearance just before and after.',
  q022SetupState: 'Just clicked',
  q023Ask: 'A threaded part lay loose in the drum. What does the brake do without it?',
  q023Steps:
    'Not covered: the brakes here always have their strut, and what a brake does without one is not computed. Do not drive it.',
  q025Ask:
    'I wound one side out until it locked and cannot back it off even with the lever pushed away. What now?',
  q025Answer:
    'The strut is under load, and friction in its teeth follows the load. Unload it first.',
  q025Steps: 'Pull the parking lever: strut force rises many times over; let go and it falls.',
  q026Ask: 'Working blind I turned it the wrong way and the shoes are hard on. Can it be freed?',
  q026Answer:
    'Take the load off: parking lever home, then lift the lever off its teeth. Never force a loaded tooth.',
  q026Steps: 'Back off and step on with the two buttons, and watch which way shortens the strut.',
  q028Ask:
    'I set a light drag, and after a few drives the drum is burning hot, again and again. What drives it?',
  q028Answer:
    'A press on a hot, grown drum takes teeth that the cold drum has no room for; or the cable holds the lever.',
  q028Steps: 'Stepped on while hot: gap and tooth before and after; look-alikes beside it.',
  q029Ask: 'It spun free, and one more pull made it tight for good. Did it step too far?',
  q029Answer: 'One tooth brings each lining nearer by a good tenth; two too many leave nothing.',
  q029Steps: 'Read clearance, then let it click once and read it again.',
  q031Ask:
    'The wheel of the adjuster turns one way and springs back the other. How is it loosened?',
  q031Answer: 'Saw teeth and a spring lever: lift it off, then turn.',
  q031Steps: 'Back off one tooth and watch the order: lift, then move.',
  q032Ask: 'The adjuster can go in either way up. Which way takes up slack?',
  q032Answer: 'Watch the strut get longer: that takes up. On the wrong side it winds back.',
  q032Steps: 'Adjusters left and right swapped: tooth and pedal before and after.',
  q034Ask:
    'I adjust until it is solid, press once and it spins free, with a low pedal still. What am I missing?',
  q034Answer:
    'The pair stood off centre: one shoe touched early. A press centres it and the gap comes back.',
  q034Steps: 'The pair stands aside: centre it and read both gaps.',
  q035Ask: 'A tight new cable still lets it creep. Set the shoes first?',
  q035Answer:
    'Yes: shoes first, lever home, cable last. A tight cable takes the adjuster’s play and hides the gap.',
  q035Steps: 'Try the cable first, then the cable last, and compare the clearance.',
  q037Ask:
    'The wheel is free on stands yet the drum gets very hot on every drive. How can both be true?',
  q037Answer: 'A worn bearing lets the loaded drum rise onto the shoes; on stands it hangs clear.',
  q037Steps: 'Bearing lets the drum rise: turn on stands, heat on the road.',
  q038Ask: 'Hot and smoking, then fine when cold. Cable, cylinder or trapped pressure?',
  q038Answer:
    'Cable: lever off its stop. Pressure: free when the bleed point opens. One piston or part: stiff one way.',
  q038Steps: 'Find the fault: take the cheapest readings until one name is left.',
  q040Ask: 'After a run one drum is warm, the other cool. How warm should they be?',
  q040Answer: 'Without braking a released drum stays cool; warmth without braking is drag.',
  q040Steps: 'Cable keeps its pull: Heat of the drums after a drive.',
  q041Ask: 'One side reads fifty degrees, the other near seventy. Too hot? Should it drag?',
  q041Answer: 'Steady heat follows drag: read both for the same fault and compare with yours.',
  q041Steps: 'Hose shuts on the way back: drag by hand and heat at 50 km/h.',
  q043Ask:
    'New shoes, wheels free, but one drum is too hot to touch after twenty minutes. Bedding in or a fault?',
  q043Answer:
    'New linings bear in the middle only at first; that weakens, it does not drag. Drag is a fault.',
  q043Steps: 'The drum is on and silent. Drive on, to bed in: contact and torque before and after.',
  q044Ask:
    'The parking brake never let go fully, linings worn on one edge, now hot again. Where next?',
  q044Answer:
    'Cable or pressure: part them by lever and bleed point. Wear on one edge lies along the axle and is not shown.',
  q044Steps: 'Find the fault: lever and bleed point.',
  q046Ask: 'Shoes and drums burned out early; they say the shoes rode off their pads. Plausible?',
  q046Answer:
    'A groove holds a shoe until it snaps. How far a shoe rides along its pads lies along the axle and is not shown.',
  q046Steps: 'Groove in a plate pad: mechanism and what tells it.',
  q047Ask: 'We drove off with the parking brake on a few times. What does that do?',
  q047Answer:
    'It drags and heats; how much stands there. A force that stays does not wear free: ask “will it wear free” for how far and how hot.',
  q047Steps: 'Cable keeps its pull: torque by hand, heat at 50 km/h.',
  q049Ask: 'The parking brake holds forwards but rolls back. Where do I start?',
  q049Answer:
    'Sound shoes hold nearly alike both ways. A large difference means one shoe has lost its grip.',
  q049Steps: 'Oil on one lining: parked, forward and backward.',
  q050Ask: 'No pressure, yet it locks forwards and turns backwards. What makes it one-way?',
  q050Answer: 'Something leans on one shoe: it leads one way and trails the other.',
  q050Steps: 'Something leans on one shoe: turned by hand both ways.',
  q052Ask: 'After reversing it is sometimes locked for going forward. Why?',
  q052Steps:
    'Not covered: it needs a shoe that shifts on worn supports. Pins here have no play, and a shoe that jams across its pads is not computed. Do not drive it: drum off, then hold-downs, pads on the plate and linings looked at.',
  q053Ask: 'It holds if put on just before stopping, but creeps if put on at rest. Why?',
  q053Answer:
    'Turning, the drum’s drag seats the shoes and helps one of them; standing still it does not.',
  q053Steps: 'Press with the drum stopped, then turning, and compare.',
  q055Ask: 'What is the leading shoe? The one that touches first?',
  q055Answer: 'The one that the drum drags tighter onto itself. Both touch at the same pressure.',
  q055Steps: 'Press forward, then backward: the names change sides.',
  q056Ask: 'The drum is warm, hard to turn forwards and easy backwards. Shoes or something else?',
  q056Answer: 'One shoe alone is pressed. Both shoes pressed feel alike both ways.',
  q056Steps: 'Something leans on one shoe: by hand both ways, beside its look-alikes.',
  q058Ask: 'One shoe is even, the other thick at one end and thin at the other. Why?',
  q058Answer:
    'Pressure varies along the arc, and wear follows it. A sliding shoe differs from one on a pin.',
  q058Steps: 'Press and read the comb along each arc; choose the Ferry runabout for sliding shoes.',
  q059Ask: 'One shoe is down to metal at its upper half only, the rest thick. Why?',
  q059Answer: 'Contact at the toe end only wears there: see where the pressure stands.',
  q059Steps: 'Linings ground too large: contact at the ends; Pressure comb on.',
});

/** ui/questions/list-three.ts */
export const questionsListThree = section('questionsListThree', {
  thereIsNoHoleIn: 'There is no hole in plate or drum. How do I get at the adjuster?',
  lookForAPressedIn:
    'Look for a pressed-in plug, a knock-out or a rubber bung first. Without one: cable quite slack, shoes centred, drum drawn straight, over and over; last of all pins are cut behind the plate.',
  answerWhichIsMineWith:
    'Answer Which is mine? with No access hole: the order of release says what is left.',
  secondSet: 'Second set',
  howDoIUseThe: 'How do I use the threaded holes in the drum?',
  aScrewInEachBy:
    'A screw in each, by turns, a little at a time, with penetrant at the hub. Against rust at the hub they are right; against a lip they press on lining and pins.',
  setRustAtTheHub: 'Set rust at the hub, then the lip, pull, and read what the pull does.',
  theDrumCameOffLast:
    'The drum came off last year. Since I tightened the handbrake it will not. Why?',
  theCableHoldsTheLever:
    'The cable holds the lever off its stop, so the shoes rest further out and do not pass the lip. Slacken the cable first.',
  cableSetTooShortOverlap: 'Cable set too short: overlap at the lip before and after.',
  itWentOnWithThe: 'It went on with the old shoes. With the new ones it will not. Wrong shoes?',
  newLiningsAreThickerBy:
    'New linings are thicker by what the old had lost: the adjuster must stand at its first teeth. Only if it is there and centred, compare the parts.',
  rightPartsFirstThenSet:
    'Right parts first, then set back; whether the drum passes stands at each step.',
  iWorkedALipOff: 'I worked a lip off a used drum. Now it fits but the pedal is long?',
  aHandFeelsTheLip:
    'A hand feels the lip, the lining works behind it: the swept bore is larger. Press until it is silent, then measure the bore against the mark.',
  drumOnPressCountThe: 'Drum on, press: count the clicks until it is silent.',
  itClicksWhenIPress: 'It clicks when I press the brake. Is that right?',
  aClickIsATooth:
    'A click is a tooth taken up. After new shoes some presses click and then fall silent; in use one comes every few thousand kilometres. Clicks at each press, or after each parking, are a fault.',
  wearOnToTheNext: 'Wear on to the next click and hear it; compare Worn teeth let go in Faults.',
  beforeAClick: 'Before a click',
  mustIReverseAndBrake: 'Must I reverse and brake for it to adjust?',
  notThisKindItSteps:
    'Not this kind: it steps on a firm press either way. Reversing works a servo brake’s screw. Which kind is yours? tells them apart.',
  pressForwardThenBackwardThe: 'Press forward, then backward: the shoes part as far both ways.',
  mineAdjustsOnTheParking: 'Mine adjusts on the parking brake. If I never pull it, does it adjust?',
  suchAScrewIsTurned:
    'Such a screw is turned by the parking lever alone: a lever never pulled never adjusts, and the pedal grows long.',
  underTheAdjusterChooseDriven:
    'Under the adjuster choose Driven by the parking pull, then wear on and compare.',
  howManyTeethDoI: 'How many teeth do I back off to make the wheel free?',
  asManyAsBringThe:
    'As many as bring the rest gap back: about 0.15 mm of clearance and a notch and a half a tooth on this van. Unload the cable and the line first.',
  backOffOneToothAt: 'Back off one tooth at a time and read clearance and overlap.',
  willAnOverAdjustedBrake: 'Will an over-adjusted brake wear itself free if I drive it?',
  notInAFewKilometres:
    'Not in a few kilometres: hundreds. It grows hot, glazes and wastes fuel; back it off instead.',
  readHowTheGapStands:
    'Read how the gap stands after a click. Ask “will it wear free” for the sum of how far and how hot.',
  howTightShouldTheShoes: 'How tight should the shoes be when I set them?',
  aGaugeSomeTenthsUnder:
    'A gauge some tenths under the bore, or turned until it locks and backed off until it just turns free; then presses take up the rest.',
  stepPresetTheGaugesFigures: 'Step preset: the gauge’s figures, and what each rule leaves as gap.',
  shoesFirstOrCableFirst: 'Shoes first or cable first?',
  shoesPressesUntilSilentLever:
    'Shoes, presses until silent, lever home on its stop, cable last. Cable first hides the gap and stops the adjuster.',
  theOrderOfTheSteps: 'The order of the steps; the cable is the last.',
  howFreelyShouldAWheel: 'How freely should a wheel turn by hand?',
  onStandsItTurnsWith:
    'On stands it turns with two fingers, the same both ways. A few newtons at the tyre are seals and bearing; 50 N is a drag that heats.',
  hoseShutsOnTheWay:
    'Hose shuts on the way back: turned by hand, both wheels, and the heat that comes of it.',
  allFourWheelsGrowTight:
    'All four wheels grow tight as I drive and free when it stands. What is it?',
  pressureThatCannotGoBack:
    'Pressure that cannot go back: no free play at the master. The bleed point frees all at once.',
  noFreePlayAtThe:
    'No free play at the master: all wheels, pedal shorter, frees at the bleed point.',
  oneWheelSmellsAfterA: 'One wheel smells after a drive. What do I feel first?',
  notTheDrumHoldA:
    'Not the drum: hold a hand near it. Then turn both wheels by hand, look at the lever behind the plate, open the bleed point. What I see puts them in the cheapest order.',
  findTheFaultTakeThe: 'Find the fault: take the cheapest readings until one name is left.',
  brakesHangOnAfterEach:
    'Brakes hang on after each stop and let go after a while. Hose or cylinder?',
  secondsSluggishPistonsMinutes:
    'Seconds: sluggish pistons. Minutes, and free at the bleed point: the hose.',
  hoseShutsOnTheWay2: 'Hose shuts on the way back, beside Pistons sluggish: what parts them.',
  whyDoesTheFrontShoe: 'Why does the front shoe brake more forwards?',
  theTurningDrumDragsIt:
    'The turning drum drags it tighter: it leads. Backwards the rear one leads. Both are pushed alike.',
  pressForwardThenBackwardShares:
    'Press forward, then backward: shares change sides, the total stays.',
  brakesAreWeakForwardsAnd: 'Brakes are weak forwards and better in reverse. Why?',
  theShoeThatShouldLead:
    'The shoe that should lead is not pushed: a stuck piston. Oil on the other lining does it the other way round.',
  onePistonStuckRollerTest: 'One piston stuck: roller test both ways.',
  oneShoeIsWornTwice: 'One shoe is worn twice as much as the other. Fault?',
  noTheLeadingLiningDoes:
    'No: the leading lining does about three quarters of the work. If the trailing one is the thinner, shoes were swapped; one hardly worn at all was not pushed.',
  wearOnAndReadBoth: 'Wear on and read both linings.',
  innerWheelAndOuterWheel:
    'Inner wheel and outer wheel wear differently on one axle. Where do I look?',
  aCableOrPistonThat:
    'A cable or piston that stays out wears one wheel; an adjuster dead on one side wears the other. Measure both wheels, then part them by the lever and the bleed point.',
  typeBothWheelsWhatDiffers:
    'Type both wheels: what differs between them stands under the verdict.',
  grabbingAndLocking: 'Grabbing and locking',
  brakesGrabOnTheFirst:
    'Brakes grab on the first stop of a damp morning, then are fine. Dangerous?',
  aBloomOfRustLifts:
    'A bloom of rust lifts friction and the leading shoe more than doubles it. Gone in a few stops. If a wheel locks, see to lining grade and springs.',
  dampRustTorqueBeforeAnd: 'Damp rust: torque before and after.',
  itGrabsSinceTheNew: 'It grabs since the new shoes. Will that bed in?',
  liningsGroundTooLargeTouch:
    'Linings ground too large touch at their ends, where the drum wedges them in: it grabs and drags. Check the radius against the bore before hoping.',
  liningsGroundTooLargeWhere: 'Linings ground too large: where the pressure stands.',
  aPopWhenIPress: 'A pop when I press after standing. What is it?',
  liningsRustedOnLetGo:
    'Linings rusted on let go with a jerk, once. A pop at each first touch is a shoe that leaves a groove in its pad.',
  grooveInAPlatePad: 'Groove in a plate pad: it comes on late, all at once.',
  howDoIStopBrake: 'How do I stop brake squeal?',
  notCoveredNoiseIsNot:
    'Not covered: noise is not computed. Look for shiny linings, loose hold-downs, dry pads on the plate: a film of high-temperature grease there, none on a lining. Grinding of metal on metal: do not drive it.',
  somethingRattlesInTheDrum: 'Something rattles in the drum on rough roads. Is it serious?',
  aHoldDownLostOr:
    'A hold-down lost or a spring off lets a shoe tilt: one edge wears and it may jam. Drum off and look.',
  theLayerEdgeOnShows: 'The layer Edge-on shows a shoe without its hold-down.',
  pullingToOneSide: 'Pulling to one side',
  itPullsSinceOneWheel: 'It pulls since one wheel cylinder was renewed. Why?',
  aCylinderOfAnotherBore:
    'A cylinder of another bore pushes harder at the same pressure: both of an axle are alike. Read the mark behind the plate.',
  wrongCylinderRollerThenThe: 'Wrong cylinder: roller, then the bore mark.',
  theRollerTestSaysToo: 'The roller test says too much imbalance. Where do I start?',
  whichWheelIsWeakOn:
    'Which wheel is weak, on the pedal, on the lever, or both? Weak on both and both ways: friction. On the lever alone: pivot or cable. Forwards alone: a piston.',
  findTheFaultVan15: 'Find the fault: van 15, the roller test first.',
  drumWornOrNotRound: 'Drum worn or not round',
  canIHaveTheDrum: 'Can I have the drum machined, and how deep may it go?',
  aCutCostsTwiceIts:
    'A cut costs twice its depth in diameter. The bore after the cut must stay under the machining limit, with the maker’s margin left for wear; both drums alike.',
  typeTheMarkTheDiameter: 'Type the mark, the Ø and the depth of the score: verdict and margin.',
  cylinderAndLeaks: 'Cylinder and leaks',
  itIsWetBehindThe: 'It is wet behind the plate. Brake fluid or axle oil?',
  fluidComesFromTheBoot:
    'Fluid comes from the boot and thins paint; oil from the hub smells of gears. Either soaks linings: find the leak, then shoes on both wheels. Do not drive with a leak of fluid.',
  fluidOnBothLiningsBeside:
    'Fluid on both linings beside Oil on one lining: torque both ways, and the boots.',
  thePedalIsSpongySince: 'The pedal is spongy since I changed a cylinder. How do I tell air?',
  travelThatGrowsWithThe:
    'Travel that grows with the force is air; travel before the first bite is gap. Notches stay as they were with air.',
  airInTheCircuitPedal: 'Air in the circuit: pedal at 10 and at 40 bar.',
  firstPressOfTheDay: 'First press of the day is long and clicks, then it is good. Why?',
  teethThatSlipBackUnder:
    'Teeth that slip back under the parking pull, clicked out again by the first press: renew lever and strut as a pair.',
  wornTeethLetGoFirst: 'Worn teeth let go: first and next press.',
  thePedalThrobsWhenI: 'The pedal throbs when I brake gently. Rear drum or front disc?',
  slowDownOnTheHand:
    'Slow down on the hand lever alone, on an empty road, its button held: if it throbs then, it is a drum. Twice a turn oval, once off centre.',
  drumOvalStoryAndPedal: 'Drum oval: story and pedal; then measure and dial.',
  howManyClicksShouldThe: 'How many clicks should the lever have?',
  asTheMakerSaysOften:
    'As the maker says; often four to seven at a firm pull. Few: the cable is too short or pulls still. Many with a good pedal: cable; many with a long pedal: gap.',
  pullTo300NIn: 'Pull to 300 N in each cable: notches, and where they go.',
  theHandbrakeStaysOnIn: 'The handbrake stays on in frost or after a hard pull. What holds it?',
  aCableInItsSheath:
    'A cable in its sheath, or the lever’s pivot. Flex the cable at the plate and look whether the lever comes home.',
  cableKeepsItsPullLever: 'Cable keeps its pull: lever off its stop.',
  itHoldsWellOnOne: 'It holds well on one wheel and hardly on the other. Cable or drum?',
  ifPedalAndNotchesAre:
    'If pedal and notches are right and one wheel is weak parked, the lever’s pivot takes half the pull. If it is weak on the pedal too, it is friction.',
  parkingLeverStiffInIts: 'Parking lever stiff in its pivot: parked and on the pedal.',
  howSteepASlopeShould: 'How steep a slope should it hold?',
  rulesAskForSomethingLike:
    'Rules ask for something like a fifth, both ways; the owner of the rule is named. With these shoes and 300 N in each cable the van holds a little more nose down than up.',
  setThePullReadThe: 'Set the pull, read the slope held nose down and up.',
  limitsAndLife: 'Limits and life',
  howLongWillTheseShoes: 'How long will these shoes last?',
  whatIsLeftOverWhat:
    'What is left over what was lost, times the distance, with a band as wide as its sources. A forecast is no approval.',
  typeThicknessNowAndWhen:
    'Type thickness now and when fitted, and the distance: what ends first, and when.',
  whereIsTheDrumsLimit: 'Where is the drum’s limit, and is it the machining limit?',
  theMarkCastOnThe:
    'The mark cast on the drum is the largest Ø in use. A machining limit, where told, is smaller, to leave room for wear.',
  typeTheMarkEachLimit: 'Type the mark; each limit stands with its owner.',
  whichShoeWhere: 'Which shoe where',
  howDoIKnowWhich: 'How do I know which way round strut, springs and lever go?',
  byTheOtherWheelLeft:
    'By the other wheel, left whole as a pattern: it is the mirror image. Names are on; Bench turns the view to the other wheel.',
  namesAreOnStrutSprings: 'Names are on: strut, springs and lever as they sit.',
});

/** ui/questions/list-two.ts */
export const questionsListTwo = section('questionsListTwo', {
  q061Ask: 'One shoe is worn at its outer edge and screeches. Could that be the noise?',
  q061Steps:
    'Not covered: the shoe tilts out of this plane, and noise is not computed. Look at its hold-down and at the pads on the plate; the layer Edge-on shows how a shoe tilts.',
  q062Ask: 'Why even the wear, and could the shoes be swapped?',
  q062Answer:
    'The leading lining carries about three times the pressure and wears so much faster. Swapping evens it on paper only.',
  q062Steps: 'Used shoes swapped: what changes at once; then Wear on for the life.',
  q064Ask: 'After wet days one brake held for a moment, then broke free. Open it?',
  q064Answer: 'Rusted-on linings shear once and are gone. If it comes back, look inside.',
  q064Steps: 'The linings are rusted on: turn it, then break it loose.',
  q065Ask: 'A rear wheel locks after rain. Causes in order?',
  q065Answer:
    'Damp rust first, gone after some stops; then a part that leans, springs, a cable that does not return.',
  q065Steps:
    'Damp rust: torque before and after, and its look-alikes with the reading that parts each.',
  q067Ask: 'One side grabs when pressed hard and pulses when gently. Drum out of round?',
  q067Answer: 'An oval or off-centre drum throbs; the two-point gauge and the dial tell which.',
  q067Steps: 'Drum oval: story, turn, measure, dial.',
  q068Ask: 'Only the first stop after changing direction clunks. What moves?',
  q068Steps:
    'Not covered: it is a shoe crossing the play of a worn pin or abutment, and pins here have none. One clunk for each change of direction is its sign. Drum off, rock each shoe on its pin: play there is renewed.',
  q070Ask: 'One drum honks and the linings shine. Can they be roughened, and why one side?',
  q070Answer: 'Glaze takes friction, gap and travel stay. Noise itself is not computed.',
  q070Steps: 'Glazed linings: roller test before and after.',
  q071Ask:
    'A grind, and a bright spot on the shoe’s edge and on rivets in the drum. What lets them touch?',
  q071Steps:
    'Not covered: what touches there lies along the axle, and this view looks along it. Metal on metal: do not drive it before the drum was off; look at hold-downs, rivets and the rim of the plate.',
  q073Ask: 'Standing still, the drum squeals as the pedal comes up. What rubs?',
  q073Steps:
    'Not covered: noise is not computed. Sluggish pistons and dry pads do hold shoes back on release: see Faults, and put a film of high-temperature grease on the pads, none on a lining.',
  q074Ask: 'Grinding with the pedal, none with the parking brake alone. What does that tell?',
  q074Answer: 'Pedal and cable push the same shoes by other ways: forces, not parts, differ.',
  q074Steps: 'Pull the lever and read both shoes’ forces; then press in Apply.',
  q076Ask: 'It rubs under braking and catches at one spot by hand. Lining, bearing or drum?',
  q076Answer: 'Once a turn: off centre. Twice: oval. None on stands but hot on the road: bearing.',
  q076Steps: 'Find the fault: wheels up, then gauge or dial.',
  q077Ask: 'It pulled one way, shoes were in the wrong places, now it pulls the other. What is it?',
  q077Answer:
    'Compare both wheels on a roller, both ways: drum, setting and shoes show differently.',
  q077Steps: 'Used shoes swapped: roller and measurements of both wheels.',
  q079Ask: 'With the drums off only one shoe moves when I press. A fault?',
  q079Answer:
    'The weaker-sprung one moves first; it says little. With the drum off do not press: a piston can leave its bore.',
  q079Steps: 'One piston stuck: what really shows it.',
  q080Ask: 'The test found little effort on one side. Did tightening the cable do it?',
  q080Answer:
    'A lever off its stop keeps the adjuster from stepping, on both wheels. One weak wheel has another cause.',
  q080Steps: 'Cable set too short: readings, and its look-alikes.',
  q082Ask:
    'All new but the drums, adjuster right up, and it will not hold on a slope. A wear limit?',
  q082Answer:
    'A drum past its marked diameter uses up teeth and lever. Torque hardly suffers, travel does.',
  q082Steps:
    'Type the mark on the drum and its diameter, read the verdict; then Park for notches and slope.',
  q082SetupState: 'Second set',
  q083Ask: 'A new drum differs by half a millimetre across two diameters. Oval or off centre?',
  q083Answer:
    'The two-point gauge changes with the angle only on an oval drum; off centre swings the dial alone.',
  q083Steps: 'Drum oval, then its look-alike Drum off centre: measure and dial.',
  q085Ask: 'The drum looks smooth. How do I tell whether to renew it?',
  q085Answer: 'By its largest diameter, at several angles and depths, against the mark on it.',
  q085Steps: 'Type the new Ø, the mark and three angles; read verdict and margin.',
  q086Ask:
    'Free when set back, but it rubs at some points after pumping. Warped, and how much is allowed?',
  q086Answer:
    'Off centre or oval: the gap runs out where the bore is nearest. The limit on out of round stands in Inspect.',
  q086Steps: 'Drum off centre: turn, measure, dial.',
  q088Ask: 'With worn shoes and drum a piston comes out of its cylinder. Why?',
  q088Answer:
    'Travel is about twice the gap at the lining’s middle. Unadjusted and worn out, it passes the bore’s end.',
  q088Steps: 'Piston past its run-out: pedal and linings.',
  q089Ask: 'A wheel cylinder blew right after I fitted shoes. Adjusted too tight?',
  q089Answer: 'No: too loose is what over-travels a piston. A tight brake cannot.',
  q089Steps: 'Piston past its run-out, against Stepped on while hot.',
  q091Ask:
    'The pedal goes far down at every stop and masters have been changed. Could it be badly set drums?',
  q091Answer:
    'Yes: a gap left open closes anew at each press. Most of the travel is then there at 10 bar already.',
  q091Steps: 'Adjuster seized short: pedal at 10 and at 40 bar.',
  q092Ask: 'New cylinders, shoes, drums, bled, and still half the pedal is gone. Where?',
  q092Answer:
    'Travel that comes before the touch is gap; travel that grows with pressure is give in the circuit.',
  q092Steps: 'Air in the circuit beside Adjuster seized short.',
  q094Ask: 'The drum goes on snug but the pedal is long. Can a lip deceive me?',
  q094Answer: 'Yes: the hand feels the lip, the lining works behind it.',
  q094Steps: 'The lip passes snug while the gap behind it stands beside it.',
  q095Ask: 'The pedal is low but comes up when pumped. New brakes?',
  q095Answer: 'Long and firm and rising: gap. Springy: air. Both are told by two presses.',
  q095Steps: 'Find the fault: story and pump.',
  q097Ask: 'The lever is slack on a four-year-old car. Shoes or cable?',
  q097Answer: 'Good pedal and many notches: cable. Long pedal and many notches: gap.',
  q097Steps: 'Cable stretched or slack, beside Adjuster seized short.',
  q098Ask: 'It creeps back on a slope however hard I pull. What is short?',
  q098Answer: 'Torque for that slope, one way or both: friction, pull at the hook, or one shoe.',
  q098Steps: 'Pull, turn the van nose up and down, read the slope held and its margin.',
  q100Ask: 'New shoes, wheels lock when I try it, and the roller test says almost nothing. How?',
  q100Answer:
    'New linings in a worn drum bear on part of their arc until bedded. It costs about a tenth, not nearly all.',
  q100Steps: 'The drum is on and silent. Drive on, to bed in: contact and torque before and after.',
  q101Ask: 'It holds on mild slopes and slides on steep ones. Glazed or worn?',
  q101Answer: 'The slope held follows friction; wear changes notches.',
  q101Steps: 'Glazed linings: parked torque before and after; then Park for the slope.',
  q103Ask: 'Rebuilt, it worked once and then went slack for good. Old strut or lever?',
  q103Answer: 'Teeth that slip under the parking pull: tight after a press, loose after a pull.',
  q103Steps: 'Worn teeth let go: pump and notches.',
  q104Ask: 'The parking brake is useless. What is seized as a rule, and how do I reset it?',
  q104Answer:
    'Lever in its pivot, cable in its sheath, adjuster. Reset: adjuster back, preset, press until silent, cable last.',
  q104Steps:
    'Set back, centre, preset, press until silent, cable last: five steps with the clicks counted.',
  q106Ask:
    'The equaliser stays put when I let go. Are the springs in the drum meant to pull it back?',
  q106Answer:
    'Yes, by the lever’s ratio only a little at the hook. A cable that keeps more stays out.',
  q106Steps: 'Cable keeps its pull: lever off its stop, drag by hand.',
  q107Ask: 'Parked on a slope the brakes hang on after release. Would chamfered ends help?',
  q107Steps:
    'Not covered: what a slope leaves locked in is released by a small roll back, which is not followed here. Lining ends are not the cause and stay as they are: roll a little uphill, then let the lever down; if it hangs on the level too, see What I see.',
  q109Ask: 'Both wheels move a little and then lock after months on the brake. Cable or rust?',
  q109Answer:
    'Rusted-on linings do not turn at all, then free with one jerk. A cable drags all the time.',
  q110Ask: 'After two months one tyre drags though the lever is off. What is stuck?',
  q110Answer: 'One lining rusted on, or a cable that keeps its pull: the jerk tells.',
  q110Steps: 'Linings rusted on, beside Cable keeps its pull.',
  q112Ask: 'Four millimetres of lining are left. Can I leave it?',
  q112Answer: 'Only with a date: the margin over the wear rate, with a band of two either way.',
  q112Steps:
    'Take the values from the brake, or type your own and your limits; read margin, distance and band.',
  q113Ask:
    'The drums were never off in over 100 000 miles and the parking brake is strong. Leave them?',
  q113Answer: 'A strong lever does not tell lining, leak, tooth or lip: those need the drum off.',
  q113Steps: 'Near the limit: strong brake, thin lining; read the sheet.',
  q115Ask: 'An inspector says a shoe is on backwards. Could he tell, and does it matter?',
  q115Answer:
    'By the lining’s place and length; here both linings are alike, so only used shoes differ. Torque and fit change.',
  q115Steps: 'Used shoes swapped: measurements and roller.',
  q116Ask: 'One shoe was upside down. How do I tell the leading end?',
  q116Answer:
    'The toe is at the cylinder, the heel at the pin. A shoe put in upside down is not computed.',
  q116Steps: 'Names are on: toe, heel, pin and cylinder.',
  q118Ask:
    'Fifty photos and one side whole, and I still dread the springs and the setting. Is it just me?',
  q118Answer:
    'Leave one side as your pattern, and go step by step: reset, centre, preset, press, cable last.',
  q118Steps: 'All six steps; Bench shows the other wheel as in a mirror.',
});

/** ui/record/across.ts */
export const recordAcross = section('recordAcross', {
  eachWheelItsOwn: 'each wheel its own',
  bothWheelsAlike: 'both wheels alike',
});

/** ui/record/bench.ts */
export const recordBench = section('recordBench', {
  onTheBench: (titleOf: string) => `${titleOf} on the bench`,
  backToNew: 'back to new',
  stateOfTheBrake: 'state of the brake',
  toothTo: (tooth: number, tooth2: number) => `tooth ${tooth} to ${tooth2}`,
  liningsBeddedIn: 'linings bedded in',
  adjuster: (kind: string) => `adjuster: ${kind}`,
  pedalAtBar: (pedal: number) => `pedal at ${pedal} bar`,
  pressToothTo: (tooth: number, tooth2: number) => `press, tooth ${tooth} to ${tooth2}`,
  pedalLetGo: 'pedal let go',
  itsOwn: 'its own',
});

/** ui/record/dials.ts */
export const recordDials = section('recordDials', {
  dial: (name: string) => `dial ${name}`,
  dialsBack: 'dials back',
});

/** ui/record/file-kind.ts */
export const recordFileKind = section('recordFileKind', {
  itIsAMomentOf: 'It is a moment of the bench: Open a file, in Bench, reads it.',
  itIsABrakeRead: 'It is a brake: Read a scene file, in My brake, reads it.',
  itIsAFileOf: 'It is a file of kept sheets: Read a file of sheets, in Inspect, reads it.',
  itIsNoTextA: 'It is no text: a picture, or a packed file.',
  itIsNoMomentOf: 'It is no moment of the bench, as Save as a file writes it.',
  itIsNoFileOf: 'It is no file of sheets, as Save all sheets writes it.',
  itIsNoJsonAs: 'It is no JSON, as Save as a file writes it.',
});

/** ui/record/guest.ts */
export const recordGuest = section('recordGuest', {
  backToMine: 'back to mine',
  madeMine: 'made mine',
  to: (stationNames: string) => `to ${stationNames}`,
});

/** ui/record/hands.ts */
export const recordHands = section('recordHands', {
  handsInTheBrake: 'hands in the brake',
  handsOutOfTheBrake: 'hands out of the brake',
  hand: (part: string) => `hand: ${part}`,
  holdOf: (part: string) => `hold of ${part}`,
  pullAt: (part: string) => `pull at ${part}`,
  secondHand: (
    part:
      | ''
      | 'cable'
      | 'front piston'
      | 'front shoe'
      | 'parking lever'
      | 'rear piston'
      | 'rear shoe'
      | 'strut',
  ) => `second hand: ${part}`,
  pullAt2: (
    part:
      | ''
      | 'cable'
      | 'front piston'
      | 'front shoe'
      | 'parking lever'
      | 'rear piston'
      | 'rear shoe'
      | 'strut',
  ) => `pull at ${part}`,
  letGo: (which: string) => `${which} let go`,
  letGo2: (part: string) => `${part} let go`,
  aBarInTheHand: 'a bar in the hand',
  bareHand: 'bare hand',
  shoesMovements10: 'shoes’ movements ×10',
  movements1: 'movements ×1',
  drumOff: 'drum off',
  drumOnAgain: 'drum on again',
  returnSpringUnhooked: 'return spring unhooked',
  returnSpringHookedOn: 'return spring hooked on',
  off: 'off',
  on: 'on',
  holdDownOfTheShoe: (side: 'front' | 'rear', off: string) =>
    `hold-down of the ${side} shoe ${off}`,
});

/** sim/study/working/now-adjuster.ts, now-brake.ts, now-shoe.ts */
export const studyWorkingNow = section('studyWorkingNow', {
  clearance: (side: 'front' | 'rear') => `Clearance, ${side}`,
  insideDrumBy: 'Both linings inside the drum by',
  piston: 'Piston',
  returnSprings: 'Return springs',
  climbingLever: 'Climbing lever',
  holdDown: 'Hold-down',
  otherParts: 'Other parts',
  pressureOfDrum: 'Pressure of the drum',
  frictionOfDrum: 'Friction of the drum',
  frictionOfHeel: 'Friction of the heel',
  closingMoment: (name: string) => `${name}: moment about the front anchor, closing`,
  shoesOffStrut: 'The shoes stand off the strut',
  armOfStrut: 'Arm of the strut about the front anchor',
  drumBeforeStop: 'Drum before the stop',
  timeOfStop: 'Time of the stop',
  energyOfStop: 'Energy of the stop in this brake',
  halfTurn: 'Half a turn in radians',
  radiusOfColdDrum: 'Radius of the cold drum',
  widthOfWiderLining: 'Width of the wider lining',
  heatShareOfDrum: 'Share of the heat that the drum takes',
  effusivityOfDrum: 'Effusivity of the drum, √(k·ρ·c)',
  strutAtStep: 'Strut at this step',
  strutAtNextStep: 'Strut at the next step',
  lostMotion: 'Lost motion',
  lostMotionSpringOff: 'Lost motion: the strut’s spring is off',
  seatsApart: 'Seats of the strut apart',
  lengthOfStrut: 'Length of the strut',
  strengthOfLeverSpring: 'Strength of the lever’s spring',
  stepsTaken: 'Steps taken, counted',
  nothingClimbed: 'Nothing is climbed',
  noToothFollows: 'No tooth follows',
  drumAsWarm: 'Drum as warm as it is',
  driven: 'Driven, counted',
  heldOffByCable: 'Held off by the cable',
  eyeToEyeNow: 'Eye to eye now',
  eyeToEyeFitted: 'Eye to eye as fitted',
  pullAsFitted: 'Pull as fitted',
  rate: 'Rate',
  strengthAsIs: 'Strength as it is, new 1',
  dragOfShoe: (role: 'leading' | 'trailing') => `Drag of the ${role} shoe`,
  leftOnItsToe: (role: 'leading' | 'trailing') => `Left on its toe after springs, ${role}`,
  pushOfPiston: (role: 'leading' | 'trailing') => `Push of the piston, ${role}`,
  drag: (side: 'front' | 'rear') => `Drag, ${side}`,
  radiusOfDrum: 'Radius of the drum now',
  linePressure: 'Line pressure',
  boreOfWheelCylinder: 'Bore of the wheel cylinder',
  inLineAsPressed: 'In the line, as it is pressed',
  pushOnToe: 'Push of the piston on the toe',
  pistonAboveAnchor: 'Piston’s line above the anchor now',
  momentOfSprings: 'Moment of return springs and climbing lever, closing',
  toeAboveAnchor: 'Toe above the anchor',
  toeFromAxleNow: 'Toe from the axle now',
  toeFromAxleLetGo: 'Toe from the axle, let go',
  allThatPresses: 'All that presses the lining on the drum',
  nothingRubs: 'Nothing rubs',
  frictionNow: 'Friction now, with its heat and surface',
  radiusAtWhichItRubs: 'Radius at which it rubs, the face pressed in',
  pressureOfMostBearing: 'Pressure of the element that bears most',
  pressureOfLast: 'Pressure of the last element',
  pressureBeside: 'Pressure of the one beside it',
  gapBeforeMiddle: 'Gap of the element before the middle',
  gapAfterMiddle: 'Gap of the element after it',
  thicknessNew: 'Thickness there, new',
  wornOff: 'Worn off there',
  limitOfLining: 'Limit of the lining',
  liningNew: 'Lining new',
  levelPart: 'Level part of the anchor’s force',
  uprightPart: 'Upright part of it',
});

/** sim/study/working/shoe-factor.ts */
export const studyWorkingShoeFactor = section('studyWorkingShoeFactor', {
  pinFromAxle: 'Pin from the axle',
  pistonAbovePin: 'Piston’s line above the pin',
  radiusOfDrum: 'Radius of the drum now',
  widthOfLining: 'Width of the lining',
  frictionNow: 'Friction as the lining is now',
  leftOnToe: 'Left on the toe after springs',
  cosineOfHeelEnd: (degrees: string) => `Cosine of the heel end, ${degrees}°`,
  cosineOfToeEnd: (degrees: string) => `Cosine of the toe end, ${degrees}°`,
  sineOf: (degrees: string) => `Sine of ${degrees}°`,
  sineOfTwice: (degrees: string) => `Sine of twice ${degrees}°`,
  arcOfLining: 'Arc of the lining, rad',
  sumOfSine: 'Sum of the sine over the arc',
  armOfPressure: 'Arm of the pressure',
  armOfFriction: 'Arm of the friction',
  pressureFromPin: 'Pressure at 90° from the pin',
  dragSum: 'Drag, the sum over all elements',
  toeAboveAnchor: 'Toe above the anchor',
  pressureAboutAnchor: 'Pressure of all elements about the anchor, closing',
  frictionAboutAnchor: 'Friction of all elements about it, opening',
  allThatPresses: 'All that presses, the sum over all elements',
  radiusAtWhichItRubs: 'Radius at which it rubs',
});

/** ui/record/scene-names.ts */
export const recordSceneNames = section('recordSceneNames', {
  /** What a teaching brake says of itself, by what stands in its scene: its own name, what it is, its springs, states and roads. */
  named: (name: string): string => name,
});

/** ui/record/home.ts */
export const recordHome = section('recordHome', {
  allOfIt: 'all of it',
  foundAllowed: (path: string, found: string, allowed: string) =>
    `${path}: found ${found}; allowed: ${allowed}`,
  ofBrakesOfYourOwn: (bad: number, length: number) => `${bad} of ${length} brakes of your own`,
  itIsNoListOf: 'it is no list of brakes',
  thisLinkCouldNotBe: (wrong: string) => `This link could not be opened. ${wrong}.`,
  theAddressCouldNotBe: (error: string) => `The address could not be written: ${error}`,
  linkOpened: 'link opened',
  thisLinkCouldNotBe2: (error: string) => `This link could not be opened: ${error}`,
});

/** ui/record/life-book.ts */
export const recordLifeBook = section('recordLifeBook', {
  oneStep: 'one step',
  steps: (stepped: number) => `${stepped} steps`,
  hotPressAtCTo: (temperature: number, steps: string, tooth: number) =>
    `Hot press at ${temperature} °C: ${steps} to tooth ${tooth}`,
  clickToothOnThePedal: (tooth: number) => `Click: tooth ${tooth} on the pedal`,
});

/** ui/record/life.ts */
export const recordLife = section('recordLife', {
  atMostRows: (full: number) => `at most ${full} rows`,
  aRowThatWasDriven: 'a row that was driven',
});

/** ui/record/link.ts */
export const recordLink = section('recordLink', {
  behind: 'behind #',
  theRestOfTheLink: 'the rest of the link: it was cut off',
  letters: (length: number) => `${length} letters`,
  atMost: (mostpacked: number) => `at most ${mostpacked}`,
  lettersThatAreNoWhole: (length: number) => `${length} letters that are no whole link`,
  allOfTheLinkAs: 'all of the link, as it was copied',
});

/** ui/record/moment.ts */
export const recordMoment = section('recordMoment', {
  stationNames: {
    apply: 'Apply',
    wear: 'Wear',
    'drum-off': 'Drum off',
    park: 'Park',
    inspect: 'Inspect',
    'new-shoes': 'New shoes',
    faults: 'Faults',
    own: 'My brake',
    questions: 'Questions',
    start: 'Start',
    ask: 'Ask',
    see: 'What I see',
    kind: 'Which kind',
    lessons: 'Lessons',
    vary: 'What if',
    order: 'In order',
    compare: 'Compare',
    apart: 'Adjuster apart',
  },
});

/** ui/record/naming.ts */
export const recordNaming = section('recordNaming', {
  partsAskedFor: 'parts asked for',
  tapped: (part: string) => `tapped: ${part}`,
  partShown: 'part shown',
  namesTold: 'names told',
});

/** ui/record/old.ts */
export const recordOld = section('recordOld', {
  aList: 'a list',
  anObject: 'an object',
  foundAllowedTextsByTheir: (what: string) => `found ${what}, allowed: texts by their keys`,
  noSuchPlace: 'no such place',
  foundAllowedAText: (what: string) => `found ${what}, allowed: a text`,
  foundCharactersAllowed: (length: number, most: number) =>
    `found ${length} characters, allowed: ${most}`,
  foundAllowedABrake: (what: string) => `found ${what}, allowed: a brake`,
  foundAllowed: (found: string, allowed: string) => `found ${found}, allowed: ${allowed}`,
  myBrake: 'My brake',
  theseSizesMakeNoSound: 'these sizes make no sound brake any more',
  foundAllowedASheet: (what: string) => `found ${what}, allowed: a sheet`,
  foundAllowed2: (what: string, limitSetIds: string) => `found ${what}, allowed: ${limitSetIds}`,
  foundAllowedMmIn: (what: string) => `found ${what}, allowed: mm, in`,
  itIsNoJson: 'it is no JSON',
  foundAllowedAListOf: (what: string) => `found ${what}, allowed: a list of brakes`,
  place: (i: number) => `brake ${i}`,
  brakesAreKept: (mostbrakes: number) => `${mostbrakes} brakes are kept`,
  theDeletedBrake: 'the deleted brake',
});

/** ui/record/pictures.ts */
export const recordPictures = section('recordPictures', {
  thisBrowserCannotReadThis:
    'This browser cannot read this picture (HEIC). Set the camera to JPEG, or send yourself the picture as JPEG.',
  thisFileIsNoPicture:
    'This file is no picture that this browser can read. Allowed: JPEG, PNG, WebP.',
});

/** ui/record/record.ts */
export const recordRecord = section('recordRecord', {
  of0ToTheTeethOf: (teeth: number) => `0 to ${teeth}, the teeth of this brake`,
  toMmThisBrakesDrum: (radiusNew: number, widest: string) =>
    `${radiusNew} to ${widest} mm, this brake's drum`,
  atMostMmTheLining: (thicknessNew: number) =>
    `at most ${thicknessNew} mm, the lining of this brake`,
  aScene: 'a scene',
  aBrakeThatIsKept: 'a brake that is kept here',
  aFaultOfTheList: 'a fault of the list',
  whereTheGuestStands: (allowed: string) => `where the guest stands: ${allowed}`,
  plainData: 'plain data',
});

/** ui/record/road.ts */
export const recordRoad = section('recordRoad', {
  aStopThatAScene: 'a stop that a scene may ask for',
});

/** ui/record/shelf-merge.ts */
export const recordShelfMerge = section('recordShelfMerge', {
  other: ' (other window)',
  wasChangedInTwoWindows: (title: string, fields: string, title2: string) =>
    `${title} was changed in two windows at once (${fields}): both are kept, the other as “${title2}”.`,
  ofBrakesInTwoWindows: (length: number, mostbrakes: number) =>
    `Of ${length} brakes in two windows ${mostbrakes} are kept here.`,
});

/** ui/record/shelf.ts */
export const recordShelf = section('recordShelf', {
  noScene: 'no scene',
});

/** ui/record/state.ts */
export const recordState = section('recordState', {
  elements: (elements: number) => `${elements} elements`,
  of20To50MmEach: '-20 to 50 mm each',
});

/** ui/record/store.ts */
export const recordStore = section('recordStore', {
  nothingKept:
    'This browser keeps nothing: what you set and type is gone when you close the page. A link or a file keeps it (Bench).',
  notKept:
    'This browser has no room to keep what you set and type. Save it as a file (Bench) before you close the page.',
  itIsStillInThis: (fullKey: string) => `It is still in this browser under "${fullKey}-unread".`,
  thereWasNoRoomTo: 'There was no room to put it aside.',
  whatWasKeptUnderCould: (fullKey: string, why: string, where: string) =>
    `What was kept under "${fullKey}" could not be read: ${why}. ${where}`,
});

/** ui/record/view.ts */
export const recordView = section('recordView', {
  layers: {
    forces: 'forces',
    names: 'names',
    heat: 'heat',
    loupe: 'loupe',
    edge: 'edge-on',
    dials: 'dials',
  },
  layer: (name: string, on: boolean) => `${name} ${on ? 'on' : 'off'}`,
  gapFan: 'gap fan',
  pressureComb: 'pressure comb',
  restGhost: 'rest ghost',
  forcePolygons: 'force polygons',
  gapDrawn: (magnification: number) => `gap drawn ×${magnification}`,
  causeOfTheTilt: 'cause of the tilt',
  namesHidden: 'names hidden',
  namesTold: 'names told',
  nameOf: (partNames: string) => `name of ${partNames}`,
  sheet: 'Sheet',
  board: 'Board',
  view: (sheet: string) => `view ${sheet}`,
  wallLeft: 'wall left',
  handWheel: (wheel: unknown) => `${wheel}-hand wheel`,
  wholeBrake: 'whole brake',
  timeAt: (paceName: string) => `time at ${paceName}`,
  shoesThatBend: 'shoes that bend',
  rigidShoes: 'rigid shoes',
  soundOn: 'sound on',
  soundOff: 'sound off',
  forward: 'forward',
  backward: 'backward',
  stopped: 'stopped',
  drum: (forward: string) => `drum ${forward}`,
});

/** ui/record/walk.ts */
export const recordWalk = section('recordWalk', {
  to: (guestTitle: unknown) => `to ${guestTitle}`,
  to2: (stationNames: string) => `to ${stationNames}`,
});

/** ui/session.ts */
export const session = section('session', {
  hasLeftYoursStandsOn: (guestTitle: unknown) =>
    `${guestTitle} has left. Yours stands on the bench again.`,
  doneAgain: 'Done again',
  clickToothOnThePedal: (tooth: number) => `Click: tooth ${tooth} on the pedal`,
});

/** ui/stage/edge-on.ts */
export const stageEdgeOn = section('stageEdgeOn', {
  edge: (side: 'front' | 'rear') => `edge ${side}`,
  pad: 'pad',
  endPads: 'end pads',
  holdDown: 'hold-down',
  springs: 'springs',
});

/** ui/stage/layers/bent.ts */
export const stageLayersBent = section('stageLayersBent', {
  shoesBendBow: (bowscale: number) => `Shoes bend: bow ×${bowscale}`,
});

/** ui/stage/layers/captions.ts */
export const stageLayersCaptions = section('stageLayersCaptions', {
  gapsTimes: (factor: number) => `gap ×${factor}`,
  turningText: {
    1: 'Drum turns forward',
    0: 'Drum stands still',
    '-1': 'Drum turns backward',
  },
  notes: {
    leading: ['The drum drags it', 'tighter onto itself'],
    trailing: ['The drum pushes it', 'away from the rim'],
  },
  role: (side: 'front' | 'rear') => `role ${side}`,
  shoe: (called: 'front' | 'rear' | 'leading' | 'trailing') =>
    `${{ front: 'Front', rear: 'Rear', leading: 'Leading', trailing: 'Trailing' }[called]} shoe`,
  alone: { front: 'front', rear: 'rear', leading: 'leading', trailing: 'trailing' },
  corner: (side: 'front' | 'rear') => `corner ${side}`,
});

/** ui/stage/layers/cut-mark.ts */
export const stageLayersCutMark = section('stageLayersCutMark', {
  innerLetter: 'inner letter',
  outerLetter: 'outer letter',
});

/** ui/stage/layers/forces.ts */
export const stageLayersForces = section('stageLayersForces', {
  toe: (side: 'front' | 'rear') => `toe ${side}`,
  drag: (side: 'front' | 'rear') => `drag ${side}`,
  anchor: (side: 'front' | 'rear') => `anchor ${side}`,
});

/** ui/stage/layers/heat.ts */
export const stageLayersHeat = section('stageLayersHeat', {
  drumC: (temperature: number) => `Drum ${temperature}\u00a0°C`,
});

/** ui/stage/layers/overlap.ts */
export const stageLayersOverlap = section('stageLayersOverlap', {
  clearOfIt: 'clear',
  place: (word: 'heel' | 'centre' | 'toe'): string => word,
  clear: (word: 'heel' | 'toe') => `${word} clear`,
});

/** ui/stage/loupe.ts */
export const stageLoupe = section('stageLoupe', {
  loupeTangents: 'loupe tangents',
  loupeName: 'loupe name',
  loupeScale: 'loupe scale',
});

/** ui/stage/part-names.ts */
export const stagePartNames = section('stagePartNames', {
  partNames: {
    plate: ['Backing plate', 'Carries every part that does not turn.'],
    'access hole': ['Access hole, plugged', 'Lets a tool reach the adjuster with the drum on.'],
    hub: ['Hub', 'Turns with the wheel and carries the drum.'],
    drum: ['Drum rim, cut', 'Turns with the wheel; the linings rub on its inside.'],
    web: ['Shoe web', 'Stiff rib of the shoe that takes the pushes.'],
    table: ['Shoe table', 'Curved plate of the shoe that carries the lining.'],
    lining: ['Lining', 'Rubs on the drum and wears.'],
    'lever window': ['Slot in the web', 'Its play is the lost motion before a tooth is climbed.'],
    'hold-down': ['Hold-down pin', 'Keeps the shoe against the plate.'],
    cylinder: ['Wheel cylinder', 'Turns fluid pressure into push on both toes.'],
    'bleed port': ['Bleed port', 'Lets trapped air out of the fluid.'],
    piston: ['Piston', 'Pushes its shoe outward.'],
    cup: ['Cup', 'Seals the fluid; its lip opens under pressure.'],
    boot: ['Dust boot', 'Keeps dust out of the cylinder.'],
    'cup spring': ['Cup spring', 'Keeps the cups on their pistons.'],
    fluid: ['Brake fluid', 'Presses both pistons alike.'],
    strut: ['Strut', 'Holds the shoes apart; its length sets the clearance.'],
    'toothed lever': ['Toothed lever', 'Steps to the next tooth when the shoes travel too far.'],
    'lever pin': [
      'Lever pin in its slot',
      'The lever turns on it and slides to lift over a tooth.',
    ],
    'lever spring': ['Lever spring', 'Presses the lever into its tooth.'],
    'strut spring': ['Strut spring', 'Keeps the strut on its seat.'],
    'star wheel': ['Star wheel', 'Turns the screw that makes the strut longer.'],
    'wheel lever': [
      'Star-wheel lever',
      'Catches the next tooth on the way out and turns the wheel on the way back.',
    ],
    'wheel lever pin': ['Pin of the star-wheel lever', 'Joins the lever to the front web.'],
    'strut fork': ['Strut fork', 'Sits over the web; its notch holds the nose of the lever.'],
    screw: ['Screw', 'Turned out of its sleeve, it makes the strut longer.'],
    sleeve: ['Screw sleeve', 'Nut of the screw; its end stands on the parking lever.'],
    wedge: ['Wedge', 'Drops as far as there is room and makes the strut longer.'],
    'wedge seat': ['Wedge seat', 'Upright face on the front web that the wedge slides on.'],
    'wedge spring': ['Wedge spring', 'Pulls the wedge down.'],
    'hot lock': ['Hot lock, bimetal', 'Bends when hot and stops the adjuster: no step too far.'],
    'return spring': ['Return spring', 'Pulls the shoes off the drum.'],
    'upper spring': ['Upper return spring', 'Pulls the toes together when the pedal is let go.'],
    'lower spring': ['Lower return spring', 'Holds the heels in their place.'],
    'parking lever': ['Parking lever', 'Spreads the shoes when the cable pulls.'],
    'lever pivot': ['Parking-lever pivot', 'Joins the lever to the rear web.'],
    'lever stop': ['Stop of the lever', 'Rests on the web when the cable is slack.'],
    cable: ['Cable and coil', 'Pulls the parking lever; the coil brings it back.'],
    'cable guide': ['Cable guide', 'Leads the cable through the plate.'],
    'anchor pin': ['Anchor pin', 'Hinge of the shoe; takes what the drum pushes on.'],
    abutment: ['Abutment', 'The heel slides and rolls on it.'],
    keeper: ['Keeper', 'Keeps the heels on their pins.'],
  } satisfies Record<string, readonly [name: string, does: string]>,
});

/** ui/stage/parts/parking.ts */
export const stagePartsParking = section('stagePartsParking', {
  parkingOver: 'parking over',
});

/** ui/stage/polygons.ts */
export const stagePolygons = section('stagePolygons', {
  aShoeLocksNoForce: 'A shoe locks: no force is told',
  noForceIsTold: 'No force is told',
  nothingPushesOnTheShoes: 'Nothing pushes on the shoes',
  front: 'Front',
  rear: 'Rear',
  head: (front: string, leftOver: string) => `${front} shoe, left over ${leftOver}\u00a0N`,
  head2: (side: 'front' | 'rear') => `head ${side}`,
});

/** ui/stage/section-bb.ts */
export const stageSectionBb = section('stageSectionBb', {
  pull: 'pull',
  leader: (key: string) => `leader ${key}`,
  lipDiameter: (lipRadius: string) => `Lip Ø\u00a0${lipRadius}`,
  sweptDiameter: (lipRadius: string) => `Swept Ø\u00a0${lipRadius}`,
});

/** ui/stations/apart/draw.ts */
export const apartDraw = section('apartDraw', {
  fromOutsideTheWheel: 'From outside the wheel',
  fromBehindThisSideLies: 'From behind: this side lies on the plate',
});

/** ui/stations/apart/index.ts */
export const apart = section('apart', {
  noNamesOfTheBrake:
    'No names of the brake here: its adjuster lies alone on the bench, each of its parts with its own. The brake has them in Apply.',
  next: (fitted: number, nameOf: string) => `Next, ${fitted}: ${nameOf}.`,
  theAdjusterTogether: 'The adjuster, together.',
  takeItApart: 'Take it apart',
  nextStep: 'Next step',
  togetherName: 'Together',
});

/** ui/stations/apart/side.ts */
export const apartSide = section('apartSide', {
  goes: {
    strut: 'flat on the bench, fork to the parking lever',
    'toothed lever': 'its slot over the pin, teeth in the strut’s',
    'lever pin': 'through the slot, its head riveted behind',
    'lever spring': 'pulls the lever into its tooth',
    'strut fork': 'over the front web, notch to the lever’s nose',
    screw: 'into its sleeve, right in, then half a turn back',
    sleeve: 'its end to the parking lever',
    'star wheel': 'on the screw, teeth to the lever',
    'wheel lever': 'its nose into the notch, its blade on the wheel',
    'wheel lever pin': 'joins the lever to the front web',
    wedge: 'thin end down, right up',
    'wedge spring': 'pulls the wedge down',
    'hot lock': 'bimetal side as it came off',
  },
  holdsItBack: {
    goes: 'last: from the strut to the rear web',
    why: 'Nothing draws the strut back: the lever takes it along instead of climbing its tooth.',
  },
  takesItAlong: {
    goes: 'last: from the strut to the seat of the wedge',
    why: 'Nothing takes the strut along: the wedge drops as far as the shoes part, play and all.',
  },
  firstTheThisOneHas: (nameOf: string) => `First the ${nameOf}: this one has nothing to go on yet.`,
  missing: 'missing',
  on: 'on',
  next: 'next',
  strutRow: 'Force on the strut, N',
  strutLongerByMm: 'Strut longer by, mm',
  clearanceAtRestMm: 'Clearance at rest, mm',
  dragPedalUpNM: 'Drag, pedal up, N·m',
  pedalAt40BarMm: 'Pedal at 40 bar, mm',
  brakeTorqueNM: 'Brake torque, N·m',
  nothingWord: 'nothing',
  ofMm: (longer: string, longer2: string) => `${longer} of ${longer2} mm`,
  withoutTheTheAdjusterTakes: (name: string, b: string, travel: string, why: string) =>
    `Without the ${name} the adjuster takes up ${b}: the gap stays, and the pedal goes ${travel} mm farther.${why}`,
  theLiningsLieOnThe: (drag: string) =>
    `: the linings lie on the drum with the pedal up, and drag with ${drag} N·m`,
  withoutTheTheAdjusterTakes2: (name: string, longer: string, theLinings: string, why: string) =>
    `Without the ${name} the adjuster takes up ${longer} mm more${theLinings}.${why}`,
  withoutTheNothingHoldsThe: (name: string) =>
    `Without the ${name} nothing holds the shoes on the strut: they lie where they were left.`,
  withoutTheTheStrutIs: (name: string, strut: string, strut2: string) =>
    `Without the ${name} the strut is held by ${strut} N instead of ${strut2} N.`,
  withoutTheTheseFiguresStay: (name: string) =>
    `Without the ${name} these figures stay: its job is another one.`,
  withAndWithout: 'With and without',
  liningsWorn06Mm: 'Linings worn 0.6 mm, pressed at 40 bar until silent',
  withIt: 'with it',
  without: 'without',
  withAndWithout2: 'with and without',
  adjusterApart: 'Adjuster apart',
  whatIsMissingHereIs: (idea: string) => `${idea}. What is missing here is missing in the brake.`,
  putTogetherInThisOrder: 'Put together in this order',
  takeASpringAwayAnd: 'Take a spring away and press',
  bothSideBySide: 'Both side by side',
  controls: 'Controls',
  kindOfAdjuster: 'Kind of adjuster',
  stepBack: 'Step back',
  nextStep: 'Next step',
  takeItApart: 'Take it apart',
  putItTogether: 'Put it together',
  stepsTakenUp: 'Steps taken up',
});

/** ui/stations/apart/wants.ts */
export const apartWants = section('apartWants', {
  theBrakesOwnAdjuster: 'the brake’s own adjuster',
  aPartOff: 'a part off',
  aPartOn: 'a part on',
  springPutOn: 'spring put on',
  springAway: 'spring away',
});

/** ui/stations/apply.ts */
export const apply = section('apply', {
  locks: 'locks',
  atThisFrictionTheDrum: (locked: 'front' | 'rear', locks: unknown) => [
    'At this friction the drum drags the ',
    locked,
    ' shoe tight by itself: it ',
    locks,
    '. No force can be told.',
  ],
  seized: 'seized',
  releasedAndYetItIs: (seized: unknown, torque2: string) => [
    'Released, and yet it is ',
    seized,
    ': the linings stand inside the drum. ',
    torque2,
    ' N·m would turn it, and the wheel slides before.',
  ],
  releasedAndYetItDrags: (torque: unknown) => [
    'Released, and yet it drags: the linings stand inside the drum, and ',
    torque,
    ' turn it.',
  ],
  releasedTheSpringsHoldBoth:
    'Released: the springs hold both shoes on the strut, and the strut sets the gap.',
  bothToesGetTheSame: (push: string) =>
    `Both toes get the same ${push} N. The drum stands still: it helps neither shoe.`,
  thePistonsHaveTakenThe: 'The pistons have taken the shoes off the strut; the gap closes first.',
  times: (times: string) => `${times} times`,
  bothToesGetTheSame2: (push: string, times: unknown) => [
    'Both toes get the same ',
    push,
    ' N; the turning drum makes the leading lining press ',
    times,
    ' as hard.',
  ],
  apply: 'Apply',
  readings: 'Readings',
  pistonTravelFront: 'Piston travel, front',
  tryWord: 'Try',
  controls: 'Controls',
  drum: 'Drum',
  allReadingsSlowMotionLayers: 'All readings, slow motion, layers',
});

/** ui/stations/ask/index.ts */
export const ask = section('ask', {
  ask: 'Ask',
  inYourOwnWordsWhat: 'In your own words: what is wrong, what you want to know, or a part’s name.',
});

/** ui/stations/ask/list.ts */
export const askList = section('askList', {
  m33h21v17h12l722v17h3zm99q0: 'M3 3H21V17H12L7 22V17H3ZM9 9q0-3 3-3t3 3q0 2-3 3v1',
  sayItAsYouWould: 'Say it as you would to somebody beside the car. Any words, any order.',
  noneOfTheseWordsIs: 'None of these words is known here. These ways in are the nearest.',
  readAs: (a: unknown) => ['Read as ', a, '.'],
  or: (label: string) => `or: ${label}`,
  whatHelpsBestFirst: 'What helps, best first',
  noneOfTheseSayWhat: 'None of these: say what I see',
});

/** ui/stations/ask/part.ts */
export const askPart = section('askPart', {
  whatIsAsked: 'what is asked',
});

/** ui/stations/ask/wants.ts */
export const askWants = section('askWants', {
  figuresCarriedAlong: 'figures carried along',
});

/** ui/stations/compare/choices.ts */
export const compareChoices = section('compareChoices', {
  turningName: 'Forward against backward',
  heatName: 'Cold against hot',
  wearName: 'New against worn',
  toothName: 'One tooth further',
});

/** ui/stations/compare/draw.ts */
export const compareDraw = section('compareDraw', {
  gapFan: (magnification: number) => `gap fan ×${magnification}`,
  pressureComb: 'pressure comb',
});

/** ui/stations/compare/index.ts */
export const compare = section('compare', {
  pressureBar: 'Pressure, bar',
  torqueNM: 'Torque, N·m',
  gapAtRestMm: 'Gap at rest, mm',
  against: (name: string, a: string, b: string) => `${name}: ${a} against ${b}.`,
  thingsDiffer: (length: number) => `${length} things differ.`,
  noNamesHereTwoBrakes:
    'No names here: two brakes share the drawing, each too small for thirty numbers. One brake has them in Apply.',
  letGo: 'Let go',
  pressBoth: 'Press both',
  aForBName: 'A for B',
});

/** ui/stations/compare/side.ts */
export const compareSide = section('compareSide', {
  gapFan: 'Gap fan',
  aAndBAreThe: 'A and B are the same brake in the same state: choose below what is to differ.',
  onePedalForBothPush: 'One pedal for both: push it and see what each does.',
  sameFootSameTravel: 'Same foot, same travel',
  samePressure: 'Same pressure',
  inAShoeLocksAnd: (same: string, b: string) =>
    `${same}: in ${b} a shoe locks, and no force can be told.`,
  neitherBrakesYet: (same: string) => `${same}: neither brakes yet.`,
  aBrakesWithInB: (same: string, a: string) =>
    `${same}: A brakes with ${a}. In B the pedal is still closing the gap.`,
  bBrakesWithInA: (same: string, b: string) =>
    `${same}: B brakes with ${b}. In A the pedal is still closing the gap.`,
  bothBrakeWith: (same: string, a: string) => `${same}: both brake with ${a}.`,
  more: 'more',
  less: 'less',
  aBrakesWithBWith: (same: string, a: string, b: string, b2: string, more: string) =>
    `${same}: A brakes with ${a}, B with ${b}, ${b2} % ${more}.`,
  so: 'so: ',
  inAInB: 'in A, in B',
  nothingDiffers: 'Nothing differs',
  thingsDiffer: (causes: number) => `${causes} things differ`,
  oneThingDiffers: 'One thing differs',
  whatFollowsCannotBeLaid:
    'What follows cannot be laid to one of them alone. Change one thing at a time.',
  thisBrakeHasNoTwo: 'This brake has no two standing states to set side by side.',
  bAtTooth: (tooth: number) => `B at tooth ${tooth}`,
  on: 'on',
  back: 'back',
  bOneTooth: (on: string) => `B one tooth ${on}`,
  setAgainstEachOther: 'Set against each other',
  somethingElseInB: 'Something else in B',
  choose: 'choose…',
  swap: 'Swap',
  bOnTheBench: 'B on the bench',
  benchIsA: 'Bench is A',
  aIsKeptInEvery:
    'A is kept: in every other station it is drawn as a thin ghost over what stands there (key g keeps anew).',
  forgetIt: 'Forget it',
  compare: 'Compare',
  alike: 'Alike',
  pedalTravelMm: 'Pedal travel, mm',
  linePressureBar: 'Line pressure, bar',
  brakeTorqueNM: 'Brake torque, N·m',
  brakeFactor: 'Brake factor',
  clearanceNowFrontAndRear: 'Clearance now, front and rear, mm',
  clearanceAtRestMm: 'Clearance at rest, mm',
  figuresOfBoth: 'Figures of both',
  atThisPedal: 'At this pedal',
  controls: 'Controls',
  show: 'Show',
  theOnePedal: 'The one pedal',
  same: (x: 'pressure' | 'travel') => `Same ${x}`,
  onePedal: (at: unknown) => ['One pedal ', at],
  of40BarAAtMm: (a: string, b: string) => `40 bar: A at ${a} mm, B at ${b} mm.`,
  letGo: 'Let go',
  pressBoth: 'Press both',
});

/** ui/stations/compare/wants.ts */
export const compareWants = section('compareWants', {
  keptAsAGhost: 'kept as a ghost',
  keptMomentForgotten: 'kept moment forgotten',
  drawn: 'drawn',
  notDrawn: 'not drawn',
  keptMoment: (drawn: string) => `kept moment ${drawn}`,
  sideBySide: 'side by side',
  aForB: 'A for B',
  bOntoTheBench: 'B onto the bench',
  onePedalAt: (at: string, mm: string) => `one pedal at ${at} ${mm}`,
  same: (by: 'pressure' | 'travel') => `same ${by}`,
});

/** ui/stations/compare/words.ts */
export const compareWords = section('compareWords', {
  ways: { 1: 'forward', 0: 'stands', '-1': 'backward' },
  seized: 'seized',
  free: 'free',
  all: 'all',
  on: 'on',
  off: 'off',
  sides: { front: 'front', rear: 'rear' },
  noneOff: 'none',
  noFault: 'none',
  nothingOn: 'none',
  bend: 'bend',
  rigid: 'rigid',
  faultBuiltIn: 'Fault built in',
  drumTurning: (said: string) => said.replace(/^drum turns/, 'drum turning'),
  rubbingFaces: 'Rubbing faces',
  frontRear: (
    front: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet',
    rear: 'damp' | 'dry' | 'glazed' | 'greasy' | 'wet',
  ) => `${front} front, ${rear} rear`,
  bothStuck: 'both stuck',
  frontStuck: 'front stuck',
  rearStuck: 'rear stuck',
  bothFree: 'both free',
  extraFrictionOfACup: 'Extra friction of a cup, N',
  returnSprings: 'Return springs',
  drumOffCentreMm: 'Drum off centre, mm',
  drumOvalMm: 'Drum oval, mm',
  grooveInThePlateHolds: 'Groove in the plate holds, N',
  teethHold: 'Teeth hold',
  springOfTheAdjuster: 'Spring of the adjuster',
  aToothPassed: 'A tooth passed',
  stepsOut: 'steps out',
  doesNothing: 'does nothing',
  windsBack: 'winds back',
  pressureKeptInTheLine: 'Pressure kept in the line, bar',
  pullKeptByTheCable: 'Pull kept by the cable, N',
  pullLostInTheLevers: 'Pull lost in the lever’s pivot',
  playOfTheBearingMm: 'Play of the bearing, mm',
  leaningOnTheShoesN: 'Leaning on the shoes, N',
  returnSpringsUnhooked: 'Return springs unhooked',
  springOfTheStrut: 'Spring of the strut',
  holdDownsOff: 'Hold-downs off',
  waterRustGlazeAnd: (water: string, rust: string, front: string, rear: string) =>
    `water ${water}, rust ${rust}, glaze ${front} and ${rear}`,
  kindOfAdjuster: 'Kind of adjuster',
  hotLock: ', hot lock',
  drumTurns: 'Drum turns',
  liningsMm: 'Linings, mm',
  and: (left: string, left2: string) => `${left} and ${left2}`,
  drumDiameterMm: 'Drum Ø, mm',
  and2: (friction: string, friction2: string) => `${friction} and ${friction2}`,
  warmthC: 'Warmth, °C',
  onTheFaces: 'On the faces',
  cableHoldsTheLeverOff: 'Cable holds the lever off its stop, mm',
  theSame: 'the same',
  theSame2: (said: string) => `the same, ${said}`,
});

/** ui/stations/drum-off/complaints.ts */
export const drumOffComplaints = section('drumOffComplaints', {
  comesABitThenIts: 'Comes a bit, then it’s like a wall.',
  atItsLimit: 'At its limit',
  hitItAllDayNot: 'Hit it all day, not a hair.',
  cameOffLastYearAnd: 'Came off last year, and I only tightened the handbrake.',
  stoodAWetWeekOn: 'Stood a wet week on the handbrake. Now the wheel won’t turn.',
});

/** ui/stations/drum-off/controls.ts */
export const drumOffControls = section('drumOffControls', {
  setAnotherFault: 'Set another fault',
  whichIsMine: 'Which is mine?',
  howItIsFastened: 'How it is fastened',
  putItBackOn: 'Put it back on',
  pullTheDrum: 'Pull the drum',
  takeItApartInOrder: 'Take it apart, in order',
  turnIt: 'Turn it',
  rockIt: 'Rock it',
  slackenTheCable: 'Slacken the cable',
  controls: 'Controls',
});

/** ui/stations/drum-off/desk.ts */
export const drumOffDesk = section('drumOffDesk', {
  pulledStraight: 'Pulled straight …',
});

/** ui/stations/drum-off/fastening.ts */
export const drumOffFastening = section('drumOffFastening', {
  screwOrClip: 'Screw or clip',
  hubNut: 'Hub nut',
  howItIsFastened: 'How it is fastened',
  theLipAndTheShoes: (name: string) => `${name}. The lip and the shoes are the same behind each.`,
  kind: 'Kind',
  backToTheBrake: 'Back to the brake',
});

/** ui/stations/drum-off/faults.ts */
export const drumOffFaults = section('drumOffFaults', {
  less: (name: string) => `${name}: less`,
  more: (name: string) => `${name}: more`,
  yes: 'yes',
  no: 'no',
  front: 'front',
  rear: 'rear',
  mmToThe: (aside: string, aside2: string) => `${aside}\u00a0mm to the ${aside2}`,
  setAnotherFault: 'Set another fault',
  setOneOrMoreThen:
    'Set one or more, then pull, turn and rock. Each lock answers only to its own release.',
  faults: 'Faults',
  brakeAsItStands: 'Brake as it stands',
  chooseAState: 'choose a state…',
  orWhatItsDriverSays: 'Or what its driver says',
  chooseAComplaint: 'choose a complaint…',
  parkingLeverOffItsStop: 'Parking lever off its stop',
  shoesStandAside: 'Shoes stand aside',
  rustAtTheHub: 'Rust at the hub',
  liningsRustedOn: 'Linings rusted on',
  done: 'Done',
});

/** ui/stations/drum-off/index.ts */
export const drumOff = section('drumOff', {
  whereAHarderPullGoes: 'Where a harder pull goes, layers',
  sectionBB: 'Section B–B',
  theDrumIsOff: 'The drum is off',
  drumDrawnWornLipLine: (overlapTimes: number) =>
    `Drum drawn worn, lip line dashed · overlap ×${overlapTimes}, values in mm`,
  putItBackOn: 'Put it back on',
  pullTheDrum: 'Pull the drum',
});

/** ui/stations/drum-off/marks.ts */
export const drumOffMarks = section('drumOffMarks', {
  clear: 'Clear',
  holds: 'Holds',
});

/** ui/stations/drum-off/mine.ts */
export const drumOffMine = section('drumOffMine', {
  oneMore: 'One more',
  of: (indexOf: number, length: number) => `${indexOf} of ${length}`,
  question: 'Question',
  aServoBrakeOrA: 'A servo brake, or a drum inside a disc?',
  seeWhichKindYoursIs: 'See which kind yours is',
  oneBack: 'One back',
  isTheScrewOrClip: 'Is the screw or clip out? It is easily overlooked, and no pull beats it.',
  isTheHubNutOff:
    'Is the hub nut off? Drum, hub and bearing come off together. Undo it by hand and slowly; keep magnets and grit off the wheel-speed ring.',
  orderOfRelease: 'Order of release',
  backItOffStepBy: 'Back it off, step by step',
  toTheBrake: 'To the brake',
  likelyInTheOrderOf:
    'Likely, in the order of release. Try the drum after each; force is none of them.',
  noLockFitsAllYour:
    'No lock fits all your answers. Check the parking brake and the wheel bearing, then go one back.',
  whichIsMine: 'Which is mine?',
});

/** ui/stations/drum-off/nut.ts */
export const drumOffNut = section('drumOffNut', {
  hubNutInSectionLeft:
    'Hub nut in section. Left: its pressed threads grip the axle, it turns hard. Right: they have run off the axle’s end, it turns by the fingers.',
  pressedThreadsGrip: 'pressed threads grip',
  runOffTheEndFree: 'run off the end: free',
});

/** ui/stations/drum-off/part.ts */
export const drumOffPart = section('drumOffPart', {
  pairAside: 'pair aside',
  nothingHoldsTheDrumBesides: 'nothing holds the drum besides',
  leverMmOffItsStop: (leverOffStop: number) => `lever ${leverOffStop} mm off its stop`,
  cableSlackened: 'cable slackened',
  letGo: (lock: 'cable keeps its pull' | 'part leans on a shoe' | 'pressure in the line') =>
    `${lock}: let go`,
  aDriversWords: 'a driver’s words',
  aWornDrumToTry: 'a worn drum to try',
  toothTo: (tooth: number, tooth2: number) => `tooth ${tooth} to ${tooth2}`,
  liningsBrokenLoose: 'linings broken loose',
  atTheDrum: (what: string | undefined) => `${what} at the drum`,
  drumPutOn: 'drum put on',
  pageOfDrumOff: 'page of Drum off',
  howTheDrumIsFastened: 'how the drum is fastened',
  anAnswer: 'an answer',
  anAnswerTakenBack: 'an answer taken back',
});

/** ui/stations/drum-off/pull.ts */
export const drumOffPull = section('drumOffPull', {
  accessHole: 'Access hole',
});

/** ui/stations/drum-off/section.ts */
export const drumOffSection = section('drumOffSection', {
  sectionThroughRimLipAnd: (word: 'centre' | 'heel' | 'toe') =>
    `Section through rim, lip and lining at the ${word}, steps ten times as high`,
});

/** ui/stations/drum-off/side.ts */
export const drumOffSide = section('drumOffSide', {
  drawnOffItsStopBy: 'drawn off its stop by the kept pull',
  backOnItsStop: 'back on its stop',
  offItsStopSlackClears: (off: string, leverHome: string) =>
    `${off} off its stop; slack clears it by ${leverHome}`,
  offItsStopSlackGives: (off: string, by: string) => `${off} off its stop; slack gives ${by}`,
  noneYetTheDrumIs: 'none yet: the drum is not worn',
  pushedOutByWhatIs: ', pushed out by what is left',
  overlapsByUpToMm: (overlapText: string, some: string) =>
    `overlaps by up to ${overlapText}\u00a0mm${some}`,
  passesWithInHand: (greatest: string) => `passes with ${greatest} in hand`,
  whatHoldsIt: 'What holds it?',
  holdsTheDrumNoTooth: 'holds the drum; no tooth frees it',
  lipOnTheDrum: 'Lip on the drum',
  furtherOutThanItClicks: 'further out than it clicks by itself',
  parkingLever: 'Parking lever',
  front: 'front',
  rear: 'rear',
  still: (centred: string) => `still ${centred}`,
  itClearsBy: (centred: string) => `it clears by ${centred}`,
  standToTheCentred: (aside: string, aside2: string, centred: string) =>
    `stand ${aside} to the ${aside2}; centred, ${centred}`,
  hubFit: 'Hub fit',
  rustedOnNoSlideNo: 'rusted on: no slide, no rocking',
  freeNoRustRing: 'free, no rust ring',
  liningToDrum: 'Lining to drum',
  rustedOnAboutNM: (forward: string) => `rusted on: about ${forward}\u00a0N·m to break`,
  notStuck: 'not stuck',
  backOffTheAdjuster: 'Back off the adjuster',
  evenAllOfItIs: '; even all of it is not enough',
  noneNeeded: '; none needed',
  drumComesOffAt: 'Drum comes off at',
  pullHarder: 'Pull harder?',
  soLittleIsCaughtThat:
    'So little is caught that the lining’s edge would give way under the hands. Back off the last tooth all the same: crumbs stay in the brake, and the next pull may catch more.',
  theLiningsEdgeCrumbles: 'the lining’s edge crumbles',
  aHoldDownPinStretches: 'a hold-down pin stretches',
  aPullersGoesThroughLip: (
    puller: string,
    onShoe: string,
    pinStress: string,
    edgePressure: string,
    givesAt: string,
    gives: string,
  ) =>
    `A puller’s ${puller} goes through lip, lining and shoe into the hold-down pins: ${onShoe} each, ${pinStress}\u00a0MPa in the pin and ${edgePressure}\u00a0MPa on the lining’s edge. From somewhere about ${givesAt} ${gives} (strengths: their order only). The hub feels none of it.`,
  toe: 'toe',
  centre: 'centre',
  heel: 'heel',
  now: 'now',
  sectionBB: 'Section B–B',
  lip: 'Lip',
  holdsTheByMm: (lip: unknown, word2: 'centre' | 'heel' | 'toe', overlapText: unknown) => [
    lip,
    ' holds the ',
    word2,
    ' by ',
    overlapText,
    '\u00a0mm',
  ],
  clearByMm: (greatest: unknown) => ['clear by ', greatest, '\u00a0mm'],
  none: 'none',
  sectionBBSteps10: 'section B–B, steps ×10',
  anUnwornDrumHasNo: 'An unworn drum has no lip.',
  theHeelIsLastTo: ' The heel is last to clear: it lies nearest its pin, so it moves least.',
  theLipMeetsTheEdge: (word: string) => `The lip meets the edge of the lining.${word}`,
  theLiningPassesTheLip: 'The lining passes the lip.',
  atTheOfTheLining: (bB: unknown, word2: 'centre' | 'heel' | 'toe', roleWord: string) => [
    bB,
    ' at the ',
    word2,
    ' of the ',
    roleWord,
    ' lining, steps ×10',
  ],
  tryAWornDrum: 'Try a worn drum',
  drumOff: 'Drum off',
});

/** ui/stations/drum-off/words.ts */
export const drumOffWords = section('drumOffWords', {
  heldBy: {
    lip: 'The drum is held by the lip',
    'lever off its stop': 'The drum is held by the lip, because the lever is off its stop',
    'shoes not centred': 'The drum is held by the lip, because the shoes stand aside',
    'adjuster too far out': 'The drum is held by the shoes: the adjuster is too far out',
    'pressure in the line': 'The drum is held by the shoes: pressure stays in the line',
    'cable keeps its pull': 'The drum is held by the shoes: the cable keeps its pull',
    'part leans on a shoe': 'The drum is held by a shoe that a part leans on',
    'rust at the hub': 'The drum is held by rust at the hub',
    'linings rusted on': 'The drum is held by the linings: they are rusted on',
  },
  nothingHoldsItTheLinings: (greatest: string) =>
    `Nothing holds it. The linings pass the lip with ${greatest} in hand.`,
  nothingHoldsItThisDrum: 'Nothing holds it. This drum is not worn: it has no lip.',
  wouldBeCaughtByBesides: (greatest: string) => `would be caught by ${greatest} besides`,
  passTheLipWithIn: (greatest: string) => `pass the lip with ${greatest} in hand`,
  rustHoldsItAtThe: (greatest: string) => `Rust holds it at the hub. The linings ${greatest}.`,
  theLiningsAreRustedOn: 'The linings are rusted on to the drum. It neither turns nor comes.',
  noToothFreesItWhile: (heldBy: string) => `${heldBy}. No tooth frees it while that force is left.`,
  theShoesPressOnThe: 'The shoes press on the drum from inside. Pulled straight, it does not move.',
  theLiningsRestOutsideThe:
    'The linings rest outside the lip. Pulled straight, the drum cannot pass.',
  turned: {
    freely: 'It turns freely.',
    lightly: 'It turns, and drags lightly both ways.',
    stiffly: 'It turns hard both ways.',
    'not at all': 'It does not turn.',
  },
  itFreesWithOneJerk: (forward: string) =>
    `It frees with one jerk, at about ${forward}\u00a0N·m, and turns.`,
  itDoesNotTurnThe: (forward: string) =>
    `It does not turn. The rust would hold about ${forward}\u00a0N·m.`,
  itRocksALittleOn: 'It rocks a little on its hub: the fit is free.',
  itDoesNotRockNot: 'It does not rock, not a hair.',
  theDrumIsOffIt: (greatest: string) =>
    `The drum is off. It passed the lip with ${greatest} in hand.`,
  theDrumIsOff: 'The drum is off.',
  itDoesNotSlideAt: (heldBy: string) => `${heldBy}. It does not slide at all.`,
  itSlidesMmSpringsAnd: (heldBy: string, slide: string) =>
    `${heldBy}. It slides ${slide}\u00a0mm, springs, and stops.`,
  leverOffItsStopName: 'Parking lever off its stop',
  leverOffItsStopHow:
    'Let the hand lever down, then slacken the cable at its adjuster until the parking lever rests on its stop. It costs nothing; set the cable again last of all.',
  leverOffItsStopButton: 'Slacken',
  pressureInTheLineName: 'Pressure in the line',
  pressureInTheLineHow:
    'Open the bleed point of this wheel a little, a hose on it into a jar. If the drum comes free, a hose or the master cylinder has kept the pressure: see to that, and bleed afterwards.',
  pressureInTheLineButton: 'Bleed',
  cableKeepsItsPullName: 'Cable keeps its pull',
  cableKeepsItsPullHow:
    'Slackening it at the hand lever changes nothing where it has seized in its sheath. Draw the inner cable back out of its sheath, or unhook it, until the parking lever is home. It needs a new cable.',
  cableKeepsItsPullButton: 'Unhook',
  partLeansOnAShoeName: 'A part leans on a shoe',
  partLeansOnAShoeHow:
    'One shoe stands out on the drum and the other hangs free. Push the drum sideways against the shoe that bears, or that shoe home through the access hole, while somebody draws the drum; then find the part: piston, lever, edge on its pad.',
  partLeansOnAShoeButton: 'Push home',
  shoesNotCentred: {
    name: 'Shoes not centred',
    how: 'Turn the drum a little each way while you press it home, then pull it straight, not askew. The shoes settle where the drum lets them.',
    caution: 'Keep fingers out of the gap between drum and plate.',
    button: 'Centre',
  },
  lipName: 'Lip on the drum',
  lipHow:
    'Back the adjuster off through the access hole. Toothed lever: lift it off its teeth, then turn it back. Star wheel: hold its lever away and turn the wheel back. Wedge: push it up. A little at a time; try the drum after each, and judge drum and lining once it is off.',
  lipButton: 'Back off',
  adjusterTooFarOutName: 'Adjuster too far out',
  adjusterTooFarOutHow:
    'Lift the toothed lever off its teeth through the access hole and turn it back, or turn the star wheel back, or push the wedge up, until the drum turns free. A hot drum may have let it step too far: ask about long descents, and look at the hot lock.',
  rustAtTheHub: {
    name: 'Rust at the hub',
    how: 'Clean round the hub, let penetrant creep in, wait. If the drum has threaded holes, turn a screw into each by turns, a little at a time. It lets go with a crack.',
    caution:
      'Wear eye protection. No flame and no heat near brake fluid; keep penetrant off the linings.',
    button: 'Free it',
  },
  liningsRustedOn: {
    name: 'Linings rusted on',
    how: 'Turn the drum to and fro with a bar across two wheel nuts, the parking brake off. It breaks loose once, with a jerk, and then turns.',
    caution:
      'Stand clear of the bar. Do not drag the vehicle with a locked wheel; do not park wet on the lever.',
    button: 'Break loose',
  },
  studs: {
    name: 'Slipped over the studs',
    steps: [
      'Take the wheel off. A thin spring nut on a stud only held the drum while the vehicle was built: take it off too.',
      'Mark stud and drum, so that it goes back as it was.',
      'Slacken cable and adjuster as far as they need, then pull the drum straight.',
      'Before it goes back: both faces of the flange clean and dry. Dirt there sets the drum off centre.',
    ],
    caution:
      'Threaded holes in the drum take screws that press it off evenly. Turn them by turns; never strike the rim.',
  },
  screw: {
    name: 'Held by a screw or a clip',
    steps: [
      'Take the wheel off, then the small countersunk screw or the clip between the studs. It is easily overlooked, and no pull beats it.',
      'Clean its slot and seat the bit squarely; a blow on the bit end-on breaks the rust. If it spins in its head, drill the head off.',
      'Slacken cable and adjuster as far as they need, then pull the drum straight.',
      'Before it goes back: a new screw, hand-tight and a little more. It only holds the drum while the wheel is off.',
    ],
    caution: 'Eye protection for blows and drilling; chips and dust stay out of the brake.',
  },
  nutName: 'One piece with hub and bearing',
  nutSteps: [
    'Take off the dust cap and free the hub nut; its collar may be pressed into a groove of the axle.',
    'Undo the nut by hand with a long bar, slowly. It turns hard only to its last turns, then runs off by the fingers.',
    'Draw drum, hub and bearing off together, straight, and lay them on clean paper.',
    'Wheel-speed ring on the bearing: keep magnets, tools that are magnetic and iron grit away from it. Never wipe it with a dirty cloth.',
    'Back on: the nut the maker asks for, tightened by hand to the maker’s figure while the hub turns.',
  ],
  whyDoesItTurnHard: 'Why does it turn hard only to its last turns?',
  itsOuterThreadsArePressed:
    'Its outer threads are pressed out of round on purpose and grip the axle’s thread. Undoing, they grip until they have run off the axle’s end; putting on, the nut runs easily until they come on.',
  whyByHandAndSlowly: 'Why by hand and slowly?',
  theGrippingThreadsRubUnder:
    'The gripping threads rub under load. Turned fast they grow hot, seize and tear, and then the axle’s thread goes with them.',
  whyDoesTheMakerSay: 'Why does the maker say how often it may be reused?',
  eachTimeOnAndOff:
    'Each time on and off flattens the pressed threads a little, so it grips less. Many makers ask for a new one every time.',
  nutCaution:
    'This nut holds the wheel. Type, torque and how often it may be used again are the maker’s figures; a wheel bearing set wrong can run off.',
  fasteningAsk: 'How is your drum fastened?',
  fasteningHint: 'Look at its face with the wheel off.',
  itSitsOverTheWheel: 'It sits over the wheel studs, nothing else',
  aSmallScrewOrA: 'A small screw or a clip holds it as well',
  aBigNutInThe: 'A big nut in the middle, under a cap',
  turnsAsk: 'Does it turn by hand?',
  turnsHint: 'Wheel chocked elsewhere, parking brake off, gear out.',
  yesFreely: 'Yes, freely',
  itTurnsButDragsBoth: 'It turns but drags, both ways',
  itDragsMuchStifferOne: 'It drags, much stiffer one way than the other',
  noOrOnlyWithGreat: 'No, or only with great force',
  slidesAsk: 'Pull it straight, by both edges. Does it come?',
  slidesHint: 'A few millimetres count.',
  aFewMillimetresThenIt: 'A few millimetres, then it stops',
  notAHairAndIt: 'Not a hair, and it does not rock',
  slackAsk: 'Slacken the parking cable fully and try again.',
  slackHint: 'The parking lever must reach its stop behind the plate.',
  thatChangedItFreerOr: 'That changed it: freer, or further',
  noChange: 'No change',
  iCannotGetAtIt: 'I cannot get at it, or cannot tell',
  holeAsk: 'Is there an access hole to the adjuster?',
  holeHint:
    'A rubber plug behind the plate, a knock-out pressed into it, or a hole in the drum’s face that can be turned to the adjuster.',
  yesThereIsOne: 'Yes, there is one',
  noAccessHole: 'No access hole',
  noHole:
    'No access hole: the adjuster cannot be reached from outside. Let the cable quite slack, at this wheel too. Press the drum home, turn it, draw it straight, over and over, so that the shoes settle. What then still holds it is under “Last of all”. A knock-out in the plate is opened only where the maker has marked it, and closed with a plug.',
  lastResort:
    'Last of all, where nothing lets go: the hold-down pins can be cut behind the plate and drum and shoes drawn off together. It costs pins, springs and often the linings; look for the other lock first.',
});

/** ui/stations/faults/browse.ts */
export const faultsBrowse = section('faultsBrowse', {
  groups: {
    Adjuster: 'Adjuster',
    'Cable and lever': 'Cable and lever',
    'Springs and pistons': 'Springs and pistons',
    Friction: 'Friction',
    Drum: 'Drum',
  },
  chooseAFaultHereStands: 'Choose a fault: here stands what it does to the workshop’s readings.',
  readingsBeforeAndAfter: 'Readings before and after',
  reading: 'Reading',
  sound: 'Sound',
  withTheFault: 'With the fault',
  asSound: 'as sound',
  ofRigidShoesTillThe: 'Of rigid shoes, till the van’s linings are bedded in under ones that bend.',
  takingTheReadings: 'Taking the readings…',
  noneOfTheWorkshopsReadings: 'None of the workshop’s readings shows it; see what tells it apart.',
  notShownInThisView: 'Not shown in this view',
  onOneWheelTheRight: '; on one wheel, the right',
  onBothWheels: '; on both wheels',
  howItWorks: 'How it works',
  whatTellsItApart: 'What tells it apart',
  remedy: 'Remedy',
  lookAlikesEachWithThe: 'Look-alikes, each with the cheapest reading that parts it',
  here: 'here',
  there: 'there',
  noReadingOfThisList: 'No reading of this list parts the two.',
  comparing: 'Comparing…',
  takeItOut: 'Take it out',
  fault: 'Fault',
  chooseAFault: 'choose a fault…',
  previous: 'Previous',
  next: 'Next',
});

/** ui/stations/faults/desk.ts */
export const faultsDesk = section('faultsDesk', {
  nothingElseWasLeft: 'Nothing else was left.',
  name: 'name',
  names: 'names',
  rightWithOtherNotYet: (left: number, name: string) =>
    `Right, with ${left} other ${name} not yet ruled out.`,
});

/** ui/stations/faults/find-board.ts */
export const faultsFindBoard = section('faultsFindBoard', {
  withTheDrumOff: 'with the drum off',
  withTheWheelsUp: 'with the wheels up',
  takeIt: (name: string) => `Take it: ${name}`,
  takeIt2: 'Take it',
  theDriverSays: 'The driver says',
  quayVanKmDrivenIn: (km: string) =>
    `Quay van, ${km} km, driven in this morning · nearside is the left`,
  readings: 'Readings',
  reading: 'Reading',
  minutes: 'Minutes',
  found: 'Found',
});

/** ui/stations/faults/find-side.ts */
export const faultsFindSide = section('faultsFindSide', {
  wouldRead: (line: string) => `would read ${line}`,
  notThatOne: 'Not that one',
  takeItAndSee: ': take it and see',
  readingRulesItOut: (placeOf: number, nameOf: string, taken: unknown) => [
    'reading ',
    placeOf,
    ', ',
    nameOf,
    ', rules it out',
    taken,
    '.',
  ],
  nothingHereSpeaksForIt: 'nothing here speaks for it.',
  overPar: (over: number) => `${over} over par`,
  underPar: (over: number) => `${over} under par`,
  par: 'par',
  minutes: (text: string, minutes: number, overPar: string) =>
    `${text} ${minutes} minutes, ${overPar}.`,
  remedy: 'Remedy',
  cheapestWay: 'Cheapest way',
  minutes2: (cheapestWay: unknown, minutes2: number, taken: string) => [
    cheapestWay,
    ' ',
    minutes2,
    ' minutes: ',
    taken,
    '.',
  ],
  showTheCheapestWay: 'Show the cheapest way',
  workshopMinutes: 'Workshop minutes',
  minutesPar: (minutes: number, par: number) => `${minutes} minutes, par ${par}`,
  par2: (par: number) => `par ${par}`,
  stillPossible: 'Still possible',
  ruledOut: 'Ruled out',
  ofRigidShoesTillThe: 'Of rigid shoes, till the van’s linings are bedded in under ones that bend.',
  workedOut: 'Worked out…',
  hint: 'Hint',
  itPartsMostNamesFor: (hint: unknown, placeOf2: number, name: string) => [
    hint,
    ' ',
    placeOf2,
    ' ',
    name,
    ': it parts most names for its minutes.',
  ],
});

/** ui/stations/faults/on-paper.ts */
export const faultsOnPaper = section('faultsOnPaper', {
  quoted: (said: string) => `“${said}”`,
  findTheFaultVan: (number: number) => `Find the fault: van ${number}`,
  findTheFault: 'Find the fault',
  theDriverSays: 'The driver says:',
  faultLog: 'fault log',
  asks: ['Name', 'Date'],
  no: 'No.',
  reading: 'Reading',
  minutes: 'Minutes',
  found: 'Found',
  soItIsNot: 'So it is not',
  stillPossible: 'Still possible',
  iNameIt: 'I name it',
  becauseReading: 'because reading',
  minutesInAll: 'Minutes in all',
  cheapestWayToBeSure: 'Cheapest way to be sure',
});

/** ui/stations/faults/part.ts */
export const faultsPart = section('faultsPart', {
  justClicked: 'Just clicked',
  fault: (faultNames: string) => `fault ${faultNames}`,
  faultTakenOut: 'fault taken out',
  van: (van: number) => `van ${van}`,
  findTheFault: 'find the fault',
  browseFaults: 'browse faults',
  anotherVan: 'another van',
  reading: (name: string) => `reading: ${name}`,
  aNamePicked: 'a name picked',
  aNameGiven: 'a name given',
  aHint: 'a hint',
  theCheapestWay: 'the cheapest way',
});

/** ui/stations/faults/station.ts */
export const faultsStation = section('faultsStation', {
  findTheFault: 'Find the fault',
  whichReadingPartsTheNames: 'Which reading parts the names that are left? Take the cheapest.',
  faults: 'Faults',
  eachIsAChangeOf:
    'Each is a change of one size or state. It is on the bench: press the pedal in Apply to feel it.',
  eachIsAChangeOf2:
    'Each is a change of one size or state. Choose one: it comes on the bench in the place of yours, and leaves again.',
  hint: 'Hint',
  giveMeAHint: 'Give me a hint',
  anotherVan: 'Another van',
  nameIt: 'Name it',
  nameTheFault: 'Name the fault',
  controls: 'Controls',
  mode: 'Mode',
});

/** ui/stations/faults/text.ts */
export const faultsText = section('faultsText', {
  noChange: 'no change',
  theSame: 'the same',
  rigid: (text: string) => `rigid: ${text}`,
});

/** ui/stations/faults/van-picture.ts */
export const faultsVanPicture = section('faultsVanPicture', {
  vanFromAboveLeftRear: (a: string, b: string) => `Van from above: left rear ${a}, right rear ${b}`,
  vanFromAbove: 'Van from above',
  front: 'front',
  left: 'left',
  right: 'right',
});

/** ui/stations/hands-button.ts */
export const handsButton = section('handsButton', {
  takeHoldOfTheParts: 'Take hold of the parts',
  hands: 'Hands',
});

/** ui/stations/hands/index.ts */
export const hands = section('hands', {
  shoesMovementsAndGaps: (large: number) => `Shoes’ movements and gaps ×${large}`,
  drumOffTrueScalePress: 'Drum off, true scale: press a part and pull',
  trueScalePressAPart: 'True scale: press a part and pull',
});

/** ui/stations/hands/pad.ts */
export const handsPad = section('handsPad', {
  newtons: (force: string) => `${force} newtons`,
  nothingHeld: 'nothing held',
  pullOfTheHand: 'Pull of the hand',
  arrowsPull: 'arrows pull',
  drawOrArrows: 'draw, or arrows',
});

/** ui/stations/hands/side.ts */
export const handsSide = section('handsSide', {
  strutForce: 'Strut force',
  strutLetGo: 'Strut, let go',
  toeMoved: (s: 'front' | 'rear') => `Toe moved, ${s}`,
  offTheStrut: 'Off the strut',
  secondHand: 'Second hand',
  offItsToothsRoot: 'Off its tooth’s root',
  toHoldItWhenFree: 'To hold it when free',
  hookMoved: 'Hook moved',
  offItsToe: 'Off its toe',
  fluidGoneHome: 'Fluid gone home',
  leftOnTheToe: 'Left on the toe',
  drumOut: 'Drum out',
  thatSideOut: 'That side out',
  theLipBears: 'The lip bears',
  shoesOffTheirPads: 'Shoes off their pads',
  torqueOfTheHand: 'Torque of the hand',
  dragOfTheLinings: 'Drag of the linings',
  readings: 'Readings',
  offTookN: (takes: string) => `off; took ${takes} N`,
  takesNStoresJ: (takes: string, stored: string) => `takes ${takes} N, stores ${stored} J`,
  hookOnThe: (name: string) => `Hook on the ${name}`,
  unhookThe: (name: string) => `Unhook the ${name}`,
  hookOn: 'Hook on',
  unhook: 'Unhook',
  putOn: 'Put on',
  takeOff: 'Take off',
  holdDown: (side: 'front' | 'rear') => `Hold-down, ${side}`,
  offTheShoeLeansFree: 'off: the shoe leans free',
  pressWithNAndTurn: (takes: string) => `press with ${takes} N and turn`,
  theHoldDown: (does: string, side: 'front' | 'rear') => `${does} the ${side} hold-down`,
  noWayForTheDrum: 'No way for the drum',
  windBack: (back: number) => `Wind back ${back}`,
  takeHoldOf: 'Take hold of',
  choose: '↑ ↓ choose',
  theDrumStaysOnSee: (lock: string) => `The drum stays on: ${lock}. See Drum off.`,
  springsAndHoldDownsWith: 'Springs and hold-downs: with the drum off.',
  hands: 'Hands',
  backTo: (stationNames: string) => `Back to ${stationNames}`,
  handScaleAndDrum: 'Hand, scale and drum',
  movementsOfTheShoes: 'Movements of the shoes',
  drumOn: 'Drum on',
  controls: 'Controls',
  esc: 'Esc',
  letGo: (esc: unknown) => ['Let go ', esc],
});

/** ui/stations/hands/stage.ts */
export const handsStage = section('handsStage', {
  fist: (key: string) => `${key} fist`,
  ofBar1: (limit: string, bararms: number) => `of ${limit}, bar ${bararms}:1`,
  ofAHands: (limit: number) => `of a hand’s ${limit}`,
  handForce: 'hand force',
  handLimit: 'hand limit',
  hand: (i: number) => `hand ${i}`,
});

/** ui/stations/hands/words.ts */
export const handsWords = section('handsWords', {
  pull: 'pull',
  frontShoe: 'Front shoe',
  pullPushAnywhereOnIt: 'pull, push, anywhere on it',
  rearShoe: 'Rear shoe',
  bothToes: 'Both toes',
  spreadPressTogether: 'spread, press together',
  itsPlay: 'its play',
  toothedLever: 'Toothed lever',
  liftItTurnItBack: 'lift it, turn it back',
  parkingLever: 'Parking lever',
  pullAtTheHook: 'pull at the hook',
  frontPiston: 'Front piston',
  pushBackFluidGoes: 'push back: fluid goes',
  rearPiston: 'Rear piston',
  turnToAndFroFeel: 'turn to and fro, feel the drag',
  drumStraight: 'Drum, straight',
  pullItOffItsStuds: 'pull it off its studs',
  drumOneSide: 'Drum, one side',
  rockItAgainstItsLip: 'rock it against its lip',
  tells: {
    'front shoe':
      'Strut and springs bring the other shoe along, until a lining meets the drum. Let go, the pair stays there.',
    'rear shoe':
      'Strut and springs bring the other shoe along, until a lining meets the drum. Let go, the pair stays there.',
    'both toes':
      'Two hands part the toes from the strut only when they beat its clamp. Pressed together nothing gives: the strut takes it.',
    strut: 'It lies clamped between the shoes: pull it, and the pair goes along.',
    'adjuster lever':
      'Pulled up its slot it leaves its teeth: then nothing but the hand holds the strut’s length, and it turns back tooth by tooth. Let go, it drops in where it is.',
    'parking lever':
      'It turns once the pull beats the springs, and presses the strut with many times what the hand gives.',
    cable: 'It pulls the lever’s hook, and only pulls.',
    'front piston':
      'Pushed back it leaves its toe: cup and pressure push against it, fluid goes home.',
    'rear piston':
      'Pushed back it leaves its toe: cup and pressure push against it, fluid goes home.',
    'drum pulled':
      'Towards you it slides until its lip meets the linings: then you lift both shoes off their pads against their hold-downs.',
    'drum rocked':
      'Pulled at one side of its rim it turns about the other: the shoe of that side has your whole pull.',
    drum: 'Turn it round, or to and fro. What you feel is the drag of the linings and the weight that has to be started.',
  },
});

/** ui/stations/inspect/book.ts */
export const inspectBook = section('inspectBook', {
  foundAllowed: (path: string, found: string, allowed: string) =>
    `${path}: found ${found}; allowed: ${allowed}`,
  sheetsAreKeptSaveThem: (most: number) =>
    `${most} sheets are kept. Save them as a file and take some out first.`,
  wasNotReadNothingHas: (name: string, other: string) =>
    `${name} was not read; nothing has changed. ${other}`,
  sheetsFoundAllowedAList: (a: string) => `sheets: found ${a}; allowed: a list`,
  nothingWord: 'nothing',
  versionFoundAllowed: (stringify: string, version: number) =>
    `version: found ${stringify}; allowed: ${version}`,
  wasNotReadNothingHas2: (name: string) => `${name} was not read; nothing has changed.`,
  sheetsFoundMoreThanAre: (i: number, most: number) =>
    `sheets.${i}: found more than are kept; allowed: ${most}`,
  whatCouldNotBeRead: ' What could not be read is told below; it is still in the file.',
  hereAlready: (there: number) => `, ${there} here already`,
  takenIn: (name: string, plural: string, hereAlready: string, bad: string) =>
    `${name}: ${plural} taken in${hereAlready}.${bad}`,
});

/** ui/stations/inspect/cut.ts */
export const inspectCut = section('inspectCut', {
  noneSetNoVerdict: 'none set, no verdict',
  tooFar: (up: string) => `${up} too far`,
  left: (down: string) => `${down} left`,
  found: (wheel: 'left' | 'right') => `${wheel}, found`,
  of2Score: (score: string) => `2 × score ${score}`,
  boreAfterTheCut: 'bore after the cut',
  toTheMark: 'to the mark',
  toTheMachiningLimit: 'to the machining limit',
  cutItOrRenewIt: 'Cut it or renew it',
  cutItOrRenewIt2: 'Cut it or renew it?',
  boreAfterACut: (each: string, title: string, why: string) =>
    `Bore after a cut: ${each}. ${title}. ${why}`,
});

/** ui/stations/inspect/desk.ts */
export const inspectDesk = section('inspectDesk', {
  notLoadedAPlaceOn: 'Not loaded: a place on the sheet cannot be read.',
  notLoadedNothingIsMeasured: (wheel: 'left' | 'right') =>
    `Not loaded: nothing is measured on the ${wheel} wheel yet.`,
  notLoadedTheSheetStays: 'Not loaded. The sheet stays as it is.',
  foundAllowed: (placeName: string, found: string, allowed: string) =>
    `${placeName}: found ${found}; allowed ${allowed}.`,
  theBrakeOnTheBench:
    'The brake on the bench has another drum. My brake puts one of your sizes there.',
  theStageShowsTheWheel: (wheel: 'left' | 'right', tooth: number, notes: string) =>
    `The stage shows the ${wheel} wheel as measured, tooth ${tooth}. ${notes}`,
  foundAllowed2: (placeOf: string, found: string, allowed: string) =>
    `${placeOf}: found ${found}; allowed ${allowed}.`,
});

/** ui/stations/inspect/history.ts */
export const inspectHistory = section('inspectHistory', {
  leadingLining: 'Leading lining',
  trailingLining: 'Trailing lining',
  mmAtKmMmAt: (
    nameOf: string,
    before: number,
    km: number,
    after: number,
    km2: number,
    limit: number,
  ) => `${nameOf}: ${before} mm at ${km} km, ${after} mm at ${km2} km, limit ${limit} mm`,
  max: 'max',
  each: (rate: string) => `${rate} mm in 1\u202f000 km`,
  newPartsBetweenNoRate: 'new parts between, no rate',
  noMoreLostThanThe: 'no more lost than the gauge may be off by',
  nothingWasMeasuredOnBoth: 'Nothing was measured on both sheets.',
  whereNoLimitIsSet: '. Where no limit is set, no distance is told',
  toKm: (least: string, most: string) => `${least} to ${most} km`,
  kmOrMuchMore: (least: string) => `${least} km, or much more`,
  mmIn1000Km: (nameOf: string, rate: string) => `${nameOf}: ${rate} mm in 1\u202f000 km.`,
  toTheLimitOfAbout: (limit: string, whose: string, as: string, to: unknown, error: string) => [
    'To the limit of ',
    limit,
    whose,
    ' about ',
    as,
    ' km more: ',
    to,
    ', with each reading off by ',
    error,
    ' one way or the other.',
  ],
  aDayThatCannotBe: 'a day that cannot be told yet',
  atThePaceSoFar: (writtenDay: unknown, piece: unknown) => [
    'At the pace so far that is between ',
    writtenDay,
    ' and ',
    piece,
    '.',
  ],
  by: (writtenDay: string) => `by ${writtenDay}, `,
  nextLookAtKm: (day: string, odometer: string) => `Next look ${day}at ${odometer} km`,
  halfOfTheShorterWay: (day: unknown) => [
    day,
    ': half of the shorter way. The maker’s interval, if it is sooner.',
  ],
  kmOrMoreLeft: (least: string) => `; ${least} km or more left`,
  historyOfSheets: 'History of sheets',
  history: (vehicle: string) => `History${vehicle}`,
  itIs: 'it is',
  theyAre: 'they are',
  ofTheKeptSheetsCannot: (length: number, itIs: string) =>
    `${length} of the kept sheets cannot be read; ${itIs} still in this browser and in a saved file.`,
  typeVehicleDateAndOdometer:
    'Type vehicle, date and odometer, then keep the sheet. Two sheets of one vehicle tell how fast it wears.',
  oneSheetTheNextOne: 'One sheet: the next one tells the rate.',
  theLastTwoSheetsHave: 'The last two sheets have the same odometer: no rate can be told.',
  takeItOut: 'Take it out',
  leaveIt: 'Leave it',
  liesHere: 'Lies here',
  openIt: 'Open it',
  theSheetOf: (liesHere: string, written: string) => `${liesHere}: the sheet of ${written}`,
  takeOutTheSheetOf: (written: string) => `Take out the sheet of ${written}`,
  takeOut: 'Take out',
  otherVehiclesKeptHereType: (vehicles: string) =>
    `Other vehicles kept here: ${vehicles}. Type one of these names as the vehicle.`,
  keepThisSheet: 'Keep this sheet',
  putBackTheSheetOf: (written: string) => `Put back the sheet of ${written}`,
  saveAllSheets: 'Save all sheets',
  readAFileOfSheets: 'Read a file of sheets',
  keptInThisBrowserOn:
    'Kept in this browser, on this device; a saved file keeps them elsewhere. Photo notes are in no file.',
});

/** ui/stations/inspect/hows.ts */
export const inspectHows = section('inspectHows', {
  drumHow:
    'Inside gauge or drum micrometer, a third of the width in from the edge. Mark the drum, turn the gauge by 60° each time.',
  liningHow:
    'Lining only, without the steel table; on a riveted one down to the rivet head. Steel rule, depth gauge or caliper.',
  firstOfAllWhichDrum:
    'First of all: which drum is it? From the parts list, or at the unworn edge outside the lip with an inside caliper.',
  castOrStampedOnThe:
    'Cast or stamped on the drum itself, “max dia” or “discard”: the largest Ø allowed. No drum is judged without it.',
  theMakersFigureForA:
    'The maker’s figure for a cut, from the service data: under the mark, so that something is left to wear. Leave it out if nobody tells it.',
  theSameGaugeNearThe:
    'The same gauge, near the closed end of the swept face. Tells a bore that widens inwards.',
  theLargestOfThoseAbove:
    'The largest of those above. The limit is the maximum cast on the drum itself.',
  greatestLessLeastOfThe:
    'Greatest less least of the angles. Two readings should be the greatest and the least.',
  stepFromTheSweptFace:
    'Step from the swept face to the unworn edge: depth gauge, or half of swept Ø less edge Ø.',
  ruleAcrossTheBoreAnd:
    'Rule across the bore and a feeler in the groove, or a depth gauge. A fingernail only sorts. 0 where there is none.',
  leadingIsTheShoeTowards: (liningHow: string) =>
    `Leading is the shoe towards the front of the vehicle. At the cylinder’s end. ${liningHow}`,
  lookAlongTheWholeArc: (liningHow: string) => `Look along the whole arc for it. ${liningHow}`,
  atTheEndWhereThe: (liningHow: string) => `At the end where the shoe is held. ${liningHow}`,
  atTheCylindersEnd: (liningHow: string) => `At the cylinder’s end. ${liningHow}`,
  byEyeAndLampCracks:
    'By eye and lamp: cracks, deep scores, loose rivets, edges lifting, any trace of fluid or grease.',
  liftTheEdgeOfEach:
    'Lift the edge of each dust boot with a blunt pick. Any wet behind it is a leak.',
  coilsClosedHooksWholeNo:
    'Coils closed, hooks whole, no rust pits. Dropped on the bench a sound spring thuds, a tired one rings.',
  countTheTeethThatThe: 'Count the teeth that the lever has passed, from the shortest setting.',
  liftTheLeverMoveIt:
    'Lift the lever, move it by hand, let go: it must slide freely and hold each tooth.',
  gapAtTheCablesHook:
    'Gap at the cable’s hook until the parking lever rests on its stop: 0 when home. Steel rule or feeler.',
  countTheClicksToA: 'Count the clicks to a firm hold before anything is touched.',
  theSamePullWhenAll: 'The same pull, when all is back together.',
  whatItShowsTodayWith:
    'What it shows today. With two kept sheets of a vehicle it tells how fast it wears.',
  fromTheServiceBookWithout: 'From the service book. Without it no distance left can be told.',
  newDiameterWhenLeftOut: 'New diameter when left out.',
  newThicknessWhenLeftOut: 'New thickness when left out, where the limits’ owner tells it.',
});

/** ui/stations/inspect/index.ts */
export const inspect = section('inspect', {
  inWord: (value: string) => ` · ${value} in`,
  foundAllowed: (found: string, allowed: string) => `found ${found}; allowed ${allowed}`,
});

/** ui/stations/inspect/lines.ts */
export const inspectLines = section('inspectLines', {
  soundWord: 'sound',
  dry: 'dry',
  wet: 'wet',
  yes: 'yes',
  no: 'no',
  askName: 'Drum Ø, new',
  askName2: 'Mark cast on it, max Ø',
  askName3: 'Machined to, max Ø',
  sizeName: 'Drum Ø, angle 1',
  sizeName2: 'Drum Ø, angle 2',
  sizeName3: 'Drum Ø, angle 3',
  sizeName4: 'Drum Ø, deeper in',
  workedName: 'Drum Ø, largest',
  workedName2: 'Out of round',
  sizeName5: 'Lip height',
  sizeName6: 'Deepest score',
  sizeName7: 'Leading lining, toe',
  sizeName8: 'Leading lining, thinnest',
  sizeName9: 'Leading lining, heel',
  sizeName10: 'Trailing lining, toe',
  sizeName11: 'Trailing lining, thinnest',
  sizeName12: 'Trailing lining, heel',
  lookName: 'Faces of drum and linings',
  lookShort: 'Faces',
  lookBad: 'not sound',
  lookName2: 'Cylinder behind the boots',
  lookShort2: 'Cylinder, boots',
  lookName3: 'Springs',
  lookBad2: 'gaps, bent or broken',
  sizeName13: 'Adjuster tooth',
  lookName4: 'Adjuster moves and holds',
  sizeName14: 'Lever off its stop',
  notchesBeforeName: 'Hand lever, notches before',
  notchesAfterName: 'Notches after',
  odometerName: 'Odometer',
  distanceName: 'Driven on these linings',
  drumFittedName: 'Drum Ø when they were fitted',
  liningFittedName: 'Lining when they were fitted',
  newPartNames: {
    lining: 'Lining, thickness',
    ground: 'Ground radius of its face',
    width: 'Lining, width',
    bore: 'Cylinder, bore',
    hand: 'Made for',
  },
  largestDrumDiameterMm: 'Largest drum Ø, mm',
  machinedToDiameterMm: 'Machined to, Ø, mm',
  deepestScoreThatMayStay: 'Deepest score that may stay, mm',
  outOfRoundMm: 'Out of round, mm',
  differenceOfTwoDepthsMm: 'Difference of two depths, mm',
  leastLiningMm: 'Least lining, mm',
});

/** ui/stations/inspect/notes.ts */
export const inspectNotes = section('inspectNotes', {
  takeThePhotoAway: 'Take the photo away',
  anotherPhoto: 'Another photo',
  photoNote: 'Photo note',
  staysOnThisDevice: 'stays on this device',
});

/** ui/stations/inspect/part.ts */
export const inspectPart = section('inspectPart', {
  wheel: (nameOf: string, wheel: 'left' | 'right') => `${nameOf}, ${wheel} wheel`,
  newPartWheel: (small: string, wheel: 'left' | 'right') => `new part, ${small}, ${wheel} wheel`,
  limit: (small: string) => `limit: ${small}`,
  setOfLimits: 'set of limits',
  inches: 'inches',
  aPlainNumberIsIn: (inches: string) => `a plain number is in ${inches}`,
  takenFromTheBrakeOn: (wheel: 'left' | 'right') =>
    `Taken from the brake on the bench to the ${wheel} wheel, as a gauge would read to 0.01 mm.`,
  valuesFromTheBrakeWheel: (wheel: 'left' | 'right') => `values from the brake, ${wheel} wheel`,
  questionAboutTheSheet: 'question about the sheet',
  questionAboutAKeptSheet: 'question about a kept sheet',
  theSheetIsClear: 'The sheet is clear.',
  sheetCleared: 'sheet cleared',
  theSheetIsBackAs: 'The sheet is back as it was.',
  sheetBroughtBack: 'sheet brought back',
  photoNote: 'photo note',
  before: 'before',
  sheetOf: (date: string) => `sheet of ${date}`,
  toWheel: (small: string, wheel: 'left' | 'right') => `to ${small}, ${wheel} wheel`,
  answerOfInspect: 'answer of Inspect',
  wheelAsMeasured: (wheel: 'left' | 'right') => `${wheel} wheel as measured`,
});

/** ui/stations/inspect/parts.ts */
export const inspectParts = section('inspectParts', {
  hows: {
    lining: 'Lining alone at its middle, without the table.',
    ground: 'Half of the Ø that it is ground for; on the box, or by a template in the face.',
    width: 'Across the shoe, steel rule.',
    bore: 'Cast on the new cylinder, in mm or inches.',
    hand: 'Marks L and R, arrows, lever side, thread’s hand.',
  },
  hands: { alike: 'either side', this: 'this side', other: 'the other side' },
  label: (newPartNames: string, wheel: 'left' | 'right') =>
    `New part: ${newPartNames}, ${wheel} wheel`,
  foundAllowed: (found: string, allowed: string) => `found ${found}; allowed ${allowed}`,
  makeItInMyBrake: 'Make it in My brake',
  newParts: 'New parts',
  newPartsBeforeAnythingGoes: 'New parts, before anything goes together',
  theBrakeOnTheBench: (title: string) =>
    `The brake on the bench, ${title}, has another drum than the sheet: of the fit nothing is said.`,
  heldAgainstTheBrakeOn: (title: string) =>
    `Held against the brake on the bench, ${title}, in the bore as found.`,
  left: 'Left',
  right: 'Right',
  unlikeSides: 'Unlike sides.',
  theSame: 'the same',
  rigid: (theSame: string) => `rigid: ${theSame}`,
});

/** ui/stations/inspect/past.ts */
export const inspectPast = section('inspectPast', {
  vehicleFoundNothingAllowed: 'Vehicle: found nothing; allowed: a name or a plate.',
  dateFoundAllowedADay: (dated: string, today: string) =>
    `Date: found "${dated}"; allowed: a day such as ${today} or 28.11.2026.`,
  odometerFoundNothingThatIs:
    'Odometer: found nothing that is a distance; allowed: such as 84 600 km.',
  measurementsFoundNoneAllowed: 'Measurements: found none; allowed: at least one size of a wheel.',
  notKeptYet: 'Not kept yet.',
  notKept: 'Not kept.',
  keptInThisBrowserKm: (vehicle: string, date: string, value: string) =>
    `Kept in this browser: ${vehicle}, ${date}, ${value} km.`,
  theSheetOfLiesHere: (date: string) => `The sheet of ${date} lies here. Bring back has the other.`,
  theSheetOfIsTaken: (date: string) => `The sheet of ${date} is taken out.`,
  theSheetIsBack: 'The sheet is back.',
  savedAs: (download: string) => `Saved as ${download}.`,
  thePhotoLastsUntilThe:
    'The photo lasts until the page is closed: this browser has no room to keep it.',
  wasNotTakenNothingElse: (name: string) => `${name} was not taken; nothing else has changed.`,
});

/** ui/stations/inspect/phone.ts */
export const inspectPhone = section('inspectPhone', {
  inWord: (value: string) => `${value} in`,
  notLookedAt: 'not looked at',
  less: (step: number) => `${step} less`,
  more: (step: number) => `${step} more`,
  foundAllowed: (found: string, allowed: string) => `found ${found}; allowed ${allowed}`,
  reading: 'Reading',
  wheel: 'Wheel',
  leftWheel: 'Left wheel',
  rightWheel: 'Right wheel',
  notSet: '– not set',
  limits: 'Limits',
  noneSet: 'none set',
  verdictOfTheSheet: 'Verdict of the sheet',
  back: 'Back',
  rightWheel2: 'right wheel',
  leftWheel2: 'left wheel',
  next: (next: string) => `Next: ${next}`,
});

/** ui/stations/inspect/print.ts */
export const inspectPrint = section('inspectPrint', {
  theBrakeWithThePlaces: 'The brake with the places to measure',
  typedIn: '* typed in',
  brakeMeasurementSheet: 'Brake measurement sheet',
  leftRearWheelFromOutside: (title: string) =>
    `${title}, left rear wheel from outside, drum cut away. Front of the vehicle to the left.`,
  limitsOf: (from: string) => `Limits of: ${from}`,
  drumDiameterAt3Angles: 'Drum Ø at 3 angles 60° apart, 2 depths',
  leadingLiningToeThinnestHeel: 'Leading lining: toe, thinnest, heel',
  trailingLiningFacesOfAll: 'Trailing lining; faces of all',
  adjusterToothMovesAndHolds: 'Adjuster: tooth, moves and holds',
  no: 'No.',
  measureMm: 'Measure, mm',
  left: 'Left',
  right: 'Right',
  marginVerdict: 'Margin, verdict',
  limit: 'Limit',
  verdict: 'Verdict: ______________________________',
  distanceLeftMarginRateKm:
    'Distance left = margin ÷ rate = ________ km; low (÷ 2) ________ km; high (× 2) ________ km. Measure again by ____________',
  andMoreOnThePage: (length: number) => `and ${length} more on the page.`,
  signature: 'Signature ______________________________',
  sceneVersion1TeachingBrake: (title: string, name: string) =>
    `${title}, scene ${name}, version 1. Teaching brake: its limits are not your vehicle’s.`,
});

/** ui/stations/inspect/read.ts */
export const inspectRead = section('inspectRead', {
  readAs0MmOn: 'read as 0 mm: on its stop',
  readAs: (what: string, value: number) => `read as ${what} ${value}`,
  aWholeNumber0To: (most: number) => `a whole number, 0 to ${most}`,
  readAsNotches: (value: number) => `read as ${value} notches`,
  aNumberOfNotches0: 'a number of notches, 0 to 40',
  moreThanMmTheNew: (fresh: string) => `more than ${fresh} mm, the new Ø`,
  atMostMmTheMark: (marked: string) => `at most ${marked} mm, the mark`,
  notForThisDrum: 'not for this drum',
  typedWhose: {
    drumMax: 'mark on the drum, as typed',
    drumCut: 'maker’s sheet, as typed',
  },
  wheel: (name: string, wheel: 'left' | 'right') => `${name}, ${wheel} wheel`,
});

/** ui/stations/inspect/sheet.ts */
export const inspectSheet = section('inspectSheet', {
  titled: { left: 'Left wheel', right: 'Right wheel' },
  askedHint: {
    drumNew: 'Both wheels; asked first.',
    drumMax: 'Both wheels; the limit that the drum itself tells.',
    drumCut: 'Both wheels; only for a cut. None set, no verdict on one.',
  },
  foundAllowed: (found: string, brief: string) => `found ${found}; allowed ${brief}`,
  label: (name: string, wheel: 'left' | 'right') => `${name}, ${wheel} wheel`,
  more: 'more',
  less: 'less',
  thanLeft: (by: string, more: string) => `${by} ${more} than left`,
  partsListOrItsUnworn: 'parts list, or its unworn edge',
  noneSet: 'none set',
  typeTheMarkAbove: 'type the mark above',
  limit: (name: string) => `Limit: ${name}`,
  foundAllowed2: (found: string, allowed: string) => `found ${found}; allowed ${allowed}`,
  balloon: 'Balloon',
  measureMm: 'Measure, mm',
  limitAndWhose: 'Limit, and whose',
  wholeAxle: 'Whole axle',
  notchesMostAllowed: 'Notches, most allowed',
  theMakersFigureUsualHand: 'The maker’s figure; usual hand levers 4 to 7.',
  headingForThePrint: 'Heading for the print',
  limitsOf: 'Limits of',
  aPlainNumberIsIn: 'A plain number is in',
  inches: 'inches',
  theDrumOnTheSheet: (name: string) =>
    `The drum on the sheet is another than that of ${name}. None of its limits is used: type your own.`,
  makeItInMyBrake: 'Make it in My brake',
  verdictOfTheSheet: 'Verdict of the sheet',
  reasons: 'Reasons',
  aPassOnASheet: 'A pass on a sheet is no approval of a vehicle.',
  clearTheSheet: 'Clear the sheet?',
  clearBothWheelsAndThe: 'Clear both wheels and the axle?',
  clearTheSheet2: 'Clear the sheet',
  keepIt: 'Keep it',
  clearSheet: 'Clear sheet',
  theSheetAsItWas: 'The sheet as it was before',
  bringBack: 'Bring back',
  printSheet: 'Print sheet',
  aBlankSheetForThe: 'A blank sheet for the printer',
  blank: 'Blank',
  wheelOnTheStage: 'Wheel on the stage',
  left: 'Left',
  right: 'Right',
  takeTheValuesFromThe: 'Take the values from the brake',
  loadTheWheelIntoThe: (wheel: 'left' | 'right') => `Load the ${wheel} wheel into the brake`,
  measurements: 'Measurements',
});

/** ui/stations/inspect/words.ts */
export const inspectWords = section('inspectWords', {
  leadingLining: 'leading lining',
  trailingLining: 'trailing lining',
  atItsLimitNowWheel: (what: string, wheel: 'left' | 'right') =>
    `At its limit now: ${what}, ${wheel} wheel.`,
  aboutKmLeftToTo: (
    left: string,
    low: string,
    high: string,
    what: string,
    wheel: 'left' | 'right',
    each: string,
    unit: 'mm' | 'steps' | 'teeth',
  ) =>
    `About ${left} km left (${low} to ${high}) to the limit of the ${what}, ${wheel} wheel, at ${each} ${unit} in 1\u202f000 km; the rate may be half or twice that.`,
});

/** ui/stations/kind/card.ts */
export const kindCard = section('kindCard', {
  pinsName: 'Leading and trailing, on pins',
  pinsTell:
    'Heels at the bottom on two fixed pins. Strut and adjuster lie at the top, under the cylinder.',
  pinsSays: 'This bench. All of it holds.',
  flatsName: 'Leading and trailing, on flats',
  flatsTell:
    'Heels stand loose on a fixed block at the bottom and can slide. Strut and adjuster at the top.',
  flatsSays: 'This bench: the Ferry runabout is such a one.',
  servoName: 'Servo, also duo-servo',
  servoTell:
    'One pin at the top, over the cylinder. At the bottom nothing is fixed: a screw with a star wheel joins the shoes. The front (primary) lining is often shorter than the rear (secondary) one.',
  servoSays:
    'Not this bench: directions, shares of the shoes and what turns the adjuster do not carry over. Lip, rust, cable and worn drum do.',
  inDiscName: 'Drum inside a disc (drum-in-hat)',
  inDiscTell:
    'A disc and its caliper outside. Small shoes inside the disc’s hat are for parking alone: a cable spreads them, there is no wheel cylinder.',
  inDiscSays:
    'Not this bench: pedal, shares and clicks do not carry over. Lip, rust and cable hold.',
  toothedName: 'Toothed lever',
  toothedTell: 'Steps when a press travels too far.',
  toothedSays: 'Quay van’s',
  shoeName: 'Screw, by the shoes',
  shoeTell: 'A lever on a shoe turns a star wheel on the way back of a press.',
  shoeSays: 'Farm trailer’s',
  leverName: 'Screw, by the parking lever',
  leverTell: 'Turned by the parking pull only.',
  leverSays: 'In Wear: driven by the parking pull',
  reverseName: 'Screw, by reversing',
  reverseTell: 'Turned by stops in reverse: a servo brake’s.',
  reverseSays: 'Does not carry over',
  taperName: 'Wedge',
  taperTell: 'Pulled down by a spring: no teeth, no click.',
  taperSays: 'Ferry runabout’s',
  handName: 'By hand',
  handTell: 'Turned by you, through the hole or behind the plate.',
  handSays: 'Nothing clicks: set it often',
  drawnFromOutside: (name: string) => `${name}, drawn from outside`,
  kind: 'Kind',
  whatSetsItsLength: 'What sets its length?',
  whatSetsItsLength2: 'What sets its length',
  notTold: 'not told',
  mine: (kind: string, setBy: string) => `Mine: ${kind}${setBy}`,
  eachAnswerSaysSoAgain: (note: string) => `${note} Each answer says so again.`,
  allThatIsSaidHere: 'All that is said here holds for yours.',
  tapWhatLooksLikeYours:
    'Tap what looks like yours. Names mislead: “primary” and “adjusts in reverse” belong to servo brakes.',
});

/** ui/stations/kind/carry.ts */
export const kindCarry = section('kindCarry', {
  yoursIsAServoBrake:
    'Yours is a servo brake: directions, the shares of the shoes and what turns the adjuster do not carry over; lip, rust, cable and worn drum do.',
  yoursIsADrumInside:
    'Yours is a drum inside a disc: pedal, shares and clicks do not carry over; lip, rust and cable do.',
  yourAdjusterIsTurnedBy:
    'Your adjuster is turned by stops in reverse: what is said of clicks is not yours.',
  yourAdjusterIsTurnedBy2:
    'Your adjuster is turned by the parking lever alone: pedal presses take nothing up.',
  yoursIsSetByHand: 'Yours is set by hand: nothing clicks; a gap grows until you set it.',
  yoursIsAWedgeNo: 'Yours is a wedge: no teeth and no clicks; pushed up, it is backed off.',
});

/** ui/stations/kind/index.ts */
export const kind = section('kind', {
  whichKindIsYours: 'Which kind is yours?',
  lookWithTheDrumOff: 'Look with the drum off, or through the hole with a lamp.',
  goOn: 'Go on',
  start: 'Start',
  whatISee: 'What I see',
});

/** ui/stations/kind/part.ts */
export const kindPart = section('kindPart', {
  whichKindItIs: 'which kind it is',
  whatSetsItsLength: 'what sets its length',
});

/** ui/stations/lessons/chart.ts */
export const lessonsChart = section('lessonsChart', {
  clearanceFromToKmNow: (first: string, first2: string, clearance: string) =>
    `Clearance from ${first} to ${first2} km, now ${clearance} mm`,
  chart: 'Chart',
  coveredUntilItIsShown: ': covered until it is shown',
});

/** ui/stations/lessons/controls.ts */
export const lessonsControls = section('lessonsControls', {
  holdToPress: 'Hold to press',
  turnBackward: 'Turn backward',
  turnForward: 'Turn forward',
  lesson: 'Lesson',
  stepBack: 'Step back',
  again: 'Again',
  allLessons: 'All lessons',
  stepOn: 'Step on',
  noGuess: 'No guess',
  onTheWallW: 'On the wall (W)',
  forTheTeacherI: 'For the teacher (I)',
});

/** ui/stations/lessons/desk.ts */
export const lessonsDesk = section('lessonsDesk', {
  firstAGuessAB: 'First a guess: A, B or C.',
  backToTheLessons: 'Back to the lessons',
  goOn: 'Go on',
  showIt: 'Show it',
  firstAGuess: 'First a guess',
  toItsEnd: 'To its end',
  nextStep: 'Next step',
  toTheEnd: 'To the end',
});

/** ui/stations/lessons/editor.ts */
export const lessonsEditor = section('lessonsEditor', {
  layers: {
    fan: 'gap fan',
    comb: 'pressure comb',
    forces: 'forces',
    names: 'names',
    ghost: 'rest ghost',
    heat: 'heat',
    loupe: 'loupe',
    edge: 'edge-on',
    polygons: 'force polygons',
    dials: 'dials',
  },
  layersShown: (step: number) => `Step ${step}: where to look, layers of the drawing`,
  lesson: {
    title: 'Title',
    idea: 'Its one idea',
    who: 'For whom',
    minutes: 'Minutes',
    number: 'Number in a course',
    caution: 'Caution, in view all the time',
    starter: 'For the teacher: before it',
    exit: 'On paper, at its end',
    shortly: 'For the teacher: with ten minutes',
    whatIf: 'What if, at its end',
    name: 'Its name',
    brake: 'Its brake',
    scene: 'Its brake’s file',
    state: 'The state it begins with',
    steps: 'Its steps',
  } as Readonly<Record<string, string>>,
  step: {
    title: 'Title of the step',
    ask: 'Question',
    choices: 'Choices',
    say: 'What is said',
    seconds: 'Seconds',
    button: 'What the button says that shows it',
    shows: 'What it shows',
    why: 'Why',
    next: 'What follows',
    tryIt: 'What one may try',
    caution: 'Caution',
    'notes.behind': 'For the teacher: what is behind it',
    'notes.point': 'For the teacher: what to point at',
    'notes.ask': 'For the teacher: what to ask next',
    'notes.minutes': 'For the teacher: minutes',
    'look.readings': 'Readings told',
    'look.names': 'Parts named',
    'look.layers': 'Layers of the drawing',
    hand: 'What happens',
    start: 'How it begins',
    checks: 'Its conditions',
  } as Readonly<Record<string, string>>,
  choice: {
    shows: 'For the teacher: what choosing it shows',
    back: 'For the teacher: what to say back',
  } as Readonly<Record<string, string>>,
  stepPlace: (step: number, place: string) => `Step ${step}${place ? `, ${place}` : ''}`,
  choicePlace: (letter: string, place: string) => `choice ${letter}${place ? `, ${place}` : ''}`,
  piece: (piece: number) => `piece ${piece}`,
  actionPlace: (what: string, place: number) => `${what}, number ${place}`,
  stepChoice: (step: number, letter: string, piece: number) =>
    `Step ${step}, choice ${letter}${piece > 1 ? `, piece ${piece}` : ''}`,
  holdsNamed: (of: string) => `${of}: holds`,
  holds: 'holds',
  away: 'Away',
  awayWith: (what: string) => `${what}: away`,
  onePieceMore: 'One more piece',
  pieceMoreOf: (letter: string) => `choice ${letter}, one more piece`,
  choiceAway: (letter: string) => `Choice ${letter} away`,
  oneMoreChoice: 'One more choice',
  step2: (i: number) => `Step ${i}`,
  nothingWord: 'nothing',
  up: 'Up',
  down: 'Down',
  double: 'Double',
  stepDoes: (step: number, what: string) => `Step ${step}: ${what}`,
  stepIsNow: (from: number, to: number) => `Step ${from} is step ${to} now.`,
  stepGone: (step: number) => `Step ${step} is away. Undo brings it back.`,
  doubled: (step: number) => `Step ${step} stands twice.`,
  cannotSay: 'This was done, but a lesson cannot say it:',
  readingsTold: (step: number, most: number) => `Step ${step}: readings told, up to ${most}`,
  partsNamed: (step: number) => `Step ${step}: parts named`,
  mostReadings: (most: number) => `${most} readings are told at most: take one off first.`,
  figures: 'A figure into the text, where the cursor is:',
  moment: (name: string) => (name === 'before' ? 'before' : name === 'now' ? 'at its end' : name),
  putIn: (name: string, moment: string, value: string) => `Put in ${name}, ${moment}: ${value}`,
  readsNow: 'Reads today:',
  workOut: 'Work out its figures',
  noFigures: 'What is done in this step cannot be worked out yet: no figures.',
  more: 'More: title, what follows, the teacher’s notes',
  moreOfLesson: 'More: minutes, cautions, the teacher’s notes',
  checksKept: (n: number) => `${n} conditions on its figures are kept as they are in the file.`,
  drawing: 'Drawing',
  drawings: { brake: 'the brake', drum: 'the drum coming off', park: 'parked' } as Readonly<
    Record<string, string>
  >,
  kind: 'Kind',
  kinds: {
    lesson: 'a lesson, with questions',
    talk: 'a talk, that plays by itself',
  } as Readonly<Record<string, string>>,
  writeALesson: 'Write a lesson',
  itBeginsWithTheBrake:
    'It begins with the brake on the bench as it stands. Do on the stage what a step is to show, take it, and type the question. A lesson of the list can be taken as a beginning.',
  yourLesson: 'Your lesson',
  toTheStageTheNext: 'To the stage: the next step',
  stillToDo: 'Still to do',
  foundAllowed: (place: string, found: string, allowed: string) =>
    `${place}: found ${found}; allowed: ${allowed}`,
  tryIt: 'Try it',
  saveTheFile: 'Save the file',
  putTheDraftAway: 'Put the draft away',
  savedAsWhoeverGetsIt: (download: string) =>
    `Saved as ${download}: whoever gets it opens it here, under Lessons.`,
});

/** ui/stations/lessons/index.ts */
export const lessons = section('lessons', {
  lessons: 'Lessons',
  aQuestionAGuessThen:
    'A question, a guess, then the brake itself. What was guessed is kept; a lesson can be left and taken up again.',
});

/** ui/stations/lessons/keys-card.ts */
export const lessonsKeysCard = section('lessonsKeysCard', {
  keys: 'Keys (?)',
  keysOfOneLetterWork: 'Keys of one letter work',
});

/** ui/stations/lessons/keys.ts */
export const lessonsKeys = section('lessonsKeys', {
  chooseAnAnswerWithShift: 'an answer; with Shift, a hand for it',
  pageDownSpace: 'Page Down, →, Space',
  theNextThingShowIt: 'the filled button: show, go on',
  pageUp: 'Page Up, ←',
  whileAQuestionIsOpen: 'next answer; once shown, a step back',
  oneStepBack: 'one step back',
  blankTheWallAndShow: 'wall blank, and shown again',
  of1To9: '1 to 9',
  onTheWallThatStep: 'on the wall: that step',
  showItAgain: 'show it again',
  wallAndBackToThe: 'wall, and back to the desk',
  onTheWallThisMoment: 'on the wall: a code for phones',
  fullScreen: 'full screen',
  allLessons: 'all lessons',
  toTheDeskThenToAll: 'to the desk, then to all lessons',
  beginTheMarked: 'begin the marked lesson',
  markTheNext: 'mark the next one',
  thatLesson: 'the lesson of that number',
  desk: 'desk',
  windowForTheTeacher: 'window for the teacher',
  theseKeys: 'these keys',
});

/** ui/stations/lessons/list.ts */
export const lessonsList = section('lessonsList', {
  steps: (count: number) => (count === 1 ? '1 step' : `${count} steps`),
  moments: (count: number) => (count === 1 ? '1 moment' : `${count} moments`),
  bytes: (size: number) => `${size} bytes`,
  atMost: (mostlesson: number) => `at most ${mostlesson}`,
  openALessonFile: 'Open a lesson file',
  openedItStandsBelow: (name: string) => `${name} is opened: it stands under Yours.`,
  wasNotOpenedNothingElse: (name: string) => `${name} was not opened; nothing else has changed.`,
  takeItOff: 'Take it off',
  takenToItsEnd: 'taken to its end',
  atOf: (step: number, length: number) => `at ${step} of ${length}`,
  goOnWith: 'Go on with',
  writeFromThis: 'Write from this one',
  writeOn: 'Write on',
  play: 'Play',
  begin: 'Begin',
  goOn: 'Go on',
});

/** ui/stations/lessons/wall-list.ts */
export const lessonsWallList = section('lessonsWallList', {
  taken: 'taken',
  atOf: (step: number, length: number) => `at ${step} of ${length}`,
  space: 'Space, Page Down',
  begin: 'begin it',
  pageUp: 'Page Up',
  another: 'another one',
  keys: '? keys',
  leaveTheWall: 'Esc desk: leave the wall',
  esc: 'Esc',
});

/** ui/stations/lessons/on-paper.ts */
export const lessonsOnPaper = section('lessonsOnPaper', {
  iThinkBecause: (piece: unknown) => ['I think ____ because', piece],
  iSaw: (piece: unknown) => ['I saw', piece],
  so: (piece: unknown) => ['so', piece],
  sawTitle: 'From new: clearance in mm over distance in km. Draw it, and mark each click.',
  pageOf: (page: number, count: number) => ` (Page ${page} of ${count}.)`,
  answers: (number: string | number, title: string) => `${number} ${title}: answers`,
  predictionsAnswers: 'predictions, answers',
  seen: 'Seen',
  why: 'Why',
  fromNewClearanceInMm: 'From new: clearance in mm over distance in km',
});

/** ui/stations/lessons/panel.ts */
export const lessonsPanel = section('lessonsPanel', {
  of: (kind: string, at: number, of: number) => `${kind} ${at} of ${of}`,
  theEnd: 'The end',
  lesson: (number: number) => `Lesson ${number}, `,
  tryWord: 'Try',
  thatWasIt: 'That was it.',
  thatWasTheLesson: 'That was the lesson.',
  whatWasGuessed: 'What was guessed',
  hands: (votes: string) => ` · hands ${votes}`,
  guessedAsItCame: 'guessed as it came',
  guessedOtherwise: 'guessed otherwise',
  noGuess: 'no guess',
  onPaper: 'On paper:',
  names: 'Names',
  keys: '? keys',
  leaveTheWall: 'Esc desk: leave the wall',
  esc: 'Esc',
  space: 'Space',
  guessedBy: 'A B C, Page ↑',
});

/** ui/stations/lessons/part.ts */
export const lessonsPart = section('lessonsPart', {
  keysOfTheLesson: 'keys of the lesson',
});

/** ui/stations/lessons/parts-of-panel.ts */
export const lessonsPartsOfPanel = section('lessonsPartsOfPanel', {
  whereTheStepIs: 'Where the step is',
  doesNotHold: 'does not hold:',
  chosen: '(chosen)',
  countAHandForSo: (letter: string, hands: number) => `Count a hand for ${letter}: ${hands} so far`,
  hands: 'Hands:',
  answers: 'Answers',
  coveredUntilItIsShown: ': covered until it is shown',
  value: 'Value',
  before: 'before',
  now: 'now',
});

/** ui/stations/lessons/take.ts */
export const lessonsTake = section('lessonsTake', {
  allowed: 'a name that no lesson of the page has',
});

/** ui/stations/lessons/teacher-link.ts */
export const lessonsTeacherLink = section('lessonsTeacherLink', {
  thisBrowserDoesNotLet: 'This browser does not let two windows speak to each other.',
  theBrowserDidNotOpen: 'The browser did not open the window: allow it for this page.',
});

/** ui/stations/lessons/teacher-words.ts */
export const lessonsTeacherWords = section('lessonsTeacherWords', {
  step: (i: number) => `Step ${i}`,
  lesson: (number: number) => `Lesson ${number}: `,
  moment: 'Moment',
  step2: 'Step',
  of: (moment: string, at: number, of: number) => `${moment} ${at} of ${of}`,
  theEnd: 'The end',
  beforeIt: 'Before it',
  afterIt: 'After it',
  whatIf: 'What if',
});

/** ui/stations/lessons/write.ts */
export const lessonsWrite = section('lessonsWrite', {
  nothingHasChanged: (step: number) =>
    `Nothing has changed on the stage since step ${step}: do there what is to happen.`,
  stepHasItsBeginning: (title: unknown, step: number) => [
    title,
    `: step ${step} has its beginning. Do on the stage what happens then.`,
  ],
  stepWhatTheStageShows: (length: number) => `Step ${length}: what the stage shows now.`,
  stepBeginsSo: (length: number) => `Step ${length} begins like this. Do what is to happen next.`,
  stepGoesOn: (length: number) => `Step ${length} goes on to this.`,
  lessonBeingWritten: 'Lesson being written',
  yourLesson: 'Your lesson',
  step: 'step',
  steps: 'steps',
  doOnTheStageWhat: (title: unknown, length: number, step: string) => [
    title,
    ', ',
    length,
    ' ',
    step,
    '. Do on the stage what the next step is to show.',
  ],
  takeThisAsStep: (length: number) => `Take this as step ${length}`,
  beginsSo: (length: number) => `Step ${length} begins like this`,
  thenThis: (length: number) => `Then this, in step ${length}`,
  writeOn: 'Write on',
  cannotSay: 'This was done, but a lesson cannot say it:',
  cannotSayIt: (what: string) => `A lesson cannot say: ${what}.`,
  cannotBeRead: 'The lesson’s brake cannot be read: what is still to do says why.',
  tooLong: 'The lesson is too long to be kept: take something away first.',
  draftTakenAnew: (title: string) =>
    `${title} is written on. What was being written before, undo brings back.`,
});

/** ui/stations/new-shoes/controls.ts */
export const newShoesControls = section('newShoesControls', {
  less: (name: string) => `${name}: less`,
  more: (name: string) => `${name}: more`,
  toStep: (first: number, stepNames: string) => `To step ${first}: ${stepNames}`,
  drumBore: 'Drum bore',
  liningThick: 'Lining thick',
  groundForDiameter: 'Ground for Ø',
  theseAreTheParts: 'These are the parts',
  backOffAsFarAs: 'Back off as far as it goes',
  evenBothSides: 'Even both sides',
  pushItAside: 'Push it aside',
  wantedSmallerBy: 'Wanted smaller by',
  setByTheGauge: 'Set by the gauge',
  leaveItHere: 'Leave it here',
  pressOnce: 'Press once',
  pressUntilSilent: 'Press until silent',
  drumOffAgain: 'Drum off again',
  notPressedYet: 'not pressed yet',
  clicksAPress: (length: string) => `clicks a press: ${length}`,
  slideTheDrumOn: 'Slide the drum on',
  leverHomeThenCable: 'Lever home, then cable',
  tightenFirstMmOff: (heldoff: number) => `Tighten first: ${heldoff} mm off`,
  driveOnToBedIn: 'Drive on, to bed in',
  newWord: 'new',
  thisStep: 'This step',
  controls: 'Controls',
  next: (stepNames: string) => `Next: ${stepNames}`,
  startAgain: 'Start again',
});

/** ui/stations/new-shoes/desk.ts */
export const newShoesDesk = section('newShoesDesk', {
  fitGap: 'fit gap',
  gapLeftAt40Bar: 'Gap left at 40 bar',
  firstTorque: 'first torque',
  firstPress40Bar: 'First press, 40 bar',
});

/** ui/stations/new-shoes/index.ts */
export const newShoes = section('newShoes', {
  picture: 'Picture',
  drumOnTrueScale: 'Drum on · true scale',
  drumOffItsOutlineDashed: 'Drum off, its outline dashed · true scale',
});

/** ui/stations/new-shoes/part.ts */
export const newShoesPart = section('newShoesPart', {
  stepOfNewShoes: 'step of New shoes',
  step: (step: number) => `step ${step}`,
  newShoesFromTheFirst: 'new shoes from the first step',
  drumBore: (bore: string) => `drum bore ${bore}`,
  liningThick: (thickness: string) => `lining ${thickness} thick`,
  groundForDiameter: (ground: string) => `ground for Ø ${ground}`,
  liesAllAlong: 'lies all along',
  crownFirst: 'crown first',
  endsFirst: 'ends first',
  bearsAtTheToe: 'bears at the toe',
  bearsAtTheHeel: 'bears at the heel',
  butTooThick: (says: string) => `${says}, but too thick`,
  text: (at: string, at2: string) => `strut from ${at} to ${at2}`,
  bothSidesEven: 'both sides even',
  pairLeftAside: 'pair left aside',
  wantedSmallerBy: (wanted: string) => `wanted smaller by ${wanted}`,
  noToothIsShortEnough: 'no tooth is short enough',
  text2: (namedTooth: string, difference: string) =>
    `${namedTooth}, ${difference} smaller than the bore`,
  drumOnNotPressedYet: 'drum on, not pressed yet',
  theLip: 'the lip',
  theBore: 'the bore',
  overByASide: (where: string, ceil: string) => `over ${where} by ${ceil} a side`,
  drumOffAgain: 'drum off again',
  notPressedTheDrumIs: 'not pressed: the drum is off',
  thenSilent: (count: string) => `${count}, then silent`,
  pressOn: (count: string) => `${count}, press on`,
  leverMmOffItsStop: (heldoff: number) => `lever ${heldoff} mm off its stop`,
  leverOnItsStop: 'lever on its stop',
  leverOnItsStopBut: 'lever on its stop, but shoes not set yet',
  beddedInOverKm: (bedat: number) => `bedded in over ${bedat} km`,
});

/** ui/stations/new-shoes/pictures.ts */
export const newShoesPictures = section('newShoesPictures', {
  column: { tooth: 'tooth', strut: 'strut' },
  atTheEnds: 'at the ends',
  inTheMiddle: 'in the middle',
  atTheHeel: 'at the heel',
  atTheToe: 'at the toe',
  theyLieAllAlong: 'They lie all along.',
  theyTouchAtTheCrown: 'They touch at the crown first.',
  theyTouchAtBothEnds: 'They touch at both ends first.',
  theyBearAtTheToe: 'They bear at the toe.',
  theyBearAtTheHeel: 'They bear at the heel.',
  theyBearInTheMiddle: 'They bear in the middle until bedded in: weaker for a time, then right.',
  groundTooLargeTheEnds:
    'Ground too large: the ends bear hard, it may grab. Ask for linings to suit the bore.',
  theShoeComesToThe:
    'The shoe comes to the bore toe first, and pressed there it grabs until bedded in. Ask for linings as thick as the bore is larger.',
  theShoeComesToThe2:
    'The shoe comes to the bore heel first: weaker until bedded in. Ask for linings to suit the bore.',
  howTheLiningLiesIn: 'How the lining lies in the bore',
  gapAlongTheLiningsArc: (where: 'all along' | 'crown' | 'ends' | 'heel' | 'toe', gap: string) =>
    `Gap along the lining's arc: ${where}, ${gap} mm`,
  drumBore: (bore: string) => `drum, bore ${bore}`,
  liningGroundFor: (ground: string) => `lining, ground for ${ground}`,
  heelEnd: 'heel end',
  toeEnd: 'toe end',
  mmIsLeftDrawnTo: (gap: string, at: string) => `${gap} mm is left ${at}, drawn to its own scale.`,
  atTheCrownFirst: 'at the crown first',
  atBothEndsFirst: 'at both ends first',
  rigidMmLeft: (lies: string, gap: string) => `Rigid: ${lies}, ${gap} mm left.`,
  radiiDrawnAboutCutOff: (times: number) => `radii drawn about ×${times}, cut off below`,
  halfAcrossMm: (times: unknown) => ['Half across, mm ', times],
  halfAcrossTheLiningsAt: (named: string, named2: string) =>
    `Half across the linings at ${named} to ${named2}, against lip and bore`,
  drum: 'drum',
  binds: 'binds',
  lip: 'lip',
  thePairStandsAsideCentre: (aside: string) => ` The pair stands ${aside} aside: centre it.`,
  isTooLong: (named: string) => `${named} is too long:`,
  theLiningsAreWiderThan: (lipSays: string, aside: string) =>
    `the linings are wider than the bore, ${lipSays} a side at the lip.${aside}`,
  doesNotPassTheLip: (named: string) => `${named} does not pass the lip,`,
  aSide: (named: unknown, lipSays: string, aside: string) => [
    named,
    ' ',
    lipSays,
    ' a side.',
    aside,
  ],
  passesTheLip: (named: string, lipSays: string) => `${named} passes the lip, ${lipSays}.`,
  atToeCentreAndHeel: (gaps: string | undefined) => `${gaps} at toe, centre and heel`,
  atToeCentreHeel: (gaps: string) => `${gaps} at toe / centre / heel`,
  snugAtTheLipIs: (atToe: string, aside: string) =>
    `Snug at the lip is not the gap: behind it the lining has ${atToe}.${aside}`,
  across: 'across',
  clearance: 'clearance',
  lipTightest: (lip: string) => `lip ${lip}, tightest`,
  contactOnTheDrum: 'Contact on the drum',
  theDrumIsOffNothing: 'The drum is off: nothing touches. Slide it on first.',
  now: (share: string) => `, now ${share}`,
  bearsOnOfItsArc: (share: string, now: string) => `bears on ${share} of its arc${now}`,
  pressureAlongTheArc: (name: string) => `${name}: pressure along the arc`,
  afterKm: (km: string) => `after ${km} km`,
  theSame: 'the same',
  lineFirstStopFilled: (afterKm: string) => `line: first stop · filled: ${afterKm}`,
  contactAt40Bar: (afterKm: unknown) => ['Contact at 40 bar ', afterKm],
  frontLeading: 'Front, leading',
  rearTrailing: 'Rear, trailing',
  oneScaleMostMpaArc: (most: string) =>
    `One scale, most ${most} MPa; arc from one end to the other.`,
  rigid: 'rigid',
  pedalMm: 'pedal mm',
  theFirstStopsAreWeaker: (torque: string, km: string) =>
    `The first stops are ${torque} % weaker than after ${km} km.`,
  theFirstStopsAreStronger: (torque: string, km: string) =>
    `The first stops are ${torque} % stronger than after ${km} km: it grabs.`,
  theFirstStopsAreAs: 'The first stops are as strong as later ones.',
  none: 'none',
  rigid2: (km: string) => `rigid: ${km}`,
  under100: 'under 100',
  shoesFirstOrCableFirst: 'Shoes first, or cable first',
  lever: 'Lever',
  nextClickAfter: 'next click after',
  onItsStop: 'on its stop',
  mmOffIt: (heldoff: number) => `${heldoff} mm off it`,
  andTheNextClickComes: (late: string) => `, and the next click comes ${late} km late`,
  tightenedFirstTheCableStands: (held0: string, home0: string, andThe: string, home02: string) =>
    `Tightened first, the cable stands in for the adjuster: ${held0} instead of ${home0}${andThe}. Slacken it later and the gap jumps by ${home02}.`,
});

/** ui/stations/new-shoes/side.ts */
export const newShoesSide = section('newShoesSide', {
  newShoes: 'New shoes',
  readings: 'Readings',
  boreLargestOf3: 'Bore, largest of 3',
  acrossTheLinings: 'Across the linings',
  clearanceEach: 'Clearance, each',
  partByPartApartTogether: 'Part by part: apart, together, set',
  sixStepsInAnyOrder: 'Six steps, in any order',
});

/** ui/stations/new-shoes/stage.ts */
export const newShoesStage = section('newShoesStage', {
  frontShoe: 'Front shoe',
  rearShoe: 'Rear shoe',
  jaw: (side: number) => `jaw ${side}`,
  overTheLinings: 'over the linings',
});

/** ui/stations/new-shoes/words.ts */
export const newShoesWords = section('newShoesWords', {
  stepNames: {
    1: 'Right parts',
    2: 'Set back',
    3: 'Centre',
    4: 'Preset by gauge',
    5: 'Drum on, press',
    6: 'Cable last',
  },
  thought: {
    1: 'A worn drum is larger than the linings were ground for. Measure the drum first.',
    2: 'The strut is still set for worn linings. Old length plus new lining does not go on.',
    3: 'The pair can stand aside on its pins. Move it until both sides are even.',
    4: 'A worn drum keeps its old lip. The hand feels the lip; the lining works on the face behind it. So measure, do not feel.',
    5: 'Each press takes up what is left over. Press until nothing clicks any more.',
    6: 'The shoes set the gap, the lever rests on its stop, and only then comes the cable.',
  },
  aWornBrakeItsDrum: (bore: string, born: string, named: string) =>
    `A worn brake: its drum is ${bore} over its new ${born}, and its old linings left it at ${named}. Measure your own first.`,
  itsOldLiningsLeftThe: (named: string) => `Its old linings left the strut long, at ${named}.`,
  setBackFirst: 'Set back first.',
  notWithTheseParts: 'Not with these parts.',
  notYetTheStrutIs: (by: string) =>
    `Not yet: the strut is still set for worn linings, and the shoes are ${by} wider than the bore. Set it back first.`,
  notWithThesePartsEven: (by: string) =>
    `Not with these parts: even with the strut right back the shoes are ${by} wider than the bore.`,
  boreLiningsThickAndGround: (bore: string, thickness: string, ground: string) =>
    `Bore ${bore}, linings ${thickness} thick and ground for ${ground}: do they lie on it?`,
  itStandsAtAsFar: (named: string, back: string) =>
    `It stands at ${named}. ${back} as far as it goes before the new shoes go in.`,
  thePairStandsTowardsThe: (aside: string) =>
    `The pair stands ${aside} towards the front. Tap it over until both sides are even.`,
  bothSidesAreEven: 'Both sides are even.',
  measureTheBoreSetThe: (bore: string, difference: string) =>
    `Measure the bore: ${bore}. Set the shoes ${difference} smaller, at the middle of the linings.`,
  silentNothingIsLeftOver: 'Silent: nothing is left over.',
  pressAndReleaseAndCount: 'Press and release, and count the clicks.',
  slideTheDrumOnWithout: 'Slide the drum on without force.',
  theLeverHangsMmOff: (heldoff: number) =>
    `The lever hangs ${heldoff} mm off its stop: the cable sets the shoes.`,
  leverHomeOnItsStop: 'Lever home on its stop first, then take up the cable.',
  overBy: (ceil: string) => `over by ${ceil}`,
  under001ASide: 'under 0.01 a side',
  aSide: (left: string) => `${left} a side`,
});

/** ui/stations/order/bedding.ts */
export const orderBedding = section('orderBedding', {
  someKmBringSoDo: (hardKm: string, share: string, many: number) =>
    `Some ${hardKm} km bring ${share} %; so do ${many} hard stops from 80 km/h.`,
});

/** ui/stations/order/charts.ts */
export const orderCharts = section('orderCharts', {
  drumCTenFrom50: 'Drum, °C: ten from 50 to 10 km/h, 90 s between',
  drumAfterEachOfTen: (rows: string) => `Drum after each of ten slow-downs: ${rows} °C`,
  shareThatBearsOverKm: 'Share that bears, %, over km driven',
  leadingArcThatBears: (rows: string) => `Leading arc that bears: ${rows}`,
  of10Stops: '10 stops',
  of200HardStops: '200 hard stops',
  leadingSolid: 'leading, solid',
  trailingDashed: 'trailing, dashed',
  of10Stops2: (km: string) => `${km} (10 stops)`,
  of200Hard: (km: string) => `${km} (200 hard)`,
  leadingTrailing: 'leading / trailing, %',
  nMAt40Bar: 'N·m at 40 bar',
  pedalMm: 'pedal, mm',
  beddingIn: 'Bedding in',
});

/** ui/stations/order/index.ts */
export const order = section('order', {
  thisStep: 'This step',
  trueScaleWhatIsOff: 'True scale · what is off is not drawn, the drum dashed',
  trueScaleDrumOn: 'True scale · drum on',
});

/** ui/stations/order/on-paper.ts */
export const orderOnPaper = section('orderOnPaper', {
  withWord: 'With',
  mayFly: 'May fly',
  wayRound: 'Way round',
  takingApartInOrder: 'Taking apart, in order',
  puttingTogetherInOrder: 'Putting together, in order',
  pageOf: (i: number, length: number) => ` Page ${i} of ${length}.`,
  tickWhatWasLookedAt: (title: string, pageOf: string) =>
    `${title}. Tick what was looked at.${pageOf}`,
});

/** ui/stations/order/orders.ts */
export const orderOrders = section('orderOrders', {
  names: {
    right: 'Gauge, presses, cable last',
    'cable first': 'Cable first',
    'let off': 'Cable first, then let off',
    'no presses': 'No gauge, no presses',
    hot: 'Pressed on a hot drum',
  },
  theShoesSetTheGap: 'The shoes set the gap; the cable only takes up its own slack.',
  pressingNeverClicks: 'pressing never clicks',
  ofTheTeethDropIn: (teeth: number) => `${teeth} of the teeth drop in`,
  theCableMmDrawnUp: (off: string, pressingNever: string) =>
    `The cable, ${off} mm drawn up, holds the shoes out: ${pressingNever}. It feels right.`,
  whatWasHiddenAndThe: (gapAgainst: string, notches: string) =>
    `What was hidden: ${gapAgainst}, and the lever has ${notches} notches more.`,
  theStrutStillRightBack: (gapAgainst: string) => `The strut still right back: ${gapAgainst}.`,
  tooth: 'tooth',
  teeth: 'teeth',
  tooMany: (teeth: number, tooth: string) => `${teeth} ${tooth} too many, `,
  noToothMoreHere: 'no tooth more here, ',
  itDrags: 'it drags',
  onlyIsLeft: (gap: string) => `only ${gap} is left`,
  atCTheDrumIs: (hotdrum: number, tooMany: string, itDrags: string) =>
    `At ${hotdrum} °C the drum is larger: ${tooMany}${itDrags} once it is cold.`,
  theGapIsTheSame: 'the gap is the same',
  aGapOfWhereIs: (gap: string, gap2: string) => `a gap of ${gap} where ${gap2} is right`,
  otherOrdersWorkedThrough: 'Other orders, worked through',
  order: 'Order',
  gapMm: 'gap mm',
  pedalMm: 'pedal mm',
  notches: 'notches',
  toTurnN: 'to turn N',
});

/** ui/stations/order/plan.ts */
export const orderPlan = section('orderPlan', {
  loadFindLiftPushTry: 'load find lift push try way-out',
  apart: {
    pin: 'before drum picture cable shorten upper clamp hold-front strut hold-rear shoes lower lever plate cylinder',
    abutment:
      'before drum picture cable shorten hold-front hold-rear lower clamp shoes upper lever plate cylinder',
  },
  together: {
    pin: 'clean lever-on lower-on strut-on hold-on toes-in upper-on centre',
    abutment: 'clean lever-on bench-on toes-in lower-on hold-on centre',
  },
  partsGaugeDrumOnSilent: 'parts gauge drum-on silent home cable-last turn',
  stopsFarFirstDriveRefuse: 'stops far first-drive refuse',
});

/** ui/stations/order/setting.ts */
export const orderSetting = section('orderSetting', {
  fits: {
    'all along': 'they lie all along',
    crown: 'they touch in the middle first, weaker until bedded in',
    ends: 'they touch at the ends first: not for this bore',
    toe: 'they bear at the toe: not for this bore',
    heel: 'they bear at the heel: not for this bore',
  },
  theSilent: (press: number) => {
    const last = press % 100 > 10 && press % 100 < 14 ? 0 : press % 10;
    return `, the ${press}${['th', 'st', 'nd', 'rd'][last] ?? 'th'} silent`;
  },
  evenAtTheFirst: ' even at the first',
  pressAndLetGoUntil: (told: string, theSilent: string) =>
    `Press and let go until silent: here ${told}${theSilent}.`,
});

/** ui/stations/order/side.ts */
export const orderSide = section('orderSide', {
  pageNames: {
    back: 'Back off',
    apart: 'Apart',
    together: 'Together',
    set: 'Set',
    bed: 'Bed in',
  },
  lookedAt: 'looked at',
  partOfTheWork: 'Part of the work',
  steps: 'Steps',
  check: 'Check',
  thisOneStandsAtIts: 'This one stands at its shortest: nothing to back off.',
  tryAWornBrake: 'Try a worn brake',
  allOfItIsNot: 'all of it is not enough',
  comesFree: 'comes free',
  still: (needText: string) => `still ${needText}`,
  mayFly: 'May fly:',
  goesBack: 'Goes back:',
  whatHoldsIt: (stationNames: string) => `What holds it? ${stationNames}`,
  yourSizes: (stationNames: string) => `Your sizes: ${stationNames}`,
  inOrder: 'In order',
  thisStep: 'This step',
  controls: 'Controls',
  back: 'Back',
  next: (word: string, name: string) => `${word}. Next: ${name}`,
  stepOf: (at: string, length: number, name: string) => `Step ${at} of ${length}: ${name}`,
});

/** ui/stations/order/wants.ts */
export const orderWants = section('orderWants', {
  pageOfInOrder: (page: 'apart' | 'back' | 'bed' | 'set' | 'together') =>
    `page of In order: ${page}`,
  stepOf: (placeIn: number, page: 'apart' | 'back' | 'bed' | 'set' | 'together') =>
    `step ${placeIn} of ${page}`,
  aWornBrakeToTry: 'a worn brake to try',
  aCheck: 'a check',
  back: (back: number) => `${back} back`,
});

/** ui/stations/order/words-apart.ts */
export const orderWordsApart = section('orderWordsApart', {
  noPedal: (piston: string) => `${piston} Hang a card on the wheel.`,
  flies: 'A spring stores force. Eye protection, face aside, no pliers on the wire.',
  itHeldTogether: 'It held, together',
  itHolds: 'It holds',
  takesToUnhook: 'Takes to unhook',
  storesName: 'Stores',
  itHoldsNow: 'It holds now',
  strutIsHeldBy: 'Strut is held by',
  liftDoes:
    'Ease the toes apart a little, one after the other, lift the toothed lever off its teeth and push it right back to tooth 0. Does the strut stay clamped, do it after the upper spring.',
  thinHookAFlatBlade: 'thin hook; a flat blade at the toe',
  liftFlies: 'The lever snaps into a tooth when it is let go: no finger in its window.',
  liftBack: 'The lever’s spring: which way its ends lie.',
  wheelDoes:
    'Unhook the lever’s small spring first. Then turn the star wheel until the strut is at its shortest; note the hand of its thread, and chalk L or R on it.',
  thinHookForTheSpring: 'thin hook for the spring; fingers for the wheel',
  wheelFlies: 'The small spring, along its own line.',
  wheelBack: 'Thread and lever are of this side of the vehicle: left and right are not alike.',
  wedgeDoes:
    'Note how far the wedge hangs down: it tells the wear. Unhook its spring, press the shoes together, push the wedge up and hold it.',
  thinHookForTheSpring2: 'thin hook for the spring; fingers for the wedge',
  wedgeFlies: 'The wedge’s spring, along its own line.',
  wedgeBack: 'Tapered end down, the stepless face towards the strut, as in the picture.',
  holdDown: (side: 'front' | 'rear') => `Hold-down, ${side}`,
  aFingerOnThePins:
    'A finger on the pin’s head behind the plate. Press the cup in, a quarter turn, let it come.',
  cupTurnerOrPliersOn: 'cup turner, or pliers on the cup’s rim',
  cupAndSpringStraightOut: 'Cup and spring, straight out towards you.',
  checks: ['Pin not necked, its T whole', 'Hole in the plate not worn long'],
  pressItInWith: 'Press it in with',
  beforeName: 'Before anything',
  beforeDoes:
    'Write down how it is now: pedal at a light and a firm press, notches, each wheel turned both ways, heat after a drive. Level ground, the other axle’s wheels chocked before and behind, wheel nuts cracked loose, jack, both stands under the maker’s points; only then let the lever down.',
  chocksJackTwoStandsWheel: 'chocks, jack, two stands, wheel wrench',
  beforeChecks: [
    'Readings written down',
    'It stands firm when pushed',
    'Are you allowed to do this where you live?',
  ],
  drumName: 'Drum off',
  drumDoes:
    'Wet the dust before the drum moves, and again as it comes. Take its screw, clip or nut out, then draw it straight. Does it stay, name what holds it: Drum off has the order of releases.',
  lowPressureWashAndTray: 'low-pressure wash and tray; bit for the screw',
  drumChecks: ['Marked against its stud', 'What was wet was seen before the wash: boots, hub'],
  drumCare: (wear: string) => `${wear} Never strike the rim.`,
  roomAtTheName: 'Room at the lip',
  pictureName: 'Five pictures, then wash',
  pictureDoes:
    'A rule in the first: the whole brake square on; cylinder and upper spring; strut and adjuster at a slant; the lower end with spring, hook and cable; behind the plate. Chalk F and R and an arrow up on the webs. Then the wet wash of all.',
  cameraChalkSheetToLay: 'camera, chalk, sheet to lay the parts on',
  pictureBack: 'The other wheel stays whole as the pattern. It is the mirror image, not a copy.',
  pictureChecks: [
    'Which hole each spring hooks into',
    'Which way up and round the strut lies',
    'Clean tracks seen where parts rub',
  ],
  cableName: 'Cable slack',
  cableDoes:
    'Slacken it at its adjuster. Take its end off the parking lever’s hook if it comes easily; else it goes with the rear shoe.',
  pliersOnTheCablesEnd: 'pliers on the cable’s end, never on the wire',
  cableFlies: 'The cable’s end, back into its tube.',
  cableChecks: [
    'Strands whole',
    'It runs back by itself when drawn and let go',
    'Lever lies on its stop',
  ],
  leverOffItsName: 'Lever off its stop',
  shortenName: 'Adjuster to its shortest',
  shortenChecks: ['Teeth and edges not rounded', 'Moves freely, comes back by its spring'],
  partsAToeFromIt: 'Parts a toe from it',
  liftsTheLever: 'Lifts the lever',
  upperSpringOnTheBench: 'Upper spring, on the bench',
  thePairLiesOnThe:
    'The pair lies on the bench: fold it together, unhook the upper spring and lift the strut out of its notches.',
  handsAHookedPullerWhere: 'hands; a hooked puller where it is still tight',
  littleTheShoesFoldTogether: 'Little: the shoes fold together and the spring goes slack.',
  hookSideAndCoilAs: 'Hook side and coil as in picture 2; strut as in picture 3.',
  checks2: [
    'No gap between coils when off',
    'Hooks not thinned, no rust pits',
    'Both wheels the same colour and length',
  ],
  upperReturnSpring: 'Upper return spring',
  hookTheToolOnThe:
    'Hook the tool on the end at the rear web, draw it out of its hole and let it come in slowly. Then the front end by hand.',
  hookedSpringPuller: 'hooked spring puller',
  theFreedHookAlongThe:
    'The freed hook, along the spring’s own line, towards the end that is still hooked.',
  endsInTheHolesOf: 'Ends in the holes of picture 2, coil clear of the lever.',
  clampName: 'Clamp on both pistons',
  holdBothPistonsWithA: 'Hold both pistons with a band before the toes leave them, and keep it on.',
  atOnceBeforeAnythingElse:
    'At once, before anything else: nothing but the clamp holds the pistons now.',
  clampOrBandOverBoth: 'clamp or band over both pistons',
  clampFlies: 'A piston, pushed out by the spring between the cups.',
  clampChecks: ['Boots whole', 'Edge of the boot lifted: no drops behind it'],
  leftToAName: 'Left to a piston’s run-out',
  strutName: 'Strut and adjuster',
  strutDoes: 'The strut’s own spring first, then strut and adjuster together out of both notches.',
  handThinHookForThe: 'hand; thin hook for the small spring',
  strutFlies: 'The strut drops when the front shoe moves.',
  strutBack: 'Which way up and which way round: picture 3. It is of this side of the vehicle.',
  strutChecks: [
    'Ends and notches square, not worn hollow',
    'Adjuster slides and holds',
    'Play in its slot as on the other wheel',
  ],
  bothShoesOffAsOne: 'Both shoes off, as one',
  shoesOffTheirPins: 'Shoes off their pins',
  drawTheToesOutOf:
    'Draw the toes out of the pistons and lift both shoes over the hub as one, strut and upper spring between them. The cable comes off its hook now.',
  swingTheToesTowardsEach:
    'Swing the toes towards each other and lift the heels off their pins; fold them, do not lever. The cable comes off its hook now.',
  shoesFlies: 'Toes swing together: fingers out of the gap.',
  shoesBack: 'Front shoe to the front: chalk says which.',
  heelsRoundsAndTheFlats: 'Heels’ rounds and the flats without a step',
  liningsThinnestPlaceWetLoose: 'Linings: thinnest place, wet, loose',
  eyesNotOvalPinsNot: 'Eyes not oval, pins not stepped',
  shoesCare: 'Clean hands for linings, or tape over them. No grease, no oil.',
  lowerEndsOutLowerSpring: 'Lower ends out, lower spring',
  swingOneHeelOutOf:
    'Swing one heel out of its flat, then the other: the spring goes slack as they come together. Unhook it.',
  flatLeverAgainstTheAnchor: 'flat lever against the anchor block, hands',
  aHeelThatSlipsBack: 'A heel that slips back: fingers clear of the flats.',
  hooksAsInPicture4: 'Hooks as in picture 4.',
  checks3: ['No gap between coils when off', 'Hooks not thinned'],
  lowerSpringOnTheBench: 'Lower spring, on the bench',
  withTheShoesFoldedTogether: 'With the shoes folded together it hangs slack: unhook it by hand.',
  handsElseThePuller: 'hands; else the puller',
  littleIsLeftInIt: 'Little is left in it.',
  leverName: 'Parking lever off its shoe',
  leverDoes: 'On the bench: clip off its pin; lay lever, clip and washer in order.',
  clipToolANewClip: 'clip tool; a new clip',
  leverFlies: 'The clip.',
  leverBack: 'Washer on the side where it lay; the lever’s stop towards the web.',
  leverChecks: [
    'Swings by its own weight',
    'Stop and notch not dented: the stop sets where the shoes rest',
  ],
  plateName: 'Plate',
  plateDoes: 'Wipe it wet. A straightedge over the six pads; a nail across each.',
  plateChecks: [
    'No groove in a pad: a groove is renewed, not greased',
    'Pin holes round',
    'No rust through',
  ],
  cylinderName: 'Cylinder, and the parts side by side',
  cylinderDoes:
    'Lift the boots at their edge only. Then lay old and new parts beside each other: holes, handed webs, where the arc sits, spring lengths.',
  bluntToolRuleLiningGauge: 'blunt tool; rule, lining gauge',
  cylinderChecks: [
    'No drops behind the boots',
    'Pistons go in and come back alike',
    'What is unlike is wrong, or of the other side',
  ],
  cylinderDone: 'All apart: to Inspect',
});

/** ui/stations/order/words-back.ts */
export const orderWordsBack = section('orderWordsBack', {
  lift: {
    lift: 'First lift the toothed lever off its teeth, against its spring, and keep it lifted.',
    push: 'Keep it lifted and push it back towards tooth 0. Lifted it slides freely, without notches; let go, it drops in with a tick.',
    felt: 'A springy lift of about a tooth’s height, then nothing holds.',
    wrong:
      'Tighter at once and harder to lift: it went the wrong way, or the strut is loaded. Stop; more force breaks the lever’s edge.',
  },
  wheel: {
    lift: 'First hold the small lever off the wheel, a hook beside the blade.',
    push: 'Turn the star wheel back while its lever is held away. With the lever on, it clicks one way only: that way is longer. The way in which it stops dead is shorter, with the lever held off.',
    felt: 'The lever gives like a leaf spring; the wheel then turns both ways.',
    wrong: 'It clicks: it goes longer. It stops dead: the lever is still on.',
  },
  wedge: {
    lift: 'There is no lever to lift: feel for the wedge’s lower end.',
    push: 'Push the wedge up against its spring, hold it, and press the shoes in.',
    felt: 'Stepless, soft; it sinks again at the next press of the pedal.',
    wrong: 'It does not move: the shoes are not pressed in, or pressure is left.',
  },
  clearanceEachLiningName: 'Clearance, each lining',
  roomAtTheName: 'Room at the lip',
  notchesName: 'Notches',
  loadName: 'Let cable and pressure go',
  loadDoes:
    'Hand lever down, cable slack at its adjuster. Open the bleed point a little if the wheel still drags, a hose on it into a jar. A loaded tooth lets go suddenly.',
  spannerAtTheCableFlare: 'spanner at the cable; flare-nut wrench, hose, jar',
  loadChecks: ['Lever on its stop', 'Wheel turns no stiffer than before'],
  strutIsHeldName: 'Strut is held by',
  findName: 'Find the hole',
  findDoes:
    'A plug in the plate, or a hole in the drum’s face that is turned to stand over the adjuster. From behind the plate everything is mirrored once more; on the other wheel as well.',
  torchThinHookFlatBlade: 'torch, thin hook, flat blade',
  youSeeOrFeelThe: 'You see, or feel, the part you mean to move',
  findCare:
    'A knock-out is opened only where the maker marked it, its slug comes out of the drum, and a plug closes it.',
  liftName: 'Lift first',
  thinHookFlatBlade: 'thin hook, flat blade',
  itLiftsWithThatMuch: 'It lifts with that much and no more',
  toLiftItName: 'To lift it, at the tooth',
  ofItItsName: 'of it its spring',
  ofItTheName: 'of it the loaded tooth',
  pushName: 'Then back, a little at a time',
  hookHoldsBladePushes: 'hook holds, blade pushes',
  eachOneCountedToSet: 'Each one counted, to set the wheel again as it was',
  tryName: 'Try the drum after each',
  pressItHomeTurnIt:
    'Press it home, turn it, draw it straight. Even all of it is not enough here: something else holds it. Name it in Drum off.',
  pressItHomeTurnIt2: 'Press it home, turn it, draw it straight. Here it is free as it stands.',
  pressItHomeTurnIt3: (needText: string) =>
    `Press it home, turn it, draw it straight. Here it comes free ${needText} back.`,
  handsBothEdgesOfThe: 'hands, both edges of the drum',
  triedThreeTimesAndStill: 'Tried three times and still held: stop, name another lock',
  tryCare: (split: string) => `Fingers out of the gap. ${split}`,
  wayOutName: 'No hole, or no luck: other ways',
  wayOutDoes: 'In this order, the drum tried after each. What each costs stands beside it.',
  seeEach: 'see each',
  wayOutCare:
    'Stop when anything bends or cracks, when fluid runs, when the vehicle moves. Then a workshop, with what was tried written down.',
  wayOutDone: 'It is off: take it apart',
  lookForAPressedIn:
    'Look for a pressed-in plug, a rubber bung in the drum’s face, a marked knock-out.',
  costsNothing: 'Costs nothing.',
  twoScrewsByTurnsIn: 'Two screws by turns in the drum’s own threads, a little at a time.',
  atTheLipThisPulls: (pull: string, onShoe: string, givesFirst: string, givesAt: string) =>
    `At the lip this pulls through lining and hold-down pins, not the hub: a puller’s ${pull} is ${onShoe} a shoe; the ${givesFirst} gives way at about ${givesAt} (strengths: their order only).`,
  rightForRustAtThe:
    'Right for rust at the hub. Where a lip holds, it pulls through linings and hold-down pins.',
  theCylindersTwoBoltsOut: 'The cylinder’s two bolts out from behind, where it can drop.',
  thePipeMayBreakThen: 'The pipe may break; then it is bled.',
  cutTheHeadsOfThe: 'Cut the heads of the hold-down pins behind the plate and draw the lot.',
  pinsSpringsMostlyLiningsSprings:
    'Pins, springs, mostly linings. Springs fly inside: eye protection.',
  drillAHoleWhereThis: 'Drill a hole where this kind has one.',
  onlyByTheMakersDrawing: 'Only by the maker’s drawing: not advised here.',
  cutTheDrum: 'Cut the drum.',
  theDrumIsLostFor: 'The drum is lost. For a workshop.',
});

/** ui/stations/order/words-set.ts */
export const orderWordsSet = section('orderWordsSet', {
  partsName: 'Right parts, both wheels',
  boreLiningsThickAndGround: (bore: string, thickness: string, ground: string, fitWords: string) =>
    `Bore ${bore}, linings ${thickness} thick and ground for ${ground}: ${fitWords}. Your own sizes are typed in New shoes.`,
  drumGaugeRule: 'drum gauge, rule',
  partsChecks: ['Drum measured at three angles', 'Both wheels of the axle alike'],
  partsCare: 'Limits and clearances are the vehicle maker’s. These are of the teaching brake.',
  gaugeName: 'Set by the gauge',
  cableSlackMeasureTheBore: (difference: string, toothName: string) =>
    `Cable slack. Measure the bore in its swept track, set the shoes ${difference} mm smaller at the middles of the linings: ${toothName}.`,
  shoeSettingGauge: 'shoe-setting gauge',
  gaugeSlidesOverBothLinings: 'Gauge slides over both linings alike',
  smallerThanTheName: 'Smaller than the bore by',
  gapOfEachName: 'Gap of each lining',
  roomAtTheName: 'Room at the lip',
  drumOnName: 'Drum on, turn it',
  drumOnDoes:
    'Both faces of the flange bright and dry. Slide it straight on, never hammered; screw or nut as the maker says. Other wheel to here. Now the pedal is allowed again.',
  drumOnChecks: ['It slides on without force', 'It turns free, or with the least rub'],
  silentName: 'Press until silent',
  oneListensAtEachWheel: (pressText: string) =>
    `One listens at each wheel: lever fully down, drum cold. ${pressText} Pressed with the lever held off its stop it steps too little; on a hot drum, too far.`,
  aFootAndAnEar: 'a foot, and an ear at each wheel',
  silentAtBothWheels: 'Silent at both wheels',
  silentCare: 'Never on a hot drum: it steps one tooth too far.',
  pressesUntilSilentName: 'Presses until silent',
  gapThenEachName: 'Gap then, each',
  pedalThenName: 'Pedal then',
  homeName: 'Lever home at both wheels',
  homeDoes: 'Look: the parking lever lies on its stop with the hand lever down, at both wheels.',
  torchThroughTheHole: 'torch, through the hole',
  homeChecks: ['Left on its stop', 'Right on its stop'],
  homeCare:
    'A lever off its stop sets the shoes in place of the adjuster: it stops clicking, then the pedal grows long.',
  cableLastName: 'Cable last',
  slackJustGoneBothLevers: (notches: string) =>
    `Slack just gone, both levers still on their stops. Then count notches at a firm pull: ${notches} here at 300 N in each cable. The maker’s count is right for yours.`,
  spannerAtTheCablesNut: 'spanner at the cable’s nut',
  cableLastChecks: ['Notches as the maker says', 'Wheels free again at 0 notches'],
  notchesAt300Name: 'Notches at 300 N',
  turnName: 'Turn it by hand: how stiff is right',
  atTheTyreUnderN: (felt: string, stiff: string) =>
    `At the tyre: under ${felt} N is free, over ${stiff} N is wrong, look again. Between, it drags: once pressed and let go it must not stay so.`,
  aHandAtTheTyre: 'a hand at the tyre, or a spring balance',
  turnChecks: ['Both ways alike', 'Both wheels alike'],
  freeUnderName: 'Free: under',
  wrongOverName: 'Wrong: over',
  hereForwardName: 'Here, forward / back',
  turnDone: 'Set: to bedding in',
  stopsName: 'Ten moderate slow-downs',
  tenSlowDownsFrom50: (rise: string, warmest: string) =>
    `Ten slow-downs from 50 to 10 km/h, not to a standstill, a minute and a half of driving between. Each warms the drum by ${rise} K; after ten it stands at ${warmest} °C, and no more. They clean the faces and show whether it pulls.`,
  anEmptyLevelRoad: 'an empty, level road',
  stopsChecks: [
    'Straight with a loose hand, light and firm',
    'No smell but a faint one of paint or new resin',
  ],
  farName: 'Then drive gently',
  tenSlowDownsBedNothing: (tenKm: string, share: string, share2: string, farText: string) =>
    `Ten slow-downs bed nothing: they are worth ${tenKm} km, ${share} % of the leading arc bears before and ${share2} % after. ${farText} Nothing harder than needed for some hundred km, no descents, no load, lever not pulled on a hot drum.`,
  farChecks: [
    'After 100 km: nuts to the maker’s torque, notches, heat left and right',
    'After 1 000 km: the same; a click may have come',
  ],
  firstDriveName: 'First drive',
  firstDriveDoes:
    'Before it moves: pedal firm at ten presses and does not sink, lever holds a push, fluid level, nothing wet, wheels to torque. Walking pace on level, empty ground; then 30 km/h; then a road. Back: drums alike to the back of a hand near them.',
  levelEmptyGround: 'level, empty ground',
  firstDriveChecks: [
    'Pedal firm, does not sink',
    'Lever alone holds at walking pace',
    'No smell, wheels free after',
  ],
  refuseName: 'It does not leave',
  refuseDoes:
    'While the pedal sinks or reaches the floor, anything leaks, drum, shoe, plate or pin is cracked, a lining is loose or under a limit, a part is missing or of the other side, the axle’s wheels are not alike, a wheel is not free, a figure of the maker’s is not known. It is moved on a trailer.',
  aTrailer: 'a trailer',
  noneOfTheseHolds: 'None of these holds',
  refuseDone: 'Readings on the sheet: Inspect',
});

/** ui/stations/order/words-together.ts */
export const orderWordsTogether = section('orderWordsTogether', {
  flies: 'A spring stores force. Eye protection, face aside, no pliers on the wire.',
  strutHow: {
    lift: 'Adjuster at its shortest, the toothed lever under its spring: lift it, let go, it ticks.',
    wheel:
      'Screw turned right in, a film of grease on its thread; the lever’s spring hooked on last. Parts of this side, L or R.',
    wedge: 'Wedge pushed right up and held; its spring hooked on last.',
  },
  willHoldName: 'Will hold',
  cleanName: 'Plate clean, thin grease',
  theFlats: 'the flats',
  thePins: 'the pins',
  cleanDoes: (theFlats: string) =>
    `Dry and clean. A thin film of high-temperature brake grease on the six pads, ${theFlats}, the lever’s pivot. Never on lining, drum or cups; on teeth no more than a film.`,
  cleanRagHighTemperatureBrake: 'clean rag, high-temperature brake grease',
  cleanChecks: ['Springs new or alike on both wheels', 'New parts laid beside the old: right ones'],
  leverOnName: 'Parking lever on its shoe',
  leverOnDoes: 'Pin, washer on its side, a new clip.',
  clipTool: 'clip tool',
  leverOnBack: 'The lever’s stop towards the web.',
  leverOnChecks: ['It swings by its own weight', 'It lies on its stop'],
  lowerOnName: 'Lower spring, shoes on their pins',
  lowerOnDoes:
    'Hook the lower spring into both shoes while they are folded together, cable on its hook, then the heels over their pins and the toes apart.',
  lowerOnFlies: 'The shoes spring together: fingers out of the gap.',
  lowerOnBack: 'Front shoe to the front, hooks as in picture 4.',
  lowerOnChecks: ['Both heels home', 'Cable end home on its hook'],
  strutOnName: 'Strut and adjuster',
  strutOnDoes: (strutHow: string) => `Both ends home in their notches. ${strutHow}`,
  handThinHookForThe: 'hand; thin hook for the small spring',
  strutOnBack: 'Which way round and up: picture 3.',
  strutOnChecks: [
    'Both ends home: one that rides on the web leaves the drum stuck',
    'Adjuster at its shortest',
  ],
  benchOnName: 'On the bench: strut, upper spring',
  benchOnDoes: (strutHow: string) =>
    `Lay both shoes on the bench, strut in its notches, upper spring hooked into both webs. ${strutHow}`,
  hookedSpringPuller: 'hooked spring puller',
  benchOnBack: 'Pictures 2 and 3; cable on its hook before the pair goes over the hub.',
  benchOnChecks: ['Both ends of the strut home', 'Adjuster at its shortest'],
  holdOnName: 'Hold-downs, both',
  holdOnDoes:
    'Pin from behind, spring and cup, press and a quarter turn until its T lies across. Pull at it.',
  cupTurnerAFingerOn: 'cup turner, a finger on the pin’s head',
  holdOnFlies: 'Cup and spring, straight out.',
  holdOnChecks: ['T lies across in both cups', 'Both shoes lie on all their pads'],
  pressItInName: 'Press it in with',
  pairOverTheHubToes: 'Pair over the hub, toes in',
  clampOffToesIn: 'Clamp off, toes in',
  bothShoesOverTheHub:
    'Both shoes over the hub as one, toes into the pistons’ slots, and only then the clamp off.',
  toesIntoThePistonsSlots: 'Toes into the pistons’ slots, then the clamp off.',
  handsTheClampStaysUntil: 'hands; the clamp stays until both toes are in',
  toesInFlies: 'A piston, while nothing holds it.',
  toesInChecks: ['Boots not pinched', 'Toes right in their slots'],
  upperOnName: 'Upper spring, last',
  upperOnDoes:
    'Front end by hand, then draw the rear end over its hole with the tool and let it in.',
  springSeaterOrTheHooked: 'spring seater, or the hooked puller',
  upperOnFlies: 'The drawn hook, along the spring’s own line.',
  upperOnBack: 'Two ends as in picture 2, seated right down in both holes.',
  upperOnChecks: ['Seated in both holes', 'Coil clear of the toothed parts'],
  centreName: 'Centre the pair',
  centreDoes:
    'Push the pair to and fro on the plate until both linings stand alike from the plate’s rim.',
  handsRule: 'hands, rule',
  centreChecks: ['Edges alike all round', 'Other wheel brought to here as well'],
  centreCare: (piston: string) => `${piston} Not before both drums are on.`,
  strutIsHeldName: 'Strut is held by',
  centreDone: 'Together: to setting',
});

/** ui/stations/own/desk.ts */
export const ownDesk = section('ownDesk', {
  notMade: 'Not made.',
  drumDiameterFoundAllowed: (found: string, allowed: string) =>
    `Drum Ø: found ${found}; allowed: ${allowed}`,
  title: (length: number) => `My brake ${length}`,
  wasNotTakenNothingElse: (fileName: string, other: string) =>
    `${fileName} was not taken; nothing else has changed. ${other}`,
  wasNotTakenNothingElse2: (fileName: string) =>
    `${fileName} was not taken; nothing else has changed.`,
});

/** ui/stations/own/dimension.ts */
export const ownDimension = section('ownDimension', {
  to: (i: number) => `to ${i}`,
  head: (i: number) => `head ${i}`,
  was: (i: number) => `was ${i}`,
  dashedItWas: (was: string) => `dashed: it was ${was}`,
});

/** ui/stations/own/fields.ts */
export const ownFields = section('ownFields', {
  ownNames: {
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
  },
  foundNames: {
    drumNow: 'Drum Ø now, largest',
    leading: 'Leading lining now, thinnest',
    trailing: 'Trailing lining now, thinnest',
    tooth: 'Adjuster stands at tooth',
    notches: 'Hand lever, notches',
    pedal: 'Pedal travel, firm press',
  },
});

/** ui/stations/own/found-fields.ts */
export const ownFoundFields = section('ownFoundFields', {
  insideCaliperInTheSwept:
    'Inside caliper in the swept track, at three angles: the largest. Not on the lip.',
  theShoeTowardsTheFront:
    'The shoe towards the front of the vehicle. Along the whole arc, without the steel table.',
  theOtherShoeOfThe: 'The other shoe of the same wheel, alike.',
  countThoseItHasPassed:
    'Count those it has passed, from its shortest; steps of a screw or wedge alike.',
  clicksToAFirmHold: 'Clicks to a firm hold, before anything is touched.',
  ruleBesideThePedalPumped:
    'Rule beside the pedal, pumped twice before: from up to firm. Drums on.',
});

/** ui/stations/own/measures.ts */
export const ownMeasures = section('ownMeasures', {
  drumAndLiningsName: 'Drum and linings',
  atTheUnwornEdgeOutside:
    'At the unworn edge outside the lip, with an inside caliper; or from the parts list.',
  castOnTheDrumOften: 'Cast on the drum, often “max dia”.',
  acrossTheShoeWithA: 'Across the shoe with a steel rule.',
  onANewShoeLining: 'On a new shoe, lining only, without the steel table.',
  theMakersFigureDownTo: 'The maker’s figure; down to the rivet heads on a riveted one.',
  paperStripAlongTheRubbing: 'Paper strip along the rubbing face from end to end, then a rule.',
  twoLettersAtTheEnd:
    'Two letters at the end of the code on the lining’s edge, such as FF: the middle of the cold one’s band is taken.',
  placesOfTheName: 'Places of the shoe',
  betweenTheMiddlesOfBoth:
    'Between the middles of both pins, or of both round heels, side to side.',
  fromTheHubsMiddleDown: 'From the hub’s middle down to the line of the pins.',
  fromTheHubsMiddleUp: 'From the hub’s middle up to the pistons’ middle line.',
  fromTheHubsMiddleUp2: 'From the hub’s middle up to the strut’s middle line.',
  cylinderAndPedalName: 'Cylinder and pedal',
  castBehindThePlateIn: 'Cast behind the plate, in mm or inches: 3/4 in is 19.05 mm.',
  cylinderOffTheVehicleFrom:
    'Cylinder off the vehicle: from rest until the cup meets the bore’s edge.',
  castOnItsBody: 'Cast on its body.',
  pivotToFootOverPivot: 'Pivot to foot over pivot to push rod.',
  pressByHandUntilIt: 'Press by hand until it meets the piston.',
  seatToSeatWithThe: 'Seat to seat with the adjuster right back, by caliper.',
  feelerGaugeBetweenStrutAnd: 'Feeler gauge between strut and lever, or in the slot.',
  countThemFromShortestTo: 'Count them from shortest to longest.',
  returnSpringsName: 'Return springs',
  luggageScaleAtTheFitted:
    'Luggage scale at the fitted length between the holes; 10 kgf is 98 N. Wear eye protection.',
  pullIt5MmFurther: 'Pull it 5 mm further and take the difference over 5.',
  asTheUpperOne: 'As the upper one.',
  parkingLeverAndName: 'Parking lever and vehicle',
  uprightFromThePivotsMiddle: 'Upright, from the pivot’s middle to the strut’s.',
  straightMiddleToMiddle: 'Straight, middle to middle.',
  markTheCablePullTen: 'Mark the cable, pull ten notches, divide by ten.',
  fromTheHubsMiddleTo: 'From the hub’s middle to the ground.',
  fromItsPapers: 'From its papers.',
  assumed: [
    'how the linings’ friction fades hot',
    'stiffness of the linings under pressure',
    'wear rates of linings and drum',
    'friction of hold-downs and plate pads',
    'heat taken up and cooling',
    'shape of the adjuster’s teeth',
    'give of hoses and pipes',
    'thickness of the shoes’ steel, holes, outlines',
  ],
});

/** ui/stations/own/page.ts */
export const ownPage = section('ownPage', {
  startABrakeOfYour: 'Start a brake of your own',
  drumDiameterOfYoursNew: 'Drum Ø of yours, new',
  theNearest: 'the nearest',
  startFrom: (hasChosen: string) => `Start from ${hasChosen}`,
  onPins: 'on pins',
  onAbutments: 'on abutments',
  makeItMine: 'Make it mine',
  readASceneFile: 'Read a scene file',
  keptInThisBrowser: 'Kept in this browser',
  from: (title: string) => `from ${title}`,
  deleteWord: (title: string) => `Delete ${title}`,
  keepIt: 'Keep it',
  onTheBench: 'On the bench',
  putOnTheBench: 'Put on the bench',
  deleteWord2: 'Delete',
  bringBack: (title: string) => `Bring back ${title}`,
  assumed: 'assumed',
  itsPlacesFromAPicture: 'Its places, from a picture',
  withTheDrumOffCable:
    'With the drum off: cable slack, pedal let go, nothing held by hand. At twice the usual lens, from 0.8 m, square on; the brake fills the picture. Then some twenty taps.',
  goOnTapped: (taps: number) => `Go on: ${taps} tapped`,
  anotherPicture: 'Another picture',
  takeOrChooseAPicture: 'Take or choose a picture',
  takeItsPointsAndPicture: 'Take its points and picture away',
  thePictureStaysOnThis: 'The picture stays on this device.',
  name: 'Name',
  fromOfMeasuredTheRest: (title: string, count: number, reduce: number) =>
    `From ${title}; ${count} of ${reduce} measured, the rest assumed in its proportions.`,
  assumedSinceItIsNot: 'Assumed, since it is not measured at home',
  theseAreSWhatFollows: (title: string) =>
    `These are ${title}’s. What follows from them, such as torque, wear and heat, is an order of size for your brake, no figure of it.`,
  saveAsASceneFile: 'Save as a scene file',
  place: 'place',
  places: 'places',
  toMend: (wrongs: number, place: string) => `${wrongs} ${place} to mend.`,
  theLastSoundBrakeStays: 'The last sound brake stays on the bench.',
  drags: 'Drags:',
  aNewLiningTouchesThe: 'a new lining touches the new drum at rest. Look at strut and slot play.',
  locks: 'Locks',
  atBarNoFactorCan: (locks: unknown, pressbar: number) => [
    locks,
    ' at ',
    pressbar,
    ' bar: no factor can be told.',
  ],
  withShoesThatBendRigid: (gap: string, factor: unknown) => [
    'with shoes that bend; rigid ',
    gap,
    ' mm, ',
    factor,
  ],
  onTheBenchNewClearance: (gap: unknown, factor: unknown, pressbar: number, withShoes: unknown) => [
    'On the bench, new: clearance ',
    gap,
    ' mm, brake factor ',
    factor,
    ' at ',
    pressbar,
    ' bar',
    withShoes,
    '.',
  ],
  savedAs: (download: string) => `Saved as ${download}.`,
  myBrake: 'My brake',
  typeWhatYouMeasuredOn:
    'Type what you measured on your own brake; the rest is taken from a teaching brake and marked as assumed.',
  springsStoreForceUseThe:
    'Springs store force: use the proper tool and eye protection. Limits are the maker’s; a brake that holds in this model proves nothing about a real one.',
});

/** ui/stations/own/part.ts */
export const ownPart = section('ownPart', {
  drumOfOnesOwn: 'drum of one’s own',
  brakeToStartFrom: 'brake to start from',
  notMadeBrakesAreKept: (mostbrakes: number) =>
    `Not made: ${mostbrakes} brakes are kept here. Delete one first.`,
  myBrake: 'My brake',
  made: (titleIn: string) => `${titleIn} made`,
  picture: (word: string) => `picture: ${word}`,
  picturesPointsTakenAway: 'picture’s points taken away',
  pointOfThePicture: 'point of the picture',
  name: (titleIn: string) => `name ${titleIn}`,
  questionAboutABrake: 'question about a brake',
  deleted: (titleIn: string) => `${titleIn} deleted`,
  notBroughtBackBrakesAre: (mostbrakes: number) =>
    `Not brought back: ${mostbrakes} brakes are kept here. Delete one first.`,
  brake: 'brake',
  broughtBack: (title: string) => `${title} brought back`,
  answerOfMyBrake: 'answer of My brake',
});

/** ui/stations/own/photo/desk.ts */
export const ownPhotoDesk = section('ownPhotoDesk', {
  notSeen: (name: string) => `${name} not seen`,
  wasNotTakenNothingElse: (name: string) => `${name} was not taken; nothing else has changed.`,
  thePictureCouldNotBe: 'The picture could not be kept: this browser has no room for it.',
});

/** ui/stations/own/photo/picture.ts */
export const ownPhotoPicture = section('ownPhotoPicture', {
  name: (numberOf: number, name: string) =>
    `${numberOf}, ${name}. Arrow keys move it by a pixel, with Shift by ten; Enter sets it, Backspace goes back.`,
  picture: 'picture',
  thePictureIsNotKept: 'The picture is not kept here. What you tapped in it is.',
  chooseTheSamePictureAgain: 'Choose the same picture again',
});

/** ui/stations/own/photo/points.ts */
export const ownPhotoPoints = section('ownPhotoPoints', {
  end: 'Where its outer edge, the one nearest to you, ends.',
  rim: 'Anywhere on the backing plate’s outermost edge, all round.',
  leadingLiningUpperEnd: 'Leading lining, upper end',
  leadingLiningMiddle: 'Leading lining, middle',
  halfwayDownOnItsOuter: 'Halfway down, on its outer edge.',
  leadingLiningLowerEnd: 'Leading lining, lower end',
  trailingLiningLowerEnd: 'Trailing lining, lower end',
  trailingLiningMiddle: 'Trailing lining, middle',
  halfwayUpOnItsOuter: 'Halfway up, on its outer edge.',
  trailingLiningUpperEnd: 'Trailing lining, upper end',
  middleOfTheHub: 'Middle of the hub',
  theMiddleOfItsFlat: 'The middle of its flat face.',
  platesRimUpperRight: 'Plate’s rim, upper right',
  platesRimTop: 'Plate’s rim, top',
  platesRimLeft: 'Plate’s rim, left',
  platesRimLowerLeft: 'Plate’s rim, lower left',
  platesRimLowerRight: 'Plate’s rim, lower right',
  leadingHeel: 'Leading heel',
  middleOfItsPinOr: 'Middle of its pin, or of the round heel.',
  trailingHeel: 'Trailing heel',
  leadingToe: 'Leading toe',
  whereThePistonBearsOn: 'Where the piston bears on the shoe’s web.',
  trailingToe: 'Trailing toe',
  strutsSeatAtTheParking: 'Strut’s seat at the parking lever',
  whereTheStrutsNotchBears: 'Where the strut’s notch bears.',
  parkingLeversPivot: 'Parking lever’s pivot',
  middleOfThePinIt: 'Middle of the pin it turns on.',
  cablesHook: 'Cable’s hook',
  whereTheCablesEndLies: 'Where the cable’s end lies in the lever.',
  strutsSeatOnTheLeading: 'Strut’s seat on the leading shoe',
  itsHeightIsWhatCounts: 'Its height is what counts.',
  upperSpringLeadingHole: 'Upper spring, leading hole',
  middleOfTheHoleIt: 'Middle of the hole it hooks into.',
  upperSpringTrailingHole: 'Upper spring, trailing hole',
  lowerSpringLeadingHole: 'Lower spring, leading hole',
  lowerSpringTrailingHole: 'Lower spring, trailing hole',
  holdDownLeadingShoe: 'Hold-down, leading shoe',
  middleOfItsCup: 'Middle of its cup.',
  holdDownTrailingShoe: 'Hold-down, trailing shoe',
  leadingFlatOneEnd: 'Leading flat, one end',
  onTheLineTheHeel: 'On the line the heel slides on.',
  leadingFlatOtherEnd: 'Leading flat, other end',
  onTheSameLine: 'On the same line.',
  trailingFlatOneEnd: 'Trailing flat, one end',
  trailingFlatOtherEnd: 'Trailing flat, other end',
});

/** ui/stations/own/photo/read-photo.ts */
export const ownPhotoReadPhoto = section('ownPhotoReadPhoto', {
  acrossName: 'Across both linings',
  acrossHow: 'Caliper over the outside of both linings at the height of the hub, at rest.',
  plateName: 'Backing plate, Ø',
  plateHow: 'Rule from edge to edge through the hub.',
  liningOffName: 'Plate to lining',
  liningOffHow: 'Rule from the plate’s face to the lining’s edge nearest to it.',
  drumNowName: 'Drum Ø today',
  drumNowHow: 'Inside caliper. Blank: as new.',
  foundAllowed: (found: string, allowed: string) => `found ${found}; allowed: ${allowed}`,
  foundMmInADrum: (across: string, drum: string, mostclearance: number) =>
    `found ${across} mm in a drum of ${drum} mm; allowed: less than the drum by up to ${mostclearance} mm`,
});

/** ui/stations/own/photo/side.ts */
export const ownPhotoSide = section('ownPhotoSide', {
  widestMm: (numberOf: number, name: string, worst: string) =>
    `Widest: ${numberOf}, ${name}, ${worst} mm.`,
  thePictureHasPixelsA: (width: number, height: number) =>
    `The picture has ${width} × ${height} pixels: a tap in it is worth some 1.5 mm.`,
  andItsPartnerAreNo: (nameOf: string, off: string) =>
    `${nameOf} and its partner are no mirror images, ${off} mm apart. One of them is tapped beside it: both are left out until mended.`,
  theTapsDoNotFit: (widest: string) =>
    `The taps do not fit together. ${widest} Look at that tap and at the sizes; use the whole picture as taken, not a cropped one.`,
  takenTooMuchFromThe:
    'Taken too much from the side. Another one from straight in front will do better.',
  itLiesOnceTheLinings: (left: number) =>
    `It lies once the linings (1–6) and the hub or the rim are tapped; ${left} more of the linings.`,
  nowTheHubsMiddleAnd: 'Now the hub’s middle; and the plate’s rim, once its Ø is typed below.',
  liesWithinMm: (within: string) => `Lies within ${within} mm.`,
  takenAsideFromM: (tilt: string, far: string, widest: string) =>
    `Taken ${tilt}° aside, from ${far} m. ${widest}`,
  point: 'point',
  points: 'points',
  tapped: (count: number, point: string) => `${count} ${point} tapped.`,
  proposedAsTheMirrorImage:
    ' Proposed as the mirror image of its partner; it counts once you set it.',
  fromTheHubMm: 'From the hub, mm',
  goodToMm: 'Good to, mm',
  onePixel: (way: 'down' | 'left' | 'right' | 'up') => `One pixel ${way}`,
  goOn: ', go on',
  set: (no: number, all: string) => `Set ${no}${all}`,
  back: 'Back',
  cannotSeeIt: 'Cannot see it',
  measuredBesideThePicture: 'Measured beside the picture',
  assumed: 'assumed',
  drumDiameterAndLiningWidth: 'Drum Ø and lining width are typed under My brake.',
  points2: 'Points',
  soFar: ' so far',
  fromThePictureWithFriction: (percent: string, soFar: string, piece: unknown) => [
    'from the picture, ±',
    percent,
    ' %',
    soFar,
    ' ',
    piece,
    ' with friction assumed to ±10 %',
  ],
  brakeFactorAfterSprings: 'Brake factor, after springs',
  torqueAtBar: (pressbar: number) => `Torque at ${pressbar} bar`,
  withShoesThatBendRigid: (factor: string, torque: string) =>
    `With shoes that bend. Rigid: factor ${factor}, ${torque} N·m.`,
  parkingLeverStrutsForceOver: 'Parking lever, strut’s force over the cable’s',
  assumed2: ', assumed',
  notMeasured: 'not measured',
  clearanceAtRestByCaliper: (notMeasured: unknown) => [
    'Clearance at rest: ',
    notMeasured,
    ' by caliper, never from the picture: a millimetre at the strut’s seat is as much as there is.',
  ],
  geometryIsGoodToAbout:
    'Geometry is good to about 2 %; friction is not known to better than 10 %, and that is what the brake factor hangs on.',
  aRightHandWheel: 'A right-hand wheel',
  aLeftHandWheel: 'A left-hand wheel',
  itIsTheOther: (rightHand: string) => `${rightHand}: it is the other`,
  thePictureIsKeptIn: 'The picture is kept in this browser',
  keepThePictureInThis: 'Keep the picture in this browser',
  backToAllSizes: 'Back to all sizes',
  myBrakeFromAPicture: 'My brake from a picture',
  thePictureStaysOnThis: 'The picture stays on this device: it is in no file, link or report.',
});

/** ui/stations/own/read.ts */
export const ownRead = section('ownRead', {
  foundAllowed: (found: string, allowed: string) => `found ${found}; allowed: ${allowed}`,
  foundAllowed2: (plain: string, plain2: string, reason: string) =>
    `found ${plain}; allowed: ${plain2}${reason}`,
  readAsToColdTaken: (least: string, most: string, value: string) =>
    `read as ${least} to ${most} cold, ${value} taken`,
  readAs: (value: number) => `read as ${value}`,
  whole: 'whole ',
  aNumberTo: (whole: string, range: number, range2: number) =>
    `a ${whole}number, ${range} to ${range2}`,
});

/** ui/stations/own/told.ts */
export const ownTold = section('ownTold', {
  asItWas: 'as it was',
  to: 'to',
  clearanceAtRestName: 'Clearance at rest',
  brakeFactorName: 'Brake factor',
  torqueAtBar: (pressbar: number) => `Torque at ${pressbar} bar`,
  pedalAtBar: (pressbar: number) => `Pedal at ${pressbar} bar`,
  firstClickAfterName: 'First click after',
  to2: (name: string, figure: string, figure2: string, unit: string) =>
    `${name} ${figure} to ${figure2}${unit}`,
  withRigidShoes: (rowsOf: string) => `With rigid shoes: ${rowsOf}.`,
  assumed: 'assumed',
  whatItChangesItWas: (measured: unknown, was: string, unit: string) => [
    'What it changes. It was',
    measured,
    ' ',
    was,
    unit,
    '.',
  ],
  beingDriven: 'being driven…',
  locking: 'locking',
  to3: (low: string, high: string) => `${low} to ${high}`,
  theBandOfItsTwo: 'the band of its two letters',
  aTenthEitherWay: 'a tenth either way',
  assumedATenthEitherWay: 'assumed, a tenth either way',
  friction001Less: 'Friction, 0.01 less',
  frictionTo: (value: string, least: string, most: string) =>
    `Friction ${value}, ${least} to ${most}`,
  friction001More: 'Friction, 0.01 more',
  withRigidShoesFromAnd: (span: string, span2: string) =>
    `; with rigid shoes from ${span}, and from ${span2} N·m`,
  coldToSoTheFactor: (
    value: string,
    least: string,
    most: string,
    whose: string,
    span: unknown,
    pressbar: number,
    span2: unknown,
    withRigid: unknown,
  ) => [
    'Cold ',
    value,
    ', ',
    least,
    ' to ',
    most,
    ': ',
    whose,
    '. So the factor lies from ',
    span,
    ', the torque at ',
    pressbar,
    ' bar from ',
    span2,
    withRigid,
    '.',
  ],
  asItIsNow: 'As it is now',
  asItIsNowWorn: 'As it is now: worn, and set',
  forWhatYourNumbersSay:
    'For what your numbers say, just below. The brake on the bench stays new; Inspect has a whole sheet, and loads it.',
  foundAllowed: (found: string, allowed: string) => `found ${found}; allowed: ${allowed}`,
  whatMyNumbersSay: 'What my numbers say',
  nothingYetTypeBothLinings:
    'Nothing yet. Type both linings as they are now, then the tooth, the notches and the pedal: each is held against what this brake does when it is worn so.',
  drivingItToSeeHow: 'Driving it to see how unlike both linings wear…',
  rigidShoesSayTheSame: 'Rigid shoes say the same.',
  withRigidShoes2: 'With rigid shoes:',
  andWithShoesThatBend: ', and with shoes that bend',
  computedWithYourSizesAnd: (andWith: string) =>
    `Computed with your sizes and, where none was typed, with assumed ones${andWith}: hints where to look, no approval.`,
});

/** ui/stations/park/controls.ts */
export const parkControls = section('parkControls', {
  no: 'no',
  less: (name: string) => `${name}: less`,
  more: (name: string) => `${name}: more`,
  cableSlack: 'Cable slack',
  cableTooTight: 'Cable too tight',
  mmOff: (leverOffStop: string) => `${leverOffStop} mm off`,
  nose: (n: 'down' | 'up') => `Nose ${n}`,
  controls: 'Controls',
  vehicleStands: 'Vehicle stands',
  oneNotchBack: 'One notch back',
  notch: '− notch',
  letGo: 'Let go',
  pullInEachCable: 'Pull in each cable',
  oneNotchOn: 'One notch on',
  notch2: '+ notch',
});

/** ui/stations/park/hill.ts */
export const parkHill = section('parkHill', {
  standsGaveMm: (way: string) => `stands; gave ${way} mm`,
  creepsMmS: (speed: string) => `creeps ${speed} mm/s`,
  rollsKmHM: (speed: string, way: string) => `rolls ${speed} km/h, ${way} m`,
  canHold: (floor: string) => `can hold ${floor}`,
  aShoeLocks: 'a shoe locks',
  vehicleNoseOn: (nose: 'down' | 'up', asked: string) => `Vehicle nose ${nose} on ${asked}`,
  drawn: (steepest: number) => `, drawn ${steepest}°`,
  needsNMAWheel: (ceil: string) => `needs ${ceil} N·m a wheel`,
  rollsThisWay: 'rolls this way',
});

/** ui/stations/park/hot.ts */
export const parkHot = section('parkHot', {
  cNotches: (temperature: string, taken: string) => `${temperature} °C, ${taken} notches`,
  locks: 'locks',
  holds: 'holds',
  rolls: 'rolls',
  withTheHandLeverLocked: (down: unknown, cable: string, down2: string) => [
    'With the hand lever locked the drum takes the hook along as it slips: ',
    down,
    ' at ',
    cable,
    ' N. At a constant pull it would be ',
    down2,
    '.',
  ],
  hotDrumHandLeverLocked: 'Hot drum, hand lever locked',
  drumHotterBy: 'Drum hotter by',
  drumCooler: 'Drum cooler',
  drumHotter: 'Drum hotter',
  parked: 'Parked',
  cableN: 'cable N',
  nose: (nose: 'down' | 'up') => `nose ${nose}`,
  coldAsUsual: 'Cold, as usual',
  hotSamePull: 'Hot, same pull',
  cooledDown: '… cooled down',
  hotUsualNotch: 'Hot, usual notch',
  aDrumThatCoolsShrinks:
    'A drum that cools shrinks onto the shoes and draws the locked cable tighter. A hot drum stands away: the usual notch gives less pull.',
  onAHotDrumGo:
    'On a hot drum go by the pull, not the notch, chock it, and look again. A drum can burn skin long after the stop.',
});

/** ui/stations/park/index.ts */
export const park = section('park', {
  allReadingsWhatIsAsked: 'All readings, what is asked for',
  forcesAndCable: 'Forces and cable',
  chocksAwayTheMovingWheel: 'Chocks away: the moving wheel',
  forces125MmPer: 'Forces 12.5 mm per kN, about to slip · ghost: lever at rest, ×1',
  letGoTheLeverRests: 'Let go: the lever rests on its stop',
  pullOneNotchName: 'Pull one notch',
  slope: (steeper: number) => `Slope ${steeper} %`,
});

/** ui/stations/park/lever.ts */
export const parkLever = section('parkLever', {
  strut: 'strut',
  cable: 'cable',
  theLeverAlone: 'The lever alone',
  theHandLeverIsLet:
    'The hand lever is let go: no pull on the lever, and the springs hold it on its stop. Draw the hand lever to see what pushes where.',
  parkingLeverCutFreeCable: (cable: string, strut: string, pivotForce: string) =>
    `Parking lever cut free: cable ${cable} N, strut ${strut} N, pivot ${pivotForce} N`,
  itsPivot: 'its pivot',
  stillOnItsStopThe: (cable: unknown) => [
    'Still on its stop: the clamp of the shoes is more than ',
    cable,
    ' of cable can lift.',
  ],
  nFrontShoe: (cable: string, cableArm: string, strutArm: string, strut: unknown) => [
    cable,
    ' N × ',
    cableArm,
    ' ÷ ',
    strutArm,
    ' = ',
    strut,
    ' front shoe',
  ],
  rearShoe: (strut: string, cable: string, pivotForce: unknown) => [
    strut,
    ' − ',
    cable,
    ' = ',
    pivotForce,
    ' rear shoe',
  ],
  armsInMmSquareTo: (ratio: string, ratioAtRest: string) =>
    `Arms in mm, square to each force. Ratio ${ratio} as it stands, ${ratioAtRest} on its stop.`,
});

/** ui/stations/park/pad.ts */
export const parkPad = section('parkPad', {
  notchesN: (notches: string, cable: number) => `${notches} notches · ${cable} N`,
  letGoDrag: 'let go · drag',
  parkingLever: 'Parking lever',
  nInEachCableNotches: (cable: number, notches: string) =>
    `${cable} N in each cable, ${notches} notches`,
});

/** ui/stations/park/panels.ts */
export const parkPanels = section('parkPanels', {
  leverAlone: 'Lever alone',
  bothWheels: 'Both wheels',
  hotDrum: 'Hot drum',
  picture: 'Picture',
});

/** ui/stations/park/part.ts */
export const parkPart = section('parkPart', {
  aSlopeOfYourOwn: 'A slope of your own choice',
  cableToN: (cable: number, cable2: number) => `cable ${cable} to ${cable2} N`,
  nose: (nose: 'down' | 'up') => `nose ${nose}`,
  ruleOfTheSlope: 'rule of the slope',
  slope: (slope: number) => `slope ${slope} %`,
  cableSlackMmMore: (moreSlack: number) => `cable slack, ${moreSlack} mm more`,
  leverMmOffItsStop: (leverOffStop: number) => `lever ${leverOffStop} mm off its stop`,
  rightWheel: 'right wheel',
  panelOfPark: 'panel of Park',
  parkedKHot: (rise: number) => `parked ${rise} K hot`,
  chocksAway: 'chocks away',
});

/** ui/stations/park/side.ts */
export const parkSide = section('parkSide', {
  nose: (nose: 'down' | 'up') => `Nose ${nose}`,
  locks: 'locks',
  torqueAWheelCanHold: 'Torque a wheel can hold at a constant pull, N·m',
  askedFor: (ceil: unknown) => ['asked for ', ceil],
  judgedBy: 'Judged by',
  aSlope: 'a slope',
  yourOwn: (id: string) => `${id} · your own`,
  handAtMostN: (newton: number, sure: string) => `Hand at most ${newton} N (${sure}).`,
  verdict: 'Verdict',
  chockIt: 'Chock it',
  chocksAway: 'Chocks away',
  handLeverWhereItsNotches: 'Hand lever: where its notches go, mm of cable',
  notches: 'notches',
  slack: (slack: string) => `slack ${slack}`,
  stretch: (stretch: string) => `stretch ${stretch}`,
  turningTheLever: (turning: string) => `turning the lever ${turning}`,
  steepestHeldNose: (nose: 'down' | 'up') => `Steepest held, nose ${nose}`,
  any: 'any',
  readings: 'Readings',
  cablePullEachWheel: 'Cable pull, each wheel',
  allCablesTogetherOverRatio: 'All cables together over ratio and efficiency of the hand lever',
  handOnTheLever: 'Hand on the lever',
  over: (newton: number) => `over ${newton}`,
  park: 'Park',
  oneCableWorksBothShoes:
    'One cable works both shoes: the lever pushes the strut, and its pivot pushes back the other way.',
});

/** ui/stations/park/stage.ts */
export const parkStage = section('parkStage', {
  strut: 'strut',
  onTheFrontShoe: 'on the front shoe',
  itsPivot: 'its pivot',
  onTheRearShoe: 'on the rear shoe',
  cableN: (cable: string) => `Cable ${cable}\u00a0N`,
  forward: 'forward',
  backward: 'backward',
  theHillTurnsTheDrum: (forward: string) => `The hill turns the drum ${forward}`,
});

/** ui/stations/park/stops.ts */
export const parkStops = section('parkStops', {
  letGoTheLeverAt: 'Let go: the lever at rest (sketch)',
  onItsStop: 'on its stop',
  clearance: (onIts: unknown, home: string) => [onIts, ' clearance ', home],
  cableTooTight: 'cable too tight',
  mmOffLost: (cableToo: unknown, mm: string, off: string, home: string) => [
    cableToo,
    ' ',
    mm,
    ' mm off: ',
    off,
    ', ',
    home,
    ' lost',
  ],
});

/** ui/stations/park/wheels.ts */
export const parkWheels = section('parkWheels', {
  locks: 'locks',
  anySlope: 'any slope',
  noseTheVehicleHolds: (nose: 'down' | 'up', slope: unknown) => [
    'nose ',
    nose,
    ': the vehicle holds ',
    slope,
  ],
  bothWheels: 'Both wheels',
  oneOutOfOrder: 'One out of order',
  torqueAWheelCanHold: 'Torque a wheel can hold, N·m',
  leftWheel: 'Left wheel',
  rightWheel: 'Right wheel',
  eachWheelHoldsByIts: 'Each wheel holds by its own wear and tooth.',
  theWheelsStandOnOne: (asked: string) =>
    `The wheels stand on one vehicle, so the mean of both counts against ${asked}. Tyres are taken to grip.`,
});

/** ui/stations/park/words.ts */
export const parkWords = section('parkWords', {
  read: 'read',
  readInPart: 'read in part',
  notFirst: 'Never set the shoes with the cable: shoes first, lever on its stop, cable last.',
  ofItsWeight: ' of its weight',
  fromMemoryNotRead: 'from memory, not read',
  yourOwn: 'your own',
  way: (nose: 'down' | 'up') => `nose ${nose}`,
  on: (asked: string) => `on ${asked}`,
  letGoMoreThanIts: 'Let go, more than its strut can bear',
  letGoNMTurn: (torque: string) => `Let go, ${torque}\u00a0N·m turn the drum`,
  jammedNotParked: 'Jammed, not parked',
  holds: (on: string) => `Holds ${on}`,
  aShoeLocksByItself: (way: string) => `A shoe locks by itself, ${way}`,
  nMAWheelLeft: (left: string, way: string) => `${left}\u00a0N·m a wheel left, ${way}`,
  rolls: (on: string) => `Rolls ${on}`,
  shortOf: (on: string) => `Short of ${on}`,
  nMAWheelShort: (short: string, way: string) => `${short}\u00a0N·m a wheel short, ${way}`,
  bothSound: 'both sound',
  rightLeverPivotStiffHalf: 'right: lever pivot stiff, half the pull lost',
  rightOilOnTheRear: 'right: oil on the rear lining',
  rightOilOnTheFront: 'right: oil on the front lining',
  bothLiningsGlazed: 'both: linings glazed',
  faultSays: {
    none: 'Both wheels hold alike, and nearly the same both ways.',
    'stiff lever':
      'Weak both ways at one wheel, and slow to let go: less of the pull arrives. Free or renew the lever, check both sides.',
    'oil on rear':
      'Strong nose down, weak nose up, at one wheel: the rear shoe has lost its grip. Find the leak, shoes both sides.',
    'oil on front':
      'Weak nose down, strong nose up, at one wheel: the front shoe has lost its grip. Find the leak, shoes both sides.',
    glazed: 'Weak both ways at both wheels, notches normal: the linings have lost friction.',
  },
});

/** ui/stations/questions/list.ts */
export const questionsList = section('questionsList', {
  showMe: (ask: string) => `Show me: ${ask}`,
  showMe2: 'Show me',
  whichKindOfDrumBrake: 'Which kind of drum brake is yours?',
  noQuestionWithAllOf: 'No question with all of these words: these are the nearest.',
});

/** ui/stations/questions/part.ts */
export const questionsPart = section('questionsPart', {
  question: (ask: string) => `question: ${ask}`,
  backToTheQuestions: 'back to the questions',
  whichKindOfBrake: 'which kind of brake',
  questionClosed: 'question closed',
});

/** ui/stations/questions/station.ts */
export const questionsStation = section('questionsStation', {
  questions: 'Questions',
  thatPeopleReallyAskAre: (length: number, covered: number) =>
    `${length} that people really ask. ${covered} are answered here, the others say why not.`,
  search: 'Search',
  wordsOfYourQuestion: 'Words of your question',
  drumPedalLeverRust: 'drum, pedal, lever, rust …',
  of: (length: number, length2: number) => `${length} of ${length2}`,
});

/** ui/stations/road-editor.ts */
export const roadEditor = section('roadEditor', {
  perKmName: 'Stops',
  perKmUnit: 'per km',
  speedName: 'From',
  pressureName: 'At',
  decelerationName: 'By',
  foundAllowedTo: (
    name: string,
    name2: string,
    text: string,
    least: string,
    most: string,
    unit: string,
  ) => `${name}, ${name2}: found “${text}”; allowed: ${least} to ${most} ${unit}.`,
  changeTheRoadsStops: 'Change the road’s stops',
  asTheRoadHasIt: 'As the road has it',
});

/** ui/stations/see/desk.ts */
export const seeDesk = section('seeDesk', {
  not: (t: string) => `not ${t}`,
  number: (place: number) => `number ${place}`,
  fitsOfWhatWasSaid: (length: number) => `fits ${length} of what was said`,
  cannotBe: 'cannot be',
  theSame: 'the same',
});

/** ui/stations/see/free.ts */
export const seeFree = section('seeFree', {
  theSame: 'the same',
  rigid: (theSame: string) => `rigid: ${theSame}`,
  free: 'free',
  notByHand: 'not by hand',
  nAtTheTyre: (cold: string) => `${cold}\u00a0N at the tyre`,
  moreThan: (distance: string, working: string) => `more than ${distance}${working}`,
  workingItOut: 'Working it out…',
  coldByHand: 'Cold, by hand',
  hottestInTheFirstTrip: 'Hottest in the first trip',
  settlesAtAtKmH: (kmhon: number) => `Settles at, at ${kmhon}\u00a0km/h`,
  halfOfTheColdDrag: 'Half of the cold drag is gone after',
  freeColdTooAfter: 'Free, cold too, after',
  liningGoneByThen: 'Lining gone by then',
  shoesSetTooTight: 'Shoes set too tight',
  newLiningsThatStandInside:
    'New linings that stand inside the drum by so much. One tooth of the quay van is 0.15 mm.',
  howTightMm: 'How tight, mm',
  lessTight: 'less tight',
  tighter: 'tighter',
  notInAFewKilometres: 'Not in a few kilometres: hundreds.',
  theDrumGrowsOffIts:
    'The drum grows off its shoes as it warms, so it rubs itself free at that heat and clamps again each cold morning. Back the adjuster off instead.',
  aForceThatStays: 'A force that stays',
  cablePressureOrALeaning:
    'Cable, pressure or a leaning part press on however much has worn: that never wears free.',
  oneHotWheelToldApart: 'One hot wheel told apart',
  cause: 'Cause',
  at50KmH: 'At 50 km/h',
  byHand: 'By hand',
  toldApartBy: 'Told apart by',
  mineDragsSayWhatI: 'Mine drags: say what I see',
});

/** ui/stations/see/index.ts */
export const see = section('see', {
  beginAnew: 'Begin anew',
  change: 'Change',
  everythingThatCanBeSaid: 'Everything that can be said',
  withThisCase: 'With this case',
  drumOff: 'Drum off',
  newShoes: 'New shoes',
  inspect: 'Inspect',
});

/** ui/stations/see/likely.ts */
export const seeLikely = section('seeLikely', {
  because: (fitsTo: string) => `Because ${fitsTo}.`,
  nothingThatYouSaidPoints: 'Nothing that you said points to it.',
  itDoesNotExplainThat: (against: string) => `It does not explain that ${against}.`,
  noCheckPartsWhatIs: 'No check parts what is left',
  theyAreAlikeInAll: 'They are alike in all that can be seen here.',
  openTheDrumAndLook: 'Open the drum, and look at each of them in the order below.',
  minute: 'minute',
  minutes: 'minutes',
  cheapestNextCheck: (minutes: number, minute: string, name: string) =>
    `Cheapest next check, ${minutes} ${minute}: ${name}`,
  toBeginWith: 'To begin with',
  askedBecauseTheAnswerParts: 'Asked because the answer parts them:',
  theSame: 'the same',
  rigid: (theSame: string) => `rigid: ${theSame}`,
  fitsOf5: (fits: number) => `fits ${fits} of 5`,
  thenYouWouldAlsoFind: (also: string) => `Then you would also find: ${also}.`,
  rigid2: (rigid: string) => `rigid: ${rigid}`,
  ofRigidShoesUntilWhat: 'Of rigid shoes until what ones that bend show is',
  figuresOfTheQuayVan: 'Figures of the quay van until those of this brake are',
  workedOutOf: (ofRigid: string, done: number, of: number) =>
    `${ofRigid} worked out: ${done} of ${of}.`,
  noSingleCauseShowsAll: (pair: string) =>
    `No single cause shows all of this. Two at once do: ${pair}.`,
  likelyBestFirst: 'Likely, best first',
  fitsWhatISee: 'fits what I see',
  likelyCauses: 'Likely causes',
});

/** ui/stations/see/part.ts */
export const seePart = section('seePart', {
  atMost: (mostsaid: number) => `at most ${mostsaid}`,
  whatIsWrong: 'what is wrong',
  whatISee: 'what I see',
  seeSay: (key: string) => `see.say ${key}`,
  figuresOfARollerTest: 'figures of a roller test',
  aNewCase: 'a new case',
  theCaseCarriedAlong: 'the case carried along',
  aLikelyCause: 'a likely cause',
  backToWhatISee: 'back to what I see',
  mmTight: (tight: number) => `${tight} mm tight`,
});

/** ui/stations/see/said.ts */
export const seeSaid = section('seeSaid', {
  tapWhatYouNoticeIn: 'Tap what you notice, in any order; leave the rest.',
  nothingSaidYetAnswerBelow: 'Nothing said yet: answer below.',
  whatISee: 'What I see',
  notSure: 'not sure',
  takeItBack: ': take it back',
  aPrintOutForceA: 'A print-out: force a wheel by the pedal, in any one unit.',
  leftBackwards: 'Left, backwards',
  rightBackwards: 'Right, backwards',
});

/** ui/stations/see/sentences.ts */
export const seeSentences = section('seeSentences', {
  hot: {
    none: 'no drum gets hot',
    one: 'one rear drum gets hot',
    both: 'both rear drums get hot',
    all: 'all four wheels get hot',
  },
  heat: {
    cool: 'the drum stays cool',
    warm: 'the drum gets warm',
    'too hot': 'the drum gets too hot to touch',
  },
  travel: {
    short: 'the pedal goes less far than before',
    ever: 'the pedal goes as far as ever',
    long: 'the pedal goes farther than before',
    half: 'the pedal goes half way down',
    floor: 'the pedal goes to the floor',
  },
  feel: {
    firm: 'the pedal is firm',
    springy: 'the pedal is springy',
    throbs: 'the pedal pulses under the foot',
    wooden: 'the pedal is hard and it brakes badly',
    sinks: 'the pedal sinks slowly',
  },
  pumped: {
    up: 'pumping brings the pedal up',
    same: 'pumping changes nothing',
  },
  first: {
    like: 'the first press after a night is like the next',
    long: 'the first press after a night is long, the next ones good',
  },
  clicks: {
    none: 'the adjuster is never heard to click',
    heard: 'the adjuster is heard to click',
  },
  turns: {
    freely: 'the wheel turns freely by hand',
    rubs: 'the wheel rubs lightly as it is turned by hand',
    stiff: 'the wheel is stiff to turn by hand',
    not: 'the wheel cannot be turned by hand',
    jerk: 'the wheel does not turn, then gives with one jerk',
  },
  ways: {
    alike: 'it is as stiff forwards as backwards',
    unlike: 'it is much stiffer one way than the other',
  },
  rubs: {
    no: 'it rubs at no place in particular',
    once: 'it rubs once a turn',
    twice: 'it rubs twice a turn',
  },
  slides: {
    off: 'the drum slides off',
    some: 'the drum slides a few millimetres and stops',
    not: 'the drum does not move outwards at all',
  },
  rocks: { no: 'the wheel does not rock', yes: 'the wheel rocks at its top and bottom' },
  tap: { rings: 'the drum rings when tapped', dull: 'the drum sounds dull when tapped' },
  comes: {
    smooth: 'the brake comes on smoothly',
    jump: 'the brake comes on late and all at once',
  },
  release: {
    once: 'the wheel is free as soon as the pedal is let go',
    seconds: 'the wheel is free only seconds after the pedal is let go',
    not: 'the wheel stays stiff for minutes after the pedal is let go',
  },
  bleed: {
    nothing: 'opening the bleed point changes nothing',
    frees: 'opening the bleed point frees the wheel at once',
  },
  lever: {
    home: 'the parking lever in the drum is on its stop',
    off: 'the parking lever in the drum stands off its stop',
  },
  flexed: {
    comes: 'the parking lever follows the cable out and back',
    slow: 'the parking lever comes back slowly',
  },
  bite: {
    right: 'it brakes as ever',
    weak: 'it brakes weakly',
    strong: 'it grabs',
  },
  pull: {
    no: 'it does not pull to one side',
    yes: 'it pulls to one side',
  },
  back: {
    alike: 'it brakes as well backwards as forwards',
    less: 'it brakes much less backwards than forwards',
    more: 'it brakes much more backwards than forwards',
  },
  parked: {
    right: 'the parking brake holds',
    weak: 'the parking brake holds weakly',
    strong: 'the parking brake holds more than before',
  },
  oneway: {
    alike: 'it holds as well facing up as facing down',
    one: 'it holds facing one way only',
  },
  shoes: { both: 'both shoes move by hand', one: 'one shoe will not move by hand' },
  pads: {
    smooth: 'the pads on the plate are smooth',
    grooved: 'the pads on the plate are grooved',
  },
  round: {
    same: 'the bore measures the same all round',
    differs: 'the bore measures different from one angle to another',
  },
  swings: {
    still: 'a dial on the turning drum stands still',
    swings: 'a dial on the turning drum swings',
  },
  thin: {
    lead: 'the front lining is the thinner one',
    trail: 'the rear lining is the thinner one',
    alike: 'both linings are alike',
    gone: 'both linings are gone',
  },
  drumsize: {
    within: 'the drum is well within its mark',
    large: 'the drum is near its mark or past it',
  },
  pawl: {
    drops: 'the adjuster’s lever drops in',
    stiff: 'the adjuster’s lever is stiff',
    free: 'the adjuster’s lever swings free',
    other: 'the adjuster’s lever is of the other side',
  },
  wet: {
    dry: 'it is dry behind the drum',
    fluid: 'a cylinder’s boot is wet with fluid',
    oil: 'oil comes from the hub',
  },
  mark: {
    same: 'both wheel cylinders have the same bore',
    other: 'the wheel cylinders have unlike bores',
  },
  when: {
    always: 'it is always so',
    braked: 'it comes just after braking',
    longer: 'it gets worse the longer you drive',
    cold: 'it is so only while cold',
    parked: 'it comes after parking',
    laden: 'it comes only when laden',
    downhill: 'it comes after a long descent',
    damp: 'it comes with the first stops in the damp',
  },
  since: {
    sudden: 'it came all at once',
    weeks: 'it has been so for weeks',
    months: 'it got slowly worse over months',
    work: 'it has been so since some work',
  },
  after: {
    none: 'no work was done before',
    shoes: 'the shoes were worked on before',
    drum: 'the drum was worked on before',
    cylinder: 'a wheel cylinder was worked on before',
    pipe: 'a hose or pipe was worked on before',
    cable: 'the cable or the hand lever was worked on before',
    hub: 'the hub or its bearing was worked on before',
    master: 'the master, the booster or the pedal was worked on before',
    wash: 'it was washed, or stood in the rain',
    stood: 'it stood for months',
  },
  noise: {
    none: 'there is no noise',
    squeal: 'it squeals',
    grind: 'it grinds',
    groan: 'it groans or honks',
    clunk: 'it clunks once at a change of direction',
    rattle: 'it rattles',
    rub: 'a rub or a swish is heard',
    pop: 'it pops at the first touch',
    bang: 'there was a bang, and it locks one way',
  },
  smell: {
    none: 'there is no smell',
    burnt: 'it smells of burnt lining',
    oil: 'it smells of oil',
    fluid: 'it smells of brake fluid',
  },
  theHandLeverTakesNotches: (n: string) => `the hand lever takes ${n} notches`,
  itTakesAtTheTyre: (n: string) => `it takes ${n} at the tyre to keep the wheel turning`,
  theShoesTouchAt: (n: string) => `the shoes touch at ${n}`,
  theWeakerWheelLacksOn: (n: string) => `the weaker wheel lacks ${n} on the rollers`,
  theOddWheelGivesOf: (n: string) => `the odd wheel gives ${n} of what it gave before`,
  theOddWheelGivesBackwards: (n: string) =>
    `the odd wheel gives ${n} backwards of what it gives forwards`,
  theForceOnTheRollers: (n: string) => `the force on the rollers swings by ${n} in a turn`,
  teethBackLetTheDrum: (n: string) => `${n} teeth back let the drum go`,
  theAdjusterStandsAtTooth: (n: string) => `the adjuster stands at tooth ${n}`,
  onOneWheel: ' on one wheel, ',
  onTheOther: ' on the other',
  aSoundOne: (text: string, figureOf: string) => `${text}, a sound one ${figureOf}`,
  nothingSaidYet: 'nothing said yet',
});

/** ui/stations/see/sign-row.ts */
export const seeSignRow = section('seeSignRow', {
  notSure: 'not sure',
  less: 'less',
  more: 'more',
  thatIsIt: 'That is it',
});

/** ui/stations/see/words.ts */
export const seeWords = section('seeWords', {
  titles: {
    drag: 'It drags or gets hot',
    pedal: 'Long or soft pedal',
    lever: 'Lever goes too far, or will not hold',
    braking: 'Weak, grabs or pulls',
    noise: 'It makes a noise',
    free: 'Will it wear free?',
    all: 'What I see',
  },
  onTheRoad: 'On the road',
  atThePedal: 'At the pedal',
  atTheHandLever: 'At the hand lever',
  wheelsUp: 'Wheels up',
  onRollers: 'On rollers',
  drumOff: 'Drum off',
  or: ' or ',
});

/** ui/stations/start/index.ts */
export const start = section('start', {
  drumStuck: 'Drum stuck',
  willNotComeOffOr: 'will not come off, or not go on',
  itDragsOrGetsHot: 'It drags or gets hot',
  oneWheelOrAllWhen: 'one wheel or all, when and how',
  longOrSoftPedal: 'Long or soft pedal',
  farSpringySinkingPulsing: 'far, springy, sinking, pulsing',
  leverGoesTooFar: 'Lever goes too far',
  orWillNotHoldOn: 'or will not hold on a slope',
  fittingShoes: 'Fitting shoes',
  inOrderWithTheSizes: 'in order, with the sizes to set',
  areThesePartsStillGood: 'Are these parts still good?',
  drumLiningsSpringsCylinder: 'drum, linings, springs, cylinder',
  justShowMeHowIt: 'Just show me how it works',
  pressThePedalSeeAll: 'press the pedal, see all of it',
  waysIn: 'Ways in',
  whatIsWrong: 'What is wrong?',
  touchALineOrAsk: 'Touch a line, or ask in your own words.',
});

/** ui/stations/start/part.ts */
export const startPart = section('startPart', {
  aWayIn: 'a way in',
});

/** ui/stations/vary/beside.ts */
export const varyBeside = section('varyBeside', {
  noOtherBrake: 'no other brake',
});

/** ui/stations/vary/contours.ts */
export const varyContours = section('varyContours', {
  across: (under: number, j: number) => `across ${under} ${j}`,
  up: (i: unknown, under: number) => `up ${i} ${under}`,
});

/** ui/stations/vary/controls.ts */
export const varyControls = section('varyControls', {
  to: 'To',
  rangeFoundToAllowedTwo: (from: string, to: string) =>
    `Range: found ${from} to ${to}; allowed: two ends apart.`,
  howItIsAsked: 'How it is asked',
  drum: 'Drum',
  theAdjusterWorksInThat: 'The adjuster works in that press; else it keeps its tooth',
});

/** ui/stations/vary/curve.ts */
export const varyCurve = section('varyCurve', {
  from: (from: string) => ` from ${from}`,
});

/** ui/stations/vary/desk.ts */
export const varyDesk = section('varyDesk', {
  withoutTheFaultThatIs: 'without the fault that is built in',
  withItsOwnAdjuster: 'with its own adjuster',
  noSuchBrakeAllowed: (path: string, found: string, allowed: string) =>
    `No such brake: ${path} ${found}; allowed: ${allowed}.`,
  noSuchBrake: 'No such brake.',
});

/** ui/stations/vary/index.ts */
export const vary = section('vary', {
  whatDrawsMapsCouldNot: 'What draws maps could not be loaded: is the network there?',
  whatDrawsRegionsCouldNot: 'What draws regions could not be loaded: is the network there?',
  stopWorkingItOut: 'Stop working it out',
  theCurvesBrokeOff: (trouble: string) => `The curves broke off: ${trouble}`,
  cableN: (cable: string) => `, cable ${cable} N`,
  asItIs: 'As it is',
  curves: 'Curves',
  region: 'Region',
  asItIs2: (pressed: string) => `As it is, ${pressed}`,
  asItIs3: ', as it is',
  asItIs4: (value: string) => `; as it is, ${value}`,
});

/** ui/stations/vary/known.ts */
export const varyKnown = section('varyKnown', {
  perCent: '± per cent',
  byItsGauge: '± by its gauge',
  timesOrOver: 'times or over',
  how: 'How',
  remove: 'Remove',
  whatMattersMostFor: (name: string) => `What matters most for ${name}`,
  judged: {
    'cannot be': 'Cannot be built so',
    lost: 'Finds no place: the drum leaves no pose',
    locks: 'A shoe locks by itself',
    yields: 'A part gives way',
    drags: 'Drags when released',
    'front off': 'Front lining does not bear',
    'rear off': 'Rear lining does not bear',
    'lining limit': 'A lining is under its limit',
    'drum limit': 'The drum is over its limit',
    clicks: 'The adjuster clicks in this press',
  },
  howLikely: 'How likely',
  inWord: 'in',
  of: 'of',
  slopeDown: 'slope down',
  holdsOnNoseDown: (percent: string) => `Holds on ${percent} %, nose down`,
  slopeUp: 'slope up',
  holdsOnNoseUp: (percent: string) => `Holds on ${percent} %, nose up`,
  inNoneOfThem: (never: string) => `In none of them: ${never}.`,
  bands: 'Bands',
  of95Of100Brakes: '95 of 100 brakes',
  from: 'from',
  middle: 'middle',
  to: 'to',
  of100SuchBrakesLock: (untold: string) =>
    `${untold} of 100 such brakes lock, give way or cannot be built: they stand in no band.`,
  moreBrakesAreBeingDrawn: 'More brakes are being drawn …',
  howWellItIsKnown: 'How well it is known',
  frictionIsNeverKnownExactly:
    'Friction is never known exactly, a size no better than its gauge. Name what is not, and see what that does: bands instead of figures.',
  addWhatIsNotKnown: 'Add what is not known exactly',
  seedTheSameDrawsAgain: 'Seed: the same draws again',
});

/** ui/stations/vary/map-view.ts */
export const varyMapView = section('varyMapView', {
  mapOfArrowKeysGo: (name: string, told: string) =>
    `Map of ${name}; arrow keys go over it. ${told}`,
});

/** ui/stations/vary/own-formula.ts */
export const varyOwnFormula = section('varyOwnFormula', {
  whatReadsFormulasCouldNot: 'What reads formulas could not be loaded: is the network there?',
  namesThatFit: 'Names that fit',
  itsReaderIsComing: 'Its reader is coming …',
  atCharacterFoundAllowed: (at: number, found: string, why: string) =>
    `At character ${at}: found “${found}”; allowed: ${why}.`,
  nothingToTell: 'nothing to tell',
  asTheBrakeIs: (told: string) => `As the brake is: ${told}.`,
  ownFormula: 'Own formula',
  edit: 'Edit',
  remove: 'Remove',
  formulasAreKeptAtMost: (mostformulas: number) =>
    `${mostformulas} formulas are kept at most: remove one for another.`,
  name: 'Name',
  readingsSizesAndUnitsSuch: 'Readings, sizes and units, such as torque / (drum.diameterNew / 2)',
  readIt: 'Read it',
});

/** ui/stations/vary/own-rows.ts */
export const varyOwnRows = section('varyOwnRows', {
  ownFormulas: 'Own formulas',
  reading: 'Reading',
  value: 'Value',
  from: 'From',
  atCharacterFoundAllowed: (at: number, found: string, why: string) =>
    `(at character ${at}: found “${found}”; allowed: ${why})`,
});

/** ui/stations/vary/part.ts */
export const varyPart = section('varyPart', {
  own: (name: string) => `own ${name}`,
  aToleranceWithinItsBounds: 'a tolerance within its bounds',
  twoEndsApart: 'two ends apart',
  whatIsVaried: 'what is varied',
  whatIsRead: 'what is read',
  aSecondThingVaried: 'a second thing varied',
  aMap: 'a map',
  aBrakeBesideIt: 'a brake beside it',
  howItIsPressed: 'how it is pressed',
  theAdjusterAtWork: 'the adjuster at work',
  theAdjusterHeld: 'the adjuster held',
  formula: (name: string) => `formula ${name}`,
  aFormulaLess: 'a formula less',
  howWellItIsKnown: 'how well it is known',
  whatIf: 'what if',
  aPointOfTheCurve: 'a point of the curve',
  varyPick: (of: string) => `vary.pick ${of}`,
  asItWas: 'as it was',
});

/** ui/stations/vary/ready.ts */
export const varyReady = section('varyReady', {
  factorAgainstFrictionName: 'Factor against friction',
  leadingShareAgainstName: 'Leading share against friction',
  clearanceAgainstToothName: 'Clearance against tooth',
  torqueAgainstBoreName: 'Torque against bore',
  slopeHeldAgainstName: 'Slope held against cable',
  teethTakenHotName: 'Teeth taken hot',
  distanceToAName: 'Distance to a click against slot play',
  distanceToAName2: 'Distance to a click against pitch',
  distanceToAName3: 'Distance to a click against the lever’s tooth',
  mapTorqueOverName: 'Map: torque over friction and bore',
  pedalTravelAgainstName: 'Pedal travel against wear',
});

/** ui/stations/vary/region-view.ts */
export const varyRegionView = section('varyRegionView', {
  whereItDoesWhatIs: 'Where it does what is wished',
  noneHere: 'none here',
  mostRoom: 'most room',
  onTheStage: 'on the stage',
  sliceBySlice: (name: string) => `${name}, slice by slice`,
  atLeast: 'at least',
  atMost: 'at most',
  drumAtC: (hot: string) => `, drum at ${hot} °C`,
  mostRoom2: ', most room',
  not: 'not ',
  asWished: (name: string, values: string, unit: string, not: string, wishTold: string) =>
    `${name} ${values} ${unit}, ${not}as wished: ${wishTold}`,
  regionOfTheAnswerArrow: (told: string) => `Region of the answer; arrow keys go over it. ${told}`,
  hatchedItLocksGivesWay: 'hatched: it locks, gives way, or cannot be',
});

/** ui/stations/vary/room.ts */
export const varyRoom = section('varyRoom', {
  madeRoomThingsAreRead: (gone: string, mostread: number) =>
    `${gone} made room: ${mostread} things are read at most.`,
});

/** ui/stations/vary/scale.ts */
export const varyScale = section('varyScale', {
  markWords: {
    drags: 'linings drag at rest',
    'front off': 'front shoe off the drum',
    'rear off': 'rear shoe off the drum',
    'lining limit': 'lining under its limit',
    'drum limit': 'drum over its limit',
  },
  shoeLocks: (locked: unknown) => `${locked} shoe locks`,
  noSuchBrake: 'no such brake',
  aPartGivesWay: 'a part gives way',
});

/** ui/stations/vary/seek-controls.ts */
export const varySeekControls = section('varySeekControls', {
  howItIsAsked: 'How it is asked',
  drum: 'Drum',
});

/** ui/stations/vary/seek-ready.ts */
export const varySeekReady = section('varySeekReady', {
  from: (clearance: string) => `${clearance} mm is a choice; the descent is the scene’s hottest`,
  tooth: 'tooth',
  pitch: 'pitch',
  whichKeepsClearanceUnderAnd: (tooth: string, clearance: string) =>
    `Which ${tooth} keeps clearance under ${clearance} and never over-steps after this descent?`,
  theSameWithName: 'The same with the slot play free too',
  told: (part: string, deceleration: string) => `${part} % of a stop at ${deceleration} m/s²`,
  from2: (bar: string, within: string) =>
    `Share and stop are the scene’s; ${bar} bar is what this brake needs for it; within ±${within} %`,
  whichBoreAndArmGive: (told: string) => `Which bore and arm give this axle ${told}?`,
  theSameWithName2: 'The same with friction free too',
});

/** ui/stations/vary/seek-side.ts */
export const varySeekSide = section('varySeekSide', {
  upTo: 'To',
  alsoMissed: ', and ',
  nothingYet: 'nothing yet',
  atMost: (most: string) => `at most ${most}`,
  atLeast: (least: string) => `at least ${least}`,
  to: (least: string, most: string) => `${least} to ${most}`,
  drumAtC: (ends: string, hot: string) => `${ends}, drum at ${hot} °C`,
  whatIsAsked: 'What is asked',
  whatFollows: 'What follows?',
  whichSizesDoIt: 'Which sizes do it?',
  stopLooking: 'Stop looking',
  lookOnceMore: 'Look once more',
  lookForThem: 'Look for them',
  looking: 'Looking …',
  nothingHasBeenLookedFor: 'Nothing has been looked for yet.',
  nameASizeToChoose: 'Name a size to choose, and what is wished.',
  brakes: (brakes: string) => `${brakes} brakes worked out`,
  looking2: ', looking',
  drawingTheRegion: ', drawing the region',
  stopped: ', stopped',
  noneYet: 'None yet',
  noneOfThemDoesIt: 'None of them does it',
  to2: (name: string, low: string, high: string) => `${name} ${low} to ${high}`,
  howFarEachSizeReaches: 'How far each size reaches',
  doesIt: 'Does it',
  from: 'from',
  to3: 'to',
  mostRoom: 'most room',
  notEveryPairOfThese:
    'Not every pair of these: one goes with some of the other. The picture has which.',
  putTheOneWithMost: 'Put the one with most room on the stage',
  isNot: (name: string, toPrecision: string, wishTold: string) =>
    `${name} is ${toPrecision}, not ${wishTold}`,
  atIts: (name: string, end: 'least' | 'most', value: string) => `${name} at its ${end}, ${value}`,
  noneBetweenTheseBoundsDoes: 'None between these bounds does.',
  nearestThere: (place: string, missed: string) => `Nearest: ${place}; there ${missed}.`,
  inTheWay: (bounds: unknown) => ['In the way: ', bounds, '.'],
  noBoundIsInThe:
    'No bound is in the way: two wishes are against each other, or no such brake can be told.',
  putTheNearestOnThe: 'Put the nearest on the stage',
  asWished: 'as wished',
  notAsWished: 'not as wished',
  whatCameOfIt: 'What came of it',
  itBrokeOff: (trouble: string) => `It broke off: ${trouble}`,
  whatIsWished: 'What is wished',
  wished: 'Wished',
  asItIs: 'as it is',
  onTheStage: 'on the stage',
  backToTheBrakeAs: 'Back to the brake as it is',
  foundToAllowedTwoEnds: (name: string, from: string, to: string) =>
    `${name}: found ${from} to ${to}; allowed: two ends apart.`,
  now: (named: string, value: string) => `${named}: now ${value}`,
  remove: 'Remove',
  foundAllowedANumberFrom: (
    name: string,
    text: string,
    allowed: string,
    allowed2: string,
    unit: string,
  ) =>
    `${name}: found “${text}”; allowed: a number from ${allowed} to ${allowed2}${unit}, or nothing.`,
  atLeast2: 'At least',
  atMost2: 'At most',
  drumAt: 'Drum at',
  sizesToChoose: 'Sizes to choose',
  addOneUpTo: (mostfree: number) => `Add one, up to ${mostfree}`,
  addAReadingUpTo: (mostwishes: number) => `Add a reading, up to ${mostwishes}`,
  readyMade: 'Ready made',
  whatIf: 'What if',
  sayWhatABrakeShall:
    'Say what a brake shall do, and see which sizes do it: a region, not one number.',
});

/** ui/stations/vary/side.ts */
export const varySide = section('varySide', {
  andOf: '; and of ',
  theShoeLocksTheDrum: (locked: unknown) =>
    `The ${locked} shoe locks: the drum drags it tight by itself, and no force can be told.`,
  aPartOfTheStruts: 'A part of the strut’s path would give way before.',
  nothingBalancesHere: 'Nothing balances here.',
  andMore: '; and more',
  noSuchBrakeItCould: (told: string, andMore: string) =>
    `“No such brake”: it could not be put together. Allowed is, of ${told}${andMore}.`,
  whatIsRead: 'What is read',
  backTo: (value: string) => `Back to ${value}`,
  pressOrDragOnThe:
    'Press or drag on the picture, or Tab to it and use the arrow keys: the brake of that point stands on the stage.',
  name: 'nothing else',
  values: (length: number) => `${length} values`,
  whole: 'whole ',
  foundAllowed1ToNumbers: (
    name: string,
    found: string,
    mostcurves: number,
    whole: string,
    range: string,
    range2: string,
    unit: string,
  ) =>
    `${name}: found ${found}; allowed: 1 to ${mostcurves} ${whole}numbers from ${range} to ${range2}${unit}, with spaces between.`,
  aCurveForEachValue: 'A curve for each value',
  aMapOfBoth: 'A map of both',
  aSecondThingVaried: 'A second thing varied',
  picture: 'Picture',
  fromTheLeastToThe: 'From the least to the greatest of',
  itsValues: 'Its values',
  whatIsAsked: 'What is asked',
  vary: 'Vary',
  readUpTo: (mostread: number) => `Read, up to ${mostread}`,
  besideIt: 'Beside it',
  howWellItIsKnown: 'How well it is known',
  ownFormula: 'Own formula',
  readyMade: 'Ready made',
  furtherDown: 'Further down',
  whatIf: 'What if',
  changeOneThingAndSee:
    'Change one thing and see what follows; every point is a brake worked out anew.',
});

/** ui/stations/vary/tap.ts */
export const varyTap = section('varyTap', {
  itWereAnother: (name: string) => `it were another: ${name}`,
  whatIf: (name: unknown) => ['What if', name],
  whatIfItWereAnother: 'What if it were another?',
  whatIfItWereAnother2: ': what if it were another?',
});

/** ui/stations/vary/wants.ts */
export const varyWants = section('varyWants', {
  theQuestionTurnedRound: 'the question turned round',
  oneThingVaried: 'one thing varied',
  sizesToChoose: 'sizes to choose',
  whatIsWished: 'what is wished',
  aQuestionTurnedRound: 'a question turned round',
});

/** ui/stations/wear-events.ts */
export const wearEvents = section('wearEvents', {
  events: 'Events',
  nothingHasHappenedYetWear:
    'Nothing has happened yet. Wear on: clicks, limits and whatever goes wrong are told here, and each line leads back to its moment.',
  theLastOf: (most: number, length: number) => `The last ${most} of ${length}.`,
  showTheClickAgain: (text: string) => `Show the click again: ${text}`,
  showIt: 'Show it',
});

/** ui/stations/wear-forecast.ts */
export const wearForecast = section('wearForecast', {
  names: {
    'front lining': 'Front lining to its limit',
    'rear lining': 'Rear lining to its limit',
    drum: 'Drum to its largest diameter',
    teeth: 'Adjuster to its end',
  },
  forecast: 'Forecast',
  noneYetTooLittleHas: 'None yet: too little has worn to tell a rate.',
  reached: 'Reached.',
  bandToKm: (low: string, high: string) => `band ${low} to ${high} km`,
  about: (left: string, km: unknown, low: unknown) => ['about ', left, km, low],
});

/** ui/stations/wear-hot.ts */
export const wearHot = section('wearHot', {
  gapOfTheBrakeAs: 'Gap of the brake as built',
  wearOfTheLinings: 'Wear of the linings',
  wearOfTheDrum: 'Wear of the drum',
  takenUpByTheAdjuster: 'Taken up by the adjuster',
  growthOfTheHotDrum: 'Growth of the hot drum',
  giveUnderThePress: 'Give under the press',
  howFarTheSeatsOf: 'How far the seats of the strut part at the press, mm',
  beyondTheStrut: 'Beyond the strut',
  neededForAStep: 'Needed for a step',
  theHotLockHeldIt: 'the hot lock held it: no step',
  noStep: 'no step',
  andWhatHeatHasLent: (steps: string) => `${steps}, and what heat has lent goes back in the night`,
  drumCAtTheFoot: (temperature: string, did: string) =>
    `Drum ${temperature} °C at the foot: ${did}.`,
  dragsCold: 'Drags cold',
  freeCold: 'Free cold',
  theLiningsStandMmInside: (gapCold: string) =>
    `The linings stand ${gapCold} mm inside the cold drum.`,
  clearanceMmItWasBefore: (down: string, gapBefore: string, gapHot: string) =>
    `Clearance ${down} mm; it was ${gapBefore} before, ${gapHot} hot.`,
  atTheFoot: 'At the foot',
  nextMorning: 'Next morning',
  hotPress: 'Hot press',
  descentAt40KmH: 'Descent at 40 km/h, the brake holding the speed',
  driveDownPressAtThe: 'Drive down, press at the foot, let it cool',
  onTheStage: 'On the stage',
});

/** ui/stations/wear-on-paper.ts */
export const wearOnPaper = section('wearOnPaper', {
  overKm: (title: string, unit: string) => `${title}, ${unit}, over km`,
  wearReport: 'Wear report',
  partOfItIsStill: ' Part of it is still being driven.',
  fromToKm: (guest: string, distance: string, distance2: string, whole: string) =>
    `${guest}: from ${distance} to ${distance2} km.${whole}`,
  wearReport2: 'wear report',
  asks: ['Name', 'Date'],
  atTheStart: 'At the start',
  now: 'Now',
  limit: 'Limit',
  frontLiningThinnest: 'Front lining, thinnest',
  least: (thicknessMin: string) => `least ${thicknessMin}`,
  rearLiningThinnest: 'Rear lining, thinnest',
  drumDiameter: 'Drum, diameter',
  most: (radiusMax: string) => `most ${radiusMax}`,
  clearanceBothLinings: 'Clearance, both linings',
  pedalTravel: 'Pedal travel',
  stepOfTheAdjuster: 'Step of the adjuster',
  of: (teeth: number) => `of ${teeth}`,
  theLastOf: (events: number, length: number) => `: the last ${events} of ${length}`,
  whatHappened: (theLast: string) => `What happened${theLast}`,
  nothingYet: 'Nothing yet.',
});

/** ui/stations/wear-part.ts */
export const wearPart = section('wearPart', {
  pageOfWear: 'page of Wear',
  howFarToWearOn: 'how far to wear on',
  curveOfTheChart: 'curve of the chart',
  hillOf: (name: string | undefined) => `hill of ${name}`,
  road: (name: string | undefined) => `road: ${name}`,
  stopsOfTheRoad: 'stops of the road',
  whatWasTyped: 'what was typed',
  stopsOfTheRoadShown: 'stops of the road shown',
  stopsInReverse: 'stops in reverse',
  wornBy: {
    100: 'worn on by 100 km',
    1000: 'worn on by 1\u202f000 km',
    click: 'worn on to the next click',
    limit: 'worn on to the limit',
  },
  wornOn: 'worn on',
  to: (distance: string) => `to ${distance}`,
  hotPress: 'hot press',
  beforeTheHill: 'before the hill',
  atTheFoot: 'at the foot',
  nextMorning: 'next morning',
  startFrom: (name: string) => `start from ${name}`,
});

/** ui/stations/wear-set-up.ts */
export const wearSetUp = section('wearSetUp', {
  asTheRoadHasIt: 'as the road has it',
  oneStopInTen: 'one stop in ten',
  oneInFour: 'one in four',
  halfOfThem: 'half of them',
  setUp: 'Set up',
  adjuster: 'Adjuster',
  hotLockABimetalHolds: 'Hot lock: a bimetal holds the adjuster on a hot drum',
  onAboveC: (lockAt: number) => `On, above ${lockAt} °C`,
  off: 'Off',
  turnedBy: 'Turned by',
  eachPressOfThePedal: 'each press of the pedal',
  thePullOfTheParking: 'the pull of the parking lever alone',
  stopsInReverse: 'Stops in reverse',
  startFrom: 'Start from',
  choose: 'choose…',
  road: 'Road',
  secondCurve: 'Second curve',
});

/** ui/stations/wear.ts */
export const wear = section('wear', {
  releasedItDragsALining: (torque: unknown) => [
    'Released, it drags: a lining stands inside the cold drum, and ',
    torque,
    ' turn it.',
  ],
  click: 'click',
  readings: 'Readings',
  distance: 'Distance',
  sinceTheLast: (step: 'click' | 'step') => `Since the last ${step}`,
  noYet: (step: 'click' | 'step') => `No ${step} yet`,
  clearanceFront: 'Clearance, front',
  clearanceRear: 'Clearance, rear',
  temperature: 'Temperature',
  afterSpringsAtTheRoads: "After springs, at the road's first kind of stop, forward",
  factorAfterSprings: 'Factor after springs',
  hotPress: 'Hot press',
  setUp: 'Set up',
  wear: 'Wear',
  shownBelow: 'Shown below',
  toNext: (step: 'click' | 'step') => `to next ${step}`,
  toTheLimit: 'to the limit',
  wearOn: 'Wear on',
  wearOnFromHere: 'Wear on from here',
  stopHere: 'Stop here',
  theLifeSoFarIs: (floor: string) => `The life so far is driven again: ${floor} %.`,
  showTheClickAgain: 'Show the click again',
  pressItHere: 'Press it here',
  controls: 'Controls',
  road: 'Road',
  gapDrawn: 'Gap drawn',
  wearOnBy: 'Wear on by',
  backToNew: 'Back to new',
  allReadingsLayers: 'All readings, layers',
  toTheNext: (step: 'click' | 'step') => `To the next ${step}`,
  wearOn1Name: 'Wear on 1\u202f000 km',
});

/** ui/units.ts */
export const units = section('units', {
  of0001Inch: '0.001 inch',
  of1Um: '1 um',
  of1MileHour: '1 mile/hour',
  of1CycleMinute: '1 cycle/minute',
  of1000Psi: '1000 psi',
  allowed: (range: number, range2: number, unit: string) =>
    `a size such as ${range} to ${range2} ${unit}, or in another unit of the same kind`,
  characters: (text: string, length: number) => `${text}…, ${length} characters`,
  withTheUnknownUnit: (text: string, parts: string) => `"${text}" with the unknown unit "${parts}"`,
  whichIsNo: (text: string, unit: string) => `"${text}", which is no ${unit}`,
  mIsMilliWasMeant: (value: number, mega: string) => ` (m is milli; was ${value} ${mega} meant?)`,
  readAs: (text: string, inUnit: string, unit: string, asked: string) =>
    `"${text}", read as ${inUnit} ${unit}${asked}`,
  readAs2: (inUnit: string, unit: string) => `read as ${inUnit} ${unit}`,
  readAs3: (typed: string, inUnit: string, unit: string) => `read as ${typed} = ${inUnit} ${unit}`,
});

/** ui/words.ts */
export const wordsPage = section('wordsPage', {
  applyHint: {
    released:
      'Hold the pedal, or drag along it. Keys: space holds 40 bar, arrows set it bar by bar.',
    forward: 'Turn the drum backward and press again: the two shoes swap roles.',
    backward: 'Turn it forward again: leading is a role, not a place.',
    stopped:
      'Nothing turns: no torque, no factor. Both combs read as the trailing one’s in turning: a standing lining sticks to the drum as it comes out, which holds it back.',
  },
  lostText:
    'No balance was found: with this fit and friction the drum carries a shoe off its anchor. No force can be told.',
  ends: {
    distance: '',
    click: '',
    'lining limit': 'Ended: a lining is at its limit.',
    'drum limit': 'Ended: the drum is past its largest diameter.',
    'worn through': 'Ended: a lining is worn through to its table.',
    'piston run-out': 'Ended: a piston has left its bore.',
    'no balance': 'Ended: the drum carries a shoe off its anchor; nothing balances.',
    seized: 'Not driven on: seized, the wheel would slide before it turns.',
    'gave way': 'Not driven on: clamped more than the strut can bear.',
    locks: 'Not driven: a shoe would lock by itself.',
  },
  troubles: {
    'no start':
      'Not driven: the part of the page that drives a life did not load. If the page was renewed meanwhile, load it again.',
    silent: 'Not driven on: the part of the page that drives a life does not answer.',
    error: 'Not driven on: the part of the page that drives a life broke off.',
  },
  whatWasDrivenIsKept: (troubles: string, message: string) =>
    `${troubles} ${message}What was driven is kept; Wear on tries again.`,
});

/** ui/working/body-polygon.ts */
export const workingBodyPolygon = section('workingBodyPolygon', {
  nothingPushesOnTheShoe: (side: 'front' | 'rear') => `Nothing pushes on the ${side} shoe.`,
  forcesOnTheShoeTip: (side: 'front' | 'rear', told: string) =>
    `Forces on the ${side} shoe, tip to tail: ${told}`,
  front: 'Front',
  rear: 'Rear',
  shoeLeftOverN: (front: string, told: string, hypot: string) =>
    `${front} shoe: ${told}. Left over: ${hypot} N.`,
});

/** ui/working/body-words.ts */
export const workingBodyWords = section('workingBodyWords', {
  piston: 'piston',
  climbingLever: 'climbing lever',
  holdDown: 'hold-down',
  strut: 'strut',
  drumsPressure: 'drum’s pressure',
  drumsFriction: 'drum’s friction',
  anchor: 'anchor',
  parkingCable: 'parking cable',
  hand: 'hand',
  stopCylinder: 'stop: cylinder',
  stopHub: 'stop: hub',
  stopLever: 'stop: lever',
  stopPads: 'stop: pads',
});

/** ui/working/sheet.ts */
export const workingSheet = section('workingSheet', {
  copiedAs: (what: string) => `Copied as ${what}.`,
  thisBrowserLetsNothingBe: (text: string) => `This browser lets nothing be copied; it is: ${text}`,
  numbersPutIn: 'Numbers put in',
  symbol: 'Symbol',
  number: 'Number',
  whatItIs: 'What it is',
  whereFrom: 'Where from',
  wayToTheFactorShoe: (side: 'front' | 'rear') => `Way to the factor, ${side} shoe`,
  front: 'Front',
  rear: 'Rear',
  shoe: (front: string, role: 'leading' | 'trailing') => `${front} shoe, ${role}`,
  byTheClosedForm: 'By the closed form',
  byTheSumOverThe: 'By the sum over the lining’s elements',
  closedFormElements: (closed: string) => `Closed form ${closed}, elements`,
  elements: 'Elements',
  read: (closedForm: string, elements: string, read: string) =>
    `${closedForm} ${elements}, read ${read}.`,
  whyTheyDiffer: 'Why they differ',
  nothingToTellOfThe: (name: string) =>
    `${name}: nothing to tell of the brake as it stands. Most need it pressed: hold the pedal (Space) and look again.`,
  workingOf: (name: string) => `Working of ${name}`,
  theBrakeIsStillMoving: 'The brake is still moving: this is what the same pose gives at rest.',
  itIsToldRoundedDown: ' It is told rounded down: no lining is thicker than it is.',
  copyAsText: 'Copy as text',
  copyAsLaTeX: 'Copy as LaTeX',
  fromPressureToFactor: 'From pressure to factor',
  allForcesOnEachShoe: 'All forces on each shoe, laid tip to tail',
  theyComeBackToWhere: 'They come back to where they began: the shoe stands in balance.',
});

/** ui/working/whole.ts */
export const workingWhole = section('workingWhole', {
  front: 'Front',
  rear: 'Rear',
  shoe: (front: string, role: 'leading' | 'trailing') => `${front} shoe, ${role}`,
  byTheSumOverThe: 'by the sum over the lining’s elements',
  numbersPutIn: 'Numbers put in:',
  byTheClosedForm: 'by the closed form',
});
