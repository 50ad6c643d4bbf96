import { beforeAll, describe, expect, it } from 'vitest';
import { askGerman } from '../../../sim/words/ask-german.ts';
import german from '../../../sim/words/de.ts';
import { type Sections, speak } from '../../../sim/words/section.ts';

/** Ask in German: the language is spoken before the first module with texts is loaded, as in a page of it. */

let ask: typeof import('../../../ui/ask/rank.ts').ask;
let termsOf: typeof import('../../../ui/ask/read.ts').termsOf;
let readFigures: typeof import('../../../ui/ask/figures.ts').readFigures;
let alsoMeant: typeof import('../../../ui/ask/also.ts').alsoMeant;
let keys: ReadonlySet<string>;
beforeAll(async () => {
  speak(german as unknown as Sections);
  ({ ask } = await import('../../../ui/ask/rank.ts'));
  ({ termsOf } = await import('../../../ui/ask/read.ts'));
  ({ readFigures } = await import('../../../ui/ask/figures.ts'));
  ({ alsoMeant } = await import('../../../ui/ask/also.ts'));
  const { entries } = await import('../../../ui/ask/entries.ts');
  keys = new Set(entries.map((e) => e.key));
});

/** As somebody beside the wheel would type it, and what helps; written before it was measured, from memory. */
const asked: readonly (readonly [said: string, ...leads: string[]])[] = [
  // The drum stays on.
  [
    'Trommel geht nicht ab',
    'station:drum-off',
    'lesson:drum-off',
    'question:q001',
    'question:q005',
  ],
  [
    'Ich krieg die Bremstrommel nicht runter',
    'station:drum-off',
    'lesson:drum-off',
    'question:q001',
    'question:q005',
  ],
  [
    'die trommel sitzt bombenfest',
    'station:drum-off',
    'fault:hub rust',
    'question:q005',
    'lesson:drum-off',
    'not here:heat it',
  ],
  ['Trommel auf der Nabe festgerostet', 'fault:hub rust', 'question:q005', 'station:drum-off'],
  ['Wozu sind die Gewindelöcher in der Trommel?', 'question:q006'],
  ['Trommel kommt ein Stück und hängt dann am Grat', 'fault:lip', 'question:q001', 'question:q004'],
  ['wie stelle ich den Nachsteller zurück', 'order:back', 'question:q002', 'question:q027'],
  // Noises.
  ['Bremse quietscht hinten', 'question:q072', 'not here:noise', 'check:noise'],
  ['quietschen beim bremsen', 'question:q072', 'not here:noise', 'check:noise', 'question:q073'],
  [
    'hinten schleift etwas beim Bremsen, Metall auf Metall',
    'question:q071',
    'check:noise',
    'question:q074',
    'question:q076',
  ],
  ['in der Trommel klappert es', 'question:q075', 'not here:rattle', 'check:noise'],
  // The pedal.
  [
    'Pedalweg zu lang',
    'check:pedal',
    'question:q091',
    'question:q092',
    'question:q093',
    'question:q094',
  ],
  ['Das Bremspedal lässt sich weit durchtreten', 'check:pedal', 'question:q091', 'question:q092'],
  ['pedal weich und schwammig', 'fault:air', 'question:q090', 'check:pedal'],
  ['Pedal sinkt langsam ab', 'not here:sinking'],
  ['Bremspedal pulsiert', 'question:q096', 'fault:oval drum', 'fault:drum off centre'],
  // The handbrake.
  ['Handbremse zieht schlecht', 'check:lever', 'question:q104', 'question:q098', 'station:park'],
  [
    'Die Handbremse hält nicht am Berg',
    'check:lever',
    'question:q098',
    'question:q101',
    'question:q049',
    'station:park',
    'question:q108',
  ],
  ['Handbremse nur auf einer Seite', 'question:q105', 'question:q080', 'check:lever'],
  ['wie viele Rasten sind normal', 'question:q099'],
  [
    'Handbremse loest nicht mehr',
    'question:q102',
    'question:q110',
    'fault:kept pull',
    'check:drag',
    'question:q044',
    'fault:stiff pivot',
  ],
  ['Handbremse im Winter festgefroren', 'question:q102', 'fault:rusted on'],
  [
    'Handbremsseil zu stramm eingestellt',
    'fault:short cable',
    'question:q035',
    'question:q036',
    'question:q104',
  ],
  // The adjuster.
  [
    'Nachsteller klickt nicht',
    'question:q017',
    'fault:seized short',
    'question:q016',
    'fault:worn teeth',
    'fault:broken lever spring',
  ],
  ['selbstnachsteller stellt nicht nach', 'question:q017', 'question:q019', 'fault:seized short'],
  ['Es klickt, wenn ich bremse. Ist das normal?', 'question:q018'],
  ['stellt die Bremse beim Rückwärtsfahren nach?', 'question:q021'],
  ['Sternrad links und rechts vertauscht', 'fault:wrong side', 'question:q032'],
  // Leading and trailing.
  ['Welche Backe ist die auflaufende?', 'question:q055', 'question:q116', 'lesson:self-energising'],
  ['warum bremst die vordere Backe stärker', 'question:q051'],
  ['eine Bremsbacke stärker verschlissen als die andere', 'question:q057', 'question:q060'],
  // Limits.
  ['Verschleißgrenze der Trommel', 'question:q114', 'station:inspect'],
  [
    'wie dick müssen die Belaege noch sein',
    'question:q112',
    'question:q111',
    'station:inspect',
    'not here:legal',
  ],
  ['Kann man die Trommel abdrehen lassen', 'question:q084'],
  ['Trommel unrund', 'fault:oval drum'],
  // Heat and drag.
  [
    'Rad wird heiß',
    'check:drag',
    'question:q037',
    'question:q041',
    'question:q043',
    'question:q045',
  ],
  ['die bremse schleift dauernd', 'check:drag', 'question:q037', 'question:q030', 'check:free'],
  ['Rad laesst sich nicht drehen', 'question:q025', 'check:drag', 'question:q026'],
  // How it brakes.
  ['Auto zieht beim Bremsen nach links', 'question:q078', 'check:braking', 'question:q077'],
  ['Bremse blockiert nach Regen', 'question:q065', 'fault:damp', 'question:q064', 'question:q063'],
  ['Öl auf den Bremsbacken', 'fault:oil on one lining', 'fault:fluid on linings', 'question:q087'],
  ['Radzylinder undicht', 'question:q087', 'fault:fluid on linings', 'station:inspect'],
  // What is had at the bench.
  ['Zeichnung als Bild speichern', 'away:figure'],
  ['Arbeitsblatt drucken', 'away:sheets'],
  ['Duo-Servo-Bremse', 'not here:servo', 'station:kind'],
  [
    'neue Bremsbacken einbauen',
    'station:new-shoes',
    'lesson:new-shoes',
    'order:set',
    'order:together',
  ],
];

