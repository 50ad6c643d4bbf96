import type { Brake, BrakeState, Instant, Point, Side } from '../../../sim/index.ts';
import { awayCutParts as words } from '../../../sim/words/en.ts';
import { wordsOf } from '../../adjusters.ts';
import { polar } from '../../stage/geometry.ts';
import { abutmentBlock } from '../../stage/parts/anchors.ts';
import { rimRadius } from '../../stage/parts/drum.ts';
import { liningPath } from '../../stage/parts/lining.ts';
import { leverBody, leverStop } from '../../stage/parts/parking.ts';
import { SPRING_HOLE, springHoles, tablePath, windowBox } from '../../stage/parts/shoe.ts';
import { strutPaths } from '../../stage/parts/strut.ts';
import { webPath } from '../../stage/parts/web.ts';
import { circlePath, moved } from '../../stage/path.ts';
import { placesOf } from '../../stage/place.ts';
import type { CutPart, CutSettings, Hole } from './part.ts';
import { type Area, areaOf, minus, offset, rectangle, scaled, union } from './polygons.ts';
import { screwCut, wedgeCut } from './strut-other.ts';
import { guidesOf, toothedCut, toothedParts } from './strut-toothed.ts';

/** All flat parts of a brake as it stands, from the outlines that the drawing and the engine use. */

/** A hold-down's pin stands in the board; its hole in the web is wider by this on all sides, mm of the brake. */
const FREE = 3;
/** The table is that much thicker in the union with web and lining, mm: chords of one arc leave slits. */
const SEAM = 0.03;
/** Board beyond the rim, mm of the brake. */
const MARGIN = 7;
/** Pins around the rim stand this far off it, mm of the model. */
const OFF_RIM = 0.5;

class Maker {
  readonly brake: Brake;
  readonly state: BrakeState;
  readonly set: CutSettings;

  constructor(brake: Brake, state: BrakeState, set: CutSettings) {
    this.brake = brake;
    this.state = state;
    this.set = set;
  }

  model(area: Area): Area {
    return scaled(area, this.set.factor);
  }
  hole([x, y]: Point, radius: number, what: Hole['for']): Hole {
    const { factor } = this.set;
    return { at: [x * factor, y * factor], radius, for: what };
  }
  pin(at: Point): Hole {
    return this.hole(at, (this.set.pin + this.set.play) / 2, 'pin');
  }
  /** A hole as the part has it, mm of the brake. */
  own(at: Point, radius: number, what: Hole['for'] = 'look'): Hole {
    return this.hole(at, radius * this.set.factor, what);
  }

  shoe(side: Side): CutPart {
    const { brake, set } = this;
    const shoe = brake.shoes[side];
    const paths = strutPaths(brake);
    const whole = union(
      areaOf(webPath(brake, shoe)),
      offset(areaOf(tablePath(shoe)), SEAM),
      areaOf(liningPath(shoe.lining, this.state.wear[side])),
    );
    const window = side === 'front' && windowBox(brake) && paths ? areaOf(paths.window) : [];
    const held = this.hole(shoe.holdDown.at, set.pin / 2 + FREE * set.factor, 'pin');
    const holes = [
      ...(shoe.anchor.kind === 'pin' ? [this.pin(shoe.anchor.at)] : []),
      held,
      ...springHoles(brake, side).map((at) => this.own(at, SPRING_HOLE, 'spring')),
      ...shoe.webHoles
        .filter(({ at }) => window.length === 0 || !inBox(window, at))
        .map(({ at, radius }) => this.own(at, radius)),
    ];
    if (side === 'rear') holes.push(this.pin(brake.parkingLever.pivot));
    if (side === 'rear' && paths) holes.push(this.own(paths.spring[1], SPRING_HOLE / 2, 'spring'));
    if (side === 'front' && wordsOf(brake).byHand === 'wheel') holes.push(this.pin(shoe.strutSeat));
    const turns =
      shoe.anchor.kind === 'pin' ? words.turnsOnItsAnchorPin : words.itsRoundHeelStandsOn;
    return {
      ...{
        id: `${side} shoe`,
        name: side === 'front' ? words.frontShoe : words.rearShoe,
        layer: 1,
      },
      ...{ count: 1, area: this.model(minus(whole, window)), holes },
      does: words.aPinWithAWasher(turns),
    };
  }

