/** What the engine answers. The screens draw these values and compute none of them. */

export type UnitSystem = 'us' | 'si';

/** The four things a finding can come to, in the words of the engine. */
export type Outcome = 'meets' | 'falls short' | 'not yet known' | 'ask the designer';

/** A number in SI, and the same as text in the unit system that was asked for. */
export interface Measure {
  si: number;
  kind: string;
  value: number;
  unit: string;
  text: string;
}

export interface StatedValue extends Measure {
  key: string;
  symbol: string;
  meaning: string;
}

/** One line of a calculation. `formula` is empty where the value was given. */
export interface Step extends Measure {
  symbol: string;
  meaning: string;
  formula: string;
  source: string;
}

export interface Limit {
  sentence: string;
  source: string;
  kept: boolean;
}

export interface Source {
  document: string;
  place: string;
  standing: string;
  sentence: string;
}

/** A ratio of what is there to what is needed; 1 just holds. */
export interface Margin {
  value: number;
  low?: number | null;
  high?: number | null;
  text: string;
}

/** Ids of the document that a finding is about; empty or absent where they do not apply. */
export interface About {
  zone?: string;
  reach?: string;
  flow_case?: string;
  lot?: string;
  look?: string;
  method?: string;
  class?: string;
}

export interface Finding {
  id: string;
  topic: string;
  about: About;
  title: string;
  outcome: Outcome;
  sentence: string;
  next: string;
  governs: boolean;
  margin?: Margin | null;
  confidence?: { value: number; text: string } | null;
  values: StatedValue[];
  steps: Step[];
  reasons: string[];
  limits: Limit[];
  sources: Source[];
  cautions: string[];
}

export interface Findings {
  proofstone: 'findings';
  format: number;
  engine: string;
  units: UnitSystem;
  site: { name: string; revision: string };
  headline: { outcome: Outcome; sentence: string };
  findings: Finding[];
  cautions: string[];
}

/** A picture the engine drew; `svg` is text and is cleaned before it is shown. */
export interface Picture {
  id: string;
  kind: string;
  title: string;
  description: string;
  svg: string;
  /** Of a plan: metres east of its left edge and north of its top edge, and those that a pixel covers. */
  frame?: { left: number; top: number; metres_per_pixel: number };
}

/** Something the user can put right. */
export interface Problem {
  code: string;
  /** What, where and what is allowed, in one; the screen shows the parts. */
  sentence?: string;
  what: string;
  file: string;
  where: string;
  allowed: string;
}

/** A file a document names, read as text. */
export interface NamedText {
  name: string;
  text: string;
}

export interface AssessAnswer {
  findings?: Findings;
  pictures?: Picture[];
  problems?: Problem[];
}

/** A page the engine wrote. */
export interface PageAnswer {
  html?: string;
  problems?: Problem[];
}

/** One amount of a bill; without `value` it is not yet known. */
export interface QuantityRow {
  item: string;
  of: string;
  what: string;
  how: string;
  price: string;
  partial: boolean;
  value?: number;
  unit?: string;
  text?: string;
  cost?: number;
  cost_text?: string;
}

export interface Quantities {
  currency: string;
  prices_from: string;
  zones: { zone: string; name: string; rows: QuantityRow[]; missing: string[] }[];
  totals: QuantityRow[];
  cost_text?: string;
}

export interface QuantitiesAnswer {
  quantities?: Quantities;
  csv?: string;
  problems?: Problem[];
}
