// What the screens ask about the example sites, and what would be asked in the field there.
import { readdirSync, readFileSync } from 'node:fs';
import { countsOf, loadsOf, quickLooksOf, shapesOf, walksOf } from './field_looks.mjs';
import { photoLooksOf } from './photo_looks.mjs';
import { wrongEntries } from './wrong_entries.mjs';

const examples = new URL('../../examples/', import.meta.url);
const pictures = { width: 640 };

function exampleOf(folder) {
  const names = readdirSync(new URL(`${folder}/`, examples));
  const read = (name) => readFileSync(new URL(`${folder}/${name}`, examples), 'utf8');
  return {
    document: JSON.parse(read('site.json')),
    files: names
      .filter((name) => name.endsWith('.csv'))
      .map((name) => ({ name, text: read(name) })),
  };
}

/** The document with one revision more, as a screen asks what would be. */
export function withChanges(document, changes) {
  const revisions = document.revisions;
  const trial = {
    id: 'trial',
    after: [revisions.at(-1).id],
    time: '2026-12-01T12:00:00Z',
    author: 'trial',
    note: 'trial',
    changes,
  };
  return { ...document, revisions: [...revisions, trial] };
}

/** Asks about one example in one unit system and tells every answer with what was asked. */
function askAbout(example, units, ask, hear) {
  const { document, files } = example;
  const put = (request, changes) => {
    const about = changes ? withChanges(document, changes) : document;
    const whole = { units, ...request, document: JSON.stringify(about), files };
    const answer = ask(whole);
    hear(request, answer);
    return answer;
  };
  put({ ask: 'assess', pictures });
  const { state } = ask({ ask: 'state', document: JSON.stringify(document) });
  put({ ask: 'quantities' });
  for (const lot of Object.keys(state.lots ?? {})) {
    put({ ask: 'lot', lot, pictures });
    const sheet = put({ ask: 'count-sheet', lot }).count_sheet;
    const changes = [
      ...(sheet ? countsOf(lot, sheet.bins) : []),
      ...quickLooksOf(lot),
      ...loadsOf(lot),
      ...shapesOf(lot),
      ...photoLooksOf(lot),
    ];
    for (const each of changes) put({ ask: 'lot', lot, pictures }, each);
  }
  for (const zone of Object.keys(state.zones ?? {})) {
    const { checklist } = put({ ask: 'checklist', zone });
    if (checklist)
      for (const each of walksOf(zone, checklist.checks)) put({ ask: 'checklist', zone }, each);
    put({ ask: 'mix', zone, pictures });
    for (const source of Object.keys(state.sources ?? {}))
      put({ ask: 'substitution', zone, source });
  }
  for (const source of Object.keys(state.sources ?? {})) put({ ask: 'submittals', source });
  const materials = Object.keys(state.materials ?? {});
  for (const rockClass of ['fhwa-1', 'fhwa-3', 'fhwa-6']) {
    for (const more of [
      {},
      { mass: '400 ton' },
      { buckets: '6', margin: '5 %' },
      { scalp: '6 in' },
    ]) {
      put({ ask: 'blend', class: rockClass, materials, pictures, ...more });
    }
  }
  for (const changes of wrongEntries(state)) put({ ask: 'validate', units: undefined }, changes);
}

/** Everything that is asked about the examples: `hear(request, answer)` is told each answer. */
export function askAboutExamples(ask, hear) {
  for (const folder of readdirSync(examples)) {
    for (const units of ['us', 'si']) askAbout(exampleOf(folder), units, ask, hear);
  }
  hear({ ask: 'methods' }, ask({ ask: 'methods' }));
}
