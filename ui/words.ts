import type { LifeTrouble } from './life-messages.ts';

/** Texts of the page, in one place. */
export const applyHint = {
  released: 'Hold the pedal, or drag along it. Keys: space holds 40 bar, arrows set it bar by bar.',
  forward: 'Turn the drum backward and press again: the two shoes swap roles.',
  backward: 'Turn it forward again: leading is a role, not a place.',
  stopped:
    'Nothing turns: no torque, no factor. Both combs read as the trailing one’s in turning: a standing lining sticks to the drum as it comes out, which holds it back.',
} as const;

/** Said in place of forces where no balance was found. */
export const lostText =
  'No balance was found: with this fit and friction the drum carries a shoe off its anchor. No force can be told.';

/** Why a run ended, where that is not what was asked for. */
export const ends = {
  distance: '',
  click: '',
  'lining limit': 'Ended: a lining is at its limit.',
  'drum limit': 'Ended: the drum is past its largest diameter.',
  'worn through': 'Ended: a lining is worn through to its table.',
  'piston run-out': 'Ended: a piston has left its bore.',
  'no balance': 'Ended: the drum carries a shoe off its anchor; nothing balances.',
  seized: 'Not driven on: seized, the wheel would slide before it turns.',
  'gave way': 'Not driven on: clamped more than the strut can bear.',
  locks: 'Not driven: a shoe would lock by itself.',
} as const;

const troubles: Readonly<Record<LifeTrouble['kind'], string>> = {
  'no start':
    'Not driven: the part of the page that drives a life did not load. If the page was renewed meanwhile, load it again.',
  silent: 'Not driven on: the part of the page that drives a life does not answer.',
  error: 'Not driven on: the part of the page that drives a life broke off.',
};

/** Why a life is not driven on, and that nothing is lost. */
export const lifeTrouble = ({ kind, message }: LifeTrouble): string =>
  `${troubles[kind]} ${message ? `(${message}) ` : ''}What was driven is kept; Wear on tries again.`;
