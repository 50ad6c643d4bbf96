/**
 * The click, made in the page when the lever hits: a short noise burst and two decaying tones, as loud as the
 * hit's energy makes it. Off until the user first acts (browsers ask for it), never more than eight a second.
 * What it says is always seen too: the flash and the mark in the chart.
 */
export const LEAST_APART = 0.125;
/** −12 dBFS. */
export const PEAK = 0.25;
/** Energy of a sound click, mJ: 15 N and 1.5 N/mm over a tooth of 1 mm. */
const SOUND_HIT = 15.75;
/** Louder than this nothing is played, as a share of a sound click. */
const LOUDEST = 1.6;

/** How an adjuster's step sounds: a plate that falls into its tooth, or a pawl over a star wheel. */
export type Timbre = 'plate' | 'pawl';
export const TONES: Readonly<Record<Timbre, readonly [number, number]>> = {
  plate: [2100, 3400],
  pawl: [4300, 6100],
};

/** The burst's length, s, and from which frequency on it is heard, Hz. */
export const BURST = { lasts: 0.003, from: 1800 } as const;
/** A tone's share of the burst's gain; it falls to a thousandth, −60 dB, over `falls`, and ends at `ends`, s. */
export const TONE = { share: 0.5, falls: 0.03, ends: 0.04 } as const;

/**
 * Amplitude of a hit as a share of a sound click's: sound power goes with the energy, so 20·log10 √(E/E0) dB
 * (the level of an amplitude). 0.3 of the spring is 5 dB softer.
 */
export const loudness = (energy: number): number =>
  Math.min(LOUDEST, Math.sqrt(Math.max(0, energy) / SOUND_HIT));

export class ClickSound {
  #context: AudioContext | null = null;
  /** A user has acted: there may be a context. */
  #may = false;
  #last = Number.NEGATIVE_INFINITY;
  on = true;

  /**
   * Call from a user's action. A context is made once the page has shown its answer: that takes 40 ms, and a slow
   * machine ten times as long.
   */
  wake(): void {
    if (!this.on || this.#may || typeof AudioContext === 'undefined') return;
    this.#may = true;
    requestAnimationFrame(() => setTimeout(this.#make, 0));
  }

  readonly #make = (): AudioContext => {
    this.#context ??= new AudioContext();
    return this.#context;
  };

  /** @param energy of the hit, mJ */
  play(timbre: Timbre, energy: number): void {
    if (!this.on || !this.#may) return;
    // By the page's clock: the context's own stands where there is no sound device, or until it runs.
    const now = performance.now() / 1000;
    if (now - this.#last < LEAST_APART) return;
    this.#last = now;
    const c = this.#make();
    const peak = PEAK * loudness(energy);
    this.#burst(c, c.currentTime, peak);
    for (const f of TONES[timbre]) this.#tone(c, c.currentTime, f, peak * TONE.share);
  }

  #burst(c: AudioContext, at: number, gain: number): void {
    const buffer = c.createBuffer(1, Math.round(c.sampleRate * BURST.lasts), c.sampleRate);
    const data = buffer.getChannelData(0);
    for (let i = 0; i < data.length; i++) data[i] = Math.random() * 2 - 1;
    const source = new AudioBufferSourceNode(c, { buffer });
    const pass = new BiquadFilterNode(c, { type: 'highpass', frequency: BURST.from });
    source.connect(pass).connect(new GainNode(c, { gain })).connect(c.destination);
    source.start(at);
  }

  #tone(c: AudioContext, at: number, frequency: number, gain: number): void {
    const tone = new OscillatorNode(c, { frequency });
    const level = new GainNode(c, { gain: 0 });
    level.gain.setValueAtTime(gain, at);
    level.gain.exponentialRampToValueAtTime(gain / 1000, at + TONE.falls);
    tone.connect(level).connect(c.destination);
    tone.start(at);
    tone.stop(at + TONE.ends);
  }
}
