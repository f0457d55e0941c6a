/** The one module of this page that finds stones on photos. */
import { VisionClient } from './vision_client';

const beside = (name: string) => new URL(`engine/${name}`, document.baseURI).href;

export const vision = new VisionClient(
  () => new Worker(new URL('./vision_worker.ts', import.meta.url), { type: 'module' }),
  beside('vision.js'),
  beside('outline-network.weights'),
);
