/** Asks the engine in its worker. A worker that fails is replaced; nothing waits for ever. */
import { putPortion } from './answer_portions';
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
  settle: (answer: unknown) => void;
  fail: (why: unknown) => void;
  hear: (share: number) => void;
  /** A long answer as far as it has come. */
  coming?: { frame: unknown; portions: number; taken: number };
}

export interface AskOptions {
  /** Nobody wants the answer any more; what the engine has begun is ended. */
  signal?: AbortSignal;
  /** Hears how much of a long answer has come, 0 to 1. */
  hear?: (share: number) => void;
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

  /** The answer to a request, parsed. Rejects with EngineFailure, or the reason of `signal`. */
  ask<Answer>(
    request: object,
    { signal, hear = () => undefined }: AskOptions = {},
  ): Promise<Answer> {
    const id = ++this.lastId;
    const message = { id, engine: this.engineUrl, request };
    return new Promise<Answer>((settle, fail) => {
      if (signal?.aborted) {
        fail(signal.reason);
        return;
      }
      const waiting: Waiting = {
        message,
        attempts: 0,
        settle: (answer) => settle(answer as Answer),
        fail,
        hear,
      };
      signal?.addEventListener('abort', () => this.abandon(waiting, signal.reason), { once: true });
      this.queue.push(waiting);
      if (this.queue.length === 1) this.sendFirst();
    });
  }

  private abandon(waiting: Waiting, why: unknown): void {
    const place = this.queue.indexOf(waiting);
    if (place === 0) {
      this.endFirst(why);
    } else if (place > 0) {
      this.queue.splice(place, 1);
      waiting.fail(why);
    }
  }

  /** One request is with the worker at a time, so that a failure is known to be its own. */
  private sendFirst(): void {
    const first = this.queue[0];
    if (!first) return;
    first.attempts += 1;
    this.timer = setTimeout(
      () => this.endFirst(new EngineFailure('too slow', '')),
      this.patienceMs,
    );
    try {
      this.worker ??= this.start();
      this.worker.postMessage(first.message);
    } catch (error) {
      this.endFirst(new EngineFailure('not loaded', String(error)));
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
      this.settleFirst(JSON.parse(message.answer));
    } else if ('frame' in message) {
      first.coming = { frame: message.frame, portions: message.portions, taken: 0 };
      this.takeIn(first, first.coming);
    } else if ('portion' in message) {
      if (!first.coming) return;
      putPortion(first.coming.frame, message.portion);
      first.coming.taken += 1;
      this.takeIn(first, first.coming);
    } else if (message.failure === 'stopped') {
      this.lose(message.detail);
    } else {
      this.endFirst(new EngineFailure(message.failure, message.detail));
    }
  }

  private takeIn(first: Waiting, { frame, portions, taken }: NonNullable<Waiting['coming']>): void {
    if (taken === portions) this.settleFirst(frame);
    else first.hear(taken / portions);
  }

  private settleFirst(answer: unknown): void {
    clearTimeout(this.timer);
    this.queue.shift()?.settle(answer);
    this.sendFirst();
  }

  /** The worker is of no more use: replace it, and ask the same once more. */
  private lose(detail: string): void {
    const first = this.queue[0];
    if (!first) {
      this.dropWorker();
    } else if (first.attempts >= mostAttempts) {
      this.endFirst(new EngineFailure('stopped', detail));
    } else {
      clearTimeout(this.timer);
      this.dropWorker();
      this.sendFirst();
    }
  }

  /** Whoever waits first gets no answer; the worker is at it still, and is of no more use. */
  private endFirst(why: unknown): void {
    clearTimeout(this.timer);
    this.dropWorker();
    this.queue.shift()?.fail(why);
    this.sendFirst();
  }

  private dropWorker(): void {
    this.worker?.terminate();
    this.worker = undefined;
  }
}
