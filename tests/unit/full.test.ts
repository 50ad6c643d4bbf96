import { describe, expect, it } from 'vitest';
import { Fullness } from '../../ui/full.ts';

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
