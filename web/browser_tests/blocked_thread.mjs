// How long the thread of a page is held up while something is done: the time that the thread itself
// ran, so that what else a machine does at that time does not count.

const categories = ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'];

/** Of a trace: how long each task of a page's thread ran, in milliseconds. */
function tasksIn(trace) {
  const threads = new Set(
    trace
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  return trace
    .filter(
      ({ ph, name, pid, tid }) => ph === 'X' && name === 'RunTask' && threads.has(`${pid} ${tid}`),
    )
    .map(({ dur = 0, tdur = dur }) => tdur / 1000);
}

/**
 * Does `work`, which ends when the screen shows it. Resolves with the milliseconds it took by the
 * clock, how long each task of the page ran meanwhile, and the longest of them.
 */
export async function heldUp(world, page, work) {
  await world.browser.startTracing(page, { categories });
  const start = performance.now();
  let took;
  let trace;
  try {
    await work();
    took = performance.now() - start;
  } finally {
    trace = await world.browser.stopTracing();
  }
  const tasks = tasksIn(JSON.parse(trace.toString()).traceEvents);
  return { took, tasks, longest: Math.max(0, ...tasks) };
}
