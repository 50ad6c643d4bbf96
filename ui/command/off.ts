import { type Rig, removal } from '../../sim/index.ts';
import { number } from '../format.ts';
import { type Arguments, sizeOf } from './args.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';
import { stateOf } from './state.ts';

/** `off`: what holds the drum when it is pulled, what hands feel, how many teeth free it. */
export async function off(args: Arguments, rig: Rig, say: Say): Promise<void> {
  const { flags } = args;
  const aside = await sizeOf(args, 'aside', 0, 'mm', [-5, 5]);
  const state = await stateOf(args, rig);
  const held = {
    hubRust: flags.has('hub-rust'),
    liningsRusted: flags.has('linings-rusted'),
    aside,
  };
  const { heldBy, locks, signs, fit, backOff, rub } = removal(rig, state, held);
  // A torque that cannot be told is one that no hand turns.
  const torque = (x: number) => ({ value: Number.isFinite(x) ? x / 1000 : null, unit: 'N·m' });
  if (flags.has('json')) {
    say(
      asJson({
        scene: rig.brake.name,
        command: 'off',
        comesOff: heldBy === null,
        heldBy,
        locks,
        turns: signs.turns,
        forward: torque(signs.forward),
        backward: torque(signs.backward),
        rocks: signs.rocks,
        slides: signs.slides,
        slide: { value: signs.slide, unit: 'mm' },
        lip: { value: fit.height, unit: 'mm' },
        overlap: { value: fit.greatest, unit: 'mm' },
        rub: { value: rub, unit: 'N' },
        backOff,
      }),
    );
    return;
  }
  say(heldBy === null ? 'The drum comes off.' : `The drum is held by: ${locks.join('; ')}.`);
  say(`Turns ${signs.turns}, slides ${signs.slides}${signs.rocks ? ', rocks on its hub' : ''}.`);
  const over = fit.greatest > 0 ? 'the linings overlap it by' : 'the linings pass it with';
  say(
    fit.height > 0
      ? `Lip ${number(fit.height, 2)} mm; ${over} ${number(Math.abs(fit.greatest), 2)} mm${fit.greatest > 0 ? '' : ' in hand'}.`
      : 'No lip: the drum is not worn.',
  );
  if (heldBy !== null) say(backOffText(backOff));
}

function backOffText({ teeth, rows }: ReturnType<typeof removal>['backOff']): string {
  if (teeth === null) return 'Backing the adjuster off alone does not free it.';
  const last = rows.at(-1);
  const spare = last ? `, ${number(-last.greatest, 2)} mm in hand` : '';
  return `Backed off by ${teeth} ${teeth === 1 ? 'tooth' : 'teeth'} it passes the lip${spare}.`;
}
