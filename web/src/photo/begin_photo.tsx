/** What measuring on photos begins with: how, how the rock lies, where on it. */
import { useState } from 'preact/hooks';
import { engine } from '../engine';
import { sentenceOf } from '../field/begin_count';
import { BeginEnd } from '../field/begin_end';
import type { Draft } from '../record/record_database';
import { freshId } from '../record/revision';
import { beginDraft } from '../record/drafts';
import type { PhotoDraft } from './photo_draft';
import { saveFile } from '../save_file';
import { photoWords as words } from '../strings';

/** Boards that there are to print. */
const boards = [1, 2, 3, 4];

/** Sheets with markers, to be printed and laid on the rock. */
function PrintBoard() {
  const [trouble, setTrouble] = useState('');
  const save = async (board: number) => {
    setTrouble('');
    try {
      const { svg } = await engine.ask<{ svg?: string }>({ ask: 'marker-board', board });
      if (svg) saveFile(words.boardFile(board), 'image/svg+xml', svg);
    } catch (error) {
      setTrouble(sentenceOf(error));
    }
  };
  return (
    <div class="photo-fields">
      <p>{words.printBoards}</p>
      <div class="photo-tools in-fours" role="group" aria-label={words.printBoards}>
        {boards.map((board) => (
          <button key={board} type="button" class="button quiet" onClick={() => void save(board)}>
            {words.printBoard(board)}
          </button>
        ))}
      </div>
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
}

export function PhotoGuide({ open }: { open: boolean }) {
  return (
    <details class="photo-guide" open={open}>
      <summary>{words.guide.heading}</summary>
      <ul>
        {words.guide.points.map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ul>
      <PrintBoard />
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
