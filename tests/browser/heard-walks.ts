import type { Reader } from './reader.ts';

/** Three people's whole job, by keys alone: each is a walk that a reader takes down. */

/** An instructor opens a prepared lesson's step, predicts, presses, reads the outcome, takes a worksheet. */
export async function instructor(r: Reader): Promise<void> {
  await r.about('The instructor: a lesson’s step, and a worksheet');
  await r.press('l');
  await r.tabTo(/^button "Begin: The press"/);
  await r.press('Enter');
  await r.reads('aside.side');
  await r.tabTo(/^button "B /);
  await r.press('Enter');
  await r.tabTo(/^button "(Press|Show|Try)/);
  await r.press('Enter');
  await r.reads('aside.side');
  await r.press('e');
  await r.tabTo(/^button "Sheets/);
  await r.press('Enter');
  await r.tabTo(/^button "Print: Predictions, To fill in/);
  await r.press('Enter');
  await r.press('Escape');
}

/** A student changes friction in What if, reads the factor and how it was worked out. */
export async function student(r: Reader): Promise<void> {
  await r.about('The student: friction changed, its factor, and its working');
  await r.press('v');
  await r.tabTo(/^slider "Friction/);
  await r.press('ArrowRight', 3);
  await r.reads('aside.side [aria-label="What is read"]');
  await r.press('t');
  await r.tabTo(/^button "Working of Brake factor/);
  await r.press('Enter');
  await r.reads('takeup-readings [data-working]');
  await r.press('Escape');
}

/** A do-it-yourselfer's drum is stuck: what to do; then whether the parts are still good. */
export async function doItYourself(r: Reader): Promise<void> {
  await r.about('At home: the drum is stuck; are the parts still good?');
  await r.press('s');
  await r.tabTo(/^button "A ?Drum stuck/);
  await r.press('Enter');
  await r.reads('aside.side');
  for (const answer of [/^button "A small screw/, /^button "It turns but drags, both/]) {
    await r.tabTo(answer);
    await r.press('Enter');
  }
  await r.tabTo(/^button /);
  await r.press('Enter');
  await r.press('Tab');
  await r.press('Enter');
  await r.reads('aside.side');
  await r.press('s');
  await r.tabTo(/^button "F ?Are these parts/);
  await r.press('Enter');
  await r.tabTo(/^textbox "Drum Ø, new/);
  await r.type('200');
  await r.tabTo(/^textbox "Drum Ø, angle 1, left/);
  await r.type('201.4');
  await r.tabTo(/^textbox "Leading lining, thinnest, left/);
  await r.type('0.9');
  await r.reads('[aria-label="Verdict of the sheet"]');
}
