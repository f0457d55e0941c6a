import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  namedFiles,
  readDroppedFiles,
  readExample,
  readPickedFiles,
  type PickedFile,
  type SiteReading,
} from './site_files';

function picked(path: string, content: string | Uint8Array): PickedFile {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const file = {
    name: path.split('/').at(-1),
    size: bytes.byteLength,
    arrayBuffer: async () => bytes.slice().buffer,
  };
  return { path, file: file as unknown as File };
}

const document = JSON.stringify({
  revisions: [
    {
      changes: [
        { set: '/sections/a', to: { survey: { file: 'a.csv' } } },
        { set: '/looks/b', to: { stones: { file: 'b.csv' } } },
      ],
    },
  ],
});

function site(reading: SiteReading) {
  if (!('site' in reading)) throw new Error(`refused: ${JSON.stringify(reading.problems)}`);
  return reading.site;
}

function codes(reading: SiteReading): string[] {
  return 'site' in reading ? [] : reading.problems.map(({ code }) => code);
}

describe('the files a document names', () => {
  it('are found wherever they stand, each once', () => {
    expect(namedFiles(document)).toEqual(['a.csv', 'b.csv']);
    expect(namedFiles('[{"file":"a.csv"},{"file":"a.csv"},{"file":7},null]')).toEqual(['a.csv']);
  });
  it('are none where the text is no JSON', () => {
    expect(namedFiles('{"file": "a.csv"')).toEqual([]);
  });
});

describe('a site from picked files', () => {
  it('is read as it is, with the files it names and no others', async () => {
    const reading = site(
      await readPickedFiles([
        picked('a.csv', '1,2\n'),
        picked('notes.txt', 'x'),
        picked('b.csv', 'é'),
        picked('site.json', document),
      ]),
    );
    expect(reading.document).toBe(document);
    expect(reading.files).toEqual([
      { name: 'a.csv', text: '1,2\n' },
      { name: 'b.csv', text: 'é' },
    ]);
    expect(reading.origin).toBe('device');
  });

  it('is found in a dropped folder, where it lies nearest the top', async () => {
    const reading = site(
      await readPickedFiles([
        picked('creek/old/site.json', '{}'),
        picked('creek/old/a.csv', 'old'),
        picked('creek/site.json', document),
        picked('creek/a.csv', 'new'),
      ]),
    );
    expect(reading.label).toBe('creek/site.json');
    expect(reading.files).toEqual([{ name: 'a.csv', text: 'new' }]);
  });

  it('may have another name when it is the only .json file', async () => {
    expect(site(await readPickedFiles([picked('creek.json', '{}')])).label).toBe('creek.json');
  });

  it('goes to the engine as text even where it is no JSON, for the engine to say what is wrong', async () => {
    expect(site(await readPickedFiles([picked('site.json', '{"proofstone": ')])).document).toBe(
      '{"proofstone": ',
    );
    expect(site(await readPickedFiles([picked('site.json', '')])).document).toBe('');
  });

  it('loses its byte order mark and nothing else', async () => {
    expect(
      site(
        await readPickedFiles([
          picked('site.json', new Uint8Array([0xef, 0xbb, 0xbf, 0x7b, 0x7d])),
        ]),
      ).document,
    ).toBe('{}');
  });

  it.each([
    ['nothing', [], 'no-site-document'],
    ['only tables', [picked('a.csv', '1')], 'no-site-document'],
    [
      'two sites',
      [picked('x/site.json', '{}'), picked('y/site.json', '{}')],
      'several-site-documents',
    ],
    [
      'two documents of other names',
      [picked('x.json', '{}'), picked('y.json', '{}')],
      'several-site-documents',
    ],
    [
      'a document in another encoding',
      [picked('site.json', new Uint8Array([0xff, 0xfe, 0x7b, 0]))],
      'not-utf8',
    ],
    [
      'a table in another encoding',
      [picked('site.json', document), picked('a.csv', new Uint8Array([0x31, 0xe9, 0x0a]))],
      'not-utf8',
    ],
    [
      'a spreadsheet under the name of a table',
      [
        picked('site.json', document),
        picked('a.csv', new Uint8Array([0x50, 0x4b, 3, 4, 0xff, 0xc1])),
      ],
      'not-utf8',
    ],
  ])('is refused by name: %s', async (_what, files, code) => {
    expect(codes(await readPickedFiles(files))).toEqual([code]);
  });

  it('is refused before it is read when it is too large', async () => {
    const huge = {
      path: 'site.json',
      file: {
        size: 1e9,
        arrayBuffer: () => Promise.reject(new Error('must not be read')),
      } as unknown as File,
    };
    expect(codes(await readPickedFiles([huge]))).toEqual(['file-too-large']);
  });

  it('says so when the browser cannot read a file', async () => {
    const gone = {
      path: 'site.json',
      file: { size: 1, arrayBuffer: () => Promise.reject(new Error('gone')) } as unknown as File,
    };
    expect(codes(await readPickedFiles([gone]))).toEqual(['file-not-readable']);
  });
});

it('says so when a dropped folder cannot be listed', async () => {
  expect(codes(await readDroppedFiles(Promise.reject(new Error('gone'))))).toEqual([
    'file-not-readable',
  ]);
  expect(site(await readDroppedFiles(Promise.resolve([picked('site.json', '{}')]))).document).toBe(
    '{}',
  );
});

describe('an example', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('is fetched with the files it names', async () => {
    const texts: Record<string, string> = {
      'examples/creek/site.json': document,
      'examples/creek/a.csv': 'A',
      'examples/creek/b.csv': 'B',
    };
    vi.stubGlobal('fetch', async (url: string) => ({
      ok: url in texts,
      status: 404,
      text: async () => texts[url],
    }));
    const reading = site(
      await readExample({ folder: 'creek', files: ['a.csv', 'b.csv', 'unused.csv', 'site.json'] }),
    );
    expect(reading.files.map(({ text }) => text)).toEqual(['A', 'B']);
    expect(reading.origin).toBe('example');
  });

  it('says so when it cannot be reached', async () => {
    vi.stubGlobal('fetch', async () => Promise.reject(new Error('no network')));
    expect(codes(await readExample({ folder: 'creek', files: [] }))).toEqual([
      'example-not-reached',
    ]);
  });
});
