import type { BrakeForce } from '../sim/balance/types.ts';

/** A force that does nothing but count how often the forces are asked: what a solve takes, the same on every machine. */
export function askedCounter() {
  const counter = { asked: 0 };
  const counting: BrakeForce = () => [
    {
      name: 'counter',
      remembers: 0,
      slot: 0,
      prepare: () => undefined,
      add: () => {
        counter.asked++;
      },
      arrows: () => [],
      energy: () => 0,
    },
  ];
  return { counter, counting };
}
