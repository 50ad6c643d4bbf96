import { type Brake, type Instant, leverForm, placePoint, type Side } from '../../sim/index.ts';
import { after, apply, type Frame, turnAbout } from './geometry.ts';
import { leverFrame } from './lever.ts';

/** Where every moving part stands at an instant, as rigid moves from the reference pose. */
export interface Places {
  readonly shoes: Readonly<Record<Side, Frame>>;
  readonly parking: Frame;
  readonly strut: Frame;
  /** Toothed lever: from its own frame (pin at 0, arm along +x) to where it stands; null without one. */
  readonly lever: Frame | null;
  /** How far each toe has moved outward, mm. */
  readonly out: Readonly<Record<Side, number>>;
}

/** The move of a shoe; its turn about the anchor is small, its shift that of the anchor's side. */
export function shoeFrame(brake: Brake, instant: Instant, side: Side): Frame {
  const { pose } = instant.shoes[side];
  const [x, y] = placePoint(brake.shoes[side], pose, [0, 0]);
  return { angle: pose.phi, x, y };
}

/** Sense in which the cable's pull turns the parking lever about its pivot. */
function leverSense({ parkingLever: { pivot, hook, pull } }: Brake): 1 | -1 {
  const turn = (hook[0] - pivot[0]) * pull[1] - (hook[1] - pivot[1]) * pull[0];
  return turn >= 0 ? 1 : -1;
}

/**
 * @param lift share of a tooth that the toothed lever can climb: under 1 where a hot lock holds it.
 * What is climbed beyond it the held lever carries along, strut and all, off the rear seat; so it does where no
 * spring holds the strut there.
 */
export function placesOf(brake: Brake, instant: Instant, lift = 1): Places {
  const front = shoeFrame(brake, instant, 'front');
  const rear = shoeFrame(brake, instant, 'rear');
  const parking = after(
    rear,
    turnAbout(brake.parkingLever.pivot, leverSense(brake) * instant.leverAngle),
  );
  const seated = strutFrame(brake, parking);
  const { growth } = brake.adjuster;
  const step = (growth[instant.tooth + 1] ?? Number.NaN) - (growth[instant.tooth] ?? 0);
  const carried = instant.strutOff ?? (instant.climb > lift ? step * (instant.climb - lift) : 0);
  const strut = { ...seated, x: seated.x - carried };
  return {
    shoes: { front, rear },
    parking,
    strut,
    lever: leverNow(brake, strut, instant, lift),
    out: { front: outward(brake, instant, 'front'), rear: outward(brake, instant, 'rear') },
  };
}

function outward(brake: Brake, instant: Instant, side: Side): number {
  const { toe } = brake.shoes[side];
  const now = placePoint(brake.shoes[side], instant.shoes[side].pose, toe);
  return (now[0] - toe[0]) * Math.sign(toe[0] - brake.cylinder.at[0]);
}

/** The strut rides on the rear seat (the parking lever's notch), which also guides it level. */
function strutFrame(brake: Brake, parking: Frame): Frame {
  const seat = brake.shoes.rear.strutSeat;
  const [x, y] = apply(parking, seat);
  return { angle: 0, x: x - seat[0], y: y - seat[1] };
}

/** The toothed lever: as its body stands in time, else as its flank has it. */
function leverNow(brake: Brake, strut: Frame, instant: Instant, most: number): Frame | null {
  const height = leverForm(brake)?.toothHeight ?? 0;
  if (instant.lever && instant.climb <= most) {
    return leverFrame(brake, strut, instant.lever.phase, instant.lever.lift);
  }
  const climb = Math.min(most, instant.climb);
  return leverFrame(brake, strut, instant.tooth + climb, climb * height);
}
