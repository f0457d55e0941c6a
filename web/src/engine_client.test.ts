import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EngineClient, EngineFailure, type WorkerLike } from './engine_client';
import type { FromWorker, ToWorker } from './engine_messages';

/** A worker that does what the test says with each message. */
class ScriptedWorker implements WorkerLike {
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;
  terminated = false;
  readonly heard: ToWorker[] = [];
  constructor(private readonly act: (worker: ScriptedWorker, message: ToWorker) => void) {}
  postMessage(message: ToWorker): void {
    this.heard.push(message);
    queueMicrotask(() => this.act(this, message));
  }
  terminate(): void {
    this.terminated = true;
  }
  say(message: FromWorker): void {
    this.onmessage?.call(this as never, { data: message } as MessageEvent<FromWorker>);
  }
  break(message: string): void {
    this.onerror?.call(this as never, { message } as ErrorEvent);
  }
}

function client(...acts: ((worker: ScriptedWorker, message: ToWorker) => void)[]) {
  const workers: ScriptedWorker[] = [];
  const start = () => {
    const act = acts[Math.min(workers.length, acts.length - 1)];
    if (!act) throw new Error('the test needs one act');
    const worker = new ScriptedWorker(act);
    workers.push(worker);
    return worker;
  };
  return { engine: new EngineClient(start, 'engine/engine.js', 1000), workers };
}

const echo = (worker: ScriptedWorker, { id, request }: ToWorker) =>
  worker.say({ id, answer: JSON.stringify(request) });
const stop = (worker: ScriptedWorker, { id }: ToWorker) =>
  worker.say({ id, failure: 'stopped', detail: 'unreachable' });

describe('the client of the engine', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('answers with what the engine said', async () => {
    const { engine, workers } = client(echo);
    expect(await engine.ask({ ask: 'about' })).toEqual({ ask: 'about' });
    expect(workers[0]?.heard[0]?.engine).toBe('engine/engine.js');
  });

  it('asks one thing at a time, in order', async () => {
    const { engine, workers } = client((worker, message) => {
      expect(worker.heard.length).toBe(message.id);
      echo(worker, message);
    });
    const answers = await Promise.all([1, 2, 3].map((n) => engine.ask<{ n: number }>({ n })));
    expect(answers.map(({ n }) => n)).toEqual([1, 2, 3]);
    expect(workers.length).toBe(1);
  });

  it('replaces a worker that stops and asks the same again', async () => {
    const { engine, workers } = client(stop, echo);
    expect(await engine.ask({ ask: 'assess' })).toEqual({ ask: 'assess' });
    expect(workers.length).toBe(2);
    expect(workers[0]?.terminated).toBe(true);
  });

  it('does the same when the worker itself breaks', async () => {
    const { engine, workers } = client((worker) => worker.break('out of memory'), echo);
    expect(await engine.ask({ ask: 'assess' })).toEqual({ ask: 'assess' });
    expect(workers.length).toBe(2);
  });

  it('gives up after the second stop and goes on with what waits', async () => {
    const { engine, workers } = client(stop, stop, echo);
    const first = engine.ask({ n: 1 });
    const second = engine.ask({ n: 2 });
    await expect(first).rejects.toMatchObject({ kind: 'stopped', detail: 'unreachable' });
    expect(await second).toEqual({ n: 2 });
    expect(workers.length).toBe(3);
  });

  it('tells when the engine cannot be loaded or run here', async () => {
    const { engine } = client(
      () => undefined,
      (worker, { id }) => worker.say({ id, failure: 'unsupported', detail: 'WebAssembly SIMD' }),
    );
    const silent = engine.ask({ n: 1 });
    const refused = expect(silent).rejects.toMatchObject({ kind: 'too slow' });
    await vi.advanceTimersByTimeAsync(1001);
    await refused;
    await expect(engine.ask({ n: 2 })).rejects.toMatchObject({
      kind: 'unsupported',
      detail: 'WebAssembly SIMD',
    });
  });

  it('tells when no worker can be started', async () => {
    const engine = new EngineClient(
      () => {
        throw new Error('blocked');
      },
      '',
      1000,
    );
    await expect(engine.ask({})).rejects.toBeInstanceOf(EngineFailure);
    await expect(engine.ask({})).rejects.toMatchObject({ kind: 'not loaded' });
  });

  it('puts a long answer together and tells how much of it has come', async () => {
    const { engine } = client((worker, { id }) => {
      worker.say({ id, frame: { rows: [], sum: 3 }, portions: 2 });
      worker.say({ id, portion: { at: ['rows'], rows: [1] } });
      worker.say({ id, portion: { at: ['rows'], rows: [2] } });
    });
    const shares: number[] = [];
    const answer = await engine.ask({}, { hear: (share) => shares.push(share) });
    expect(answer).toEqual({ rows: [1, 2], sum: 3 });
    expect(shares).toEqual([0, 0.5]);
  });

  it('ends what nobody waits for any more, and goes on with what waits behind it', async () => {
    const { engine, workers } = client(() => undefined, echo);
    const [first, second] = [new AbortController(), new AbortController()];
    const asked = [
      engine.ask({ n: 1 }, { signal: first.signal }),
      engine.ask({ n: 2 }, { signal: second.signal }),
      engine.ask({ n: 3 }),
    ];
    second.abort(new Error('other wish'));
    await expect(asked[1]).rejects.toThrow('other wish');
    expect(workers[0]?.terminated).toBe(false);
    first.abort(new Error('newer question'));
    await expect(asked[0]).rejects.toThrow('newer question');
    expect(workers[0]?.terminated).toBe(true);
    expect(await asked[2]).toEqual({ n: 3 });
    await expect(engine.ask({ n: 4 }, { signal: first.signal })).rejects.toThrow('newer question');
  });

  it('does not listen to a worker it has replaced', async () => {
    const { engine, workers } = client(stop, echo);
    await engine.ask({ n: 1 });
    workers[0]?.say({ id: 1, answer: '{"n":99}' });
    workers[0]?.break('late');
    expect(await engine.ask({ n: 2 })).toEqual({ n: 2 });
    expect(workers.length).toBe(2);
  });
});
