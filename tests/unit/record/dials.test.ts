import { expect, it, vi } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  BAR,
  balance,
  createRig,
  readingOf,
  readings,
  readScene,
  rest,
  startState,
  tellFinding,
} from '../../../sim/index.ts';
import { dialledNow } from '../../../ui/record/dials.ts';
import { backToMine, makeMine, show } from '../../../ui/record/guest.ts';
import { openHands } from '../../../ui/record/hands.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import { linkOf, readLink, sendable } from '../../../ui/record/link.ts';
import { Session } from '../../../ui/session.ts';
import { mustRead } from '../../brakes.ts';
import { near } from '../../near.ts';

/** Dials: what turning one makes of the brake, where it stops, and that all of it can be taken back. */

vi.stubGlobal('matchMedia', () => ({
  matches: false,
  addEventListener: () => undefined,
}));
const { DialDesk } = await import('../../../ui/app/dials/desk.ts');

type Van = typeof quayVan;

/** A reading of the van with its file changed by hand, pressed at 40 bar. */
function told(key: string, change: (scene: Van) => void): number {
  const scene = structuredClone(quayVan);
  change(scene);
  const brake = mustRead(scene);
  const rig = createRig(brake);
  const state = startState(brake);
  const i = balance(rig, state, { pressure: 40 * BAR, turning: 1 });
  return readingOf(readings(brake, state, i, rest(rig, state)), key).value;
}

/** Dials on the van under a pedal at 40 bar. */
function opened() {
  const s = Session.of(quayVan, true);
  s.toggle('dials');
  s.pressTo(40);
  for (let n = 0; n < 120; n++) s.frame(1 / 60);
  s.close();
  const desk = new DialDesk(s);
  const dial = (id: string) => {
    const found = desk.dials.find((d) => d.id === id);
    if (!found) throw new Error(`no dial ${id}`);
    return found;
  };
  const read = (key: string): number => readingOf(s.readings(s.instant()), key).value;
  return { s, desk, dial, read };
}

it('has a dial for pedal, bore, each spring, tooth, friction, lining, both pins and the drum’s heat', () => {
  const { desk } = opened();
  expect(desk.dials.map((d) => `${d.short} ${desk.told(d)}`.replace('\u00a0', ' '))).toEqual([
    'Pedal 40 bar',
    'Bore 19.1 mm',
    'Spring 155 N',
    'Spring 155 N',
    'Tooth 0',
    'Friction 0.38',
    'Lining 4.5 mm',
    'Front pin −16, −78 mm',
    'Rear pin 16, −78 mm',
    'Drum 20 °C',
  ]);
});

it('a pin that is dragged: factor and torque are those of the scene with that pin, at once and once the brake has come up', () => {
  const { s, desk, dial, read } = opened();
  const before = s.moment.bench;
  for (const y of [-77, -75, -73]) desk.turn(dial('front anchor'), [-18, y]);
  const there = (key: string) =>
    told(key, ({ shoes }) => {
      shoes.front.anchor.at = [-18, -73];
    });
  near(read('brakeFactor'), there('brakeFactor'), { rel: 1e-6 });
  near(desk.factors.now, there('brakeFactor'), { rel: 1e-6 });
  near(
    desk.factors.was,
    told('brakeFactor', () => undefined),
    { rel: 1e-6 },
  );
  // Forces and comb are of the same instant, that of Balance.
  const { shoes } = s.instant();
  expect(Math.max(...shoes.front.pressure)).toBeGreaterThan(0);
  for (let n = 0; n < 120; n++) s.frame(1 / 60);
  // Two ways to the same balance: the bound that the page itself shows, 0.1 %.
  near(read('torque'), there('torque'), { rel: 1e-3 });
  expect(s.moment.pedal).toBe(40);
  expect(s.moment.guest?.mine.bench).toBe(before);
  expect(s.guest).toMatch(/front pin −18, −73/);
});

