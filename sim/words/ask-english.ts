/** How English is read where somebody asks in his own words: letters, endings, figures, words of two meanings. */

/** What a number can be of. */
export type FigureOf =
  | 'drum'
  | 'drum2'
  | 'mark'
  | 'new'
  | 'score'
  | 'lip'
  | 'lining'
  | 'trailing'
  | 'notches'
  | 'slope'
  | 'turn'
  | 'unlike'
  | 'swing';

/** How a language is read. Every part of it sees text in small letters. */
export interface AskPatterns {
  /** One spelling of what is written in several ways. */
  readonly fold: (text: string) => string;
  /** The words of a text, its negations each one word. */
  readonly words: (text: string) => string[];
  /** The word without its ending. */
  readonly stem: (word: string) => string;
  /** Negations that stand behind what they turn; those that stand before it are among the words. */
  readonly turnsBack: RegExp;
  /** No slip of one is the other. */
  readonly neverMixed: readonly (readonly [string, string])[];
  /** Words of several meanings, and the words that tell which is meant. */
  readonly twofold: readonly (readonly [word: RegExp, unless: RegExp])[];
  readonly figures: {
    /** Words and numbers, with a unit that is joined to one. */
    readonly parts: (text: string) => string[];
    /** Nouns that say what a number is. */
    readonly nouns: Readonly<Partial<Record<FigureOf, RegExp>>>;
    /** Says that a drum is meant only where nothing else says what is. */
    readonly diameter: RegExp;
    /** A number, a fraction or a mixed one; a unit may follow at once. */
    readonly number: RegExp;
    /** A unit after a space. */
    readonly unit: RegExp;
    readonly inch: RegExp;
    readonly notch: RegExp;
    readonly percent: RegExp;
    readonly newton: RegExp;
    /** "1 in 5": a slope by its two sides. */
    readonly oneIn: RegExp;
    readonly right: RegExp;
    readonly left: RegExp;
    readonly trailing: RegExp;
  };
}

/** Endings of English as far as people at a brake use them; ours, since a full stemmer hurts short words. */
const odd: ReadonlyMap<string, string> = new Map(
  Object.entries({
    stuck: 'stick',
    sticking: 'stick',
    bound: 'bind',
    ground: 'ground',
    worn: 'wear',
    wore: 'wear',
    held: 'hold',
    came: 'come',
    went: 'go',
    gone: 'gone',
    spun: 'spin',
    bled: 'bleed',
    crept: 'creep',
    caught: 'catch',
    stank: 'stink',
    bits: 'bits',
    flat: 'flat',
    overnight: 'overnight',
    froze: 'frozen',
    let: 'let',
    broke: 'break',
    broken: 'broken',
    seizure: 'seize',
    springy: 'springy',
    backing: 'backing',
    bedding: 'bedding',
    lining: 'lining',
    linings: 'lining',
    bearing: 'bearing',
    bearings: 'bearing',
    spring: 'spring',
    springs: 'spring',
    during: 'during',
    thing: 'thing',
    ring: 'ring',
    rings: 'ring',
    gauge: 'gauge',
    gage: 'gauge',
    tyre: 'tyre',
    tire: 'tyre',
    tires: 'tyre',
    centre: 'centre',
    center: 'centre',
    equalizer: 'equaliser',
    shoes: 'shoe',
    noise: 'noise',
    noises: 'noise',
    this: 'this',
    his: 'his',
    was: 'was',
    has: 'has',
    does: 'does',
    its: 'its',
    grass: 'grass',
    press: 'press',
    loose: 'loose',
    lose: 'lose',
    hose: 'hose',
    hoses: 'hose',
    brakes: 'brake',
    leading: 'leading',
    trailing: 'trailing',
    morning: 'morning',
    evening: 'evening',
  }),
);

/** The word without its ending. */
function stem(word: string): string {
  const known = odd.get(word);
  if (known !== undefined) return known;
  let w = word;
  if (w.length > 4 && w.endsWith('ies')) w = `${w.slice(0, -3)}y`;
  else if (w.length > 4 && /(ss|sh|ch|x|z)es$/.test(w)) w = w.slice(0, -2);
  else if (w.length > 3 && /[^su]s$/.test(w)) w = w.slice(0, -1);
  if (w.length > 5 && w.endsWith('ing')) w = undouble(w.slice(0, -3));
  else if (w.length > 4 && w.endsWith('ed') && !w.endsWith('eed')) w = undouble(w.slice(0, -2));
  else if (w.length > 6 && w.endsWith('ly')) w = w.slice(0, -2);
  // One form for "adjuste" and "adjust", "seize" and "seiz".
  return w.length > 4 && w.endsWith('e') ? w.slice(0, -1) : w;
}

