import { describe, expect, it } from 'vitest';
import { chooseBrake } from '../../../ui/record/bench.ts';
import { brakeOf } from '../../../ui/record/derive.ts';
import type { OwnBrake, Shelf } from '../../../ui/record/shelf.ts';
import { mergeShelf, withShelf } from '../../../ui/record/shelf-merge.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { teachingScenes } from '../../../ui/stations/own/read.ts';
import { near } from '../../near.ts';

const [base] = teachingScenes();
if (!base) throw new Error('a teaching brake');

const own = (over: Partial<OwnBrake> = {}): OwnBrake => ({
  name: 'own-a',
  title: 'Trailer',
  base,
  texts: { bore: '20', teeth: '18' },
  sizes: { bore: 20, teeth: 18 },
  ...over,
});
const shelf = (brakes: readonly OwnBrake[], removed: OwnBrake | null = null): Shelf => ({
  brakes,
  removed,
});
/** With one size typed anew. */
const typed = (b: OwnBrake, key: 'bore' | 'teeth' | 'mass', size: number): OwnBrake => ({
  ...b,
  texts: { ...b.texts, [key]: String(size) },
  sizes: { ...b.sizes, [key]: size },
});
const look = (s: Shelf) => s.brakes.map((b) => [b.title, b.texts, b.sizes]);

describe('the same brakes in two windows', () => {
  const before = shelf([own()]);

  it('changed in one alone: that one', () => {
    const mine = shelf([typed(own(), 'bore', 22)]);
    expect(mergeShelf(before, mine, before)).toEqual({ shelf: mine, told: [] });
    expect(mergeShelf(before, before, mine)).toEqual({ shelf: mine, told: [] });
    // As JSON brings it, no object is the same.
    const again = structuredClone(before);
    expect(mergeShelf(before, mine, again)).toEqual({ shelf: mine, told: [] });
    expect(mergeShelf(before, again, mine)).toEqual({ shelf: mine, told: [] });
  });

  it('another size in each: both, and the same in both windows', () => {
    const mine = shelf([typed(own(), 'bore', 22)]);
    const theirs = shelf([{ ...typed(own(), 'mass', 900), title: 'Old trailer' }]);
    const here = mergeShelf(before, mine, theirs);
    const there = mergeShelf(before, theirs, mine);
    const texts = { bore: '22', teeth: '18', mass: '900' };
    expect(look(here.shelf)).toEqual([['Old trailer', texts, { bore: 22, teeth: 18, mass: 900 }]]);
    expect(here.told).toEqual([]);
    expect(there).toEqual(here);
  });

  it('measured as it is now: each window’s own figure, and where both typed one, both versions', () => {
    const mine = shelf([own({ found: { leading: '3.1' } })]);
    const theirs = shelf([own({ found: { trailing: '4' } })]);
    expect(mergeShelf(before, mine, theirs).shelf.brakes).toEqual([
      own({ found: { leading: '3.1', trailing: '4' } }),
    ]);
    const other = shelf([own({ found: { leading: '2.9' } })]);
    const { shelf: both, told } = mergeShelf(before, mine, other);
    expect(both.brakes.map((b) => b.found)).toEqual([{ leading: '3.1' }, { leading: '2.9' }]);
    expect(told.join(' ')).toMatch(/Leading lining now/);
  });

  it('the same size in both: both versions, and it is told', () => {
    const mine = shelf([typed(own(), 'bore', 22)]);
    const theirs = shelf([typed(typed(own(), 'bore', 23), 'mass', 900)]);
    const { shelf: both, told } = mergeShelf(before, mine, theirs);
    expect(both.brakes.map((b) => [b.title, b.texts.bore])).toEqual([
      ['Trailer', '22'],
      ['Trailer (other window)', '23'],
    ]);
    expect(new Set(both.brakes.map((b) => b.name)).size).toBe(2);
    expect(told).toEqual([
      'Trailer was changed in two windows at once (Wheel cylinder, bore): both are kept, the other as “Trailer (other window)”.',
    ]);
    // Heard of once more, it makes no third.
    const again = mergeShelf(mine, both, theirs).shelf;
    expect(again.brakes).toHaveLength(2);
    // The other window takes both as they come.
    expect(mergeShelf(theirs, theirs, both)).toEqual({ shelf: both, told: [] });
  });

  it('the same size typed alike in both is no quarrel; another name in each is one', () => {
    const same = mergeShelf(
      before,
      shelf([typed(own(), 'bore', 22)]),
      shelf([typed(own(), 'bore', 22)]),
    );
    expect(look(same.shelf)).toEqual(look(shelf([typed(own(), 'bore', 22)])));
    expect(same.told).toEqual([]);
    const named = mergeShelf(before, shelf([own({ title: 'A' })]), shelf([own({ title: 'B' })]));
    expect(named.shelf.brakes.map((b) => b.title)).toEqual(['A', 'B (other window)']);
    expect(named.told).toHaveLength(1);
  });

  it('sizes that are sound each but not together: both texts, and this window’s brake', () => {
    // A new drum of 202.5 keeps its allowance of 1; together with a largest of 201 it is none.
    const mine = own({
      texts: { ...own().texts, drumNew: '202.5' },
      sizes: { ...own().sizes, drumNew: 202.5 },
    });
    const theirs = own({
      texts: { ...own().texts, drumMax: '201' },
      sizes: { ...own().sizes, drumMax: 201 },
    });
    const { shelf: merged } = mergeShelf(before, shelf([mine]), shelf([theirs]));
    expect(merged.brakes[0]?.texts).toEqual({
      bore: '20',
      teeth: '18',
      drumNew: '202.5',
      drumMax: '201',
    });
    expect(merged.brakes[0]?.sizes).toEqual(mine.sizes);
  });

  it('points tapped in a picture go along as one thing', () => {
    const photo = {
      width: 4000,
      height: 3000,
      wheel: 'left',
      texts: {},
      taps: { hub: [2000, 1500] },
      unseen: [],
      seen: { places: { heelF: [-17, -77] }, clearance: null, plateRadius: null },
    } as const;
    const mine = shelf([own({ photo })]);
    const theirs = shelf([typed(own(), 'mass', 900)]);
    const { shelf: both, told } = mergeShelf(before, mine, theirs);
    expect(told).toEqual([]);
    expect(both.brakes[0]?.photo).toEqual(photo);
    expect(both.brakes[0]?.sizes.mass).toBe(900);
    expect(mergeShelf(before, theirs, mine).shelf).toEqual(both);
    const other = { ...photo, taps: { hub: [2001, 1500] } } as const;
    const apart = mergeShelf(before, mine, shelf([own({ photo: other })]));
    expect(apart.shelf.brakes).toHaveLength(2);
    expect(apart.told[0]).toMatch(/\(Picture\)/);
  });

  it('made in each: both; deleted in one: gone, unless the other changed it', () => {
    const mine = shelf([own(), own({ name: 'own-b', title: 'Mine' })]);
    const theirs = shelf([own(), own({ name: 'own-c', title: 'Theirs' })]);
    const made = mergeShelf(before, mine, theirs).shelf;
    expect(made.brakes.map((b) => b.title)).toEqual(['Trailer', 'Mine', 'Theirs']);
    const gone = shelf([], own());
    const kept = shelf([own(), own({ name: 'own-b' })]);
    expect(mergeShelf(before, kept, gone).shelf).toEqual({
      brakes: [own({ name: 'own-b' })],
      removed: own(),
    });
    const changed = shelf([typed(own(), 'bore', 22)]);
    expect(mergeShelf(before, changed, gone).shelf).toEqual(changed);
    expect(mergeShelf(before, gone, changed).shelf).toEqual(changed);
  });
});

