/** The engine of this page. */
import { EngineClient, EngineFailure } from './engine_client';

const startWorker = () =>
  new Worker(new URL('./engine_worker.ts', import.meta.url), { type: 'module' });
const module = new URL('engine/engine.js', document.baseURI).href;

export const engine = new EngineClient(startWorker, module);

/** Longer documents are judged apart, so that nothing else waits for that. */
const longDocument = 500_000;
const longestJudgingMs = 600_000;
const apart = new EngineClient(startWorker, module, longestJudgingMs);

/** What is asked about a whole site with everything that was taken down there. */
const ofWholeSite = new Set(['assess', 'report', 'quantities', 'specification']);

/** What is asked, and about what. */
export interface Asking {
  ask: string;
  [about: string]: unknown;
}

export interface SiteRequest extends Asking {
  document: string;
}

/** Whether the answer takes its time: then it can be ended, and is worth ending. */
export function isLong({ ask, document }: SiteRequest): boolean {
  return document.length > longDocument && ofWholeSite.has(ask);
}

/** The engine for a request about a site. */
export function engineFor(request: SiteRequest): EngineClient {
  return isLong(request) ? apart : engine;
}

export function failureFrom(error: unknown): EngineFailure {
  return error instanceof EngineFailure ? error : new EngineFailure('stopped', String(error));
}