it('several are turned at once, each snaps back by itself, and the last one leaves one’s own brake', () => {
  const { s, desk, dial, read } = opened();
  const before = s.moment.bench;
  desk.turn(dial('shoes.lining.friction'), [0.45]);
  desk.turn(dial('cylinder.bore'), [20.6]);
  desk.turn(dial('temperature'), [200]);
  expect(dialledNow(s.moment)).toHaveLength(3);
  expect(s.state.temperature).toBe(200);
  desk.back(dial('temperature'));
  const both = told('torque', ({ shoes, cylinder }) => {
    shoes.front.lining.friction = 0.45;
    shoes.rear.lining.friction = 0.45;
    cylinder.bore = 20.6;
  });
  near(read('torque'), both, { rel: 1e-6 });
  desk.back(dial('cylinder.bore'));
  desk.back(dial('shoes.lining.friction'));
  expect(s.moment.guest).toBe(null);
  expect(s.moment.bench).toBe(before);
  expect(s.pedal).toBe(40);
  desk.turn(dial('springs.0.fitted'), [200]);
  desk.allBack();
  expect(s.moment.bench).toBe(before);
});

it('a drag is one step; undo and redo, text and link keep what is turned', async () => {
  const { s, desk, dial } = opened();
  const before = s.moment;
  for (const f of [0.4, 0.42, 0.44]) desk.turn(dial('shoes.lining.friction'), [f]);
  s.close();
  desk.turn(dial('cylinder.bore'), [20]);
  const after = toText(s.moment);
  s.undo();
  expect(dialledNow(s.moment)).toEqual([{ id: 'shoes.lining.friction', value: 0.44 }]);
  s.undo();
  expect(toText(s.moment)).toBe(toText(before));
  s.redo();
  s.redo();
  expect(toText(s.moment)).toBe(after);
  const kept = fromText(after);
  expect(kept.ok && toText(kept.moment)).toBe(after);
  const link = await linkOf(s.moment);
  const at = link.indexOf('#');
  const there = await readLink(link.slice(0, at), link.slice(at));
  expect(there.ok ? toText(there.moment) : there.wrong).toBe(toText(sendable(s.moment)));
});

it('a place of which there is no brake: the dial stops before it and tells the rule that refuses it', () => {
  const { s, desk, dial } = opened();
  const pin = dial('front anchor');
  desk.turn(pin, [10, -78]);
  const [x = 0, y] = desk.at(pin);
  expect(y).toBe(-78);
  // The rule: a front pin stands left of the axle, x of 0 or less. Six halvings of 26 mm leave under 0.5 mm.
  expect(x).toBeLessThanOrEqual(0);
  expect(x).toBeGreaterThan(-0.6);
  const file = structuredClone(quayVan);
  file.shoes.front.anchor.at = [10, -78];
  const refused = readScene(file);
  expect(refused.ok ? '' : tellFinding(refused.findings[0] as never)).toBe(desk.refused);
  expect(desk.refused).toMatch(/^shoes\.front\.anchor\.at: found .*; allowed: .*left of the axle/);
  expect(readScene({ ...file, ...(s.brake && {}) }).ok).toBe(false);
  desk.turn(pin, [-14, -78]);
  expect(desk.refused).toBe('');
  desk.turn(dial('cylinder.bore'), [90]);
  expect(desk.at(dial('cylinder.bore'))[0]).toBeLessThan(30);
  expect(desk.refused).not.toBe('');
});

it('leaves with its stations, stays when it is made one’s own; no other guest and no hands have dials', () => {
  const { s, desk, dial } = opened();
  desk.turn(dial('cylinder.bore'), [20]);
  s.do(show, 'park');
  expect(dialledNow(s.moment)).toHaveLength(1);
  s.do(show, 'inspect');
  expect(s.moment.guest).toBe(null);
  near(s.brake.cylinder.bore, 19.05, { abs: 1e-9 });
  s.undo();
  s.do(makeMine);
  near(s.brake.cylinder.bore, 20, { abs: 1e-9 });
  s.do(show, 'apply');
  // What it snaps back to is what it is now.
  expect(desk.home(dial('cylinder.bore'))).toEqual([20]);
  desk.turn(dial('cylinder.bore'), [21]);
  s.do(backToMine);
  near(s.brake.cylinder.bore, 20, { abs: 1e-9 });
  s.do(openHands, true);
  expect(desk.on).toBe(false);
});
