/** The findings in the order of the engine, under headings, with a filter by outcome. */
import { useEffect, useState } from 'preact/hooks';
import { linkedFinding } from './deep_link';
import { FindingCard } from './finding_card';
import { countOutcomes, groupFindings } from './finding_groups';
import type { Finding, Outcome } from './findings';
import { usePortion } from './more_button';
import { OutcomeMark } from './outcome_mark';
import { strings } from './strings';

const words = strings.findings;

/** So many are drawn at a time. */
const portion = 150;
const step = 12;
/** On paper everything stands open; a site with more findings has its reports. */
const mostPrinted = 1000;

function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const start = () => setPrinting(true);
    const end = () => setPrinting(false);
    addEventListener('beforeprint', start);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', start);
      removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
}

interface ChipProps {
  name: string;
  number: number;
  outcome?: Outcome;
  pressed: boolean;
  onPress: () => void;
}

function Chip({ name, number, outcome, pressed, onPress }: ChipProps) {
  return (
    <button type="button" class="chip" aria-pressed={pressed} onClick={onPress}>
      {outcome && <OutcomeMark outcome={outcome} size={20} />}
      <span class="name">{name}</span> <span class="number">{number}</span>{' '}
      <span class="for-readers">{words.counted(number)}</span>
    </button>
  );
}

export function FindingsList({ findings }: { findings: Finding[] }) {
  const [only, setOnly] = useState<Outcome | undefined>(undefined);
  const printing = usePrinting();
  const linked = linkedFinding.value;

  // A finding that the address names is shown whatever the filter was.
  useEffect(() => {
    if (linked) setOnly(undefined);
  }, [linked]);

  const counts = countOutcomes(findings);
  const present = counts.some(({ outcome }) => outcome === only) ? only : undefined;
  const wanted = present ? findings.filter(({ outcome }) => outcome === present) : findings;
  const atLeast = printing ? mostPrinted : wanted.findIndex(({ id }) => id === linked) + 1;
  const { shown, growing, more } = usePortion(wanted, portion, { atLeast, step });
  return (
    <section
      class="findings"
      id="findings"
      aria-labelledby="findings-heading"
      aria-busy={growing}
      tabIndex={-1}
    >
      <h2 id="findings-heading">{words.heading}</h2>
      {findings.length === 0 && <p>{words.none}</p>}
      {counts.length > 1 && (
        <div class="chips" role="group" aria-label={words.show}>
          <Chip
            name={words.all}
            number={findings.length}
            pressed={!present}
            onPress={() => setOnly(undefined)}
          />
          {counts.map(({ outcome, number }) => (
            <Chip
              key={outcome}
              name={strings.outcomes[outcome]}
              number={number}
              outcome={outcome}
              pressed={present === outcome}
              onPress={() => setOnly(outcome)}
            />
          ))}
        </div>
      )}
      {groupFindings(shown).map((group) => (
        <section class="group" key={group.findings[0]?.id}>
          <h3>{group.heading}</h3>
          {group.findings.map((finding) => (
            <FindingCard
              key={finding.id}
              finding={finding}
              linked={finding.id === linked}
              printing={printing}
            />
          ))}
        </section>
      ))}
      {more}
    </section>
  );
}
