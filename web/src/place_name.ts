/** What a pointer of the site leads to, in words. */
import { capitalised, fieldName, oneOfPart } from './desk/field_words';
import { pointerTo, stepsOf } from './record/revision';
import { standingAt } from './record/undoing';

interface NamedItem {
  name?: string;
  ticket?: string;
}

const longestValue = 160;

/** A value of the document in one line; undefined where it is too long for one. */
export function shortText(value: unknown): string | undefined {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > longestValue ? undefined : text;
}

/** The item that a pointer leads into, by its name or what else tells it apart, and the field. */
export function placeName(pointer: string, state: unknown): string {
  const [collection = '', id, ...field] = stepsOf(pointer);
  const part = capitalised(oneOfPart(collection));
  if (id === undefined) return part;
  const item = standingAt(state, pointerTo(collection, id)) as NamedItem | undefined;
  const name = item?.name ?? `${part} ${item?.ticket ?? id}`;
  return [name, ...field.map((step) => fieldName(step))].join(' · ');
}
