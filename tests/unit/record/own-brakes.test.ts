import { beforeAll, describe, expect, it } from 'vitest';
import { chooseBrake, putState } from '../../../ui/record/bench.ts';
import { brakeOf } from '../../../ui/record/derive.ts';
import { arrive } from '../../../ui/record/guest.ts';
import { begin, undo } from '../../../ui/record/history.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import type { OwnPhoto } from '../../../ui/record/own-photo.ts';
import { MOST_BRAKES } from '../../../ui/record/shelf.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import {
  ask,
  forgetPhoto,
  goToPoint,
  make,
  measure,
  photograph,
  remove,
  rename,
  restore,
  startFrom,
  typeDrum,
  write,
} from '../../../ui/stations/own/part.ts';
import { judgeOwn, sizesOfTexts, teachingScenes } from '../../../ui/stations/own/read.ts';
import { loadReader } from '../../../ui/typed-size.ts';
import { near } from '../../near.ts';
import { doing } from './doing.ts';

beforeAll(loadReader);

const [quay] = teachingScenes();
if (!quay) throw new Error('a teaching brake');

const plain = plainMoment('own');
const mine = make.does(plain, 'own-a', quay, 'Mine', { drumNew: '8"' }, { drumNew: 203.2 });
const own = (m: Moment) => m.shelf.brakes[0];
/** A size as the page types it: read first. */
const typed = (m: Moment, text: string): Moment => {
  const b = own(m);
  if (!b) throw new Error('no brake');
  return write.does(m, b.name, 'bore', text, sizesOfTexts(b, { ...b.texts, bore: text }));
};

describe('what a size changed, and what was measured beside', () => {
  it('what stood before the first letter of a size is what it is told against', () => {
    const half = typed(mine, '20');
    const whole = typed(half, '20.64');
    expect(whole.parts.own.changed).toEqual({
      name: 'own-a',
      key: 'bore',
      before: { drumNew: 203.2 },
    });
    const b = own(whole);
    if (!b) throw new Error('no brake');
    const next = write.does(
      whole,
      b.name,
      'tyre',
      '300',
      sizesOfTexts(b, { ...b.texts, tyre: '300' }),
    );
    expect(next.parts.own.changed?.before).toEqual({ drumNew: 203.2, bore: 20.64 });
  });

  it('a measurement of it as it is now is kept word for word, and the bench stays as it is', () => {
    const m = measure.does(mine, 'own-a', 'leading', '3,1 mm');
    expect(own(m)?.found).toEqual({ leading: '3,1 mm' });
    expect(m.bench).toBe(mine.bench);
    expect(fromText(toText(m))).toEqual({ ok: true, moment: m });
    expect(measure.does(m, 'own-a', 'leading', '3,1 mm')).toBe(m);
    expect(measure.does(m, 'own-none', 'leading', '3')).toBe(m);
  });
});

