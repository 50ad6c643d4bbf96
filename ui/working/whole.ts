import { givens, type Reading, type ShoeSteps, type Step, type Working } from '../../sim/index.ts';
import { workingWhole as words } from '../../sim/words/en.ts';
import { fromText, lawText, stepText } from '../../sim/workshop/index.ts';
import { figure, workingLatex, workingText } from './write.ts';

/** A working as it is copied: all of it in the order in which it is read, not its last line alone. */

const shoeName = ({ side, role }: ShoeSteps): string =>
  words.shoe(side === 'front' ? words.front : words.rear, role);

const stepsOf = (s: ShoeSteps): readonly (readonly [name: string, steps: readonly Step[]])[] => [
  ...(s.closed ? [[words.byTheClosedForm, s.closed] as const] : []),
  [words.byTheSumOverThe, s.elements],
];

/** @param steps ways from the pressure, of readings that have some */
export function wholeText(
  { name }: Pick<Reading, 'name'>,
  w: Working,
  steps: readonly ShoeSteps[],
): string {
  const numbers = givens(w.formula).map((g) => {
    const value = `${figure(g.value, w.figures)}${g.unit ? ` ${g.unit}` : ''}`;
    return `  ${g.symbol} = ${value}: ${g.name} (${fromText(g.from)})`;
  });
  const ways = steps.flatMap((s) =>
    stepsOf(s).flatMap(([how, list]) => [
      `${shoeName(s)}, ${how}:`,
      ...list.map((x) => `  ${stepText(x.code)} ${workingText(x)}`),
    ]),
  );
  return [
    name,
    ...ways,
    ...(numbers.length > 0 ? [words.numbersPutIn, ...numbers] : []),
    workingText(w),
    lawText(w.law),
  ].join('\n');
}

/** Lines one under the other, to be put into an aligned or gathered block. */
export const wholeLatex = (w: Working, steps: readonly ShoeSteps[]): string =>
  [
    ...steps.flatMap((s) => stepsOf(s).flatMap(([, list]) => list.map((x) => workingLatex(x)))),
    workingLatex(w),
  ].join(' \\\\\n');
