import { type Brake, KM, type LifeEvent } from '../index.ts';

/** A space each three digits, as the page writes numbers. */
const grouped = (n: number): string => String(Math.round(n)).replace(/\B(?=(\d{3})+$)/g, ' ');
const cap = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An event in one plain sentence. */
export function eventText(brake: Brake, t: Omit<LifeEvent, 'state'>): string {
  const at = `at ${grouped(t.distance / KM)} km`;
  const side = t.side ?? 'front';
  const lining = brake.shoes[side].lining;
  const stop = brake.adjuster.teeth;
  switch (t.kind) {
    case 'click':
      return t.value < 0 ? `Wound back to tooth ${t.tooth} ${at}` : `Click: tooth ${t.tooth} ${at}`;
    case 'stepped hot':
      return `Stepped on a drum of ${Math.round(t.temperature)} °C ${at}: a cold press would not have; clearance cold ${t.value < 0 ? 'none, it drags' : `${t.value.toFixed(2)} mm`}`;
    case 'tooth lost':
      return `A worn tooth let go under the parking pull ${at}: back to tooth ${t.tooth}`;
    case 'teeth used up':
      return `Last tooth, ${stop}, used ${at}: from here the clearance grows`;
    case 'lining limit':
      return `${cap(side)} lining at its limit of ${lining.thicknessMin} mm ${at}`;
    case 'rivet contact':
      return `${cap(side)} lining worn to its rivets ${at}: rivet heads rub on the drum`;
    case 'table contact':
      return `${cap(side)} lining worn through ${at}: the table rubs on the drum`;
    case 'drum limit':
      return `Drum past its largest diameter of ${2 * brake.drum.radiusMax} mm ${at}`;
    case 'piston run-out':
      return `${cap(side)} piston out of its bore ${at}: it travels more than ${brake.cylinder.stroke} mm`;
    case 'no balance':
      return `No balance found ${at}: the drum carries a shoe off its anchor; not driven on`;
    case 'drag at rest':
      return `Drags at rest with a cold drum ${at}: a lining stands ${Math.abs(t.value).toFixed(2)} mm inside it, and ${Math.round(t.torque / 1000)} N·m turn it`;
    case 'drag ends':
      return `Free again at rest with a cold drum ${at}`;
    case 'seized':
      return `Seized ${at}: the wheel would slide before it turns, ${Math.round(t.value / 1000)} N·m a brake; not driven on`;
    case 'gave way':
      return `Clamped more than the strut can bear ${at}, ${(t.value / 1000).toFixed(1)} kN: a part gives way; not driven on`;
    case 'lever off its stop':
      return `Parking lever held ${t.value.toFixed(1)} mm off its stop ${at}: the cable sets the shoes, and the next click is late`;
    case 'locks':
      return `The ${side} shoe would lock by itself ${at}: not driven on`;
  }
}

/** An event with its sentence. */
export interface ToldEvent extends LifeEvent {
  readonly text: string;
}

export const toldEvent = (brake: Brake, event: LifeEvent): ToldEvent => ({
  ...event,
  text: eventText(brake, event),
});
