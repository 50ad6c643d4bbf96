import { expect, it } from 'vitest';
import { languageAsked, storeOr } from '../../../ui/language.ts';

const store = (kept: string | null = null) => ({
  kept,
  getItem: () => kept,
  setItem(_: string, text: string) {
    this.kept = text;
  },
});

it('is English until somebody asks for another', () => {
  expect(languageAsked('', store(), store())).toBe('en');
  expect(languageAsked('?lang=xx', store('yy'), store('zz'))).toBe('en');
});

it('an address is heard before the window, the window before the device', () => {
  expect(languageAsked('', store(), store('de'))).toBe('de');
  expect(languageAsked('', store('en'), store('de'))).toBe('en');
  expect(languageAsked('?station=wear&lang=de', store('en'), store('en'))).toBe('de');
  expect(languageAsked('?lang=en', store('de'), store('de'))).toBe('en');
});

it('what an address asks for holds for its window, and for no other', () => {
  const [here, everywhere] = [store(), store()];
  languageAsked('?lang=de', here, everywhere);
  expect([here.kept, everywhere.kept]).toEqual(['de', null]);
});

it('a browser that forbids its storage, or has none left, is English', () => {
  const forbidden = storeOr(() => {
    throw new Error('not allowed');
  });
  expect(languageAsked('', forbidden, forbidden)).toBe('en');
  const full = {
    getItem: () => null,
    setItem: () => {
      throw new Error('full');
    },
  };
  expect(languageAsked('?lang=de', full, full)).toBe('de');
});
