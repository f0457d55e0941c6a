import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { marked, Renderer } from 'marked';
import type { Plugin } from 'vite';

/** A page of the handbook as the screens show it. */
export interface HelpPage {
  id: string;
  title: string;
  /** The heading of the index under which it stands. */
  group: string;
  /** With `<!--picture NAME-->` where a picture stands. */
  html: string;
}

/** What is for whoever checks the engine, not for whoever uses it, and fills half the handbook. */
const leftOut = new Set(['README', 'validation', 'from-memory']);
const publishedCases = /\n## Published cases\n[\s\S]*?(?=\n## |$)/;

/** Links between pages lead within the application; tables may be wider than a phone. */
function helpRenderer(): Renderer {
  const renderer = new Renderer();
  const table = renderer.table.bind(renderer);
  renderer.table = (token) =>
    `<div class="help-table" tabindex="0" role="group">${table(token)}</div>`;
  renderer.link = ({ href, tokens }) => {
    const words = renderer.parser.parseInline(tokens);
    const page = /^([\w-]+)\.md$/.exec(href)?.[1];
    return page && !leftOut.has(page) ? `<a href="#/help/${page}">${words}</a>` : words;
  };
  renderer.image = ({ href, text }) => {
    const [, name, kind] = /^([\w-]+)\.(svg|jpg)$/.exec(href) ?? [];
    if (kind === 'svg') {
      return `<span class="help-picture" tabindex="0"><!--picture ${name}--></span>`;
    }
    return kind === 'jpg' ? `<img class="help-photo" src="help/${href}" alt="${text}" />` : '';
  };
  return renderer;
}

/** Under which heading of the index each page stands, in the order of the index. */
function groupsOf(index: string): Map<string, string> {
  const groups = new Map<string, string>();
  let group = '';
  for (const line of index.split('\n')) {
    group = /^## (.+)/.exec(line)?.[1] ?? group;
    const page = /^- \[.+?\]\(([\w-]+)\.md\)/.exec(line)?.[1];
    if (page) groups.set(page, group);
  }
  return groups;
}

/** One page out of its text. */
function pageOf(id: string, group: string, text: string, renderer: Renderer): HelpPage {
  const title = /^# (.+)/.exec(text)?.[1] ?? id;
  const body = text.replace(/^# .+\n/, '');
  return { id, title, group, html: marked.parse(body, { renderer, async: false }) };
}

/** The pages of the handbook that matter to whoever uses the application, in the order of its index. */
export function helpPages(folder: string): HelpPage[] {
  const groups = groupsOf(readFileSync(join(folder, 'README.md'), 'utf8'));
  const there = new Set(readdirSync(folder));
  const renderer = helpRenderer();
  return [...groups]
    .filter(([id]) => !leftOut.has(id) && there.has(`${id}.md`))
    .map(([id, group]) => {
      const text = readFileSync(join(folder, `${id}.md`), 'utf8').replace(publishedCases, '\n');
      return pageOf(id, group, text, renderer);
    });
}

/** Those of them that are there in another language: `spanish` is a folder beside them. */
export function translatedPages(
  folder: string,
  language: string,
  pages: readonly HelpPage[],
): HelpPage[] {
  const renderer = helpRenderer();
  return pages.flatMap(({ id, group }) => {
    const file = join(folder, language, `${id}.md`);
    return existsSync(file) ? [pageOf(id, group, readFileSync(file, 'utf8'), renderer)] : [];
  });
}

/** The pictures that pages name, as SVG under their names. */
export function helpPictures(folder: string, pages: readonly HelpPage[]): Record<string, string> {
  const names = pages.flatMap(({ html }) =>
    [...html.matchAll(/<!--picture ([\w-]+)-->/g)].map(([, name]) => name as string),
  );
  return Object.fromEntries(
    [...new Set(names)].map((name) => [name, readFileSync(join(folder, `${name}.svg`), 'utf8')]),
  );
}

/** The photographs that pages show, under the names by which they ask for them. */
export function helpPhotos(folder: string, pages: readonly HelpPage[]): Record<string, Buffer> {
  const names = pages.flatMap(({ html }) =>
    [...html.matchAll(/ src="(help\/[\w-]+\.jpg)"/g)].map(([, name]) => name as string),
  );
  return Object.fromEntries(
    names.map((name) => [name, readFileSync(join(folder, name.slice('help/'.length)))]),
  );
}

/** The files of the help under their names. */
function helpFiles(folder: string): Record<string, string | Buffer> {
  const pages = helpPages(folder);
  return {
    ...helpPhotos(folder, pages),
    'help/handbook.json': JSON.stringify(pages),
    'help/es.json': JSON.stringify(translatedPages(folder, 'spanish', pages)),
    'help/pictures.json': JSON.stringify(helpPictures(folder, pages)),
  };
}

/** Puts the handbook and its pictures beside the page, kept on the device like the rest. */
export function handbookHelp(folder: string): Plugin {
  return {
    name: 'proofstone-handbook-help',
    generateBundle() {
      const files = helpFiles(folder);
      for (const [fileName, source] of Object.entries(files)) {
        this.emitFile({ type: 'asset', fileName, source });
      }
    },
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const name = (request.url ?? '').slice(1);
        if (name.startsWith('help/')) response.end(helpFiles(folder)[name]);
        else next();
      });
    },
  };
}
