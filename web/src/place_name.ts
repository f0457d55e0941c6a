/** What a pointer of the site leads to, in words. */
import { stepsOf } from './record/revision';
import { standingAt } from './record/undoing';
import { strings } from './strings';

const longestValue = 160;

/** A value of the document in one line; undefined where it is too long for one. */
export function shortText(value: unknown): string | undefined {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > longestValue ? undefined : text;
}

/** The name of the item that a pointer leads into, and the field. */
export function placeName(pointer: string, state: unknown): string {
  const [collection = '', id = '', ...field] = stepsOf(pointer);
  const name = standingAt(state, `/${collection}/${id}/name`);
  const { step } = strings.desk;
  const item = typeof name === 'string' ? name : `${step(collection)} ${id}`.trim();
  return [item.replaceAll('_', ' '), ...field.map(step)].join(', ');
}
