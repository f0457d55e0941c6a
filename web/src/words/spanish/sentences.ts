/**
 * What the engine writes and the first screens show, sentence by sentence, in Spanish. On the left
 * stands the sentence as the source of the engine makes it, with gaps as `written/gap.ts` reads
 * them. The rest is in `all_sentences.ts`.
 */
import { documentWords } from './document_words';
import { sameChoices } from './same_choices';
import { engineWords } from './engine_words';
import { blends, quotedLimit } from './sentences/blends';
import * as countWords from './sentences/count_words';
import { counts } from './sentences/counts';
import { blanketType, covers, partOfSlope, rockKind } from './sentences/covers';
import { design } from './sentences/design';
import { deskEntries } from './sentences/desk_entries';
import * as designWords from './sentences/design_words';
import { entries } from './sentences/entries';
import { filters, soilGroup } from './sentences/filters';
import { bound, end, limit, sure, than, tried } from './sentences/limits';
import { furtherFindings, undecided } from './sentences/further_findings';
import * as lookWords from './sentences/look_words';
import { looks } from './sentences/looks';
import { loads, measuredRock } from './sentences/measured_rock';
import { method } from './sentences/methods';
import { photoEntries } from './sentences/photo_entries';
import { mark, markOf, photos } from './sentences/photos';
import { pictures, pictureTitle, pictureWord } from './sentences/pictures';
import { origin, placing, required } from './sentences/placing';
import { aKind, kind, problems, quotedWord, thing, unitWord, where } from './sentences/problems';
import { amount, billItem, drift, loadName, result, rockTest, supply } from './sentences/supply';
import { layer, part, tables, testLimit } from './sentences/tables';
import { headline, title, titleOrName } from './sentences/titles';
import { sectionPart, sectionView, typicalSections } from './sentences/typical_sections';
import * as walkWords from './sentences/walk_words';
import { walks } from './sentences/walks';
import { often, statedWater, water } from './sentences/water';

const outcome: Record<string, string> = {
  meets: 'cumple',
  'falls short': 'no cumple',
  'not yet known': 'aún no se sabe',
  'ask the designer': 'consultar al proyectista',
};

/** Kinds that no first screen needs: their words are in `all_sentences.ts`. */
export const laterKinds: Record<string, Record<string, string>> = {
  meaning: {},
  origin: {},
  sourcePlace: {},
};

/** Words that stand in gaps of their kind only. */
export const kinds: Record<string, Record<string, string>> = {
  ...laterKinds,
  title: { ...title, ...method, ...walkWords.check },
  titleOrName,
  pictureTitle: { ...pictureTitle, ...title },
  pictureWord: { ...pictureWord, ...sectionPart },
  sectionPart,
  sectionView,
  documentWord: { ...documentWords, ...sameChoices },
  quotedLimit,
  quotedWord,
  headline,
  ...countWords,
  ...lookWords,
  ...walkWords,
  ...designWords,
  aKind,
  amount,
  billItem,
  blanketType,
  drift,
  layer,
  loadName,
  loads,
  mark,
  markOf,
  kind,
  method,
  often,
  part,
  partOfSlope,
  result,
  rockKind,
  rockTest,
  soilGroup,
  statedWater,
  testLimit,
  thing,
  undecided,
  unitWord,
  where,
  outcome,
  limit,
  than,
  bound,
  end,
  sure,
  required,
  allowedBy: origin,
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
  ...method,
  ...billItem,
  ...rockTest,
  ...covers,
  ...design,
  ...filters,
  ...measuredRock,
  ...photos,
  ...supply,
  ...tables,
  ...water,
  ...problems,
  ...entries,
  ...photoEntries,
  ...deskEntries,
  ...furtherFindings,
  ...blends,
  ...pictures,
  ...typicalSections,
};
