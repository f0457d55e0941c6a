/** The finding that the address of the page names: #/finding/<id>. */
import { signal } from '@preact/signals';

const prefix = '#/finding/';

function fromAddress(): string | undefined {
  const { hash } = location;
  if (!hash.startsWith(prefix)) return undefined;
  try {
    return decodeURIComponent(hash.slice(prefix.length));
  } catch {
    return undefined;
  }
}

export const linkedFinding = signal<string | undefined>(fromAddress());

export function findingAddress(id: string): string {
  return prefix + encodeURIComponent(id);
}

/** Id of the element that shows a finding. */
export function findingElementId(id: string): string {
  return `finding-${id}`;
}

export function followAddress(): void {
  addEventListener('hashchange', () => (linkedFinding.value = fromAddress()));
}
