/**
 * Words of the trade, each with one sentence, and where British and American workshops say it otherwise
 * both words (general knowledge of the trade, not checked against a list).
 */
export interface Term {
  /** As the page says it. */
  readonly word: string;
  readonly means: string;
  /** British, then American. */
  readonly pair?: readonly [british: string, american: string];
  /** Other forms that stand in the page's texts. */
  readonly forms?: readonly string[];
}

export type Land = 'British' | 'American';

export const terms: readonly Term[] = [
  { word: 'drum', means: 'Turning ring that the linings press on.' },
  { word: 'bore', means: 'Inner diameter of the drum.' },
  { word: 'lip', means: 'Unswept edge of the drum, left standing as the rest wears.' },
  {
    word: 'backing plate',
    means: 'Fixed plate that carries the parts.',
    pair: ['back plate', 'backing plate'],
    forms: ['plate'],
  },
  { word: 'access hole', means: 'Plugged opening to reach the adjuster with the drum on.' },
  {
    word: 'machining',
    means: 'Cutting the bore of the drum true.',
    pair: ['skimming', 'turning'],
    forms: ['machined', 'cut of the drum'],
  },
  { word: 'shoe', means: 'Steel carrier of a lining.', forms: ['shoes'] },
  {
    word: 'web',
    means: 'Flat plate of the shoe, seen full: it takes the pushes.',
    forms: ['webs'],
  },
  { word: 'table', means: 'Curved strip of the shoe that carries the lining.' },
  { word: 'toe', means: 'End of the shoe at the cylinder.', forms: ['toes'] },
  { word: 'heel', means: 'End of the shoe at its pin.', forms: ['heels'] },
  { word: 'lining', means: 'Friction material on the shoe.', forms: ['linings'] },
  {
    word: 'bedding in',
    means: 'Wearing of new linings until all of their arc bears.',
    pair: ['bedding in', 'burnishing'],
    forms: ['bedded in'],
  },
  {
    word: 'leading shoe',
    means: 'The drum drags it tighter onto itself.',
    forms: ['leading lining', 'leading'],
  },
  {
    word: 'trailing shoe',
    means: 'The drum pushes it off.',
    forms: ['trailing lining', 'trailing'],
  },
  {
    word: 'anchor pin',
    means: 'Hinge of a shoe.',
    pair: ['pivot pin', 'anchor pin'],
    forms: ['anchor pins'],
  },
  { word: 'abutment', means: 'Flat on which a heel slides.' },
  {
    word: 'return spring',
    means: 'Pulls the shoes together.',
    pair: ['pull-off spring', 'return spring'],
    forms: ['return springs', 'springs'],
  },
  {
    word: 'hold-down',
    means: 'Keeps a shoe on the plate.',
    pair: ['steady spring', 'hold-down'],
    forms: ['hold-downs', 'hold-down pin'],
  },
  {
    word: 'wheel cylinder',
    means: 'Pushes both toes apart.',
    pair: ['slave cylinder', 'wheel cylinder'],
    forms: ['cylinder', 'wheel cylinders'],
  },
  { word: 'piston', means: 'Plunger of the cylinder; it pushes its shoe.', forms: ['pistons'] },
  { word: 'cup', means: 'Seal of a piston.', forms: ['cups'] },
  {
    word: 'bleed point',
    means: 'Lets out air and fluid.',
    pair: ['bleed nipple', 'bleeder screw'],
  },
  { word: 'free play', means: 'Pedal travel before the master piston moves.' },
  { word: 'strut', means: 'Bar that spaces the shoes; its length sets the gap.' },
  {
    word: 'toothed lever',
    means: 'Catches the strut’s teeth and makes it longer, tooth by tooth.',
    forms: ['lever'],
  },
  { word: 'tooth', means: 'One step of the adjuster.', forms: ['teeth'] },
  {
    word: 'lost motion',
    means: 'Free travel before the adjuster senses anything.',
    forms: ['slot play'],
  },
  { word: 'click', means: 'The lever drops into the next tooth.', forms: ['clicks'] },
  {
    word: 'star wheel',
    means: 'Toothed wheel on a screw strut.',
    pair: ['adjuster wheel', 'star wheel'],
  },
  { word: 'wedge', means: 'Stepless spacer between strut and shoe.' },
  { word: 'hot lock', means: 'Bimetal that stops the adjuster while the drum is hot.' },
  {
    word: 'back off',
    means: 'Make the adjuster shorter, tooth by tooth.',
    pair: ['slacken off', 'back off'],
    forms: ['backed off', 'backing off'],
  },
  { word: 'preset', means: 'Setting of the shoes before the drum goes on.' },
  { word: 'clearance', means: 'Gap from lining to drum at rest.', forms: ['gap', 'gaps'] },
  {
    word: 'parking brake',
    means: 'Holds the vehicle at rest by a cable.',
    pair: ['handbrake', 'parking or emergency brake'],
    forms: ['parked brake'],
  },
  { word: 'parking lever', means: 'Lever on the rear shoe that the cable pulls.' },
  { word: 'notch', means: 'One click of the hand lever.', forms: ['notches'] },
  { word: 'slack', means: 'Cable that is pulled before anything moves.' },
  { word: 'brake factor', means: 'Drag of both linings over the push on one toe.' },
  { word: 'self-energising', means: 'Drag adds to the push.' },
  { word: 'fade', means: 'Loss of braking with heat.' },
  { word: 'stands', means: 'Hold the jacked-up vehicle.', pair: ['axle stands', 'jack stands'] },
  {
    word: 'split pin',
    means: 'Bent wire that keeps a nut from turning.',
    pair: ['split pin', 'cotter pin'],
  },
  { word: 'tyre', means: 'Rubber on the wheel.', pair: ['tyre', 'tire'], forms: ['tyres'] },
  { word: 'gauge', means: 'Tool that measures.', pair: ['gauge', 'gage'] },
];

/** Both words, the one of the chosen land first. */
export const named = ({ pair }: Term, first: Land): string => {
  if (!pair) return '';
  const [british, american] = pair;
  return first === 'British'
    ? `British: ${british} · American: ${american}`
    : `American: ${american} · British: ${british}`;
};

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const byForm: readonly (readonly [form: string, term: Term])[] = terms
  .flatMap((term) => [term.word, ...(term.forms ?? [])].map((form) => [form, term] as const))
  .sort((a, b) => b[0].length - a[0].length);

const pattern = new RegExp(
  `(?<![\\p{L}-])(?:${byForm.map(([form]) => escaped(form)).join('|')})(?![\\p{L}-])`,
  'giu',
);

/** A word of the trade in a text: where it begins, how long it is, and which. */
export interface Found {
  readonly at: number;
  readonly length: number;
  readonly term: Term;
}

/** Words of the trade in a text, each at its first place only; the longest form wins. */
export function wordsIn(text: string): Found[] {
  const seen: Found[] = [];
  for (const match of text.matchAll(pattern)) {
    const term = byForm.find(([form]) => form.toLowerCase() === match[0].toLowerCase())?.[1];
    if (term && !seen.some((f) => f.term === term))
      seen.push({ at: match.index, length: match[0].length, term });
  }
  return seen;
}
