import { describe, expect, it } from 'vitest';
import { createRig, newFit } from '../../../sim/index.ts';
import { judgePart, type NewPart, unlikeSides } from '../../../sim/workshop/index.ts';
import { mustRead, quayScene } from '../../brakes.ts';

const rig = createRig(mustRead(quayScene()));
const says = (part: NewPart, bore = 200, own: Parameters<typeof judgePart>[3] = null): string =>
  judgePart(rig, part, bore, own)
    .map((v) => `${v.line} ${v.level}: ${v.words}`)
    .join('\n');
const cosine = Math.cos((55 * Math.PI) / 180);

describe('new linings in a bore', () => {
  it('the right ones bear all along', () => {
    expect(says({ lining: 4.5, ground: 100 })).toMatch(/^fit good: Bears all along/);
  });

  it('standard ones in a worn drum bear at the crown, and are weak until bedded in', () => {
    // A circle of 100.0 in one of 100.3, touching at the middle of a 110° arc, is 0.3 · (1 − cos 55°) off at
    // both ends; a shoe that turns about its pin touches beside the middle, so one end is further off.
    const { fit, torque, right } = newFit(rig, { thickness: 4.5, groundRadius: 100 }, 100.3);
    expect(fit.gap).toBeGreaterThan(0.3 * (1 - cosine));
    expect(fit.gap).toBeLessThan(0.3);
    expect(torque).toBeLessThan(0.93 * right);
    expect(says({ lining: 4.5, ground: 100 }, 200.6)).toMatch(
      /^fit watch: Bears at the crown.*Weak/,
    );
  });

  it('ones ground too large bear at their ends, grab, and are not fitted', () => {
    // The other way round: unpressed, the middle stands 0.2 · (1/cos 55° − 1) off; pressed, less.
    const { fit } = newFit(rig, { thickness: 4.5, groundRadius: 100.2 }, 100);
    expect(fit.gap).toBeGreaterThan(0.2 * 0.2 * (1 / cosine - 1));
    expect(fit.gap).toBeLessThan(0.2 * (1 / cosine - 1));
    expect(says({ lining: 4.5, ground: 100.2 })).toMatch(/^fit bad: Bears at the ends.*grabs/);
  });

  it('oversize ones in a new drum keep it off', () => {
    // They stand out by 0.3; the toe of a new pair has three quarters of 0.30 to the drum (teaching tables).
    expect(says({ lining: 4.8, ground: 100.3 })).toMatch(/^fit bad: The drum does not go on/);
  });
});

describe('width, bore and side', () => {
  it('a narrower lining is pressed harder and wears faster, by the widths', () => {
    expect(says({ width: 32.5 })).toMatch(/^width good/);
    // 32 / 28 is 1.14.
    expect(says({ width: 28 })).toMatch(/^width watch: 4\.0 narrower.*pressed 14 % harder/);
    expect(says({ width: 35 })).toMatch(/^width watch: 3\.0 wider/);
  });
  it('another bore pushes by its area', () => {
    expect(says({ bore: 19.05 })).toMatch(/^bore good/);
    // (20.64 / 19.05)² is 1.174, (17.46 / 19.05)² is 0.840.
    expect(says({ bore: 20.64 })).toMatch(/^bore bad: .*\+17 % force/);
    expect(says({ bore: 17.46 })).toMatch(/^bore bad: .*−16 % force/);
  });
  it('one made for the other side is not fitted', () => {
    expect(says({ hand: 'other' })).toMatch(/^hand bad/);
    expect(says({ hand: 'this' })).toMatch(/^hand good/);
    expect(says({ hand: 'alike' })).toMatch(/^hand good: For either/);
  });
  it('what is only assumed of one’s own brake gives no verdict', () => {
    expect(says({ bore: 20.64 }, 200, {})).toMatch(/^bore none: .*assumed/);
    expect(says({ lining: 4.5 }, 200, { drumNew: 200 })).toMatch(/^fit none/);
    expect(says({ width: 20 }, 200, {})).toMatch(/^width none/);
    expect(says({ width: 32 }, 200, { liningWidth: 32 })).toMatch(/^width good/);
  });
});

it('left and right unlike are told, readings of one part are not', () => {
  expect(unlikeSides({ left: { bore: 19.05 }, right: { bore: 20.64 } })).toHaveLength(1);
  expect(unlikeSides({ left: { bore: 19.05 }, right: { bore: 19.1 } })).toEqual([]);
  expect(
    unlikeSides({ left: { lining: 4.5, ground: 100 }, right: { lining: 4.8, ground: 100.3 } }),
  ).toHaveLength(2);
  expect(unlikeSides({ left: { hand: 'alike' }, right: { hand: 'this' } })).toHaveLength(1);
  expect(unlikeSides({ left: { hand: 'this' }, right: { hand: 'this' } })).toEqual([]);
  expect(unlikeSides({ left: {}, right: { width: 32 } })).toEqual([]);
});
