import { impossibleSteps } from './adjuster.ts';
import { impossibleDuties } from './duty.ts';
import type { Finding } from './finding.ts';
import type { Scene } from './schema.ts';
import { impossibleStates } from './states.ts';

const finding = (path: string, found: string, allowed: string): Finding => ({
  path,
  found,
  allowed,
});
const away = (a: readonly number[], b: readonly number[]): number => {
  const x = (a[0] as number) - (b[0] as number);
  const y = (a[1] as number) - (b[1] as number);
  return Math.sqrt(x * x + y * y);
};

/**
 * Values that have the right type and cannot be built: a lining outside the drum, teeth that run
 * backwards, a spring of no length. Called on a scene that passed the schema.
 */
export function impossible(scene: Scene): Finding[] {
  const out: Finding[] = [];
  const drum = scene.drum.diameterNew / 2;
  if (scene.drum.diameterMax < scene.drum.diameterNew) {
    out.push(
      finding(
        'drum.diameterMax',
        `${scene.drum.diameterMax} mm`,
        `at least diameterNew, ${scene.drum.diameterNew} mm`,
      ),
    );
  }
  if (scene.drum.lipDiameter > scene.drum.diameterMax) {
    out.push(
      finding(
        'drum.lipDiameter',
        `${scene.drum.lipDiameter} mm`,
        `at most diameterMax, ${scene.drum.diameterMax} mm`,
      ),
    );
  }
  for (const side of ['front', 'rear'] as const) {
    const shoe = scene.shoes[side];
    const at = `shoes.${side}`;
    const l = shoe.lining;
    if (!(l.to > l.from) || l.to - l.from > 175) {
      out.push(
        finding(
          `${at}.lining.to`,
          `${l.to}° after from ${l.from}°`,
          'more than from, by at most 175°',
        ),
      );
    }
    if (l.groundRadius > drum * 1.05 || l.groundRadius < drum * 0.9) {
      out.push(
        finding(
          `${at}.lining.groundRadius`,
          `${l.groundRadius} mm: the lining would lie outside the drum or never fit it`,
          `${(drum * 0.9).toFixed(1)} to ${(drum * 1.05).toFixed(1)} mm for this drum`,
        ),
      );
    }
    if (l.thicknessMin >= l.thicknessNew) {
      out.push(
        finding(
          `${at}.lining.thicknessMin`,
          `${l.thicknessMin} mm`,
          `less than thicknessNew, ${l.thicknessNew} mm`,
        ),
      );
    }
    if (l.chamferDepth >= l.thicknessNew) {
      out.push(
        finding(
          `${at}.lining.chamferDepth`,
          `${l.chamferDepth} mm`,
          `less than thicknessNew, ${l.thicknessNew} mm`,
        ),
      );
    }
    if (2 * l.chamferArc >= l.to - l.from) {
      out.push(
        finding(
          `${at}.lining.chamferArc`,
          `${l.chamferArc}° at each end`,
          'less than half the arc',
        ),
      );
    }
    if (2 * l.cutEdgeArc >= l.to - l.from) {
      out.push(
        finding(
          `${at}.lining.cutEdgeArc`,
          `${l.cutEdgeArc}° at each end`,
          'less than half the arc',
        ),
      );
    }
    const [f, t] = shoe.steel.tableArc;
    if (!(t > f)) out.push(finding(`${at}.steel.tableArc`, `${f}° to ${t}°`, 'from less than to'));
    for (const [key, p] of [
      ['anchor.at', shoe.anchor.at],
      ['toe', shoe.toe],
      ['strutSeat', shoe.strutSeat],
      ['holdDown.at', shoe.holdDown.at],
    ] as const) {
      if (away(p, [0, 0]) >= drum) {
        out.push(
          finding(
            `${at}.${key}`,
            `(${p[0]}, ${p[1]}), ${away(p, [0, 0]).toFixed(1)} mm from the axis`,
            `inside the drum, under ${drum} mm`,
          ),
        );
      }
    }
    if (shoe.toe[1] - shoe.anchor.at[1] < 0.1 * drum) {
      out.push(
        finding(
          `${at}.toe`,
          `${(shoe.toe[1] - shoe.anchor.at[1]).toFixed(1)} mm above the anchor`,
          `at least ${(0.1 * drum).toFixed(1)} mm above it, else the piston cannot turn the shoe`,
        ),
      );
    }
    if (shoe.strutSeat[1] - shoe.anchor.at[1] < 0.05 * drum) {
      out.push(
        finding(
          `${at}.strutSeat`,
          `${(shoe.strutSeat[1] - shoe.anchor.at[1]).toFixed(1)} mm above the anchor`,
          `at least ${(0.05 * drum).toFixed(1)} mm above it, else the strut cannot hold the shoe`,
        ),
      );
    }
  }
  if (!(scene.shoes.front.strutSeat[0] < scene.shoes.rear.strutSeat[0])) {
    out.push(
      finding(
        'shoes.front.strutSeat',
        `x ${scene.shoes.front.strutSeat[0]} mm`,
        'left of the rear seat',
      ),
    );
  }
  const seats = away(scene.shoes.front.strutSeat, scene.shoes.rear.strutSeat);
  if (scene.adjuster.lengthAtZero > seats + 0.5 || scene.adjuster.lengthAtZero < seats * 0.9) {
    out.push(
      finding(
        'adjuster.lengthAtZero',
        `${scene.adjuster.lengthAtZero} mm between seats ${seats.toFixed(2)} mm apart in the reference pose`,
        `${(seats * 0.9).toFixed(2)} to ${(seats + 0.5).toFixed(2)} mm`,
      ),
    );
  }
  scene.springs.forEach((s, i) => {
    const [a, b] = s.ends;
    if (away(a.at, b.at) < 1) {
      out.push(
        finding(
          `springs.${i}.ends`,
          `${away(a.at, b.at).toFixed(2)} mm apart`,
          'at least 1 mm apart: a spring of no length pulls nowhere',
        ),
      );
    }
    if (a.on === b.on) {
      out.push(finding(`springs.${i}.ends`, `both on ${a.on}`, 'two different parts'));
    }
  });
  impossibleSteps(scene.adjuster, (f) => out.push(f));
  const surfaces = Object.entries(scene.frictionOfSurfaces).map(
    ([name, s]) =>
      [
        `frictionOfSurfaces.${name}.factorAgainstTemperature`,
        s?.factorAgainstTemperature ?? [],
      ] as const,
  );
  for (const [key, table] of [
    ['frictionAgainstTemperature', scene.frictionAgainstTemperature] as const,
    ['wearAgainstTemperature', scene.wearAgainstTemperature] as const,
    ...surfaces,
  ]) {
    table.forEach((row, i) => {
      const before = table[i - 1];
      if (before && !(row[0] > before[0])) {
        out.push(
          finding(`${key}.${i}.0`, `${row[0]} °C after ${before[0]} °C`, 'rising temperatures'),
        );
      }
    });
  }
  const { start } = scene;
  const { teeth } = scene.adjuster;
  if (start.tooth > teeth) {
    out.push(finding('start.tooth', `${start.tooth}`, `0 to ${teeth}, the teeth there are`));
  }
  const bore = start.drumDiameter ?? scene.drum.diameterNew;
  if (bore < scene.drum.diameterNew || bore > scene.drum.diameterMax + 2) {
    out.push(
      finding(
        'start.drumDiameter',
        `${bore} mm`,
        `${scene.drum.diameterNew} mm as new to ${scene.drum.diameterMax + 2} mm, two past its limit`,
      ),
    );
  }
  for (const side of ['front', 'rear'] as const) {
    const thick = scene.shoes[side].lining.thicknessNew;
    if (start.wear[side] >= thick) {
      out.push(
        finding(
          `start.wear.${side}`,
          `${start.wear[side]} mm`,
          `less than the lining, ${thick} mm`,
        ),
      );
    }
  }
  const add = (f: Finding): void => {
    out.push(f);
  };
  impossibleStates(scene.states, scene.drum, teeth, add);
  impossibleDuties(scene.duties, add);
  return out;
}
