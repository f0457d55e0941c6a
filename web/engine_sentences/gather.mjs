// Writes down what the engine says of the examples, one text of each shape: `npm run sentences`.
import { writeFileSync } from 'node:fs';
import { engineInNode } from './engine_in_node.mjs';
import { askAboutExamples } from './example_questions.mjs';
import { saidIn } from './said_in.mjs';

/** Texts that differ in their numbers alone are one. */
const shapeOf = (text) => text.replaceAll(/\d[\d.,]*/g, '0');

const said = new Map();
const ask = await engineInNode();
askAboutExamples(ask, (request, answer) => {
  // An accident of the engine is none of its sentences.
  if (answer.problems?.[0]?.what.startsWith('The engine could not finish')) return;
  for (const [place, text] of saidIn(answer)) {
    if (!/[a-z]{2}/i.test(text ?? '')) continue;
    if (!said.has(place)) said.set(place, new Map());
    const shapes = said.get(place);
    if (!shapes.has(shapeOf(text))) shapes.set(shapeOf(text), text);
  }
});

const places = [...said].sort(([one], [other]) => (one < other ? -1 : 1));
const texts = Object.fromEntries(
  places.map(([place, shapes]) => [place, [...shapes.values()].sort()]),
);
const to = new URL('sentences_of_examples.json', import.meta.url);
writeFileSync(to, `${JSON.stringify(texts, null, 2)}\n`);
for (const [place, list] of Object.entries(texts)) console.log(place, list.length);
