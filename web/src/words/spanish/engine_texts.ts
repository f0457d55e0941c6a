/**
 * What is shown in Spanish for what the engine writes. The sentences of the first screens are there
 * from the start; all others are fetched once a text comes that those do not know.
 */
import { signal } from '@preact/signals';
import { SentenceTable } from '../../written/sentence_table';
import type { EnginePiece, EngineTextKind } from '../sentences';
import { kinds, laterKinds, sentences } from './sentences';

let first: SentenceTable | undefined;

/** All sentences, once they are there; what showed a text without them is drawn again then. */
const all = signal<SentenceTable | undefined>(undefined);

let asked = false;

function askAgain(): void {
  asked = false;
  void fetchAll();
}

async function fetchAll(): Promise<void> {
  if (asked) return;
  asked = true;
  try {
    const every = await import('./all_sentences');
    all.value = new SentenceTable(every.sentences, every.kinds);
  } catch {
    // Such texts stay as written and say that they are English, until there is a connection again.
    addEventListener('online', askAgain, { once: true });
  }
}

function fromTheStart(text: string, of: EngineTextKind | undefined): readonly EnginePiece[] {
  if (of && of in laterKinds) return [{ text, asWritten: true }];
  first ??= new SentenceTable(sentences, kinds);
  return first.pieces(text, of);
}

/** A text of the engine in Spanish, sentence by sentence; `of` where it may be words of a kind. */
export function readEngine(text: string, of?: EngineTextKind): readonly EnginePiece[] {
  const pieces = fromTheStart(text, of);
  if (!pieces.some(({ asWritten }) => asWritten)) return pieces;
  void fetchAll();
  return all.value?.pieces(text, of) ?? pieces;
}
