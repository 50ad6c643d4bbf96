import { basename } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * Files that take longest begin first, so that no worker is left alone with one at the end. Vitest itself
 * knows how long a file took only where it has run before. Longest first, as measured on 2026-11-29; the
 * rest as Vitest orders them.
 */
const LONGEST: readonly string[] = [
  'record.test.ts',
  'faults-put-in.test.ts',
  'access.test.ts',
  'bending.test.ts',
  'inspect.test.ts',
  'lessons.test.ts',
  'drum-off.test.ts',
  'vary.test.ts',
  'memory.test.ts',
  'look-laptop.test.ts',
  'drawing.test.ts',
  'start.test.ts',
  'load.test.ts',
  'budgets.test.ts',
  'look-phone.test.ts',
  'plates.test.ts',
  'clip.test.ts',
];

const rank = ({ moduleId }: TestSpecification): number => {
  const at = LONGEST.indexOf(basename(moduleId));
  return at < 0 ? LONGEST.length : at;
};

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
