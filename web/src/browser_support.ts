/**
 * Whether this browser can run the engine: WebAssembly with 128-bit vectors and exceptions. Each
 * list of bytes is the smallest module that uses the feature; a browser without it calls it invalid.
 */

/** One function that returns i8x16.popcnt(i8x16.splat(0)). */
const moduleWithVectors = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 10, 1, 8, 0, 65, 0, 253, 15,
  253, 98, 11,
];

/** One function with a try block that catches everything. */
const moduleWithExceptions = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 10, 8, 1, 6, 0, 6, 64, 25, 11, 11,
];

/** The part that is missing, or nothing where the engine can run. */
export function missingForEngine(
  wasm: Pick<typeof WebAssembly, 'validate'> | undefined = globalThis.WebAssembly,
): string | undefined {
  if (!wasm) return 'WebAssembly';
  if (!wasm.validate(new Uint8Array(moduleWithVectors))) return 'WebAssembly SIMD';
  if (!wasm.validate(new Uint8Array(moduleWithExceptions))) return 'WebAssembly exceptions';
  return undefined;
}
