/**
 * What the engine writes, sentence by sentence, in Spanish. On the left stands the sentence as the
 * source of the engine makes it, with gaps as `written/gap.ts` reads them.
 */
import type { EnginePiece } from '../sentences';
import { SentenceTable } from '../../written/sentence_table';
import { engineWords } from './engine_words';
import * as countWords from './sentences/count_words';
import { counts } from './sentences/counts';
import { bound, end, limit, sure, than, tried } from './sentences/limits';
import * as lookWords from './sentences/look_words';
import { looks } from './sentences/looks';
import { origin, placing, required } from './sentences/placing';
import * as walkWords from './sentences/walk_words';
import { walks } from './sentences/walks';

const outcome: Record<string, string> = {
  meets: 'cumple',
  'falls short': 'no cumple',
  'not yet known': 'aún no se sabe',
  'ask the designer': 'consultar al proyectista',
};

/** Words that stand in gaps of their kind only. */
export const kinds = {
  ...countWords,
  ...lookWords,
  ...walkWords,
  outcome,
  limit,
  than,
  bound,
  end,
  sure,
  required,
  origin,
};

/** Sentences, and words that stand by themselves. */
export const sentences: Record<string, string> = {
  ...engineWords,
  ...outcome,
  ...countWords.share,
  ...walkWords.check,
  ...walkWords.state,
  ...walkWords.evidence,
  ...walkWords.survey,
  ...required,
  ...origin,
  ...tried,
  ...sure,
  ...counts,
  ...looks,
  ...placing,
  ...walks,
};

let table: SentenceTable | undefined;

/** A text of the engine in Spanish, sentence by sentence. */
export function readEngine(text: string): readonly EnginePiece[] {
  table ??= new SentenceTable(sentences, kinds);
  return table.pieces(text);
}
