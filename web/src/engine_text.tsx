/**
 * What the engine writes, as the language of the screens shows it. The record holds what the engine
 * wrote; what the language does not know stands as it was written and says so.
 */
import type { ComponentChildren } from 'preact';
import { strings } from './strings';
import type { EngineTextKind } from './words/sentences';

/** As text alone, for what takes no elements. */
export function engineText(text: string, of?: EngineTextKind): string {
  return strings
    .readEngine(text, of)
    .map((piece) => piece.text)
    .join(' ');
}

/** Sentence by sentence in the page; `of` where it stands tells how it is to be read. */
export function EngineText({ text, of }: { text: string; of?: EngineTextKind }) {
  const pieces = strings.readEngine(text, of);
  return (
    <>
      {pieces.flatMap((piece, index): ComponentChildren[] => [
        index > 0 && ' ',
        piece.asWritten ? <span {...strings.asWritten}>{piece.text}</span> : piece.text,
      ])}
    </>
  );
}

/** Says, where findings stand, in which language the record is. */
export function WrittenInEnglish() {
  return strings.writtenInEnglish === '' ? null : (
    <p class="written-in-english">{strings.writtenInEnglish}</p>
  );
}
