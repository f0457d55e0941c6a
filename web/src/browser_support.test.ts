import { afterEach, expect, it, vi } from 'vitest';
import { missingForEngine } from './browser_support';

afterEach(() => vi.unstubAllGlobals());

it('finds everything the engine needs in a current runtime', () => {
  expect(missingForEngine()).toBeUndefined();
});

it('names what is missing', () => {
  expect(missingForEngine({ validate: () => false })).toBe('WebAssembly SIMD');
  const withoutExceptions = (bytes: BufferSource) =>
    WebAssembly.validate(bytes) && (bytes as Uint8Array).byteLength !== 28;
  expect(missingForEngine({ validate: withoutExceptions })).toBe('WebAssembly exceptions');
  vi.stubGlobal('WebAssembly', undefined);
  expect(missingForEngine()).toBe('WebAssembly');
});
