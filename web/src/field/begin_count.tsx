/** What a count begins with: how stones are picked, how they are measured, where. */
import { useState } from 'preact/hooks';
import { ProblemLines } from '../problem_list';
import type { Position } from '../record/position';
import type { Draft } from '../record/record_database';
import { freshId } from '../record/revision';
import { beginDraft } from '../record/drafts';
import { RecordFailure } from '../record/record_access';
import { EngineText } from '../engine_text';
import { strings } from '../strings';
import { BeginEnd } from './begin_end';
import { useCountSheet } from './count_sheet';
import type { CountBin } from './count_tally';
import { positionNow } from './device_position';

const words = strings.count;

/** What a draft of a count holds beside its taps. */
export interface CountDraft {
  lot: string;
  look: string;
  picking: string;
  bins: CountBin[];
  place: string;
  /** Sorted into the bins, or each middle axis measured; an older draft has bins. */
  by?: 'bins' | 'axes';
  /** Where the device was when it was begun. */
  position?: Position;
}

/** What the user reads where something could not be kept. */
export function sentenceOf(error: unknown): string {
  return strings.record.troubles[error instanceof RecordFailure ? error.trouble : 'not written'];
}

export function Beginning({ lot, onBegun }: { lot: string; onBegun: (draft: Draft) => void }) {
  const { told: sheet, problems } = useCountSheet(lot);
  const [picking, setPicking] = useState('grid');
  const [by, setBy] = useState<'bins' | 'axes'>('bins');
  const [place, setPlace] = useState('');
  const [trouble, setTrouble] = useState('');
  if (problems.length > 0) return <ProblemLines problems={problems} />;
  if (!sheet) return <p role="status">{words.preparing}</p>;
  return (
    <form
      class="begin"
      onSubmit={(event) => {
        event.preventDefault();
        const about: CountDraft = {
          lot,
          look: freshId('count'),
          picking,
          bins: sheet.bins,
          place: place.trim(),
          by,
          ...positionNow(),
        };
        beginDraft('stone count', about).then(onBegun, (error: unknown) =>
          setTrouble(sentenceOf(error)),
        );
      }}
    >
      <p>{words.against(sheet.name, sheet.class)}</p>
      <fieldset class="choice">
        <legend>{words.picking}</legend>
        {sheet.pickings.map(({ word, meaning }) => (
          <label key={word}>
            <input
              type="radio"
              name="picking"
              value={word}
              checked={picking === word}
              onChange={() => setPicking(word)}
            />
            <span>
              <b>{words.pickings[word] ?? word}</b>
              <span class="line">
                <EngineText text={meaning} />
              </span>
            </span>
          </label>
        ))}
      </fieldset>
      <fieldset class="choice">
        <legend>{words.by}</legend>
        {(['bins', 'axes'] as const).map((way) => (
          <label key={way}>
            <input
              type="radio"
              name="by"
              value={way}
              checked={by === way}
              onChange={() => setBy(way)}
            />
            <span>
              <b>{words.ways[way].name}</b>
              <span class="line">{words.ways[way].what}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <BeginEnd words={words} place={place} onPlace={setPlace} trouble={trouble} />
    </form>
  );
}
