import type { Scene } from '../sim/index.ts';

/**
 * Is a brake one that can be built? Worked out from the drawing board up and by nothing of the code: places
 * are sampled along arcs, rods and springs, and shoes are turned about their anchors step by step until
 * they touch. Hairs narrower than the rules', so that a rule that is left out or too wide is seen and a
 * last digit is not.
 */
type P = readonly [number, number];
type Shoe = Scene['shoes']['front'];
const RAD = Math.PI / 180;
const HAIR = 1e-6;

const polar = (radius: number, degrees: number): P => [
  radius * Math.cos(degrees * RAD),
  radius * Math.sin(degrees * RAD),
];
const dist = (a: P, b: P): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const r = (p: P): number => Math.hypot(...p);
const steps = (n: number): number[] => Array.from({ length: n + 1 }, (_, i) => i / n);
const between = (a: P, b: P, t: number): P => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
const turned = (p: P, about: P, rad: number): P => {
  const [x, y] = [p[0] - about[0], p[1] - about[1]];
  const [c, s] = [Math.cos(rad), Math.sin(rad)];
  return [about[0] + c * x - s * y, about[1] + s * x + c * y];
};

/** Face of the unworn lining in the reference pose: a circle whose middle touches the new drum. */
const kept = new WeakMap<Shoe, P[]>();
function facesOf(shoe: Shoe, drum: number): P[] {
  const seen = kept.get(shoe);
  if (seen) return seen;
  const { from, to, groundRadius } = shoe.lining;
  const middle = (from + to) / 2;
  const centre = polar(drum - groundRadius, middle);
  const faces = steps(24).map((t) => {
    // Ray from the axis: its crossing with that circle, by bisection.
    const angle = from + t * (to - from);
    let [low, high] = [0, 3 * drum];
    for (let i = 0; i < 45; i++) {
      const m = (low + high) / 2;
      if (dist(polar(m, angle), centre) < groundRadius) low = m;
      else high = m;
    }
    return polar(low, angle);
  });
  kept.set(shoe, faces);
  return faces;
}

/** Opens (positive) or closes a shoe by an angle. */
const opened = (shoe: Shoe, p: P, front: boolean, rad: number): P =>
  turned(p, shoe.anchor.at, front ? rad : -rad);

/** The turn at which a shoe's middle stands at a distance from the axis. */
function turnFor(shoe: Shoe, front: boolean, face: P, radius: number): number {
  let [low, high] = [-0.5, 0.5];
  for (let i = 0; i < 45; i++) {
    const m = (low + high) / 2;
    if (r(opened(shoe, face, front, m)) < radius) low = m;
    else high = m;
  }
  return low;
}

/** Both shoes on a strut of a length, middles equally far from the axis: their turns, and the clearance. */
function onStrut(s: Scene, length: number): { front: number; rear: number; gap: number } {
  const drum = s.drum.diameterNew / 2;
  const { front, rear } = s.shoes;
  const [f, b] = [facesOf(front, drum)[12] as P, facesOf(rear, drum)[12] as P];
  let [low, high] = [-0.5 * drum, 0.5 * drum];
  let out = { front: 0, rear: 0, gap: 0 };
  for (let i = 0; i < 40; i++) {
    const gap = (low + high) / 2;
    out = {
      gap,
      front: turnFor(front, true, f, drum - gap),
      rear: turnFor(rear, false, b, drum - gap),
    };
    const seats = dist(
      opened(front, front.strutSeat, true, out.front),
      opened(rear, rear.strutSeat, false, out.rear),
    );
    if (seats > length) low = gap;
    else high = gap;
  }
  return out;
}

