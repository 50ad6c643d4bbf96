/** Asked as what a film is: H.264 High at level 4, VP9 and VP8. */
const ASKED = {
  mp4: ['avc1.640028', 'avc1.4d0028', 'avc1.42e028'],
  webm: ['vp09.00.40.08', 'vp8'],
} as const;

async function one(codec: string): Promise<boolean> {
  try {
    const told = { codec, width: 1920, height: 1080, bitrate: 6e6, framerate: 60 };
    return (await VideoEncoder.isConfigSupported(told)).supported === true;
  } catch {
    return false;
  }
}

/** Which films this browser can make, without loading what makes them. */
export async function canEncode(): Promise<Readonly<Record<'mp4' | 'webm', boolean>>> {
  if (typeof VideoEncoder === 'undefined' || typeof OffscreenCanvas === 'undefined') {
    return { mp4: false, webm: false };
  }
  const any = async (codecs: readonly string[]): Promise<boolean> =>
    (await Promise.all(codecs.map(one))).includes(true);
  const [mp4, webm] = await Promise.all([any(ASKED.mp4), any(ASKED.webm)]);
  return { mp4, webm };
}
