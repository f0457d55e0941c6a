/** Findings by what they are about: looked up, not looked through, where there are thousands. */
import type { About, Finding } from './findings';

type Finder = (findings: readonly Finding[]) => ReadonlyMap<string, readonly Finding[]>;

/** Looks through findings once: those that share a key, by it, in the order of the engine. */
function finder(keysOf: (finding: Finding) => Iterable<string>): Finder {
  const made = new WeakMap<readonly Finding[], Map<string, Finding[]>>();
  return (findings) => {
    const known = made.get(findings);
    if (known) return known;
    const byKey = new Map<string, Finding[]>();
    for (const finding of findings) {
      for (const key of keysOf(finding)) {
        const there = byKey.get(key);
        if (there) there.push(finding);
        else byKey.set(key, [finding]);
      }
    }
    made.set(findings, byKey);
    return byKey;
  };
}

const byId = finder(({ id }) => [id]);
const byStep = finder(({ id }) => new Set(id.split('.')));
const byAbout = new Map<keyof About, Finder>();

export function findingWithId(findings: readonly Finding[], id: string): Finding | undefined {
  return byId(findings).get(id)?.[0];
}

/** Findings whose id names an item of the document. */
export function findingsNaming(findings: readonly Finding[], id: string): readonly Finding[] {
  return byStep(findings).get(id) ?? [];
}

/** Findings that are about an item, in the order of the engine. */
export function findingsOf(
  findings: readonly Finding[],
  key: keyof About,
  id: string,
): readonly Finding[] {
  const find =
    byAbout.get(key) ??
    finder(({ about }) => {
      const named = about[key];
      return named ? [named] : [];
    });
  byAbout.set(key, find);
  return find(findings).get(id) ?? [];
}
