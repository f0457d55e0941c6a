/** Runs the engine off the page's thread: loads it once, then answers one request after another. */
import { inPortions } from './answer_portions';
import { missingForEngine } from './browser_support';
import type { FailureKind, FromWorker, ToWorker } from './engine_messages';

interface Engine {
  request(text: string): string;
}

/** The page reads a text of this length without being held up. */
const shortAnswer = 2_000_000;

let loading: Promise<Engine> | undefined;

async function load(url: string): Promise<Engine> {
  const module = (await import(/* @vite-ignore */ url)) as { default: () => Promise<Engine> };
  return module.default();
}

function say(message: FromWorker): void {
  self.postMessage(message);
}

function sayAnswer(id: number, answer: string): void {
  if (answer.length <= shortAnswer) {
    say({ id, answer });
    return;
  }
  const { frame, portions } = inPortions(JSON.parse(answer));
  say({ id, frame, portions: portions.length });
  for (const portion of portions) say({ id, portion });
}

async function answer({ id, engine, request }: ToWorker): Promise<void> {
  const missing = missingForEngine();
  if (missing) {
    say({ id, failure: 'unsupported', detail: missing });
    return;
  }
  let step: FailureKind = 'not loaded';
  try {
    loading ??= load(engine);
    const module = await loading;
    step = 'stopped';
    sayAnswer(id, module.request(JSON.stringify(request)));
  } catch (error) {
    if (step === 'not loaded') loading = undefined;
    say({ id, failure: step, detail: String(error) });
  }
}

self.addEventListener('message', (event: MessageEvent<ToWorker>) => void answer(event.data));
