import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

interface Example {
  folder: string;
  files: string[];
}

/** Every folder under `root` with a site.json, and the files in it that a site can name. */
function listExamples(root: string): Example[] {
  return readdirSync(root)
    .filter((folder) => statSync(join(root, folder)).isDirectory())
    .map((folder) => ({
      folder,
      files: readdirSync(join(root, folder))
        .filter((file) => /\.(json|csv)$/.test(file))
        .sort(),
    }))
    .filter(({ files }) => files.includes('site.json'))
    .sort((a, b) => (a.folder < b.folder ? -1 : 1));
}

/**
 * Puts the example sites beside the page as examples/<folder>/<file>, with examples/index.json that
 * lists them, so that they are stored on the device and work without a connection.
 */
export function exampleSites(root: string): Plugin {
  return {
    name: 'proofstone-example-sites',
    generateBundle() {
      const examples = listExamples(root);
      if (examples.length === 0) this.error(`There is no example site under ${root}.`);
      this.emitFile({
        type: 'asset',
        fileName: 'examples/index.json',
        source: JSON.stringify(examples),
      });
      for (const { folder, files } of examples) {
        for (const file of files) {
          this.emitFile({
            type: 'asset',
            fileName: `examples/${folder}/${file}`,
            source: readFileSync(join(root, folder, file)),
          });
        }
      }
    },
    configureServer(server) {
      server.middlewares.use('/examples', (request, response, next) => {
        const path = decodeURIComponent((request.url ?? '').split('?')[0] ?? '');
        const examples = listExamples(root);
        if (path === '/index.json') {
          response.end(JSON.stringify(examples));
          return;
        }
        const known = examples.some(({ folder, files }) =>
          files.some((file) => path === `/${folder}/${file}`),
        );
        if (known) response.end(readFileSync(join(root, path)));
        else next();
      });
    },
  };
}
