/** What the page and the worker of the engine say to each other. */

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
  /** The request, as JSON text. */
  request: string;
}

export type FromWorker =
  { id: number; answer: string } | { id: number; failure: FailureKind; detail: string };
