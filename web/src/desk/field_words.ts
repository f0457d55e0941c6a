/** How a field of the document is called on the screen, and what is said below it. */
import { strings } from '../strings';
import type { SchemaNode } from './document_schema';

const words = strings.desk;

export function capitalised(text: string): string {
  return text.charAt(0).toLocaleUpperCase() + text.slice(1);
}

/** "energy_slope" → "Energy slope"; a field that has words of its own has those. */
export function fieldName(key: string, node?: SchemaNode): string {
  const title = node?.title === undefined ? undefined : plainWord(node.title);
  return words.fields[key] ?? title ?? capitalised(key.replaceAll(/[_-]/g, ' '));
}

/** A word of the document: "flow_cases" → "flow cases". */
export function plainWord(word: string): string {
  return words.words[word] ?? word.replaceAll('_', ' ');
}

/** Several items of a part of the document. */
export function partName(part: string): string {
  return words.parts[part]?.[0] ?? fieldName(part);
}

/** One item of it. */
export function oneOfPart(part: string): string {
  return words.parts[part]?.[1] ?? plainWord(part);
}

/** What helps to answer: what it is, and what holds where nothing is stated. */
export function helpFor(node: SchemaNode): string {
  const usual = node.default;
  return [
    words.fieldHelp[node.description ?? ''] ?? node.description ?? '',
    typeof usual === 'string' || typeof usual === 'number'
      ? words.form.usual(plainWord(String(usual)))
      : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** Examples, to stand in a field while it is empty. */
export function examplesOf({ examples = [] }: SchemaNode): string {
  return examples.slice(0, 2).join(', ');
}
