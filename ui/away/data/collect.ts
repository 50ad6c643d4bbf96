import { type Band, KM, type LifeRow, type Reading } from '../../../sim/index.ts';
import { labelWords, awayDataCollect as words } from '../../../sim/words/en.ts';
import { sideName } from '../../pieces/reading-name.ts';
import type { Stand } from '../stand.ts';
import type { Cell, Table } from './table.ts';

/** The tables that the bench can give: its readings, the life that was driven, the curves of What if. */

const readingRow = (group: string, r: Reading): Cell[] => [
  group,
  r.key,
  r.side ? sideName(r.side) : '',
  r.name,
  Number.isFinite(r.value) ? r.value : null,
  r.unit,
];

/** Every reading of the moment; with those that take many instants, as the table of all readings has them. */
async function readingsOf({ session, readings, more }: Stand): Promise<Table> {
  const rows = [
    ...readings.map((r) => readingRow(labelWords.now, r)),
    ...(await more()).flatMap(({ title, list }) => list.map((r) => readingRow(title, r))),
  ];
  return {
    id: 'readings',
    title: words.readingsOf(session.brake.title),
    columns: [
      labelWords.group,
      labelWords.key,
      labelWords.shoe,
      labelWords.reading,
      labelWords.value,
      labelWords.unit,
    ].map((name) => ({
      name,
      unit: '',
    })),
    rows,
  };
}

/** N·mm in one N·m, and N·mm/s in one W. */
const MILLI = 1000;

/** Columns of a life, with what a row gives in the unit told. */
const LIFE: readonly (readonly [name: string, unit: string, of: (row: LifeRow) => Cell])[] = [
  [labelWords.distance, 'km', (r) => r.distance / KM],
  [labelWords.row, '', (r) => r.at],
  [words.clearanceAtRest, 'mm', (r) => r.clearance],
  [words.liningLeftFront, 'mm', (r) => r.liningFront],
  [words.liningLeftRear, 'mm', (r) => r.liningRear],
  [words.brakeFactorAfterSprings, '', (r) => r.brakeFactor],
  [words.adjusterTooth, '', (r) => r.tooth],
  [words.highestDrumTemperature, '°C', (r) => r.temperature],
  [words.pedalTravel, 'mm', (r) => r.pedalTravel],
  [words.drumRadius, 'mm', (r) => r.drumRadius],
  [labelWords.lip, 'mm', (r) => r.lip],
  [words.dragReleased, 'N·m', (r) => r.drag.torque / MILLI],
  [words.powerOfTheDrag, 'W', (r) => r.drag.power / MILLI],
];

export const lifeTable = (title: string, rows: readonly LifeRow[]): Table => ({
  id: 'life',
  title: words.lifeOf(title),
  columns: LIFE.map(([name, unit]) => ({ name, unit })),
  rows: rows.map((row) => LIFE.map(([, , of]) => of(row))),
});

async function lifeOf({ session }: Stand): Promise<Table | null> {
  const [{ WearDesk }, { deskOf }] = await Promise.all([
    import('../../stations/wear-desk.ts'),
    import('../../stations/station.ts'),
  ]);
  const { rows } = deskOf(WearDesk, session);
  return rows.length > 1 ? lifeTable(session.brake.title, rows) : null;
}

/** Columns of the band of what is read: from and to, of 95 of 100 brakes. */
const bandColumns = (
  read: readonly { readonly name: string; readonly unit: string }[],
): Table['columns'] =>
  read.flatMap(({ name, unit }) => [
    { name: words.bandFrom(name), unit },
    { name: words.bandTo(name), unit },
  ]);

/** The band's places: in the readings' own columns its middle. */
export const bandRows = (
  curve: readonly { readonly x: number; readonly bands: readonly Band[] }[],
): Cell[][] => {
  const told = (value: number): Cell => (Number.isFinite(value) ? value : null);
  return curve.map(({ x, bands }) => [
    words.band95Of100,
    x,
    ...bands.map((b) => told(b.middle)),
    ...bands.flatMap((b) => [told(b.low), told(b.high)]),
    bands.every((b) => b.told === 1) ? 'sound' : words.notAllOfThemTold,
  ]);
};

async function sweepOf({ session, station }: Stand): Promise<Table | null> {
  if (station.id !== 'vary') return null;
  const [{ VaryDesk }, { deskOf }] = await Promise.all([
    import('../../stations/vary/desk.ts'),
    import('../../stations/station.ts'),
  ]);
  const desk = deskOf(VaryDesk, session);
  const { curves, read, of } = desk;
  const spread = desk.up ? null : desk.spread;
  const none = spread ? read.flatMap((): Cell[] => [null, null]) : [];
  const rows = curves.flatMap(({ label, points }) =>
    points.map((p): Cell[] => [
      label,
      p.at[0] ?? null,
      ...(desk.up ? [p.at[1] ?? null] : []),
      ...p.values,
      ...none,
      p.why,
    ]),
  );
  const places = spread ? bandRows(spread.curve) : [];
  if (rows.length === 0) return null;
  return {
    id: 'what-if',
    title: words.varied(of.name, session.brake.title, desk.busy ? words.asFarAsItHas : ''),
    columns: [
      { name: words.curveName, unit: '' },
      { name: of.name, unit: of.unit },
      ...(desk.up ? [{ name: desk.up.name, unit: desk.up.unit }] : []),
      ...read.map(({ name, unit }) => ({ name, unit })),
      ...(spread ? bandColumns(read) : []),
      { name: labelWords.brake, unit: '' },
    ],
    rows: [...rows, ...places],
  };
}

export interface Offered {
  readonly id: 'readings' | 'life' | 'what-if';
  readonly name: string;
  /** Null: there is nothing of it now. */
  readonly table: Table | null;
  /** What to do for there to be something. */
  readonly else: string;
}

export async function tablesOf(stand: Stand): Promise<readonly Offered[]> {
  const { covered } = stand;
  const asked = covered ? words.answerWhatIsAskedFirst : '';
  const [readings, life, sweep] = covered
    ? [null, null, null]
    : await Promise.all([readingsOf(stand), lifeOf(stand), sweepOf(stand)]);
  return [
    { id: 'readings', name: words.readingsName, table: readings, else: asked },
    {
      id: 'life',
      name: words.lifeName,
      table: life,
      else: asked || words.noneYetLetItWear,
    },
    {
      id: 'what-if',
      name: words.whatIfName,
      table: sweep,
      else: asked || words.noneHereOpenWhatIf,
    },
  ];
}
