// The engine of the screens, asked without a browser.
import { readFileSync } from 'node:fs';

const built = (name) => new URL(`../public/engine/${name}`, import.meta.url);

/** A function that answers one request. */
export async function engineInNode() {
  const { default: load } = await import(built('engine.js').href);
  const engine = await load({ wasmBinary: readFileSync(built('engine.wasm')) });
  return (request) => JSON.parse(engine.request(JSON.stringify(request)));
}
