/**
 * The click, made in the page: a short noise burst and two decaying tones, then the tooth seating.
 * Off until the user first acts (browsers ask for it), never more than eight a second. What it says
 * is always seen too: the flash and the mark in the chart.
 */
const LEAST_APART = 0.125;
/** −12 dBFS. */
const PEAK = 0.25;

export class ClickSound {
  #context: AudioContext | null = null;
  #last = Number.NEGATIVE_INFINITY;
  on = true;

  /** Call from a user's action. */
  wake(): void {
    if (!this.on || this.#context || typeof AudioContext === 'undefined') return;
    this.#context = new AudioContext();
  }

  play(): void {
    const c = this.#context;
    if (!this.on || !c || c.currentTime - this.#last < LEAST_APART) return;
    this.#last = c.currentTime;
    this.#burst(c, c.currentTime, PEAK);
    for (const f of [2100, 3400]) this.#tone(c, c.currentTime, f, PEAK * 0.5);
    this.#burst(c, c.currentTime + 0.035, PEAK * 0.355);
  }

  #burst(c: AudioContext, at: number, gain: number): void {
    const buffer = c.createBuffer(1, Math.round(c.sampleRate * 0.003), c.sampleRate);
    const data = buffer.getChannelData(0);
    for (let i = 0; i < data.length; i++) data[i] = Math.random() * 2 - 1;
    const source = new AudioBufferSourceNode(c, { buffer });
    const pass = new BiquadFilterNode(c, { type: 'highpass', frequency: 1800 });
    source.connect(pass).connect(new GainNode(c, { gain })).connect(c.destination);
    source.start(at);
  }

  #tone(c: AudioContext, at: number, frequency: number, gain: number): void {
    const tone = new OscillatorNode(c, { frequency });
    const level = new GainNode(c, { gain: 0 });
    level.gain.setValueAtTime(gain, at);
    level.gain.exponentialRampToValueAtTime(gain / 1000, at + 0.03);
    tone.connect(level).connect(c.destination);
    tone.start(at);
    tone.stop(at + 0.04);
  }
}
