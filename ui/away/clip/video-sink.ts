import {
  AudioSample,
  AudioSampleSource,
  BufferTarget,
  CanvasSource,
  getFirstEncodableAudioCodec,
  getFirstEncodableVideoCodec,
  Mp4OutputFormat,
  Output,
  Quality,
  TextSubtitleSource,
  WebMOutputFormat,
} from 'mediabunny';
import { RATE, soundTrack } from './click-wave.ts';
import type { Made, Order, Sound } from './picture.ts';
import type { Sink } from './sink.ts';

/** Pictures, clicks and captions as a film, by the browser's own encoders. */

const CODECS = {
  mp4: { video: ['avc'], audio: ['aac', 'opus'] },
  webm: { video: ['vp9', 'vp8'], audio: ['opus'] },
} as const;

/** A packet of Opus, s, and the samples that its encoder begins with. */
const PACKET = 0.02;
const SKIPPED = 312;

const NAMES: Readonly<Record<string, string>> = {
  avc: 'H.264',
  vp9: 'VP9',
  vp8: 'VP8',
  aac: 'AAC',
  opus: 'Opus',
};

class VideoSink implements Sink {
  readonly #output: Output<Mp4OutputFormat | WebMOutputFormat, BufferTarget>;
  readonly #video: CanvasSource;
  readonly #audio: AudioSampleSource | null;
  readonly #captions: TextSubtitleSource;
  readonly #rate: number;
  readonly #codecs: readonly string[];
  #taken = 0;

  constructor(
    output: Output<Mp4OutputFormat | WebMOutputFormat, BufferTarget>,
    video: CanvasSource,
    audio: AudioSampleSource | null,
    captions: TextSubtitleSource,
    rate: number,
    codecs: readonly string[],
  ) {
    this.#output = output;
    this.#video = video;
    this.#audio = audio;
    this.#captions = captions;
    this.#rate = rate;
    this.#codecs = codecs;
  }

  async add(_canvas: OffscreenCanvas, index: number): Promise<void> {
    // Each picture's time is reckoned from its number, never by a clock.
    await this.#video.add(index / this.#rate, 1 / this.#rate);
    this.#taken = index + 1;
  }

  async end(sounds: readonly Sound[], captions: string): Promise<Made> {
    const seconds = this.#taken / this.#rate;
    // Whole packets of 20 ms less what the decoder drops at first (RFC 7845, 4.2): the sound is no longer than the pictures.
    const track = soundTrack(sounds, Math.floor(seconds / PACKET) * PACKET - SKIPPED / RATE);
    // A second at a time.
    for (let from = 0; this.#audio && from < track.length; from += RATE) {
      const data = track.slice(from, from + RATE);
      const timestamp = from / RATE;
      const told = { data, format: 'f32', numberOfChannels: 1, sampleRate: RATE } as const;
      const sample = new AudioSample({ ...told, timestamp });
      await this.#audio.add(sample);
      sample.close();
    }
    await this.#captions.add(captions);
    await this.#output.finalize();
    const bytes = this.#output.target.buffer;
    if (!bytes) throw new Error('The film came to nothing.');
    const { fileExtension: extension, mimeType } = this.#output.format;
    return { bytes, type: mimeType, extension, codecs: this.#codecs };
  }
}

/** Throws, in a sentence, where the browser cannot encode it. */
export async function videoSink(order: Order, canvas: OffscreenCanvas): Promise<Sink> {
  const { height, rate, width } = order;
  const kind = order.file === 'mp4' ? 'mp4' : 'webm';
  const quality = new Quality('high');
  const codec = await getFirstEncodableVideoCodec([...CODECS[kind].video], {
    width,
    height,
    quality,
  });
  if (!codec) {
    throw new Error(
      `This browser cannot make ${kind === 'mp4' ? 'MP4 films: try WebM' : 'WebM films: try MP4'}.`,
    );
  }
  const heard = await getFirstEncodableAudioCodec([...CODECS[kind].audio], {
    numberOfChannels: 1,
    sampleRate: RATE,
    quality,
  });
  const format = kind === 'mp4' ? new Mp4OutputFormat() : new WebMOutputFormat();
  const output = new Output({ format, target: new BufferTarget() });
  const video = new CanvasSource(canvas, { codec, quality, keyFrameInterval: 2 });
  const audio = heard ? new AudioSampleSource({ codec: heard, quality }) : null;
  const captions = new TextSubtitleSource('webvtt');
  output.addVideoTrack(video, { frameRate: rate });
  if (audio) output.addAudioTrack(audio);
  output.addSubtitleTrack(captions, { languageCode: 'eng' });
  await output.start();
  const names = [codec, ...(heard ? [heard] : [])].map((c) => NAMES[c] ?? c);
  return new VideoSink(output, video, audio, captions, rate, names);
}
