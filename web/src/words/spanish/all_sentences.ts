/**
 * All that the engine writes, in Spanish: also what shows only where a finding is unfolded, and
 * where methods and their inputs are chosen. It is a file of its own, for after the first screen.
 */
import { acceptance } from './methods/acceptance';
import { banksAndBeds } from './methods/banks_and_beds';
import { bends } from './methods/bends';
import { bridges } from './methods/bridges';
import { chances } from './methods/chances';
import { channels } from './methods/channels';
import { chutes } from './methods/chutes';
import { covers } from './methods/covers';
import { drops } from './methods/drops';
import { filters } from './methods/filters';
import { layersAndToes } from './methods/layers_and_toes';
import { mixes } from './methods/mixes';
import { outlets } from './methods/outlets';
import { scour } from './methods/scour';
import { soils } from './methods/soils';
import { stones } from './methods/stones';
import { waves } from './methods/waves';
import * as first from './sentences';
import { cautions } from './unfolded/cautions';
import { methodCautions } from './unfolded/cautions_of_methods';
import { evidenceMeanings } from './unfolded/evidence_meanings';
import { methodLimit } from './unfolded/limits_of_methods';
import { moreMeanings } from './unfolded/more_meanings';
import { origins } from './unfolded/origins';
import { placesInSources } from './unfolded/places_in_sources';
import * as reasonWords from './unfolded/reasons';
import { rockMeanings } from './unfolded/rock_meanings';
import { waterMeanings } from './unfolded/water_meanings';

const methods = [
  acceptance,
  banksAndBeds,
  bends,
  bridges,
  chances,
  channels,
  chutes,
  covers,
  drops,
  filters,
  layersAndToes,
  mixes,
  outlets,
  scour,
  soils,
  stones,
  waves,
];

const together = (tables: readonly Record<string, string>[]): Record<string, string> =>
  Object.assign({}, ...tables);

export const kinds: Record<string, Record<string, string>> = {
  ...first.kinds,
  ...reasonWords,
  meaning: together([
    waterMeanings,
    rockMeanings,
    evidenceMeanings,
    moreMeanings,
    ...methods.map(({ labels }) => labels),
  ]),
  methodLimit,
  origin: origins,
  sourcePlace: placesInSources,
};

export const sentences: Record<string, string> = together([
  first.sentences,
  methodLimit,
  reasonWords.reasons,
  cautions,
  methodCautions,
  ...methods.map((method) => method.cautions),
]);
