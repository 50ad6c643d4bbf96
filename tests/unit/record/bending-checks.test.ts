import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  axleWith,
  balance,
  createRig,
  expected,
  freshState,
  ownAnswers,
  type Rig,
  roller,
  type Scene,
  shoeFactor,
  standingState,
  underShoes,
  wearRatio,
} from '../../../sim/index.ts';
import {
  cases,
  examinations,
  examine,
  faultOf,
  Investigation,
  ownSays,
  parted,
} from '../../../sim/workshop/index.ts';
import { read, sceneOfOwn } from '../../../ui/record/derive.ts';
import type { OwnBrake } from '../../../ui/record/shelf.ts';
import { Session } from '../../../ui/session.ts';
import { FaultsDesk } from '../../../ui/stations/faults/desk.ts';
import { OwnDesk } from '../../../ui/stations/own/desk.ts';
import { loadReader } from '../../../ui/typed-size.ts';
import { near } from '../../near.ts';
import { long } from '../../samples.ts';

/** One's brake with another friction. */
const sceneAt = (own: OwnBrake, friction: number): Scene =>
  sceneOfOwn({ ...own, sizes: { ...own.sizes, friction } });

/** The van as the mechanics have it apart from the page, under shoes of a kind, its linings worn in under them. */
const { brake } = read(quayVan);
const plain = createRig(brake);
const bent = createRig(brake, { flexible: true });
const van = (rig: Rig, standing: string) => ({
  rig,
  state: underShoes(rig, standingState(plain, standing)),
});

const open = (): { session: Session; desk: FaultsDesk } => {
  const session = Session.of(quayVan, true);
  session.toggleBending();
  return { session, desk: new FaultsDesk(session) };
};
/** Till the page has nothing left to work on. */
async function settled(busy: () => boolean): Promise<void> {
  while (busy()) await new Promise((go) => setTimeout(go, 1));
}

describe('checks of Faults under shoes that bend', () => {
  it('a fault’s readings are those of the bending van, the rigid ones beside them', async () => {
    const { session, desk } = open();
    desk.choose('strong springs');
    await settled(() => desk.bedding || desk.working);
    const fault = faultOf('strong springs');
    const axles = [bent, plain].map((rig) => {
      const sound = van(rig, 'Worn-in');
      return { sound: axleWith(sound, null), with: axleWith(sound, fault) };
    });
    const differ = (
      of: (typeof axles)[number] | undefined,
      id: (typeof examinations)[number]['id'],
    ) => (of ? parted(examine(of.sound, id), examine(of.with, id)) : []);
    const changed = desk.changed.map(({ by, after, rigid }) => ({ id: by.id, after, rigid }));
    const expected = examinations
      .map(({ id }) => ({ id, after: differ(axles[0], id), rigid: differ(axles[1], id) }))
      .filter(({ after, rigid }) => after.length + rigid.length > 0);
    expect(changed).toEqual(expected);
    // The two are not the same readings: the drag on the rollers differs by what shoes that bend give.
    expect(
      changed.some(({ after, rigid }) => JSON.stringify(after) !== JSON.stringify(rigid)),
    ).toBe(true);
    // Rigid again: the rigid readings alone.
    session.toggleBending();
    await settled(() => desk.bedding || desk.working);
    expect(desk.changed.map(({ by, after }) => ({ id: by.id, after }))).toEqual(
      expected
        .filter(({ rigid }) => rigid.length > 0)
        .map(({ id, rigid }) => ({ id, after: rigid })),
    );
    expect(desk.changed.every(({ rigid }) => rigid === null)).toBe(true);
  });

  it('a van to be found out is read bending too, and the cheapest way comes when every name is known', async () => {
    const { desk } = open();
    desk.show('find');
    const c = cases.find((x) => x.number === 17) ?? cases[0];
    while (desk.van.case !== c) desk.another();
    await settled(() => desk.bedding);
    desk.take('roller');
    const own = van(bent, c.from);
    const apart = new Investigation(c, own.rig, own.state);
    expect(desk.van.found('roller')).toEqual(apart.found('roller'));
    const rigid = van(plain, c.from);
    expect(desk.rigid('roller')).toEqual(
      new Investigation(c, rigid.rig, rigid.state).found('roller'),
    );
    expect(desk.rigid('roller')).not.toEqual(desk.van.found('roller'));
    // Few: that it is told, and how cheap, is asked of rigid shoes alone (unit/faults). Many: of these too.
    if (!long) return;
    desk.showCheapest();
    await settled(() => desk.cheapest === null);
    expect(desk.cheapest).toEqual(apart.cheapest());
    // Bending changes no verdict here: the same two checks do, below the tables' par.
    expect(desk.cheapest?.taken).toEqual(['story', 'bore']);
    expect(desk.cheapest?.minutes).toBeLessThanOrEqual(c.par);
  });

  it('a wheel is turned under the shoes it has, whoever asked before', () => {
    const [a, b] = [plain, bent].map((rig) => roller(van(rig, 'Worn-in'), 4).forward);
    const alone = createRig({ ...brake }, { flexible: true });
    expect(roller(van(alone, 'Worn-in'), 4).forward).toBe(b);
    expect(b).not.toBe(a);
  });
});

