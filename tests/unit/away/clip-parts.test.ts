import { crc32, inflateSync } from 'node:zlib';
import { PNG } from 'pngjs';
import { expect, it } from 'vitest';
import { apng } from '../../../ui/away/clip/apng.ts';
import { played, RATE, soundTrack } from '../../../ui/away/clip/click-wave.ts';
import { transcriptOf, vttOf, vttTime } from '../../../ui/away/clip/cues.ts';
import { linesOf } from '../../../ui/away/clip/frame.ts';
import type { Sound } from '../../../ui/away/clip/picture.ts';
import { near } from '../../near.ts';

const click = (at: number, energy = 15.75): Sound => ({ at, timbre: 'plate', energy });

it('a click in a film begins at its sample, is as loud as its hit, and falls by 60 dB in 30 ms', () => {
  const track = soundTrack([click(0.5)], 1);
  expect(track).toHaveLength(RATE);
  expect(track.slice(0, 24000).every((x) => x === 0)).toBe(true);
  expect(track.slice(24000, 24005).some((x) => x !== 0)).toBe(true);
  // After the burst of 3 ms and its ringing two tones of half the gain 0.25 are left, each under 10^(-3·t/0.03):
  // at 15 ms their sum is at most 2·0.125·10^(-1.5) = 7.9e-3, and comes near it within a beat of 1 300 Hz.
  const at15 = track.slice(24000 + 720, 24000 + 760).map(Math.abs);
  const most = Math.max(...at15);
  expect(most).toBeLessThan(7.95e-3);
  expect(most).toBeGreaterThan(4e-3);
  // A quarter of the energy is half the amplitude: sound power goes with energy.
  const soft = soundTrack([click(0.5, 15.75 / 4)], 1);
  near(soft[24100] as number, (track[24100] as number) / 2, { rel: 1e-5 });
  // Over after 40 ms.
  expect(track.slice(24000 + 1920).every((x) => x === 0)).toBe(true);
});

it('no more than eight clicks a second are heard, and the same ones are written', () => {
  const fast = Array.from({ length: 20 }, (_, i) => click(i / 20));
  expect(played(fast)).toHaveLength(7);
  const vtt = vttOf([], fast, 2);
  expect(vtt.match(/\[click\]/g)).toHaveLength(7);
});

it('captions are WebVTT: times, one block each, nothing that its readers would take for marks', () => {
  // W3C, WebVTT, 4.2: hours, minutes, seconds with three digits.
  expect(vttTime(3723.4567)).toBe('01:02:03.457');
  const vtt = vttOf([{ from: 0, to: 2, text: 'Gap <2 mm & more\n\nhere' }], [click(1)], 2);
  expect(vtt).toBe(
    'WEBVTT\n\n00:00:00.000 --> 00:00:02.000\nGap &lt;2 mm &amp; more here\n\n00:00:01.000 --> 00:00:02.000\n[click]\n\n',
  );
  expect(
    transcriptOf(['A press', 'Quay van'], [{ from: 0, to: 2, text: 'Out' }], [click(1)], 2),
  ).toBe('A press\nQuay van\n\n00:00.0  Out\n00:01.0  [click]\n');
});

it('words in the picture break between words and lose none', () => {
  const text = 'Wheel and drum hide all this, so here the drum is cut away.';
  const lines = linesOf(text, 24);
  expect(lines.join(' ')).toBe(text);
  expect(Math.max(...lines.map((l) => l.length))).toBeLessThanOrEqual(24);
});

interface Chunk {
  readonly kind: string;
  readonly data: Buffer;
}

/** The chunks of a PNG, each held against its checksum by Node's own. */
function chunksOf(bytes: Buffer): Chunk[] {
  const out: Chunk[] = [];
  for (let at = 8; at < bytes.length; ) {
    const long = bytes.readUInt32BE(at);
    const kind = bytes.toString('latin1', at + 4, at + 8);
    expect(bytes.readUInt32BE(at + 8 + long), kind).toBe(
      crc32(bytes.subarray(at + 4, at + 8 + long)),
    );
    out.push({ kind, data: bytes.subarray(at + 8, at + 8 + long) });
    at += 12 + long;
  }
  return out;
}

const square = (width: number, height: number, grey: number): Uint8Array => {
  const png = new PNG({ width, height });
  png.data.fill(grey);
  return PNG.sync.write(png);
};

it('a loop is an animated PNG whose first picture every reader shows, its parts numbered and timed', () => {
  const [one, two] = [square(8, 6, 255), square(3, 2, 10)];
  const bytes = Buffer.from(
    apng(
      [
        { png: one, x: 0, y: 0, width: 8, height: 6, lasts: 5 },
        { png: two, x: 4, y: 3, width: 3, height: 2, lasts: 1 },
      ],
      15,
    ),
  );
  // A reader that knows nothing of loops: the first picture, whole.
  const plain = PNG.sync.read(bytes);
  expect([plain.width, plain.height, plain.data[0]]).toEqual([8, 6, 255]);
  const chunks = chunksOf(bytes);
  expect(chunks.map((c) => c.kind)).toEqual([
    'IHDR',
    'acTL',
    'fcTL',
    'IDAT',
    'fcTL',
    'fdAT',
    'IEND',
  ]);
  const of = (kind: string): Buffer[] => chunks.filter((c) => c.kind === kind).map((c) => c.data);
  // W3C, PNG, third edition, 11.3.4.2: pictures, then times to play, 0 for ever.
  expect(of('acTL')[0]?.readUInt32BE(0)).toBe(2);
  expect(of('acTL')[0]?.readUInt32BE(4)).toBe(0);
  const told = of('fcTL').map((d) => [
    ...[0, 4, 8, 12, 16].map((at) => d.readUInt32BE(at)),
    d.readUInt16BE(20) / d.readUInt16BE(22),
  ]);
  // Number, width, height, left, top, s.
  expect(told).toEqual([
    [0, 8, 6, 0, 0, 5 / 15],
    [1, 3, 2, 4, 3, 1 / 15],
  ]);
  const second = of('fdAT')[0] as Buffer;
  expect(second.readUInt32BE(0)).toBe(2);
  // Two rows of a filter's byte and three pixels of four bytes.
  expect(inflateSync(second.subarray(4))).toHaveLength(2 * (1 + 3 * 4));
});
