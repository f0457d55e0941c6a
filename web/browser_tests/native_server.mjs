// The server of the product, when it is built: the tests then drive what a user runs.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Starts the program on a free port; undefined where it is not built. */
export async function serveNative(program, pages, examples) {
  if (!existsSync(program)) return undefined;
  const server = spawn(program, ['--pages', pages, '--examples', examples, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise((end) => server.once('exit', end));
  const address = await new Promise((found, fail) => {
    let said = '';
    server.stdout.on('data', (text) => {
      said += text;
      const match = /http:\/\/\S+/.exec(said);
      if (match) found(match[0]);
    });
    void ended.then((code) => fail(new Error(`${program} ended with ${code}: ${said}`)));
  });
  return {
    name: 'proofstone-server',
    address,
    stop: async () => {
      server.kill();
      await ended;
    },
  };
}
