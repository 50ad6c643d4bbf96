/**
 * How many random cases a test goes through: few for every change, many on the long run
 * (`npm run test:long`). The seeds are the same, so the few are the first of the many.
 */
const counts = {
  // any-brake.test.ts
  balances: { few: 20, many: 2000 },
  comesToRest: { few: 10, many: 1000 },
  bendsFromCold: { few: 6, many: 100 },
  // flexible.test.ts
  settlesOnPins: { few: 20, many: 400 },
  settlesRigid: { few: 16, many: 1000 },
  settlesOnAbutments: { few: 6, many: 150 },
  // balance.test.ts
  quayVan: { few: 60, many: 3000 },
  randomPairs: { few: 120, many: 3000 },
  // record/any-record.test.ts
  records: { few: 2, many: 500 },
  // collisions.test.ts
  stages: { few: 60, many: 1e6 },
  // see/see.test.ts: two faults at once
  doubleFaults: { few: 12, many: 200 },
  // faults.test.ts: of the vans to find the fault of, one in so many
  vansInOne: { few: 4, many: 1 },
  // look-laptop.test.ts: each layer is turned in one of so many stations
  layersInOne: { few: 6, many: 1 },
  // budgets.test.ts: the first station, and one in so many of the others
  budgetsInOne: { few: 3, many: 1 },
  // access.test.ts: in one view of the page, a station in so many; laptop's and phone's rounds go to all in both
  stationsInOne: { few: 3, many: 1 },
  // click.test.ts: windows in which a click is shown picture by picture, the tightest first
  clickWindows: { few: 1, many: 3 },
  // collisions.test.ts: drawn at each of its steps on every stage, a lesson in so many
  lessonsDrawnInOne: { few: 3, many: 1 },
  // plates.test.ts: each plate at one of so many sizes
  platesInOne: { few: 3, many: 1 },
  // lessons.test.ts: in a browser, one in so many; all are run in Node (unit/lessons)
  lessonsInOne: { few: 3, many: 1 },
  // sheets.test.ts: of each paper, one sheet in so many
  sheetsInOne: { few: 3, many: 1 },
  // photo.test.ts: tapped through the page, one picture in so many; all are read in Node (unit/photo)
  photosInOne: { few: 9, many: 1 },
  // wall-room.test.ts: one station of so many
  wallsInOne: { few: 3, many: 1 },
  // memory.test.ts: on its rounds, views are turned on in one station of so many
  viewsInOne: { few: 3, many: 1 },
  // locks-sweep.test.ts: ground radii of 92.5 to 95.5, each four answers
  groundRadii: { few: 20, many: 300 },
  // the same file: places of each size, each four answers
  sweptSizes: { few: 5, many: 200 },
  // random-steps.test.ts: walks of 500 steps
  walks: { few: 12, many: 400 },
  // read-fuzz.test.ts: changed texts of each reader
  reads: { few: 60, many: 16000 },
  // no-jumps.test.ts: pairs of neighbours of each size
  jumps: { few: 3, many: 100 },
  // lever-body.test.ts: presses of each brake
  leverPresses: { few: 70, many: 1000 },
  // vary.test.ts: of each brake's quantities, one in so many
  quantitiesInOne: { few: 3, many: 1 },
  // bending-life.test.ts: of the standing states, one in so many
  standingInOne: { few: 2, many: 1 },
  // motion.test.ts: rates of 1/120, 1/240 and 1/480 s
  rates: { few: 2, many: 3 },
  // hands/grabs.test.ts; 10 000 are `npm run test:grabs`
  grabs: { few: 24, many: 300 },
  // figure.test.ts: stations, layers, brakes in turn; there are 16 stations and 4 brakes
  figures: { few: 4, many: 64 },
  // scene-fuzz.test.ts, of each scene; 50 000 are `npm run test:scenes`
  changedScenes: { few: 60, many: 1000 },
} as const;

/** What tests/run/long.mjs sets. */
export const long = process.env['TAKEUP_SAMPLES'] === 'many';

/** Random cases of a test, by its name above. */
export const samples = (test: keyof typeof counts): number => counts[test][long ? 'many' : 'few'];

/**
 * How many of a sample may be out of the ordinary, where a share of all are. The generator begins with
 * extremes, so the few are no fair sample: of them up to two thirds may be. Many show the share itself.
 */
export const atMost = (share: number, of: number): number =>
  Math.floor((long ? share : Math.max(share, 2 / 3)) * of);
