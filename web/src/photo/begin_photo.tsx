/** What measuring on photos begins with: how, how the rock lies, where on it. */
import { useState } from 'preact/hooks';
import { sentenceOf } from '../field/begin_count';
import { BeginEnd } from '../field/begin_end';
import type { Draft } from '../record/record_database';
import { freshId } from '../record/revision';
import { beginDraft } from '../record/drafts';
import type { PhotoDraft } from './photo_draft';
import { photoWords as words } from '../strings';

export function PhotoGuide({ open }: { open: boolean }) {
  return (
    <details class="photo-guide" open={open}>
      <summary>{words.guide.heading}</summary>
      <ul>
        {words.guide.points.map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ul>
    </details>
  );
}

export function BeginPhoto({ lot, onBegun }: { lot: string; onBegun: (draft: Draft) => void }) {
  const [by, setBy] = useState<PhotoDraft['by']>('outlines');
  const [lies, setLies] = useState<PhotoDraft['lies']>('heap');
  const [place, setPlace] = useState('');
  const [trouble, setTrouble] = useState('');
  return (
    <form
      class="begin"
      onSubmit={(event) => {
        event.preventDefault();
        const about: PhotoDraft = { lot, look: freshId('photo'), by, lies, place: place.trim() };
        beginDraft('photo', about).then(onBegun, (error: unknown) => setTrouble(sentenceOf(error)));
      }}
    >
      <PhotoGuide open />
      <fieldset class="choice">
        <legend>{words.how}</legend>
        {(['outlines', 'taps'] as const).map((way) => (
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
      <fieldset class="choice">
        <legend>{words.lies}</legend>
        {(['heap', 'layer'] as const).map((way) => (
          <label key={way}>
            <input
              type="radio"
              name="lies"
              value={way}
              checked={lies === way}
              onChange={() => setLies(way)}
            />
            <span>{words.lying[way]}</span>
          </label>
        ))}
      </fieldset>
      <BeginEnd words={words} place={place} onPlace={setPlace} trouble={trouble} />
    </form>
  );
}
