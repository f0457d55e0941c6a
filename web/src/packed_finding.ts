/**
 * Findings of a site of many looks, with what is seldom looked at as one text until it is: thousands
 * of them are then taken in and held without a burden. The screens see no difference.
 */
import type { Finding } from './findings';

const seldom = ['values', 'steps', 'reasons', 'limits', 'sources', 'cautions'] as const;
type Seldom = Pick<Finding, (typeof seldom)[number]>;
type Seen = Omit<Finding, (typeof seldom)[number]>;

export interface PackedFinding {
  seen: Seen;
  /** What is seldom looked at, as JSON. */
  packed: string;
}

export function isFinding(value: unknown): value is Finding {
  return value !== null && typeof value === 'object' && seldom.every((key) => key in value);
}

export function packed({
  values,
  steps,
  reasons,
  limits,
  sources,
  cautions,
  ...seen
}: Finding): PackedFinding {
  return { seen, packed: JSON.stringify({ values, steps, reasons, limits, sources, cautions }) };
}

export function isPacked(value: unknown): value is PackedFinding {
  return value !== null && typeof value === 'object' && 'packed' in value;
}

class UnpackedWhenAsked implements Seldom {
  readonly #packed: string;
  #unpacked: Seldom | undefined;

  constructor({ seen, packed: text }: PackedFinding) {
    this.#packed = text;
    Object.assign(this, seen);
  }

  get #rest(): Seldom {
    this.#unpacked ??= JSON.parse(this.#packed) as Seldom;
    return this.#unpacked;
  }

  get values() {
    return this.#rest.values;
  }

  get steps() {
    return this.#rest.steps;
  }

  get reasons() {
    return this.#rest.reasons;
  }

  get limits() {
    return this.#rest.limits;
  }

  get sources() {
    return this.#rest.sources;
  }

  get cautions() {
    return this.#rest.cautions;
  }

  /** As the engine wrote it, to be saved. */
  toJSON(): object {
    return { ...this, ...this.#rest };
  }
}

export function unpacked(finding: PackedFinding): Finding {
  return new UnpackedWhenAsked(finding) as unknown as Finding;
}
