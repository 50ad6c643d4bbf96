import { cases, faults } from '../sim/workshop/index.ts';
import { questions } from '../ui/questions/index.ts';
import { brakeOfRef } from '../ui/record/derive.ts';
import { show } from '../ui/record/guest.ts';
import type { Moment } from '../ui/record/moment.ts';
import { plainMoment } from '../ui/record/start.ts';
import { brakes } from '../ui/scenes.ts';
import { bringVan, chooseFault } from '../ui/stations/faults/part.ts';
import { showQuestion } from '../ui/stations/questions/part.ts';

/** Every moment that the page itself offers, by name: standing states, faults, vans, questions. */
export function offered(): readonly (readonly [string, Moment])[] {
  const plain = plainMoment();
  const inFaults = show.does(plain, 'faults');
  return [
    ...brakes.flatMap(({ name }) => {
      const ref = { kind: 'scene', name } as const;
      const { states } = brakeOfRef(ref, plain.shelf);
      return states.map((s) => [`${name}, ${s.name}`, plainMoment('apply', ref, s.name)] as const);
    }),
    ...faults.map((f) => [`fault ${f.id}`, chooseFault.does(inFaults, f.id)] as const),
    ...cases.map((c) => [`van ${c.number}`, bringVan.does(inFaults, c.number)] as const),
    ...questions
      .filter((q) => q.station)
      .map((q) => [`question ${q.id}`, showQuestion.does(plain, q.id)] as const),
  ];
}
