/**
 * Lessons as Ask tells them, and what people say who want one. Their files are larger than all of Ask
 * and are loaded when one is opened; a test holds titles and ideas to them.
 */
interface LessonText {
  readonly title: string;
  readonly idea: string;
  readonly says: readonly string[];
}

export const lessonTexts: Readonly<Record<string, LessonText>> = {
  'how-this-brake-works': {
    title: 'How this brake works, in four minutes',
    idea: 'Part by part and cause by cause; it plays by itself, can be stopped anywhere and handled, and goes on.',
    says: [
      'talk me through a drum brake',
      'play me the whole thing',
      'a talk about how a drum brake works',
      'show it all by itself',
      'four minute explanation',
      'overview for beginners',
    ],
  },
  'parts-and-names': {
    title: 'Parts and names',
    idea: 'A part is known by what stops working without it.',
    says: [
      'lesson about the parts of a drum brake',
      'learn the names of the parts',
      'teach the parts and what they do',
      'what happens without a part',
    ],
  },
  'rest-position': {
    title: 'What sets the rest position',
    idea: 'Released, the return springs clamp the shoes on the strut; the strut decides.',
    says: [
      'lesson about the rest position',
      'what sets the gap when released',
      'lesson about return springs and strut',
      'teach why the shoes stop where they stop',
    ],
  },
  'the-press': {
    title: 'The press',
    idea: 'A press is a chain: free play, springs, gap, force.',
    says: [
      'lesson about pressing the pedal',
      'what happens when the pedal goes down step by step',
      'teach pedal travel',
      'lesson about hydraulics of the wheel cylinder',
    ],
  },
  'self-energising': {
    title: 'Self-energising and direction',
    idea: 'The drum helps one shoe and hinders the other.',
    says: [
      'lesson about self energising',
      'teach leading and trailing shoes',
      'explain to a class why one shoe does more',
      'lesson about direction of turning',
    ],
  },
  'why-it-grows': {
    title: 'Why the clearance grows',
    idea: 'Wear of both linings and the drum all end up as travel.',
    says: [
      'lesson about wear and clearance',
      'teach why the gap grows',
      'why does the pedal get longer lesson',
    ],
  },
  'the-click': {
    title: 'The click and the lost motion',
    idea: 'It steps when a press carries the shoes past the slot play by one whole tooth.',
    says: [
      'lesson about the click',
      'lesson about the self adjuster',
      'teach how the adjuster steps',
      'lesson about lost motion',
    ],
  },
  'holding-the-tooth': {
    title: 'Holding the tooth',
    idea: 'The tooth carries load at rest and most when parked, none while braking.',
    says: [
      'lesson about worn teeth',
      'what loads the tooth of the adjuster',
      'teach when the tooth holds',
    ],
  },
  'wear-and-limits': {
    title: 'Wear shares and limits',
    idea: 'Thinnest point, rate, limit, and an honest band.',
    says: [
      'lesson about wear limits',
      'teach how to measure linings',
      'lesson about how long shoes last',
    ],
  },
  'drum-off': {
    title: 'The drum will not come off',
    idea: 'Four locks, four signs; pulling harder is not one of them.',
    says: [
      'lesson about a stuck drum',
      'teach taking a drum off',
      'exercise about a drum that does not come off',
    ],
  },
  'new-shoes': {
    title: 'New shoes right first time',
    idea: 'Adjuster back, preset, press, cable last, bed in.',
    says: [
      'lesson about fitting shoes',
      'teach fitting new shoes',
      'lesson about setting the shoes',
      'learn to change brake shoes',
    ],
  },
  'parking-both-ways': {
    title: 'The parking brake, both ways',
    idea: 'One cable works both shoes through the strut.',
    says: [
      'lesson about the parking brake',
      'teach how the handbrake works',
      'lesson about parking on a slope',
      'class about the handbrake on a hill',
    ],
  },
  heat: {
    title: 'Heat: growth, a step too far, fade',
    idea: 'A hot drum looks like a worn one.',
    says: ['lesson about heat and fade', 'teach brake fade', 'lesson about hot drums'],
  },
  'cheapest-reading': {
    title: 'The cheapest reading',
    idea: 'Choose the reading that splits the causes, not the one you like.',
    says: [
      'lesson about fault finding',
      'teach diagnosis',
      'lesson about which check first',
      'exercise in diagnosis for students',
    ],
  },
  verdict: {
    title: 'From measurements to a verdict',
    idea: 'Measured, limit, margin, next date, whose limit.',
    says: [
      'lesson about inspection',
      'teach judging a brake',
      'lesson about measuring and verdict',
    ],
  },
};
