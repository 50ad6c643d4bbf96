import { expect, it } from 'vitest';
import { entries } from '../../../ui/ask/entries.ts';
import { ask } from '../../../ui/ask/rank.ts';
import { ways } from '../../../ui/away/ways.ts';

/** What leaves the bench is found by Ask, and leads to its own way in the dialog. */

it('has an entry for each way of Take away, by its id and name, and none for another', () => {
  const told = entries.flatMap((e) => (e.leads.to === 'away' ? [[e.leads.way, e.title]] : []));
  expect(told.sort()).toEqual(ways.map((w) => [w.id, w.name]).sort());
});

// Sentences as somebody beside the bench would type them, written before they were measured; from memory.
it.each([
  ['how do I save the drawing as a picture', 'away:figure'],
  ['export svg', 'away:figure'],
  ['I need an image for my powerpoint slides', 'away:figure'],
  ['make a video of the click', 'away:clip'],
  ['can I get a gif of it', 'away:clip'],
  ['save it as mp4', 'away:clip'],
  ['print worksheets for the class', 'away:sheets'],
  ['a handout to print', 'away:sheets'],
  ['cardboard model to cut out', 'away:cut'],
  ['dxf for the laser cutter', 'away:cut'],
  ['csv of the readings', 'away:data'],
  ['get the numbers into a spreadsheet', 'away:data'],
  ['send a link to a friend', 'away:share'],
  ['qr code for the students phones', 'away:share'],
  ['share this', 'away:share'],
  ['put it on a usb stick', 'away:one file'],
  ['download it all as one file', 'away:one file'],
  ['does it work without internet', 'away:offline'],
  ['install it as an app', 'away:offline'],
  ['compare two brakes', 'station:compare'],
  ['compare before and after', 'station:compare'],
  ['take the adjuster apart', 'station:apart'],
  ['adjuster on the bench in parts', 'station:apart'],
  ['write my own lesson', 'station:write a lesson'],
  ['lesson editor', 'station:write a lesson'],
  ['glossary', 'word:list'],
  ['list of all the words', 'word:list'],
])('"%s" leads to %s among the first three', (said, key) => {
  const first = ask(said)
    .found.slice(0, 3)
    .map((f) => f.entry.key);
  expect(first).toContain(key);
});
