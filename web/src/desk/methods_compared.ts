/** The findings of the sizing methods of a zone, matter by matter. Nothing is worked out here. */
import { engineText } from '../engine_text';
import type { Finding, Step } from '../findings';
import { strings } from '../strings';
import type { ComparedCell, ComparedRow } from './compared_table';

const words = strings.desk.studies.methods;

/** What each method asks for in a zone: the one that governs first, then in the order of the engine. */
export function methodFindings(findings: readonly Finding[], zone: string): Finding[] {
  return findings
    .filter(
      ({ topic, about, values }) =>
        topic === 'rock size' &&
        about.zone === zone &&
        about.method !== undefined &&
        values.some(({ key }) => key === 'required_size'),
    )
    .sort((one, other) => Number(other.governs) - Number(one.governs));
}

/** The finding that says of each method whether it applies, and why not. */
export function applicabilityOf(findings: readonly Finding[], zone: string): Finding | undefined {
  return findings.find(({ id }) => id === `methods.${zone}`);
}

/** Given to the method, and not what the class has. */
function inputsOf({ steps }: Finding): Step[] {
  return steps.filter(({ formula, symbol }) => formula === '' && !symbol.endsWith(' min'));
}

const nothing: ComparedCell = { text: words.notAsked };

function row(what: string, of: readonly Finding[], cell: (finding: Finding) => ComparedCell) {
  return { what, cells: of.map(cell) };
}

/** How many methods are given what carries this meaning. */
function takers(of: readonly Finding[]): Map<string, number> {
  const taken = new Map<string, number>();
  for (const finding of of) {
    for (const meaning of new Set(inputsOf(finding).map((step) => step.meaning))) {
      taken.set(meaning, (taken.get(meaning) ?? 0) + 1);
    }
  }
  return taken;
}

/** What several methods are given stands in a row of its own; what one alone is given comes together. */
function inputRows(of: readonly Finding[]): ComparedRow[] {
  const taken = takers(of);
  const shared = [...taken]
    .filter(([, number]) => number > 1)
    .sort(([, one], [, other]) => other - one)
    .map(([meaning]) =>
      row(words.input(engineText(meaning, 'meaning')), of, (finding) => {
        const step = inputsOf(finding).find((one) => one.meaning === meaning);
        return step ? { text: words.given(step.symbol, step.text) } : nothing;
      }),
    );
  const alone = row(words.alsoGiven, of, (finding) => {
    const lines = inputsOf(finding)
      .filter(({ meaning }) => taken.get(meaning) === 1)
      .map(({ symbol, text, meaning }) =>
        words.givenAs(symbol, text, engineText(meaning, 'meaning')),
      );
    return lines.length > 0 ? { text: '', lines } : nothing;
  });
  return [...shared, ...(alone.cells.some(({ lines }) => lines) ? [alone] : [])];
}

export function methodRows(of: readonly Finding[]): ComparedRow[] {
  return [
    row(words.outcome, of, (finding) => ({
      text: strings.outcomes[finding.outcome],
      outcome: finding.outcome,
      finding,
      ...(finding.margin ? { margin: finding.margin.text } : {}),
    })),
    row(words.asksFor, of, ({ values }) => {
      const asked = values.find(({ key }) => key === 'required_size');
      return { text: asked ? `${asked.symbol} ≥ ${asked.text}` : words.notAsked };
    }),
    row(words.classHas, of, ({ steps }) => {
      const has = steps.find(({ symbol }) => symbol.endsWith(' min'));
      return has ? { text: `${has.symbol} = ${has.text}` } : nothing;
    }),
    row(words.governs, of, ({ governs }) => ({ text: governs ? words.yes : words.no })),
    row(words.limitsNotKept, of, ({ limits }) => {
      const broken = limits.filter(({ kept }) => !kept).map(({ sentence }) => engineText(sentence));
      if (broken.length > 0) return { text: broken.join('; ') };
      return { text: limits.length > 0 ? words.allKept : words.noLimits };
    }),
    ...inputRows(of),
  ];
}
