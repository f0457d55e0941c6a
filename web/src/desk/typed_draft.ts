/** What was typed into a form and not kept: it outlives a reload, and goes once it is kept. */
import type { NamedText } from '../findings';

export interface TypedDraft {
  /** What the site had when the form was begun: only what differs from it was typed. */
  from: Record<string, unknown>;
  values: Record<string, unknown>;
  files: NamedText[];
}

const prefix = 'proofstone.form.';
/** A table that is longer is not held here; it is picked again. */
const longest = 1_000_000;

export function readTyped(key: string): TypedDraft | undefined {
  try {
    const text = localStorage.getItem(prefix + key);
    return text === null ? undefined : (JSON.parse(text) as TypedDraft);
  } catch {
    return undefined;
  }
}

/** Notes what is typed; with nothing, forgets it. */
export function noteTyped(key: string, draft: TypedDraft | undefined): void {
  try {
    const text = draft && JSON.stringify(draft);
    if (text === undefined || text.length > longest) localStorage.removeItem(prefix + key);
    else localStorage.setItem(prefix + key, text);
  } catch {
    // Without storage what is typed holds until the page is closed.
  }
}
