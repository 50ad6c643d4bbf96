import type { Made, Sound } from './picture.ts';

/** What pictures go into, one after the other. */
export interface Sink {
  add(canvas: OffscreenCanvas, index: number): Promise<void>;
  /**
   * @param sounds that are heard in it
   * @param captions as WebVTT
   */
  end(sounds: readonly Sound[], captions: string): Promise<Made>;
}
