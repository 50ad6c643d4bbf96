/** What a mechanic may look at, with the minutes it takes; in the order of the list on the page. */
export interface Examination {
  readonly id: ExaminationId;
  readonly name: string;
  readonly minutes: number;
  /** Must be taken before: the wheels must be up, or the drum off. */
  readonly needs: 'turn' | 'off' | null;
  /** What is done. */
  readonly how: string;
}

export type ExaminationId =
  | 'story'
  | 'pump'
  | 'notches'
  | 'heat'
  | 'turn'
  | 'rock'
  | 'press'
  | 'bleed'
  | 'lever'
  | 'roller'
  | 'off'
  | 'measure'
  | 'dial'
  | 'tooth'
  | 'boots'
  | 'bore';

const row = (
  id: ExaminationId,
  name: string,
  minutes: number,
  how: string,
  needs: Examination['needs'] = null,
): Examination => ({ id, name, minutes, needs, how });

/** Minutes are our own choice of what a good mechanic needs. */
export const examinations: readonly Examination[] = [
  row('story', 'Story and feel', 2, 'Hear which wheel and when; tread on the pedal.'),
  row(
    'pump',
    'Pump the pedal',
    1,
    'After a night parked: measure the pedal at 10 and 40 bar, and once more.',
  ),
  row('notches', 'Notches at 300 N', 1, 'Count the hand lever’s clicks to 300 N in each cable.'),
  row(
    'heat',
    'Heat of the drums after a drive',
    12,
    'Drive at 50 km/h without braking, feel or gauge.',
  ),
  row(
    'turn',
    'Wheels up, turn both ways',
    8,
    'On stands: turn each wheel by hand, pull at the drum.',
  ),
  row(
    'rock',
    'Rock the wheel, tap the drum',
    2,
    'Play at the rim; a clear ring or a dull one.',
    'turn',
  ),
  row(
    'press',
    'Tread slowly, let go',
    5,
    'Wheels up, a gauge in the line: when it begins to drag, when it is free.',
    'turn',
  ),
  row(
    'bleed',
    'Open the bleed point',
    4,
    'With the wheels up: what changes when pressure can go.',
    'turn',
  ),
  row(
    'lever',
    'See and flex the parking lever',
    4,
    'Is it on its stop; does it come back at once.',
    'turn',
  ),
  row(
    'roller',
    'Roller test, 20 bar',
    10,
    'Each wheel on the pedal, then parked at 300 N, both ways.',
  ),
  row(
    'off',
    'Drum off, and 1 a tooth',
    15,
    'Back off as far as it needs, take the drum off, rock the shoes.',
    'turn',
  ),
  row(
    'measure',
    'Measure drum and linings',
    8,
    'Two-point gauge at several angles, linings at their thinnest.',
    'off',
  ),
  row('dial', 'Dial gauge on the drum', 8, 'Swing of the bore as it turns on its hub.', 'off'),
  row(
    'tooth',
    'Count the tooth',
    1,
    'At which tooth does the strut stand; does the lever drop in.',
    'off',
  ),
  row('boots', 'Look behind the boots', 2, 'Wet or dry, cylinder and hub.', 'off'),
  row('bore', 'Bore mark behind the plate', 5, 'Read the mark on the cylinder.'),
];
