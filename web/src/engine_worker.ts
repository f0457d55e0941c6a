/** Runs the engine off the page's thread: loads it once, then answers one request after another. */
import { missingForEngine } from './browser_support';
import type { FailureKind, FromWorker, ToWorker } from './engine_messages';

interface Engine {
  request(text: string): string;
}

let loading: Promise<Engine> | undefined;

async function load(url: string): Promise<Engine> {
  const module = (await import(/* @vite-ignore */ url)) as { default: () => Promise<Engine> };
  return module.default();
}

async function answer({ id, engine, request }: ToWorker): Promise<FromWorker> {
  const missing = missingForEngine();
  if (missing) return { id, failure: 'unsupported', detail: missing };
  let step: FailureKind = 'not loaded';
  try {
    loading ??= load(engine);
    const module = await loading;
    step = 'stopped';
    return { id, answer: module.request(request) };
  } catch (error) {
    if (step === 'not loaded') loading = undefined;
    return { id, failure: step, detail: String(error) };
  }
}

self.addEventListener('message', (event: MessageEvent<ToWorker>) => {
  void answer(event.data).then((message) => self.postMessage(message));
});
