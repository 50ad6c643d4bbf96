import * as v from 'valibot';

/** Kinds of value in a scene file, each with its unit told in the description. */
export const num = (about: string, min = -1e9, max = 1e9) =>
  v.pipe(
    v.number('a number'),
    v.finite('a finite number'),
    v.minValue(min, `at least ${min}`),
    v.maxValue(max, `at most ${max}`),
    v.description(about),
  );
export const size = (about: string, max = 1000) =>
  v.pipe(
    v.number('a number'),
    v.finite('a finite number'),
    v.gtValue(0, 'more than 0'),
    v.maxValue(max, `at most ${max}`),
    v.description(about),
  );
export const count = (about: string, min: number, max: number) =>
  v.pipe(
    v.number('a number'),
    v.integer('a whole number'),
    v.minValue(min, `at least ${min}`),
    v.maxValue(max, `at most ${max}`),
    v.description(about),
  );
export const words = (about: string) =>
  v.pipe(v.string('text'), v.nonEmpty('text that is not empty'), v.description(about));
export const point = (about: string) =>
  v.pipe(
    v.strictTuple([num('x, mm', -1000, 1000), num('y, mm', -1000, 1000)]),
    v.description(about),
  );