describe('the bench under another window’s shelf', () => {
  const before = shelf([own(), own({ name: 'own-b', title: 'Other' })]);
  const onIt = chooseBrake.does(plainMoment('apply', undefined, null, before), {
    kind: 'own',
    name: 'own-a',
  });
  const worn = {
    ...onIt,
    bench: { ...onIt.bench, state: { ...onIt.bench.state, tooth: 3 } },
  };

  it('a brake that the other deleted stays on the bench as it is', () => {
    const after = withShelf(worn, shelf([own({ name: 'own-b' })], own()));
    expect(after.bench.brake.kind).toBe('whole');
    expect(brakeOf(after).cylinder.bore).toBe(20);
    expect(brakeOf(after).title).toBe('Trailer');
    expect(after.bench.state).toBe(worn.bench.state);
  });

  it('a brake of other sizes stands there as worn as it was, or new where it cannot be so worn', () => {
    const sizes = withShelf(worn, shelf([typed(own(), 'bore', 22), ...before.brakes.slice(1)]));
    near(brakeOf(sizes).cylinder.bore, 22, { abs: 1e-12 });
    expect(sizes.bench.state).toEqual(worn.bench.state);
    const few = withShelf(worn, shelf([typed(own(), 'teeth', 2), ...before.brakes.slice(1)]));
    expect(brakeOf(few).adjuster.teeth).toBe(2);
    expect(few.bench.state.tooth).toBe(0);
  });

  it('another’s sizes, or a name, change nothing of it', () => {
    const named = withShelf(worn, shelf([own({ title: 'X' }), ...before.brakes.slice(1)]));
    expect(named.bench).toBe(worn.bench);
    const other = withShelf(worn, shelf([before.brakes[0] ?? own(), own({ name: 'own-c' })]));
    expect(other.bench).toBe(worn.bench);
  });

  it('also the one that waits behind a guest', () => {
    const guest = {
      call: { kind: 'van', number: 1 } as const,
      stands: ['faults'] as const,
      mine: {
        bench: worn.bench,
        turning: 1,
        station: 'apply',
        layers: {},
        parts: worn.parts,
      } as const,
    };
    const away = { ...plainMoment('faults', undefined, null, before), guest };
    const after = withShelf(away, shelf([]));
    expect(after.bench).toBe(away.bench);
    expect(after.guest?.mine.bench.brake.kind).toBe('whole');
  });
});
