import * as v from 'valibot';
import type { Duty } from '../brake/duty.ts';
import { SURFACES } from '../brake/surface.ts';
import { BAR, KG, KM, KMH } from '../units/units.ts';
import type { Finding } from './finding.ts';
import { num, size, words } from './parts.ts';

const perKm = (about: string) => size(`${about}, 1/km`, 100);

/** A named duty in the scene file, in trade units. */
export const dutyPart = v.strictObject({
  name: words('Name'),
  about: v.optional(v.string('text'), ''),
  heat: v.optional(v.boolean('true or false'), true),
  mass: v.optional(size('Mass that is stopped, kg; the vehicle’s when left out', 1e5)),
  stops: v.pipe(
    v.array(
      v.strictObject({
        name: v.optional(words('Name'), 'stop'),
        speed: size('Stopped from, km/h', 300),
        pressure: v.optional(size('bar; or give a deceleration', 300)),
        deceleration: v.optional(size('m/s²; or give a pressure', 15)),
        perKm: perKm('How often'),
        reverse: v.optional(num('Share of them in reverse', 0, 1), 0),
      }),
      'a list of stops',
    ),
    v.minLength(1, 'at least one kind of stop'),
  ),
  descents: v.optional(
    v.array(
      v.strictObject({
        name: v.optional(words('Name'), 'descent'),
        slope: size('%', 60),
        length: size('km', 100),
        speed: size('km/h', 200),
        perKm: perKm('How often'),
      }),
      'a list of descents',
    ),
    [],
  ),
  parking: v.optional(
    v.strictObject({
      cable: size('Pull of each cable, N', 5000),
      perKm: perKm('How often'),
      tightened: v.optional(num('By what the cable is tightened, mm in 1000 km', 0, 50), 0),
    }),
  ),
  weather: v.optional(
    v.array(
      v.strictObject({
        surface: v.picklist(SURFACES, 'a surface'),
        share: num('Share of the stops', 0, 1),
      }),
      'a list of surfaces with their shares',
    ),
    [],
  ),
});

type DutyPart = v.InferOutput<typeof dutyPart>;

/** From trade units to inside units. */
export function toDuty(d: DutyPart): Duty {
  return {
    name: d.name,
    about: d.about,
    heat: d.heat,
    mass: d.mass === undefined ? null : d.mass * KG,
    stops: d.stops.map((s) => ({
      name: s.name,
      speed: s.speed * KMH,
      asked:
        s.pressure === undefined
          ? { by: 'deceleration', deceleration: (s.deceleration ?? 0) * 1000 }
          : { by: 'pressure', pressure: s.pressure * BAR },
      perKm: s.perKm,
      reverse: s.reverse,
    })),
    descents: d.descents.map((h) => ({
      name: h.name,
      slope: h.slope / 100,
      length: h.length * KM,
      speed: h.speed * KMH,
      perKm: h.perKm,
    })),
    parking: d.parking
      ? {
          cable: d.parking.cable,
          perKm: d.parking.perKm,
          tightened: d.parking.tightened / 1000,
        }
      : null,
    weather: d.weather,
  };
}

/** Duties that have the right types and cannot be driven. */
export function impossibleDuties(
  duties: readonly DutyPart[],
  plain: string,
  add: (finding: Finding) => void,
): void {
  const names = new Set([plain]);
  duties.forEach((d, i) => {
    const at = `duties.${i}`;
    if (names.has(d.name)) {
      add({ path: `${at}.name`, found: `"${d.name}" again`, allowed: 'a name of its own' });
    }
    names.add(d.name);
    d.stops.forEach((s, n) => {
      const both = s.pressure !== undefined && s.deceleration !== undefined;
      if (both || (s.pressure === undefined && s.deceleration === undefined)) {
        add({
          path: `${at}.stops.${n}.pressure`,
          found: both ? 'pressure and deceleration' : 'neither pressure nor deceleration',
          allowed: 'one of the two',
        });
      }
    });
    const shares = d.weather.reduce((sum, w) => sum + w.share, 0);
    if (shares > 1 + 1e-9) {
      add({
        path: `${at}.weather`,
        found: `shares that add up to ${shares}`,
        allowed: 'at most 1 together',
      });
    }
    const down = d.descents.reduce((sum, h) => sum + h.length * h.perKm, 0);
    if (down > 1 + 1e-9) {
      add({
        path: `${at}.descents`,
        found: `${down} km of descent in each km`,
        allowed: 'at most 1 together',
      });
    }
  });
}
