/** What the page and the worker of the engine say to each other. */
import type { Portion } from './answer_portions';

/** Why the engine cannot answer. */
export type FailureKind =
  /** The browser lacks WebAssembly or a part of it that the engine is built on. */
  | 'unsupported'
  /** The files of the engine could not be loaded or started. */
  | 'not loaded'
  /** The engine stopped while it worked on a request. */
  | 'stopped'
  /** No answer within the time a request may take. */
  | 'too slow';

export interface ToWorker {
  id: number;
  /** Where the module of the engine lies. */
  engine: string;
  /** The request; the worker makes the text of it that the engine reads. */
  request: object;
}

export type FromWorker =
  /** The answer as JSON text. */
  | { id: number; answer: string }
  /** A long answer without the rows of its long lists, which follow in `portions` messages. */
  | { id: number; frame: unknown; portions: number }
  | { id: number; portion: Portion }
  | { id: number; failure: FailureKind; detail: string };
