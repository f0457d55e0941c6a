// The texts of the engine that a screen shows, out of its answers, by where they stand.

/** Whether an object is a finding, a picture, a compared table … by what it has. */
const has = (value, ...keys) => keys.every((key) => key in value);

function* ofFinding({
  title,
  sentence,
  next,
  reasons,
  cautions,
  values,
  steps,
  limits,
  sources,
  confidence,
}) {
  yield ['titles of findings', title];
  yield ['sentences of findings', sentence];
  yield ['what to do next', next];
  for (const reason of reasons) yield ['reasons', reason];
  for (const caution of cautions) yield ['cautions', caution];
  for (const { meaning } of values) yield ['meanings of values', meaning];
  for (const { meaning, source } of steps) {
    yield ['meanings of steps', meaning];
    yield ['origins of steps', source];
  }
  for (const limit of limits) {
    yield ['limits of methods', limit.sentence];
    yield ['origins of limits', limit.source];
  }
  for (const { place } of sources) yield ['places in sources', place];
  if (confidence) yield ['confidences', confidence.text];
}

const attribute = (tag, name) => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];

/** The texts of a drawing as a screen reads them: lines that the engine broke are one. */
function textsIn(svg) {
  const texts = [];
  let last;
  for (const [, tag, words] of svg.matchAll(/<text([^>]*)>([^<]*)</g)) {
    const line = { words: words.replaceAll('&#39;', "'").replaceAll('&amp;', '&') };
    for (const name of ['x', 'class', 'fill', 'font-size', 'text-anchor']) {
      line[name] = attribute(tag, name);
    }
    line.y = Number(attribute(tag, 'y'));
    const down = line.y - (last?.y ?? Infinity);
    const goesOn =
      ['x', 'class', 'fill', 'font-size', 'text-anchor'].every(
        (name) => line[name] === last?.[name],
      ) &&
      down > 0 &&
      down < 1.45 * Number(line['font-size']);
    if (goesOn) texts.push(`${texts.pop()} ${line.words}`);
    else texts.push(line.words);
    last = line;
  }
  return texts;
}

function* ofPicture({ title, description, svg }) {
  yield ['titles of pictures', title];
  yield ['descriptions of pictures', description];
  for (const text of textsIn(svg)) yield ['words in pictures', text];
}

function* ofTable({ columns, rows }) {
  for (const column of columns) yield ['heads of tables', column];
  for (const { what, cells } of rows) {
    yield ['heads of tables', what];
    for (const { text, lines = [] } of cells) {
      for (const line of [text, ...lines]) yield ['cells of tables', line];
    }
  }
}

function* ofCheck({ title, required, tolerance, how, state, next, evidence }) {
  for (const text of [title, required, tolerance, how, state, next, ...evidence]) {
    yield ['checks of placing', text];
  }
}

function* ofMethod({ title, cautions, inputs, outputs }) {
  yield ['titles of methods', title];
  for (const caution of cautions) yield ['cautions of methods', caution];
  for (const { meaning, choices = [] } of inputs) {
    yield ['inputs and results of methods', meaning];
    for (const choice of choices) yield ['inputs and results of methods', choice.meaning];
  }
  for (const { meaning } of outputs) yield ['inputs and results of methods', meaning];
}

function* ofObject(value) {
  if (has(value, 'topic', 'steps')) yield* ofFinding(value);
  else if (has(value, 'svg', 'description')) yield* ofPicture(value);
  else if (has(value, 'columns', 'rows')) yield* ofTable(value);
  else if (has(value, 'tolerance', 'evidence')) yield* ofCheck(value);
  else if (has(value, 'inputs', 'outputs', 'cautions')) yield* ofMethod(value);
  else if (has(value, 'checks', 'sentence', 'next')) {
    yield ['sentences of walks', value.sentence];
    yield ['sentences of walks', value.next];
  } else if (has(value, 'sentence', 'why')) {
    for (const text of [value.sentence, ...value.why]) yield ['blends', text];
  } else if (has(value, 'what', 'allowed')) {
    yield ['problems', value.what];
    yield ['problems', value.allowed];
  } else if (has(value, 'item', 'how')) {
    yield ['bill of quantities', value.what];
    yield ['bill of quantities', value.how];
  } else if (has(value, 'headline')) yield ['headlines', value.headline.sentence];
}

/** [where it stands, text] of everything in an answer. */
export function* saidIn(value) {
  if (value === null || typeof value !== 'object') return;
  if (!Array.isArray(value)) yield* ofObject(value);
  for (const inner of Object.values(value)) yield* saidIn(inner);
}
