/** The worker's script: one design in, its sizes out. */
import type { SizesAsked } from './adapters/sizesWorker.ts';
import { sizesOf } from './model/sizes.ts';

self.addEventListener('message', ({ data }: MessageEvent<SizesAsked>) => {
  self.postMessage(sizesOf(data.design, data.rules));
});
