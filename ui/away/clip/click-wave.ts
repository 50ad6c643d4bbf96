import { BURST, LEAST_APART, loudness, PEAK, TONE, TONES } from '../../sound.ts';
import type { Sound } from './picture.ts';

/**
 * The page's click (ui/sound.ts) as samples: the same burst through the same high-pass, the same two tones under
 * the same envelope, so that a film sounds as the bench does. The noise is always the same.
 */

/** Samples a second: Opus has this one. */
export const RATE = 48000;

/** Numbers from −1 to 1, always the same: a congruential generator, multiplier and step as in "Numerical Recipes", 2nd ed., 7.1. */
function noise(): () => number {
  let at = 1;
  return () => {
    at = (Math.imul(at, 1664525) + 1013904223) >>> 0;
    return at / 2 ** 31 - 1;
  };
}

/**
 * A second-order high-pass as a BiquadFilterNode has it, its quality 1 dB: W3C, Web Audio API, "Filters
 * Characteristics", after R. Bristow-Johnson's cookbook.
 */
function highPass(frequency: number): (x: number) => number {
  const w = (2 * Math.PI * frequency) / RATE;
  const alpha = Math.sin(w) / (2 * 10 ** (1 / 20));
  const c = Math.cos(w);
  const [b0, b1, a0, a1, a2] = [(1 + c) / 2, -(1 + c), 1 + alpha, -2 * c, 1 - alpha];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return (x) => {
    const y = (b0 * x + b1 * x1 + b0 * x2 - a1 * y1 - a2 * y2) / a0;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  };
}

/** One click of a peak gain, from its first sample to its last. */
function clickWave(timbre: Sound['timbre'], peak: number): Float32Array {
  const out = new Float32Array(Math.round(RATE * TONE.ends));
  const [next, pass] = [noise(), highPass(BURST.from)];
  const burst = Math.round(RATE * BURST.lasts);
  for (let i = 0; i < out.length; i++) {
    const t = i / RATE;
    // exponentialRampToValueAtTime: V0·(V1/V0)^(t/T), and V1 from T on.
    const level = peak * TONE.share * 0.001 ** Math.min(1, t / TONE.falls);
    const tones = TONES[timbre].reduce((sum, f) => sum + Math.sin(2 * Math.PI * f * t), 0);
    out[i] = level * tones + peak * pass(i < burst ? next() : 0);
  }
  return out;
}

/** Those that are played: never more than eight a second, as on the page. */
export function played(sounds: readonly Sound[]): readonly Sound[] {
  let last = Number.NEGATIVE_INFINITY;
  return sounds.filter(({ at }) => {
    if (at - last < LEAST_APART) return false;
    last = at;
    return true;
  });
}

/** All of a film's sound: one channel, to the sample. */
export function soundTrack(sounds: readonly Sound[], seconds: number): Float32Array {
  const out = new Float32Array(Math.round(seconds * RATE));
  for (const { at, energy, timbre } of played(sounds)) {
    const wave = clickWave(timbre, PEAK * loudness(energy));
    const from = Math.round(at * RATE);
    for (let i = 0; i < wave.length && from + i < out.length; i++) {
      out[from + i] = (out[from + i] as number) + (wave[i] as number);
    }
  }
  return out;
}
