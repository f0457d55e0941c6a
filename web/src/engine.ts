/** The one engine of this page. */
import { EngineClient, EngineFailure } from './engine_client';

export const engine = new EngineClient(
  () => new Worker(new URL('./engine_worker.ts', import.meta.url), { type: 'module' }),
  new URL('engine/engine.js', document.baseURI).href,
);

export function failureFrom(error: unknown): EngineFailure {
  return error instanceof EngineFailure ? error : new EngineFailure('stopped', String(error));
}
