import type { AskPatterns } from './ask-english.ts';

/** How German is read where somebody asks in his own words. */

/** ä and ae, ö and oe, ü and ue, ß and ss are one spelling each; other marks on letters go. */
const fold = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFC')
    .replaceAll('ä', 'ae')
    .replaceAll('ö', 'oe')
    .replaceAll('ü', 'ue')
    .replaceAll('ß', 'ss')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '');

/** "Läßt’s sich nich’ drehen?" is laesst, es, sich, nicht, drehen. */
const words = (text: string): string[] =>
  fold(text)
    .replace(/[’'`´]s\b/g, ' es')
    .replace(/[’'`´]/g, '')
    .replace(/\b(?:nich|net|ned|nit|ni)\b/g, 'nicht')
    // What hangs together by a hyphen is one word: Hand-Bremse.
    .replace(/(?<=[a-z]{3})-(?=[a-z]{3})/g, '')
    .match(/[a-z0-9]+/g) ?? [];

/** Forms that no ending tells. */
const odd: ReadonlyMap<string, string> = new Map(
  Object.entries({
    haelt: 'halt',
    haltet: 'halt',
    hielt: 'halt',
    gehalten: 'halt',
    faellt: 'fall',
    laesst: 'lass',
    lassen: 'lass',
    laeuft: 'lauf',
    zieht: 'zieh',
    zog: 'zieh',
    gezogen: 'zieh',
    geht: 'geh',
    gehen: 'geh',
    ging: 'geh',
    tritt: 'tret',
    trete: 'tret',
    treten: 'tret',
    getreten: 'tret',
    fest: 'fest',
    nicht: 'nicht',
    laengst: 'laengst',
    klicker: 'klicker',
    gerost: 'rost',
    verrostet: 'rost',
  }),
);

/** The word without its ending, and with the vowel of its singular. */
function stem(word: string): string {
  const known = odd.get(word);
  if (known !== undefined) return known;
  let w = word;
  // Federn, Trommeln.
  if (w.length > 5) w = w.replace(/(?<=e[lr])n$/, '');
  if (w.length > 6) w = w.replace(/ens$/, '');
  if (w.length > 4) w = w.replace(/(?:e[mnrs]|e)$/, '');
  if (w.length > 4) w = w.replace(/([bdfghklmnr])s$/, '$1');
  // "dreht" is "drehen", "quietscht" is "quietschen".
  if (w.length > 4) w = w.replace(/(?<=[bfghklmnprsz])t$/, '');
  // Belag and Beläge, and who types no umlauts.
  return w
    .replaceAll('ae', 'a')
    .replaceAll('oe', 'o')
    .replace(/(?<![aeq])ue/g, 'u');
}

const parts = (text: string): string[] =>
  fold(text.replaceAll('Ø', ' \u00f8 '))
    .replace(/hand[ -]bremse/g, 'handbremse')
    .replace(/([0-9])[ ]*(["”])/g, '$1"')
    .replace(/ø/g, ' ø ')
    .match(/\d+(?:[.,]\d+)?(?:\/\d+)?[a-z%"”]*|[a-zø]+|%|"/g) ?? [];

export const askGerman: AskPatterns = {
  fold,
  words,
  stem,
  // "Die Handbremse hält nicht": what is turned stands before.
  turnsBack: /^(?:nicht|nimmer|nie|niemals|kaum)$/,
  neverMixed: [
    ['backe', 'haken'],
    ['feder', 'leder'],
    ['rast', 'rost'],
    ['raste', 'roste'],
    ['hebel', 'nebel'],
    ['loch', 'hoch'],
    ['rad', 'grad'],
    ['seil', 'teil'],
    ['trommel', 'stummel'],
    ['zahn', 'zehn'],
  ],
  twofold: [
    [/klick/i, /hand ?brems|hebel|raste/i],
    [/klick/i, /pedal|tret|tritt|nachstell/i],
    [/\braste/i, /nachstell/i],
    [/\bfest(gerostet|gegangen|sitzt)?\b|eingerostet|sitzt fest/i, /trommel/i],
    [/\bfest\b.*trommel|trommel.*(\bfest|rostet)/i, /\brad\b|dreh/i],
    [/niedrig|\btief\b|zu weit durch/i, /pedal/i],
    [/niedrig|\bschwach/i, /prüfstand|pruefstand|rolle|pedal/i],
    [/fading|lässt nach|laesst nach/i, /heiß|heiss|berg/i],
    [/einstell/i, /seil|zug/i],
    [/\bhart/i, /pedal/i],
    [/\bschwer/i, /dreh|\brad\b/i],
    [/\bservo\b/i, /duo|bauart/i],
  ],
  figures: {
    parts,
    nouns: {
      mark: /^(marke|max|maximum|maximal|hoechstens|grenze|verschleissgrenze|eingegossen|eingepraegt|gestempelt|steht|drauf|laut)$/,
      new: /^(neu|neue[nrs]?|nennmass|original|urspruenglich)$/,
      drum: /^(bremstrommeln?|trommeln?|bohrung|innendurchmesser|trommeldurchmesser)$/,
      score: /^(riefen?|rillen?|kratzer|furchen?|riefentiefe)$/,
      lip: /^(grat|rand|kante|rostrand|verschleissgrat)$/,
      lining:
        /^(belag|belaege|bremsbelag|bremsbelaege|belagdicke|belagstaerke|backen?|bremsbacken?|restbelag|dick|dicke|staerke|duenn|duennste|auflaufend\w*|ablaufend\w*)$/,
      notches:
        /^(handbremse|feststellbremse|parkbremse|handbremshebel|hebel|rasten?|klicks?|zaehne)$/,
      slope: /^(steigung|gefaelle|hang|berg|rampe|einfahrt|steil)$/,
      turn: /^(dreh|drehen|dreht|drehkraft|schwergaengig|reifen|schleift|zug)$/,
      unlike: /^(unterschied|ungleich|differenz|abweichung)$/,
      swing: /^(unrund|unrundheit|oval|schwankung|ausschlag)$/,
    },
    diameter: /^(durchmesser|dm|ø)$/,
    number: /^(\d+(?:[.,]\d+)?(?:\/\d+)?)("|”|mm|cm|zoll|%|n|nm|kgf?|klicks?|rasten?)?$/,
    unit: /^("|mm|millimetern?|cm|zoll|%|prozent|n|newton)$/,
    inch: /^("|”|zoll)$/,
    notch: /klick|raste/,
    percent: /%|prozent/,
    newton: /^(n|newton)$/,
    oneIn: /\b1 (?:zu|auf) (\d{1,2})\b/,
    right: /^(rechts|rechte[nrsm]?)$/,
    left: /^(links|linke[nrsm]?)$/,
    trailing: /^ablaufend\w*$/,
  },
};
