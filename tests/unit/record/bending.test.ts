import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  application,
  BAR,
  type BrakeState,
  balance,
  bentPoints,
  createRig,
  driveLife,
  freshState,
  KM,
  type LifeRow,
  lostVolume,
  type Point,
  readingOf,
  rest,
  suits,
} from '../../../sim/index.ts';
import { Bedding } from '../../../ui/app/bedding.ts';
import { LifeJob } from '../../../ui/life-job.ts';
import type { LifeDriver } from '../../../ui/life-messages.ts';
import { LifePlay } from '../../../ui/life-play.ts';
import { bedded } from '../../../ui/record/bench.ts';
import { brakeOf, isBending, rigid } from '../../../ui/record/derive.ts';
import { show } from '../../../ui/record/guest.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import { linkOf, readLink } from '../../../ui/record/link.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { bend } from '../../../ui/record/view.ts';
import { Session } from '../../../ui/session.ts';
import { apply } from '../../../ui/stage/geometry.ts';
import { BOW_SCALE, bow } from '../../../ui/stage/layers/bent.ts';
import { shoeFrame } from '../../../ui/stage/place.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { wearOn } from '../../../ui/stations/wear-part.ts';
import { themes } from '../../../ui/theme.ts';
import { near } from '../../near.ts';
import { quayVan as onStage } from '../stage/bench.ts';

const sides = ['front', 'rear'] as const;
/** Looks as the page does, some ten times a second, until the linings lie as the shoes ask for. */
async function bedIn(session: Session, bedding: Bedding): Promise<void> {
  for (let now = 0; session.bends !== session.bending; now += 90) {
    bedding.look(now);
    await new Promise((go) => setTimeout(go, 1));
  }
}
const open = (): { session: Session; bedding: Bedding } => {
  const session = Session.of(quayVan, true);
  return { session, bedding: new Bedding(session) };
};

