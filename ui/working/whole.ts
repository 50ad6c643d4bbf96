import { givens, type Reading, type ShoeSteps, type Step, type Working } from '../../sim/index.ts';
import { fromText, lawText, stepText } from '../../sim/workshop/index.ts';
import { figure, workingLatex, workingText } from './write.ts';

/** A working as it is copied: all of it in the order in which it is read, not its last line alone. */

const shoeName = ({ side, role }: ShoeSteps): string =>
  `${side === 'front' ? 'Front' : 'Rear'} shoe, ${role}`;

const stepsOf = (s: ShoeSteps): readonly (readonly [name: string, steps: readonly Step[]])[] => [
  ...(s.closed ? [['by the closed form', s.closed] as const] : []),
  ['by the sum over the lining’s elements', s.elements],
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
    ...(numbers.length > 0 ? ['Numbers put in:', ...numbers] : []),
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
