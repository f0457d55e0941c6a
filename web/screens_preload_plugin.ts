import type { Plugin } from 'vite';

/**
 * The screens begin once the words of the language are there. Both are fetched at once: the page
 * names the files of the screens before its script asks for them.
 */
export function screensPreload(start: string): Plugin {
  return {
    name: 'proofstone-screens-preload',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler(_html, { bundle = {} }) {
        const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
        const screens = chunks.find((chunk) => chunk.facadeModuleId?.endsWith(start));
        if (!screens) throw new Error(`No file of the build begins with ${start}.`);
        return [screens.fileName, ...screens.imports].map((file) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `./${file}` },
          injectTo: 'head' as const,
        }));
      },
    },
  };
}
