/** Words of several meanings: the other one is a button beside the list. */
const meanings: readonly (readonly [
  word: RegExp,
  unless: RegExp,
  label: string,
  instead: string,
])[] = [
  [
    /\bclick/i,
    /hand ?brake|lever|notch/i,
    'the hand lever’s notches',
    'handbrake notches too many',
  ],
  [/\bclick/i, /pedal|press|adjuster/i, 'the adjuster’s click', 'adjuster click when I press'],
  [/\bnotch/i, /adjuster/i, 'the adjuster clicks too often', 'adjuster clicks every press'],
  [/\b(stuck|seized|frozen)\b/i, /drum/i, 'the drum will not come off', 'drum will not come off'],
  [
    /\b(stuck|seized|frozen)\b.*drum|drum.*\b(stuck|seized|frozen)\b/i,
    /wheel|turn/i,
    'the wheel will not turn',
    'wheel will not turn',
  ],
  [/\blow\b/i, /pedal/i, 'the pedal goes far', 'low pedal'],
  [/\blow\b/i, /roller|test|effort/i, 'weak on the rollers', 'low effort on the roller test'],
  [/\bfade/i, /hot|hill/i, 'the pedal sinks', 'pedal sinks slowly'],
  [/\badjust/i, /cable/i, 'set the cable', 'adjust the handbrake cable'],
  [/\bhard\b/i, /pedal/i, 'a hard pedal', 'hard pedal weak brakes'],
  [/\bhard\b/i, /turn|wheel/i, 'the wheel is hard to turn', 'wheel hard to turn by hand'],
  [/\bservo\b/i, /duo|kind/i, 'a servo kind of brake', 'duo servo brake'],
];

export interface Also {
  readonly label: string;
  readonly text: string;
}

/** What else may be meant, two at the most. */
export const alsoMeant = (text: string): Also[] =>
  meanings
    .filter(([word, unless]) => word.test(text) && !unless.test(text))
    .slice(0, 2)
    .map(([, , label, instead]) => ({ label, text: instead }));