describe('My brake’s own checks under shoes that bend', () => {
  const at = { pressure: 4, turning: 1 } as const;
  const factor = (rig: Rig): number => {
    const pressed = balance(rig, freshState(brake), at);
    return shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear');
  };

  it('what stands on the bench is told bending, rigid beside it', () => {
    const { session } = open();
    const desk = new OwnDesk(session);
    near(desk.preview.factor, factor(bent), { rel: 1e-9 }, 'bending');
    near(desk.rigidPreview?.factor ?? Number.NaN, factor(plain), { rel: 1e-9 }, 'rigid');
    session.toggleBending();
    expect(desk.rigidPreview).toBeNull();
    near(desk.preview.factor, factor(plain), { rel: 1e-9 }, 'rigid alone');
  });

  it('so are the answers beside a picture', () => {
    const scene = quayVan as unknown as Scene;
    near(ownAnswers(scene, 40, true)?.factor ?? Number.NaN, factor(bent), { rel: 1e-9 }, 'bending');
    near(ownAnswers(scene, 40)?.factor ?? Number.NaN, factor(plain), { rel: 1e-9 }, 'rigid');
    // New linings: the leading shoe has 1.91 bending, 1.72 rigid (sim/decisions, wear belongs to its shoes).
    expect(factor(bent) / factor(plain)).toBeGreaterThan(1.03);
  });

  it('what a size changes, friction’s band and what the numbers say are told bending, rigid beside', async () => {
    await loadReader();
    const { session } = open();
    const desk = new OwnDesk(session);
    desk.typeDrum('200');
    desk.make();
    const own = (): OwnBrake => {
      if (!desk.own) throw new Error('no brake of one’s own on the bench');
      return desk.own;
    };
    desk.write(own(), 'friction', '0.42');
    await settled(() => desk.changed?.clicks === null || desk.changed?.rigid?.clicks === null);
    const scene = sceneOfOwn(own());
    const made = read(scene).brake;
    const rigs = [createRig(made, { flexible: true }), createRig(made)] as const;
    const torque = (rig: Rig): number =>
      Math.abs(balance(rig, freshState(rig.brake), at).torqueOnDrum);
    const { changed } = desk;
    near(changed?.after.torque ?? Number.NaN, torque(rigs[0]), { rel: 1e-9 }, 'bending');
    near(changed?.rigid?.after.torque ?? Number.NaN, torque(rigs[1]), { rel: 1e-9 }, 'rigid');
    expect(torque(rigs[0])).not.toBe(torque(rigs[1]));
    expect(changed?.clicks?.[1]).not.toBe(changed?.rigid?.clicks?.[1]);
    const friction = desk.frictionOf(own());
    expect(friction.answers[1]?.factor).toBe(
      ownAnswers(sceneAt(own(), friction.most), 40, true)?.factor,
    );
    expect(friction.rigid?.[1]?.factor).toBe(ownAnswers(sceneAt(own(), friction.most), 40)?.factor);
    for (const [key, text] of [
      ['leading', '3'],
      ['trailing', '4.1'],
      ['pedal', '40'],
    ] as const) {
      desk.measure(own(), key, text);
    }
    await settled(() => desk.says.working);
    const { told, rigid } = desk.says;
    const { found } = desk.foundOf(own());
    const said = (rig: Rig) =>
      ownSays(rig.brake, own().sizes, found, expected(rig, found), wearRatio(rig));
    expect(told).toEqual(said(rigs[0]));
    expect(rigid).toEqual(said(rigs[1]));
    // Bedded shoes wear by Archard's law with the pressure of a rigid shoe's: alike, whichever they are.
    near(wearRatio(rigs[0]), wearRatio(rigs[1]), { rel: 0.02 }, 'leading over trailing');
    // The pedal goes further with shoes that give.
    expect(told).not.toEqual(rigid);
    session.toggleBending();
    expect([desk.says.rigid, desk.changed?.rigid, desk.frictionOf(own()).rigid]).toEqual([
      null,
      null,
      null,
    ]);
  });
});
