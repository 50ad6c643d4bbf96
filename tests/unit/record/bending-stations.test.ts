import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  createRig,
  DRIVE,
  freshState,
  newFit,
  type Rig,
  standingState,
  underShoes,
  wearsFree,
} from '../../../sim/index.ts';
import { judgePart, type SignTable, signTable } from '../../../sim/workshop/index.ts';
import { read } from '../../../ui/record/derive.ts';
import { begin } from '../../../ui/record/history.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { Session } from '../../../ui/session.ts';
import { follow } from '../../../ui/stations/ask/lead.ts';
import { PartDesk } from '../../../ui/stations/inspect/parts.ts';
import { ShoeDesk } from '../../../ui/stations/new-shoes/desk.ts';
import { SeeDesk } from '../../../ui/stations/see/desk.ts';
import { FreeDesk } from '../../../ui/stations/see/free.ts';
import stored from '../../../ui/stations/see/van-signs.json' with { type: 'json' };
import { loadReader } from '../../../ui/typed-size.ts';
import { near } from '../../near.ts';

/** The van as the mechanics have it apart from the page, its shoes rigid and bending. */
const { brake } = read(quayVan);
const plain = createRig(brake);
const bent = createRig(brake, { flexible: true });
const session = (): Session => new Session(begin(plainMoment('apply')), true);

/** Till the page has nothing left to work on. */
async function settled(busy: () => boolean): Promise<void> {
  while (busy()) await new Promise((go) => setTimeout(go, 1));
}

describe('What I see under shoes that bend', () => {
  const stand = (rig: Rig, name: string) => ({
    rig,
    state: underShoes(rig, standingState(plain, name)),
  });

  it('causes and checks go by what bending shoes show, the rigid ones beside', async () => {
    const s = session();
    const desk = new SeeDesk(s);
    const table = stored as unknown as SignTable;
    expect(desk.table.faults).toEqual(table.faults);
    expect(desk.rigidTable).toBeNull();
    desk.say('bite', 'right');
    expect(desk.causes.every((c) => c.rigid === null)).toBe(true);
    s.toggleBending();
    // Till they are worked out those of rigid shoes stand, and that is told.
    expect(desk.working?.done).toBe(0);
    expect(desk.table.faults).toEqual(table.faults);
    await settled(() => desk.working !== null);
    const worn = stand(bent, 'Worn-in');
    const own = signTable({ worn, clicked: worn }, ['kept pull', 'oversize bore']);
    expect(desk.table.sound).toEqual(own.sound);
    expect(desk.table.faults).toMatchObject(own.faults);
    expect(Object.keys(desk.table.faults)).toEqual(Object.keys(table.faults));
    expect(desk.rigidTable).toEqual(table);
    // An oversize bore bites weak with shoes that bend, and right with rigid ones (ui/decisions, shoes that bend).
    expect(own.faults['oversize bore']?.bite).toEqual(['weak']);
    expect(table.faults['oversize bore']?.bite).toEqual(['right']);
    desk.say('bite', 'weak');
    const { causes } = desk;
    expect(causes.length).toBeGreaterThan(0);
    expect(causes.every((c) => c.rigid !== null)).toBe(true);
    expect(causes.some((c) => c.rigid !== 'the same')).toBe(true);
  });

  it('so does what comes of shoes set too tight', async () => {
    const s = session();
    const desk = new FreeDesk(s);
    expect(desk.rigidDriven).toBeNull();
    s.toggleBending();
    await settled(
      () => desk.driven.results.length < 3 || (desk.rigidDriven?.results.length ?? 0) < 3,
    );
    const driven = (rig: Rig) => {
      const trips = wearsFree(rig, freshState(brake), desk.tight, (40 * DRIVE) / 50);
      return [trips.next().value, trips.next().value, trips.next().value];
    };
    const told = [desk.driven, desk.rigidDriven].map((d) => d?.results.slice(0, 3));
    expect(told[0]).toEqual(driven(bent));
    expect(told[1]).toEqual(driven(plain));
    expect(told[0]).not.toEqual(told[1]);
    await settled(() => (desk.rigidForced?.length ?? 0) < 4 || desk.forced.length < 4);
    expect(desk.forced.map((f) => f.id)).toEqual(desk.rigidForced?.map((f) => f.id));
    expect(desk.forced).not.toEqual(desk.rigidForced);
  });
});

it('New parts are judged on bending shoes, the rigid verdict beside', async () => {
  await loadReader();
  const s = session();
  const desk = new PartDesk(s);
  desk.write('left', 'lining', String(brake.shoes.front.lining.thicknessNew));
  desk.write('left', 'ground', String(brake.shoes.front.lining.groundRadius - 0.2));
  desk.write('left', 'width', '38');
  expect(desk.judged.verdicts.left.map((v) => v.rigid)).toEqual([null, null]);
  s.toggleBending();
  const [fit, width] = desk.judged.verdicts.left;
  const { groundRadius, thicknessNew: lining } = brake.shoes.front.lining;
  const part = { lining, ground: groundRadius - 0.2, width: 38 };
  const bore = 2 * brake.drum.radiusNew;
  expect(fit?.words).toBe(judgePart(bent, part, bore, null)[0]?.words);
  expect(fit?.rigid).toBe(judgePart(plain, part, bore, null)[0]?.words);
  expect(fit?.words).not.toBe(fit?.rigid);
  // A width is the same for both.
  expect(width?.rigid).toBeNull();
});

it('New shoes have a pair of figures, drum on or off, and the rigid answer at each step', () => {
  const s = session();
  const desk = new ShoeDesk(s);
  expect(desk.pairs).toEqual([]);
  expect([desk.rigidFit, desk.rigidBeds, desk.rigidCost]).toEqual([null, null, null]);
  s.toggleBending();
  const lining = { thickness: desk.thickness, groundRadius: desk.ground / 2 };
  const [own, rigid] = [bent, plain].map((rig) => newFit(rig, lining, desk.bore / 2));
  expect(desk.drumOn).toBe(false);
  const [gap, torque] = desk.pairs;
  near(gap?.bend ?? Number.NaN, own?.fit.gap ?? 0, { rel: 1e-9 }, 'gap, bending');
  near(gap?.rigid ?? Number.NaN, rigid?.fit.gap ?? 0, { rel: 1e-9 }, 'gap, rigid');
  near(torque?.bend ?? Number.NaN, (own?.torque ?? 0) / 1000, { rel: 1e-9 }, 'torque, bending');
  near(torque?.rigid ?? Number.NaN, (rigid?.torque ?? 0) / 1000, { rel: 1e-9 }, 'torque, rigid');
  expect(gap?.bend).not.toBe(gap?.rigid);
  expect(desk.rigidFit).toEqual(rigid?.fit);
  desk.setTooth(0);
  desk.tryDrum();
  expect(desk.drumOn).toBe(true);
  expect(desk.rigidBeds?.map((b) => b.km)).toEqual(desk.beds.map((b) => b.km));
  expect(desk.rigidBeds?.[0]?.torque).not.toBe(desk.beds[0]?.torque);
});

it('Ask leads to shoes that bend, and leaves them on', () => {
  const s = session();
  expect(follow(s, { to: 'bending' })).toBe(false);
  expect([s.station, s.bending]).toEqual(['apply', true]);
  follow(s, { to: 'bending' });
  expect(s.bending).toBe(true);
});
