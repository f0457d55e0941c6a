/** Words of the engine as the language of the screens has them. */
import { strings } from './strings';

/** A word that stands by itself; one that the language lacks stays as the engine wrote it. */
export function engineWord(word: string): string {
  return strings.engineWords[word] ?? word;
}

/** The same in the page: what stayed as it was says in which language it is. */
export function EngineWord({ word }: { word: string }) {
  const known = strings.engineWords[word];
  return known === undefined ? <span {...strings.asWritten}>{word}</span> : <>{known}</>;
}

/** Says, where findings stand, why they are not in the language of the screens. */
export function WrittenInEnglish() {
  return strings.writtenInEnglish === '' ? null : (
    <p class="written-in-english">{strings.writtenInEnglish}</p>
  );
}