describe('shoes that bend on the bench', () => {
  it('bend at once at new linings: the moving brake and its readings are those of bending shoes', () => {
    const { session } = open();
    session.press(60);
    session.toggleBending();
    expect([session.bends, isBending(session.brake)]).toEqual([true, true]);
    // What the mechanics say of the same scene asked for bending shoes, apart from the page.
    const rig = createRig(rigid(session.brake), { flexible: true });
    const press = { pressure: 60 * BAR, turning: 1 } as const;
    const own = balance(rig, session.state, press);
    for (let n = 0; n < 90; n++) session.frame(1 / 60);
    const seen = session.instant();
    near(seen.torqueOnDrum, own.torqueOnDrum, { rel: 1e-3 }, 'torque');
    near(session.rest.strutForce, rest(rig, session.state).strutForce, { rel: 1e-9 }, 'clamp');
    const told = session.readings(balance(session.rig, session.state, press));
    near(readingOf(told, 'torque').value, -own.torqueOnDrum / 1000, { rel: 1e-9 }, 'reading');
    // Bending gives a new leading lining 1.91 where rigid ones give 1.72 (sim/decisions, 2026-11-28).
    expect(readingOf(told, 'shoeFactorLeading').value).toBeGreaterThan(1.8);
  });

  it('steps its adjuster by the bending brake: at once with the hard press that parts its seats so far', () => {
    const { session } = open();
    const stiff = session.rig;
    // A state in which only shoes that bend step at a hard press: new linings in a drum a little wider.
    const hard = { pressure: 80 * BAR, turning: 1 } as const;
    const flexible = createRig(session.brake, { flexible: true });
    const clicks = (rig: typeof stiff, s: BrakeState) => application(rig, s, hard).clicked;
    let state = freshState(session.brake);
    for (let r = 100; clicks(flexible, state) <= clicks(stiff, state); r += 0.005) {
      state = freshState(session.brake, r);
      expect(r).toBeLessThan(100.5);
    }
    for (const bending of [false, true]) {
      const s = Session.of(quayVan, true);
      s.do(bend, bending);
      s.put({ ...s.moment, bench: { ...s.moment.bench, state } }, 'a wider drum');
      s.press(80);
      for (let n = 0; n < 120; n++) s.frame(1 / 60);
      expect(s.state.tooth).toBe(clicks(bending ? flexible : stiff, state));
    }
  });

  it('beds worn linings in first, and stays rigid till then; the way back brings the same linings', async () => {
    const { session, bedding } = open();
    session.standing('Worn-in');
    const worn = session.state;
    session.toggleBending();
    // Not before the linings lie as they wear under such shoes.
    expect([session.bending, session.bends]).toEqual([true, false]);
    await bedIn(session, bedding);
    const { state } = session;
    expect([session.bends, state.wornBy, state.tooth]).toEqual([true, 'bending', worn.tooth]);
    expect(suits(session.rig, state)).toBe(true);
    // Archard: as much volume is gone (sim/wear/rebed.ts).
    near(lostVolume(session.rig, state.wear), lostVolume(session.rig, worn.wear), { rel: 0.003 });
    expect([state.distance, state.drumRadius]).toEqual([worn.distance, worn.drumRadius]);
    session.toggleBending();
    await bedIn(session, bedding);
    expect(session.state.wear.front).toBe(worn.wear.front);
    // One step back takes the switch and what followed from it along.
    session.undo();
    expect([session.bends, session.state]).toEqual([true, state]);
    session.undo();
    expect([session.bending, session.state]).toEqual([false, worn]);
    session.redo();
    expect([session.bends, session.state]).toEqual([true, state]);
  });

  it('keeps what was done while the linings were bedded in, and leaves others alone', () => {
    const { session } = open();
    session.standing('Worn-in');
    session.toggleBending();
    const from = session.state;
    const other = { wear: { front: from.wear.front.slice(), rear: from.wear.rear.slice() } };
    const to = { ...other, wornBy: 'bending' } as const;
    const colder = { ...session.moment.bench.state, temperature: 80, tooth: from.tooth + 1 };
    const m = { ...session.moment, bench: { ...session.moment.bench, state: colder } };
    const { state } = bedded.does(m, from, to).bench;
    expect([state.temperature, state.tooth, state.wear]).toEqual([80, from.tooth + 1, to.wear]);
    const fresh = { ...m, bench: { ...m.bench, state: freshState(session.brake) } };
    expect(bedded.does(fresh, from, to)).toBe(fresh);
  });

  it('is in the link and in what is kept for a reload', async () => {
    const { session, bedding } = open();
    session.standing('Worn-in');
    session.toggleBending();
    await bedIn(session, bedding);
    const { moment } = session;
    const text = fromText(toText(moment));
    expect(text.ok ? toText(text.moment) : text.wrong).toBe(toText(moment));
    const link = await linkOf(moment);
    const at = link.indexOf('#');
    const there = await readLink(link.slice(0, at), link.slice(at));
    expect(there.ok ? isBending(brakeOf(there.moment)) : there.wrong).toBe(true);
  });

  it('stands beside the rigid brake: the same tooth and state, its own linings', async () => {
    const { session, bedding } = open();
    session.standing('Worn-in');
    const worn = session.state;
    session.toggleBending();
    await bedIn(session, bedding);
    const { other } = bedding;
    expect(other?.state).toEqual({ ...worn, wornBy: undefined });
    expect(other?.reached).toBe(worn.tooth);
    expect(other?.rig.options.flexible === true).toBe(false);
  });

  it('drives its life on with shoes that bend, as the mechanics do', () => {
    const m = bend.does(plainMoment(), true);
    const brake = brakeOf(m);
    const duty = brake.duties[0];
    const order = {
      run: 1,
      brake,
      state: freshState(brake),
      duty,
      options: { distance: 2000 * KM },
    };
    const end = (bending: boolean): LifeRow => {
      const job = new LifeJob({ ...order, bending });
      const rows: LifeRow[] = [];
      while (!job.done) rows.push(...job.slice(() => false).rows);
      return rows.at(-1) as LifeRow;
    };
    for (const bending of [false, true]) {
      const { distance, state } = end(bending);
      expect([distance, state.wornBy]).toEqual([2000 * KM, bending ? 'bending' : undefined]);
      const own = createRig(rigid(brake), { flexible: bending });
      const alone = driveLife(own, order.state, duty, order.options).rows.at(-1);
      expect(state.wear.front).toEqual(alone?.state.wear.front);
    }
    // What the page orders of its worker, as its record goes.
    const session = Session.of(quayVan, true);
    session.do(show, 'wear');
    session.toggleBending();
    session.do(wearOn);
    const orders: boolean[] = [];
    const driver: LifeDriver = { start: (o) => orders.push(o.bending), stop: () => undefined };
    new LifePlay(session, driver).begin(KM);
    expect(orders).toEqual([true]);
  });
});

