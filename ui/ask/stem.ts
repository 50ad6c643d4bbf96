/** Endings of English as far as people at a brake use them; ours, since a full stemmer hurts short words. */

const odd: Readonly<Record<string, string>> = {
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
};

/** The word without its ending. */
export function stem(word: string): string {
  const known = odd[word];
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
