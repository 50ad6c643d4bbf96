import type { Brake } from '../../../sim/index.ts';
import type { Frame } from '../geometry.ts';
import type { PartId } from '../part-names.ts';
import type { Path } from '../path.ts';
import type { Shape, Style } from '../shapes.ts';

/** What follows from the brake alone is made once and kept as long as the brake. */
export function perBrake<T>(make: (brake: Brake) => T): (brake: Brake) => T {
  const kept = new WeakMap<Brake, T>();
  return (brake) => {
    const seen = kept.get(brake);
    if (seen !== undefined) return seen;
    const made = make(brake);
    kept.set(brake, made);
    return made;
  };
}

/** Makes the shapes of one part under keys of its own: "part 0", "part 1" … in painting order. */
export function maker(group: string, part: PartId, tag = '') {
  let n = 0;
  return (path: Path, style: Style, more?: { place?: Frame; evenOdd?: boolean }): Shape => ({
    key: `${group}${tag} ${part} ${n++}`,
    path,
    style,
    part,
    group,
    ...more,
  });
}
