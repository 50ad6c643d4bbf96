import { type Band, KM, type LifeRow, type Reading } from '../../../sim/index.ts';
import type { Stand } from '../stand.ts';
import type { Cell, Table } from './table.ts';

/** The tables that the bench can give: its readings, the life that was driven, the curves of What if. */

const readingRow = (group: string, r: Reading): Cell[] => [
  group,
  r.key,
  r.side ?? '',
  r.name,
  Number.isFinite(r.value) ? r.value : null,
  r.unit,
];

/** Every reading of the moment; with those that take many instants, as the table of all readings has them. */
async function readingsOf({ session, readings, more }: Stand): Promise<Table> {
  const rows = [
    ...readings.map((r) => readingRow('Now', r)),
    ...(await more()).flatMap(({ title, list }) => list.map((r) => readingRow(title, r))),
  ];
  return {
    id: 'readings',
    title: `Readings of ${session.brake.title}`,
    columns: ['Group', 'Key', 'Shoe', 'Reading', 'Value', 'Unit'].map((name) => ({
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
  ['Distance', 'km', (r) => r.distance / KM],
  ['Row', '', (r) => r.at],
  ['Clearance at rest', 'mm', (r) => r.clearance],
  ['Lining left, front', 'mm', (r) => r.liningFront],
  ['Lining left, rear', 'mm', (r) => r.liningRear],
  ['Brake factor, after springs', '', (r) => r.brakeFactor],
  ['Adjuster tooth', '', (r) => r.tooth],
  ['Highest drum temperature', '°C', (r) => r.temperature],
  ['Pedal travel', 'mm', (r) => r.pedalTravel],
  ['Drum radius', 'mm', (r) => r.drumRadius],
  ['Lip', 'mm', (r) => r.lip],
  ['Drag, released', 'N·m', (r) => r.drag.torque / MILLI],
  ['Power of the drag', 'W', (r) => r.drag.power / MILLI],
];

export const lifeTable = (title: string, rows: readonly LifeRow[]): Table => ({
  id: 'life',
  title: `Life of ${title}`,
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
    { name: `${name}, band from`, unit },
    { name: `${name}, band to`, unit },
  ]);

/** The band's places: in the readings' own columns its middle. */
export const bandRows = (
  curve: readonly { readonly x: number; readonly bands: readonly Band[] }[],
): Cell[][] => {
  const told = (value: number): Cell => (Number.isFinite(value) ? value : null);
  return curve.map(({ x, bands }) => [
    'Band, 95 of 100',
    x,
    ...bands.map((b) => told(b.middle)),
    ...bands.flatMap((b) => [told(b.low), told(b.high)]),
    bands.every((b) => b.told === 1) ? 'sound' : 'not all of them told',
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
    title: `${of.name} varied, ${session.brake.title}${desk.busy ? ', as far as it has come' : ''}`,
    columns: [
      { name: 'Curve', unit: '' },
      { name: of.name, unit: of.unit },
      ...(desk.up ? [{ name: desk.up.name, unit: desk.up.unit }] : []),
      ...read.map(({ name, unit }) => ({ name, unit })),
      ...(spread ? bandColumns(read) : []),
      { name: 'Brake', unit: '' },
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
  const asked = covered ? 'Answer what is asked first: the readings would tell.' : '';
  const [readings, life, sweep] = covered
    ? [null, null, null]
    : await Promise.all([readingsOf(stand), lifeOf(stand), sweepOf(stand)]);
  return [
    { id: 'readings', name: 'All readings of the moment', table: readings, else: asked },
    {
      id: 'life',
      name: 'The life that was driven',
      table: life,
      else: asked || 'None yet: let it wear on in Wear, then come back.',
    },
    {
      id: 'what-if',
      name: 'The curves of What if',
      table: sweep,
      else: asked || 'None here: open What if (key v), ask something, and take it from there.',
    },
  ];
}
