// How long the thread of a page is held up while something is done: the time that the thread itself
// ran, so that what else a machine does at that time does not count.

/** Of a trace: the longest task of each page's thread, in milliseconds. */
function longestTask(trace) {
  const threads = new Set(
    trace
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = trace.filter(
    ({ ph, name, pid, tid }) =>
      ph === 'X' && name.endsWith('RunTask') && threads.has(`${pid} ${tid}`),
  );
  return tasks.reduce((longest, { tdur = 0, dur = 0 }) => Math.max(longest, tdur || dur), 0) / 1000;
}

/**
 * Does `work`, which ends when the screen shows it. Resolves with the milliseconds it took by the
 * clock and the longest task of the page meanwhile.
 */
export async function heldUp(world, page, work) {
  await world.browser.startTracing(page, {
    categories: ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'],
  });
  const start = performance.now();
  let result;
  let took;
  try {
    result = await work();
    took = performance.now() - start;
  } finally {
    const trace = await world.browser.stopTracing();
    var longest = longestTask(JSON.parse(trace.toString()).traceEvents);
  }
  return { took, longest, result };
}
