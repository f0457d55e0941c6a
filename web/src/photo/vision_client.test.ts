import { describe, expect, it } from 'vitest';
import { EngineFailure, type WorkerLike } from '../engine_client';
import { Cancelled, VisionClient } from './vision_client';
import type { FromVision, ToVision } from './vision_messages';

class PretendWorker implements WorkerLike {
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;
  heard: ToVision[] = [];
  ended = false;

  postMessage(message: unknown): void {
    this.heard.push(message as ToVision);
  }
  terminate(): void {
    this.ended = true;
  }
  says(message: FromVision): void {
    this.onmessage?.call(this as unknown as Worker, { data: message } as MessageEvent);
  }
  stops(message: string): void {
    this.onerror?.call(this as unknown as Worker, { message } as ErrorEvent);
  }
}

function clientWithWorkers() {
  const workers: PretendWorker[] = [];
  const start = () => {
    workers.push(new PretendWorker());
    return workers.at(-1) as WorkerLike;
  };
  return { client: new VisionClient(start, 'vision.js', 'weights'), workers };
}

const photo = { photo: new Blob([]), name: 'a.jpg' };
const found = { outlines: [] };

describe('what asks the worker that finds stones', () => {
  it('gives a photo a worker of its own, which ends with it', async () => {
    const { client, workers } = clientWithWorkers();
    const shares: number[] = [];
    const asked = client.outline(
      photo,
      (share) => shares.push(share),
      new AbortController().signal,
    );
    const [worker] = workers;
    expect(worker?.heard[0]).toMatchObject({ ask: 'outline', module: 'vision.js', name: 'a.jpg' });
    const id = worker?.heard[0]?.id ?? 0;
    worker?.says({ id, done: 0.5 });
    worker?.says({ id, answer: found });
    expect(await asked).toEqual(found);
    expect(shares).toEqual([0.5]);
    expect(worker?.ended).toBe(true);
  });

  it('ends the worker of a photo that nobody waits for any more', async () => {
    const { client, workers } = clientWithWorkers();
    const cancel = new AbortController();
    const asked = client.outline(photo, () => undefined, cancel.signal);
    cancel.abort();
    await expect(asked).rejects.toBeInstanceOf(Cancelled);
    expect(workers[0]?.ended).toBe(true);
    await expect(client.outline(photo, () => undefined, cancel.signal)).rejects.toBeInstanceOf(
      Cancelled,
    );
    expect(workers).toHaveLength(1);
  });

  it('lets changes share a worker, and starts another after it failed', async () => {
    const { client, workers } = clientWithWorkers();
    const edit = { ask: 'join' as const, pixel: 1, outlines: [] };
    const both = [client.edit(edit), client.edit(edit)];
    expect(workers).toHaveLength(1);
    workers[0]?.says({ id: 2, answer: found });
    workers[0]?.stops('out of memory');
    expect(await both[1]).toEqual(found);
    await expect(both[0]).rejects.toEqual(new EngineFailure('stopped', 'out of memory'));
    const again = client.edit(edit);
    expect(workers).toHaveLength(2);
    workers[1]?.says({ id: 1, failure: 'not loaded', detail: '' });
    await expect(again).rejects.toMatchObject({ kind: 'not loaded' });
  });

  it('tells cautions of a scale, and none where there is no answer to that', async () => {
    const { client, workers } = clientWithWorkers();
    const first = client.cautions('heap', { width: 1 }, 2);
    expect(workers[0]?.heard[0]).toMatchObject({
      ask: 'question',
      question: { ask: 'scale', first: 2, lies: 'heap', pictures: [{ width: 1 }] },
    });
    workers[0]?.says({ id: 1, answer: { cautions: ['too oblique'] } });
    expect(await first).toEqual(['too oblique']);
    const second = client.cautions('heap', {}, 1);
    workers[0]?.says({ id: 2, answer: { problems: [] } });
    expect(await second).toEqual([]);
  });
});
