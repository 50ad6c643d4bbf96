import type { KindPart } from './part.ts';

/** What does not carry over from this bench to a brake of another kind, as each answer says it; empty: all of it does. */
export function doesNotCarry({ kind, setBy }: KindPart): string {
  const out: string[] = [];
  if (kind === 'servo')
    out.push(
      'Yours is a servo brake: directions, the shares of the shoes and what turns the adjuster do not carry over; lip, rust, cable and worn drum do.',
    );
  if (kind === 'in disc')
    out.push(
      'Yours is a drum inside a disc: pedal, shares and clicks do not carry over; lip, rust and cable do.',
    );
  if (setBy === 'reverse')
    out.push('Your adjuster is turned by stops in reverse: what is said of clicks is not yours.');
  if (setBy === 'lever')
    out.push('Your adjuster is turned by the parking lever alone: pedal presses take nothing up.');
  if (setBy === 'hand')
    out.push('Yours is set by hand: nothing clicks; a gap grows until you set it.');
  if (setBy === 'taper')
    out.push('Yours is a wedge: no teeth and no clicks; pushed up, it is backed off.');
  return out.join(' ');
}