/** "dragg" is "drag". */
function undouble(w: string): string {
  const [a, b] = [w.at(-1), w.at(-2)];
  return a === b && a !== undefined && !'lsz'.includes(a) && w.length > 3 ? w.slice(0, -1) : w;
}

const fold = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '');

/** "Won’t let-go!" is wont, let, go. */
const words = (text: string): string[] =>
  fold(text)
    .replace(
      /\b(won|don|doesn|didn|can|couldn|isn|ain|aren|wasn|weren|hasn|haven|shouldn|wouldn)[’'`´ ]+t\b/g,
      '$1t',
    )
    .replace(/[’'`´]/g, '')
    // "will not" and "won't" are one word, and so is what was and what would be.
    .replace(/\b(?:will|would) not\b|\bwouldnt\b/g, 'wont')
    .replace(/\b(?:does|do|did) not\b|\b(?:dont|didnt)\b/g, 'doesnt')
    .replace(/\b(?:can|could) ?not\b|\bcouldnt\b/g, 'cant')
    .replace(/\b(?:is|are|was|were) not\b/g, 'isnt')
    .match(/[a-z0-9]+/g) ?? [];

const parts = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/hand[ -]brake/g, 'handbrake')
    .replace(/(parking|p|e)[ -]brake/g, 'handbrake')
    .replace(/([0-9])[ ]*(["”])/g, '$1"')
    .replace(/ø/g, ' ø ')
    .match(/\d+(?:[.,]\d+)?(?:\/\d+)?[a-z%"”]*|[a-zø]+|%|"/g) ?? [];

export const askEnglish: AskPatterns = {
  fold,
  words,
  stem,
  turnsBack: /(?!)/,
  neverMixed: [
    ['cable', 'table'],
    ['hose', 'hole'],
    ['heel', 'wheel'],
    ['show', 'shoe'],
    ['drag', 'drum'],
    ['pull', 'pawl'],
    ['bell', 'ball'],
    ['web', 'wet'],
    ['bore', 'bold'],
    ['toe', 'tow'],
  ],
  twofold: [
    [/\bclick/i, /hand ?brake|lever|notch/i],
    [/\bclick/i, /pedal|press|adjuster/i],
    [/\bnotch/i, /adjuster/i],
    [/\b(stuck|seized|frozen)\b/i, /drum/i],
    [/\b(stuck|seized|frozen)\b.*drum|drum.*\b(stuck|seized|frozen)\b/i, /wheel|turn/i],
    [/\blow\b/i, /pedal/i],
    [/\blow\b/i, /roller|test|effort/i],
    [/\bfade/i, /hot|hill/i],
    [/\badjust/i, /cable/i],
    [/\bhard\b/i, /pedal/i],
    [/\bhard\b/i, /turn|wheel/i],
    [/\bservo\b/i, /duo|kind/i],
  ],
  figures: {
    parts,
    nouns: {
      mark: /^(mark|marked|marking|max|maximum|discard|stamped|stamp|cast|limit|says|said|reads|written|printed)$/,
      new: /^(new|nominal|original|originally)$/,
      drum: /^(drums?|bore|rotor)$/,
      score: /^(scores?|scored|scoring|grooves?|scratch(es)?|gouges?)$/,
      lip: /^(lip|ridge)$/,
      lining:
        /^(linings?|liners?|shoes?|pads?|material|meat|thick|thickness|left|thin|thinnest|leading|trailing)$/,
      notches:
        /^(hand ?brake|handbrakes?|parking|park|lever|handle|hb|pbrake|ebrake|notch|notches|clicks?|clix)$/,
      slope: /^(slope|hill|incline|grade|gradient|ramp|driveway|steep)$/,
      turn: /^(turn|turns|turning|spin|rotate|stiff|tyre|tire|drag|drags)$/,
      unlike: /^(imbalance|imbalanced|unbalanced|difference|unlike)$/,
      swing: /^(ovality|oval|swing|runout)$/,
    },
    diameter: /^(dia|diam|diameter|id|ø)$/,
    number:
      /^(\d+(?:[.,]\d+)?(?:\/\d+)?)("|”|mm|cm|inch(?:es)?|in|thou|%|n|nm|kgf?|clicks?|notch(?:es)?)?$/,
    unit: /^("|mm|mil|mils|millimet(?:re|er)s?|cm|inch(?:es)?|in|thou|%|percent|n|newtons?)$/,
    inch: /^("|”|in|inch(es)?)$/,
    notch: /click|notch/,
    percent: /%|percent/,
    newton: /^(n|newtons?)$/,
    oneIn: /\b1 in (\d{1,2})\b/,
    right: /^right$/,
    left: /^left$/,
    trailing: /^trailing$/,
  },
};
