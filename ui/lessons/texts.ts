import type { Step } from './format.ts';

/** The texts of a step that may name values, by their paths. */
export const textsOf = (
  step: Step,
  path: string,
): readonly (readonly [path: string, text: string])[] =>
  (
    [
      ['title', step.title],
      ['ask', step.ask],
      ['shows', step.shows],
      ['why', step.why],
      ['next', step.next],
      ['say', step.say],
      ['tryIt', step.tryIt],
      ['notes.point', step.notes?.point],
      ['notes.ask', step.notes?.ask],
      ['notes.behind', step.notes?.behind],
      ...(step.choices ?? []).flatMap((c, i) => [
        [`choices.${i}.shows`, c.shows] as const,
        [`choices.${i}.back`, c.back] as const,
        ...c.says.map((s, k) => [`choices.${i}.says.${k}.words`, s.words] as const),
      ]),
    ] as const
  ).flatMap(([key, text]) => (text === undefined ? [] : [[`${path}.${key}`, text] as const]));
