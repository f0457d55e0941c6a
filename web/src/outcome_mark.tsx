/**
 * The mark of an outcome: one stone, shown whole, part full, dashed or hatched. It stands
 * beside the phrase and is never alone, so that neither shape nor colour has to be learnt.
 */
import type { Outcome } from './findings';

const stone = 'M6.2 3.6 15.6 2.2 21.8 8.8 20.4 17.6 11.4 21.8 2.6 16 2.2 9Z';
/** The part of the stone below the line it should reach. */
const partOfStone = 'M2.4 13.2 21.1 13.2 20.4 17.6 11.4 21.8 2.6 16Z';

const drawings: Record<
  Outcome,
  { colour: string; dashed?: boolean; filled?: string; strokes?: string }
> = {
  meets: { colour: 'river', filled: stone },
  'falls short': { colour: 'ochre', filled: partOfStone },
  'not yet known': { colour: 'muted', dashed: true },
  'ask the designer': {
    colour: 'ink',
    strokes: 'M5.6 13.6 12.4 6M7.4 17.8 17.4 6.6M12.4 18.6 18.6 11.6',
  },
};

export function OutcomeMark({ outcome, size = 24 }: { outcome: Outcome; size?: number }) {
  const { colour, dashed, filled, strokes } = drawings[outcome] ?? drawings['not yet known'];
  return (
    <svg
      class={`outcome-mark ${colour}`}
      viewBox="0 0 24 24"
      width={size}
      height={size}
      aria-hidden="true"
    >
      {filled && <path d={filled} fill="currentColor" />}
      <path d={stone} class="outline" stroke-dasharray={dashed ? '2.6 2.4' : undefined} />
      {strokes && <path d={strokes} class="outline" />}
    </svg>
  );
}