describe('brakes of one’s own in the record', () => {
  it('one that is made stands on the bench, new, and what was typed for it is gone', () => {
    const before = startFrom.does(typeDrum.does(plain, '8"'), 'bench-brake');
    const m = make.does(before, 'own-b', quay, 'Mine', { drumNew: '8"' }, { drumNew: 203.2 });
    expect(m.bench.brake).toEqual({ kind: 'own', name: 'own-b' });
    near(brakeOf(m).drum.radiusNew, 101.6, { abs: 1e-9 }, '8 inches across');
    expect(m.bench.state.tooth).toBe(0);
    expect(m.parts.own).toEqual(plain.parts.own);
    expect(m.parts['new-shoes'].bore).toBeGreaterThan(203.2);
    const read = fromText(toText(m));
    expect(read.ok && read.moment).toEqual(m);
  });

  it('a sound size puts it there anew at once; an unsound one is kept and changes nothing there', () => {
    const worn = putState.does(mine, { ...mine.bench.state, tooth: 3, distance: 1e9 });
    const sound = typed(worn, '13/16 in');
    near(brakeOf(sound).cylinder.bore, 20.6375, { abs: 1e-9 }, '13/16 in');
    expect(sound.bench.state).toMatchObject({ tooth: 0, distance: 0 });
    const wide = typed(worn, 'wide');
    expect(own(wide)?.texts.bore).toBe('wide');
    expect(wide.bench).toBe(worn.bench);
    expect(brakeOf(wide).cylinder.bore).toBe(19.05);
  });

  it('places from a picture put it there anew, taps without places leave it; all can be undone', () => {
    const worn = putState.does(mine, { ...mine.bench.state, tooth: 3, distance: 1e9 });
    const none: OwnPhoto = {
      width: 4000,
      height: 3000,
      wheel: 'left',
      texts: {},
      taps: { hub: [2000, 1500] },
      unseen: [],
      seen: null,
    };
    const tapped = photograph.does(worn, 'own-a', none, 'hub');
    expect(tapped.bench).toBe(worn.bench);
    const places = { heelF: [-18, -79] } as const;
    const lies = { ...none, seen: { places, clearance: null, plateRadius: null } };
    const h = doing(begin(tapped), photograph, 'own-a', lies, 'leading heel');
    expect(brakeOf(h.present).shoes.front.anchor.at).toEqual([-18, -79]);
    expect(h.present.bench.state.tooth).toBe(0);
    expect(h.past.map((s) => s.said)).toEqual(['picture: leading heel']);
    const read = fromText(toText(h.present));
    expect(read.ok && read.moment).toEqual(h.present);
    expect(undo(h)?.history.present).toBe(tapped);
    const gone = forgetPhoto.does(goToPoint.does(h.present, 'heelR'), 'own-a');
    expect(own(gone)?.photo).toBe(undefined);
    expect(gone.parts.own.point).toBe(null);
    near(brakeOf(gone).shoes.front.anchor.at[0], -16 * 1.016, { abs: 1e-9 }, 'as it was');
  });

  it('another brake’s size leaves the bench alone', () => {
    const away = chooseBrake.does(mine, { kind: 'scene', name: 'bench-brake' });
    expect(typed(away, '22.2').bench).toBe(away.bench);
  });

  it('typing is one step, deleting and its question another; each can be undone', () => {
    let h = begin(mine);
    for (const text of ['2', '22', '22.2']) {
      h = doing(h, write, 'own-a', 'bore', text, text === '22.2' ? { bore: 22.2 } : null);
    }
    h = doing(doing(h, ask, 'own-a'), remove, 'own-a');
    expect(h.past.map((s) => s.said)).toEqual(['wheel cylinder, bore', 'Mine deleted']);
    expect(h.present.bench.brake).toEqual({ kind: 'scene', name: 'quay-van' });
    expect(h.present.shelf.removed?.texts.bore).toBe('22.2');
    const u = undo(h);
    expect(u?.history.present.bench.brake).toEqual({ kind: 'own', name: 'own-a' });
    expect(u?.history.present.parts.own.asking).toBe(null);
    expect(u && undo(u.history)?.history.present).toBe(mine);
    const again = restore.does(h.present);
    expect(again.bench.brake).toEqual({ kind: 'own', name: 'own-a' });
    expect(again.shelf.removed).toBe(null);
  });

  it('a brake that waits behind a guest comes back before it is changed or deleted', () => {
    const guest = arrive(mine, { kind: 'van', number: 1 }, ['faults', 'own']);
    const away = { ...guest, bench: plain.bench };
    const gone = remove.does(away, 'own-a');
    expect(gone.guest).toBe(null);
    expect(gone.bench.brake).toEqual({ kind: 'scene', name: 'quay-van' });
    expect(typed(away, '22.2').guest).toBe(null);
  });

  it('a blank name is none, a long one is cut; more brakes than are kept are refused and told', () => {
    expect(rename.does(mine, 'own-a', '  ')).toBe(mine);
    expect(own(rename.does(mine, 'own-a', 'x'.repeat(99)))?.title).toHaveLength(80);
    let m = plain;
    const one = own(mine);
    if (!one) throw new Error('no brake');
    m = {
      ...m,
      shelf: {
        removed: one,
        brakes: Array.from({ length: MOST_BRAKES }, (_, i) => ({ ...one, name: `own-x${i}` })),
      },
    };
    const full = make.does(m, 'own-z', quay, 'Mine', {}, {});
    expect(full.shelf).toBe(m.shelf);
    expect(full.parts.own.said).toMatch(/^Not made: 200 brakes/);
    expect(restore.does(m).parts.own.said).toMatch(/^Not brought back/);
  });

  it('texts are read to sizes, or to what is wrong at their fields', () => {
    const named = { name: 'own-a', title: 'Mine', base: quay };
    const good = judgeOwn(named, { drumNew: '8"', bore: '22,2', teeth: '18' });
    expect(good.sizes).toEqual({ drumNew: expect.closeTo(203.2, 9), bore: 22.2, teeth: 18 });
    const bad = judgeOwn(named, { drumMax: '199', bore: '23' });
    expect(bad.sizes).toBe(null);
    expect(bad.wrong).toEqual({
      drumMax:
        'found 199 mm; allowed: at least the new diameter, 200 mm. A drum only ever gets larger.',
    });
    expect(judgeOwn(named, { teeth: '7.5' }).wrong.teeth).toMatch(/whole number, 1 to 2000/);
  });
});
