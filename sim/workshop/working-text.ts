import type { Law, Reason, StepCode, WorkingFrom } from '../index.ts';
import { workshopWorkingText as words } from '../words/en.ts';
import { fixed } from './figure.ts';

/** Whose law a formula is, where it is published, or that it is the bench's own sum. */
const laws: Readonly<Record<Law, string>> = words.laws;
export const lawText = (law: Law): string => laws[law];

const from: Readonly<Record<WorkingFrom, string>> = words.from;
export const fromText = (code: WorkingFrom): string => from[code];

const steps: Readonly<Record<StepCode, string>> = words.steps;
export const stepText = (code: StepCode): string => steps[code];

const percent = (share: number): string => `${fixed(100 * share, share < 0.1 ? 1 : 0)} %`;

const reasons: Readonly<Record<Reason['code'], (share: number) => string>> = {
  'no pin': () => words.theShoesHeelSlidesOn,
  bends: () => words.theShoeBendsPointsOf,
  'not the sine': (share) => words.thePressureIsNotThe(percent(share)),
  'ends free': (share) => words.ofTheLiningDoNot(percent(share)),
  'other forces': (share) => words.otherPartsPushOnThe(percent(share)),
};
export const reasonText = ({ code, share }: Reason): string => reasons[code](share);

/** Where nothing makes them differ. */
export const ALIKE_TEXT = words.alikeText;
