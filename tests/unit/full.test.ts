import { describe, expect, it } from 'vitest';
import { Fullness, SingleKeys } from '../../ui/full.ts';

describe('how much is shown', () => {
  it('is little at first, and remembered by the device', () => {
    const kept = new Map<string, string>();
    const store = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    };
    const first = new Fullness(store);
    expect(first.full).toBe(false);
    let told = 0;
    first.addEventListener('change', () => {
      told += 1;
    });
    first.turn();
    expect([first.full, told, new Fullness(store).full]).toEqual([true, 1, true]);
    first.turn();
    expect([first.full, told, new Fullness(store).full]).toEqual([false, 2, false]);
  });

  it('turns without a storage, and with one that is full', () => {
    const shut = new Fullness(null);
    shut.turn();
    expect(shut.full).toBe(true);
    const full = new Fullness({
      getItem: () => null,
      setItem: () => {
        throw new Error('no room');
      },
    });
    full.turn();
    expect(full.full).toBe(true);
  });
});

describe('keys of one sign', () => {
  it('work at first; turned off, only those with a name, the space bar among them, are left', () => {
    const kept = new Map<string, string>();
    const store = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    };
    const keys = new SingleKeys(store);
    const muted = ['w', '?', '3', ' ', 'Escape', 'ArrowLeft'];
    const off = () => muted.filter((key) => keys.mutes({ key }));
    expect(off()).toEqual([]);
    keys.turn();
    expect(off()).toEqual(['w', '?', '3']);
    expect(new SingleKeys(store).on).toBe(false);
  });
});