describe('the bow of a bending shoe on the drawing', () => {
  const { brake, rig: stiff } = onStage();
  const view = fitView(brake, { width: 1370, height: 992, band: 30 });
  const theme = themes.sheet;
  const rig = createRig(brake, { flexible: true });
  const state = freshState(brake);
  const instant = balance(rig, state, { pressure: 80 * BAR, turning: 1 });

  it('moves the points of the steel as the solver does: the toe stands where the balance has it', () => {
    for (const side of sides) {
      const { pose, toe } = instant.shoes[side];
      const shoe = brake.shoes[side];
      const [at] = bentPoints(rig[side], [shoe.toe])(pose.modes) as [Point];
      const [x, y] = apply(shoeFrame(brake, instant, side), at);
      near(x, toe[0], { abs: 1e-9 }, side);
      near(y, toe[1], { abs: 1e-9 }, side);
      // It is bent at all, by hundredths of a millimetre.
      expect(Math.hypot(at[0] - shoe.toe[0], at[1] - shoe.toe[1])).toBeGreaterThan(0.02);
    }
    expect(bentPoints(stiff.front, [[1, 2]])([])).toEqual([[1, 2]]);
  });

  it('is drawn over both shoes with its scale said, and grows in proportion to the press', () => {
    const input = (i: typeof instant) => ({
      brake,
      state,
      instant: i,
      rest: rest(rig, state),
      layers: {},
      view,
      theme,
    });
    const { labels, shapes } = bow(rig, input(instant));
    expect(labels.map((l) => l.text).join()).toContain(`×${BOW_SCALE}`);
    expect(shapes.map((s) => s.key)).toEqual([
      'bent front 0',
      'bent front 1',
      'bent rear 0',
      'bent rear 1',
    ]);
    /** Farthest that a drawn outline stands off the same drawn without a bow, mm. */
    const most = (i: typeof instant): number => {
      const straight = { ...i, shoes: { ...i.shoes } };
      for (const side of sides) {
        const s = i.shoes[side];
        straight.shoes = {
          ...straight.shoes,
          [side]: { ...s, pose: { ...s.pose, modes: s.pose.modes.map(() => 0) } },
        };
      }
      const [a, b] = [bow(rig, input(i)).shapes, bow(rig, input(straight)).shapes];
      let far = 0;
      a.forEach((s, n) => {
        s.path.forEach((c, k) => {
          const d = b[n]?.path[k];
          if (c[0] === 'Z' || !d || d[0] === 'Z') return;
          far = Math.max(far, Math.hypot(c[1] - d[1], c[2] - d[2]));
        });
      });
      return far;
    };
    const hard = most(instant);
    // Between the eye's least and what would leave the drum: the drum's rim is some 10 mm off.
    expect(hard).toBeGreaterThan(2);
    expect(hard).toBeLessThan(12);
    const half = balance(rig, state, { pressure: 40 * BAR, turning: 1 });
    near(most(half) / hard, 0.5, { abs: 0.1 }, 'half the press');
  });

  it('is not there on rigid shoes', () => {
    const i = balance(stiff, state, { pressure: 80 * BAR, turning: 1 });
    const input = { brake, state, instant: i, rest: i, layers: {}, view, theme };
    expect(bow(stiff, input).shapes).toEqual([]);
  });
});
