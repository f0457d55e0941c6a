/** Finds stones on photos off the page's thread. The browser takes the photo out of its file. */
import { missingForEngine } from '../browser_support';
import type { FailureKind } from '../engine_messages';
import type { FromVision, ToVision } from './vision_messages';

interface Vision {
  takeWeights(bytes: Uint8Array): string;
  outline(
    rgba: Uint8ClampedArray,
    width: number,
    height: number,
    where: string,
    hear: (share: number) => void,
  ): string;
  marks(rgba: Uint8ClampedArray, width: number, height: number, where: string): string;
  edit(text: string): string;
  question(text: string): string;
  focalLength(exif: Uint8Array): number;
}

let loading: Promise<Vision> | undefined;

async function load(url: string): Promise<Vision> {
  const module = (await import(/* @vite-ignore */ url)) as { default: () => Promise<Vision> };
  return module.default();
}

async function weightsAt(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The photo's pixels, upright; undefined where the browser cannot take them out of the file. */
async function pixelsOf(photo: Blob): Promise<ImageData | undefined> {
  try {
    const image = await createImageBitmap(photo);
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d', { willReadFrequently: true });
    context?.drawImage(image, 0, 0);
    image.close();
    return context?.getImageData(0, 0, canvas.width, canvas.height);
  } catch {
    return undefined;
  }
}

/** Nobody needs to hear of less. */
const leastStep = 0.01;

function say(message: FromVision): void {
  self.postMessage(message);
}

async function outline(
  vision: Vision,
  { id, weights, photo, name }: ToVision & { ask: 'outline' },
): Promise<unknown> {
  const [bytes, pixels] = await Promise.all([weightsAt(weights), pixelsOf(photo)]);
  if (!pixels) return 'not readable';
  const wrong = vision.takeWeights(bytes);
  if (wrong !== '') throw new Error(wrong);
  let said = 0;
  const { data, width, height } = pixels;
  const answer = vision.outline(data, width, height, name, (share) => {
    if (share < said + leastStep) return;
    said = share;
    say({ id, done: share });
  });
  return { width, height, ...(JSON.parse(answer) as object) };
}

async function marks(vision: Vision, photo: Blob, name: string): Promise<unknown> {
  const pixels = await pixelsOf(photo);
  if (!pixels) return 'not readable';
  const { data, width, height } = pixels;
  return { width, height, ...(JSON.parse(vision.marks(data, width, height, name)) as object) };
}

async function answer(message: ToVision): Promise<FromVision> {
  const { id } = message;
  const missing = missingForEngine() ?? ('OffscreenCanvas' in self ? undefined : 'OffscreenCanvas');
  if (missing) return { id, failure: 'unsupported', detail: missing };
  let step: FailureKind = 'not loaded';
  try {
    loading ??= load(message.module);
    const vision = await loading;
    step = 'stopped';
    switch (message.ask) {
      case 'outline':
        return { id, answer: await outline(vision, message) };
      case 'marks':
        return { id, answer: await marks(vision, message.photo, message.name) };
      case 'question': {
        const said = vision.question(JSON.stringify(message.question));
        return { id, answer: JSON.parse(said) as unknown };
      }
      case 'edit':
        return { id, answer: JSON.parse(vision.edit(JSON.stringify(message.edit))) as unknown };
      case 'camera':
        return { id, answer: vision.focalLength(message.exif) };
    }
  } catch (error) {
    if (step === 'not loaded') loading = undefined;
    return { id, failure: step, detail: String(error) };
  }
}

self.addEventListener('message', (event: MessageEvent<ToVision>) => {
  void answer(event.data).then(say);
});