  /** The rim in section. */
  drum(): CutPart {
    const { brake } = this;
    const ring = areaOf([
      ...circlePath([0, 0], rimRadius(brake)),
      ...circlePath([0, 0], this.state.drumRadius),
    ]);
    return {
      ...{
        id: 'drum',
        name: words.drumRing,
        layer: 1,
        count: 1,
        area: this.model(ring),
        holes: [],
      },
      does: words.liesLooseBetweenTheFour,
    };
  }

  parking(): CutPart[] {
    const { brake } = this;
    const { hook, pivot } = brake.parkingLever;
    return [
      {
        ...{ id: 'parking lever', name: words.parkingLever, layer: 2, count: 1 },
        area: this.model(areaOf(leverBody(brake))),
        holes: [this.pin(pivot), this.pin(hook)],
        does: words.turnsOnAPinIn,
      },
      {
        ...{ id: 'stop', name: words.stopOfTheParkingLever, layer: 1, count: 1, holes: [] },
        // Drawn over the web that it rests on; cut, it ends there.
        area: minus(this.model(areaOf(leverStop(brake))), this.shoe('rear').area),
        does: words.gluedUnderTheLeverSo,
      },
    ];
  }

  abutments(): CutPart[] {
    return (['front', 'rear'] as const).flatMap((side): CutPart[] => {
      const block = abutmentBlock(this.brake, side);
      if (!block) return [];
      return [
        {
          ...{ id: `${side} abutment`, name: words.heelBlock(side), layer: 1, count: 1, holes: [] },
          area: this.model(areaOf(moved(block.path, block.place))),
          does: words.gluedOnTheBoardThe,
        },
      ];
    });
  }

  board(): CutPart {
    const { brake, set } = this;
    const { front, rear } = brake.shoes;
    const half = rimRadius(brake) + MARGIN;
    const toothed = toothedParts(brake);
    const rim = rimRadius(brake) + (set.pin / 2 + OFF_RIM) / set.factor;
    const holes = [
      ...[front, rear].flatMap((s) => (s.anchor.kind === 'pin' ? [this.pin(s.anchor.at)] : [])),
      this.pin(front.holdDown.at),
      this.pin(rear.holdDown.at),
      this.pin(brake.parkingLever.cableGuide),
      ...(toothed ? guidesOf(toothed).map((at) => this.pin(at)) : []),
      ...[45, 135, 225, 315].map((a) => this.pin(polar(rim, (a * Math.PI) / 180))),
    ];
    const area = rectangle({ left: -half, right: half, low: -half, high: half });
    return {
      ...{ id: 'board', name: words.board, layer: 0, count: 1, area: this.model(area), holes },
      does: words.carriesAllItsPinsAnchors,
    };
  }
}

const inBox = (area: Area, [x, y]: Point): boolean => {
  const xs = area.flat().map((p) => p[0]);
  const ys = area.flat().map((p) => p[1]);
  return x > Math.min(...xs) && x < Math.max(...xs) && y > Math.min(...ys) && y < Math.max(...ys);
};

/**
 * The parts of the model.
 *
 * @param rest the released brake in that state
 */
export function cutParts(
  brake: Brake,
  state: BrakeState,
  rest: Instant,
  set: CutSettings,
): readonly CutPart[] {
  const make = new Maker(brake, state, set);
  const strut = {
    lift: () => toothedCut(brake, set),
    wedge: () => wedgeCut(brake, rest, placesOf(brake, rest), set),
    wheel: () => screwCut(brake, rest, placesOf(brake, rest), set),
  }[wordsOf(brake).byHand];
  return [
    make.board(),
    make.drum(),
    make.shoe('front'),
    make.shoe('rear'),
    ...make.abutments(),
    ...make.parking(),
    ...strut(),
  ];
}
