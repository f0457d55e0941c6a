/**
 * Asks the module that finds stones on photos, in workers of its own. It is loaded when it is first
 * asked. A photo gets a worker for itself, which ends with it: what it took of memory is given back.
 */
import { EngineFailure, type WorkerLike } from '../engine_client';
import type {
  FoundMarks,
  FoundStones,
  FromVision,
  Outline,
  OutlineEdit,
  PhotoQuestion,
  Refused,
  ToVision,
} from './vision_messages';

/** The user did not want to wait any longer. */
export class Cancelled extends Error {}

type Question = ToVision extends infer One
  ? One extends ToVision
    ? Omit<One, 'id' | 'module'>
    : never
  : never;

interface Waiting {
  settle: (answer: unknown) => void;
  fail: (why: Error) => void;
  hear: (share: number) => void;
}

/** One worker and those who wait for it. */
class VisionWorker {
  private readonly worker: WorkerLike;
  private readonly waiting = new Map<number, Waiting>();
  private lastId = 0;

  constructor(
    start: () => WorkerLike,
    private readonly module: string,
    private readonly ended: () => void,
  ) {
    this.worker = start();
    this.worker.onmessage = ({ data }: MessageEvent<FromVision>) => this.hear(data);
    this.worker.onerror = (event: ErrorEvent) =>
      this.end(new EngineFailure('stopped', event.message ?? ''));
  }

  ask(question: Question, hear: (share: number) => void = () => undefined): Promise<unknown> {
    const id = ++this.lastId;
    return new Promise((settle, fail) => {
      this.waiting.set(id, { settle, fail, hear });
      this.worker.postMessage({ ...question, id, module: this.module });
    });
  }

  /** Ends the worker; whoever still waits is told why. */
  end(why: Error): void {
    this.worker.terminate();
    for (const { fail } of this.waiting.values()) fail(why);
    this.waiting.clear();
    this.ended();
  }

  private hear(message: FromVision): void {
    const waiting = this.waiting.get(message.id);
    if (!waiting) return;
    if ('done' in message) {
      waiting.hear(message.done);
    } else if ('answer' in message) {
      this.waiting.delete(message.id);
      waiting.settle(message.answer);
    } else {
      this.end(new EngineFailure(message.failure, message.detail));
    }
  }
}

export class VisionClient {
  private lasting: VisionWorker | undefined;

  /** `startWorker` makes a worker; `module` and `weights` are where vision.js and its weights lie. */
  constructor(
    private readonly startWorker: () => WorkerLike,
    private readonly module: string,
    private readonly weights: string,
  ) {}

  /**
   * The stones on a photo, what stands in the way of finding them, or "not readable" where the
   * browser cannot take the picture out of its file. `hear` is told the share that is done. Rejects
   * with EngineFailure, or with Cancelled once `cancel` says so.
   */
  async outline(
    { photo, name }: { photo: Blob; name: string },
    hear: (share: number) => void,
    cancel: AbortSignal,
  ): Promise<FoundStones | Refused | 'not readable'> {
    const question: Question = { ask: 'outline', weights: this.weights, photo, name };
    const answer = await this.askAlone(question, hear, cancel);
    return answer as FoundStones | Refused | 'not readable';
  }

  /** What may tell the scale of a photo; else as `outline`. */
  async marks(
    { photo, name }: { photo: Blob; name: string },
    cancel: AbortSignal,
  ): Promise<(FoundMarks & { width: number; height: number }) | Refused | 'not readable'> {
    const answer = await this.askAlone({ ask: 'marks', photo, name }, () => undefined, cancel);
    return answer as (FoundMarks & { width: number; height: number }) | Refused | 'not readable';
  }

  /** The outlines that come of a change. Rejects with EngineFailure. */
  edit(edit: OutlineEdit): Promise<{ outlines: Outline[] } | Refused> {
    return this.others().ask({ ask: 'edit', edit }) as Promise<{ outlines: Outline[] } | Refused>;
  }

  /** What makes the scale of pictures less sure than it could be. Rejects with EngineFailure. */
  async cautions(lies: string, picture: object, number: number): Promise<string[]> {
    const question = { ask: 'scale' as const, first: number, lies, pictures: [picture] };
    const answer = await this.others().ask({ ask: 'question', question });
    return (answer as { cautions?: string[] }).cautions ?? [];
  }

  /** Where outlines are looked at to check them; `picture` counts from 1. Rejects with EngineFailure. */
  checkNodes(
    lies: string,
    pictures: object[],
  ): Promise<{ nodes: { picture: number; at: [number, number] }[] } | Refused> {
    const question: PhotoQuestion = { ask: 'check', lies, pictures };
    return this.others().ask({ ask: 'question', question }) as ReturnType<
      VisionClient['checkNodes']
    >;
  }

  /** The focal length in millimetres that Exif notes state; 0 where they do not. */
  focalLength(exif: Uint8Array): Promise<number> {
    return this.others().ask({ ask: 'camera', exif }) as Promise<number>;
  }

  /** In a worker of its own, which ends with the answer. */
  private async askAlone(
    question: Question,
    hear: (share: number) => void,
    cancel: AbortSignal,
  ): Promise<unknown> {
    if (cancel.aborted) throw new Cancelled();
    const worker = new VisionWorker(this.startWorker, this.module, () => undefined);
    const stop = () => worker.end(new Cancelled());
    cancel.addEventListener('abort', stop);
    try {
      return await worker.ask(question, hear);
    } finally {
      cancel.removeEventListener('abort', stop);
      worker.end(new Cancelled());
    }
  }

  private others(): VisionWorker {
    this.lasting ??= new VisionWorker(this.startWorker, this.module, () => {
      this.lasting = undefined;
    });
    return this.lasting;
  }
}
