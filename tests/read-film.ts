import { Decoder } from 'ebml';
import { createFile, MP4BoxBuffer } from 'mp4box';
import { OpusDecoder } from 'opus-decoder';

/** Films read back by demuxers and a decoder that have nothing to do with what made them. */

export interface Read {
  /** Pictures: when each is shown, s, in their order, and each one's bytes. */
  readonly pictures: readonly { readonly at: number; readonly bytes: Uint8Array }[];
  readonly size: readonly [width: number, height: number];
  /** Of the file as it tells, s. */
  readonly lasts: number;
  readonly codecs: readonly string[];
  /** Packets of the sound, and the samples to be dropped at first. */
  readonly packets: readonly Uint8Array[];
  readonly skip: number;
  /** What is said: from when, s, and what. */
  readonly captions: readonly { readonly at: number; readonly text: string }[];
}

/** Everything in an MP4, by mp4box. */
export async function readMp4(bytes: Uint8Array): Promise<Read> {
  const file = createFile();
  const copy = bytes.slice().buffer as ArrayBuffer;
  const info = await new Promise<Parameters<NonNullable<typeof file.onReady>>[0]>(
    (done, failed) => {
      file.onReady = done;
      file.onError = (_module, message) => failed(new Error(message));
      file.appendBuffer(MP4BoxBuffer.fromArrayBuffer(copy, 0));
      file.flush();
    },
  );
  const samples = (id: number) => {
    const all = file.getTrackSamplesInfo(id);
    return all.map((s) => {
      const data = bytes.subarray(s.offset, s.offset + s.size);
      return { at: s.cts / s.timescale, bytes: data };
    });
  };
  const [video] = info.videoTracks;
  const [audio] = info.audioTracks;
  const text = info.tracks.find((t) => t.codec === 'wvtt');
  if (!video) throw new Error('no pictures');
  return {
    pictures: samples(video.id),
    size: [video.video?.width ?? 0, video.video?.height ?? 0],
    lasts: video.samples_duration / video.timescale,
    codecs: info.tracks.map((t) => t.codec),
    packets: audio ? samples(audio.id).map((s) => s.bytes) : [],
    skip: audio ? preSkip(file, audio.id) : 0,
    captions: text ? samples(text.id).flatMap(captionOf) : [],
  };
}

/** Samples that a decoder drops at first: PreSkip of dOps (Opus in ISO BMFF, 4.3.2). */
function preSkip(file: ReturnType<typeof createFile>, id: number): number {
  const [entry] = file.getTrackById(id).mdia.minf.stbl.stsd.entries;
  const told = (entry as unknown as { dOps?: { PreSkip: number } }).dOps?.PreSkip;
  if (told === undefined) throw new Error('no dOps');
  return told;
}

/** A sample of captions holds boxes: vttc with payl, or vtte where nothing is said (ISO/IEC 14496-30, 6.6). */
function captionOf({ at, bytes }: { at: number; bytes: Uint8Array }): Read['captions'] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const out: { at: number; text: string }[] = [];
  const walk = (from: number, to: number): void => {
    for (let i = from; i + 8 <= to; i += Math.max(8, view.getUint32(i))) {
      const kind = new TextDecoder().decode(bytes.subarray(i + 4, i + 8));
      const end = i + view.getUint32(i);
      if (kind === 'vttc') walk(i + 8, end);
      if (kind === 'payl')
        out.push({ at, text: new TextDecoder().decode(bytes.subarray(i + 8, end)) });
    }
  };
  walk(0, bytes.length);
  return out;
}

/** Everything in a WebM, by the decoder of EBML of node-ebml. */
export function readWebm(bytes: Uint8Array): Read {
  const tracks: { number: number; type: number; codec: string; head: Uint8Array }[] = [];
  const pictures: { at: number; bytes: Uint8Array }[] = [];
  const packets: Uint8Array[] = [];
  const captions: { at: number; text: string }[] = [];
  let [scale, lasts, cluster, width, height] = [1e6, 0, 0, 0, 0];
  const decoder = new Decoder();
  const none = new Uint8Array();
  const last = () => tracks.at(-1) ?? { number: 0, type: 0, codec: '', head: none };
  decoder.on('data', ([state, { name, value, ...block }]) => {
    if (name === 'TrackEntry' && state === 'start') {
      tracks.push({ number: 0, type: 0, codec: '', head: none });
    }
    const n = Number(value);
    if (name === 'TimecodeScale') scale = n;
    if (name === 'Duration') lasts = n;
    if (name === 'Timecode') cluster = n;
    if (name === 'PixelWidth') width = n;
    if (name === 'PixelHeight') height = n;
    if (name === 'TrackNumber') last().number = n;
    if (name === 'TrackType') last().type = n;
    if (name === 'CodecID') last().codec = String(value);
    if (name === 'CodecPrivate' && block.data) last().head = block.data;
    if ((name !== 'SimpleBlock' && name !== 'Block') || !block.payload) return;
    const type = tracks.find((t) => t.number === block.track)?.type;
    const at = ((cluster + (Number.isFinite(n) ? n : 0)) * scale) / 1e9;
    // RFC 9559: 1 pictures, 2 sound, 17 captions.
    if (type === 1) pictures.push({ at, bytes: block.payload });
    if (type === 2) packets.push(block.payload);
    if (type === 17) captions.push({ at, text: new TextDecoder().decode(block.payload) });
  });
  decoder.write(Buffer.from(bytes));
  const head = tracks.find((t) => t.type === 2)?.head ?? none;
  return {
    pictures,
    size: [width, height],
    lasts: (lasts * scale) / 1e9,
    codecs: tracks.map((t) => t.codec),
    packets,
    // OpusHead: two bytes of pre-skip after its name, version and channels (RFC 7845, 5.1).
    skip: (head[10] ?? 0) + 256 * (head[11] ?? 0),
    captions,
  };
}

/** When something is heard: beginnings after silence, s, by an Opus decoder of its own. */
export async function onsets({ packets, skip }: Read): Promise<readonly number[]> {
  const decoder = new OpusDecoder({
    channels: 1,
    streamCount: 1,
    coupledStreamCount: 0,
    channelMappingTable: [0],
    preSkip: 0,
  });
  await decoder.ready;
  const { channelData } = decoder.decodeFrames([...packets]);
  decoder.free();
  const [wave] = channelData;
  if (!wave) return [];
  const out: number[] = [];
  // Louder than an encoder's own noise; a click is 0.25 at its peak.
  const loud = 0.02;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < wave.length; i++) {
    if (Math.abs(wave[i] as number) < loud) continue;
    if (i - last > 0.1 * 48000) out.push((i - skip) / 48000);
    last = i;
  }
  return out;
}
