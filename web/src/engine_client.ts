/** Asks the engine in its worker. A worker that fails is replaced; nothing waits for ever. */
import type { FailureKind, FromWorker, ToWorker } from './engine_messages';

/** The engine gave no answer; `kind` says why and `detail` is what the browser said. */
export class EngineFailure extends Error {
  constructor(
    readonly kind: FailureKind,
    readonly detail: string,
  ) {
    super(`${kind}: ${detail}`);
  }
}

/** The part of a Worker the client needs. */
export type WorkerLike = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

interface Waiting {
  message: ToWorker;
  attempts: number;
  settle: (answer: string) => void;
  fail: (failure: EngineFailure) => void;
}

const longestAnswerMs = 60_000;
/** A request during which the engine stopped is asked once more, of a fresh engine. */
const mostAttempts = 2;

export class EngineClient {
  private worker: WorkerLike | undefined;
  private readonly queue: Waiting[] = [];
  private timer: ReturnType<typeof setTimeout> | undefined;
  private lastId = 0;

  /**
   * `startWorker` makes a worker; `engineUrl` is where engine.js lies. A request that takes longer
   * than `patienceMs` ends as "too slow".
   */
  constructor(
    private readonly startWorker: () => WorkerLike,
    private readonly engineUrl: string,
    private readonly patienceMs: number = longestAnswerMs,
  ) {}

  /** The answer to a request, parsed. Rejects with EngineFailure. */
  async ask<Answer>(request: object): Promise<Answer> {
    const id = ++this.lastId;
    const message = { id, engine: this.engineUrl, request: JSON.stringify(request) };
    const answer = await new Promise<string>((settle, fail) => {
      this.queue.push({ message, attempts: 0, settle, fail });
      if (this.queue.length === 1) this.sendFirst();
    });
    return JSON.parse(answer) as Answer;
  }

  /** One request is with the worker at a time, so that a failure is known to be its own. */
  private sendFirst(): void {
    const first = this.queue[0];
    if (!first) return;
    first.attempts += 1;
    this.timer = setTimeout(() => this.endFirst('too slow', ''), this.patienceMs);
    try {
      this.worker ??= this.start();
      this.worker.postMessage(first.message);
    } catch (error) {
      this.endFirst('not loaded', String(error));
    }
  }

  private start(): WorkerLike {
    const worker = this.startWorker();
    worker.onmessage = (event: MessageEvent<FromWorker>) => {
      if (worker === this.worker) this.hear(event.data);
    };
    worker.onerror = (event: ErrorEvent) => {
      if (worker === this.worker) this.lose(event.message ?? '');
    };
    return worker;
  }

  private hear(message: FromWorker): void {
    const first = this.queue[0];
    if (!first || message.id !== first.message.id) return;
    if ('answer' in message) {
      clearTimeout(this.timer);
      this.queue.shift();
      first.settle(message.answer);
      this.sendFirst();
    } else if (message.failure === 'stopped') {
      this.lose(message.detail);
    } else {
      this.endFirst(message.failure, message.detail);
    }
  }

  /** The worker is of no more use: replace it, and ask the same once more. */
  private lose(detail: string): void {
    const first = this.queue[0];
    if (!first) {
      this.dropWorker();
    } else if (first.attempts >= mostAttempts) {
      this.endFirst('stopped', detail);
    } else {
      clearTimeout(this.timer);
      this.dropWorker();
      this.sendFirst();
    }
  }

  private endFirst(kind: FailureKind, detail: string): void {
    clearTimeout(this.timer);
    this.dropWorker();
    const first = this.queue.shift();
    first?.fail(new EngineFailure(kind, detail));
    this.sendFirst();
  }

  private dropWorker(): void {
    this.worker?.terminate();
    this.worker = undefined;
  }
}
