/** What the engine says of materials brought together for a class, as a table of proposals. */
import type { Picture, Problem } from '../findings';
import { strings } from '../strings';
import type { Compared, ComparedCell } from './compared_table';

const words = strings.desk.studies.blend;

interface Share {
  material: string;
  name: string;
  value: number;
  text: string;
}

interface Proposed {
  shares: Share[];
  margin_text?: string;
  /** The blend as the document would keep it. */
  material?: Record<string, unknown>;
  picture?: Picture;
}

interface WholeLoads extends Proposed {
  loads: { material: string; name: string; number: number }[];
  mass?: { text: string };
  cost?: number;
}

export interface Blend {
  class: string;
  name: string;
  feasible: boolean;
  sentence: string;
  why: string[];
  cut_short: string[];
  materials: { id: string; name: string; range_text?: string }[];
  blends: (Proposed & { kind: string; binding: string[]; cost?: number; cost_per?: string })[];
  recipe?: WholeLoads;
  loads?: WholeLoads;
  nearest?: Proposed;
}

export interface BlendAnswer {
  blend?: Blend;
  problems?: Problem[];
}

/** One way to bring the materials together. */
export interface Proposal extends Proposed {
  id: string;
  name: string;
  /** It keeps the band, so that it can be kept. */
  serves: boolean;
  whole?: WholeLoads;
  /** In the money of the document. */
  money?: string;
  binding: string[];
}

/** An amount in the money of the document, where it names one. */
function money(amount: string, currency: string): string {
  return `${amount} ${currency}`.trim();
}

function costEach(cost: number, per: string, currency: string): string {
  return words.costPer(money(cost.toFixed(2), currency), per);
}

/** `currency` is that of the document's prices; empty where it states none. */
export function proposalsOf(blend: Blend, currency: string): Proposal[] {
  const proposals: Proposal[] = blend.blends.map((one) => ({
    ...one,
    id: one.kind,
    name: words.kinds[one.kind] ?? one.kind,
    serves: blend.feasible,
    ...(one.cost === undefined ? {} : { money: costEach(one.cost, one.cost_per ?? '', currency) }),
  }));
  const whole = (id: 'recipe' | 'loads', found: WholeLoads | undefined): Proposal[] =>
    found
      ? [
          {
            ...found,
            id,
            name: words.kinds[id] ?? id,
            serves: true,
            whole: found,
            binding: [],
            ...(found.cost === undefined ? {} : { money: money(found.cost.toFixed(0), currency) }),
          },
        ]
      : [];
  const { nearest } = blend;
  return [
    ...proposals.filter(() => blend.feasible),
    ...whole('recipe', blend.recipe),
    ...whole('loads', blend.loads),
    ...(nearest
      ? [{ ...nearest, id: 'nearest', name: words.kinds.nearest ?? '', serves: false, binding: [] }]
      : []),
  ];
}

/** Shares first, then what they cost and what holds them where they are. */
export function comparedProposals(blend: Blend, proposals: readonly Proposal[]): Compared {
  const row = (what: string, cell: (one: Proposal) => string | undefined) => ({
    what,
    cells: proposals.map((one): ComparedCell => ({ text: cell(one) ?? words.none })),
  });
  const rows = [
    ...blend.materials.map(({ id, name, range_text }) =>
      row(
        range_text === undefined ? name : words.inRange(name, range_text),
        ({ shares, whole }) => {
          const share = shares.find(({ material }) => material === id);
          const number = whole?.loads.find(({ material }) => material === id)?.number;
          if (!share) return undefined;
          return number === undefined ? share.text : words.wholeOf(number, share.text);
        },
      ),
    ),
    row(words.margin, ({ margin_text }) => margin_text),
    row(words.mass, ({ whole }) => whole?.mass?.text),
    row(words.cost, ({ money }) => money),
    row(words.heldBy, ({ binding }) => (binding.length > 0 ? binding.join('; ') : undefined)),
  ];
  return {
    columns: proposals.map(({ name }) => name),
    rows: rows.filter(({ cells }) => cells.some(({ text }) => text !== words.none)),
  };
}
