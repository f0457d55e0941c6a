/**
 * What may stand in a gap of a sentence of the engine. A gap is written {name} and says by a mark
 * after its name what stands in it:
 *
 * - {zone}: a name of the site, kept as it is; within one piece of a sentence
 * - {size#}: a number with or without its unit, kept
 * - {what!}: a number, or words that are known themselves; {check!check} those of one kind
 * - {limits*}: a list of such, "a, b and c"; {limits*limit} of one kind
 * - {why;}: a list of such, "a; b"
 * - {when@}: a moment, kept
 * - {note_}: whatever somebody wrote, kept
 */
export type GapMark = '' | '#' | '!' | '*' | ';' | '@' | '_';

export interface Gap {
  name: string;
  mark: GapMark;
  /** The kind of words that may stand there; empty for any sentence and words of any. */
  of: string;
}

/** The words of another language for words of the engine; undefined where they are not known. */
export type Known = (words: string, of: string) => string | undefined;

const number = String.raw`[−+-]?\d(?:[\d.,]*\d)?(?:e[−+-]?\d+)?(?:·10[⁻⁰¹²³⁴-⁹]+)?`;

/** Units as the engine shows them (`engine/quantity/unit.cc`). */
const units = [
  ...['in', 'ft', 'yd', 'mi', 'mm', 'cm', 'm', 'km', 'yd²', 'ft²', 'm²', 'ft³', 'yd³', 'm³'],
  ...['ft/s', 'm/s', 'mph', 'km/h', 'ft³/s', 'm³/s', 'ft²/s', 'm²/s', 'ft/s²', 'm/s²'],
  ...['lb/ft²', 'N/m²', 'Pa', 'MPa', 'psi', 'lb/ft³', 'kg/m³', 'N/m³', 'kN/m³'],
  ...['lb', 'ton', 'tons', 'kg', 't', '°', '%', 's', 'min', 'h', 's⁻¹', 'ft/ft', 'm/m'],
];

const one = `(?:${number}(?: ?(?:${units.join('|')}))?|${number}[VH]:${number}[HV])`;

/** A number with or without its unit, and the same in another unit after it. */
const quantity = new RegExp(`^${one}(?: \\(${one}\\))?$`);

const moment = /^\d{4}-\d\d-\d\d(?:T\d\d:\d\d:\d\dZ)?$/;

/** What is no name of the site but words of the engine: the end of a sentence, an article. */
const noName = /[;:] |[^A-Z]\. [A-Z\d]|[^A-Z]\.$|^(?:the|its|an?) /;

const conjunctions = [
  [', ', ', '],
  [' and ', ' y '],
  [' or ', ' o '],
] as const;

const semicolons = [['; ', '; ']] as const;

const numberOr =
  (known: Known): Known =>
  (words, of) =>
    quantity.test(words) ? words : known(words, of);

/** A list of items that are known, each as short as it can be. */
function shownList(
  words: string,
  of: string,
  between: readonly (readonly [written: string, shown: string])[],
  known: Known,
): string | undefined {
  const ends = between
    .flatMap(([written, shown]) =>
      [...words.matchAll(new RegExp(written, 'g'))].map(({ index }) => ({ index, written, shown })),
    )
    .sort((one, other) => one.index - other.index);
  for (const { index, written, shown } of ends) {
    const item = known(words.slice(0, index), of);
    if (item === undefined) continue;
    const rest = shownList(words.slice(index + written.length), of, between, known);
    if (rest !== undefined) return item + shown + rest;
  }
  return known(words, of);
}

/** What is shown for what stands in a gap; undefined where that cannot stand there. */
export function shownInGap({ mark, of }: Gap, words: string, known: Known): string | undefined {
  if (words === '') return undefined;
  switch (mark) {
    case '#':
      return quantity.test(words) ? words : undefined;
    case '!':
      return numberOr(known)(words, of);
    case '*':
      return shownList(words, of, conjunctions, numberOr(known));
    case ';':
      return shownList(words, of, semicolons, known);
    case '@':
      return moment.test(words) ? words : undefined;
    case '_':
      return words;
    default:
      return noName.test(words) ? undefined : words;
  }
}