const first = (text: string): string[] =>
  ask(text)
    .found.slice(0, 3)
    .map((f) => f.entry.key);

describe('what is asked', () => {
  it('leads to what there is', () => {
    expect(asked.length).toBeGreaterThanOrEqual(30);
    expect(asked.flatMap(([, ...leads]) => leads).filter((key) => !keys.has(key))).toEqual([]);
  });
  it.each(asked)('%s', (said, ...leads) => {
    const found = first(said);
    expect(
      found.filter((key) => leads.includes(key)),
      found.join(', '),
    ).not.toEqual([]);
  });
});

describe('letters', () => {
  it.each([
    ['Bremsbeläge', 'Bremsbelaege'],
    ['Gefälle', 'GEFAELLE'],
    ['Öl', 'oel'],
    ['Drückt', 'drueckt'],
    ['heiß', 'heiss'],
    ['a\u0308lter', 'älter'],
  ])('%s and %s are one', (one, other) => {
    expect(askGerman.words(one)).toEqual(askGerman.words(other));
  });
  it('ß and umlauts part no word', () => {
    expect(askGerman.words('Stößt die Größe außen an?')).toHaveLength(5);
  });
  it.each([
    ['Trommel', 'Trommeln'],
    ['Bremsbelag', 'Bremsbeläge'],
    ['quietschen', 'quietscht'],
    ['dreht', 'drehen'],
    ['hält', 'halten'],
    ['Feder', 'Federn'],
    ['Kolben', 'Kolbens'],
    ['schleift', 'schleifen'],
  ])('%s and %s have one stem', (one, other) => {
    const stems = [one, other].map((w) => askGerman.stem(askGerman.fold(w)));
    expect(stems[0]).toBe(stems[1]);
  });
});

it('a negation behind its verb turns it, as one before a noun does', () => {
  const read = (text: string): string[] => termsOf(text).map((t) => t.term);
  const turned = read('der Nachsteller klickt nicht');
  expect(turned).toContain('not_click');
  expect(read('der Nachsteller klickt')).not.toContain('not_click');
  expect(read('kein Spalt')).toContain('not_clearance');
});

it.each([
  ['Trommel 183,4 mm, Marke 184', ['drum 183,4', 'mark 184']],
  ['Bremstrommel 203.4, maximal 204', ['drum 203.4', 'mark 204']],
  ['auflaufender Belag 3,1 mm, ablaufender Belag 4,4 mm', ['lining 3,1', 'trailing 4,4']],
  ['eine Riefe von 0,4 mm', ['score 0,4']],
  ['Der Grat ist 0,6 mm hoch', ['lip 0,6']],
  ['Handbremse 9 Rasten', ['notches 9']],
  ['hält sie bei 20 % Gefälle?', ['slope 20']],
  ['Steigung 1 zu 5', ['slope 20']],
  ['50 N zum Drehen am Reifen', ['turn 50']],
  ['Unterschied 34 %', ['unlike 34']],
] as const)('%s', (text, what) => {
  expect(readFigures(text).map(([of, n]) => `${of} ${n.text}`)).toEqual(what);
});

it('a figure of the right wheel goes there', () => {
  const found = ask('rechts Belag 2,1 mm').found[0]?.entry.leads;
  expect(found).toMatchObject({
    to: 'figures',
    figures: { to: 'inspect', write: [['leadThin', '2,1 mm', 'right']] },
  });
});

it('a word of two meanings has the other one beside it', () => {
  expect(alsoMeant('es klickt').map((a) => a.text)).toEqual([
    german.askAlso.handbrakeNotchesTooMany,
    german.askAlso.adjusterClickWhenIPress,
  ]);
  expect(alsoMeant('alles gut')).toEqual([]);
});
