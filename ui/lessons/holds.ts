import type { Finding } from '../../sim/index.ts';
import { lessonsHolds as words } from '../../sim/words/en.ts';
import type { Lesson, Step } from './format.ts';
import { type Ran, runStep } from './run.ts';
import { figuresOf, figureValue, holds, rounded } from './text.ts';
import { textsOf } from './texts.ts';

/** Where a lesson and the model disagree: figures that no longer hold, and conditions that are not met. */

/** A value by its key with the moment before it; NaN where there is none. */
export function valueBy(named: string, ran: Ran): number {
  const [first = '', second] = named.split('.');
  const [moment, key] = second === undefined ? ['now', first] : [first, second];
  return ran.notes.get(moment)?.of(key)?.value ?? Number.NaN;
}

const bounds = (least: number | undefined, most: number | undefined): string =>
  [least === undefined ? '' : words.atLeast(least), most === undefined ? '' : words.atMost(most)]
    .filter((t) => t !== '')
    .join(', ');

function stepFindings(step: Step, path: string, ran: Ran): Finding[] {
  const figures = textsOf(step, path).flatMap(([where, text]) =>
    figuresOf(text)
      .filter((f) => !holds(f, ran))
      .map((f): Finding => {
        const value = figureValue(f, ran);
        const told = value ? rounded(f, value) : words.aValueThatIsTold;
        return { path: where, found: f.text, allowed: told };
      }),
  );
  const checks = step.checks.flatMap(({ least, most, over, value }, i): Finding[] => {
    const now = valueBy(value, ran) / (over === undefined ? 1 : valueBy(over, ran));
    if (now >= (least ?? Number.NEGATIVE_INFINITY) && now <= (most ?? Number.POSITIVE_INFINITY)) {
      return [];
    }
    const found = words.found(
      value,
      over === undefined ? '' : words.over(over),
      now.toPrecision(4),
    );
    return [{ path: `${path}.checks.${i}`, found, allowed: bounds(least, most) }];
  });
  return [...figures, ...checks];
}

/** Runs every step and holds its text against what came of it. */
export const untrue = (lesson: Lesson): Finding[] =>
  lesson.steps.flatMap((step, i) => {
    const path = `steps.${i}`;
    try {
      return stepFindings(step, path, runStep(lesson, step));
    } catch (error) {
      const found = error instanceof Error ? error.message : String(error);
      return [{ path: `${path}.hand`, found, allowed: words.whatTheBrakeCanDo }];
    }
  });