/** What of a scene nobody could build, each in a few words. */
export function unsound(s: Scene): string[] {
  const out: string[] = [];
  const no = (bad: boolean, what: string): void => {
    if (bad) out.push(what);
  };
  const drum = s.drum.diameterNew / 2;
  const hub = s.look.hubRadius;
  const outside = (p: P): boolean => !(r(p) < drum + HAIR);
  const inHub = (p: P): boolean => !(r(p) > hub - HAIR);

  no(s.drum.diameterMax < s.drum.diameterNew, 'a drum limit under its size');
  no(s.drum.diameterMax / 2 > drum + s.drum.rim, 'a drum turned through its rim');
  no(s.drum.lipDiameter / 2 < 0.97 * drum, 'a lip inside the drum');
  no(hub > 0.7 * drum, 'a hub that fills the drum');
  no(s.vehicle.tyreRadius < drum + s.drum.rim, 'a wheel smaller than its drum');
  no(s.look.studCircle + s.look.studRadius > hub + HAIR, 'studs beside the hub');

  // Cylinder: a box, its bore inside it, the toes at its ends.
  const c = s.cylinder;
  no(!(c.bore < c.outerDiameter), 'a bore as wide as its cylinder');
  no(c.stroke > c.length, 'a stroke longer than the cylinder');
  for (const x of [-1, 0, 1]) {
    for (const y of [-1, 1]) {
      const corner: P = [c.at[0] + (x * c.length) / 2, c.at[1] + (y * c.outerDiameter) / 2];
      no(outside(corner), 'a cylinder outside the drum');
      no(inHub(corner), 'a cylinder in the hub');
    }
  }

  // Shoes.
  const taken: number[] = [];
  for (const side of ['front', 'rear'] as const) {
    const shoe = s.shoes[side];
    const front = side === 'front';
    const sign = front ? -1 : 1;
    const l = shoe.lining;
    const span = l.to - l.from;
    no(!(span > 0 && span < 180), `${side}: an arc that is none`);
    for (const t of steps(24)) {
      const angle = l.from + t * span;
      no(sign * Math.cos(angle * RAD) < -HAIR, `${side}: a lining on the other side`);
      no(
        angle < shoe.steel.tableArc[0] - HAIR || angle > shoe.steel.tableArc[1] + HAIR,
        `${side}: a lining past its table`,
      );
      taken.push(Math.round(((((angle + 720) % 360) + 360) % 360) * 1e6) / 1e6);
    }
    const web = l.groundRadius - l.thicknessNew - shoe.steel.tableThickness;
    const tip = polar(web, shoe.steel.tableArc[front ? 0 : 1]);
    no(
      Math.abs(tip[0] - c.at[0]) < c.length / 2 - HAIR &&
        Math.abs(tip[1] - c.at[1]) < c.outerDiameter / 2 - HAIR,
      `${side}: a table through the cylinder`,
    );
    no(!(web - shoe.steel.webDepth > hub - HAIR), `${side}: a web in the hub`);
    no(!(l.thicknessNew > l.thicknessMin), `${side}: a limit over the new lining`);
    no(l.rivetHeight >= l.thicknessNew, `${side}: rivets out of the lining`);
    no(l.width > 2 * drum, `${side}: a lining wider than the drum`);
    for (const [what, p] of [
      ['anchor', shoe.anchor.at],
      ['toe', shoe.toe],
      ['strut seat', shoe.strutSeat],
      ['hold-down', shoe.holdDown.at],
    ] as const) {
      no(outside(p), `${side}: ${what} outside the drum`);
      no(inHub(p), `${side}: ${what} in the hub`);
      no(sign * p[0] < -HAIR, `${side}: ${what} on the other side`);
    }
    for (const hole of shoe.webHoles) {
      for (const t of steps(12)) {
        const edge = polar(hole.radius, 360 * t);
        const p: P = [hole.at[0] + edge[0], hole.at[1] + edge[1]];
        no(r(p) > web + HAIR, `${side}: a hole outside the web`);
        no(inHub(p), `${side}: a hole in the hub`);
      }
    }
    no(Math.abs(shoe.toe[1] - c.at[1]) > 0.06 * c.bore, `${side}: a toe off the cylinder's axis`);
    no(sign * (shoe.toe[0] - c.at[0]) < c.length / 2 - HAIR, `${side}: a toe inside the cylinder`);
    if (shoe.anchor.kind === 'abutment') {
      no(
        sign * Math.cos(shoe.anchor.normal * RAD) < 0.5,
        `${side}: a flat that does not hold the heel outward`,
      );
    }
    // The lining's middle goes out when the toe does, and not by very much less.
    const face = facesOf(shoe, drum)[12] as P;
    const by = 1e-4;
    const middle = r(opened(shoe, face, front, by)) - r(face);
    const toe = sign * (opened(shoe, shoe.toe, front, by)[0] - shoe.toe[0]);
    const seat = sign * (opened(shoe, shoe.strutSeat, front, by)[0] - shoe.strutSeat[0]);
    no(!(middle > 0.3 * drum * by), `${side}: an anchor near the middle`);
    no(!(toe > 0.45 * drum * by), `${side}: a piston that does not turn its shoe`);
    no(!(seat > 0.25 * drum * by), `${side}: a strut that does not hold its shoe`);
    // Springs: opening the shoe has to stretch them, by their fitted pulls together.
    let work = 0;
    for (const spring of s.springs) {
      const [a, b] = spring.ends;
      const move = (end: typeof a): P =>
        end.on === side ? opened(shoe, end.at, front, by) : end.at;
      work += spring.fitted * (dist(move(a), move(b)) - dist(a.at, b.at));
    }
    no(work < -1 * by, `${side}: springs that press it on`);
    const hottest = Math.max(1, ...s.frictionAgainstTemperature.map((row) => row[1]));
    no(
      typeof l.friction === 'number' && l.friction * hottest > 1.51,
      `${side}: more friction than any lining has`,
    );
  }
  // Each lining takes 25 places of the circle; taken twice, both lie in one place.
  const frontArc = taken.slice(0, 25);
  const rearArc = taken.slice(25);
  no(
    frontArc.some((a) => rearArc.includes(a)) && frontArc[12] === rearArc[12],
    'both linings in one place',
  );

  for (const spring of s.springs) {
    const [a, b] = spring.ends;
    no(dist(a.at, b.at) < 1, 'a spring of no length');
    no(a.on === b.on, 'a spring on one part');
    for (const t of steps(40)) {
      const p = between(a.at, b.at, t);
      no(outside(p), 'a spring outside the drum');
      no(!(r(p) > hub - HAIR), 'a spring through the hub');
    }
  }

  // Strut: over the hub; grown to its end it does not reach through two linings twice.
  const { front, rear } = s.shoes;
  const seats = dist(front.strutSeat, rear.strutSeat);
  for (const t of steps(40)) {
    const on = between(front.strutSeat, rear.strutSeat, t);
    no(inHub(on), 'a strut through the hub');
    no(
      Math.abs(on[0] - c.at[0]) < c.length / 2 && Math.abs(on[1] - c.at[1]) < c.outerDiameter / 2,
      'a strut through the cylinder',
    );
  }
  no(!(front.strutSeat[0] < rear.strutSeat[0]), 'seats the wrong way round');
  const a = s.adjuster;
  no(a.lengthAtZero > seats + HAIR || a.lengthAtZero < 0.89 * seats, 'a strut of another length');
  const lever = 'lever' in a ? a.lever : undefined;
  const reach = (n: number): number =>
    lever
      ? lever.nose *
        (Math.cos(lever.startAngle * RAD) -
          Math.cos((lever.startAngle + n * lever.toothAngle) * RAD))
      : n * (a.pitch ?? Number.NaN);
  for (let n = 1; n <= a.teeth; n++)
    no(!(reach(n) > reach(n - 1)), 'teeth that do not run forward');
  const through = drum + (s.drum.diameterMax - s.drum.diameterNew) / 2;
  const wornThrough = (shoe: Shoe, isFront: boolean): P => {
    const face = facesOf(shoe, drum)[12] as P;
    return opened(
      shoe,
      shoe.strutSeat,
      isFront,
      turnFor(shoe, isFront, face, through + shoe.lining.thicknessNew),
    );
  };
  const needed = dist(wornThrough(front, true), wornThrough(rear, false)) - seats;
  no(!(reach(a.teeth) < 2 * needed + 1), 'teeth that grow the strut past any lining');

  // Built: the drum goes over both shoes, and the pistons reach it in their stroke.
  const rest = onStrut(s, a.lengthAtZero);
  for (const side of ['front', 'rear'] as const) {
    const shoe = s.shoes[side];
    const isFront = side === 'front';
    const faces = facesOf(shoe, drum);
    for (const p of faces) {
      const proud = r(opened(shoe, p, isFront, rest[side])) - drum;
      no(proud > 0.004 * drum, `${side}: a lining outside the drum at rest`);
    }
    const sign = isFront ? -1 : 1;
    const home = opened(shoe, shoe.toe, isFront, rest[side])[0];
    const touch = opened(shoe, shoe.toe, isFront, turnFor(shoe, isFront, faces[12] as P, drum))[0];
    no(sign * (touch - home) > 1.1 * c.stroke, `${side}: a travel past the stroke`);
  }

  // Parking lever: a little turn of it that brings the hook towards the pull pushes the strut off.
  const p = s.parkingLever;
  no(!(dist(p.hook, p.cableGuide) > 2), 'a cable guide on the hook');
  for (const t of steps(20)) no(inHub(between(p.hook, p.cableGuide, t)), 'a cable through the hub');
  for (const key of ['pivot', 'hook', 'cableGuide'] as const) {
    no(outside(p[key]), `${key} outside the drum`);
    no(inHub(p[key]), `${key} in the hub`);
  }
  const along: P =
    p.pullDirection !== undefined
      ? polar(1, p.pullDirection)
      : [p.cableGuide[0] - p.hook[0], p.cableGuide[1] - p.hook[1]];
  const way = (by: number): number => {
    const q = turned(p.hook, p.pivot, by);
    return (q[0] - p.hook[0]) * along[0] + (q[1] - p.hook[1]) * along[1];
  };
  const by = way(1e-4) > 0 ? 1e-4 : -1e-4;
  const notch = turned(rear.strutSeat, p.pivot, by);
  no(!(dist(notch, front.strutSeat) < seats), 'a cable that pulls the strut loose');

  // Upstream: parts that are no greater than their whole, and a line that the springs can bear.
  const h = s.hydraulics;
  no((h.circuits?.give ?? 0) > h.circuit, 'lines that give more than the circuit');
  no((h.circuits?.stroke ?? 0) >= h.masterStroke, 'a circuit with all of the stroke');
  const valve = h.rearValve;
  no(
    valve?.kind === 'load' && valve.kneeLaden < valve.kneeEmpty,
    'a knee that falls with the load',
  );
  for (const [side, sign] of [
    ['front', -1],
    ['rear', 1],
  ] as const) {
    const shoe = s.shoes[side];
    const open = 1e-4;
    const move = (q: P): P => opened(shoe, q, side === 'front', open);
    // Work of the kept pressure on the piston against that of the springs' fitted pulls.
    const given =
      h.residualPressure *
      0.1 *
      (Math.PI / 4) *
      c.bore ** 2 *
      sign *
      (move(shoe.toe)[0] - shoe.toe[0]);
    let held = 0;
    for (const spring of s.springs) {
      const [from, to] = spring.ends.map((e) => (e.on === side ? move(e.at) : e.at)) as [P, P];
      held += spring.fitted * (dist(from, to) - dist(spring.ends[0].at, spring.ends[1].at));
    }
    no(h.residualPressure > 0 && given > held, `${side}: a pressure that the springs do not hold`);
  }

  for (const start of [s.start, ...(s.otherWheel ? [s.otherWheel] : [])]) {
    no(start.tooth > a.teeth, 'a start on no tooth');
    for (const side of ['front', 'rear'] as const) {
      const w = start.wear[side];
      if (typeof w === 'number') continue;
      const m = w.middle ?? (w.toe + w.heel) / 2;
      // Newton's differences through three points half an arc apart.
      const deep = steps(48).map(
        (t) => w.toe + 2 * t * (m - w.toe) + 2 * t * (t - 0.5) * (w.heel - 2 * m + w.toe),
      );
      no(Math.min(...deep) < -1e-3, `${side}: wear that adds`);
      no(Math.max(...deep) > s.shoes[side].lining.thicknessNew, `${side}: worn away`);
    }
  }
  // So small that nobody waits for it to be drawn or driven.
  no(JSON.stringify(s).length > 200000, 'a scene without bounds');
  return [...new Set(out)];
}
